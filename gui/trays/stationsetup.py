"""Station setup: where the cards of the station go, and whether they lie there, from a photo.

In    a book, `Work`
Out   a dialog: the drawing for a tray type, the check of a photo in words; places of the cards kept
Not   the check (`data/photos/station.py`), distances (`stationdistances.py`), printing the cards
      (`tagsdialog.py`)
"""

from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
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
from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.photos.station import Checked, as_found, check_station, plan_of_station
from data.photos.stationwords import kept_places
from gui.controls.asking import show_over
from gui.controls.choosing import ask_photos
from gui.controls.telling import tell
from gui.home import photos_folder
from gui.language.spoken import in_figures, spoken
from gui.style.palette import Space, set_role
from gui.trays.stationdistances import StationDistances
from gui.trays.stationdrawing import StationDrawing
from gui.work import Job, Work
from vision.photo import PhotoRefused
from vision.stationcheck import CardPlace, Found
from vision.traytype import TrayType

__all__ = ["StationSetup"]


class StationSetup(QDialog):
    """The drawing on the left; what to do and what was found on the right."""

    changed = Signal()  # where the cards lie was kept

    def __init__(self, book: Book, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book, self._work = book, work
        self._kinds = {kind.name: kind for kind in book.tray_types()}
        self._found: CardPlace | None = None  # the card that the last check says lies elsewhere
        self._job: Job | None = None
        self._asked = 0
        self.setWindowTitle(self.tr("Check the station"))
        self.kind = QComboBox(self)
        self.kind.addItems(list(self._kinds))
        self.kind.setAccessibleName(self.tr("Tray type"))
        self.drawing = StationDrawing(self)
        self._make_words()
        self._make_remedies()
        self._make_bar()
        self._make_foot()
        self._lay_out()
        self.kind.currentTextChanged.connect(self._show_kind)
        self._show_kind()
        self.bring.setFocus()

    def _make_words(self) -> None:
        self.about, self.kept, self.said, self.notes = (QLabel(self) for _ in range(4))
        for label in (self.about, self.kept, self.said, self.notes):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        set_role(self.notes, "notice")
        set_role(self.kept, "calm")

    def _make_remedies(self) -> None:
        """What can be done where a card lies elsewhere."""
        self.measure = QPushButton(self.tr("Measured distances..."), self)
        self.measure.setToolTip(self.tr("Say where the cards lie, if they cannot be moved to their places"))
        self.measure.clicked.connect(self._measure)
        self.keep = QPushButton(self.tr("Leave it there and score with it"), self)
        self.keep.setToolTip(
            self.tr("Photos that come in from now on are scored with the card where it lies")
        )
        self.keep.clicked.connect(self._keep_found)
        self.keep.hide()
        for button in (self.measure, self.keep):
            button.setAutoDefault(False)

    def _make_bar(self) -> None:
        self.bar = QProgressBar(self)
        self.bar.setAccessibleName(self.tr("Looking at the photo"))
        self.bar.setRange(0, 0)
        self.bar.hide()

    def _make_foot(self) -> None:
        self.close_it = QPushButton(self.tr("Close"), self)
        self.close_it.setAutoDefault(False)
        self.close_it.clicked.connect(self.reject)
        self.bring = QPushButton(self.tr("Bring a photo of the station..."), self)
        self.bring.setDefault(True)
        self.bring.clicked.connect(self._ask)
        set_role(self.bring, "main")

    def _lay_out(self) -> None:
        letter = self.fontMetrics().averageCharWidth()
        words = QWidget(self)
        words.setFixedWidth(letter * 42)
        self._words, right = words, QVBoxLayout(words)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(Space.M)
        label = QLabel(self.tr("Tray type"), words)
        label.setBuddy(self.kind)
        for part in (label, self.kind, self.about, self.kept, self.bar, self.said, self.keep, self.notes):
            right.addWidget(part)
        right.addStretch(1)
        both = QHBoxLayout()
        both.setSpacing(Space.L)
        both.addWidget(self.drawing, 1)
        both.addWidget(words)
        buttons = QHBoxLayout()
        buttons.setSpacing(Space.S)
        buttons.addWidget(self.measure)
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
        self.about.show()
        self._show_kept()
        self._leave()
        how = self.tr(
            "Put a tray with its tag on the station, keep leaves off the cards, and photograph it from above "
            "at the phone's full size, with all four cards in the picture."
        )
        self._say(how, "soft")
        self.notes.hide()

    # --- where the cards lie

    def _show_kept(self) -> None:
        kept = kept_places(self.chosen)
        self.kept.setText("" if kept is None else spoken(kept))
        self.kept.setVisible(kept is not None)

    @Slot()
    def _measure(self) -> None:
        dialog = StationDistances(self.chosen, self)
        dialog.kept.connect(self.keep_places)
        show_over(dialog)

    @Slot()
    def _keep_found(self) -> None:
        if self._found is not None:
            self.keep_places(as_found(self.chosen, self._found))

    @Slot(object)
    def keep_places(self, off: tuple[tuple[float, float], ...]) -> None:
        """Photos that come in from now on are scored with the cards there; none at all: as drawn."""
        name = self.chosen.name
        try:
            self._book.set_cards_off(name, off)
        except BookError as error:
            self._say(spoken(error), "alarm")
            return
        self.changed.emit()
        self._kinds[name] = self._book.tray_type(name)
        self._show_kind()
        if not off:
            self._say(self.tr("Photos are scored with the cards as drawn."), "calm")

    # --- checking

    @Slot()
    def _ask(self) -> None:
        photos = ask_photos(self, self.tr("A photo of the station"), photos_folder())
        if photos:
            self.check(photos[0])

    def check(self, photo: Path) -> None:
        """Look at a photo in the background."""
        self._leave()
        kind = self.chosen

        asked = self._asked

        def task(_token: CancelToken, _report: Progress) -> tuple[int, Checked | PhotoRefused]:
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
        self._found = check.moved
        self.about.hide()  # the drawing tells the same, and what was found needs the room
        self.keep.setVisible(check.moved is not None)
        first, *more = (spoken(sentence) for sentence in checked.sentences)
        roles = {Found.TRUE: "calm", Found.ONE_CARD: "alarm"}
        self._say(first, roles.get(check.found, "notice"))
        self.notes.setText("\n".join(more))
        self.notes.setVisible(bool(more))
        self._fit()

    @Slot(object)
    def _fail(self, _error: Exception) -> None:
        self._rest()
        self._say(self.tr("This photo could not be looked at. Bring another one."), "alarm")

    def _leave(self) -> None:
        """A check that still runs is not waited for."""
        self._asked += 1
        self._found = None
        self.keep.hide()
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
        tell(self.said, words, role)
        self._fit()

    def _fit(self) -> None:
        """Never lower than its words need."""
        right, all_of_it = self._words.layout(), self.layout()
        if right is None or all_of_it is None:
            return
        margins = all_of_it.contentsMargins()
        beside = margins.top() + margins.bottom() + Space.M + self.bring.sizeHint().height()
        needed = right.totalHeightForWidth(self._words.width()) + beside
        self.setMinimumHeight(max(self.fontMetrics().height() * 25, needed))
