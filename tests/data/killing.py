"""Killing: work on a book in a process of its own, which is killed at a moment of our choice.

A scene prepares a book, works on it and tells after the kill whether the book is whole: everything of which
the process had said that it was kept is there, and nothing is there by half.
"""

import hashlib
import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from data import schema
from data.book import Book
from data.cancel import CancelToken
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from data.travel.merging import merge
from data.travel.samenames import Answer, same_names
from tests.data.builders import a_note, a_tray, bring, score_note
from tests.data.contents import is_whole, old_scores
from tests.data.oldbooks import BOOKS, counts, restored

ROOT = Path(__file__).resolve().parents[2]
BEGUN, READY = "begun", "ready"
LOG_ROWS = 3000
NOON = datetime(2026, 3, 8, 12)
CORNERS = [(1.0, 2.0), (900.0, 2.0), (900.0, 480.0), (1.0, 480.0)]


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """One kind of work."""

    prepare: Callable[[Path], None]  # in the folder of the test
    work: Callable[[Path], None]  # in the child; prints a line after each thing that is kept for good
    check: Callable[[Path, Sequence[str]], None]  # the lines that were printed
    longest_s: float  # kills are spread over so much time


def killed(scene: str, folder: Path, after_s: float) -> bool:
    """Work on a scene and kill it after a time; whether it was killed before its end. Checks the book."""
    folder.mkdir()
    SCENES[scene].prepare(folder)
    child = subprocess.Popen(
        [sys.executable, "-c", f"from tests.data.killing import child; child({scene!r}, {str(folder)!r})"],
        cwd=ROOT, stdout=subprocess.PIPE, stdin=subprocess.PIPE, text=True,
    )  # fmt: skip
    assert child.stdout is not None
    assert child.stdin is not None
    assert child.stdout.readline().strip() == BEGUN
    child.stdin.write("go\n")
    child.stdin.flush()
    time.sleep(after_s)
    os.kill(child.pid, signal.SIGKILL)
    lines = child.stdout.read().split()
    code = child.wait()
    child.stdin.close()
    child.stdout.close()
    SCENES[scene].check(folder, lines)
    return code == -signal.SIGKILL and READY not in lines


def child(scene: str, folder: str) -> None:
    """What the process does."""
    import sqlite_utils  # noqa: F401 (so that the time of its import is not what is hit)

    print(BEGUN, flush=True)
    sys.stdin.readline()
    SCENES[scene].work(Path(folder))
    print(READY, flush=True)
    time.sleep(60)


# --- intake


def _prepare_intake(folder: Path) -> None:
    with Book.create(folder / "book") as book:
        book.add_tray(a_tray(tag_number=10))
    for n in range(120):
        a_note(folder / "phone", f"{n:03}.jpg", tag=10, number=n, padding="x" * 20_000, suspects=[{}])


def _work_intake(folder: Path) -> None:
    with Book.open(folder / "book") as book:
        for path in sorted((folder / "phone").iterdir()):
            bring(book, path)
            print(path.name, flush=True)


def _check_intake(folder: Path, lines: Sequence[str]) -> None:
    with Book.open(folder / "book") as book:
        assert is_whole(book)
        rows = {row.name: row for row in book.photos(most=1000)}
        assert set(lines) - {READY} <= set(rows)
        for name, row in rows.items():
            score = book.score(row.id)
            assert score is not None
            assert len(score.suspects) == 1
            assert row.photo is not None
            assert row.photo.read_bytes() == (folder / "phone" / name).read_bytes()
        for path in sorted((folder / "phone").iterdir())[: len(rows) + 2]:
            bring(book, path)
        assert len(book.photos(most=1000)) == len(rows) + 2 if len(rows) < 118 else True


# --- a logger's file, and decisions of a person


def _log(n: int) -> list[NewReading]:
    begin = NOON + timedelta(days=n)
    kind = ReadingKind.AIR_TEMPERATURE
    return [
        NewReading(kind=kind, value=20.0, taken_at=begin + timedelta(seconds=m), shelf="A", source="log")
        for m in range(LOG_ROWS)
    ]


def _sha(n: int) -> str:
    return hashlib.sha256(str(n).encode()).hexdigest()


def _prepare_log(folder: Path) -> None:
    with Book.create(folder / "book") as book:
        book.add_tray(a_tray())


def _work_log(folder: Path) -> None:
    with Book.open(folder / "book") as book:
        for n in range(8):
            book.keep_log(_sha(n), f"{n}.csv", "{}", _log(n))
            print(n, flush=True)


def _check_log(folder: Path, lines: Sequence[str]) -> None:
    with Book.open(folder / "book") as book:
        assert is_whole(book)
        kept = [n for n in range(8) if book.knows_log(_sha(n))]
        assert {int(line) for line in lines if line != READY} <= set(kept)
        assert len(book.readings()) == LOG_ROWS * len(kept)
        assert book.undo_text() == (f"readings of {kept[-1]}.csv" if kept else "tray A1 added")
        for n in range(8):
            assert book.keep_log(_sha(n), f"{n}.csv", "{}", _log(n)).same_file == (n in kept)


def _prepare_decisions(folder: Path) -> None:
    with Book.create(folder / "book") as book:
        book.add_tray(a_tray(tag_number=10))
        bring(book, a_note(folder / "phone", "1.jpg", tag=10, suspects=[{}]))
        book.forget_changes()


def _work_decisions(folder: Path) -> None:
    path = folder / "phone" / "1.jpg"
    with Book.open(folder / "book") as book:
        tray, photo = book.trays()[0].id, book.photos()[0].id
        for n in range(40):
            book.set_corners(photo, CORNERS, score_note(path, CORNERS))
            book.add_event([tray], EventKind.CUT, NOON, str(n))
            print(n, flush=True)
            book.undo()


def _check_decisions(folder: Path, lines: Sequence[str]) -> None:
    with Book.open(folder / "book") as book:
        assert is_whole(book)
        (tray,) = book.trays(growing=False)
        ends = [event for event in book.events(tray.id) if event.kind is EventKind.CUT]
        assert len(ends) == (0 if tray.ended is None else 1)
        old = old_scores(book, book.photos()[0].id)
        assert len([line for line in lines if line != READY]) <= len(old) <= 40
        score = book.score(book.photos()[0].id)
        assert score is not None
        assert len(score.suspects) == 1
        while book.undo() is not None:  # every decision that was kept can be taken back
            pass
        assert old_scores(book, book.photos()[0].id) == ()


# --- a whole book that came in, taken back


def _prepare_taking_back(folder: Path) -> None:
    with Book.create(folder / "theirs") as other:
        other.add_tray(a_tray("K7", tag_number=90))
        for n in range(5):
            bring(other, a_note(folder / "phone", f"{n}.jpg", tag=90, number=n, suspects=[{}]))
        for n in range(8):
            other.keep_log(_sha(n), f"{n}.csv", "{}", _log(n))
        with Book.create(folder / "book") as book:
            book.add_tray(a_tray(tag_number=10))
            answers = dict.fromkeys(same_names(book, other), Answer.SAME)
            merge(book, other, answers, "Kim", CancelToken())


def _work_taking_back(folder: Path) -> None:
    with Book.open(folder / "book") as book:
        book.undo()


def _check_taking_back(folder: Path, lines: Sequence[str]) -> None:
    with Book.open(folder / "book") as book, book.writing() as db:
        assert is_whole(book)
        whole = book.undo_text() == "book Kim brought in"
        assert not (whole and READY in lines)
        assert counts(db)["reading"] == (8 * LOG_ROWS if whole else 0)
        assert counts(db)["photo"] == counts(db)["suspect"] == (5 if whole else 0)
        assert counts(db)["tray"] == (2 if whole else 1)


# --- a migration


def _prepare_migration(folder: Path) -> None:
    import sqlite3

    restored(BOOKS / "v1.sql", folder / "book")
    with sqlite3.connect(folder / "book" / "book.sqlite") as old:
        old.execute("PRAGMA journal_mode = WAL")
        old.executemany(
            "INSERT INTO reading (tray, kind, value, unit, taken_at) VALUES (1, 'weight', ?, 'g', ?)",
            ((float(n), f"2026-03-08T08:{n // 60 % 60:02}:{n % 60:02}") for n in range(20_000)),
        )
    old.close()


def _work_migration(folder: Path) -> None:
    Book.open(folder / "book").close()


def _check_migration(folder: Path, lines: Sequence[str]) -> None:
    del lines
    with Book.open(folder / "book") as book, book.writing() as db:
        assert is_whole(book)
        assert schema.applied_steps(db.conn) == tuple(step.__name__ for step in schema.STEPS)
        assert counts(db)["reading"] == 20_000
        assert len(book.tiles()) == 3
    copy = folder / "book" / "backups" / f"before-{schema.STEPS[-1].__name__}.sqlite"
    assert copy.stat().st_size > 500_000
    halves = list(copy.parent.glob("*.part*"))  # of the killed ones; cleared with a later backup
    assert all(half.name.startswith(".") for half in halves)


SCENES = {
    "intake": Scene(prepare=_prepare_intake, work=_work_intake, check=_check_intake, longest_s=1.2),
    "log": Scene(prepare=_prepare_log, work=_work_log, check=_check_log, longest_s=1.5),
    "decisions": Scene(
        prepare=_prepare_decisions, work=_work_decisions, check=_check_decisions, longest_s=0.8
    ),
    "taking back": Scene(
        prepare=_prepare_taking_back, work=_work_taking_back, check=_check_taking_back, longest_s=0.25
    ),
    "migration": Scene(
        prepare=_prepare_migration, work=_work_migration, check=_check_migration, longest_s=0.25
    ),
}
