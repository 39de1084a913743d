"""Day load: top views and canopy of single days, for wiping between two and for mending one; for workers.

In    a book, days
Out   `Pair`, `DayCanopy`: they name the photos they belong to, so that what comes late is dropped
Not   showing (`comparepage.py`, `mendpage.py`), the picture with its layers (`picture.py`)
"""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.records import Day, PhotoId
from gui.language.words import translate
from gui.mend.veil import veil_of
from gui.photo.mips import Mips
from gui.photo.photoload import load_photo
from gui.traysheet.picture import labels_in, pictures_of

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from data.book import Book

__all__ = ["DayCanopy", "Pair", "load_canopy", "load_pair"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Pair:
    """The top views of two days."""

    ids: tuple[PhotoId, PhotoId]
    earlier: Mips | None
    later: Mips | None
    trouble: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class DayCanopy:
    """A top view and where its canopy is; `canopy` is None where the labels are lost for good."""

    photo_id: PhotoId
    coverage: float | None
    mips: Mips | None
    canopy: "NDArray[np.bool_] | None"
    veil: "NDArray[np.uint8] | None" = None  # over what is bare
    px_per_mm: float = 2.0
    stale: bool = False  # scored by an older version of the method: a mended score would not be comparable
    trouble: str = ""


def load_pair(book: "Book", earlier: Day, later: Day) -> Pair:
    """Both top views; what happened between them takes longer and comes separately."""
    ids = (earlier.photo_id, later.photo_id)
    mips = [_top_view(book, day) for day in (earlier, later)]
    if None in mips:
        return Pair(ids=ids, earlier=None, later=None, trouble=_lost())
    return Pair(ids=ids, earlier=mips[0], later=mips[1])


def load_canopy(book: "Book", day: Day) -> DayCanopy:
    """The top view and the canopy as it stands in the book."""
    from data.upkeep.rescoring import present_method
    from vision.tissue import canopy

    coverage = None if day.score is None else day.score.coverage
    if day.score is not None and day.score.method != present_method():
        return DayCanopy(photo_id=day.photo_id, coverage=coverage, mips=None, canopy=None, stale=True)
    mips, labels = _top_view(book, day), labels_in(pictures_of(book, day))
    if mips is None or labels is None:
        words = _lost()
        return DayCanopy(photo_id=day.photo_id, coverage=coverage, mips=None, canopy=None, trouble=words)
    mask = canopy(labels)
    return DayCanopy(
        photo_id=day.photo_id,
        coverage=coverage,
        mips=mips,
        canopy=mask,
        veil=veil_of(mask),
        px_per_mm=2.0 if day.score is None else day.score.top_px_per_mm,
    )


def _lost() -> str:
    return translate(
        "TraySheet",
        "The pictures of this day were made by an older version of the program and cannot be made again.",
    )


def _top_view(book: "Book", day: Day) -> Mips | None:
    from vision.photo import PhotoRefused

    pictures = pictures_of(book, day)
    if pictures is None or not pictures.top_view.exists():
        return None
    try:
        return load_photo(pictures.top_view)
    except PhotoRefused:
        return None
