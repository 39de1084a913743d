import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QImage, QWheelEvent
from PySide6.QtWidgets import QApplication

from gui.photo.layers import Layer
from gui.photo.mips import level_for, make_mips
from gui.pictures import PictureView
from gui.style.words import line_width


def a_picture(columns: int = 2000, rows: int = 1000) -> np.ndarray:
    """Left half red, right half blue, RGB."""
    pixels = np.zeros((rows, columns, 3), np.uint8)
    pixels[:, : columns // 2] = (200, 10, 10)
    pixels[:, columns // 2 :] = (10, 10, 200)
    return pixels


@pytest.fixture
def view(qtbot):
    view = PictureView()
    qtbot.addWidget(view)
    view.resize(800, 400)
    view.show_picture(make_mips(a_picture()))
    with qtbot.waitActive(view):
        view.show()
    view.setFocus()
    return view


def rolled(view: PictureView, notches: int, at: QPoint) -> None:
    event = QWheelEvent(
        QPointF(at), QPointF(view.mapToGlobal(at)), QPoint(), QPoint(0, 120 * notches),
        Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(view, event)


def test_levels_halve_until_they_are_small():
    mips = make_mips(a_picture())

    assert [level.width() for level in mips.levels] == [2000, 1000, 500]


def test_colours_arrive_as_they_were():
    assert make_mips(a_picture(101, 7)).levels[0].pixelColor(0, 3).getRgb()[:3] == (200, 10, 10)


def test_the_level_just_above_the_zoom_is_painted():
    assert [level_for(zoom, 4) for zoom in (3.0, 1.0, 0.9, 0.5, 0.3, 0.01)] == [0, 0, 0, 1, 1, 3]


def test_the_whole_picture_is_seen_at_first(view):
    screen = view.grab().toImage()

    assert view.view.zoom == pytest.approx(0.4)
    assert screen.pixelColor(100, 200).red() == pytest.approx(200, abs=3)
    assert screen.pixelColor(600, 200).blue() == pytest.approx(200, abs=3)


def test_the_wheel_looks_closer_at_the_cursor(view):
    before = view.view.to_picture(300, 100)

    rolled(view, 4, QPoint(300, 100))

    assert view.view.zoom == pytest.approx(0.4 * 1.25**4)
    assert view.view.to_picture(300, 100) == pytest.approx(before)


def test_dragging_moves_the_picture(view, qtbot):
    rolled(view, 6, QPoint(400, 200))
    before = view.view.to_picture(400, 200)

    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=QPoint(400, 200))
    qtbot.mouseMove(view, QPoint(450, 220))
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=QPoint(450, 220))

    assert view.view.to_picture(450, 220) == pytest.approx(before)


def test_the_keys_zoom_and_fit(view, qtbot):
    qtbot.keyClick(view, Qt.Key.Key_Plus)
    assert view.view.zoom == pytest.approx(0.5)

    qtbot.keyClick(view, Qt.Key.Key_0)
    assert view.view.is_fitted


def test_number_keys_switch_single_layers_and_tell_it(view, qtbot):
    with qtbot.waitSignal(view.layers_switched) as told:
        qtbot.keyClick(view, Qt.Key.Key_2)

    assert told.args == [frozenset({Layer.GAPS})]


def test_space_switches_the_layers_off_and_the_same_ones_on_again(view, qtbot):
    view.show_layers(frozenset({Layer.CELLS, Layer.SUSPECTS}))

    qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.shown == frozenset()

    qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.shown == {Layer.CELLS, Layer.SUSPECTS}


def test_another_picture_of_the_same_size_keeps_the_place(view):
    rolled(view, 5, QPoint(200, 100))
    place = view.view

    view.show_picture(make_mips(a_picture()[:, ::-1].copy()))

    assert view.view == place


def test_without_a_picture_a_sentence_stands_there_and_is_read_out(view):
    view.show_picture(None, message="No photo of this day.")

    assert view.accessibleDescription() == "No photo of this day."
    ground = view.grab().toImage()
    assert len({ground.pixel(x, 200) for x in range(300, 500)}) > 1


def test_a_long_sentence_in_place_of_a_picture_breaks_where_lines_grow_hard_to_read(view):
    view.resize(1600, 400)
    view.show_picture(None, message="It was scored by an older version of the program. " * 5)

    seen = view.grab().toImage()
    inked = [x for x in range(20, 1580) if len({seen.pixel(x, y) for y in range(20, 380)}) > 1]
    assert max(inked) - min(inked) <= line_width(view.fontMetrics())  # 75 letters, of 250


def test_a_wide_picture_is_painted_from_its_smaller_level_without_sparkle(qtbot):
    stripes = np.zeros((1200, 2400, 3), np.uint8)
    stripes[:, ::2] = 255
    view = PictureView()
    qtbot.addWidget(view)
    view.resize(600, 300)
    view.show_picture(make_mips(stripes))

    screen = QImage(600, 300, QImage.Format.Format_RGB32)
    view.render(screen)

    greys = {screen.pixelColor(x, 150).red() for x in range(20, 500)}
    assert min(greys) > 110
    assert max(greys) < 145
