"""Sow page: the trays that are sown next, on which day, so that the book has them from then on.

In    a kept plan with drawn places
Out   `day`, on which they were sown; the main button of the place adds them (`screen.py`)
Not   which tray stands where (`places.py`)
"""

from datetime import date

from PySide6.QtCore import QDate
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from gui.controls.dayfield import DayField
from gui.language.spoken import day_words
from gui.plan.reading import TrialReading
from gui.plan.view import PlanState
from gui.style.palette import Space
from gui.style.words import heading, soft, wrapped

__all__ = ["SowPage"]


class SowPage(QWidget):
    """One question: when."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._proposed: tuple[date | None, date | None] = (None, None)
        self.title = heading("", self)
        self.words = wrapped("", self)
        self.sown_on = DayField(self)
        self.sown_on.setAccessibleName(self.tr("Sown on"))
        self._sown_word = QLabel(self.tr("Sown on"), self)
        self._sown_word.setBuddy(self.sown_on)
        self.after = soft(
            self.tr(
                "From then on each tray stands on the Bench, and a photo finds its tray by the tag. If you "
                "add them too early, Undo takes them off again."
            ),
            self,
        )
        across = QHBoxLayout()
        across.setSpacing(Space.M)
        for part in (self._sown_word, self.sown_on):
            across.addWidget(part)
        across.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, Space.S, 0, 0)
        column.setSpacing(Space.M)
        column.addWidget(self.title)
        column.addWidget(self.words)
        column.addLayout(across)
        column.addWidget(self.after)
        column.addStretch(1)

    @property
    def day(self) -> date:
        """On which they were sown."""
        day = self.sown_on.date()
        return date(day.year(), day.month(), day.day())

    def show_state(self, state: PlanState) -> None:
        """What waits, and for which day it was planned."""
        trial = state.trial
        if state.draft is not None or trial is None or trial.draw is None:
            return
        waits = trial.waiting > 0
        for part in (self.sown_on, self._sown_word, self.after):
            part.setVisible(waits)
        whole = len(trial.draw.draw.places)
        if not waits:
            self.title.setText(self.tr("All {n} trays are sown").format(n=whole))
            self.words.setText(
                self.tr(
                    "Photograph each of them every day, its tag in the picture, and bring the photos in. "
                    "What needs a look then stands on the Bench."
                )
            )
            return
        self.title.setText(self.tr("When are they sown?"))
        self.words.setText(self._waiting(trial, whole))
        self._propose(state.reading.today, trial.next_day)

    def _waiting(self, trial: TrialReading, whole: int) -> str:
        planned = "" if trial.next_day is None else day_words(trial.next_day)
        if trial.next_round == whole:
            words = self.tr("{n} trays, planned for {day}. Sow them by the sowing sheet, tag each one.")
            return words.format(n=whole, day=planned)
        words = self.tr("{sown} of {all} trays are sown. The next {n} are planned for {day}.")
        return words.format(sown=whole - trial.waiting, all=whole, n=trial.next_round, day=planned)

    def _propose(self, today: date, planned: date | None) -> None:
        """Today, until somebody says another day; anew for another round."""
        if self._proposed != (today, planned):
            self._proposed = (today, planned)
            self.sown_on.setDate(QDate(today.year, today.month, today.day))
