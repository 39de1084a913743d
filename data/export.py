"""Export: a book -> open files that a statistician loads without this program.

In    a book, an empty folder
Out   a CSV file for each table, the numbers that the verdicts compared and the verdicts themselves, a
      Frictionless data package that describes them, a page on how to read them
Not   a book that opens again (`travel/packing.py`), a report for reading (`gui/report`)

UTF-8, comma, ISO 8601, a dot in decimal numbers, units in the headings, empty where there is nothing. Text
that a spreadsheet would take for a formula begins with an apostrophe. Photographs carry places and cameras in
them and stay with the book; their digests go along, and their top views where they are wanted. The camera's
name, which the book keeps for doubts about its clock, stays too: no number rests on it, and it may point to a
person.
"""

import csv
import json
import shutil
from collections.abc import Callable, Iterable, Sequence
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from data.book import Book
from data.cancel import CancelToken, Progress, unwatched
from data.openfiles.cells import cell, cell_shares, figure, spreadsheet_safe
from data.openfiles.checklist import VERSION, checklist
from data.openfiles.columns import CELL_HEADINGS, Kind, OpenTable
from data.openfiles.package import CAUTION, described, field, foreign_key, page, resource_of
from data.openfiles.tables import TABLES
from data.records import PhotoId
from data.tables.packed import bed_in
from data.travelerrors import ExportWouldMix, writing_to
from data.upkeep.lostviews import make_lost_views
from data.verdict.verdicts import CropVerdict, verdicts
from data.wholefolder import made_whole

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["PROFILE", "export"]

PROFILE = "evenstand-export-1"
DESCRIPTION = "datapackage.json"
ROWS_BETWEEN = 200  # looks at the cancel token
Cells = Sequence[object]
Told = Callable[[dict[str, Any]], bytes | None]  # the 72 shares of a row of scores


def export(
    book: Book,
    folder: Path,
    cancel: CancelToken,
    report: Progress = unwatched,
    *,
    top_views: bool = False,
) -> Path:
    """Write all that the book holds into `folder`; slow, for a worker.

    Parameters
    ----------
    top_views : copy the top views too (JPEG, without place and camera); those that the cache has lost are
        made again first, about a second each.

    Raises
    ------
    ExportWouldMix
        If something lies in `folder` already.
    Cancelled, BookError
        Nothing is left in `folder`.
    """
    with writing_to(folder):
        if folder.is_dir() and any(folder.iterdir()):
            raise ExportWouldMix(folder)
    with made_whole(folder, last=DESCRIPTION, taken=ExportWouldMix) as place:
        _Export(book, place, cancel, report).write(top_views=top_views)
    return folder


class _Export:
    """One export on its way."""

    def __init__(self, book: Book, folder: Path, cancel: CancelToken, report: Progress) -> None:
        self._book, self._folder, self._cancel, self._report = book, folder, cancel, report
        self._resources: list[dict[str, Any]] = []
        self._steps = len(TABLES) + 5
        self._done = 0

    def write(self, *, top_views: bool) -> None:
        with self._book.whole_tables() as db:
            for table in TABLES:
                self._table(db, table)
            self._cells(db)
        found = verdicts(self._book, cancel=self._cancel)
        self._compared(found)
        self._verdicts(found)
        self._checklist()
        if top_views:
            self._top_views()
        self._describe()

    def _step(self) -> None:
        self._done += 1
        self._report(self._done, self._steps)
        self._cancel.check()

    # --- files

    def _table(self, db: "Database", table: OpenTable) -> None:
        columns = table.columns
        rows = ([cell(column, row[column.name]) for column in columns] for row in db.table(table.table).rows)
        self._csv(table.file, [column.heading for column in columns], rows)
        self._resources.append(resource_of(table))
        self._step()

    def _cells(self, db: "Database") -> None:
        files: dict[str, tuple[str, str, Told]] = {
            "cells": (
                "Coverage of the 6 x 12 equal cells of each tray, row 1 at the top of the top view",
                "canopy share of the cell",
                lambda row: row["cells"],
            ),
            "bed_cells": (
                "The same as a share of the growing bed; empty where too little of it shows, no row of "
                "photographs that were scored before it was measured",
                "canopy share of the growing bed",
                lambda row: bed_in(row["cells"], row["bed_cells"]),
            ),
        }
        for name, (about, what, told) in files.items():
            self._cells_file(db, name, about, what, told)
        self._step()

    def _cells_file(self, db: "Database", name: str, about: str, what: str, told: Told) -> None:
        kept = ((row["id"], told(row)) for row in db.table("score").rows)
        rows = ([score, *cell_shares(blob)] for score, blob in kept if blob is not None)
        self._csv(name, ["score_id", *CELL_HEADINGS.values()], rows)
        fields = [field("score_id", Kind.INTEGER, "the score")]
        fields += [
            field(heading, Kind.NUMBER, f"{what}, row {row + 1}, column {column + 1}")
            for (row, column), heading in CELL_HEADINGS.items()
        ]
        keys = [foreign_key("score_id", "scores", "score_id")]
        self._resources.append(described(name, about, fields, ["score_id"], keys))

    def _compared(self, found: Iterable[CropVerdict]) -> None:
        fields = [
            field("trial", Kind.TEXT, "the trial"), field("crop", Kind.TEXT, "the crop"),
            field("measure", Kind.TEXT, "what is compared"),
            field("counted_of", Kind.TEXT, "what coverage and uniformity in it are a share of"),
            field("block", Kind.TEXT, "the block"),
            field("medium", Kind.TEXT, "the medium; the treatment where more is varied"),
            field("tray_id", Kind.INTEGER, "the tray"), field("value", Kind.NUMBER, "the tray's number"),
            field("unit", Kind.TEXT, "unit of the value"), field("why_none", Kind.TEXT, "why there is none"),
        ]  # fmt: skip
        rows = (
            [
                *map(spreadsheet_safe, (one.trial, one.crop, str(one.kind))),
                *map(spreadsheet_safe, (one.counted or "", number.tray.block or "")),
                spreadsheet_safe(one.treatments[number.tray.id]), number.tray.id, figure(number.value),
                spreadsheet_safe(str(one.scale.unit)), spreadsheet_safe(number.why_none or ""),
            ]
            for one in found
            for number in one.numbers
            if number.tray.id in one.treatments
        )  # fmt: skip
        self._csv("compared", [one["name"] for one in fields], rows)
        about = "The one number of each tray that the verdicts compare: enough to make every verdict again"
        keys = [foreign_key("tray_id", "trays", "tray_id")]
        self._resources.append(
            described("compared", about, fields, ["trial", "crop", "measure", "tray_id"], keys)
        )
        self._step()

    def _verdicts(self, found: Iterable[CropVerdict]) -> None:
        numbers = {
            "margin": "difference that still counts as good; empty where it is a share of no mean",
            "df": "degrees of freedom of the error",
            "mse": "mean square of the error", "n": "trays with a number", "mean": "least-squares mean",
            "difference": "from the trusted medium", "se": "standard error of the difference",
            "q": "one-sided 95 % limit factor (Dunnett or Sidak)", "low": "lower limit of the difference",
            "high": "upper limit of the difference", "rank_low": "best rank it may have (95 %; Tukey, Sidak)",
            "rank_high": "worst rank it may have",
        }  # fmt: skip
        words = {
            "trial": "the trial", "crop": "the crop", "measure": "what is compared", "medium": "the medium",
            "trusted": "the medium it is held against", "unit": "unit of the numbers",
        }  # fmt: skip
        fields = [field(name, Kind.TEXT, about) for name, about in words.items()]
        fields += [field("so_far", Kind.YES_NO, "planned trays are still to come")]
        fields += [field(name, Kind.NUMBER, about) for name, about in numbers.items()]
        fields += [
            field("outcome", Kind.TEXT, "better, as_good, as_good_lower, worse or not_shown"),
            field("error_from", Kind.TEXT, "what the error of the differences comes from"),
        ]
        rows = (_verdict_row(one, index) for one in found for index in range(len(one.verdict.media)))
        self._csv("verdicts", [one["name"] for one in fields], rows)
        about = "The verdicts: each medium against the trusted one, by crop and measure"
        self._resources.append(
            described("verdicts", about, fields, ["trial", "crop", "measure", "medium"], [])
        )
        self._step()

    def _checklist(self) -> None:
        fields = [
            field("section", Kind.TEXT, "section of the checklist"),
            field("number", Kind.INTEGER, "which study, factor, material or tray"),
            field("attribute", Kind.TEXT, "attribute of the checklist"),
            field("value", Kind.TEXT, "its value, or where it stands"),
        ]
        lines = checklist(self._book)
        rows = ([line.section, line.number, line.attribute, spreadsheet_safe(line.value)] for line in lines)
        self._csv("miappe", [one["name"] for one in fields], rows)
        about = f"The attributes of the MIAPPE {VERSION} checklist, as far as the book knows them"
        self._resources.append(described("miappe", about, fields, [], []))
        self._step()

    def _top_views(self) -> None:
        target = self._folder / "top_views"
        target.mkdir()
        with self._book.whole_tables() as db:
            photos = [row["id"] for row in db.table("photo").rows if row["tray"] is not None]
        self._steps += len(photos)
        for photo in map(PhotoId, photos):
            pictures = self._book.pictures(photo)
            if pictures is not None and not pictures.top_view.is_file():
                make_lost_views(self._book, [photo], self._cancel, unwatched)
            if pictures is not None and pictures.top_view.is_file():
                shutil.copyfile(pictures.top_view, target / f"photo_{photo}.jpg")
            self._step()

    def _csv(self, name: str, headings: Sequence[str], rows: Iterable[Cells]) -> None:
        path = self._folder / f"{name}.csv"
        with writing_to(self._folder.parent.parent), path.open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file)
            writer.writerow(headings)
            for number, row in enumerate(rows):
                if number % ROWS_BETWEEN == 0:
                    self._cancel.check()
                writer.writerow(row)

    def _describe(self) -> None:
        package = {
            "profile": "tabular-data-package",
            "name": PROFILE,
            "title": f"Evenstand: the trial book {self._book.folder.name}",
            "description": str(CAUTION),
            "created": datetime.now().astimezone().isoformat(timespec="seconds"),
            "resources": self._resources,
        }
        text = json.dumps(package, indent=1, ensure_ascii=False)
        (self._folder / DESCRIPTION).write_text(text, encoding="utf-8")
        (self._folder / "README.md").write_text("\n".join(page(self._resources)), encoding="utf-8")
        self._step()


def _verdict_row(one: CropVerdict, index: int) -> list[object]:
    verdict, line = one.verdict, one.verdict.media[index]
    own = [
        verdict.told_margin, verdict.df, verdict.mse, line.n, line.mean, line.difference, line.se, line.q,
        line.low, line.high, line.rank_low, line.rank_high,
    ]  # fmt: skip
    return [
        *map(
            spreadsheet_safe,
            (one.trial, one.crop, str(one.kind), line.medium, verdict.trusted, str(one.scale.unit)),
        ),
        "true" if verdict.so_far else "false",
        *map(figure, own),
        "" if line.outcome is None else str(line.outcome),
        str(verdict.error_from),
    ]
