"""Factor dialog: the numbers about a medium that are typed in, each with range, source, year and who.

In    the desk with its book, the medium, the factor to begin with
Out   factors kept, or put back to their defaults; what was typed and not kept is not lost in silence
Not   what they are for (`data/footprint.py`, `data/costs.py`)
"""

from dataclasses import replace

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.book import Book
from data.medium.factors import KINDS, Factor, FactorGroup, chosen, default_of, wrong_factor
from gui.controls.form import fields
from gui.controls.rows import give_rows
from gui.controls.telling import tell
from gui.language.spoken import in_figures, spoken
from gui.materials.desk import MaterialDesk
from gui.notes.table import number_in
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["FactorDialog"]

FAR_OFF = (28.349523125, 1000.0)  # ounces for grams, kilograms for grams
NEAR = 2.5
YEAR_DIGITS = 4
MOST_WIDE, MOST_HIGH = 1000, 660  # px: it fits the least window


class FactorDialog(QDialog):
    """The list on the left, one factor on the right."""

    def __init__(
        self, desk: MaterialDesk, book: Book, medium: str, begin: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk, self._book, self._medium = desk, book, medium
        self._doubted: float | None = None
        self._shown_of = ""  # the factor that stands there
        self._shown: tuple[str, ...] = ()  # its fields as they came
        self._drafts: dict[str, tuple[str, ...]] = {}  # typed and not kept, by factor
        self._warned_of: dict[str, tuple[str, ...]] = {}
        self.setWindowTitle(self.tr("Numbers about {medium}").format(medium=medium))
        self._build()
        desk.trouble.connect(self._say)  # behind this dialog nobody sees it
        self._fill()
        self._choose(begin)
        letter = self.fontMetrics().averageCharWidth()
        self.resize(min(104 * letter, MOST_WIDE), min(28 * self.fontMetrics().height(), MOST_HIGH))

    def _build(self) -> None:
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("Numbers"))
        self.list.setMinimumWidth(30 * self.fontMetrics().averageCharWidth())
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setWordWrap(True)
        give_rows(self.list)
        self.list.currentItemChanged.connect(self._show)
        self.title, self.standing = self._words("title"), self._words("soft")
        form = self._make_fields()
        self.trouble = self._words("alarm")
        row = self._make_buttons()
        right = QVBoxLayout()
        right.setSpacing(Space.M)
        right.addWidget(self.title)
        right.addWidget(self.standing)
        right.addLayout(form)
        right.addWidget(self.trouble)
        right.addStretch(1)
        right.addLayout(row)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(Space.L, Space.L, Space.L, Space.L)
        whole.setSpacing(Space.L)
        whole.addWidget(self.list, 1)
        whole.addLayout(right, 1)

    def _words(self, role: str) -> QLabel:
        return wrapped("", self, role)

    def _make_fields(self) -> QFormLayout:
        self.value, self.low, self.high = QLineEdit(self), QLineEdit(self), QLineEdit(self)
        self.source, self.year, self.who = QLineEdit(self), QLineEdit(self), QLineEdit(self)
        self._fields = (self.value, self.low, self.high, self.source, self.year, self.who)
        form = fields()
        for words, field in (
            (self.tr("Most likely"), self.value),
            (self.tr("Lowest it could be"), self.low),
            (self.tr("Highest it could be"), self.high),
            (self.tr("Where from"), self.source),
            (self.tr("Year"), self.year),
            (self.tr("Who entered it"), self.who),
        ):
            form.addRow(words, field)
            field.setAccessibleName(words)
        return form

    def _make_buttons(self) -> QHBoxLayout:
        self.back = QPushButton(self.tr("Put back"), self)
        self.back.clicked.connect(self._put_back)
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.accept)
        self.keep = QPushButton(self.tr("Keep"), self)
        set_role(self.keep, "main")
        self.keep.setDefault(True)
        self.keep.clicked.connect(self._keep)
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        row.addWidget(self.back)
        row.addStretch(1)
        row.addWidget(close)
        row.addWidget(self.keep)
        return row

    @property
    def name(self) -> str:
        """The factor that is shown."""
        item = self.list.currentItem()
        return "" if item is None else str(item.data(Qt.ItemDataRole.UserRole))

    def _medium_of(self, name: str) -> str | None:
        """Climate factors are of all media; the rest are of one."""
        return self._medium if KINDS[name].of_medium else None

    def _now(self, name: str) -> Factor | None:
        return chosen(self._book.factors(), name, self._medium)

    def _fill(self) -> None:
        self.list.blockSignals(True)
        chosen_name = self.name
        self.list.clear()
        for group in FactorGroup:
            for kind in KINDS.values():
                if kind.group is not group:
                    continue
                item = QListWidgetItem(self._line(kind.name))
                item.setData(Qt.ItemDataRole.UserRole, kind.name)
                self.list.addItem(item)
        self.list.blockSignals(False)
        if chosen_name:
            self._choose(chosen_name)

    def _line(self, name: str) -> str:
        kind, now = KINDS[name], self._now(name)
        told = "–" if now is None or now.value is None else f"{in_figures(now.value)} {spoken(kind.unit)}"
        changed = now is not None and not now.is_default and default_of(name) is not None
        return f"{spoken(kind.about)}: {told}" + (" " + self.tr("(changed)") if changed else "")

    def _choose(self, name: str) -> None:
        for number in range(self.list.count()):
            if self.list.item(number).data(Qt.ItemDataRole.UserRole) == name:
                self.list.setCurrentRow(number)
        self._show()

    @property
    def _typed(self) -> tuple[str, ...]:
        return tuple(field.text() for field in self._fields)

    def _remember(self) -> None:
        """What was typed and not kept is there again when the person comes back to it."""
        if self._shown_of and self._typed != self._shown:
            self._drafts[self._shown_of] = self._typed
        else:
            self._drafts.pop(self._shown_of, None)

    def _settled(self, name: str) -> None:
        """Nothing that was typed of it is open any more."""
        self._drafts.pop(name, None)
        self._shown_of = ""
        self._fill()

    def done(self, result: int) -> None:
        """Leave, unless numbers that were typed would be lost: that is said once."""
        self._remember()
        if self._drafts and self._drafts != self._warned_of:
            self._warned_of = dict(self._drafts)
            names = ", ".join(spoken(KINDS[name].about) for name in self._drafts)
            words = self.tr("Typed and not kept yet: {names}. Keep it, or close once more to let it go.")
            tell(self.trouble, words.format(names=names))
            return
        super().done(result)

    @Slot()
    def _show(self) -> None:
        name = self.name
        if not name:
            return
        self._remember()
        kind, now = KINDS[name], self._now(name)
        self._doubted = None
        self.trouble.clear()
        self.title.setText(f"{spoken(kind.about)}, {spoken(kind.unit)}")
        words = self._standing(now, default_of(name))
        if not kind.of_medium:
            words += " " + self.tr("It is the same for all media.")
        self.standing.setText(words)
        shown = now or Factor(name=name, value=None, low=None, high=None, unit=kind.unit, source="")
        for field, number in ((self.value, shown.value), (self.low, shown.low), (self.high, shown.high)):
            field.setText("" if number is None else in_figures(number))
        self.source.setText(shown.source)
        self.year.setText("" if shown.year is None else str(shown.year))
        self.who.setText(shown.who)
        self._shown_of, self._shown = name, self._typed
        self._show_draft(name)
        for field in (self.source, self.who):
            field.setCursorPosition(0)
        self.back.setEnabled(now is not None and not now.is_default)

    def _show_draft(self, name: str) -> None:
        if name in self._drafts:
            for field, words in zip(self._fields, self._drafts[name], strict=True):
                field.setText(words)
            tell(self.trouble, self.tr("Typed, and not kept yet."))

    def _standing(self, now: Factor | None, first: Factor | None) -> str:
        """Where the number stands: nobody's, a default, or changed from `first`."""
        if now is None:
            return self.tr("Nobody has said it yet.")
        if now.is_default:
            return self.tr("A default. Type your own over it. From: {source}.").format(source=now.source)
        if first is not None and first.value is not None:
            return self.tr("Changed; the default is {value} ({low} to {high}): {source}").format(
                value=in_figures(first.value),
                low=in_figures(first.low),
                high=in_figures(first.high),
                source=first.source,
            )
        return self.tr("Typed in.")

    @Slot()
    def _keep(self) -> None:
        name, year = self.name, self.year.text().strip()
        kind = KINDS[name]
        if year and not (year.isdecimal() and len(year) == YEAR_DIGITS):
            tell(self.trouble, self.tr("Type the year in four digits, or leave it empty."))
            return
        factor = Factor(
            name=name,
            value=number_in(self.value.text()),
            low=number_in(self.low.text()),
            high=number_in(self.high.text()),
            unit=kind.unit,
            source=self.source.text().strip(),
            year=int(year) if year else None,
            medium=self._medium_of(name),
            who=self.who.text().strip(),
            entered_at=self._book.now(),
        )
        why = wrong_factor(factor)
        if why is not None:
            tell(self.trouble, spoken(why))
            return
        if self._is_far_off(factor) and self._doubted != factor.value:
            self._doubted = factor.value
            return
        if self._desk.keep(lambda book: book.set_factor(replace(factor))):
            self._settled(name)

    def _is_far_off(self, factor: Factor) -> bool:
        """Ask about a number that fits another unit better."""
        usual, value = KINDS[factor.name].usual, factor.value
        if usual is None or not value:
            return False
        for times in FAR_OFF:
            for other in (value * times, value / times):
                near = usual / NEAR <= other <= usual * NEAR
                if near and not usual / 8 < value < usual * 8:
                    words = self.tr(
                        "{value} {unit} is unusual; in another unit it would be {other}. "
                        "Keep it again if it is right."
                    )
                    unit = spoken(KINDS[factor.name].unit)
                    words = words.format(value=in_figures(value), unit=unit, other=in_figures(other, ".3g"))
                    tell(self.trouble, words)
                    return True
        return False

    @Slot(str)
    def _say(self, words: str) -> None:
        tell(self.trouble, words)

    @Slot()
    def _put_back(self) -> None:
        name = self.name
        medium = self._medium_of(name)
        if self._desk.keep(lambda book: book.put_back_factor(name, medium)):
            self._settled(name)
