"""A disk that fills is named, by the name that a person knows, and nothing half written stays on it."""

import re
import tempfile
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest

from data.book import Book
from data.cancel import CancelToken
from data.errors import DiskFull
from data.export import export
from data.travel.guestbook import GuestBook
from data.travel.packing import pack
from tests.data.smalldisk import small_disk
from tests.data.trialrack import Rack


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    rack = Rack(tmp_path)
    yield rack.book
    rack.book.close()


def filled(disk: Path) -> Path:
    with suppress(OSError), (disk / "films").open("wb") as films:
        while True:
            films.write(bytes(4096))
            films.flush()
    return disk


def test_an_export_names_the_disk_that_it_goes_to(book: Book, tmp_path: Path) -> None:
    with small_disk(tmp_path / "stick", "4m") as stick:
        with pytest.raises(DiskFull, match=re.escape(f"that holds {filled(stick)} is full")):
            export(book, stick / "open", CancelToken())

        assert [path.name for path in stick.iterdir()] == ["films"]


def test_a_pack_needs_room_where_it_goes_to_and_nowhere_else(
    book: Book, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path / "no such place"))
    assert pack(book, tmp_path / "mine", CancelToken()).is_file()
    assert not [path.name for path in tmp_path.iterdir() if path.name.startswith(".")]

    with small_disk(tmp_path / "stick", "4m") as stick:
        with pytest.raises(DiskFull, match=re.escape(f"that holds {filled(stick)} is full")):
            pack(book, stick / "mine", CancelToken())

        assert [path.name for path in stick.iterdir()] == ["films"]


def test_a_book_that_comes_in_names_the_book_that_it_comes_into(book: Book, tmp_path: Path) -> None:
    with small_disk(tmp_path / "disk", "4m") as disk:
        (disk / "ours").mkdir()

        with pytest.raises(DiskFull, match=re.escape(f"that holds {disk / 'ours'} is full")):
            GuestBook.open(book.folder, filled(disk) / "ours" / "cache", CancelToken())
