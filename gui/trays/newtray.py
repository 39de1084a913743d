"""New tray: what grows in it, in what, since when, under which tag; and how many of it.

In    the book; a tray that the new ones shall be like
Out   trays added, each like the last one of its kind, all of one sowing as one step of undo; which kind their
      medium is of; `added`
Not   planning a trial (`plan/screen.py`), correcting how one grows (`traysheet/conditionspage.py`), words
      (`sowingview.py`)

It stays open, since a sowing is seldom one tray. What is unusual is said while it is typed, never refused.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, time
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Qt, Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFormLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)

from data.errors import BookError
from data.growing.conditions import TrayType, like
from data.records import NewTray, Tray
from gui.controls.bounce import Bounce
from gui.controls.dayfield import DayField
from gui.controls.form import fields, fit, lay_out
from gui.controls.kindfield import KindField
from gui.controls.numberfield import NumberField
from gui.controls.telling import tell
from gui.language.spoken import spoken
from gui.style.palette import set_role
from gui.trays.sowingview import codes_words, conditions_words, doubts, several
from gui.trays.traynames import tag_of

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["NewTrayDialog"]

MORNING = time(8)
MOST_AT_ONCE = 200


class NewTrayDialog(QDialog):
    """Adds trays, one or a whole sowing."""

    added = Signal(str)  # codes

    def __init__(self, book: "Book", parent: QWidget | None = None, model: Tray | None = None) -> None:
        super().__init__(parent)
        self._book = book
        self._trays = book.trays()
        self._bounce = Bounce()
        self.setWindowTitle(self.tr("Add trays"))
        title = QLabel(self.tr("Add trays"), self)
        set_role(title, "title")
        self._make_fields()
        self._make_words()
        done = QPushButton(self.tr("Done"), self)
        done.clicked.connect(self.accept)
        lay_out(self, (title,), self._form(), self.said, (done, self.add), 78, rolls=True)
        self._choose_model(model)
        self._listen()
        self._follow()
        self.code.setFocus()
        self.code.selectAll()

    def _make_words(self) -> None:
        """What is taken over, what will be added, and the button that does it."""
        self.taken_over, self.said = QLabel(self), QLabel(self)
        set_role(self.taken_over, "soft")
        for label in (self.taken_over, self.said):
            label.setWordWrap(True)
            label.setMinimumHeight(self.fontMetrics().height() * 2)
            label.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.add = QPushButton(self)
        self.add.setDefault(True)
        set_role(self.add, "main")
        self.add.clicked.connect(self._add)

    def _form(self) -> QFormLayout:
        form = fields()
        for words, field in (
            (self.tr("&Like"), self.like_whom),
            (self.tr("&Code on the tray"), self.code),
            (self.tr("&How many"), self.count),
            (self.tr("C&rop"), self.crop),
            (self.tr("&Medium"), self.medium),
            (self.tr("Kind of medium"), self.medium_kind),
            (self.tr("&Sown on"), self.sown),
            (self.tr("Sh&elf"), self.shelf),
            (self.tr("&Tag number"), self.tag),
            (self.tr("Tray type"), self.kind),
            (self.tr("Taken over"), self.taken_over),
        ):
            form.addRow(words, field)
        beside = form.labelForField(self.taken_over)
        assert isinstance(beside, QLabel)
        beside.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)  # as its sentence
        form.setRowVisible(self.kind, self.kind.count() > 2)  # one kind alone is no choice
        return form

    def _make_fields(self) -> None:
        book = self._book
        self.like_whom = QComboBox(self)
        self.like_whom.addItem(self.tr("the last one of its kind"), None)
        for tray in self._trays:
            words = self.tr("{code}: {crop} on {medium}")
            self.like_whom.addItem(words.format(code=tray.code, crop=tray.crop, medium=tray.medium), tray)
        self.like_whom.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.code = QLineEdit(book.free_code(self._trays[-1].code) if self._trays else "A1", self)
        self.count = NumberField(self.tr("How many trays"), least=1, most=MOST_AT_ONCE, parent=self)
        self.crop, self.medium = QComboBox(self), QComboBox(self)
        for box, names in ((self.crop, book.crops()), (self.medium, book.media())):
            box.setEditable(True)
            box.addItems(list(names))
            box.setCurrentText("")
        self.medium_kind = KindField(self.tr("Kind of medium"), self)
        self.kind = QComboBox(self)
        self.kind.addItem(self.tr("as the one before"), None)
        for one in book.tray_types():
            self.kind.addItem(one.name, one.name)
        today = book.today()
        self.sown = DayField(self)
        self.sown.setDate(QDate(today.year, today.month, today.day))
        self.shelf = QLineEdit(self)
        self.tag = QLineEdit(self)
        self.tag.setPlaceholderText(self.tr("10 to 586; leave empty without a tag"))

    def _choose_model(self, model: Tray | None) -> None:
        if model is not None:
            places = [n for n, tray in enumerate(self._trays, start=1) if tray.id == model.id]
            self.like_whom.setCurrentIndex(places[0] if places else 0)
            self._fill_from_model()

    def _listen(self) -> None:
        self.like_whom.currentIndexChanged.connect(self._fill_from_model)
        for line in (self.code, self.shelf, self.tag):
            line.textChanged.connect(self._follow)
        for box in (self.crop, self.medium):
            box.editTextChanged.connect(self._follow)
        self.medium.editTextChanged.connect(self._follow_medium)
        self.kind.currentIndexChanged.connect(self._follow)
        self.count.changed.connect(self._follow)
        self.sown.dateChanged.connect(self._follow)

    # --- what the fields say

    @property
    def model(self) -> Tray | None:
        """The growing tray that the new ones shall be like; None: the last of its kind."""
        place = self.like_whom.currentIndex()
        return self._trays[place - 1] if place > 0 else None

    @property
    def how_many(self) -> int:
        """Trays at once."""
        return round(self.count.value)

    @Slot()
    def _fill_from_model(self) -> None:
        model = self.model
        if model is not None:
            self.crop.setCurrentText(model.crop)
            self.medium.setCurrentText(model.medium)
            self.shelf.setText(model.shelf)
            self.code.setText(self._book.free_code(model.code))
        self._follow()

    @Slot()
    def _follow_medium(self) -> None:
        """Another medium has a kind of its own."""
        self.medium_kind.set(self._known_kind())

    def _known_kind(self) -> str:
        known = self._book.medium(self.medium.currentText().strip())
        return "" if known is None else known.kind

    def _said(self) -> tuple[NewTray, ...]:
        """The trays that the fields speak of."""
        sown = self.sown.date()
        sown_at = datetime.combine(datetime(sown.year(), sown.month(), sown.day()), MORNING)
        crop, medium = self.crop.currentText().strip(), self.medium.currentText().strip()
        code, model = self.code.text().strip(), self.model
        if model is not None and (model.crop, model.medium) == (crop, medium):
            kind = like(model, sown_at, code)
        else:
            kind = self._book.tray_of_kind(crop, medium, sown_at)
        first = replace(kind, code=code, shelf=self.shelf.text().strip(), tag_number=tag_of(self.tag.text()))
        if self.kind.currentData() is not None:
            first = replace(first, tray_type=self.kind.currentData())
        return several(first, self.how_many, self._codes(), self._tags())

    def _codes(self) -> frozenset[str]:
        return frozenset(tray.code for tray in self._trays)

    def _tags(self) -> frozenset[int]:
        return frozenset(tray.tag_number for tray in self._trays if tray.tag_number is not None)

    def _type(self, name: str) -> TrayType:
        try:
            return self._book.tray_type(name)
        except KeyError:
            return TrayType(name=name)

    @Slot()
    def _follow(self) -> None:
        """Say which trays would come, what they take over, and what is unusual about them."""
        count = self.how_many
        one, many = self.tr("Add this tray"), self.tr("Add {count} trays").format(count=count)
        self.add.setText(one if count == 1 else many)
        if self._trouble():
            self.taken_over.setText(self.tr("Name the crop and the medium: the last of its kind is copied."))
            self._say("", "soft")
            return
        try:
            trays = self._said()
        except BookError as error:
            self._say(spoken(error), "alarm")
            return
        grown = conditions_words(trays[0])
        self.taken_over.setText(grown or self._nothing_words(trays[0]))
        odd = doubts(trays, self._type(trays[0].tray_type), self._book.today(), self._codes(), self._tags())
        if odd:
            self._say(" ".join(odd), "notice")
        else:
            self._say(codes_words(trays) if count > 1 else "", "soft")

    def _nothing_words(self, tray: NewTray) -> str:
        if self.model is None and self._book.like_last(tray.crop, tray.medium) is None:
            return self.tr("Nothing: no tray of this kind has been noted yet.")
        return self.tr("Nothing: how the one before it grows has not been noted.")

    # --- adding

    @Slot()
    def _add(self) -> None:
        if self._bounce.goes_on:
            return
        trouble = self._trouble()
        if trouble:
            self._say(trouble, "alarm")
            return
        try:
            trays = self._said()
            with self._book.together():
                self._book.add_trays(trays)
                if self.medium_kind.kind != self._known_kind():
                    self._book.set_medium(trays[0].medium, kind=self.medium_kind.kind)
                self._book.match_by_tag()
            self._trays = self._book.trays()
        except BookError as error:
            self._say(spoken(error), "alarm")
            return
        self._next(trays)
        self.added.emit(codes_words(trays))
        self._bounce.done()  # from here on the button offers the next tray

    def _next(self, trays: Sequence[NewTray]) -> None:
        """Ready for the next ones; what has been done stays said."""
        *_, after = several(trays[-1], 2, self._codes(), self._tags())
        self.count.set(1)  # before the code: the button follows that
        self.code.setText(after.code)
        self.tag.setText("" if after.tag_number is None else str(after.tag_number))
        one, model = len(trays) == 1, self.model
        words = self.tr("{codes} is on the rack.") if one else self.tr("{codes} are on the rack.")
        if conditions_words(trays[0]) and model is not None:
            words = self.tr("On the rack: {codes}, grown as {model}; what differs is told on the tray sheet.")
        elif conditions_words(trays[0]):
            words = self.tr(
                "On the rack: {codes}, grown as the last one of its kind; "
                "what differs is told on the tray sheet."
            )
        told = words.format(codes=codes_words(trays), model="" if model is None else model.code)
        self._say(told, "soft")
        self.code.setFocus()
        self.code.selectAll()

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
        tell(self.said, words[:1].upper() + words[1:], role)
        fit(self)
