"""Focus in sight: who comes by Tab into a page that is rolled away sees where.

In    whichever part of the program has the focus
Out   the pages around it rolled, as far as it was out of sight altogether
Not   from part to part within one page: Qt does that

WCAG 2.2 (W3C Recommendation 2023), success criterion 2.4.11: what has the focus is not hidden.
"""

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QApplication, QScrollArea, QWidget

from gui.style.palette import Space

__all__ = ["FocusInSight"]


class FocusInSight(QObject):
    """One for the whole program."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._came)

    @Slot(QWidget, QWidget)
    def _came(self, _left: QWidget | None, now: QWidget | None) -> None:
        if now is None or not now.isVisible() or not now.visibleRegion().isEmpty():
            return
        around = now.parentWidget()
        while around is not None and not around.isWindow():
            if isinstance(around, QScrollArea):
                around.ensureWidgetVisible(now, 0, Space.M)
            around = around.parentWidget()
