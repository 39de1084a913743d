"""Mending: a canopy that a person has drawn on a kept photo -> its numbers, measured anew and kept.

In    a book, a photo of it, the whole canopy as bool (rows, columns) of the top view
Out   the photo's fate
Not   the brush (window), how labels follow it (`vision/mending.py`), keeping the old score
      (`chapters/corrections.py`)

Slow (the original is scored again): for a worker.
"""

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from data.book import Book
from data.photos.judged import Judged, score_again
from data.photos.kinds import TraysByTag
from data.records import Fate, PhotoId

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from vision.corners import Corners

__all__ = ["mend_canopy"]

Scorer = Callable[[Path, "Corners", bytes, TraysByTag | None], Judged]


def mend_canopy(
    book: Book, photo_id: PhotoId, canopy: "NDArray[np.bool_]", score: Scorer = score_again
) -> Fate:
    """Measure a photo anew with the canopy that a person has drawn, and keep that as one step of undo.

    Parameters
    ----------
    canopy : bool (rows, columns) of the top view, the whole canopy.

    Raises
    ------
    KeyError
        If nothing of that photo was kept, or it has no score to be mended.
    """
    import numpy as np

    from vision.mending import encode_mask

    corners = book.corners(photo_id)
    if corners is None:
        raise KeyError(photo_id)
    trays = book.tray_of_photo(photo_id)
    mask = encode_mask(np.asarray(canopy, np.bool_))
    return book.mend_canopy(photo_id, mask, score(book.photo_path(photo_id), corners, mask, trays))
