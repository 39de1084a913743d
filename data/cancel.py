"""Cancel: the flag that long work looks at between two photos.

In    a press on Cancel, from any thread
Out   `Cancelled`, raised where the work next asks
Not   killing anything: work stops at the next place where the book is whole
"""

import threading

__all__ = ["CancelToken", "Cancelled"]


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
