"""The strip of days: left and right, today, days whose photo was refused."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.traysheet.daystrip import DayStrip
from gui.traysheet.screen import TraySheet
from gui.work import Work
from tests.gui.rackbook import a_day, photograph


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


def test_a_low_sheet_in_large_letters_gives_the_days_pictures_room_to_the_trays_own(
    qtbot: QtBot, qapp: QApplication, work: Work, rack_book: Book, tmp_path: Path
) -> None:
    """The picture of the tray is the largest thing: at 150 % in 1024 x 700 it was 130 px high."""
    photograph(rack_book, "A1", tmp_path)
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.open_book(rack_book)
    sheet.open_tray(next(tray.id for tray in rack_book.trays() if tray.code == "A1"))
    heights = []
    for percent in (100, 150):
        dress(qapp, Scheme.LIGHT, percent)
        sheet.resize(1024, 500)
        sheet.redress()
        sheet.show()
        qapp.processEvents()
        heights.append((sheet.strip.height(), sheet.picture.height()))
    dress(qapp, Scheme.LIGHT)
    (strip, _), (low_strip, picture) = heights
    assert low_strip < strip
    assert picture > 2.5 * low_strip
