"""Tray types: the kinds of trays that a book knows, their measures, and new kinds.

In    a book
Out   kinds kept in it; `changed` after each
Not   which tray is of which kind (its conditions), the station for a kind (`stationsetup.py`)
"""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.book import Book
from data.errors import BookError
from data.growing.conditions import TrayType
from data.growing.croptable import doubt_of_type
from gui.controls.form import fields, fit
from gui.controls.numberfield import NumberField
from gui.controls.rows import give_rows
from gui.controls.telling import tell
from gui.language.spoken import spoken
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.trays.traydrawing import TrayDrawing

__all__ = ["TrayTypes"]

MOST_MM = 3000.0


class TrayTypes(QDialog):
    """The list on the left, one kind with its drawing on the right."""

    changed = Signal()

    def __init__(self, book: Book, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book = book
        self._kept: TrayType | None = None  # as the book has the one that is shown; None: a new one
        self.setWindowTitle(self.tr("Tray types"))
        self.kinds = QListWidget(self)
        self.kinds.setAccessibleName(self.tr("Tray types"))
        give_rows(self.kinds)
        self.new = QPushButton(self.tr("New tray type"), self)
        self.new.setAutoDefault(False)
        self.name = QLineEdit(self)
        self.name.setAccessibleName(self.tr("Name"))
        self.measures = {
            "outer_long_mm": self._measure(self.tr("Outer length")),
            "outer_short_mm": self._measure(self.tr("Outer width")),
            "inner_long_mm": self._measure(self.tr("Inner length")),
            "inner_short_mm": self._measure(self.tr("Inner width")),
            "rim_height_mm": self._measure(self.tr("Height of the rim")),
        }
        self.drawing = TrayDrawing(self)
        self.doubt, self.said = QLabel(self), QLabel(self)
        set_role(self.doubt, "notice")
        for label in (self.doubt, self.said):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.close_it, self.keep = QPushButton(self.tr("Close"), self), QPushButton(self.tr("Keep"), self)
        self.close_it.setAutoDefault(False)
        set_role(self.keep, "main")
        self.keep.setDefault(True)
        self._lay_out()
        self.kinds.currentTextChanged.connect(self._choose)
        self.new.clicked.connect(self._start)
        self.name.textChanged.connect(self._follow)
        self.close_it.clicked.connect(self.reject)
        self.keep.clicked.connect(self._keep)
        self._list(self._book.tray_types()[0].name)

    def _measure(self, name: str) -> NumberField:
        field = NumberField(name, self.tr("mm"), most=MOST_MM, parent=self)
        field.changed.connect(self._follow)
        return field

    def _lay_out(self) -> None:
        letter = self.fontMetrics().averageCharWidth()
        about = wrapped(
            self.tr(
                "Measure each tray type once, in mm: over the rim, inside the rim, and from the bench to "
                "the top of the rim. The camera finds a tray and its scale by these measures."
            ),
            self,
            "soft",
        )
        buttons = QHBoxLayout()
        buttons.setSpacing(Space.S)
        buttons.addStretch(1)
        buttons.addWidget(self.close_it)
        buttons.addWidget(self.keep)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.XL, Space.XL, Space.L)
        column.setSpacing(Space.M)
        column.addWidget(about)
        column.addLayout(self._middle(), 1)
        for part in (self.doubt, self.said):
            column.addWidget(part)
        column.addLayout(buttons)
        self.setMinimumWidth(letter * 83)
        room = max(1000, self.screen().availableGeometry().width() - 2 * Space.XXL)  # large letters leave
        self.resize(min(letter * 112, room), self.sizeHint().height())  # the drawing what 1000 do not

    def _middle(self) -> QHBoxLayout:
        """All kinds, the measures of one, and its drawing."""
        left = QVBoxLayout()
        left.addWidget(self.kinds, 1)
        left.addWidget(self.new)
        self.kinds.setFixedWidth(self.fontMetrics().averageCharWidth() * 15)
        form = fields()
        form.addRow(self.tr("Name"), self.name)
        for field in self.measures.values():
            form.addRow(field.field.accessibleName(), field)
        middle = QHBoxLayout()
        middle.setSpacing(Space.L)
        middle.addLayout(left)
        middle.addLayout(form)
        middle.addWidget(self.drawing, 1)
        return middle

    # --- showing

    @property
    def shown(self) -> TrayType:
        """What stands in the fields."""
        mm = {name: field.value for name, field in self.measures.items()}
        return replace(
            self._kept or TrayType(),  # where its station's cards lie stays
            name=self.name.text().strip(),
            outer_long_mm=mm["outer_long_mm"],
            outer_short_mm=mm["outer_short_mm"],
            inner_long_mm=mm["inner_long_mm"],
            inner_short_mm=mm["inner_short_mm"],
            rim_height_mm=mm["rim_height_mm"],
        )

    def _list(self, chosen: str) -> None:
        """The kinds of the book, one of them chosen."""
        names = [kind.name for kind in self._book.tray_types()]
        self.kinds.blockSignals(True)
        self.kinds.clear()
        self.kinds.addItems(names)
        self.kinds.setCurrentRow(names.index(chosen))
        self.kinds.blockSignals(False)
        self._choose(chosen)

    @Slot(str)
    def _choose(self, name: str) -> None:
        if not name:
            return
        left = self._left_behind()
        self._kept = self._book.tray_type(name)
        self._fill(self._kept)
        self.name.setReadOnly(True)
        self._say(left, "soft")

    def _left_behind(self) -> str:
        """What was typed and not kept, in words."""
        typed = self.shown
        touched = typed.name and typed != self._kept and self.name.isVisible()
        words = self.tr("What you had typed for {name} was not kept.")
        return words.format(name=typed.name) if touched else ""

    @Slot()
    def _start(self) -> None:
        """A new kind, with the measures of the one that was shown."""
        self.kinds.blockSignals(True)
        self.kinds.setCurrentRow(-1)
        self.kinds.blockSignals(False)
        self._kept = None
        self.name.setReadOnly(False)
        self.name.clear()
        self.name.setFocus()
        self._say(self.tr("Give the new tray type a name, measure it, and keep it."), "soft")

    def _fill(self, kind: TrayType) -> None:
        self.name.setText(kind.name)
        for name, field in self.measures.items():
            field.set(getattr(kind, name))
        self._follow()

    @Slot()
    def _follow(self) -> None:
        """The drawing and the doubt follow the numbers."""
        kind = self.shown
        impossible = self._impossible(kind)
        self.drawing.show_kind(None if impossible else kind)
        doubt = None if impossible else doubt_of_type(kind)
        self.doubt.setText(impossible or ("" if doubt is None else spoken(doubt)))
        self.doubt.setVisible(bool(self.doubt.text()))
        self._say("", "soft")

    def _impossible(self, kind: TrayType) -> str:
        """Why no tray can have these measures, or nothing."""
        for name, field in self.measures.items():
            if getattr(kind, name) <= 0:
                words = self.tr("{what} must be more than 0 mm.")
                return words.format(what=field.field.accessibleName())
        if kind.inner_long_mm > kind.outer_long_mm:
            return self.tr("The inner length cannot be more than the outer length.")
        if kind.inner_short_mm > kind.outer_short_mm:
            return self.tr("The inner width cannot be more than the outer width.")
        return ""

    # --- keeping

    @Slot()
    def _keep(self) -> None:
        self.keep.setFocus()  # a number that is being typed counts
        kind = self.shown
        trouble = self._trouble(kind)
        if trouble:
            self._say(trouble, "alarm")
            self.doubt.setVisible(self.doubt.text() not in ("", trouble))
            return
        if kind == self._kept:
            self._say(self.tr("{name} is kept with these measures already.").format(name=kind.name), "soft")
            return
        try:
            self._book.set_tray_type(kind)
        except BookError as error:
            self._say(spoken(error), "alarm")
            return
        self._kept = kind
        self._list(kind.name)
        words = self.tr(
            "{name} is kept. Photos that come in from now on are measured by it; "
            "older scores stay as they are."
        )
        self._say(words.format(name=kind.name), "soft")
        self.changed.emit()

    def _trouble(self, kind: TrayType) -> str:
        if not kind.name:
            return self.tr("Give the tray type a name.")
        same = [one.name for one in self._book.tray_types() if one.name.casefold() == kind.name.casefold()]
        if self._kept is None and same:
            return self.tr("There is a tray type of that name: {name}. Give another one.").format(
                name=same[0]
            )
        return self._impossible(kind)

    def _say(self, words: str, role: str) -> None:
        tell(self.said, words, role)
        self.said.setVisible(bool(words))
        if self.isVisible():
            fit(self)
