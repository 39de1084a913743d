"""Conditions of a tray, corrected where they stand; and trays that have ended, found again."""

from datetime import datetime, timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.events import EventKind
from data.growing.conditions import as_new
from data.records import Tray, TrayId
from gui.notes.moments import show_moment
from gui.trays.newtray import NewTrayDialog
from gui.traysheet.conditionspage import ConditionsPage
from gui.traysheet.past.endedtrays import EndedTrays
from gui.traysheet.screen import TraySheet
from gui.traysheet.views import View

CTRL = Qt.KeyboardModifier.ControlModifier


def a1(book: Book) -> Tray:
    return next(tray for tray in book.trays() if tray.code == "A1")


@pytest.fixture
def sheet(sheet: TraySheet, rack_book: Book) -> TraySheet:
    """A1 of the rack book, its conditions in front."""
    sheet.open_tray(a1(rack_book).id)
    sheet.show_view(View.CONDITIONS)
    return sheet


@pytest.fixture
def page(sheet: TraySheet) -> ConditionsPage:
    return sheet.views.conditions


def test_who_only_looked_at_a_tray_is_told_of_nothing_before_the_window_closes(
    sheet: TraySheet, rack_book: Book
) -> None:
    assert sheet.unkept() == ""
    sheet.open_tray(a1(rack_book).id)
    assert sheet.unkept() == ""


def test_what_was_typed_in_a_book_that_is_closed_is_not_named_in_the_next_one(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book
) -> None:
    page.form.note.setText("at the door")
    assert sheet.unkept() != ""
    sheet.open_book(rack_book)
    assert sheet.unkept() == ""


def test_what_is_typed_and_not_kept_is_named_before_the_window_closes(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book, qtbot: QtBot
) -> None:
    assert sheet.unkept() == ""

    page.form.rate.setFocus()
    qtbot.keyClicks(page.form.rate, "18,5")
    assert sheet.unkept() == "Conditions that were typed are not kept."

    sheet.open_tray(next(tray for tray in rack_book.trays() if tray.code == "A2").id)
    sheet.show_view(View.CONDITIONS)
    assert sheet.unkept() == "Conditions that were typed are not kept."  # it waits for A1 to come back

    sheet.open_tray(a1(rack_book).id)
    sheet.show_view(View.CONDITIONS)
    page.leave.click()
    assert sheet.unkept() == ""


def test_what_is_typed_is_kept_by_ctrl_enter_and_undone(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book, qtbot: QtBot
) -> None:
    assert not page.keep.isEnabled()
    page.form.rate.setFocus()
    qtbot.keyClicks(page.form.rate, "18,5")
    page.form.watering.setCurrentIndex(page.form.watering.findData("bottom"))

    with qtbot.waitSignal(sheet.book_changed):
        qtbot.keyClick(page.form.rate, Qt.Key.Key_Return, CTRL)

    kept = a1(rack_book)
    assert (kept.sowing_rate_g, kept.watering) == (18.5, "bottom")
    assert rack_book.undo_text() == "conditions of A1"
    assert not page.keep.isEnabled()
    rack_book.undo()
    sheet.renew()
    assert page.form.rate.text() == ""


@pytest.mark.parametrize("name", ["keep", "leave"])
def test_the_focus_stays_on_the_page_when_its_button_has_done_its_work(
    page: ConditionsPage, qtbot: QtBot, name: str
) -> None:
    page.form.note.setText("by the door")
    button = getattr(page, name)
    button.setFocus()

    qtbot.keyClick(button, Qt.Key.Key_Space)

    assert not button.isEnabled()
    assert page.form.code.hasFocus()


def test_only_what_was_changed_is_written(page: ConditionsPage) -> None:
    page.form.note.setText("by the door")

    assert page.changes == {"note": "by the door"}


def test_escape_leaves_it_as_it_was(page: ConditionsPage, qtbot: QtBot) -> None:
    qtbot.keyClicks(page.form.light, "window")

    qtbot.keyClick(page.form.light, Qt.Key.Key_Escape)

    assert page.form.light.text() == ""
    assert page.changes == {}


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [
        ("rate", "many", "Type a number"),
        ("rate", "inf", "Type a number"),
        ("soak", "nan", "Type a number"),
        ("tag", "9", "from 10 to 586"),
        ("position", "0", "Count the places"),
        ("position", "9" * 30, "Count the places"),
    ],
)
def test_what_cannot_be_read_is_told_and_cannot_be_kept(
    page: ConditionsPage, field: str, text: str, said: str
) -> None:
    getattr(page.form, field).setText(text)

    assert said in page.said.text()
    assert not page.keep.isEnabled()


def test_a_tag_of_another_tray_is_refused_with_a_sentence(
    page: ConditionsPage, rack_book: Book, qtbot: QtBot
) -> None:
    taken = next(tray.tag_number for tray in rack_book.trays() if tray.code == "A2")
    page.form.tag.setText(str(taken))

    qtbot.mouseClick(page.keep, Qt.MouseButton.LeftButton)

    assert page.said.isVisible()
    assert str(taken) in page.said.text()
    assert a1(rack_book).tag_number != taken


def test_an_unusual_amount_of_seed_is_doubted_and_kept_all_the_same(
    page: ConditionsPage, rack_book: Book, qtbot: QtBot
) -> None:
    page.form.rate.setText("180")
    assert "unusual for broccoli" in page.said.text()
    assert page.keep.isEnabled()

    qtbot.mouseClick(page.keep, Qt.MouseButton.LeftButton)

    assert a1(rack_book).sowing_rate_g == 180


def test_blackout_moves_with_the_sowing_over_the_change_of_clocks(
    page: ConditionsPage, rack_book: Book
) -> None:
    sown = datetime(2026, 3, 27, 11, 20)
    rack_book.edit_tray(
        a1(rack_book).id, sown_at=sown, blackout_from=sown, blackout_to=sown + timedelta(days=2)
    )
    page.form.show_tray(as_new(a1(rack_book)))

    show_moment(page.form.sown, datetime(2026, 3, 29, 23, 40))

    said = page.form.said()
    assert said.blackout_from == said.sown_at == datetime(2026, 3, 29, 23, 40)
    assert said.blackout_to == datetime(2026, 3, 31, 23, 40)


def test_no_feed_is_kept_as_the_book_says_it_and_stays_as_it_was_where_nobody_touched_it(
    page: ConditionsPage, rack_book: Book
) -> None:
    rack_book.edit_tray(a1(rack_book).id, feed="ohne")
    page.form.show_tray(as_new(a1(rack_book)))

    page.form.note.setText("at the door")

    assert page.form.said().feed == "ohne"
    page.form.feed.setText("keine")
    assert page.form.said().feed == "none"


def test_what_is_usual_fills_only_empty_fields(page: ConditionsPage, rack_book: Book, qtbot: QtBot) -> None:
    a2 = next(tray.id for tray in rack_book.trays() if tray.code == "B1")
    rack_book.edit_tray(a2, sowing_rate_g=20.0, soak_hours=2.0, light="LED")
    page.form.light.setText("window")

    qtbot.mouseClick(page.usual, Qt.MouseButton.LeftButton)

    assert page.form.rate.text() == "20"
    assert page.form.soak.text() == "2"
    assert page.form.light.text() == "window"


def test_what_was_typed_is_there_again_when_the_tray_comes_back(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book, qtbot: QtBot
) -> None:
    page.form.note.setText("half a sentence")

    qtbot.mouseClick(sheet.after, Qt.MouseButton.LeftButton)
    assert page.form.note.text() == ""

    qtbot.mouseClick(sheet.before, Qt.MouseButton.LeftButton)
    assert page.form.note.text() == "half a sentence"
    assert page.keep.isEnabled()


def test_the_change_button_beside_the_conditions_leads_here(sheet: TraySheet, qtbot: QtBot) -> None:
    sheet.show_view(View.PICTURE)

    qtbot.mouseClick(sheet.side.change, Qt.MouseButton.LeftButton)

    assert sheet.views.view is View.CONDITIONS
    assert sheet.views.conditions.form.code.hasFocus()


# --- trays that have ended


def ended(book: Book, code: str, kind: EventKind = EventKind.CUT, why: str = "") -> TrayId:
    tray = next(tray.id for tray in book.trays() if tray.code == code)
    book.add_event([tray], kind, book.now(), why)
    return tray


def test_an_ended_tray_is_found_by_typing_and_opened_by_enter(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, answer
) -> None:
    ended(rack_book, "A2")
    ended(rack_book, "B1", EventKind.THROWN_AWAY, "mold")

    def choose(dialog: EndedTrays) -> None:
        assert dialog.rows.model().rowCount() == 2
        qtbot.keyClicks(dialog.search, "thrown")
        assert [dialog.rows.model().index(0, 0).data()] == [
            "B1  broccoli on coir, sown 1 Mar 2026, thrown away 8 Mar 2026: mold"
        ]
        qtbot.keyClick(dialog.search, Qt.Key.Key_Return)

    answer(choose)
    sheet.show_view(View.PICTURE)
    qtbot.keyClick(sheet, Qt.Key.Key_T)

    qtbot.waitUntil(lambda: sheet.title.text().startswith("B1"), timeout=5000)
    assert sheet.about.text() == "thrown away on 8 Mar 2026: mold"
    assert not sheet.after.isEnabled()


def test_without_ended_trays_it_says_what_will_stand_there(qtbot: QtBot, dressed: QApplication) -> None:
    dialog = EndedTrays(())
    qtbot.addWidget(dialog)

    assert "No tray has ended yet" in dialog.none.text()
    assert not dialog.open_it.isEnabled()
    dialog.resize(640, 460)
    dialog.show()
    assert dialog.none.y() < 200, "it stands below the search, not in the middle of nothing"


def test_up_and_down_choose_while_words_are_typed(
    rack_book: Book, qtbot: QtBot, dressed: QApplication
) -> None:
    ended(rack_book, "A1")
    second = ended(rack_book, "A2")
    trays = rack_book.ended_trays()
    dialog = EndedTrays(trays)
    qtbot.addWidget(dialog)
    dialog.show()
    place = [tray.id for tray in trays].index(second)

    for _ in range(place):
        qtbot.keyClick(dialog.search, Qt.Key.Key_Down)
    qtbot.keyClick(dialog.search, Qt.Key.Key_Return)

    assert dialog.chosen == second


# --- new trays


def test_a_new_tray_is_grown_as_the_last_one_of_its_kind(
    rack_book: Book, qtbot: QtBot, dressed: QApplication
) -> None:
    for tray in rack_book.trays():
        rack_book.edit_tray(tray.id, sowing_rate_g=18.0, watering="bottom", note="by the door")
    dialog = NewTrayDialog(rack_book)
    qtbot.addWidget(dialog)
    dialog.code.setText("C1")
    dialog.crop.setCurrentText("broccoli")
    dialog.medium.setCurrentText("coir")

    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)

    added = next(tray for tray in rack_book.trays() if tray.code == "C1")
    assert (added.sowing_rate_g, added.watering, added.note) == (18.0, "bottom", "")
    assert added.tag_number is None
    assert "as the last one of its kind" in dialog.said.text()
