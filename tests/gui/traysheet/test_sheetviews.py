"""Every way to look at a tray: named, reached by Tab, within the least window, by its key."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.traysheet.screen import TraySheet
from gui.traysheet.views import View
from gui.work import Work
from tests.gui.rackbook import photograph


@pytest.fixture
def sheet(qtbot: QtBot, dressed: QApplication, work: Work, rack_book: Book, tmp_path: Path) -> TraySheet:
    """A1 with two days, a weight and a watering."""
    photograph(rack_book, "A1", tmp_path, coverage=30.0, taken_at="2026-03-05T08:00:00")
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00")
    tray = rack_book.trays()[0].id
    at = rack_book.now()
    rack_book.add_readings([NewReading(kind=ReadingKind.WEIGHT, value=900, taken_at=at, tray_id=tray)])
    rack_book.add_event([tray], EventKind.WATERED, at)
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.resize(1024, 560)
    with qtbot.waitActive(sheet):
        sheet.show()
    sheet.open_book(rack_book)
    sheet.open_tray(tray)
    return sheet


def in_front(sheet: TraySheet, view: View, qtbot: QtBot) -> None:
    sheet.show_view(view)
    qtbot.waitUntil(lambda: not sheet.work.jobs(), timeout=10_000)


def focusable(sheet: TraySheet) -> list[QWidget]:
    return [
        widget
        for widget in sheet.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.isVisible()
        and widget.isEnabled()
        and widget.focusProxy() is None
    ]


def name_of(widget: QWidget) -> str:
    told = QAccessible.queryAccessibleInterface(widget)
    return "" if told is None else told.text(QAccessible.Text.Name)


@pytest.mark.parametrize("view", View)
def test_everything_that_can_have_the_focus_has_a_name(sheet: TraySheet, view: View, qtbot: QtBot) -> None:
    in_front(sheet, view, qtbot)

    assert [type(widget).__name__ for widget in focusable(sheet) if not name_of(widget)] == []


@pytest.mark.parametrize("view", View)
def test_tab_reaches_everything_and_comes_round(sheet: TraySheet, view: View, qtbot: QtBot) -> None:
    in_front(sheet, view, qtbot)
    wanted = set(focusable(sheet))
    first = sheet.body.bar.buttons[View.PICTURE]
    first.setFocus()
    reached: list[QWidget] = []
    for _ in range(3 * len(wanted)):
        widget = QApplication.focusWidget()
        assert widget is not None
        if widget in reached:
            break
        reached.append(widget)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)

    assert [f"{type(w).__name__} {name_of(w)}" for w in wanted - set(reached)] == []
    assert QApplication.focusWidget() is first


@pytest.mark.parametrize("view", View)
@pytest.mark.parametrize("percent", [100, 150])
def test_nothing_is_cut_off_in_the_least_window(
    sheet: TraySheet, view: View, percent: int, dressed: QApplication, qtbot: QtBot
) -> None:
    """700 px less the row on top, the band of the demonstration and the foot leave the sheet 540 px.

    With large letters both are in two lines; in German some buttons, too, here made up for by less height.
    """
    dress(dressed, Scheme.LIGHT, percent)
    high = 540 if percent == 100 else 470
    sheet.resize(1024, high)
    sheet.redress()
    in_front(sheet, view, qtbot)
    QApplication.processEvents()

    try:
        assert sheet.width() == 1024
        assert sheet.height() == high
        page = sheet.views.page
        assert page.minimumSizeHint().width() <= page.width()
        for roll in page.findChildren(QScrollArea):
            inner = roll.widget()
            assert inner is not None
            assert inner.minimumSizeHint().width() <= roll.viewport().width()
        beside = [w for w in page.findChildren(QWidget) if w.isVisible() and w.parent() is page]
        for number, one in enumerate(beside):
            for other in beside[number + 1 :]:
                assert not one.geometry().intersects(other.geometry()), f"{one} lies on {other}"
    finally:
        dress(dressed, Scheme.LIGHT)


@pytest.mark.parametrize(
    ("key", "view"),
    [
        (Qt.Key.Key_D, View.TWO_DAYS),
        (Qt.Key.Key_M, View.MEND),
        (Qt.Key.Key_G, View.GROWTH),
        (Qt.Key.Key_N, View.GROWTH),
        (Qt.Key.Key_C, View.CONDITIONS),
    ],
)
def test_each_view_has_its_key_and_shows_it(sheet: TraySheet, key: Qt.Key, view: View, qtbot: QtBot) -> None:
    qtbot.keyClick(sheet.strip, key)

    assert sheet.views.view is view
    assert [one for one, button in sheet.body.bar.buttons.items() if button.isChecked()] == [view]


def test_the_days_stand_below_the_views_of_days_only(sheet: TraySheet, qtbot: QtBot) -> None:
    shown = {}
    for view in View:
        in_front(sheet, view, qtbot)
        shown[view] = sheet.strip.isVisible()

    assert [view for view, visible in shown.items() if visible] == [View.PICTURE, View.TWO_DAYS]


def test_one_main_action_in_each_view(sheet: TraySheet, qtbot: QtBot) -> None:
    for view in View:
        in_front(sheet, view, qtbot)
        main = [w for w in sheet.findChildren(QWidget) if w.isVisible() and w.property("role") == "rack-main"]
        assert len(main) == 1, view


def test_two_days_tell_what_changed_and_say_so_where_they_cannot(sheet: TraySheet, qtbot: QtBot) -> None:
    in_front(sheet, View.TWO_DAYS, qtbot)

    page = sheet.views.two_days
    assert page.other.currentText() == "day 4, 5 Mar"
    assert page.view.earlier is None  # the notes of this test bring no top views
    assert page.view.accessibleDescription() != ""
