"""Verdicts: the answers of a book's trials, crop by crop and measure by measure.

In    a book; the name of a trial, or all of them; the day, where none was fixed beforehand
Out   `CropVerdict`s, for each crop the canopy score first, then yield and the score by eye
Not   the comparison (`verdict`), a tray's number (`traynumbers.py`), words (`beforehand.py`, `traywords.py`,
      `together.py`)

Day, measures, margins, weights and the trusted treatment come from the plan that was kept; what it does not
say is as usual and is said to be so. Numpy and scipy come in when there is something to compare.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.tables.trialrows import PhotoNumbers
from data.trial import Measure, MeasureKind
from data.verdict import Measured, Verdict, verdict_of
from data.verdict.apart import apart_between, apart_words, counted_trays, where_told
from data.verdict.asdrawn import not_as_drawn
from data.verdict.beforehand import beforehand
from data.verdict.camerapart import camera_sd, other_height, shift_of_heights
from data.verdict.comparedday import ComparedDay, compared_day
from data.verdict.countedof import CountedOf
from data.verdict.movers import Mover, ScoredTray, movers
from data.verdict.notes import half_way
from data.verdict.rechecks import rechecks
from data.verdict.sensitivity import Otherwise
from data.verdict.terms import Terms
from data.verdict.together import measures_together
from data.verdict.traynumbers import (
    LostToMold,
    NoNumber,
    TrayNumber,
    canopy_numbers,
    ended_before,
    eye_numbers,
    is_lost,
    lost_to_mold,
    mold_areas,
    yield_numbers,
)
from data.verdict.traywords import left_out_words, missing_trays, tray_doubts, untreated
from data.verdict.words import Scale, Unit

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["CropVerdict", "verdicts"]

UNITS = {MeasureKind.SCORE: Unit.POINTS, MeasureKind.YIELD: Unit.GRAMS, MeasureKind.EYE: Unit.POINTS}


@dataclass(frozen=True, slots=True, kw_only=True)
class CropVerdict:
    """The answer for one crop and one measure, with what it rests on."""

    trial: str
    crop: str
    kind: MeasureKind
    scale: Scale
    verdict: Verdict
    decides: bool | None  # the measure that was named as the one that decides; None: no plan named one
    on_day: int | None  # since sowing; None for yield
    method: str | None  # version that scored the photos; None for yield and eye
    counted: CountedOf | None  # what coverage and uniformity are a share of; None for yield and eye
    numbers: tuple[TrayNumber, ...]  # every tray of the crop
    treatments: Mapping[TrayId, str]
    lost: tuple[LostToMold, ...] = ()
    movers: tuple[Mover, ...] = ()
    otherwise: tuple[Otherwise, ...] = ()
    apart: tuple[str, ...] = ()  # `CONDITIONS` in which what is compared differs unplanned
    notes: tuple[Sentence, ...] = field(default_factory=tuple)

    @property
    def moldy(self) -> frozenset[str]:
        """Media whose difference rests on trays that score nothing for mold, their own or trusted ones."""
        none = {self.treatments[one.tray.id] for one in self.numbers if one.value == 0.0 and one.is_moldy}
        return frozenset(self.treatments.values() if self.verdict.trusted in none else none)

    @property
    def apart_words(self) -> tuple[Sentence, ...]:
        """What a difference can come from as well; empty where nothing was apart."""
        words = apart_words(self.apart, planned=self.decides is not None)
        return (*words, *where_told(self.apart))


def verdicts(
    book: "Book", trial: str | None = None, on_day: int | None = None, cancel: CancelToken | None = None
) -> tuple[CropVerdict, ...]:
    """The verdicts of one trial or of all; empty where the book has no trial with trays.

    Parameters
    ----------
    on_day : days since sowing on which photos are read, where the plan fixes none.
    cancel : looked at before each crop and measure; raises `Cancelled`.
    """
    names = book.trials() if trial is None else (trial,)
    stop = cancel or CancelToken()
    return tuple(found for name in names for found in _TrialReading(book, name, on_day).verdicts(stop))


class _TrialReading(Terms):
    """One trial of a book."""

    def __init__(self, book: "Book", trial: str, on_day: int | None) -> None:
        super().__init__(book, trial, on_day)
        self.words = book.suspect_words(trial)
        self._by_day: dict[int, tuple[PhotoNumbers, ...]] = {}
        self.today: date = book.today()

    def verdicts(self, cancel: CancelToken) -> Iterator[CropVerdict]:
        for crop in dict.fromkeys(tray.crop for tray in self.trays):
            trays = tuple(tray for tray in self.trays if tray.crop == crop)
            found = []
            for kind in MeasureKind:
                cancel.check()
                one = self._one(crop, trays, kind)
                if one is not None:
                    found.append(one)
            together = measures_together(found, planned=self.plan is not None)
            for one in found:
                yield _with_notes(one, together if one is found[0] else ())

    # --- one crop and measure

    def _one(self, crop: str, trays: Sequence[Tray], kind: MeasureKind) -> CropVerdict | None:
        treated = tuple(tray for tray in trays if tray.id in self.treatments)
        day, day_fixed = self.day(crop, trays)
        score = kind is MeasureKind.SCORE
        read = compared_day(self._photos_of(treated, day)) if score else ComparedDay()
        numbers = self._numbers(kind, treated, read, day)
        if numbers is None:
            return None
        measure, fixed = self.measure(kind)
        table = self._table(numbers)
        so_far = self._so_far(treated, numbers, kind)
        camera = camera_sd(numbers, read.method, self.rule)
        verdict = self._compared(table, measure, so_far, camera)
        notes = (
            *beforehand(
                self.versions,
                measure,
                verdict,
                crop=crop,
                day=day,
                fixed=fixed,
                day_fixed=day_fixed,
                margin_said=self.margin_said(kind, read.photos),
            ),
            *read.words(treated),
            *left_out_words(treated, self._left_out(day) if score else ()),
            *missing_trays(numbers),
            *untreated(trays, self.treatments),
            *not_as_drawn(treated, self.treatments, self.drawn),
            *tray_doubts(numbers),
            *half_way(table, self.trusted or ""),
        )
        return CropVerdict(
            trial=self.trial,
            crop=crop,
            kind=kind,
            scale=Scale(unit=UNITS[kind], digits=1),
            verdict=verdict,
            decides=self.decides(kind),
            on_day=day if score else None,
            method=read.method,
            counted=read.counted,
            numbers=numbers,
            treatments={tray.id: self.treatments[tray.id] for tray in treated},
            lost=lost_to_mold(self.treatments, treated, mold_areas(self.words)),
            movers=self._movers(numbers) if score else (),
            notes=notes,
            otherwise=self._otherwise(verdict, table, treated, numbers, read),
            apart=self._apart(numbers),
        )

    def _numbers(
        self, kind: MeasureKind, treated: Sequence[Tray], read: ComparedDay, day: int | None
    ) -> tuple[TrayNumber, ...] | None:
        """One number a tray; None where a measure beside the score was never taken."""
        if kind is MeasureKind.SCORE:
            running, gone = self._running(treated, day), ended_before(treated, day)
            return canopy_numbers(treated, read, self.words, self.rule, running, gone)
        if kind is MeasureKind.YIELD:
            grams = self.book.fresh_masses(self.trial)
            taken = any(tray.id in grams for tray in treated)
            return yield_numbers(treated, grams, self.words, self.rule) if taken else None
        numbers = eye_numbers(treated, self.book.eye_scores(self.trial))
        return None if all(number.value is None for number in numbers) else numbers

    def _otherwise(
        self,
        verdict: Verdict,
        table: Sequence[Measured],
        treated: Sequence[Tray],
        numbers: Sequence[TrayNumber],
        read: ComparedDay,
    ) -> tuple[Otherwise, ...]:
        """What the same trays say where it is asked otherwise."""
        areas = mold_areas(self.words)
        return rechecks(
            verdict,
            table,
            by_shelf=self.by_shelf(),
            moldy={tray.code for tray in treated if is_lost(tray, areas)},
            shift=shift_of_heights(numbers, self.rule) if read.counted is CountedOf.INNER else 0.0,
            other_height=other_height(treated, self.treatments, self.trusted, self._kinds()),
            other_area=self._by_other_area(treated, read),
            other_method=self._by_other_method(treated, read),
        )

    def _left_out(self, day: int | None) -> frozenset[TrayId]:
        return frozenset() if day is None else self.book.left_out_on(self.trial, day)

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

    def _so_far(self, trays: Sequence[Tray], numbers: Sequence[TrayNumber], kind: MeasureKind) -> bool:
        """Whether planned trays are still to come: sown but not read, or not sown yet."""
        if any(number.still_to_come for number in numbers):
            return True
        if self.plan is None:
            return False
        if kind is MeasureKind.EYE and any(n.why_none is NoNumber.NOT_LOOKED_AT for n in numbers):
            return True
        sown = dict.fromkeys((treatment.name for treatment in self.plan.treatments), 0)
        for tray in trays:
            sown[self.treatments[tray.id]] += 1
        return min(sown.values(), default=0) < self.plan.trays_per_treatment

    def _table(self, numbers: Sequence[TrayNumber]) -> list[Measured]:
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

    def _compared(self, table: list[Measured], measure: Measure, so_far: bool, camera_sd: float) -> Verdict:
        trusted = self.trusted or ""
        by_shelf = self.by_shelf()
        margin = measure.margin
        if measure.unit == "%":
            plain = verdict_of(table, trusted, 0.0, quick=True)
            mean = next((line.mean for line in plain.media if line.medium == trusted), None)
            margin = abs(mean or 0.0) * measure.margin / 100
        return verdict_of(table, trusted, margin, so_far=so_far, camera_sd=camera_sd, by_shelf=by_shelf)

    def _kinds(self) -> dict[str, str]:
        """Kind of each medium of the book."""
        return {name: medium.kind for name in self.book.media() if (medium := self.book.medium(name))}

    def _by_other_method(self, trays: Sequence[Tray], read: ComparedDay) -> list[tuple[str, list[Measured]]]:
        return [(one, self._read_as(trays, read.by_version(one))) for one in read.others[:1]]

    def _by_other_area(self, trays: Sequence[Tray], read: ComparedDay) -> list[tuple[str, list[Measured]]]:
        """The same trays counted of the inner area, where they are compared by the bed."""
        if read.counted is not CountedOf.BED:
            return []
        return [("", self._read_as(trays, read.counted_as(CountedOf.INNER)))]

    def _read_as(self, trays: Sequence[Tray], read: ComparedDay) -> list[Measured]:
        return self._table(canopy_numbers(trays, read, self.words, self.rule, {}))

    def _apart(self, numbers: Sequence[TrayNumber]) -> tuple[str, ...]:
        return apart_between(counted_trays(numbers), self.treatments, self.plan)

    def _movers(self, numbers: Sequence[TrayNumber]) -> tuple[Mover, ...]:
        trays = [
            ScoredTray(
                block=number.tray.block or "", medium=self.treatments[number.tray.id], score=number.score
            )
            for number in numbers
            if number.score is not None
        ]
        return movers(trays, self.trusted or "")


def _with_notes(found: CropVerdict, more: Sequence[Sentence]) -> CropVerdict:
    return replace(found, notes=(*found.notes, *more)) if more else found
