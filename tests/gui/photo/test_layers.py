import numpy as np
import pytest
from PySide6.QtGui import QFont, QImage, QPainter

from gui.photo.layerpaint import paint_layers
from gui.photo.layers import CANOPY, Layer, Layers, Mark, make_layers
from gui.photo.viewport import Viewport
from vision.stand import Gap
from vision.tissue import Label


def a_square_of_green() -> np.ndarray:
    """Medium everywhere, green from x 100 to 200 and y 50 to 150 of the top view (px)."""
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    labels[50:150, 100:200] = Label.GREEN
    return labels


def painted(layers: Layers, *shown: Layer) -> QImage:
    image = QImage(1016, 508, QImage.Format.Format_RGB32)
    image.fill(0)
    painter = QPainter(image)
    paint_layers(
        painter, layers, frozenset(shown), Viewport(picture=(1016, 508), window=(1016, 508)).fitted(), QFont()
    )
    painter.end()
    return image


def test_the_outline_of_the_canopy_lies_where_the_canopy_ends():
    (outline,) = make_layers(a_square_of_green()).fine

    assert outline.bounds.left() == pytest.approx(100, abs=1)
    assert outline.bounds.right() == pytest.approx(200, abs=1)
    assert outline.bounds.top() == pytest.approx(50, abs=1)


def test_on_a_photo_everything_follows_the_way_into_the_photo():
    moved = np.array([[2.0, 0, 300], [0, 2.0, 100], [0, 0, 1]])

    layers = make_layers(a_square_of_green(), homography=moved)

    assert layers.fine[0].bounds.left() == pytest.approx(2 * 100 + 300, abs=2)
    assert layers.scale == pytest.approx(4.0)


def test_specks_are_not_outlined():
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    labels[10:13, 10:13] = Label.GREEN

    assert make_layers(labels).fine == ()


def test_a_suspect_is_a_ring_around_its_place_in_mm():
    layers = make_layers(None, marks=[Mark(number=1, x_mm=100, y_mm=50, radius_mm=20, word="possible mold")])

    ((_, ring),) = layers.rings
    assert ring.bounds.center().x() == pytest.approx(200)
    assert ring.bounds.width() == pytest.approx(80)


def test_mm_are_those_of_the_trays_own_kind(qapp):
    gap = Gap(x_mm=125, y_mm=125, area_cm2=100, outline_mm=((100, 100), (150, 100), (150, 150)))

    layers = make_layers(None, gaps=[gap], inner_mm=(250.0, 250.0))

    assert layers.gaps[0].bounds.left() == pytest.approx(100 * 1016 / 250)
    assert layers.gaps[0].bounds.top() == pytest.approx(100 * 508 / 250)


def test_only_layers_that_are_switched_on_are_painted(qapp):
    layers = make_layers(a_square_of_green(), cells=[[50.0] * 12] * 6)
    black = painted(layers)

    assert painted(layers, Layer.CANOPY) != black
    assert painted(layers, Layer.GAPS) == black


def test_the_outline_is_painted_in_its_own_colour_at_the_edge(qapp):
    image = painted(make_layers(a_square_of_green()), Layer.CANOPY)

    row = [image.pixelColor(x, 100) for x in range(96, 105)]
    assert any(abs(c.blue() - CANOPY.blue()) < 40 and c.blue() > c.red() + 60 for c in row)


def test_a_gap_is_hatched_so_that_the_picture_below_is_still_seen(qapp):
    gap = Gap(x_mm=250, y_mm=125, area_cm2=25, outline_mm=((200, 100), (300, 100), (300, 150), (200, 150)))

    image = painted(make_layers(None, gaps=[gap]), Layer.GAPS)

    inside = {image.pixel(x, y) & 0xFFFFFF for x in range(420, 580) for y in range(220, 280)}
    assert 0 in inside  # the picture
    assert len(inside) > 1  # the stripes


def test_each_cell_carries_its_coverage(qapp):
    layers = make_layers(None, cells=[[float(10 * row + column) for column in range(12)] for row in range(6)])

    assert layers.cells[13].text == "11"
    assert layers.cells[13].place.x() == pytest.approx(1.5 * 1016 / 12)
    assert len(layers.grid) == 20
