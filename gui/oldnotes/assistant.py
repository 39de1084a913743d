"""Old notes assistant: a table of trays that was kept before, how it is read, and Keep or Leave.

In    a book, `Work`, the path of a file
Out   a dialog; `kept` after trays came into the book
Not   how a file is read (`data/logs/oldnotes.py`), the words (`view.py`), what is seen (`form.py`)

The file is read and kept in the background; an answer that is late (another reading was chosen) is dropped.
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QDialog, QPushButton, QWidget

from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.logs.oldcolumns import Field
from data.logs.times import DateOrder
from gui.language.spoken import begun, spoken
from gui.oldnotes.form import OldNotesForm
from gui.oldnotes.view import NotesLooked, kept_words, look_at_notes, order_words, read_words
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["OldNotesAssistant"]

LARGEST = 64_000_000  # bytes; the reader says what is too large, this only spares the memory


class OldNotesAssistant(QDialog):
    """One file, from its first look to Keep."""

    kept = Signal()

    def __init__(self, book: "Book", work: Work, path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book, self._work, self._path = book, work, path
        self._data: bytes | None = None
        self._job: Job | None = None
        self._asked = 0
        self._keeping = False
        self._fields: tuple[Field | None, ...] | None = None
        self._order: DateOrder | None = None
        self.looked: NotesLooked | None = None
        self.told = ""
        self.answers: list[QPushButton] = []
        self.setWindowTitle(self.tr("Bring in {file}").format(file=path.name))
        self.form = OldNotesForm(self)
        self.form.preview.column_chosen.connect(self._change_column)
        self.form.keep.clicked.connect(self.keep)
        self.form.leave.clicked.connect(self.reject)
        self._look()

    # --- reading

    def _look(self) -> None:
        self._stop()
        asked, book, path, data = self._asked, self._book, self._path, self._data
        fields, order = self._fields, self._order

        def task(token: CancelToken, _report: Progress) -> tuple[bytes, NotesLooked]:
            if data is None and path.stat().st_size > LARGEST:
                raise OSError("too large")
            content = path.read_bytes() if data is None else data
            token.check()
            return content, look_at_notes(book, content, fields, order, asked, path.name)

        self.form.begin(self.tr("Reading {file}.").format(file=path.name))
        self._job = self._work.start(task)
        self._job.finished.connect(self._show)
        self._job.failed.connect(self._fail)

    @Slot(object)
    def _show(self, answer: tuple[bytes, NotesLooked]) -> None:
        data, looked = answer
        if looked.asked != self._asked:
            return
        self._rest()
        self._data, self.looked, self._fields = data, looked, looked.fields or None
        self.form.say(read_words(looked), "soft" if looked.trouble is None else "alarm")
        self._show_question(looked)
        self.form.show_notes(looked)
        self.form.count.setText(kept_words(looked))
        self.form.keep.setEnabled(looked.can_keep)
        if self.answers:
            self.answers[0].setFocus()
        elif looked.can_keep and not self.form.preview.hasFocus():
            self.form.keep.setFocus()

    def _show_question(self, looked: NotesLooked) -> None:
        self.answers = []
        for order, day in looked.choices:
            button = QPushButton(order_words(order, day), self)
            button.setAutoDefault(True)
            button.setProperty("order", order)
            button.clicked.connect(self._answer)
            self.answers.append(button)
        words = "" if looked.trouble is None or not self.answers else begun(spoken(looked.trouble))
        if words:
            self.form.say("", "soft")
        self.form.show_question(words, self.answers)

    # --- answers

    @Slot()
    def _answer(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self._order = DateOrder(button.property("order"))
            self._look()

    @Slot(int, object)
    def _change_column(self, number: int, name: str | None) -> None:
        """Two columns cannot be one thing: the other one goes into the note."""
        if self._fields is not None:
            field = None if name is None else Field(name)
            taken = [None if one is field else one for one in self._fields]
            taken[number] = field
            self._fields = tuple(taken)
            self._look()

    # --- keeping

    @Slot()
    def keep(self) -> None:
        """Keep the trays, in the background."""
        looked, book, name = self.looked, self._book, self._path.name
        if looked is None or looked.notes is None or not looked.can_keep or self._job is not None:
            return
        notes = looked.notes

        def task(_token: CancelToken, _report: Progress) -> int:
            return len(book.keep_old_notes(notes, name))

        self._keeping = True
        self.form.begin(self.tr("Keeping the trays."))
        self._job = self._work.start(task)
        self._job.finished.connect(self._kept)
        self._job.failed.connect(self._fail)

    @Slot(object)
    def _kept(self, count: int) -> None:
        self._keeping = False
        self._rest()
        self.told = self.tr("Trays kept: {n}. Undo takes them back.").format(n=count)
        self.kept.emit()
        self.accept()

    @Slot(object)
    def _fail(self, error: Exception) -> None:
        self._keeping = False
        self._rest()
        if isinstance(error, BookError):
            words = begun(spoken(error))
        elif self._data is None:
            words = self.tr("{file} cannot be opened, or is too large.").format(file=self._path.name)
        else:
            words = self.tr("This did not work; nothing was kept.")
        self.form.say(words, "alarm")

    # --- the state of the work

    def _rest(self) -> None:
        self._job = None
        self.form.rest()

    def _stop(self) -> None:
        self._asked += 1
        if self._job is not None:
            self._job.cancel()
        self._rest()

    def done(self, result: int) -> None:
        """Leave nothing running; what is being kept is waited for."""
        if self._keeping:
            return
        self._stop()
        super().done(result)
