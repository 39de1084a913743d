"""Folder watch: waits for photos that a phone puts into a folder.

In    a folder; a function that leaves out files that are known already
Out   `arrived` with the files that are whole, each once; `lost` when the folder cannot be read, `silent` when
      it does not answer
Not   when a file is whole (`data.photos.arrivals`), bringing it in (`screen.py`)

It looks every 3 s, for a folder on a network may send no notices. A drive whose network is gone lets whoever
asks it wait, for minutes or for ever: it is asked by a worker apart, and never by the window.
"""

import os
import time
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from data.cancel import CancelToken, Progress
from data.photos.arrivals import Seen, arrived, look_into
from gui.work import Job, Work

__all__ = ["FolderWatch"]

EVERY_MS = 3000
AGAIN_MS = 60_000  # after photos could not be brought in
PATIENCE_MS = 30_000  # a full folder on a slow network takes seconds to list

Look = tuple[bool, list[Path], dict[Path, Seen]]  # whether it is there, files that are whole, what was seen


class FolderWatch(QObject):
    """Watches at most one folder."""

    arrived = Signal(object)  # list[Path]
    lost = Signal(object)  # Path: it is there no more
    silent = Signal(object)  # Path: it has not answered for half a minute; told once until it does

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self.folder: Path | None = None
        self.is_known: Callable[[Path], bool] = lambda _path: False
        self._seen: dict[Path, Seen] = {}
        self._job: Job | None = None  # the look that is on its way
        self._timer = QTimer(self, interval=EVERY_MS)
        self._patience = QTimer(self, interval=PATIENCE_MS, singleShot=True)
        self._again = QTimer(self, interval=AGAIN_MS, singleShot=True)
        self._timer.timeout.connect(self._look)
        self._again.timeout.connect(self._forget)
        self._patience.timeout.connect(self._unanswered)

    def start(self, folder: Path) -> None:
        """Watch this folder from now on; what lies in it already counts as arriving."""
        self.stop()
        self.folder = folder
        self._timer.start()
        self._look()

    def stop(self) -> None:
        """Watch no more; a look that hangs is left alone, so that another folder can be watched."""
        self._timer.stop()
        self._again.stop()
        self._forget()
        self.folder = None

    @Slot()
    def offer_again(self) -> None:
        """Photos could not be brought in, the disk was full, say: in a minute those not known arrive anew."""
        if self.folder is not None:
            self._again.start()

    @Slot()
    def _forget(self) -> None:
        self._patience.stop()
        if self._job is not None:
            self._job.cancel()
        self._seen, self._job = {}, None

    @Slot()
    def _look(self) -> None:
        if self.folder is None or self._job is not None:
            return
        folder, seen, is_known = self.folder, self._seen, self.is_known

        def look(token: CancelToken, report: Progress) -> Look:
            there = os.path.isdir(folder)  # a share that is lost raises in `Path.is_dir`
            ready, now = arrived(seen, look_into(folder), time.monotonic())
            report(1, 2)  # it has answered; reading what is new may take longer
            return there, _unknown(ready, is_known, token), now

        self._job = job = self._work.start(look, apart=True)
        job.progressed.connect(self._answered)
        job.finished.connect(self._looked)
        job.failed.connect(self._stopped)
        job.cancelled.connect(self._stopped)
        self._patience.start()

    @Slot()
    def _answered(self) -> None:
        if self.sender() is self._job:
            self._patience.stop()

    @Slot()
    def _unanswered(self) -> None:
        if self.folder is not None:
            self.silent.emit(self.folder)

    @Slot(object)
    def _looked(self, look: Look) -> None:
        if self.sender() is not self._job:  # of a folder that is watched no more
            return
        self._stopped()
        there, ready, self._seen = look
        folder = self.folder
        if not there:
            self.stop()
            self.lost.emit(folder)
        elif ready:
            self.arrived.emit(ready)

    @Slot()
    def _stopped(self) -> None:
        if self.sender() is self._job:
            self._job = None
            self._patience.stop()


def _unknown(ready: tuple[Path, ...], is_known: Callable[[Path], bool], token: CancelToken) -> list[Path]:
    unknown = []
    for path in ready:
        token.check()
        if not is_known(path):
            unknown.append(path)
    return unknown
