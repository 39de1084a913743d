"""A rack without photos, and the place Intake without a book."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.intake.screen import Intake
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.work import Work
from tests.gui.rackbook import a_rack_book


@pytest.fixture
def rack(tmp_path: Path, work: Work) -> Iterator[Book]:
    """Trays A1, A2, A3, B1, B2, B3, sown on 1 March 2026; the day is 8 March."""
    with a_rack_book(tmp_path / "three", per_shelf=(3, 3)) as book:
        yield book
        work.stop_all()


@pytest.fixture
def intake(qtbot: QtBot, dressed: QApplication, work: Work) -> Intake:
    made = Intake(work)
    qtbot.addWidget(made)
    made.resize(1024, 590)
    with qtbot.waitActive(made):
        made.show()
    return made


@pytest.fixture
def large_letters(intake: Intake, dressed: QApplication) -> Iterator[None]:
    dress(dressed, Scheme.LIGHT, 150)
    intake.redress()
    yield
    dress(dressed, Scheme.LIGHT)
