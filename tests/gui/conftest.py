"""A window's surroundings: background work that ends with the test, its own settings, a dressed program."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QDialog

from data.book import Book
from gui.home import Memory
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.work import Work
from tests.gui.rackbook import a_rack_book


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    folder = tmp_path / "home"
    monkeypatch.setenv("EVENSTAND_HOME", str(folder))
    return folder


@pytest.fixture
def dressed(qapp: QApplication) -> QApplication:
    dress(qapp, Scheme.LIGHT)
    return qapp


@pytest.fixture
def work(qapp: QApplication) -> Iterator[Work]:
    made = Work(scorers=1)
    yield made
    assert made.close(), "background work did not end"
    qapp.processEvents()


@pytest.fixture
def quick_hand(qapp: QApplication) -> Iterator[None]:
    """A test presses faster than a person: what would be taken for a finger that bounces is none here."""
    interval = qapp.doubleClickInterval()
    qapp.setDoubleClickInterval(0)
    yield
    qapp.setDoubleClickInterval(interval)


@pytest.fixture
def memory(tmp_path: Path) -> Memory:
    folder = tmp_path / "settings"
    folder.mkdir()
    return Memory(folder)


@pytest.fixture
def rack_book(tmp_path: Path, work: Work) -> Iterator[Book]:
    with a_rack_book(tmp_path / "rack") as book:
        yield book
        work.stop_all()  # as the program does before it closes a book


@pytest.fixture
def answer(qapp: QApplication) -> Callable[[Callable[[QDialog], None]], None]:
    """Lets a test deal with the next dialog that opens; what fails in there ends the dialog and the test."""

    def arrange(deal: Callable[[QDialog], None]) -> None:
        def look() -> None:
            dialog = QApplication.activeModalWidget()
            if not isinstance(dialog, QDialog):
                QTimer.singleShot(20, look)
                return
            try:
                deal(dialog)
            finally:
                if dialog.isVisible():
                    dialog.reject()

        QTimer.singleShot(0, look)

    return arrange
