"""Lost pictures: thumbnails that the book's cache has lost are made again from the photos.

In    `Thumbnails` that tell which are lost, the photo of each
Out   `made` when some are there again
Not   making them (`data/intake.py`), keeping them (`photo/thumbnails.py`)
"""

from collections.abc import Mapping, Sequence
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from data.records import PhotoId, Pictures
from gui.photo.thumbnails import Thumbnails
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["LostPictures"]


class LostPictures(QObject):
    """Mends the cache while one looks at the rack."""

    made = Signal()

    def __init__(self, work: Work, thumbnails: Thumbnails, parent: QObject) -> None:
        super().__init__(parent)
        self._work, self._thumbnails = work, thumbnails
        self._book: Book | None = None
        self._photos: Mapping[Path, PhotoId] = {}
        self._tried: set[Path] = set()  # once is enough: what cannot be decoded then never will be
        thumbnails.lost.connect(self._mend)

    def know(self, book: "Book", photos: Mapping[Path, PhotoId]) -> None:
        """The photo of each thumbnail that may be asked for."""
        if book is not self._book:
            self._tried.clear()
        self._book, self._photos = book, photos

    @Slot(list)
    def _mend(self, lost: Sequence[Path]) -> None:
        book = self._book
        known = [path for path in lost if path in self._photos and path not in self._tried]
        if book is None or not known:
            return
        self._tried.update(known)
        photos = [self._photos[path] for path in known]

        def make(token: CancelToken, report: Progress) -> list[Path]:
            return _made_again(book, photos, token, report)

        job = self._work.start(make, self.tr("Making pictures again"))
        job.finished.connect(self._mended)

    @Slot(object)
    def _mended(self, made: list[Path]) -> None:
        self._thumbnails.forget(made)
        self.made.emit()


def _made_again(book: "Book", photos: Sequence[PhotoId], token: CancelToken, report: Progress) -> list[Path]:
    """Paths of thumbnails that exist again."""
    from data.intake import make_pictures

    made = []
    for done, photo in enumerate(photos, start=1):
        token.check()
        _sweep(book.pictures(photo))
        pictures = make_pictures(book, photo)
        if pictures is not None and pictures.thumbnail.exists():
            made.append(pictures.thumbnail)
        report(done, len(photos))
    return made


def _sweep(pictures: Pictures | None) -> None:
    """Take away a thumbnail that is no picture: what stands there is not made again. Never a photo."""
    if pictures is not None:
        with suppress(OSError):
            pictures.thumbnail.unlink(missing_ok=True)
