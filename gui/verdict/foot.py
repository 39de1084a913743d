"""Verdict foot: what one does with a verdict: the next trial, the report, scores by eye.

In    what may be done now
Out   `next_wanted`, `report_wanted`, `eye_wanted`
Not   doing it (`screen.py`)
"""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from data.verdict.nexttrial import NextTrial
from gui.controls.namelabel import cut_name
from gui.language.plainbutton import plain_button
from gui.language.spoken import filled
from gui.style.palette import Space, set_role

__all__ = ["VerdictFoot"]

MOST_OF_CROP = 16  # letters


class VerdictFoot(QWidget):
    """The main action stands at the right, as everywhere."""

    next_wanted = Signal()
    report_wanted = Signal()
    eye_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.next = QPushButton(self)
        self.next.setToolTip(
            self.tr(
                "A copy of this trial, read by itself: with so many trays of each it would probably settle "
                "what is not shown. Where crops take different numbers, that of the crop that takes most"
            )
        )
        self.next.clicked.connect(self.next_wanted)
        self.report = QPushButton(self.tr("Report..."), self)
        self.report.setToolTip(self.tr("Look at the report of this trial and save it as PDF or for mail"))
        self.report.clicked.connect(self.report_wanted)
        self.by_eye = QPushButton(self.tr("Score blind by eye"), self)
        self.by_eye.setToolTip(
            self.tr("Score the photos of the day with names hidden, and see whether eye and photo agree")
        )
        self.by_eye.clicked.connect(self.eye_wanted)
        set_role(self.by_eye, "main")
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        row.addStretch(1)
        for button in (self.next, self.report, self.by_eye):
            row.addWidget(button)

    def show_may(self, *, score: bool, then: NextTrial | None, crop: str) -> None:
        """Whether there is something to score, and what the next trial takes, if any.

        Where another crop than the one in front takes so many it is named: the sentence above says another
        number.
        """
        self.by_eye.setEnabled(score)
        self.next.setVisible(then is not None)
        if then is not None:
            words = self.tr("Plan the next trial: {n} trays of each")
            if then.crop != crop:
                words = self.tr("Plan the next trial: {n} trays of each, for {crop}")
            crop = cut_name(then.crop, self.next.fontMetrics(), MOST_OF_CROP)
            self.next.setText(plain_button(filled(words, n=then.trays, crop=crop)))
