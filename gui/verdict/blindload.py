"""Blind load: the picture of a photo as it is shown to an eye that must not know the medium; for workers.

In    a book, the id of a photo
Out   `BlindPicture`: the top view cropped and levelled, or why there is none
Not   levelling (`vision/levelled.py`), showing (`blindwindow.py`)
"""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtGui import QImage

from data.records import PhotoId
from gui.language.spoken import spoken
from gui.language.words import translate

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["BlindPicture", "load_blind"]


@dataclass(frozen=True, slots=True, kw_only=True)
class BlindPicture:
    """What is shown at one place; `image` is None where the photo is lost."""

    photo_id: PhotoId
    image: QImage | None
    trouble: str = ""


def load_blind(book: "Book", photo_id: PhotoId) -> BlindPicture:
    """Reads the top view, made again where the cache has lost it."""
    from data.intake import make_pictures
    from vision.levelled import levelled
    from vision.photo import PhotoRefused, read_photo

    pictures = book.pictures(photo_id)
    try:
        if pictures is None or not pictures.top_view.exists():
            pictures = make_pictures(book, photo_id)
        if pictures is None:
            return BlindPicture(photo_id=photo_id, image=None, trouble=_lost())
        top = levelled(read_photo(pictures.top_view).pixels)
    except PhotoRefused as refused:
        return BlindPicture(photo_id=photo_id, image=None, trouble=spoken(refused.reason))
    height, width, _ = top.shape
    image = QImage(top.tobytes(), width, height, 3 * width, QImage.Format.Format_RGB888).copy()
    return BlindPicture(photo_id=photo_id, image=image)


def _lost() -> str:
    return translate("Blind", "The picture is lost. Give no score: go on with Next, and it is left out.")
