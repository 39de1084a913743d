"""The table over which a file's columns are named: reached in reading order, its bar in sight."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from gui.controls.columntable import ColumnTable
from gui.style.palette import dress
from gui.style.tokens import Scheme

HEADS = [f"column {n}" for n in range(9)]
ROWS = [[f"2026-03-03 {n:02d}:00" for _ in HEADS] for n in range(8)]


def filled(table: ColumnTable) -> None:
    choices = [table.choice_over(at, head) for at, head in enumerate(HEADS)]
    for choice in choices:
        choice.addItems(["Date and time", "Air temperature"])
    table.show_rows(HEADS, ROWS, choices)


@pytest.fixture
def page(qtbot: QtBot, dressed: QApplication) -> QWidget:
    """A table between what stands before it and after it, both older than its choices."""
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    for part in (QPushButton("before"), ColumnTable(), QPushButton("after")):
        column.addWidget(part)
    page.resize(600, 500)
    with qtbot.waitActive(page):
        page.show()
    return page


def test_tab_comes_by_the_choices_after_the_table_and_brings_each_into_sight(
    page: QWidget, qtbot: QtBot
) -> None:
    (table,) = page.findChildren(ColumnTable)
    filled(table)
    after = page.findChildren(QPushButton)[1]
    table.setCurrentCell(1, 0)
    table.setFocus()

    for choice in table.choices:
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        assert QApplication.focusWidget() is choice
        assert table.viewport().rect().contains(choice.geometry().center())
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is after


@pytest.mark.parametrize(("percent", "rows"), [(100, 8), (150, 4)])
def test_large_letters_show_fewer_rows_so_that_the_bar_below_them_is_seen(
    qtbot: QtBot, qapp: QApplication, percent: int, rows: int
) -> None:
    dress(qapp, Scheme.LIGHT, percent)
    table = ColumnTable()
    qtbot.addWidget(table)
    table.show()
    for _ in range(2):  # another reading of the file
        filled(table)
        assert sum(not table.isRowHidden(row) for row in range(1, table.rowCount())) == rows
    assert table.height() + 10 * table.fontMetrics().height() <= 640 - 60  # an assistant less its buttons
    dress(qapp, Scheme.LIGHT)


def test_a_heading_begins_where_the_cells_below_it_begin(qtbot: QtBot, dressed: QApplication) -> None:
    table = ColumnTable()
    qtbot.addWidget(table)
    table.resize(400, 160)
    table.show()
    table.show_rows(["HH"], [["HH"]], [])
    picture = table.grab().toImage()
    ground, head = picture.pixel(380, 8), table.horizontalHeader().height()

    def begins(top: int, bottom: int) -> int:
        rows = range(top + 5, bottom - 5)
        return next(x for x in range(3, 200) if any(picture.pixel(x, y) != ground for y in rows))

    below = head + table.rowHeight(0)
    assert abs(begins(2, head) - begins(below + 2, below + table.rowHeight(1))) <= 1
