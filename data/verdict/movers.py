"""Movers: which part of the canopy score moves it.

In    the scores of trays with their parts, blocks and media
Out   for each medium and part its numbers and the points of score it is worth, the largest first
Not   the score (`desirability.py`), the verdict on it (`verdict`)

The score is a geometric mean, so a difference of two scores comes apart into its parts by logarithms: each
part is worth its weight times the difference of its log desirability, turned into points by the logarithmic
mean of both scores. The parts then sum to the difference of typical trays, not exactly to that of the
means.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.desirability import CanopyScore, PartName

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

__all__ = ["Mover", "ScoredTray", "movers"]

LEAST = 1e-3  # a desirability of 0 has no logarithm


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoredTray:
    """A tray with its score."""

    block: str
    medium: str
    score: CanopyScore


@dataclass(frozen=True, slots=True, kw_only=True)
class Mover:
    """One part of one medium's score against the trusted one's."""

    medium: str
    part: PartName
    value: float  # adjusted mean of the number itself
    trusted_value: float
    points: float  # of score, that this part is worth


def movers(trays: Sequence[ScoredTray], trusted: str) -> tuple[Mover, ...]:
    """Media in order, the part that is worth most first; trays without score or with mold go without."""
    from data.statistics.leastsquares import design_of

    whole = [tray for tray in trays if tray.score.score and tray.score.parts]
    names = tuple(dict.fromkeys(tray.medium for tray in trays))
    if not any(tray.medium == trusted for tray in whole):
        return ()
    parts = [
        name for name in PartName if all(tray.score.part(name) is not None for tray in whole)
    ]  # a part that some trays lack compares nothing
    if not parts:
        return ()
    design = design_of([t.block for t in whole], [t.medium for t in whole], (trusted, *names))
    values, logs = _values_and_logs(whole, parts)
    means, worth = design.fit(values).means, design.fit(logs).means
    found: list[Mover] = []
    for index, medium in enumerate(design.media[1:], 1):
        if design.piece[index] != design.piece[0]:
            continue
        scale = _log_mean(100 * math.exp(worth[index].sum()), 100 * math.exp(worth[0].sum()))
        lines = [
            Mover(
                medium=medium,
                part=part,
                value=float(means[index, column]),
                trusted_value=float(means[0, column]),
                points=float(scale * (worth[index, column] - worth[0, column])),
            )
            for column, part in enumerate(parts)
        ]
        found += sorted(lines, key=lambda line: -abs(line.points))
    return tuple(found)


def _values_and_logs(
    trays: Sequence[ScoredTray], parts: Sequence[PartName]
) -> tuple["NDArray[np.float64]", "NDArray[np.float64]"]:
    """(trays, parts) each: the numbers, and the log desirabilities as they count in the score."""
    import numpy as np

    shares = [[tray.score.part(name) for name in parts] for tray in trays]
    values = np.array([[share.value for share in row if share] for row in shares])
    weights = np.array([share.weight for share in shares[0] if share])
    logs = np.log(np.maximum([[share.desirability for share in row if share] for row in shares], LEAST))
    return values, logs * weights / weights.sum()


def _log_mean(one: float, other: float) -> float:
    """Logarithmic mean: (a - b) / (ln a - ln b)."""
    return one if abs(one - other) < 1e-9 * one else (one - other) / (math.log(one) - math.log(other))
