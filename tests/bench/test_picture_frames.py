"""Frames of the picture view: 12 megapixels with all layers in a 1400 x 900 window.

EVENSTAND_PHOTOS names a folder that holds `a009.jpg` (12 megapixels) and `a009_classes.png`.
"""

import json
import os
import time
from pathlib import Path
from statistics import median

import cv2
import numpy as np
import pytest
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from gui.photo.layers import Layer, Layers, Mark, make_layers
from gui.photo.mips import make_mips
from gui.pictures import PictureView
from vision.photo import preview, read_photo

pytestmark = pytest.mark.sweep

FRAME_MS = 16.0  # 60 frames a second
FOLDER = os.environ.get("EVENSTAND_PHOTOS")


@pytest.mark.skipif(FOLDER is None, reason="EVENSTAND_PHOTOS names no folder of photos")
def test_every_zoom_of_a_12_megapixel_photo_is_painted_within_a_frame(qtbot: QtBot) -> None:
    folder = Path(FOLDER or "")
    layers = all_layers(folder)
    pixels = preview(read_photo(folder / "a009.jpg"), 10_000)
    began = time.perf_counter()
    mips = make_mips(pixels)
    print(f"mips of {mips.size} made in {(time.perf_counter() - began) * 1e3:.0f} ms")

    view = PictureView()
    qtbot.addWidget(view)
    view.resize(1400, 900)
    view.show_picture(mips, layers=layers)
    slowest = 0.0
    for shown in (frozenset(), frozenset({Layer.CANOPY}), frozenset(Layer)):
        view.show_layers(shown)
        for zoom in (view.view.fit_zoom, 0.5, 1.0, 3.0):
            view.view = view.view.fitted().zoomed(zoom / view.view.fit_zoom, 700, 450)
            times = painted(view)
            print(
                f"{len(shown)} layers, zoom {zoom:.2f}: median {median(times):.1f} ms, worst {max(times):.1f}"
            )
            slowest = max(slowest, median(times))
    assert slowest <= FRAME_MS


def all_layers(folder: Path) -> Layers:
    """Outlines, cells and a ring as the truth of the photo has them."""
    corners = np.float32(json.loads((folder / "a009_truth.json").read_text())["corners_rim_px"])
    top = np.float32([(0, 0), (1016, 0), (1016, 508), (0, 508)])
    way = cv2.getPerspectiveTransform(top, corners)
    classes = cv2.imread(str(folder / "a009_classes.png"), cv2.IMREAD_UNCHANGED)
    labels = cv2.warpPerspective(classes, way, (1016, 508), flags=cv2.INTER_NEAREST | cv2.WARP_INVERSE_MAP)
    began = time.perf_counter()
    layers = make_layers(
        labels,
        cells=[[float(row * column) for column in range(12)] for row in range(6)],
        marks=[Mark(number=1, x_mm=200, y_mm=100, radius_mm=15, word="possible mold")],
        homography=way,
    )
    print(f"layers made in {(time.perf_counter() - began) * 1e3:.0f} ms, {len(layers.fine)} outlines")
    return layers


def painted(view: PictureView) -> list[float]:
    """ms of fifteen times."""
    screen = QImage(1400, 900, QImage.Format.Format_RGB32)
    times = []
    for _ in range(15):
        began = time.perf_counter()
        view.render(screen)
        times.append((time.perf_counter() - began) * 1e3)
    return times
