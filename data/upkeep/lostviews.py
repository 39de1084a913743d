"""Lost views: top views that are wanted and that the book's cache has lost, made again from the photos.

In    a book, photos
Out   the pictures stand in the cache again, as far as the originals are there
Not   making one (`intake.py`), which are wanted (`report/pictures.py`, `export.py`)
"""

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from data.cancel import CancelToken, Progress
from data.records import PhotoId

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["lost_views", "make_lost_views"]


def lost_views(book: "Book", photos: Iterable[PhotoId]) -> tuple[PhotoId, ...]:
    """The photos that were scored, and whose top view is not there."""
    found = ((photo, book.pictures(photo)) for photo in dict.fromkeys(photos))
    return tuple(
        photo for photo, pictures in found if pictures is not None and not pictures.top_view.exists()
    )


def make_lost_views(book: "Book", lost: Sequence[PhotoId], cancel: CancelToken, report: Progress) -> None:
    """Make them again; about a second each, for a worker.

    What cannot be made, since the original is gone or the book may only be read, stays missing.

    Raises
    ------
    Cancelled
        Between two pictures; those that were made stay.
    """
    if not lost:
        return
    from data.intake import make_pictures

    for done, photo in enumerate(lost, start=1):
        cancel.check()
        try:
            make_pictures(book, photo)
        except OSError:  # the cache cannot be written: whoever shows the picture says that it is gone
            return
        report(done, len(lost))
