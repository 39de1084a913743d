"""Rack head: what stands above the rack: how many trays, the search, the filters.

In    `BenchState`
Out   `changed` when other trays are wanted; `left` by Esc, with all trays wanted again; `ended_wanted`
Not   which trays that leaves (`rack.py`), the choices (`rackfilters.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from gui.bench.rack import Narrowing
from gui.bench.rackfilters import RackFilters
from gui.bench.view import BenchState
from gui.bench.words import rack_words
from gui.style.palette import Space, set_role

__all__ = ["RackHead"]


class RackHead(QWidget):
    """Title, count, search; below them the filters on demand."""

    changed = Signal()
    left = Signal()
    found = Signal()  # on to the first tray that the search shows
    unfolded = Signal(bool)
    ended_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = QLabel(self.tr("The rack"), self)
        set_role(self.title, "title")
        self.soft = QLabel(self)
        set_role(self.soft, "soft")
        self.search = self._make_search()
        self.more = QPushButton(self.tr("Filters"), self)
        self.more.setCheckable(True)
        set_role(self.more, "rack")
        self.more.setToolTip(self.tr("Crop, medium, trial, day, photo missing; trays that have ended"))
        self.more.toggled.connect(self._unfold)
        self.filters = RackFilters(self)
        self.filters.hide()
        self.filters.changed.connect(self.changed)
        self.filters.left.connect(self._leave)
        self.filters.ended_wanted.connect(self.ended_wanted)
        row = QHBoxLayout()
        row.setSpacing(Space.M)
        row.addWidget(self.title)
        row.addWidget(self.soft, 1)
        row.addWidget(self.search)
        row.addWidget(self.more)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addLayout(row)
        column.addWidget(self.filters)

    def _make_search(self) -> QLineEdit:
        made = QLineEdit(self)
        made.setPlaceholderText(self.tr("Find a tray, crop or medium"))
        made.setAccessibleName(self.tr("Find a tray, crop or medium"))
        made.setToolTip(
            self.tr("Show only trays that have these words (Ctrl+F); Enter goes to the first, Esc shows all")
        )
        made.setClearButtonEnabled(True)
        set_role(made, "rack")
        made.setMinimumWidth(self.fontMetrics().averageCharWidth() * 34)
        made.textChanged.connect(self.changed)
        made.returnPressed.connect(self.found)
        leave = QShortcut(QKeySequence("Esc"), made, self._leave)
        leave.setContext(Qt.ShortcutContext.WidgetShortcut)
        return made

    @property
    def wanted(self) -> str:
        """The words that are searched."""
        return self.search.text()

    @property
    def narrowing(self) -> Narrowing:
        """What is chosen in the filters."""
        return self.filters.narrowing

    def show_state(self, state: BenchState) -> None:
        """Show this, whatever was shown before."""
        self.soft.setText(rack_words(state))
        self.filters.show_choices(state.choices)
        on = self.narrowing.count
        self.more.setText(self.tr("Filters: {count} on").format(count=on) if on else self.tr("Filters"))

    def clear(self) -> None:
        """All trays are wanted."""
        self.search.clear()
        self.filters.clear()

    @Slot()
    def _leave(self) -> None:
        self.clear()
        self.left.emit()

    @Slot(bool)
    def _unfold(self, shown: bool) -> None:
        self.filters.setVisible(shown)
        self.unfolded.emit(shown)
        if shown:
            self.filters.crop.setFocus()
