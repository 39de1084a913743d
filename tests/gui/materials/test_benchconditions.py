"""The conditions of a test: asked for from top to bottom."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.medium.benchtest import BenchKind
from gui.materials.benchconditions import BenchConditions
from vision.traytype import TrayType


def test_tab_comes_by_tray_type_seating_and_watering_as_they_stand(
    qtbot: QtBot, dressed: QApplication
) -> None:
    asked = BenchConditions(BenchKind.WETTING, [TrayType(name="10 x 20 inch")], None)
    qtbot.addWidget(asked)
    with qtbot.waitActive(asked):
        asked.show()
    in_sight = [asked.kind_of_tray, asked.seating, asked.watering]
    assert in_sight == sorted(in_sight, key=lambda field: field.y())

    in_sight[0].setFocus()
    for field in in_sight:
        assert field.hasFocus()
        qtbot.keyClick(field, Qt.Key.Key_Tab)
