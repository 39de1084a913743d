"""Footprints: what must hold whatever the numbers are, and how long it takes."""

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.footprint import Bill, Yield, differences, footprints
from data.materials.bill import PEAT, bills_of
from data.medium.factors import DEFAULTS, KINDS, Factor, chosen, wrong_factor
from data.statistics.budget import Range, Term

POSITIVE = st.floats(0.01, 100.0)
DRAWS = 4000


def a_factor(name: str = "peat", value: float | None = 0.6, **special: object) -> Factor:
    ordinary = {
        "low": None if value is None else 0.9 * value,
        "high": None if value is None else 1.1 * value,
        "unit": KINDS[name].unit if name in KINDS else "",
        "source": "own scale",
        "medium": "peat mix",
    }
    return Factor(name=name, value=value, **(ordinary | special))


def a_range(middle: float) -> Range:
    return Range(0.8 * middle, middle, 1.3 * middle)


@settings(max_examples=25, deadline=None)
@given(km=POSITIVE, more=POSITIVE, mass=POSITIVE)
def test_more_transport_never_lowers_the_footprint(km: float, more: float, mass: float) -> None:
    def total(way: float) -> float:
        own = [a_factor(value=mass / 10), a_factor("truck way", way)]
        bills = bills_of(own, ["peat mix"], {})
        return footprints(bills.bills, bills.inputs, DRAWS)[0].mean

    assert total(km + more) >= total(km)


@settings(max_examples=25, deadline=None)
@given(one=POSITIVE, other=POSITIVE, shared=POSITIVE)
def test_a_paired_difference_is_never_wider_where_inputs_are_shared(
    one: float, other: float, shared: float
) -> None:
    inputs = {"one": a_range(one), "other": a_range(other), "truck": a_range(shared)}
    bills = [Bill(medium=name, terms=(Term("way", (name, "truck")),)) for name in ("one", "other")]

    paired = differences(bills, inputs, "one", DRAWS)[0]
    apart = differences(bills, inputs, "one", DRAWS, paired=False)[0]

    assert paired.high - paired.low <= 1.05 * (apart.high - apart.low)  # draws scatter by some per cent


def test_what_both_media_share_cancels_to_nothing() -> None:
    inputs = {"way": a_range(5.0), "truck": a_range(0.1)}
    bills = [Bill(medium=name, terms=(Term("way", ("way", "truck")),)) for name in ("mat", "coir")]

    found = differences(bills, inputs, "mat", DRAWS)[0]

    assert (found.low, found.mean, found.high) == pytest.approx((0, 0, 0), abs=1e-12)


def test_five_media_with_100_000_draws_take_less_than_half_a_second() -> None:
    media = [f"medium {n}" for n in range(5)]
    names = ("peat", "perlite", "coir", "truck way", "ship way", "plastic tray", "tray uses")
    own = [a_factor(name, 3.0, medium=medium) for medium in media for name in names]
    bills = bills_of(own, media, {name: Yield(mean=0.3, sd=0.02) for name in media})
    footprints(bills.bills[:1], bills.inputs, 10)  # numpy is loaded

    begin = time.process_time()
    found = footprints(bills.bills, bills.inputs)
    off = differences(bills.bills, bills.inputs, media[0])

    assert len(found) == 5
    assert len(off) == 4
    assert time.process_time() - begin < 2 * 0.5  # twice: the machine of the tests is shared


def test_without_yield_there_is_no_number_by_the_kg_and_a_sentence() -> None:
    bills = bills_of([a_factor()], ["peat mix"], {"peat mix": Yield(mean=0.0, sd=0.0)})

    found = footprints(bills.bills, bills.inputs, DRAWS)[0]

    assert found.per_kg is None
    assert "zero" in str(found.reason)


def test_a_yield_that_may_be_nearly_nothing_makes_a_kg_dear_and_not_endless() -> None:
    """A cut below a fiftieth of the mean counts as that much (common practice: no division by nothing)."""
    bill = Bill(medium="mat", terms=(Term("way", ("truck",)),), fresh=Yield(mean=0.25, sd=0.25))
    found = footprints([bill], {"truck": Range(3.0, 3.0, 3.0)}, DRAWS)[0]

    assert found.per_kg is not None
    low, median, high = found.per_kg
    assert high == pytest.approx(3.0 / (0.25 / 50))
    assert median == pytest.approx(3.0 / 0.25, rel=0.1)
    assert low == pytest.approx(3.0 / (0.25 + 1.96 * 0.25), rel=0.1)


def test_a_difference_of_numbers_without_a_range_has_no_largest_doubt() -> None:
    inputs = {"one": Range(2.0, 2.0, 2.0), "other": Range(3.0, 3.0, 3.0)}
    bills = [Bill(medium=name, terms=(Term("way", (name,)),)) for name in ("one", "other")]

    found = differences(bills, inputs, "one", DRAWS)[0]

    assert (found.low, found.mean, found.high) == (1.0, 1.0, 1.0)
    assert (found.settles, found.settles_share) == (None, 0.0)


def test_a_difference_names_the_input_that_makes_most_of_its_doubt() -> None:
    inputs = {"one": Range(1.0, 2.0, 3.0), "other": Range(2.7, 3.0, 3.3)}
    bills = [Bill(medium=name, terms=(Term("way", (name,)),)) for name in ("one", "other")]

    found = differences(bills, inputs, "one", DRAWS)[0]

    assert found.settles == "one"
    assert found.settles_share == pytest.approx(1 / 1.09)  # variances as the squares of the widths, 1 to 0.3


def test_a_medium_that_is_the_trusted_one_has_no_difference() -> None:
    bill = Bill(medium="one", terms=(Term("way", ("one",)),))

    assert differences([bill], {"one": a_range(2.0)}, "one", DRAWS) == ()
    assert differences([bill], {"one": a_range(2.0)}, "other", DRAWS) == ()


def test_peat_says_how_much_of_it_is_its_own_carbon() -> None:
    bills = bills_of([a_factor()], ["peat mix"], {})

    found = footprints(bills.bills, bills.inputs, DRAWS)[0]

    assert found.parts[PEAT] == pytest.approx(1 / 1.4, abs=0.01)  # upstream 0.2 to 0.6 on top
    assert sum(found.parts.values()) == pytest.approx(1)


def test_electricity_without_a_grid_factor_is_told_and_left_out() -> None:
    bills = bills_of([a_factor(), a_factor("electricity", 4.0)], ["peat mix"], {})

    assert "grid" in " ".join(bills.notes["peat mix"])


def test_a_medium_without_a_bill_says_what_to_do() -> None:
    assert "Weigh" in bills_of([], ["coir"], {}).missing["coir"]


# --- factors


@pytest.mark.parametrize(
    ("factor", "words"),
    [
        (a_factor(value=-1.0, low=-2.0, high=0.0), "below zero"),
        (a_factor(low=None), "without a range"),
        (a_factor(value=None), "most likely"),
        (a_factor(low=0.7), "does not lie between"),
        (a_factor(value=600.0), "Look at the unit"),
        (a_factor(source=" "), "where the number comes from"),
        (a_factor("tray uses", 1.0, low=0.5), "once at least"),
        (a_factor("gold"), "no factor"),
    ],
)
def test_a_factor_that_cannot_be_is_refused_with_a_sentence(factor: Factor, words: str) -> None:
    assert words in str(wrong_factor(factor))


def test_every_default_can_be_kept_as_it_is_and_names_its_source() -> None:
    usable = [one for one in DEFAULTS.values() if one.value is not None]

    assert len(usable) > 10
    assert [wrong_factor(one) for one in usable if wrong_factor(one) is not None] == []


def test_the_growers_own_number_of_a_medium_comes_before_all_others() -> None:
    own = [a_factor("truck", 0.2, medium=None), a_factor("truck", 0.3, medium="coir")]

    assert chosen(own, "truck", "coir").value == 0.3
    assert chosen(own, "truck", "peat mix").value == 0.2
    assert chosen([], "truck", "coir").value == DEFAULTS["truck"].value
