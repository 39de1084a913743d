"""New tray: what grows in it, in what, since when, under which tag.

In    the book
Out   trays added one after the other, each like the last one of its kind, each one step of undo; `added`
Not   planning a trial
"""

from dataclasses import replace
from datetime import datetime, time
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDialog,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)

from data.errors import BookError
from data.records import NewTray
from gui.form import fields, lay_out
from gui.palette import set_role
from gui.traynames import next_code, tag_of

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["NewTrayDialog"]

MORNING = time(8)


class NewTrayDialog(QDialog):
    """Adds trays; stays open, since a sowing is seldom one tray."""

    added = Signal(str)  # code

    def __init__(self, book: "Book", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book = book
        self.setWindowTitle(self.tr("Add trays"))
        title = QLabel(self.tr("Add a tray"), self)
        set_role(title, "title")
        self.code = QLineEdit("A1", self)
        self.crop, self.medium = QComboBox(self), QComboBox(self)
        for box, names in ((self.crop, book.crops()), (self.medium, book.media())):
            box.setEditable(True)
            box.addItems(list(names))
            box.setCurrentText("")
        today = book.today()
        self.sown = QDateEdit(QDate(today.year, today.month, today.day), self)
        self.sown.setCalendarPopup(True)
        self.sown.setDisplayFormat("d MMMM yyyy")
        self.shelf = QLineEdit(self)
        self.tag = QLineEdit(self)
        self.tag.setPlaceholderText(self.tr("10 to 586; leave empty without a tag"))
        self.said = QLabel(self)
        self.said.setWordWrap(True)
        self.said.setMinimumHeight(self.fontMetrics().height() * 2)
        self.add = QPushButton(self.tr("Add this tray"), self)
        self.add.setDefault(True)
        set_role(self.add, "main")
        self.add.clicked.connect(self._add)
        done = QPushButton(self.tr("Done"), self)
        done.clicked.connect(self.accept)

        form = fields()
        form.addRow(self.tr("&Code on the tray"), self.code)
        form.addRow(self.tr("C&rop"), self.crop)
        form.addRow(self.tr("&Medium"), self.medium)
        form.addRow(self.tr("&Sown on"), self.sown)
        form.addRow(self.tr("S&helf"), self.shelf)
        form.addRow(self.tr("&Tag number"), self.tag)
        lay_out(self, (title,), form, self.said, (done, self.add), 66)
        self.code.selectAll()

    @Slot()
    def _add(self) -> None:
        trouble = self._trouble()
        if trouble:
            self._say(trouble, "alarm")
            return
        code = self.code.text().strip()
        sown = self.sown.date()
        crop, medium = self.crop.currentText().strip(), self.medium.currentText().strip()
        sown_at = datetime.combine(datetime(sown.year(), sown.month(), sown.day()), MORNING)
        try:
            new = replace(
                self._book.tray_of_kind(crop, medium, sown_at),
                code=code,
                shelf=self.shelf.text().strip(),
                tag_number=tag_of(self.tag.text()),
            )
            self._book.add_tray(new)
        except BookError as error:
            self._say(str(error), "alarm")
            return
        words = self.tr("{code} is on the rack.").format(code=code)
        if new != bare_tray(new):
            words = self.tr(
                "{code} is on the rack, grown as the last one of its kind; what differs is told on its sheet."
            ).format(code=code)
        self._say(words, "soft")
        self.code.setText(next_code(code))
        self.tag.setText("" if new.tag_number is None else str(new.tag_number + 1))
        self.code.setFocus()
        self.code.selectAll()
        self.added.emit(code)

    def _trouble(self) -> str:
        """What is missing or wrong, or nothing."""
        if not self.code.text().strip():
            return self.tr("Give the tray a code, as it stands on the tray.")
        if not self.crop.currentText().strip():
            return self.tr("Say which crop grows in it.")
        if not self.medium.currentText().strip():
            return self.tr("Say on which medium it grows.")
        if self.tag.text().strip() and tag_of(self.tag.text()) is None:
            return self.tr("A tag is a whole number from 10 to 586; leave the field empty without a tag.")
        return ""

    def _say(self, words: str, role: str) -> None:
        set_role(self.said, role)
        self.said.setText(words[:1].upper() + words[1:])


def bare_tray(new: NewTray) -> NewTray:
    """The same tray with nothing told of how it grows."""
    return NewTray(
        code=new.code,
        crop=new.crop,
        medium=new.medium,
        sown_at=new.sown_at,
        shelf=new.shelf,
        tag_number=new.tag_number,
    )
