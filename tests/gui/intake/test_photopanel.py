"""The photo beside the list: no sentence is cut, and what cannot be shown says so."""

from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.records import PhotoId, TrayId
from gui.intake.photopanel import PhotoPanel
from gui.intake.view import IntakeRow, Kind
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.work import Work

LONG = "Schild 21 gehört zu keiner Schale, die damals wuchs: die Schale wählen"

UNSURE = "B1: der Schalenrand ist unsicher: die vier Ecken auf die Innenkante ziehen"


@pytest.mark.parametrize("percent", [100, 150])
def test_in_a_low_window_the_sentence_is_whole_and_a_tray_can_be_seen(
    qtbot: QtBot, dressed: QApplication, work: Work, rack: Book, tmp_path, percent: int
) -> None:
    dress(dressed, Scheme.LIGHT, percent)
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.resize(392, 400)
    panel.show()
    panel.show_trays(rack.trays())
    row = IntakeRow(
        key=1, name="walk.jpg", kind=Kind.NEEDS_TRAY, sentence=LONG, photo_id=PhotoId(1),
        taken_at=datetime(2026, 3, 8, 8), photo=tmp_path / "walk.jpg",
    )  # fmt: skip
    panel.show_row(row)
    qtbot.wait(50)

    sentence = panel.sentence
    assert sentence.height() >= sentence.heightForWidth(sentence.width())
    assert panel.picker.list.height() >= 44
    assert panel.picture.height() >= 80
    assert panel.height() == 400
    panel.resize(392, 700)
    qtbot.wait(50)
    assert panel.picture.minimumHeight() == 110
    assert panel.picker.list.height() >= 88
    dress(dressed, Scheme.LIGHT)


def test_with_large_letters_in_the_least_window_sentence_and_photo_are_seen(
    qtbot: QtBot, dressed: QApplication, work: Work, rack: Book, tmp_path: Path
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.resize(392, 347)  # what Intake leaves it in a window of 1024 x 700
    panel.show()
    panel.show_row(
        IntakeRow(
            key=1, name="walk.jpg", kind=Kind.NEEDS_CORNERS, sentence=UNSURE, photo_id=PhotoId(1),
            photo=tmp_path / "walk.jpg", tray_id=TrayId(1), tray_code="B1",
        )
    )  # fmt: skip
    qtbot.wait(50)

    assert panel.sentence.height() >= panel.sentence.heightForWidth(panel.sentence.width())
    assert panel.picture.height() >= 130
    dress(dressed, Scheme.LIGHT)


def test_no_button_enlarges_a_picture_for_which_there_is_no_room(
    qtbot: QtBot, dressed: QApplication, work: Work
) -> None:
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.show()

    panel.show_parts(picture=False, words=True)
    assert not panel.zoom.isVisible()

    panel.show_parts(picture=True, words=True)
    assert panel.zoom.isVisible()


def test_where_there_is_no_tray_to_choose_it_says_what_to_do(
    qtbot: QtBot, dressed: QApplication, work: Work, rack: Book, tmp_path: Path
) -> None:
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.show()
    panel.show_row(
        IntakeRow(
            key=1, name="walk.jpg", kind=Kind.NEEDS_TRAY, sentence=LONG, photo_id=PhotoId(1),
            taken_at=datetime(2026, 3, 8, 8), photo=tmp_path / "walk.jpg",
        )
    )  # fmt: skip
    assert panel.picker.none.isVisible()
    assert not panel.picker.list.isVisible()

    panel.show_trays(rack.trays())
    assert not panel.picker.none.isVisible()
    assert panel.picker.list.isVisible()


def test_a_file_of_which_nothing_was_kept_says_why_its_place_is_empty(
    qtbot: QtBot, dressed: QApplication, work: Work
) -> None:
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.show_row(IntakeRow(key=1, name="broken.jpg", kind=Kind.REFUSED, sentence="not used: damaged"))

    assert panel.picture.accessibleDescription() == "broken.jpg"
    assert panel.picture._message == "Nothing of this file can be shown."
    panel.show_row(None)
    assert panel.picture._message == ""


def test_beside_a_question_the_picture_becomes_low_before_it_goes(
    qtbot: QtBot, dressed: QApplication, work: Work, tmp_path
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.show_row(
        IntakeRow(
            key=1, name="a.jpg", kind=Kind.STORED, sentence="C6, zugeordnet durch ihr Schild, Deckung 98 %",
            photo_id=PhotoId(1), tray_id=TrayId(1), tray_code="C6", photo=tmp_path / "a.jpg",
        )
    )  # fmt: skip
    panel.resize(529, 700)
    panel.show()
    qtbot.wait(20)
    least, picture, _ = panel.least_heights(529)
    assert picture < 110
    panel.resize(529, least)
    qtbot.wait(50)

    assert panel.height() == least
    assert panel.picture.height() >= 80
    for part in (panel.sentence, panel.corners, panel.sheet, panel.other, panel.leave):
        assert panel.doing.rect().contains(part.geometry())
        assert part.height() >= 28
    dress(dressed, Scheme.LIGHT)
