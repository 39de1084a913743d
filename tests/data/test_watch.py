"""The look list: quiet when nothing is wrong, never moved by one bad photo, and clear about what to do."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.book import Book
from data.records import DayNumbers, Look, LookKind, PhotoId, Said, SeenSuspect, Tray, TrayId, Urgency
from data.watch import MOLD_CAUTION, Morning, looks, read_looks
from tests.data.builders import a_kept_tray, a_note, a_seen_suspect, bring, numbers
from vision.reason import Reason

TODAY = date(2026, 3, 8)
TRAYS = [a_kept_tray(n) for n in (1, 2, 3, 4)]


def even_days(trays: Iterable[int] = (1, 2, 3, 4), days: Iterable[int] = (6, 7, 8)) -> list[DayNumbers]:
    """Trays that grow alike: 60, 70, 80 % coverage."""
    return [numbers(tray, day, coverage=80.0 - 10 * (8 - day)) for tray in trays for day in days]


def with_tray_one(change: dict[int, dict[str, object]]) -> list[DayNumbers]:
    """Even days, but for what is said of tray 1 by day."""
    special = [
        numbers(1, day, **({"coverage": 80.0 - 10 * (8 - day)} | more)) for day, more in change.items()
    ]
    return [n for n in even_days() if n.tray_id != 1 or n.taken_at.day not in change] + special


def found(
    photos: Sequence[DayNumbers], suspects: Sequence[SeenSuspect] = (), trays: Sequence[Tray] = TRAYS
) -> tuple[Look, ...]:
    ordered = sorted(photos, key=lambda n: (n.tray_id, n.taken_at))
    return looks(
        Morning(
            today=TODAY,
            trays=trays,
            numbers=ordered,
            suspects=sorted(suspects, key=lambda s: (s.tray_id, s.taken_at)),
        )
    )


def only(list_: Sequence[Look]) -> Look:
    (look,) = list_
    return look


def test_nothing_is_said_when_nothing_is_wrong() -> None:
    assert found(even_days()) == ()


def test_an_empty_book_needs_nothing() -> None:
    assert looks(Morning(today=TODAY, trays=[])) == ()
    assert looks(Morning(today=TODAY, trays=TRAYS)) == ()


# --- lagging


def test_a_tray_behind_its_block_mates_on_two_days_lags() -> None:
    look = only(found(with_tray_one({7: {"coverage": 50.0}, 8: {"coverage": 55.0}})))

    assert (look.code, look.what, look.urgency, look.since) == (
        "A1", LookKind.LAGGING, Urgency.TODAY, date(2026, 3, 7),
    )  # fmt: skip
    assert look.sentence == (
        "Coverage 55 %, 25 points below the middle of its block mates (80 %); "
        "more than on 7 March (20 points)."
    )


def test_one_bad_photo_alone_raises_nothing() -> None:
    assert (
        found(
            with_tray_one({8: {"coverage": 5.0, "uniformity": 10.0, "edge_deficit": 60.0, "gap_share": 90.0}})
        )
        == ()
    )


@given(
    day=st.sampled_from([4, 5, 6, 7, 8]),
    coverage=st.floats(0, 100),
    uniformity=st.floats(-100, 100),
    edge=st.floats(-50, 100),
    gaps=st.floats(0, 100),
)
def test_whatever_one_photo_shows_it_alone_raises_nothing(
    day: int, coverage: float, uniformity: float, edge: float, gaps: float
) -> None:
    odd = numbers(1, day, coverage=coverage, uniformity=uniformity, edge_deficit=edge, gap_share=gaps)
    others = [n for n in even_days(days=(4, 5, 6, 7, 8)) if (n.tray_id, n.taken_at.day) != (1, day)]

    assert found([*others, odd]) == ()


CLOSING = {5: 12.0, 6: 32.0, 7: 53.0, 8: 72.0}  # % coverage of mates in the days in which they close


def closing(**mine: float) -> tuple[Look, ...]:
    """The list on the last day told of tray 1 (`day7=28`), which grows beside three that close."""
    own = {int(name.removeprefix("day")): coverage for name, coverage in mine.items()}
    photos = [numbers(1, day, coverage=coverage) for day, coverage in own.items()]
    photos += [numbers(tray, day, coverage=CLOSING[day]) for tray in (2, 3, 4) for day in own]
    ordered = sorted(photos, key=lambda n: (n.tray_id, n.taken_at))
    return looks(Morning(today=date(2026, 3, max(own)), trays=TRAYS, numbers=ordered))


def test_a_bad_photo_while_a_crop_closes_is_no_lag_beside_a_day_that_was_nearly_behind() -> None:
    """Coverage falls on no day: the photo shows hardly more than the one before, and the mates gained 21."""
    assert closing(day5=14, day6=24, day7=28) == ()
    assert closing(day5=14, day6=24, day7=28, day8=71) == ()


def test_a_tray_that_stands_still_while_its_mates_close_lags_on_the_second_day() -> None:
    assert only(closing(day5=14, day6=24, day7=28, day8=31)).what is LookKind.LAGGING


def in_colour(mine: dict[int, tuple[float, float]]) -> tuple[Look, ...]:
    """The same, with the dark green index of tray 1; the mates keep theirs at 0.60."""
    photos = [numbers(1, day, coverage=one, dark_green=green) for day, (one, green) in mine.items()]
    photos = [photo._replace(corrected=True) for photo in photos]
    photos += [
        numbers(tray, day, coverage=CLOSING[day], dark_green=0.60)._replace(corrected=True)
        for tray in (2, 3, 4)
        for day in mine
    ]
    ordered = sorted(photos, key=lambda n: (n.tray_id, n.taken_at))
    return looks(Morning(today=date(2026, 3, max(mine)), trays=TRAYS, numbers=ordered))


def test_a_photo_whose_colour_leaps_too_waits_for_the_next_one() -> None:
    """Behind by 9, then by 15: too little for a fall, but the second photo is odd in colour."""
    assert only(in_colour({5: (12, 0.60), 6: (23, 0.59), 7: (38, 0.58)})).what is LookKind.LAGGING
    assert in_colour({5: (12, 0.60), 6: (23, 0.59), 7: (38, 0.44)}) == ()
    assert in_colour({5: (12, 0.60), 6: (23, 0.59), 7: (38, 0.44), 8: (70, 0.60)}) == ()


def test_a_tray_that_stays_behind_in_another_colour_is_told_a_day_later() -> None:
    odd = {5: (12.0, 0.60), 6: (23.0, 0.59), 7: (38.0, 0.44), 8: (54.0, 0.45)}

    assert only(in_colour(odd)).what is LookKind.LAGGING


def test_a_tray_that_is_paler_than_its_mates_from_the_first_day_on_is_told_at_once() -> None:
    assert only(in_colour({5: (12, 0.45), 6: (23, 0.44), 7: (38, 0.45)})).what is LookKind.LAGGING


def test_a_lag_does_not_become_late_by_one_bad_photo() -> None:
    lagging = closing(day5=3, day6=19, day7=36)
    assert only(lagging).what is LookKind.LAGGING
    assert only(closing(day5=3, day6=19, day7=36, day8=14)).what is not LookKind.LATE


def test_a_tray_that_has_just_begun_is_late_and_no_bad_photo() -> None:
    assert only(closing(day5=1, day6=4, day7=11)).what is LookKind.LATE


def test_a_tray_behind_mates_that_differ_widely_themselves_does_not_lag() -> None:
    wide = [
        numbers(tray, day, coverage=coverage)
        for tray, coverage in ((1, 45.0), (2, 50.0), (3, 65.0), (4, 85.0))
        for day in (7, 8)
    ]

    assert LookKind.LAGGING not in {look.what for look in found(wide)}


def test_other_crops_blocks_sowing_days_and_methods_are_no_mates() -> None:
    strangers = [
        a_kept_tray(1), a_kept_tray(2, crop="red radish"), a_kept_tray(3, block="2"),
        a_kept_tray(4, sown_at=datetime(2026, 2, 26)),
    ]  # fmt: skip
    behind = with_tray_one({6: {"coverage": 25.0}, 7: {"coverage": 30.0}, 8: {"coverage": 35.0}})
    assert found(behind, trays=strangers) == ()

    newer = with_tray_one(
        {7: {"coverage": 30.0, "method": "plain 2"}, 8: {"coverage": 35.0, "method": "plain 2"}}
    )
    assert found(newer) == ()


@pytest.mark.parametrize(
    ("block", "shelf", "lags"), [(None, "A", True), (None, "B", False), ("1", "B", True)]
)
def test_mates_are_of_the_block_and_of_the_shelf_where_no_block_is_named(
    block: str | None, shelf: str, lags: bool
) -> None:
    trays = [
        a_kept_tray(1, block=block, shelf="A"),
        *(a_kept_tray(n, block=block, shelf=shelf) for n in (2, 3, 4)),
    ]
    photos = with_tray_one({7: {"coverage": 50.0}, 8: {"coverage": 55.0}})

    assert [look.what for look in found(photos, trays=trays)] == [LookKind.LAGGING] * lags


def test_with_one_mate_nothing_is_compared() -> None:
    behind = with_tray_one({6: {"coverage": 25.0}, 7: {"coverage": 30.0}, 8: {"coverage": 35.0}})

    assert found(behind, trays=TRAYS[:2]) == ()


# --- vanishing, uneven, gaps, edge


def test_canopy_that_is_gone_on_two_days_is_told_at_once() -> None:
    falling = {5: {"coverage": 70.0}, 6: {"coverage": 72.0}, 7: {"coverage": 55.0}, 8: {"coverage": 40.0}}
    look = found(with_tray_one(falling))[0]

    assert (look.what, look.urgency) == (LookKind.VANISHED, Urgency.NOW)
    assert "fell from 70 % on 5 March to 40 %" in look.sentence
    assert "damping off" in look.first


def test_an_uneven_tray_is_measured_against_its_mates() -> None:
    look = only(found(with_tray_one({7: {"uniformity": 60.0}, 8: {"uniformity": 62.0}})))

    assert look.what is LookKind.UNEVEN
    assert look.sentence == "Uniformity 62 % at 80 % coverage; its block mates have 90 %."


def test_unevenness_says_nothing_while_there_is_little_canopy() -> None:
    early = [
        numbers(tray, day, coverage=20.0, uniformity=20.0 if tray == 1 else 60.0)
        for tray in (1, 2, 3)
        for day in (7, 8)
    ]

    assert found(early, trays=TRAYS[:3]) == ()


def test_gaps_that_stay_once_the_crop_is_up_are_told() -> None:
    look = only(found(with_tray_one({7: {"gap_share": 9.0}, 8: {"gap_share": 8.0}})))

    assert look.what is LookKind.GAPS
    assert look.sentence.startswith("Gaps take 8 % of the tray (9 % on 7 March)")


def test_an_edge_that_stays_thin_is_told_and_one_that_closes_is_not() -> None:
    look = only(found(with_tray_one({7: {"edge_deficit": 15.0}, 8: {"edge_deficit": 18.0}})))
    assert look.what is LookKind.EDGE
    assert "18 points thinner than the middle (15 on 7 March)" in look.sentence

    assert found(with_tray_one({7: {"edge_deficit": 25.0}, 8: {"edge_deficit": 15.0}})) == ()


def test_old_numbers_are_no_news() -> None:
    long_ago = [numbers(1, day, uniformity=20.0) for day in (2, 3)]

    assert {look.what for look in found(long_ago, trays=TRAYS[:1])} <= {LookKind.NO_PHOTO}


def test_numbers_of_the_photo_before_carry_its_day_where_a_day_was_left_out() -> None:
    """Photographed every second day: what stands beside today's number is not of the day before."""
    photos = [
        numbers(tray, day, edge_deficit=deficit if tray == 1 else 2.0)
        for tray in (1, 2, 3, 4)
        for day, deficit in ((6, 15.0), (8, 18.0))
    ]

    assert "(15 on 6 March)" in only(found(photos)).sentence


# --- mold


def test_a_patch_that_grew_since_yesterday_is_urgent_and_carries_the_caution() -> None:
    look = only(found(even_days(), [a_seen_suspect(1, 7, area_cm2=4.0), a_seen_suspect(1, 8, area_cm2=7.5)]))

    assert (look.what, look.urgency, look.since) == (LookKind.SUSPECT, Urgency.NOW, date(2026, 3, 7))
    assert look.sentence == (
        "1 patch that may be mold, the largest 7.5 cm², 25 cm from the left and 13 cm from the far side; "
        "grown from 4.0 to 7.5 cm² since 7 March; confidence 0.50."
    )
    assert look.caution == MOLD_CAUTION


def test_a_patch_as_large_as_the_day_before_is_not_urgent_and_says_so() -> None:
    look = only(found(even_days(), [a_seen_suspect(1, 7, area_cm2=5.6), a_seen_suspect(1, 8)]))

    assert (look.urgency, look.since) == (Urgency.TODAY, date(2026, 3, 7))
    assert "; as large as on 7 March (5.6 cm²); " in look.sentence


def test_a_patch_that_shrinks_says_so() -> None:
    look = only(found(even_days(), [a_seen_suspect(1, 7, area_cm2=9.0), a_seen_suspect(1, 8)]))

    assert look.urgency is Urgency.TODAY
    assert "; smaller than on 7 March (9.0 cm²); " in look.sentence


def test_growth_too_slow_to_show_in_a_day_is_seen_over_all_days_that_show_the_patch() -> None:
    days = [a_seen_suspect(1, day, area_cm2=area) for day, area in ((6, 5.0), (7, 5.6), (8, 6.3))]

    assert "grown from 5.0 to 6.3 cm² since 6 March" in only(found(even_days(), days)).sentence
    assert only(found(even_days(), [days[0], days[2]])).urgency is Urgency.TODAY


def test_a_patch_that_has_stood_still_for_two_days_can_wait_and_is_told_all_the_same() -> None:
    days = [
        a_seen_suspect(1, day, area_cm2=area, confidence=0.8) for day, area in ((6, 6.0), (7, 6.2), (8, 5.9))
    ]

    look = only(found(even_days(), days))

    assert look.urgency is Urgency.SOON
    assert "; as large as on 7 March (6.2 cm²); not grown for 2 days; " in look.sentence


def test_a_new_patch_beside_one_that_stands_still_is_looked_at_today() -> None:
    days = [a_seen_suspect(1, day, confidence=0.8) for day in (6, 7, 8)]
    fresh = a_seen_suspect(1, 8, x_mm=400.0, confidence=0.8)

    assert only(found(even_days(), [*days, fresh])).urgency is Urgency.TODAY


@pytest.mark.parametrize(("before", "is_told"), [(2.0, True), (5.8, False), (9.0, False)])
def test_a_faint_patch_is_told_once_it_has_grown(before: float, is_told: bool) -> None:
    yesterday, today = (
        a_seen_suspect(1, day, area_cm2=area, confidence=0.2) for day, area in ((7, before), (8, 6.0))
    )

    looks_ = found(even_days(), [yesterday, today])

    assert [(look.what, look.urgency) for look in looks_] == (
        [(LookKind.SUSPECT, Urgency.TODAY)] if is_told else []
    )


def test_of_two_patches_that_grew_the_larger_one_is_told() -> None:
    small = [a_seen_suspect(1, day, area_cm2=area, x_mm=60.0) for day, area in ((7, 1.0), (8, 2.5))]
    large = [a_seen_suspect(1, day, area_cm2=area) for day, area in ((7, 4.0), (8, 8.0))]

    look = only(found(even_days(), [*small, *large]))

    assert look.sentence.startswith("2 patches that may be mold, the largest 8.0 cm²")
    assert "grown from 4.0 to 8.0 cm² since 7 March" in look.sentence


def test_another_patch_of_before_makes_a_new_one_no_older() -> None:
    elsewhere = a_seen_suspect(1, 7, x_mm=60.0)
    gone = a_seen_suspect(1, 7, closed=True)

    for earlier in (elsewhere, gone):
        look = only(found(even_days(), [earlier, a_seen_suspect(1, 8)]))
        assert (look.since, look.urgency) == (date(2026, 3, 8), Urgency.SOON)


def test_two_patches_that_flow_together_are_not_called_growth() -> None:
    before = [a_seen_suspect(1, 7, area_cm2=3.0, x_mm=x) for x in (245.0, 263.0)]

    assert only(found(even_days(), [*before, a_seen_suspect(1, 8)])).urgency is Urgency.TODAY


def test_a_second_photo_of_the_same_day_shows_no_growth() -> None:
    again = numbers(1, 8, photo_id=PhotoId(999), taken_at=datetime(2026, 3, 8, 18))
    larger = a_seen_suspect(
        1, 8, photo_id=PhotoId(999), taken_at=datetime(2026, 3, 8, 18), area_cm2=9.0, confidence=0.4
    )

    look = only(found([*even_days(), again], [a_seen_suspect(1, 8), larger]))

    assert look.urgency is not Urgency.NOW


def test_areas_by_two_versions_of_the_method_are_no_growth() -> None:
    photos = [n for n in even_days() if (n.tray_id, n.taken_at.day) != (1, 8)]
    photos.append(numbers(1, 8, method="plain 2"))

    look = only(found(photos, [a_seen_suspect(1, 7, area_cm2=2.0), a_seen_suspect(1, 8)]))

    assert look.urgency is Urgency.TODAY


@given(areas=st.lists(st.floats(0.5, 30), min_size=1, max_size=3), confidence=st.floats(0.3, 1))
def test_the_suspects_of_one_photo_alone_are_never_urgent(areas: list[float], confidence: float) -> None:
    suspects = [
        a_seen_suspect(1, 8, area_cm2=area, x_mm=60.0 + 130 * n, confidence=confidence)
        for n, area in enumerate(areas)
    ]

    assert only(found(even_days(), suspects)).urgency is not Urgency.NOW


def test_a_new_patch_is_looked_at_sooner_the_surer_it_is() -> None:
    def urgency(confidence: float) -> list[Urgency]:
        return [look.urgency for look in found(even_days(), [a_seen_suspect(confidence=confidence)])]

    assert (urgency(0.9), urgency(0.4), urgency(0.1)) == ([Urgency.TODAY], [Urgency.SOON], [])


def test_what_a_person_called_not_mold_stays_quiet_until_it_grows() -> None:
    said = a_seen_suspect(1, 7, area_cm2=6.0, said=Said.NOT_MOLD)

    assert found(even_days(), [said, a_seen_suspect(1, 8, area_cm2=6.5, x_mm=260.0)]) == ()
    grown = only(found(even_days(), [said, a_seen_suspect(1, 8, area_cm2=10.0, x_mm=260.0)]))
    assert grown.urgency is Urgency.NOW


def test_a_patch_elsewhere_is_not_settled_by_an_old_word() -> None:
    said = a_seen_suspect(1, 7, said=Said.NOT_MOLD)

    assert len(found(even_days(), [said, a_seen_suspect(1, 8, x_mm=100.0)])) == 1


def test_a_patch_that_closed_itself_is_no_news() -> None:
    assert found(even_days(), [a_seen_suspect(1, 7, closed=True)]) == ()


def test_a_patch_that_is_gone_from_sight_and_has_not_closed_itself_is_still_told() -> None:
    (look,) = found(even_days(), [a_seen_suspect(1, 7)])

    assert "last seen on 7 March, leaves may hide it now" in look.sentence


def test_mold_by_a_persons_word_stays_first_while_the_tray_stands_there() -> None:
    list_ = found(
        with_tray_one({7: {"coverage": 50.0}, 8: {"coverage": 55.0}}),
        [a_seen_suspect(2, 7, said=Said.MOLD), a_seen_suspect(3, 8, confidence=0.9)],
    )

    assert [(look.code, look.what) for look in list_] == [
        ("A2", LookKind.MOLD), ("A3", LookKind.SUSPECT), ("A1", LookKind.LAGGING),
    ]  # fmt: skip
    assert list_[0].caution == MOLD_CAUTION


def test_the_caution_says_what_can_hurt() -> None:
    for words in ("no proof that a tray is safe", "Do not taste, sell or give away", "respirator", "asthma"):
        assert words in MOLD_CAUTION


# --- photos


def test_a_tray_that_the_walk_left_out_is_told_once_the_walk_is_on() -> None:
    photos = even_days((1, 2, 3)) + even_days((4,), (6, 7))

    look = only(found(photos))

    assert (look.code, look.what, look.urgency) == ("A4", LookKind.NO_PHOTO, Urgency.SOON)
    assert (look.sentence, look.since) == ("No photo since 7 March.", TODAY)


def test_a_tray_without_a_photo_for_days_is_not_said_to_lack_todays_alone() -> None:
    """Nobody has walked yet; that one has been left out before is told all the same, by a true reason."""
    look = only(found(even_days((1, 2, 3), (6, 7)) + even_days((4,), (5, 6))))

    assert (look.what, look.urgency) == (LookKind.NO_PHOTO, Urgency.SOON)
    assert "only today" not in look.why_urgent


def test_in_the_morning_before_the_walk_nothing_is_missing_yet() -> None:
    assert found(even_days(days=(6, 7))) == ()


def test_a_tray_in_blackout_is_not_missed() -> None:
    covered = a_kept_tray(4, sown_at=datetime(2026, 3, 7), blackout_to=datetime(2026, 3, 10))

    assert found(even_days((1, 2, 3)), trays=[*TRAYS[:3], covered]) == ()


@pytest.mark.parametrize(("hour", "missed"), [(9, True), (23, False)])
def test_a_tray_sown_in_the_evening_is_not_missed_on_the_morning_before_it_is_uncovered(
    hour: int, missed: bool
) -> None:
    """Two covered days from eleven at night on end at eleven at night, long after the walk."""
    sown = datetime(2026, 3, 6, hour)
    dark = replace(TRAYS[3], sown_at=sown, blackout_from=sown, blackout_to=sown + timedelta(days=2))

    told = found(even_days((1, 2, 3)), trays=[*TRAYS[:3], dark])

    assert [look.what for look in told] == [LookKind.NO_PHOTO] * missed


def test_a_photo_that_probably_shows_the_tray_is_to_be_confirmed() -> None:
    photos = even_days((1, 2, 3)) + even_days((4,), (6, 7))

    look = only(looks(Morning(today=TODAY, trays=TRAYS, numbers=photos, proposed=[TrayId(4)])))

    assert look.what is LookKind.UNMATCHED
    assert "Intake" in look.first


def test_a_photo_of_today_that_is_not_used_says_why_unless_another_one_is() -> None:
    refused = with_tray_one({8: {"refusal": Reason.BLURRED, "sure": False, "coverage": None}})
    look = only(found(refused))
    assert look.what is LookKind.UNUSABLE
    assert look.sentence == f"Today's photo is not used: {Reason.BLURRED}."

    good = numbers(1, 8, taken_at=datetime(2026, 3, 8, 12, 5))
    assert found([*refused, good]) == ()


def test_a_photo_that_waits_for_corners_says_so() -> None:
    look = only(found(with_tray_one({8: {"needs_corners": True, "sure": False}})))

    assert (look.what, look.first) == (LookKind.UNUSABLE, "Set the four corners in Intake.")


# --- from the book


def test_the_list_of_a_real_book_is_that_of_its_records(book: Book, phone: Path) -> None:
    for day in (7, 8):
        for tag in (10, 11, 12):
            suspects = [{"x_mm": 100.0, "area_cm2": float(day)}] if (tag, day) == (12, 8) else []
            taken = datetime(2026, 3, day, 8, tag).isoformat()
            coverage = 30.0 if tag == 10 else 70.0
            note = a_note(
                phone, f"{day}-{tag}.jpg", tag=tag, taken_at=taken, coverage=coverage, suspects=suspects
            )
            bring(book, note)

    list_ = read_looks(book)

    assert [(look.code, look.what) for look in list_] == [("A3", LookKind.SUSPECT), ("A1", LookKind.LAGGING)]
    assert read_looks(book, book.morning(date(2026, 3, 7))) == ()


@pytest.mark.parametrize("kind", LookKind)
def test_every_kind_of_look_has_words(kind: LookKind) -> None:
    assert kind.value == kind.value.lower()
    assert len(kind.value) > 3


def test_a_real_books_photo_in_doubt_is_to_be_taken_again_until_a_person_draws_its_canopy(
    book: Book, phone: Path
) -> None:
    for tag in (10, 11, 12):
        note = a_note(phone, f"{tag}.jpg", tag=tag, notes=["DOUBTFUL", "GLARE"] if tag == 11 else [])
        bring(book, note)

    (look,) = read_looks(book)
    assert (look.code, look.what) == ("A2", LookKind.DOUBTED)
    assert look.sentence == f"Today's photo is in doubt: {Reason.GLARE}."

    with book.writing() as db:
        db.execute("UPDATE score SET mended = 1")
    assert read_looks(book) == ()
