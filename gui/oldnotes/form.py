"""Old notes form: the parts of the assistant for tables of trays, laid out.

In    a `NotesLooked`, a question with its answers
Out   the widgets
Not   what a choice does (`assistant.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPlainTextEdit,
    QProgressBar,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from gui.controls.rolling import rolling
from gui.language.spoken import spoken
from gui.oldnotes.preview import OldNotesPreview
from gui.oldnotes.view import NotesLooked, first_words
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["OldNotesForm"]

MOST_BAD = 200  # lines that are listed; the others are counted


class OldNotesForm(QWidget):
    """Everything that is seen of one file."""

    def __init__(self, dialog: QDialog) -> None:
        super().__init__(dialog)
        self.said, self.count = QLabel(self), QLabel(self)
        for label in (self.said, self.count):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.bar = QProgressBar(self)
        self.bar.setRange(0, 0)
        self.bar.setAccessibleName(self.tr("At work on the file"))
        self.question = QFrame(self)
        set_role(self.question, "band-notice")
        self._asked = wrapped("", self.question)
        self._answers = QHBoxLayout(self.question)
        self._answers.addWidget(self._asked, 1)
        self.preview = OldNotesPreview(self)
        self.trays = wrapped("", self)
        self.trays.setTextFormat(Qt.TextFormat.PlainText)
        self.trays.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.fold = QToolButton(self)
        self.fold.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.fold.setArrowType(Qt.ArrowType.RightArrow)
        self.fold.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.fold.clicked.connect(self._fold)
        set_role(self.fold, "quiet")
        self.bad = QPlainTextEdit(self)
        self.bad.setReadOnly(True)
        self.bad.setTabChangesFocus(True)
        self.bad.setAccessibleName(self.tr("Lines that are not kept, and why"))
        self.leave, self.keep = QPushButton(self.tr("Leave"), self), QPushButton(self.tr("Keep"), self)
        self.leave.setAutoDefault(False)
        self.keep.setDefault(True)
        self.keep.setEnabled(False)
        set_role(self.keep, "main")
        self._lay_out(dialog)

    def _lay_out(self, dialog: QDialog) -> None:
        line, letter = self.fontMetrics().height(), self.fontMetrics().averageCharWidth()
        self.bad.setMinimumHeight(line * 5)
        parts = (self.said, self.bar, self.question, self.preview, self.trays, self.fold, self.bad)
        buttons = QHBoxLayout()
        buttons.addWidget(self.count, 1)
        buttons.addWidget(self.leave)
        buttons.addWidget(self.keep)
        rows = QVBoxLayout(self)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setSpacing(Space.M)
        rows.addWidget(rolling(self, parts), 1)
        rows.addLayout(buttons)
        whole = QVBoxLayout(dialog)
        whole.setContentsMargins(Space.L, Space.L, Space.L, Space.L)
        whole.addWidget(self)
        dialog.resize(min(letter * 130, 980), min(line * 32, 600))
        for part in (self.question, self.preview, self.trays, self.fold, self.bad):
            part.hide()

    # --- showing

    def say(self, words: str, role: str) -> None:
        """Say how the file was read, or what stands in the way."""
        set_role(self.said, role)
        self.said.setText(words)
        self.said.setVisible(bool(words))

    def show_question(self, words: str, answers: Sequence[QPushButton]) -> None:
        """What is open, with its answers; nothing where nothing is."""
        while self._answers.count() > 1:
            item = self._answers.takeAt(1)
            old = None if item is None else item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        self._asked.setText(words)
        for button in answers:
            button.setAccessibleName(f"{words} {button.text()}")
            self._answers.addWidget(button)
        self.question.setVisible(bool(answers))

    def show_notes(self, looked: NotesLooked) -> None:
        """The first lines, and the lines that are left out."""
        self.preview.show_notes(looked)
        self.preview.setVisible(looked.table is not None)
        trays = first_words(looked)
        self.trays.setText(trays)
        self.trays.setVisible(bool(trays))
        refused = () if looked.notes is None else looked.notes.refused
        lines = [spoken(one) for one in refused[:MOST_BAD]]
        if len(refused) > MOST_BAD:
            lines.append(self.tr("... and {n} more").format(n=len(refused) - MOST_BAD))
        self.fold.setText(self.tr("Lines that are not kept: {n}").format(n=len(refused)))
        self.fold.setVisible(bool(refused))
        self.bad.setPlainText("\n".join(lines))
        self.bad.setVisible(bool(refused) and self.unfolded)

    @property
    def unfolded(self) -> bool:
        """Whether the lines that are not kept are listed."""
        return self.fold.arrowType() is Qt.ArrowType.DownArrow

    @Slot()
    def _fold(self) -> None:
        self.fold.setArrowType(Qt.ArrowType.RightArrow if self.unfolded else Qt.ArrowType.DownArrow)
        self.bad.setVisible(self.unfolded)
