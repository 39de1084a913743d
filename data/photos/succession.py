"""Succession: trays that follow each other under one code or tag, or on one place -> the one that stood then.

In    trays, a moment
Out   those of them that stood at that moment; where several would, nobody can tell them apart
Not   which code, tag or place is meant (`upkeep/logkeeping.py`, `chapters/reader.py`)

A code, a tag and a place may go to a new tray once the old one has ended, often on the same day, and a sowing
carries a time that nobody has looked at. So on the day of the change the end of the old tray parts the two:
that is noted when it happens. The new tray never gets what belongs to the old one, nor the other way round.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from typing import Protocol, TypeVar

from data.numbers import TrayId

__all__ = ["Grew", "OnRack", "rack_at", "stood_at"]


class Grew(Protocol):
    """A tray, as far as it matters here."""

    @property
    def id(self) -> TrayId:
        """Its number in the book."""

    @property
    def sown_at(self) -> datetime:
        """The day is sure, the time often is not."""

    @property
    def done_at(self) -> datetime | None:
        """When it was cut or thrown away; None while it grows."""


class OnRack(Grew, Protocol):
    """The same with its place."""

    @property
    def code(self) -> str:
        """As it stands on the tray."""

    @property
    def shelf(self) -> str:
        """Name of the shelf."""

    @property
    def position(self) -> int:
        """Along the shelf."""


T = TypeVar("T", bound=Grew)
R = TypeVar("R", bound=OnRack)


def stood_at(trays: Iterable[T], at: datetime, before: timedelta = timedelta(0)) -> tuple[T, ...]:
    """The trays that stood at a moment, without those that only came after another one of them.

    Parameters
    ----------
    before : how long before its sowing a tray counts where no other one stood.
    """
    left = [tray for tray in trays if tray.done_at is None or at <= tray.done_at]
    grew = [tray for tray in left if tray.sown_at.date() <= at.date()]
    if not grew:
        grew = [tray for tray in left if tray.sown_at - before <= at]
    return tuple(tray for tray in grew if not any(_follows(tray, other) for other in grew))


def rack_at(trays: Sequence[R], at: datetime) -> tuple[R, ...]:
    """The rack at a moment, in the order given: of trays with one code, or on one place, that which stood."""
    codes: dict[str, list[R]] = defaultdict(list)
    places: dict[tuple[str, int], list[R]] = defaultdict(list)
    for tray in trays:
        codes[tray.code.casefold()].append(tray)
        places[tray.shelf, tray.position].append(tray)
    return tuple(
        tray
        for tray in trays
        if tray in stood_at(codes[tray.code.casefold()], at)
        and tray in stood_at(places[tray.shelf, tray.position], at)
    )


def _follows(tray: Grew, other: Grew) -> bool:
    """Whether `tray` was sown on the day on which `other` ended, or later: `other` stands until its end."""
    return other.done_at is not None and tray.id != other.id and tray.sown_at.date() >= other.done_at.date()
