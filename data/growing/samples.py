"""Samples: times of a logger -> how long each of its numbers stands.

In    ascending times of samples, a time that is asked for
Out   (number of the sample, begin, end) within that time; where the logger was silent there is none
Not   what was measured (`air.py`, `degreedays.py`)
"""

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from itertools import pairwise

__all__ = ["LONGEST_STEP", "hours", "spans"]

LONGEST_STEP = timedelta(hours=2)  # a longer silence of the logger is not known


def spans(
    times: Sequence[datetime], begin: datetime, end: datetime
) -> Iterator[tuple[int, datetime, datetime]]:
    """Each sample until the next one, at most two hours; the last as long as the others do, in the middle."""
    steps = sorted(two - one for one, two in pairwise(times))
    usual = min(steps[len(steps) // 2], LONGEST_STEP) if steps else timedelta()
    for number, at in enumerate(times):
        until = at + usual if number + 1 == len(times) else min(times[number + 1], at + LONGEST_STEP)
        start, stop = max(at, begin), min(until, end)
        if stop > start:
            yield number, start, stop


def hours(span: timedelta) -> float:
    """A span in hours."""
    return span.total_seconds() / 3600
