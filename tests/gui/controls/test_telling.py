"""Telling: what appears by itself on the screen is said to a screen reader, too."""

from pathlib import Path
from types import SimpleNamespace
from typing import TypeAlias

import pytest
from PySide6.QtGui import QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from data.book import Book
from data.records import PhotoId
from data.upkeep.rescoring import Stale
from gui.app import make_window
from gui.controls import telling
from gui.home import Memory
from gui.intake.bands import Asked, IntakeBands
from gui.photo.scoringagain import ScoringAgain
from gui.trays.newtray import NewTrayDialog
from gui.window import Window
from gui.work import Work
from tests.gui.rackbook import a_rack_book

Heard: TypeAlias = list[tuple[str, bool]]  # words, urgent


@pytest.fixture
def heard(monkeypatch: pytest.MonkeyPatch) -> Heard:
    """What Qt was asked to hand on to a screen reader."""
    said: Heard = []

    def hear(event: QAccessibleAnnouncementEvent) -> None:
        said.append((event.message(), event.politeness() == telling.POLITENESS.Assertive))

    monkeypatch.setattr(telling, "QAccessible", SimpleNamespace(updateAccessibility=hear))
    return said


@pytest.fixture
def window(qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path) -> Window:
    a_rack_book(tmp_path / "rack").close()
    made = make_window(dressed, memory)
    qtbot.addWidget(made)
    made.show()
    made.open_folder(tmp_path / "rack")
    qtbot.waitUntil(lambda: not made.work.jobs(), timeout=10_000)
    return made


def test_what_the_foot_says_for_a_while_is_heard(window: Window, heard: Heard) -> None:
    window.sayings.tell("A1: weight 812 g. Ctrl+Z takes it back.")
    assert heard == [("A1: weight 812 g. Ctrl+Z takes it back.", False)]


def test_what_stands_in_the_way_is_heard_at_once(window: Window, heard: Heard) -> None:
    window.sayings.tell_trouble("the disk is full")
    assert heard == [("The disk is full", True)]


def test_what_was_made_while_one_worked_elsewhere_is_heard(
    window: Window, heard: Heard, tmp_path: Path
) -> None:
    window.travel.made.emit("Packed into rack.evenstand", tmp_path)
    assert heard == [("Packed into rack.evenstand", False)]


def test_undo_says_by_ear_what_it_took_back(window: Window, heard: Heard) -> None:
    assert isinstance(window.book, Book)
    window.book.set_trusted("coir")
    window.following.undo()
    assert heard == [("Taken back: trusted medium: coir", False)]


def test_a_number_that_is_asked_about_at_the_bench_is_heard_and_once_it_is_kept_so(
    window: Window, heard: Heard, qtbot: QtBot
) -> None:
    bench = window.screens.bench
    bench.quick.line.setText("A1 banana")
    bench.quick.note_it()
    assert [urgent for _, urgent in heard] == [True]
    heard.clear()

    bench.quick.line.setText("A1 812")
    bench.quick.note_it()
    assert len(heard) == 1
    assert "812" in heard[0][0]


def test_a_mistake_in_a_dialog_is_heard_each_time_it_is_made(
    rack_book: Book, qtbot: QtBot, dressed: QApplication, heard: Heard
) -> None:
    dialog = NewTrayDialog(rack_book)
    qtbot.addWidget(dialog)
    heard.clear()
    dialog.code.setText("")
    for _ in range(2):
        dialog.add.click()
    assert heard == [("Give the tray a code, as it stands on the tray.", True)] * 2


def test_what_is_said_while_one_types_is_not_repeated_at_each_letter(
    qtbot: QtBot, dressed: QApplication, heard: Heard
) -> None:
    label = QLabel()
    qtbot.addWidget(label)
    for _ in range(3):
        telling.tell(label, "A9 is on the rack already.", "notice")
    assert heard == [("A9 is on the rack already.", False)]


def test_a_question_of_intake_that_comes_by_itself_is_heard_with_the_way_to_its_answers(
    qtbot: QtBot, dressed: QApplication, work: Work, heard: Heard
) -> None:
    bands = IntakeBands(ScoringAgain(work))
    qtbot.addWidget(bands)
    for _ in range(2):  # it is asked anew with each photo that comes in
        bands.show_asked(Asked(stale=Stale(photos=(PhotoId(1), PhotoId(2)))))
    assert len(heard) == 1
    assert heard[0][0].startswith("2 photos can be scored again.")
    assert heard[0][0].endswith("The key Q leads to the answers.")
