"""Chart lines: what the charts of a verdict are given, no Qt.

In    nothing
Out   `IntervalLine`, `RankLine`, `BlockLine`
Not   making them (`view.py`), drawing them (`intervals.py`, `ranks.py`, `blocks.py`)
"""

from collections.abc import Mapping
from dataclasses import dataclass

__all__ = ["BlockLine", "IntervalLine", "Intervals", "RankLine"]


@dataclass(frozen=True, slots=True, kw_only=True)
class IntervalLine:
    """One medium."""

    name: str
    series: int
    difference: float
    low: float
    high: float
    words: str  # the same in words


@dataclass(frozen=True, slots=True, kw_only=True)
class Intervals:
    """All new media of one crop and measure, against the margin."""

    lines: tuple[IntervalLine, ...] = ()
    margin: float = 0.0
    trusted: str = ""
    unit: str = ""  # of the numbers
    so_far: bool = False
    lower_is_better: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class RankLine:
    """One medium; 1 is best."""

    name: str
    series: int
    low: int
    high: int
    words: str  # "1-2 of 3"


@dataclass(frozen=True, slots=True, kw_only=True)
class BlockLine:
    """One block."""

    name: str
    values: Mapping[str, tuple[float, ...]]  # of its trays, by medium
