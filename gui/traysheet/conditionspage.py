"""Conditions page: how a tray grows, to be corrected where it stands.

In    the tray that is looked at
Out   other conditions in the book, one step of undo
Not   the fields (`trayform.py`), giving them to more trays (`trays/moretrays.py`), adding trays
      (`trays/newtray.py`)
"""

from dataclasses import fields, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from data.errors import BookError
from data.growing.conditions import as_new
from data.records import NewTray, Tray, TrayId
from gui.controls.flow import Flow
from gui.controls.rolling import roll_down
from gui.controls.telling import tell
from gui.language.spoken import spoken
from gui.mishap import trouble_words
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.trays.moretrays import MoreTrays
from gui.traysheet.page import SheetPage
from gui.traysheet.trayform import TrayForm, Trouble
from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["ConditionsPage"]

CTRL = Qt.KeyboardModifier.ControlModifier


class ConditionsPage(SheetPage):
    """Fields that scroll, and the buttons below."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._drafts: dict[TrayId, tuple[Tray, NewTray]] = {}
        self._still_typed: dict[str, Any] = {}  # while some of it was given to more trays
        self._others = MoreTrays(work, self)
        self._others.given.connect(self._given)
        self._others.failed.connect(self._not_given)
        self._others.stopped.connect(self._given_up)
        self._make_form()
        self.said = wrapped("", self)
        self._make_buttons()
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        ways = Flow()
        for part in (self.usual, self.more):
            ways.addWidget(part)
        row.addLayout(ways, 1)
        for part in (self.leave, self.keep):
            row.addWidget(part, 0, Qt.AlignmentFlag.AlignBottom)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.roll, 1)
        column.addWidget(self.said)
        column.addLayout(row)

    def _make_form(self) -> None:
        self.roll = QScrollArea(self)
        roll_down(self.roll)
        sheet = QFrame(self.roll)
        set_role(sheet, "sheet")
        self.form = TrayForm(sheet)
        self.form.edited.connect(self._edited)
        inner = QVBoxLayout(sheet)
        inner.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        inner.addWidget(self.form)
        inner.addStretch(1)
        self.roll.setWidget(sheet)

    def _make_buttons(self) -> None:
        self.usual = QPushButton(self.tr("Fill in what is usual"), self)
        self.usual.setToolTip(
            self.tr(
                "Fill the empty fields as for the last tray of this crop and medium, or as you said of them"
            )
        )
        self.more = QPushButton(self.tr("For more trays..."), self)
        self.more.setToolTip(
            self.tr(
                "Give blackout, watering and the like to all trays of the trial, of a medium or of a shelf"
            )
        )
        self.leave = QPushButton(self.tr("Leave as it was"), self)
        self.leave.setToolTip(self.tr("Forget what was typed (Esc)"))
        self.keep = QPushButton(self.tr("Keep"), self)
        self.keep.setToolTip(self.tr("Keep these conditions (Ctrl+Enter); Ctrl+Z takes it back"))
        for button, does in (
            (self.usual, self._fill_in),
            (self.more, self._share),
            (self.leave, self._forget),
            (self.keep, self._keep),
        ):
            button.clicked.connect(does)
            set_role(button, "rack")
        set_role(self.keep, "rack-main")

    def show_state(self, state: TrayState) -> None:
        """Show this tray; what is being typed stays while the same conditions stand in the book."""
        before = self.state
        if before is not None and before.tray.id != state.tray.id:
            self._set_aside(before)
        same = before is not None and before.tray == state.tray
        super().show_state(state)
        if self.book is not None and not same:
            self._fill(self.book, state)

    def open_book(self, book: "Book | None") -> None:
        """Nothing typed for a tray of the book before."""
        super().open_book(book)
        self._drafts.clear()

    def _set_aside(self, state: TrayState) -> None:
        """What was typed and not kept is there again when the tray comes back."""
        try:
            if self.changes:
                self._drafts[state.tray.id] = (state.tray, self.form.said())
        except Trouble:
            return  # half a number is no draft

    @property
    def is_typed(self) -> bool:
        """Whether something is typed and not kept, for this tray or for one looked at before."""
        return (self.state is not None and self.leave.isEnabled()) or bool(self._drafts)

    def _fill(self, book: "Book", state: TrayState) -> None:
        try:
            types = [one.name for one in book.tray_types()]
            self.form.show_names(book.crops(), book.media(), types)
        except BookError as error:
            self.troubled.emit(spoken(error))
        kept, draft = self._drafts.pop(state.tray.id, (None, None))
        typed, self._still_typed = self._still_typed, {}
        own = replace(as_new(state.tray), **typed)
        self.form.show_tray(draft if draft is not None and kept == state.tray else own)
        self._edited()

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [*self.form.stops(), self.usual, self.more, self.leave, self.keep]

    def take_focus(self) -> None:
        """The first field."""
        self.form.code.setFocus()

    @property
    def changes(self) -> dict[str, Any]:
        """Fields that say something else than the book; raises `Trouble`."""
        if self.state is None:
            return {}
        said, kept = self.form.said(), as_new(self.state.tray)
        pairs = ((field.name, getattr(said, field.name)) for field in fields(NewTray))
        return {name: value for name, value in pairs if value != getattr(kept, name)}

    # --- what a person does

    @Slot()
    def _edited(self) -> None:
        try:
            changed = bool(self.changes)
        except Trouble as trouble:
            self._say(trouble.words)
            self.keep.setEnabled(False)
            self.leave.setEnabled(True)
            return
        self._say("")
        self._show_doubts(self.form.said())
        if not changed and (self.keep.hasFocus() or self.leave.hasFocus()):
            self.take_focus()  # else it would go to the numbers beside the page
        self.keep.setEnabled(changed)
        self.leave.setEnabled(changed)

    def _show_doubts(self, said: NewTray) -> None:
        """What is out of the ordinary: told, never refused."""
        if self.book is None:
            return
        from data.growing.croptable import doubts_of_tray

        try:
            tray_type = self.book.tray_type(said.tray_type)
        except (KeyError, BookError):
            return
        doubts = doubts_of_tray(said, tray_type, self.book.today())
        if doubts:
            self._say(" ".join(doubts), "notice")

    @Slot()
    def _fill_in(self) -> None:
        if self.book is None:
            return
        try:
            said = self.form.said()
            self.form.fill_in(self.book.tray_of_kind(said.crop, said.medium, said.sown_at))
        except (Trouble, BookError) as error:
            self._refuse(error)

    @Slot()
    def _forget(self) -> None:
        if self.state is not None:
            self.form.show_tray(as_new(self.state.tray))
            self._edited()

    @Slot()
    def _keep(self) -> None:
        if self.book is None or self.state is None:
            return
        try:
            changes = self.changes
            with self.book.together():
                if changes:
                    self.book.edit_tray(self.state.tray.id, **changes)
                if {"tag_number", "sown_at"} & changes.keys():
                    self.book.match_by_tag()
        except (Trouble, BookError) as error:
            self._refuse(error)
            return
        if changes:
            self.told.emit(self.tr("Conditions of {code} kept.").format(code=self.form.code.text().strip()))
            self.book_changed.emit()

    def _refuse(self, error: Trouble | BookError) -> None:
        """Say what is wrong, and go to the field where it is."""
        if isinstance(error, Trouble):
            self._say(error.words)
            error.field.setFocus()
        else:
            self._say(spoken(error))

    # --- for more trays

    @Slot()
    def _share(self) -> None:
        """Ask which conditions other trays have alike, and which trays those are."""
        if self.book is None or self.state is None:
            return
        try:
            said, changed = self.form.said(), self.changes.keys()
            if not self._others.ask(self.book, self.state.tray, said, changed):
                self._say(self.tr("There is no other tray in its trial or on the rack."), "soft")
        except (Trouble, BookError) as error:
            self._refuse(error)

    @Slot(object, int)
    def _given(self, given: frozenset[str], trays: int) -> None:
        try:
            self._still_typed = {name: value for name, value in self.changes.items() if name not in given}
        except Trouble:
            self._still_typed = {}
        words = self.tr("Conditions of {n} trays kept; Ctrl+Z takes it back.")
        self.told.emit(words.format(n=trays) if trays else self.tr("Nothing changed: all have that already."))
        self.book_changed.emit()
        self._still_typed = {}

    @Slot()
    def _given_up(self) -> None:
        self.told.emit(self.tr("Stopped; the conditions of all trays are as they were."))

    @Slot(object)
    def _not_given(self, error: Exception) -> None:
        self._say(trouble_words(error))

    def _say(self, words: str, role: str = "alarm") -> None:
        tell(self.said, words[:1].upper() + words[1:], role)
        self.said.setVisible(bool(words))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Ctrl+Enter keeps, Esc forgets; arrows in a form are for its fields."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and event.modifiers() & CTRL:
            self._keep()
        elif event.key() == Qt.Key.Key_Escape and self.leave.isEnabled():
            self._forget()
        elif event.key() in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown, Qt.Key.Key_Escape):
            event.ignore()
