"""Photo panel: the one photo that is looked at in Intake, and what can be done with it.

In    an `IntakeRow`, the growing trays
Out   `tray_chosen`, `corners_wanted`, `sheet_wanted`, `left_out`
Not   doing it (`screen.py`)
"""

from collections.abc import Sequence
from datetime import date
from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QGuiApplication, QResizeEvent
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout, QWidget

from data.cancel import CancelToken, Progress
from data.records import Tray
from gui.controls.flow import Flow
from gui.controls.zoombar import ZoomBar
from gui.intake.traypicker import TrayPicker
from gui.intake.view import IntakeRow, Kind
from gui.language.plainbutton import plain_button
from gui.language.plainhint import plain_hint
from gui.language.spoken import spoken
from gui.photo.mips import Mips
from gui.photo.photoload import load_photo
from gui.pictures import PictureView
from gui.style.palette import Space, set_role
from gui.style.words import quotable
from gui.work import Work

__all__ = ["PhotoPanel"]

LONGEST = 1600  # px; enough to see which tray it is
PICTURE_HIGH, PICTURE_LOW = 110, 80  # px, the least; low where a sentence would be cut else
Loaded = tuple[Path, Mips | None, str]


class PhotoPanel(QFrame):
    """Picture, sentence, and the steps that this photo allows."""

    tray_chosen = Signal(object, int)  # IntakeRow, tray id
    corners_wanted = Signal(object)  # IntakeRow
    sheet_wanted = Signal(int)  # tray id
    left_out = Signal(object)  # IntakeRow

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._row: IntakeRow | None = None
        self._picking = False
        self._leads = True
        self._trays: tuple[Tray, ...] = ()
        self._asked: Path | None = None
        self._held: Path | None = None
        set_role(self, "sheet")
        self.picture = PictureView(self)
        self.doing = QWidget(self)  # words and buttons
        self._make_head()
        self._make_buttons()
        self.zoom = ZoomBar(self.picture, self.doing)
        self.picker = TrayPicker(self.doing)
        self.picker.chosen.connect(self._picked)
        self.picker.left.connect(self._show_picking)
        self._lay_out()
        self.show_row(None)

    def _make_head(self) -> None:
        """Made in the order in which Tab comes by."""
        self.picture.setAccessibleName(self.tr("The photo"))
        self.picture.setMinimumSize(200, PICTURE_HIGH)
        self.sentence = quotable(self.doing)
        self.sentence.setAccessibleName(self.tr("What became of the photo"))

    def _make_buttons(self) -> None:
        self.confirm = self._button(self._confirmed, "rack-main")
        self.corners = self._button(self._corners)
        self.sheet = self._button(self._sheet)
        self.other = self._button(self._pick)
        self.copy = self._button(self._copied)
        self.leave = self._button(self._left)
        self.corners.setText(self.tr("Set the corners"))
        self.other.setText(self.tr("Choose the tray"))
        self.copy.setText(self.tr("Copy the sentence"))
        self.leave.setText(self.tr("Leave out"))
        self.leave.setToolTip(
            self.tr("Count this photo for no tray; it stays in the book, and undo brings it back")
        )

    def _lay_out(self) -> None:
        buttons = Flow()
        for button in (self.confirm, self.corners, self.sheet, self.other, self.copy, self.leave):
            buttons.addWidget(button)
        buttons.addWidget(self.zoom)  # not beside the sentence: more lines of that would lower the picture
        below = QVBoxLayout(self.doing)
        below.setContentsMargins(0, 0, 0, 0)
        below.setSpacing(Space.S)
        below.addWidget(self.sentence)
        below.addLayout(buttons)
        below.addWidget(self.picker, 1)
        below.addStretch(0)  # without list and picture the words stay at the top
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        self._column.setSpacing(Space.S)
        self._column.addWidget(self.picture, 3)
        self._column.addWidget(self.doing)

    def _button(self, pressed: object, role: str = "rack") -> QPushButton:
        button = QPushButton(self.doing)
        set_role(button, role)
        button.clicked.connect(pressed)
        return button

    def least_heights(self, width: int) -> tuple[int, int, int]:
        """px below which something would be cut at this width; what the picture takes of it, and the words.

        Either can be given up; of a list in which a tray is being looked for nothing, so that it never goes.
        """
        below, edges = self.doing.layout(), self._column.contentsMargins()
        assert below is not None
        frame = self.height() - self.contentsRect().height()  # the hairline around it
        inner = width - edges.left() - edges.right() - frame
        picture = PICTURE_LOW + Space.S
        words = below.totalMinimumHeightForWidth(inner) + Space.S
        least = edges.top() + edges.bottom() + frame + picture + words - Space.S
        return (least, least, 0) if not self.picker.isHidden() else (least, picture, words)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where it is too low for all of it, picture and list give way, and no sentence is cut."""
        super().resizeEvent(event)
        self._give_way()

    def _give_way(self) -> None:
        ample = self.least_heights(self.width())[0]
        ample += PICTURE_HIGH - PICTURE_LOW + self.picker.missing_height
        cramped = ample > self.height() > 0
        self.picture.setMinimumHeight(PICTURE_LOW if cramped else PICTURE_HIGH)
        self.picker.be_low(cramped)

    def show_parts(self, *, picture: bool, words: bool) -> None:
        """What there is room for."""
        self.picture.setVisible(picture)
        self.zoom.setVisible(picture)
        self.doing.setVisible(words)

    def show_trays(self, trays: Sequence[Tray]) -> None:
        """The trays that can be chosen; of those that have ended such as grew on the day of the photo."""
        self._trays = tuple(trays)
        self._offer_trays()

    def _offer_trays(self) -> None:
        day = None if self._row is None or self._row.taken_at is None else self._row.taken_at.date()
        offered = [tray for tray in self._trays if _grew(tray, day)]
        late = [tray for tray in offered if day is not None and tray.sown_at.date() > day]
        self.picker.show_trays([*(tray for tray in offered if tray not in late), *late], day)

    def lead(self, leads: bool) -> None:
        """Whether the main action of the screen may stand here; a question above the list takes it."""
        if leads != self._leads:
            self._leads = leads
            self._show_buttons(self._row)

    def show_row(self, row: IntakeRow | None) -> None:
        """Show this photo; asked again for the same one, only the words may change."""
        if row is None or self._row is None or row.key != self._row.key:
            self._picking = False
            self.picker.begin()
        self._row = row
        self._offer_trays()
        self._show_words(row)
        self._show_buttons(row)
        self._show_picture(row)
        self._give_way()

    def _show_words(self, row: IntakeRow | None) -> None:
        self.picture.describe("" if row is None else row.name)
        self.sentence.setText(self.tr("Choose a row to see its photo.") if row is None else row.sentence)

    def _show_buttons(self, row: IntakeRow | None) -> None:
        kind = None if row is None else row.kind
        kept = row is not None and row.photo_id is not None and row.photo is not None
        proposed = row is not None and kind is Kind.PROPOSED
        matchable = kept and kind not in (Kind.REFUSED, Kind.WAITING, Kind.NEEDS_CORNERS)
        self.confirm.setVisible(proposed)
        set_role(self.confirm, "rack-main" if self._leads else "rack")
        if row is not None and proposed:
            self.confirm.setText(self.tr("Yes, {code}").format(code=plain_button(row.proposal_code or "")))
            self.confirm.setToolTip(
                plain_hint(self.tr("The photo shows tray {code}").format(code=row.proposal_code))
            )
        self.corners.setVisible(kept and kind is not Kind.WAITING)
        leads = kind is Kind.NEEDS_CORNERS and self._leads
        set_role(self.corners, "rack-main" if leads else "rack")
        self.sheet.setVisible(row is not None and row.tray_id is not None and kind is not Kind.REFUSED)
        if row is not None and row.tray_code is not None:
            self.sheet.setText(self.tr("Open {code}").format(code=plain_button(row.tray_code)))
            self.sheet.setToolTip(
                plain_hint(self.tr("Open the sheet of tray {code}").format(code=row.tray_code))
            )
        picking = matchable and (self._picking or (kind is Kind.NEEDS_TRAY and self._leads))
        self.other.setVisible(matchable and not picking)
        self.other.setText(
            self.tr("Another tray") if kind in (Kind.PROPOSED, Kind.STORED) else self.tr("Choose the tray")
        )
        self.picker.setVisible(picking)
        self._column.setStretchFactor(self.doing, 2 if picking else 0)
        self.copy.setVisible(kind is Kind.REFUSED)
        self.leave.setVisible(kept and kind not in (Kind.WAITING, Kind.LEFT_OUT, Kind.REFUSED))

    # --- the picture

    def _show_picture(self, row: IntakeRow | None) -> None:
        path = None if row is None else row.photo
        if path is None:
            self._asked = self._held = None
            nothing = "" if row is None else self.tr("Nothing of this file can be shown.")
            self.picture.show_picture(None, message=nothing)
        elif path != self._asked:
            self._asked = path
            if self._held != path:
                self.picture.show_picture(None, message="")

            def load(_token: CancelToken, _report: Progress) -> Loaded:
                return _loaded(path)

            self._work.start(load).finished.connect(self._came)

    @Slot(object)
    def _came(self, answer: Loaded) -> None:
        path, mips, why = answer
        if path == self._asked:  # else another row is looked at by now
            self._held = path
            self.picture.show_picture(mips, message=why)

    # --- what a person does

    @Slot()
    def _confirmed(self) -> None:
        if self._row is not None and self._row.proposal_id is not None:
            self.tray_chosen.emit(self._row, int(self._row.proposal_id))

    @Slot(int)
    def _picked(self, tray: int) -> None:
        self._picking = False
        if self._row is not None:
            self.tray_chosen.emit(self._row, tray)

    @Slot()
    def _pick(self) -> None:
        self._show_picking(True)
        self.picker.setFocus()

    @Slot()
    def _show_picking(self, picking: bool = False) -> None:
        self._picking = picking
        self._show_buttons(self._row)
        self._give_way()

    @Slot()
    def _corners(self) -> None:
        if self._row is not None:
            self.corners_wanted.emit(self._row)

    @Slot()
    def _sheet(self) -> None:
        if self._row is not None and self._row.tray_id is not None:
            self.sheet_wanted.emit(int(self._row.tray_id))

    @Slot()
    def _copied(self) -> None:
        if self._row is not None:
            QGuiApplication.clipboard().setText(f"{self._row.name}: {self._row.sentence}")

    @Slot()
    def _left(self) -> None:
        if self._row is not None:
            self.left_out.emit(self._row)


def _grew(tray: Tray, day: date | None) -> bool:
    """Whether a tray can be on a photo of that day; one that still grows can, the clock may be wrong."""
    return tray.done_at is None or (day is not None and tray.sown_at.date() <= day <= tray.done_at.date())


def _loaded(path: Path) -> Loaded:
    from vision.photo import PhotoRefused

    try:
        return path, load_photo(path, LONGEST), ""
    except PhotoRefused as refused:
        return path, None, spoken(refused.reason)
