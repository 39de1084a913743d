"""Kept plan page: what was fixed, when, in words; nothing in it can be changed here.

In    a kept trial
Out   labels and sentences, to be read and copied
Not   changing it (`screen.py` begins a draft)
"""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from gui.plan.page import PlanPage
from gui.plan.summary import plan_rows, summary_of
from gui.plan.view import PlanState
from gui.style.palette import Space, set_role
from gui.style.words import quotable

__all__ = ["KeptPlanPage"]


class KeptPlanPage(PlanPage):
    """One page to read."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(Space.XL)
        self._grid.setVerticalSpacing(Space.M)
        self._grid.setColumnStretch(1, 1)
        self.column.addLayout(self._grid)
        self.column.addStretch(1)
        self._labels: list[tuple[QLabel, QLabel]] = []

    def show_state(self, state: PlanState) -> None:
        """The draft's plan, or the newest version that was kept."""
        super().show_state(state)
        rows: tuple[tuple[str, str], ...] = ()
        if state.draft is not None:
            rows = () if state.plan is None else plan_rows(state.plan)
        elif state.trial is not None:
            rows = summary_of(state.trial)
        while len(self._labels) < len(rows):
            self._add_row()
        for number, (label, words) in enumerate(self._labels):
            there = number < len(rows)
            label.setVisible(there)
            words.setVisible(there)
            if there:
                label.setText(rows[number][0])
                words.setText(rows[number][1])

    @property
    def text(self) -> str:
        """All that is shown."""
        return "\n".join(words.text() for _, words in self._labels if not words.isHidden())

    def _add_row(self) -> None:
        label, words = QLabel(self.body), quotable(self.body)
        set_role(label, "soft")
        label.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        line = len(self._labels)
        self._grid.addWidget(label, line, 0)
        self._grid.addWidget(words, line, 1)
        self._labels.append((label, words))
