"""Note table: what was measured and done, newest first, each row to be corrected or taken out.

In    `NoteRow`s
Out   `corrected`, `moved`, `renoted` with a row and its new value, time or note; `deleted` with a row
Not   keeping it (`traysheet/growthpage.py`), adding (`entry.py`)
"""

from collections.abc import Sequence
from datetime import datetime
from math import isfinite
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QSizePolicy,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from gui.language.direction import own_direction
from gui.language.plainhint import plain_hint
from gui.language.spoken import DAY_MOMENT_SHORT, day_words, in_figures
from gui.notes.moments import MomentEdit, moment_in, show_moment
from gui.notes.numberwords import when
from gui.notes.view import NoteRow
from gui.style.palette import TARGET

__all__ = ["NoteTable", "number_in"]

Index = QModelIndex | QPersistentModelIndex
WHEN, WHAT, VALUE, NOTE = range(4)
MOMENT = Qt.ItemDataRole.UserRole + 1
LEAST_LETTERS = 36  # of a note that is typed over


class NoteModel(QAbstractTableModel):
    """When, what, how much, a note; all but what it is can be typed over."""

    corrected = Signal(object, float)  # NoteRow, value
    renoted = Signal(object, str)
    moved = Signal(object, object)  # NoteRow, datetime

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.rows: tuple[NoteRow, ...] = ()

    def show(self, rows: Sequence[NoteRow]) -> None:
        """Show these."""
        self.beginResetModel()
        self.rows = tuple(rows)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        """How many."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        """Four."""
        return 0 if parent.isValid() else 4

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Words of a cell."""
        if not index.isValid():
            return None
        row = self.rows[index.row()]
        if role == MOMENT:
            return row.at
        if role == Qt.ItemDataRole.EditRole and index.column() == VALUE:
            return "" if row.value is None else in_figures(row.value)
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            value = "" if row.value is None else f"{in_figures(row.value)} {row.unit}"
            note = own_direction(row.note) if role == Qt.ItemDataRole.DisplayRole else row.note
            return (day_words(row.at, DAY_MOMENT_SHORT), row.what, value, note)[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole and index.column() in (WHEN, NOTE):
            return plain_hint(when(row.at) if index.column() == WHEN else row.note)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            value = "" if row.value is None else f" {in_figures(row.value)} {row.unit}"
            return f"{when(row.at)}, {row.what}{value} {row.note}".strip()
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() == VALUE:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Names of the columns."""
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return (self.tr("When"), self.tr("What"), self.tr("How much"), self.tr("Note"))[section]
        if role == Qt.ItemDataRole.TextAlignmentRole and section == VALUE:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return super().headerData(section, orientation, role)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """A reading's value, every time and every note can be typed over."""
        flags = super().flags(index)
        if not index.isValid():
            return flags
        row = self.rows[index.row()]
        if index.column() in (WHEN, NOTE) or (index.column() == VALUE and row.value is not None):
            flags |= Qt.ItemFlag.ItemIsEditable
        return flags

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """A person has typed over a cell; the table follows when the book has it."""
        row = self.rows[index.row()]
        if index.column() == WHEN:
            if isinstance(value, datetime) and value != row.at:
                self.moved.emit(row, value)
            return True
        if index.column() == NOTE:
            if str(value).strip() != row.note:
                self.renoted.emit(row, str(value).strip())
            return True
        number = number_in(str(value))
        if number is None:
            return False
        if number != row.value:
            self.corrected.emit(row, number)
        return True


class _Delegate(QStyledItemDelegate):
    """A field that is read whole while one types in it, however narrow its column is."""

    def updateEditorGeometry(self, editor: QWidget, option: QStyleOptionViewItem, index: Index) -> None:
        table = editor.parentWidget()
        room = option.rect.width() if table is None else table.width()
        letters = LEAST_LETTERS * editor.fontMetrics().averageCharWidth() if index.column() == NOTE else 0
        wide = min(room, max(option.rect.width(), editor.sizeHint().width(), letters))
        left = max(0, min(option.rect.left(), room - wide))
        editor.setGeometry(left, option.rect.top(), wide, option.rect.height())


class _WhenDelegate(_Delegate):
    """A field for a day and time in the first column."""

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Index) -> QWidget:
        edit = MomentEdit(parent)
        edit.setAccessibleName(self.tr("When it was"))
        return edit

    def setEditorData(self, editor: QWidget, index: Index) -> None:
        assert isinstance(editor, MomentEdit)
        show_moment(editor, index.data(MOMENT))

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Index) -> None:
        assert isinstance(editor, MomentEdit)
        model.setData(index, moment_in(editor, index.data(MOMENT)))


class NoteTable(QTableView):
    """As high as its rows; the page around it scrolls."""

    corrected = Signal(object, float)
    renoted = Signal(object, str)
    moved = Signal(object, object)
    deleted = Signal(object)
    looked_at = Signal(QRect)  # where the chosen row lies in the table: the page has to show it

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._notes = NoteModel(self)
        self._notes.corrected.connect(self.corrected)
        self._notes.renoted.connect(self.renoted)
        self._notes.moved.connect(self.moved)
        self.setModel(self._notes)
        self.setItemDelegate(_Delegate(self))
        self.setItemDelegateForColumn(WHEN, _WhenDelegate(self))
        self.setAccessibleName(self.tr("What was measured and done"))
        self.setToolTip(self.tr("Enter or F2 corrects a number, a time or a note, Delete takes a row out"))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(NOTE, QHeaderView.ResizeMode.Stretch)
        self.fit_to_text()

    def fit_to_text(self) -> None:
        """Rows that a finger can hit, as high as the letters need."""
        self.verticalHeader().setDefaultSectionSize(max(TARGET, self.fontMetrics().height() + 12))
        self.updateGeometry()

    def show_rows(self, rows: Sequence[NoteRow]) -> None:
        """Show these; the same row stays chosen."""
        if tuple(rows) == self._notes.rows:
            return
        here = self.currentIndex()
        self._notes.show(rows)
        if rows and here.isValid():
            self.setCurrentIndex(self._notes.index(min(here.row(), len(rows) - 1), here.column()))
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        """All rows."""
        rows = self._notes.rowCount()
        high = self.horizontalHeader().sizeHint().height() + rows * self.verticalHeader().defaultSectionSize()
        return QSize(320, high + 4)

    def minimumSizeHint(self) -> QSize:
        """The same, but narrower."""
        return QSize(200, self.sizeHint().height())

    def currentChanged(self, current: Index, previous: Index) -> None:
        """The table has no scroll of its own."""
        super().currentChanged(current, previous)
        if current.isValid() and self.hasFocus():
            self._be_seen(current)

    def _be_seen(self, index: Index) -> None:
        self.looked_at.emit(self.visualRect(index).translated(self.viewport().pos()))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Delete takes the row out, Enter corrects the cell, or the number where the cell says what it is."""
        index = self.currentIndex()
        key = event.key()
        if index.isValid() and self.state() != QAbstractItemView.State.EditingState:
            row = self._notes.rows[index.row()]
            if key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
                self._be_seen(index)
                self.deleted.emit(row)
                return
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_F2):
                column = VALUE if index.column() == WHAT else index.column()
                if column == VALUE and row.value is None:
                    column = NOTE
                self.setCurrentIndex(index.siblingAtColumn(column))
                self._be_seen(index)  # the page may have been rolled since it was chosen
                self.edit(index.siblingAtColumn(column))
                return
        if key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown, Qt.Key.Key_Space):
            event.ignore()
        elif event.text() and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            event.ignore()  # letters and digits belong to the sheet, not to a search in the table
        else:
            super().keyPressEvent(event)


def number_in(text: str) -> float | None:
    """A number as a person types it, with a comma or a point; None where it is none."""
    try:
        number = float(text.strip().replace("−", "-").replace(",", "."))
    except ValueError:
        return None
    return number if isfinite(number) and "_" not in text else None  # "inf" and "1_0" are words of Python's
