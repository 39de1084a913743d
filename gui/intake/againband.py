"""Again band: offers to score again what an older method has scored, and shows how far that is.

In    how many photos there are and how long one took; the job of `photo/scoringagain.py`
Out   `begun` when it shall start, `put_off` for today; the job's Cancel
Not   counting and scoring (`photo/scoringagain.py`, `data/upkeep/rescoring.py`)
"""

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import QProgressBar, QWidget

from data.upkeep.rescoring import Stale
from gui.controls.progress import count_words
from gui.controls.questionband import QuestionBand
from gui.photo.scoringagain import ScoringAgain, minutes_words
from gui.style.words import line_width

__all__ = ["AgainBand"]

RENEWED_EVERY_MS = 200


class AgainBand(QuestionBand):
    """Offer, progress, nothing."""

    begun = Signal()
    put_off = Signal()

    def __init__(self, scoring: ScoringAgain, parent: QWidget | None = None) -> None:
        super().__init__("ask-calm", parent)
        self._scoring = scoring
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(self.tr("Scoring photos again"))
        self.bar.setMaximumWidth(line_width(self.fontMetrics()))
        self.add_matter(self.bar)
        self.begin = self.add_answer("", self.begun.emit, main=True)
        self.begin.setToolTip(
            self.tr("In the background; what you have said of a photo stays, and so does its old score")
        )
        self.later = self.add_answer(self.tr("Not today"), self.put_off.emit)
        self.later.setToolTip(self.tr("Ask again after the next start"))
        self.cancel = self.add_answer(self.tr("Cancel"), scoring.cancel)
        self.cancel.setToolTip(self.tr("Stop; what is done stays"))
        self._clock = QTimer(self, interval=RENEWED_EVERY_MS)
        self._clock.timeout.connect(self._show_job)

    def show_stale(self, stale: Stale, workers: int | None) -> bool:
        """Offer this, or show the job that runs; whether there is either."""
        runs = self._scoring.job is not None
        for part, shown in (
            (self.bar, runs), (self.cancel, runs), (self.begin, not runs), (self.later, not runs),
        ):  # fmt: skip
            part.setVisible(shown)
        if runs:
            self._clock.start()
            self._show_job()
            return True
        self._clock.stop()
        count = len(stale.photos)
        seconds = None if workers is None else stale.seconds(workers)
        self._offer(count, "" if seconds is None else minutes_words(seconds))
        return count > 0

    def _offer(self, count: int, how_long: str) -> None:
        title = self.tr("{count} photos can be scored again").format(count=count)
        if count == 1:
            title = self.tr("1 photo can be scored again")
        words = self.tr(
            "An older version of the program has scored them, or they lack numbers that it measures now. "
            "Scores of two versions are never compared; the old ones are kept beside the new ones."
        )
        if how_long:
            words += " " + self.tr("That takes {time} on this machine.").format(time=how_long)
        self.say(title, words)
        self.begin.setText(self.tr("Score them again"))

    @Slot()
    def _show_job(self) -> None:
        job = self._scoring.job
        if job is None:
            return
        job.told_elsewhere = self.isVisible()
        self.bar.setRange(0, job.total)
        self.bar.setValue(job.done)
        self.cancel.setEnabled(not job.stopping)
        self.say(self.tr("Photos are scored again"), count_words(job))

    def hideEvent(self, event: QHideEvent) -> None:
        """The foot of the window tells it from now on."""
        super().hideEvent(event)
        if self._scoring.job is not None:
            self._scoring.job.told_elsewhere = False
