"""Shelves: tiles stand beside each other, never over each other, and each is found where it stands."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gui.bench.shelves import Box, ShelfPlan, TileSize, plan_shelves

SIZE = TileSize(least_width=150, most_width=260, text_height=70, head_height=36, gap=12)
racks = st.lists(st.integers(1, 30), min_size=1, max_size=8)
widths = st.integers(100, 2600)


def test_six_trays_a_shelf_fill_the_width() -> None:
    plan = plan_shelves([6, 6], 1026, SIZE)
    assert (plan.columns, plan.tile_width) == (6, 161)
    assert plan.tile(0) == Box(0, 36, 161, 150)
    assert plan.tile(6).y == plan.tops[1] + 36


def test_few_trays_do_not_grow_without_end() -> None:
    assert plan_shelves([1], 2000, SIZE).tile_width == SIZE.most_width


def test_a_shelf_without_trays_is_our_mistake() -> None:
    with pytest.raises(ValueError, match="at least one tray"):
        plan_shelves([3, 0], 800, SIZE)


def test_an_empty_rack_has_no_height() -> None:
    plan = plan_shelves([], 800, SIZE)
    assert (plan.height, list(plan.between(0, 500))) == (0, [])


@given(racks, widths)
def test_each_tile_is_found_at_its_middle_and_at_its_corners(counts: list[int], width: int) -> None:
    plan = plan_shelves(counts, width, SIZE)
    for number in range(sum(counts)):
        box = plan.tile(number)
        assert plan.at(box.x + box.width // 2, box.y + box.height // 2) == number
        assert plan.at(box.x, box.y) == number
        assert plan.at(box.x + box.width - 1, box.y + box.height - 1) == number


@given(racks, widths)
def test_nothing_is_wider_than_the_view_and_nothing_lies_below_the_end(counts: list[int], width: int) -> None:
    plan = plan_shelves(counts, width, SIZE)
    boxes = [plan.tile(number) for number in range(sum(counts))]
    assert max(box.x + box.width for box in boxes) <= width
    assert max(box.y + box.height for box in boxes) <= plan.height


@given(racks, widths, st.integers(0, 5000), st.integers(0, 900))
def test_what_is_seen_is_painted_and_little_more(
    counts: list[int], width: int, top: int, height: int
) -> None:
    plan = plan_shelves(counts, width, SIZE)
    painted = plan.between(top, top + height)
    boxes = [plan.tile(number) for number in range(sum(counts))]
    seen = [n for n, box in enumerate(boxes) if box.y <= top + height and box.y + box.height > top]
    assert set(seen) <= set(painted)
    assert len(painted) <= len(seen) + 2 * plan.columns


@given(racks, widths, st.data())
def test_down_and_up_lead_through_the_whole_rack(counts: list[int], width: int, data: st.DataObject) -> None:
    plan = plan_shelves(counts, width, SIZE)
    number = data.draw(st.integers(0, sum(counts) - 1))
    lower = plan.below(number)
    assert plan.tile(lower).y >= plan.tile(number).y
    assert lower != number or is_in_last_row(plan, number)
    upper = plan.above(number)
    assert plan.tile(upper).y < plan.tile(number).y or upper == number


def is_in_last_row(plan: ShelfPlan, number: int) -> bool:
    return plan.tile(number).y == plan.tile(sum(plan.counts) - 1).y


def test_down_from_the_last_row_goes_to_the_next_shelf() -> None:
    plan = plan_shelves([7, 2], 500, SIZE)
    assert plan.columns == 3
    assert [plan.below(n) for n in (0, 3, 4, 5, 6, 7)] == [3, 6, 6, 6, 7, 7]
    assert [plan.above(n) for n in (8, 7, 6, 2)] == [6, 6, 3, 2]
