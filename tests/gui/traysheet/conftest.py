"""A Tray sheet that shows a book of two shelves."""

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.traysheet.screen import TraySheet
from gui.work import Work


@pytest.fixture
def sheet(qtbot: QtBot, dressed: QApplication, work: Work, rack_book: Book) -> TraySheet:
    """No tray is opened yet, none has a photo."""
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.resize(1024, 620)
    with qtbot.waitActive(sheet):
        sheet.show()
    sheet.open_book(rack_book)
    return sheet
