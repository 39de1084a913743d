"""Book commands: intake and look, on the command line, for a book that a window may have open as well.

In    the folder of a book; for intake photos and folders of photos
Out   one line a photo, or the look list, on stdout; refusals on stderr; the exit code
Not   scoring without a book (`scoring.py`), the window (`app.py`)
"""

import json
from collections.abc import Iterator, Sequence
from concurrent.futures import Executor, ThreadPoolExecutor
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from typing import Any

from data.book import Book
from data.cancel import CancelToken
from data.records import Fate, Known, Look, Refused
from gui.commands.saying import DONE, REFUSED, plain, say

__all__ = ["intake_into", "look_at", "print_looks", "scoring_pool", "tell"]

WORKERS = 2  # as for scoring without a book


def intake_into(folder: Path, photos: Sequence[Path], on: str | None = None) -> int:
    """Bring photos into the book, a line for each as it is stored; 1 where one was refused.

    Ctrl+C ends it between two photos: what was stored stays, nothing is half there. `on` is the address of a
    farm that scores; by default this machine does.
    """
    from data.intake import found_photos, intake, without_pictures
    from vision.reason import Reason

    refused, token, brought = False, CancelToken(), set[int]()
    with Book.open(folder) as book, scoring_pool(on) as (pool, workers):
        for empty in without_pictures(photos):
            refused = True
            say(f"{empty} not used: {Reason.NO_PICTURES}")
        for path, fate in intake(found_photos(photos), book, pool, token, workers=workers):
            refused |= tell(path, fate)
            brought |= set() if fate.photo_id is None or isinstance(fate, Known) else {fate.photo_id}
        for doubt in book.clock_doubts():
            if brought & set(doubt.photo_ids):
                print(plain(f"Look at the clock: {doubt.sentence}"))
    return REFUSED if refused else DONE


@contextmanager
def scoring_pool(on: str | None) -> Iterator[tuple[Executor, int]]:
    """Where photos are scored, and how many at once: threads here, or the workers of the farm at `on`.

    Raises
    ------
    FarmMissing
        If there is no such farm.
    """
    if on is None:
        with ThreadPoolExecutor(WORKERS, initializer=_one_thread_each) as pool:
            yield pool, WORKERS
        return
    from data.photos.farm import Farm

    with Farm(on) as farm:
        yield farm, farm.workers


def look_at(folder: Path, *, as_json: bool) -> int:
    """Print today's look list, most urgent first."""
    from data.watch import read_looks

    with Book.open(folder) as book:
        today, looks = book.today(), read_looks(book)
    if as_json:
        print(json.dumps([_as_object(look) for look in looks], indent=1, ensure_ascii=False))
    else:
        print_looks(looks, today)
    return DONE


def print_looks(looks: Sequence[Look], today: date) -> None:
    """The look list in lines, its cautions below."""
    print(_heading(looks, today.isoformat()))
    for look in looks:
        print(plain(f"{look.urgency.words:6} {look.code:6} {look.what}: {look.sentence}"))
        for other in look.also:
            print(plain(f"{'':14}Also {other.what}: {other.sentence}"))
        print(plain(f"{'':14}{look.why_urgent}"))
        print(plain(f"{'':14}First: {look.first}"))
    for caution in dict.fromkeys(look.caution for look in looks if look.caution):
        print(plain(caution))


def _one_thread_each() -> None:
    import cv2

    cv2.setNumThreads(1)


def tell(path: Path, fate: Fate) -> bool:
    """One line for a photo; True where it was refused."""
    if isinstance(fate, Refused):
        say(f"{path} {fate.sentence}")
        return True
    print(plain(f"{path.name}: {fate.sentence}"), flush=True)
    return False


def _heading(looks: Sequence[Look], today: str) -> str:
    trays = len({look.code for look in looks})
    if not trays:
        return f"{today}: nothing needs a look. No flag is no proof that a tray is safe."
    return f"{today}: 1 tray needs a look" if trays == 1 else f"{today}: {trays} trays need a look"


def _as_object(look: Look) -> dict[str, Any]:
    return {
        "tray": look.code,
        "what": str(look.what),
        "urgency": look.urgency.words,
        "since": look.since.isoformat(),
        "why_urgent": look.why_urgent,
        "sentence": look.sentence,
        "also": [_as_object(other) for other in look.also],
        "first": look.first,
        "caution": look.caution,
    }
