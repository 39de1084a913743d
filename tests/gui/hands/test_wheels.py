"""Wheels: what a turn of the wheel does as Qt delivers it to the window."""

import pytest
from PySide6.QtCore import QDate, QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QDateEdit,
    QLineEdit,
    QListWidget,
    QScrollArea,
    QSlider,
    QWidget,
)
from pytestqt.qtbot import QtBot

from gui.hands.wheels import Wheels


@pytest.fixture
def area(qtbot: QtBot, dressed: QApplication) -> QScrollArea:
    """A page that is higher than its window."""
    area = QScrollArea()
    Wheels(area)
    made = QWidget()
    made.setFixedSize(380, 2000)
    area.setWidget(made)
    area.resize(400, 400)
    qtbot.addWidget(area)
    with qtbot.waitActive(area):
        area.show()
    return area


@pytest.fixture
def page(area: QScrollArea) -> QWidget:
    made = area.widget()
    assert made is not None
    return made


def turn(part: QWidget, notches: int = -1) -> None:
    """Of the wheel, over the middle of a part."""
    middle = QPointF(part.mapTo(part.window(), part.rect().center()))
    QTest.wheelEvent(part.window().windowHandle(), middle, QPoint(0, 120 * notches))


def placed(part: QWidget) -> QWidget:
    part.setGeometry(10, 100, 200, 44)
    part.show()
    return part


def test_a_page_rolls_over_its_fields_and_they_stay_as_they_are(area: QScrollArea, page: QWidget) -> None:
    crop, day, score = (
        QComboBox(page),
        QDateEdit(QDate(2026, 3, 2), page),
        QSlider(Qt.Orientation.Horizontal, page),
    )
    crop.addItems(["broccoli", "red radish", "pea"])
    score.setValue(50)
    for field in (crop, day, score):
        area.verticalScrollBar().setValue(0)
        placed(field)
        field.setFocus()
        turn(field)
        assert area.verticalScrollBar().value() > 0, type(field).__name__
        field.hide()
    assert (crop.currentText(), day.date(), score.value()) == ("broccoli", QDate(2026, 3, 2), 50)


def test_a_field_that_nothing_rolls_around_stays_as_it_is_too(qtbot: QtBot, dressed: QApplication) -> None:
    top = QWidget()
    Wheels(top)
    field = QComboBox(top)
    field.addItems(["weight", "water given"])
    qtbot.addWidget(top)
    with qtbot.waitActive(top):
        top.show()
    turn(field)
    turn(field, 1)
    assert field.currentText() == "weight"


def test_lists_and_pages_roll_as_ever(area: QScrollArea, page: QWidget) -> None:
    inner = QListWidget(page)
    inner.addItems([f"{n}" for n in range(50)])
    placed(inner)
    turn(inner)
    assert inner.verticalScrollBar().value() > 0
    assert area.verticalScrollBar().value() == 0
    turn(placed(QLineEdit(page)))
    assert area.verticalScrollBar().value() > 0
