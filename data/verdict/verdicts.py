"""Verdicts: the answers of a book's trials, crop by crop and measure by measure.

In    a book; the name of a trial, or all of them; the day, where none was fixed beforehand
Out   `CropVerdict`s, for each crop the canopy score first, then yield and the score by eye
Not   what is read of a trial (`trialreading.py`), the comparison (`verdict`), words (`beforehand.py`,
      `traywords.py`, `together.py`)

Day, measures, margins, weights and the trusted treatment come from the plan that was kept; what it does not
say is as usual and is said to be so. Numpy and scipy come in when there is something to compare.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.trial import Measure, MeasureKind
from data.verdict import Measured, Verdict, verdict_of
from data.verdict.apart import apart_between, apart_words, counted_trays, where_told
from data.verdict.asdrawn import not_as_drawn
from data.verdict.beforehand import beforehand
from data.verdict.camerapart import camera_sd, other_height, shift_of_heights
from data.verdict.comparedday import ComparedDay
from data.verdict.countedof import CountedOf
from data.verdict.movers import Mover, ScoredTray, movers
from data.verdict.notes import half_way
from data.verdict.rechecks import rechecks
from data.verdict.sensitivity import Otherwise
from data.verdict.together import measures_together
from data.verdict.traynumbers import (
    LostToMold,
    TrayNumber,
    canopy_numbers,
    is_lost,
    lost_to_mold,
    mold_areas,
)
from data.verdict.traywords import left_out_words, missing_trays, tray_doubts, untreated
from data.verdict.trialreading import Reading, TrialReading
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
    book: "Book",
    trial: str | None = None,
    on_day: int | None = None,
    cancel: CancelToken | None = None,
    trusted: str | None = None,
) -> tuple[CropVerdict, ...]:
    """The verdicts of one trial or of all; empty where the book has no trial with trays.

    Parameters
    ----------
    on_day : days since sowing on which photos are read, where the plan fixes none.
    trusted : the medium that the others are held against, where no plan says so.
    cancel : looked at before each crop and measure; raises `Cancelled`.
    """
    names = book.trials() if trial is None else (trial,)
    stop = cancel or CancelToken()
    return tuple(found for name in names for found in _Answers(book, name, on_day, trusted).verdicts(stop))


class _Answers(TrialReading):
    """Of one trial."""

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
        read = self.read(crop, trays, kind)
        if read is None:
            return None
        measure, fixed = self.measure(kind)
        verdict = self._compared(read, measure)
        score = kind is MeasureKind.SCORE
        return CropVerdict(
            trial=self.trial,
            crop=crop,
            kind=kind,
            scale=Scale(unit=UNITS[kind], digits=1),
            verdict=verdict,
            decides=self.decides(kind),
            on_day=read.day if score else None,
            method=read.photos.method,
            counted=read.photos.counted,
            numbers=read.numbers,
            treatments={tray.id: self.treatments[tray.id] for tray in read.treated},
            lost=lost_to_mold(self.treatments, read.treated, mold_areas(self.words)),
            movers=self._movers(read.numbers) if score else (),
            notes=self._notes(read, measure, verdict, margin_fixed=fixed),
            otherwise=self._otherwise(read, verdict),
            apart=apart_between(counted_trays(read.numbers), self.treatments, self.plan),
        )

    def _notes(
        self, read: Reading, measure: Measure, verdict: Verdict, *, margin_fixed: bool
    ) -> tuple[Sentence, ...]:
        terms = beforehand(
            self.versions,
            measure,
            verdict,
            crop=read.crop,
            day=read.day,
            fixed=margin_fixed,
            day_fixed=read.day_fixed,
            margin_said=self.margin_said(read.kind, read.photos.photos),
        )
        return (
            *terms,
            *read.photos.words(read.treated),
            *left_out_words(read.treated, self.left_out(read)),
            *missing_trays(read.numbers),
            *untreated(read.trays, self.treatments),
            *not_as_drawn(read.treated, self.treatments, self.drawn),
            *tray_doubts(read.numbers),
            *half_way(read.table, self.trusted or ""),
        )

    def _otherwise(self, read: Reading, verdict: Verdict) -> tuple[Otherwise, ...]:
        """What the same trays say where it is asked otherwise."""
        treated, photos, areas = read.treated, read.photos, mold_areas(self.words)
        inner = photos.counted is CountedOf.INNER
        asked = rechecks(
            verdict,
            read.table,
            by_shelf=self.by_shelf(),
            moldy={tray.code for tray in treated if is_lost(tray, areas)},
            shift=shift_of_heights(read.numbers, self.rule) if inner else 0.0,
            other_height=other_height(treated, self.treatments, self.trusted, self._kinds()),
            other_area=self._by_other_area(treated, photos),
            other_method=self._by_other_method(treated, photos),
        )
        return tuple(asked)

    def _compared(self, read: Reading, measure: Measure) -> Verdict:
        trusted, margin = self.trusted or "", measure.margin
        if measure.unit == "%":
            plain = verdict_of(read.table, trusted, 0.0, quick=True)
            mean = next((line.mean for line in plain.media if line.medium == trusted), None)
            margin = abs(mean or 0.0) * measure.margin / 100
        return verdict_of(
            read.table,
            trusted,
            margin,
            so_far=self.so_far(read),
            camera_sd=camera_sd(read.numbers, read.photos.method, self.rule),
            by_shelf=self.by_shelf(),
        )

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
        return self.tabled(canopy_numbers(trays, read, self.words, self.rule, {}))

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
