"""Folder watch: waits for photos that a phone puts into a folder.

In    a folder; a function that leaves out files that are known already
Out   `arrived` with the files that are whole, each once; `lost` when the folder cannot be read
Not   when a file is whole (`data.photos.arrivals`), bringing it in (`screen.py`)

The system's own notices only wake it up: a folder on a network may send none, so it looks every 3 s as well.
"""

import time
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QFileSystemWatcher, QObject, QTimer, Signal, Slot

from data.cancel import CancelToken
from data.photos.arrivals import Seen, arrived, look_into
from gui.work import Report, Work

__all__ = ["FolderWatch"]

EVERY_MS = 3000
WAKE_MS = 300  # a burst of notices is one


class FolderWatch(QObject):
    """Watches at most one folder."""

    arrived = Signal(object)  # list[Path]
    lost = Signal(object)  # Path: it is there no more

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self.folder: Path | None = None
        self.is_known: Callable[[Path], bool] = lambda _path: False
        self._seen: dict[Path, Seen] = {}
        self._looking = False
        self._notices = QFileSystemWatcher(self)
        self._timer = QTimer(self, interval=EVERY_MS)
        self._wake = QTimer(self, interval=WAKE_MS, singleShot=True)
        self._timer.timeout.connect(self._look)
        self._wake.timeout.connect(self._look)
        self._notices.directoryChanged.connect(self._woken)

    def start(self, folder: Path) -> None:
        """Watch this folder from now on; what lies in it already counts as arriving."""
        self.stop()
        self.folder = folder
        self._notices.addPath(str(folder))
        self._timer.start()
        self._look()

    def stop(self) -> None:
        """Watch no more."""
        if self._notices.directories():
            self._notices.removePaths(self._notices.directories())
        self._timer.stop()
        self._wake.stop()
        self.folder, self._seen = None, {}

    @Slot()
    def _woken(self) -> None:
        if not self._wake.isActive():
            self._wake.start()

    @Slot()
    def _look(self) -> None:
        if self.folder is None or self._looking:
            return
        self._looking = True
        folder, seen, is_known = self.folder, self._seen, self.is_known

        def look(_token: CancelToken, _report: Report) -> tuple[Path, bool, list[Path], dict[Path, Seen]]:
            ready, now = arrived(seen, look_into(folder), time.monotonic())
            return folder, folder.is_dir(), [path for path in ready if not is_known(path)], now

        job = self._work.start(look)
        job.finished.connect(self._looked)
        job.failed.connect(self._stopped)
        job.cancelled.connect(self._stopped)

    @Slot(object)
    def _looked(self, answer: tuple[Path, bool, list[Path], dict[Path, Seen]]) -> None:
        self._looking = False
        folder, there, ready, now = answer
        if folder != self.folder:
            return
        self._seen = now
        if not there:
            self.stop()
            self.lost.emit(folder)
        elif ready:
            self.arrived.emit(ready)

    @Slot()
    def _stopped(self) -> None:
        self._looking = False
