"""New book: where the grower's own book shall stand.

In    a proposed folder
Out   the folder chosen; what stands in the way is said in place
Not   making the book (`otherbooks.py` hands the maker in)
"""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QWidget

from data.errors import BookError
from gui.controls.placedialog import PlaceDialog
from gui.language.spoken import spoken
from gui.language.words import translate

__all__ = ["NewBook"]


class NewBook(PlaceDialog):
    """Asks for a name and a place, and makes the book."""

    def __init__(self, where: Path, make: Callable[[Path], None], parent: QWidget | None = None) -> None:
        self._make = make
        super().__init__(
            translate("NewBook", "Start my own book"),
            translate(
                "NewBook",
                "A book is one folder that keeps your trays, your photos as they were taken and all numbers. "
                "Nothing leaves this computer.",
            ),
            translate("NewBook", "Start this book"),
            translate("NewBook", "My trays"),
            where,
            parent,
        )

    def doubt(self) -> str:
        """A folder may be there already, as long as no book is in it: the book says so."""
        return ""

    @Slot()
    def begin(self) -> None:
        """Make the book there."""
        try:
            self._make(self.path)
        except BookError as error:
            self.say(spoken(error))
            return
        self.accept()
