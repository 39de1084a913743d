"""Imported: the files of an export -> a book of their own, ready to be merged into another.

In    the folder of an export; an empty folder for the book
Out   a book with everything that the files hold; the photographs themselves are not among them
Not   adding it to a grower's book (`merging.py`), notes of other kinds (`logs/oldnotes.py`)

The files may have been through many hands: every cell is checked against the kind of its column, and the
first one that does not fit is named with file and line. Nothing is kept of an export that does not fit.
"""

import csv
import json
import re
import sqlite3
from collections.abc import Callable, Iterator, Mapping
from datetime import date, datetime
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from data import queries
from data.book import Book
from data.cancel import CancelToken, Progress, unwatched
from data.export import PROFILE
from data.openfiles.cells import plain_text
from data.openfiles.columns import CELL_HEADINGS, Column, Kind, OpenTable
from data.openfiles.tables import TABLES
from data.tables.packed import packed_bed, packed_corners
from data.tables.rows import time_text
from data.tables.scorerows import pack_cells
from data.travel.knownrows import Row
from data.travel.readable import Unreadable, read_all
from data.travelerrors import NotAnExport

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["is_export", "read_export"]

DIGEST = re.compile(r"[0-9a-f]{64}")
MOST_WHOLE = (1 << 63) - 1  # that SQLite keeps
MOST_CELL = 1 << 22  # characters; a drawn plan of a large trial is the longest
NOT_EXPORTED: Mapping[str, Mapping[str, Any]] = {"photo": {"kept": 0}}  # what the files do not tell


def is_export(folder: Path) -> bool:
    """Whether a folder holds an export of this program."""
    try:
        described = json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return False
    return isinstance(described, dict) and described.get("name") == PROFILE


def read_export(source: Path, folder: Path, cancel: CancelToken, report: Progress = unwatched) -> Path:
    """Make a book in `folder` of the export in `source`; slow, for a worker.

    Raises
    ------
    NotAnExport
        If `source` is none, or something in it does not fit; the message names file, line and column.
    BookError, Cancelled
        If the disk stops us, or the person does. What stands in `folder` then is of no use.
    """
    if not is_export(source):
        raise NotAnExport(source, what="there is no datapackage.json of such an export in it")
    with Book.create(folder) as book:
        try:
            with book.writing() as db:
                _fill(db, source, cancel, report)
                read_all(db, cancel)
        except sqlite3.IntegrityError as error:
            raise NotAnExport(source, what=f"rows do not belong together ({error})") from error
        except Unreadable as error:
            raise NotAnExport(source, what=str(error)) from error
    return folder


def _fill(db: "Database", source: Path, cancel: CancelToken, report: Progress) -> None:
    db.execute(queries.LATE_FOREIGN_KEYS)
    db.table("tray_type").delete_where()
    cells = _read_cells(source, "cells")
    bed_cells = _read_cells(source, "bed_cells") if (source / "bed_cells.csv").exists() else {}
    for done, table in enumerate(TABLES):
        cancel.check()
        report(done, len(TABLES))
        if table.later and not (source / f"{table.file}.csv").exists():
            continue
        rows = _rows(source, table)
        if table.table == "score":
            rows = (
                _packed(row, _cells_of(cells, row["id"], source), bed_cells.get(row["id"])) for row in rows
            )
        db.table(table.table).insert_all(rows)


def _rows(source: Path, table: OpenTable) -> Iterator[Row]:
    """The rows of one file, as the book keeps them."""
    by_heading = {column.heading: column for column in table.columns}
    wanted = {heading for heading, column in by_heading.items() if not column.later}
    once = {column.once: heading for heading, column in by_heading.items() if column.once is not None}
    for line, cells in _read(source, table.file, wanted, once):
        row: Row = dict(NOT_EXPORTED.get(table.table, {}))
        for heading, column in by_heading.items():
            try:
                row[column.name] = _value(table.table, column, cells.get(heading, ""))
            except ValueError as error:
                what = f"{table.file}.csv, line {line}, {heading}: {error}"
                raise NotAnExport(source, what=what) from error
        yield row


def _read(
    source: Path, name: str, headings: set[str], once: Mapping[str, str] = MappingProxyType({})
) -> Iterator[tuple[int, Mapping[str, str]]]:
    """Line number and cells of each row of a file; `once`: a heading of earlier versions -> that of today."""
    csv.field_size_limit(MOST_CELL)
    try:
        with (source / f"{name}.csv").open(encoding="utf-8-sig", newline="") as file:
            reader = csv.DictReader(file, strict=True)
            reader.fieldnames = [once.get(heading, heading) for heading in reader.fieldnames or ()]
            missing = headings - set(reader.fieldnames)
            if missing:
                raise NotAnExport(source, what=f"{name}.csv has no column {min(missing)}")
            for cells in reader:
                if None in cells or None in cells.values():
                    what = f"{name}.csv, line {reader.line_num} has too many or too few cells"
                    raise NotAnExport(source, what=what)
                yield reader.line_num, cells
    except (OSError, UnicodeDecodeError, csv.Error) as error:
        raise NotAnExport(source, what=f"{name}.csv cannot be read ({error})") from error


# --- cells of a file


def _value(table: str, column: Column, text: str) -> object:
    """What the book keeps for the text of a cell; raises `ValueError` with what is wrong."""
    if column.kind is Kind.TEXT:
        return _text(table, column, plain_text(text))
    if text == "":
        return None
    return _READERS[column.kind](text)


def _text(table: str, column: Column, text: str) -> str | None:
    if column.name == "digest" and not DIGEST.fullmatch(text):
        raise ValueError("a SHA-256 has 64 hexadecimal digits")
    if column.name == "suffix" and not re.fullmatch(r"\.[a-z]{2,5}", text):
        raise ValueError("no kind of file")
    nothing = column.name in MAY_BE_NOTHING and (table, column.name) not in NEVER_NOTHING
    return None if text == "" and nothing else text


def _number(text: str) -> float:
    number = float(text)
    if number != number or number in (float("inf"), float("-inf")):
        raise ValueError(f"{text} is no number")
    return number


def _whole(text: str) -> int:
    number = int(text)
    if abs(number) > MOST_WHOLE:
        raise ValueError(f"{text[:30]} is no number of ours")
    return number


def _yes_no(text: str) -> int:
    if text not in ("true", "false"):
        raise ValueError(f"{text!r} is neither true nor false")
    return int(text == "true")


def _time(text: str) -> str:
    return time_text(datetime.fromisoformat(text))


def _json(text: str) -> str:
    try:
        json.loads(text)
    except RecursionError:
        raise ValueError("lists within lists without end") from None
    return text


_READERS: Mapping[Kind, Callable[[str], object]] = {
    Kind.NUMBER: _number,
    Kind.INTEGER: _whole,
    Kind.YES_NO: _yes_no,
    Kind.TIME: _time,
    Kind.DATE: lambda text: date.fromisoformat(text).isoformat(),
    Kind.JSON: _json,
}
# text columns that hold nothing, not an empty text, where nobody has said anything
MAY_BE_NOTHING = frozenset(
    {
        "seating", "watering", "feed", "light", "ended", "received_on", "began_on", "matched_by", "refusal",
        "said", "corners_from", "corrected_by", "shelf",
    }
)  # fmt: skip
NEVER_NOTHING = frozenset({("tray", "shelf"), ("tray", "seating")})


def _read_cells(source: Path, name: str) -> dict[int, bytes]:
    """Score -> its 6 x 12 shares, packed as the book keeps them; only those of the bed may be missing."""
    found: dict[int, bytes] = {}
    headings = {"score_id", *CELL_HEADINGS.values()}
    for line, cells in _read(source, name, headings):
        try:
            shares = {place: _share(cells[heading], name) for place, heading in CELL_HEADINGS.items()}
            found[_whole(cells["score_id"])] = pack_cells(
                [[shares[row, column] for column in range(12)] for row in range(6)]
            )
        except ValueError as error:
            raise NotAnExport(source, what=f"{name}.csv, line {line}: {error}") from error
    return found


def _share(text: str, name: str) -> float | None:
    if text == "" and name == "bed_cells":
        return None
    share = _number(text)
    if not 0.0 <= share <= 100.0:
        raise ValueError("a share is 0 to 100 %")
    return share


def _packed(score: Row, cells: bytes, bed: bytes | None) -> Row:
    corners = packed_corners(score["corners"])
    return score | {"cells": cells, "bed_cells": packed_bed(cells, bed), "corners": corners}


def _cells_of(cells: Mapping[int, bytes], score: int, source: Path) -> bytes:
    try:
        return cells[score]
    except KeyError:
        raise NotAnExport(source, what=f"cells.csv has no row of score {score}") from None
