"""Book commands: intake and look, on the command line, for a book that a window may have open as well.

In    the folder of a book; for intake photos and folders of photos
Out   one line a photo, or the look list, on stdout; refusals on stderr; the exit code
Not   scoring without a book (`scoring.py`), the window (`app.py`)
"""

import json
import sys
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

from data.book import Book
from data.cancel import CancelToken
from data.errors import BookError
from data.records import Fate, Look, Refused
from gui.scoresheet import plain

__all__ = ["intake_into", "look_at"]

DONE, REFUSED = 0, 1
WORKERS = 2  # as for scoring without a book


def intake_into(folder: Path, photos: Sequence[Path]) -> int:
    """Bring photos into the book, a line for each as it is stored; 1 where one was refused.

    Ctrl+C ends it between two photos: what was stored stays, nothing is half there.
    """
    from data.intake import found_photos, intake

    try:
        book = Book.open(folder)
    except BookError as error:
        _say(str(error))
        return REFUSED
    files = found_photos(photos)
    refused, token = False, CancelToken()
    with ThreadPoolExecutor(WORKERS, initializer=_one_thread_each) as pool:
        try:
            for path, fate in intake(files, book, pool, token, workers=WORKERS):
                refused |= _tell(path, fate)
        except BookError as error:
            _say(str(error))
            refused = True
        except KeyboardInterrupt:
            token.cancel()
            raise
        finally:
            book.close()
    return REFUSED if refused else DONE


def look_at(folder: Path, *, as_json: bool) -> int:
    """Print today's look list, most urgent first."""
    from data.watch import look_list

    try:
        book = Book.open(folder)
    except BookError as error:
        _say(str(error))
        return REFUSED
    try:
        today, looks = book.today(), look_list(book)
    except BookError as error:
        _say(str(error))
        return REFUSED
    finally:
        book.close()
    if as_json:
        print(json.dumps([_as_object(look) for look in looks], indent=1, ensure_ascii=False))
        return DONE
    print(_heading(looks, today.isoformat()))
    for look in looks:
        print(plain(f"{look.urgency.words:6} {look.code:6} {look.what}: {look.sentence}"))
        print(plain(f"{'':14}First: {look.first}"))
    for caution in dict.fromkeys(look.caution for look in looks if look.caution):
        print(plain(caution))
    return DONE


def _one_thread_each() -> None:
    import cv2

    cv2.setNumThreads(1)


def _tell(path: Path, fate: Fate) -> bool:
    """One line for a photo; True where it was refused."""
    if isinstance(fate, Refused):
        _say(f"{path} {fate.sentence}")
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
        "sentence": look.sentence,
        "first": look.first,
        "caution": look.caution,
    }


def _say(sentence: str) -> None:
    print(f"evenstand: {plain(sentence)}", file=sys.stderr, flush=True)
