"""Tab stops: the order of reading, whatever was made first."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
    QWidgetItem,
)
from pytestqt.qtbot import QtBot
from shiboken6 import Shiboken

from gui.controls.tabstops import order_stops


def test_tab_goes_from_above_to_below_through_halves_groups_and_what_rolls(
    qtbot: QtBot, dressed: QApplication
) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    last = QPushButton("6", page)
    inner = QWidget(page)
    buttons = {n: QPushButton(str(n), inner if n in (3, 4) else page) for n in (5, 4, 2, 3, 1)}
    rolled = QVBoxLayout(inner)
    rolled.addWidget(buttons[3])
    rolled.addWidget(buttons[4])
    roll = QScrollArea(page)
    roll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    roll.setWidget(inner)
    row = QHBoxLayout()
    row.addWidget(QLabel("no stop", page))
    row.addWidget(buttons[1])
    row.addWidget(buttons[2])
    column = QVBoxLayout(page)
    column.addLayout(row)
    for part in (roll, buttons[5], last):
        column.addWidget(part)
    with qtbot.waitActive(page):
        page.show()

    order_stops(column)

    buttons[1].setFocus()
    reached = []
    for _ in range(6):
        now = QApplication.focusWidget()
        assert isinstance(now, QPushButton)
        reached.append(now.text())
        qtbot.keyClick(now, Qt.Key.Key_Tab)
    assert reached == ["1", "2", "3", "4", "5", "6"]


def test_ordering_leaves_nothing_in_python_that_outlives_a_widget(
    qtbot: QtBot, dressed: QApplication
) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    column, row = QVBoxLayout(page), QHBoxLayout()
    column.addWidget(QPushButton("1", page))
    column.addLayout(row)
    row.addWidget(QPushButton("2", page))
    before = items()

    order_stops(column)

    assert items() == before


def items() -> int:
    """Wrappers of layout items that Python keeps; Qt does not tell it when one of them is gone."""
    return sum(type(one) is QWidgetItem for one in Shiboken.getAllValidWrappers())
