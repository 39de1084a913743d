"""Tray picker: trays, found by a few letters.

In    trays
Out   `chosen` with the tray's id, by Enter or click
Not   what is done with it
"""

from collections.abc import Sequence
from datetime import date
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QPersistentModelIndex,
    QSize,
    QSortFilterProxyModel,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QListView, QVBoxLayout, QWidget

from data.records import Tray
from gui.language.spoken import DAY, day_words
from gui.style.palette import RACK_TARGET, Space, set_role
from gui.style.words import wrapped

__all__ = ["TrayPicker"]

Index = QModelIndex | QPersistentModelIndex
TRAY = Qt.ItemDataRole.UserRole + 1


class _Trays(QAbstractListModel):
    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._trays: tuple[Tray, ...] = ()
        self._day: date | None = None

    def show(self, trays: Sequence[Tray], day: date | None) -> None:
        if (tuple(trays), day) != (self._trays, self._day):
            self.beginResetModel()
            self._trays, self._day = tuple(trays), day
            self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._trays)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        tray = self._trays[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            words = self.tr("{code}   {crop} on {medium}, shelf {shelf}")
            if not tray.shelf:
                words = self.tr("{code}   {crop} on {medium}")
            said = words.format(code=tray.code, crop=tray.crop, medium=tray.medium, shelf=tray.shelf)
            if tray.done_at is not None:
                return self.tr("{tray}, until {day}").format(tray=said, day=day_words(tray.done_at, DAY))
            if self._day is not None and tray.sown_at.date() > self._day:
                words = self.tr("{tray}, sown only on {day}")
                return words.format(tray=said, day=day_words(tray.sown_at, DAY))
            return said
        if role == Qt.ItemDataRole.SizeHintRole:
            return QSize(0, RACK_TARGET)
        return int(tray.id) if role == TRAY else None


class TrayPicker(QWidget):
    """A field and the trays that match it."""

    chosen = Signal(int)
    left = Signal()  # none of them, after all

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.field = QLineEdit(self)
        self.field.setPlaceholderText(self.tr("Find a tray, crop or medium"))
        self.field.setAccessibleName(self.tr("Find a tray, crop or medium"))
        self.field.setClearButtonEnabled(True)
        set_role(self.field, "rack")
        self._trays = _Trays(self)
        self._found = QSortFilterProxyModel(self)
        self._found.setSourceModel(self._trays)
        self._found.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.list = QListView(self)
        self.list.setAccessibleName(self.tr("Trays"))
        self.list.setModel(self._found)
        set_role(self.list, "choices")
        self.list.setUniformItemSizes(True)
        self.none = wrapped(
            self.tr("There is no tray to choose. Add it first (Ctrl+T); photos then find it by its tag."),
            self,
            "notice",
        )
        self.none.hide()
        self.be_low(False)
        self.list.activated.connect(self._activated)
        self.list.clicked.connect(self._activated)
        self.field.textChanged.connect(self._filter)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.field)
        column.addWidget(self.list, 1)
        column.addWidget(self.none)
        self.setFocusProxy(self.field)

    def be_low(self, low: bool) -> None:
        """Show two rows at least, or one where there is no room for two."""
        self.list.setMinimumHeight((1 if low else 2) * RACK_TARGET)

    @property
    def missing_height(self) -> int:
        """What it gives up by being low, px."""
        return 2 * RACK_TARGET - self.list.minimumHeight()

    def show_trays(self, trays: Sequence[Tray], day: date | None = None) -> None:
        """Offer these; of one that was not sown yet on the day that is meant it is said."""
        self._trays.show(trays, day)
        self.field.setVisible(bool(trays))
        self.list.setVisible(bool(trays))
        self.none.setVisible(not trays)
        self._filter()

    def begin(self) -> None:
        """Nothing is looked for yet: what was typed for another photo would match this one by a slip."""
        self.field.setText("")
        self.list.setCurrentIndex(QModelIndex())

    @Slot()
    def _filter(self) -> None:
        self._found.setFilterFixedString(self.field.text().strip())
        looked_for = bool(self.field.text().strip())
        self.list.setCurrentIndex(self._found.index(0, 0) if looked_for else QModelIndex())

    @Slot(QModelIndex)
    def _activated(self, index: QModelIndex) -> None:
        tray = index.data(TRAY)
        if tray is not None:
            self.chosen.emit(tray)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """From the field: Enter chooses the first that matches, Down goes into the list; Esc leaves both."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.list.currentIndex().isValid():
            self._activated(self.list.currentIndex())
        elif event.key() == Qt.Key.Key_Down and self.field.hasFocus():
            self.list.setFocus()
            self.list.setCurrentIndex(self._found.index(0, 0))
        elif event.key() == Qt.Key.Key_Escape:
            self.begin()
            self.left.emit()
        else:
            super().keyPressEvent(event)
