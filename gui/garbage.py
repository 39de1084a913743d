"""Garbage: while background work runs, what nobody needs is cleared away in the window's thread alone.

In    that work begins, that all of it has ended
Out   nothing
Not   the work itself (`work.py`)

Python clears circles of objects in whichever thread happens to make the next one. If that is a worker's, and
a widget lies in such a circle, the worker takes a lock of Qt's and then waits for the interpreter, while the
window holds the interpreter and waits for the same lock: both stand still for ever. It happened while a
library was loaded in the background.
"""

import gc
from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QObject, QTimer, Slot

__all__ = ["Garbage", "uncleared"]

EVERY_MS = 250  # often, so that little has gathered
WHOLE_EVERY = 2400  # of these, ten minutes: all generations, 85 ms with every screen there


@contextmanager
def uncleared() -> Iterator[None]:
    """Nothing is cleared meanwhile: what comes in at a start stays, and to look through it takes a while."""
    enabled = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if enabled:
            gc.enable()


class Garbage(QObject):
    """Python's own clearing is off between `hold` and `release`; until then it is done here now and then."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._held = False
        self._times = 0
        self._timer = QTimer(self, interval=EVERY_MS)
        self._timer.timeout.connect(self.clear)

    def hold(self) -> None:
        """Work begins."""
        if not self._held and gc.isenabled():
            gc.disable()
            self._held = True
            self._timer.start()

    def release(self) -> None:
        """All work has ended."""
        if self._held:
            self._timer.stop()
            self._held = False
            gc.enable()

    @Slot()
    def clear(self) -> None:
        """Clear what is young; seldom all."""
        self._times += 1
        gc.collect(2 if self._times % WHOLE_EVERY == 0 else 1)
