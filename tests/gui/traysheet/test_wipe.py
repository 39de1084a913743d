"""Two days with a line between them: a grey earlier day, a green later one, 1016 x 508 px."""

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.records import PhotoId
from gui.photo.mips import Mips, make_mips
from gui.traysheet.comparepage import other_day
from gui.traysheet.view import TrayState
from gui.traysheet.wipeview import WipeView
from tests.data.builders import a_kept_tray
from tests.gui.rackbook import a_day

GREY, GREEN = (120, 120, 120), (40, 160, 40)


def plain(colour: tuple[int, int, int]) -> Mips:
    return make_mips(np.full((508, 1016, 3), colour, np.uint8))


@pytest.fixture
def view(qtbot: QtBot, dressed: QApplication) -> WipeView:
    view = WipeView()
    qtbot.addWidget(view)
    view.resize(1016, 508)
    with qtbot.waitActive(view):
        view.show()
    view.show_pair(plain(GREY), plain(GREEN), ("day 5", "day 6"))
    view.setFocus()
    return view


def colour_at(view: WipeView, x: int, y: int = 100) -> tuple[int, int, int]:
    image: QImage = view.grab().toImage()
    colour = QColor(image.pixel(x, y))
    return colour.red(), colour.green(), colour.blue()


def test_the_earlier_day_is_left_of_the_line_and_the_later_one_right_of_it(view: WipeView) -> None:
    assert colour_at(view, 300) == GREY
    assert colour_at(view, 700) == GREEN


def test_the_line_follows_the_finger(view: WipeView, qtbot: QtBot) -> None:
    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=QPoint(508, 250))
    qtbot.mouseMove(view, QPoint(800, 250))
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=QPoint(800, 250))

    assert view.line == pytest.approx(800 / 1016, abs=0.002)
    assert colour_at(view, 700) == GREY


def test_arrows_home_and_end_move_the_line(view: WipeView, qtbot: QtBot) -> None:
    qtbot.keyClick(view, Qt.Key.Key_Right)
    assert view.line == pytest.approx(0.52)

    qtbot.keyClick(view, Qt.Key.Key_Home)
    assert colour_at(view, 100) == GREEN

    qtbot.keyClick(view, Qt.Key.Key_End)
    assert colour_at(view, 900) == GREY


def test_space_shows_one_day_wholly_and_then_the_other(view: WipeView, qtbot: QtBot) -> None:
    qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.line == 0.0

    qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.line == 1.0


def test_both_days_zoom_together_so_that_a_place_stays_under_the_line(view: WipeView, qtbot: QtBot) -> None:
    marked = np.full((508, 1016, 3), GREY, np.uint8)
    marked[200:210, 400:410] = (255, 0, 0)
    view.show_pair(make_mips(marked), make_mips(marked), ("day 5", "day 6"))

    view.look_at(405, 205, 4.0)

    for line in (0.0, 1.0):
        view.wipe_to(line)
        red, green, _ = colour_at(view, 508, 254)
        assert (red, green) == (255, 0)


def test_a_tray_that_was_turned_is_turned_back(view: WipeView) -> None:
    corner = np.full((508, 1016, 3), GREY, np.uint8)
    corner[:40, :40] = (255, 0, 0)
    view.show_pair(make_mips(corner), plain(GREEN), ("day 5", "day 6"))
    view.lay_on(((-1, 0, 508), (0, -1, 254)))
    view.wipe_to(1.0)

    assert colour_at(view, 10, 10) == GREY
    assert colour_at(view, 990, 504) == (255, 0, 0)


def test_the_place_that_lost_its_canopy_is_outlined_when_wanted(view: WipeView) -> None:
    square = ((100.0, 50.0), (150.0, 50.0), (150.0, 100.0), (100.0, 100.0))
    view.mark([], [square], (2.0, 2.0))
    before = colour_at(view, 200, 150)

    view.show_places(True)

    assert before == GREY
    edge = {colour_at(view, 200, y) for y in range(110, 190, 7)}
    assert GREY not in edge
    assert colour_at(view, 250, 120) == GREY  # the picture inside is still seen


def test_moving_the_line_paints_only_between_its_old_and_its_new_place(view: WipeView) -> None:
    view.repaint()
    painted: list[int] = []
    view.update = lambda *area: painted.append(area[0].width())

    view.wipe_to(0.52)

    assert painted
    assert max(painted) < 100


def a_state(*coverages: float | None, chosen: int) -> TrayState:
    days = tuple(a_day(n, coverage) for n, coverage in enumerate(coverages, start=1))
    return TrayState(tray=a_kept_tray(), today=9, days=days, chosen=chosen)


def test_a_day_is_held_against_the_scored_one_before_it() -> None:
    other = other_day(a_state(10.0, None, 30.0, chosen=2), None)

    assert other is not None
    assert other.day == 1


def test_the_first_day_is_held_against_the_second() -> None:
    other = other_day(a_state(10.0, 20.0, chosen=0), None)

    assert other is not None
    assert other.day == 2


def test_a_person_chooses_the_other_day() -> None:
    other = other_day(a_state(10.0, 20.0, 30.0, chosen=2), PhotoId(1))

    assert other is not None
    assert other.photo_id == 1


def test_a_day_that_was_refused_cannot_be_compared() -> None:
    assert other_day(a_state(10.0, None, chosen=1), None) is None
