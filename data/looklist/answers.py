"""Answers: what a person has said to the look list -> the looks that still ask.

In    reasons for a look; answers ("seen", "tomorrow") with the day and how bad it was then
Out   the reasons that are still to be shown
Not   keeping answers (`chapters/lookbook.py`), finding reasons (`watch.py`)

*Tomorrow* hides a reason for the rest of the day. *Seen* hides it for as long as it goes on without a break
of more than two days. Either way one that gets worse comes back: more urgent than when it was answered, or
half as large again. Mold that a person has called mold cannot be seen away: it comes back every morning.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from data.look import Look, LookKind, Urgency
from data.numbers import TrayId

__all__ = ["BREAK", "Answer", "AnswerKind", "answered_by", "unanswered"]

WORSE = 1.5  # times the size at the answer
BREAK = timedelta(days=2)  # without the reason, before it counts as a new one


class AnswerKind(StrEnum):
    """What a person can say to a line of the look list."""

    SEEN = "seen"
    TOMORROW = "tomorrow"


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """One answer to one reason."""

    tray_id: TrayId
    what: LookKind
    since: date  # of the reason, when it was answered
    answer: AnswerKind
    urgency: Urgency
    size: float | None
    answered_on: date
    last_on: date | None = None  # the last day on which the reason is known to have held


def unanswered(looks: Iterable[Look], answers: Sequence[Answer], today: date) -> tuple[Look, ...]:
    """The looks that no answer hides."""
    return tuple(look for look in looks if answered_by(look, answers, today) is None)


def answered_by(look: Look, answers: Sequence[Answer], today: date) -> Answer | None:
    """The newest answer that hides a look, or None."""
    mine = [a for a in answers if (a.tray_id, a.what) == (look.tray_id, look.what) and a.answered_on <= today]
    if not mine:
        return None
    last = mine[-1]
    return last if _hides(last, look, today) else None


def _is_larger(now: float, then: float) -> bool:
    """Nothing is no larger than nothing: a tray may weigh just what it weighs when it is dry."""
    return now > then and now >= WORSE * then


def _hides(answer: Answer, look: Look, today: date) -> bool:
    if look.urgency < answer.urgency:
        return False
    if look.size is not None and answer.size is not None and _is_larger(look.size, answer.size):
        return False
    if answer.answer is AnswerKind.TOMORROW or look.what is LookKind.MOLD:
        return answer.answered_on == today
    held = max(answer.answered_on, answer.last_on or answer.answered_on)
    return look.since <= held + BREAK
