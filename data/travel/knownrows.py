"""Known rows: what makes a row of a book one thing in the world -> whether this book has it already.

In    the rows of a table of this book; a row of another book, in ids and names of this one
Out   the id of the row that is the same thing, or None
Not   what is done with it (`newrows.py`), trays that were called otherwise since (`twins.py`)

A photo is known by its bytes, a tray by code, crop, medium and time of sowing, a reading by tray, kind and
time.
"""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from typing import Any

__all__ = ["KEYS", "NOTED", "KnownRows", "Place", "Row", "key_of"]

Row = dict[str, Any]
Place = tuple[int | None, str]  # id of the trial, name of the shelf

# What makes a row one thing in the world; tables in an order in which what is referred to comes first.
KEYS: Mapping[str, tuple[str, ...]] = {
    "medium": ("name",),
    "crop": ("name",),
    "tray_type": ("name",),
    "seed_lot": ("crop", "name"),
    "trial": ("name",),
    "plan": ("trial", "kept_at", "body"),
    "draw": ("plan", "drawn_at", "seed", "body"),
    "block": ("trial", "name"),
    "tray": ("code", "crop", "medium", "sown_at"),
    "photo": ("digest",),
    "score": ("photo", "method"),
    "suspect": ("score", "x_mm", "y_mm", "area_cm2"),
    "correction": ("photo", "kind", "made_at", "body"),
    "old_score": ("score", "replaced_at", "body"),
    "log_file": ("digest",),
    "bench_test": ("kind", "medium", "place", "begun_at"),
    "heap_photo": ("bench_test", "digest"),
    "reading": ("tray", "shelf", "bench_test", "kind", "taken_at", "value"),
    "event": ("tray", "shelf", "kind", "at"),
    "eye_round": ("rater", "seed", "begun_at"),
    "eye_score": ("tray", "rater", "given_at"),
    "look_answer": ("tray", "what", "answered_on"),
    "look_entry": ("tray", "what", "since"),
    "material_factor": ("medium", "name"),
}
# Two rows alike are two things: trays of one code in old notes, two cuts in one minute. Known one by one.
SEVERAL = frozenset({"tray", "reading", "event", "eye_score", "bench_test", "look_answer"})

# Two with notes that differ are two things; one without may have been given its note since: they are one.
NOTED = frozenset({"reading", "event"})


def key_of(table: str, row: Row) -> tuple[Any, ...]:
    """What makes a row one thing in the world."""
    return tuple(row[column] for column in KEYS[table])


class KnownRows:
    """The rows of a table in this book, by what makes each one thing in the world."""

    def __init__(self, table: str, rows: Iterable[Row]) -> None:
        self._table = table
        self._of: dict[tuple[Any, ...], list[int]] = defaultdict(list)
        self._logged: dict[tuple[Any, ...], int] = {}
        self._stands: dict[int, Place] = {}  # trays only
        self._notes: dict[int, str] = {}  # readings and events only
        self.last_id = 0
        for row in rows:
            self._of[self._key(row)].append(int(row["id"]))
            if table == "tray":
                self._stands[int(row["id"])] = (row["trial"], row["shelf"])
            if table in NOTED:
                self._notes[int(row["id"])] = row["note"]
            self._note_logged(row, int(row["id"]))
            self.last_id = max(self.last_id, int(row["id"]))

    def same(self, row: Row, may_be: Callable[[Place], bool] | None = None) -> int | None:
        """The id of the row that is the same thing; None where there is none, or it is taken already.

        Of one time a logger says one thing of a place: what stands here is left as it is.

        Parameters
        ----------
        may_be : of a tray: whether it can be one that stands in this trial and on this shelf of ours.
        """
        if row.get("log_file") is not None and self._place_and_time(row) in self._logged:
            return self._logged[self._place_and_time(row)]
        ids: Iterable[int] = self._of.get(self._key(row), ())
        if self._table in NOTED:
            ids = self._with_note(ids, row["note"])
        found = next((one for one in ids if may_be is None or may_be(self._stands[one])), None)
        if found is not None and self._table in SEVERAL:
            self._of[self._key(row)].remove(found)
        return found

    def _with_note(self, ids: Iterable[int], note: str) -> list[int]:
        """Those that may be meant by a row with this note, the same note first."""
        fitting = [one for one in ids if self._notes[one] == note or not (note and self._notes[one])]
        return sorted(fitting, key=lambda one: self._notes[one] != note)

    def add(self, row: Row, row_id: int) -> None:
        """A row that has come in."""
        if self._table not in SEVERAL:
            self._of[self._key(row)].append(row_id)
        self._note_logged(row, row_id)

    def place(self, tray: int) -> Place:
        """Where a tray of this book stands."""
        return self._stands[tray]

    def _key(self, row: Row) -> tuple[Any, ...]:
        return key_of(self._table, row)

    def _note_logged(self, row: Row, row_id: int) -> None:
        if row.get("log_file") is not None:
            self._logged.setdefault(self._place_and_time(row), row_id)

    @staticmethod
    def _place_and_time(row: Row) -> tuple[Any, ...]:
        return row["tray"], row["shelf"], row["kind"], row["taken_at"]
