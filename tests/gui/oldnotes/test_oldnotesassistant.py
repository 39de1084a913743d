"""The assistant for old notes of trays, on a real book; and what it says, without a window."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.logs.oldcolumns import Field
from data.logs.times import DateOrder
from gui.frame.dropping import is_old_notes, sort_dropped
from gui.oldnotes.assistant import OldNotesAssistant
from gui.oldnotes.view import kept_words, look_at_notes, read_words, tray_words
from gui.work import Work

NOTES = (
    "tray,crop,medium,sown,cut,yield,smell\n"
    "K1,pea,coir,2025-04-13,2025-04-24,310,fine\n"
    "K2,pea,coir,2025-04-13,2025-04-24,288,sour\n"
)
TWO_WAYS = "crop,medium,sown\npea,coir,05/05/2025\npea,coir,03/04/2025\n"
UNKNOWN = "no,what,medium,day\n1,pea,coir,2025-04-13\n"
Opened = Callable[..., OldNotesAssistant]


@pytest.fixture
def opened(qtbot: QtBot, dressed: QApplication, rack_book: Book, work: Work, tmp_path: Path) -> Opened:
    def open_it(text: str | bytes | None, name: str = "2025.csv") -> OldNotesAssistant:
        path = tmp_path / name
        if text is not None:
            path.write_bytes(text if isinstance(text, bytes) else text.encode())
        dialog = OldNotesAssistant(rack_book, work, path)
        qtbot.addWidget(dialog)
        dialog.show()
        settle(qtbot, dialog)
        return dialog

    return open_it


def settle(qtbot: QtBot, dialog: OldNotesAssistant) -> None:
    qtbot.waitUntil(lambda: dialog._job is None, timeout=10_000)


def old_trays(book: Book) -> list[str]:
    return [tray.code for tray in book.trays(growing=False) if tray.code.startswith(("K", "N"))]


def choose(qtbot: QtBot, dialog: OldNotesAssistant, column: int, field: Field | None) -> None:
    combo = dialog.form.preview.choices[column]
    combo.activated.emit(next(n for n in range(combo.count()) if combo.itemData(n) == field))
    settle(qtbot, dialog)


def test_a_plain_table_is_kept_by_one_key_and_taken_back_in_one_step(
    qtbot: QtBot, opened: Opened, rack_book: Book
) -> None:
    dialog = opened(NOTES)
    assert dialog.form.question.isHidden()
    assert dialog.form.count.text() == "Trays that will be kept: 2."

    QTest.keyClick(dialog, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)

    assert old_trays(rack_book) == ["K1", "K2"]
    assert dialog.told == "Trays kept: 2. Undo takes them back."
    rack_book.undo()
    assert old_trays(rack_book) == []


def test_the_preview_says_what_will_be_kept_and_where_the_rest_goes(opened: Opened) -> None:
    dialog = opened(NOTES)

    assert "K1 · pea on coir · sown 13 Apr 2025 · cut 24 Apr 2025 · 310 g fresh · smell: fine" in (
        dialog.form.trays.text().splitlines()
    )
    assert dialog.form.preview.choices[6].currentText() == "Into the note"
    assert "Crops that the book does not know yet: pea." in dialog.form.said.text()


def test_an_order_of_dates_that_can_be_two_is_asked_by_the_first_day_that_tells(
    qtbot: QtBot, opened: Opened, rack_book: Book
) -> None:
    dialog = opened(TWO_WAYS)
    assert not dialog.form.keep.isEnabled()
    assert [button.text() for button in dialog.answers] == [
        "3 Apr 2025 (day, month, year)",
        "4 Mar 2025 (month, day, year)",
    ]

    dialog.answers[1].click()
    settle(qtbot, dialog)
    dialog.form.keep.click()
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)

    sown = {f"{tray.sown_at:%Y-%m-%d}" for tray in rack_book.trays(growing=False) if tray.crop == "pea"}
    assert sown == {"2025-05-05", "2025-03-04"}


def test_days_that_are_the_same_both_ways_are_not_asked_about(opened: Opened) -> None:
    dialog = opened("crop,medium,sown\npea,coir,05/05/2025\n")

    assert dialog.answers == []
    assert dialog.form.keep.isEnabled()


def test_columns_that_were_not_found_out_are_asked_and_chosen(
    qtbot: QtBot, opened: Opened, rack_book: Book
) -> None:
    dialog = opened(UNKNOWN)
    assert dialog.form.count.text() == "Say over the columns what each of them is."
    assert not dialog.form.keep.isEnabled()

    choose(qtbot, dialog, 1, Field.CROP)
    choose(qtbot, dialog, 3, Field.SOWN)
    assert dialog.form.keep.isEnabled()
    dialog.form.keep.click()
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)

    (tray,) = [tray for tray in rack_book.trays(growing=False) if tray.crop == "pea"]
    assert (f"{tray.sown_at:%Y-%m-%d}", tray.note) == ("2025-04-13", "no: 1")


def test_of_two_columns_for_one_thing_the_one_chosen_last_holds(qtbot: QtBot, opened: Opened) -> None:
    dialog = opened(NOTES)

    choose(qtbot, dialog, 6, Field.CROP)

    assert dialog.form.preview.choices[1].currentText() == "Into the note"
    assert "K1 · fine on coir" in dialog.form.trays.text()


def test_lines_that_cannot_be_trays_are_named_with_the_reason(opened: Opened) -> None:
    dialog = opened(NOTES + "K3,,coir,2025-04-13,,,\n")

    assert dialog.form.fold.text() == "Lines that are not kept: 1"
    assert dialog.form.bad.isHidden()
    dialog.form.fold.click()
    assert dialog.form.bad.toPlainText() == "Line 4: no crop is named; it was left out."


def test_the_same_file_again_says_so(qtbot: QtBot, opened: Opened) -> None:
    first = opened(NOTES)
    first.form.keep.click()
    qtbot.waitUntil(lambda: not first.isVisible(), timeout=10_000)

    again = opened(NOTES)

    assert "already" in again.form.count.text()
    assert not again.form.keep.isEnabled()


@pytest.mark.parametrize("content", [b"", b"\x00\x01\x02\x03" * 100, None])
def test_a_file_that_cannot_be_read_is_refused_in_place(opened: Opened, content: bytes | None) -> None:
    dialog = opened(content)

    assert dialog.form.said.text()
    assert not dialog.form.keep.isEnabled()


def test_leave_keeps_nothing(opened: Opened, rack_book: Book) -> None:
    dialog = opened(NOTES)
    QTest.keyClick(dialog, Qt.Key.Key_Escape)

    assert not dialog.isVisible()
    assert old_trays(rack_book) == []


# --- without a window


def test_each_state_of_a_file_has_its_sentence(rack_book: Book) -> None:
    def said(text: str, order: DateOrder | None = None) -> tuple[str, str]:
        looked = look_at_notes(rack_book, text.encode(), None, order, 1)
        return read_words(looked), kept_words(looked)

    assert said("")[0] == "The file is empty."
    assert said(UNKNOWN)[0].startswith("The first line names no column for crop.")
    assert said(TWO_WAYS) == (
        "Is 03/04/2025 the day 2025-04-03 or 2025-03-04?",
        "Answer what is asked above, then the trays can be kept.",
    )
    assert said(TWO_WAYS, DateOrder.DMY)[1] == "Trays that will be kept: 2."


def test_a_tray_is_told_with_all_that_is_known_of_it(rack_book: Book) -> None:
    text = (
        "tray,crop,medium,sown,cut,trial,block,shelf,lot,"
        "dry seed g,soak h,feed,yield g,height mm,score,note\n"
        "K1,pea,coir,2025-04-13,2025-04-24,spring,b1,north,L7,220,8,kelp,310,95,80,fine\n"
    )
    notes = look_at_notes(rack_book, text.encode(), None, None, 1).notes
    assert notes is not None

    assert tray_words(notes.trays[0]) == (
        "K1 · pea on coir · sown 13 Apr 2025 · cut 24 Apr 2025 · 310 g fresh · 95 mm high · 80 by eye · "
        "220 g seed · 8 h soaked · trial spring · block b1 · shelf north · lot L7 · feed kelp · fine"
    )


@pytest.mark.parametrize(
    ("text", "is_notes"),
    [(NOTES, True), (UNKNOWN, False), ("when,shelf,temp C\n2026-03-14 07:00,A,20.5\n", False), ("", False)],
)
def test_a_dropped_table_of_trays_is_told_from_a_log(tmp_path: Path, text: str, is_notes: bool) -> None:
    (tmp_path / "a.CSV").write_text(text)

    assert sort_dropped([tmp_path / "a.CSV"]).tables == (tmp_path / "a.CSV",)
    assert is_old_notes(tmp_path / "a.CSV") is is_notes
