"""Day strip: the days of one tray side by side, each with its top view and coverage.

In    `Day`s, which day it is today (None: the tray has ended); thumbnails that come when they are asked for
Out   `day_chosen` with the photo's id, by click or by the left and right keys
Not   what is shown of the day (`screen.py`)
"""

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPoint,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QPainterPath, QPen, QResizeEvent
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from data.records import Day
from gui.language.age import age_words
from gui.language.plainhint import plain_hint
from gui.language.spoken import spoken
from gui.language.words import translate
from gui.notes.numberwords import when
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import RADIUS, Space, tokens_now

__all__ = ["DayStrip"]

Index = QModelIndex | QPersistentModelIndex
DAY = Qt.ItemDataRole.UserRole + 1
PICTURE = QSize(104, 52)


class DayModel(QAbstractListModel):
    """A column a day."""

    def __init__(self, thumbnails: Thumbnails, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._days: tuple[Day, ...] = ()
        self.today: int | None = None
        self._thumbnails = thumbnails
        thumbnails.arrived.connect(self._pictures_came)

    def show(self, days: Sequence[Day], today: int | None) -> None:
        """Show these."""
        if (tuple(days), today) != (self._days, self.today):
            self.beginResetModel()
            self._days, self.today = tuple(days), today
            self.endResetModel()

    @property
    def lacks_today(self) -> bool:
        """Whether the tray grows and has no photo of today yet: the place for it is kept free."""
        return self.today is not None and not any(day.day == self.today for day in self._days)

    @property
    def count(self) -> int:
        """Days that can be chosen."""
        return len(self._days)

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        """How many."""
        return 0 if parent.isValid() else len(self._days) + self.lacks_today

    def flags(self, index: Index) -> Qt.ItemFlag:
        """The place for today's photo cannot be chosen."""
        return super().flags(index) if index.row() < self.count else Qt.ItemFlag.NoItemFlags

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Words, and the picture when it is there."""
        if index.row() >= self.count:
            read_out = role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole)
            return self.tr("today, no photo yet") if read_out else None
        day = self._days[index.row()]
        if role == DAY:
            return day
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            words = f"{self.day_words(day)}, {self.coverage_words(day)}"
            return words if day.reason is None else f"{words}: {spoken(day.reason)}"
        if role == Qt.ItemDataRole.ToolTipRole:
            words = f"{self.day_words(day)}, {when(day.taken_at)}"
            return plain_hint(words if day.reason is None else f"{words}\n{spoken(day.reason)}")
        if role == Qt.ItemDataRole.DecorationRole and day.pictures is not None:
            return self._thumbnails.get(day.pictures.thumbnail)
        return None

    def day_words(self, day: Day) -> str:
        """Which day."""
        if day.day == self.today:
            return self.tr("today")
        return age_words(day.day)

    def coverage_words(self, day: Day) -> str:
        """Its coverage, or that it has none."""
        if day.score is None or day.score.coverage is None:
            return self.tr("not used")
        return f"{day.score.coverage:.0f} %"

    @Slot()
    def _pictures_came(self) -> None:
        if self._days:
            self.dataChanged.emit(self.index(0), self.index(len(self._days) - 1))


class DayDelegate(QStyledItemDelegate):
    """Picture above, day and coverage below; the chosen one is framed."""

    high = PICTURE.height()  # of the picture; nought where there is room for words alone

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Grows with the text."""
        metrics = option.fontMetrics
        width = max(PICTURE.width(), metrics.horizontalAdvance("day 00   100 %") + Space.S)
        return QSize(width + Space.M, self.high + metrics.height() + Space.L)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One day."""
        day: Day | None = index.data(DAY)
        tokens = tokens_now()
        box: QRect = option.rect
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, True)
        if chosen:
            painter.setPen(QPen(QColor(tokens.accent), 2.0))
            painter.setBrush(QColor(tokens.raised))
            painter.drawRoundedRect(QRectF(box).adjusted(2, 2, -2, -2), RADIUS, RADIUS)
        if self.high:
            self._paint_picture(painter, index, box, day)
        self._paint_words(painter, index, box, day, chosen)
        painter.restore()

    def _paint_picture(self, painter: QPainter, index: Index, box: QRect, day: Day | None) -> None:
        frame = QRect(box.center().x() - PICTURE.width() // 2, box.y() + Space.S, *PICTURE.toTuple())
        picture = index.data(Qt.ItemDataRole.DecorationRole)
        painter.setPen(Qt.PenStyle.NoPen)
        if picture is None:
            self._paint_placeholder(painter, frame, day)
            return
        clip = QPainterPath()
        clip.addRoundedRect(QRectF(frame), 4, 4)
        painter.setClipPath(clip)
        painter.drawPixmap(frame, picture)
        painter.setClipping(False)

    def _paint_placeholder(self, painter: QPainter, frame: QRect, day: Day | None) -> None:
        """Dashed where a photo is still to come; struck through, with the reason, where it was refused."""
        tokens = tokens_now()
        refused = day is not None and day.reason is not None and day.score is None
        painter.setBrush(QColor(tokens.raised))
        painter.setPen(
            QPen(QColor(tokens.soft_ink), 1.0, Qt.PenStyle.SolidLine if refused else Qt.PenStyle.DashLine)
        )
        painter.drawRoundedRect(QRectF(frame).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4)
        if refused and day is not None:
            painter.setPen(QPen(QColor(tokens.line), 2.0))
            painter.drawLine(frame.bottomLeft() + QPoint(6, -6), frame.topRight() + QPoint(-6, 6))
            small = QFont(painter.font())
            small.setPointSizeF(0.85 * small.pointSizeF())
            painter.save()
            painter.setFont(small)
            painter.setPen(QColor(tokens.ink))
            words = frame.adjusted(4, 2, -4, -2)
            painter.setClipRect(words)
            centred = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            fits = (
                QFontMetrics(small).boundingRect(words, centred, spoken(day.reason)).height()
                <= words.height()
            )
            top = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
            painter.drawText(words, centred if fits else top, spoken(day.reason))
            painter.restore()

    def _paint_words(
        self, painter: QPainter, index: Index, box: QRect, day: Day | None, chosen: bool
    ) -> None:
        tokens = tokens_now()
        model = index.model()
        assert isinstance(model, DayModel)
        words = QRect(box.x() + Space.S, box.y() + self.high + Space.S + 2, box.width() - 2 * Space.S, 0)
        font = QFont(painter.font())
        font.setBold(chosen)
        painter.setFont(font)
        words.setHeight(QFontMetrics(font).height())
        painter.setPen(QColor(tokens.ink))
        if day is None:
            painter.drawText(words, Qt.AlignmentFlag.AlignLeft, translate("DayModel", "today"))
            return
        painter.drawText(words, Qt.AlignmentFlag.AlignLeft, model.day_words(day))
        if day.day == model.today:
            under = words.adjusted(0, 0, 0, 3)
            wide = QFontMetrics(font).horizontalAdvance(model.day_words(day))
            painter.fillRect(QRect(under.left(), under.bottom() - 1, wide, 2), QColor(tokens.accent))
        font.setBold(False)
        painter.setFont(font)
        painter.setPen(QColor(tokens.soft_ink if day.score else tokens.notice))
        painter.drawText(words, Qt.AlignmentFlag.AlignRight, model.coverage_words(day))


class DayStrip(QListView):
    """Left and right go from day to day."""

    day_chosen = Signal(int)  # photo id

    def __init__(self, thumbnails: Thumbnails, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._days = DayModel(thumbnails, self)
        self._showing = False
        self.setModel(self._days)
        self._painter = DayDelegate(self)
        self.setItemDelegate(self._painter)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(False)
        self.setUniformItemSizes(True)
        self.setHorizontalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Days of the tray"))
        self.selectionModel().currentChanged.connect(self._current_changed)
        self.fit_to_text()

    def fit_to_text(self) -> None:
        """As high as one day and the bar below."""
        high = self._painter.high + self.fontMetrics().height() + Space.L
        self.setFixedHeight(high + self.horizontalScrollBar().sizeHint().height() + 4)

    def show_pictures(self, shown: bool) -> None:
        """Without them the picture of the tray is the larger."""
        high = PICTURE.height() if shown else 0
        if high != self._painter.high:
            self._painter.high = high
            self.doItemsLayout()
            self.fit_to_text()

    def show_days(self, days: Sequence[Day], chosen: int, today: int | None = None) -> None:
        """Show these, one of them chosen."""
        self._showing = True
        self._days.show(days, today)
        index = self._days.index(chosen) if chosen >= 0 else QModelIndex()
        self.setCurrentIndex(index)
        if index.isValid():
            self.scrollTo(index)
        self._showing = False

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The chosen day stays in sight."""
        super().resizeEvent(event)
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Only from day to day: digits, Space and the page keys belong to the sheet."""
        if event.key() in (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Home, Qt.Key.Key_End):
            super().keyPressEvent(event)
        else:
            event.ignore()

    def step(self, days: int) -> None:
        """So many days on, as far as there are any."""
        row = min(self._days.count - 1, max(0, self.currentIndex().row() + days))
        if row >= 0:
            self.setCurrentIndex(self._days.index(row))

    @Slot(QModelIndex, QModelIndex)
    def _current_changed(self, current: QModelIndex, before: QModelIndex) -> None:
        day: Day | None = current.data(DAY) if current.isValid() else None
        if not self._showing and day is not None:
            self.day_chosen.emit(int(day.photo_id))
