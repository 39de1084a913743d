"""Judged: one photo file -> everything that the book keeps of it, ready to be stored.

In    the path of a photo; corners that a person has set, if any
Out   `Judged`: the score or the refusal, and the small pictures of the cache as bytes
Not   the book: this runs in a worker, thread or process, and writes nothing

Imports of the vision room stand inside the function: the window can name a `Judged` without loading it.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from data.photos.kinds import TraysByTag
from data.photos.originals import digest_of
from vision.reason import Reason

if TYPE_CHECKING:
    from vision.corners import Corners
    from vision.score import Refused, Score, Scored

__all__ = ["LEAST_CONFIDENCE", "Judged", "score_again", "score_for_book"]

LEAST_CONFIDENCE = 0.5  # below it a frame is not used unasked
OF_THE_FILE = frozenset(
    {Reason.EMPTY, Reason.CUT_SHORT, Reason.NO_PICTURE, Reason.KIND, Reason.TOO_MANY_PIXELS, Reason.TOO_BIG}
)  # such a file is remembered by its digest, but not copied: it shows nothing


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """What scoring made of one file."""

    name: str
    digest: str | None  # None where the file could not be read at all
    taken_at: datetime | None  # by the camera's clock
    tag_number: int | None
    camera: str | None = None  # maker and model; None where the photo does not say
    utc_offset: timedelta | None = None  # of the camera's clock, likewise
    score: "Score | None" = None
    refusal: Reason | None = None
    top_view: bytes = b""  # JPEG
    labels: bytes = b""  # PNG
    thumbnail: bytes = b""  # JPEG

    @property
    def needs_corners(self) -> bool:
        """Whether a person has to show where the tray lies before the numbers count."""
        if self.score is None:
            return self.refusal is Reason.NO_TRAY
        corners = self.score.corners
        return corners is None or corners.confidence < LEAST_CONFIDENCE

    @property
    def is_picture(self) -> bool:
        """Whether there is anything to be seen in the file, so that the original is worth keeping."""
        return self.refusal not in OF_THE_FILE


def score_for_book(
    path: Path,
    corners_upright: Sequence[tuple[float, float]] | None = None,
    trays: TraysByTag | None = None,
) -> Judged:
    """Score one photo with the best method; never raises for what is wrong with the file.

    Parameters
    ----------
    path : the photo.
    corners_upright : four points (x, y) in px of the upright photo, as a person set them.
    trays : which kind of tray carries which tag; None: all are nominal.
    """
    from vision.methods import best_tissue
    from vision.score import score_file

    judged = _judged(score_file(path, best_tissue(), corners_upright, trays))
    return judged if judged.digest is not None else replace(judged, digest=_digest(path))


def _digest(path: Path) -> str | None:
    """The digest of a file that could not be decoded, so that it is known when it comes again."""
    try:
        return digest_of(path)
    except OSError:
        return None


def score_again(
    path: Path,
    corners: "Corners",
    canopy: bytes | None = None,
    trays: TraysByTag | None = None,
    *,
    keep_order: bool = True,
) -> Judged:
    """Score a kept photo with the very corners of its score, to make its pictures anew or to mend it.

    Parameters
    ----------
    canopy : PNG of the whole canopy as a person has drawn it; None: as it is measured.
    keep_order : the top view stays the way up that it was, for what is kept lies on it; else the station's
        cards say which side is the far one.
    """
    from vision.methods import best_tissue
    from vision.photo import PhotoRefused, read_photo
    from vision.score import score_photo

    try:
        photo = read_photo(path)
        result = score_photo(photo, best_tissue(), corners=corners, trays=trays, keep_order=keep_order)
    except PhotoRefused as refused:
        return Judged(name=path.name, digest=None, taken_at=None, tag_number=None, refusal=refused.reason)
    return _judged(result if canopy is None else _mended(result, canopy))


def _mended(result: "Scored | Refused", canopy: bytes) -> "Scored | Refused":
    from vision.mending import decode_mask, mend
    from vision.score import Refused

    return result if isinstance(result, Refused) else mend(result, decode_mask(canopy))


def _judged(result: "Scored | Refused") -> Judged:
    from vision.picture import encode_jpeg, encode_labels, thumbnail
    from vision.score import Refused

    if isinstance(result, Refused):
        return Judged(
            name=result.name,
            digest=result.digest,
            taken_at=result.taken_at,
            tag_number=result.tag_number,
            camera=result.camera,
            utc_offset=result.utc_offset,
            refusal=result.reason,
        )
    score = result.score
    return Judged(
        name=score.name,
        digest=score.digest,
        taken_at=score.taken_at,
        tag_number=score.tag_number,
        camera=score.camera,
        utc_offset=score.utc_offset,
        score=score,
        top_view=encode_jpeg(result.top),
        labels=encode_labels(result.labels),
        thumbnail=encode_jpeg(thumbnail(result.top)),
    )
