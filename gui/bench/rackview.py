"""Rack view: the trays shelf by shelf, tiles with a heading a shelf; 2,000 trays scroll.

In    a `TileModel`, the names of the shelves with how many trays stand on each
Out   `tray_chosen` with the tray's id, by click or Enter; `chosen` trays, one or several at once
Not   what a tile looks like (`tilepainter.py`), where it stands (`shelves.py`), where a key leads
      (`racksteps.py`)
"""

from PySide6.QtCore import (
    QEvent,
    QItemSelection,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    QRect,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QColor, QHoverEvent, QKeyEvent, QPainter, QPaintEvent, QRegion, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QListView,
    QStyle,
    QStyleOptionViewItem,
    QWidget,
)

from data.records import Tile
from gui.bench.rack import RackState
from gui.bench.racksteps import Move, stepped
from gui.bench.shelfhead import paint_head
from gui.bench.shelves import Box, ShelfPlan, plan_shelves
from gui.bench.tilemodel import STANDING, TileModel
from gui.bench.tilepainter import TilePainter, tile_size
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import Space, set_role, tokens_now

__all__ = ["RackView"]

MARKS = QStyle.StateFlag.State_HasFocus | QStyle.StateFlag.State_MouseOver | QStyle.StateFlag.State_Selected


class RackView(QListView):
    """One view for the whole rack; a list for screen readers, laid out in its own way."""

    tray_chosen = Signal(int)
    choice_changed = Signal()

    def __init__(self, thumbnails: Thumbnails, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shelves: tuple[tuple[str, int], ...] = ()
        self._plan = ShelfPlan(
            counts=(), firsts=(), tops=(), columns=1, tile_width=1, tile_height=1,
            head_height=0, gap=0, width=0, height=0,
        )  # fmt: skip
        self._tiles = TileModel(self)
        self._hovered = QPersistentModelIndex()
        painter = TilePainter(self)
        painter.picture_of = thumbnails.get
        thumbnails.arrived.connect(self.viewport().update)
        self.setModel(self._tiles)
        self.setItemDelegate(painter)
        set_role(self, "plain")
        self.setVerticalScrollMode(self.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        self.setSelectionMode(self.SelectionMode.ExtendedSelection)
        self.setToolTip(
            self.tr(
                "Click or Enter: open the tray. Space, Ctrl or Shift: choose several to note something of"
            )
        )
        self.setTabKeyNavigation(False)
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)  # so that scrolling moves pixels
        self.setMouseTracking(True)
        self.clicked.connect(self._choose)
        self.activated.connect(self._choose_by_key)
        self.selectionModel().selectionChanged.connect(self._chosen_anew)

    def show_rack(self, state: RackState) -> None:
        """Show these trays; the one that had the focus keeps it if it is still there."""
        current = self.currentIndex().data(STANDING)
        self._shelves = state.shelves
        if self._tiles.show(state.standings):
            self._lay_out()
            row = None if current is None else self._tiles.row_of(current.id)
            if row is not None:
                self.setCurrentIndex(self._tiles.index(row))
        elif self._plan.counts != tuple(count for _, count in self._shelves):
            self._lay_out()
        self.viewport().update()

    def _lay_out(self) -> None:
        width = self.viewport().width()
        self._plan = plan_shelves([count for _, count in self._shelves], width, tile_size(self.font()))
        self.updateGeometries()
        self.viewport().update()

    @property
    def chosen(self) -> tuple[Tile, ...]:
        """The trays that are chosen, in the order of the rack."""
        rows = sorted(index.row() for index in self.selectedIndexes())
        return tuple(self._tiles.index(row).data(STANDING).tile for row in rows)

    def choose_next(self) -> None:
        """Choose the tray after the current one; behind the last one none."""
        row = self.currentIndex().row() + 1
        if row < self._tiles.rowCount():
            self.setCurrentIndex(self._tiles.index(row))
        else:
            self.clearSelection()

    @Slot()
    def _chosen_anew(self) -> None:
        self.viewport().update()
        self.choice_changed.emit()

    @Slot(QModelIndex)
    def _choose(self, index: QModelIndex) -> None:
        several = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        if index.isValid() and not QApplication.keyboardModifiers() & several:
            self.tray_chosen.emit(index.data(STANDING).id)

    @Slot(QModelIndex)
    def _choose_by_key(self, index: QModelIndex) -> None:
        if not self._by_mouse():
            self._choose(index)

    def _by_mouse(self) -> bool:
        """Some styles activate by the click that `clicked` tells already."""
        hint = self.style().styleHint(QStyle.StyleHint.SH_ItemView_ActivateItemOnSingleClick, None, self)
        return bool(hint)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens, Space chooses; the rest is the view's."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._by_mouse():
            self._choose(self.currentIndex())
            return
        if event.key() == Qt.Key.Key_Space:
            toggle = QItemSelectionModel.SelectionFlag.Toggle
            self.selectionModel().select(self.currentIndex(), toggle)
            return
        super().keyPressEvent(event)

    # --- what Qt asks of every view

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay out anew in the new width."""
        super().resizeEvent(event)
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        """Lay out anew at another text size."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._lay_out()

    def updateGeometries(self) -> None:
        """Tell the scroll bar how far it goes."""
        bar, height = self.verticalScrollBar(), self.viewport().height()
        bar.setRange(0, max(0, self._plan.height - height))
        bar.setPageStep(height)
        bar.setSingleStep(max(20, self._plan.tile_height // 3))
        QAbstractItemView.updateGeometries(self)  # the list's own would measure its own layout

    def doItemsLayout(self) -> None:
        """Lay out shelf by shelf, not as a list would."""
        self._lay_out()

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        """Move what is painted; only what is new is painted again."""
        self.viewport().scroll(dx, dy)

    def horizontalOffset(self) -> int:
        """Nothing scrolls sideways."""
        return 0

    def verticalOffset(self) -> int:
        """How far the rack is scrolled, px."""
        return self.verticalScrollBar().value()

    def visualRect(self, index: QModelIndex | QPersistentModelIndex) -> QRect:
        """Where a tile is in the viewport."""
        if not index.isValid() or not self._plan.counts:
            return QRect()
        return self._on_screen(self._plan.tile(index.row()))

    def _on_screen(self, box: Box) -> QRect:
        return QRect(box.x, box.y - self.verticalOffset(), box.width, box.height)

    def indexAt(self, point: QPoint) -> QModelIndex:
        """The tile under a point of the viewport."""
        number = self._plan.at(point.x(), point.y() + self.verticalOffset()) if self._plan.counts else None
        return QModelIndex() if number is None else self._tiles.index(number)

    def scrollTo(
        self,
        index: QModelIndex | QPersistentModelIndex,
        hint: QAbstractItemView.ScrollHint = QAbstractItemView.ScrollHint.EnsureVisible,
    ) -> None:
        """Bring a tile into view, with its shelf's name where it is the first row."""
        if not index.isValid() or not self._plan.counts:
            return
        box = self._plan.tile(index.row())
        top, bottom = box.y - self._plan.head_height, box.y + box.height + Space.XS
        bar, height = self.verticalScrollBar(), self.viewport().height()
        if top < bar.value() or height < bottom - top:
            bar.setValue(top)
        elif bottom > bar.value() + height:
            bar.setValue(bottom - height)

    def moveCursor(self, action: Move, modifiers: Qt.KeyboardModifier) -> QModelIndex:
        """The tile to which a key leads."""
        count = self._tiles.rowCount()
        if count == 0:
            return QModelIndex()
        current = self.currentIndex()
        if not current.isValid():
            return self._tiles.index(0)
        rows = max(1, self.viewport().height() // (self._plan.tile_height + self._plan.gap))
        return self._tiles.index(stepped(self._plan, action, current.row(), count, rows))

    def isIndexHidden(self, index: QModelIndex | QPersistentModelIndex) -> bool:
        """No tile is hidden."""
        return False

    def setSelection(self, rect: QRect, command: QItemSelectionModel.SelectionFlag) -> None:
        """Select the tiles that a rectangle of the viewport touches, and those between its two ends."""
        selection = QItemSelection()
        ends = [self.indexAt(point) for point in (rect.topLeft(), rect.bottomRight(), rect.center())]
        rows = [index.row() for index in ends if index.isValid()]
        if rows:
            selection.select(self._tiles.index(min(rows)), self._tiles.index(max(rows)))
        self.selectionModel().select(selection, command)

    def visualRegionForSelection(self, selection: QItemSelection) -> QRegion:
        """Where the selected tiles are."""
        region = QRegion()
        for index in selection.indexes():
            region = region.united(self.visualRect(index))
        return region

    def sizeHint(self) -> QSize:
        """Two rows of tiles."""
        return QSize(900, 2 * (self._plan.tile_height + self._plan.gap))

    def viewportEvent(self, event: QEvent) -> bool:
        """Follow the pointer, to show which tile it is over."""
        if isinstance(event, QHoverEvent):
            leaving = event.type() == QEvent.Type.HoverLeave
            index = QModelIndex() if leaving else self.indexAt(event.position().toPoint())
            if QPersistentModelIndex(index) != self._hovered:
                self.viewport().update(self.visualRect(self._hovered))
                self._hovered = QPersistentModelIndex(index)
                self.viewport().update(self.visualRect(index))
        return super().viewportEvent(event)

    # --- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint what lies in the exposed part, nothing else."""
        painter = QPainter(self.viewport())
        offset, exposed = self.verticalOffset(), event.rect()
        painter.fillRect(exposed, QColor(tokens_now().ground))
        if not self._plan.counts:
            return
        top, bottom = exposed.top() + offset, exposed.bottom() + offset
        for shelf in self._plan.shelves_between(top, bottom):
            paint_head(painter, self._on_screen(self._plan.head(shelf)), self.font(), *self._shelves[shelf])
        option = QStyleOptionViewItem()
        self.initViewItemOption(option)
        plain = option.state & ~MARKS
        for row in self._plan.between(top, bottom):
            index = self._tiles.index(row)
            option.rect = self.visualRect(index)
            option.state = plain | self._marks(index)
            self.itemDelegate().paint(painter, option, index)

    def _marks(self, index: QModelIndex) -> QStyle.StateFlag:
        """Whether a tile has the focus, is chosen, and lies under the pointer."""
        marks = QStyle.StateFlag(0)
        if self.hasFocus() and index == self.currentIndex():
            marks |= QStyle.StateFlag.State_HasFocus
        if self.selectionModel().isSelected(index):
            marks |= QStyle.StateFlag.State_Selected
        if self._hovered == index:
            marks |= QStyle.StateFlag.State_MouseOver
        return marks
