"""A rack without photos, and the place Verdict without a book."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.verdict.screen import Verdict
from gui.work import Work
from tests.data.trialrack import Rack


@pytest.fixture
def rack(tmp_path: Path, work: Work) -> Iterator[Rack]:
    made = Rack(tmp_path)
    yield made
    work.stop_all()
    made.book.close()


@pytest.fixture
def screen(qtbot: QtBot, dressed: QApplication, work: Work) -> Verdict:
    made = Verdict(work)
    qtbot.addWidget(made)
    made.resize(1366, 640)
    made.show()
    return made
