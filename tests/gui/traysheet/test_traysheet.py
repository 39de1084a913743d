from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QDialog, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from data.records import Said, TrayId
from gui.photo.layers import SUSPECTS, Layer
from gui.traysheet.screen import TraySheet
from gui.traysheet.swapdialog import SwapDialog
from gui.traysheet.views import View
from gui.work import Work
from tests.gui.rackbook import photograph

Answer = Callable[[Callable[[QDialog], None]], None]
MOLDY = {"suspects": [{"x_mm": 100.0, "y_mm": 50.0, "area_cm2": 6.0, "confidence": 0.7}]}


def tray_id(book: Book, code: str) -> TrayId:
    return next(tray.id for tray in book.trays() if tray.code == code)


@pytest.fixture
def sheet(qtbot: QtBot, dressed: QApplication, work: Work, rack_book: Book, tmp_path: Path) -> TraySheet:
    """A1 with two days, A2 with one; the rack book's B1 has none."""
    photograph(rack_book, "A1", tmp_path, coverage=30.0, taken_at="2026-03-05T08:00:00")
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00", **MOLDY)
    photograph(rack_book, "A2", tmp_path, coverage=60.0)
    rack_book.forget_changes()
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.resize(1024, 590)
    with qtbot.waitActive(sheet):
        sheet.show()
    sheet.open_book(rack_book)
    return sheet


def test_before_a_tray_is_chosen_the_sheet_teaches_and_leads_to_the_bench(
    sheet: TraySheet, qtbot: QtBot
) -> None:
    assert sheet.to_bench.isVisible()

    with qtbot.waitSignal(sheet.place_wanted) as wanted:
        qtbot.mouseClick(sheet.to_bench, Qt.MouseButton.LeftButton)

    assert wanted.args == ["bench"]


def test_a_tray_opens_at_its_newest_day(sheet: TraySheet, rack_book: Book) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    assert sheet.title.text() == "A1: broccoli on coir"
    assert sheet.side.big.text() == "71 %"
    assert sheet.side.big_words.text() == "coverage on day 7, 8 Mar 2026\ngive or take 3 points"


def test_a_tray_opens_at_the_photo_that_is_asked_for(sheet: TraySheet, rack_book: Book) -> None:
    tray = tray_id(rack_book, "A1")
    sheet.open_tray(tray, rack_book.days(tray)[0].photo_id)
    assert sheet.side.big.text() == "30 %"

    sheet.open_tray(tray)
    assert sheet.side.big.text() == "71 %"


def test_left_and_right_go_from_day_to_day(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    qtbot.keyClick(sheet.picture, Qt.Key.Key_Left)
    assert sheet.side.big.text() == "30 %"

    qtbot.keyClick(sheet.picture, Qt.Key.Key_Right)
    assert sheet.side.big.text() == "71 %"


def test_page_up_and_down_go_from_tray_to_tray(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    qtbot.keyClick(sheet, Qt.Key.Key_PageDown)
    assert sheet.title.text().startswith("A2")

    qtbot.keyClick(sheet, Qt.Key.Key_PageUp)
    assert sheet.title.text().startswith("A1")
    assert not sheet.before.isEnabled()


def test_a_tray_that_is_opened_shows_its_picture_and_the_next_one_what_was_looked_at(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))
    sheet.show_view(View.CONDITIONS)

    qtbot.keyClick(sheet, Qt.Key.Key_PageDown)
    assert sheet.views.view is View.CONDITIONS
    sheet.open_tray(tray_id(rack_book, "A1"))

    assert sheet.views.view is View.PICTURE


def test_a_layer_is_switched_by_its_button_and_by_its_key(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    qtbot.mouseClick(sheet.bar.layers[Layer.GAPS], Qt.MouseButton.LeftButton)
    assert Layer.GAPS in sheet.picture.shown

    qtbot.keyClick(sheet.strip, Qt.Key.Key_3)
    assert sheet.bar.layers[Layer.CELLS].isChecked()


def test_saying_mold_is_kept_at_once_and_pressing_again_takes_it_back(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    with qtbot.waitSignal(sheet.book_changed):
        qtbot.mouseClick(sheet.side.suspects.cards[0].mold, Qt.MouseButton.LeftButton)
    assert rack_book.undo_text() == "mold on A1"

    qtbot.mouseClick(sheet.side.suspects.cards[0].mold, Qt.MouseButton.LeftButton)  # a finger that bounced
    assert sheet.side.suspects.cards[0].line.said is Said.MOLD
    assert sheet.side.suspects.cards[0].mold.isChecked()

    qtbot.wait(QGuiApplication.styleHints().mouseDoubleClickInterval() + 50)
    qtbot.mouseClick(sheet.side.suspects.cards[0].mold, Qt.MouseButton.LeftButton)
    assert sheet.side.suspects.cards[0].line.said is None


def test_the_keyboard_stays_on_the_button_after_it_was_pressed(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))
    sheet.side.suspects.cards[0].not_mold.setFocus()

    qtbot.keyClick(sheet.side.suspects.cards[0].not_mold, Qt.Key.Key_Space)

    assert sheet.side.suspects.cards[0].not_mold.hasFocus()
    assert sheet.side.suspects.cards[0].not_mold.isChecked()


def test_the_side_stays_where_it_was_when_an_answer_is_given(
    sheet: TraySheet, rack_book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    two = {"suspects": [*MOLDY["suspects"], {**MOLDY["suspects"][0], "x_mm": 300.0}]}
    photograph(rack_book, "A1", tmp_path, coverage=72.0, taken_at="2026-03-09T08:00:00", **two)
    sheet.resize(1024, 400)
    sheet.open_tray(tray_id(rack_book, "A1"))
    qtbot.wait(20)
    at = sheet.roll.verticalScrollBar()
    assert at.maximum() > 0

    qtbot.mouseClick(sheet.side.suspects.cards[0].mold, Qt.MouseButton.LeftButton)
    qtbot.wait(20)

    assert sheet.side.suspects.cards[0].mold.isChecked()
    assert at.value() == 0


def test_the_two_answers_are_large_enough_for_wet_hands(sheet: TraySheet, rack_book: Book) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))
    QApplication.processEvents()

    card = sheet.side.suspects.cards[0]
    assert card.mold.height() >= 44
    assert card.not_mold.height() >= 44
    assert card.not_mold.x() - card.mold.geometry().right() >= 8


def test_a_tray_without_photos_says_where_they_come_from(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    sheet.open_tray(tray_id(rack_book, "B1"))

    assert "Bring photos in at Intake" in sheet.picture.accessibleDescription() + sheet.picture._message
    assert not sheet.strip.isVisible()


def test_without_suspects_nothing_is_promised(sheet: TraySheet, rack_book: Book) -> None:
    sheet.open_tray(tray_id(rack_book, "A2"))

    assert sheet.side.suspects.title.text() == "No suspects"
    assert "No flag is no proof that a tray is safe" in sheet.side.suspects.caution.text()


def test_a_first_book_learns_what_a_suspect_will_look_like(sheet: TraySheet, rack_book: Book) -> None:
    """The demonstration shows none."""
    sheet.open_tray(tray_id(rack_book, "A2"))

    assert "a dashed yellow ring with a number" in sheet.side.suspects.caution.text()
    assert 45 <= SUSPECTS.hsvHue() <= 75  # yellow, degrees: common practice


def test_the_picture_and_the_chart_are_told_in_words(sheet: TraySheet, rack_book: Book) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    assert "Coverage 71 %" in sheet.picture.accessibleDescription()
    assert "A1: day 4 30 %, day 7 71 %" in sheet.side.growth.accessibleDescription()


def test_nothing_changes_on_the_screen_when_nothing_changed_in_the_book(
    sheet: TraySheet, rack_book: Book
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))
    card = sheet.side.suspects.cards[0]

    sheet.renew()

    assert sheet.side.suspects.cards[0] is card


def test_everything_that_takes_the_focus_has_a_name(sheet: TraySheet, rack_book: Book) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    nameless = [
        widget
        for widget in sheet.findChildren(QWidget)
        if widget.isVisible()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and not widget.accessibleName()
        and not (isinstance(widget, QPushButton) and widget.text())
    ]
    assert nameless == []


def test_tab_reads_the_side_from_top_to_bottom(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    sheet.open_tray(tray_id(rack_book, "A2"))  # without a suspect: their buttons are made later
    sheet.open_tray(tray_id(rack_book, "A1"))
    card = sheet.side.suspects.cards[0]
    qtbot.waitUntil(card.mold.isVisible)
    reached: list[QWidget] = []
    sheet.strip.setFocus()
    qtbot.keyClick(sheet.strip, Qt.Key.Key_Tab)
    while (focused := QApplication.focusWidget()) is not None and sheet.side.isAncestorOf(focused):
        reached.append(focused)
        qtbot.keyClick(focused, Qt.Key.Key_Tab)

    assert focused is sheet.after  # A1 has no tray before it
    assert reached[:3] == [card.mold, card.not_mold, card.show_it]
    heights = [part.mapTo(sheet.side, QPoint(0, 0)).y() for part in reached]
    assert heights == sorted(heights)


def test_tab_goes_round_the_whole_sheet(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))
    mold = sheet.side.suspects.cards[0].mold
    qtbot.waitUntil(mold.isVisible)
    sheet.strip.setFocus()
    seen: list[QWidget | None] = []

    for _ in range(100):
        focused = QApplication.focusWidget()
        if focused in seen:
            break
        seen.append(focused)
        qtbot.keyClick(focused, Qt.Key.Key_Tab)

    assert focused is sheet.strip
    assert {sheet.picture, sheet.after, mold} <= set(seen)
    numbers = [
        place for place, widget in enumerate(seen) if widget and "Uniformity" in widget.accessibleName()
    ]
    assert seen.index(mold) < numbers[0]


@pytest.mark.parametrize("percent", [100, 150])
def test_nothing_scrolls_sideways_in_the_least_window(
    sheet: TraySheet, rack_book: Book, dressed: QApplication, percent: int
) -> None:
    from gui.style.palette import dress
    from gui.style.tokens import Scheme

    dress(dressed, Scheme.LIGHT, percent)
    sheet.open_tray(tray_id(rack_book, "A1"))
    QApplication.processEvents()

    assert sheet.minimumSizeHint().width() <= 1024
    assert sheet.side.minimumSizeHint().width() <= sheet.roll.viewport().width()
    dress(dressed, Scheme.LIGHT)


def test_a_tray_that_was_cut_leaves_the_rack_and_comes_back_by_undo(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    tray = tray_id(rack_book, "A1")
    sheet.open_tray(tray)

    with qtbot.waitSignal(sheet.book_changed):
        qtbot.mouseClick(sheet.side.cut, Qt.MouseButton.LeftButton)

    assert "A1" not in {tray.code for tray in rack_book.trays()}
    assert sheet.about.text() == "cut on 8 Mar 2026"
    assert sheet.side.cut.isHidden()
    assert rack_book.undo() == "cut: A1"
    sheet.renew()
    assert not sheet.side.cut.isHidden()


def test_trays_that_were_swapped_change_over_from_a_day_on(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))

    def swap(dialog: QDialog) -> None:
        assert isinstance(dialog, SwapDialog)
        assert not dialog.swap.isEnabled()
        dialog.which.setCurrentText("A2   broccoli on coir")
        assert not dialog.swap.isEnabled()  # what was kept wrong has to be said, too
        dialog.photos_alone.click()
        assert dialog.told.text().startswith("Change over: photos 2, notes 0.")
        qtbot.mouseClick(dialog.swap, Qt.MouseButton.LeftButton)

    answer(swap)
    with qtbot.waitSignal(sheet.told) as told:
        qtbot.mouseClick(sheet.side.swap, Qt.MouseButton.LeftButton)

    assert told.args == ["A1 and A2 have changed over; Ctrl+Z takes it back."]
    assert sheet.side.big.text() == "60 %"
    assert rack_book.undo_text() == "A1 and A2 swapped"


def test_leaving_the_question_about_swapped_trays_changes_nothing(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    sheet.open_tray(tray_id(rack_book, "A1"))
    answer(lambda dialog: dialog.reject())

    qtbot.mouseClick(sheet.side.swap, Qt.MouseButton.LeftButton)

    assert rack_book.undo_text() is None
    assert sheet.side.big.text() == "71 %"
