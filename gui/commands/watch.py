"""Watch command: a folder that a phone fills -> a book, without a window, until it is stopped.

In    the folder to watch, the folder of the book, the hour of the look list
Out   a line for each photo as it is stored; the look list once a day; refusals on stderr
Not   when a file has arrived whole (`data/photos/arrivals.py`), bringing photos in (`data/intake.py`)

Ctrl+C and the signal with which a service is stopped end it between two photos, with exit code 0: what was
stored stays. A folder that goes away, or a book that a window is writing, is told once and waited for.
"""

import os
import signal
import time
from collections.abc import Callable, Iterator, Mapping
from concurrent.futures import Executor
from contextlib import contextmanager
from datetime import date, datetime
from datetime import time as clock
from pathlib import Path

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.errors import BookLocked
from data.photos.arrivals import Seen, arrived, look_into
from gui.commands.book import print_looks, scoring_pool, tell
from gui.commands.saying import DONE, refuse, say

__all__ = ["Watch", "watch_folder"]

LOOK_EVERY_S = 2.0
STOPPING = (signal.SIGINT, signal.SIGTERM)


def watch_folder(folder: Path, book_folder: Path, at: clock, on: str | None = None) -> int:
    """Bring in what arrives in `folder` until stopped; 1 where the book or the folder cannot be used."""
    if not os.path.isdir(folder):
        return refuse(f"there is no folder {folder}: name the one that the phone's photos arrive in")
    with Book.open(book_folder) as book, scoring_pool(on) as (pool, workers), stopped_by_signal() as token:
        print(f"watching {folder}; stop with Ctrl+C", flush=True)
        Watch(folder, book, pool, workers, at).run(token)
    return DONE


@contextmanager
def stopped_by_signal() -> Iterator[CancelToken]:
    """A token that Ctrl+C and the stop of a service set; a second Ctrl+C ends at once, as ever."""
    token = CancelToken()

    def stop(number: int, _frame: object) -> None:
        token.cancel()
        signal.signal(number, before[signal.Signals(number)])

    before = {number: signal.getsignal(number) for number in STOPPING}
    for number in STOPPING:
        signal.signal(number, stop)
    try:
        yield token
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


class Watch:
    """One folder, watched; `now` is the rack's clock, `at` the time of day at which the list is printed."""

    def __init__(
        self,
        folder: Path,
        book: Book,
        pool: Executor,
        workers: int,
        at: clock,
        *,
        now: Callable[[], datetime] = datetime.now,
    ) -> None:
        self._folder, self._book, self._pool, self._workers, self._at = folder, book, pool, workers, at
        self._now = now
        self._seen: Mapping[Path, Seen] = {}
        self._listed_on = self._today_if_past(now())  # started in the afternoon: the list of today is over
        self._waits_for = ""  # what it said it waits for

    def run(self, token: CancelToken) -> None:
        """Look, bring in, wait, until the token is set."""
        try:
            while not token.is_set:
                self.look(token, time.monotonic())
                token.wait(LOOK_EVERY_S)
        except Cancelled:
            pass
        print("stopped; everything stored so far is in the book", flush=True)

    def look(self, token: CancelToken, at: float) -> None:
        """One look: bring in what has arrived whole, print the look list where its hour has come."""
        try:
            if os.path.isdir(self._folder):  # a share that is lost raises in `Path.is_dir`
                self._bring_in(token, at)
                self._wait_for("")
            else:
                self._wait_for(f"{self._folder} is not there; photos come in again once it is back")
            self._list()
        except BookLocked as error:
            self._wait_for(str(error))

    def _wait_for(self, what: str) -> None:
        """Say what it waits for, once."""
        if what and what != self._waits_for:
            say(what)
        self._waits_for = what

    def _bring_in(self, token: CancelToken, at: float) -> None:
        from data.intake import intake

        ready, seen = arrived(self._seen, look_into(self._folder), at)
        for path, fate in intake(ready, self._book, self._pool, token, workers=self._workers):
            tell(path, fate)
        self._seen = seen  # only now: what a book that is being written did not take is still to come

    def _list(self) -> None:
        from data.watch import read_looks

        today = self._today_if_past(self._now())
        if today is not None and today != self._listed_on:
            self._listed_on = today
            print_looks(read_looks(self._book), self._book.today())
            self._book.back_up()

    def _today_if_past(self, now: datetime) -> date | None:
        return now.date() if now.time() >= self._at else None
