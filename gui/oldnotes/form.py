"""Old notes form: the parts of the assistant for tables of trays, laid out.

In    a `NotesLooked`, a question with its answers
Out   the widgets
Not   what a choice does (`assistant.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QPushButton,
)

from gui.controls.fileform import FileForm
from gui.language.spoken import spoken
from gui.oldnotes.preview import OldNotesPreview
from gui.oldnotes.view import NotesLooked, first_words
from gui.style.palette import set_role
from gui.style.words import wrapped

__all__ = ["OldNotesForm"]


class OldNotesForm(FileForm):
    """Everything that is seen of one file."""

    def __init__(self, dialog: QDialog) -> None:
        super().__init__(dialog)
        self.question = QFrame(self)
        set_role(self.question, "band-notice")
        self._asked = wrapped("", self.question)
        self._answers = QHBoxLayout(self.question)
        self._answers.addWidget(self._asked, 1)
        self.preview = OldNotesPreview(self)
        self.trays = wrapped("", self)
        self.trays.setTextFormat(Qt.TextFormat.PlainText)
        self.trays.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.make_end(self.tr("Lines that are not kept, and why"))
        self.lay_out(dialog, (self.question, self.preview, self.trays), 32, 600)
        for part in (self.question, self.preview, self.trays, self.fold, self.bad):
            part.hide()

    # --- showing

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
        heading = self.tr("Lines that are not kept: {n}").format(n=len(refused))
        self.show_bad(heading, (spoken(one) for one in refused), len(refused))
