"""Sides: beside each other by their shares, by their needs, or one above the other."""

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from gui.controls.sides import Sides
from gui.style.palette import Space


@pytest.mark.parametrize(
    ("width", "above", "left"),
    [
        (1000 + Space.M, False, 500),  # half and half
        (700 + Space.M, False, 400),  # the left one needs its 400, the right one its 300
        (690 + Space.M, True, 690 + Space.M),
    ],
)
def test_no_side_gets_less_than_it_needs_while_there_is_room(
    qtbot: QtBot, width: int, above: bool, left: int
) -> None:
    one, other = QWidget(), QWidget()
    one.setProperty("wanted", 400)
    other.setProperty("wanted", 300)
    sides = Sides((one, other), (1, 1), None)
    qtbot.addWidget(sides)
    sides.resize(width, 400)
    sides.show()
    qtbot.wait(10)

    assert (one.x() == other.x()) is above
    assert one.width() == pytest.approx(left, abs=1)


def test_once_laid_out_it_rests(qtbot: QtBot) -> None:
    sides = Sides((QWidget(), QWidget()), (2, 1), None)
    qtbot.addWidget(sides)
    sides.resize(900, 400)
    with qtbot.waitExposed(sides):
        sides.show()
    qtbot.wait(10)
    asked = _Requests(sides)

    qtbot.wait(60)

    assert asked.count <= 1  # it asked for its own layout again and again, some 300 times a second


class _Requests(QObject):
    """Counts how often a widget is asked to lay itself out."""

    def __init__(self, widget: QWidget) -> None:
        super().__init__(widget)
        self.count = 0
        widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self.count += event.type() == QEvent.Type.LayoutRequest
        return super().eventFilter(watched, event)
