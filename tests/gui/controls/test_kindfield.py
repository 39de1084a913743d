"""The kind of a medium is said once, not each time its list was opened."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.growing.mediumkind import MediumKind
from gui.controls.kindfield import KindField


def test_the_same_kind_chosen_once_more_is_no_news(qtbot: QtBot, dressed: QApplication) -> None:
    field = KindField("Kind of coir")
    qtbot.addWidget(field)
    field.set(MediumKind.LOOSE)
    said: list[str] = []
    field.said.connect(said.append)

    for kind in (MediumKind.LOOSE, MediumKind.MAT, MediumKind.MAT):
        field.setCurrentIndex(field.findData(kind))
        field.activated.emit(field.currentIndex())

    assert said == [MediumKind.MAT]
    assert field.itemData(field.currentIndex(), Qt.ItemDataRole.ToolTipRole) == field.toolTip()
