"""Plan view: what the place Plan shows, as one state, no Qt.

In    what was read from the book; a draft of the grower
Out   `PlanState`, what stands at its foot, `Chances` of a draft
Not   reading (`reading.py`), a plan in words (`summary.py`), reckoning (`data.statistics.power`)
"""

from dataclasses import dataclass, field, replace
from enum import StrEnum

from data.plan.blocks import ShelfPlaces
from data.plan.draft import Draft, Step, design_of, treatments_of
from data.plan.draftneeds import lacking
from data.plan.draftplan import draft_of, plan_from
from data.plan.words import (
    camera_words,
    chance_words,
    cost_words,
    enough_words,
    shelf_chance,
    shelf_words,
    six_words,
    spread_words,
)
from data.statistics.power import MOST_BLOCKS, SPREADS, blocks_needed, power
from data.trial import Plan
from gui.language.spoken import spoken
from gui.language.words import translate
from gui.plan.reading import PLACES, PlanReading, TrialReading

__all__ = [
    "WANTED", "Chances", "Foot", "KeptPage", "PlanState", "chances_of", "draft_to_change", "draft_to_copy",
    "empty_draft",
]  # fmt: skip

WANTED = 0.8
LEAST_SHOWN = 20  # trays of each, to the right end of the chart


class KeptPage(StrEnum):
    """Pages of a kept plan."""

    PLAN = "plan"
    PLACES = "places"
    PRINT = "print"
    SOW = "sow"


@dataclass(frozen=True, slots=True, kw_only=True)
class Chances:
    """What the trays of a draft can show."""

    draft: Draft
    curves: tuple[tuple[float, tuple[tuple[float, float], ...]], ...]  # times the spread, (trays, chance)
    sentences: tuple[str, ...]
    spread: str
    of_shelves: bool = False  # sets of shelves are counted, not trays


@dataclass(frozen=True, slots=True, kw_only=True)
class Foot:
    """What stands at the foot of the place."""

    missing: str = ""  # the first thing that is lacking
    forward: str  # words of the main button
    also: str = ""  # words of a plain button before it
    may_go_on: bool
    may_go_back: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanState:
    """All that the place shows: a draft that is made, or a kept plan."""

    reading: PlanReading = field(default_factory=PlanReading)
    draft: Draft | None = None
    step: int = Step.QUESTION
    shown: str = ""  # name of the kept trial, while no draft is made
    page: KeptPage = KeptPage.PLAN
    chances: Chances | None = None

    @property
    def trial(self) -> TrialReading | None:
        """The kept trial that is shown or changed."""
        name = self.shown if self.draft is None else self.draft.trial.strip()
        return self.reading.trial(name)

    @property
    def is_empty(self) -> bool:
        """Neither a draft nor a kept plan."""
        return self.draft is None and self.trial is None

    @property
    def waits_for_draw(self) -> bool:
        """Whether the plan that is shown was kept, and its places are not drawn."""
        shown = self.draft is None and self.page is KeptPage.PLAN
        return shown and self.trial is not None and self.trial.draw is None

    @property
    def missing(self) -> str:
        """The first thing that is lacking up to this step."""
        if self.draft is None:
            return ""
        found = (spoken(text) for step in range(self.step + 1) for text in lacking(self.draft, step))
        return next(found, "")

    @property
    def plan(self) -> Plan | None:
        """The plan that would be kept; None while something is lacking."""
        if self.draft is None:
            return None
        try:
            return plan_from(self.draft)
        except ValueError:
            return None

    @property
    def needs_reason(self) -> bool:
        """Whether keeping the draft would make another version."""
        trial = self.trial
        return trial is not None and self.plan is not None and trial.kept.plan != self.plan

    def foot(self, why: str) -> "Foot":
        """What stands at the foot; `why` is the reason in the field."""
        if self.draft is None:
            return Foot(
                forward=self._kept_words(),
                also=translate("PlanView", "Next: sow") if self.page is KeptPage.PRINT else "",
                may_go_on=True,
                may_go_back=self.page is not KeptPage.PLAN,
            )
        last = self.step == Step.DRAW
        missing = self.missing
        if last and not missing and self.trial is not None:
            if not self.needs_reason:
                missing = translate("PlanView", "Nothing is changed yet.")
            elif not why:
                missing = translate("PlanView", "Say why the plan is changed.")
        return Foot(
            missing=missing,
            forward=translate("PlanView", "Keep the plan and draw the places")
            if last
            else translate("PlanView", "Next"),
            may_go_on=not missing,
            may_go_back=self.step > Step.QUESTION,
        )

    def _kept_words(self) -> str:
        if self.page is KeptPage.PRINT:
            return translate("PlanView", "Save as PDF...")
        if self.page is KeptPage.PLACES:
            return translate("PlanView", "Next: print")
        if self.page is KeptPage.SOW:
            return self._sow_words()
        if self.waits_for_draw:
            return translate("PlanView", "Draw the places")
        return translate("PlanView", "Next: places")

    def _sow_words(self) -> str:
        trial = self.trial
        if trial is None or trial.waiting == 0:
            return translate("PlanView", "Go to the Bench")
        return translate("PlanView", "They are sown: add {n} trays").format(n=trial.next_round)

    @property
    def shelves_in_use(self) -> str:
        """Which of the draft's shelves hold other trays today, in words."""
        if self.draft is None:
            return ""
        name = self.draft.trial.strip()
        counts = dict.fromkeys((shelf.name for shelf in self.draft.shelves), 0)
        for shelf, trial, count in self.reading.standing:
            if shelf in counts and trial != name:
                counts[shelf] += count
        held = ", ".join(f"{shelf} {count}" for shelf, count in counts.items() if count)
        words = translate(
            "PlanView", "Other trays grow there today ({held}): they must be gone before these are sown."
        )
        return words.format(held=held) if held else ""

    @property
    def costs(self) -> tuple[str, ...]:
        """What the draft takes."""
        return () if self.plan is None else tuple(spoken(text) for text in cost_words(self.plan))


# --- drafts to begin with


def empty_draft(reading: PlanReading) -> Draft:
    """A new trial that begins tomorrow with what the book knows."""
    return Draft(
        media=reading.media if len(reading.media) <= 4 else (),
        trusted=reading.trusted,
        shelves=reading.shelves or (ShelfPlaces(name="A", places=PLACES),),
        begins=reading.today,
        same={"feed": "none", "watering": "bottom"},
    )


# --- chances


def chances_of(draft: Draft) -> Chances | None:
    """Curves and sentences; None while there is nothing to compare. Slow at first: for a worker."""
    if len(treatments_of(draft)) < 2 or draft.margin <= 0:
        return None
    by_shelf = draft.other is not None and draft.other.by_shelf
    needed = blocks_needed(design_of(draft), draft.margin, draft.spread.sd, WANTED) or MOST_BLOCKS
    most = min(MOST_BLOCKS, max(LEAST_SHOWN, draft.trays + 2, needed + 4))
    said = shelf_words(draft) if by_shelf else (chance_words(draft), enough_words(draft), six_words(draft))
    return Chances(
        draft=draft,
        curves=tuple((times, _curve(draft, times, most, by_shelf=by_shelf)) for times in SPREADS),
        sentences=tuple(spoken(text) for text in said if text is not None),
        spread=" ".join(spoken(text) for text in (spread_words(draft), camera_words(draft)) if text),
        of_shelves=by_shelf,
    )


def _curve(draft: Draft, times: float, most: int, *, by_shelf: bool) -> tuple[tuple[float, float], ...]:
    """Chance by number of trays of each, or of sets of shelves where these are what is compared."""
    points = []
    for count in range(2, most + 1):
        if by_shelf:
            chance = shelf_chance(draft, count, times)
        else:
            design = replace(design_of(draft), blocks=count)
            chance = power(design, draft.margin, draft.spread.sd * times)
        if chance is not None:
            points.append((float(count), chance))
    return tuple(points)


def draft_to_change(trial: TrialReading, reading: PlanReading) -> Draft:
    """The kept plan as a draft; blocks that are sown stay as they are."""
    draft = draft_of(trial.kept.plan, reading.shelves)
    stay = tuple(block for block in trial.kept.plan.blocks if block.name in trial.sown_blocks)
    return replace(draft, earlier=stay, begins=max(draft.begins, reading.today)) if stay else draft


def draft_to_copy(trial: TrialReading, reading: PlanReading, trays: int | None = None) -> Draft:
    """A new trial that repeats this one, for the grower to change one thing; with so many trays of each."""
    plan = trial.kept.plan
    draft = draft_of(plan, reading.shelves)
    return replace(
        draft,
        trial=_new_name(plan.trial, reading),
        copied_from=plan.trial,
        begins=reading.today,
        trays=draft.trays if trays is None else trays,
    )


def _new_name(trial: str, reading: PlanReading) -> str:
    """A name that no kept trial has: the draft would be taken for its next version."""
    name = plain = translate("PlanView", "{trial}, once more").format(trial=trial)
    number = 2
    while reading.trial(name) is not None:
        name, number = f"{plain} ({number})", number + 1
    return name
