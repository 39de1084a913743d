"""Blind page: one picture and its score; the page at the end with what the round says.

In    a `BlindState`, the picture when it is there
Out   `chose` with a score, `went_on`, `went_back`, `left`
Not   keeping scores and loading pictures (`blindwindow.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSignalBlocker, QSize, Qt, Signal, Slot
from PySide6.QtGui import QColor, QImage, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QLayout,
    QProgressBar,
    QPushButton,
    QSizePolicy,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.verdict.blindload import BlindPicture
from gui.verdict.blindview import BlindState

__all__ = ["ResultPage", "ScoringPage", "TrayPicture"]

SOFT = "#D8D8D8"
STEP = 10  # PageUp and PageDown


class TrayPicture(QWidget):
    """A tray from above, as large as there is room, never larger than twice its pixels."""

    MOST = 2.0

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._image: QImage | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("A tray from above, its name hidden"))

    def minimumSizeHint(self) -> QSize:
        """Smaller it cannot be judged."""
        return QSize(400, 200)

    @property
    def has_image(self) -> bool:
        """Whether there is something to look at."""
        return self._image is not None

    def show_image(self, image: QImage | None) -> None:
        """Show this; None while it is coming."""
        self._image = image
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """In the middle."""
        painter = QPainter(self)
        if self._image is None:
            painter.setPen(QColor(SOFT))
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.tr("The picture is coming."))
            return
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        wide, high = self._image.width(), self._image.height()
        scale = min(self.width() / wide, self.height() / high, self.MOST)
        box = QRectF(0, 0, wide * scale, high * scale)
        box.moveCenter(QRectF(self.rect()).center())
        painter.drawImage(box, self._image)


class ScoringPage(QWidget):
    """Progress above, the picture, the number, the scale, the buttons."""

    chose = Signal(int)
    went_on = Signal()
    went_back = Signal()
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.M)
        column.addLayout(self._make_head())
        self.picture = TrayPicture(self)
        column.addWidget(self.picture, 1)
        for part in self._make_scale():
            column.addWidget(part)
        column.addLayout(self._make_ends())
        column.addLayout(self._make_foot())

    def _make_head(self) -> QLayout:
        self.progress = QLabel(self)
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(self.tr("Pictures scored"))
        self.leave = QPushButton(self.tr("Leave, go on later"), self)
        self.leave.setToolTip(self.tr("What you have scored is kept (Esc)"))
        self.leave.setAutoDefault(False)
        self.leave.clicked.connect(self.left)
        head = QHBoxLayout()
        head.setSpacing(Space.L)
        head.addWidget(self.progress)
        head.addWidget(self.bar, 1)
        head.addWidget(self.leave)
        return head

    def _make_scale(self) -> tuple[QWidget, QWidget]:
        self.number = QLabel(self)
        set_role(self.number, "big")
        self.number.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.slider = QSlider(Qt.Orientation.Horizontal, self)
        self.slider.setRange(0, 100)
        self.slider.setSingleStep(1)
        self.slider.setPageStep(STEP)
        self.slider.setTickInterval(STEP)
        self.slider.setTickPosition(QSlider.TickPosition.TicksBelow)
        self.slider.setAccessibleName(self.tr("Score from 0 to 100"))
        self.slider.valueChanged.connect(self.chose)
        self.slider.sliderPressed.connect(self._pressed)
        return self.number, self.slider

    @Slot()
    def _pressed(self) -> None:
        """The handle was taken where it stands: that is a score, too."""
        self.chose.emit(self.slider.value())

    def _make_ends(self) -> QLayout:
        ends = QHBoxLayout()
        for words in (self.tr("0: worth nothing"), self.tr("100: as good as a tray can be")):
            label = QLabel(words, self)
            set_role(label, "small")
            ends.addWidget(label)
        ends.insertStretch(1, 1)
        return ends

    def _make_foot(self) -> QLayout:
        self.keys = wrapped(
            self.tr("0-9 tens, arrows by one, Enter next, Backspace back, Esc leave"), self, "small"
        )
        self.back = QPushButton(self.tr("Back"), self)
        self.back.setToolTip(self.tr("The picture before (Backspace)"))
        self.back.setAutoDefault(False)
        self.back.clicked.connect(self.went_back)
        self.next = QPushButton(self.tr("Next"), self)
        self.next.setToolTip(self.tr("Keep this score and go on (Enter)"))
        self.next.setAutoDefault(False)
        set_role(self.next, "main")
        self.next.clicked.connect(self.went_on)
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addWidget(self.keys, 1)
        foot.addWidget(self.back)
        foot.addWidget(self.next)
        return foot

    def show_state(self, state: BlindState, held: BlindPicture | None) -> None:
        """Show the place and its score; a picture that is lost says so."""
        words = self.tr("Picture {place} of {total}")
        self.progress.setText(words.format(place=state.place, total=state.total))
        self.bar.setRange(0, state.total)
        self.bar.setValue(len(state.given))
        self.back.setEnabled(state.place > 1)
        self.picture.show_image(None if held is None else held.image)
        lost = held is not None and held.image is None
        self.say(held.trouble if held is not None and lost else "")
        with QSignalBlocker(self.slider):
            self.slider.setValue(50 if state.value is None else state.value)
        self.slider.setProperty("unset", state.value is None)
        self.slider.style().unpolish(self.slider)
        self.slider.style().polish(self.slider)
        self.number.setText("\u2013" if state.value is None else str(state.value))
        self.next.setEnabled(state.value is not None or lost)

    def say(self, trouble: str) -> None:
        """What stands in the way, in the place of the keys."""
        usual = self.tr("0-9 tens, arrows by one, Enter next, Backspace back, Esc leave")
        self.keys.setText(trouble or usual)


class ResultPage(QWidget):
    """Whose numbers to trust, and why."""

    done = Signal()
    went_back = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        title = QLabel(self.tr("All pictures are scored"), self)
        set_role(title, "title")
        self.trust, self.words = QLabel(self), QLabel(self)
        set_role(self.trust, "answer")
        for label in (self.trust, self.words):
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
        self.to_verdict = QPushButton(self.tr("To the verdict"), self)
        set_role(self.to_verdict, "main")
        self.to_verdict.clicked.connect(self.done)
        self.again = QPushButton(self.tr("Back to the pictures"), self)
        self.again.clicked.connect(self.went_back)
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addStretch(1)
        foot.addWidget(self.again)
        foot.addWidget(self.to_verdict)
        column = QVBoxLayout(self)
        column.setSpacing(Space.L)
        column.addStretch(2)
        for part in (title, self.trust, self.words):
            across = QHBoxLayout()
            across.addStretch(1)
            across.addWidget(part, 3)
            across.addStretch(1)
            column.addLayout(across)
        column.addStretch(3)
        column.addLayout(foot)

    def show_words(self, trust: str, words: Sequence[str]) -> None:
        """Show these."""
        self.trust.setText(trust)
        self.words.setText("\n\n".join(words))
