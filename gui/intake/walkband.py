"""Walk band: the trays that the order of the walk proposes, confirmed a shelf of the rack at a time.

In    `WalkShelf`s
Out   `confirmed` with photos and their trays, `only` with the photos to be shown
Not   proposing (`data/photos/walk.py`), confirming all at once (`photolist.py`), changing the book
      (`screen.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QWidget

from gui.controls.questionband import QuestionBand
from gui.intake.walkview import WalkShelf
from gui.language.plainbutton import plain_button
from gui.language.spoken import begun
from gui.style.palette import set_role

__all__ = ["WalkBand"]


class WalkBand(QuestionBand):
    """One shelf at a time; the next one follows."""

    confirmed = Signal(object)  # {photo id: tray id}
    only = Signal(object)  # photo ids, None for all

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("ask-calm", parent)
        self._shelves: tuple[WalkShelf, ...] = ()
        self._place = 0
        self.yes = self.add_answer("", self._confirm, main=True)
        self.yes.setToolTip(self.tr("Match these photos by the order of your walk; undo takes it back"))
        self.look = self.add_answer(self.tr("Show only this shelf"), self._look)
        self.look.setCheckable(True)
        set_role(self.look, "switch")
        self.following = self.add_answer(self.tr("Next shelf"), self._next)
        self.following.setToolTip(self.tr("Leave this shelf for later; it comes again"))

    @property
    def shelf(self) -> WalkShelf | None:
        """The one that is asked about."""
        return self._shelves[self._place] if self._shelves else None

    def show_shelves(self, shelves: Sequence[WalkShelf]) -> bool:
        """Ask about these, the same one as before where it is still there; whether there is one."""
        before, self._shelves = self.shelf, tuple(shelves)
        keys = [one.key for one in self._shelves]
        if before is not None and before.key in keys:
            self._place = keys.index(before.key)
        else:
            self._place = min(self._place, max(0, len(keys) - 1))  # the one after it has moved up
        self._show()
        return self.shelf is not None

    def _show(self) -> None:
        shelf = self.shelf
        if shelf is None:
            self._place = 0
            if self.look.isChecked():
                self.look.setChecked(False)
                self.only.emit(None)
            return
        title = begun(shelf.name)
        if len(self._shelves) > 1:
            title = self.tr("{shelf} ({n} of {count})").format(
                shelf=title, n=self._place + 1, count=len(self._shelves)
            )
        self.say(
            title, self.tr("No tag was read. By the order of your walk: {what}").format(what=shelf.words)
        )
        name = plain_button(shelf.name)
        self.yes.setText(self.tr("Yes, {shelf}").format(shelf=name))
        self.following.setVisible(len(self._shelves) > 1)
        if self.look.isChecked():
            self._look(True)

    @Slot()
    def _confirm(self) -> None:
        if self.shelf is not None:
            self.confirmed.emit(dict(self.shelf.photos))

    @Slot()
    def _next(self) -> None:
        self._place = (self._place + 1) % max(1, len(self._shelves))
        self._show()

    @Slot(bool)
    def _look(self, looks: bool) -> None:
        shelf = self.shelf
        self.only.emit(None if shelf is None or not looks else frozenset(photo for photo, _ in shelf.photos))
