"""New trays: several at once, like another one; what is unusual is said and never refused."""

from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.records import NewTray, Tray
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.trays.newtray import NewTrayDialog
from gui.trays.sowingview import codes_words, several
from tests.data.builders import a_note, bring


@pytest.fixture
def dialog(rack_book: Book, qtbot: QtBot, dressed: QApplication) -> NewTrayDialog:
    return shown(rack_book, qtbot)


def shown(book: Book, qtbot: QtBot, model: Tray | None = None) -> NewTrayDialog:
    made = NewTrayDialog(book, model=model)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def a_new_tray(code: str, tag: int | None = None) -> NewTray:
    sown = datetime(2026, 3, 8, 8)
    return NewTray(code=code, crop="pea", medium="coir", sown_at=sown, tag_number=tag)


def test_several_trays_take_the_next_free_codes_and_tags() -> None:
    trays = several(a_new_tray("A8", tag=20), 4, codes={"A9", "B1"}, tags={21, 40})

    assert [(tray.code, tray.tag_number) for tray in trays] == [
        ("A8", 20), ("A10", 22), ("A11", 23), ("A12", 24),
    ]  # fmt: skip
    assert codes_words(trays) == "A8 to A12, tags 20 to 24"


def test_a_finger_that_bounces_on_add_adds_one_tray(
    dialog: NewTrayDialog, rack_book: Book, qtbot: QtBot
) -> None:
    before = len(rack_book.trays())
    dialog.crop.setCurrentText("pea")
    dialog.medium.setCurrentText("coir")
    for _ in range(2):
        qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)
    assert len(rack_book.trays()) == before + 1

    qtbot.wait(QApplication.doubleClickInterval() + 100)
    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)
    assert len(rack_book.trays()) == before + 2


def test_the_kind_of_a_new_medium_is_asked_beside_it_and_kept(
    dialog: NewTrayDialog, rack_book: Book, qtbot: QtBot
) -> None:
    rack_book.set_medium("coir", kind="loose")
    dialog.crop.setCurrentText("pea")
    dialog.medium.setCurrentText("coir")
    assert dialog.medium_kind.currentText() == "loose mix"
    dialog.medium.setCurrentText("hemp")
    assert dialog.medium_kind.currentText() == "not said yet"

    dialog.medium_kind.setCurrentIndex(dialog.medium_kind.findData("mat"))
    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)

    assert {one.name: one.kind for one in rack_book.media_known()}["hemp"] == "mat"
    assert rack_book.undo() == "tray B2 added"
    assert "hemp" not in {one.name for one in rack_book.media_known()}
    assert rack_book.undo_text() == "coir described"


def test_a_tray_whose_photo_waited_is_taken_back_in_one_step(
    dialog: NewTrayDialog, rack_book: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    waiting = bring(rack_book, a_note(tmp_path / "phone", taken_at=rack_book.now().isoformat(), tag=77))
    dialog.crop.setCurrentText("pea")
    dialog.medium.setCurrentText("coir")
    dialog.tag.setText("77")
    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)
    assert rack_book.photo(waiting.photo_id).tray_code == "B2"

    assert rack_book.undo() == "tray B2 added"

    assert rack_book.photo(waiting.photo_id).tray_code is None
    assert "B2" not in {tray.code for tray in rack_book.trays()}


def test_a_medium_of_which_nothing_is_said_keeps_no_kind(
    dialog: NewTrayDialog, rack_book: Book, qtbot: QtBot
) -> None:
    dialog.crop.setCurrentText("pea")
    dialog.medium.setCurrentText("hemp mat")

    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)

    assert {one.name: one.kind for one in rack_book.media_known()}["hemp mat"] == ""


def test_a_tray_that_was_just_added_is_not_said_to_be_missing(dialog: NewTrayDialog, qtbot: QtBot) -> None:
    dialog.crop.setCurrentText("pea")
    dialog.medium.setCurrentText("hemp mat")
    assert dialog.taken_over.text() == "Nothing: no tray of this kind has been noted yet."

    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)

    assert dialog.taken_over.text() == "Nothing: how the one before it grows has not been noted."


def test_where_the_tags_end_trays_go_on_without_one() -> None:
    trays = several(a_new_tray("A1", tag=585), 3, codes=(), tags=())
    assert [tray.tag_number for tray in trays] == [585, 586, None]


def test_six_more_like_one_of_the_rack_are_one_step_of_undo(rack_book: Book, qtbot: QtBot) -> None:
    first = rack_book.trays()[0]
    rack_book.edit_tray(first.id, sowing_rate_g=20.0, soak_hours=4.0, light="12 h")
    dialog = shown(rack_book, qtbot, rack_book.tray(first.id))
    dialog.count.field.setText("6")
    dialog.count.field.editingFinished.emit()
    assert dialog.add.text() == "Add 6 trays"
    assert "20 g of seed" in dialog.taken_over.text()

    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)

    new = [tray for tray in rack_book.trays() if tray.code not in ("A1", "A2", "B1")]
    assert [tray.code for tray in new] == ["A3", "A4", "A5", "A6", "A7", "A8"]
    assert {(tray.crop, tray.shelf, tray.sowing_rate_g, tray.light) for tray in new} == {
        ("broccoli", "A", 20.0, "12 h")
    }
    assert "grown as A1" in dialog.said.text()
    assert (dialog.how_many, dialog.add.text()) == (1, "Add this tray")
    assert rack_book.undo() == "6 trays added"
    assert len(rack_book.trays()) == 3


def test_what_is_unusual_is_said_while_it_is_typed_and_never_refused(rack_book: Book, qtbot: QtBot) -> None:
    first = rack_book.trays()[0]
    rack_book.edit_tray(first.id, sowing_rate_g=900.0)
    dialog = shown(rack_book, qtbot, rack_book.tray(first.id))
    assert "900 g of dry seed is unusual for broccoli" in dialog.said.text()

    qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)

    assert len(rack_book.trays()) == 4


def test_a_code_that_grows_already_is_told_before_it_is_added(dialog: NewTrayDialog) -> None:
    dialog.code.setText("A2")
    dialog.crop.setCurrentText("broccoli")
    dialog.medium.setCurrentText("coir")

    assert "A growing tray is called A2 already" in dialog.said.text()


def test_after_adding_the_next_free_code_stands_ready(dialog: NewTrayDialog, qtbot: QtBot) -> None:
    dialog.code.setText("B1x")
    dialog.crop.setCurrentText("cress")
    dialog.medium.setCurrentText("felt")
    dialog.tag.setText("300")

    qtbot.keyClick(dialog.code, Qt.Key.Key_Return)

    assert (dialog.code.text(), dialog.tag.text(), dialog.how_many) == ("B1x 2", "301", 1)
    assert dialog.said.text() == "B1x, tag 300 is on the rack."


def test_long_words_press_no_button_flat_with_large_letters(
    rack_book: Book, qtbot: QtBot, qapp: QApplication
) -> None:
    dress(qapp, Scheme.LIGHT, 150)
    try:
        dialog = shown(rack_book, qtbot)
        dialog.code.setText("")
        qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)
        dialog._say("a sentence that goes on and on, " * 12, "alarm")
        qtbot.wait(20)

        assert dialog.add.height() >= dialog.add.sizeHint().height()
    finally:
        dress(qapp, Scheme.LIGHT)
