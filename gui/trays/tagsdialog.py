"""Tags dialog: tags of all trays and station cards to print, without a trial.

In    the book; `Work`, which writes the file
Out   a PDF where the person wants it; a sentence for the foot
Not   sheets of a trial (`plan/screen.py`), what stands on a page (`sheets.py`)
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from gui.controls.choosing import ask_new_file
from gui.controls.telling import tell
from gui.plan.printing import PrintPage
from gui.plan.saving import SheetSaving
from gui.sheets import SheetKind, printed_of_book
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["TagsDialog"]


class TagsDialog(QDialog):
    """Tags of what grows and of what is drawn and not sown yet."""

    def __init__(self, book: "Book", work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Tags and station cards"))
        self.page = PrintPage(self)
        printed = printed_of_book(book)
        self.page.kinds[SheetKind.STATION].setChecked(True)
        self.page.kinds[SheetKind.TAGS].setChecked(bool(printed.tags))
        self.page.show_printed(printed)
        self.saving = SheetSaving(work, self.page, self)
        self.saving.begun.connect(self._begun)
        self.saving.told.connect(self._saved)
        self.saving.trouble.connect(self._not_saved)
        self.trouble = wrapped("", self, "alarm")
        self.trouble.hide()
        self.told = ""
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.reject)
        self.save = QPushButton(self.tr("Save as PDF..."), self)
        set_role(self.save, "main")
        self.save.setDefault(True)
        self.save.clicked.connect(self._save)
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        row.addStretch(1)
        row.addWidget(close)
        row.addWidget(self.save)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        column.setSpacing(Space.M)
        column.addWidget(self.page, 1)
        column.addWidget(self.trouble)
        column.addLayout(row)
        self.resize(900, 600)

    @Slot()
    def _save(self) -> None:
        if not self.page.pages():
            self._say(self.tr("Choose something to print first."), "alarm")
            return
        path = ask_new_file(
            self, self.tr("Save the sheets"), self.tr("tags and station cards") + ".pdf", "PDF (*.pdf)"
        )
        if path is not None:
            self.save_to(path)

    def save_to(self, path: Path) -> None:
        """Write what is chosen; what stands in the way is told in place."""
        self.save.setEnabled(False)
        self.saving.save(path)

    @Slot(str)
    def _begun(self, words: str) -> None:
        self._say(words, "soft")

    @Slot(str)
    def _saved(self, words: str) -> None:
        self.told = words
        self.accept()

    @Slot(str)
    def _not_saved(self, words: str) -> None:
        self.save.setEnabled(True)
        self._say(words, "alarm")

    def _say(self, words: str, role: str) -> None:
        tell(self.trouble, words, role)
        self.trouble.show()
