"""The tables, and books of every age."""

import json
import shutil
import sqlite3
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlite_utils import Database

from data import schema
from data.book import Book
from data.errors import DiskFull
from data.photos.originals import picture_paths
from data.records import PhotoId
from data.tables.journal import from_text
from data.tables.packed import bed_in, corners_in
from tests.data.oldbooks import BOOKS, counts, restored
from tests.data.smalldisk import small_disk
from vision.reason import Reason


def tables_of(db: Database) -> dict[str, str]:
    """Name -> definition of every table and index."""
    rows = db.query("SELECT name, sql FROM sqlite_master WHERE sql IS NOT NULL")
    return {row["name"]: " ".join(row["sql"].split()) for row in rows}


@pytest.fixture
def new(tmp_path: Path) -> Iterator[Database]:
    with Book.create(tmp_path / "new") as book, book.writing() as db:
        yield db


def test_a_new_book_has_exactly_the_tables_that_are_named(new: Database) -> None:
    assert set(new.table_names()) == schema.TABLES | {"_sqlite_migrations"}


def test_every_table_is_strict_and_every_reference_is_guarded(new: Database) -> None:
    for name in schema.TABLES:
        assert new.table(name).strict, name
    (guarded,) = new.execute("PRAGMA foreign_keys").fetchone()
    assert guarded == 1
    with pytest.raises(sqlite3.IntegrityError):
        new.table("seed_lot").insert({"crop": 999, "name": "of no crop"})


def test_a_number_that_is_no_number_is_not_kept(new: Database) -> None:
    with pytest.raises(sqlite3.IntegrityError):
        new.table("crop").insert({"name": "pea", "soak_hours": "all night"})


def test_a_book_is_written_ahead_and_carries_our_mark(new: Database) -> None:
    assert new.execute("PRAGMA journal_mode").fetchone()[0] == "wal"
    assert new.execute("PRAGMA application_id").fetchone()[0] == schema.APPLICATION_ID


@pytest.mark.parametrize("dump", sorted(BOOKS.glob("v*.sql")), ids=lambda path: path.stem)
def test_a_book_of_any_age_opens_with_nothing_lost(dump: Path, tmp_path: Path, new: Database) -> None:
    folder = restored(dump, tmp_path / "old")
    before_opening = Database(folder / "book.sqlite")
    before = counts(before_opening)
    before_opening.close()

    with Book.open(folder) as book, book.writing() as db:
        assert tables_of(db) == tables_of(new)
        assert counts(db).items() >= before.items()
        assert len(book.tiles()) == 3
        assert len(book.photos()) == before["photo"]


def test_a_score_from_before_the_bed_was_measured_has_no_share_of_it_and_says_why(tmp_path: Path) -> None:
    with Book.open(restored(BOOKS / "v3.sql", tmp_path / "old")) as book:
        photo = next(row.id for row in book.photos() if book.score(row.id))
        score = book.score(photo)

    assert score is not None
    assert (score.bed_share, score.bed_uniformity, score.bed_cells) == (None, None, None)
    assert score.reasons["bed_share"] is score.reasons["bed_cells"] is Reason.BEFORE_BED
    assert score.coverage == 55.0


def test_a_score_that_knows_the_bed_keeps_it(tmp_path: Path) -> None:
    with Book.open(restored(BOOKS / "v4.sql", tmp_path / "new")) as book:
        scores = [score for row in book.photos() if (score := book.score(row.id)) and score.bed_cells]

    assert [(one.bed_share, one.bed_uniformity) for one in scores] == [(83.5, 91.25)]
    assert [row[0] for row in scores[0].bed_cells or ()] == [None, 80.0, 81.0, 82.0, 83.0, 84.0]
    assert "bed_share" not in scores[0].reasons


def test_a_photo_from_before_cameras_were_kept_has_none(tmp_path: Path) -> None:
    for dump, cameras in (("v4", [None, None, None]), ("v5", ["Pinhole Box 2", None, None])):
        with Book.open(restored(BOOKS / f"{dump}.sql", tmp_path / dump)) as book, book.writing() as db:
            assert [row["camera"] for row in db.query("SELECT camera FROM photo ORDER BY id")] == cameras


# --- step 6: corners and shares of the bed packed


def of_before(folder: Path, query: str) -> list[tuple[Any, ...]]:
    """What a book says before this program has opened it."""
    connection = sqlite3.connect(folder / "book.sqlite")
    rows = connection.execute(query).fetchall()
    connection.close()
    return rows


def test_packed_corners_and_beds_are_those_that_were_kept_in_full(tmp_path: Path) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    before = of_before(folder, "SELECT id, corners, bed_cells FROM score ORDER BY id")

    with Book.open(folder) as book, book.writing() as db:
        rows = list(db.query("SELECT id, corners, cells, bed_cells FROM score ORDER BY id"))
    after = [(row["id"], corners_in(row["corners"]), bed_in(row["cells"], row["bed_cells"])) for row in rows]

    assert after == before
    assert [bed is None for *_, bed in after] == [True, False]
    assert all(len(row["corners"]) < 0.7 * len(text) for row, (_, text, _) in zip(rows, before, strict=True))


def test_pictures_that_an_older_book_has_made_are_found_again(tmp_path: Path) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    query = "SELECT p.id, p.digest, s.method, s.corners FROM photo p JOIN score s ON s.photo = p.id"
    before = {row[0]: picture_paths(folder, *row[1:]) for row in of_before(folder, query)}

    with Book.open(folder) as book:
        assert len(before) == 2
        assert {photo: book.pictures(PhotoId(photo)) for photo in before} == before


def test_what_was_changed_before_the_step_can_be_taken_back_after_it(tmp_path: Path) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    ((now, bed),) = of_before(folder, "SELECT corners, bed_cells FROM score WHERE id = 2")
    once = now.replace("10.0", "20.5")
    cells = {"hex": "10270000" * 36}
    sides = ({"corners": once, "bed_cells": cells}, {"corners": now, "bed_cells": {"hex": bed.hex()}})
    image = {"table": "score", "id": 2, "before": sides[0], "after": sides[1]}
    connection = sqlite3.connect(folder / "book.sqlite")
    with connection:
        row = ("2026-11-26T08:00:00", "corners of 3.jpg", json.dumps([image]))
        connection.execute("INSERT INTO change (made_at, text, images) VALUES (?, ?, ?)", row)
        body = json.dumps({"score": {"id": 2, **sides[0]}, "suspects": []})
        connection.execute("UPDATE old_score SET body = ?", (body,))
    connection.close()

    with Book.open(folder) as book:
        packed = from_text(book._rows("SELECT body FROM old_score")[0]["body"])["score"]
        assert corners_in(packed["corners"]) == once
        book.undo()
        row = book._rows("SELECT corners, cells, bed_cells FROM score WHERE id = 2")[0]
        assert corners_in(row["corners"]) == corners_in(packed["corners"]) == once
        assert (bed_in(row["cells"], row["bed_cells"]) or b"").hex() == cells["hex"]
        book.redo()
        row = book._rows("SELECT corners, cells, bed_cells FROM score WHERE id = 2")[0]
        assert (corners_in(row["corners"]), bed_in(row["cells"], row["bed_cells"])) == (now, bed)


def test_a_program_of_before_that_still_has_the_book_open_can_keep_no_score_as_it_did(tmp_path: Path) -> None:
    """It would be read as packed numbers, which it is not."""
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    before = sqlite3.connect(folder / "book.sqlite")
    ((corners,),) = before.execute("SELECT corners FROM score WHERE id = 1").fetchall()

    Book.open(folder).close()

    with pytest.raises(sqlite3.IntegrityError, match=r"score\.corners"):
        before.execute("UPDATE score SET corners = ? WHERE id = 1", (corners,))
    before.close()


@pytest.mark.parametrize("copies", [1, 2])  # for which there is room: full at the backup, full at the step
def test_an_older_book_on_a_full_disk_stays_as_it_was(tmp_path: Path, copies: int) -> None:
    made = restored(BOOKS / "v5.sql", tmp_path / "old")
    room = copies * (made / "book.sqlite").stat().st_size + 8192
    with small_disk(tmp_path / "disk", str(room)) as disk:
        folder = shutil.copytree(made, disk / "old")

        with pytest.raises(DiskFull):
            Book.open(folder)

        assert len([*(folder / "backups").iterdir()]) == copies - 1
        query = "SELECT * FROM score"
        assert of_before(folder, query) == of_before(made, query)
        assert of_before(folder, "SELECT max(name) FROM _sqlite_migrations") == [("m005_camera_of_photo",)]


@pytest.mark.parametrize("text", ['no list of a "score"', '[{"table": "score", "before": 5}]', '["score"]'])
def test_a_change_that_nobody_can_read_keeps_no_older_book_shut(tmp_path: Path, text: str) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    connection = sqlite3.connect(folder / "book.sqlite")
    with connection:
        row = ("2026-11-26T08:00:00", "corners of 3.jpg", text)
        connection.execute("INSERT INTO change (made_at, text, images) VALUES (?, ?, ?)", row)
        connection.execute("UPDATE old_score SET body = ?", (text,))
    connection.close()

    with Book.open(folder) as book:
        assert book._rows("SELECT images FROM change ORDER BY id DESC")[0]["images"] == text
        assert book._rows("SELECT body FROM old_score")[0]["body"] == text
        assert book._rows("SELECT count(*) AS n FROM score WHERE typeof(corners) = 'blob'")[0]["n"] == 2


def test_an_older_book_leaves_the_room_that_it_no_longer_needs_to_the_disk(tmp_path: Path) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    connection = sqlite3.connect(folder / "book.sqlite")
    columns = ", ".join(row[1] for row in connection.execute("PRAGMA table_info(score)"))
    asked = columns.replace("id, photo, method", "NULL, 1, 'plain ' || (n + 1)")
    asked = asked.replace(" corners,", " replace(corners, '.0', '.01234567891'),").replace(" gaps,", " '[]',")
    with connection:
        connection.execute(
            "WITH RECURSIVE more(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM more WHERE n < 300) "
            f"INSERT INTO score ({columns}) SELECT {asked} FROM score, more WHERE score.id = 1"
        )
    connection.close()
    before = (folder / "book.sqlite").stat().st_size

    with Book.open(folder) as book:
        assert book._rows("SELECT count(*) AS n FROM score")[0]["n"] == 302
        assert book._rows("PRAGMA freelist_count")[0][0] == 0
    assert (folder / "book.sqlite").stat().st_size < 0.95 * before


def test_there_is_a_dump_of_the_newest_version(new: Database) -> None:
    newest = BOOKS / f"v{len(schema.STEPS)}.sql"
    old = Database(memory=True)
    old.conn.executescript(newest.read_text(encoding="utf-8"))

    assert tables_of(old) == tables_of(new)
    old.close()


def test_a_step_that_fails_leaves_nothing_behind(tmp_path: Path) -> None:
    def m999_half(db: Database) -> None:
        db.execute("CREATE TABLE half (id INTEGER PRIMARY KEY) STRICT")
        raise RuntimeError

    with Book.create(tmp_path / "book") as book:
        with pytest.raises(RuntimeError), book.writing() as db:
            schema.migrate(db, (*schema.STEPS, m999_half))
        with book.writing() as db:
            assert "half" not in db.table_names()
            assert schema.applied_steps(db.conn) == tuple(step.__name__ for step in schema.STEPS)


def test_an_older_book_is_copied_before_it_is_changed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def m999_more(db: Database) -> None:
        db.execute("CREATE TABLE more (id INTEGER PRIMARY KEY) STRICT")

    Book.create(tmp_path / "book").close()
    monkeypatch.setattr(schema, "STEPS", (*schema.STEPS, m999_more))
    monkeypatch.setattr(schema.migrate, "__defaults__", (schema.STEPS,))

    with Book.open(tmp_path / "book") as book, book.writing() as db:
        assert "more" in db.table_names()

    before = Database(tmp_path / "book" / "backups" / "before-m999_more.sqlite")
    assert "more" not in before.table_names()
    before.close()
