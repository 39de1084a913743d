"""Intake bands: the questions about many photos at once, the most pressing one above the list.

In    `Asked`: doubts about clocks, shelves of the walk, what can be scored again
Out   what a person answers, by the signals of the bands; `only` with the photos to be shown alone
Not   each question (`clockband.py`, `walkband.py`, `againband.py`), changing the book (`screen.py`)

A wrong clock comes first: the trays of photos hang on their times. Then the walk, then the offer to score
again. Only one is seen at a time, so that the list keeps its room.
"""

from dataclasses import dataclass

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from data.photos.clocks import ClockDoubt
from data.upkeep.rescoring import Stale
from gui.controls.questionband import QuestionBand
from gui.intake.againband import AgainBand
from gui.intake.clockband import ClockBand
from gui.intake.walkband import WalkBand
from gui.intake.walkview import WalkShelf
from gui.photo.scoringagain import ScoringAgain
from gui.style.palette import set_role

__all__ = ["Asked", "IntakeBands"]

NOTHING_STALE = Stale()


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What there is to ask; nothing while photos come in."""

    doubts: tuple[ClockDoubt, ...] = ()
    shelves: tuple[WalkShelf, ...] = ()
    stale: Stale = NOTHING_STALE  # where they are not counted yet, or put off
    workers: int | None = None
    needing: bool = False  # photos wait for a person: an offer to score again is less pressing


class IntakeBands(QWidget):
    """Three bands, of which at most one is seen."""

    changed = Signal()  # another one may be seen, or none
    emptied = Signal()  # the last question was answered, and the focus was there
    only = Signal(object)  # photo ids, None for all

    def __init__(self, scoring: ScoringAgain, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._leads = True
        self.clock, self.walk = ClockBand(self), WalkBand(self)
        self.again = AgainBand(scoring, self)
        self.clock.only.connect(self.only)
        self.walk.only.connect(self.only)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for band in self._bands():
            column.addWidget(band)
            band.hide()
        self.hide()

    def _bands(self) -> tuple[QuestionBand, ...]:
        return self.clock, self.walk, self.again

    @property
    def asked(self) -> QuestionBand | None:
        """The one that is seen."""
        return next((band for band in self._bands() if not band.isHidden()), None)

    @property
    def leads(self) -> bool:
        """Whether the main action of the screen is the answer to the question that is seen."""
        return self.asked is not None and self._leads

    def show_asked(self, asked: Asked) -> None:
        """Ask the most pressing of these; the focus goes on to the next question where one was answered."""
        before = self.asked
        said_before = None if before is None else before.title.text()
        had_focus = before is not None and before.isAncestorOf(self.window().focusWidget() or self)
        is_asked = (
            self.clock.show_doubts(asked.doubts),
            self.walk.show_shelves(asked.shelves),
            self.again.show_stale(asked.stale, asked.workers),
        )
        self._leads = asked.doubts != () or asked.shelves != () or not asked.needing
        set_role(self.again.begin, "rack-main" if self._leads else "rack")
        wanted = next((band for band, asks in zip(self._bands(), is_asked, strict=True) if asks), None)
        for one in self._bands():
            one.setVisible(one is wanted)
        self.setVisible(wanted is not None)
        self.changed.emit()
        if wanted is not None and (wanted is not before or wanted.title.text() != said_before):
            wanted.be_heard()
        if wanted is not before:
            if had_focus and wanted is not None:
                wanted.take_focus()
            elif had_focus:
                self.emptied.emit()

    @Slot()
    def take_focus(self) -> None:
        """The first answer of the question that is seen."""
        if self.asked is not None:
            self.asked.take_focus()
