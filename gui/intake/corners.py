"""Corners: the page on which a person puts the four corners on the inner edge of a tray's rim.

In    the upright photo, the corners that the finder guessed (px of the upright photo, edge coordinates)
Out   `decided` with four points, `left` when the person leaves without
Not   the handles (`cornerview.py`), scoring with the corners (`data.intake.rescore`), which corner is
      the first of the top view (`vision.corners`)
"""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QRectF, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QColor, QImage, QKeyEvent, QKeySequence, QPainter, QPainterPath, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from gui.controls.rolling import roll_down
from gui.controls.telling import tell
from gui.controls.zoombar import ZoomBar
from gui.intake.cornerview import OUTSIDE, CornerView, Quad
from gui.photo.mips import Mips, image_of
from gui.style.palette import RADIUS, Space, set_role, tokens_now
from gui.style.words import wrapped

if TYPE_CHECKING:
    from vision.photo import Pixels

__all__ = ["LONGEST_LIVE", "CornerPage", "first_guess", "warped"]

LONGEST_LIVE = 1600  # px of the photo that the live top view is made from


def first_guess(width: int, height: int) -> Quad:
    """Four corners to begin with where the finder has none: a rectangle in the middle of the photo."""
    x, y = 0.18 * width, 0.22 * height
    return ((x, y), (width - x, y), (width - x, height - y), (x, height - y))


class TopViewPreview(QWidget):
    """The top view that the corners give, as they move."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._source: Pixels | None = None
        self._shrunk = 1.0
        self._image: QImage | None = None
        self._corners: Quad = ()
        self._soon = QTimer(self, interval=25, singleShot=True)
        self._soon.timeout.connect(self._make)
        self.setAccessibleName(self.tr("Top view with these corners"))
        self.setMinimumSize(160, 80)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def heightForWidth(self, width: int) -> int:
        """A tray is twice as long as wide."""
        return width // 2

    def show_photo(self, pixels: "Pixels | None", full_width: int) -> None:
        """The photo, made small, that the top view is taken from."""
        self._source = pixels
        self._shrunk = 1.0 if pixels is None else pixels.shape[1] / full_width
        self._image = None
        self.update()

    @Slot(object)
    def show_corners(self, corners: Quad) -> None:
        """Make it anew, at most 40 times a second."""
        self._corners = corners
        if not self._soon.isActive():
            self._soon.start()

    @Slot()
    def _make(self) -> None:
        if self._source is None or len(self._corners) != 4:
            return
        self._image = image_of(warped(self._source, self._corners, self._shrunk))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Only the picture; its frame follows the cards' radius."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, True)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        box = QRectF(self.rect())
        frame = QPainterPath()
        frame.addRoundedRect(box, RADIUS, RADIUS)
        painter.setClipPath(frame)
        painter.fillRect(box, QColor(tokens_now().line))
        if self._image is not None:
            painter.drawImage(box, self._image)


def warped(pixels: "Pixels", corners: Quad, shrunk: float) -> "Pixels":
    """A quick top view, 508 x 254 px, for the eye only; the score's own is made by `vision.topview`."""
    import cv2
    import numpy as np

    from vision.corners import order_by_upright

    points = [(x * shrunk, y * shrunk) for x, y in corners]
    ordered = order_by_upright(points, 0, (pixels.shape[1], pixels.shape[0]))
    target = np.array([(0, 0), (508, 0), (508, 254), (0, 254)], np.float32) - 0.5
    way = cv2.getPerspectiveTransform(target, np.array(ordered, np.float32) - 0.5)
    top = cv2.warpPerspective(pixels, way, (508, 254), flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP)
    return top.astype(np.uint8, copy=False)


class CornerPage(QWidget):
    """The photo, the top view beside it, and the two ways out."""

    decided = Signal(object, object)  # question as given to `show_photo`, Quad
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._question: object = None
        self.photo = CornerView(self)
        self.top_view = TopViewPreview(self)
        self.photo.moved.connect(self.top_view.show_corners)
        self.photo.moved.connect(self._moved)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.L)
        row.addWidget(self.photo, 5)
        row.addLayout(self._side(), 2)

    def _side(self) -> QVBoxLayout:
        roll = QScrollArea(self)
        roll.setWidget(self._words())
        roll_down(roll)
        side = QVBoxLayout()
        side.setSpacing(Space.S)
        side.addWidget(roll, 1)
        side.addLayout(self._buttons())
        return side

    def _words(self) -> QWidget:
        self.title = wrapped("", self, "title")
        how = wrapped(
            self.tr(
                "Drag each ring so that its cross lies on the inner edge of the tray's rim, at the height of "
                "the rim. The lens beside your finger shows the place enlarged. A corner that the photo cuts "
                "off goes where it would be, beyond the photo's edge."
            ),
            self,
        )
        self.outside = wrapped("", self, "notice")
        self.outside.hide()
        caption = wrapped(self.tr("The tray from above, with these corners"), self, "soft")
        right = wrapped(
            self.tr("It is right when the rim is just gone on all four sides and rows run straight."),
            self,
            "soft",
        )
        keys = wrapped(
            self.tr("Tab: next corner. Arrows: 1 pixel, with Shift 10. + and -: closer and back."),
            self,
            "small",
        )
        words = QWidget(self)
        read = QVBoxLayout(words)
        read.setContentsMargins(0, 0, Space.S, 0)
        read.setSpacing(Space.M)
        for part in (self.title, self.outside, how, caption, self.top_view, right, keys):
            read.addWidget(part)
        read.addStretch(1)
        return words

    def _buttons(self) -> QVBoxLayout:
        self.back = QPushButton(self.tr("Take back"), self)
        self.back.setToolTip(self.tr("Take the last move of a corner back (Ctrl+Z)"))
        self.back.clicked.connect(self.photo.take_back)
        self.again = QPushButton(self.tr("Again"), self)
        self.again.setToolTip(self.tr("Do the move again (Ctrl+Shift+Z)"))
        self.again.clicked.connect(self.photo.do_again)
        self.leave = QPushButton(self.tr("Leave"), self)
        self.leave.setToolTip(self.tr("Leave the photo as it is (Esc)"))
        self.leave.clicked.connect(self.left)
        self.use = QPushButton(self.tr("Use these corners"), self)
        self.use.clicked.connect(self._use)
        set_role(self.back, "rack")
        set_role(self.again, "rack")
        set_role(self.leave, "rack")
        set_role(self.use, "rack-main")
        above = QHBoxLayout()
        above.setSpacing(Space.S)
        above.addWidget(self.back, 1)
        above.addWidget(self.again, 1)
        ways_out = QHBoxLayout()
        ways_out.setSpacing(Space.S)
        ways_out.addWidget(self.leave)
        ways_out.addWidget(self.use, 1)
        buttons = QVBoxLayout()
        buttons.setSpacing(Space.S)
        buttons.addWidget(ZoomBar(self.photo, self), 0, Qt.AlignmentFlag.AlignLeft)
        buttons.addLayout(above)
        buttons.addLayout(ways_out)
        return buttons

    def show_photo(
        self, question: object, name: str, mips: Mips, small: "Pixels", guess: Sequence[tuple[float, float]]
    ) -> None:
        """Ask for the corners of a photo; `small` is the same photo, at most `LONGEST_LIVE` px."""
        self._question = question
        self.title.setText(self.tr("Corners of {name}").format(name=name))
        self.photo.show_picture(mips)
        self.photo.fit()
        self.top_view.show_photo(small, mips.size[0])
        self.photo.show_corners(guess or first_guess(*mips.size))
        self.photo.setFocus()

    def clear(self) -> None:
        """Let go of the photo's memory."""
        self.photo.clear()
        self.top_view.show_photo(None, 1)

    @Slot(object)
    def _moved(self, corners: Quad) -> None:
        from vision.corners import ANY_TRAY, cut_off, plausible

        size = self.photo.mips.size if self.photo.mips else (1, 1)
        self.back.setEnabled(self.photo.can_take_back)
        self.again.setEnabled(self.photo.can_do_again)
        possible = len(corners) == 4 and plausible(corners, size, ANY_TRAY, OUTSIDE)
        self._tell_outside(cut_off(corners, size) if possible else 0.0)
        self.use.setEnabled(possible)
        self.use.setToolTip(
            self.tr("Score the photo with these corners (Enter)")
            if possible
            else self.tr("These four points cannot be a tray: put them on its corners, one after the other")
        )

    def _tell_outside(self, share: float) -> None:
        """Say beforehand that a photo which lacks part of the tray will not be scored."""
        from vision.corners import MOST_CUT_OFF

        lacks = share > MOST_CUT_OFF
        self.outside.setVisible(lacks)
        words = self.tr(
            "{share} % of the tray lies outside the photo. It will not be scored, since what is not seen "
            "would count as bare: photograph the tray again with its whole rim in the picture."
        )
        tell(self.outside, words.format(share=max(2, round(100 * share))) if lacks else "", "notice")

    @Slot()
    def _use(self) -> None:
        if self.use.isEnabled():
            self.decided.emit(self._question, self.photo.corners)

    def event(self, event: QEvent) -> bool:
        """Ctrl+Z is for the corners from everywhere on the page, as long as one has been moved."""
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and self.photo.takes_key(event)
        ):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter uses the corners, Esc leaves; moves back and again."""
        if event.matches(QKeySequence.StandardKey.Undo):
            self.photo.take_back()
        elif event.matches(QKeySequence.StandardKey.Redo):
            self.photo.do_again()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._use()
        elif event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)
