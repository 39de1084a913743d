"""Plan page: what all pages of the place Plan have in common.

In    a `PlanState`
Out   `edited` with another draft
Not   what is asked (each page)
"""

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QEvent, QObject, QSize, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QLayout, QScrollArea, QVBoxLayout, QWidget

from data.plan.draft import Draft
from gui.controls.rolling import roll_down
from gui.plan.view import PlanState
from gui.style.palette import Space

__all__ = ["PlanPage", "Roll"]


class PlanPage(QScrollArea):
    """One step; scrolls where letters are large."""

    edited = Signal(object)  # Draft

    _sides: QBoxLayout | None = None  # of the class: events come before the page is made

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        roll_down(self)
        self.body = QWidget(self)
        self.column = QVBoxLayout(self.body)
        self.column.setContentsMargins(0, Space.S, Space.M, Space.S)
        self.column.setSpacing(Space.M)
        self.setWidget(self.body)
        self._draft: Draft | None = None

    def put_side_by_side(self, left: QLayout, right: QLayout, shares: tuple[int, int]) -> None:
        """Two halves, one above the other where letters are too large for the width."""
        self._sides = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._sides.setSpacing(Space.XXL)
        for half, share in zip((left, right), shares, strict=True):
            self._sides.addLayout(half, share)
        self.column.addLayout(self._sides)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Halves follow the width."""
        super().resizeEvent(event)
        self._turn_sides()

    def showEvent(self, event: QShowEvent) -> None:
        """Lay out once more: a size that came while the page was hidden may have been lost on the way."""
        super().showEvent(event)
        self._turn_sides()
        self.column.invalidate()
        self.column.activate()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Halves follow what is in them, too: rows come, and words are longer in another language."""
        if event.type() == QEvent.Type.LayoutRequest and watched is self.widget():
            self._turn_sides()
        return super().eventFilter(watched, event)

    def _turn_sides(self) -> None:
        if self._sides is None:
            return
        needed = self._sides.spacing() + Space.L
        for number in range(self._sides.count()):
            half = self._sides.itemAt(number)
            needed += 0 if half is None else half.minimumSize().width()
        wide = needed <= self.viewport().width()
        way = QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom
        if self._sides.direction() != way:
            self._sides.setDirection(way)
            self.column.activate()

    def show_state(self, state: PlanState) -> None:
        """Show it; called often."""
        self._draft = state.draft
        self._turn_sides()

    def change(self, **changed: Any) -> None:
        """Tell of another draft."""
        if self._draft is not None:
            draft = replace(self._draft, **changed)
            if draft != self._draft:
                self._draft = draft
                self.edited.emit(draft)


class Roll(QScrollArea):
    """Half a page: rolls up and down where letters are large, and is never narrower than what is in it."""

    def __init__(self, body: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        roll_down(self)
        self._half = body
        self.setWidget(body)

    def minimumSizeHint(self) -> QSize:
        """As wide as its body and a bar; as high as it comes."""
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(self._half.minimumSizeHint().width() + bar, 2 * self.fontMetrics().height())

    def sizeHint(self) -> QSize:
        """As its body wants."""
        return QSize(self.minimumSizeHint().width(), self._half.sizeHint().height())
