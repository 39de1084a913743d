"""Rows of lists can be hit by a finger, also where their words take two lines."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QListWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.controls.rows import give_rows
from gui.frame.helpwindow import HelpWindow
from gui.materials.desk import MaterialDesk
from gui.materials.factordialog import FactorDialog
from gui.style.palette import TARGET
from gui.trays.traytypes import TrayTypes
from gui.work import Work
from tests.gui.rackbook import a_rack_book


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    made = a_rack_book(tmp_path / "rack")
    yield made
    made.close()


def lowest(view: QListWidget) -> int:
    return min(view.visualItemRect(view.item(row)).height() for row in range(view.count()))


def test_every_list_of_words_has_rows_of_a_finger_s_height(
    qtbot: QtBot, dressed: QApplication, work: Work, book: Book
) -> None:
    desk = MaterialDesk(work)
    desk.open(book)
    dialogs = (TrayTypes(book), FactorDialog(desk, book, "coir", "dry mass"), HelpWindow())
    for dialog in dialogs:
        qtbot.addWidget(dialog)
        dialog.show()
        (view,) = dialog.findChildren(QListWidget)
        assert view.count() > 0
        assert lowest(view) >= TARGET, type(dialog).__name__


def test_two_lines_have_room(qtbot: QtBot, dressed: QApplication) -> None:
    view = QListWidget()
    qtbot.addWidget(view)
    view.setWordWrap(True)
    give_rows(view)
    view.addItem("one line")
    view.addItem("a heading\nand the line below it")
    view.show()
    letters = view.fontMetrics()
    assert view.visualItemRect(view.item(1)).height() >= 2 * letters.height() + 8
