"""Plan moves: what Plan shows once the book is read, spreads are learned, one steps on or back; no Qt.

In    a `PlanState`, and what has happened
Out   the next `PlanState`
Not   what is kept in the book (`keeper.py`), what stands on the pages (`view.py`)
"""

from collections.abc import Mapping
from dataclasses import replace

from data.plan.draft import Step
from data.trial import MeasureKind, Spread
from gui.plan.reading import PlanReading
from gui.plan.view import KeptPage, PlanState

__all__ = [
    "stepped_back", "stepped_on", "with_first_reading", "with_reading", "with_spreads", "without_draft",
]  # fmt: skip


def with_reading(state: PlanState, reading: PlanReading) -> PlanState:
    """Another reading of the book; what the trays have taught stays, and a trial that is gone is left.

    A plan that was taken back is a draft again; one that was kept once more is none.
    """
    more = _versions(reading) - _versions(state.reading)
    state = replace(state, reading=replace(reading, spreads=state.reading.spreads))
    if more < 0 and state.draft is None and reading.draft is not None:
        return replace(state, draft=reading.draft, step=Step.DRAW)
    if more > 0 and reading.draft is None and state.draft is not None:
        name = state.draft.trial.strip()
        if reading.trial(name) is not None:
            return replace(state, draft=None, shown=name, page=KeptPage.PLACES)
    if state.draft is not None or reading.trial(state.shown) is not None:
        return state
    last = reading.trials[-1].kept.plan.trial if reading.trials else ""
    return replace(state, shown=last, page=KeptPage.PLAN)


def _versions(reading: PlanReading) -> int:
    return sum(len(trial.versions) for trial in reading.trials)


def with_first_reading(state: PlanState, reading: PlanReading) -> PlanState:
    """The first reading of a book: a draft that was left unfinished is there again."""
    if state.draft is None and reading.draft is not None:
        state = replace(state, draft=reading.draft, step=Step.QUESTION)
    return with_reading(state, reading)


def without_draft(state: PlanState) -> PlanState:
    """The draft is given up: back to the trial that was shown, changed or copied, else to the last one.

    A draft of before the program was started has no trial that was shown.
    """
    draft = state.draft
    names = (state.shown,) if draft is None else (state.shown, draft.trial.strip(), draft.copied_from)
    shown = next((name for name in names if state.reading.trial(name) is not None), "")
    return with_reading(replace(state, draft=None, shown=shown, page=KeptPage.PLAN), state.reading)


def with_spreads(state: PlanState, spreads: Mapping[MeasureKind, Spread]) -> PlanState:
    """What the grower's own trays have taught takes the place of a guess in the draft."""
    draft = state.draft
    if draft is not None and draft.spread.df is None and draft.measure in spreads:
        draft = replace(draft, spread=spreads[draft.measure])
    return replace(state, reading=replace(state.reading, spreads=spreads), draft=draft)


def stepped_on(state: PlanState) -> PlanState:
    """The next step of the draft, or the next page of the kept trial; the last one stays."""
    return _stepped(state, 1)


def stepped_back(state: PlanState) -> PlanState:
    """The step or page before; the first one stays."""
    return _stepped(state, -1)


def _stepped(state: PlanState, by: int) -> PlanState:
    if state.draft is not None:
        return replace(state, step=min(Step.DRAW, max(Step.QUESTION, state.step + by)))
    pages = list(KeptPage)
    return replace(state, page=pages[min(len(pages) - 1, max(0, pages.index(state.page) + by))])
