"""Footprints against worked numbers of the guides to uncertainty, and factors against their sources."""

import numpy as np
import pytest

from data.footprint import Bill, Yield, ends_of, footprints
from data.medium.factors import DEFAULTS
from data.statistics.budget import Range, Term, shares_of_variance


def plain(name: str, *inputs: str, times: float = 1.0) -> Term:
    return Term(name, inputs, times)


TRAY = {
    "peat l": Range(3.0, 3.5, 4.0),
    "peat by l": Range(0.13, 0.22, 0.30),
    "perlite": Range(0.03, 0.05, 0.07),
    "perlite made": Range(0.4, 0.9, 1.6),
    "truck": Range(0.07431, 0.10163, 0.12226),
}
TRAY_TERMS = (
    plain("peat", "peat l", "peat by l"),
    plain("perlite", "perlite", "perlite made"),
    plain("way", "truck", times=0.5),
)


# JCGM 101:2008, 9.2.3 (from memory): four rectangular inputs of mean 0 and sd 1; 95 % [-3.88, 3.88], exactly
# 2 sqrt(3) (2 - 0.6^(1/4)) = 3.879407; to first order [-3.92, 3.92]
def test_four_rectangular_inputs():
    rng = np.random.default_rng(1)
    total = rng.uniform(-(3**0.5), 3**0.5, (4, 1_000_000)).sum(axis=0)

    assert ends_of(total) == pytest.approx((-3.879407, 3.879407), abs=0.02)


# JCGM 100:2008, 5.1.2 and JCGM 101:2008; recomputed with numpy 2
def test_a_product_of_two_triangles():
    inputs = {"volume": Range(2.0, 2.5, 3.0), "by volume": Range(0.15, 0.22, 0.30)}
    terms = (plain("peat", "volume", "by volume"),)

    found = footprints([Bill(medium="peat", terms=terms)], inputs, draws=1_000_000)[0]

    assert (found.mean, found.sd) == pytest.approx((0.558333, 0.089361), abs=0.002)
    assert (found.low, found.median, found.high) == pytest.approx((0.3975, 0.5543, 0.7414), abs=0.002)


# JCGM 100:2008, 5.1.6 (from memory): of products and quotients squares of relative uncertainties add, each
# times its power; a triangle's variance is (a2 + m2 + b2 - am - ab - mb) / 18
def test_a_thing_used_many_times_is_divided_by_its_uses():
    inputs = {"mass": Range(0.2, 0.25, 0.3), "made": Range(2.0, 2.4, 3.1), "uses": Range(16.0, 20.0, 24.0)}
    terms = (Term("plastic tray", ("mass", "made"), below=("uses",)),)
    relative = {"mass": (0.05**2 / 6) / 0.25**2, "made": 0.051667 / 2.5**2, "uses": (4.0**2 / 6) / 20.0**2}
    both = sum(relative.values())

    found = footprints([Bill(medium="mat", terms=terms)], inputs, draws=400_000)[0]

    shares = shares_of_variance(terms, inputs)
    assert shares == pytest.approx({name: one / both for name, one in relative.items()}, rel=1e-4)
    mean = 0.25 * 2.5 / 20
    assert (found.mean, found.sd) == pytest.approx((mean, mean * both**0.5), rel=0.02)


# a tray of peat, perlite and half a tonne kilometre; recomputed with numpy 2
def test_a_tray_by_first_order_and_by_draws():
    bill = Bill(medium="mix", terms=TRAY_TERMS, fresh=Yield(mean=0.35, sd=0.04))

    found = footprints([bill], TRAY, draws=1_000_000)[0]

    shares = shares_of_variance(TRAY_TERMS, TRAY)
    assert [100 * shares[name] for name in TRAY] == pytest.approx([11.5, 87.1, 0.4, 0.9, 0.1], abs=0.06)
    assert (found.mean, found.sd) == pytest.approx((0.8566, 0.1305), abs=0.002)
    assert (found.low, found.high) == pytest.approx((0.611, 1.111), abs=0.01)
    assert found.per_kg == pytest.approx((1.648, 2.445, 3.522), abs=0.01)


def test_a_yield_of_few_trays_is_as_unsure_as_student_says() -> None:
    """1 kg a tray, exact; three trays, mean 1 kg, standard error 0.1: ends by t(0.975, 2) = 4.3027 (tables).

    JCGM 101:2008, 6.4.9: a mean whose spread is estimated has a scaled and shifted t (from memory).
    """
    bill = Bill(medium="mix", terms=(Term("all", ("one",)),), fresh=Yield(mean=1.0, sd=0.1, df=2))

    (found,) = footprints([bill], {"one": Range(1.0, 1.0, 1.0)})

    wanted = (1 / (1 + 0.43027), 1.0, 1 / (1 - 0.43027))
    assert found.per_kg == pytest.approx(wanted, rel=0.02)


# IPCC 2006 Guidelines, vol. 4, ch. 7, table 7.5: 0.45 and 0.34 t C/t of air-dry peat; x 44/12
def test_carbon_of_peat():
    peat = DEFAULTS["peat carbon"]

    assert (peat.value, peat.low) == pytest.approx((0.45 * 44 / 12, 0.34 * 44 / 12), abs=5e-3)


# Cleary, Roulet & Moore 2005: land use 15, transport 10, extraction 4 % beside 71 % from the peat itself
def test_peat_upstream_lies_by_its_source():
    upstream = DEFAULTS["peat upstream"]

    assert upstream.value == pytest.approx((15 + 10 + 4) / 71, abs=0.01)


# UK Government GHG Conversion Factors 2025 (read from a public copy): all heavy goods vehicles full, average
# and half laden; vans up to 3.5 t plug-in hybrid, diesel, petrol; rail; container ships 8000+ TEU, average,
# up to 999 TEU; primary polypropylene 2577.6 kg a tonne
@pytest.mark.parametrize(
    ("name", "published"),
    [
        ("truck", (0.07431, 0.10163, 0.12226)),
        ("van", (0.36985, 0.63130, 0.85537)),
        ("rail", (None, 0.02779, None)),
        ("ship", (0.0127, 0.0161, 0.0368)),
        ("plastic made", (None, 2.5776, None)),
    ],
)
def test_ways_and_plastic_lie_by_their_source(name, published):
    factor = DEFAULTS[name]

    for ours, theirs in zip((factor.low, factor.value, factor.high), published, strict=True):
        if theirs is not None:
            assert ours == pytest.approx(theirs, rel=0.01)
    assert factor.year == 2025


# de Beus & Carus 2019: 0.35 to 0.55 t/t to the factory gate; Singh, Kumar & Mitra 2018: jute 0.566, flax
# 0.520, kenaf 0.445, sunn hemp 0.423
def test_plant_fibre_lies_among_the_published_ones():
    fibre = DEFAULTS["plant fibre made"]

    assert fibre.low == 0.35
    assert 0.423 <= fibre.value <= 0.566 <= fibre.high


def test_what_nobody_could_look_up_is_called_a_guess():
    guessed = {name for name, factor in DEFAULTS.items() if factor.is_guess}

    assert guessed == {
        "perlite made", "coir made", "wood fibre made", "needling", "solid density", "minerals", "tray uses",
    }  # fmt: skip
    assert DEFAULTS["grid"].value is None  # the grower's own
