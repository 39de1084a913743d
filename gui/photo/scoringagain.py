"""Scoring again: the one job of a window that scores kept photos by the present method, for all who offer it.

In    a book, `Work`
Out   the job with its progress; `changed` as it begins, gets on and ends; `ended` with the words of its end
Not   scoring and keeping (`data/upkeep/rescoring.py`), the offers (`intake/againband.py`,
      `traysheet/mendpage.py`)

The method is asked for in a job, since that loads the model. Old scores stay beside the new ones.
"""

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal, Slot

from data.book import Book
from data.cancel import CancelToken, Progress
from data.upkeep.rescoring import Stale, give_up, learned_method, rescore_all, stale_photos, to_offer
from gui.language.spoken import filled, in_figures
from gui.language.words import translate
from gui.work import Job, Work

__all__ = ["ScoringAgain", "count_stale", "minutes_words", "scoring_again"]


class ScoringAgain(QObject):
    """At most one job at a time, whichever screen began it."""

    changed = Signal()
    ended = Signal(str)  # in words
    failed = Signal(object)

    def __init__(self, work: Work) -> None:
        super().__init__(work)
        self._work = work
        self.job: Job | None = None

    def begin(self, book: Book) -> None:
        """Score all photos of the book that lack a whole score by the present method."""
        if self.job is not None:
            return
        work = self._work

        def score(token: CancelToken, report: Progress) -> tuple[int, int] | None:
            return _score(book, work, token, report)

        self.job = self._work.start(score, self.tr("Scoring photos again"), scores=True)
        self.job.progressed.connect(self.changed)
        self.job.finished.connect(self._finished)
        self.job.failed.connect(self._failed)
        self.job.cancelled.connect(self._cancelled)
        self.changed.emit()

    @Slot()
    def cancel(self) -> None:
        """Stop between two photos; what is done stays."""
        if self.job is not None:
            self.job.cancel()
            self.changed.emit()

    @Slot(object)
    def _finished(self, counts: tuple[int, int] | None) -> None:
        if counts is None:
            words = self.tr(
                "The learned model is missing or damaged, so nothing was scored again: "
                "install the program again."
            )
            self._end(words)
            return
        words = self.tr(
            "{scored} of {total} photos scored again; the old scores are kept beside the new ones."
        )
        self._end(words.format(scored=counts[0], total=counts[1]))

    @Slot()
    def _cancelled(self) -> None:
        done, total = (0, 0) if self.job is None else (self.job.done, self.job.total)
        words = self.tr(
            "Stopped after {done} of {total} photos; what is done stays, the rest keeps its score."
        )
        self._end(words.format(done=done, total=total))

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self._end("")
        self.failed.emit(error)

    def _end(self, words: str) -> None:
        self.job = None
        self.changed.emit()
        self.ended.emit(words)


def scoring_again(work: Work) -> ScoringAgain:
    """The one of this window."""
    found = work.findChild(ScoringAgain)
    return ScoringAgain(work) if found is None else found


def count_stale(book: Book) -> Callable[[CancelToken, Progress], tuple[Book, Stale]]:
    """A task that counts what there is to score again; it loads the model on the first time."""

    def count(_token: CancelToken, _report: Progress) -> tuple[Book, Stale]:
        method = learned_method()
        return book, Stale() if method is None else to_offer(book, method)

    return count


def minutes_words(seconds: float) -> str:
    """How long that is, as a person says it."""
    if seconds < 60:
        return translate("ScoringAgain", "about {n} seconds").format(n=max(5, 5 * round(seconds / 5)))
    if seconds < 90 * 60:
        minutes = max(1, round(seconds / 60))
        one = translate("ScoringAgain", "about a minute")
        return one if minutes == 1 else translate("ScoringAgain", "about {n} minutes").format(n=minutes)
    return filled(translate("ScoringAgain", "about {n} hours"), n=in_figures(seconds / 3600, ".1f"))


def _score(book: Book, work: Work, token: CancelToken, report: Progress) -> tuple[int, int] | None:
    """How many were scored again, of how many; None where there is no learned model to do it."""
    method = learned_method()
    if method is None:
        return None
    photos = stale_photos(book, method)
    report(0, len(photos))
    done, in_vain = 0, []
    try:
        for photo, again in rescore_all(book, photos, work.scorers, token):  # a farm is called on here
            done += 1
            if not again:
                in_vain.append(photo)
            report(done, len(photos))
    finally:
        if in_vain:
            give_up(book, method, in_vain)
    return done - len(in_vain), len(photos)
