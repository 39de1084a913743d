"""The growth chart keeps its room whatever trays are called, and no heading stands over nothing."""

import pytest
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from data.book import Book
from data.numbers import TrayId
from gui.traysheet.growthchart import GrowthChart
from gui.traysheet.side import SheetSide
from gui.traysheet.view import Curve, read_tray


@pytest.mark.parametrize("code", ["A1", "NORTH-RACK-UPPER-SHELF-2026-03-A1"])
def test_lines_keep_most_of_the_width(qtbot: QtBot, dressed: QApplication, code: str) -> None:
    chart = GrowthChart()
    qtbot.addWidget(chart)
    chart.resize(320, 160)
    points = tuple((float(day), 10.0 * day) for day in range(10))
    chart.show_curves([Curve(tray_id=TrayId(1), code=code, medium="coir", points=points)], 9.0)

    assert chart._plot(QFontMetricsF(chart.font())).width() >= 0.5 * chart.width()
    assert not chart.grab().isNull()
    assert code in chart.accessibleDescription()


def test_a_tray_without_a_photo_has_no_heading_over_nothing(
    qtbot: QtBot, dressed: QApplication, rack_book: Book
) -> None:
    side = SheetSide()
    qtbot.addWidget(side)
    side.show_state(read_tray(rack_book, rack_book.trays()[0].id))
    side.show()

    below = side.findChildren(QLabel)
    shown = {label.text() for label in below if label.isVisible()}
    assert {"Growth beside its mates", "How it grows"} <= shown
    assert not {"Numbers of this day", "The photo"} & shown
