"""Rescoring: kept photos scored again by the present version of the method; the old scores stay.

In    a book, any `concurrent.futures.Executor`, a cancel token
Out   what there is to score again, how long a photo takes; (photo, whether it has the new score) one by one
Not   which version a comparison uses (`chapters/comparable.py`), corrections by a person
      (`chapters/corrections.py`)

What a person has done holds: corners set by hand, a drawn canopy and words on suspects go into the new score.
A photo whose tray the new version no longer finds is scored with the corners that it had. A photo that cannot
be scored any more keeps what it has.
"""

import json
import logging
import os
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, BrokenExecutor, Executor, Future, wait
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from statistics import median
from typing import TYPE_CHECKING

from data.book import Book
from data.cancel import CancelToken
from data.photos.farmerrors import FarmLost
from data.photos.judged import Judged, score_again, score_for_book
from data.photos.kinds import TraysByTag
from data.records import PhotoId

if TYPE_CHECKING:
    from vision.corners import Corners

__all__ = [
    "Again", "Stale", "give_up", "learned_method", "present_method", "rescore_all", "score_kept",
    "stale_photos", "to_offer",
]  # fmt: skip

LOOK_EVERY_S = 0.2  # at the cancel token
AHEAD = 2  # photos handed out for each worker
GIVEN_UP = "not to be scored again"  # the book's setting

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


@dataclass(frozen=True, slots=True, kw_only=True)
class Stale:
    """The photos that can be offered for scoring again."""

    photos: tuple[PhotoId, ...] = ()  # in the order in which they are wanted
    photo_s: float | None = None  # that a photo took of late, on one worker; None where nobody knows

    def seconds(self, workers: int) -> float | None:
        """About how long all of them will take."""
        return None if self.photo_s is None else self.photo_s * len(self.photos) / max(1, workers)


def score_kept(again: Again) -> Judged:
    """Score a kept photo by the present version; a top-level function, so that it can travel."""
    if again.corners is not None and (again.by_hand or again.canopy is not None):
        drawn = again.canopy is not None
        return score_again(again.path, again.corners, again.canopy, again.trays, keep_order=drawn)
    judged = score_for_book(again.path, trays=again.trays)
    if again.corners is not None and judged.needs_corners:
        return score_again(again.path, again.corners, trays=again.trays, keep_order=False)
    return judged


def present_method() -> str:
    """The method that scores photos now, as scores name it (loads the model)."""
    from vision.methods import best_tissue
    from vision.score import method_of

    return method_of(best_tissue())


def learned_method() -> str | None:
    """The same; None where only the plain method stands in: by that nothing is scored again."""
    from vision.methods import best_tissue
    from vision.score import method_of
    from vision.tissue import PlainTissue

    tissue = best_tissue()
    return None if isinstance(tissue, PlainTissue) else method_of(tissue)


def stale_photos(book: Book, method: str, *, growing: bool = False) -> tuple[PhotoId, ...]:
    """Photos without a whole score by `method` for their kind of tray; of growing trays first, newest first.

    A score from before the share of the bed was measured is not whole, though its other numbers stay.

    Parameters
    ----------
    growing : of growing trays alone: enough for the Bench and the look list of today.
    """
    return book.photos_without(method, growing=growing)


def to_offer(book: Book, method: str) -> Stale:
    """The same, without those that were tried by this method in vain, and how long one takes."""
    tried = _given_up(book, method)
    took = book.seconds_taken()
    return Stale(
        photos=tuple(photo for photo in stale_photos(book, method) if photo not in tried),
        photo_s=median(took) if took else None,
    )


def give_up(book: Book, method: str, photos: Iterable[PhotoId]) -> None:
    """Do not offer these again for this method: they were tried and keep what they have."""
    tried = sorted(_given_up(book, method) | set(photos))
    book.set_setting(GIVEN_UP, json.dumps({"method": method, "photos": tried}))


def _given_up(book: Book, method: str) -> set[PhotoId]:
    kept = json.loads(book.setting(GIVEN_UP) or "{}")
    return set(kept["photos"]) if kept.get("method") == method else set()


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
    BrokenExecutor, FarmLost
        Where a worker has died: begin again with a new pool; what is done stays.
    BookError
        If the world stops us; photos done before are kept.
    """
    most = max(1, AHEAD * (workers or _workers(pool)))
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
                    out[pool.submit(partial(_score_at, score, again), again.path)] = photo
            done, _ = wait(out, timeout=LOOK_EVERY_S, return_when=FIRST_COMPLETED)
            for future in done:
                photo = out.pop(future)
                yield photo, _kept(book, photo, future)
    finally:
        for future in out:
            future.cancel()


def _score_at(score: Scorer, again: Again, path: Path) -> Judged:
    """The same photo where the worker has it: a farm hands out a function and a path."""
    return score(replace(again, path=path))


def _workers(pool: Executor) -> int:
    return int(getattr(pool, "workers", 0) or getattr(pool, "_max_workers", 0) or os.cpu_count() or 1)


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
    if isinstance(error, (BrokenExecutor, FarmLost)):
        raise error
    if error is not None:
        log.error("photo %d could not be scored again", photo_id, exc_info=error)
        return False
    return book.keep_again(photo_id, future.result())
