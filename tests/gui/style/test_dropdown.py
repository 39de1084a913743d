"""A list that drops down shows its entries whole; 32 px a row, for a wet finger, is our own choice."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QVBoxLayout, QWidget

from gui.style.palette import dress
from gui.style.tokens import Scheme

LEAST_ROW_PX = 32
SHOWN_AT_ONCE = 10  # Qt rolls a list that is longer


@pytest.mark.parametrize("role", ["", "rack"])
@pytest.mark.parametrize("text_percent", [100, 150])
@pytest.mark.parametrize("entries", [3, 7, 12])
def test_a_list_that_drops_down_cuts_no_entry(
    qapp: QApplication, entries: int, text_percent: int, role: str
) -> None:
    dress(qapp, Scheme.LIGHT, text_percent)
    try:
        page, field = dropped(entries, role)
        seen = field.view().viewport().rect()
        rows = [
            field.view().visualRect(field.model().index(row, 0)) for row in range(min(entries, SHOWN_AT_ONCE))
        ]
        assert rows[0].top() >= seen.top()
        assert rows[-1].bottom() <= seen.bottom()
        assert min(row.height() for row in rows) >= LEAST_ROW_PX
        page.close()
    finally:
        dress(qapp, Scheme.LIGHT)


def dropped(entries: int, role: str) -> tuple[QWidget, QComboBox]:
    """A field that has the focus, as one has that was clicked, with its list open."""
    page = QWidget()
    field = QComboBox(page)
    field.setProperty("role", role)
    field.addItems([f"gets no score, {number}" for number in range(entries)])
    QVBoxLayout(page).addWidget(field)
    page.show()
    QTest.qWaitForWindowExposed(page)
    QTest.mouseClick(field, Qt.MouseButton.LeftButton)
    QApplication.processEvents()
    return page, field
