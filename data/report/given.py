"""Given: warmth of trays and air, and the water and feed that they got, by treatment, as far as noted.

In    a book, the compared trays of one crop with their treatments, the day that is read
Out   `Given`: of each kind and treatment the mean of its trays, the least and the most, how many are known
Not   conditions that are said once of a tray (`alike.py`), their words (`conditions.py`)

From sowing to the end of the day that is read, or to the tray's end; where no day is read to now. The air is
the tray's own or, where nobody noted it of the tray, that of its shelf from its last move on; the warmth of
the medium is its own. One number of a logger counts as much as another.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from statistics import fmean
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.growing.shelved import stands_since
from data.numbers import TrayId
from data.readings import ReadingKind
from data.records import Tray

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["KINDS", "Given", "Known", "given_to"]

AIR = (ReadingKind.AIR_TEMPERATURE, ReadingKind.HUMIDITY)
FELT = (*AIR, ReadingKind.MEDIUM_TEMPERATURE)  # of a moment; the others are amounts that add up
KINDS = (*FELT, ReadingKind.WATER, ReadingKind.FEED)
Spell = tuple[datetime, datetime]


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """What is known of one treatment, in the unit of the kind."""

    mean: float  # over its trays
    least: float  # of air and medium: of all readings; of what was given: of all trays
    most: float
    known: int  # trays
    trays: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """One kind of reading of one crop; None for treatments of which nothing is known."""

    kind: ReadingKind
    crop: str
    by_treatment: Mapping[str, Known | None]

    @property
    def is_known(self) -> bool:
        """Whether anything was noted."""
        return any(self.by_treatment.values())


def given_to(
    book: "Book",
    trays: Sequence[Tray],
    treatments: Mapping[TrayId, str],
    read_on: Mapping[str, int],
    cancel: CancelToken,
) -> tuple[Given, ...]:
    """All kinds, each crop by crop; `read_on` has the day since sowing on which a crop is read."""
    reader = _Reader(book, read_on)
    treated = [tray for tray in trays if tray.id in treatments]
    found = []
    for kind in KINDS:
        for crop in dict.fromkeys(tray.crop for tray in treated):
            cancel.check()
            mine: dict[str, list[Tray]] = {}
            for tray in treated:
                if tray.crop == crop:
                    mine.setdefault(treatments[tray.id], []).append(tray)
            known = {
                name: _known(kind, [reader.values(one, kind) for one in of]) for name, of in mine.items()
            }
            found.append(Given(kind=kind, crop=crop, by_treatment=known))
    return tuple(found)


def _known(kind: ReadingKind, values: Sequence[Sequence[float]]) -> Known | None:
    """Of the readings of each tray."""
    told = [one for one in values if one]
    if not told:
        return None
    each = [fmean(one) if kind in FELT else sum(one) for one in told]
    whole = [value for one in told for value in one] if kind in FELT else each
    return Known(mean=fmean(each), least=min(whole), most=max(whole), known=len(told), trays=len(values))


class _Reader:
    """Readings of trays and shelves; what is asked of a shelf is asked once."""

    def __init__(self, book: "Book", read_on: Mapping[str, int]) -> None:
        self.book, self.read_on, self.now = book, read_on, book.now()
        self._of_shelf: dict[tuple[str, ReadingKind, Spell], list[float]] = {}

    def values(self, tray: Tray, kind: ReadingKind) -> list[float]:
        since, until = self._spell(tray)
        own = [one.value for one in self.book.readings(tray.id, kind, since=since, until=until)]
        if own or kind not in AIR or not tray.shelf:
            return own
        since = max(since, stands_since(tray, self.book.events(tray.id)))
        key = (tray.shelf, kind, (since, until))
        if key not in self._of_shelf:
            found = self.book.readings(kind=kind, shelf=tray.shelf, since=since, until=until)
            self._of_shelf[key] = [one.value for one in found]
        return self._of_shelf[key]

    def _spell(self, tray: Tray) -> Spell:
        ends = [tray.done_at or self.now]
        day = self.read_on.get(tray.crop)
        if day is not None:
            midnight = datetime.combine(tray.sown_at.date(), time.min)
            ends.append(midnight + timedelta(days=day + 1, seconds=-1))
        return tray.sown_at, min(ends)
