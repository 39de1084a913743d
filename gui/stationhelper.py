"""Station helper: where the cards of the station go, and whether they lie there, from a photo.

In    a book, `Work`
Out   a dialog: the drawing for a kind of tray, the check of a photo in words
Not   the check (`data/station.py`), printing the cards (`tagsdialog.py`), measures of trays (`traytypes.py`)
"""

from pathlib import Path

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.book import Book
from data.cancel import CancelToken
from data.conditions import TrayType
from data.station import Checked, check_station, plan_of_station
from gui.choosing import ask_photos
from gui.palette import Space, set_role
from gui.spoken import in_figures, spoken
from gui.stationdrawing import StationDrawing
from gui.work import Job, Report, Work
from vision.photo import PhotoRefused
from vision.stationcheck import Found

__all__ = ["StationHelper"]


class StationHelper(QDialog):
    """The drawing on the left; what to do and what was found on the right."""

    def __init__(self, book: Book, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._kinds = {kind.name: kind for kind in book.tray_types()}
        self._job: Job | None = None
        self._asked = 0
        self.setWindowTitle(self.tr("Check the station"))
        self.kind = QComboBox(self)
        self.kind.addItems(list(self._kinds))
        self.kind.setAccessibleName(self.tr("Kind of tray"))
        self.drawing = StationDrawing(self)
        self.about, self.said, self.notes = QLabel(self), QLabel(self), QLabel(self)
        for label in (self.about, self.said, self.notes):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        set_role(self.notes, "notice")
        self.bar = QProgressBar(self)
        self.bar.setAccessibleName(self.tr("Looking at the photo"))
        self.bar.setRange(0, 0)
        self.bar.hide()
        self.close_it = QPushButton(self.tr("Close"), self)
        self.close_it.setAutoDefault(False)
        self.bring = QPushButton(self.tr("Bring a photo of the station..."), self)
        self.bring.setDefault(True)
        set_role(self.bring, "main")
        self._lay_out()
        self.kind.currentTextChanged.connect(self._show_kind)
        self.close_it.clicked.connect(self.reject)
        self.bring.clicked.connect(self._ask)
        self._show_kind()
        self.bring.setFocus()

    def _lay_out(self) -> None:
        letter = self.fontMetrics().averageCharWidth()
        words = QWidget(self)
        words.setFixedWidth(letter * 42)
        right = QVBoxLayout(words)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(Space.M)
        label = QLabel(self.tr("Kind of tray"), words)
        label.setBuddy(self.kind)
        for part in (label, self.kind, self.about, self.bar, self.said, self.notes):
            right.addWidget(part)
        right.addStretch(1)
        both = QHBoxLayout()
        both.setSpacing(Space.L)
        both.addWidget(self.drawing, 1)
        both.addWidget(words)
        buttons = QHBoxLayout()
        buttons.addStretch(1)
        buttons.addWidget(self.close_it)
        buttons.addWidget(self.bring)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        column.setSpacing(Space.M)
        column.addLayout(both, 1)
        column.addLayout(buttons)
        self.setMinimumHeight(self.fontMetrics().height() * 25)
        self.resize(min(letter * 110, 980), self.minimumHeight())

    @property
    def chosen(self) -> TrayType:
        """The kind of tray that is shown."""
        return self._kinds[self.kind.currentText()]

    @Slot()
    def _show_kind(self) -> None:
        """Where the cards go for this kind; what was found for another one is gone."""
        plan = plan_of_station(self.chosen)
        self.drawing.show_station(plan)
        words = self.tr(
            "The middle of each card's mark lies {inset} mm in from the end of the tray and {outset} mm out "
            "from its long side. From middle to middle it is {across} mm across and {deep} mm from far to "
            "near. Both ways from corner to corner are {diagonal} mm."
        )
        self.about.setText(
            words.format(
                inset=in_figures(plan.inset_mm),
                outset=in_figures(plan.outset_mm),
                across=in_figures(plan.across_mm),
                deep=in_figures(plan.deep_mm),
                diagonal=in_figures(plan.diagonal_mm, ".0f"),
            )
        )
        self._leave()
        how = self.tr(
            "Put a tray with its tag on the station, keep leaves off the cards, and photograph it from above "
            "at the phone's full size, with all four cards in the picture."
        )
        self._say(how, "soft")
        self.notes.hide()

    # --- checking

    @Slot()
    def _ask(self) -> None:
        photos = ask_photos(self, self.tr("A photo of the station"), Path.home())
        if photos:
            self.check(photos[0])

    def check(self, photo: Path) -> None:
        """Look at a photo in the background."""
        self._leave()
        kind = self.chosen

        asked = self._asked

        def task(_token: CancelToken, _report: Report) -> tuple[int, Checked | PhotoRefused]:
            try:
                return asked, check_station(photo, kind)
            except PhotoRefused as refusal:
                return asked, refusal

        self.bring.setEnabled(False)
        self.bar.show()
        self._say(self.tr("Looking at {photo}.").format(photo=photo.name), "soft")
        self.notes.hide()
        self._job = self._work.start(task)
        self._job.finished.connect(self._show)
        self._job.failed.connect(self._fail)

    @Slot(object)
    def _show(self, answer: tuple[int, Checked | PhotoRefused]) -> None:
        asked, checked = answer
        if asked != self._asked:
            return  # too late: another photo or kind was chosen
        self._rest()
        if isinstance(checked, PhotoRefused):
            words = self.tr("{photo} is not used: {why}.")
            self._say(words.format(photo=checked.name, why=spoken(checked.reason)), "alarm")
            return
        check = checked.check
        self.drawing.show_station(plan_of_station(self.chosen), check)
        first, *more = (spoken(sentence) for sentence in checked.sentences)
        roles = {Found.TRUE: "calm", Found.ONE_CARD: "alarm"}
        self._say(first, roles.get(check.found, "notice"))
        self.notes.setText("\n".join(more))
        self.notes.setVisible(bool(more))

    @Slot(object)
    def _fail(self, _error: Exception) -> None:
        self._rest()
        self._say(self.tr("This photo could not be looked at. Bring another one."), "alarm")

    def _leave(self) -> None:
        """A check that still runs is not waited for."""
        self._asked += 1
        if self._job is not None:
            self._job.cancel()
        self._rest()

    def _rest(self) -> None:
        self._job = None
        self.bar.hide()
        self.bring.setEnabled(True)

    def done(self, result: int) -> None:
        """Leave nothing running."""
        self._leave()
        super().done(result)

    def _say(self, words: str, role: str) -> None:
        set_role(self.said, role)
        self.said.setText(words)
