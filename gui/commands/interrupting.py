"""Interrupting: the first Ctrl+C ends a command between two photos, a second one at once.

In    nothing
Out   what Ctrl+C does meanwhile
Not   what is said of the first (`command.py`); `watch`, which ends its own way (`watch.py`)

After the first the photos that are being scored are waited for, a second or two. Whoever presses again
meanwhile tears Python's threads apart, and the process died with the system's words for a crash. What a book
holds is whole at any moment, so it may end there.
"""

import os
import signal
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

from gui.commands.saying import STOPPED

__all__ = ["interrupting"]

AT_ONCE = b"evenstand: stopped at once; what was stored by then stays.\n"


@contextmanager
def interrupting() -> Iterator[None]:
    """Ctrl+C as said above, where nobody else has said what it does."""
    before = signal.getsignal(signal.SIGINT)
    ours = before in (signal.SIG_DFL, signal.default_int_handler)
    if not ours or threading.current_thread() is not threading.main_thread():
        yield
        return
    signal.signal(signal.SIGINT, _first)
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)


def _first(number: int, frame: FrameType | None) -> None:
    signal.signal(signal.SIGINT, _second)
    signal.default_int_handler(number, frame)


def _second(_number: int, _frame: FrameType | None) -> None:
    os.write(2, AT_ONCE)  # a print may be under way
    os._exit(STOPPED)
