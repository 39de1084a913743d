"""Corner view: a photo with four handles on the corners of its tray.

In    a picture; four corners, px of it
Out   `moved` with all four at every change
Not   what the corners are for (`corners.py`), how they are painted (`cornerpaint.py`)

Tab goes to the next corner, arrows move it by one pixel of the photo, with Shift by ten; Ctrl+Z takes a move
back, Ctrl+Shift+Z does it again. While a corner is held, a lens beside the finger shows its place enlarged.
A corner of a tray that the photo cuts off goes beyond the photo's edge: room is shown around the photo once a
corner lies there, or by one step back from the whole photo.
"""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QKeySequence, QMouseEvent, QPainter
from PySide6.QtWidgets import QWidget

from gui.intake.cornerpaint import Quad, loupe_beside, paint_frame, paint_handle, paint_loupe
from gui.photo.mips import level_for
from gui.pictures import ARROWS, PictureView
from gui.style.palette import RACK_TARGET

__all__ = ["CornerView", "Quad"]

REACH = RACK_TARGET / 2  # window pixels around a corner that take hold of it
LOUPE_TIMES = 4.0  # the loupe enlarges what the window shows
MOST_MOVES = 200
OUTSIDE = 0.25  # of the photo's width: so far beyond its edge a corner may lie
SPARE = 0.06  # of it: room beyond the outermost corner


class CornerView(PictureView):
    """The photo with four handles."""

    moved = Signal(object)  # Quad

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, margin=REACH)
        self.corners: Quad = ()
        self.chosen = 0
        self._before: list[Quad] = []
        self._after: list[Quad] = []  # taken back, to be done again
        self._held: QPointF | None = None  # from the corner to where the finger took hold of it
        self.setAccessibleName(self.tr("Photo with the four corners of the tray"))

    def show_corners(self, corners: Sequence[tuple[float, float]]) -> None:
        """Begin anew with these."""
        self.corners = tuple((float(x), float(y)) for x, y in corners)
        self.chosen, self._before, self._after = 0, [], []
        self.fit()
        self._tell()

    def clear(self) -> None:
        """No photo, no corners; a finger that still holds one holds nothing any more."""
        self.corners, self._held = (), None
        self._before, self._after = [], []
        self.show_picture(None)

    def put(self, corners: Sequence[tuple[float, float]]) -> None:
        """Put all four here, as one move."""
        self._remember()
        self.corners = tuple((float(x), float(y)) for x, y in corners)
        self._show_outside()
        self._tell()

    @property
    def can_take_back(self) -> bool:
        """Whether a corner has been moved."""
        return bool(self._before)

    @property
    def can_do_again(self) -> bool:
        """Whether a move was taken back."""
        return bool(self._after)

    def take_back(self) -> None:
        """The corners before the last move."""
        if self._before and self._held is None:
            self._after.append(self.corners)
            self.corners = self._before.pop()
            self._show_outside()
            self._tell()

    def do_again(self) -> None:
        """The move that was taken back last."""
        if self._after and self._held is None:
            self._before.append(self.corners)
            self.corners = self._after.pop()
            self._show_outside()
            self._tell()

    def move_chosen(self, x: float, y: float) -> None:
        """Put the chosen corner here, px of the photo: in it, or `OUTSIDE` of its width beyond its edge."""
        width, height = self.mips.size if self.mips else (1, 1)
        beyond = self._reach
        corners = list(self.corners)
        corners[self.chosen] = (
            min(width + beyond, max(-beyond, x)),
            min(height + beyond, max(-beyond, y)),
        )
        self.corners = tuple(corners)
        self._tell()

    @property
    def _reach(self) -> float:
        """How far beyond the photo's edge a corner may lie, px of the photo."""
        return OUTSIDE * self.mips.size[0] if self.mips else 0.0

    def _beyond(self, corner: tuple[float, float]) -> float:
        """How far a corner lies beyond the edge of the photo, px of it; 0 in the photo."""
        width, height = self.mips.size if self.mips else (1, 1)
        x, y = corner
        return max(0.0, -x, x - width, -y, y - height)

    @property
    def _room(self) -> float:
        """What has to be seen around the photo, px of it."""
        furthest = max(map(self._beyond, self.corners), default=0.0)
        return min(self._reach, furthest + SPARE / OUTSIDE * self._reach) if furthest else 0.0

    def fit(self) -> None:
        """The whole photo, with room around it only where a corner lies there."""
        self.view = self.view.with_room(self._room)
        super().fit()

    def _zoom(self, factor: float, at: QPointF) -> None:
        """From the whole photo one step back shows the room around it."""
        if factor < 1 and self.view.is_fitted:
            self.view = self.view.with_room(self._reach)
        super()._zoom(factor, at)

    def _show_outside(self) -> None:
        """Room around the photo as soon as a corner lies there; the chosen corner in sight."""
        self.view = self.view.with_room(max(self.view.beyond, self._room))
        x, y = self.view.to_window(*self.corners[self.chosen])
        inside = QPointF(min(self.width() - REACH, max(REACH, x)), min(self.height() - REACH, max(REACH, y)))
        self.view = self.view.moved(inside.x() - x, inside.y() - y)

    def _remember(self) -> None:
        self._before = [*self._before[-MOST_MOVES:], self.corners]
        self._after = []

    def _tell(self) -> None:
        if self.corners:
            self.describe(self._place_words())
        self.update()
        self.moved.emit(self.corners)

    def _place_words(self) -> str:
        """Where the chosen corner lies."""
        if self._beyond(self.corners[self.chosen]):
            words = self.tr("{corner} at {x} px from the left, {y} px from the top, outside the photo")
        else:
            words = self.tr("{corner} at {x} px from the left, {y} px from the top")
        x, y = self.corners[self.chosen]
        return words.format(corner=self.name_of(self.chosen), x=round(x), y=round(y))

    def name_of(self, corner: int) -> str:
        """The corner's name, counted clockwise."""
        return self.tr("Corner {number} of 4").format(number=corner + 1)

    # --- fingers

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the nearest corner, else of the picture."""
        nearest = self._corner_at(event.position())
        if nearest is None or event.button() != Qt.MouseButton.LeftButton:
            super().mousePressEvent(event)
            return
        self.chosen = nearest
        self._remember()
        self._held = event.position() - QPointF(*self.view.to_window(*self.corners[nearest]))
        self._tell()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move what is held."""
        if self._held is None:
            super().mouseMoveEvent(event)
            return
        to = event.position() - self._held
        self.move_chosen(*self.view.to_picture(to.x(), to.y()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        if self._held is not None:
            self._held = None
            if self._before and self._before[-1] == self.corners:
                self._before.pop()
            self._show_outside()
            self._tell()
        super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """On a corner a second press is one more hold; elsewhere the picture comes closer."""
        if self._corner_at(event.position()) is None:
            super().mouseDoubleClickEvent(event)
        else:
            self.mousePressEvent(event)

    def _corner_at(self, at: QPointF) -> int | None:
        reached = []
        for number, corner in enumerate(self.corners):
            way = QPointF(*self.view.to_window(*corner)) - at
            distance = QPointF.dotProduct(way, way) ** 0.5
            if distance <= REACH:
                reached.append((distance, number))
        return min(reached)[1] if reached else None

    # --- keys

    def event(self, event: QEvent) -> bool:
        """While the photo has the focus, Ctrl+Z is for its corners, not for the book."""
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and self.takes_key(event)
        ):
            event.accept()
            return True
        return super().event(event)

    def takes_key(self, event: QKeyEvent) -> bool:
        """Whether a key takes a move back, or does one again."""
        back = event.matches(QKeySequence.StandardKey.Undo) and self.can_take_back
        return back or (event.matches(QKeySequence.StandardKey.Redo) and self.can_do_again)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows move the chosen corner; the keys of the picture stay."""
        key = Qt.Key(event.key())
        if event.matches(QKeySequence.StandardKey.Undo):
            self.take_back()
        elif event.matches(QKeySequence.StandardKey.Redo):
            self.do_again()
        elif key in ARROWS and self.corners:
            if not event.isAutoRepeat():
                self._remember()
            step = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1.0
            right, down = ARROWS[key]  # of a picture that is pushed: a corner goes the other way
            x, y = self.corners[self.chosen]
            self.move_chosen(x - right * step, y - down * step)
            self._show_outside()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, forwards: bool) -> bool:
        """Tab goes through the four corners before it leaves the photo."""
        following = self.chosen + (1 if forwards else -1)
        if self.corners and 0 <= following <= 3:
            self.chosen = following
            self._show_outside()
            self._tell()
            return True
        return super().focusNextPrevChild(forwards)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Tab comes in at the first corner, Shift+Tab at the last."""
        if event.reason() == Qt.FocusReason.TabFocusReason:
            self.chosen = 0
        elif event.reason() == Qt.FocusReason.BacktabFocusReason:
            self.chosen = 3
        super().focusInEvent(event)

    # --- painting

    def _paint_over(self, painter: QPainter) -> None:
        if len(self.corners) != 4:
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        places = [QPointF(*self.view.to_window(*corner)) for corner in self.corners]
        paint_frame(painter, places)
        for number, place in enumerate(places):
            chosen = number == self.chosen and (self.hasFocus() or self._held is not None)
            paint_handle(painter, place, REACH - 3, chosen=chosen)
        if self._held is not None and self.mips is not None:
            zoom = max(1.0, self.view.zoom * LOUPE_TIMES)
            level = level_for(zoom * self.devicePixelRatioF(), len(self.mips.levels))
            middle = loupe_beside(places[self.chosen], self.size(), REACH)
            paint_loupe(painter, self.mips, level, middle, zoom, self.corners, self.chosen)
