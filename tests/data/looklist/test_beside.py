"""Beside: a tray's number is counted as those of the others can be, and wall that is seen is no gap."""

import pytest

from data.looklist.beside import COVERAGE, GAPS, set_beside
from data.looklist.standing import Standing
from data.records import PhotoId


def a_day(coverage: float, bed_share: float | None = None, gap_share: float | None = 0.0) -> Standing:
    return Standing(PhotoId(1), "plain 1", coverage, 90.0, 0.0, gap_share, None, None, b"", bed_share)


def test_coverage_is_counted_by_the_bed_where_every_tray_knows_it() -> None:
    mine, others = a_day(45.0, 50.0), [a_day(80.0, 90.0), a_day(70.0, 80.0), a_day(60.0, 75.0)]

    beside = set_beside(mine, others, COVERAGE, 3)

    assert (beside.mine, beside.middle, beside.of_bed) == (50.0, 80.0, True)
    # median distance from the middle 5 (of 0, 5, 10); times 1.4826 (normal distribution, textbook value)
    assert beside.spread == pytest.approx(5 * 1.4826)


@pytest.mark.parametrize("lacking", ["mine", "theirs"])
def test_one_tray_that_does_not_know_its_bed_has_all_counted_by_the_inner_area(lacking: str) -> None:
    mine = a_day(45.0, None if lacking == "mine" else 50.0)
    others = [a_day(80.0, None if lacking == "theirs" else 90.0), a_day(70.0, 80.0)]

    beside = set_beside(mine, others, COVERAGE, 2)

    assert (beside.mine, beside.middle, beside.of_bed) == (45.0, 75.0, False)


def test_fewer_others_than_asked_for_have_no_middle() -> None:
    beside = set_beside(a_day(45.0), [a_day(80.0)], COVERAGE, 2)

    assert (beside.mine, beside.middle, beside.spread) == (45.0, None, 0.0)


@pytest.mark.parametrize(
    ("day", "gaps"),
    [
        (a_day(45.0, 50.0, gap_share=30.0), 20.0),  # the bed is 90 % of the inner area, the wall 10 %
        (a_day(45.0, 50.0, gap_share=6.0), 0.0),  # all of it may be wall
        (a_day(0.0, 0.0, gap_share=30.0), 30.0),  # nothing grows, so nothing tells the wall
        (a_day(45.0, 50.0, gap_share=None), None),
    ],
)
def test_wall_that_is_seen_is_taken_off_the_gaps(day: Standing, gaps: float | None) -> None:
    assert GAPS.of(day, of_bed=True) == pytest.approx(gaps)
    assert GAPS.of(day, of_bed=False) == day.gap_share
