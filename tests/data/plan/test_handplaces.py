"""Places drawn on paper are taken when each is taken once; what is wrong is said of its line."""

import random

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from data.plan.blocks import ShelfPlaces
from data.plan.handplaces import HandPlaces, read_places, seats
from data.trial import CropPlan, Factor, Plan
from tests.data.plans import MEDIA, a_plan

ONE_CROP = (CropPlan(name="broccoli", read_on_day=9),)
HEAT = Factor(name="heat mat", levels=("with heat mat", "without heat mat"), by_shelf=True)
PLAN = a_plan(blocks=2, crops=ONE_CROP)  # peat mix, coir, fibre mat on shelves A and B


def read(*typed: str, plan: Plan = PLAN) -> HandPlaces:
    wanted = seats(plan)
    return read_places(plan, wanted, [*typed, *[""] * (len(wanted) - len(typed))])


def wrong(*typed: str, plan: Plan = PLAN) -> list[tuple[int, str]]:
    return [(problem.line, str(problem.words)) for problem in read(*typed, plan=plan).problems]


def test_every_tray_is_asked_for_block_by_block() -> None:
    asked = [(seat.block.name, seat.treatment) for seat in seats(PLAN)]

    assert asked == [(block.name, name) for block in PLAN.blocks for name in MEDIA.levels]


def test_a_block_that_stands_is_not_asked_for() -> None:
    first = PLAN.blocks[0].name

    assert {seat.block.name for seat in seats(PLAN, (first,))} == {PLAN.blocks[1].name}


def test_lots_are_read_as_they_were_drawn() -> None:
    filled = read("2", "3", "1", "B1", "b 3", "B-2").filled

    assert filled is not None
    assert [(shelf, [name for _, name in trays]) for _, shelf, trays in filled] == [
        ("A", ["fibre mat", "peat mix", "coir"]),
        ("B", ["peat mix", "fibre mat", "coir"]),
    ]


def test_until_all_are_there_nothing_is_taken_and_the_rest_is_counted() -> None:
    half = read("2", "3", "1")

    assert (half.open, half.filled, half.problems) == (3, None, ())


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        (("2", "2"), "Place A2 is given to two trays."),
        (("4",), "There is no place 4 in this block: it has 1 to 3 on shelf A."),
        (("0",), "There is no place 0 in this block"),
        (("B1",), "There is no place B1 in this block"),
        (("left",), "This is no place: type its number along the shelf."),
        (("-",), "This is no place"),
        (("²",), "This is no place"),
    ],
)
def test_what_is_wrong_is_said_of_its_line(typed: tuple[str, ...], words: str) -> None:
    ((line, said),) = wrong(*typed)

    assert line == len(typed) - 1
    assert words in said
    assert read(*typed, *["1"] * (6 - len(typed))).filled is None


def test_a_second_block_on_a_shelf_has_its_own_places() -> None:
    plan = a_plan(blocks=2, crops=ONE_CROP, shelves=(ShelfPlaces(name="A", places=6),))

    assert "it has 4 to 6 on shelf A" in wrong("1", "2", "3", "1", plan=plan)[0][1]
    assert read("1", "2", "3", "6", "4", "5", plan=plan).filled is not None


def test_a_whole_shelf_gets_one_setting() -> None:
    plan = a_plan(blocks=1, crops=ONE_CROP, factors=(MEDIA, HEAT))
    names = [seat.treatment for seat in seats(plan)]
    apart = [("A" if "without" in name else "B") + str(1 + n // 2) for n, name in enumerate(names)]

    assert read(*apart, plan=plan).filled is not None
    assert "This block stands on several shelves: type shelf and place, as A1." in wrong("1", plan=plan)[0][1]
    mixed = ["A1", "A2", *[""] * (len(names) - 2)]
    assert (
        "Shelf A is with heat mat already, and a whole shelf gets one setting."
        in wrong(*mixed, plan=plan)[0][1]
    )


@pytest.mark.parametrize("names", [("A", "B"), ("1", "2"), ("Shelf 1", "Shelf 2")])
def test_the_place_that_is_given_as_an_example_can_be_typed(names: tuple[str, str]) -> None:
    shelves = tuple(ShelfPlaces(name=name, places=6) for name in names)
    plan = a_plan(blocks=1, crops=ONE_CROP, factors=(MEDIA, HEAT), shelves=shelves)

    ((_, said),) = wrong("1", plan=plan)
    example = said.removesuffix(".").partition(", as ")[2]

    assert wrong(example, plan=plan) == []


@given(seed=st.integers(0, 10_000), blocks=st.integers(1, 3))
def test_any_order_of_the_lots_comes_back_as_it_was_drawn(seed: int, blocks: int) -> None:
    plan, lot = a_plan(blocks=blocks), random.Random(seed)
    wanted = seats(plan)
    typed = [str(n) for block in plan.blocks for n in lot.sample(range(1, 7), 6)]

    filled = read_places(plan, wanted, typed).filled

    assert filled is not None
    stands = {
        (block.name, place): tray for block, _, trays in filled for place, tray in enumerate(trays, start=1)
    }
    for seat, text in zip(wanted, typed, strict=True):
        assert stands[seat.block.name, int(text)] == (seat.crop, seat.treatment)


@given(st.lists(st.text(max_size=6) | st.sampled_from("123"), min_size=6, max_size=6))
@example(["2", "1", "3", "3", "1", "2"])
def test_whatever_is_typed_is_taken_whole_or_not_at_all(typed: list[str]) -> None:
    found = read(*typed)

    if found.filled is not None:
        assert sorted(len(trays) for _, _, trays in found.filled) == [3, 3]
    else:
        assert found.problems or found.open
