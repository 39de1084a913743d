"""Work: what runs in the background, so that the window never stands still.

In    a task: a function of a cancel token and a report function (done, total); it knows no Qt
Out   `Job`, which ends in exactly one of finished, failed, cancelled; `Work`, the parent of every job
Not   what the work is (`data`), how it is shown (`controls/progress.py`)

Connect to bound methods of a QObject that lives in the window's thread: a lambda goes on being called after
its widget is gone. `Work` keeps each job until it ends, stops all on closing and waits with a limit.
"""

import logging
import os
import threading
import time
from collections.abc import Callable
from concurrent.futures import Executor, ThreadPoolExecutor
from functools import partial
from typing import Any

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal, Slot

from data.cancel import Cancelled, CancelToken, Progress
from gui.garbage import Garbage

__all__ = ["Job", "Task", "Work"]

Task = Callable[[CancelToken, Progress], Any]

QUICK_THREADS = 2
APART_THREADS = 4  # for what may never answer, a drive on a dead network say: nobody waits for these
LONG_THREADS = 2  # these only hand out and collect; the scoring itself runs in `Work.scorers`
GOOD_MANNERS = 10  # niceness of scoring threads, where the system has one for each thread

log = logging.getLogger(__name__)


class Job(QObject):
    """One piece of background work; signals arrive in the thread of whoever listens."""

    progressed = Signal(int, int)  # done, total
    finished = Signal(object)  # the result
    failed = Signal(object)  # the exception
    cancelled = Signal()

    def __init__(
        self,
        task: Task,
        words: str,
        parent: QObject,
        *,
        whole: bool = False,
        brief: bool = False,
        apart: bool = False,
        scores: bool = False,
    ) -> None:
        super().__init__(parent)
        self.words = words  # what it does, for the progress strip; empty for what is soon over
        self.apart = apart  # it may never end, so nothing waits for it
        self.whole = whole  # stopped on the way, nothing of it is kept
        self.scores = scores  # photos get numbers by it
        self.brief = brief  # over in seconds and not to be stopped on the way
        self.token = CancelToken()
        self.told_elsewhere = False  # what is in front shows its progress itself
        self.done, self.total = 0, 0
        self.begun_at: float | None = None
        self.over = False
        self._task = task

    @property
    def stopping(self) -> bool:
        """Whether it was asked to stop and has not ended yet."""
        return self.token.is_set and not self.over

    def seconds(self) -> float:
        """How long it has run."""
        return 0.0 if self.begun_at is None else time.monotonic() - self.begun_at

    @Slot()
    def cancel(self) -> None:
        """Ask the work to stop at its next look at the token."""
        self.token.cancel()

    def _run(self, report: Progress) -> tuple[str, object]:  # in a pool thread
        self.begun_at = time.monotonic()
        try:
            self.token.check()
            return "finished", self._task(self.token, report)
        except Cancelled:
            return "cancelled", None
        except Exception as error:  # everything, or the person waits for ever
            if self.token.is_set:  # whoever stopped it may have closed the book under it
                log.info("stopped: %s (%s)", self.words or self._task, error)
                return "cancelled", None
            log.exception("background work failed: %s", self.words or self._task)
            return "failed", error

    def _end(self, how: str, what: object) -> None:  # in the window's thread
        self.over = True
        match how:
            case "finished":
                self.finished.emit(what)
            case "failed":
                self.failed.emit(what)
            case _:
                self.cancelled.emit()

    def _progress(self, done: int, total: int) -> None:  # in the window's thread
        if not self.over:
            self.done, self.total = done, total
            self.progressed.emit(done, total)


class Work(QObject):
    """The parent of all jobs of a window."""

    changed = Signal()  # a job began, got on, or ended
    _reported = Signal(object, int, int)  # job, done, total
    _ended = Signal(object, str, object)  # job, how, what came out

    def __init__(
        self, parent: QObject | None = None, *, scorers: int | None = None, farm: str | None = None
    ) -> None:
        super().__init__(parent)
        self._quick = QThreadPool(self)
        self._quick.setMaxThreadCount(QUICK_THREADS)
        self._long = QThreadPool(self)
        self._long.setMaxThreadCount(LONG_THREADS)
        self._apart = QThreadPool(self)
        self._apart.setMaxThreadCount(APART_THREADS)
        self._workers = scorers or max(1, (os.cpu_count() or 2) - 1)
        self._farm = farm  # address of the farm that scores, or None: this machine does
        self._scorers: Executor | None = None
        self._making_scorers = threading.Lock()
        self._jobs: list[Job] = []
        self._waiting: list[Job] = []
        self._garbage = Garbage(self)
        self._beginning = QTimer(self, singleShot=True, interval=0)
        self._beginning.timeout.connect(self._begin)
        self._reported.connect(self._progress)
        self._ended.connect(self._end)
        self._closed = False

    @property
    def scoring_threads(self) -> int | None:
        """How many photos are scored at once on this machine; None where a farm scores."""
        return self._workers if self._farm is None else None

    @property
    def scorers(self) -> Executor:
        """Where photos are scored: threads, one less than there are cores, so that the window stays smooth.

        With a farm it is called on now: ask from a task, not from the window's thread.

        Raises
        ------
        FarmMissing
            If there is no farm at the address that was given.
        """
        with self._making_scorers:
            if self._scorers is None:
                self._scorers = _threads(self._workers) if self._farm is None else _called_on(self._farm)
            return self._scorers

    @property
    def is_scoring(self) -> bool:
        """Whether photos are being scored."""
        return any(job.scores for job in self._jobs)

    @property
    def is_reading(self) -> bool:
        """Whether something is asked of the book that is soon over."""
        return any(not job.words and not job.apart for job in self._jobs)

    def start(
        self,
        task: Task,
        words: str = "",
        *,
        whole: bool = False,
        brief: bool = False,
        apart: bool = False,
        scores: bool = False,
    ) -> Job:
        """Run `task`; with `words` it is shown in the progress strip and can be cancelled there.

        `whole`: it is done wholly or not at all; the strip says so while it is being stopped.
        `brief`: it takes seconds and cannot be stopped; the strip offers no Cancel.
        `apart`: it asks what may never answer; neither other work nor closing waits for it.
        `scores`: photos get numbers by it.
        """
        job = Job(task, words, self, whole=whole, brief=brief, apart=apart, scores=scores)
        self._jobs.append(job)
        if not self._closed:
            self._garbage.hold()
        job.progressed.connect(self.changed)
        if self._closed:
            job.cancel()
        self._waiting.append(job)
        self._beginning.start()
        self.changed.emit()
        return job

    @Slot()
    def _begin(self) -> None:
        """Only now: whoever started a job has connected to it, and misses nothing of even the shortest."""
        waiting, self._waiting = self._waiting, []
        for job in waiting:
            if self._closed:  # no thread may begin that nobody waits for
                self._end(job, "cancelled", None)
                continue
            self._pool_of(job).start(partial(self._run, job))

    def _pool_of(self, job: Job) -> QThreadPool:
        if job.apart:
            return self._apart
        return self._long if job.words else self._quick

    def _run(self, job: Job) -> None:  # in a pool thread
        # Told by Work, which outlives the job: a job that told its own end could be deleted by the first
        # listener while the others have not heard yet (seen in one run of sixty). Its progress comes the same
        # way: a thread that emits a signal while another one disconnects from it crashes the process (seen).
        self._ended.emit(job, *job._run(partial(self._reported.emit, job)))

    @Slot(object, int, int)
    def _progress(self, job: Job, done: int, total: int) -> None:
        job._progress(done, total)

    def jobs(self) -> tuple[Job, ...]:
        """The jobs that have not ended, in the order of their start."""
        return tuple(self._jobs)

    def shown(self) -> tuple[Job, ...]:
        """The jobs that a person is told of."""
        return tuple(job for job in self._jobs if job.words)

    def stop_all(self, limit_ms: int = 5000) -> bool:
        """Ask every job to stop and wait for all but those apart; False if one still ran after `limit_ms`."""
        for job in self._jobs:
            job.cancel()
        done = self._long.waitForDone(limit_ms)
        return self._quick.waitForDone(limit_ms) and done

    def close(self, limit_ms: int = 5000) -> bool:
        """Ask everything to stop and wait; False if something still ran after `limit_ms`."""
        self._closed = True
        done = self.stop_all(limit_ms)
        if self._scorers is not None:
            self._scorers.shutdown(wait=False, cancel_futures=True)
        if done and self._apart.waitForDone(0):
            self._garbage.release()
        return done

    @property
    def only_apart_runs(self) -> bool:
        """Whether nothing runs any more but what may never answer."""
        return self._long.waitForDone(0) and self._quick.waitForDone(0) and not self._apart.waitForDone(0)

    @Slot(object, str, object)
    def _end(self, job: Job, how: str, what: object) -> None:
        self._jobs.remove(job)
        if not self._jobs:
            self._garbage.release()
        job._end(how, what)
        self.changed.emit()
        job.deleteLater()


def _threads(workers: int) -> Executor:
    return ThreadPoolExecutor(workers, thread_name_prefix="scorer", initializer=_begin_scorer)


def _called_on(address: str) -> Executor:
    from data.photos.farm import Farm

    return Farm(address)


def _begin_scorer() -> None:
    import cv2

    import vision.photo  # noqa: F401   puts right what cv2 does to Qt's environment

    cv2.setNumThreads(1)  # two photos at once beat two threads in one photo
    if hasattr(os, "setpriority"):
        try:
            os.setpriority(os.PRIO_PROCESS, threading.get_native_id(), GOOD_MANNERS)
        except OSError:
            log.debug("scoring threads keep their ordinary priority")
