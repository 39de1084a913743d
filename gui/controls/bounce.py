"""Bounce: a wet finger that touches a button twice where it meant to once.

In    presses of buttons whose second press would do something else
Out   whether a press came too soon after the one before to be meant
Not   the letters that answer in a list: who types one twice means it
"""

from collections.abc import Callable

from PySide6.QtCore import QElapsedTimer
from PySide6.QtGui import QGuiApplication

__all__ = ["Bounce"]


class Bounce:
    """Of one place on the screen; as soon as a double click is what the system says."""

    def __init__(self) -> None:
        self._since = QElapsedTimer()
        self._of: object = None

    @property
    def goes_on(self) -> bool:
        """Whether a press now would be too soon after the last one that counted."""
        least = QGuiApplication.styleHints().mouseDoubleClickInterval()
        return self._since.isValid() and self._since.elapsed() < least

    def is_one(self, of: object = None) -> bool:
        """Whether this press was no press of its own: too soon after the last one, of the same thing."""
        if self.goes_on and of == self._of:
            return True
        self._since.start()
        self._of = of
        return False

    def once(self, does: Callable[[], object]) -> Callable[[], None]:
        """What a press does, for a button to be connected to: nothing where it was none of its own."""

        def press() -> None:
            if not self.is_one():
                does()
                self.done()

        return press

    def done(self) -> None:
        """What the press did is done only now: one that was waiting meanwhile came at once, too."""
        self._since.start()
