"""Progress strip: what runs in the background, how far it is, how long yet, and a Cancel for each.

In    the jobs of `Work` that carry words
Out   `Job.cancel` when it is pressed
Not   the work itself (`work.py`); a strip of height 0 while nothing runs
"""

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QProgressBar, QPushButton, QVBoxLayout, QWidget

from gui.controls.timeleft import seconds_left
from gui.language.spoken import filled
from gui.language.words import translate
from gui.style.palette import Space, set_role
from gui.work import Job, Work

__all__ = ["ProgressStrip", "count_words"]

SHOWN_AFTER_S = 0.3
RENEWED_EVERY_MS = 200


class ProgressLine(QFrame):
    """One job."""

    def __init__(self, job: Job, parent: QWidget) -> None:
        super().__init__(parent)
        self.job = job
        self.words = QLabel(job.words, self)
        self.count = QLabel(self)
        set_role(self.count, "soft")
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(job.words)
        self.cancel = QPushButton(self.tr("Cancel"), self)
        self.cancel.setAccessibleName(self.tr("Cancel: {work}").format(work=job.words))
        self.cancel.clicked.connect(job.cancel)
        self.cancel.clicked.connect(self.renew)
        self.cancel.setHidden(job.brief)
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.L, Space.XS, Space.L, Space.XS)
        row.setSpacing(Space.M)
        row.addWidget(self.words)
        row.addWidget(self.bar, 1)
        row.addWidget(self.count)
        row.addWidget(self.cancel)
        self.renew()

    @Slot()
    def renew(self) -> None:
        """Show how far the job is."""
        job = self.job
        self.bar.setRange(0, job.total)
        self.bar.setValue(job.done)
        self.count.setText(count_words(job))
        self.cancel.setEnabled(not job.stopping)


def count_words(job: Job) -> str:
    """How far a job is, and how long yet."""
    if job.stopping and job.whole:
        return translate("ProgressLine", "Stopping; all stays as it was")
    if job.stopping:
        return translate("ProgressLine", "Stopping; what is done stays")
    if job.total == 0:
        return translate("ProgressLine", "Beginning")
    count = translate("ProgressLine", "{done} of {total}").format(done=job.done, total=job.total)
    left = seconds_left(job.done, job.total, job.seconds())
    if left is None:
        return count
    if left < 60:
        words = translate("ProgressLine", "{count}, about {seconds} s left")
        return words.format(count=count, seconds=left)
    words = translate("ProgressLine", "{count}, about {minutes:g} min left")
    return filled(words, count=count, minutes=left / 60)


class ProgressStrip(QWidget):
    """A line for each job that has run longer than a blink."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._work = work
        self._lines: dict[int, ProgressLine] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._clock = QTimer(self, interval=RENEWED_EVERY_MS)
        self._clock.timeout.connect(self.renew)
        work.changed.connect(self._wake)
        self.hide()

    def lines(self) -> tuple[ProgressLine, ...]:
        """What is shown now, in the order of starting."""
        return tuple(self._lines.values())

    @Slot()
    def _wake(self) -> None:
        if self._work.shown() and not self._clock.isActive():
            self._clock.start()

    @Slot()
    def renew(self) -> None:
        """Show the jobs as they are now."""
        shown = (job for job in self._work.shown() if not job.told_elsewhere)
        jobs = {id(job): job for job in shown if job.seconds() >= SHOWN_AFTER_S}
        for key in self._lines.keys() - jobs.keys():
            line = self._lines.pop(key)
            self._column.removeWidget(line)
            line.hide()
            line.deleteLater()
        for key, job in jobs.items():
            if key not in self._lines:
                self._lines[key] = ProgressLine(job, self)
                self._column.addWidget(self._lines[key])
            self._lines[key].renew()
        self.setVisible(bool(self._lines))
        if not self._work.shown():
            self._clock.stop()
