"""Sayings: what the window says, at the foot for a while or on top until it has been read.

In    sentences of the screens and of the window's parts; what was made, and where it lies
Out   the foot and the two bands say them, and so does a screen reader
Not   how they look (`foot.py`, `bands.py`), what would be lost by leaving (`leaving.py`)
"""

from pathlib import Path

from PySide6.QtCore import QObject, Slot

from gui.controls.telling import announce
from gui.frame.bands import DoneBand, TroubleBand
from gui.frame.foot import Foot
from gui.frame.leaving import Leaving
from gui.language.spoken import spoken

__all__ = ["Sayings"]


class Sayings(QObject):
    """One place where all that is said arrives."""

    def __init__(
        self, foot: Foot, trouble: TroubleBand, done: DoneBand, leaving: Leaving, parent: QObject
    ) -> None:
        super().__init__(parent)
        self._foot, self._trouble, self._done, self._leaving = foot, trouble, done, leaving
        trouble.pressed.connect(leaving.forget)
        leaving.over.connect(trouble.forget)

    @Slot(str)
    def tell(self, sentence: str) -> None:
        """Say something at the foot, for a while."""
        self._foot.tell(sentence)
        announce(self._foot, self._foot.told.text())

    @Slot(str)
    def tell_trouble(self, sentence: str) -> None:
        """Say what went wrong, until it has been read."""
        self._leaving.forget()
        self._trouble.say(spoken(sentence))
        announce(self._trouble, self._trouble.words.text(), urgent=True)

    @Slot(str, object)
    def tell_made(self, sentence: str, folder: Path | None) -> None:
        """Say what was made, and in which folder it lies, until it has been read."""
        self._done.say_made(sentence, folder)
        announce(self._done, self._done.words.text())

    @Slot(str)
    def tell_turned(self, sentence: str) -> None:
        """What was taken back is no longer there to be told of."""
        if self._done.folder is None:
            self._done.hide()
        self.tell(sentence)
