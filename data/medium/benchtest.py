"""Bench test: a test of a medium without a tray of seed, led step by step.

In    the test, its readings (each names its step in its note), now
Out   `Due`: what to weigh or read next, and when; why a reading cannot be; what a wetting test tells
Not   keeping it (`chapters/materialbook.py`), formulas (`water.py`, `drying.py`, `heat.py`, `breakdown.py`)

Weighed is the medium in its tray, so that no tare is needed: only differences count.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from typing import NewType

from data.medium.drying import MOST_HOURS, hours_until
from data.readings import BenchTestId, NewReading, Reading, ReadingKind, impossible
from data.sentence import Sentence
from data.statistics.estimate import Estimate
from data.water import RESERVE, Wetting, wetting_of

__all__ = [
    "BenchKind", "BenchTest", "Due", "HeapPhoto", "HeapPhotoId", "NewBenchTest", "Step", "WettingFound",
    "due_of", "readings_of_step", "step_reading", "steps_of", "wetting_found", "wrong_reading",
]  # fmt: skip

HeapPhotoId = NewType("HeapPhotoId", int)
BREAKDOWN_EVERY = timedelta(days=14)
DRAINED_AFTER = timedelta(minutes=30)
WARM_FOR = timedelta(hours=1)


class BenchKind(StrEnum):
    """What is tested."""

    WETTING = "wetting"
    COOLING = "cooling"
    BREAKDOWN = "breakdown"


@dataclass(frozen=True, slots=True, kw_only=True)
class NewBenchTest:
    """A test about to begin."""

    kind: BenchKind
    medium: str
    begun_at: datetime
    tray_type: str | None = None
    seating: str | None = None
    watering: str | None = None
    place: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchTest(NewBenchTest):
    """A test in the book."""

    id: BenchTestId


@dataclass(frozen=True, slots=True, kw_only=True)
class HeapPhoto:
    """A photograph of a used medium, kept beside its break-down test."""

    id: HeapPhotoId
    bench_test: BenchTestId
    digest: str
    suffix: str
    name: str
    taken_at: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One reading of a test; `after` counts from the reading of the step `since`."""

    name: str
    kind: ReadingKind
    words: Sentence
    since: str = ""
    after: timedelta = timedelta()
    may_repeat: bool = False
    enough: int = 10_000  # readings after which it is no longer asked for


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """What comes next."""

    step: Step
    at: datetime  # when it is due
    is_now: bool


W, M, A, E = (
    ReadingKind.WEIGHT,
    ReadingKind.MEDIUM_TEMPERATURE,
    ReadingKind.AIR_TEMPERATURE,
    ReadingKind.BREAKDOWN_EYE,
)


def _later(hours: int) -> Step:
    words = Sentence("Weigh it {hours} hours after it drained; let it stand where trays stand.", hours=hours)
    return Step(name=f"after {hours} h", kind=W, words=words, since="drained", after=timedelta(hours=hours))


STEPS = {
    BenchKind.WETTING: (
        Step(name="dry", kind=W, words=Sentence("Lay the dry medium in its tray and weigh both.")),
        Step(
            name="soaked", kind=W,
            words=Sentence("Wet it through, from where you water, until it takes no more. Weigh it at once."),
        ),
        Step(
            name="drained", kind=W, since="soaked", after=DRAINED_AFTER,
            words=Sentence("Let it drain for half an hour, at the slope it stands at, and weigh it."),
        ),
        _later(6), _later(12), _later(24), _later(48),
        Step(
            name="rewetted", kind=W, since="after 48 h",
            words=Sentence("Wet it once more as before, drain it for half an hour and weigh it."),
        ),
    ),
    BenchKind.COOLING: (
        Step(name="air", kind=A, words=Sentence("Read the air of the shelf, beside the tray.")),
        Step(
            name="over the mat", kind=M,
            words=Sentence("With the heat mat on for half a day, read the middle of the wet medium."),
        ),
        Step(
            name="off", kind=M, since="over the mat",
            words=Sentence("Switch the heat mat off, take the tray from it and read the medium at once."),
        ),
        Step(
            name="cooling", kind=M, since="off", after=WARM_FOR, may_repeat=True, enough=3,
            words=Sentence(
                "Read the medium again, an hour later, a thin mat after a quarter of an hour; every further "
                "reading makes it surer."
            ),
        ),
    ),
    BenchKind.BREAKDOWN: (
        Step(
            name="laid out", kind=W,
            words=Sentence("Dry a piece of used medium, weigh it in its net bag, and bury or compost it."),
        ),
        Step(
            name="left", kind=W, since="laid out", after=BREAKDOWN_EVERY, may_repeat=True,
            words=Sentence("Dig it out, shake it clean, dry it as at first, weigh it and put it back."),
        ),
    ),
}  # fmt: skip


def steps_of(kind: BenchKind) -> tuple[Step, ...]:
    """All steps of a test, in order."""
    return STEPS[kind]


def readings_of_step(readings: Sequence[Reading], name: str) -> tuple[Reading, ...]:
    """Readings of one step, oldest first."""
    return tuple(sorted((one for one in readings if one.note == name), key=lambda one: one.taken_at))


def due_of(test: BenchTest, readings: Sequence[Reading], now: datetime) -> Due | None:
    """What comes next; None where the test is complete."""
    for step in steps_of(test.kind):
        done = readings_of_step(readings, step.name)
        if done and (not step.may_repeat or len(done) >= step.enough):
            continue
        since = readings_of_step(readings, step.since)
        begin = done[-1].taken_at if done else since[-1].taken_at if since else test.begun_at
        at = begin + step.after
        return Due(step=step, at=at, is_now=at <= now)
    return None


def step_reading(test: BenchTest, step: Step, value: float, at: datetime) -> NewReading:
    """The reading of a step, to be kept."""
    return NewReading(kind=step.kind, value=value, taken_at=at, bench_test=test.id, note=step.name)


def wrong_reading(readings: Sequence[Reading], step: Step, value: float, at: datetime) -> Sentence | None:
    """Why a reading of a step cannot be, or None."""
    if step.kind is ReadingKind.WEIGHT and (math.isnan(value) or value <= 0):
        return Sentence("A mass is above zero; {value:g} g was given.", value=value)
    wrong = impossible(step.kind, value)
    if wrong is not None:
        return wrong
    if any(one.taken_at == at and one.kind is step.kind for one in readings):
        return Sentence("There is a reading at {at:%H:%M} already: give this one its own time.", at=at)
    if step.kind is not ReadingKind.WEIGHT:
        return None
    first = next((one.value for one in readings if one.note in ("dry", "laid out")), None)
    if first is not None and step.name not in ("dry", "laid out", "left") and value < first:
        return Sentence(
            "Wet it weighs {wet:.0f} g and dry {dry:.0f} g: one of the two is wrong.", wet=value, dry=first
        )
    return None


# --- what a wetting test tells


@dataclass(frozen=True, slots=True, kw_only=True)
class WettingFound:
    """Numbers of one wetting test."""

    wetting: Wetting
    dry_after_h: Estimate | None  # hours from drained until below the dry weight
    dry_reason: Sentence | None


def wetting_found(readings: Sequence[Reading]) -> WettingFound | None:
    """What the weighings of a wetting test tell so far; None before it was weighed dry."""

    def first(name: str) -> Reading | None:
        return next(iter(readings_of_step(readings, name)), None)

    dry, soaked, drained, again = (first(name) for name in ("dry", "soaked", "drained", "rewetted"))
    if dry is None:
        return None
    minutes = None
    if soaked is not None and drained is not None:
        minutes = (drained.taken_at - soaked.taken_at) / timedelta(minutes=1)
    wetting = wetting_of(
        dry.value,
        None if soaked is None else soaked.value,
        None if drained is None else drained.value,
        drained_minutes=minutes,
        rewetted_g=None if again is None else again.value,
    )
    later = [one for one in readings if one.note.startswith("after ")]
    if drained is None or wetting.capacity_g is None or len(later) < 2:
        why = Sentence("Weigh it 6, 12, 24 and 48 hours after it drained.")
        return WettingFound(wetting=wetting, dry_after_h=None, dry_reason=why)
    weighed = [drained, *later]
    hours = [(one.taken_at - drained.taken_at) / timedelta(hours=1) for one in weighed]
    water = [one.value - dry.value for one in weighed]
    found = hours_until(hours, water, RESERVE * wetting.capacity_g) if min(water) >= 0 else None
    if found is None or found.value > MOST_HOURS:
        why = Sentence("It hardly dried: go on weighing it.")
        return WettingFound(wetting=wetting, dry_after_h=None, dry_reason=why)
    return WettingFound(wetting=wetting, dry_after_h=found, dry_reason=None)
