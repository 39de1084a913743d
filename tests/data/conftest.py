"""A book with three trays, tags 10 to 12; a book with a sown trial."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from data.book import Book
from tests.data.builders import a_tray
from tests.data.trialrack import Rack
from tests.made.books import a_copy


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with a_copy("three trays", plant_three, tmp_path / "book") as made:
        yield made


def plant_three(book: Book) -> None:
    book.add_trays(a_tray(f"A{n}", tag_number=9 + n) for n in (1, 2, 3))
    book.forget_changes()
    book.set_setting("today", "2026-03-08")


@pytest.fixture
def rack(tmp_path: Path) -> Iterator[Rack]:
    made = Rack(tmp_path)
    yield made
    made.book.close()


@pytest.fixture
def phone(tmp_path: Path) -> Path:
    folder = tmp_path / "phone"
    folder.mkdir()
    return folder
