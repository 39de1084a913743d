"""One number a tray: what mold takes, what waits, and whose eye counts."""

from dataclasses import replace
from datetime import timedelta

import pytest

from data.desirability import MoldRule, ScoreRule
from data.records import Tray
from data.tables.trialrows import EyeGiven, PhotoNumbers, SuspectWord
from data.verdict.traynumbers import (
    NoNumber,
    day_of_most,
    eye_numbers,
    is_lost,
    lost_to_mold,
    mold_areas,
    yield_numbers,
)
from tests.data.builders import SOWN, a_kept_tray

LATER = SOWN + timedelta(days=9)
PHOTO = PhotoNumbers(
    tray_id=1, photo_id=1, taken_at=LATER, score_id=1, method="m", coverage=80.0, uniformity=80.0, green=80.0,
    pale=0.0, red=0.0, bed_share=None, bed_uniformity=None, reasons={},
)  # fmt: skip


def ruled(mold: MoldRule) -> ScoreRule:
    return ScoreRule(parts={}, mold=mold)


def thrown_away(number: int, why: str = "") -> Tray:
    return a_kept_tray(number, done_at=LATER, ended="thrown away", ended_why=why)


def word(tray: int, area_cm2: float | None, *, is_mold: bool = True) -> SuspectWord:
    return SuspectWord(
        tray_id=tray, photo_id=tray, taken_at=LATER, method="m", area_cm2=area_cm2, is_mold=is_mold,
        is_open=not is_mold, confidence=0.9,
    )  # fmt: skip


def by_eye(shows: int | None, value: float, *, blind: bool) -> EyeGiven:
    return EyeGiven(
        tray_id=1, photo_id=1, shows=shows, rater="R.", value=value, blind=blind, given_at=LATER,
        round_id=None, place=None,
    )  # fmt: skip


def test_of_several_patches_of_mold_the_largest_counts_and_one_without_area_counts_as_small() -> None:
    words = [word(1, 2.0), word(1, 7.0), word(1, 3.0), word(2, None), word(3, 9.0, is_mold=False)]

    assert mold_areas(words) == {1: 7.0, 2: 1.0}


@pytest.mark.parametrize(
    ("tray", "lost"),
    [
        (thrown_away(1, "Mold all over"), True),
        (thrown_away(1, "Schimmel am Rand"), True),
        (thrown_away(1, "mouldy"), True),
        (thrown_away(1, "dried out, no mold"), False),
        (thrown_away(1, "too long"), False),
        (a_kept_tray(1, done_at=LATER, ended="cut", ended_why="a little mold cut off"), False),
        (thrown_away(2), True),  # a person called a patch of it mold
    ],
)
def test_a_tray_is_lost_to_mold_by_a_persons_word_alone(tray: Tray, lost: bool) -> None:
    assert is_lost(tray, {2: 4.0}) is lost


def test_lost_trays_are_counted_of_all_trays_of_their_treatment() -> None:
    trays = [a_kept_tray(1), thrown_away(2, "mold"), thrown_away(3, "mold"), a_kept_tray(4)]
    treated = {1: "peat", 2: "mat", 3: "mat", 4: "mat"}

    found = lost_to_mold(treated, trays, {})

    assert [(one.treatment, one.lost, one.trays) for one in found] == [("peat", 0, 1), ("mat", 2, 3)]


@pytest.mark.parametrize(
    ("mold", "value", "why"),
    [
        (MoldRule.ZERO, 0.0, None),
        (MoldRule.BY_AREA, 0.0, None),
        (MoldRule.APART, None, NoNumber.APART),
    ],
)
def test_a_tray_thrown_away_for_mold_yields_nothing_unless_it_stands_apart(
    mold: MoldRule, value: float | None, why: NoNumber | None
) -> None:
    (found,) = yield_numbers([thrown_away(1, "mold")], {}, [], ruled(mold))

    assert (found.value, found.why_none, found.still_to_come) == (value, why, False)


def test_what_was_weighed_counts_though_there_was_mold() -> None:
    (found,) = yield_numbers([thrown_away(1, "mold")], {1: 210.0}, [], ruled(MoldRule.ZERO))

    assert (found.value, found.why_none) == (210.0, None)


def test_a_moldy_tray_that_still_stands_is_no_zero_yet_and_one_thrown_away_is_a_gap() -> None:
    stands, gone = yield_numbers(
        [a_kept_tray(1), thrown_away(2, "no light")], {}, [word(1, 5.0)], ruled(MoldRule.ZERO)
    )

    assert (stands.value, stands.why_none, stands.still_to_come) == (None, NoNumber.NOT_WEIGHED, True)
    assert (gone.value, gone.why_none, gone.still_to_come) == (None, NoNumber.THROWN_AWAY, False)


def test_a_tray_that_was_cut_though_mold_was_taken_out_is_not_weighed_and_no_zero() -> None:
    cut = a_kept_tray(1, done_at=LATER, ended="cut")

    (found,) = yield_numbers([cut], {}, [word(1, 2.0)], ruled(MoldRule.ZERO))

    assert (found.value, found.why_none) == (None, NoNumber.NOT_WEIGHED)


def test_where_there_are_blind_scores_by_eye_only_these_count() -> None:
    trays = [a_kept_tray(1), a_kept_tray(2)]
    given = [by_eye(1, 90.0, blind=False), by_eye(1, 60.0, blind=True), by_eye(1, 70.0, blind=True)]

    one, other = eye_numbers(trays, [*given, by_eye(2, 80.0, blind=False), by_eye(None, 5.0, blind=True)])

    assert one.value == 65.0
    assert (other.value, other.why_none) == (None, NoNumber.NOT_LOOKED_AT)


def test_a_blind_score_of_another_crops_tray_takes_nothing_away() -> None:
    (found,) = eye_numbers([a_kept_tray(1)], [by_eye(1, 90.0, blind=False), by_eye(8, 60.0, blind=True)])

    assert found.value == 90.0


def test_the_day_of_most_photos_counts_trays_and_of_equal_days_the_last() -> None:
    def seen(tray: int, day: int) -> PhotoNumbers:
        return replace(PHOTO, tray_id=tray, taken_at=SOWN + timedelta(days=day))

    trays = [a_kept_tray(1), a_kept_tray(2)]

    assert day_of_most(trays, [seen(1, 5), seen(1, 5), seen(1, 5), seen(1, 7), seen(2, 7), seen(2, 8)]) == 7
    assert day_of_most(trays, [seen(1, 5), seen(1, 8), seen(2, 7)]) == 8
    assert day_of_most(trays, [seen(1, -1), seen(2, -1), seen(1, 0)]) == 0  # -1: before they were sown
    assert day_of_most(trays, [seen(9, 5)]) is None
