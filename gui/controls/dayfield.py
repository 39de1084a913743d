"""Day field: a day, typed part by part or chosen in a calendar; Tab leaves it at once.

In    nothing
Out   `QDateEdit` as everywhere in the window
Not   a day with a time of day (`gui/notes/moments.py`)
"""

from PySide6.QtWidgets import QDateEdit, QWidget

from gui.language.spoken import DAY_YEAR
from gui.language.words import translate

__all__ = ["DayField"]


class DayField(QDateEdit):
    """Left and right go through day, month and year."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setCalendarPopup(True)
        self.setDisplayFormat(translate("Date", DAY_YEAR))

    def focusNextPrevChild(self, forwards: bool) -> bool:
        """Not from day to month to year: that is three presses where one will do."""
        return QWidget.focusNextPrevChild(self, forwards)
