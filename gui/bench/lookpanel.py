"""Look panel: the head of the Bench: how many trays need a look, the list, the caution that goes with it.

In    `BenchState`
Out   `opened` with a `Look`; `fold_wanted`; what is said to a line, and the wish for its history
Not   the rows (`looks.py`), what needs a look (`data.watch`)
"""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from gui.bench.lookdetail import LookDetail
from gui.bench.looks import LookList
from gui.bench.view import ROWS_AT_FIRST, BenchState
from gui.controls.telling import tell
from gui.style.palette import Space, set_role

__all__ = ["LookPanel"]

MOST_OF_HEIGHT = 0.45  # of the screen, for the list when it is unfolded
FOLDED_OF_HEIGHT = 0.32
FEWER_ROWS = (33, 31)  # lines of text: under each a row less, so that a row of tiles is seen whole
ROOMY_LINES = 28  # of text on the screen; with fewer the list says less
ROOMY_ALONE = 16


class LookPanel(QWidget):
    """The look list with its title and its note."""

    opened = Signal(object)  # Look
    fold_wanted = Signal()
    answered = Signal(object, str)  # the look, "seen" or "tomorrow"
    history_wanted = Signal()
    kind_wanted = Signal(str)  # a medium

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._state = BenchState()
        self._alone = False
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.looks = LookList(self)
        self.looks.setAccessibleName(self.tr("What needs a look"))
        self.looks.opened.connect(self.opened)
        self.detail = LookDetail(self)
        self.detail.answered.connect(self.answered)
        self.detail.history_wanted.connect(self.history_wanted)
        self.detail.kind_wanted.connect(self.kind_wanted)
        self.looks.look_changed.connect(self.detail.show_look)
        self.looks.seen_wanted.connect(self.detail.say_seen)
        self.looks.tomorrow_wanted.connect(self.detail.say_tomorrow)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.XS)
        column.addLayout(self._make_head())
        self._sheet = self._make_sheet()
        column.addWidget(self._sheet)

    def _make_head(self) -> QHBoxLayout:
        self.title = QLabel(self)
        set_role(self.title, "title")
        self._soft = QLabel(self)
        set_role(self._soft, "soft")
        self.unfold = QPushButton(self)
        set_role(self.unfold, "rack-quiet")
        self.unfold.clicked.connect(self.fold_wanted)
        self.history = QPushButton(self.tr("What went away"), self)
        self.history.setToolTip(self.tr("What stood here before, and why it went away"))
        set_role(self.history, "rack-quiet")
        self.history.clicked.connect(self.history_wanted)
        row = QHBoxLayout()
        row.setSpacing(Space.M)
        row.addWidget(self.title)
        row.addWidget(self._soft)
        row.addStretch(1)
        row.addWidget(self.unfold)
        row.addWidget(self.history)
        return row

    def _make_sheet(self) -> QFrame:
        sheet = QFrame(self)
        set_role(sheet, "sheet")
        self._hairline = QFrame(sheet)
        set_role(self._hairline, "line")
        self.note = QLabel(sheet)  # over the whole width: what it takes in height the rack below lacks
        self.note.setWordWrap(True)
        self.note.setTextFormat(Qt.TextFormat.PlainText)
        self.note.setContentsMargins(Space.L, Space.S, Space.L, Space.S)
        column = QVBoxLayout(sheet)
        column.setContentsMargins(1, 1, 1, 1)
        column.setSpacing(0)
        for part in (self.looks, self._hairline, self.detail, self.note):
            column.addWidget(part)
        return sheet

    def show_state(self, state: BenchState) -> None:
        """Show this, whatever was shown before."""
        self._state = state
        count = state.trays_to_look_at
        self.title.setText(self._title(count, unknown=state.no_photos or state.coming))
        self._soft.setText(self.tr("most urgent first") if count else "")
        self.looks.show_looks(state.looks)
        self.looks.setVisible(count > 0)
        self._say(self._words(state), "small" if state.looks else "soft")
        self._hairline.setVisible(count > 0)
        self.detail.setVisible(count > 0)
        self.history.setVisible(count == 0 and not state.no_photos)  # beside a look its detail has it
        self.title.setVisible(not self._alone)
        self._soft.setVisible(not self._alone)
        self.unfold.setVisible(len(state.looks) > ROWS_AT_FIRST and not self._alone)
        all_of_them = self.tr("Show all {count}").format(count=len(state.looks))
        self.unfold.setText(all_of_them if state.hidden_looks else self.tr("Show fewer"))

    def _title(self, count: int, *, unknown: bool) -> str:
        if count == 1:
            return self.tr("1 tray needs a look")
        if count > 1:
            return self.tr("{count} trays need a look").format(count=count)
        return self.tr("What needs a look") if unknown else self.tr("Nothing needs a look")

    def _words(self, state: BenchState) -> str:
        if state.looks:
            return state.caution or ""
        if state.coming:
            return self.tr("Photos are being scored; what needs a look comes up here as soon as it is known.")
        if state.no_photos:
            return self.tr(
                "Photograph your trays from above and bring the photos in. Trays that lag, grow unevenly or "
                "may carry mold are then named here, with the numbers behind it and what to do first."
            )
        return self.tr(
            "No tray lags, has lasting gaps or shows a patch that may be mold in its newest photo. "
            "Still walk along the rack: no flag is no proof that a tray is safe."
        )

    def _say(self, words: str, role: str) -> None:
        tell(self.note, words, role)
        self.note.setVisible(bool(words))

    def say_trouble(self, sentence: str) -> None:
        """Say in place why the book could not be read, in words that can be copied."""
        self.note.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._say(sentence, "alarm")

    def fit(self, height: int) -> None:
        """Be as high as the rows need; of a screen of `height` px the rack below keeps the larger part."""
        self.detail.be_brief(height < ROOMY_LINES * self.fontMetrics().height())
        if not self._state.looks:
            return
        unfolded = self._state.all_looks
        lines = height / self.fontMetrics().height()
        rows = ROWS_AT_FIRST - sum(lines < limit for limit in FEWER_ROWS)
        wanted = self.looks.height_of_rows(None if unfolded else rows)
        share = MOST_OF_HEIGHT if unfolded else FOLDED_OF_HEIGHT
        least = self.looks.height_of_rows(1)
        self.looks.setFixedHeight(max(least, min(wanted, int(height * share))))

    def be_alone(self, alone: bool) -> None:
        """With the rack beside it or not: alone it needs no title, and lists everything."""
        if alone != self._alone:
            self._alone = alone
            self.show_state(self._state)

    def fit_alone(self, height: int) -> None:
        """Fill `height` px, as far as there are rows."""
        self.detail.be_brief(height < ROOMY_ALONE * self.fontMetrics().height())
        layout = self.layout()
        if not self._state.looks or layout is None:
            return
        for inner in (self.detail.layout(), self._sheet.layout(), layout):  # words may have changed just now
            if inner is not None:
                inner.activate()
        others = layout.totalHeightForWidth(self.width()) - self.looks.height()
        wanted, least = self.looks.height_of_rows(), self.looks.height_of_rows(1)
        self.looks.setFixedHeight(max(least, min(wanted, height - others)))
