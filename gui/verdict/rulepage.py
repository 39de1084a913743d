"""Rule page: the grower's own limits and weights of the canopy score, tried on their own trays.

In    a `VerdictState`
Out   `keep_wanted` with the rule and the reason; `left`
Not   the preview's numbers (`ruleview.py`), keeping it (`desk.py`)
"""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from data.desirability import USUAL, MoldRule, Part, PartName, ScoreRule
from data.trial import MeasureKind
from data.verdict.measurewords import part_words
from gui.answer.view import VerdictState
from gui.controls.numberfield import NumberField
from gui.controls.rolling import roll_down
from gui.controls.sides import Sides
from gui.language.spoken import begun, spoken
from gui.style.palette import Space, set_role
from gui.style.words import heading, soft, wrapped
from gui.verdict.ruleview import PREVIEWED, counted_words_of, mean_rows, mold_words, preview_rows, trouble_of
from gui.verdict.table import VerdictTable

__all__ = ["RulePage"]

LIMITS = ("bad", "good", "weight")


class RulePage(QWidget):
    """Fields at the left, the trays at the right."""

    keep_wanted = Signal(object, str)  # ScoreRule, why
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._state = VerdictState()
        self._holds = USUAL
        self.fields: dict[tuple[PartName, str], NumberField] = {}
        roll = QScrollArea(self)
        roll.setFrameShape(QFrame.Shape.NoFrame)
        roll_down(roll)
        body = QWidget(roll)
        inner = QVBoxLayout(body)
        inner.setContentsMargins(0, 0, Space.S, 0)
        inner.addWidget(Sides((self._make_rule(body), self._make_preview(body)), (4, 7), body))
        inner.addStretch(1)
        roll.setWidget(body)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.M)
        column.addWidget(roll, 1)
        column.addLayout(self._make_foot())

    def _make_rule(self, parent: QWidget) -> QWidget:
        panel = QFrame(parent)
        set_role(panel, "sheet")
        column = QVBoxLayout(panel)
        column.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        column.setSpacing(Space.M)
        column.addWidget(heading(self.tr("Limits and weights"), panel))
        column.addWidget(
            soft(
                self.tr(
                    "Each part is worth 0 at its lower limit and 1 at its upper one. The score is their "
                    "geometric mean by weight, so no part makes up for one that is worthless."
                ),
                panel,
            )
        )
        self.counted = soft("", panel)
        column.addWidget(self.counted)
        column.addLayout(self._make_parts(panel))
        column.addWidget(QLabel(self.tr("Mold that a person has confirmed"), panel))
        column.addWidget(self._make_mold(panel))
        self.usual = QPushButton(self.tr("As usual"), panel)
        self.usual.setToolTip(self.tr("The limits and weights that hold where nobody has set any"))
        self.usual.clicked.connect(self._show_usual)
        column.addWidget(self.usual, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        return panel

    def _make_parts(self, panel: QWidget) -> QGridLayout:
        """The name of each part of the score, and below it its limits and its weight."""
        grid = QGridLayout()
        grid.setHorizontalSpacing(Space.M)
        grid.setVerticalSpacing(Space.S)
        across = (
            (self.tr("worthless at, %"), "bad", 100.0, 5.0),
            (self.tr("best at, %"), "good", 100.0, 5.0),
            (self.tr("weight"), "weight", 10.0, 0.5),
        )
        for number, name in enumerate(PREVIEWED):
            title = wrapped(begun(spoken(part_words(name))), panel)
            grid.addWidget(title, 2 * number, 0, 1, 3)
            for place, (words, limit, most, step) in enumerate(across):
                cell = QVBoxLayout()
                cell.setSpacing(Space.XS)
                cell.addWidget(soft(words, panel))
                field = NumberField(f"{part_words(name)}, {words}", most=most, step=step, parent=panel)
                field.changed.connect(self._edited)
                cell.addWidget(field)
                self.fields[name, limit] = field
                grid.addLayout(cell, 2 * number + 1, place)
        return grid

    def _make_mold(self, panel: QWidget) -> QComboBox:
        self.mold = QComboBox(panel)
        self.mold.setAccessibleName(self.tr("Mold that a person has confirmed"))
        for rule in MoldRule:
            self.mold.addItem(mold_words(rule), str(rule))
        self.mold.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.mold.setMinimumContentsLength(24)
        self.mold.activated.connect(self._edited)
        return self.mold

    def _make_preview(self, parent: QWidget) -> QWidget:
        panel = QFrame(parent)
        set_role(panel, "sheet")
        column = QVBoxLayout(panel)
        column.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        column.setSpacing(Space.S)
        self.preview = panel
        self.about = heading("", panel)
        self.table = VerdictTable(
            self.tr("Your trays"),
            (
                self.tr("Medium"),
                self.tr("Tray"),
                *(begun(spoken(part_words(name)).split(" (")[0]) for name in PREVIEWED),
                self.tr("Score"),
                self.tr("Tried"),
            ),
            texts=(0, 1),
            parent=panel,
        )
        column.addWidget(self.about)
        column.addWidget(self.table)
        column.addStretch(1)
        return panel

    def _make_foot(self) -> QHBoxLayout:
        self.said = wrapped("", self, "notice")
        self.why = QLineEdit(self)
        self.why.setAccessibleName(self.tr("Why limits and weights are changed"))
        self.why.setPlaceholderText(self.tr("Why? The reason is kept with the plan."))
        self.why.setMinimumWidth(self.fontMetrics().averageCharWidth() * 46)  # the hint is read whole
        self.why.textChanged.connect(self._show_foot)
        self.back = QPushButton(self.tr("Back"), self)
        self.back.setToolTip(self.tr("Back to the verdict; nothing is kept (Esc)"))
        self.back.clicked.connect(self.left)
        self.keep = QPushButton(self.tr("Keep"), self)
        set_role(self.keep, "main")
        self.keep.clicked.connect(self._keep)
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addWidget(self.said, 1)
        foot.addWidget(self.why)
        foot.addWidget(self.back)
        foot.addWidget(self.keep)
        return foot

    # --- showing

    def open_rule(self, state: VerdictState) -> None:
        """Begin with the rule that holds."""
        self._state, self._holds = state, state.reading.rule
        self.why.setText("")
        self._show_rule(self._holds)

    def follow(self, state: VerdictState) -> None:
        """The book has changed meanwhile: another rule holds, or other trays are there to try it on."""
        before, self._holds = self._holds, state.reading.rule
        self._state = state
        if self._holds != before:
            self._show_rule(self._holds)
        else:
            self._edited()

    def take_focus(self) -> None:
        """To the first field."""
        self.fields[PREVIEWED[0], "bad"].setFocus()

    @Slot()
    def _show_usual(self) -> None:
        self._show_rule(USUAL)

    def _show_rule(self, rule: ScoreRule) -> None:
        for (name, limit), field in self.fields.items():
            field.set(getattr(rule.parts[name], limit))
        self.mold.setCurrentIndex(list(MoldRule).index(rule.mold))
        self._edited()

    @property
    def rule(self) -> ScoreRule:
        """What the fields say; the shape of a part (target, power) stays as it was kept."""
        parts: dict[PartName, Part] = dict(self._holds.parts)
        for name in PREVIEWED:
            said = {limit: self.fields[name, limit].value for limit in LIMITS}
            parts[name] = replace(parts[name], **said)
        return ScoreRule(parts=parts, mold=list(MoldRule)[self.mold.currentIndex()])

    @Slot()
    def _edited(self) -> None:
        rule = self.rule
        trays = self._state.reading.seen.get(self._state.crop, ())
        found = self._state.reading.verdict(self._state.crop, MeasureKind.SCORE)
        day = None if found is None else found.on_day
        if trays:
            words = self.tr("Tried on your {crop} trays, day {day}")
            self.about.setText(words.format(crop=self._state.crop, day=day))
        else:
            self.about.setText(self.tr("No photo of the day that is read, so nothing can be tried"))
        self.counted.setText(counted_words_of(None if found is None else found.counted))
        rows = (*mean_rows(trays, self._holds, rule), *preview_rows(trays, self._holds, rule))
        self.table.setVisible(bool(trays))
        self.table.show_rows([(r.medium, r.name, *r.parts, r.before, r.now) for r in rows])
        self.preview.setProperty("wanted", self.table.wanted + 2 * Space.M)
        self._show_foot()

    @Slot()
    def _show_foot(self) -> None:
        kept, rule = self._state.reading.kept, self.rule
        trouble = trouble_of(rule)
        changed = rule != self._holds
        self.why.setVisible(kept is not None)
        if kept is None:
            trouble = trouble or self.tr(
                "This trial has no plan, so the usual limits and weights hold; here you can only try others."
            )
        elif not trouble and changed and kept.first_sown_at is not None:
            self.said.setText(
                self.tr("Trays are sown already: the verdict will say that this was changed afterwards.")
            )
        if trouble or not changed or kept is None or kept.first_sown_at is None:
            self.said.setText(trouble)
        may = kept is not None and changed and not trouble and bool(self.why.text().strip())
        self.keep.setEnabled(may)

    @Slot()
    def _keep(self) -> None:
        self.keep_wanted.emit(self.rule, self.why.text())
