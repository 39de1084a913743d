"""Mend desk: the canopy of one photo, mended with a brush, kept or left as it was.

In    the top view of a photo and its canopy as it was scored
Out   `kept` with the photo's id and the canopy; what was painted waits here while other days are looked at
Not   loading and keeping (`traysheet/mendpage.py`), the brush (`brushtools.py`), strokes
      (`canopymask.py`), painting (`brushview.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from data.records import PhotoId
from gui.language.spoken import filled
from gui.mend.brushtools import BrushTools, tool_button
from gui.mend.brushview import BrushView
from gui.mend.canopymask import CanopyMask
from gui.mend.veil import veil_of
from gui.photo.mips import Mips
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

__all__ = ["MendDesk"]

ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
CTRL = Qt.KeyboardModifier.ControlModifier
WAITING = 4  # photos whose strokes are remembered while others are looked at


class MendDesk(QWidget):
    """A view, the brush's tools, a row for the decision."""

    kept = Signal(int, object)  # photo id, canopy bool (508, 1016)
    changed = Signal()  # a stroke more or less

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.photo_id: PhotoId | None = None
        self._waiting: dict[PhotoId, CanopyMask] = {}
        self._busy = False
        self.view = BrushView(self)
        self.tools = BrushTools(self.view, self)
        self.view.stroked.connect(self._show_numbers)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.view, 1)
        self._decision = self._make_decision()
        column.addWidget(self.tools)
        column.addWidget(self._decision)
        self._show_numbers()

    # --- making

    def _make_decision(self) -> QWidget:
        foot = QWidget(self)
        self.numbers = wrapped("", foot)
        self.leave = tool_button(
            foot,
            self.tr("Leave as it was"),
            self.tr("Forget the strokes; the canopy stays as it is (Esc). Ctrl+Z brings them back"),
        )
        self.keep = tool_button(
            foot,
            self.tr("Keep this canopy"),
            self.tr("Measure the tray again with this canopy (Ctrl+Enter); Ctrl+Z takes it back"),
        )
        set_role(self.keep, "rack-main")
        self.leave.clicked.connect(self.forget)
        self.keep.clicked.connect(self._keep)
        row = QHBoxLayout(foot)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        row.addWidget(self.numbers, 1)
        row.addWidget(self.leave)
        row.addWidget(self.keep)
        return foot

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [self.view, *self.tools.stops(), self.leave, self.keep]

    # --- which photo

    def show_photo(
        self,
        photo_id: PhotoId,
        mips: Mips,
        canopy: "NDArray[np.bool_]",
        veil: "NDArray[np.uint8] | None" = None,
        px_per_mm: float = 2.0,
    ) -> None:
        """Begin with this canopy and its veil; strokes made earlier on the same canopy are there again."""
        self._set_aside()
        waiting = self._waiting.pop(photo_id, None)
        fits = waiting is not None and bool((waiting.scored == canopy).all())
        self.photo_id = photo_id
        self.view.px_per_mm = px_per_mm
        mask = waiting if waiting is not None and fits else CanopyMask(canopy)
        self.view.show_canopy(mips, mask, veil_of(canopy) if veil is None else veil)
        self._show_numbers()

    def show_none(self, message: str) -> None:
        """There is nothing to mend, or not yet."""
        self._set_aside()
        self.photo_id = None
        self.view.show_canopy(None, None, None, message)
        self._show_numbers()

    def forget_all(self) -> None:
        """Another book: no strokes of this one."""
        self._waiting.clear()
        self.photo_id = None
        self.view.show_canopy(None, None, None)
        self._show_numbers()

    def _set_aside(self) -> None:
        mask = self.view.canopy
        if self.photo_id is not None and mask is not None and (mask.is_changed or mask.can_undo):
            self._waiting[self.photo_id] = mask
            while len(self._waiting) > WAITING:
                self._waiting.pop(next(iter(self._waiting)))

    def forget_photo(self, photo_id: PhotoId) -> None:
        """The strokes of this photo, whether it is shown or waits; those of others stay."""
        self._waiting.pop(photo_id, None)
        if self.photo_id == photo_id:
            self.forget()

    @property
    def has_strokes(self) -> bool:
        """Whether something is painted that is not kept."""
        return self.view.canopy is not None and self.view.canopy.is_changed

    @property
    def strokes_wait(self) -> bool:
        """Whether something is painted and not kept, on this photo or on one looked at before."""
        return self.has_strokes or any(mask.is_changed for mask in self._waiting.values())

    # --- the decision

    @Slot()
    def forget(self) -> None:
        """The canopy as it was scored."""
        self.view.forget()

    @Slot()
    def _keep(self) -> None:
        if self.photo_id is not None and self.view.canopy is not None and self.has_strokes:
            self.kept.emit(int(self.photo_id), self.view.canopy.now.copy())

    def show_decision(self, shown: bool) -> None:
        """The brush and what is decided with it; hidden where there is nothing to decide."""
        self.tools.setVisible(shown)
        self._decision.setVisible(shown)

    def busy(self, is_busy: bool) -> None:
        """While it is measured again nothing more is painted."""
        self._busy = is_busy
        self.view.setEnabled(not is_busy)
        self._show_numbers()

    @Slot()
    def _show_numbers(self) -> None:
        mask = self.view.canopy
        self.tools.show_strokes(mask)
        changed = self.has_strokes and not self._busy
        self.keep.setEnabled(changed)
        self.leave.setEnabled(changed)
        if mask is None:
            self.numbers.clear()
        elif self._busy:
            self.numbers.setText(self.tr("Measuring the tray again ..."))
        elif changed:
            words = self.tr("Coverage {before:.1f} % before, {now:.1f} % with your strokes")
            self.numbers.setText(filled(words, before=mask.coverage_before, now=mask.coverage))
        else:
            words = self.tr("Coverage {before:.1f} %. Striped is what counts as bare.")
            self.numbers.setText(filled(words, before=mask.coverage_before))
        self.view.describe(self.numbers.text())
        self.changed.emit()

    # --- keys that work wherever the focus is on the page

    def event(self, event: QEvent) -> bool:
        """While there are strokes, Ctrl+Z is for them and not for the book."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            mask = self.view.canopy
            undo = event.matches(QKeySequence.StandardKey.Undo) and mask is not None and mask.can_undo
            redo = event.matches(QKeySequence.StandardKey.Redo) and mask is not None and mask.can_redo
            if undo or redo:
                event.accept()
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Strokes back and again, keep, leave; the brush's own keys from anywhere on the page."""
        if event.matches(QKeySequence.StandardKey.Undo):
            self.view.undo()
        elif event.matches(QKeySequence.StandardKey.Redo):
            self.view.redo()
        elif event.matches(QKeySequence.StandardKey.Cancel) and self.has_strokes:
            self.forget()
        elif event.key() in ENTERS and event.modifiers() & CTRL:
            self._keep()
        elif not self.view.take_key(event):
            super().keyPressEvent(event)
