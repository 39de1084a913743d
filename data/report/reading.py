"""Report reading: a trial of a book -> the content of its report.

In    a book, the name of a trial, whether the short version is wanted; it is read in a background thread
Out   `Report`
Not   drawing (`gui/report`), what each part says (`planned.py`, `conditions.py`, ...; `fixed.py`: always)

A trial without trays, photos or plan gives sentences that say so. Nothing of a photo's own notes (place,
camera) is read: pictures are the top views.
"""

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from data.cancel import CancelToken, Progress, unwatched
from data.records import Tray
from data.report.beside import apart_blocks, look_blocks, material_blocks, wrong_blocks
from data.report.conditions import condition_blocks, left_out_words
from data.report.content import Block, Heading, IntervalFigure, Paragraph, Report, VerdictGrid
from data.report.fixed import CAUTIONS, methods
from data.report.pictures import growth_blocks, picture_blocks, shown_photos
from data.report.planned import plan_blocks
from data.sentence import Sentence
from data.trial import MeasureKind
from data.upkeep.lostviews import lost_views, make_lost_views
from data.verdict.apart import counted_trays
from data.verdict.measurewords import kind_words, mover_words
from data.verdict.notes import cautions, how_worked_out
from data.verdict.surewords import camera_words, otherwise_words
from data.verdict.traywords import lost_words
from data.verdict.verdicts import CropVerdict, verdicts
from data.verdict.words import sentence

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["read_report", "trial_for_report"]

STEPS = 5


def trial_for_report(book: "Book", trial: str | None) -> str:
    """The trial that is meant: without a name the newest that has trays, else the newest; "" for none."""
    names = book.trials()
    if trial is not None:
        return trial
    return next((one for one in reversed(names) if book.trial_trays(one)), names[-1] if names else "")


def read_report(
    book: "Book",
    trial: str | None = None,
    *,
    short: bool = False,
    cancel: CancelToken | None = None,
    progress: Progress = unwatched,
) -> Report:
    """Read everything that stands in the report of a trial.

    Raises
    ------
    KeyError
        If there is no trial of that name.
    Cancelled
        If it was asked to stop.
    """
    name = trial_for_report(book, trial)
    if name and name not in book.trials():
        raise KeyError(name)
    reading = _Reading(book, name, cancel or CancelToken(), progress, short=short)
    return Report(
        title=name or str(Sentence("No trial yet")),
        subtitle=Sentence("Report of a trial of growing media, made on {day}.", day=_day(book.today())),
        trial=name,
        short=short,
        blocks=tuple(reading.blocks()),
    )


class _Reading:
    """One trial on its way into a report."""

    def __init__(
        self, book: "Book", trial: str, cancel: CancelToken, progress: Progress, *, short: bool
    ) -> None:
        self.book, self.trial, self.short = book, trial, short
        self.cancel, self.progress = cancel, progress
        self.trays: tuple[Tray, ...] = book.trial_trays(trial) if trial else ()
        self.plans = book.plans(trial) if trial else ()
        self.found: tuple[CropVerdict, ...] = ()
        self.lost = 0  # top views that had to be made again

    def _step(self, done: int) -> None:
        self.cancel.check()
        self.progress(done + (self.lost if done > 1 else 0), STEPS + self.lost)

    def _make_lost_views(self) -> None:
        """Each takes longer than any other step, so each counts as one."""
        lost = lost_views(self.book, shown_photos(self.book, self._scored(), short=self.short))
        self.lost = len(lost)
        whole = STEPS + self.lost
        make_lost_views(self.book, lost, self.cancel, lambda done, _all: self.progress(1 + done, whole))

    def blocks(self) -> Iterator[Block]:
        self._step(0)
        yield from plan_blocks(self.book, self.trial, self.plans)
        if not self.trays:
            yield Heading(text=Sentence("Answers"))
            yield Paragraph(
                text=Sentence("No tray of this trial is sown yet, so there is nothing to compare.")
            )
            yield from self._cautions()
            return
        self.found = verdicts(self.book, self.trial, cancel=self.cancel)
        self._step(1)
        yield from self._answers()
        yield from self._conditions()
        self._make_lost_views()
        yield from picture_blocks(self.book, self._scored(), self.cancel, short=self.short)
        self._step(2)
        yield from growth_blocks(self._scored(), self.book.photo_numbers(self.trial))
        if not self.short:
            yield from apart_blocks(self.book, self.trial, self.cancel)
            yield from material_blocks(self.book, self.trays)
        self._step(3)
        yield from wrong_blocks(self.book, self.trays, self.cancel, short=self.short)
        if not self.short:
            yield from look_blocks(self.book, self.trial)
        self._step(4)
        yield from self._methods()
        yield from self._cautions()
        self._step(STEPS)

    # --- answers

    def _answers(self) -> Iterator[Block]:
        yield Heading(text=Sentence("Answers"))
        for one in self.found:
            if self.short and not one.decides and any(other.decides for other in self.found):
                continue
            yield from self._answer(one)

    def _answer(self, one: CropVerdict) -> Iterator[Block]:
        verdict = one.verdict
        values = {"crop": one.crop, "measure": kind_words(one.kind)}
        if one.on_day is not None:
            yield Heading(text=Sentence("{crop}: {measure} on day {day}", day=one.on_day, **values), level=2)
        else:
            yield Heading(text=Sentence("{crop}: {measure}", **values), level=2)
        if not verdict.media:
            for note in (*cautions(verdict), *one.notes):
                yield Paragraph(text=note)
            return
        for line in verdict.media:
            yield Paragraph(text=sentence(verdict, line, one.scale), role="answer")
        if any(line.low is not None for line in verdict.compared):
            yield IntervalFigure(found=one, spare=2 if one.decides is False else 0)
        yield VerdictGrid(found=one, spare=3)
        for note in (*cautions(verdict), *one.notes, *lost_words(one.lost)):
            yield Paragraph(text=note, role="caution", spare=0)
        if self.short:
            return
        for words in (
            *mover_words(one.movers, one.counted, moldy=one.moldy),
            *camera_words(verdict, one.scale),
            *otherwise_words(one.otherwise, one.scale),
        ):
            yield Paragraph(text=words)

    def _conditions(self) -> Iterator[Block]:
        treatments = {tray: name for one in self.found for tray, name in one.treatments.items()}
        read_on = {one.crop: one.on_day for one in self.found if one.on_day is not None}
        plan = self.plans[-1].plan if self.plans else None
        apart = {name for one in self.found for name in one.apart}
        compared = self._compared()
        yield from condition_blocks(
            self.book, compared, treatments, read_on, plan, apart, self.cancel, short=self.short
        )
        left_out = [tray.code for tray in self.trays if tray.id in treatments and tray not in compared]
        if left_out and compared:
            yield left_out_words(left_out)

    def _compared(self) -> tuple[Tray, ...]:
        """The trays that the answers rest on, by any measure."""
        crops = dict.fromkeys(one.crop for one in self.found)
        return tuple(
            tray
            for crop in crops
            for tray in counted_trays(n for one in self.found if one.crop == crop for n in one.numbers)
        )

    def _scored(self) -> tuple[CropVerdict, ...]:
        return tuple(one for one in self.found if one.kind is MeasureKind.SCORE)

    # --- how

    def _methods(self) -> Iterator[Block]:
        yield Heading(text=Sentence("How this was worked out"))
        versions = tuple(dict.fromkeys(one.method for one in self.found if one.method))
        for words in methods(versions)[: 2 if self.short else None]:
            yield Paragraph(text=words, role="small")
        told: Sequence[CropVerdict] = [one for one in self.found if one.verdict.media]
        if self.short:
            if told:
                yield Paragraph(text=how_worked_out(told[0].verdict)[0], role="small")
            yield Paragraph(
                text=Sentence("All steps, with their sources, are in the full report."), role="small"
            )
            return
        seen: set[str] = set()
        for one in told:
            own = [words for words in how_worked_out(one.verdict) if words not in seen]
            seen.update(own)
            if len(told) > 1 and own:
                whose = Sentence("{crop}, {measure}:", crop=one.crop, measure=kind_words(one.kind))
                yield Paragraph(text=whose, role="small", with_next=True)
            for words in own:
                yield Paragraph(text=words, role="small")

    def _cautions(self) -> Iterator[Block]:
        yield Heading(text=Sentence("Cautions"))
        for words in CAUTIONS:
            yield Paragraph(text=words, role="small")


def _day(at: object) -> str:
    return f"{at:%d %B %Y}".lstrip("0")
