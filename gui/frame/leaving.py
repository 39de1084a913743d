"""Leaving: what is not kept is said before the window closes or another book opens; the second time is meant.

In    the screens; when something was kept, or another sentence has taken the place of ours
Out   whether one may leave; `told` with what would be lost; `over` once that sentence holds no more
Not   what is not kept (each screen), where the sentence stands (`window.py`)
"""

from PySide6.QtCore import QObject, Signal, Slot

from gui.frame.screens import Screens

__all__ = ["Leaving"]


class Leaving(QObject):
    """Nothing is lost unsaid."""

    told = Signal(str)  # what would be lost, and how it is given up
    over = Signal()

    def __init__(self, screens: Screens, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._screens = screens
        self._told = ""  # the sentence, until it has been read

    def may_leave(self) -> bool:
        """Whether another book may be opened."""
        return self._is_meant(self.tr("{lost} Open another book once more to give it up."))

    def may_close(self) -> bool:
        """Whether the window may close."""
        return self._is_meant(self.tr("{lost} Close the window again to give it up."))

    @Slot()
    def forget(self) -> None:
        """The sentence was read: the next time it is said again."""
        self._told = ""

    @Slot()
    def look_again(self) -> None:
        """Something was kept: where nothing would be lost any more, the sentence is over."""
        if self._told and not self._lost():
            self._end()

    def _is_meant(self, words: str) -> bool:
        lost = self._lost()
        if not lost:
            return True
        sentence = words.format(lost=lost)
        if sentence == self._told:
            self._end()
            return True
        self.told.emit(sentence)
        self._told = sentence
        return False

    def _end(self) -> None:
        self._told = ""
        self.over.emit()

    def _lost(self) -> str:
        return " ".join(filter(None, (screen.unkept() for screen in self._screens.made.values())))
