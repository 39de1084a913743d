"""Models: what lists and tables ask of them holds, by Qt's own tester, while a book is used."""

from pathlib import Path
from typing import Any

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QAbstractItemView, QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.readings import NewReading, ReadingKind
from gui.app import make_window
from gui.home import Memory
from gui.notes.table import NoteModel
from tests.gui.rackbook import a_rack_book, photograph


def test_a_table_of_notes_without_notes_says_nothing_of_no_cell(qapp: QApplication) -> None:
    model = NoteModel()
    assert model.data(QModelIndex()) is None
    assert not model.flags(QModelIndex()) & Qt.ItemFlag.ItemIsEditable


def test_qt_finds_no_fault_in_the_models_while_a_book_is_used(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path, qtlog: Any
) -> None:
    with a_rack_book(tmp_path / "rack") as book:
        photograph(book, "A1", tmp_path / "photos")
        photograph(book, "A2", tmp_path / "photos", refuse="BLURRED")
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    window.show()
    window.open_folder(tmp_path / "rack")
    for _ in iter(window.screens.make_next, False):
        pass
    models = {id(one.model()): one.model() for one in window.findChildren(QAbstractItemView) if one.model()}
    ours = [one for one in models.values() if type(one).__module__.startswith("gui.")]
    assert len(ours) >= 5
    mode = QAbstractItemModelTester.FailureReportingMode.Warning
    testers = [QAbstractItemModelTester(one, mode) for one in ours]

    assert isinstance(window.book, Book)
    (tray, *_) = window.book.trays()
    for step in (
        lambda: window.open_tray(tray.id),
        lambda: weigh(window.book, tray.id),
        lambda: window.book.leave_out(window.book.photos()[0].id),
        window.following.undo,
        window.following.undo,
        lambda: window.go_to("bench"),
    ):
        step()
        window.following.book_changed()
        qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
    assert len(testers) == len(ours)
    assert [one.message for one in qtlog.records if "FAIL" in one.message] == []


def weigh(book: Book | None, tray: int) -> None:
    assert book is not None
    new = NewReading(kind=ReadingKind.WEIGHT, value=812.0, taken_at=book.now(), tray_id=tray)  # type: ignore[arg-type]
    book.add_readings([new])
