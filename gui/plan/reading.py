"""Plan reading: the trials of a book, and what a new one can be made of, no Qt.

In    a book
Out   `PlanReading` with a `TrialReading` for each trial that has a plan
Not   the state of the window (`view.py`), words (`summary.py`)
"""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from data.book import Book
from data.chapters.drawbook import unsown
from data.plan.blocks import ShelfPlaces
from data.plan.draft import Draft
from data.plan.drafttext import SETTING, draft_from
from data.plan.drawing import KeptDraw
from data.records import Tray
from data.trial import CropPlan, KeptPlan, MeasureKind, Spread

__all__ = ["PLACES", "PlanReading", "TrialReading", "first_crop", "read_plans"]

READ_ON_DAY = 10  # proposed where nobody has said when a crop is cut
PLACES = 6  # proposed for a shelf that holds nothing yet


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialReading:
    """One trial as the book has it."""

    versions: tuple[KeptPlan, ...]
    draws: tuple[KeptDraw, ...] = ()
    waiting: int = 0  # trays of the last drawing that are not sown
    next_round: int = 0  # of these the ones sown next
    next_day: date | None = None  # that was planned for them
    sown_blocks: tuple[str, ...] = ()

    @property
    def kept(self) -> KeptPlan:
        """The newest version."""
        return self.versions[-1]

    @property
    def may_be_drawn(self) -> bool:
        """Whether trays of it wait that may still be placed otherwise."""
        return any(block.name not in self.sown_blocks for block in self.kept.plan.blocks)

    @property
    def draw(self) -> KeptDraw | None:
        """The newest drawing, if it belongs to the newest version."""
        last = self.draws[-1] if self.draws else None
        return last if last is not None and last.plan_id == self.kept.id else None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanReading:
    """What was read from the book at one moment."""

    trials: tuple[TrialReading, ...] = ()
    crops: tuple[CropPlan, ...] = ()
    media: tuple[str, ...] = ()
    kinds: Mapping[str, str] = field(default_factory=dict)  # of these, as the grower has said them
    trusted: str = ""
    shelves: tuple[ShelfPlaces, ...] = ()
    standing: tuple[tuple[str, str, int], ...] = ()  # shelf, trial or "", trays that grow there
    draft: Draft | None = None  # left unfinished when the window was closed
    today: date = date(2000, 1, 1)
    spreads: Mapping[MeasureKind, Spread] = field(default_factory=dict)  # learned from the grower's own trays

    @property
    def is_first(self) -> bool:
        """Whether nothing was sown yet in this book."""
        return not self.standing and not any(trial.sown_blocks for trial in self.trials)

    def trial(self, name: str) -> TrialReading | None:
        """By its name."""
        return next((one for one in self.trials if one.kept.plan.trial == name), None)


def read_plans(book: Book) -> PlanReading:
    """Trials with a plan, and what a new one can be made of."""
    versions: dict[str, list[KeptPlan]] = {}
    for kept in book.plans():
        versions.setdefault(kept.plan.trial, []).append(kept)
    trusted = book.trusted()
    trays = book.trays(growing=False)
    return PlanReading(
        trials=tuple(_read_trial(book, name, kept) for name, kept in versions.items()),
        crops=tuple(_crop_of(book, name, trays) for name in book.crops()),
        media=book.media(),
        kinds={medium.name: medium.kind for medium in book.media_known()},
        trusted="" if trusted is None else trusted.name,
        shelves=_shelves_of(book),
        standing=_standing(book),
        draft=draft_from(book.setting(SETTING)),
        today=book.today(),
    )


def _read_trial(book: Book, name: str, versions: Sequence[KeptPlan]) -> TrialReading:
    draws, trays = book.draws(name), book.trial_trays(name)
    waiting = unsown(draws[-1].draw, trays) if draws else ()
    turn = min((place.round for place in waiting), default=0)
    return TrialReading(
        versions=tuple(versions),
        draws=draws,
        waiting=len(waiting),
        next_round=sum(place.round == turn for place in waiting),
        next_day=min((place.sow_on for place in waiting if place.round == turn), default=None),
        sown_blocks=tuple(dict.fromkeys(tray.block for tray in trays if tray.block is not None)),
    )


def _crop_of(book: Book, name: str, trays: Sequence[Tray]) -> CropPlan:
    """What the grower has said of it, else how it was sown last."""
    said = book.crop(name)
    if said is None:
        return first_crop(name)
    last = max((tray for tray in trays if tray.crop == name), key=lambda tray: tray.sown_at, default=None)
    rate, soak = said.sowing_rate_g, said.soak_hours
    if last is not None:
        rate = last.sowing_rate_g if rate is None else rate
        soak = last.soak_hours if soak is None else soak
    day = said.cut_from_day
    return CropPlan(
        name=name,
        read_on_day=READ_ON_DAY if day is None else round(day),
        sowing_rate_g=rate,
        soak_hours=soak,
        blackout_days=said.blackout_days,
    )


def first_crop(name: str) -> CropPlan:
    """A crop of which nobody has said anything."""
    return CropPlan(name=name, read_on_day=READ_ON_DAY)


def _standing(book: Book) -> tuple[tuple[str, str, int], ...]:
    """How many trays grow on each shelf, by the trial that they belong to."""
    counts: Counter[tuple[str, str]] = Counter((tray.shelf, tray.trial or "") for tray in book.trays())
    return tuple((shelf, trial, count) for (shelf, trial), count in counts.items())


def _shelves_of(book: Book) -> tuple[ShelfPlaces, ...]:
    """The shelves in use, with as many places as they ever held at once."""
    return tuple(
        ShelfPlaces(name=shelf.name, places=max(tray.position for tray in shelf.trays))
        for shelf in book.rack()
        if shelf.name
    )
