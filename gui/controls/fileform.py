"""File form: what every assistant shows that brings in a file.

In    words, lines that are not kept, the parts that a subject shows of a file
Out   what is said and how far it is; lines folded away; the two ways out; all of it laid out in a dialog
Not   what is shown of a file (`logs/form.py`, `oldnotes/form.py`)
"""

from collections.abc import Iterable, Sequence
from itertools import islice

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QPlainTextEdit,
    QProgressBar,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from gui.controls.rolling import rolling
from gui.controls.telling import tell
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["FileForm"]

MOST_BAD = 200  # lines that are listed; the others are counted


class FileForm(QWidget):
    """A subject makes its parts between `__init__` and `make_end`: Tab comes by in that order."""

    def __init__(self, dialog: QDialog) -> None:
        super().__init__(dialog)
        self.said, self.count = wrapped("", self), wrapped("", self)
        for label in (self.said, self.count):
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.bar = QProgressBar(self)
        self.bar.setRange(0, 0)
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(self.tr("At work on the file"))

    def make_end(self, about_bad: str) -> None:
        """Lines that are not kept, folded away, and the two ways out."""
        self.fold = QToolButton(self)
        self.fold.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.fold.setArrowType(Qt.ArrowType.RightArrow)
        self.fold.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.fold.clicked.connect(self._fold)
        set_role(self.fold, "quiet")
        self.bad = QPlainTextEdit(self)
        self.bad.setReadOnly(True)
        self.bad.setTabChangesFocus(True)
        self.bad.setAccessibleName(about_bad)
        self.bad.setMinimumHeight(self.fontMetrics().height() * 5)
        self.leave, self.keep = QPushButton(self.tr("Leave"), self), QPushButton(self.tr("Keep"), self)
        self.leave.setAutoDefault(False)
        self.keep.setDefault(True)
        self.keep.setEnabled(False)
        set_role(self.keep, "main")

    def lay_out(self, dialog: QDialog, parts: Sequence[QWidget], lines: int, most_px: int) -> None:
        """From top to bottom; the dialog opens so many lines high, at most so many px."""
        buttons = QHBoxLayout()
        buttons.setSpacing(Space.S)
        buttons.addWidget(self.count, 1)
        buttons.addWidget(self.leave)
        buttons.addWidget(self.keep)
        rows = QVBoxLayout(self)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setSpacing(Space.M)
        rows.addWidget(rolling(self, (self.said, self.bar, *parts, self.fold, self.bad)), 1)
        rows.addLayout(buttons)
        whole = QVBoxLayout(dialog)
        whole.setContentsMargins(Space.L, Space.L, Space.L, Space.L)
        whole.addWidget(self)
        letter, line = self.fontMetrics().averageCharWidth(), self.fontMetrics().height()
        dialog.resize(min(letter * 130, 980), min(line * lines, most_px))

    # --- showing

    def begin(self, words: str) -> None:
        """At work on the file."""
        self.say(words, "soft")
        self.bar.show()
        self.keep.setEnabled(False)

    def rest(self) -> None:
        """The work is done."""
        self.bar.hide()
        self.bar.setRange(0, 0)

    def say(self, words: str, role: str) -> None:
        """How the file was read, or what stands in the way."""
        tell(self.said, words, role)
        self.said.setVisible(bool(words))

    def show_bad(self, heading: str, lines: Iterable[str], count: int) -> None:
        """The lines that are not kept, and how many there are; without any the fold goes."""
        listed = list(islice(lines, MOST_BAD))
        if count > MOST_BAD:
            listed.append(self.tr("... and {n} more").format(n=count - MOST_BAD))
        self.fold.setText(heading)
        self.fold.setVisible(count > 0)
        self.bad.setPlainText("\n".join(listed))
        self.bad.setVisible(count > 0 and self.unfolded)

    @property
    def unfolded(self) -> bool:
        """Whether the lines that are not kept are listed."""
        return self.fold.arrowType() is Qt.ArrowType.DownArrow

    @Slot()
    def _fold(self) -> None:
        self.fold.setArrowType(Qt.ArrowType.RightArrow if self.unfolded else Qt.ArrowType.DownArrow)
        self.bad.setVisible(self.unfolded)
