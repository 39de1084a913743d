"""Rescoring: kept photos scored again by the present version of the method; the old scores stay.

In    a book, any `concurrent.futures.Executor`, a cancel token
Out   (photo, whether it has the new score) as each photo is done
Not   which version a comparison uses (`comparable.py`), corrections by a person (`corrections.py`)

What a person has done holds: corners set by hand, a drawn canopy and words on suspects go into the new score.
A photo whose tray the new version no longer finds is scored with the corners that it had. A photo that cannot
be scored any more keeps what it has.
"""

import logging
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, BrokenExecutor, Executor, Future, wait
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from data.book import Book
from data.cancel import CancelToken
from data.judged import Judged, score_again, score_for_book
from data.kinds import TraysByTag
from data.records import PhotoId

if TYPE_CHECKING:
    from vision.corners import Corners

__all__ = ["Again", "present_method", "rescore_all", "score_kept", "stale_photos"]

LOOK_EVERY_S = 0.2  # at the cancel token
AHEAD = 2  # photos handed out for each worker

log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True, kw_only=True)
class Again:
    """One photo that is to be scored again; travels to another process."""

    path: Path
    corners: "Corners | None"  # as the old score has them
    by_hand: bool  # they hold; otherwise they are looked for again
    trays: TraysByTag | None  # the kind of tray
    canopy: bytes | None  # PNG of a drawn canopy; it lies on the old corners, which then hold too


Scorer = Callable[[Again], Judged]


def score_kept(again: Again) -> Judged:
    """Score a kept photo by the present version; a top-level function, so that it can travel."""
    if again.corners is not None and (again.by_hand or again.canopy is not None):
        return score_again(again.path, again.corners, again.canopy, again.trays)
    judged = score_for_book(again.path, trays=again.trays)
    if again.corners is not None and judged.needs_corners:
        return score_again(again.path, again.corners, trays=again.trays)
    return judged


def present_method() -> str:
    """The method that scores photos now, as scores name it (loads the model)."""
    from vision.methods import best_tissue
    from vision.score import method_of

    return method_of(best_tissue())


def stale_photos(book: Book, method: str, *, growing: bool = False) -> tuple[PhotoId, ...]:
    """Photos without a whole score by `method` for their kind of tray; of growing trays first, newest first.

    A score from before the share of the bed was measured is not whole, though its other numbers stay.

    Parameters
    ----------
    growing : of growing trays alone: enough for the Bench and the look list of today.
    """
    return book.photos_without(method, growing=growing)


def rescore_all(
    book: Book,
    photos: Iterable[PhotoId],
    pool: Executor,
    cancel: CancelToken,
    *,
    score: Scorer = score_kept,
    workers: int | None = None,
) -> Iterator[tuple[PhotoId, bool]]:
    """Score kept photos again; each is kept as soon as it is done, beside its old score.

    Parameters
    ----------
    photos : in the order in which they are wanted (`stale_photos`).
    pool : where photos are scored; threads or processes.
    cancel : looked at several times a second; what is done by then stays.

    Yields
    ------
    (photo, True) where it has a score by the present version now, (photo, False) where it keeps what it has.

    Raises
    ------
    Cancelled
        Between two photos; the book is whole, and comparisons go on by the old version until all are done.
    BrokenExecutor
        Where a worker has died: begin again with a new pool; what is done stays.
    BookError
        If the world stops us; photos done before are kept.
    """
    most = max(1, AHEAD * (workers or int(getattr(pool, "_max_workers", 1))))
    out: dict[Future[Judged], PhotoId] = {}
    waiting = iter(photos)
    exhausted = False
    try:
        while out or not exhausted:
            cancel.check()
            while not exhausted and len(out) < most:
                photo = next(waiting, None)
                exhausted = photo is None
                again = None if photo is None else _again(book, photo)
                if photo is not None and again is None:
                    yield photo, False
                elif photo is not None and again is not None:
                    out[pool.submit(score, again)] = photo
            done, _ = wait(out, timeout=LOOK_EVERY_S, return_when=FIRST_COMPLETED)
            for future in done:
                photo = out.pop(future)
                yield photo, _kept(book, photo, future)
    finally:
        for future in out:
            future.cancel()


def _again(book: Book, photo_id: PhotoId) -> Again | None:
    """What is needed to score a photo again; None where its original is gone."""
    try:
        path = book.photo_path(photo_id)
    except KeyError:
        return None
    old = book.score(photo_id)
    if old is None or not path.exists():
        return None
    return Again(
        path=path,
        corners=book.corners(photo_id),
        by_hand=old.corners_from == "hand",
        trays=book.tray_of_photo(photo_id),
        canopy=book.mended_canopy(photo_id),
    )


def _kept(book: Book, photo_id: PhotoId, future: Future[Judged]) -> bool:
    """Keep what came back; a mistake of ours costs this photo only, and is written to the log."""
    error = future.exception()
    if isinstance(error, BrokenExecutor):
        raise error
    if error is not None:
        log.error("photo %d could not be scored again", photo_id, exc_info=error)
        return False
    return book.keep_again(photo_id, future.result())
