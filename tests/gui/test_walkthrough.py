"""A first trial in the whole window: planned, sown, its sheets saved, a weight typed, the verdict asked for.

Keys and clicks, but for the system's file dialog; the photos are scored by a stub.
"""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.app import make_window
from gui.bench.screen import Bench
from gui.home import Memory
from gui.plan.screen import Plan
from gui.plan.view import KeptPage
from gui.verdict.screen import EMPTY
from gui.window import Window
from tests.gui.rackbook import photograph

LEFT = Qt.MouseButton.LeftButton
CONTROL = Qt.KeyboardModifier.ControlModifier
TRIAL = "Mat against peat"


@pytest.fixture
def window(qtbot: QtBot, qapp: QApplication, tmp_path: Path) -> Iterator[Window]:
    """The program with a new, empty book."""
    Book.create(tmp_path / "book").close()
    (tmp_path / "settings").mkdir()
    made = make_window(qapp, Memory(tmp_path / "settings"))
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
    assert made.open_folder(tmp_path / "book")
    yield made
    made.close()


def settle(window: Window, qtbot: QtBot) -> None:
    qtbot.wait(200)  # the fields are quiet
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)


def go(window: Window, qtbot: QtBot, key: Qt.Key) -> None:
    qtbot.keyClick(window, key, CONTROL)
    settle(window, qtbot)


def plan_print_and_sow(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    bench, plan = window.screens["bench"], window.screens["plan"]
    assert isinstance(bench, Bench)
    assert isinstance(plan, Plan)
    qtbot.mouseClick(bench._empty.other, LEFT)  # an empty rack leads to the plan
    settle(window, qtbot)
    assert plan.isVisible()
    plan_it(plan, window, qtbot)
    print_it(plan, tmp_path / "sheets.pdf", qtbot)
    sow_it(plan, bench, window, qtbot)


def plan_it(plan: Plan, window: Window, qtbot: QtBot) -> None:
    """From the question to the drawn places."""
    qtbot.mouseClick(plan._empty.button, LEFT)
    qtbot.keyClicks(plan.question.name, TRIAL)
    qtbot.keyClick(plan.question.name, Qt.Key.Key_Return)
    for field, name in (
        (plan.treatments.more_crops, "broccoli"),
        (plan.treatments.more_media, "peat"),
        (plan.treatments.more_media, "mat"),
    ):
        qtbot.keyClicks(field, name)
        qtbot.keyClick(field, Qt.Key.Key_Return)
    qtbot.mouseClick(plan.treatments.media_rows["peat"].trusted, LEFT)
    for _ in range(4):  # trays, shelves, places; kept and drawn
        settle(window, qtbot)
        assert plan.forward.isEnabled(), plan.missing.text()
        qtbot.mouseClick(plan.forward, LEFT)
    settle(window, qtbot)
    assert plan.pages.currentWidget() is plan.places
    window.resize(1600, 800)
    assert window.top.undo.text() == "Undo: plan of Mat against p…"  # cut, and seen to be
    qtbot.mouseClick(plan.forward, LEFT)
    assert plan.state.page is KeptPage.PRINT


def print_it(plan: Plan, path: Path, qtbot: QtBot) -> None:
    with qtbot.waitSignal(plan.saving.told, timeout=20_000):
        plan.saving.save(path)
    assert path.read_bytes().startswith(b"%PDF")


def sow_it(plan: Plan, bench: Bench, window: Window, qtbot: QtBot) -> None:
    assert plan.state.trial is not None
    assert plan.state.trial.draw is not None
    go(window, qtbot, Qt.Key.Key_1)  # too early: the rack says what is still to be done
    assert bench._empty.title.text() == f"{len(plan.state.trial.draw.draw.places)} trays wait to be sown"
    qtbot.mouseClick(bench._empty.other, LEFT)
    settle(window, qtbot)
    qtbot.mouseClick(plan.body.foot.also, LEFT)
    assert plan.state.page is KeptPage.SOW
    qtbot.mouseClick(plan.forward, LEFT)
    settle(window, qtbot)


@pytest.mark.usefixtures("quick_hand")
def test_a_first_trial_is_planned_printed_photographed_weighed_and_asked_for_its_verdict(
    window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    plan_print_and_sow(window, qtbot, tmp_path)
    book = window.book
    assert book is not None
    trays = book.trays()
    assert {tray.medium for tray in trays} == {"peat", "mat"}
    assert all(tray.tag_number is not None for tray in trays)

    for tray in trays[:2]:
        photograph(book, tray.code, tmp_path)
    go(window, qtbot, Qt.Key.Key_1)
    bench = window.screens.bench
    bench.renew()
    settle(window, qtbot)
    assert bench.rack.model().rowCount() == len(trays)
    qtbot.keyClicks(bench.quick.line, f"{trays[0].code} 812")
    qtbot.keyClick(bench.quick.line, Qt.Key.Key_Enter)
    assert [reading.value for reading in book.readings(tray_id=trays[0].id)] == [812]

    go(window, qtbot, Qt.Key.Key_5)
    verdict = window.screens.verdict
    settle(window, qtbot)
    assert verdict._whole.currentIndex() != EMPTY
    assert len(verdict.state.reading.crops) == 1
    assert verdict.by_eye.isVisible()

    verdict.next_wanted.emit(TRIAL, 12)  # as its button does where nothing is shown
    settle(window, qtbot)
    plan = window.screens.plan
    assert plan.state.draft is not None
    assert (plan.state.draft.copied_from, plan.state.draft.trays) == (TRIAL, 12)
