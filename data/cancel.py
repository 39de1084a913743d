"""Cancel: the flag that long work looks at between two photos, and how it says how far it is.

In    a press on Cancel, from any thread
Out   `Cancelled`, raised where the work next asks; `Progress`, called as it gets on
Not   killing anything: work stops at the next place where the book is whole
"""

import threading
from collections.abc import Callable

__all__ = ["CancelToken", "Cancelled", "Progress", "unwatched"]

Progress = Callable[[int, int], None]  # done, and all there is to do; of whatever the work counts


def unwatched(_done: int, _total: int) -> None:
    """Nobody asks how far it is."""


class Cancelled(Exception):
    """The person has cancelled; everything kept so far stays."""


class CancelToken:
    """Raised once by the person, looked at by the work; safe to share between threads."""

    def __init__(self) -> None:
        self._flag = threading.Event()

    def cancel(self) -> None:
        """Ask the work to stop; may be called more than once."""
        self._flag.set()

    @property
    def is_set(self) -> bool:
        """Whether the work has been asked to stop."""
        return self._flag.is_set()

    def check(self) -> None:
        """Raise `Cancelled` if the work has been asked to stop."""
        if self._flag.is_set():
            raise Cancelled

    def wait(self, seconds: float) -> None:
        """Sleep, no longer than until the work is asked to stop."""
        self._flag.wait(seconds)

    def at_each(self, report: Progress) -> Progress:
        """`report`, and `Cancelled` where the work was asked to stop: for what is one transaction."""

        def step(done: int, total: int) -> None:
            self.check()
            report(done, total)

        return step
