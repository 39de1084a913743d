"""Sheet picture: the picture of one day with its layers, made in a worker.

In    a book, a day, what is wanted: top view or photo, which suspects
Out   `SheetPicture`: mips and layers, or a sentence; it names what was wanted
Not   showing it (`screen.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.records import Day, KeptScore, PhotoId, Pictures, Said
from gui.language.spoken import spoken
from gui.photo.layers import Layers, Mark, Outlined, make_layers
from gui.photo.mips import Mips
from gui.photo.photoload import load_photo
from gui.traysheet.view import SuspectLine

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from data.book import Book
    from vision.tissue import Labels

__all__ = ["SheetPicture", "Wanted", "labels_in", "load_sheet_picture", "marks_of", "pictures_of"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """The question; the answer carries it, so that what comes late is dropped."""

    photo_id: PhotoId
    as_photo: bool
    marks: tuple[Mark, ...]
    coverage: float | None = None  # another one: the canopy was mended or scored anew

    def same_picture(self, other: "Wanted") -> bool:
        """Whether only the words on the rings differ."""
        mine, theirs = ((w.photo_id, w.as_photo, w.coverage) for w in (self, other))
        return mine == theirs


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetPicture:
    """The answer."""

    wanted: Wanted
    mips: Mips | None
    layers: Layers
    message: str = ""


def marks_of(suspects: Sequence[SuspectLine]) -> tuple[Mark, ...]:
    """Rings of the suspects that have a place."""
    return tuple(
        Mark(
            number=line.number,
            x_mm=line.x_mm,
            y_mm=line.y_mm,
            radius_mm=line.radius_mm,
            word=line.word,
            settled=line.said is Said.NOT_MOLD or (line.said is None and line.closed),
        )
        for line in suspects
        if line.x_mm is not None and line.y_mm is not None
    )


def load_sheet_picture(book: "Book", day: Day, wanted: Wanted) -> SheetPicture:
    """Reads, and makes again what the cache has lost; the photo where the cache cannot keep it."""
    from vision.photo import PhotoRefused

    pictures = pictures_of(book, day)
    as_photo = wanted.as_photo or pictures is None or not pictures.top_view.exists()
    try:
        if as_photo or pictures is None:
            mips = load_photo(day.photo)
            way = None if day.score is None else _into_photo(day.score)
        else:
            mips, way = load_photo(pictures.top_view), None
    except PhotoRefused as refused:
        return SheetPicture(wanted=wanted, mips=None, layers=Layers(), message=spoken(refused.reason))
    if day.score is None or (as_photo and way is None):
        return SheetPicture(wanted=wanted, mips=mips, layers=Layers())
    labels = labels_in(pictures)
    layers = make_layers(
        labels,
        cells=day.score.cells,
        gaps=_gaps(day.score, labels),
        marks=wanted.marks,
        homography=way,
        inner_mm=(day.score.inner_long_mm, day.score.inner_short_mm),
    )
    return SheetPicture(wanted=wanted, mips=mips, layers=layers)


def pictures_of(book: "Book", day: Day) -> Pictures | None:
    """The small pictures of a day, made again where the cache has lost them."""
    pictures = day.pictures
    if pictures is not None and not (pictures.top_view.exists() and pictures.labels.exists()):
        from data.intake import make_pictures

        return make_pictures(book, day.photo_id)
    return pictures


def labels_in(pictures: Pictures | None) -> "Labels | None":
    """The tissue numbers of a score, None where the cache has none."""
    if pictures is None or not pictures.labels.exists():
        return None
    from vision.picture import decode_labels

    return decode_labels(pictures.labels.read_bytes())  # OpenCV cannot open every name on every system


def _gaps(score: KeptScore, labels: "Labels | None") -> Sequence[Outlined]:
    """With the outlines that the labels have; without labels those that earlier programs kept."""
    if labels is None or not score.gaps:
        return score.gaps
    from vision.ownmm import stand_of

    return stand_of(labels, (score.inner_long_mm, score.inner_short_mm)).gaps


def _into_photo(score: KeptScore) -> "NDArray[np.float64] | None":
    """From the top view to the upright photo (lens left out: a pixel or two at the rim)."""
    if len(score.corners_px) != 4:
        return None
    import cv2
    import numpy as np

    top = np.array([(0, 0), (1016, 0), (1016, 508), (0, 508)], np.float32)
    return np.asarray(cv2.getPerspectiveTransform(top, np.array(score.corners_px, np.float32)), np.float64)
