"""Terms: on what terms a trial is read, as its plan fixed them before sowing.

In    a book, the name of a trial
Out   treatments of its trays, the trusted one, measures with margins, the day, limits and weights of the
      score
Not   the numbers that are read on these terms (`traynumbers.py`), verdicts (`verdicts.py`)

What a plan does not say, or where there is none, is as usual, and the reader is told so.
"""

from collections.abc import Iterable, Sequence
from functools import cached_property
from typing import TYPE_CHECKING

from data.desirability import USUAL, ScoreRule, kept_rule
from data.numbers import TrayId
from data.plan.drawing import Place
from data.records import Tray
from data.tables.trialrows import PhotoNumbers
from data.trial import KeptPlan, Measure, MeasureKind, Plan, treatment_of
from data.verdict.beforehand import MarginSaid
from data.verdict.traynumbers import day_of_most

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["MARGIN_POINTS", "MARGIN_YIELD_PCT", "Terms"]

MARGIN_POINTS = 5.0  # of canopy score or score by eye, where nobody has set one
MARGIN_YIELD_PCT = 10.0  # of the trusted medium's yield


class Terms:
    """The terms of one trial."""

    def __init__(
        self, book: "Book", trial: str, asked_day: int | None, asked_trusted: str | None = None
    ) -> None:
        self.book, self.trial, self.asked_day = book, trial, asked_day
        self.asked_trusted = asked_trusted
        self.trays = book.trial_trays(trial)
        self.versions: tuple[KeptPlan, ...] = book.plans(trial)
        self.plan: Plan | None = self.versions[-1].plan if self.versions else None

    @cached_property
    def treatments(self) -> dict[TrayId, str]:
        """What each tray got, as the plan names it; without a plan its medium."""
        found: dict[TrayId, str] = {}
        for tray in self.trays:
            name = tray.medium if self.plan is None else treatment_of(tray, self.plan)
            if name is not None:
                found[tray.id] = name
        return found

    @cached_property
    def drawn(self) -> tuple[Place, ...]:
        """Every place that was ever drawn for a treatment of the plan, the newest last."""
        known = set() if self.plan is None else {treatment.name for treatment in self.plan.treatments}
        draws = self.book.draws(self.trial)
        return tuple(place for kept in draws for place in kept.draw.places if place.treatment in known)

    @cached_property
    def trusted(self) -> str | None:
        """The trusted treatment: of the plan; without one that asked for, of the trial, of the book."""
        if self.plan is not None:
            return self.plan.trusted
        if self.asked_trusted is not None:
            return self.asked_trusted
        medium = self.book.trusted()
        return self.book.trial_said(self.trial).trusted or (None if medium is None else medium.name)

    @cached_property
    def rule(self) -> ScoreRule:
        """Limits and weights of the canopy score; the usual ones where the plan's cannot be read."""
        return USUAL if self.plan is None else kept_rule(self.plan.score) or USUAL

    def measure(self, kind: MeasureKind) -> tuple[Measure, bool]:
        """The measure with its margin, and whether it was fixed beforehand."""
        planned = None if self.plan is None else self.plan.measure(kind)
        if planned is not None:
            return planned, True
        if kind is MeasureKind.YIELD:
            return Measure(kind=kind, margin=MARGIN_YIELD_PCT, unit="%"), False
        points = self.book.trial_said(self.trial).margin_points
        if kind is MeasureKind.SCORE and points is not None:
            return Measure(kind=kind, margin=points), True
        return Measure(kind=kind, margin=MARGIN_POINTS), False

    def margin_said(self, kind: MeasureKind, photos: Iterable[PhotoNumbers]) -> MarginSaid | None:
        """When the margin of a trial without a plan was set; `photos` are those that are compared."""
        said = self.book.trial_said(self.trial)
        if self.plan is not None or kind is not MeasureKind.SCORE or said.margin_points is None:
            return None
        return MarginSaid(
            set_at=said.margin_set_at,
            first_sown_at=min((tray.sown_at for tray in self.trays), default=None),
            first_photo_at=min((photo.taken_at for photo in photos), default=None),
        )

    def day(self, crop: str, trays: Sequence[Tray]) -> tuple[int | None, bool]:
        """The day on which photos are read, and whether it was fixed beforehand."""
        if self.plan is not None:
            try:
                return self.plan.crop(crop).read_on_day, True
            except KeyError:
                pass
        if self.asked_day is not None:
            return self.asked_day, False
        return day_of_most(trays, self.book.photo_numbers(self.trial)), False

    def by_shelf(self) -> bool:
        """Whether treatments differ both by shelf and within it: then each block is a set of shelves."""
        return self.plan is not None and self.plan.shelf_factor is not None and len(self.plan.factors) > 1

    def decides(self, kind: MeasureKind) -> bool | None:
        """Whether a measure is the one that was named as deciding; None where no plan names one."""
        return None if self.plan is None else kind is self.plan.primary.kind
