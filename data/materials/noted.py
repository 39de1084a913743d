"""Noted: what else tells the media of a trial apart, each against the trusted one.

In    a book, the name of a trial
Out   `Sentence`s: difference, interval, and what tells it, row by row of the table: notes, weights and logs
      of trays, how green they are, room and what is carried; the climate last
Not   the table of all media (`reading.py`), what is compared and decides (`data.verdict`)
"""

from collections.abc import Iterator, Mapping
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

__all__ = ["noted_words"]

UNITS = {
    "1-5": Sentence("marks"),
    "%": Sentence("points"),
    "points": Sentence("points"),
    "days": Sentence("days"),
}  # of a difference


def noted_words(
    book: "Book", trial: str, trusted: str | None = None, cancel: CancelToken | None = None
) -> tuple[Sentence, ...]:
    """What is known of a trial's media beside its answers, in the order of the table; empty where nothing is.

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
        return ()
    media = tuple(dict.fromkeys(tray.medium for tray in book.trial_trays(trial)))
    held = {
        **side_by_side(
            (*_numbers(book, trial, cancel or CancelToken()), *green_numbers(book, trial)), trusted
        ),
        **entered_beside(book, media, trusted),
    }
    return *_words(held, trusted), *climate_words(book, media, trusted)


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


def _words(held: Mapping[tuple[str, str], Beside], trusted: str) -> Iterator[Sentence]:
    for row in (*ROWS, GREEN, LIGHTNESS):
        for (key, medium), beside in held.items():
            if key == row.key:
                yield _one(row, medium, trusted, beside)


def _one(row: Row, medium: str, trusted: str, beside: Beside) -> Sentence:
    one = beside.difference
    values: dict[str, object] = {
        "what": row.words, "medium": medium, "trusted": trusted, "unit": UNITS.get(row.unit, row.unit),
        "beside": beside.words,
    }  # fmt: skip
    if one is None:
        return Sentence("{what}, {medium}: {beside}", **values)
    values["difference"] = round(one.value, 1) + 0.0  # no -0.0
    if one.low is None or one.high is None:
        return Sentence(
            "{what}: {medium} {difference:+.1f} {unit} against {trusted}; no interval can be had. {beside}",
            **values,
        )
    values |= {"low": one.low, "high": one.high}
    if one.low <= 0 <= one.high:
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
