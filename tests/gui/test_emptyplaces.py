"""In a new book every place teaches, and its one main action stands where it always does: lower right."""

from pathlib import Path

from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from gui.app import make_window
from gui.home import Memory
from tests.made.books import an_empty_book

FRAME = 16  # px, by which Intake's main action lies within the dashed frame that says: drop here


def test_the_main_action_of_an_empty_place_stands_lower_right(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path
) -> None:
    an_empty_book(tmp_path / "new").close()
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
    window.open_folder(tmp_path / "new")
    corners = {}
    for place in ("bench", "intake", "traysheet", "plan", "verdict", "materials"):
        window.go_to(place)
        qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
        screen = window.screens[place]
        buttons = [one for one in screen.findChildren(QPushButton) if one.isVisible()]
        mains = [one for one in buttons if one.property("role") in ("main", "rack-main")]
        assert len(mains) == 1, place
        corners[place] = mains[0].mapTo(window, QPoint(mains[0].width(), mains[0].height()))

    corners["intake"] += QPoint(FRAME, FRAME)
    assert len({(corner.x(), corner.y()) for corner in corners.values()}) == 1, corners
