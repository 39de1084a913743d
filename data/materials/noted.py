"""Noted: what else tells the media of a trial apart, each against the trusted one.

In    a book, the name of a trial
Out   `Noted`: difference, interval, and what tells it, row by row of the table: notes, weights and logs of
      trays, how green they are, room and what is carried; sentences about the climate; all of it in words
Not   the table of all media (`reading.py`), what is compared and decides (`data.verdict`)
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.materials.canopygreen import GREEN, LIGHTNESS, green_numbers
from data.materials.entered import climate_words, entered_beside
from data.materials.sidebyside import side_by_side
from data.materials.table import ROWS, Beside, Row
from data.materials.trays import numbers_of, reckoned_of
from data.readings import ReadingKind
from data.records import Tray
from data.sentence import Sentence

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Apart", "Noted", "read_noted"]

UNITS = {
    "1-5": Sentence("marks"),
    "%": Sentence("points"),
    "points": Sentence("points"),
    "days": Sentence("days"),
}  # of a difference


@dataclass(frozen=True, slots=True, kw_only=True)
class Apart:
    """How far one medium lies from the trusted one in one row of the table."""

    row: Row
    medium: str
    trusted: str
    beside: Beside

    @property
    def unit(self) -> str:
        """Of the difference."""
        return UNITS.get(self.row.unit, self.row.unit)

    @property
    def difference(self) -> float | None:
        """The medium less the trusted one, to one decimal; None where nothing grew side by side."""
        one = self.beside.difference
        return None if one is None else round(one.value, 1) + 0.0  # no -0.0

    @property
    def interval(self) -> tuple[float, float] | None:
        """The 95 % interval of the difference; None where none can be had."""
        one = self.beside.difference
        return None if one is None or one.low is None or one.high is None else (one.low, one.high)

    @property
    def cannot_be_told(self) -> bool:
        """True where either of the two may have more."""
        return self.interval is not None and self.interval[0] <= 0 <= self.interval[1]


@dataclass(frozen=True, slots=True, kw_only=True)
class Noted:
    """What else is known of a trial's media, in the order of the table; empty where nothing is."""

    apart: tuple[Apart, ...] = ()
    climate: tuple[Sentence, ...] = ()

    @property
    def words(self) -> tuple[Sentence, ...]:
        """All of it, a sentence each."""
        return *(_words(one) for one in self.apart), *self.climate


def read_noted(
    book: "Book", trial: str, trusted: str | None = None, cancel: CancelToken | None = None
) -> Noted:
    """What is known of a trial's media beside its answers.

    Parameters
    ----------
    trusted : the medium that the others are held against, where no plan says so.

    Raises
    ------
    Cancelled
        If it was asked to stop.
    """
    trusted = _trusted(book, trial, trusted)
    if trusted is None:
        return Noted()
    media = tuple(dict.fromkeys(tray.medium for tray in book.trial_trays(trial)))
    held = {
        **side_by_side(
            (*_numbers(book, trial, cancel or CancelToken()), *green_numbers(book, trial)), trusted
        ),
        **entered_beside(book, media, trusted),
    }
    apart = tuple(
        Apart(row=row, medium=medium, trusted=trusted, beside=beside)
        for row in (*ROWS, GREEN, LIGHTNESS)
        for (key, medium), beside in held.items()
        if key == row.key
    )
    return Noted(apart=apart, climate=tuple(climate_words(book, media, trusted)))


def _numbers(book: "Book", trial: str, cancel: CancelToken) -> Iterator[tuple[str, Tray, float]]:
    """Of these trays alone: a book of years is not read for one trial."""
    for tray in book.trial_trays(trial):
        cancel.check()
        noted: dict[ReadingKind, list[tuple[datetime, float]]] = {}
        for one in book.readings(tray.id):
            noted.setdefault(one.kind, []).append((one.taken_at, one.value))
        yield from numbers_of(tray, noted)
        yield from reckoned_of(tray, noted)


def _trusted(book: "Book", trial: str, asked: str | None) -> str | None:
    planned = [kept.plan.trusted_medium for kept in book.plans(trial)]
    if planned:
        return planned[-1]
    marked = book.trusted()
    return asked or book.trial_said(trial).trusted or (None if marked is None else marked.name)


def _words(one: Apart) -> Sentence:
    values: dict[str, object] = {
        "what": one.row.words, "medium": one.medium, "trusted": one.trusted, "unit": one.unit,
        "beside": one.beside.words,
    }  # fmt: skip
    if one.difference is None:
        return Sentence("{what}, {medium}: {beside}", **values)
    values["difference"] = one.difference
    if one.interval is None:
        return Sentence(
            "{what}: {medium} {difference:+.1f} {unit} against {trusted}; no interval can be had. {beside}",
            **values,
        )
    values["low"], values["high"] = one.interval
    if one.cannot_be_told:
        return Sentence(
            "{what}: {medium} {difference:+.1f} {unit} against {trusted}, interval {low:+.1f} to "
            "{high:+.1f}: which one has more cannot be told. {beside}",
            **values,
        )
    return Sentence(
        "{what}: {medium} {difference:+.1f} {unit} against {trusted}, interval {low:+.1f} to {high:+.1f}. "
        "{beside}",
        **values,
    )
