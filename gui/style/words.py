"""Words: labels of plain sentences, which break their lines where the width ends, or reading would grow hard.

In    the text, the widget they stand on, their role (`gui/style/palette.py`)
Out   a `QLabel`
"""

from PySide6.QtCore import QEvent, QSize, Qt, QTimer, Slot
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QLabel, QWidget

from gui.style.palette import set_role
from gui.style.unbroken import UNBREAKING, unbroken

__all__ = ["heading", "line_width", "quotable", "soft", "wrapped"]

LETTERS = 75  # a line, at most
GRACE = 1.25  # so much longer may be what fits one line: two would leave a word or two alone
ROUNDED = 2  # px that a text may be wider than its letters, rounded, add up to
SAMPLE = "It was weighed again in the evening, after it had drained for an hour. "  # prose: an x is wider


def line_width(metrics: QFontMetrics) -> int:
    """Width in px of the longest line that reads well."""
    return round(LETTERS * metrics.horizontalAdvance(SAMPLE) / len(SAMPLE))


class Prose(QLabel):
    """A sentence that takes all the width there is, and no more of it for a line than reads well.

    A greatest width would not do: layouts put what is narrower than its place into the middle.
    """

    _most = 0  # px, of a line; 0: to be measured, for layouts ask a hundred times
    _free = 0  # px beyond it

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._heights: dict[int, int] = {}  # by width, px: layouts ask for the same ones hundreds of times
        # never within a pass of the layout that makes it wider: the layout would lose what is asked of it
        self._freeing = QTimer(self, singleShot=True, interval=0)
        self._freeing.timeout.connect(self._leave_free)

    def setText(self, words: str) -> None:
        """Show this; numbers keep their units beside them."""
        super().setText(unbroken(words))
        self._forget()
        self._freeing.start()

    def text(self) -> str:
        """As it was set."""
        return super().text().replace(UNBREAKING, " ")

    def heightForWidth(self, width: int) -> int:
        """Of its lines, which do not grow with the place."""
        wide = min(width, self._longest()) + self._free
        if wide not in self._heights:
            self._heights[wide] = super().heightForWidth(wide)
        return self._heights[wide]

    def sizeHint(self) -> QSize:
        """Without what is left free."""
        return super().sizeHint() - QSize(self._free, 0)

    def minimumSizeHint(self) -> QSize:
        """Without what is left free."""
        return super().minimumSizeHint() - QSize(self._free, 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave free what lies beyond the longest line."""
        super().resizeEvent(event)
        self._freeing.start()

    def changeEvent(self, event: QEvent) -> None:
        """Larger letters take a wider line."""
        super().changeEvent(event)
        changed = event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange)
        if changed and hasattr(self, "_freeing"):  # Qt begins before we have
            self._forget()
            self._freeing.start()

    def _forget(self) -> None:
        """What was measured no longer holds."""
        self._most = 0
        self._heights.clear()

    def _longest(self) -> int:
        if not self._most:
            metrics = self.fontMetrics()
            line = line_width(metrics)
            whole = max(map(metrics.horizontalAdvance, super().text().split("\n")))
            self._most = whole + ROUNDED if line < whole <= GRACE * line else line
        return self._most

    @Slot()
    def _leave_free(self) -> None:
        beyond = max(0, self.width() - self._longest())
        if beyond != self._free:
            self._free = beyond
            self._heights.clear()
            self.setContentsMargins(0, 0, beyond, 0)


def wrapped(words: str, parent: QWidget | None, role: str = "") -> QLabel:
    """A sentence."""
    label = Prose(parent)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)  # a name like <b>1 may stand in it
    label.setText(words)
    if role:
        set_role(label, role)
    return label


def quotable(parent: QWidget | None, role: str = "") -> QLabel:
    """A sentence to come that can be marked and copied, by mouse and keys."""
    label = wrapped("", parent, role)
    label.setTextInteractionFlags(
        Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
    )
    return label


def heading(words: str, parent: QWidget) -> QLabel:
    """A title within a page."""
    return wrapped(words, parent, "title")


def soft(words: str, parent: QWidget) -> QLabel:
    """An explanation."""
    return wrapped(words, parent, "soft")
