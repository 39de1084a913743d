"""Every dialog about books that leave and come: reached by Tab, and not too large."""

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QApplication, QDialog, QRadioButton, QWidget
from pytestqt.qtbot import QtBot

from gui.oldnotes.assistant import OldNotesAssistant
from gui.report.dialog import ReportDialog
from gui.travel.guestdialog import GuestDialog
from gui.travel.guestsource import GuestSource
from gui.travel.packways import PackWays
from gui.travel.places import ExportPlace, PackPlace, UnpackPlace
from gui.window import Window
from tests.gui.test_access import can_have_focus, name_of
from tests.gui.travel.doing import book_of


@pytest.fixture
def dialog(
    request: pytest.FixtureRequest, window: Window, qtbot: QtBot, tmp_path: Path, other: Path
) -> QDialog:
    (tmp_path / "old.csv").write_text("crop,medium,sown\npea,coir,03/04/2025\n,coir,03/04/2025\n")
    made: dict[str, Callable[[], QDialog]] = {
        "pack": lambda: PackPlace("mine", tmp_path, window),
        "export": lambda: ExportPlace("mine", tmp_path, window),
        "unpack": lambda: UnpackPlace(tmp_path / "a.evenstand", tmp_path, window),
        "source": lambda: GuestSource(window),
        "ways": lambda: PackWays("a.evenstand", window),
        "guest": lambda: GuestDialog(book_of(window), window.work, other, window),
        "notes": lambda: OldNotesAssistant(book_of(window), window.work, tmp_path / "old.csv", window),
        "report": lambda: ReportDialog(book_of(window), window.work, window),
    }
    shown = made[request.param]()
    with qtbot.waitActive(shown):
        shown.show()
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
    return shown


EVERY = ("pack", "export", "unpack", "source", "ways", "guest", "notes", "report")


@pytest.mark.parametrize("dialog", EVERY, indirect=True)
def test_everything_in_each_dialog_has_a_name_and_is_reached_by_tab(dialog: QDialog, qtbot: QtBot) -> None:
    wanted = {widget for widget in dialog.findChildren(QWidget) if can_have_focus(widget)}
    assert [type(widget).__name__ for widget in wanted if not name_of(widget)] == []

    reached = set()
    for _ in range(3 * len(wanted) + 3):
        widget = QApplication.focusWidget()
        assert widget is not None
        reached.add(widget)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)

    radios = {widget for widget in wanted - reached if isinstance(widget, QRadioButton)}
    assert wanted - reached - radios == set()
    assert {radio.group() for radio in radios} <= {
        radio.group() for radio in reached if isinstance(radio, QRadioButton)
    }
    dialog.reject()


@pytest.mark.parametrize("dialog", EVERY, indirect=True)
def test_tab_goes_from_top_to_bottom_and_up_once_alone(dialog: QDialog, qtbot: QtBot) -> None:
    round_trip: list[QWidget] = []
    for _ in range(200):
        widget = QApplication.focusWidget()
        assert widget is not None
        if round_trip and widget is round_trip[0]:
            break
        round_trip.append(widget)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)
    places = [QRect(one.mapTo(dialog, QPoint(0, 0)), one.size()) for one in (*round_trip, round_trip[0])]
    upwards = [
        (name_of(one), name_of(following))
        for (one, here), (following, there) in pairwise(
            zip((*round_trip, round_trip[0]), places, strict=True)
        )
        if there.bottom() < here.top()
    ]
    assert len(upwards) <= 1, upwards


@pytest.mark.parametrize("dialog", EVERY, indirect=True)
def test_each_dialog_fits_the_least_window_in_large_letters(dialog: QDialog, window: Window) -> None:
    window.top.view_menu.text_chosen.emit(150)
    QApplication.processEvents()

    least = dialog.minimumSizeHint()

    assert (least.width() <= 1024, least.height() <= 700) == (True, True)
    dialog.reject()
    window.top.view_menu.text_chosen.emit(100)
