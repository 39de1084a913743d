"""A window with a book of a rack, and another grower's book."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.home import Memory
from gui.style.wardrobe import Wardrobe
from gui.travel.guestdialog import GuestDialog
from gui.window import Window
from gui.work import Work
from tests.gui.rackbook import NotingPlaces, a_rack_book, photograph
from tests.gui.travel.doing import Guest, book_of


@pytest.fixture
def window(qtbot: QtBot, memory: Memory, dressed: QApplication, tmp_path: Path) -> Iterator[Window]:
    work = Work(scorers=1)
    wardrobe = Wardrobe(dressed, memory)
    wardrobe.wear()
    made = Window(work, memory, wardrobe, NotingPlaces(work))
    wardrobe.setParent(made)
    work.setParent(made)
    qtbot.addWidget(made)
    made.show()
    with a_rack_book(tmp_path / "rack") as book:
        photograph(book, "A1", tmp_path / "phone")
    made.open_folder(tmp_path / "rack")
    yield made
    made.close()


@pytest.fixture
def other(tmp_path: Path) -> Path:
    """Another grower's book: two trays of the same names, each with a photo."""
    with a_rack_book(tmp_path / "Kim", per_shelf=(0, 0, 2)) as book:
        photograph(book, book.trays()[0].code, tmp_path / "their phone")
    return tmp_path / "Kim"


@pytest.fixture
def opened(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Folders that were shown in the system's own window."""
    shown: list[str] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: shown.append(url.toLocalFile()))
    return shown


@pytest.fixture
def guest(qtbot: QtBot, window: Window) -> Guest:
    def show(source: Path) -> GuestDialog:
        dialog = GuestDialog(book_of(window), window.work, source, window)
        dialog.show()
        qtbot.waitUntil(lambda: dialog._job is None, timeout=10_000)
        return dialog

    return show
