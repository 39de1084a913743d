"""Sample sizes and power against published tables and other programs."""

import math

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.special import ndtr
from scipy.stats import chi

from data.statistics.power import Design, blocks_needed, least_margin, power, set_power, shelf_power
from data.verdict import Measured, verdict_of

# R 4 with scipy's nct, alpha 0.05 one-sided, margin = one standard deviation, no true difference, no
# correction for several media: chance to show "as good" by number of blocks
BLOCKS = (4, 6, 8, 10, 12, 13, 14, 16)
IN_BLOCKS = {
    2: (0.2953, 0.4408, 0.5627, 0.6624, 0.7421, 0.7755, 0.8050, 0.8537),
    3: (0.3484, 0.4876, 0.6015, 0.6936, 0.7668, 0.7972, 0.8241, 0.8684),
    4: (0.3680, 0.5034, 0.6141, 0.7035, 0.7746, 0.8041, 0.8301, 0.8730),
}


@pytest.mark.parametrize("treatments", IN_BLOCKS)
def test_chance_in_blocks_is_that_of_the_noncentral_t(treatments: int) -> None:
    chances = [power(Design(blocks=b, treatments=treatments, compared=1), 1.0, 1.0) for b in BLOCKS]

    assert chances == pytest.approx(IN_BLOCKS[treatments], abs=5e-4)


def test_trays_without_blocks_need_what_a_text_book_says() -> None:
    """R 4, power.t.test, one-sided 5 %, margin = sd, power 0.8: 13.0977, so 14 trays of each of two media."""
    enough = power(Design(blocks=1, treatments=2, per_block=14), 1.0, 1.0)
    short = power(Design(blocks=1, treatments=2, per_block=13), 1.0, 1.0)

    assert enough is not None
    assert short is not None
    assert short < 0.8 < enough


def test_two_sided_sample_size_of_the_example_in_r() -> None:
    """R's documented example power.t.test(delta = 1, power = .90): n = 22.02, so 23; two-sided 5 %."""
    chance = [power(Design(blocks=1, treatments=2, per_block=n), 1.0, 1.0, level=0.975) for n in (22, 23)]

    assert chance[0] is not None
    assert chance[1] is not None
    assert chance[0] < 0.9 < chance[1]


def test_sample_size_for_ten_points_at_a_spread_of_eight() -> None:
    """R 4, power.t.test(delta = 10, sd = 8, power = .8): n = 11.0942, so 12; at n = 6 the power is 0.4984."""
    chance = {
        n: power(Design(blocks=1, treatments=2, per_block=n), 10.0, 8.0, level=0.975) for n in (6, 11, 12)
    }

    assert chance[6] == pytest.approx(0.4984, abs=5e-4)
    assert chance[11] is not None
    assert chance[12] is not None
    assert chance[11] < 0.8 < chance[12]


def test_stricter_level_needs_seventeen_trays() -> None:
    """R 4: margin = sd, one-sided 2.5 %, power 0.8: n = 16.7147, so 17."""
    chance = [power(Design(blocks=1, treatments=2, per_block=n), 1.0, 1.0, level=0.975) for n in (16, 17)]

    assert chance[0] is not None
    assert chance[1] is not None
    assert chance[0] < 0.8 < chance[1]


def test_a_medium_that_is_a_little_worse_needs_more_blocks() -> None:
    """R 4: two treatments, margin = sd, truly worse by a fifth of the margin, power 0.8: 21 blocks."""
    needed = blocks_needed(Design(blocks=1, treatments=2), 1.0, 1.0, 0.8, difference=-0.2)

    assert needed == 21


def test_six_trays_a_medium_tell_apart_what_r_says() -> None:
    """R 4: six trays a medium, without blocks, find 1.796 sd with power 0.8 (two-sided 5 %)."""
    design = Design(blocks=1, treatments=2, per_block=6)

    assert least_margin(design, 1.0, 0.8, level=0.975) == pytest.approx(1.796, abs=2e-3)


def test_sixty_trays_of_each_are_the_most_that_a_grower_is_told() -> None:
    """Just what 60 blocks show with a chance of 0.8, and a little less than that."""
    design = Design(blocks=60, treatments=2)
    margin = least_margin(design, 1.0, 0.8)

    assert margin is not None
    assert blocks_needed(design, 1.0001 * margin, 1.0, 0.8) == 60
    assert blocks_needed(design, 0.9999 * margin, 1.0, 0.8) is None


def test_shelves_are_judged_by_the_spread_of_shelves() -> None:
    """Oats of Yates (1935): 6 blocks, 3 varieties on whole plots of 4 trays each.

    R 4 (nlme): variance of plots within blocks 106.062, within plots 177.083; residual mean square of the
    whole plots 601.3306 on 10 df, so that the mean of a plot spreads by sqrt(601.3306 / 4).
    """
    by_parts = shelf_power(6, 3, 4, 20.0, 177.083**0.5, 106.062**0.5)
    by_stratum = power(Design(blocks=6, treatments=3), 20.0, (601.3306 / 4) ** 0.5)

    assert by_parts == pytest.approx(by_stratum, abs=1e-4)
    assert Design(blocks=6, treatments=3).df == 10


def test_the_camera_s_part_is_known_while_that_of_the_trays_is_estimated() -> None:
    """By hand: six trays of each, sd 5, camera 1, 5 df, Student's t one-sided 95 % 2.0150.

    The integral over the chi distribution of the estimated spread, by scipy's own quadrature.
    """
    trays = 5.0 * (2 / 6) ** 0.5
    whole = math.hypot(trays, 1.0)

    def shown(s: float) -> float:
        return float(ndtr((5.0 - 2.0150 * math.hypot(s * trays, 1.0)) / whole) * chi.pdf(s, 5, 0, 5**-0.5))

    assert power(Design(blocks=6, treatments=2, camera_sd=1.0), 5.0, 5.0) == pytest.approx(
        quad(shown, 0, 6)[0], abs=1e-4
    )


@pytest.mark.parametrize(("blocks", "media"), [(2, 2), (3, 2), (6, 3)])
def test_a_plan_promises_with_the_camera_what_the_verdict_then_shows(blocks: int, media: int) -> None:
    """1,500 simulated trials, all equal but to the camera, spread 2, margin 5: the share that is as good.

    Its standard error is 0.013. That of one estimated spread for both would be 0.27 for two trays of each,
    where 0.04 of the trials show it.
    """
    lot, trials, hits, camera = np.random.default_rng(20261130), 1500, 0, 1.15
    for _ in range(trials):
        seen = lot.normal(0, camera / 2**0.5, media)
        rows = [
            Measured(block=str(block), medium=str(medium), value=seen[medium] + lot.normal(80, 2.0))
            for block in range(blocks)
            for medium in range(media)
        ]
        found = verdict_of(rows, "0", 5.0, camera_sd=camera, quick=True)
        hits += found.medium("1").low > -5.0

    promised = power(Design(blocks=blocks, treatments=media, camera_sd=camera), 5.0, 2.0)

    assert hits / trials == pytest.approx(promised, abs=0.04)


def test_no_number_of_trays_beats_the_camera() -> None:
    """With very many trays only the camera's part is left: the normal distribution, 2 margins off."""
    design = Design(blocks=1, treatments=2, per_block=10**6, camera_sd=2.5)

    assert power(design, 5.0, 5.0) == pytest.approx(ndtr(2.0 - 1.6449), abs=1e-4)


@pytest.mark.parametrize("same_shelf", [True, False])
def test_sets_of_shelves_with_several_media_show_what_the_verdict_on_them_shows(same_shelf: bool) -> None:
    """1,000 simulated trials: six sets of two shelves, two media on each, all equal, trays and shelves alike.

    The standard error of their share is 0.016; a chance that pooled all shelves, 0.98, would be far off.
    """
    lot, trials, hits = np.random.default_rng(20261130), 1000, 0
    name = "mat, cold" if same_shelf else "peat, warm"
    for _ in range(trials):
        rows = [
            Measured(block=str(block), shelf=f"{block}{heat}", medium=f"{medium}, {heat}",
                     value=shelf + lot.normal(0, 3.0))
            for block in range(6)
            for heat, shelf in zip(("cold", "warm"), lot.normal(80, 3.0, 2), strict=True)
            for medium in ("peat", "mat")
        ]  # fmt: skip
        found = verdict_of(rows, "peat, cold", 5.0, by_shelf=True, quick=True).medium(name)
        hits += found.low > -5.0

    chance = set_power(6, 4, 5.0, 3.0, 0.0 if same_shelf else 3.0)

    assert hits / trials == pytest.approx(chance, abs=0.05)


def test_several_media_are_held_to_dunnett() -> None:
    """20,000 simulated trials of six blocks, trusted and three new media, all equal, margin one sd.

    The limit is Dunnett's one-sided q for three media and 15 df, 2.239 (R 4, multcomp; Dunnett 1955).
    """
    lot = np.random.default_rng(20260301)
    blocks, media, trials = 6, 4, 20_000
    y = lot.standard_normal((trials, blocks, media))
    rest = (
        y - y.mean(axis=1, keepdims=True) - y.mean(axis=2, keepdims=True) + y.mean(axis=(1, 2), keepdims=True)
    )
    df = (blocks - 1) * (media - 1)
    se = np.sqrt((rest**2).sum(axis=(1, 2)) / df * 2 / blocks)
    low = (y[:, :, 1] - y[:, :, 0]).mean(axis=1) - 2.239 * se

    assert power(Design(blocks=blocks, treatments=media), 1.0, 1.0) == pytest.approx(
        (low > -1.0).mean(), abs=0.012
    )
