"""Errand: one long job that goes on while the grower works: a book packed, exported, unpacked.

In    a task, words for the progress strip, what its result means
Out   exactly one of `made`, `told`, `troubled`
Not   the task (`data`), which errands there are (`desk.py`)
"""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from data.errors import BookError
from gui.language.spoken import spoken
from gui.work import Task, Work

__all__ = ["Errand"]

Made = Callable[[Any], tuple[str, Path | None]]  # the result -> a sentence, the folder where it lies


class Errand(QObject):
    """It lives until it has told how it ended."""

    made = Signal(str, object)  # a sentence; the folder where it lies, or None
    told = Signal(str)  # it was cancelled
    troubled = Signal(str)

    def __init__(self, work: Work, task: Task, words: str, made: Made, parent: QObject) -> None:
        super().__init__(parent)
        self._made = made
        job = work.start(task, words, whole=True)
        job.finished.connect(self._finish)
        job.failed.connect(self._fail)
        job.cancelled.connect(self._cancel)

    @Slot(object)
    def _finish(self, result: object) -> None:
        self.made.emit(*self._made(result))
        self.deleteLater()

    @Slot(object)
    def _fail(self, error: Exception) -> None:
        words = self.tr("This did not work, and nothing of it was left. What happened is in the log.")
        self.troubled.emit(spoken(error) if isinstance(error, BookError) else words)
        self.deleteLater()

    @Slot()
    def _cancel(self) -> None:
        self.told.emit(self.tr("Stopped; nothing of it was left."))
        self.deleteLater()
