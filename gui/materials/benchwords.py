"""Bench words: what is said of the steps of a test of a medium; no Qt.

In    a step, what was read so far, what comes next
Out   lines and labels
Not   which step comes when (`data/medium/benchtest.py`), the dialog (`benchassistant.py`)
"""

from collections.abc import Sequence
from datetime import datetime

from data.entry.units import UnitSystem
from data.medium.benchtest import Due, Step, readings_of_step
from data.readings import Reading, ReadingKind
from gui.language.spoken import DAY, day_words, in_figures
from gui.language.words import translate
from gui.materials.view import step_words

__all__ = ["asked_words", "done_words", "due_words"]


def done_words(step: Step, readings: Sequence[Reading]) -> str:
    """A step with its numbers, marked by shape as done or still to come."""
    found = [one for one in readings_of_step(readings, step.name) if one.kind is step.kind]
    if not found:
        return translate("BenchAssistant", "○ {step}").format(step=step_words(step.name))
    told = ", ".join(f"{in_figures(one.value)} {'°C' if one.unit == 'C' else one.unit}" for one in found)
    return translate("BenchAssistant", "● {step}: {told}").format(step=step_words(step.name), told=told)


def due_words(due: Due, now: datetime) -> str:
    """When the next step is due."""
    if due.is_now:
        return translate("BenchAssistant", "It is due now.")
    at = f"{due.at:%H:%M}"
    if due.at.date() == now.date():
        return translate("BenchAssistant", "Due at {at}. Close this: the table reminds you.").format(at=at)
    words = translate("BenchAssistant", "Due on {day} at {at}. Close this: the table reminds you.")
    return words.format(day=day_words(due.at, DAY), at=at)


def asked_words(kind: ReadingKind, system: UnitSystem) -> str:
    """What is typed, with the unit that it is in where none is typed."""
    names = {
        ReadingKind.WEIGHT: translate("BenchAssistant", "Weight, {unit} or with its unit"),
        ReadingKind.MEDIUM_TEMPERATURE: translate("BenchAssistant", "Medium, {unit} or with its unit"),
        ReadingKind.AIR_TEMPERATURE: translate("BenchAssistant", "Air, {unit} or with its unit"),
    }
    weight, warmth = ("g", "°C") if system is UnitSystem.METRIC else ("oz", "°F")
    return names[kind].format(unit=weight if kind is ReadingKind.WEIGHT else warmth)
