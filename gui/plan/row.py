"""Plan row: which trial is shown and what may be done with it; the row of steps.

In    a `PlanState`
Out   `trial_chosen`, `new_wanted`, `change_wanted`, `copy_wanted`, `leave_wanted`; which step or page
Not   what happens then (`screen.py`)
"""

from PySide6.QtCore import Signal, SignalInstance, Slot
from PySide6.QtWidgets import QComboBox, QPushButton, QWidget

from gui.controls.bounce import Bounce
from gui.controls.flow import Flow
from gui.controls.namelabel import NameLabel
from gui.plan.view import KeptPage, PlanState
from gui.style.palette import set_role

__all__ = ["PlanRow", "StepRow"]


class PlanRow(QWidget):
    """The top of the place."""

    trial_chosen = Signal(str)
    new_wanted = Signal()
    change_wanted = Signal()
    copy_wanted = Signal()
    leave_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bounce = Bounce()
        self.title = NameLabel(self)
        self.trials = QComboBox(self)
        self.trials.setAccessibleName(self.tr("Trial"))
        self.trials.activated.connect(self._chosen)
        self.change = self._button(self.tr("Change the plan"), self.change_wanted)
        self.copy = self._button(self.tr("Copy with one change"), self.copy_wanted)
        self.new = self._button(self.tr("New trial"), self.new_wanted)
        self.leave = self._button(self.tr("Give up this draft"), self.leave_wanted)
        row = Flow(self)
        for part in (self.title, self.trials, self.change, self.copy, self.new, self.leave):
            row.addWidget(part)
        self.trials.setMinimumContentsLength(26)
        self.trials.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)

    def _button(self, words: str, signal: SignalInstance) -> QPushButton:
        button = QPushButton(words, self)
        # "Give up this draft" comes to stand where "Change the plan" was, and back
        button.clicked.connect(self._bounce.once(signal.emit))
        return button

    def show_state(self, state: PlanState) -> None:
        """A draft shows its name, a kept plan the list of trials."""
        drafting = state.draft is not None
        self.trials.setVisible(not drafting)
        for button in (self.change, self.copy, self.new):
            button.setVisible(not drafting)
        self.leave.setVisible(drafting)
        if state.draft is not None:
            name = state.draft.trial.strip()
            self.title.show_name(
                self.tr("Draft: {trial}").format(trial=name) if name else self.tr("A new trial")
            )
            return
        self.title.show_name(self.tr("Trial"))
        names = [trial.kept.plan.trial for trial in state.reading.trials]
        if [self.trials.itemText(number) for number in range(self.trials.count())] != names:
            self.trials.clear()
            self.trials.addItems(names)
        self.trials.setCurrentText(state.shown)
        self.trials.setToolTip(state.shown)

    @Slot()
    def _chosen(self) -> None:
        self.trial_chosen.emit(self.trials.currentText())


class StepRow(QWidget):
    """The steps of a draft, or the pages of a kept plan."""

    step_chosen = Signal(int)
    page_chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._row = Flow(self)
        self.steps = self._buttons(
            (
                self.tr("1 Question"),
                self.tr("2 What varies"),
                self.tr("3 How many"),
                self.tr("4 Shelves"),
                self.tr("5 Keep and draw"),
            )
        )
        self.pages = self._buttons((self.tr("The plan"), self.tr("Places"), self.tr("Print"), self.tr("Sow")))
        for button in self.steps:
            button.clicked.connect(self._step_clicked)
        for button in self.pages:
            button.clicked.connect(self._page_clicked)

    def _buttons(self, words: tuple[str, ...]) -> tuple[QPushButton, ...]:
        """No button group: in one Tab stops only at the button that is chosen."""
        made = []
        for text in words:
            button = QPushButton(text, self)
            button.setCheckable(True)
            set_role(button, "switch")
            self._row.addWidget(button)
            made.append(button)
        return tuple(made)

    def show_state(self, state: PlanState) -> None:
        """Where we are; pages that have nothing yet cannot be chosen."""
        drafting = state.draft is not None
        drawn = state.trial is not None and state.trial.draw is not None
        for step, button in enumerate(self.steps):
            button.setVisible(drafting)
            button.setChecked(step == state.step)
        for page, button in zip(KeptPage, self.pages, strict=True):
            button.setVisible(not drafting)
            button.setChecked(page is state.page)
            button.setEnabled(drawn or page is KeptPage.PLAN)

    @Slot()
    def _step_clicked(self) -> None:
        self.step_chosen.emit(next(n for n, button in enumerate(self.steps) if button is self.sender()))

    @Slot()
    def _page_clicked(self) -> None:
        pages = zip(KeptPage, self.pages, strict=True)
        self.page_chosen.emit(str(next(page for page, button in pages if button is self.sender())))
