"""Trial reading: what the answers of one trial rest on, crop by crop and measure by measure.

In    a book and the name of a trial; the day, where none was fixed beforehand
Out   `Reading`: the trays of a crop that are compared, their photos, a number each
Not   the terms (`terms.py`), a tray's number (`traynumbers.py`), the answer (`verdicts.py`)
"""

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, NamedTuple

from data.numbers import TrayId
from data.records import Tray
from data.tables.trialrows import PhotoNumbers
from data.trial import MeasureKind
from data.verdict import Measured
from data.verdict.comparedday import ComparedDay, compared_day
from data.verdict.terms import Terms
from data.verdict.traynumbers import (
    NoNumber,
    TrayNumber,
    canopy_numbers,
    ended_before,
    eye_numbers,
    yield_numbers,
)

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Reading", "TrialReading"]


class Reading(NamedTuple):
    """One crop and measure, with what its answer rests on."""

    crop: str
    kind: MeasureKind
    trays: Sequence[Tray]  # all of the crop
    treated: tuple[Tray, ...]  # those of them that are compared
    day: int | None  # since sowing, on which photos are read
    day_fixed: bool  # beforehand
    photos: ComparedDay  # none but for the score
    numbers: tuple[TrayNumber, ...]  # one a tray of `treated`
    table: list[Measured]  # those of them that have a value


class TrialReading(Terms):
    """One trial of a book."""

    def __init__(self, book: "Book", trial: str, on_day: int | None, trusted: str | None = None) -> None:
        super().__init__(book, trial, on_day, trusted)
        self.words = book.suspect_words(trial)
        self._by_day: dict[int, tuple[PhotoNumbers, ...]] = {}
        self.today: date = book.today()

    def read(self, crop: str, trays: Sequence[Tray], kind: MeasureKind) -> Reading | None:
        """One crop and measure; None where a measure beside the score was never taken."""
        treated = tuple(tray for tray in trays if tray.id in self.treatments)
        day, day_fixed = self.day(crop, trays)
        photos = ComparedDay()
        if kind is MeasureKind.SCORE:
            photos = compared_day(self._photos_of(treated, day))
        numbers = self._numbers(kind, treated, photos, day)
        if numbers is None:
            return None
        return Reading(crop, kind, trays, treated, day, day_fixed, photos, numbers, self.tabled(numbers))

    def _numbers(
        self, kind: MeasureKind, treated: Sequence[Tray], photos: ComparedDay, day: int | None
    ) -> tuple[TrayNumber, ...] | None:
        if kind is MeasureKind.SCORE:
            running, gone = self._running(treated, day), ended_before(treated, day)
            return canopy_numbers(treated, photos, self.words, self.rule, running, gone)
        if kind is MeasureKind.YIELD:
            grams = self.book.fresh_masses(self.trial)
            taken = any(tray.id in grams for tray in treated)
            return yield_numbers(treated, grams, self.words, self.rule) if taken else None
        numbers = eye_numbers(treated, self.book.eye_scores(self.trial))
        return None if all(number.value is None for number in numbers) else numbers

    def _photos_of(self, trays: Sequence[Tray], day: int | None) -> tuple[PhotoNumbers, ...]:
        if day is None:
            return ()
        if day not in self._by_day:
            self._by_day[day] = self.book.photo_numbers(self.trial, day)
        mine = {tray.id for tray in trays}
        return tuple(photo for photo in self._by_day[day] if photo.tray_id in mine)

    def _running(self, trays: Sequence[Tray], day: int | None) -> dict[TrayId, bool]:
        """Trays whose day is still to come."""
        return {
            tray.id: day is not None and tray.done_at is None and tray.day(self.today) <= day
            for tray in trays
        }

    def so_far(self, read: Reading) -> bool:
        """Whether planned trays are still to come: sown but not read, or not sown yet."""
        if any(number.still_to_come for number in read.numbers):
            return True
        if self.plan is None:
            return False
        unseen = any(number.why_none is NoNumber.NOT_LOOKED_AT for number in read.numbers)
        if read.kind is MeasureKind.EYE and unseen:
            return True
        sown = dict.fromkeys((treatment.name for treatment in self.plan.treatments), 0)
        for tray in read.treated:
            sown[self.treatments[tray.id]] += 1
        return min(sown.values(), default=0) < self.plan.trays_per_treatment

    def left_out(self, read: Reading) -> frozenset[TrayId]:
        """Trays of which a person left the photo of that day out."""
        if read.kind is not MeasureKind.SCORE or read.day is None:
            return frozenset()
        return self.book.left_out_on(self.trial, read.day)

    def tabled(self, numbers: Sequence[TrayNumber]) -> list[Measured]:
        """What is compared: trays that have a value."""
        return [
            Measured(
                block=number.tray.block or "",
                medium=self.treatments[number.tray.id],
                value=number.value,
                shelf=number.tray.shelf or None,
                tray=number.tray.code,
                suspect=number.score is not None and number.score.open_suspects > 0,
            )
            for number in numbers
            if number.value is not None
        ]
