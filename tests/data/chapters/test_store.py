"""What the world does to a book, and what the grower is told; the book stays as it was."""

import errno
import multiprocessing
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import AbstractContextManager, contextmanager
from datetime import date, timedelta
from pathlib import Path
from typing import NoReturn

import pytest

from data import schema
from data.book import Book
from data.chapters.store import BACKUPS_KEPT
from data.errors import (
    BookClosed,
    BookDamaged,
    BookError,
    BookExists,
    BookIsNewer,
    BookLocked,
    BookReadOnly,
    BookUnreachable,
    DiskFull,
    NotABook,
)
from tests.data.builders import a_note, a_tray, bring, score_note
from tests.data.contents import is_whole
from tests.data.oldbooks import BOOKS, restored
from tests.data.smalldisk import small_disk


def rows(path: Path, table: str) -> int:
    connection = sqlite3.connect(path / "book.sqlite")
    try:
        return int(connection.execute(f"SELECT count(*) FROM {table}").fetchone()[0])
    finally:
        connection.close()


# --- transactions


def write_and_fail(book: Book, name: str) -> None:
    with book.writing() as db:
        db.table("setting").insert({"name": name, "value": "1"})
        raise RuntimeError


def test_what_is_written_together_is_kept_together_or_not_at_all(book: Book) -> None:
    with pytest.raises(RuntimeError):
        write_and_fail(book, "one")

    assert book.setting("one") is None


def test_a_block_inside_a_block_can_fail_alone(book: Book) -> None:
    with book.writing() as db:
        db.table("setting").insert({"name": "outer", "value": "1"})
        with pytest.raises(RuntimeError):
            write_and_fail(book, "inner")

    assert (book.setting("outer"), book.setting("inner")) == ("1", None)


def test_nobody_who_reads_and_then_writes_is_turned_away(book: Book) -> None:
    def count_up(_: int) -> None:
        with book.writing() as db:
            now = int(book.setting("n") or 0)
            db.table("setting").upsert({"name": "n", "value": str(now + 1)}, pk="name")

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(count_up, range(100)))

    assert book.setting("n") == "100"


# --- books that cannot be opened


def test_an_empty_folder_is_no_book(tmp_path: Path) -> None:
    with pytest.raises(NotABook, match="there is no trial book in"):
        Book.open(tmp_path)


@pytest.mark.parametrize("content", [b"", b"these are my notes of last summer" * 100])
def test_a_file_that_only_has_the_name_is_no_book(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "book.sqlite").write_bytes(content)

    with pytest.raises(NotABook):
        Book.open(tmp_path)

    assert (tmp_path / "book.sqlite").read_bytes() == content


def test_the_database_of_another_program_is_no_book(tmp_path: Path) -> None:
    connection = sqlite3.connect(tmp_path / "book.sqlite")
    connection.execute("CREATE TABLE recipe (name TEXT)")
    connection.close()

    with pytest.raises(NotABook):
        Book.open(tmp_path)


def test_a_new_book_never_takes_the_place_of_an_old_one(book: Book) -> None:
    with pytest.raises(BookExists):
        Book.create(book.folder)

    assert len(book.trays()) == 3


def test_a_program_killed_while_it_made_a_book_stands_in_nobodys_way(tmp_path: Path) -> None:
    begun = tmp_path / "begun"
    begun.mkdir()
    (begun / "book.sqlite").touch()
    with pytest.raises(NotABook, match="start a new book"):
        Book.open(begun)
    Book.create(begun).close()

    marked = tmp_path / "marked"  # a moment later: our mark stands in it, and no table
    marked.mkdir()
    with sqlite3.connect(marked / "book.sqlite") as db:
        db.execute("PRAGMA journal_mode = WAL")
        db.execute(f"PRAGMA application_id = {schema.APPLICATION_ID}")
    db.close()

    for folder in (begun, marked):
        with Book.open(folder) as book:
            book.add_tray(a_tray())
            assert [tray.code for tray in book.trays()] == ["A1"]


def test_a_newer_book_is_left_alone(book: Book) -> None:
    with book.writing() as db:
        row = {"migration_set": "book", "name": "m999_holograms", "applied_at": "2031"}
        db.table("_sqlite_migrations").insert(row)
    book.close()

    with pytest.raises(BookIsNewer, match="newer Evenstand"):
        Book.open(book.folder)

    assert rows(book.folder, "tray") == 3


def test_a_damaged_book_with_backups_says_where_they_are(book: Book) -> None:
    book.back_up()
    book.close()
    path = book.folder / "book.sqlite"
    path.write_bytes(b"\xff" * 100 + path.read_bytes()[100:])
    before = path.read_bytes()

    with pytest.raises(BookDamaged, match="newest file from its folder backups"):
        Book.open(book.folder)

    assert path.read_bytes() == before


def test_a_backup_is_put_back_as_the_words_say_though_a_killed_program_has_left_its_log(book: Book) -> None:
    backup = book.back_up()
    book.add_tray(a_tray("B1"))
    path = book.folder / "book.sqlite"
    logs = {
        path.with_name(f"{path.name}-{what}"): path.with_name(f"{path.name}-{what}").read_bytes()
        for what in ("wal", "shm")
    }
    book.close()
    path.write_bytes(backup.read_bytes())
    for log, content in logs.items():
        log.write_bytes(content)
    with Book.open(book.folder) as wrong:  # SQLite takes the log for that of the backup
        assert len(wrong.trays()) == 4

    path.write_bytes(backup.read_bytes())
    words = str(BookDamaged(book.folder))
    for log, content in logs.items():
        log.write_bytes(content)
        if log.name in words.split("delete ")[-1]:
            log.unlink()
    with Book.open(book.folder) as again:
        assert [tray.code for tray in again.trays()] == ["A1", "A2", "A3"]


def test_a_damaged_book_without_a_backup_is_not_told_to_be_none(book: Book) -> None:
    book.close()
    path = book.folder / "book.sqlite"
    path.write_bytes(b"\xff" * 100 + path.read_bytes()[100:])
    before = path.read_bytes()

    with pytest.raises(NotABook, match="is damaged, or is no trial book"):
        Book.open(book.folder)

    assert path.read_bytes() == before


def test_rows_as_long_as_scores_leave_little_of_the_file_empty(book: Book) -> None:
    """Of a page on which three and no fourth fit a fifth stays empty."""

    def size() -> int:
        (pages,), (bytes_each,) = (book._row(f"PRAGMA {name}") for name in ("page_count", "page_size"))
        return pages * bytes_each

    before, long = size(), 1100
    with book.writing() as db:
        db.table("trial").insert_all({"name": f"T{n}", "question": "x" * long} for n in range(400))

    assert (size() - before) / 400 < 1.1 * long


def read_all(folder: Path) -> None:
    with Book.open(folder) as book:
        assert not is_whole(book)
        book.trays()
        book.tiles()
        book.photos()
        book.undo_text()


def test_a_damaged_page_inside_is_told_in_words_when_it_is_met(book: Book) -> None:
    book.add_trays(a_tray(f"B{n}", note="x" * 500) for n in range(200))
    book.close()
    path = book.folder / "book.sqlite"
    content = bytearray(path.read_bytes())
    begin = len(content) // 3 // 4096 * 4096
    content[begin:] = os.urandom(len(content) - begin)
    path.write_bytes(content)

    with pytest.raises(BookError, match=r"damaged|no trial book"):  # where it is met is open
        read_all(book.folder)


def test_a_backup_of_a_damaged_book_does_not_replace_a_good_one(book: Book) -> None:
    good = book.back_up()
    kept = good.read_bytes()
    good.rename(good.with_name("book-2026-01-01.sqlite"))
    book.add_trays(a_tray(f"B{n}", note="x" * 500) for n in range(200))
    book.close()
    path = book.folder / "book.sqlite"
    content = bytearray(path.read_bytes())
    content[len(content) // 2 // 4096 * 4096 :] = os.urandom(len(content) - len(content) // 2 // 4096 * 4096)
    path.write_bytes(content)

    with Book.open(book.folder) as broken, pytest.raises(BookDamaged):
        broken.back_up()

    assert [p.read_bytes() for p in (book.folder / "backups").iterdir()] == [kept]


# --- books that cannot be written


def test_a_book_that_another_program_writes_is_told_in_words_and_can_still_be_read(book: Book) -> None:
    other = sqlite3.connect(book.folder / "book.sqlite", isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    impatient = Book.open(book.folder, wait_ms=50)
    try:
        with pytest.raises(BookLocked, match="nothing was changed"):
            impatient.add_tray(a_tray("B1"))
        assert len(impatient.trays()) == 3
        other.execute("ROLLBACK")
        impatient.add_tray(a_tray("B1"))
        assert len(impatient.trays()) == 4
    finally:
        impatient.close()
        other.close()


def bring_until_full(book: Book, phone: Path) -> int:
    """How many photos of 20 kB were kept by then."""
    for n in range(1000):
        path = a_note(phone, f"{n}.jpg", tag=10, number=n, padding="x" * 20_000)
        try:
            bring(book, path)
        except DiskFull:
            return n
    return 1000


def test_on_a_full_disk_all_that_was_kept_before_stays(tmp_path: Path) -> None:
    with small_disk(tmp_path / "disk", "2m") as disk:
        with Book.create(disk / "book") as book:
            book.add_tray(a_tray(tag_number=10))
            kept = bring_until_full(book, tmp_path / "phone")
            assert 10 < kept < 1000
            (disk / "book" / "cache").rename(tmp_path / "disk" / "gone")
            shutil.rmtree(disk / "gone")
        with Book.open(disk / "book") as again:
            assert is_whole(again)
            assert len(again.photos()) == kept
            assert all(row.photo is not None and row.photo.stat().st_size > 20_000 for row in again.photos())
            assert list((disk / "book" / "photos").rglob(".*")) == []


def test_a_book_on_a_disk_that_may_only_be_read_is_looked_at_and_not_changed(tmp_path: Path) -> None:
    with small_disk(tmp_path / "disk", "4m") as disk:
        with Book.create(disk / "book") as book:
            tray = book.add_tray(a_tray("A1"))
        again = ["mount", "-o", "remount,ro", str(disk)]
        if subprocess.run(again, check=False, capture_output=True).returncode:
            pytest.skip("this machine does not allow remounting")

        with Book.open(disk / "book") as book:
            assert [one.id for one in book.trays()] == [tray]
            with pytest.raises(BookReadOnly, match="may only be read"):
                book.add_tray(a_tray("A2"))


def test_what_stands_in_a_log_alone_is_read_where_nothing_may_be_written_beside_it(tmp_path: Path) -> None:
    """A stick that was pulled out, or a copy of two of three files: the log is there, its index is not."""
    with small_disk(tmp_path / "disk", "8m") as disk:
        with Book.create(tmp_path / "book") as book:
            book.add_tray(a_tray("A1"))
            shutil.copytree(tmp_path / "book", disk / "book", ignore=shutil.ignore_patterns("*-shm"))
        assert (disk / "book" / "book.sqlite-wal").stat().st_size > 0
        again = ["mount", "-o", "remount,ro", str(disk)]
        if subprocess.run(again, check=False, capture_output=True).returncode:
            pytest.skip("this machine does not allow remounting")

        with Book.open(disk / "book") as book:
            assert [one.code for one in book.trays()] == ["A1"]
            with pytest.raises(BookReadOnly, match="may only be read"):
                book.add_tray(a_tray("A2"))


def test_a_book_that_may_only_be_read_is_read_beside_one_who_writes(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with Book.create(tmp_path / "book") as writer:
        monkeypatch.setattr(os, "access", lambda *_: False)
        with Book.open(tmp_path / "book") as reader:
            writer.add_tray(a_tray("A1"))  # so far in the log alone

            assert [one.code for one in reader.trays()] == ["A1"]
            with pytest.raises(BookReadOnly):
                reader.add_tray(a_tray("A2"))


@pytest.fixture
def other_computer(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Callable[[], AbstractContextManager[Book]]:
    """Opens the book at `tmp_path / "book"` as one who may write; all others may only read it."""
    Book.create(tmp_path / "book").close()
    may_write = False
    monkeypatch.setattr(os, "access", lambda *_: may_write)

    @contextmanager
    def opened() -> Iterator[Book]:
        nonlocal may_write
        may_write = True
        with Book.open(tmp_path / "book") as writer:
            may_write = False
            yield writer

    return opened


def test_what_another_computer_writes_is_seen_by_one_that_may_only_read(
    tmp_path: Path, other_computer: Callable[[], AbstractContextManager[Book]]
) -> None:
    """It was read as a file that does not change: half of it as it was, and called damaged."""
    with Book.open(tmp_path / "book") as reader:
        assert reader.trays() == ()

        with other_computer() as writer:
            writer.add_trays(a_tray(f"A{n}") for n in range(300))

            assert len(reader.trays()) == 300
            writer.add_tray(a_tray("B1"))
        assert len(reader.trays()) == 301
        assert len(reader._all) <= 2  # the file is not opened once more for each change


def test_nothing_is_taken_that_was_read_half_before_another_computer_wrote_and_half_after(
    tmp_path: Path, other_computer: Callable[[], AbstractContextManager[Book]]
) -> None:
    with Book.open(tmp_path / "book") as reader:
        with pytest.raises(BookLocked), reader.whole_tables() as tables:  # noqa: PT012 (told at its end)
            assert tables.table("tray").count == 0
            with other_computer() as writer:
                writer.add_tray(a_tray("A1"))
            assert len(reader.trays()) == 1

        with reader.whole_tables() as tables:
            assert tables.table("tray").count == 1


def test_that_another_computer_has_written_is_told_where_the_book_may_only_be_read(
    tmp_path: Path, other_computer: Callable[[], AbstractContextManager[Book]]
) -> None:
    """Each look at the changed file is a new connection, and those count from the same number."""
    with Book.open(tmp_path / "book") as reader:
        assert not reader.written_elsewhere()
        for code in ("A1", "A2"):
            with other_computer() as writer:
                writer.add_tray(a_tray(code))

            assert reader.written_elsewhere()
            assert not reader.written_elsewhere()


def test_an_older_book_that_may_only_be_read_is_told_in_words(tmp_path: Path) -> None:
    with small_disk(tmp_path / "disk", "4m") as disk:
        restored(BOOKS / "v4.sql", disk / "book")
        again = ["mount", "-o", "remount,ro", str(disk)]
        if subprocess.run(again, check=False, capture_output=True).returncode:
            pytest.skip("this machine does not allow remounting")

        with pytest.raises(BookReadOnly, match="may only be read"):
            Book.open(disk / "book")


def test_an_older_book_that_cannot_be_copied_first_is_told_in_words(tmp_path: Path) -> None:
    folder = restored(BOOKS / "v4.sql", tmp_path / "book")
    (folder / "backups").write_text("a file where the folder should be")
    before = (folder / "book.sqlite").read_bytes()

    with pytest.raises(BookError):
        Book.open(folder)

    assert (folder / "book.sqlite").read_bytes() == before


def test_a_folder_that_may_not_be_looked_into_is_told_in_words(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def denied(path: object, **_: object) -> NoReturn:
        raise PermissionError(errno.EACCES, "Permission denied", str(path))

    Book.create(tmp_path / "book").close()
    monkeypatch.setattr(os, "stat", denied)

    with pytest.raises(BookUnreachable):
        Book.open(tmp_path / "book")


def test_a_folder_that_cannot_be_made_is_told_in_words(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("no folder")

    with pytest.raises(BookError):
        Book.create(tmp_path / "file" / "book")


# --- a crash


def _bring_for_ever(folder: Path, phone: Path) -> None:
    with Book.open(folder) as book:
        for path in sorted(phone.iterdir()):
            bring(book, path)


@pytest.mark.parametrize("attempt", range(5))
def test_a_crash_at_any_moment_leaves_whole_photos_only(book: Book, phone: Path, attempt: int) -> None:
    for n in range(300):
        a_note(phone, f"{n:03}.jpg", tag=10, number=n, padding="x" * 50_000, suspects=[{}])
    book.close()
    child = multiprocessing.get_context("spawn").Process(target=_bring_for_ever, args=(book.folder, phone))
    child.start()
    while (
        len(list((book.folder / "photos").rglob("*.jpg"))) < 3
    ):  # the third is copied after the second is kept
        time.sleep(0.01)
    time.sleep(random.Random(attempt).uniform(0.02, 0.4))
    assert child.pid is not None
    os.kill(child.pid, signal.SIGKILL)
    child.join()

    with Book.open(book.folder) as again:
        assert is_whole(again)
        photos = again.photos(most=1000)
        assert len(photos) > 0
        for row in photos:
            assert row.photo is not None
            assert row.photo.read_bytes() == (phone / row.name).read_bytes()
            assert again.score(row.id) is not None
        for path in sorted(phone.iterdir())[: len(photos) + 5]:
            bring(again, path)  # and the next intake goes on where the crash was
        assert len(again.photos(most=1000)) >= len(photos)


# --- backups


def test_a_backup_opens_as_a_book_with_everything_in_it(book: Book, phone: Path, tmp_path: Path) -> None:
    bring(book, a_note(phone, tag=10))
    copy = tmp_path / "restored"
    copy.mkdir()

    shutil.copy(book.back_up(), copy / "book.sqlite")

    with Book.open(copy) as restored:
        assert len(restored.photos()) == 1
        assert len(restored.trays()) == 3


def test_one_backup_a_day_and_no_more_than_a_fortnight_of_them(book: Book) -> None:
    backups = book.folder / "backups"
    for n in range(1, 21):
        (backups / f"book-{date.today() - timedelta(days=n)}.sqlite").write_bytes(b"old")

    first = book.back_up()
    book.add_tray(a_tray("B1"))

    assert book.back_up() == first
    assert len(list(backups.iterdir())) == BACKUPS_KEPT
    assert max(backups.iterdir()) == first


@pytest.mark.parametrize("year", ["2015", "2099"])
def test_the_backup_of_today_is_kept_though_the_clock_was_or_is_wrong(book: Book, year: str) -> None:
    backups = book.folder / "backups"
    for day in range(1, BACKUPS_KEPT + 3):
        (backups / f"book-{year}-01-{day:02d}.sqlite").touch()

    made = book.back_up()

    assert made.is_file()
    kept = sorted(path.name for path in backups.iterdir())
    assert len(kept) == BACKUPS_KEPT
    others = [name for name in kept if name != made.name]
    assert others == [f"book-{year}-01-{day:02d}.sqlite" for day in range(4, BACKUPS_KEPT + 3)]


def test_windows_that_back_up_at_the_same_moment_do_not_disturb_each_other(book: Book) -> None:
    book.add_trays(a_tray(f"B{n}", note="x" * 3000) for n in range(2000))
    wait = threading.Barrier(4)

    def back_up(_: int) -> Path:
        with Book.open(book.folder) as window:
            wait.wait()
            return window.back_up()

    with ThreadPoolExecutor(4) as pool:
        made = set(pool.map(back_up, range(4)))

    assert list((book.folder / "backups").iterdir()) == list(made)


# --- being light


def test_reading_a_book_loads_no_picture_library_and_no_table_library(book: Book, phone: Path) -> None:
    bring(book, a_note(phone, tag=10, suspects=[{}]))
    book.close()
    script = (
        "import sys, pathlib; from data.book import Book; from data.watch import looks;import "
        "data.intake;book = Book.open(pathlib.Path(sys.argv[1])); book.tiles(); looks(book.morning()); "
        "book.photos();book.days(book.trays()[0].id); book.undo_text(); book.close();heavy = {'numpy', "
        "'cv2', 'PIL', 'scipy', 'skimage', 'sqlite_utils', 'PySide6'};print(sorted(heavy & "
        "set(sys.modules)))"
    )

    done = subprocess.run(
        [sys.executable, "-c", script, str(book.folder)],
        capture_output=True,
        text=True,
        check=True,
        cwd=Path(__file__).parents[3],
    )

    assert done.stdout.strip() == "[]"


def test_score_note_is_what_these_tests_lean_on(phone: Path) -> None:
    judged = score_note(a_note(phone, tag=10, coverage=33.0))
    assert judged.score is not None
    assert judged.score.stand.coverage == 33.0


def test_what_another_window_writes_is_noticed_once(book: Book) -> None:
    assert not book.written_elsewhere()  # asked for the first time

    with Book.open(book.folder) as other:
        other.set_setting("watched folder", "/phone")

    assert book.written_elsewhere()
    assert not book.written_elsewhere()


def test_what_a_window_writes_itself_is_no_news_to_it(book: Book) -> None:
    book.written_elsewhere()

    book.set_setting("watched folder", "/phone")

    assert not book.written_elsewhere()


# --- closing


READ_WHILE_CLOSING = """
import sys, threading
from pathlib import Path
from data.book import Book
from data.errors import BookClosed

for _ in range(40):
    book = Book.open(Path(sys.argv[1]))
    begun = threading.Barrier(4)

    def read() -> None:
        book.tiles()
        begun.wait()
        try:
            while True:
                book.tiles()
        except BookClosed:
            pass

    readers = [threading.Thread(target=read) for _ in range(3)]
    for reader in readers:
        reader.start()
    begun.wait()
    book.close()
    for reader in readers:
        reader.join()
"""


def test_a_book_closed_while_other_threads_read_it_ends_their_reading_and_never_the_program(
    book: Book, phone: Path
) -> None:
    bring(book, a_note(phone, tag=10))
    book.close()

    ended = subprocess.run(
        [sys.executable, "-c", READ_WHILE_CLOSING, str(book.folder)],
        cwd=Path(__file__).parents[3],
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )

    assert (ended.returncode, ended.stderr) == (0, "")


def test_threads_that_come_and_go_share_few_connections(book: Book) -> None:
    """A window reads in a new thread each time: it would run out of files within a day."""
    for _ in range(40):
        thread = threading.Thread(target=book.trays)
        thread.start()
        thread.join()

    assert len(book._all) <= 3


def test_threads_at_work_together_have_a_connection_each(book: Book) -> None:
    together = threading.Barrier(4)

    def read() -> None:
        with book._using():
            together.wait(10)

    threads = [threading.Thread(target=read) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()

    assert not together.broken
    assert len(book._all) >= 4


def test_a_closed_book_says_so(book: Book) -> None:
    book.close()

    with pytest.raises(BookClosed, match="was closed"):
        book.tiles()
