"""Guest dialog: another book, what is in it, what its names mean, and Bring in.

In    the open book, `Work`, the file or folder of another book
Out   `changed` after its trays came in; `told` with what was added
Not   opening it (`guestopening.py`), adding it (`data/travel/merging.py`), the words (`view.py`)

Opening and adding run in the background. Leave or Esc stops what runs; stopped, nothing was added.
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.travel.guestbook import GuestBook
from data.travel.guestlook import GuestLook
from data.travel.merging import Merged, merge
from gui.controls.progress import ProgressLine
from gui.controls.rolling import rolling
from gui.controls.tabstops import order_stops
from gui.controls.telling import tell
from gui.language.spoken import begun, spoken
from gui.style.palette import Space, set_role
from gui.travel.guestopening import GuestOpening, let_go
from gui.travel.guesttable import GuestTable
from gui.travel.samenames import SameNames
from gui.travel.view import added_words, count_words, left_words, what_words
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["GuestDialog"]


class GuestDialog(QDialog):
    """One guest, from its opening to Bring in."""

    changed = Signal()

    def __init__(self, book: "Book", work: Work, source: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book, self._work, self._source = book, work, source
        self._guest: GuestBook | None = None
        self._job: Job | None = None
        self._opening: GuestOpening | None = None
        self._adding = False
        self.look: GuestLook | None = None
        self.names: SameNames | None = None
        self.told = ""
        self.setWindowTitle(self.tr("Bring in {name}").format(name=source.name))
        self._lay_out()
        self._open()

    def _lay_out(self) -> None:
        self.said, self.count = QLabel(self), QLabel(self)
        for label in (self.said, self.count):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.running = QVBoxLayout()
        self.table = GuestTable(self)
        self.leave = QPushButton(self.tr("Leave"), self)
        self.leave.setAutoDefault(False)
        self.leave.clicked.connect(self.reject)
        self.add = QPushButton(self.tr("Bring in"), self)
        self.add.setEnabled(False)
        self.add.setDefault(True)
        set_role(self.add, "main")
        self.add.clicked.connect(self.bring_in)
        self.asked = QWidget(self)
        self._questions = QVBoxLayout(self.asked)
        self._questions.setContentsMargins(0, 0, 0, 0)
        self.asked.hide()
        roll = rolling(self, (self.said, self.asked, self.table), Space.L)
        buttons = QHBoxLayout()
        buttons.setSpacing(Space.S)
        buttons.addWidget(self.count, 1)
        buttons.addWidget(self.leave)
        buttons.addWidget(self.add)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        whole.setSpacing(Space.M)
        whole.addWidget(roll, 1)
        whole.addLayout(self.running)
        whole.addLayout(buttons)
        letter, line = self.fontMetrics().averageCharWidth(), self.fontMetrics().height()
        self.resize(min(letter * 120, 960), min(line * 34, 620))
        self.table.hide()

    # --- opening

    def _open(self) -> None:
        self._say(self.tr("{name} is being opened.").format(name=self._source.name), "soft")
        self._opening = GuestOpening(self._book, self._work, self._source)
        self._opening.opened.connect(self._show)
        self._opening.failed.connect(self._fail)
        self._opening.stopped.connect(self._stopped)
        self._show_running(self._opening.job)

    @Slot(object)
    def _show(self, opened: tuple[GuestBook, GuestLook]) -> None:
        guest, look = opened
        self._rest()
        self._guest, self.look = guest, look
        self._say(
            " ".join(
                (
                    what_words(look),
                    self.tr(
                        "Before anything is added, the book as it is now is copied into its folder backups. "
                        "Undo takes all of it back, as long as nothing kept later rests on it."
                    ),
                )
            ),
            "",
        )
        if look.asked:
            self.names = SameNames(look, guest.name, self)
            self.names.changed.connect(self._renew)
            self._questions.addWidget(self.names)
            self.asked.show()
            if (layout := self.layout()) is not None:
                order_stops(layout)  # the questions are younger than the buttons below them
        self._renew()
        if self.names is not None:
            self.names.groups[look.asked[0]].buttons()[0].setFocus()
        else:
            self.add.setFocus()

    @Slot()
    def _renew(self) -> None:
        """What would be added, as the answers stand now."""
        look = self.look
        if look is None:
            return
        answers = {} if self.names is None else self.names.answers
        self.table.show_trays(look, look.known(answers))
        self.table.show()
        self.count.setText(left_words(look, answers) or count_words(look, answers))
        self.add.setEnabled(self._job is None and (self.names is None or self.names.is_answered))

    # --- adding

    @Slot()
    def bring_in(self) -> None:
        """Add what the guest has, in the background."""
        if self._guest is None or self._job is not None or not self.add.isEnabled():
            return
        book, guest = self._book, self._guest
        answers = {} if self.names is None else dict(self.names.answers)
        label = guest.name if self.names is None else self.names.label_text or guest.name

        def task(cancel: CancelToken, report: Progress) -> Merged:
            return merge(book, guest.book, answers, label, cancel, report, originals_in=guest.originals_in)

        self._adding = True
        job = self._work.start(task, self.tr("Bringing in the book"), whole=True)
        job.finished.connect(self._added)
        job.failed.connect(self._fail)
        job.cancelled.connect(self._stopped)
        self._show_running(job)

    @Slot(object)
    def _added(self, merged: Merged) -> None:
        self._rest()
        self.told = added_words(merged)
        self.changed.emit()
        self.accept()

    # --- the state of the work

    def _show_running(self, job: Job) -> None:
        self._line = ProgressLine(job, self)
        self._line.cancel.hide()  # Leave does it
        self.running.addWidget(self._line)
        job.progressed.connect(self._line.renew)
        self._job = job
        self.add.setEnabled(False)
        self.leave.setText(self.tr("Cancel"))
        if self.names is not None:
            self.names.setEnabled(False)

    def _rest(self) -> None:
        self._job, self._adding, self._opening = None, False, None
        self._line.hide()
        self._line.deleteLater()
        self.leave.setText(self.tr("Leave"))
        self.leave.setEnabled(True)
        if self.names is not None:
            self.names.setEnabled(True)

    @Slot(object)
    def _fail(self, error: Exception) -> None:
        self._rest()
        words = self.tr("This did not work, and nothing was added. What happened is in the log.")
        self._say(begun(spoken(error)) if isinstance(error, BookError) else words, "alarm")
        self._renew()

    @Slot()
    def _stopped(self) -> None:
        self._rest()
        self._say(self.tr("Stopped; nothing was added."), "soft")
        self._renew()

    def done(self, result: int) -> None:
        """Leave nothing running and nothing copied; what is being added is stopped first."""
        if self._job is not None and self._adding:
            self._job.cancel()
            self.leave.setEnabled(False)
            return
        if self._opening is not None:
            self._opening.leave()
            self._job = self._opening = None
        if self._guest is not None:
            let_go(self._work, self._guest)
            self._guest = None
        super().done(result)

    def _say(self, words: str, role: str) -> None:
        tell(self.said, words, role)
