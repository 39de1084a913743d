"""Shelf head: the line above the tiles of a shelf: its name, and how many trays stand on it.

In    a painter, the place of the line, letters, the shelf's name ("" where there is none), trays
Out   ink on the screen
Not   where the line stands (`shelves.py`), the tiles (`tilepainter.py`)
"""

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QFont, QPainter

from gui.language.words import translate
from gui.style.palette import Space, tokens_now

__all__ = ["paint_head"]


def paint_head(painter: QPainter, box: QRect, font: QFont, name: str, count: int) -> None:
    """The name in bold, the number after it."""
    words = translate("RackView", "Without a shelf")
    if name:
        words = translate("RackView", "Shelf {name}").format(name=name)
    number = translate("RackView", "{count} trays").format(count=count)
    if count == 1:
        number = translate("RackView", "1 tray")
    bold = QFont(font)
    bold.setBold(True)
    painter.setFont(bold)
    painter.setPen(QColor(tokens_now().ink))
    align = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
    painter.drawText(box, align, words)
    used = painter.fontMetrics().horizontalAdvance(words) + Space.S
    painter.setFont(font)
    painter.setPen(QColor(tokens_now().soft_ink))
    painter.drawText(box.adjusted(used, 0, 0, 0), align, number)
