"""Least squares in blocks agree with a plain fit of all columns, whatever trays are missing."""

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from data.statistics.dunnett import dunnett_q, loadings, near_q
from data.statistics.leastsquares import Design, design_of

trays = st.lists(st.tuples(st.integers(0, 4), st.integers(0, 4), st.floats(-50, 50)), min_size=3, max_size=30)


def a_design(rows: list[tuple[int, int, float]]) -> tuple[Design, np.ndarray]:
    design = design_of([f"b{b}" for b, _, _ in rows], [f"m{m}" for _, m, _ in rows])
    return design, np.array([value for _, _, value in rows])


def plain_columns(design: Design) -> np.ndarray:
    blocks = np.eye(len(design.blocks))[design.block_of]
    return np.hstack([blocks, np.eye(len(design.media))[design.medium_of]])


@given(trays)
@settings(deadline=None)
def test_error_and_differences_are_those_of_a_plain_fit(rows: list[tuple[int, int, float]]) -> None:
    design, values = a_design(rows)
    columns = plain_columns(design)
    plain, _, rank, _ = np.linalg.lstsq(columns, values, rcond=None)
    own = plain[len(design.blocks) :]

    fit = design.fit(values)

    assert design.df == len(values) - rank
    assert fit.error_ss == pytest.approx(((values - columns @ plain) ** 2).sum(), abs=1e-6)
    for medium in range(1, len(design.media)):
        if design.piece[medium] == design.piece[0]:
            assert fit.difference(medium, 0) == pytest.approx(own[medium] - own[0], abs=1e-6)


@given(trays)
@settings(deadline=None)
def test_adjusted_means_are_those_of_each_medium_in_every_block(rows: list[tuple[int, int, float]]) -> None:
    design, values = a_design(rows)
    assume(len(set(design.piece)) == 1)
    plain = np.linalg.lstsq(plain_columns(design), values, rcond=None)[0]
    blocks, own = plain[: len(design.blocks)], plain[len(design.blocks) :]

    assert design.fit(values).means == pytest.approx(blocks.mean() + own, abs=1e-6)


@given(trays)
@settings(deadline=None)
def test_correlations_of_differences_are_such_that_three_media_are_exact(
    rows: list[tuple[int, int, float]],
) -> None:
    """What `statistics/dunnett.py` rests on: none is negative, and r_ij >= r_ik r_kj."""
    design, _ = a_design(rows)
    joined = [m for m in range(1, len(design.media)) if design.piece[m] == design.piece[0]]
    assume(len(joined) >= 2)
    r = design.correlation(0, joined)

    assert r.min() > -1e-9
    for k in range(len(joined)):
        assert (r - np.outer(r[:, k], r[k]) > -1e-9).all()
    if len(joined) == 3:
        product = np.outer(loadings(r), loadings(r))
        off = ~np.eye(3, dtype=bool)
        assert product[off] == pytest.approx(r[off], abs=2e-3)


def test_many_trials_at_once_are_the_same_trials_one_by_one() -> None:
    design, _ = a_design([(b, m, 0.0) for b in range(4) for m in range(3)])
    values = np.random.default_rng(1).normal(size=(12, 5))

    together = design.fit(values)

    for column in range(5):
        one = design.fit(values[:, column])
        assert together.effects[:, column] == pytest.approx(one.effects)
        assert together.mse[column] == pytest.approx(one.mse)


def test_the_quick_q_is_near_the_exact_one() -> None:
    rows = [(b, m, 0.0) for b in range(6) for m in range(5) if (b, m) not in {(0, 0), (1, 2), (5, 4)}]
    design, _ = a_design(rows)
    correlation = design.correlation(0, [1, 2, 3, 4])

    assert near_q(design.df, correlation) == pytest.approx(dunnett_q(design.df, correlation), abs=0.01)
