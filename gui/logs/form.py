"""Log form: the parts of the assistant for files of loggers and scales, laid out.

In    a book (its trays and shelves), a `LogSheet`
Out   `changed` with how the file shall be read when a choice was made by hand; the widgets
Not   what a change does (`assistant.py`)
"""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.book import Book
from data.logs.readas import ReadAs
from data.logs.sheet import LogSheet
from data.logs.times import DateOrder
from gui.controls.fileform import FileForm
from gui.language.spoken import begun, spoken
from gui.logs.preview import LogPreview
from gui.logs.view import DELIMITERS, delimiter_words, place_of, with_place
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["LogForm"]


class LogForm(FileForm):
    """Everything that is seen of one file."""

    changed = Signal(object)  # ReadAs

    def __init__(self, book: Book, dialog: QDialog) -> None:
        super().__init__(dialog)
        self._read: ReadAs | None = None
        self.delimiter = self._combo([(delimiter_words(one), one) for one in DELIMITERS])
        self.decimal = self._combo([(self.tr("point, 20.5"), "."), (self.tr("comma, 20,5"), ",")])
        orders = [(begun(spoken(one)), one) for one in DateOrder]
        self.order = self._combo([(self.tr("not known yet"), None), *orders])
        self.zone = QLineEdit(self)
        self.zone.setPlaceholderText(self.tr("the rack's own"))
        self.zone.editingFinished.connect(self._choose)
        self.place = self._combo(self._places(book))
        self.preview = LogPreview(self)
        self.questions = QFrame(self)
        set_role(self.questions, "band-notice")
        self._rows = QVBoxLayout(self.questions)
        self.make_end(self.tr("Rows that are not kept, and why"))
        self._make_choices()
        self.lay_out(dialog, (self.questions, self.choices, self.preview), 36, 640)
        self.show_nothing()

    def _places(self, book: Book) -> list[tuple[str, object]]:
        """What all readings of a file can be of."""
        trays = book.trays()
        shelves = sorted({tray.shelf for tray in trays if tray.shelf})
        places: list[tuple[str, object]] = [(self.tr("as the columns say"), None)]
        places += [(self.tr("shelf {name}").format(name=one), ("shelf", one)) for one in shelves]
        places += [(self.tr("tray {code}").format(code=one.code), ("tray", one.code)) for one in trays]
        return places

    def _combo(self, choices: Sequence[tuple[str, object]]) -> QComboBox:
        combo = QComboBox(self)
        for words, value in choices:
            combo.addItem(words, value)
        combo.activated.connect(self._choose)
        return combo

    def _make_choices(self) -> None:
        self.choices = QWidget(self)
        grid = QGridLayout(self.choices)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.M)
        for at, (words, field) in enumerate(
            (
                (self.tr("Between columns"), self.delimiter),
                (self.tr("Decimals"), self.decimal),
                (self.tr("Dates"), self.order),
                (self.tr("Time zone of its clock"), self.zone),
                (self.tr("Readings are of"), self.place),
            )
        ):
            label = QLabel(words, self.choices)
            label.setBuddy(field)
            field.setAccessibleName(words)
            grid.addWidget(label, at // 3 * 2, at % 3)
            grid.addWidget(field, at // 3 * 2 + 1, at % 3)
        for at in range(3):
            grid.setColumnStretch(at, 1)

    # --- showing

    def show_nothing(self) -> None:
        """Nothing was read."""
        for part in (self.questions, self.choices, self.preview, self.fold, self.bad):
            part.hide()
        self.count.clear()

    def freeze(self, frozen: bool) -> None:
        """While readings are kept nothing of how they are read can be changed; Leave is Cancel then."""
        for part in (self.questions, self.choices, self.preview):
            part.setEnabled(not frozen)
        self.leave.setText(self.tr("Cancel") if frozen else self.tr("Leave"))

    def show_sheet(self, sheet: LogSheet) -> None:
        """The choices as the file is read now."""
        self._read = read = sheet.read_as
        values = (
            (self.delimiter, read.delimiter),
            (self.decimal, read.decimal),
            (self.order, read.date_order),
            (self.place, place_of(read)),
        )
        for combo, value in values:
            at = next((n for n in range(combo.count()) if combo.itemData(n) == value), -1)
            combo.setCurrentIndex(at)
        self.zone.setText(read.zone or "")
        self.preview.show_sheet(sheet)
        self.choices.show()
        self.preview.show()

    def show_questions(self, rows: Sequence[tuple[str, Sequence[QPushButton]]]) -> None:
        """What is open, each with its answers as buttons."""
        while self._rows.count():
            item = self._rows.takeAt(0)
            old = None if item is None else item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        for words, buttons in rows:
            row = QWidget(self.questions)
            beside = QHBoxLayout(row)
            beside.setContentsMargins(0, 0, 0, 0)
            label = wrapped(words, row)
            beside.addWidget(label, 1)
            for button in buttons:
                beside.addWidget(button)
            self._rows.addWidget(row)
        self.questions.setVisible(bool(rows))

    # --- changing

    @Slot()
    def _choose(self) -> None:
        """What is not among the choices stays as it was read."""
        read = self._read
        if read is None:
            return
        order, place = _chosen(self.order, read.date_order), _chosen(self.place, place_of(read))
        wanted = replace(
            read,
            delimiter=_chosen(self.delimiter, read.delimiter),
            decimal=_chosen(self.decimal, read.decimal),
            date_order=None if order is None else DateOrder(order),
            zone=self.zone.text().strip() or None,
        )
        self.changed.emit(with_place(wanted, None if place is None else tuple(place)))


def _chosen(combo: QComboBox, otherwise: object) -> Any:
    return otherwise if combo.currentIndex() < 0 else combo.currentData()
