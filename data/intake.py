"""Intake: photo files -> scored, matched, kept; one fate for each.

In    files or folders; a book; any `concurrent.futures.Executor`; a cancel token
Out   (path, fate) as each photo is done
Not   scoring one photo (`photos/judged.py`), keeping one (`book.py`), when a file has arrived
      (`photos/arrivals.py`)

Files are hashed first, and known ones skipped before they are decoded: a folder of 1,000 known photos takes
seconds. Scoring may run anywhere; the book is written here alone, one photo a transaction. Only a few photos
are handed out ahead, so memory stays flat however long the batch is.
"""

import logging
import multiprocessing
import os
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, BrokenExecutor, Executor, Future, ProcessPoolExecutor, wait
from dataclasses import replace
from functools import partial
from pathlib import Path

from data.book import Book
from data.cancel import CancelToken
from data.photos.farmerrors import FarmLost, KilledByPhoto
from data.photos.judged import Judged, score_again, score_for_book
from data.photos.originals import SUFFIXES, digest_of, folders_below, put
from data.records import Fate, PhotoId, Pictures, Refused
from data.tables.rows import name_text
from vision.reason import Reason

__all__ = [
    "Scorer",
    "found_photos",
    "intake",
    "make_pictures",
    "rescore",
    "score_for_book",
    "without_pictures",
]

Scorer = Callable[[Path], Judged]  # a top-level function, so that it can travel to another process
LOOK_EVERY_S = 0.2  # at the cancel token
AHEAD = 2  # photos handed out for each worker

log = logging.getLogger(__name__)


def found_photos(paths: Iterable[Path]) -> tuple[Path, ...]:
    """Files as given, in their order; in a folder's place the pictures in it and below, sorted by name."""
    found: list[Path] = []
    for path in paths:
        found.extend(_pictures_below(path) if os.path.isdir(path) else [path])
    return tuple(found)


def without_pictures(paths: Iterable[Path]) -> tuple[Path, ...]:
    """Those folders in which and below which there is no picture."""
    return tuple(path for path in paths if os.path.isdir(path) and not _pictures_below(path))


def _pictures_below(folder: Path) -> list[Path]:
    found: list[Path] = []
    for place, inner, names in os.walk(folder):  # does not follow links, so it ends
        inner[:] = folders_below(inner, names)
        pictures = (n for n in sorted(names) if not n.startswith(".") and Path(n).suffix.lower() in SUFFIXES)
        found.extend(Path(place) / name for name in pictures)
    return found


def intake(
    paths: Sequence[Path],
    book: Book,
    pool: Executor,
    cancel: CancelToken,
    *,
    score: Scorer = score_for_book,
    workers: int | None = None,
    new_pool: Callable[[], Executor] | None = None,
) -> Iterator[tuple[Path, Fate]]:
    """Bring photos in; each is kept as soon as it is scored, and its fate is yielded.

    Parameters
    ----------
    paths : files or folders, in the order in which they are wanted.
    pool : where photos are scored; threads or processes.
    cancel : looked at several times a second; what is stored by then stays.
    score : path -> `Judged`.
    workers : how many work in `pool` at once; asked of the pool where it is not given.
    new_pool : makes the pool that goes on when a worker has died; by default one process.

    Raises
    ------
    Cancelled
        Between two photos; the book is whole.
    BookError, FarmLost
        If the world stops us; photos stored before are kept.
    """
    trays = book.trays_by_tag()
    if score is score_for_book and trays is not None:  # another scorer knows its trays itself
        score = partial(score_for_book, trays=trays)
    batch = _Batch(book, pool, cancel, score, AHEAD * (workers or _workers(pool)), new_pool or _one_process)
    rest: Sequence[Path] = found_photos(paths)
    try:
        while rest:
            twins: list[Path] = []
            yield from batch.run(rest, twins)
            rest = twins if len(twins) < len(rest) else ()
    finally:
        batch.end()


def _workers(pool: Executor) -> int:
    return int(getattr(pool, "workers", 0) or getattr(pool, "_max_workers", 1))


def _one_process() -> Executor:
    return ProcessPoolExecutor(1, mp_context=multiprocessing.get_context("spawn"))


class _Batch:
    """One batch on its way: what is handed out, and the pool that it is handed to."""

    def __init__(
        self,
        book: Book,
        pool: Executor,
        cancel: CancelToken,
        score: Scorer,
        most: int,
        new_pool: Callable[[], Executor],
    ) -> None:
        self._book, self._pool, self._cancel, self._score = book, pool, cancel, score
        self._most, self._new_pool = max(1, most), new_pool
        self._own: list[Executor] = []
        self._out: dict[Future[Judged], Path] = {}
        self._digests: set[str] = set()

    def run(self, paths: Sequence[Path], twins: list[Path]) -> Iterator[tuple[Path, Fate]]:
        """All of `paths`; those whose bytes are on their way already are put into `twins` for later."""
        self._digests.clear()
        waiting = iter(paths)
        exhausted = False
        while self._out or not exhausted:
            self._cancel.check()
            while not exhausted and len(self._out) < self._most:
                path = next(waiting, None)
                exhausted = path is None
                if path is not None:
                    yield from self._hand_out(path, twins)
                    self._cancel.check()
            yield from self._take_back()

    def _hand_out(self, path: Path, twins: list[Path]) -> Iterator[tuple[Path, Fate]]:
        try:
            digest = digest_of(path)
        except OSError:
            yield path, Refused(photo_id=None, name=name_text(path.name), reason=Reason.UNREADABLE)
            return
        known = self._book.known(digest)
        if known is not None:
            self._book.bring_back(known.photo_id, path)
            yield path, replace(known, name=name_text(path.name))
        elif digest in self._digests:
            twins.append(path)
        else:
            self._digests.add(digest)
            try:
                self._out[self._pool.submit(self._score, path)] = path
            except BrokenExecutor:
                yield from self._one_by_one([path])
            except OSError:  # a farm is handed the bytes, and the file has gone since
                self._digests.discard(digest)
                yield path, Refused(photo_id=None, name=name_text(path.name), reason=Reason.UNREADABLE)

    def _take_back(self) -> Iterator[tuple[Path, Fate]]:
        done, _ = wait(self._out, timeout=LOOK_EVERY_S, return_when=FIRST_COMPLETED)
        lost: list[Path] = []
        for future in done:
            self._cancel.check()
            path = self._out.pop(future)
            if isinstance(future.exception(), BrokenExecutor):
                lost.append(path)
            else:
                yield path, self._fate(path, future)
        if lost:
            yield from self._one_by_one(lost)

    def _fate(self, path: Path, future: Future[Judged]) -> Fate:
        """Keep what came back; a mistake of ours costs this photo only, and is written to the log."""
        error = future.exception()
        if error is None:
            return self._book.keep(future.result(), path)
        if isinstance(error, FarmLost):
            raise error
        if isinstance(error, KilledByPhoto):
            return Refused(photo_id=None, name=name_text(path.name), reason=Reason.KILLED)
        log.error("%s could not be scored", path, exc_info=error)
        return Refused(photo_id=None, name=name_text(path.name), reason=Reason.OUR_MISTAKE)

    def _one_by_one(self, lost: Sequence[Path]) -> Iterator[tuple[Path, Fate]]:
        """A worker has died, and nobody knows of which photo: try each alone, in new pools."""
        self._renew()
        for path in lost:
            self._cancel.check()
            future = self._pool.submit(self._score, path)
            while not wait([future], timeout=LOOK_EVERY_S).done:
                self._cancel.check()
            if isinstance(future.exception(), BrokenExecutor):
                self._renew()
                yield path, Refused(photo_id=None, name=name_text(path.name), reason=Reason.KILLED)
            else:
                yield path, self._fate(path, future)

    def _renew(self) -> None:
        self._pool = self._new_pool()
        self._own.append(self._pool)

    def end(self) -> None:
        """Take back what has not begun; pools made here are closed."""
        for future in self._out:
            future.cancel()
        self._out.clear()
        for pool in self._own:
            pool.shutdown(wait=False, cancel_futures=True)


# --- one photo again


def rescore(
    book: Book,
    photo_id: PhotoId,
    corners_upright: Sequence[tuple[float, float]],
    score: Callable[[Path, Sequence[tuple[float, float]]], Judged] | None = None,
) -> Fate:
    """Score a kept photo with corners that a person has set, and keep that; slow, for a worker.

    Parameters
    ----------
    corners_upright : four points (x, y) in px of the upright photo, edge coordinates.

    Raises
    ------
    KeyError
        If nothing of that photo was kept.
    """
    scorer = score or partial(score_for_book, trays=book.tray_of_photo(photo_id))
    judged = scorer(book.photo_path(photo_id), corners_upright)
    return book.set_corners(photo_id, corners_upright, judged)


def make_pictures(book: Book, photo_id: PhotoId) -> Pictures | None:
    """The pictures of a photo's score, made again from the original where the cache has lost them.

    None where there is no score. Slow where they are missing: for a worker. Labels of an older version of the
    method cannot be made again and stay missing, and so do all pictures of a photo that came from an export.
    """
    pictures = book.pictures(photo_id)
    if pictures is None or all(
        path.exists() for path in (pictures.top_view, pictures.labels, pictures.thumbnail)
    ):
        return pictures
    kept, corners = book.score(photo_id), book.corners(photo_id)
    original = book.photo(photo_id).photo
    if kept is None or corners is None or original is None:
        return pictures
    judged = score_again(original, corners, book.mended_canopy(photo_id), book.tray_of_photo(photo_id))
    if judged.score is not None and judged.digest == original.stem:  # no other program has changed it
        put(pictures.top_view, judged.top_view)
        put(pictures.thumbnail, judged.thumbnail)
        if judged.score.method == kept.method:
            put(pictures.labels, judged.labels)
    return pictures
