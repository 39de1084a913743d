"""Focus in sight: a page that is rolled away when the focus comes into it."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton, QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from gui.hands.focusinsight import FocusInSight


@pytest.fixture
def top(qtbot: QtBot, dressed: QApplication) -> QWidget:
    """A button above a page of forty."""
    made = QWidget()
    FocusInSight(made)
    column, page = QVBoxLayout(made), QWidget()
    column.addWidget(QPushButton("above", made))
    inner = QVBoxLayout(page)
    for n in range(40):
        inner.addWidget(QPushButton(f"{n}", page))
    area = QScrollArea(made)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setWidget(page)
    column.addWidget(area)
    made.resize(300, 300)
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
    return made


def test_tab_into_a_page_that_is_rolled_down_brings_its_first_part_into_sight(
    top: QWidget, qtbot: QtBot
) -> None:
    (area,) = top.findChildren(QScrollArea)
    above, first, *_ = top.findChildren(QPushButton)
    area.verticalScrollBar().setValue(area.verticalScrollBar().maximum())
    above.setFocus()
    qtbot.keyClick(above, Qt.Key.Key_Tab)
    assert first.hasFocus()
    assert not first.visibleRegion().isEmpty()


def test_what_is_in_sight_already_moves_nothing(top: QWidget, qtbot: QtBot) -> None:
    (area,) = top.findChildren(QScrollArea)
    buttons = top.findChildren(QPushButton)
    area.verticalScrollBar().setValue(20)
    seen = [one for one in buttons[1:] if not one.visibleRegion().isEmpty()]
    for one in (seen[0], seen[-1]):  # both cut by the edge of the page
        one.setFocus(Qt.FocusReason.MouseFocusReason)
        assert area.verticalScrollBar().value() == 20
