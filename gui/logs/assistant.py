"""Log assistant: a file of a logger or a scale, how it is read, and Keep or Leave.

In    a book, `Work`, the path of a file
Out   a dialog; `kept` after readings came into the book
Not   how a file is read (`data/logs/sheet.py`), the words (`view.py`), the table (`preview.py`)

The file is read and kept in the background; an answer that is late (another reading was chosen) is dropped.
"""

from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QComboBox, QDialog, QPlainTextEdit, QPushButton, QWidget

from data.book import Book
from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.logs.columns import ColumnAs
from data.logs.readas import ReadAs
from data.logs.sheet import LogRefused, LogSheet
from data.readings import KeptLog
from data.upkeep.logkeeping import keep_sheet
from gui.controls.progress import count_words
from gui.language.plainbutton import plain_button
from gui.language.spoken import begun, spoken
from gui.logs.form import LogForm
from gui.logs.view import Looked, kept_words, look_at_log, read_words
from gui.work import Job, Work

__all__ = ["LogAssistant"]

LARGEST = 64_000_000  # bytes; 100,000 rows of a logger are some 5 MB


class LogAssistant(QDialog):
    """One file, from its first look to Keep."""

    kept = Signal()

    def __init__(self, book: Book, work: Work, path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book, self._work, self._path = book, work, path
        self._data: bytes | None = None
        self._job: Job | None = None
        self._asked = 0
        self._keeping = False
        self.looked: Looked | None = None
        self.told = ""
        self.answers: list[QPushButton] = []
        self.setWindowTitle(self.tr("Bring in {file}").format(file=path.name))
        self.form = LogForm(book, self)
        self.form.changed.connect(self._change)
        self.form.preview.column_chosen.connect(self._change_column)
        self.form.keep.clicked.connect(self.keep)
        self.form.leave.clicked.connect(self.reject)
        self._look(None)

    @property
    def bad(self) -> QPlainTextEdit:
        """The rows that are not kept."""
        return self.form.bad

    @property
    def place(self) -> QComboBox:
        """Of which tray or shelf the readings are."""
        return self.form.place

    # --- reading

    def _look(self, read_as: ReadAs | None) -> None:
        self._stop()
        asked, book, path, data = self._asked, self._book, self._path, self._data

        def task(token: CancelToken, report: Progress) -> tuple[bytes, Looked]:
            if data is None and path.stat().st_size > LARGEST:
                raise OSError("too large")
            content = path.read_bytes() if data is None else data
            return content, look_at_log(book, content, path.name, read_as, asked, token.at_each(report))

        self.form.begin(self.tr("Reading {file}.").format(file=path.name))
        self._job = self._work.start(task)
        self._job.progressed.connect(self._show_progress)
        self._job.finished.connect(self._show)
        self._job.failed.connect(self._fail)

    @Slot(object)
    def _show(self, answer: tuple[bytes, Looked]) -> None:
        data, looked = answer
        if looked.asked != self._asked:
            return
        self._data = data
        self._rest()
        sheet = looked.sheet
        if isinstance(sheet, LogRefused):
            words = spoken(sheet.sentence)
            if self.looked is None:
                self.form.show_nothing()
            self.form.say(words, "alarm")
            return
        self.looked = looked
        self.form.show_sheet(sheet)
        self.form.say("\n".join([read_words(sheet), *(spoken(note) for note in sheet.notes)]), "soft")
        self._show_questions(sheet)
        self._show_bad(looked)
        self.form.count.setText(kept_words(looked))
        self.form.keep.setEnabled(looked.can_keep)
        if self.answers:
            self.answers[0].setFocus()
        elif looked.can_keep:
            self.form.keep.setFocus()

    def _show_questions(self, sheet: LogSheet) -> None:
        self.answers = []
        rows = []
        for question in sheet.questions:
            buttons = []
            for choice in question.choices:
                button = QPushButton(plain_button(begun(spoken(choice.text))), self)
                button.setAutoDefault(True)
                button.setAccessibleName(f"{spoken(question.text)} {spoken(choice.text)}")
                button.setProperty("answer", len(self.answers))
                button.clicked.connect(self._answer)
                self.answers.append(button)
                buttons.append(button)
            rows.append((spoken(question.text), buttons))
        self._readings = [choice.read_as for question in sheet.questions for choice in question.choices]
        self.form.show_questions(rows)

    def _show_bad(self, looked: Looked) -> None:
        lines = (
            self.tr("Line {line}: {why} ({text})").format(
                line=row.line, why=spoken(row.reason), text=row.text[:60]
            )
            for row in looked.bad
        )
        count = len(looked.bad)
        self.form.show_bad(self.tr("Rows that are not kept: {n}").format(n=count), lines, count)

    # --- answers

    @Slot()
    def _answer(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self._look(self._readings[button.property("answer")])

    @Slot(int, object)
    def _change_column(self, number: int, column: ColumnAs) -> None:
        if self.looked is not None and isinstance(self.looked.sheet, LogSheet):
            self._look(self.looked.sheet.read_as.with_column(number, column))

    @Slot(object)
    def _change(self, read_as: ReadAs) -> None:
        sheet = None if self.looked is None else self.looked.sheet
        if isinstance(sheet, LogSheet) and read_as != sheet.read_as:
            self._look(read_as)

    # --- keeping

    @Slot()
    def keep(self) -> None:
        """Keep the readings, in the background."""
        looked = self.looked
        if looked is None or not looked.can_keep or self._job is not None:
            return
        book, sheet = self._book, looked.sheet
        assert isinstance(sheet, LogSheet)

        def task(token: CancelToken, report: Progress) -> KeptLog:
            return keep_sheet(book, sheet, token.at_each(report))[0]  # cancelled within the transaction

        self._keeping = True
        self.form.begin(self.tr("Keeping the readings."))
        self.form.freeze(True)
        self.form.leave.setFocus()
        self._job = self._work.start(task, self.tr("Keeping the readings."), whole=True)
        self._job.told_elsewhere = True
        self._job.progressed.connect(self._show_progress)
        self._job.finished.connect(self._kept)
        self._job.failed.connect(self._fail)
        self._job.cancelled.connect(self._cancelled)

    @Slot()
    def _show_progress(self) -> None:
        job = self._job
        if job is None or job is not self.sender() or job.stopping:
            return
        self.form.bar.setRange(0, job.total)
        self.form.bar.setValue(job.done)
        words = self.tr("Keeping the readings: {count}.") if self._keeping else self.tr("Reading: {count}.")
        self.form.say(words.format(count=count_words(job)), "soft")

    @Slot()
    def _cancelled(self) -> None:
        self._end_keeping()
        self.form.say(self.tr("Stopped; nothing of the file was kept."), "soft")
        self.form.keep.setEnabled(True)

    def _end_keeping(self) -> None:
        self._keeping = False
        self.form.freeze(False)
        self._rest()

    @Slot(object)
    def _kept(self, log: KeptLog) -> None:
        self._end_keeping()
        self.told = spoken(log.sentence)
        self.kept.emit()
        self.accept()

    @Slot(object)
    def _fail(self, error: Exception) -> None:
        self._end_keeping()
        if isinstance(error, BookError):
            self.form.say(spoken(error), "alarm")
        elif self._data is None:
            self.form.say(
                self.tr("{file} cannot be opened, or is too large.").format(file=self._path.name), "alarm"
            )
        else:
            self.form.say(self.tr("This did not work; nothing was kept."), "alarm")

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
        """Leave nothing running; while readings are kept this cancels it, and the assistant stays."""
        if self._keeping and self._job is not None:
            self._job.cancel()
            self.form.say(self.tr("Stopping; nothing of the file is kept."), "soft")
            return
        self._stop()
        super().done(result)
