"""Blind start: before a round of scoring by eye: who scores, and what will happen.

In    how many photos there are, and whether more are still being scored; a round that was left unfinished
Out   `begun` with the name of who scores, `resumed`
Not   the round itself (`blindwindow.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QDialog, QLabel, QLineEdit, QPushButton, QWidget

from gui.answer.reading import EyeRoundReading
from gui.controls.form import fields, lay_out
from gui.controls.telling import tell
from gui.style.palette import set_role
from gui.style.words import wrapped

__all__ = ["BlindStart"]


class BlindStart(QDialog):
    """One question."""

    begun = Signal(str)  # who scores
    resumed = Signal()

    def __init__(
        self, crop: str, photos: int, last: EyeRoundReading | None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Score by eye"))
        title = QLabel(self.tr("Score {crop} by eye").format(crop=crop), self)
        set_role(title, "title")
        self._words = self.tr(
            "You see {photos} trays from above, one after the other, with names hidden, in drawn order and "
            "equally bright. Some come twice, to see how well you agree with yourself. Give each a number "
            "from 0 to 100. You can leave at any time and go on later."
        )
        self.about = wrapped("", self, "soft")
        self.waits = wrapped("", self, "notice")
        self.waits.hide()
        self.name = QLineEdit("" if last is None else last.round.rater, self)
        form = fields()
        form.addRow(self.tr("&Who scores"), self.name)
        self.trouble = QLabel(self)
        set_role(self.trouble, "alarm")
        self.trouble.hide()
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)
        self.begin = QPushButton(self.tr("Begin a round"), self)
        self.begin.clicked.connect(self._begin)
        buttons = [leave, self.begin]
        self.resume: QPushButton | None = None
        if last is not None and not last.is_over:
            words = self.tr("Go on: {done} of {total} scored")
            self.resume = QPushButton(
                words.format(done=len(last.given), total=len(last.round.showings)), self
            )
            self.resume.clicked.connect(self._resume)
            buttons.append(self.resume)
        set_role(buttons[-1], "main")
        buttons[-1].setDefault(True)
        self.show_photos(photos, more=False)
        lay_out(self, (title, self.about, self.waits), form, self.trouble, buttons, 80)

    def show_photos(self, photos: int, *, more: bool) -> None:
        """Of how many photos a round would be; while more are being scored none is drawn without them."""
        self.about.setText(self._words.format(photos=photos))
        self.begin.setEnabled(not more)
        if more == self.waits.isHidden():
            words = self.tr(
                "Photos are being scored. A round holds all photos of the day, so it can begin once they "
                "are in."
            )
            self.waits.setVisible(more)
            tell(self.waits, words if more else "", "notice")

    @Slot()
    def _begin(self) -> None:
        self.begun.emit(self.name.text())
        self.accept()

    @Slot()
    def _resume(self) -> None:
        self.resumed.emit()
        self.accept()
