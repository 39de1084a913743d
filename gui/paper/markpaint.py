"""Mark paint: an AprilTag 36h11 in millimetres, without a hair line between its squares.

In    a painter whose unit is 1 mm; number, centre and side of the mark
Out   the mark painted in black on what lies there; keep a white module free all round
Not   the bits themselves (`vision/patterns.py`), the cards around marks (`stationsheet.py`, `tagsheet.py`)
"""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from gui.paper.pages import INK

__all__ = ["draw_mark"]


def draw_mark(painter: QPainter, number: int, centre: QPointF, side: float) -> None:
    """The mark, its own top up."""
    from vision.patterns import MODULES, bits

    module = side / MODULES
    left, top = centre.x() - side / 2, centre.y() - side / 2
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    for row, modules in enumerate(bits(number).tolist()):
        for column, black in enumerate(modules):
            if black:
                path.addRect(QRectF(left + column * module, top + row * module, module, module))
    painter.fillPath(path.simplified(), INK)
