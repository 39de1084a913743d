"""Moments: a day and time in a field, and back, without what the field does not show getting lost.

In    `datetime`, a field
Out   the field filled; the `datetime` that it says
Not   words for a time (`numberwords.py`)
"""

from datetime import datetime

from PySide6.QtCore import QDate, QDateTime, QTime
from PySide6.QtWidgets import QDateTimeEdit, QWidget

from gui.language.words import noop, translate

__all__ = ["MomentEdit", "moment_in", "show_moment"]

FORMAT = noop("Date", "d MMM yyyy HH:mm")


class MomentEdit(QDateTimeEdit):
    """A day and time with a calendar; Tab leaves it at once, left and right go through its parts."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setDisplayFormat(translate("Date", FORMAT))
        self.setCalendarPopup(True)

    def focusNextPrevChild(self, forwards: bool) -> bool:
        """Not from day to month to year: that is five presses where one will do."""
        return QWidget.focusNextPrevChild(self, forwards)


def show_moment(edit: QDateTimeEdit, moment: datetime) -> None:
    """Fill the field."""
    day = QDate(moment.year, moment.month, moment.day)
    edit.setDateTime(QDateTime(day, QTime(moment.hour, moment.minute)))


def moment_in(edit: QDateTimeEdit, before: datetime | None = None) -> datetime:
    """What the field says; the seconds, which it does not show, as they were before."""
    at = edit.dateTime()
    day, time = at.date(), at.time()
    moment = datetime(day.year(), day.month(), day.day(), time.hour(), time.minute())
    if before is not None and moment == before.replace(second=0, microsecond=0):
        return before
    return moment
