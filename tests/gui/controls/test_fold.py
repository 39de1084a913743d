"""What a fold hides is in sight once it is opened."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from gui.controls.fold import Fold
from gui.controls.rolling import rolling


def test_lines_that_open_at_the_lower_end_of_what_rolls_come_into_sight(
    qtbot: QtBot, dressed: QApplication
) -> None:
    tall = QLabel("what stands above")
    tall.setFixedHeight(600)
    fold = Fold("Lines that are not kept: 2")
    fold.say(["line 7: no day of sowing", "line 8: no crop", "line 9: no medium", "line 10: no crop"])
    holder = QLabel()
    area = rolling(holder, [tall, fold])
    qtbot.addWidget(holder)
    holder.resize(400, 300)
    area.setGeometry(0, 0, 400, 300)
    with qtbot.waitExposed(holder):
        holder.show()
    area.ensureWidgetVisible(fold.button)
    folded = area.verticalScrollBar().maximum()

    qtbot.mouseClick(fold.button, Qt.MouseButton.LeftButton)

    def in_sight() -> bool:
        return fold.lines.visibleRegion().boundingRect().height() == fold.lines.height() > 0

    qtbot.waitUntil(lambda: area.verticalScrollBar().maximum() > folded)  # all of it has its height
    qtbot.waitUntil(in_sight, timeout=2000)
