"""The look list's quick ways tell what the plain ones do, photo by photo and cell by cell."""

from datetime import timedelta
from statistics import median

from hypothesis import given
from hypothesis import strategies as st

from data.look import LookKind
from data.looklist.places import COLUMNS, ROWS, cells_in, lost_patch
from data.looklist.standing import Standing, by_day
from data.numbers import PhotoId
from data.records import DayNumbers
from tests.data.builders import numbers
from tests.data.looklist.test_stand_looks import TODAY, even, packed, rack, side, told
from vision.reason import Reason

LEAST = 25.0
LEVELS = st.lists(st.sampled_from([0.0, 10.0, 64.99, 65.0, 65.01, 90.0]), min_size=72, max_size=72)
PHOTO = st.builds(
    lambda day, coverage, sure, method, corrected, doubts, refusal: numbers(
        1, day, coverage=coverage, sure=sure, method=method, corrected=corrected, doubts=doubts,
        refusal=refusal, lightness=40.0, dark_green=0.25, cells=packed(even()), bed_share=coverage,
    ),
    st.integers(1, 4),
    st.none() | st.sampled_from([0.0, 10.0, 20.0, 30.0]),
    st.booleans(),
    st.sampled_from(["plain 1", "plain 2"]),
    st.booleans(),
    st.sampled_from([(), (Reason.GLARE,)]),
    st.sampled_from([None, None, Reason.BLURRED]),
)  # fmt: skip


def plainly_lost(before: bytes, now: tuple[bytes, bytes], *, turned: bool) -> set[int]:
    """Cells that lack `LEAST` on the better of two days."""
    old = cells_in(before)[::-1] if turned else cells_in(before)
    best = map(max, cells_in(now[0]), cells_in(now[1]))
    return {n for n, (had, has) in enumerate(zip(old, best, strict=True)) if has <= had - LEAST}


def largest(cells: set[int]) -> int:
    """Cells in the largest group whose cells touch along a side."""
    rest, most = set(cells), 0
    while rest:
        group = {rest.pop()}
        while touching := {
            cell
            for cell in rest
            for other in group
            if abs(cell // COLUMNS - other // COLUMNS) + abs(cell % COLUMNS - other % COLUMNS) == 1
        }:
            group |= touching
            rest -= touching
        most = max(most, len(group))
    return most


@given(LEVELS, LEVELS, LEVELS)
def test_a_patch_is_as_large_as_looking_at_every_cell_tells(
    before: list[float], first: list[float], second: list[float]
) -> None:
    old, days = packed(before), (packed(first), packed(second))
    straight, turned = (plainly_lost(old, days, turned=way) for way in (False, True))
    patch = lost_patch(old, days, LEAST)

    assert len(patch) == min(largest(straight), largest(turned))
    assert set(patch) <= (straight | turned)
    assert all(0 <= cell < ROWS * COLUMNS for cell in patch)


@given(st.lists(PHOTO, max_size=8))
def test_a_day_is_told_as_by_asking_each_number_by_its_name(photos: list[DayNumbers]) -> None:
    photos = sorted(photos, key=lambda one: one.taken_at)
    photos = [one._replace(photo_id=PhotoId(n)) for n, one in enumerate(photos)]
    told_of = by_day(photos)
    usable = [one for one in photos if one.sure and one.coverage is not None and one.refusal is None]
    usable = [one for one in usable if one.method == usable[-1].method]

    assert list(told_of) == sorted({one.taken_at.date() for one in usable})
    for day, standing in told_of.items():
        mine = [one for one in usable if one.taken_at.date() == day]
        mine = [one for one in mine if not one.doubts] or mine
        coverages = [one.coverage for one in mine if one.coverage is not None]
        right = any(one.corrected for one in mine)
        assert standing == Standing(
            photo_id=mine[-1].photo_id, method=usable[-1].method or "", coverage=median(coverages),
            uniformity=mine[-1].uniformity, edge_deficit=mine[-1].edge_deficit, gap_share=mine[-1].gap_share,
            lightness=40.0 if right else None, dark_green=0.25 if right else None,
            cells=mine[-1].cells, bed_share=median(coverages),
        )  # fmt: skip


def test_a_side_that_is_surely_thin_is_named_whatever_its_mates_do() -> None:
    days = {day: {"cells": side("near", 40.0), "edge_deficit": None} for day in (6, 7, 8)}
    mates = packed([c / 100 for c in [9000] * 60 + [3000] * 12])
    found = told(rack(days, cells=mates, edge_deficit=None))

    assert [(one.what, str(one.sentence)[:13]) for one in found if one.tray_id == 1] == [
        (LookKind.EDGE, "The near side")
    ]
    assert all(one.since >= TODAY - timedelta(days=2) for one in found)
