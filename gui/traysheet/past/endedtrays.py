"""Ended trays: those that were cut or thrown away, to be found and opened again.

In    the trays that grow no more, last ended first
Out   the id of the one that is to be opened
Not   their sheet (`traysheet/screen.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import (
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    QSortFilterProxyModel,
    QStringListModel,
    Qt,
    Slot,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListView,
    QPushButton,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from data.records import Tray, TrayId
from gui.controls.form import open_within_screen
from gui.controls.rows import Row
from gui.language.spoken import DAY_YEAR_SHORT, day_words
from gui.language.words import translate
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.traysheet.view import end_words

__all__ = ["EndedTrays", "ended_words"]

ARROWS = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown)


class EndedTrays(QDialog):
    """Type to find, Enter to open."""

    def __init__(self, trays: Sequence[Tray], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._trays = tuple(trays)
        self.chosen: TrayId | None = None
        self.setWindowTitle(self.tr("Trays that have ended"))
        title = QLabel(self.tr("Trays that were cut or thrown away"), self)
        set_role(title, "title")
        self._make_search()
        self._make_rows()
        self.none = wrapped("", self, "soft")
        self.open_it = QPushButton(self.tr("Open its sheet"), self)
        self.open_it.setDefault(True)
        set_role(self.open_it, "main")
        self.open_it.clicked.connect(self._open)
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.reject)
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addStretch(1)
        foot.addWidget(close)
        foot.addWidget(self.open_it)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.XL, Space.XL, Space.L)
        column.setSpacing(Space.M)
        for part in (title, self.search, self.rows, self.none):
            column.addWidget(part)
        column.setStretchFactor(self.rows, 1)
        column.addStretch(0)  # takes the room of the list where there is none
        column.addLayout(foot)
        letter = self.fontMetrics().averageCharWidth()
        self.setMinimumWidth(60 * letter)
        open_within_screen(self, 90 * letter, 26 * self.fontMetrics().height())
        self._find("")

    def _make_search(self) -> None:
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(self.tr("Part of a code, a crop, a medium, a month ..."))
        self.search.setAccessibleName(self.tr("Find an ended tray"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._find)
        self.search.installEventFilter(self)

    def _make_rows(self) -> None:
        self.rows = QListView(self)
        self.rows.setAccessibleName(self.tr("Trays that have ended, last ended first"))
        self.rows.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.rows.setUniformItemSizes(True)
        self.rows.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        set_role(self.rows, "rows")
        self.rows.setItemDelegate(_Row(self.rows))
        self._model = QStringListModel([ended_words(tray) for tray in self._trays], self)
        self._found = QSortFilterProxyModel(self)
        self._found.setSourceModel(self._model)
        self._found.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.rows.setModel(self._found)
        self.rows.doubleClicked.connect(self._open)

    @Slot(str)
    def _find(self, words: str) -> None:
        self._found.setFilterFixedString(words.strip())
        there = self._found.rowCount()
        if there:
            self.rows.setCurrentIndex(self._found.index(0, 0))
        self.open_it.setEnabled(there > 0)
        self.rows.setVisible(bool(self._trays))
        self.none.setVisible(there == 0)
        self.none.setText(
            self.tr("No ended tray is called that.")
            if self._trays
            else self.tr(
                "No tray has ended yet. When one is cut or thrown away, it stands here with all its days."
            )
        )

    @Slot()
    def _open(self) -> None:
        index = self.rows.currentIndex()
        if index.isValid():
            self.chosen = self._trays[self._found.mapToSource(index).row()].id
            self.accept()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Up and down go through the list while the words are typed."""
        if (
            watched is self.search
            and isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.KeyPress
            and event.key() in ARROWS
        ):
            self.rows.keyPressEvent(event)
            return True
        return super().eventFilter(watched, event)


class _Row(Row):
    """As wide as the list; what is too long ends in dots."""

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        return QSize(1, super().sizeHint(option, index).height())

    def initStyleOption(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        super().initStyleOption(option, index)
        option.textElideMode = Qt.TextElideMode.ElideRight


def ended_words(tray: Tray) -> str:
    """One ended tray in a line."""
    how = end_words(tray)
    day = "" if tray.done_at is None else day_words(tray.done_at, DAY_YEAR_SHORT)
    words = translate("EndedTrays", "{code}  {crop} on {medium}, sown {sown}, {how} {day}").format(
        code=tray.code,
        crop=tray.crop,
        medium=tray.medium,
        sown=day_words(tray.sown_at, DAY_YEAR_SHORT),
        how=how,
        day=day,
    )
    return f"{words}: {tray.ended_why}" if tray.ended_why else words
