"""Chart panel: a chart with its title and the button that saves it.

In    a `DrawnChart`
Out   `save_wanted` with the chart, by button or Ctrl+S
Not   where it is saved (`verdict/screen.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from gui.answer.drawnchart import DrawnChart
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["ChartPanel"]


class ChartPanel(QFrame):
    """A white panel."""

    save_wanted = Signal(object)  # DrawnChart

    def __init__(self, chart: DrawnChart, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "sheet")
        self.chart = chart
        title = wrapped(chart.title, self, "title")
        self.button = QPushButton(self.tr("Save..."), self)
        self.button.setToolTip(self.tr("Save this chart as SVG or PNG (Ctrl+S)"))
        self.button.setAccessibleName(self.tr("Save the chart: {title}").format(title=chart.title))
        set_role(self.button, "quiet")
        self.button.clicked.connect(self._save)
        key = QShortcut(QKeySequence("Ctrl+S"), self, self._save)
        key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        head = QHBoxLayout()
        head.addWidget(title, 1)
        head.addWidget(self.button, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.M, Space.S, Space.S, Space.S)
        column.setSpacing(Space.XS)
        column.addLayout(head)
        column.addWidget(chart, 1)

    @Slot()
    def _save(self) -> None:
        self.save_wanted.emit(self.chart)
