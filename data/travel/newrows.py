"""New rows: what another book holds and this one does not -> added under ids of this book.

In    both books' tables; what names that stand in both mean
Out   rows added through a `Recorder`; how many were added and known; whose id became which
Not   which rows are known (`knownrows.py`, `twins.py`), files of photos, the whole course (`merging.py`),
      suspects from day to day (`followed.py`), names and ids within texts (`renamed.py`)

What is known stays as it is here; the kind of a medium, the margin of a trial, the note of a reading and the
end of a tray, where nobody has said them here, are taken as they were said there.
"""

from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from itertools import chain
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.tables.journal import Recorder
from data.travel.followed import bring_followed
from data.travel.knownrows import KEYS, NOTED, KnownRows, Place, Row, key_of
from data.travel.renamed import renamed_draw, renamed_plan, renamed_round
from data.travel.samenames import ASKED, Answer, SameName
from data.travel.twins import twins

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["STEPS", "NewRows"]

ROWS_BETWEEN = 500  # looks at the cancel token

# What belongs to a photo as it was scored: where the photo is known here, so is its score.
OF_A_PHOTO = {"score": "photo", "correction": "photo", "suspect": "score", "old_score": "score"}
# What is taken over where nobody has said it here; the first of them tells whether anybody has.
UNSAID = {
    "medium": ("kind",),
    "trial": ("margin_points", "margin_set_at"),
    "tray": ("done_at", "ended", "ended_why"),
    "reading": ("note",),
    "event": ("note",),
}
NOTHING = (None, "")
STEPS = len(KEYS) + 1  # what suspects are from day to day comes last


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
        here = KnownRows(table, self._ours.table(table).rows)
        self._ids[table], self._fresh[table] = {}, set()
        recorder.insert_block(table, self._new(recorder, table, here, refers))
        self.added[table] += len(self._fresh[table])

    def _new(
        self, recorder: Recorder, table: str, here: KnownRows, refers: Mapping[str, str]
    ) -> Iterator[Row]:
        """Their rows that are not known here, one by one, under ids of ours."""
        renamed = self._renamed(refers) if table == "tray" else {}
        last_id = here.last_id
        ids, fresh = self._ids[table], self._fresh[table]
        for number, row in enumerate(self._rows_of(table)):
            if number % ROWS_BETWEEN == 0:
                self._cancel.check()
            wanted = self._translated(table, row, refers)
            may_be = self._places(row, wanted) if table == "tray" else None
            known = here.same(wanted, may_be)
            if known is None and may_be is not None and row["id"] in renamed:
                known = renamed[row["id"]] if may_be(here.place(renamed[row["id"]])) else None
            if known is not None:
                ids[row["id"]] = known
                self.known[table] += 1
                if known <= here.last_id:
                    self._take_unsaid(recorder, table, known, row)
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

    def _renamed(self, refers: Mapping[str, str]) -> dict[int, int]:
        """Their trays that are ours by another code, crop or medium: their id -> ours."""
        there = {row["id"]: row for row in self._theirs.table("tray").rows}
        keys = {
            number: key_of("tray", self._translated("tray", row, refers)) for number, row in there.items()
        }
        known_there = set(keys.values())
        here = {key_of("tray", row): row for row in self._ours.table("tray").rows}
        return twins(
            [row for key, row in here.items() if key not in known_there],
            [there[number] for number, key in keys.items() if key not in here],
            self._ours.table("photo").rows,
            self._theirs.table("photo").rows,
        )

    def _take_unsaid(self, recorder: Recorder, table: str, known: int, row: Row) -> None:
        """What was said there of a row of ours, and not here; a tray that has ended leaves its tag."""
        names = UNSAID.get(table, ())
        if not names or row[names[0]] in NOTHING:
            return
        ours = self._ours.table(table).get(known)
        if ours[names[0]] in NOTHING:
            recorder.update(table, known, {name: row[name] for name in names})
            if table == "tray":
                self._tags.discard(ours["tag_number"])

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
