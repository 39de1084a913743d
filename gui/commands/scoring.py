"""Scoring: photos of the command line -> numbers on stdout, refusals on stderr, pictures in folders.

In    paths of photos and folders; where labels and overlays shall go
Out   an exit code; one JSON list, or a table that grows as photos are done
Not   the book; what a score looks like in words (`scoresheet.py`)

Two threads score, each with its own tissue method; results come in the order given. A worker writes its
pictures itself and hands on numbers only, so that memory does not grow with the batch.
"""

import os
from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from threading import local
from traceback import extract_tb
from typing import TYPE_CHECKING

from data.photos.originals import SUFFIXES, folders_below
from gui.commands.saying import DONE, REFUSED, refuse, say
from gui.commands.scoresheet import as_json, as_line, as_object, heading, name_width

if TYPE_CHECKING:
    from vision.score import Refused, Score, Scored
    from vision.tissue import Tissue

__all__ = ["CannotWrite", "Job", "Wish", "jobs_of", "score_all", "scored"]

WORKERS = 2  # measured on two cores: 1.7-1.8 times the photos of one worker; three do no more
AHEAD = 2  # photos that wait ready for a worker
OURS = ("_labels.png", "_overlay.jpg")  # never scored as photos where they lie beside them


class CannotWrite(Exception):
    """A folder or file for the pictures cannot be written; the message says which and what to do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """One photo to score and what its pictures are called."""

    photo: str  # path as it was given
    stem: str  # NAME of NAME_labels.png, different for each job


@dataclass(frozen=True, slots=True, kw_only=True)
class Done:
    """What became of a job."""

    job: Job
    result: "Score | Refused"
    bug: str | None = None  # our own mistake, in one line that can be reported


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """How the numbers are to be had, and what is wanted beside them."""

    overlay: Path | None = None
    labels: Path | None = None
    whole: bool = False
    method: str = "learned"


def score_all(photos: Sequence[str], wish: Wish, *, json: bool) -> int:
    """Score photos and folders of photos, print the numbers; returns the exit code."""
    jobs = jobs_of(photos)
    try:
        _folders_ready(wish)
    except CannotWrite as error:
        return refuse(str(error))
    if wish.overlay is not None or wish.labels is not None:
        _tell_renamed(jobs)
    width = name_width([job.photo for job in jobs])
    if not json:
        print(heading(width), flush=True)
    objects, refused, stood_in = [], False, False
    try:
        for done in scored(jobs, wish):
            refused |= _tell_refusal(done)
            stood_in = stood_in or _tell_stand_in(done)
            _tell_notes(done)
            if json:
                objects.append(as_object(done.job.photo, done.result))
            else:
                print(as_line(done.job.photo, done.result, width), flush=True)
    except CannotWrite as error:
        return refuse(str(error))
    if json:
        print(as_json(objects))
    return REFUSED if refused else DONE


def jobs_of(photos: Iterable[str]) -> list[Job]:
    """One job a photo in the order given, a folder's place taken by the pictures in it and below, by name.
    No two stems are alike.

    An empty folder stays as it is and is refused when its turn comes.
    """
    jobs: list[Job] = []
    taken: set[str] = set()
    for photo in (name for given in photos for name in _opened(given)):
        stem, number = Path(photo).stem, 1
        while _fold(stem, number) in taken:
            number += 1
        taken.add(_fold(stem, number))
        jobs.append(Job(photo=photo, stem=_numbered(stem, number)))
    return jobs


def scored(jobs: Sequence[Job], wish: Wish) -> Iterator[Done]:
    """Score the jobs in two threads, yield each in the order given; at most five are in hand at once."""
    waiting: deque[Future[Done]] = deque()
    own = local()
    pool = ThreadPoolExecutor(
        max_workers=min(WORKERS, os.cpu_count() or 1), initializer=_start, initargs=(own, wish.method)
    )
    try:
        for job in jobs:
            waiting.append(pool.submit(_do, job, wish, own))
            if len(waiting) > WORKERS + AHEAD:
                yield waiting.popleft().result()
        while waiting:
            yield waiting.popleft().result()
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


def _opened(given: str) -> list[str]:
    if not os.path.isdir(given):
        return [given]
    found: list[str] = []
    for place, inner, names in os.walk(given):  # does not follow links, so it ends
        inner[:] = folders_below(inner, names)
        found.extend(os.path.join(place, name) for name in sorted(names) if _is_photo(name))
    return found or [given]


def _is_photo(name: str) -> bool:
    return Path(name).suffix.lower() in SUFFIXES and not name.startswith(".") and not name.endswith(OURS)


def _numbered(stem: str, number: int) -> str:
    return stem if number == 1 else f"{stem}-{number}"


def _fold(stem: str, number: int) -> str:
    return _numbered(stem, number).casefold()  # some disks take A.png and a.png for the same file


def _folders_ready(wish: Wish) -> None:
    for folder in (wish.overlay, wish.labels):
        if folder is None:
            continue
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise CannotWrite(
                f"no folder can be made at {folder}: {error.strerror}. Name another one."
            ) from error


def _tell_renamed(jobs: Sequence[Job]) -> None:
    for job in jobs:
        if job.stem != Path(job.photo).stem:
            say(f"another photo has the name of {job.photo}: its pictures are called {job.stem}_...")


def _tell_stand_in(done: Done) -> bool:
    """Say that the plain method stands in for the learned model; True where it did."""
    from vision.reason import Reason
    from vision.score import Refused

    if isinstance(done.result, Refused) or Reason.PLAIN_ONLY not in done.result.notes:
        return False
    say(Reason.PLAIN_ONLY)
    return True


def _tell_notes(done: Done) -> None:
    """Say what is odd about a photo or doubtful about its score; a missing model is said once for all."""
    from vision.reason import Reason
    from vision.score import Refused

    if not isinstance(done.result, Refused):
        for note in done.result.notes:
            if note is not Reason.PLAIN_ONLY:
                say(f"{done.job.photo}: {note}")


def _tell_refusal(done: Done) -> bool:
    """Name a refused photo on stderr; True where it was one."""
    from vision.score import Refused

    if not isinstance(done.result, Refused):
        return False
    say(f"{done.job.photo} not used: {done.result.reason}")
    if done.bug is not None:
        say(f"bug: {done.bug}")
    return True


def _start(own: local, method: str) -> None:
    """In each worker, once: its own method, and one OpenCV thread, the workers use the cores already."""
    import cv2

    from vision.methods import tissue_named

    cv2.setNumThreads(1)
    own.tissue = tissue_named(method)


def _do(job: Job, wish: Wish, own: local) -> Done:
    from vision.reason import Reason
    from vision.score import Refused

    try:
        return Done(job=job, result=_scored(job, wish, own.tissue))
    except CannotWrite:
        raise
    except Exception as error:  # our mistake; the other photos go on
        refused = Refused(name=Path(job.photo).name, digest=None, reason=Reason.OUR_MISTAKE)
        return Done(job=job, result=refused, bug=_bug(error))


def _scored(job: Job, wish: Wish, tissue: "Tissue") -> "Score | Refused":
    from vision.reason import Reason
    from vision.score import Refused, score_file, score_whole_file

    path = Path(job.photo)
    if os.path.isdir(path):
        return Refused(name=path.name, digest=None, reason=Reason.NO_PICTURES)
    result = score_whole_file(path, tissue) if wish.whole else score_file(path, tissue)
    if isinstance(result, Refused):
        return result
    _write_pictures(job, wish, result)
    return result.score


def _write_pictures(job: Job, wish: Wish, scored: "Scored") -> None:
    from vision.picture import encode_jpeg, encode_labels, with_everything

    if wish.labels is not None:
        _write(wish.labels / f"{job.stem}_labels.png", encode_labels(scored.labels))
    if wish.overlay is not None:
        score = scored.score
        picture = with_everything(scored.top, scored.labels, score.stand, score.suspects)
        _write(wish.overlay / f"{job.stem}_overlay.jpg", encode_jpeg(picture))


def _write(path: Path, data: bytes) -> None:
    """A whole file or none: written beside its place, then renamed."""
    part = path.with_name(path.name + ".part")
    try:
        part.write_bytes(data)
        part.replace(path)
    except OSError as error:
        part.unlink(missing_ok=True)
        raise CannotWrite(f"{path} cannot be written: {error.strerror}. The rest was not scored.") from error


def _bug(error: Exception) -> str:
    last = extract_tb(error.__traceback__)[-1:]
    place = f" ({Path(last[0].filename).name}, line {last[0].lineno})" if last else ""
    return f"{type(error).__name__}: {error}{place}".replace("\n", " ")
