"""Mend desk: the canopy of one photo, mended with a brush, kept or left as it was.

In    the top view of a photo and its canopy as it was scored
Out   `kept` with the photo's id and the canopy; what was painted waits here while other days are looked at
Not   loading and keeping (`traysheet/mendpage.py`), strokes (`canopymask.py`), painting (`brushview.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from data.records import PhotoId
from gui.controls.flow import Flow
from gui.controls.zoombar import ZoomBar
from gui.language.spoken import filled
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

RADII_MM = (1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0)
FIRST_RADIUS = 4  # of `RADII_MM`
ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
CTRL = Qt.KeyboardModifier.ControlModifier
WAITING = 4  # photos whose strokes are remembered while others are looked at


class MendDesk(QWidget):
    """A view, a row for the brush, a row for the decision."""

    kept = Signal(int, object)  # photo id, canopy bool (508, 1016)
    changed = Signal()  # a stroke more or less

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.photo_id: PhotoId | None = None
        self._waiting: dict[PhotoId, CanopyMask] = {}
        self._size = FIRST_RADIUS
        self._busy = False
        self.view = BrushView(self)
        self.view.stroked.connect(self._show_numbers)
        self.view.size_wanted.connect(self.resize_brush)
        self.view.mode_wanted.connect(self.choose)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.view, 1)
        self._tools, self._decision = self._make_tools(), self._make_decision()
        column.addWidget(self._tools)
        column.addWidget(self._decision)
        self.choose(True)
        self._show_numbers()

    # --- making

    def _make_tools(self) -> QWidget:
        tools = QWidget(self)
        row = Flow(tools)
        self.brush = self._switch(tools, self.tr("Brush"), self.tr("Paint canopy where it is (B)"))
        self.eraser = self._switch(tools, self.tr("Eraser"), self.tr("Take canopy away where none is (E)"))
        self.brush.clicked.connect(self._choose_brush)
        self.eraser.clicked.connect(self._choose_eraser)
        self.smaller = self._plain(tools, "−", self.tr("A smaller brush ([)"), self.tr("Smaller brush"))
        self.width_words = QLabel(tools)
        self.larger = self._plain(tools, "+", self.tr("A larger brush (])"), self.tr("Larger brush"))
        self.smaller.clicked.connect(self._smaller)
        self.larger.clicked.connect(self._larger)
        self.undo = self._plain(
            tools, self.tr("Back"), self.tr("Take the last stroke back (Ctrl+Z)"), self.tr("Stroke back")
        )
        self.redo = self._plain(
            tools, self.tr("Again"), self.tr("Do it again (Ctrl+Shift+Z)"), self.tr("Stroke again")
        )
        self.undo.clicked.connect(self.view.undo)
        self.redo.clicked.connect(self.view.redo)
        for part in (
            self.brush,
            self.eraser,
            self.smaller,
            self.width_words,
            self.larger,
            self.undo,
            self.redo,
        ):
            row.addWidget(part)
        self.zoom = ZoomBar(self.view, tools)
        row.addWidget(self.zoom)
        return tools

    def _make_decision(self) -> QWidget:
        foot = QWidget(self)
        self.numbers = wrapped("", foot)
        self.leave = self._plain(
            foot,
            self.tr("Leave as it was"),
            self.tr("Forget the strokes; the canopy stays as it is (Esc). Ctrl+Z brings them back"),
        )
        self.keep = self._plain(
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

    def _switch(self, parent: QWidget, words: str, tip: str) -> QPushButton:
        button = QPushButton(words, parent)
        button.setCheckable(True)
        button.setToolTip(tip)
        set_role(button, "switch")
        return button

    def _plain(self, parent: QWidget, words: str, tip: str, name: str = "") -> QPushButton:
        button = QPushButton(words, parent)
        button.setToolTip(tip)
        button.setAccessibleName(name or words)
        set_role(button, "rack")
        return button

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [
            self.view, self.brush, self.eraser, self.smaller, self.larger, self.undo, self.redo,
            *self.zoom.stops(), self.leave, self.keep,
        ]  # fmt: skip

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

    # --- the brush

    @Slot(bool)
    def choose(self, paints: bool) -> None:
        """Brush or eraser."""
        self.brush.setChecked(paints)
        self.eraser.setChecked(not paints)
        self.view.set_brush(RADII_MM[self._size], paints=paints)

    @Slot()
    def _choose_brush(self) -> None:
        self.choose(True)

    @Slot()
    def _choose_eraser(self) -> None:
        self.choose(False)

    @Slot(int)
    def resize_brush(self, steps: int) -> None:
        """Larger or smaller by so many steps."""
        self._size = min(len(RADII_MM) - 1, max(0, self._size + steps))
        self.view.set_brush(RADII_MM[self._size], paints=self.view.paints)
        self._show_numbers()

    @Slot()
    def _smaller(self) -> None:
        self.resize_brush(-1)

    @Slot()
    def _larger(self) -> None:
        self.resize_brush(1)

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
        self._tools.setVisible(shown)
        self._decision.setVisible(shown)

    def busy(self, is_busy: bool) -> None:
        """While it is measured again nothing more is painted."""
        self._busy = is_busy
        self.view.setEnabled(not is_busy)
        self._show_numbers()

    @Slot()
    def _show_numbers(self) -> None:
        mask = self.view.canopy
        self.width_words.setText(filled(self.tr("{width:g} mm wide"), width=2 * RADII_MM[self._size]))
        self.smaller.setEnabled(self._size > 0)
        self.larger.setEnabled(self._size < len(RADII_MM) - 1)
        self.undo.setEnabled(mask is not None and mask.can_undo)
        self.redo.setEnabled(mask is not None and mask.can_redo)
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
