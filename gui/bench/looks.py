"""Looks: the look list on the Bench, most urgent first.

In    `Look`s in their order
Out   `opened` with a `Look`, by click or Enter; the line that is chosen, and keys pressed on it
Not   what needs a look (`data.watch`), the caution that goes with mold (`screen.py` shows it below the list)

Each row: shape, word and colour of its urgency; the tray; what it is; the numbers; what to do first.
"""

from collections.abc import Sequence
from typing import Any, NamedTuple

from PySide6.QtCore import (
    QAbstractListModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from data.records import Look, LookKind
from gui.language.spoken import DAY, day_words, spoken
from gui.style.marks import draw_mark, kind_words, urgency_colour, urgency_words
from gui.style.palette import RACK_TARGET, RADIUS, Space, set_role, tokens_now
from gui.style.unbroken import unbroken

__all__ = ["LookList", "LookModel"]

LOOK = Qt.ItemDataRole.UserRole + 1
Index = QModelIndex | QPersistentModelIndex
LEAST_LETTERS = 75  # of a line of words beside the columns
WRAPPED = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap


def first_words(look: Look) -> str:
    """What to do first."""
    return QCoreApplication.translate("Look", "First: {what}").format(what=spoken(look.first))


def opens_words(look: Look) -> str:
    """Where a click leads."""
    if look.what is LookKind.UNMATCHED:
        return QCoreApplication.translate("Look", "Click or Enter: go to Intake")
    return QCoreApplication.translate("Look", "Click or Enter: open the tray sheet")


class LookModel(QAbstractListModel):
    """A row a look."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._looks: tuple[Look, ...] = ()

    def show(self, looks: Sequence[Look]) -> None:
        """Show these."""
        if tuple(looks) != self._looks:
            self.beginResetModel()
            self._looks = tuple(looks)
            self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        """How many."""
        return 0 if parent.isValid() else len(self._looks)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """One thing of one look."""
        if not index.isValid():
            return None
        look = self._looks[index.row()]
        if role == LOOK:
            return look
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return look.code
            case Qt.ItemDataRole.AccessibleTextRole:
                parts = (look.code, kind_words(look.what), urgency_words(look.urgency))
                return f"{', '.join(parts)}. {spoken(look.sentence)} {first_words(look)}"
            case Qt.ItemDataRole.ToolTipRole:
                since = QCoreApplication.translate("Look", "Since {day}")
                day = day_words(look.since, DAY)
                return f"{since.format(day=day)}\n{opens_words(look)}"
            case _:
                return None


class LookPainter(QStyledItemDelegate):
    """Draws a row in columns: urgency, tray, what it is, then the words, as many lines as they need."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """High enough for the words in the width of the list, and for a wet finger."""
        view = self.parent()
        width = view.viewport().width() if isinstance(view, QListView) else option.rect.width()
        look = index.data(LOOK)
        if not isinstance(look, Look):
            return QSize(width, RACK_TARGET)
        words = columns(QRect(0, 0, width, 10), option.font).words
        sentence, first = heights(look, words.width(), option.font)
        return QSize(width, max(RACK_TARGET, words.y() + sentence + first + Space.S + 1))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw one row."""
        look = index.data(LOOK)
        if not isinstance(look, Look):
            return
        t, font = tokens_now(), option.font
        row = QRect(option.rect)
        state = option.state
        painter.save()
        self._ground(painter, row, index, state)
        places = columns(row, font)
        mark, code, what, words = places.mark, places.code, places.what, places.words
        bold = QFont(font)
        bold.setBold(True)
        metrics, bold_metrics = QFontMetrics(font), QFontMetrics(bold)
        line = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
        side = metrics.ascent() + 1
        draw_mark(painter, QRectF(mark.x(), mark.y() + 1, side, side), look.urgency, t)
        painter.setFont(bold)
        painter.setPen(QColor(urgency_colour(look.urgency, t)))
        painter.drawText(mark.adjusted(side + Space.S, 0, 0, 0), line, urgency_words(look.urgency))
        painter.setPen(QColor(t.ink))
        elide = Qt.TextElideMode.ElideRight
        painter.drawText(code, line, bold_metrics.elidedText(look.code, elide, code.width()))
        painter.drawText(what, int(WRAPPED), kind_words(look.what))
        painter.setFont(font)
        painter.drawText(words, int(WRAPPED), unbroken(spoken(look.sentence)))
        sentence, _ = heights(look, words.width(), font)
        painter.setPen(QColor(t.soft_ink))
        painter.drawText(words.adjusted(0, sentence, 0, 0), int(WRAPPED), first_words(look))
        painter.restore()

    def _ground(self, painter: QPainter, row: QRect, index: Index, state: QStyle.StateFlag) -> None:
        t = tokens_now()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if state & QStyle.StateFlag.State_MouseOver:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(t.raised))
            painter.drawRoundedRect(QRectF(row).adjusted(2, 2, -2, -2), RADIUS - 2, RADIUS - 2)
        if index.row() > 0:
            painter.setPen(QPen(QColor(t.line), 1))
            painter.drawLine(row.left() + Space.L, row.top(), row.right() - Space.L, row.top())
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(t.accent), 2))
            painter.drawRoundedRect(QRectF(row).adjusted(3, 3, -3, -3), RADIUS - 2, RADIUS - 2)


class Columns(NamedTuple):
    """Places in a row: urgency, tray, what it is, then the words."""

    mark: QRect
    code: QRect
    what: QRect
    words: QRect


def columns(row: QRect, font: QFont) -> Columns:
    """As wide as the letters need; what it is stands above the words where these lack room beside it."""
    metrics = QFontMetrics(font)
    letter, line = metrics.averageCharWidth(), metrics.height()
    x, top = row.x() + Space.L, row.y() + Space.S
    right, bottom = row.right() - Space.L, row.bottom()
    mark, code, what = letter * 11 + Space.S, letter * 8, letter * 17
    first = QRect(x, top, mark - Space.S, line)
    second = QRect(x + mark, top, code - Space.S, line)
    x += mark + code
    if right - x - what < letter * LEAST_LETTERS:
        return Columns(
            first, second, QRect(x, top, right - x, line), QRect(x, top + line, right - x, bottom - top)
        )
    third = QRect(x, top, what - Space.S, 2 * line)  # beside the sentence and what to do first
    return Columns(first, second, third, QRect(x + what, top, right - x - what, bottom - top))


def heights(look: Look, width: int, font: QFont) -> tuple[int, int]:
    """Heights of the sentence and of what to do first, wrapped to a width, px."""
    metrics = QFontMetrics(font)
    room = QRect(0, 0, max(1, width), 10_000)
    return (
        metrics.boundingRect(room, int(WRAPPED), unbroken(spoken(look.sentence))).height(),
        metrics.boundingRect(room, int(WRAPPED), first_words(look)).height(),
    )


class LookList(QListView):
    """The list; as high as its rows, up to a limit that the Bench gives."""

    opened = Signal(object)  # Look
    look_changed = Signal(object)  # the chosen `Look`, or None
    seen_wanted = Signal()  # by key, for the chosen one
    tomorrow_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._looks = LookModel(self)
        self.setModel(self._looks)
        self.selectionModel().currentChanged.connect(self._tell_chosen)
        self.setItemDelegate(LookPainter(self))
        set_role(self, "plain")
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(self.ScrollMode.ScrollPerPixel)
        self.setSelectionMode(self.SelectionMode.SingleSelection)
        self.setMouseTracking(True)
        self.clicked.connect(self._choose)

    def show_looks(self, looks: Sequence[Look]) -> None:
        """Show these rows; the one that was chosen stays so where it is still there, else the first is."""
        before = self.chosen
        self._looks.show(looks)
        if looks and not self.currentIndex().isValid():
            same = [row for row, look in enumerate(looks) if before is not None and _same(look, before)]
            self.setCurrentIndex(self._looks.index(same[0] if same else 0))
        self.look_changed.emit(self.chosen)

    @property
    def chosen(self) -> Look | None:
        """The line on which the focus is."""
        look = self.currentIndex().data(LOOK)
        return look if isinstance(look, Look) else None

    @Slot()
    def _tell_chosen(self) -> None:
        self.look_changed.emit(self.chosen)

    def height_of_rows(self, most: int | None = None) -> int:
        """Height of the first `most` rows (all if None), px."""
        count = self._looks.rowCount()
        shown = count if most is None else min(most, count)
        return sum(self.sizeHintForRow(row) for row in range(shown))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Words wrap anew in the new width."""
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.scheduleDelayedItemsLayout()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens the tray sheet, S says seen, T tomorrow; Ctrl+S, a habit, says nothing."""
        plain = event.modifiers() in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier)
        plain = plain and not event.isAutoRepeat()  # a key held down would put away line after line
        match event.key():
            case Qt.Key.Key_Return | Qt.Key.Key_Enter:
                self._choose(self.currentIndex())
            case Qt.Key.Key_S if plain:
                self.seen_wanted.emit()
            case Qt.Key.Key_T if plain:
                self.tomorrow_wanted.emit()
            case _:
                super().keyPressEvent(event)

    @Slot(QModelIndex)
    def _choose(self, index: QModelIndex) -> None:
        look = index.data(LOOK)
        if isinstance(look, Look):
            self.opened.emit(look)


def _same(one: Look, other: Look) -> bool:
    return (one.tray_id, one.what) == (other.tray_id, other.what)
