"""Limits: a stage, what it took and what it may take, each as one row of a table.

In    stages as functions
Out   `Row`s; the table as text
Not   which stages there are (`photorows.py`, `bookrows.py`, `windowrows.py`)

A photo's stages are told as a ratio to one strict decode of the same photo, taken right beside them in each
round: medians of rounds, one thread. All times are of the processor, not of the clock, except where a row
says so: others may be at work on the machine.
"""

import ctypes
import os
import sys
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from statistics import median
from time import perf_counter, process_time
from typing import Any

__all__ = [
    "FOOT",
    "HEAD",
    "ROUNDS",
    "Row",
    "as_line",
    "as_table",
    "busy",
    "cpu_ms",
    "one_peak",
    "ratio",
    "seconds",
]

ROUNDS = 7
M_TRIM_THRESHOLD, M_MMAP_THRESHOLD = -1, -3
FREE = 1.5  # load of the last minute; this program itself makes up to one of it
Work = Callable[[], Any]


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One stage against its limit."""

    stage: str
    value: float
    limit: float
    unit: str = "x decode"
    at_least: bool = False  # the limit is a floor
    own: bool = False  # the limit is ours: no reckoning stands behind it
    not_judged: str = ""  # why the limit cannot be asked for here and now

    @property
    def verdict(self) -> str:
        """ok, over, or why neither."""
        if self.not_judged:
            return self.not_judged
        return "ok" if (self.value >= self.limit if self.at_least else self.value <= self.limit) else "OVER"


HEAD = f"{'stage':44s} {'limit':>8s} {'measured':>9s}  unit"
FOOT = "* a limit of ours, about twice what was measured when it was set"


def as_line(row: Row) -> str:
    """One row as text."""
    sign = ">=" if row.at_least else "*" if row.own else ""
    limit = f"{sign}{row.limit:g}"
    return f"{row.stage:44s} {limit:>8s} {row.value:9.3g}  {row.unit:14s} {row.verdict}"


def as_table(rows: Iterable[Row]) -> str:
    """All rows as text, one a line."""
    return "\n".join([HEAD, *(as_line(row) for row in rows), FOOT])


def one_peak() -> None:
    """Let arrays of a photo's size be fresh memory each time, smaller ones not (Linux with glibc).

    Else the unit has two peaks, 36 and 60 ms on one machine: once a large array was freed, glibc keeps the
    next ones. Limits were set by the slower one.
    """
    if sys.platform.startswith("linux"):
        mallopt = getattr(ctypes.CDLL(None), "mallopt", None)
        if mallopt is not None:
            mallopt(M_MMAP_THRESHOLD, 8 << 20)
            mallopt(M_TRIM_THRESHOLD, 256 << 20)


def busy() -> str:
    """Why the clock cannot be asked here and now; empty where this machine has nothing else to do."""
    return "not judged: other programs are at work" if os.getloadavg()[0] > FREE else ""


def seconds(work: Work, *, clock: Callable[[], float] = process_time) -> float:
    """What one run takes."""
    begun = clock()
    work()
    return clock() - begun


def ratio(work: Work, unit: Work, rounds: int = ROUNDS, *, by_the_clock: bool = False) -> float:
    """How many units it takes: the median over rounds in which both are run in turn."""
    clock = perf_counter if by_the_clock else process_time
    work(), unit()  # the first run pays for imports and tables
    return median(seconds(work, clock=clock) / seconds(unit, clock=clock) for _ in range(rounds))


def cpu_ms(work: Work, rounds: int = ROUNDS) -> float:
    """Milliseconds of the processor, median of rounds."""
    work()
    return 1000 * median(seconds(work) for _ in range(rounds))
