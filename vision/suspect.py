"""Suspect: one patch that may be mold, and how its tray's day and medium change what is thought of it.

In    `Suspect`s as they were found; what is known of the tray
Out   the same, judged again, with day and medium in their reasons
Not   finding them (`suspects.py`), what a person said (the book)

White root hairs stand in fans around sprouts on the first days and fade: what is white then counts less than
half, and the reason says so.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

__all__ = [
    "LEAST_CONFIDENCE", "MAY_BE_HAIRS", "UNKNOWN_WHITE", "Suspect", "TrayFacts", "known_better",
    "surest_first", "unknown_again", "with_facts",
]  # fmt: skip

LEAST_CONFIDENCE = 0.14  # 2 false ones on 111 trays without mold (`models/mold.md`)
HAIRY_DAYS = (0.5, 5.0)  # since sowing: root hairs stand there (several growers' pages agree; no study found)
MAY_BE_HAIRS, HAIRY_WHITE, LATE_WHITE = 0.5, 0.3, 0.8  # times the confidence of what is white, by the day
UNKNOWN_WHITE = "bright white, so it may be root hairs"


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayFacts:
    """What is known of a tray beside its photo."""

    days: float | None = None
    """Since sowing."""
    medium: str | None = None
    """Its name, for the words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Suspect:
    """One patch that may be mold."""

    x_mm: float
    y_mm: float
    area_cm2: float
    """Only what is seen between leaves."""
    confidence: float
    """0-1: how much the patch looks like mold; no chance in the strict sense."""
    why: str
    outline_mm: tuple[tuple[float, float], ...]
    white: bool = False
    """As root hairs and burnt spots are."""


def surest_first(suspects: Iterable[Suspect], least: float = LEAST_CONFIDENCE) -> tuple[Suspect, ...]:
    """Those sure enough to be told, the surest first, the larger first among equals."""
    kept = [suspect for suspect in suspects if suspect.confidence >= least]
    return tuple(sorted(kept, key=lambda suspect: (-suspect.confidence, -suspect.area_cm2)))


def with_facts(suspects: Iterable[Suspect], facts: TrayFacts) -> tuple[Suspect, ...]:
    """The same, judged again with what is known of their tray, the surest first.

    White counts a little less on the days of root hairs and more on all others; the reason names day and
    medium.
    """
    return surest_first(known_better(suspect, facts) for suspect in suspects)


def known_better(suspect: Suspect, facts: TrayFacts) -> Suspect:
    """One suspect judged again as `with_facts` does, however faint it is then."""
    why, confidence = suspect.why, suspect.confidence
    if suspect.white and facts.days is not None:
        confidence = round(confidence * _share_of_white(facts.days) / MAY_BE_HAIRS, 3)
        why = why.replace(UNKNOWN_WHITE, _of_white(facts.days))
    if facts.medium:
        why = why.replace("medium", facts.medium)
    return replace(suspect, confidence=confidence, why=why)


def unknown_again(suspect: Suspect, facts: TrayFacts) -> Suspect:
    """What was thought of it before `known_better` knew these facts: they turned out to be another tray's."""
    why, confidence = suspect.why, suspect.confidence
    if facts.medium:
        why = why.replace(f"bare {facts.medium}", "bare medium")
        why = why.replace(f"the {facts.medium} around", "the medium around")
    if facts.days is not None and _of_white(facts.days) in why:
        confidence = round(confidence * MAY_BE_HAIRS / _share_of_white(facts.days), 3)
        why = why.replace(_of_white(facts.days), UNKNOWN_WHITE)
    return replace(suspect, confidence=confidence, why=why)


def _share_of_white(days: float) -> float:
    return HAIRY_WHITE if _is_hairy(days) else LATE_WHITE


def _is_hairy(days: float) -> bool:
    """Whether root hairs are to be expected so many days after sowing."""
    return HAIRY_DAYS[0] <= days < HAIRY_DAYS[1]


def _of_white(days: float) -> str:
    if days < HAIRY_DAYS[0]:
        return "bright white, before root hairs stand"
    if _is_hairy(days):
        return f"bright white on day {days:.0f}, when root hairs stand in fans: look again tomorrow"
    return f"bright white, yet on day {days:.0f} root hairs have mostly faded"
