"""Each window: whatever has to see the events of every window before the parts in it do.

In    the windows of the program, from when each first has the focus
Out   a base whose `eventFilter` gets their events
Not   what is done with them (`fingers.py`, `wheels.py`)

A filter on the whole program would be asked about every event of every part; a window sees what a hand does.
"""

from PySide6.QtCore import QObject, QPointF, Slot
from PySide6.QtGui import QGuiApplication, QWindow
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QWidget

__all__ = ["EachWindow", "part_under", "rolling_around", "top_of"]


class EachWindow(QObject):
    """Watches them until it ends."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        app = QGuiApplication.instance()
        assert isinstance(app, QGuiApplication)
        app.focusWindowChanged.connect(self._came)

    @Slot(QWindow)
    def _came(self, window: QWindow | None) -> None:
        if window is not None:
            window.installEventFilter(self)  # once more changes nothing


def top_of(window: QObject) -> QWidget | None:
    """The widget that fills a window."""
    return next((one for one in QApplication.topLevelWidgets() if one.windowHandle() is window), None)


def part_under(top: QWidget, at: QPointF) -> QWidget:
    """The innermost part of a window at a place in it."""
    return top.childAt(at.toPoint()) or top


def rolling_around(part: QWidget) -> QAbstractScrollArea | None:
    """The nearest area around a part, or itself, that has somewhere to roll to."""
    widget: QWidget | None = part
    while widget is not None:
        if isinstance(widget, QAbstractScrollArea) and _can_roll(widget):
            return widget
        widget = None if widget.isWindow() else widget.parentWidget()
    return None


def _can_roll(area: QAbstractScrollArea) -> bool:
    bars = area.verticalScrollBar(), area.horizontalScrollBar()
    return any(bar.maximum() > bar.minimum() for bar in bars)
