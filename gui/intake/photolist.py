"""Photo list: the page of Intake with a row a photo, the photo looked at beside it, and the next step.

In    `IntakeState`
Out   what a person wants done with a photo, by the signals of `panel`; `confirm_all_wanted`, `photos_wanted`,
      `missing_wanted`
Not   reading and changing the book (`screen.py`)
"""

from PySide6.QtCore import QItemSelectionModel, QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from gui.controls.bounce import Bounce
from gui.controls.questionband import QuestionBand
from gui.intake.bands import IntakeBands
from gui.intake.droparea import DropArea
from gui.intake.photopanel import PhotoPanel
from gui.intake.phototable import FATE, PHOTO, FateDelegate, PhotoDelegate, PhotoTable
from gui.intake.room import Parts, Room, row_height, share_out
from gui.intake.view import IntakeRow, IntakeState, Kind
from gui.photo.scoringagain import ScoringAgain
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.work import Work

__all__ = ["PhotoList"]

LIST, PANEL = 3, 2  # shares of the width
NAME_LETTERS, MOST_FOR_NAMES = 18, 0.47  # of a photo's name; of the list's width


class PhotoRows(QTableView):
    """The table with the keys of a list: letters are for the page, Home and End for the rows."""

    entered = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter does what the row needs; a letter searches nothing here, so that the page's keys work."""
        key = event.key()
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.entered.emit()
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            last = self.model().rowCount() - 1
            self.setCurrentIndex(self.model().index(0 if key == Qt.Key.Key_Home else last, FATE))
        elif event.text().isprintable() and event.text() and not event.modifiers():
            event.ignore()
        else:
            super().keyPressEvent(event)

    def share_width(self) -> None:
        """A name of a usual length is whole, unless the sentence beside it would get less than half."""
        letters = self.fontMetrics().averageCharWidth()
        name = min(108 + NAME_LETTERS * letters, round(MOST_FOR_NAMES * self.viewport().width()))
        self.setColumnWidth(PHOTO, name)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The photo that is looked at stays in sight."""
        super().resizeEvent(event)
        self.share_width()
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex())


class PhotoList(QWidget):
    """Everything of Intake but the empty state and the corners."""

    confirm_all_wanted = Signal()
    photos_wanted = Signal()
    missing_wanted = Signal()
    filter_changed = Signal(bool)

    def __init__(
        self, work: Work, thumbnails: Thumbnails, scoring: ScoringAgain, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._state = IntakeState()
        self._current: IntakeRow | None = None
        self._bounce = Bounce()
        self._offers_all = False
        self._head = self._make_head()
        self.bands = IntakeBands(scoring, self)
        self.bands.changed.connect(self._make_room)
        self.model = PhotoTable(thumbnails, self)
        self.table = self._make_table()
        self.bands.emptied.connect(self.table.setFocus)
        self.panel = PhotoPanel(work, self)
        self.panel.picker.left.connect(self.table.setFocus)
        self.drop = DropArea(self, large=False)
        self.next_step = QPushButton(self)
        set_role(self.next_step, "rack-main")
        self.next_step.clicked.connect(self._do_next)
        self._lay_out()

    def _make_head(self) -> QHBoxLayout:
        self.headline = QLabel(self)
        set_role(self.headline, "title")
        self.summary = wrapped("", self, "soft")
        self.only_needing = QPushButton(self.tr("Show only these"), self)
        self.only_needing.setCheckable(True)
        self.only_needing.setToolTip(self.tr("Show only photos that need you"))
        self.only_needing.toggled.connect(self.filter_changed)
        head = QHBoxLayout()
        head.setSpacing(Space.M)
        head.addWidget(self.headline)
        head.addWidget(self.summary, 1)
        head.addWidget(self.only_needing)
        return head

    def _lay_out(self) -> None:
        middle = QHBoxLayout()
        middle.setSpacing(Space.M)
        middle.addWidget(self.table, LIST)
        middle.addWidget(self.panel, PANEL)
        foot = QHBoxLayout()
        foot.setSpacing(Space.M)
        foot.addWidget(self.drop, 1)
        foot.addStretch(0)
        foot.addWidget(self.next_step, 0, Qt.AlignmentFlag.AlignBottom)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        column.setSpacing(Space.M)
        column.addLayout(self._head)
        column.addWidget(self.bands)
        column.addLayout(middle, 1)
        column.addLayout(foot)

    def _make_table(self) -> PhotoRows:
        table = PhotoRows(self)
        table.entered.connect(self._do_row)
        table.setModel(self.model)
        table.setAccessibleName(self.tr("Photos and what became of them"))
        table.setTabKeyNavigation(False)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        table.setShowGrid(False)
        table.verticalHeader().hide()
        table.setItemDelegateForColumn(PHOTO, PhotoDelegate(table))
        table.setItemDelegateForColumn(FATE, FateDelegate(table))
        head = table.horizontalHeader()
        head.setHighlightSections(False)
        head.setSectionsClickable(False)
        head.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        head.setSectionResizeMode(FATE, QHeaderView.ResizeMode.Stretch)
        table.selectionModel().currentRowChanged.connect(self._looked_at)
        return table

    def fit_to_text(self) -> None:
        """Columns and rows as the letters want them."""
        self.table.share_width()
        self.table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self._make_room()

    # --- showing

    @Slot()
    def _make_room(self) -> None:
        """A question above the list takes the place of what can be done without for as long as it is open."""
        self.panel.lead(not self.bands.leads)
        words = self.tr("Above the list: {question} The key Q leads there.")
        question = "" if self.bands.asked is None else self.bands.asked.accessibleName()
        self.table.setAccessibleDescription(words.format(question=question) if question else "")
        room = self._shared_out(self.bands.asked)
        self.table.verticalHeader().setDefaultSectionSize(room.row)
        self.table.horizontalHeader().setVisible(room.heading)
        self.panel.setVisible(room.panel)
        self.panel.show_parts(picture=room.picture, words=room.words)
        self.drop.setVisible(room.drop)
        self.next_step.setVisible(room.next_step)
        self._show_next_step()

    def _shared_out(self, band: QuestionBand | None) -> Room:
        """Who gets how much of the page; the question is told its part."""
        line, column = self.table.fontMetrics().lineSpacing(), self.layout()
        if band is None or column is None:
            return Room(row=row_height(line), question=0)
        edges = column.contentsMargins()
        width = self.width() - edges.left() - edges.right()
        taken = edges.top() + edges.bottom() + self._head.sizeHint().height() + 3 * column.spacing()
        panel, picture, words = self.panel.least_heights((width - Space.M) * PANEL // (LIST + PANEL))
        room = share_out(
            Parts(
                room=self.height() - taken,
                line=line,
                question=band.whole_height(width),
                least_question=band.least_height(width),
                heading=self.table.horizontalHeader().sizeHint().height(),
                panel=panel,
                picture=picture,
                words=words,
                drop=self.drop.sizeHint().height(),
                next_step=self.next_step.sizeHint().height(),
            )
        )
        band.allow(room.question, width)
        return room

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Room for the question."""
        super().resizeEvent(event)
        self._make_room()

    def show_state(self, state: IntakeState) -> None:
        """Show this; the photo that is looked at stays the same where it is still there."""
        self._state = state
        self.headline.setText(state.headline)
        self.summary.setText(state.summary)
        self.only_needing.setVisible(state.needing > 0 or state.only_needing)
        self.only_needing.setChecked(state.only_needing)
        self.model.show(state.rows)
        self._keep_looking_at(self._current)
        self._make_room()

    def _keep_looking_at(self, row: IntakeRow | None) -> None:
        number = -1 if row is None else self.model.number_of(row)
        if number < 0 and self.model.rowCount():
            number = max(0, self.model.next_needing(-1))
        if number != self.table.currentIndex().row():
            self._go_to(number)
        self._current = self.model.row(number)
        self.panel.show_row(self._current)

    def _go_to(self, number: int) -> None:
        rows = QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows
        index = self.model.index(number, FATE)
        self.table.selectionModel().setCurrentIndex(index, rows)
        self.table.scrollTo(index)

    @Slot(QModelIndex)
    def _looked_at(self, index: QModelIndex) -> None:
        self._current = self.model.row(index.row())
        self.panel.show_row(self._current)
        self._make_room()

    @Slot()
    def _show_next_step(self) -> None:
        """The one main action: what is most worth doing now."""
        proposals = len(self._state.proposals)
        row = self._current
        asked = row is not None and row.kind in (Kind.PROPOSED, Kind.NEEDS_CORNERS) and proposals < 2
        asked = asked or self.bands.leads
        set_role(self.next_step, "rack" if asked else "rack-main")  # else two buttons would be the main one
        if missing := len(self._state.missing):
            self.next_step.setText(self.tr("Bring in what is missing: {n}").format(n=missing))
            self.next_step.setToolTip(self.tr("Try again with the files that were not brought in"))
        elif proposals > 1:
            if not self._offers_all:
                self._bounce.is_one()  # a press that comes now was meant for what stood here before
            self.next_step.setText(self.tr("Confirm all {count} proposals").format(count=proposals))
            self.next_step.setToolTip(
                self.tr("Match these photos by the order of your walk; undo takes it back")
            )
        elif self._state.needing:
            self.next_step.setText(self.tr("Next that needs you"))
            self.next_step.setToolTip(self.tr("Go to the next photo that needs you (N)"))
        else:
            self.next_step.setText(self.tr("Choose photos"))
            self.next_step.setToolTip(self.tr("Choose photo files (Ctrl+I)"))
        self._offers_all = proposals > 1 and not self._state.missing
        self.drop.files.setVisible(bool(self._state.needing))

    @Slot()
    def _do_next(self) -> None:
        if self._state.missing:
            self.missing_wanted.emit()
        elif len(self._state.proposals) > 1:
            if not self._bounce.is_one():
                self.confirm_all_wanted.emit()
        elif self._state.needing:
            self.go_to_next()
        else:
            self.photos_wanted.emit()

    @Slot()
    def _do_row(self) -> None:
        """What the chosen photo needs, else the sheet of its tray."""
        kind = None if self._current is None else self._current.kind
        if kind is Kind.NEEDS_TRAY:
            self.panel.picker.setFocus()
            return
        if kind is Kind.MISSING:
            self.missing_wanted.emit()
            return
        buttons = {Kind.PROPOSED: self.panel.confirm, Kind.NEEDS_CORNERS: self.panel.corners}
        button = buttons.get(kind, self.panel.sheet) if kind is not None else self.panel.sheet
        if button.isVisible():
            button.click()

    def go_to_next(self) -> None:
        """The next photo that needs a person."""
        number = self.model.next_needing(self.table.currentIndex().row())
        if number >= 0:
            self._go_to(number)
            row = self.model.row(number)
            if row is not None and row.kind is Kind.NEEDS_TRAY:
                self.panel.picker.setFocus()
            elif row is not None and row.kind is Kind.NEEDS_CORNERS:
                self.panel.corners.setFocus()
            elif row is not None and row.kind is Kind.MISSING:
                self.next_step.setFocus()
            else:
                self.panel.confirm.setFocus()
