"""Least squares: media compared within blocks, exact with missing and uneven trays too.

In    for each tray its block, its medium and one number
Out   adjusted means, differences with their standard errors and correlations, the error variance
Not   what a difference means (`verdict`), how many standard errors to go (`dunnett.py`, `tukey.py`)

value = block + medium + error, blocks fixed (Fisher 1935; the analysis after blocks are absorbed is that of
any textbook of block designs). A block in which only one medium is left adds nothing. Without blocks all
trays stand in one. Two media can be compared where a chain of shared blocks joins them.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from data.statistics.quadrature import Floats

__all__ = ["BlockFit", "Design", "Whole", "design_of", "sums"]

Whole = NDArray[np.int64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Design:
    """Which trays of which medium stand in which block; everything but the numbers."""

    media: tuple[str, ...]
    blocks: tuple[str, ...]
    medium_of: Whole  # index of each tray's medium
    block_of: Whole
    counts: Floats  # blocks x media, trays
    spread: Floats  # media x media: covariance of the effects for an error variance of 1
    piece: tuple[int, ...]  # media with the same number are joined by shared blocks
    df: int  # error degrees of freedom

    def unit_variance(self) -> Floats:
        """Variance of each difference of two media for an error variance of 1; infinite where unjoined."""
        own = np.diag(self.spread)
        variance = own[:, None] + own[None, :] - 2 * self.spread
        piece = np.array(self.piece)
        return np.where(piece[:, None] == piece[None, :], np.maximum(variance, 0.0), np.inf)

    def correlation(self, trusted: int, others: Sequence[int]) -> Floats:
        """Correlations of the differences of some media from one."""
        contrast = np.zeros((len(others), len(self.media)))
        contrast[np.arange(len(others)), list(others)] = 1
        contrast[:, trusted] -= 1
        covariance = contrast @ self.spread @ contrast.T
        scale = np.sqrt(np.diag(covariance))
        return np.asarray(covariance / np.outer(scale, scale))

    def fit(self, values: Floats) -> "BlockFit":
        """Least squares for one number a tray; more columns are more trials of the same design."""
        centre = values.mean(axis=0)
        own = values - centre
        size = self.counts.sum(axis=1).reshape(-1, *(1,) * (values.ndim - 1))
        block_mean = sums(self.block_of, own, len(self.blocks)) / size
        within = own - block_mean[self.block_of]
        adjusted = sums(self.medium_of, within, len(self.media))
        effects = np.tensordot(self.spread, adjusted, axes=1)
        of_block = np.tensordot(self.counts, effects, axes=1) / size
        residuals = within - effects[self.medium_of] + of_block[self.block_of]
        level = self._levels(block_mean - of_block)
        return BlockFit(
            design=self,
            effects=effects,
            means=centre + level + effects,
            residuals=residuals,
            error_ss=(residuals**2).sum(axis=0),
            media_ss=(adjusted * effects).sum(axis=0),
        )

    def _levels(self, of_block: Floats) -> Floats:
        """For each medium the mean of the blocks to which shared blocks join it."""
        piece = np.array(self.piece)
        mine = [(self.counts[:, piece == number] > 0).any(axis=1) for number in self.piece]
        return np.array([of_block[blocks].mean(axis=0) for blocks in mine])


@dataclass(frozen=True, slots=True, kw_only=True)
class BlockFit:
    """Least squares of one design."""

    design: Design
    effects: Floats  # media; sum to zero within each joined piece
    means: Floats  # media, as if each stood in every block alike
    residuals: Floats
    error_ss: Floats
    media_ss: Floats  # sum of squares of media, adjusted for blocks

    @property
    def mse(self) -> Floats:
        """The error variance; NaN where nothing is left to estimate it from."""
        return self.error_ss / (self.design.df or np.nan)

    def difference(self, medium: int, trusted: int) -> Floats:
        """Effect of one medium minus that of another."""
        return np.asarray(self.effects[medium] - self.effects[trusted])


def design_of(blocks: Sequence[str], media: Sequence[str], order: Sequence[str] | None = None) -> Design:
    """The design of some trays, given block and medium of each; at least one tray.

    `order` names the media in the order wanted; media without a tray are left out.
    """
    there = tuple(dict.fromkeys(media))
    names = there if order is None else tuple(name for name in dict.fromkeys(order) if name in there)
    places = tuple(dict.fromkeys(blocks))
    medium_of, block_of = _indices(media, names), _indices(blocks, places)
    counts = np.zeros((len(places), len(names)))
    np.add.at(counts, (block_of, medium_of), 1.0)
    size = counts.sum(axis=1)
    information = np.diag(counts.sum(axis=0)) - counts.T @ (counts / size[:, None])
    piece = _pieces(counts > 0)
    rank = len(places) + len(names) - len(set(piece))
    return Design(
        media=names,
        blocks=places,
        medium_of=medium_of,
        block_of=block_of,
        counts=counts,
        spread=_inverse(information, piece),
        piece=piece,
        df=len(medium_of) - rank,
    )


def _inverse(information: Floats, piece: Sequence[int]) -> Floats:
    """The generalized inverse piece by piece, effects summing to zero in each."""
    inverse = np.zeros_like(information)
    for number in set(piece):
        own = np.flatnonzero(np.array(piece) == number)
        mean = np.full((len(own), len(own)), 1.0 / len(own))
        inverse[np.ix_(own, own)] = np.linalg.inv(information[np.ix_(own, own)] + mean) - mean
    return inverse


def _pieces(grows: NDArray[np.bool_]) -> tuple[int, ...]:
    """For each medium the first medium that a chain of shared blocks joins it with."""
    piece = list(range(grows.shape[1]))
    for row in grows:
        together = {piece[medium] for medium in np.flatnonzero(row)}
        if len(together) > 1:
            piece = [min(together) if own in together else own for own in piece]
    return tuple(piece)


def _indices(names: Sequence[str], order: Sequence[str]) -> Whole:
    place = {name: index for index, name in enumerate(order)}
    return np.array([place[name] for name in names], dtype=np.int64)


def sums(index: Whole, values: Floats, size: int) -> Floats:
    """The sum of the values of each index, column by column."""
    if values.ndim == 1:
        return np.asarray(np.bincount(index, values, size))
    return np.asarray((np.arange(size)[:, None] == index).astype(float) @ values)
