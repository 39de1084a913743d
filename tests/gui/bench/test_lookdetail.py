"""What can be said to a line of the look list, by a wet finger too."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.bench.lookdetail import LookDetail
from tests.gui.rackbook import a_look


def test_a_finger_that_bounces_puts_away_one_line_and_not_the_next(
    qtbot: QtBot, dressed: QApplication
) -> None:
    detail = LookDetail()
    qtbot.addWidget(detail)
    detail.show()
    detail.show_look(a_look(1))
    said: list[str] = []

    def answered(look: object, _answer: str) -> None:
        said.append(look.code)  # type: ignore[attr-defined]
        detail.show_look(a_look(2))  # the list moves up

    detail.answered.connect(answered)
    QTest.mouseClick(detail.seen, Qt.MouseButton.LeftButton)
    QTest.mouseClick(detail.seen, Qt.MouseButton.LeftButton)
    assert said == ["A1"]

    QTest.qWait(QGuiApplication.styleHints().mouseDoubleClickInterval() + 50)
    QTest.mouseClick(detail.tomorrow, Qt.MouseButton.LeftButton)
    assert said == ["A1", "A2"]
