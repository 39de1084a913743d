"""A book with three trays, tags 10 to 12."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from data.book import Book
from tests.data.builders import a_tray


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with Book.create(tmp_path / "book") as made:
        made.add_trays(a_tray(f"A{n}", tag_number=9 + n) for n in (1, 2, 3))
        made.forget_changes()
        made.set_setting("today", "2026-03-08")
        yield made


@pytest.fixture
def phone(tmp_path: Path) -> Path:
    folder = tmp_path / "phone"
    folder.mkdir()
    return folder
