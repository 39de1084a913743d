"""Sides: beside each other by their shares, by their needs, or one above the other."""

import pytest
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
