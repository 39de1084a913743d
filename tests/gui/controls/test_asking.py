"""A dialog that was left is let go: a window that stays open for weeks does not gather them."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QDialog, QWidget
from pytestqt.qtbot import QtBot

from gui.app import make_window
from gui.controls.asking import show_over
from gui.home import Memory
from gui.window import Window
from tests.gui.rackbook import a_rack_book


@pytest.fixture
def window(qtbot: QtBot, qapp: QApplication, memory: Memory, tmp_path: Path) -> Iterator[Window]:
    a_rack_book(tmp_path / "rack").close()
    made = make_window(qapp, memory)
    qtbot.addWidget(made)
    made.show()
    assert made.open_folder(tmp_path / "rack")
    qtbot.waitUntil(lambda: not made.work.jobs(), timeout=20_000)
    yield made
    made.close()


def dialogs_over(window: QWidget) -> list[QDialog]:
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    return window.findChildren(QDialog)


def test_a_dialog_that_tells_by_signals_goes_once_it_is_left(qtbot: QtBot, dressed: QApplication) -> None:
    over = QWidget()
    qtbot.addWidget(over)
    over.show()
    dialog = QDialog(over)
    show_over(dialog)
    assert dialog.isVisible()
    dialog.reject()
    assert dialogs_over(over) == []


def test_what_went_away_opens_once_for_a_double_click_and_leaves_nothing(
    window: Window, qtbot: QtBot
) -> None:
    bench = window.screens.bench

    for _ in range(2):  # the next click opens it again
        bench.lists.show_history(bench.book)
        bench.lists.show_history(bench.book)
        qtbot.waitUntil(lambda: bool(window.findChildren(QDialog)), timeout=20_000)
        qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)
        (shown,) = dialogs_over(window)
        shown.reject()
        assert dialogs_over(window) == []
