"""Sides: widgets beside each other, or one above the other where the width is too small for them.

In    widgets with their shares of the width; their property "wanted" is the width below which they turn
Out   a widget that turns by itself
Not   rows of buttons (`flow.py`)
"""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

from gui.style.palette import Space

__all__ = ["Sides"]


class Sides(QWidget):
    """Two or three widgets."""

    def __init__(self, widgets: Sequence[QWidget], shares: Sequence[int], parent: QWidget | None) -> None:
        super().__init__(parent)
        self._widgets, self._shares = tuple(widgets), tuple(shares)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(Space.M)
        for widget, share in zip(widgets, shares, strict=True):
            self._row.addWidget(widget, share)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Turn where it is too narrow."""
        super().resizeEvent(event)
        self.turn()

    def minimumSizeHint(self) -> QSize:
        """As narrow as the widest of them: then they stand one above the other."""
        shown = [widget for widget in self._widgets if not widget.isHidden()]
        widest = max((self._least(widget) for widget in shown), default=0)
        return QSize(widest, super().minimumSizeHint().height())

    @staticmethod
    def _least(widget: QWidget) -> int:
        return max(widget.minimumSizeHint().width(), widget.minimumWidth())

    def event(self, event: QEvent) -> bool:
        """Contents may have grown."""
        if event.type() == QEvent.Type.LayoutRequest:
            self.turn()
        return super().event(event)

    def turn(self) -> None:
        """Beside each other where all fit."""
        needs = {widget: self._need(widget) for widget in self._widgets if not widget.isHidden()}
        room = self.width() - self._row.spacing() * max(0, len(needs) - 1)
        fits = sum(needs.values()) <= room
        way = QBoxLayout.Direction.LeftToRight if fits else QBoxLayout.Direction.TopToBottom
        if self._row.direction() != way:
            self._row.setDirection(way)
        self._share_out(needs, room)

    def _need(self, widget: QWidget) -> int:
        return max(self._least(widget), int(widget.property("wanted") or 0))

    def _share_out(self, needs: Mapping[QWidget, int], room: int) -> None:
        """By the shares; where one would get less than it needs so, only what is left over goes by them."""
        shares = dict(zip(self._widgets, self._shares, strict=True))
        whole = sum(shares[widget] for widget in needs)
        enough = all(shares[widget] * room >= need * whole for widget, need in needs.items())
        left = room - sum(needs.values())
        for widget, need in needs.items():
            share, at = shares[widget], self._row.indexOf(widget)
            stretch = share if enough else max(0, need + share * left // whole)
            if self._row.stretch(at) != stretch:  # setting it asks for the layout, and that for all of this
                self._row.setStretch(at, stretch)
