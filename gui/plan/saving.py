"""Saving sheets: what is chosen to be printed for a trial goes into a PDF.

In    the print page
Out   a file; `told` with what was saved, `trouble` with why it was not
Not   what stands on the sheets (`printing.py`, `gui/sheets.py`), writing pages (`paper/pdf.py`)
"""

from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from gui.controls.choosing import ask_new_file
from gui.plan.printing import PrintPage

__all__ = ["SheetSaving"]


class SheetSaving(QObject):
    """Asks where, and writes."""

    told = Signal(str)
    trouble = Signal(str)

    def __init__(self, page: PrintPage, over: QWidget) -> None:
        super().__init__(over)
        self._page, self._over = page, over

    def ask(self) -> None:
        """Let the grower say where the sheets go."""
        if not self._page.pages():
            self.told.emit(self.tr("Choose something to print first."))
            return
        name = f"{self._page.title} {self.tr('sheets')}.pdf"
        path = ask_new_file(self._over, self.tr("Save the sheets"), name, "PDF (*.pdf)")
        if path is not None:
            self.save(path)

    def save(self, path: Path) -> None:
        """Write what is chosen as a PDF."""
        from gui.paper.pdf import write_pdf

        page = self._page
        try:
            write_pdf(path, page.pages(), page.chosen_paper, page.title)
        except OSError as error:
            words = self.tr("The sheets were not saved: {why}. Choose another folder.")
            self.trouble.emit(words.format(why=error.strerror or str(error)))
            return
        self.told.emit(self.tr("Saved: {file}. Print at 100 %.").format(file=path))
