"""The strip of days: left and right, today, days whose photo was refused."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.photo.thumbnails import Thumbnails
from gui.traysheet.daystrip import DayStrip
from gui.work import Work
from tests.gui.rackbook import a_day


@pytest.fixture
def strip(qtbot: QtBot, dressed: QApplication, work: Work) -> DayStrip:
    strip = DayStrip(Thumbnails(work))
    qtbot.addWidget(strip)
    strip.resize(600, strip.height())
    with qtbot.waitActive(strip):
        strip.show()
    strip.setFocus()
    return strip


def words(strip: DayStrip) -> list[str]:
    model = strip.model()
    return [str(model.index(n, 0).data(Qt.ItemDataRole.AccessibleTextRole)) for n in range(model.rowCount())]


def test_today_is_called_today(strip: DayStrip) -> None:
    strip.show_days([a_day(6), a_day(7, 62.0)], 1, today=7)

    assert words(strip) == ["day 6, 50 %", "today, 62 %"]


def test_a_photo_from_before_the_sowing_has_no_day_below_zero(strip: DayStrip) -> None:
    strip.show_days([a_day(-1), a_day(0)], 1, today=7)

    assert words(strip)[:2] == ["before sowing, 50 %", "day 0, 50 %"]


def test_a_refused_photo_says_why(strip: DayStrip) -> None:
    strip.show_days([a_day(6), a_day(7, None)], 0, today=7)

    assert words(strip)[1].startswith("today, not used: ")
    assert "blur" in words(strip)[1]


def test_the_place_of_todays_photo_is_kept_free_and_cannot_be_chosen(strip: DayStrip, qtbot: QtBot) -> None:
    strip.show_days([a_day(5), a_day(6)], 1, today=7)
    assert words(strip)[2] == "today, no photo yet"

    qtbot.keyClick(strip, Qt.Key.Key_Right)
    qtbot.keyClick(strip, Qt.Key.Key_End)

    assert strip.currentIndex().row() == 1


def test_a_tray_that_has_ended_waits_for_no_photo(strip: DayStrip) -> None:
    strip.show_days([a_day(5)], 0, today=None)

    assert words(strip) == ["day 5, 50 %"]


def test_left_right_home_and_end_choose_a_day(strip: DayStrip, qtbot: QtBot) -> None:
    strip.show_days([a_day(4), a_day(5), a_day(6)], 2, today=6)

    with qtbot.waitSignal(strip.day_chosen) as chosen:
        qtbot.keyClick(strip, Qt.Key.Key_Left)
    assert chosen.args == [5]

    with qtbot.waitSignal(strip.day_chosen) as chosen:
        qtbot.keyClick(strip, Qt.Key.Key_Home)
    assert chosen.args == [4]
