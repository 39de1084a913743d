"""Lost pictures: thumbnails that the book's cache has lost are made again from the photos.

In    `Thumbnails` that tell which are lost, the photo of each
Out   `made` when some are there again
Not   making them (`data/intake.py`), keeping them (`thumbnails.py`)
"""

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken
from data.records import PhotoId
from gui.thumbnails import Thumbnails
from gui.work import Report, Work

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
        thumbnails.lost.connect(self._mend)

    def know(self, book: "Book", photos: Mapping[Path, PhotoId]) -> None:
        """The photo of each thumbnail that may be asked for."""
        self._book, self._photos = book, photos

    @Slot(list)
    def _mend(self, lost: Sequence[Path]) -> None:
        book = self._book
        photos = [self._photos[path] for path in lost if path in self._photos]
        if book is None or not photos:
            return

        def make(token: CancelToken, report: Report) -> list[Path]:
            return _made_again(book, photos, token, report)

        job = self._work.start(make, self.tr("Making pictures again"))
        job.finished.connect(self._mended)

    @Slot(object)
    def _mended(self, made: list[Path]) -> None:
        self._thumbnails.forget(made)
        self.made.emit()


def _made_again(book: "Book", photos: Sequence[PhotoId], token: CancelToken, report: Report) -> list[Path]:
    """Paths of thumbnails that exist again."""
    from data.intake import make_pictures

    made = []
    for done, photo in enumerate(photos, start=1):
        token.check()
        pictures = make_pictures(book, photo)
        if pictures is not None and pictures.thumbnail.exists():
            made.append(pictures.thumbnail)
        report(done, len(photos))
    return made
