"""Following: every screen shows the book as it is now; what was done can be taken back.

In    the desk with the open book, the screens; which one is in front
Out   screens renewed: the one in front at once, at most four times a second, the others as they come to the
      front; `turned` after undo and redo, `undo_shown` with what could be taken back
Not   what a screen reads (each screen), what undo does (`data/chapters/changes.py`)
"""

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from data.cancel import CancelToken, Progress
from data.errors import BookError
from gui.frame.bookdesk import BookDesk
from gui.frame.screens import Screens
from gui.language.spoken import spoken
from gui.work import Work

__all__ = ["Following"]

RENEWED_EVERY_MS = 250
LOOKED_EVERY_MS = 3000  # whether another window has written into the book, or midnight has passed


class Following(QObject):
    """Who has not yet seen the newest book."""

    turned = Signal(str)  # what was taken back or done again, in words
    undo_shown = Signal(object, object)  # what could be taken back, what done again; None where nothing

    def __init__(self, desk: BookDesk, work: Work, screens: Screens, parent: QObject) -> None:
        super().__init__(parent)
        self._desk, self._work, self._screens = desk, work, screens
        self._stale: set[str] = set()
        self._in_front = ""
        self._taking_back = False  # a whole book out of the open one, in the background
        self._renewing = QTimer(self, singleShot=True, interval=RENEWED_EVERY_MS)
        self._renewing.timeout.connect(self._renew_if_stale)
        self._looking = QTimer(self, interval=LOOKED_EVERY_MS)
        self._looking.timeout.connect(self._look_for_news)
        self._looking.start()

    def show_book(self) -> None:
        """Another book lies open; every screen has been given it. Nothing is told of what was on its way."""
        self._stale.clear()
        self._taking_back = False
        self.show_undo()

    def bring_to_front(self, name: str) -> None:
        """This screen is seen from now on, and must be true."""
        self._in_front = name
        if name in self._stale:
            self._stale.discard(name)
            self._screens[name].renew()

    @Slot()
    def book_changed(self) -> None:
        """Something was kept, said or taken back."""
        self._stale = set(self._screens.made)  # one that is made later reads the book as it is then
        if not self._renewing.isActive():
            self._renew_if_stale()

    @Slot()
    def _renew_if_stale(self) -> None:
        if self._in_front not in self._stale:
            return
        self._stale.discard(self._in_front)
        self._screens[self._in_front].renew()
        self.show_undo()
        self._renewing.start()

    @Slot()
    def _look_for_news(self) -> None:
        """What came into the book from outside, or with a new day, is shown as if it had come from here."""
        if self._desk.book is not None and self._desk.has_news():
            self.book_changed()

    # --- undo

    def show_undo(self) -> None:
        """Say what could be taken back and done again: nothing, while something is on its way back."""
        if self._taking_back:
            self.undo_shown.emit(None, None)
            return
        undo, redo = (text if text is None else spoken(text) for text in self._desk.undo_texts())
        self.undo_shown.emit(undo, redo)

    @Slot()
    def undo(self) -> None:
        """Take back the last change; a whole book that came in in the background."""
        if not self._desk.undo_takes_long():
            self._turn(self._desk.undo(), self.tr("Taken back: {what}"))
            return
        book = self._desk.book
        assert book is not None

        def task(cancel: CancelToken, report: Progress) -> str | None:
            return book.undo(cancel.at_each(report))

        self._taking_back = True
        self.show_undo()
        job = self._work.start(task, self.tr("Taking back"), whole=True)
        job.finished.connect(self._undone)
        job.failed.connect(self._not_undone)
        job.cancelled.connect(self._undo_stopped)

    @Slot(object)
    def _undone(self, text: str | None) -> None:
        if not self._taking_back:
            return
        if text is None:  # something was noted before its turn came
            self._undo_stopped()
            return
        self._taking_back = False
        self._turn(text, self.tr("Taken back: {what}"))

    @Slot(object)
    def _not_undone(self, error: Exception) -> None:
        if not self._taking_back:
            return
        words = self.tr("This could not be taken back; the book is as it was.")
        self._taking_back = False
        self._desk.trouble.emit(spoken(error) if isinstance(error, BookError) else words)
        self.show_undo()

    @Slot()
    def _undo_stopped(self) -> None:
        if not self._taking_back:
            return
        self._taking_back = False
        self.turned.emit(self.tr("Nothing was taken back; the book is as it was."))
        self.show_undo()

    @Slot()
    def redo(self) -> None:
        """Do again what was taken back."""
        self._turn(self._desk.redo(), self.tr("Done again: {what}"))

    def _turn(self, text: str | None, words: str) -> None:
        if text is not None:
            self.turned.emit(words.format(what=spoken(text)))
            self._renewing.stop()
            self.book_changed()
