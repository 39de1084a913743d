"""Treatments page: crops, media, what else varies, what stays the same.

In    the draft, and the crops and media that the book knows
Out   crops with the day they are read, media with the trusted one, the other factor; `kind_said` of a medium
Not   how many trays (`trays.py`)
"""

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from data.trial import FACTORS, MEDIUM, YES_NO, CropPlan, Factor
from gui.controls.namefield import NameField
from gui.language.levels import kept_level, shown_level
from gui.language.spoken import spoken
from gui.plan.cautions import caution_words
from gui.plan.croprow import CropRow
from gui.plan.mediumrow import MediumRow
from gui.plan.page import PlanPage
from gui.plan.reading import first_crop
from gui.plan.sameforall import SameForAll
from gui.plan.view import PlanState
from gui.style.palette import Space
from gui.style.words import heading, soft, wrapped

__all__ = ["TreatmentsPage"]

USUAL = {
    "feed": ("none", "weekly"),
    "watering": ("bottom", "top"),
    "seating": ("in the tray", "on an upturned tray"),
    "light": ("as now", "brighter"),
} | {factor: (levels[1], levels[0]) for factor, levels in YES_NO.items()}
FIXED = {"seating", *YES_NO}  # their settings have names in the book
OFTEN_BY_SHELF = {"heat mat", "light"}


class TreatmentsPage(PlanPage):
    """The second step."""

    kind_said = Signal(str, str)  # medium, kind

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.crop_rows: dict[str, CropRow] = {}
        self.media_rows: dict[str, MediumRow] = {}
        self.put_side_by_side(self._make_crops(), self._make_media(), (5, 4))
        self._make_other()
        self._make_same()
        self.column.addStretch(1)

    # --- making

    def _make_crops(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(Space.S)
        column.addWidget(heading(self.tr("On which crops?"), self.body))
        self._crops = QGridLayout()
        self._crops.setHorizontalSpacing(Space.M)
        self._crops.setVerticalSpacing(Space.S)
        self._crops.setColumnStretch(0, 1)
        heads = (
            self.tr("Crop"), self.tr("Read on day"), self.tr("Dry seed a tray"), self.tr("Blackout, days"),
        )  # fmt: skip
        for number, words in enumerate(heads):
            self._crops.addWidget(soft(words, self.body), 0, number)
        column.addLayout(self._crops)
        column.addWidget(
            soft(
                self.tr(
                    "Read on day: so many days after sowing the photos are compared. The day is fixed with "
                    "the plan. Blackout left open is as with the last tray of its kind; 0 days is never "
                    "covered."
                ),
                self.body,
            )
        )
        more = NameField(self.tr("Another crop"), self.body)
        more.named.connect(self._crop_added)
        column.addWidget(more)
        self.more_crops = more.line
        column.addStretch(1)
        return column

    def _make_media(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(Space.S)
        column.addWidget(heading(self.tr("Which media?"), self.body))
        self._media = QGridLayout()
        self._media.setHorizontalSpacing(Space.M)
        self._media.setVerticalSpacing(Space.S)
        self._media.setColumnStretch(0, 1)
        for number, words in enumerate(
            (self.tr("In the trial"), self.tr("The one I trust"), self.tr("Kind"))
        ):
            self._media.addWidget(soft(words, self.body), 0, number)
        column.addLayout(self._media)
        more = NameField(self.tr("Another medium"), self.body)
        more.named.connect(self._medium_added)
        column.addWidget(more)
        self.more_media = more.line
        column.addStretch(1)
        return column

    def _make_other(self) -> None:
        self.column.addWidget(heading(self.tr("Does anything else vary?"), self.body))
        self.other = QComboBox(self.body)
        self.other.setAccessibleName(self.tr("What else varies"))
        self.other.addItem(self.tr("nothing else"), "")
        for factor in FACTORS:
            if factor != MEDIUM:
                self.other.addItem(spoken(factor), factor)
        self.other.activated.connect(self._other_chosen)
        self.usual, self.new = QLineEdit(self.body), QLineEdit(self.body)
        self.usual.setAccessibleName(self.tr("As usual"))
        self.new.setAccessibleName(self.tr("The change"))
        for field in (self.usual, self.new):
            field.textEdited.connect(self._levels_edited)
        self._usual_word = QLabel(self.tr("as usual:"), self.body)
        self._new_word = QLabel(self.tr("the change:"), self.body)
        self._add_row(self.other, self._usual_word, self.usual, self._new_word, self.new)
        self.by_shelf = QCheckBox(self.tr("A whole shelf gets one setting (a heat mat, a lamp)"), self.body)
        self.by_shelf.toggled.connect(self._by_shelf_set)
        self.column.addWidget(self.by_shelf)
        self.shelf_words = soft(
            self.tr("Then shelves are what is compared, not trays, and it takes several of each."), self.body
        )
        self.column.addWidget(self.shelf_words)

    def _make_same(self) -> None:
        self.column.addWidget(heading(self.tr("What is the same for all trays?"), self.body))
        self.same = SameForAll(self.body)
        self.same.changed.connect(self._same_edited)
        self.feed, self.watering = self.same.feed, self.same.watering
        self.column.addWidget(self.same)
        self.caution = wrapped("", self.body, "notice")
        self.column.addWidget(self.caution)

    def _add_row(self, *parts: QWidget) -> None:
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        for part in parts:
            row.addWidget(part)
        row.addStretch(1)
        self.column.addLayout(row)

    # --- showing

    def show_state(self, state: PlanState) -> None:
        """Crops and media of the book and of the draft."""
        super().show_state(state)
        draft = state.draft
        if draft is None:
            return
        planned = {crop.name: crop for crop in draft.crops}
        known = {crop.name: crop for crop in state.reading.crops}
        self._show_crops({**known, **planned}, set(planned))
        media = dict.fromkeys((*state.reading.media, *draft.media), "") | dict(state.reading.kinds)
        self._show_media(media)
        other = draft.other
        self.other.setCurrentIndex(max(0, self.other.findData("" if other is None else other.name)))
        for part in (self.usual, self.new, self._usual_word, self._new_word, self.by_shelf, self.shelf_words):
            part.setVisible(other is not None)
        if other is not None:
            for field, text in zip((self.usual, self.new), (*other.levels, "", "")[:2], strict=True):
                if kept_level(other.name, field.text()) != text:
                    field.setText(shown_level(other.name, text))
                field.setReadOnly(other.name in FIXED)
            self.by_shelf.blockSignals(True)
            self.by_shelf.setChecked(other.by_shelf)
            self.by_shelf.blockSignals(False)
            self.shelf_words.setVisible(other.by_shelf)
        self.same.show_same(draft.same, "" if other is None else other.name)
        self.caution.setText(caution_words(draft))
        self.caution.setVisible(bool(self.caution.text()))

    def _show_crops(self, crops: dict[str, CropPlan], taken: set[str]) -> None:
        for name, crop in crops.items():
            if name not in self.crop_rows:
                row = CropRow(crop, self._crops_edited, self.body)
                line = len(self.crop_rows) + 1
                self.crop_rows[name] = row
                for number, part in enumerate(row.parts):
                    self._crops.addWidget(part, line, number)
            self.crop_rows[name].show_crop(crop, taken=name in taken)

    def _show_media(self, media: Mapping[str, str]) -> None:
        """Names with their kinds."""
        draft = self._draft
        assert draft is not None
        for name, kind in media.items():
            if name not in self.media_rows:
                told = self._media_edited, self._trusted_chosen, self.kind_said.emit
                row = MediumRow(name, *told, self.body)
                line = len(self.media_rows) + 1
                self.media_rows[name] = row
                for number, part in enumerate(row.parts):
                    self._media.addWidget(part, line, number)
            self.media_rows[name].show_medium(kind, taken=name in draft.media, trusted=name == draft.trusted)

    def forget(self) -> None:
        """Another book: its crops and media are others."""
        for row in self.crop_rows.values():
            for part in (*row.parts, row):
                part.deleteLater()
        for medium in self.media_rows.values():
            for each in (*medium.parts, medium):
                each.deleteLater()
        self.crop_rows, self.media_rows = {}, {}

    # --- editing

    @Slot()
    def _crops_edited(self) -> None:
        self.change(crops=tuple(row.planned for row in self.crop_rows.values() if row.taken.isChecked()))

    @Slot(str)
    def _crop_added(self, name: str) -> None:
        if self._draft is not None and all(crop.name != name for crop in self._draft.crops):
            self.change(crops=(*self._draft.crops, first_crop(name)))

    @Slot()
    def _media_edited(self) -> None:
        media = tuple(name for name, row in self.media_rows.items() if row.taken.isChecked())
        self.change(media=media)

    @Slot()
    def _trusted_chosen(self) -> None:
        chosen = self.sender()
        for name, row in self.media_rows.items():
            if row.trusted is chosen and self._draft is not None:
                media = self._draft.media if name in self._draft.media else (*self._draft.media, name)
                row.trusted.setChecked(True)
                self.change(trusted=name, media=media)

    @Slot(str)
    def _medium_added(self, name: str) -> None:
        if self._draft is not None and name not in self._draft.media:
            self.change(media=(*self._draft.media, name))

    @Slot()
    def _other_chosen(self) -> None:
        name = self.other.currentData()
        if not name:
            self.change(other=None)
            return
        if self._draft is not None and (self._draft.other is None or self._draft.other.name != name):
            self.change(other=Factor(name=name, levels=USUAL[name], by_shelf=name in OFTEN_BY_SHELF))

    @Slot()
    def _levels_edited(self) -> None:
        if self._draft is not None and self._draft.other is not None:
            other = self._draft.other
            levels = tuple(kept_level(other.name, field.text()) for field in (self.usual, self.new))
            self.change(other=replace(other, levels=levels))

    @Slot(bool)
    def _by_shelf_set(self, by_shelf: bool) -> None:
        if self._draft is not None and self._draft.other is not None:
            self.change(other=replace(self._draft.other, by_shelf=by_shelf))

    @Slot(object)
    def _same_edited(self, same: Mapping[str, str]) -> None:
        self.change(same=dict(same))
