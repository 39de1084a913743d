"""Day field: by keyboard alone."""

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from gui.controls.dayfield import DayField

KEY = Qt.Key


@pytest.fixture
def form(qtbot: QtBot, dressed: QApplication) -> QWidget:
    top = QWidget()
    column = QVBoxLayout(top)
    for part in (QLineEdit(top), DayField(top), QLineEdit(top)):
        column.addWidget(part)
    top.findChildren(DayField)[0].setDate(QDate(2026, 3, 2))
    qtbot.addWidget(top)
    with qtbot.waitActive(top):
        top.show()
    return top


def test_tab_comes_to_it_once_and_leaves_it_at_once(form: QWidget, qtbot: QtBot) -> None:
    (field,) = form.findChildren(DayField)
    before, _, after = (form.layout().itemAt(n).widget() for n in range(3))  # type: ignore[union-attr]
    before.setFocus()
    qtbot.keyClick(before, KEY.Key_Tab)
    assert field.hasFocus()
    qtbot.keyClick(field, KEY.Key_Tab)
    assert after.hasFocus()
    qtbot.keyClick(after, KEY.Key_Backtab)
    assert field.hasFocus()
    qtbot.keyClick(field, KEY.Key_Backtab)
    assert before.hasFocus()


def test_each_part_is_reached_by_the_arrows_and_by_typing(form: QWidget, qtbot: QtBot) -> None:
    (field,) = form.findChildren(DayField)
    field.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(field, KEY.Key_Up)
    assert field.date() == QDate(2026, 3, 3)
    for _ in range(2):
        qtbot.keyClick(field, KEY.Key_Right)
    qtbot.keyClick(field, KEY.Key_Up)
    assert field.date() == QDate(2026, 4, 3)
    qtbot.keyClick(field, KEY.Key_End)
    qtbot.keyClick(field, KEY.Key_Down)
    assert field.date() == QDate(2025, 4, 3)
