"""Thumbnails: small pictures for tiles, decoded in the background and kept in a bounded cache.

In    paths of JPEG files: thumbnails, or whole photos that have none
Out   `QPixmap` at once, or None while it is on its way; `arrived` when some have come
Not   making pictures that the cache of the book has lost: their paths are told by `lost`

Only the newest requests are kept: what has been scrolled away is not decoded.
"""

from collections import OrderedDict
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QImage, QImageReader, QPixmap

from data.cancel import CancelToken, Progress
from gui.work import Work

__all__ = ["Thumbnails"]

MOST_KEPT = 400  # 320 x 160 x 4 bytes each: 80 MB
MOST_WANTED = 96  # more tiles than any screen shows
BATCH = 24
LONGEST = 320  # px
NOT_OF_QT = frozenset({".heic", ".heif"})  # of phones, which Qt alone cannot decode


class Thumbnails(QObject):
    """A cache that fills itself."""

    arrived = Signal()
    lost = Signal(list)  # paths of files that are not there or no pictures

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._kept: OrderedDict[Path, QPixmap] = OrderedDict()
        self._wanted: OrderedDict[Path, None] = OrderedDict()
        self._lost: set[Path] = set()
        self._decoding: set[Path] = set()
        self._outdated: set[Path] = set()  # being decoded as they were before they changed
        self._running = False

    def get(self, path: Path) -> QPixmap | None:
        """The picture if it is here; else it is asked for, and `arrived` comes later."""
        picture = self._kept.get(path)
        if picture is not None:
            self._kept.move_to_end(path)
            return picture
        if path not in self._lost:
            self._wanted[path] = None
            self._wanted.move_to_end(path)
            if len(self._wanted) > MOST_WANTED:
                self._wanted.popitem(last=False)
            if not self._running:
                self._running = True
                QTimer.singleShot(0, self._ask)
        return None

    def forget(self, paths: Sequence[Path]) -> None:
        """The files have changed, or have been made again: decode them anew when they are wanted."""
        for path in paths:
            self._kept.pop(path, None)
            self._lost.discard(path)
        self._outdated |= self._decoding & set(paths)

    def clear(self) -> None:
        """Forget everything, for another book."""
        self._kept.clear()
        self._wanted.clear()
        self._lost.clear()
        self._outdated |= self._decoding

    @Slot()
    def _ask(self) -> None:
        batch = [self._wanted.popitem(last=True)[0] for _ in range(min(BATCH, len(self._wanted)))]
        if not batch:
            self._running = False
            return
        self._decoding, self._outdated = set(batch), set()

        def decode(token: CancelToken, _: Progress) -> list[tuple[Path, QImage]]:
            found = []
            for path in batch:
                token.check()
                found.append((path, _small(path)))
            return found

        job = self._work.start(decode)
        job.finished.connect(self._came)
        job.failed.connect(self._stopped)
        job.cancelled.connect(self._stopped)

    @Slot(object)
    def _came(self, found: list[tuple[Path, QImage]]) -> None:
        lost = []
        for path, image in found:
            if path in self._outdated:
                continue  # whoever paints it asks for it again
            if image.isNull():
                lost.append(path)
                continue
            self._kept[path] = QPixmap.fromImage(image)
            if len(self._kept) > MOST_KEPT:
                self._kept.popitem(last=False)
        self._lost.update(lost)
        self._decoding.clear()
        self.arrived.emit()
        if lost:
            self.lost.emit(lost)
        self._ask()

    @Slot()
    def _stopped(self) -> None:
        self._decoding.clear()
        self._running = False


def _small(path: Path) -> QImage:
    """The picture upright, at most as large as a thumbnail: a whole photo is made small while it is read."""
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    size = reader.size()
    if size.width() > LONGEST or size.height() > LONGEST:
        reader.setScaledSize(size.scaled(LONGEST, LONGEST, Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    if image.isNull() and path.suffix.lower() in NOT_OF_QT:
        image = _as_scored(path)
    return image if image.isNull() else image.convertToFormat(QImage.Format.Format_RGB32)


def _as_scored(path: Path) -> QImage:
    """The same, decoded as a photo that is scored is; null where it cannot be."""
    from vision.photo import PhotoRefused, preview, read_photo

    try:
        pixels = preview(read_photo(path), LONGEST)
    except PhotoRefused:
        return QImage()
    high, wide, _ = pixels.shape
    return QImage(pixels.tobytes(), wide, high, 3 * wide, QImage.Format.Format_RGB888).copy()
