"""Training data: every canopy that a person has drawn, as pictures that a tissue method can learn from.

In    a book; a folder that is empty or new
Out   for each such photo its top view, labels and canopy as PNG, and `manifest.json` with their digests
Not   drawing (`chapters/corrections.py`), learning (`vision/training`)

A label of 255 is not known: there a person has said whether it is canopy, and nobody which kind. The canopy
is white where a person says so, everywhere else black; it is sure in all places. Names of photos, times and
places stay in the book: the files tell crop, medium and day alone.
"""

import hashlib
import json
from collections.abc import Callable, Iterator
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from data.book import Book
from data.cancel import CancelToken
from data.photos.kinds import TraysByTag
from data.records import PhotoId

if TYPE_CHECKING:
    from vision.corners import Corners

__all__ = ["NOT_KNOWN", "Lesson", "lesson_of", "write_training"]

NOT_KNOWN = 255
MANIFEST = "manifest.json"


@dataclass(frozen=True, slots=True, kw_only=True)
class Lesson:
    """What one drawn photo teaches, each as the bytes of a PNG, 1016 x 508."""

    top: bytes  # sRGB
    labels: bytes  # tissue numbers 0-9, 255 where the kind is not known
    canopy: bytes  # black and white
    method: str  # that gave the labels which a person left as they were


Teacher = Callable[[Path, "Corners", bytes, TraysByTag | None], Lesson | None]


def lesson_of(
    path: Path, corners: "Corners", canopy: bytes, trays: TraysByTag | None = None
) -> Lesson | None:
    """What a drawn photo teaches; None where it cannot be scored any more. Slow: for a worker."""
    from vision.mending import decode_mask, mend_labels
    from vision.methods import best_tissue
    from vision.photo import PhotoRefused, read_photo
    from vision.picture import encode_labels, encode_png
    from vision.score import Refused, score_photo

    try:
        photo = read_photo(path)
        result = score_photo(photo, best_tissue(), corners=corners, trays=trays, keep_order=True)
    except PhotoRefused:
        return None
    if isinstance(result, Refused):
        return None
    mended = mend_labels(result.labels, decode_mask(canopy), result.top)
    labels = mended.labels.copy()
    labels[mended.guessed] = NOT_KNOWN
    return Lesson(
        top=encode_png(result.top),
        labels=encode_labels(labels),
        canopy=canopy,
        method=result.score.method,
    )


def write_training(
    book: Book, folder: Path, cancel: CancelToken, teach: Teacher = lesson_of
) -> Iterator[tuple[PhotoId, bool]]:
    """Write all drawn photos; (photo, whether it could be) as each is done. The manifest comes last.

    Raises
    ------
    FileExistsError
        If something lies in the folder already.
    Cancelled
        Between two photos; without its manifest the folder is no training data.
    """
    folder.mkdir(parents=True, exist_ok=True)
    if any(folder.iterdir()):
        raise FileExistsError(folder)
    entries = []
    for photo_id in book.drawn_photos():
        cancel.check()
        corners, canopy = book.corners(photo_id), book.mended_canopy(photo_id)
        lesson = None
        if corners is not None and canopy is not None:
            lesson = teach(book.photo_path(photo_id), corners, canopy, book.tray_of_photo(photo_id))
        if lesson is not None:
            entries.append(_written(book, folder, photo_id, lesson))
        yield photo_id, lesson is not None
    text = json.dumps({"not_known": NOT_KNOWN, "photos": entries}, indent=1)
    (folder / MANIFEST).write_text(text + "\n", encoding="utf-8")


def _written(book: Book, folder: Path, photo_id: PhotoId, lesson: Lesson) -> dict[str, object]:
    """Write one photo's three pictures; its entry in the manifest."""
    files: dict[str, object] = {}
    stem = hashlib.sha256(lesson.top).hexdigest()[:16]
    for name, content in asdict(lesson).items():
        if isinstance(content, bytes):
            path = folder / f"{stem}-{name}.png"
            path.write_bytes(content)
            files[name] = {"file": path.name, "sha256": hashlib.sha256(content).hexdigest()}
    return files | {"method": lesson.method} | _grown(book, photo_id)


def _grown(book: Book, photo_id: PhotoId) -> dict[str, object]:
    row = book.photo(photo_id)
    if row.tray_id is None:
        return {"crop": None, "medium": None, "day": None}
    tray = book.tray(row.tray_id)
    return {"crop": tray.crop, "medium": tray.medium, "day": tray.day(row.taken_at.date())}
