"""Fingers: touches of a touch screen, as Qt delivers them to the window."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QLabel,
    QListWidget,
    QPushButton,
    QScrollArea,
    QSlider,
    QToolTip,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from gui.hands.fingers import Fingers

Drag = Callable[[QWidget, QPoint, QPoint], None]


@pytest.fixture(scope="module")
def screen(qapp: QApplication) -> QPointingDevice:
    return QTest.createTouchDevice()


@pytest.fixture
def finger(screen: QPointingDevice, qapp: QApplication) -> Drag:
    """Put it down on a widget, move it in steps, lift it."""

    def drag(widget: QWidget, begin: QPoint, end: QPoint) -> None:
        window = widget.window().windowHandle()
        first, last = (widget.mapTo(widget.window(), at) for at in (begin, end))
        QTest.touchEvent(window, screen).press(0, first).commit()
        for step in range(1, 11) if begin != end else ():
            QTest.touchEvent(window, screen).move(0, first + (last - first) * step / 10).commit()
        QTest.touchEvent(window, screen).release(0, last).commit()
        qapp.processEvents()

    return drag


@pytest.fixture
def top(qtbot: QtBot, dressed: QApplication) -> QWidget:
    made = QWidget()
    Fingers(made)
    made.resize(400, 400)
    qtbot.addWidget(made)
    return made


def shown(top: QWidget, qtbot: QtBot) -> None:
    with qtbot.waitActive(top):
        top.show()


def a_list(top: QWidget) -> QListWidget:
    view = QListWidget(top)
    view.addItems([f"tray {n}" for n in range(100)])
    view.setGeometry(0, 0, 400, 400)
    return view


def test_a_list_follows_the_finger_and_nothing_in_it_is_pressed(
    top: QWidget, qtbot: QtBot, finger: Drag
) -> None:
    view = a_list(top)
    pressed: list[object] = []
    view.clicked.connect(pressed.append)
    shown(top, qtbot)

    finger(view, QPoint(100, 300), QPoint(100, 100))
    assert view.verticalScrollBar().value() == pytest.approx(200, abs=2)
    finger(view, QPoint(100, 100), QPoint(100, 150))
    assert view.verticalScrollBar().value() == pytest.approx(150, abs=2)
    assert pressed == []


def test_a_finger_that_only_touches_presses_what_lies_there(top: QWidget, qtbot: QtBot, finger: Drag) -> None:
    view = a_list(top)
    pressed: list[int] = []
    view.clicked.connect(lambda index: pressed.append(index.row()))
    shown(top, qtbot)
    middle = view.visualItemRect(view.item(3)).center()

    finger(view, middle, middle)

    assert pressed == [3]
    assert view.currentRow() == 3
    assert view.hasFocus()


def test_two_fingers_press_nothing_and_do_not_let_the_list_jump(
    top: QWidget, qtbot: QtBot, screen: QPointingDevice, qapp: QApplication
) -> None:
    view = a_list(top)
    pressed: list[object] = []
    view.clicked.connect(pressed.append)
    shown(top, qtbot)
    window, first, second = top.windowHandle(), QPoint(100, 100), QPoint(200, 300)

    QTest.touchEvent(window, screen).press(0, first).commit()
    QTest.touchEvent(window, screen).stationary(0).press(1, second).commit()
    QTest.touchEvent(window, screen).release(0, first).stationary(1).commit()
    QTest.touchEvent(window, screen).move(1, second - QPoint(0, 40)).commit()
    QTest.touchEvent(window, screen).release(1, second - QPoint(0, 40)).commit()
    QTest.touchEvent(window, screen).press(0, first).press(1, second).commit()
    QTest.touchEvent(window, screen).release(0, first).release(1, second).commit()
    QTest.touchEvent(window, screen).press(0, first).commit()
    QTest.touchEvent(window, screen).stationary(0).press(1, second).commit()
    QTest.touchEvent(window, screen).release(0, first).release(1, second).commit()
    qapp.processEvents()

    assert pressed == []
    assert view.verticalScrollBar().value() == 0


def test_a_page_follows_from_its_buttons_too_and_a_tap_presses_them(
    top: QWidget, qtbot: QtBot, finger: Drag
) -> None:
    area, page = QScrollArea(top), QWidget()
    column = QVBoxLayout(page)
    buttons = [QPushButton(f"{n}", page) for n in range(40)]
    pressed: list[str] = []
    for button in buttons:
        button.setMinimumHeight(44)
        button.clicked.connect(lambda _checked, button=button: pressed.append(button.text()))
        column.addWidget(button)
    area.setWidget(page)
    area.setGeometry(0, 0, 400, 400)
    shown(top, qtbot)

    finger(buttons[4], QPoint(30, 20), QPoint(30, -100))
    assert area.verticalScrollBar().value() == pytest.approx(120, abs=2)
    assert pressed == []

    finger(buttons[5], QPoint(30, 20), QPoint(30, 20))
    assert pressed == ["5"]


def test_two_taps_are_two_presses_of_a_button(top: QWidget, qtbot: QtBot, finger: Drag) -> None:
    area, page = QScrollArea(top), QWidget()
    page.setFixedSize(380, 2000)
    button = QPushButton("more", page)
    button.setGeometry(10, 10, 100, 44)
    pressed: list[int] = []
    button.clicked.connect(lambda: pressed.append(1))
    area.setWidget(page)
    area.setGeometry(0, 0, 400, 400)
    shown(top, qtbot)
    for _ in range(2):
        finger(button, QPoint(30, 20), QPoint(30, 20))
    assert len(pressed) == 2


def test_a_handle_within_a_page_is_dragged_as_with_the_mouse(
    top: QWidget, qtbot: QtBot, finger: Drag
) -> None:
    area, page = QScrollArea(top), QWidget()
    page.setFixedSize(380, 2000)
    slider = QSlider(Qt.Orientation.Horizontal, page)
    slider.setGeometry(10, 10, 300, 44)
    area.setWidget(page)
    area.setGeometry(0, 0, 400, 400)
    shown(top, qtbot)

    finger(slider, QPoint(5, 22), QPoint(200, 22))

    assert slider.value() > 40
    assert area.verticalScrollBar().value() == 0


def test_a_list_that_drops_down_is_opened_by_a_tap_and_rolled_over(
    top: QWidget, qtbot: QtBot, finger: Drag
) -> None:
    area, page = QScrollArea(top), QWidget()
    page.setFixedSize(380, 2000)
    field = QComboBox(page)
    field.addItems(["broccoli", "red radish", "pea"])
    field.setGeometry(10, 150, 200, 44)
    area.setWidget(page)
    area.setGeometry(0, 0, 400, 400)
    shown(top, qtbot)

    finger(field, QPoint(30, 20), QPoint(30, -80))
    assert area.verticalScrollBar().value() == pytest.approx(100, abs=2)
    assert not field.view().isVisible()

    finger(field, QPoint(30, 20), QPoint(30, 20))
    assert field.view().isVisible()
    assert field.currentText() == "broccoli"
    field.hidePopup()


def test_a_tap_on_words_tells_their_hint(top: QWidget, qtbot: QtBot, finger: Drag) -> None:
    area, page = QScrollArea(top), QWidget()
    page.setFixedSize(380, 2000)
    number = QLabel("Clumping", page)
    number.setToolTip("Above 0, thick cells lie beside thick ones.")
    number.setGeometry(10, 10, 200, 44)
    area.setWidget(page)
    area.setGeometry(0, 0, 400, 400)
    shown(top, qtbot)
    finger(number, QPoint(30, 20), QPoint(30, 20))
    assert QToolTip.text() == "Above 0, thick cells lie beside thick ones."
    QToolTip.hideText()


def test_what_cannot_roll_gets_its_touches_as_ever(top: QWidget, qtbot: QtBot, finger: Drag) -> None:
    button = QPushButton("Keep", top)
    button.setGeometry(10, 10, 100, 44)
    pressed: list[int] = []
    button.clicked.connect(lambda: pressed.append(1))
    shown(top, qtbot)
    finger(button, QPoint(30, 20), QPoint(30, 20))
    assert len(pressed) == 1
