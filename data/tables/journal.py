"""Journal: what a person changed, so that it can be taken back and done again.

In    rows about to be inserted, updated or deleted inside one `Book.writing()`
Out   the change is made, and its images (what stood there before, what stands there after) are kept with
      a text
Not   intake and scoring: what a photo shows is no decision of a person

An image of an update holds only the columns that changed, so that taking back one thing leaves all
others alone. Of a whole book that came in only the ids are kept: it is taken back, and done again by bringing
that book in once more.
"""

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from data import queries
from data.cancel import Progress

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = [
    "TOLD_EVERY",
    "Recorder",
    "apply_images",
    "as_text",
    "brought_rows",
    "can_be_redone",
    "from_text",
    "names_tables_of",
]

Values = Mapping[str, Any]
TOLD_EVERY = 1000  # rows


class Recorder:
    """Makes changes and remembers how to take them back; lives for one transaction."""

    def __init__(self, db: "Database") -> None:
        self._db = db
        self._images: list[dict[str, Any]] = []

    def insert(self, table: str, values: Values) -> int:
        """Insert a row; returns its id."""
        row_id = self._db.table(table).insert(dict(values)).last_pk
        assert isinstance(row_id, int)
        self._images.append({"table": table, "id": row_id, "before": None, "after": self._row(table, row_id)})
        return row_id

    def insert_many(self, table: str, rows: Sequence[Values], step: Progress | None = None) -> None:
        """Insert many rows of the same columns, kept as one image: a logger's file has thousands.

        Parameters
        ----------
        step : told (done, total) every now and then; what it raises ends the change, and nothing is kept.
        """
        if not rows:
            return
        found = self._db.execute(queries.LAST_ID[table]).fetchone()[0]
        first = 1 + (found or 0)
        columns = ["id", *rows[0]]
        listed = [[first + n, *(row[name] for name in rows[0])] for n, row in enumerate(rows)]
        self._images.append({"table": table, "columns": columns, "rows": listed})
        rows_told = _told(listed, step)
        self._db.table(table).insert_all(dict(zip(columns, row, strict=True)) for row in rows_told)

    def insert_block(self, table: str, rows: Iterable[Values]) -> None:
        """Insert rows that have ids, ascending without a gap; taken back by them, and not done again.

        They are asked for as they are inserted, so that a book of years is never held whole.
        """
        ids: list[int] = []

        def told() -> Iterator[dict[str, Any]]:
            for row in rows:
                ids[1:] = [row["id"]]
                yield dict(row)

        self._db.table(table).insert_all(told())
        if ids:
            self._images.append({"table": table, "added": [ids[0], ids[-1]]})

    def update(self, table: str, row_id: int, values: Values) -> None:
        """Set columns of a row."""
        old = self._row(table, row_id)
        before = {name: old[name] for name, value in values.items() if old[name] != value}
        after = {name: values[name] for name in before}
        if before:
            self._db.table(table).update(row_id, after)
            self._images.append({"table": table, "id": row_id, "before": before, "after": after})

    def set(self, name: str, value: str, before: str | None) -> None:
        """Set a setting, a row known by its name; `before` is what it was, None where it was not set."""
        row = {"name": name, "value": value}
        if value != before:
            self._db.table("setting").upsert(row, pk="name")
            old = None if before is None else {"value": before}
            after = row if before is None else {"value": value}
            self._images.append({"table": "setting", "id": name, "before": old, "after": after})

    def delete(self, table: str, row_id: int) -> None:
        """Delete a row."""
        self._images.append({"table": table, "id": row_id, "before": self._row(table, row_id), "after": None})
        self._db.table(table).delete(row_id)

    def _row(self, table: str, row_id: int) -> dict[str, Any]:
        row: dict[str, Any] = self._db.table(table).get(row_id)
        return row

    @property
    def is_empty(self) -> bool:
        """Whether nothing was changed after all."""
        return not self._images

    @property
    def text(self) -> str:
        """The images as the book keeps them."""
        return as_text(self._images)


def _told(rows: Sequence[Any], step: Progress | None) -> Iterator[Any]:
    for number, row in enumerate(rows):
        if step is not None and number % TOLD_EVERY == 0:
            step(number, len(rows))
        yield row


def apply_images(db: "Database", images: str, *, forward: bool, step: Progress | None = None) -> None:
    """Do a change again (`forward`) or take it back, last image first.

    Parameters
    ----------
    step : told (done, total) rows of a whole book that is taken back; what it raises ends it, and the
        transaction around it has to be given up.
    """
    recorded = from_text(images)
    blocks = _Blocks(db, recorded, step)
    for image in recorded if forward else reversed(recorded):
        if "rows" in image:
            _apply_many(db, image, forward=forward)
            continue
        if "added" in image:
            blocks.take_back(image["table"], *image["added"])
            continue
        wanted, stands = (image["after"], image["before"]) if forward else (image["before"], image["after"])
        table = db.table(image["table"])
        if wanted is None:
            table.delete(image["id"])
        elif stands is None:
            table.insert(wanted)
        else:
            table.update(image["id"], wanted)


class _Blocks:
    """Blocks of rows of a whole book, taken back a piece at a time."""

    def __init__(self, db: "Database", images: Sequence[Values], step: Progress | None) -> None:
        self._db, self._step = db, step
        blocks = (image["added"] for image in images if "added" in image)
        self._total = sum(last - first + 1 for first, last in blocks)
        self._done = 0

    def take_back(self, table: str, first: int, last: int) -> None:
        for begin in range(first, last + 1, TOLD_EVERY):
            if self._step is not None:
                self._step(self._done, self._total)
            piece = [begin, min(begin + TOLD_EVERY - 1, last)]
            self._db.table(table).delete_where("id BETWEEN ? AND ?", piece)
            self._done += piece[1] - piece[0] + 1


def names_tables_of(db: "Database", images: str) -> bool:
    """Whether the images speak of the book's own tables alone: a packed book may come from anywhere."""
    return {image["table"] for image in from_text(images)} <= set(db.table_names())


def brought_rows(images: str, table: str) -> list[tuple[int, int]]:
    """First and last ids of the rows of a table that the images brought, and that taking back removes."""
    found = []
    for image in from_text(images):
        if image["table"] == table and "added" in image:
            found.append((image["added"][0], image["added"][1]))
        elif image["table"] == table and "id" in image and image["before"] is None:
            found.append((image["id"], image["id"]))
    return found


def can_be_redone(images: str) -> bool:
    """Whether the images hold what was done, or only where it stands."""
    return not any("added" in image for image in from_text(images))


def _apply_many(db: "Database", image: Values, *, forward: bool) -> None:
    table, rows = db.table(image["table"]), image["rows"]
    if forward:
        table.insert_all(dict(zip(image["columns"], row, strict=True)) for row in rows)
    else:
        table.delete_where("id BETWEEN ? AND ?", [rows[0][0], rows[-1][0]])


def as_text(rows: Any) -> str:
    """Rows as JSON, bytes among them."""
    return json.dumps(rows, default=_bytes_as_hex)


def from_text(text: str) -> Any:
    """The rows that `as_text` wrote."""
    return json.loads(text, object_hook=_hex_as_bytes)


def _bytes_as_hex(value: object) -> dict[str, str]:
    if isinstance(value, bytes):
        return {"hex": value.hex()}
    raise TypeError(f"a row holds text, numbers and bytes; got {type(value)}")


def _hex_as_bytes(value: dict[str, Any]) -> Any:
    return bytes.fromhex(value["hex"]) if value.keys() == {"hex"} else value
