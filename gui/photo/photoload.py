"""Photo load: a photo from its file, upright, as the screens want it; for workers.

In    a path; for corners also the book that knows what the finder guessed
Out   `Mips` alone, or `LoadedPhoto` with a small copy and corners to begin with
Not   showing (`pictures.py`, `intake/corners.py`)
"""

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from data.records import PhotoId
from gui.photo.mips import Mips, make_mips

if TYPE_CHECKING:
    from data.book import Book
    from vision.photo import Pixels

__all__ = ["LoadedPhoto", "load_for_corners", "load_photo"]

WHOLE = 1 << 20  # px: longer than any photo, so that it is shown as large as it is


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadedPhoto:
    """A photo whose corners are to be set."""

    photo_id: PhotoId
    name: str
    mips: Mips
    small: "Pixels"
    guess: tuple[tuple[float, float], ...]  # px of the upright photo; empty where the finder has none


def load_photo(path: Path, longest: int = WHOLE) -> Mips:
    """The upright photo; raises `vision.photo.PhotoRefused` where it cannot be read."""
    from vision.photo import preview, read_photo

    return make_mips(preview(read_photo(path), longest))


def load_for_corners(book: "Book", photo_id: PhotoId, name: str, longest_small: int) -> LoadedPhoto:
    """The photo at full size and small, and where its corners are thought to be."""
    from vision.photo import preview, read_photo, upright_points

    photo = read_photo(book.photo_path(photo_id))
    corners, score = book.corners(photo_id), book.score(photo_id)
    guess: tuple[tuple[float, float], ...] = ()
    if corners is not None:
        guess = tuple(upright_points(photo, corners.points))
    elif score is not None:
        guess = score.corners_px
    return LoadedPhoto(
        photo_id=photo_id,
        name=name,
        mips=make_mips(preview(photo, WHOLE)),
        small=preview(photo, longest_small),
        guess=guess if len(guess) == 4 else (),
    )
