"""On a low screen with large letters the fields of a dialog roll; its buttons stay whole and in sight."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.controls.rolling import LowRoll
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.trays.newtray import NewTrayDialog

LOW = 550  # px that a dialog may be high


def buttons_are_whole(dialog: NewTrayDialog) -> bool:
    buttons = [b for b in dialog.findChildren(QPushButton) if b.isVisible() and b.parentWidget() is dialog]
    assert len(buttons) == 2
    return all(
        dialog.rect().contains(button.geometry()) and button.height() >= button.sizeHint().height()
        for button in buttons
    )


def test_the_fields_roll_and_the_buttons_stay(
    qtbot: QtBot, dressed: QApplication, rack_book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    dialog = NewTrayDialog(rack_book)
    screen = dialog.screen().availableGeometry().height()
    monkeypatch.setattr("gui.controls.form.TITLE_BAR", screen - LOW)
    qtbot.addWidget(dialog)
    dialog.crop.setCurrentText("broccoli")
    dialog.medium.setCurrentText("coir")
    with qtbot.waitActive(dialog):
        dialog.show()
    dialog.resize(dialog.minimumSize())
    qtbot.wait(20)

    assert dialog.height() <= LOW
    assert buttons_are_whole(dialog)
    (roll,) = dialog.findChildren(LowRoll)
    assert roll.verticalScrollBar().maximum() > 0
    dialog.code.setFocus()
    while QApplication.focusWidget() is not dialog.tag:
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert not dialog.tag.visibleRegion().isEmpty(), "Tab brings a field into sight"
    dress(dressed, Scheme.LIGHT)


def test_where_there_is_room_nothing_rolls(qtbot: QtBot, dressed: QApplication, rack_book: Book) -> None:
    dialog = NewTrayDialog(rack_book)
    qtbot.addWidget(dialog)
    dialog.crop.setCurrentText("broccoli")
    dialog.medium.setCurrentText("coir")
    dialog.show()
    qtbot.wait(20)

    (roll,) = dialog.findChildren(LowRoll)
    assert roll.verticalScrollBar().maximum() == 0
    assert buttons_are_whole(dialog)
