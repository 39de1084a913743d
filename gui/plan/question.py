"""Question page: what the grower wants to know, what is compared, and how much worse still is as good.

In    the draft
Out   question, name, words, measure, margin
Not   what varies (`treatments.py`)
"""

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtWidgets import (
    QAbstractButton,
    QButtonGroup,
    QComboBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from data.desirability import MoldRule
from data.plan.draft import unit_of, with_measure
from data.trial import MeasureKind, Question
from gui.controls.numberfield import NumberField
from gui.plan.page import PlanPage
from gui.plan.view import PlanState
from gui.style.palette import Space
from gui.style.words import heading, line_width, soft

__all__ = ["QuestionPage"]


class TextLine(QLineEdit):
    """A title or a sentence: no wider than a line that reads well, and narrower where the window is."""

    def sizeHint(self) -> QSize:
        """A whole line."""
        return QSize(line_width(self.fontMetrics()), super().sizeHint().height())


class QuestionPage(PlanPage):
    """The first step."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._make_question()
        self.put_side_by_side(self._make_measure(), self._make_margin(), (1, 1))
        self.column.addStretch(1)

    def _make_question(self) -> None:
        self.column.addWidget(heading(self.tr("What do you want to know?"), self.body))
        choices = QVBoxLayout()
        self.questions = self._choices(
            {
                Question.AS_GOOD: self.tr("Is a new medium as good as the one I trust?"),
                Question.BEST: self.tr("Which of several is best?"),
                Question.GAP: self.tr("Does feed, watering or seating close the gap to the one I trust?"),
            },
            choices,
        )
        self.column.addLayout(choices)
        self.questions.buttonClicked.connect(self._question_chosen)
        grid = QGridLayout()
        grid.setHorizontalSpacing(Space.L)
        grid.setVerticalSpacing(Space.S)
        self.name = TextLine(self.body)
        self.name.setPlaceholderText(self.tr("for example: Fibre mat in spring"))
        self.name.textEdited.connect(self._named)
        self.own_words = TextLine(self.body)
        self.own_words.setPlaceholderText(self.tr("for example: Can I leave peat without losing quality?"))
        self.own_words.textEdited.connect(self._worded)
        rows = ((self.tr("Name of the trial"), self.name), (self.tr("In your own words"), self.own_words))
        for row, (words, field) in enumerate(rows):
            label = QLabel(words, self.body)
            label.setBuddy(field)
            field.setAccessibleName(words)
            grid.addWidget(label, row, 0)
            grid.addWidget(field, row, 1, Qt.AlignmentFlag.AlignLeft)
        grid.setColumnStretch(1, 1)
        self.column.addLayout(grid)

    def _make_measure(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.addWidget(heading(self.tr("What is compared?"), self.body))
        self.measures = self._choices(
            {
                MeasureKind.SCORE: self.tr("Canopy score of the photo, 0 to 100"),
                MeasureKind.YIELD: self.tr("Yield: fresh mass of each tray"),
                MeasureKind.EYE: self.tr("Eye score, given without knowing the medium"),
            },
            column,
        )
        self.measures.buttonClicked.connect(self._measure_chosen)
        self.mold_word = soft(self.tr("A tray with mold that you have confirmed:"), self.body)
        self.mold = QComboBox(self.body)
        self.mold.setAccessibleName(self.tr("A tray with mold that you have confirmed"))
        for rule, words in (
            (MoldRule.ZERO, self.tr("scores nothing")),
            (MoldRule.BY_AREA, self.tr("loses points by the area of mold")),
            (MoldRule.APART, self.tr("gets no score, is counted apart")),
        ):
            self.mold.addItem(words, str(rule))
        self.mold.activated.connect(self._mold_chosen)
        column.addWidget(self.mold_word)
        column.addWidget(self.mold, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        return column

    def _make_margin(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(Space.S)
        column.addWidget(heading(self.tr("How much worse is still as good?"), self.body))
        self.margin = NumberField(self.tr("Margin"), most=100, step=1, parent=self.body)
        self.margin.changed.connect(self._margin_set)
        column.addWidget(self.margin)
        column.addWidget(
            soft(
                self.tr(
                    "This margin is fixed with the plan, before sowing. If it is changed later, the verdict "
                    "says so. A narrow margin takes many more trays."
                ),
                self.body,
            )
        )
        column.addStretch(1)
        return column

    def _choices(
        self, words: dict[Question, str] | dict[MeasureKind, str], column: QVBoxLayout
    ) -> QButtonGroup:
        group = QButtonGroup(self)
        column.setSpacing(Space.XS)
        for number, (value, text) in enumerate(words.items()):
            button = QRadioButton(text, self.body)
            button.setProperty("value", str(value))
            group.addButton(button, number)
            column.addWidget(button)
        return group

    def show_state(self, state: PlanState) -> None:
        """The draft's question, measure and margin."""
        super().show_state(state)
        draft = state.draft
        if draft is None:
            return
        for group, value in ((self.questions, draft.question), (self.measures, draft.measure)):
            for button in group.buttons():
                button.setChecked(button.property("value") == str(value))
        for field, text in ((self.name, draft.trial), (self.own_words, draft.words)):
            if field.text() != text:
                field.setText(text)
        self.mold.setCurrentIndex(max(0, self.mold.findData(draft.score.get("mold"))))
        for part in (self.mold, self.mold_word):
            part.setVisible(draft.measure is MeasureKind.SCORE)
        self.margin.set(draft.margin)
        self.margin.unit.setText(
            self.tr("% of the trusted one's yield")
            if unit_of(draft.measure) == "%"
            else self.tr("points of 100")
        )

    @Slot(QAbstractButton)
    def _question_chosen(self, button: QAbstractButton) -> None:
        self.change(question=Question(button.property("value")))

    @Slot(QAbstractButton)
    def _measure_chosen(self, button: QAbstractButton) -> None:
        if self._draft is not None and self._draft.measure != button.property("value"):
            other = with_measure(self._draft, MeasureKind(button.property("value")))
            self.change(measure=other.measure, margin=other.margin, spread=other.spread)

    @Slot()
    def _mold_chosen(self) -> None:
        if self._draft is not None:
            self.change(score=dict(self._draft.score) | {"mold": self.mold.currentData()})

    @Slot(str)
    def _named(self, text: str) -> None:
        self.change(trial=text)

    @Slot(str)
    def _worded(self, text: str) -> None:
        self.change(words=text)

    @Slot(float)
    def _margin_set(self, value: float) -> None:
        self.change(margin=value)
