"""An answer hides a look for as long as it was meant to, and a look that gets worse comes back."""

from dataclasses import replace
from datetime import date

import pytest

from data.look import Look, LookKind, Urgency
from data.looklist.answers import Answer, AnswerKind, unanswered
from data.numbers import TrayId

DAY = date(2026, 3, 8)
LOOK = Look(
    tray_id=TrayId(1),
    code="A1",
    what=LookKind.LAGGING,
    urgency=Urgency.SOON,
    since=date(2026, 3, 7),
    sentence="behind",
    first="lift it",
    size=12.0,
)


def said(kind: AnswerKind, **special: object) -> Answer:
    """An answer to `LOOK`, given on 8 March."""
    answer = Answer(
        tray_id=TrayId(1), what=LookKind.LAGGING, since=LOOK.since, answer=kind, urgency=Urgency.SOON,
        size=12.0, answered_on=DAY,
    )  # fmt: skip
    return replace(answer, **special)


def shown(look: Look, answer: Answer, on: date = DAY) -> bool:
    return unanswered([look], [answer], on) == (look,)


@pytest.mark.parametrize("kind", AnswerKind)
def test_an_answered_look_is_quiet_on_the_same_day(kind: AnswerKind) -> None:
    assert not shown(LOOK, said(kind))


def test_tomorrow_means_tomorrow() -> None:
    assert shown(LOOK, said(AnswerKind.TOMORROW), date(2026, 3, 9))


def test_seen_holds_for_as_long_as_it_goes_on() -> None:
    assert not shown(LOOK, said(AnswerKind.SEEN), date(2026, 3, 14))


def test_a_break_of_two_days_is_the_same_look_and_a_longer_one_is_news() -> None:
    answer = said(AnswerKind.SEEN, last_on=date(2026, 3, 9))

    assert not shown(replace(LOOK, since=date(2026, 3, 11)), answer, date(2026, 3, 12))
    assert shown(replace(LOOK, since=date(2026, 3, 12)), answer, date(2026, 3, 13))


@pytest.mark.parametrize("kind", AnswerKind)
@pytest.mark.parametrize(("size", "comes_back"), [(0.0, False), (5.0, True)])
def test_a_look_of_no_size_at_all_can_be_answered(kind: AnswerKind, size: float, comes_back: bool) -> None:
    assert shown(replace(LOOK, size=size), said(kind, size=0.0)) is comes_back


@pytest.mark.parametrize("kind", AnswerKind)
def test_a_look_that_gets_worse_comes_back(kind: AnswerKind) -> None:
    assert shown(replace(LOOK, urgency=Urgency.TODAY), said(kind))
    assert shown(replace(LOOK, size=18.0), said(kind))
    assert not shown(replace(LOOK, size=17.0), said(kind))


def test_what_became_less_urgent_stays_quiet() -> None:
    assert not shown(LOOK, said(AnswerKind.SEEN, urgency=Urgency.NOW))


def test_another_reason_or_another_tray_is_not_answered() -> None:
    assert shown(replace(LOOK, what=LookKind.EDGE), said(AnswerKind.SEEN))
    assert shown(replace(LOOK, tray_id=TrayId(2)), said(AnswerKind.SEEN))


def test_the_last_answer_counts() -> None:
    answers = [said(AnswerKind.SEEN), said(AnswerKind.TOMORROW, answered_on=date(2026, 3, 9))]

    assert unanswered([LOOK], answers, date(2026, 3, 10)) == (LOOK,)


def test_mold_that_a_person_has_called_mold_is_not_seen_away() -> None:
    mold = replace(LOOK, what=LookKind.MOLD, urgency=Urgency.NOW, size=None)
    answer = said(AnswerKind.SEEN, what=LookKind.MOLD, urgency=Urgency.NOW, size=None)

    assert not shown(mold, answer)
    assert shown(mold, answer, date(2026, 3, 9))
