"""Tile painter: one tray as a tile, the picture above, five words and a growth line below.

In    a `Standing`, its thumbnail, a rectangle
Out   ink on the screen; the size that a tile needs at the text size of now
Not   where the tile stands (`shelves.py`), where the picture comes from (`photo/thumbnails.py`)
"""

from collections import OrderedDict
from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import (
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    QSizeF,
    Qt,
)
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetrics,
    QPainter,
    QPainterPath,
    QPen,
    QPixmap,
    QPolygonF,
    QTransform,
)
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from data.records import LookKind
from gui.bench.rack import Standing
from gui.bench.shelves import TileSize
from gui.bench.tilemodel import STANDING, coverage_words, day_words
from gui.style.marks import draw_mark, kind_words, short_kind_words, urgency_colour
from gui.style.palette import GAP, RADIUS, Space, tokens_now
from gui.style.tokens import Tokens

__all__ = ["TilePainter", "kind_within", "names_within", "tile_size"]

LEAST_COLUMNS_OF_TEXT = 19  # letters that a tile must have room for beside each other
TICK = 22.0  # px
MOST_FITTED = 200  # of at most 260 x 130 px: 27 MB
GROWTH_SHARE = 0.34  # of the tile's width
LEAST_GROWTH = 24  # px, of the line of growth; less of it tells nothing
BESIDE_MARK = Space.XS + 1  # px
BETWEEN = " · "  # crop and medium


def tile_size(font: QFont) -> TileSize:
    """What a tile needs at this text size."""
    metrics, bold = QFontMetrics(font), QFontMetrics(_bold(font, 1.1))
    least = max(148, metrics.averageCharWidth() * LEAST_COLUMNS_OF_TEXT)
    return TileSize(
        least_width=least,
        most_width=max(260, 2 * least),
        text_height=Space.S + bold.height() + 2 * metrics.height() + Space.S + Space.XS,
        head_height=metrics.height() + Space.L + Space.XS,
        gap=Space.M,
    )


def _bold(font: QFont, factor: float = 1.0) -> QFont:
    bold = QFont(font)
    bold.setBold(True)
    bold.setPointSizeF(font.pointSizeF() * factor)
    return bold


class TilePainter(QStyledItemDelegate):
    """Draws tiles; pictures are asked of `picture_of`, which answers at once."""

    picture_of: Callable[[Path], QPixmap | None] | None = None

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._fitted_pictures: OrderedDict[tuple[int, int, float], QPixmap] = OrderedDict()

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Draw one tile into `option.rect`."""
        standing = index.data(STANDING)
        if not isinstance(standing, Standing):
            return
        t = tokens_now()
        box: QRect = option.rect
        state = option.state
        hovered = bool(state & QStyle.StateFlag.State_MouseOver)
        focused = bool(state & QStyle.StateFlag.State_HasFocus)
        painter.save()
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.SmoothPixmapTransform)
        frame = QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5)
        painter.setPen(QPen(QColor(t.soft_ink if hovered else t.line), 1))
        painter.setBrush(QColor(t.raised if hovered else t.sheet))
        painter.drawRoundedRect(frame, RADIUS, RADIUS)
        picture = QRect(box.x(), box.y(), box.width(), box.width() // 2)
        self._picture(painter, picture, standing, t)
        below = QRect(box.x(), picture.bottom() + 1, box.width(), box.bottom() - picture.bottom())
        self._words(painter, below.adjusted(Space.M, Space.S, -Space.M, -Space.S), option.font, standing, t)
        if state & QStyle.StateFlag.State_Selected:
            _draw_tick(painter, QPointF(box.topLeft()) + QPointF(Space.S, Space.S), t)
        if focused:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(t.accent), 3))
            painter.drawRoundedRect(QRectF(box).adjusted(1.5, 1.5, -1.5, -1.5), RADIUS, RADIUS)
        painter.restore()

    def _picture(self, painter: QPainter, box: QRect, standing: Standing, t: Tokens) -> None:
        thumbnail = standing.tile.thumbnail
        picture = self.picture_of(thumbnail) if thumbnail is not None and self.picture_of else None
        if picture is not None:
            ratio = painter.device().devicePixelRatioF()
            painter.drawPixmap(box.topLeft(), self._fitted(picture, box.size(), ratio))
            return
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.ground))
        painter.drawPath(_rounded_above(_inside_the_frame(box.size()).translated(QPointF(box.topLeft()))))
        if thumbnail is None:
            painter.setPen(QColor(t.soft_ink))
            words = QCoreApplication.translate("Tile", "no photo yet")
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, words)

    def _fitted(self, picture: QPixmap, size: QSize, ratio: float) -> QPixmap:
        """The picture in the size of the tile, corners rounded; drawn once, it was half of each frame."""
        key = (picture.cacheKey(), size.width(), ratio)
        fitted = self._fitted_pictures.get(key)
        if fitted is None:
            fitted = _fit(picture, size, ratio)
            self._fitted_pictures[key] = fitted
            if len(self._fitted_pictures) > MOST_FITTED:
                self._fitted_pictures.popitem(last=False)
        else:
            self._fitted_pictures.move_to_end(key)
        return fitted

    def _words(self, painter: QPainter, box: QRect, font: QFont, standing: Standing, t: Tokens) -> None:
        tile, bold = standing.tile, _bold(font, 1.1)
        metrics, bold_metrics = QFontMetrics(font), QFontMetrics(bold)
        left, right = Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight
        first = QRect(box.x(), box.y(), box.width(), bold_metrics.height())
        number = coverage_words(standing)
        painter.setFont(bold)
        painter.setPen(QColor(t.ink))
        painter.drawText(first, right, number)
        room = first.width() - bold_metrics.horizontalAdvance(number) - GAP
        painter.drawText(first, left, bold_metrics.elidedText(tile.code, Qt.TextElideMode.ElideMiddle, room))

        painter.setFont(font)
        second = QRect(box.x(), first.bottom() + 1, box.width(), metrics.height())
        painter.setPen(QColor(t.soft_ink))
        painter.drawText(second, left, names_within(tile.crop, tile.medium, metrics, second.width()))

        third = QRect(box.x(), second.bottom() + 1, box.width(), metrics.height())
        growth = QRect(third)
        room = third.width() - _state_width(standing, metrics) - GAP  # the words go first
        across = min(int(third.width() * GROWTH_SHARE), room)
        growth.setLeft(third.right() - across + 1)
        if across >= LEAST_GROWTH and draw_growth(painter, QRectF(growth), tile.growth, t):
            third.setRight(growth.left() - GAP)
        self._state(painter, third, metrics, standing, t)

    def _state(
        self, painter: QPainter, box: QRect, metrics: QFontMetrics, standing: Standing, t: Tokens
    ) -> None:
        """The day, or what needs a look: mark, words, colour."""
        left = Qt.AlignmentFlag.AlignLeft
        look = standing.look
        if look is None:
            painter.setPen(QColor(t.soft_ink))
            painter.drawText(box, left, day_words(standing))
            return
        side = metrics.ascent()
        top = box.y() + (box.height() - side) / 2
        draw_mark(painter, QRectF(box.x(), top, side, side), look.urgency, t)
        words = box.adjusted(side + BESIDE_MARK, 0, 0, 0)
        painter.setPen(QColor(urgency_colour(look.urgency, t)))
        painter.drawText(words, left, kind_within(look.what, metrics, words.width()))


def names_within(crop: str, medium: str, metrics: QFontMetrics, room: int) -> str:
    """Crop and medium in so many px: where both are long each keeps its half, so that both are told."""
    wide = metrics.horizontalAdvance
    left = room - wide(BETWEEN)
    half = left // 2
    of_crop = max(half, left - wide(medium))
    of_medium = max(half, left - wide(crop))
    end = Qt.TextElideMode.ElideRight
    return BETWEEN.join((metrics.elidedText(crop, end, of_crop), metrics.elidedText(medium, end, of_medium)))


def kind_within(kind: LookKind, metrics: QFontMetrics, room: int) -> str:
    """What is wrong: in full, else in short, in so many px."""
    whole = kind_words(kind)
    words = whole if metrics.horizontalAdvance(whole) <= room else short_kind_words(kind)
    return metrics.elidedText(words, Qt.TextElideMode.ElideRight, room)


def _state_width(standing: Standing, metrics: QFontMetrics) -> int:
    """What the last line's words take with their mark, px."""
    if standing.look is None:
        return metrics.horizontalAdvance(day_words(standing))
    return metrics.ascent() + BESIDE_MARK + metrics.horizontalAdvance(kind_words(standing.look.what))


def draw_growth(painter: QPainter, box: QRectF, growth: Sequence[tuple[int, float]], t: Tokens) -> bool:
    """Coverage over the days, 0 to 100 %, as a line that ends in a point; False for under two days."""
    if len(growth) < 2:
        return False
    first, last = growth[0][0], growth[-1][0]
    field = box.adjusted(1, 3, -4, -3)
    points = [
        QPointF(
            field.left() + field.width() * (day - first) / max(1, last - first),
            field.bottom() - field.height() * min(100.0, max(0.0, coverage)) / 100,
        )
        for day, coverage in growth
    ]
    painter.setPen(QPen(QColor(t.line), 1))
    painter.drawLine(field.bottomLeft(), field.bottomRight())
    painter.setBrush(Qt.BrushStyle.NoBrush)
    pen = QPen(QColor(t.accent), 2)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.drawPolyline(QPolygonF(points))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(t.accent))
    painter.drawEllipse(points[-1], 3, 3)
    return True


def _fit(picture: QPixmap, size: QSize, ratio: float) -> QPixmap:
    fitted = QPixmap(size * ratio)
    fitted.setDevicePixelRatio(ratio)
    fitted.fill(Qt.GlobalColor.transparent)
    brush = QBrush(picture)
    brush.setTransform(QTransform.fromScale(size.width() / picture.width(), size.height() / picture.height()))
    painter = QPainter(fitted)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.SmoothPixmapTransform)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(brush)
    painter.drawPath(_rounded_above(_inside_the_frame(size)))
    painter.end()
    return fitted


def _inside_the_frame(size: QSize) -> QRectF:
    return QRectF(1, 1, size.width() - 2, size.height() - 1)


def _rounded_above(box: QRectF) -> QPainterPath:
    """A rectangle with its two upper corners rounded."""
    r = RADIUS - 1.0
    path = QPainterPath(box.bottomLeft())
    path.lineTo(box.left(), box.top() + r)
    path.quadTo(box.topLeft(), QPointF(box.left() + r, box.top()))
    path.lineTo(box.right() - r, box.top())
    path.quadTo(box.topRight(), QPointF(box.right(), box.top() + r))
    path.lineTo(box.bottomRight())
    path.closeSubpath()
    return path


def _draw_tick(painter: QPainter, corner: QPointF, t: Tokens) -> None:
    """A tick in a square: this tray is chosen."""
    square = QRectF(corner, QSizeF(TICK, TICK))
    painter.setPen(QPen(QColor(t.on_accent), 1))
    painter.setBrush(QColor(t.accent))
    painter.drawRoundedRect(square, 4, 4)
    painter.setPen(QPen(QColor(t.on_accent), 2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
    x, y, part = square.x(), square.y(), TICK / 10
    painter.drawPolyline(
        [QPointF(x + 2.5 * part, y + 5.2 * part), QPointF(x + 4.3 * part, y + 7 * part),
         QPointF(x + 7.6 * part, y + 3 * part)]
    )  # fmt: skip
