"""Photo table: a row a photo with its thumbnail, its name, when it was taken, and its fate in words.

In    `IntakeRow`s; thumbnails that come when they are asked for
Out   an item model and the delegate that paints it
Not   which rows there are (`view.py`), what is done with the current one (`screen.py`)
"""

from collections.abc import Sequence
from datetime import date
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    QSizeF,
    Qt,
    Slot,
)
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPainterPath, QPen, QPolygonF, QTextLayout
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from gui.intake.view import IntakeRow, Kind
from gui.language.plainhint import plain_hint
from gui.language.spoken import DAY_MOMENT_SHORT, MOMENT, day_words
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import RACK_TARGET, Space, tokens_now
from gui.style.tokens import Tokens
from gui.style.unbroken import unbroken

__all__ = ["FateDelegate", "PhotoDelegate", "PhotoTable"]

Index = QModelIndex | QPersistentModelIndex
ROW = Qt.ItemDataRole.UserRole + 1
PHOTO, FATE = range(2)
THUMBNAIL = QSize(80, 40)  # top views are twice as long as wide


class PhotoTable(QAbstractTableModel):
    """The rows; `show` tells the view only what has changed."""

    def __init__(self, thumbnails: Thumbnails, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[IntakeRow, ...] = ()
        self._thumbnails = thumbnails
        thumbnails.arrived.connect(self._pictures_came)

    def show(self, rows: Sequence[IntakeRow]) -> None:
        """Show these; where only the words of rows changed, selection and place stay."""
        new = tuple(rows)
        if [row.name for row in new] == [row.name for row in self._rows]:
            changed = [k for k, (a, b) in enumerate(zip(new, self._rows, strict=True)) if a != b]
            self._rows = new
            for row in changed:
                self.dataChanged.emit(self.index(row, 0), self.index(row, FATE))
        else:
            self.beginResetModel()
            self._rows = new
            self.endResetModel()

    def row(self, number: int) -> IntakeRow | None:
        """One of them."""
        return self._rows[number] if 0 <= number < len(self._rows) else None

    def number_of(self, row: IntakeRow) -> int:
        """Where the same photo stands now, -1 where it is gone."""
        for is_same in (_same_row, _same_photo, _same_file):
            for number, other in enumerate(self._rows):
                if is_same(row, other):
                    return number
        return -1

    def next_needing(self, after: int) -> int:
        """The next row that needs a person, from the top again after the last; -1 where there is none."""
        count = len(self._rows)
        following = ((after + step) % count for step in range(1, count + 1))
        return next((number for number in following if self._rows[number].needs_person), -1)

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        """How many photos."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        """Photo, what became of it."""
        return 0 if parent.isValid() else 2

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Heads of the columns."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return (self.tr("Photo"), self.tr("What became of it"))[section]
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Words for eyes and ears; the picture when it is there."""
        row = self.row(index.row())
        if row is None:
            return None
        if role == ROW:
            return row
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self._words(row, index.column())
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_hint(row.sentence if index.column() == FATE else row.name)
        if role == Qt.ItemDataRole.DecorationRole and index.column() == PHOTO and row.thumbnail is not None:
            return self._thumbnails.get(row.thumbnail)
        return None

    def _words(self, row: IntakeRow, column: int) -> str:
        if column == FATE:
            return unbroken(row.sentence)
        return row.name if row.taken_at is None else f"{row.name}, {taken(row)}"

    @Slot()
    def _pictures_came(self) -> None:
        if self._rows:
            last = self.index(len(self._rows) - 1, PHOTO)
            self.dataChanged.emit(self.index(0, PHOTO), last, [Qt.ItemDataRole.DecorationRole])


def _same_row(one: IntakeRow, other: IntakeRow) -> bool:
    return one.key == other.key  # first: a file that was brought in twice has two rows of one photo


def _same_photo(one: IntakeRow, other: IntakeRow) -> bool:
    return one.photo_id is not None and one.photo_id == other.photo_id


def _same_file(one: IntakeRow, other: IntakeRow) -> bool:
    """A file that has just got its fate has another key by then."""
    return one.name == other.name and Kind.WAITING in (one.kind, other.kind)


def taken(row: IntakeRow) -> str:
    """When the photo was taken, with the year where it is another one; empty where nobody knows yet."""
    if row.taken_at is None:
        return ""
    return day_words(row.taken_at, DAY_MOMENT_SHORT if row.taken_at.year == date.today().year else MOMENT)


class _Delegate(QStyledItemDelegate):
    """The ground of a cell, and its ink."""

    def paint_ground(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> QColor:
        """Selected rows in accent; a hairline below each row."""
        tokens = tokens_now()
        box: QRect = option.rect
        state: QStyle.StateFlag = option.state
        selected = bool(state & QStyle.StateFlag.State_Selected)
        painter.fillRect(box, QColor(tokens.accent if selected else tokens.sheet))
        painter.setPen(QColor(tokens.line))
        painter.drawLine(box.bottomLeft(), box.bottomRight())
        return QColor(tokens.on_accent if selected else tokens.ink)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Two lines of text, at least what a finger needs."""
        metrics: QFontMetrics = option.fontMetrics
        return QSize(60, max(RACK_TARGET + Space.M, 2 * metrics.height() + Space.M))


class PhotoDelegate(_Delegate):
    """Thumbnail and name."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """The picture's place stays empty until it has come."""
        painter.save()
        ink = self.paint_ground(painter, option, index)
        tokens = tokens_now()
        box: QRect = option.rect
        frame = QRect(box.x() + Space.S, box.center().y() - THUMBNAIL.height() // 2, 80, 40)
        picture = index.data(Qt.ItemDataRole.DecorationRole)
        if picture is None:
            painter.fillRect(frame, QColor(tokens.line))
        else:
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, True)
            painter.fillRect(frame, QColor(tokens.line))
            shown = QSizeF(picture.size()).scaled(QSizeF(frame.size()), Qt.AspectRatioMode.KeepAspectRatio)
            place = QRectF(QPointF(0, 0), shown)
            place.moveCenter(QRectF(frame).center())
            painter.drawPixmap(place, picture, QRectF(picture.rect()))
        words = box.adjusted(2 * Space.S + 80 + Space.XS, 0, -Space.S, 0)
        self._paint_words(painter, words, index.data(ROW), ink, QColor(tokens.soft_ink))
        painter.restore()

    def _paint_words(self, painter: QPainter, box: QRect, row: IntakeRow, ink: QColor, soft: QColor) -> None:
        """The name, and below it when the photo was taken."""
        metrics = painter.fontMetrics()
        line = metrics.height()
        when = taken(row)
        top = box.center().y() - (line if when else line // 2)
        painter.setPen(ink)
        name = metrics.elidedText(row.name, Qt.TextElideMode.ElideMiddle, box.width())
        painter.drawText(QRect(box.x(), top, box.width(), line), Qt.AlignmentFlag.AlignLeft, name)
        chosen = ink == QColor(tokens_now().on_accent)
        painter.setPen(ink if chosen else soft)
        below = QRect(box.x(), top + line, box.width(), line)
        painter.drawText(below, Qt.AlignmentFlag.AlignLeft, when)


class FateDelegate(_Delegate):
    """A mark of its own shape for each kind of fate, and the sentence on as many lines as the row has."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Mark and words."""
        row: IntakeRow | None = index.data(ROW)
        painter.save()
        ink = self.paint_ground(painter, option, index)
        box: QRect = option.rect
        if row is not None and index.column() == FATE:
            state: QStyle.StateFlag = option.state
            selected = bool(state & QStyle.StateFlag.State_Selected)
            mark = QRectF(box.x() + Space.S, box.center().y() - 7, 14, 14)
            draw_kind(painter, mark, row.kind, tokens_now(), ink if selected else None)
            box = box.adjusted(Space.S + 14 + Space.S, 2, -Space.S, -2)
        else:
            box = box.adjusted(Space.S, 2, -Space.S, -2)
        painter.setPen(ink)
        words = "\n".join(lines_of(str(index.data()), painter.font(), box.size()))
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter, words)
        painter.restore()


def lines_of(words: str, font: QFont, room: QSize) -> list[str]:
    """The words on as many lines as there is room for; the last one ends in dots where there are more."""
    metrics = QFontMetrics(font)
    most = max(1, room.height() // metrics.lineSpacing())
    layout = QTextLayout(words, font)
    layout.beginLayout()
    starts = []
    while (line := layout.createLine()).isValid():
        line.setLineWidth(room.width())
        starts.append(line.textStart())
    layout.endLayout()
    ends = [*starts[1:], len(words)]
    lines = [words[start:end].strip() for start, end in zip(starts, ends, strict=True)]
    if len(lines) > most:
        rest = words[starts[most - 1] :]
        lines = [*lines[: most - 1], metrics.elidedText(rest, Qt.TextElideMode.ElideRight, room.width())]
    return lines


def draw_kind(painter: QPainter, box: QRectF, kind: Kind, tokens: Tokens, ink: QColor | None = None) -> None:
    """Matched: a tick. Needs a person: a filled triangle. Not used: a cross. Else: a ring."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    painter.setBrush(Qt.BrushStyle.NoBrush)

    def pen(colour: str) -> QPen:
        return QPen(
            ink or QColor(colour),
            2.2,
            Qt.PenStyle.SolidLine,
            Qt.PenCapStyle.RoundCap,
            Qt.PenJoinStyle.RoundJoin,
        )

    def at(x: float, y: float) -> QPointF:
        return QPointF(box.x() + x * box.width(), box.y() + y * box.height())

    if kind in (Kind.STORED, Kind.KNOWN):
        painter.setPen(pen(tokens.accent if kind is Kind.STORED else tokens.soft_ink))
        tick = QPainterPath(at(0.08, 0.55))
        tick.lineTo(at(0.38, 0.85))
        tick.lineTo(at(0.95, 0.18))
        painter.drawPath(tick)
    elif kind is Kind.REFUSED:
        painter.setPen(pen(tokens.alarm))
        painter.drawLine(at(0.12, 0.12), at(0.88, 0.88))
        painter.drawLine(at(0.88, 0.12), at(0.12, 0.88))
    elif kind in (Kind.WAITING, Kind.LEFT_OUT):
        painter.setPen(pen(tokens.soft_ink))
        painter.drawEllipse(box.adjusted(2, 2, -2, -2))
    else:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(ink or QColor(tokens.notice))
        painter.drawPolygon(QPolygonF([at(0.5, 0.02), at(1.0, 0.95), at(0.0, 0.95)]))
