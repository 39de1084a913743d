"""Fingers: on a touch screen lists and pages follow the finger, as a hand expects that knows phones.

In    touches of the window that has the focus
Out   what lies under a finger that moves is rolled; a finger that only touches presses there, and words that
      have a hint tell it
Not   a picture, a brush, a corner, a bar: what moves by itself under a finger gets its touches as they come

Qt hands a touch on as a press of the mouse, and dragging with it rolls nothing: a list moved only by its
bar of 14 px. So what is pressed is decided when the finger leaves. Nothing rolls on after that: motion only
shows where something went.
"""

from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QElapsedTimer, QEvent, QObject, QPointF, Qt, QTimer
from PySide6.QtGui import QGuiApplication, QMouseEvent, QTouchEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSlider,
    QApplication,
    QLabel,
    QToolTip,
    QWidget,
)
from shiboken6 import isValid

from gui.hands.eachwindow import EachWindow, part_under, rolling_around, top_of

__all__ = ["Fingers"]

BEGIN, MOVE, END = QEvent.Type.TouchBegin, QEvent.Type.TouchUpdate, QEvent.Type.TouchEnd
TOUCHES = (BEGIN, MOVE, END, QEvent.Type.TouchCancel)
LEFT = Qt.MouseButton.LeftButton


@dataclass(slots=True)
class _Touch:
    """A finger on something that rolls."""

    top: QWidget
    area: QAbstractScrollArea
    begun: QPointF
    last: QPointF
    rolls: bool = False
    several: bool = False  # a second finger came: neither rolled nor pressed


class Fingers(EachWindow):
    """One for the whole program."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._touch: _Touch | None = None
        self._since, self._tapped = QElapsedTimer(), QPointF()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take the touches that may roll something."""
        if event.type() not in TOUCHES or not isinstance(event, QTouchEvent):
            return False
        if event.type() == BEGIN:
            self._touch = _begun(watched, event)
        touch = self._touch
        if touch is None or not isValid(touch.area):  # the place may have changed under the finger
            self._touch = None
            return False
        self._follow(touch, event)
        event.accept()
        return True

    def _follow(self, touch: _Touch, event: QTouchEvent) -> None:
        at = event.points()[0].position() if event.points() else touch.last
        touch.several = touch.several or len(event.points()) > 1
        if event.type() == MOVE and not touch.several:
            _roll(touch, at)
        if event.type() in (END, QEvent.Type.TouchCancel):
            self._touch = None
            presses = event.type() == END and not touch.rolls and not touch.several
            if presses:  # once Qt is done with the touch: a dialog may open
                QTimer.singleShot(0, self, partial(self._tap, touch.top, touch.begun))

    def _tap(self, top: QWidget, at: QPointF) -> None:
        """Press and let go, where the finger lay."""
        if not isValid(top):
            return
        under = part_under(top, at)
        if isinstance(under, QLabel) and under.toolTip():  # a finger cannot hover
            QToolTip.showText(top.mapToGlobal(at).toPoint(), under.toolTip(), under)
            return
        for kind, held in (
            (self._press(at), LEFT),
            (QEvent.Type.MouseButtonRelease, Qt.MouseButton.NoButton),
        ):
            if not isValid(under):  # a menu that the press opened has been answered meanwhile
                return
            there = QPointF(under.mapFrom(top, at))
            everywhere = QPointF(top.mapToGlobal(at))
            QApplication.sendEvent(
                under, QMouseEvent(kind, there, at, everywhere, LEFT, held, Qt.KeyboardModifier.NoModifier)
            )

    def _press(self, at: QPointF) -> QEvent.Type:
        """Which kind of press it is: the second one soon and near is a double click."""
        style = QGuiApplication.styleHints()
        soon = self._since.isValid() and self._since.elapsed() < style.mouseDoubleClickInterval()
        near = (at - self._tapped).manhattanLength() < 2 * style.startDragDistance()
        self._since.start()
        self._tapped = at
        return QEvent.Type.MouseButtonDblClick if soon and near else QEvent.Type.MouseButtonPress


def _begun(window: QObject, event: QTouchEvent) -> _Touch | None:
    """The touch, where a finger lies on something that rolls; None: it goes its usual way."""
    top = top_of(window)
    if top is None or not event.points() or QApplication.activePopupWidget() is not None:
        return None
    at = event.points()[0].position()
    part = part_under(top, at)
    area = None if isinstance(part, QAbstractSlider) else rolling_around(part)  # a bar, a handle
    return None if area is None else _Touch(top, area, at, at)


def _roll(touch: _Touch, at: QPointF) -> None:
    """Let the area follow, once the finger has gone far enough to mean it."""
    way = at - touch.begun
    touch.rolls = touch.rolls or way.manhattanLength() >= QGuiApplication.styleHints().startDragDistance()
    if not touch.rolls:
        return
    area, step = touch.area, at - touch.last
    touch.last = at
    if isinstance(area, QAbstractItemView):  # by lines a finger would jump
        area.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        area.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    for bar, px in ((area.verticalScrollBar(), step.y()), (area.horizontalScrollBar(), step.x())):
        bar.setValue(bar.value() - round(px))
