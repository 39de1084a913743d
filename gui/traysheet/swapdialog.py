"""Swap dialog: with which tray this one was swapped, since when, and whether notes went wrong, too.

In    the tray, the day that is looked at; the open book
Out   `keep`, which changes the book as it was chosen, and what is said then
Not   the change itself (`data/chapters/swapbook.py`)
"""

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Slot
from PySide6.QtWidgets import QButtonGroup, QComboBox, QDialog, QPushButton, QRadioButton, QWidget

from data.chapters.swapbook import stood_together
from data.errors import BookError
from data.records import Tray, TrayId
from gui.controls.dayfield import DayField
from gui.controls.form import fields, fit, lay_out
from gui.language.spoken import spoken
from gui.style.palette import set_role
from gui.style.words import heading, soft

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["SwapDialog"]

MOST_TRAYS = 24  # shown of the list at once


class SwapDialog(QDialog):
    """Nothing is taken for granted: the other tray and what went wrong have to be said."""

    def __init__(self, book: "Book", tray: Tray, day: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book, self._tray = book, tray
        self._others = [one for one in book.trays(growing=False) if stood_together(tray, one, date.min)]
        self.setWindowTitle(self.tr("Two trays swapped"))
        self._make_fields(day)
        self.told = soft("", self)
        leave, self.swap = QPushButton(self.tr("Leave"), self), QPushButton(self.tr("Swap them back"), self)
        leave.clicked.connect(self.reject)
        set_role(self.swap, "main")
        self.swap.setDefault(True)
        self.swap.clicked.connect(self.accept)
        above = self._above()
        form = fields()
        form.addRow(self.tr("The other tray"), self.which)
        form.addRow(self.tr("Since"), self.day)
        form.addRow(self.tr("Wrong are"), self.photos_alone)
        form.addRow("", self.with_notes)
        lay_out(self, above, form, self.told, [leave, self.swap], 72)
        self._tell()

    def _above(self) -> list[QWidget]:
        title = self.tr("{code} was taken for another tray").format(code=self._tray.code)
        why = self.tr(
            "Where two trays stood in each other's places, or carried each other's tags, what belongs to one "
            "was kept with the other. From the day that you choose it changes over, both ways."
        )
        return [heading(title, self), soft(why, self)]

    def _make_fields(self, day: date) -> None:
        self.which = QComboBox(self)
        self.which.setAccessibleName(self.tr("The other tray"))
        self.which.setPlaceholderText(self.tr("Choose the tray"))
        self.which.setMaxVisibleItems(MOST_TRAYS)
        for one in self._others:
            words = self.tr("{code}   {crop} on {medium}")
            self.which.addItem(words.format(code=one.code, crop=one.crop, medium=one.medium))
        self.which.setCurrentIndex(-1)
        self.which.currentIndexChanged.connect(self._tell)
        self.day = DayField(self)
        self.day.setAccessibleName(self.tr("Since"))
        self.day.setMinimumDate(_qdate(self._tray.sown_at.date()))
        self.day.setMaximumDate(_qdate(max(self._book.today(), day)))
        self.day.setDate(_qdate(day))
        self.day.dateChanged.connect(self._tell)
        self.photos_alone = QRadioButton(
            self.tr("the photos alone: notes were kept with the right tray"), self
        )
        self.with_notes = QRadioButton(self.tr("photos and notes, and how the trays ended"), self)
        self._group = QButtonGroup(self)
        for button in (self.photos_alone, self.with_notes):
            self._group.addButton(button)
        self._group.buttonClicked.connect(self._tell)

    def keep(self, book: "Book") -> None:
        """Swap them as it was said."""
        if self.other is not None:
            book.swap_trays(self._tray.id, self.other.id, self.since, notes=self.with_notes.isChecked())

    @property
    def done_words(self) -> str:
        """What is said once it is kept."""
        words = self.tr("{code} and {other} have changed over; Ctrl+Z takes it back.")
        return words.format(code=self._tray.code, other=self.other.code if self.other is not None else "")

    @property
    def other(self) -> Tray | None:
        """The tray that was chosen."""
        at = self.which.currentIndex()
        return None if at < 0 else self._others[at]

    @property
    def since(self) -> date:
        """The first day on which they were swapped."""
        day = self.day.date()
        return date(day.year(), day.month(), day.day())

    @Slot()
    def _tell(self) -> None:
        """How much it is; nothing can be swapped before all is said."""
        self.swap.setEnabled(False)
        if self.other is None or self._group.checkedButton() is None:
            self.told.setText(self.tr("Choose the other tray, and what was kept with the wrong one."))
        else:
            self._tell_how_much(self.other.id)
        fit(self)

    def _tell_how_much(self, other: TrayId) -> None:
        try:
            found = self._book.swap_of(self._tray.id, other, self.since)
        except BookError as error:
            self.told.setText(spoken(error))
            return
        notes = found.notes if self.with_notes.isChecked() else 0
        self.swap.setEnabled(bool(found.photos or notes))
        if not found.photos and not notes:
            self.told.setText(self.tr("Nothing was kept with either of them since that day."))
            return
        words = self.tr(
            "Change over: photos {photos}, notes {notes}. Sowing, uncovering and moves stay. If the trays "
            "still stand wrong or carry each other's tags, put that right before the next photos; Undo takes "
            "this back."
        )
        self.told.setText(words.format(photos=found.photos, notes=notes))


def _qdate(day: date) -> QDate:
    return QDate(day.year, day.month, day.day)
