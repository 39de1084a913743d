"""Saving sheets: what is chosen to be printed for a trial goes into a PDF.

In    the print page; `Work`
Out   a file; `begun`, then `told` with what was saved or `trouble` with why it was not
Not   what stands on the sheets (`printing.py`, `gui/sheets.py`), writing pages (`paper/pdf.py`)
"""

from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from data.cancel import CancelToken, Progress
from gui.controls.choosing import ask_new_file
from gui.mishap import trouble_words
from gui.plan.printing import PrintPage
from gui.work import Work

__all__ = ["SheetSaving"]


class SheetSaving(QObject):
    """Asks where, and writes."""

    begun = Signal(str)
    told = Signal(str)
    trouble = Signal(str)

    def __init__(self, work: Work, page: PrintPage, over: QWidget) -> None:
        super().__init__(over)
        self._work, self._page, self._over = work, page, over

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
        """Write what is chosen as a PDF, in the background: a large trial takes seconds."""
        pages, paper, title = self._page.pages(), self._page.chosen_paper, self._page.title

        def write(_token: CancelToken, _report: Progress) -> Path:
            from gui.paper.pdf import write_pdf

            write_pdf(path, pages, paper, title)
            return path

        self.begun.emit(self.tr("The sheets are being written."))
        job = self._work.start(write)  # not among the long ones, or it would wait for photos
        job.finished.connect(self._saved)
        job.failed.connect(self._not_saved)

    @Slot(object)
    def _saved(self, path: Path) -> None:
        self.told.emit(self.tr("Saved: {file}. Print at 100 %.").format(file=path))

    @Slot(object)
    def _not_saved(self, error: Exception) -> None:
        if isinstance(error, OSError):
            words = self.tr("The sheets were not saved: {why}. Choose another folder.")
            self.trouble.emit(words.format(why=error.strerror or str(error)))
        else:
            self.trouble.emit(trouble_words(error))
