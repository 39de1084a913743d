"""Places are drawn by lot within blocks, the same from a seed, and no medium is always at the window."""

from collections import Counter
from itertools import permutations
from math import sqrt
from statistics import mean

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.plan import drawing
from data.plan.blocks import ShelfPlaces
from data.plan.drawing import Draw, NoTagsLeft, draw_of, draw_text, draw_trial, window_counts
from data.trial import CropPlan, Factor, crossed
from tests.data.plans import MEDIA, a_plan

FEED = Factor(name="feed", levels=("none", "weekly"))
LONG_SHELVES = tuple(ShelfPlaces(name=name, places=12) for name in "ABCDEF")
ONE_CROP = (CropPlan(name="broccoli", read_on_day=9),)


@given(seed=st.integers(0, 2**31 - 1))
@settings(max_examples=25, deadline=None)
def test_every_block_holds_every_crop_on_every_medium_once(seed: int) -> None:
    plan = a_plan()

    draw = draw_trial(plan, seed)

    for block in plan.blocks:
        there = [place for place in draw.places if place.block == block.name]
        assert Counter((place.crop, place.treatment) for place in there) == Counter(
            (crop.name, treatment.name) for crop in plan.crops for treatment in plan.treatments
        )
        assert sorted(place.position for place in there) == [1, 2, 3, 4, 5, 6]


@given(seed=st.integers(0, 2**31 - 1))
@settings(max_examples=25, deadline=None)
def test_no_medium_has_the_window_more_often_than_its_share(seed: int) -> None:
    plan = a_plan(blocks=6)

    draw = draw_trial(plan, seed)

    assert draw.loosened == 0
    assert window_counts(plan, draw.places) == {"peat mix": 2, "coir": 2, "fibre mat": 2}


@given(seed=st.integers(0, 2**31 - 1))
@settings(max_examples=15, deadline=None)
def test_no_medium_of_several_treatments_has_the_window_more_often_than_its_share(seed: int) -> None:
    """Three windows for two treatments of each of three media: one alone could get two of them."""
    plan = a_plan(blocks=3, factors=(MEDIA, FEED), shelves=LONG_SHELVES)

    counts = window_counts(plan, draw_trial(plan, seed).places)

    for medium in MEDIA.levels:
        assert sum(count for name, count in counts.items() if name.startswith(medium)) == 1


def test_the_window_is_at_the_end_that_was_said() -> None:
    shelves = [ShelfPlaces(name=name, places=6, window_end="last") for name in "ABC"]
    plan = a_plan(blocks=3, shelves=shelves)

    for draw in (draw_trial(plan, seed) for seed in range(10)):
        last = sorted(place.treatment for place in draw.places if place.position == 6)
        assert last == sorted(MEDIA.levels)
        assert window_counts(plan, draw.places) == {"peat mix": 1, "coir": 1, "fibre mat": 1}


def test_shelves_without_a_window_count_for_none() -> None:
    shelves = [ShelfPlaces(name=name, places=6, window_end="") for name in "ABC"]
    plan = a_plan(blocks=3, shelves=shelves)

    assert window_counts(plan, draw_trial(plan, 4).places) == {"peat mix": 0, "coir": 0, "fibre mat": 0}


def mean_places(draw: Draw) -> dict[str, float]:
    """Of each treatment the mean distance from the middle of its shelf, in places."""
    found: dict[str, list[float]] = {}
    for place in draw.places:
        there = [one.position for one in draw.places if (one.block, one.shelf) == (place.block, place.shelf)]
        found.setdefault(place.treatment, []).append(place.position - mean(there))
    return {name: mean(places) for name, places in found.items()}


@pytest.mark.parametrize("blocks", [3, 4, 6])
def test_no_treatment_stands_mostly_at_one_end_of_its_shelves(blocks: int) -> None:
    """A place of six, drawn by lot, has a standard deviation of sqrt(35/12); a mean of n that by sqrt(n)."""
    plan = a_plan(blocks=blocks)
    limit = sqrt(35 / 12 / (2 * blocks))  # two crops

    draws = [draw_trial(plan, seed) for seed in range(60)]

    furthest = max(abs(one) for draw in draws for one in mean_places(draw).values())
    assert all(draw.loosened == 0 for draw in draws)
    assert 0.8 * limit < furthest <= limit + 1e-9


def test_where_no_order_is_fair_the_mean_place_gives_way_by_halves_and_the_window_at_the_third_step(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Two drawings a step, six treatments, each once at a window: most steps are needed sooner or later."""
    monkeypatch.setattr(drawing, "TRIES", 2)
    plan = a_plan(blocks=6, factors=(MEDIA, FEED), shelves=LONG_SHELVES)
    usual = sqrt((12 * 12 - 1) / 12 / 12)  # of the mean of twelve places of twelve

    furthest: dict[int, float] = {}
    windows: dict[int, int] = {}
    for draw in (draw_trial(plan, seed) for seed in range(80)):
        step = draw.loosened
        off = max(abs(one) for one in mean_places(draw).values()) / usual
        furthest[step] = max(furthest.get(step, 0.0), off)
        windows[step] = max(windows.get(step, 0), *window_counts(plan, draw.places).values())

    assert windows == {0: 1, 1: 1, 2: 1, 3: 2, 4: 2, 5: 2}
    assert all(off <= 1 + step / 2 + 1e-9 for step, off in furthest.items())
    assert all(furthest[step] > 1 + (step - 1) / 2 for step in (1, 3, 4))


def test_three_places_of_a_treatment_are_enough_for_their_mean_to_count() -> None:
    """Three shelves of three: the first, or the last, place on each is out by 1, over the limit of 0.47."""
    shelves = [ShelfPlaces(name=name, places=3, window_end="") for name in "ABC"]
    plan = a_plan(blocks=3, crops=ONE_CROP, shelves=shelves)

    furthest = {abs(one) for seed in range(60) for one in mean_places(draw_trial(plan, seed)).values()}

    assert max(furthest) <= sqrt(8 / 12 / 3)


def test_of_two_places_of_a_treatment_the_lot_alone_decides() -> None:
    """One crop in two blocks without a window: 36 ways, of which 6 repeat the first block's order."""
    shelves = [ShelfPlaces(name=name, places=3, window_end="") for name in "AB"]
    plan = a_plan(blocks=2, crops=ONE_CROP, shelves=shelves)

    orders = {tuple(place.treatment for place in draw_trial(plan, seed).places) for seed in range(600)}

    assert len(orders) == 36


def test_the_same_seed_draws_the_same_places() -> None:
    """Places of seed 1, written down once: a kept seed must draw them again in years to come."""
    draw = draw_trial(a_plan(blocks=1, crops=ONE_CROP), 1)

    assert draw == draw_trial(a_plan(blocks=1, crops=ONE_CROP), 1)
    assert [place.treatment for place in draw.places] == ["fibre mat", "coir", "peat mix"]


def test_all_orders_are_as_likely() -> None:
    """A block of three has six orders; chi-square of 6,000 drawings, 5 df, 0.1 % limit 20.5 (any table)."""
    plan = a_plan(blocks=1, crops=ONE_CROP)
    orders = Counter(
        tuple(place.treatment for place in draw_trial(plan, seed).places) for seed in range(6000)
    )

    assert len(orders) == 6
    assert sum((count - 1000) ** 2 / 1000 for count in orders.values()) < 20.5


def test_codes_and_tags_are_free_ones() -> None:
    draw = draw_trial(a_plan(blocks=1, crops=ONE_CROP), 7, taken_tags=(10, 12), taken_codes=("A2",))

    assert [(place.code, place.tag_number) for place in draw.places] == [("A1", 11), ("A2/2", 13), ("A3", 14)]


def test_no_two_places_of_a_drawing_get_one_code() -> None:
    """The eleventh place of shelf A and the first of shelf A1."""
    shelves = [ShelfPlaces(name="A", places=12), ShelfPlaces(name="A1", places=12)]

    draw = draw_trial(a_plan(blocks=2, factors=(MEDIA, FEED), shelves=shelves), 1)

    codes = [place.code for place in draw.places]
    assert {"A11", "A11/2", "A12", "A12/2"} <= set(codes)
    assert len(codes) == len(set(codes)) == 24


def test_tags_of_drawings_that_wait_to_be_sown_are_used_last() -> None:
    plan = a_plan(blocks=1)

    draw = draw_trial(plan, 1, taken_tags=range(16, 587), promised_tags=(10, 12))

    assert [place.tag_number for place in draw.places] == [11, 13, 14, 15, 10, 12]


def test_codes_of_later_rounds_tell_the_round() -> None:
    draw = draw_trial(a_plan(blocks=4), 7)

    assert draw.places[-1].code == "A6-2"


def test_places_that_are_sown_stay() -> None:
    short = a_plan(blocks=2)
    first = draw_trial(short, 1)

    longer = draw_trial(a_plan(blocks=3), 2, kept=first.places)

    assert longer.places[:12] == first.places
    assert {place.block for place in longer.places[12:]} == {"shelf C"}
    assert len({place.tag_number for place in longer.places}) == 18


def test_a_setting_of_whole_shelves_is_drawn_for_shelves() -> None:
    """Three settings on the three shelves of a block have six orders; 90 drawings show them all."""
    heat = Factor(name="heat mat", levels=("off", "at night", "all day"), by_shelf=True)
    shelves = [ShelfPlaces(name=name, places=3) for name in "ABC"]
    plan = a_plan(blocks=1, factors=(heat, MEDIA), shelves=shelves, crops=ONE_CROP)

    orders = set()
    for draw in (draw_trial(plan, seed) for seed in range(90)):
        there: dict[str, set[str]] = {"A": set(), "B": set(), "C": set()}
        for place in draw.places:
            there[place.shelf].add(plan.treatment(place.treatment).settings["heat mat"])
        assert all(len(settings) == 1 for settings in there.values())
        orders.add(tuple(*zip(*there.values(), strict=True)))

    assert orders == set(permutations(heat.levels))


def test_a_shelf_whose_setting_no_treatment_has_stays_empty() -> None:
    heat = Factor(name="heat mat", levels=("off", "on"), by_shelf=True)
    shelves = [ShelfPlaces(name=name, places=3) for name in "AB"]
    cold = tuple(one for one in crossed((heat, MEDIA)) if one.settings["heat mat"] == "off")
    plan = a_plan(blocks=1, factors=(heat, MEDIA), treatments=cold, shelves=shelves, crops=ONE_CROP)

    draws = [draw_trial(plan, seed) for seed in range(20)]

    assert {frozenset(place.shelf for place in draw.places) for draw in draws} == {
        frozenset("A"),
        frozenset("B"),
    }
    assert all(len(draw.places) == 3 for draw in draws)


def test_more_trays_at_one_time_than_tags_are_refused() -> None:
    with pytest.raises(NoTagsLeft):
        draw_trial(a_plan(), 1, taken_tags=range(10, 580))


def test_a_later_round_carries_the_tags_of_an_earlier_one_once_no_other_is_left() -> None:
    plan = a_plan(blocks=4)  # three shelves: 18 trays, then 6
    assert [block.round for block in plan.blocks] == [1, 1, 1, 2]

    draw = draw_trial(plan, 1, taken_tags=range(30, 587))  # 10 to 29 are left

    first, second = ([p.tag_number for p in draw.places if p.round == turn] for turn in (1, 2))
    assert first == list(range(10, 28))
    assert second == [28, 29, 10, 11, 12, 13]


def test_six_hundred_trays_in_rounds_are_no_more_than_the_tags() -> None:
    draw = draw_trial(a_plan(blocks=100), 1)  # 600 trays, 18 at a time

    by_round: dict[int, list[int]] = {}
    for place in draw.places:
        by_round.setdefault(place.round, []).append(place.tag_number)
    assert len(draw.places) == 600
    assert all(len(tags) == len(set(tags)) for tags in by_round.values())
    assert {tag for tags in by_round.values() for tag in tags} == set(range(10, 587))


def test_tags_of_sown_trays_that_have_ended_come_free_for_blocks_added_later() -> None:
    plan = a_plan(blocks=4)
    sown = [place for place in draw_trial(plan, 1).places if place.round == 1]
    elsewhere = set(range(28, 587))

    longer = draw_trial(plan, 2, kept=sown, taken_tags=elsewhere)

    assert [place.tag_number for place in longer.places[18:]] == list(range(10, 16))


def test_tags_of_sown_trays_that_still_grow_are_not_given_to_a_later_round() -> None:
    plan = a_plan(blocks=4)
    sown = [place for place in draw_trial(plan, 1).places if place.round == 1]
    growing = [place.tag_number for place in sown]

    with pytest.raises(NoTagsLeft):
        draw_trial(plan, 2, kept=sown, taken_tags={*growing, *range(28, 582)})  # five are left


def test_a_drawing_comes_back_from_its_text() -> None:
    draw = draw_trial(a_plan(), 5)

    assert draw_of(5, draw_text(draw)) == draw
