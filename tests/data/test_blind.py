"""A blind round: drawn, repeatable, some photos twice; and what it says of the eye."""

from collections import Counter

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.blind import LEAST_APART, agreement_of, draw_round
from data.numbers import PhotoId, TrayId
from data.verdict.blindwords import eye_words, whom_to_trust


def photos(count: int) -> list[tuple[TrayId, PhotoId]]:
    return [(TrayId(n), PhotoId(100 + n)) for n in range(1, count + 1)]


@given(st.integers(1, 60), st.integers(0, 2**31))
def test_every_photo_is_shown_and_some_are_shown_again_later(count: int, seed: int) -> None:
    shown = draw_round(photos(count), seed)

    times = Counter(one.photo_id for one in shown)
    assert set(times) == {photo for _, photo in photos(count)}
    assert [one.place for one in shown] == list(range(1, len(shown) + 1))
    again = [one for one in shown if one.again]
    assert len(again) == sum(count - 1 for count in times.values())
    for one in again:
        first = next(other for other in shown if other.photo_id == one.photo_id)
        assert not first.again
        assert one.place - first.place > LEAST_APART


def test_a_fifth_comes_again() -> None:
    assert sum(one.again for one in draw_round(photos(30), 1)) == 6


@pytest.mark.parametrize(("count", "again"), [(4, 0), (5, 1), (6, 2), (7, 3), (14, 3), (18, 4)])
def test_of_few_photos_three_come_again_where_enough_others_stand_between(count: int, again: int) -> None:
    assert sum(one.again for one in draw_round(photos(count), 1)) == again


def test_no_tray_has_its_own_turn() -> None:
    """Else who knows the rack knows the medium: the first of 12 stands in each turn about equally often."""
    places = Counter()
    for seed in range(600):
        shown = [one.photo_id for one in draw_round(photos(12), seed) if not one.again]
        places[shown.index(101)] += 1

    assert set(places) == set(range(12))
    assert max(places.values()) < 50 + 5 * 7  # 600 / 12 = 50, standard deviation 6.8


def test_the_seed_alone_makes_the_order() -> None:
    assert draw_round(photos(20), 5) == draw_round(photos(20)[::-1], 5)
    assert draw_round(photos(20), 5) != draw_round(photos(20), 6)


def test_an_eye_that_sees_what_the_photo_sees_agrees() -> None:
    photo = {TrayId(n): 50.0 + 4 * n for n in range(10)}
    eye = {tray: value + (1 if tray % 2 else -1) for tray, value in photo.items()}

    found = agreement_of(eye, {TrayId(0): eye[TrayId(0)] + 2}, photo)

    assert (found.trays, found.again) == (10, 1)
    assert found.with_photo.value > 0.98
    assert found.limits.mean == pytest.approx(0.0)
    assert found.ranks.rho > 0.98
    assert found.itself_sd == pytest.approx(2**0.5)


def test_an_eye_that_gives_all_trays_one_number_agrees_with_nothing() -> None:
    photo = {TrayId(n): 50.0 + 4 * n for n in range(10)}

    found = agreement_of(dict.fromkeys(photo, 70.0), {}, photo)

    assert found.ranks is None
    assert abs(found.with_photo.value) < 0.1


def test_of_few_trays_nothing_is_said() -> None:
    found = agreement_of({TrayId(1): 50.0}, {}, {TrayId(1): 60.0})

    assert (found.with_photo, found.limits, found.ranks, found.itself_sd) == (None,) * 4
    four = {TrayId(n): 50.0 + n * n for n in range(4)}
    found = agreement_of(four, {}, four)
    assert (found.with_photo, found.limits, found.ranks, found.grades) == (None,) * 4


def test_of_trays_that_are_all_alike_no_agreement_is_told() -> None:
    alike = dict.fromkeys(map(TrayId, range(6)), 70.0)

    assert agreement_of(alike, {}, alike).with_photo is None


def test_an_eye_that_tells_no_tray_from_another_has_no_steadiness() -> None:
    alike = dict.fromkeys(map(TrayId, range(6)), 70.0)

    assert agreement_of(alike, {TrayId(n): 60.0 + n for n in range(3)}, {}).steady is None
    assert agreement_of(alike | {TrayId(1): 71.0}, {TrayId(n): 70.0 for n in range(2)}, {}).steady is None


def test_limits_of_five_trays_are_those_of_student_for_one_more() -> None:
    """By hand: differences -2 to 2 spread by root 2.5; t(0.975, 4) = 2.7764 (table), root 1.2 = 1.0954."""
    photo = {TrayId(n): 50.0 + 10 * n for n in range(5)}
    limits = agreement_of({t: v + t - 2 for t, v in photo.items()}, {}, photo).limits

    assert limits is not None
    assert limits.high == pytest.approx(2.5**0.5 * 2.7764 * 1.0954, abs=1e-3)
    assert limits.low == pytest.approx(-limits.high)


PHOTO = {TrayId(n): 50.0 + 4 * n for n in range(10)}


@pytest.mark.parametrize(
    ("eye", "again", "sentence"),
    [
        (PHOTO, PHOTO, "either may be trusted"),
        (
            {t: 160 - v for t, v in PHOTO.items()},
            {t: 160 - v for t, v in PHOTO.items()},
            "see different things",
        ),
        ({t: 160 - v for t, v in PHOTO.items()}, PHOTO, "trust the photo"),
        ({t: 160 - v for t, v in PHOTO.items()}, {}, "trust neither alone"),
        ({}, {}, "Too few trays"),
    ],
)
def test_a_sentence_says_whose_numbers_to_trust(
    eye: dict[TrayId, float], again: dict[TrayId, float], sentence: str
) -> None:
    assert sentence in whom_to_trust(agreement_of(eye, again, PHOTO))


@pytest.mark.parametrize(
    ("trays", "wandering", "wrong"),
    [
        (9, 3.0, "does not agree with itself"), (18, 3.0, "does not agree with itself"),
        (9, 15.0, "agrees with itself but"), (18, 15.0, "agrees with itself but"),
    ],
)  # fmt: skip
def test_of_an_eye_that_saw_few_trays_twice_a_wrong_thing_is_said_in_at_most_one_round_of_ten(
    trays: int, wandering: float, wrong: str
) -> None:
    """Trays lie 10 points apart for the eye, and it wanders by 3 (steady: 0.92) or by 15 (0.31).

    The intraclass correlation of three or four pairs, which was asked before, was wrong in 7 to 33 of 100.
    """
    chance = np.random.default_rng(trays)
    told = Counter()
    for _ in range(400):
        eye = chance.normal(60, 10, trays)
        first, again = (eye + chance.normal(0, wandering, trays) for _ in range(2))
        photo = chance.normal(60, 10, trays)
        twice = max(3, round(0.2 * trays))
        found = agreement_of(
            {TrayId(n): float(first[n]) for n in range(trays)},
            {TrayId(n): float(again[n]) for n in range(twice)},
            {TrayId(n): float(photo[n]) for n in range(trays)},
        )
        told[wrong in whom_to_trust(found)] += 1

    assert told[True] <= 400 * 0.1 + 18  # three standard errors


@pytest.mark.parametrize("trays", [5, 9, 18])
def test_an_eye_that_sees_half_of_what_the_photo_sees_is_seldom_called_as_good(trays: int) -> None:
    """Drawn: a true intraclass correlation of 0.5; by its value alone 19, 12 and 4 of 100 rounds said so."""
    chance = np.random.default_rng(trays)
    told = 0
    for _ in range(400):
        true = chance.normal(60, 10, trays)
        eye, photo = (true + chance.normal(0, 10, trays) for _ in range(2))
        scores = [{TrayId(n): float(one) for n, one in enumerate(by)} for by in (eye, photo)]
        told += "either may be trusted" in whom_to_trust(agreement_of(scores[0], {}, scores[1]))

    assert told <= 400 * 0.1 + 18  # three standard errors


def test_how_alike_eye_and_photo_are_has_the_interval_of_fisher() -> None:
    """By hand: z = atanh(r), of 12 trays -+ 1.2816 / root(12 - 1.5) = 0.3955 (80 %)."""
    photo = {TrayId(n): 50.0 + 4 * n for n in range(12)}
    eye = {t: v + 10.3 * (1, -1, -1, 1)[t % 4] for t, v in photo.items()}

    alike = agreement_of(eye, {}, photo).with_photo

    assert alike is not None
    assert alike.value == pytest.approx(0.8, abs=0.03)
    z = np.arctanh(alike.value)
    assert (alike.low, alike.high) == pytest.approx((np.tanh(z - 0.3955), np.tanh(z + 0.3955)), abs=1e-4)


def test_where_chance_may_have_made_eye_and_photo_differ_more_trays_are_asked_for() -> None:
    photo = {TrayId(n): 50.0 + 4 * n for n in range(6)}
    eye = {t: v + (9.0 if t % 2 else -9.0) for t, v in photo.items()}

    assert "cannot be told from so few trays" in whom_to_trust(agreement_of(eye, eye, photo))


def test_how_steady_an_eye_is_has_the_interval_of_the_chi_square() -> None:
    """By hand: 4, 4 and 2 apart on three trays leave a variance of 6; that of all five scores is 250.

    Chi-square with 3 degrees of freedom: 10 % lie below 0.5844 and above 6.2514 (table).
    """
    first = {TrayId(n): 10.0 * n + 40 for n in range(1, 6)}
    again = {TrayId(1): 54.0, TrayId(2): 56.0, TrayId(3): 72.0}

    steady = agreement_of(first, again, {}).steady

    assert steady is not None
    assert steady.value == pytest.approx(1 - 6 / 250)
    assert (steady.low, steady.high) == pytest.approx(
        (1 - 18 / 0.5844 / 250, 1 - 18 / 6.2514 / 250), abs=1e-4
    )


@pytest.mark.parametrize("trays", [5, 9, 18])
def test_limits_hold_for_95_of_100_further_trays_however_few_were_scored(trays: int) -> None:
    """Drawn: differences of spread 1; the usual 1.96 standard deviations held 85, 90 and 93 of 100."""
    chance = np.random.default_rng(3)
    inside = 0
    for _ in range(1500):
        apart = chance.normal(0, 1, trays)
        photo = {TrayId(n): 50.0 + n for n in range(trays)}
        found = agreement_of(
            {t: v + float(d) for (t, v), d in zip(photo.items(), apart, strict=True)}, {}, photo
        )
        inside += found.limits.low <= chance.normal() <= found.limits.high

    assert inside / 1500 == pytest.approx(0.95, abs=0.017)  # three standard errors


def test_numbers_of_the_agreement_are_told_before_the_advice() -> None:
    first, graded, second, third = eye_words(agreement_of(PHOTO, PHOTO, PHOTO))

    assert first == (
        "On 10 trays the eye gave +0.0 points against the photo, in 95 of 100 trays between +0.0 and +0.0; "
        "agreement 1.00 (ICC(2,1), 1 is perfect)."
    )
    assert graded.startswith("In five grades of 20 points eye and photo put 10 of 10 trays into the same one")
    assert second.startswith("Of 10 trays seen twice the eye missed its own number by 0.0 points")
    assert third == whom_to_trust(agreement_of(PHOTO, PHOTO, PHOTO))


def test_grades_are_of_twenty_points_and_a_hundred_is_of_the_best() -> None:
    photo = {TrayId(n): v for n, v in enumerate((0.0, 19.9, 20.0, 45.0, 79.0, 100.0))}
    eye = {TrayId(n): v for n, v in enumerate((5.0, 21.0, 39.0, 61.0, 79.0, 80.0))}
    # grades 0 0 1 2 3 4 and 0 1 1 3 3 4: of 36 pairs of grades the squares are 156, the six trays' own 2
    found = agreement_of(eye, {}, photo)

    assert found.same_grade == 4
    assert found.grades is not None
    assert found.grades.weighted == pytest.approx(1 - (2 / 6) / (156 / 36))


def test_trays_of_one_grade_have_no_kappa() -> None:
    alike = {TrayId(n): 81.0 + n for n in range(6)}

    found = agreement_of(alike, {}, alike)

    assert (found.same_grade, found.grades.weighted) == (6, None)
    assert not any("grades" in words for words in eye_words(found))
