"""Comparison: the arithmetic of one verdict.

In    trays with their numbers; what was asked
Out   a `Verdict`
Not   its records and what they mean (`verdict`)

Imports numpy and scipy, so it is brought in when a verdict is asked for.
"""

import math
from collections import Counter
from collections.abc import Sequence
from functools import cached_property
from typing import TypedDict

import numpy as np

from data.statistics.dunnett import dunnett_q, near_q
from data.statistics.leastsquares import design_of
from data.statistics.ownspread import (
    NO_SPREAD,
    Apart,
    is_uneven,
    own_difference,
    sidak_q,
    spreads,
    unequal_chance,
)
from data.statistics.quadrature import Floats
from data.statistics.ranks import ranks_of
from data.statistics.settling import enough_of, repeats_of
from data.verdict import CONFIDENCE, Asked, Measured, MediumResult, Verdict
from data.verdict.outcome import CLEARLY, ErrorFrom, Outcome, Why, outcome_of
from data.verdict.repeats import what_repeats

__all__ = ["compared"]

OF_A_DIFFERENCE = ("difference", "se", "q", "df", "low", "high", "outcome")


class Values(TypedDict, total=False):
    """What a difference from the trusted medium adds to a `MediumResult`."""

    difference: float
    se: float
    q: float
    df: float
    low: float
    high: float
    outcome: Outcome
    enough: int | None
    further: int | None
    shelves: int | None


def compared(table: Sequence[Measured], asked: Asked) -> Verdict:
    """The verdict on at least one tray."""
    return _Comparison(asked, table).verdict()


class _Comparison:
    """One fit and what is read from it."""

    def __init__(self, asked: Asked, table: Sequence[Measured]) -> None:
        self.asked, self.table = asked, table
        units, self.of_shelves = what_repeats(table)
        names = (asked.trusted, *(row.medium for row in table))
        self.values = np.array([row.value for row in units])
        self.design = design_of([row.block for row in units], [row.medium for row in units], names)
        self.fit = self.design.fit(self.values)
        self.counts = Counter(row.medium for row in table)
        self.units = Counter(row.medium for row in units)  # shelves, where these are what repeats

    def verdict(self) -> Verdict:
        design, asked = self.design, self.asked
        why = self._no_error()
        own = {} if why else self._own()
        error_from = ErrorFrom.ALL_MEDIA
        if self.asked.by_shelf or self.of_shelves:
            error_from = ErrorFrom.SHELVES
        elif not why and self._by_own:
            error_from = ErrorFrom.OWN_TRAYS
        q = None if why else self._q()
        ranks = {} if why or asked.quick else self._ranks()
        spread = {} if why or asked.quick else self._spreads()
        lines = [self._line(index, own, q, why, ranks, spread) for index in range(len(design.media))]
        return Verdict(
            trusted=asked.trusted,
            margin=asked.margin,
            lower_is_better=asked.lower_is_better,
            so_far=asked.so_far,
            df=design.df if design.df > 0 else None,
            mse=None if why else float(self.fit.mse),
            q=q,
            media=tuple(lines),
            blocks=len(design.blocks),
            trays=len(self.table),
            error_from=error_from,
            unequal_chance=None if why else self._unequal,
            camera_sd=asked.camera_sd,
            missing=self._missing(why, q),
        )

    # --- what can be had

    def _no_error(self) -> Why | None:
        """Why there is no error to measure a difference by."""
        if self.design.df < 1:
            if self.of_shelves:
                return Why.ONE_SHELF
            return Why.ONE_TRAY_EACH if max(self.counts.values()) == 1 else Why.NO_ERROR
        size = float(abs(self.values - self.values.mean()).max() or abs(self.values).max())
        if math.sqrt(float(self.fit.mse)) <= NO_SPREAD * max(size, 1e-300):
            return Why.NO_SPREAD
        return None

    def _missing(self, why: Why | None, q: float | None) -> dict[str, Why]:
        missing: dict[str, Why] = {}
        if why:
            missing = dict.fromkeys(("df", "mse") if self.design.df < 1 else ("mse",), why)
        if q is None:
            missing["q"] = self._no_q(why)
        return missing

    def _no_q(self, why: Why | None) -> Why:
        if not self._has_trusted:
            return Why.NO_TRUSTED
        if len(self.design.media) == 1:
            return Why.ONLY_TRUSTED
        return why or Why.APART

    @property
    def _has_trusted(self) -> bool:
        """It is the first of the media then."""
        return self.design.media[0] == self.asked.trusted

    @cached_property
    def _joined(self) -> list[int]:
        """The media that shared blocks join with the trusted one."""
        piece = self.design.piece
        return [] if not self._has_trusted else [i for i in range(1, len(piece)) if piece[i] == piece[0]]

    def _q(self) -> float | None:
        joined = self._joined
        if not joined:
            return None
        correlation = self.design.correlation(0, joined)
        find = near_q if self.asked.quick else dunnett_q
        return find(self.design.df, correlation, CONFIDENCE)

    # --- spreads

    @cached_property
    def _unequal(self) -> float | None:
        """Asked only where it decides: without blocks own trays give the error whatever spreads are."""
        return None if self.asked.quick or self._no_blocks else unequal_chance(self.fit)

    @cached_property
    def _unit_variance(self) -> Floats:
        return self.design.unit_variance()

    def _spreads(self) -> dict[int, float]:
        found = enumerate(spreads(self.fit))
        return {index: float(sd) for index, sd in found if math.isfinite(sd) and self._n(index) > 1}

    def _n(self, index: int) -> int:
        """Trays of a medium, or shelves."""
        return self.units[self.design.media[index]]

    @cached_property
    def _by_own(self) -> bool:
        """Whether each difference rests on its own two media alone.

        Without blocks always: of many trials one spread would fail too often in some, and a test of spreads
        beforehand finds these too seldom (Zimmerman 2004, from memory).
        """
        if self.asked.by_shelf or self.asked.own_trays or self._no_blocks or is_uneven(self.design):
            return True
        return self._unequal is not None and self._unequal <= CLEARLY

    def _own(self) -> dict[int, Apart]:
        """Differences from each medium's own trays, where they are to be used; else nothing."""
        if not self._by_own:
            return {}
        found = {i: self._pair(i, 0) for i in self._joined}
        return {i: apart for i, apart in found.items() if apart is not None and apart.se > 0}

    @property
    def _no_blocks(self) -> bool:
        return len(self.design.blocks) == 1

    def _no_own(self, index: int) -> Why:
        """Why a medium has no error of its own."""
        if self._pair(index, 0) is not None:
            return Why.NO_SPREAD
        if self.asked.by_shelf or (self.of_shelves and self._one_alone(index)):
            return Why.ONE_SHELF
        return Why.ONE_TRAY if self._one_alone(index) else Why.NO_ERROR

    def _one_alone(self, index: int) -> bool:
        """Whether a medium, or the trusted one, has one tray or shelf only."""
        return min(self._n(index), self._n(0)) < 2

    def _pair(self, one: int, other: int) -> Apart | None:
        """Two media from their own trays; one set of shelves says nothing of what belongs to a shelf."""
        if self.asked.by_shelf and self._no_blocks:
            return None
        return own_difference(self.design, self.values, one, other)

    def _ranks(self) -> dict[int, tuple[int, int]]:
        asked, own = self.asked, self._pair if self._by_own else None
        return ranks_of(self.fit, asked.camera_sd, lower_is_better=asked.lower_is_better, own=own)

    # --- one medium

    def _line(
        self,
        index: int,
        own: dict[int, Apart],
        q: float | None,
        why: Why | None,
        ranks: dict[int, tuple[int, int]],
        spread: dict[int, float],
    ) -> MediumResult:
        name = self.design.media[index]
        joined = self._joined
        alone = self._has_trusted and index != 0 and index not in joined
        missing: dict[str, Why] = {"mean": Why.APART} if alone else {}
        if index not in ranks:
            missing |= dict.fromkeys(("rank_low", "rank_high"), why or Why.ONLY_TRUSTED)
        values: Values = {}
        if name == self.asked.trusted:
            missing |= dict.fromkeys(OF_A_DIFFERENCE, Why.IS_TRUSTED)
        elif index not in joined:
            apart = Why.APART if alone else Why.NO_TRUSTED
            missing |= dict.fromkeys(OF_A_DIFFERENCE, apart)
        else:
            values, lacking = self._compared(index, own, q, why)
            missing |= lacking
        low_rank, high_rank = ranks.get(index, (None, None))
        return MediumResult(
            medium=name,
            n=self.counts[name],
            mean=None if alone else float(self.fit.means[index]),
            rank_low=low_rank,
            rank_high=high_rank,
            spread=spread.get(index),
            missing=missing,
            **values,
        )

    def _compared(
        self, index: int, own: dict[int, Apart], q: float | None, why: Why | None
    ) -> tuple[Values, dict[str, Why]]:
        difference = float(self.fit.difference(index, 0))
        if why is None and index not in own and self._by_own:
            why = self._no_own(index)
        if why is not None or q is None:
            lacking = dict.fromkeys(OF_A_DIFFERENCE[1:], why or Why.NO_ERROR)
            return {"difference": difference}, lacking
        se = math.sqrt(float(self.fit.mse) * float(self._unit_variance[index, 0]))
        df: float = self.design.df
        if own:
            apart = own[index]
            difference, se, df = apart.difference, apart.se, apart.df
            q = sidak_q(len(own), df, CONFIDENCE)
        se = math.hypot(se, self.asked.camera_sd)
        values: Values = {
            "difference": difference, "se": se, "q": q, "df": df,
            "low": difference - q * se, "high": difference + q * se,
        }  # fmt: skip
        if self._one_alone(index):
            return values, {"outcome": Why.ONE_SHELF if self.of_shelves else Why.ONE_TRAY}
        return values | self._judged(index, difference, q * se, own.get(index)), {}

    def _judged(self, index: int, difference: float, half: float, own: Apart | None) -> Values:
        """`half` of the interval; `own` where it rests on two media alone."""
        asked = self.asked
        if asked.so_far:
            return {"outcome": Outcome.NOT_SHOWN}
        outcome = outcome_of(
            difference - half, difference + half, asked.margin, lower_is_better=asked.lower_is_better
        )
        if outcome.is_shown or asked.quick:
            return {"outcome": outcome}
        return {"outcome": outcome, **self._further(index, difference, own)}

    def _further(self, index: int, difference: float, own: Apart | None) -> Values:
        """Trays of each medium, how many more that is; where shelves count, their number."""
        asked, names = self.asked, self.design.media
        to_margin = asked.margin + (-difference if asked.lower_is_better else difference)
        on_shelf = max(self.counts[names[i]] / self._n(i) for i in (index, 0))
        repeats = repeats_of(self.fit, self.values, index, 0, own)
        enough = enough_of(repeats, to_margin, len(self._joined), asked.camera_sd, on_shelf)
        if enough is None:
            return {"enough": None}
        fewer = min(self.counts[names[i]] for i in (index, 0))
        trays = max(enough.trays, fewer + 1)
        shelves = enough.shelves if self.of_shelves else None
        return {"enough": trays, "further": trays - fewer, "shelves": shelves}
