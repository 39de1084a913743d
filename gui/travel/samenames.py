"""Same names: each name that both books have is asked about: does it mean the same?

In    a `GuestLook`; what the other grower's things shall be called where they are another
Out   `answers`, `changed`; nothing is answered beforehand
Not   what an answer does (`data/travel/merging.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import (
    QButtonGroup,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from data.travel.guestlook import GuestLook
from data.travel.samenames import Answer, SameName
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.travel.view import name_words

__all__ = ["SameNames"]


class SameNames(QWidget):
    """A row a name, with two choices."""

    changed = Signal()

    def __init__(self, look: GuestLook, label: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.answers: dict[SameName, Answer] = {}
        self.groups: dict[SameName, QButtonGroup] = {}
        self._several = False  # answers come at once: what follows from them is asked for once
        heading = wrapped(self.tr("Both books have these names. Do they mean the same?"), self, "title")
        self.all_same = QPushButton(self.tr("All others mean the same"), self)
        self.all_same.setAutoDefault(False)
        self.all_same.clicked.connect(self._all_same)
        self.label = QLineEdit(label, self)
        self.label.setAccessibleName(self.tr("In brackets behind names of theirs that mean another"))
        self.label.textChanged.connect(self._relabel)
        self.example = wrapped("", self)
        self.example.setBuddy(self.label)
        set_role(self.example, "soft")
        across = QHBoxLayout()
        across.setSpacing(Space.M)
        across.addWidget(self.example, 1)
        across.addWidget(self.label, 1)
        across.addWidget(self.all_same)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(heading)
        column.addLayout(self._rows(look))
        column.addLayout(across)
        self._relabel()

    def _rows(self, look: GuestLook) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(Space.M)
        grid.setVerticalSpacing(Space.XS)
        grid.setColumnStretch(0, 1)
        for row, one in enumerate(look.asked):
            name = wrapped(name_words(one, look), self)
            grid.addWidget(name, row, 0)
            group = QButtonGroup(self)
            choices = ((Answer.SAME, self.tr("the same")), (Answer.APART, self.tr("another")))
            for column, (answer, words) in enumerate(choices, 1):
                choice = QRadioButton(words, self)
                choice.setProperty("answer", answer)
                choice.setAccessibleName(f"{one.name}: {words}")
                group.addButton(choice)
                grid.addWidget(choice, row, column)
            group.buttonToggled.connect(self._answer)
            self.groups[one] = group
        return grid

    @property
    def label_text(self) -> str:
        """What stands in brackets behind a name of theirs that means something else."""
        return self.label.text().strip()

    @property
    def is_answered(self) -> bool:
        """Whether every name has its answer, and another one its new name."""
        apart = Answer.APART in self.answers.values()
        return self.answers.keys() == self.groups.keys() and bool(self.label_text or not apart)

    def answer(self, one: SameName, answer: Answer) -> None:
        """Answer for one name."""
        for button in self.groups[one].buttons():
            if button.property("answer") == answer:
                button.setChecked(True)

    @Slot()
    def _answer(self) -> None:
        if self._several:
            return
        for one, group in self.groups.items():
            chosen = group.checkedButton()
            if chosen is not None:
                self.answers[one] = Answer(chosen.property("answer"))
        self.changed.emit()

    @Slot()
    def _all_same(self) -> None:
        self._several = True
        for one in self.groups.keys() - self.answers.keys():
            self.answer(one, Answer.SAME)
        self._several = False
        self._answer()

    @Slot()
    def _relabel(self) -> None:
        name = next(iter(self.groups)).name
        words = self.tr("Where theirs is another, it is called so here: {name}")
        self.example.setText(words.format(name=f"{name} ({self.label_text})"))
        self.changed.emit()
