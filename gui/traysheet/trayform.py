"""Tray form: the growing conditions of a tray as fields.

In    a `NewTray`; names that the book knows; what is usual for its crop and medium
Out   the `NewTray` that the fields say, or which field cannot be read and why; what can hurt,
      below the fields of feed and heat mat
Not   keeping it (`conditionspage.py`), what is plausible (`data`)
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QWidget

from data.records import NewTray
from gui.controls.fieldgrid import FieldGrid
from gui.language.levels import edited_level, shown_level
from gui.language.spoken import in_figures, spoken
from gui.notes.moments import MomentEdit, moment_in, show_moment
from gui.notes.table import number_in
from gui.plan.cautions import grown_cautions
from gui.style.words import wrapped
from gui.trays.traynames import tag_of

__all__ = ["TrayForm", "Trouble"]

SEATINGS = ("in the tray", "on an upturned tray")
WATERINGS = ("top", "bottom", "both")
FAR = timedelta(days=365)  # a year that is half typed: what is dark stays where it is
MOST_DIGITS = 4  # of a place on a shelf


class Trouble(Exception):
    """A field cannot be read."""

    def __init__(self, field: QWidget, words: str) -> None:
        super().__init__(words)
        self.field, self.words = field, words


class TrayForm(FieldGrid):
    """Everything that a person can say of how a tray grows."""

    edited = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tray: NewTray | None = None
        self._filling = False
        self._make_fields()
        for words, field in self._named_fields():
            self.add(words, field)
            self._listen(field)
        self.dark.toggled.connect(self._fit_dark)
        self.feed_caution, self.heat_caution = wrapped("", self, "notice"), wrapped("", self, "notice")
        self.say_below(self.feed, self.feed_caution)
        self.say_below(self.heat_mat, self.heat_caution)
        self.feed.textChanged.connect(self._caution)
        self.heat_mat.currentIndexChanged.connect(self._caution)
        self.sown.dateTimeChanged.connect(self._move_dark)
        self._caution()

    def _make_fields(self) -> None:
        self.code, self.tag, self.shelf, self.position = (QLineEdit(self) for _ in range(4))
        self.crop, self.medium, self.tray_type = (QComboBox(self) for _ in range(3))
        for box in (self.crop, self.medium):
            box.setEditable(True)
        self.sown = MomentEdit(self)
        self._sown_at = moment_in(self.sown)
        self.seed_lot, self.rate, self.soak = (QLineEdit(self) for _ in range(3))
        self.seating = self._choice((self.tr("in the tray"), self.tr("on an upturned tray")), SEATINGS)
        self.stacked, self.heat_mat = self._yes_no(), self._yes_no()
        waters = (self.tr("not noted"), *map(spoken, WATERINGS))
        self.watering = self._choice(waters, (None, *WATERINGS))
        self.feed, self.light, self.note = (QLineEdit(self) for _ in range(3))
        self.dark = QCheckBox(self.tr("was kept dark"), self)
        self.dark_from, self.dark_to = MomentEdit(self), MomentEdit(self)

    def _named_fields(self) -> Sequence[tuple[str, QWidget]]:
        """Every field with its words, in reading order."""
        return (
            (self.tr("Code on the tray"), self.code),
            (self.tr("Crop"), self.crop),
            (self.tr("Medium"), self.medium),
            (self.tr("Sown"), self.sown),
            (self.tr("Seed lot"), self.seed_lot),
            (self.tr("Sowing rate, g of dry seed"), self.rate),
            (self.tr("Soaked, hours"), self.soak),
            (self.tr("Seating"), self.seating),
            (self.tr("After sowing"), self.dark),
            (self.tr("Dark from"), self.dark_from),
            (self.tr("Dark to"), self.dark_to),
            (self.tr("Stacked"), self.stacked),
            (self.tr("Watering"), self.watering),
            (self.tr("Feed"), self.feed),
            (self.tr("Heat mat"), self.heat_mat),
            (self.tr("Light"), self.light),
            (self.tr("Shelf"), self.shelf),
            (self.tr("Place on the shelf"), self.position),
            (self.tr("Tray type"), self.tray_type),
            (self.tr("Tag number"), self.tag),
            (self.tr("Note"), self.note),
        )

    def _choice(self, words: Sequence[str], values: Sequence[str | None]) -> QComboBox:
        box = QComboBox(self)
        for word, value in zip(words, values, strict=True):
            box.addItem(word, value)
        return box

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return list(self.fields)

    def _yes_no(self) -> QComboBox:
        box = QComboBox(self)
        for word, value in ((self.tr("not noted"), None), (self.tr("no"), False), (self.tr("yes"), True)):
            box.addItem(word, value)
        return box

    def _listen(self, field: QWidget) -> None:
        if isinstance(field, QLineEdit):
            field.textChanged.connect(self._edited)
        elif isinstance(field, QComboBox):
            field.currentTextChanged.connect(self._edited)
        elif isinstance(field, MomentEdit):
            field.dateTimeChanged.connect(self._edited)
        elif isinstance(field, QCheckBox):
            field.toggled.connect(self._edited)

    def _edited(self) -> None:
        if not self._filling:
            self.edited.emit()

    def _caution(self) -> None:
        """What can hurt is said beside the field that speaks of it."""
        for label, words in (
            (self.feed_caution, grown_cautions([self.feed.text()], heated=False)),
            (self.heat_caution, grown_cautions([], heated=bool(self.heat_mat.currentData()))),
        ):
            label.setText(words)
            label.setVisible(bool(words))

    def _move_dark(self) -> None:
        """Blackout moves with the sowing, as everywhere, by the clock on the wall over a change of it."""
        sown = moment_in(self.sown)
        moved, self._sown_at = sown - self._sown_at, sown
        if self._filling or not self.dark.isChecked() or abs(moved) > FAR:
            return
        for field in (self.dark_from, self.dark_to):
            show_moment(field, moment_in(field) + moved)

    def _fit_dark(self) -> None:
        for field in (self.dark_from, self.dark_to):
            field.setEnabled(self.dark.isChecked())

    # --- in and out

    def show_names(self, crops: Sequence[str], media: Sequence[str], tray_types: Sequence[str]) -> None:
        """Names that can be chosen."""
        self._filling = True
        for box, names in ((self.crop, crops), (self.medium, media), (self.tray_type, tray_types)):
            said = box.currentText()
            box.clear()
            box.addItems(list(names))
            box.setCurrentText(said)
        self._filling = False

    def show_tray(self, tray: NewTray) -> None:
        """Fill every field."""
        self._tray, self._filling = tray, True
        for field, text in (
            (self.code, tray.code),
            (self.tag, tray.tag_number),
            (self.shelf, tray.shelf),
            (self.position, tray.position),
            (self.seed_lot, tray.seed_lot),
            (self.rate, _plain(tray.sowing_rate_g)),
            (self.soak, _plain(tray.soak_hours)),
            (self.feed, shown_level("feed", tray.feed)),
            (self.light, shown_level("light", tray.light)),
            (self.note, tray.note),
        ):
            field.setText("" if text is None else str(text))
            field.setCursorPosition(0)
        for named, name in (
            (self.crop, tray.crop),
            (self.medium, tray.medium),
            (self.tray_type, tray.tray_type),
        ):
            named.setCurrentText(name)
        for box, value in (
            (self.seating, tray.seating),
            (self.watering, tray.watering),
            (self.stacked, tray.stacked),
            (self.heat_mat, tray.heat_mat),
        ):
            box.setCurrentIndex(max(0, box.findData(value)))
        show_moment(self.sown, tray.sown_at)
        self.dark.setChecked(tray.blackout_from is not None and tray.blackout_to is not None)
        show_moment(self.dark_from, tray.blackout_from or tray.sown_at)
        show_moment(self.dark_to, tray.blackout_to or tray.sown_at)
        self._fit_dark()
        self._filling = False

    def fill_in(self, usual: NewTray) -> None:
        """What is usual, in the fields that say nothing yet."""
        said = self.said()
        empty = {
            name: getattr(usual, name)
            for name in (
                "seed_lot", "sowing_rate_g", "soak_hours", "stacked", "watering", "feed", "heat_mat", "light",
            )
            if getattr(said, name) is None and getattr(usual, name) is not None
        }  # fmt: skip
        if said.blackout_from is None and usual.blackout_from and usual.blackout_to:
            moved = said.sown_at - usual.sown_at
            empty |= {
                "blackout_from": usual.blackout_from + moved,
                "blackout_to": usual.blackout_to + moved,
            }
        self.show_tray(replace(said, **empty))
        self.edited.emit()

    def said(self) -> NewTray:
        """What the fields say; raises `Trouble` for the first one that cannot be read."""
        assert self._tray is not None
        dark = self.dark.isChecked()
        return replace(
            self._tray,
            code=self._needed(self.code, self.tr("Give the tray a code, as it stands on the tray.")),
            crop=self._needed(self.crop, self.tr("Say which crop grows in it.")),
            medium=self._needed(self.medium, self.tr("Say on which medium it grows.")),
            sown_at=moment_in(self.sown, self._tray.sown_at),
            tag_number=self._tag(),
            shelf=self.shelf.text().strip(),
            position=self._place(),
            tray_type=self.tray_type.currentText(),
            seed_lot=self.seed_lot.text().strip() or None,
            seating=str(self.seating.currentData()),
            sowing_rate_g=self._number(self.rate),
            soak_hours=self._number(self.soak),
            blackout_from=moment_in(self.dark_from, self._tray.blackout_from) if dark else None,
            blackout_to=moment_in(self.dark_to, self._tray.blackout_to) if dark else None,
            stacked=self.stacked.currentData(),
            watering=self.watering.currentData(),
            feed=self._level("feed", self.feed),
            heat_mat=self.heat_mat.currentData(),
            light=self._level("light", self.light),
            note=self.note.text().strip(),
        )

    def _needed(self, field: QLineEdit | QComboBox, words: str) -> str:
        text = field.text() if isinstance(field, QLineEdit) else field.currentText()
        if not text.strip():
            raise Trouble(field, words)
        return text.strip()

    def _level(self, factor: str, field: QLineEdit) -> str | None:
        return edited_level(factor, field.text(), None if self._tray is None else getattr(self._tray, factor))

    def _tag(self) -> int | None:
        text = self.tag.text().strip()
        number = tag_of(text) if text else None
        if text and number is None:
            words = self.tr("A tag is a whole number from 10 to 586; leave the field empty without a tag.")
            raise Trouble(self.tag, words)
        return number

    def _place(self) -> int | None:
        text = self.position.text().strip()
        if not text:
            return None
        if not text.isdecimal() or len(text) > MOST_DIGITS or int(text) < 1:
            raise Trouble(self.position, self.tr("Count the places along the shelf: 1, 2, 3 ..."))
        return int(text)

    def _number(self, field: QLineEdit) -> float | None:
        text = field.text().strip()
        if not text:
            return None
        number = number_in(text)
        if number is None or number < 0 or (field is self.rate and number == 0):
            raise Trouble(field, self.tr("Type a number, or leave the field empty."))
        return number


def _plain(value: float | None) -> str | None:
    return None if value is None else in_figures(value)
