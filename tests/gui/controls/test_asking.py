"""A dialog that was left is let go: a window that stays open for weeks does not gather them."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QDialog, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

import gui
from gui.app import make_window
from gui.bench.screen import Bench
from gui.controls.asking import ask, show_over
from gui.home import Memory
from gui.window import Window
from tests.gui.rackbook import a_rack_book

Answer = Callable[[Callable[[QDialog], None]], None]
OF_A_BOOK = (
    "add_trays", "print_tags", "tray_types", "check_station", "write_report", "bring_in_book", "export_book",
    "pack_book", "show_keys", "new_book",
)  # fmt: skip


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


@pytest.mark.parametrize("name", OF_A_BOOK)
def test_no_dialog_of_the_menus_outlives_its_end(
    window: Window, answer: Answer, name: str, qtbot: QtBot
) -> None:
    seen: list[QDialog] = []
    answer(seen.append)
    window.actions_by_name[name].trigger()
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)  # nothing comes to one that is gone

    assert len(seen) == 1
    assert dialogs_over(window) == []
    assert not shiboken6.isValid(seen[0])


def test_what_was_typed_can_be_read_until_the_caller_returns(
    qtbot: QtBot, dressed: QApplication, answer: Answer
) -> None:
    over = QWidget()
    qtbot.addWidget(over)
    dialog = QDialog(over)
    line = QLineEdit(dialog)

    def deal(shown: QDialog) -> None:
        line.setText("A1")
        shown.accept()

    answer(deal)
    assert ask(dialog)
    assert line.text() == "A1"
    assert dialogs_over(over) == []


def test_a_dialog_that_tells_by_signals_goes_too(qtbot: QtBot, dressed: QApplication) -> None:
    over = QWidget()
    qtbot.addWidget(over)
    over.show()
    dialog = QDialog(over)
    show_over(dialog)
    assert dialog.isVisible()
    dialog.reject()
    assert dialogs_over(over) == []


def test_every_dialog_is_asked_this_way() -> None:
    room = Path(str(gui.__file__)).parent
    own = [room / "controls" / "asking.py", room / "app.py"]
    files = [path for path in room.rglob("*.py") if path not in own]
    bare = [path.name for path in files if re.search(r"\.exec\(\)", path.read_text("utf-8"))]
    assert bare == []
    assert len(files) > 100


def test_a_double_click_opens_one_list_of_the_past(window: Window, qtbot: QtBot) -> None:
    bench = window.screens["bench"]
    assert isinstance(bench, Bench)
    seen: list[int] = []

    def look() -> None:
        seen.append(len(dialogs_over(window)))
        for dialog in window.findChildren(QDialog):
            dialog.reject()

    bench.lists.show_history(bench.book)
    bench.lists.show_history(bench.book)
    qtbot.waitUntil(lambda: bool(window.findChildren(QDialog)), timeout=20_000)
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)
    look()
    assert seen == [1]
    assert dialogs_over(window) == []

    bench.lists.show_history(bench.book)  # the next click opens it again
    qtbot.waitUntil(lambda: bool(window.findChildren(QDialog)), timeout=20_000)
    look()
