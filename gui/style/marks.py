"""Marks: how urgent something is, told by shape, word and colour at once.

In    an `Urgency`, a place to draw
Out   a filled triangle (now), an open triangle (today), a ring (soon), each in its token's colour
Not   the list of what is urgent (`data.watch`)
"""

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPolygonF

from data.records import LookKind, Urgency
from gui.style.tokens import Tokens

__all__ = ["draw_mark", "kind_words", "short_kind_words", "urgency_colour", "urgency_words"]

SHORT = {  # for a tile, where the longest languages have no room for more
    LookKind.SUSPECT: str(QT_TRANSLATE_NOOP("LookKindShort", "mold?")),
    LookKind.VANISHED: str(QT_TRANSLATE_NOOP("LookKindShort", "vanishes")),
    LookKind.STACK: str(QT_TRANSLATE_NOOP("LookKindShort", "warm and wet")),
    LookKind.PATCHY: str(QT_TRANSLATE_NOOP("LookKindShort", "patchy")),
    LookKind.UNMATCHED: str(QT_TRANSLATE_NOOP("LookKindShort", "confirm photo")),
    LookKind.UNUSABLE: str(QT_TRANSLATE_NOOP("LookKindShort", "photo unused")),
}


def urgency_colour(urgency: Urgency, tokens: Tokens) -> str:
    """The token for how soon."""
    return {Urgency.NOW: tokens.alarm, Urgency.TODAY: tokens.notice, Urgency.SOON: tokens.calm}[urgency]


def urgency_words(urgency: Urgency) -> str:
    """How soon, in the reader's language."""
    match urgency:
        case Urgency.NOW:
            return QCoreApplication.translate("Urgency", "now")
        case Urgency.TODAY:
            return QCoreApplication.translate("Urgency", "today")
        case Urgency.SOON:
            return QCoreApplication.translate("Urgency", "soon")


def kind_words(kind: LookKind) -> str:
    """What is wrong, in the reader's language; the words of the book are the source of the translation."""
    return QCoreApplication.translate("LookKind", str(kind))


def short_kind_words(kind: LookKind) -> str:
    """The same in a word or two, where there is no room for all of them."""
    short = SHORT.get(kind)
    return kind_words(kind) if short is None else QCoreApplication.translate("LookKindShort", short)


def draw_mark(painter: QPainter, box: QRectF, urgency: Urgency, tokens: Tokens) -> None:
    """Draw the shape of an urgency into a square box."""
    colour = QColor(urgency_colour(urgency, tokens))
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(colour, 2.0)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    inner = box.adjusted(1.5, 1.5, -1.5, -1.5)
    if urgency is Urgency.SOON:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(inner.adjusted(0.5, 0.5, -0.5, -0.5))
    else:
        painter.setBrush(QBrush(colour) if urgency is Urgency.NOW else QBrush(Qt.BrushStyle.NoBrush))
        top = QPointF(inner.center().x(), inner.top())
        painter.drawPolygon(QPolygonF([top, inner.bottomRight(), inner.bottomLeft()]))
    painter.restore()
