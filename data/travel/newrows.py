"""New rows: what another book holds and this one does not -> added under ids of this book.

In    both books' tables; what names that stand in both mean
Out   rows added through a `Recorder`; how many were added and known; whose id became which
Not   files of photos, the whole course (`merging.py`), suspects from day to day (`followed.py`), names and
      ids within texts (`renamed.py`)

Rows are known again by what makes them one thing in the world: a photo by its bytes, a tray by code, crop,
medium and time of sowing, a reading by tray, kind and time. What is known stays as it is here; the kind of a
medium and the note of a reading, where nobody has said them here, are taken as they were said there.
"""

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping
from itertools import chain
from typing import TYPE_CHECKING, Any

from data.cancel import CancelToken
from data.tables.journal import Recorder
from data.travel.followed import bring_followed
from data.travel.renamed import renamed_draw, renamed_plan, renamed_round
from data.travel.samenames import ASKED, Answer, SameName

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["STEPS", "NewRows"]

Row = dict[str, Any]
Place = tuple[int | None, str]  # id of the trial, name of the shelf
ROWS_BETWEEN = 500  # looks at the cancel token

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
# What belongs to a photo as it was scored: where the photo is known here, so is its score.
OF_A_PHOTO = {"score": "photo", "correction": "photo", "suspect": "score", "old_score": "score"}
STEPS = len(KEYS) + 1  # what suspects are from day to day comes last
# Two rows alike are two things: trays of one code in old notes, two cuts in one minute. Known one by one.
SEVERAL = frozenset({"tray", "reading", "event", "eye_score", "bench_test", "look_answer"})

# Two with notes that differ are two things; one without may have been given its note since: they are one.
NOTED = frozenset({"reading", "event"})


class _Here:
    """The rows of a table in this book, by what makes each one thing in the world."""

    def __init__(self, table: str, rows: Iterable[Row]) -> None:
        self._table = table
        self._of: dict[tuple[Any, ...], list[int]] = defaultdict(list)
        self._logged: dict[tuple[Any, ...], int] = {}
        self._stands: dict[int, Place] = {}  # trays only
        self.notes: dict[int, str] = {}  # readings and events only
        self.last_id = 0
        for row in rows:
            self._of[self._key(row)].append(int(row["id"]))
            if table == "tray":
                self._stands[int(row["id"])] = (row["trial"], row["shelf"])
            if table in NOTED:
                self.notes[int(row["id"])] = row["note"]
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
        fitting = [one for one in ids if self.notes[one] == note or not (note and self.notes[one])]
        return sorted(fitting, key=lambda one: self.notes[one] != note)

    def add(self, row: Row, row_id: int) -> None:
        """A row that has come in."""
        if self._table not in SEVERAL:
            self._of[self._key(row)].append(row_id)
        self._note_logged(row, row_id)

    def _key(self, row: Row) -> tuple[Any, ...]:
        return tuple(row[column] for column in KEYS[self._table])

    def _note_logged(self, row: Row, row_id: int) -> None:
        if row.get("log_file") is not None:
            self._logged.setdefault(self._place_and_time(row), row_id)

    @staticmethod
    def _place_and_time(row: Row) -> tuple[Any, ...]:
        return row["tray"], row["shelf"], row["kind"], row["taken_at"]


class NewRows:
    """One merging on its way: their ids -> ours, table by table."""

    def __init__(
        self,
        ours: "Database",
        theirs: "Database",
        answers: Mapping[SameName, Answer],
        label: str,
        cancel: CancelToken,
        report: Callable[[int], None],  # tables done
    ) -> None:
        self._cancel, self._report = cancel, report
        self._ours, self._theirs, self._answers, self._label = ours, theirs, answers, label
        self._ids: dict[str, dict[int, int]] = {}
        self._fresh: dict[str, set[int]] = {}  # their ids of rows that were added
        self._tags = {
            row["tag_number"]
            for row in ours.table("tray").rows
            if row["done_at"] is None and row["tag_number"]
        }
        self._has_media = ours.table("medium").count > 0
        self._trials_apart = {
            row["id"] for row in theirs.table("trial").rows if self._name("trial", row["name"]) != row["name"]
        }
        self.added: Counter[str] = Counter()
        self.known: Counter[str] = Counter()
        self.without_tag: list[str] = []

    def take_all(self, recorder: Recorder) -> None:
        """Add what is not known here, table by table."""
        for done, table in enumerate(KEYS, start=1):
            self._cancel.check()
            self._take(recorder, table)
            self._report(done)
        self._cancel.check()
        photos, suspects = self._ids["photo"], self._ids["suspect"]
        bring_followed(self._ours, self._theirs, photos, suspects, self._fresh["photo"])
        self._report(STEPS)

    def _take(self, recorder: Recorder, table: str) -> None:
        refers = {str(key.column): key.other_table for key in self._theirs.table(table).foreign_keys}
        here = _Here(table, self._ours.table(table).rows)
        self._ids[table], self._fresh[table] = {}, set()
        recorder.insert_block(table, self._new(recorder, table, here, refers))
        self.added[table] += len(self._fresh[table])

    def _new(self, recorder: Recorder, table: str, here: _Here, refers: Mapping[str, str]) -> Iterator[Row]:
        """Their rows that are not known here, one by one, under ids of ours."""
        last_id = last_here = here.last_id
        ids, fresh = self._ids[table], self._fresh[table]
        for number, row in enumerate(self._rows_of(table)):
            if number % ROWS_BETWEEN == 0:
                self._cancel.check()
            wanted = self._translated(table, row, refers)
            known = here.same(wanted, self._places(row, wanted) if table == "tray" else None)
            if known is not None:
                ids[row["id"]] = known
                self.known[table] += 1
                if table == "medium" and known <= last_here:
                    self._take_kind(recorder, known, row["kind"])
                if table in NOTED and row["note"] and here.notes.get(known) == "":
                    recorder.update(table, known, {"note": row["note"]})
            elif self._hangs_on_known(table, row):
                self.known[table] += 1
            else:
                last_id += 1
                ids[row["id"]] = last_id
                fresh.add(row["id"])
                here.add(wanted, last_id)
                yield self._settled(table, wanted) | {"id": last_id}

    def _rows_of(self, table: str) -> Iterator[Row]:
        """Their rows; those with a note first, so that each finds its own before one without is taken."""
        rows = self._theirs.table(table)
        if table not in NOTED:
            return iter(rows.rows)
        return chain((row for row in rows.rows if row["note"]), (row for row in rows.rows if not row["note"]))

    def _take_kind(self, recorder: Recorder, medium: int, kind: str) -> None:
        if kind and not self._ours.table("medium").get(medium)["kind"]:
            recorder.update("medium", medium, {"kind": kind})

    def _hangs_on_known(self, table: str, row: Row) -> bool:
        parent = OF_A_PHOTO.get(table)
        return parent is not None and row[parent] not in self._fresh[parent]

    def _translated(self, table: str, row: Row, refers: Mapping[str, str]) -> Row:
        """The row with our ids, and with names that say whose they are where they mean something else."""
        wanted = dict(row)
        for column, other in refers.items():
            if wanted[column] is not None:
                wanted[column] = self._ids[other].get(wanted[column])
        if table in ASKED:
            wanted["name"] = self._name(table, wanted["name"])
        if wanted.get("shelf"):
            wanted["shelf"] = self._name("shelf", wanted["shelf"])
        if "body" in wanted:
            wanted["body"] = self._body(table, row)
        return wanted

    def _places(self, tray: Row, wanted: Row) -> Callable[[Place], bool]:
        """Where their tray can stand here: not in another trial of that name, nor on another shelf of it."""
        another_trial = tray["trial"] in self._trials_apart
        another_shelf = self._name("shelf", tray["shelf"]) != tray["shelf"]

        def may_be(place: Place) -> bool:
            trial, shelf = place
            return not (
                (another_trial and trial != wanted["trial"]) or (another_shelf and shelf == tray["shelf"])
            )

        return may_be

    def _body(self, table: str, row: Row) -> str:
        """What a row keeps as text, in names and ids of this book."""
        match table:
            case "plan":
                return renamed_plan(row["body"], self._name)
            case "draw":
                plan = self._theirs.table("plan").get(row["plan"])["body"]
                return renamed_draw(row["seed"], row["body"], plan, self._name)
            case "eye_round":
                return renamed_round(row["body"], self._ids["tray"], self._ids["photo"])
            case _:
                return str(row["body"])

    def _name(self, kind: str, name: str) -> str:
        apart = self._answers.get(SameName(kind=kind, name=name)) is Answer.APART
        return f"{name} ({self._label})" if apart else name

    def _settled(self, table: str, row: Row) -> Row:
        """A tray leaves its tag to a growing tray here that carries it already; so do media their trust."""
        if table == "medium" and self._has_media:
            row["trusted"] = 0  # which medium is the trusted one was said here, or was not
        if table != "tray":
            return row
        if row["done_at"] is None and row["tag_number"] is not None:
            if row["tag_number"] in self._tags:
                self.without_tag.append(str(row["code"]))
                row["tag_number"] = None
            else:
                self._tags.add(row["tag_number"])
        return row
