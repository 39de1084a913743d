"""A folder watched without a window: what is printed, when, and how it ends."""

import errno
import os
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import Executor, ThreadPoolExecutor
from datetime import datetime
from datetime import time as clock
from pathlib import Path
from typing import NoReturn

import pytest

from data.book import Book
from data.cancel import CancelToken
from gui.command import main
from gui.commands.watch import Watch
from tests.gui.rackbook import a_rack_book

ROOT = Path(__file__).parents[3]
PHOTO = ROOT / "data" / "demo" / "photos" / "A1_day02.webp"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with a_rack_book(tmp_path / "book") as made:
        yield made


@pytest.fixture
def pool() -> Iterator[Executor]:
    with ThreadPoolExecutor(1) as threads:
        yield threads


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "phone"
    made.mkdir()
    return made


class Clock:
    """A clock that a test sets."""

    def __init__(self, now: str) -> None:
        self.now = datetime.fromisoformat(now)

    def __call__(self) -> datetime:
        return self.now


def test_a_photo_is_brought_in_once_it_has_arrived_whole(
    book: Book, pool: Executor, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    watch = Watch(folder, book, pool, 1, clock(7), now=Clock("2026-03-08T12:00:00"))
    (folder / "IMG_1.jpg").write_bytes(b"no picture")

    watch.look(CancelToken(), at=0.0)
    before = capsys.readouterr().err
    watch.look(CancelToken(), at=2.5)
    after = capsys.readouterr().err
    watch.look(CancelToken(), at=5.0)

    assert before == ""
    assert "IMG_1.jpg" in after
    assert len(book.photos()) == 1
    assert capsys.readouterr().err == ""


def test_the_look_list_comes_once_a_day_at_its_hour(
    book: Book, pool: Executor, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    now = Clock("2026-03-08T06:59:00")
    watch = Watch(folder, book, pool, 1, clock(7), now=now)
    printed = []
    for time_of_day in (
        "2026-03-08T06:59:58",
        "2026-03-08T07:00:01",
        "2026-03-08T09:00:00",
        "2026-03-09T07:30:00",
    ):
        now.now = datetime.fromisoformat(time_of_day)
        watch.look(CancelToken(), at=0.0)
        printed.append("look" in capsys.readouterr().out)

    assert printed == [False, True, False, True]


def test_a_watch_begun_after_the_hour_waits_for_the_next_day(
    book: Book, pool: Executor, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    watch = Watch(folder, book, pool, 1, clock(7), now=Clock("2026-03-08T12:00:00"))

    watch.look(CancelToken(), at=0.0)

    assert capsys.readouterr().out == ""


def test_a_folder_that_goes_away_is_told_once_and_waited_for(
    book: Book, pool: Executor, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    watch = Watch(folder, book, pool, 1, clock(7), now=Clock("2026-03-08T12:00:00"))
    folder.rename(folder.with_name("pulled out"))
    for at in (0.0, 2.0):
        watch.look(CancelToken(), at=at)
    told = capsys.readouterr().err

    folder.with_name("pulled out").rename(folder)
    (folder / "IMG_1.jpg").write_bytes(b"no picture")
    for at in (4.0, 6.5):
        watch.look(CancelToken(), at=at)

    assert told.count("is not there; photos come in again once it is back") == 1
    assert "IMG_1.jpg" in capsys.readouterr().err


def test_a_share_that_is_lost_is_waited_for_like_a_folder_that_goes_away(
    book: Book,
    pool: Executor,
    folder: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def lost(path: object, **_: object) -> NoReturn:
        raise OSError(errno.EIO, "Input/output error", str(path))

    watch = Watch(folder, book, pool, 1, clock(7), now=Clock("2026-03-08T12:00:00"))
    monkeypatch.setattr(os, "stat", lost)
    watch.look(CancelToken(), at=0.0)

    assert "is not there; photos come in again once it is back" in capsys.readouterr().err


def test_a_book_that_a_window_is_writing_is_waited_for_and_no_photo_is_lost(
    book: Book, pool: Executor, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with Book.open(book.folder, wait_ms=50) as mine:
        watch = Watch(folder, mine, pool, 1, clock(7), now=Clock("2026-03-08T12:00:00"))
        for n in range(2):
            (folder / f"IMG_{n}.jpg").write_bytes(b"no picture %d" % n)
        watch.look(CancelToken(), at=0.0)
        with book.writing():
            for at in (2.5, 5.0):
                watch.look(CancelToken(), at=at)
        told = capsys.readouterr().err
        watch.look(CancelToken(), at=7.5)

    assert told.count("is being written by another window") == 1
    assert sorted(photo.name for photo in book.photos()) == ["IMG_0.jpg", "IMG_1.jpg"]


def test_a_folder_that_is_not_there_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["watch", str(tmp_path / "no"), "--book", str(tmp_path / "book")]) == 1
    assert "no folder" in capsys.readouterr().err


@pytest.mark.parametrize("wrong", ["noon", "25:00"])
def test_an_hour_that_is_none_is_wrong_use(wrong: str, tmp_path: Path) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["watch", str(tmp_path), "--book", str(tmp_path), "--look-at", wrong])
    assert ended.value.code == 2


@pytest.mark.skipif(os.name == "nt", reason="signals of a service")
@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGINT])
def test_a_service_stores_a_photo_and_stops_cleanly(book: Book, folder: Path, number: signal.Signals) -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "gui", "watch", str(folder), "--book", str(book.folder)],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    try:
        assert process.stdout is not None
        assert process.stdout.readline().startswith("watching")
        shutil.copy(PHOTO, folder / "photo.webp")
        line = process.stdout.readline()
        process.send_signal(number)
        rest, trouble = process.communicate(timeout=30)
    finally:
        process.kill()

    assert line.startswith("photo.webp:")
    assert "stopped" in rest
    assert (process.returncode, trouble) == (0, "")
    assert len(book.photos()) == 1


def test_scoring_on_a_farm_that_is_not_there_is_told_before_anything_begins(
    book: Book, folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr("data.photos.farm.ANSWER_WITHIN_S", 0.3)
    begun = time.monotonic()

    ended = main(["intake", str(folder), "--book", str(book.folder), "--on", "tcp://127.0.0.1:1"])

    assert ended == 1
    assert "nobody answers" in capsys.readouterr().err
    assert time.monotonic() - begun < 30


@pytest.mark.parametrize("address", ["foo", "tcp://", "http://farm/", "tcp://farm:port"])
def test_what_is_no_address_is_no_farm(
    book: Book, folder: Path, address: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["intake", str(folder), "--book", str(book.folder), "--on", address]) == 1
    assert f"{address} is no address of a farm" in capsys.readouterr().err


def test_a_farm_named_before_the_command_is_the_one_that_scores(
    book: Book, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["--on", "foo", "intake", str(folder), "--book", str(book.folder)]) == 1
    assert "foo is no address of a farm" in capsys.readouterr().err


@pytest.mark.parametrize("words", [["look", "--book", "b"], ["score", "a.jpg"], ["verdict", "--book", "b"]])
def test_a_farm_for_what_scores_nothing_into_a_book_is_wrong_use(
    words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["--on", "tcp://127.0.0.1:8786", *words]) == 2
    assert "--on goes with" in capsys.readouterr().err
