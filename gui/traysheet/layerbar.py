"""Layer bar: what is drawn over the picture, and whether the picture is the top view or the photo.

In    the layers that are on
Out   `layer_switched` with a layer, `photo_wanted` with True for the photo as taken
Not   drawing (`photo/layers.py`)
"""

from collections.abc import Callable

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QColor, QIcon, QPainter, QPen, QPixmap, QPolygonF
from PySide6.QtWidgets import QPushButton, QWidget

from gui.controls.flow import Flow
from gui.photo.layers import CANOPY, GAPS, SUSPECTS, Layer
from gui.style.palette import set_role

__all__ = ["LayerBar"]

RATIO = 2  # device pixels of the small drawings


class LayerBar(QWidget):
    """A button a layer, each with the line that it draws."""

    layer_switched = Signal(object)  # Layer
    photo_wanted = Signal(bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.photo = self._make_photo()
        self.layers = {layer: self._make_layer(layer, number) for number, layer in enumerate(Layer, start=1)}
        row = Flow(self)
        for button in (self.photo, *self.layers.values()):
            button.setCheckable(True)
            button.setIconSize(QSize(22, 16))
            set_role(button, "switch")
            row.addWidget(button)

    def _make_photo(self) -> QPushButton:
        made = QPushButton(self.tr("Photo"), self)
        made.setToolTip(self.tr("The photo as it was taken, instead of the view from straight above (V)"))
        made.setIcon(_photo_icon())
        made.toggled.connect(self.photo_wanted)
        return made

    def _make_layer(self, layer: Layer, key: int) -> QPushButton:
        words, about = {
            Layer.CANOPY: (self.tr("Canopy"), self.tr("Outline of the canopy")),
            Layer.GAPS: (self.tr("Gaps"), self.tr("Bare pieces of at least 4 cm², hatched")),
            Layer.CELLS: (self.tr("Cells"), self.tr("Coverage of each cell in %")),
            Layer.SUSPECTS: (self.tr("Suspects"), self.tr("Rings around what may be mold")),
        }[layer]
        made = QPushButton(words, self)
        made.setIcon(_swatch(layer))
        made.setToolTip(self.tr("{what} ({key}; Space: all)").format(what=about, key=key))
        made.setProperty("layer", str(layer))
        made.clicked.connect(self._clicked)
        return made

    def show_layers(self, shown: frozenset[Layer]) -> None:
        """Press the buttons of these layers."""
        for layer, button in self.layers.items():
            button.setChecked(layer in shown)

    @Slot()
    def _clicked(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.layer_switched.emit(Layer(str(button.property("layer"))))


def _swatch(layer: Layer) -> QIcon:
    """The layer's own line on a dark ground: the button is the legend as well."""
    return _drawn(lambda painter: _draw(painter, layer))


def _photo_icon() -> QIcon:
    """A tray seen at a slant."""

    def draw(painter: QPainter) -> None:
        painter.setPen(QPen(QColor("#FFFFFF"), 1.6))
        painter.drawPolygon(QPolygonF([QPointF(7, 4), QPointF(17, 4.5), QPointF(19, 12), QPointF(3, 12.5)]))

    return _drawn(draw)


def _drawn(draw: Callable[[QPainter], None]) -> QIcon:
    """As plain while the layer is off: a faint line would not be seen (WCAG 2.2, 1.4.11)."""
    picture = QPixmap(22 * RATIO, 16 * RATIO)
    picture.setDevicePixelRatio(RATIO)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(12, 16, 14))
    painter.drawRoundedRect(QRectF(0, 0, 22, 16), 3, 3)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    draw(painter)
    painter.end()
    return QIcon(picture)


def _draw(painter: QPainter, layer: Layer) -> None:
    if layer is Layer.CANOPY:
        painter.setPen(QPen(CANOPY, 2))
        painter.drawEllipse(QRectF(4, 3.5, 14, 9))
    elif layer is Layer.GAPS:
        painter.setPen(QPen(GAPS, 2))
        for x in (2, 8, 14):
            painter.drawLine(x, 13, x + 7, 3)
    elif layer is Layer.CELLS:
        painter.setPen(QPen(QColor("#FFFFFF"), 1.2))
        for x in (7, 14):
            painter.drawLine(x, 2, x, 14)
        painter.drawLine(2, 8, 20, 8)
    else:
        dashed = QPen(SUSPECTS, 2.2)
        dashed.setDashPattern([2.2, 1.4])
        painter.setPen(dashed)
        painter.drawEllipse(QRectF(5.5, 2.5, 11, 11))
