"""Cell painter: a number with where it came from, its range and n below it; a gap as one sentence.

In    a cell's `CellWords` under the role `WORDS`
Out   the painted cell; `draw_origin` for legends
Not   the words (`view.py`), the table (`table.py`)

A dot tells where a number came from, by shape as well as colour: full circle measured here, square typed in,
open circle from literature, open diamond a guess; a gap has none.
"""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from data.materials.table import Origin
from gui.materials.view import CellWords
from gui.style.palette import Space, tokens_now

__all__ = ["DOT", "WORDS", "CellPainter", "draw_origin"]

WORDS = Qt.ItemDataRole.UserRole
SMALL = 0.88
DOT = 9.0  # px
MIDDLE = int(Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap)
Index = QModelIndex | QPersistentModelIndex


class CellPainter(QStyledItemDelegate):
    """Value and dot above, range and n below; a word alone and a gap take the height of both."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """The cell on its line, with a frame where it is chosen."""
        tokens = tokens_now()
        rect = QRectF(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(rect, QColor(tokens.sheet))
        painter.setPen(QPen(QColor(tokens.line), 1))
        foot = rect.adjusted(0, 0, 0, -0.5)  # on its pixels, as the line beside it
        painter.drawLine(foot.bottomLeft(), foot.bottomRight())
        words = index.data(WORDS)
        if isinstance(words, CellWords):
            inner = rect.adjusted(Space.S, Space.XS, -Space.S, -Space.XS)
            if words.origin is None:
                _paint_gap(painter, inner, words.below, option.font)
            else:
                _paint_number(painter, inner, words, words.origin, option.font)
            if option.state & QStyle.StateFlag.State_Selected:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(tokens.accent), 2))
                painter.drawRoundedRect(rect.adjusted(1.5, 1.5, -1.5, -1.5), 5, 5)
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """The table says how high its rows are."""
        return QSize(120, 40)


def _paint_number(painter: QPainter, inner: QRectF, words: CellWords, origin: Origin, plain: QFont) -> None:
    bold = QFont(plain)
    bold.setBold(True)
    painter.setFont(bold)
    painter.setPen(QColor(tokens_now().ink))
    beside, line = inner.adjusted(DOT + Space.S, 0, 0, 0), painter.fontMetrics().height()
    high = line if words.below else inner.height()
    draw_origin(painter, inner.x(), inner.y() + (high - DOT) / 2, origin)
    if words.below:
        painter.drawText(beside, int(Qt.AlignmentFlag.AlignTop), words.value)
        _paint_below(painter, beside.adjusted(0, line, 0, 0), words.below, plain)
    else:  # a kind of medium, which may need two lines
        painter.drawText(beside, MIDDLE, _cut(painter, words.value, beside.toRect()))


def _paint_below(painter: QPainter, room: QRectF, below: str, plain: QFont) -> None:
    _write_small(painter, plain)
    metrics = painter.fontMetrics()
    if metrics.horizontalAdvance(below) > room.width():
        below = below.rpartition(", ")[0] or below  # how many of what: the panel says it, too
    text = metrics.elidedText(below, Qt.TextElideMode.ElideRight, int(room.width()))
    painter.drawText(room, int(Qt.AlignmentFlag.AlignTop), text)


def _paint_gap(painter: QPainter, inner: QRectF, words: str, plain: QFont) -> None:
    _write_small(painter, plain)
    painter.drawText(inner, MIDDLE, _cut(painter, words, inner.toRect()))


def _write_small(painter: QPainter, plain: QFont) -> None:
    small = QFont(plain)
    small.setPointSizeF(plain.pointSizeF() * SMALL)
    painter.setFont(small)
    painter.setPen(QColor(tokens_now().soft_ink))


def _cut(painter: QPainter, text: str, room: QRect) -> str:
    """As many words as fit, in the painter's letters."""
    words, shown = text.split(" "), text
    while len(words) > 1 and painter.fontMetrics().boundingRect(room, MIDDLE, shown).height() > room.height():
        words.pop()
        shown = " ".join(words) + "…"
    return shown


def draw_origin(painter: QPainter, x: float, y: float, origin: Origin) -> None:
    """The dot of a number's source, 9 px."""
    tokens = tokens_now()
    box = QRectF(x + 0.5, y + 0.5, DOT - 1, DOT - 1)
    painter.save()
    painter.setPen(QPen(QColor(tokens.ink), 1.5))
    full = QColor(tokens.accent) if origin is Origin.MEASURED else QColor(tokens.calm)
    painter.setBrush(full if origin in (Origin.MEASURED, Origin.TYPED) else Qt.BrushStyle.NoBrush)
    if origin is Origin.TYPED:
        painter.drawRect(box)
    elif origin is Origin.GUESS:
        half = box.width() / 2 + 0.5
        corners = (QPointF(0, -half), QPointF(half, 0), QPointF(0, half), QPointF(-half, 0))
        painter.drawPolygon(QPolygonF([box.center() + one for one in corners]))
    else:
        painter.drawEllipse(box)
    painter.restore()
