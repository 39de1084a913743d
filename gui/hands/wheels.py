"""Wheels: the wheel rolls a page and never changes what a field on it says.

In    turns of the wheel, or two fingers on a touchpad, over any window
Out   over a field, they roll what the field lies on, or do nothing
Not   pictures, which the wheel enlarges; lists that have dropped down, which it rolls

Qt lets the wheel choose in a closed list, and count days up and down, wherever the pointer happens to come by
on its way down a page, and nobody sees it.
"""

from PySide6.QtCore import QEvent, QObject, QPointF
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QAbstractSlider, QAbstractSpinBox, QApplication, QComboBox, QScrollBar, QWidget

from gui.hands.eachwindow import EachWindow, part_under, rolling_around, top_of

__all__ = ["Wheels"]


class Wheels(EachWindow):
    """One for the whole program."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Turn the wheel over a field into one over what rolls around it."""
        if event.type() != QEvent.Type.Wheel or not isinstance(event, QWheelEvent):
            return False
        top = top_of(watched)
        field = None if top is None else _field(part_under(top, event.position()))
        if top is None or field is None:
            return False
        area = rolling_around(field)
        if area is not None:
            at = QPointF(area.viewport().mapFrom(top, event.position()))
            QApplication.sendEvent(area.viewport(), _moved(event, at))
        event.accept()
        return True


def _field(part: QWidget) -> QWidget | None:
    """The field that a part belongs to; None where it belongs to none."""
    widget: QWidget | None = part
    while widget is not None and not widget.isWindow():
        if isinstance(widget, QComboBox | QAbstractSpinBox):
            return widget
        if isinstance(widget, QAbstractSlider) and not isinstance(widget, QScrollBar):
            return widget
        widget = widget.parentWidget()
    return None


def _moved(event: QWheelEvent, at: QPointF) -> QWheelEvent:
    return QWheelEvent(
        at,
        event.globalPosition(),
        event.pixelDelta(),
        event.angleDelta(),
        event.buttons(),
        event.modifiers(),
        event.phase(),
        event.inverted(),
    )
