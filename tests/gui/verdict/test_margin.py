"""The margin of a trial without a plan is set beside its verdict, in the window and on the command line."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.answer.reading import VerdictReading
from gui.answer.view import VerdictState
from gui.command import main
from gui.verdict.marginask import MarginAsk
from gui.verdict.screen import Verdict
from tests.data.builders import a_tray
from tests.data.plans import a_plan
from tests.data.trialrack import EVEN, Rack
from tests.gui.verdict.opened import read, settle
from tests.made.books import an_empty_book

TRIAL = "Unplanned"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with an_empty_book(tmp_path / "book") as made:
        for number, medium in enumerate(("peat mix", "coir") * 2):
            made.add_tray(a_tray(code=f"A{number}", medium=medium, trial=TRIAL, tag_number=20 + number))
        made.set_trusted("peat mix")
        made.set_setting("today", "2026-02-27")
        yield made


def test_a_trial_without_a_plan_gets_its_margin_before_any_photo(
    book: Book, screen: Verdict, qtbot: QtBot
) -> None:
    read(screen, book, qtbot)
    qtbot.mouseClick(screen.head.margin, Qt.MouseButton.LeftButton)
    ask = screen.findChild(MarginAsk)
    assert ask is not None
    assert ask.points.value == 5.0  # what is usual

    ask.points.field.setText("3.5")
    with qtbot.waitSignal(screen.told) as told:
        qtbot.keyClick(ask.points.field, Qt.Key.Key_Return)
    settle(screen, qtbot)

    assert told.args == [f"The margin of {TRIAL} is 3.5 points; its date is kept."]
    assert book.trial_said(TRIAL).margin_points == 3.5
    assert "margin 3.5 points" in screen.page.head.text()
    assert (
        "3.5 points was set on 27 February 2026, before the first tray was sown." in screen.page.sure.text()
    )


def test_a_trial_that_vanishes_while_its_margin_is_asked_for_is_said_to_be_gone(
    book: Book, screen: Verdict, qtbot: QtBot
) -> None:
    read(screen, book, qtbot)
    qtbot.mouseClick(screen.head.margin, Qt.MouseButton.LeftButton)
    ask = screen.findChild(MarginAsk)
    assert ask is not None
    ask._trial = "renamed in another window"

    with qtbot.waitSignal(screen.troubled) as told:
        qtbot.keyClick(ask.points.field, Qt.Key.Key_Return)

    assert "no longer in the book" in told.args[0]
    assert book.trial_said(TRIAL).margin_points is None


@pytest.mark.parametrize("times", [1, 2, 4, 6])
def test_what_the_margin_means_is_read_whole_however_long_the_name(
    dressed: QApplication, qtbot: QtBot, times: int
) -> None:
    """Wrapped words that need a line more do not ask a dialog for it by themselves."""
    trial = "Peat mix against coir and fibre mat on shelves " * times
    ask = MarginAsk(VerdictState(reading=VerdictReading(trial=trial)))
    qtbot.addWidget(ask)
    ask.show()

    about = next(one for one in ask.findChildren(QLabel) if one.wordWrap())

    assert about.height() >= about.heightForWidth(about.width())


def test_the_margin_of_a_planned_trial_is_not_set_here(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    rack.shoot_all(EVEN)

    read(screen, rack.book, qtbot)

    assert screen.head.rule.isVisible()
    assert not screen.head.margin.isVisible()


def test_a_plan_that_came_meanwhile_is_told(book: Book, screen: Verdict, qtbot: QtBot) -> None:
    read(screen, book, qtbot)
    screen.ask_margin()
    ask = screen.findChild(MarginAsk)
    assert ask is not None
    book.keep_plan(a_plan(trial=TRIAL))

    with qtbot.waitSignal(screen.troubled) as told:
        ask.wanted.emit(TRIAL, 4.0)

    assert "change it in the plan" in told.args[0]


def test_the_command_sets_it_and_names_the_trial(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["margin", "4,5", "--book", str(tmp_path / "book")]) == 0

    assert "Unplanned: the margin of the canopy score is 4.5 points" in capsys.readouterr().out
    said = book.trial_said(TRIAL)
    assert (said.margin_points, str(said.margin_set_at)[:10]) == (4.5, "2026-02-27")


def test_the_command_refuses_what_it_would_have_to_guess(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = str(tmp_path / "book")
    book.add_tray(a_tray(code="B1", medium="coir", trial="Another"))
    plan = a_plan()
    book.keep_plan(plan)

    def refused(*words: str) -> str:
        assert main(["margin", *words, "--book", folder]) == 1
        return capsys.readouterr().err

    assert f"name the trial with --trial NAME; trials of this book: {TRIAL}, Another" in refused("4")
    assert "no trial called 'Third'" in refused("4", "--trial", "Third")
    assert "change it in the plan" in refused("4", "--trial", plan.trial)
    assert "lies above 0 and up to 100 points" in refused("0", "--trial", TRIAL)
    assert book.trial_said(TRIAL).margin_points is None
