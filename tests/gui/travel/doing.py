"""Doing: what a person does with dialogs about books that leave and come."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.travel.samenames import SameName
from gui.travel.guestdialog import GuestDialog
from gui.window import Window

Answering = Callable[[Callable[[QDialog], None]], None]
Guest = Callable[[Path], GuestDialog]
COIR = SameName(kind="medium", name="coir")


def book_of(window: Window) -> Book:
    assert window.book is not None
    return window.book


def drop(window: Window, *paths: Path) -> None:
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    event = QDropEvent(
        QPointF(9, 9), Qt.DropAction.CopyAction, dropped, Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )  # fmt: skip
    window.dropEvent(event)


def named(dialog: QDialog, kind: type[QDialog], where: Path, name: str) -> None:
    """Fill in a name and a folder, and press Enter."""
    assert isinstance(dialog, kind)
    dialog.where = where
    dialog.name.setText(name)
    QTest.keyClick(dialog, Qt.Key.Key_Return)


def brought_in(qtbot: QtBot, dialog: GuestDialog) -> None:
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)
