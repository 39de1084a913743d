"""Readable: rows that came in with the files of an export -> whether this program can read them again.

In    the tables of the book that was made of the files
Out   nothing; `Unreadable` names the first row that no screen could show
Not   cells by the kind of their column (`imported.py`), what the tables refuse themselves (`tables/steps.py`)

A word that this program does not know, "weigth" for a kind of reading, is text like any other to the table;
the book would take it, and every place that shows readings would fail afterwards.
"""

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any

from data.cancel import CancelToken
from data.chapters.trialbook import showings_of
from data.look import LookKind, Urgency
from data.looklist.answers import AnswerKind
from data.openfiles.tables import TABLES
from data.plan.drawing import draw_of
from data.plan.plantext import plan_of
from data.tables.noterows import event_of, is_known, reading_of
from data.tables.packed import corners_in
from data.tables.rows import score_of, suspect_of
from data.tables.scorerows import corners_of

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["Unreadable", "read_all"]

UNKNOWN = (
    "'{kind}' is no kind of {noted} that this program knows; mend the word, or bring this program up to date "
    "where a newer Evenstand wrote the files"
)
ROWS_BETWEEN = 500  # looks at the cancel token


class Unreadable(Exception):
    """A row that cannot be read; the text names file, row and what is wrong."""


def read_all(db: "Database", cancel: CancelToken) -> None:
    """Read every row once, as the screens do; raises `Unreadable`. For a worker."""
    files = {table.table: table for table in TABLES}
    for name, read in READERS.items():
        for number, row in enumerate(db.table(name).rows):
            if number % ROWS_BETWEEN == 0:
                cancel.check()
            try:
                read(row)
            except (ValueError, TypeError, KeyError, IndexError, AttributeError) as error:
                where = f"{files[name].file}.csv, {files[name].key} {row['id']}"
                raise Unreadable(f"{where}: {error}") from error


def _score(row: Any) -> None:
    score_of(row, ())
    corners = corners_in(row["corners"])
    if corners is not None:
        corners_of(corners)


def _look(row: Any) -> None:
    LookKind(row["what"])
    Urgency(row["urgency"])


def _answer(row: Any) -> None:
    _look(row)
    AnswerKind(row["answer"])


def _reading(row: Any) -> None:
    _refuse_unknown(row["kind"], "reading")
    reading_of(row)


def _event(row: Any) -> None:
    _refuse_unknown(row["kind"], "event")
    event_of(row)


def _refuse_unknown(kind: str, noted: str) -> None:
    if not is_known(kind, noted):
        raise ValueError(UNKNOWN.format(kind=kind, noted=noted))


READERS: Mapping[str, Callable[[Any], object]] = {
    "plan": lambda row: plan_of(row["body"]),
    "draw": lambda row: draw_of(row["seed"], row["body"]),
    "score": _score,
    "suspect": suspect_of,
    "reading": _reading,
    "event": _event,
    "eye_round": lambda row: showings_of(row["body"]),
    "look_entry": _look,
    "look_answer": _answer,
}
