"""Hands in the window: fingers, wheels and keys meet what is helped there, in the program as it starts."""

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from data.records import PhotoId
from gui.app import make_window
from gui.bench.screen import Bench
from gui.home import Memory
from gui.mend.desk import MendDesk
from gui.photo.mips import make_mips
from gui.traysheet.conditionspage import ConditionsPage
from gui.traysheet.screen import TraySheet
from gui.traysheet.views import View
from gui.window import Window
from tests.gui.rackbook import a_rack_book, photograph


@pytest.fixture(scope="module")
def touch(qapp: QApplication) -> QPointingDevice:
    return QTest.createTouchDevice()


@pytest.fixture
def window(qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path) -> Window:
    with a_rack_book(tmp_path / "rack") as book:
        photograph(book, "A1", tmp_path / "photos")
    made = make_window(dressed, memory)
    qtbot.addWidget(made)
    made.resize(1024, 700)
    with qtbot.waitActive(made):
        made.show()
    made.open_folder(tmp_path / "rack")
    at_rest(made, qtbot)
    return made


def at_rest(window: Window, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)


def drag(touch: QPointingDevice, part: QWidget, begin: QPoint, way: QPoint) -> None:
    """A finger that goes a way, or only touches."""
    window = part.window()
    first = part.mapTo(window, begin)
    QTest.touchEvent(window.windowHandle(), touch).press(0, first).commit()
    for step in range(1, 6) if not way.isNull() else ():
        QTest.touchEvent(window.windowHandle(), touch).move(0, first + way * step / 5).commit()
    QTest.touchEvent(window.windowHandle(), touch).release(0, first + way).commit()
    QApplication.processEvents()


def bench_of(window: Window) -> Bench:
    bench = window.screens.bench
    bench.switch.turn(to_looks=False)
    return bench


def sheet_of(window: Window, view: View, qtbot: QtBot) -> TraySheet:
    assert window.book is not None
    window.open_tray(next(tray.id for tray in window.book.trays() if tray.code == "A1"))
    sheet = window.screens.traysheet
    sheet.show_view(view)
    at_rest(window, qtbot)
    return sheet


def test_the_rack_follows_a_finger_and_a_tap_opens_a_tray(
    window: Window, qtbot: QtBot, touch: QPointingDevice
) -> None:
    rack = bench_of(window).rack
    rack.setFixedHeight(150)  # less than a shelf
    qtbot.waitUntil(lambda: rack.verticalScrollBar().maximum() > 60)
    tile = rack.visualRect(rack.model().index(0, 0)).center()

    drag(touch, rack.viewport(), QPoint(tile.x(), 120), QPoint(0, -60))
    assert rack.verticalScrollBar().value() == pytest.approx(60, abs=2)
    assert window.place == "bench"

    drag(touch, rack.viewport(), rack.visualRect(rack.model().index(0, 0)).center(), QPoint())
    assert window.place == "traysheet"


def test_the_wheel_over_a_list_of_the_bench_chooses_nothing(window: Window) -> None:
    kind = bench_of(window).quick.kind
    before = kind.currentIndex()
    kind.setFocus()
    at = QPointF(kind.mapTo(window, kind.rect().center()))
    QTest.wheelEvent(window.windowHandle(), at, QPoint(0, -120))
    assert kind.count() > before + 1
    assert kind.currentIndex() == before


def test_a_stroke_of_the_brush_paints_and_rolls_nothing(
    window: Window, qtbot: QtBot, touch: QPointingDevice
) -> None:
    sheet = sheet_of(window, View.MEND, qtbot)
    (desk,) = sheet.findChildren(MendDesk)
    bare = np.zeros((508, 1016), bool)
    desk.show_photo(PhotoId(1), make_mips(np.full((508, 1016, 3), 90, np.uint8)), bare)
    brush = desk.view
    assert brush.isVisible()
    assert brush.canopy is not None

    drag(touch, brush, brush.rect().center() - QPoint(60, 0), QPoint(120, 20))

    assert brush.canopy.coverage > 0
    assert sheet.roll.verticalScrollBar().value() == 0


def test_a_field_that_gets_the_focus_out_of_sight_is_brought_there(window: Window, qtbot: QtBot) -> None:
    (page,) = sheet_of(window, View.CONDITIONS, qtbot).findChildren(ConditionsPage)
    page.roll.setFixedHeight(120)
    bar = page.roll.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 100)
    page.form.note.setFocus()
    bar.setValue(bar.maximum())

    page.form.code.setFocus(Qt.FocusReason.TabFocusReason)

    assert not page.form.code.visibleRegion().isEmpty()
