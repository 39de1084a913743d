"""Blocks are laid on shelves and sowing days, and their cost is counted."""

from datetime import date

import pytest

from data.plan.blocks import ShelfPlaces, WhyNoBlocks, block_size, cost_of, lay_blocks
from data.trial import CropPlan, Factor, crossed
from tests.data.plans import MEDIA, SHELVES, SOWING, a_plan


def test_one_block_a_shelf_while_there_are_shelves() -> None:
    layout = lay_blocks(SHELVES, 3, 6, SOWING)

    assert [block.name for block in layout.blocks] == ["shelf A", "shelf B", "shelf C"]
    assert layout.rounds == 1


def test_more_blocks_than_shelves_are_sown_in_rounds() -> None:
    layout = lay_blocks(SHELVES, 4, 6, SOWING, round_days=10)

    assert layout.rounds == 2
    assert layout.blocks[3].name == "shelf A, round 2"
    assert layout.blocks[3].sow_on == date(2026, 3, 12)


def test_a_long_shelf_holds_two_blocks_side_by_side() -> None:
    layout = lay_blocks([ShelfPlaces(name="A", places=12)], 2, 6, SOWING)

    assert [block.first_place for block in layout.blocks] == [1, 7]
    assert layout.blocks[1].name == "shelf A, part 2"
    assert [block.window_end for block in layout.blocks] == ["first", ""]


@pytest.mark.parametrize(
    ("end", "parts"), [("first", ["first", "", ""]), ("last", ["", "", "last"]), ("", ["", "", ""])]
)
def test_only_the_part_that_reaches_the_window_lies_by_it(end: str, parts: list[str]) -> None:
    layout = lay_blocks([ShelfPlaces(name="A", places=19, window_end=end)], 3, 6, SOWING)

    assert [block.window_end for block in layout.blocks] == parts
    assert [block.first_place for block in layout.blocks] == [1, 7, 13]


def test_a_set_of_shelves_lies_by_the_window_as_its_own_first_shelf_does() -> None:
    ends = {"A": "first", "B": "last", "C": "last", "D": "first"}
    shelves = [ShelfPlaces(name=name, places=6, window_end=end) for name, end in ends.items()]

    layout = lay_blocks(shelves, 2, 3, SOWING, settings=2)

    assert [block.name for block in layout.blocks] == ["shelves A and B", "shelves C and D"]
    assert [(block.first_place, block.window_end) for block in layout.blocks] == [(1, "first"), (1, "last")]


def test_every_shelf_is_used_once_before_a_second_part_of_a_long_one() -> None:
    shelves = [ShelfPlaces(name="A", places=12), ShelfPlaces(name="B", places=6)]

    layout = lay_blocks(shelves, 4, 6, SOWING)

    assert [block.name for block in layout.blocks] == [
        "shelf A, part 1, round 1",
        "shelf B, round 1",
        "shelf A, part 2, round 1",
        "shelf A, part 1, round 2",
    ]
    assert [block.round for block in layout.blocks] == [1, 1, 1, 2]


def test_a_block_is_never_split_over_two_shelves() -> None:
    layout = lay_blocks([ShelfPlaces(name="A", places=4)], 2, 6, SOWING)

    assert (layout.blocks, layout.rounds) == ((), 0)
    assert layout.why_none is WhyNoBlocks.NO_SHELF


def test_settings_of_whole_shelves_take_a_shelf_each() -> None:
    layout = lay_blocks([ShelfPlaces(name=name, places=6) for name in "ABCDE"], 2, 3, SOWING, settings=2)

    assert [block.shelves for block in layout.blocks] == [("A", "B"), ("C", "D")]


def test_one_shelf_cannot_have_two_settings() -> None:
    layout = lay_blocks([ShelfPlaces(name="A", places=6)], 2, 3, SOWING, settings=2)

    assert layout.why_none is WhyNoBlocks.FEW_SHELVES


def test_blocks_added_later_go_on_after_the_last_round() -> None:
    first = lay_blocks(SHELVES, 3, 6, SOWING)

    more = lay_blocks(SHELVES, 2, 6, date(2026, 3, 20), earlier=first.blocks)

    assert [block.name for block in more.blocks[3:]] == ["shelf A, round 2", "shelf B, round 2"]
    assert more.blocks[:3] == first.blocks
    assert (more.rounds, [block.round for block in more.blocks]) == (2, [1, 1, 1, 2, 2])


def test_cost_counts_trays_seed_and_days() -> None:
    cost = cost_of(a_plan(blocks=4))

    assert (cost.trays, cost.most_at_once, cost.rounds) == (24, 18, 2)
    assert cost.seed_g == {"broccoli": 216.0, "radish": 420.0}
    assert (cost.begins, cost.ends) == (SOWING, date(2026, 3, 25))


def test_seed_of_a_crop_without_a_sowing_rate_is_not_known() -> None:
    cost = cost_of(a_plan(crops=(CropPlan(name="pea", read_on_day=10),)))

    assert cost.seed_g == {"pea": None}


def test_a_shelf_takes_its_share_of_a_block() -> None:
    mat = Factor(name="heat mat", levels=("without", "with"), by_shelf=True)

    assert block_size(2, crossed((MEDIA,))) == 6
    assert block_size(2, crossed((MEDIA, mat)), of_shelves=mat) == 6


def test_two_trays_of_each_treatment_take_twice_the_room() -> None:
    assert block_size(2, crossed((MEDIA,)), per_block=2) == 12
    mat = Factor(name="heat mat", levels=("without", "with"), by_shelf=True)
    assert block_size(2, crossed((MEDIA, mat)), 2, of_shelves=mat) == 12


def test_shelves_of_one_block_that_hold_unlike_many_trays_need_room_for_the_fullest() -> None:
    mat = Factor(name="heat mat", levels=("without", "with"), by_shelf=True)
    but_one = [one for one in crossed((MEDIA, mat)) if one.settings != {"medium": "coir", "heat mat": "with"}]

    assert block_size(2, but_one, of_shelves=mat) == 6
