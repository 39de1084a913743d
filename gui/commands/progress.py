"""Progress: how far a long command is, on the last line of a terminal.

In    what is being done; steps done and steps in all, as the work reports them
Out   one line on stderr that is written over, and gone at the end; nothing where stderr is no terminal
Not   results and refusals (`saying.py`), progress in the window (`gui/work.py`)
"""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from time import monotonic

from data.cancel import Progress, unwatched

__all__ = ["progress"]


EVERY_S = 0.5


@contextmanager
def progress(what: str) -> Iterator[Progress]:
    """What the work is to report to; `what` is said before the numbers."""
    if not sys.stderr.isatty():
        yield unwatched
        return
    last, longest = -EVERY_S, 0

    def tell(done: int, total: int) -> None:
        nonlocal last, longest
        if monotonic() - last >= EVERY_S:
            line = f"{what}: {done:,} of {total:,}"
            last, longest = monotonic(), max(longest, len(line))
            print(f"\r{line:{longest}}", end="", file=sys.stderr, flush=True)

    try:
        yield tell
    finally:
        print(f"\r{'':{longest}}\r", end="", file=sys.stderr, flush=True)
