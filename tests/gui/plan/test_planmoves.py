"""Plan moves: the state that follows, without a window."""

from dataclasses import replace
from datetime import date

from data.plan.draft import Draft, Step
from data.trial import MeasureKind, Spread
from gui.plan.moves import stepped_back, stepped_on, with_first_reading, with_reading, with_spreads
from gui.plan.reading import PlanReading
from gui.plan.view import KeptPage, PlanState

DRAFT = Draft(trial="Mat", begins=date(2026, 3, 2))


def test_steps_end_where_the_plan_is_kept_and_begin_with_the_question() -> None:
    state = PlanState(draft=DRAFT)

    assert stepped_back(state).step == Step.QUESTION
    assert stepped_on(state).step == Step.VARIES
    assert stepped_on(replace(state, step=Step.DRAW)).step == Step.DRAW


def test_pages_go_from_the_plan_to_sowing() -> None:
    seen = [PlanState(page=KeptPage.PLAN)]
    while stepped_on(seen[-1]) != seen[-1]:
        seen.append(stepped_on(seen[-1]))

    assert [state.page for state in seen] == list(KeptPage)
    assert stepped_back(seen[-1]).page is KeptPage.PRINT


def test_an_unfinished_draft_comes_back_with_the_first_reading_only() -> None:
    reading = PlanReading(draft=DRAFT)

    assert with_first_reading(PlanState(), reading).draft == DRAFT
    assert with_reading(PlanState(), reading).draft is None


def test_what_the_trays_have_taught_stays_when_the_book_is_read_again() -> None:
    spread = Spread(sd=3.0, source="18 trays of yours", df=12)
    state = with_spreads(PlanState(draft=DRAFT), {MeasureKind.SCORE: spread})
    assert state.draft is not None
    assert state.draft.spread == spread

    again = with_reading(state, PlanReading())

    assert again.reading.spreads == {MeasureKind.SCORE: spread}
    assert again.draft == state.draft
