"""Photo rows: the stages of one photo against their limits, and what a worker needs for many.

In    nothing: the photo is a rendered one at a station, enlarged to 12 megapixels, with a sensor's noise
Out   `Row`s
Not   the table (`table.py`)

In one row all cards of the station are in sight; in the photo of all others some lie under leaves.
"""

import subprocess
import sys
import tempfile
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from functools import partial
from hashlib import sha256
from io import BytesIO
from pathlib import Path
from time import perf_counter
from typing import Any

import cv2
import numpy as np
from PIL import Image

from tests.bench.limits import ROUNDS, Row, Work, busy, one_peak, ratio, seconds
from tests.made.excess import excess_green, split
from tests.vision.profiles import wide_gamut_profile
from vision.cells import cell_shares
from vision.cielab import lab, linear
from vision.colour import measure_colour
from vision.corners import Corners
from vision.frame import find_frame
from vision.learned import LABELS, _run, most_probable
from vision.light import judge_light, judge_pixels, white_balance
from vision.markers import find_marks
from vision.methods import best_tissue
from vision.photo import decode_photo, grey, in_srgb, upright_points
from vision.picture import encode_jpeg, encode_labels, thumbnail, with_everything
from vision.rim import rim_corners
from vision.score import Scored, score_photo
from vision.stand import find_gaps, measure_stand, morans_i
from vision.station import patches, station_corners
from vision.suspects import find_suspects
from vision.tissue import Label, PlainTissue, canopy
from vision.topview import make_top_view
from vision.traytype import TrayType

__all__ = ["photo_rows", "twelve_megapixels", "worker_rows"]

PHOTOS = Path(__file__).parent.parent / "photos"
DEMO = Path(__file__).parents[2] / "data" / "demo" / "photos"
SIZE = (4032, 3024)
BATCH = 16
PEAK = """
import sys
from pathlib import Path
from data.photos.judged import score_for_book
for _ in range(3):
    score_for_book(Path(sys.argv[1]))
print(next(line.split()[1] for line in open("/proc/self/status") if line.startswith("VmHWM")))
"""


def twelve_megapixels(name: str = "station.jpg", folder: Path = PHOTOS) -> bytes:
    """A photo as a phone would have sent it."""
    with Image.open(folder / name) as small:
        exif = small.info["exif"]
        large = cv2.resize(np.asarray(small.convert("RGB")), SIZE, interpolation=cv2.INTER_CUBIC)
    noise = np.random.default_rng(1).normal(0, 3, large.shape)
    file = BytesIO()
    Image.fromarray(np.clip(large + noise, 0, 255).astype(np.uint8)).save(file, "JPEG", quality=90, exif=exif)
    return file.getvalue()


class Scene:
    """One photo with all that its stages hand on."""

    def __init__(self) -> None:
        self.data = twelve_megapixels()
        self.tissue = best_tissue()
        self.photo = decode_photo(self.data, "station.jpg")
        self.dark = grey(self.photo)
        self.marks = find_marks(self.dark)
        corners = station_corners(self.marks, self.photo)
        assert corners is not None
        self.corners: Corners = corners
        self.view = make_top_view(self.photo, corners)
        self.white = patches(self.marks, self.photo)
        self.top = white_balance(self.view.pixels, self.white)
        self.tissues = self.tissue.label(self.top, 2.0)
        self.canopy = canopy(self.tissues.labels)
        scored = self.score()
        assert isinstance(scored, Scored)
        self.scored = scored

    def score(self) -> object:
        """The whole way of the photo."""
        return score_photo(decode_photo(self.data, "station.jpg"), self.tissue)

    def decode(self) -> None:
        """The unit: one strict decode."""
        Image.open(BytesIO(self.data)).load()


def photo_rows() -> Iterator[Row]:
    """The stages of one photo, in their order."""
    cv2.setNumThreads(1)
    one_peak()
    scene = Scene()
    for stage, work, limit, own in _stages(scene):
        value = ratio(work, scene.decode)
        if value > limit:  # perhaps somebody else was at work just then
            value = min(value, ratio(work, scene.decode, 2 * ROUNDS))
        yield Row(stage=stage, value=value, limit=limit, own=own)
    product = np.ones((1024, 1024), np.float32)
    in_products = ratio(lambda: scene.tissue.label(scene.top, 2.0), lambda: product @ product)
    yield Row(stage="network, products of 1024 x 1024", value=in_products, limit=16.0, unit="products")


def _stages(scene: Scene) -> Iterator[tuple[str, Work, float, bool]]:
    """Name, work, limit, whether the limit is our own."""
    photo, top, labels, score = scene.photo, scene.top, scene.tissues.labels, scene.scored.score
    turned, profile = replace(photo, turns=1), wide_gamut_profile()
    in_sight = grey(decode_photo(twelve_megapixels("A1_day02.webp", DEMO), "in sight"))
    nothing = np.full_like(scene.dark, 120)
    planes = _run(top)
    shares = planes.reshape(LABELS, -1)
    yield "hash the file", lambda: sha256(scene.data).hexdigest(), 0.1, False
    yield "decode and array", lambda: decode_photo(scene.data, "station.jpg"), 2.2, False
    yield "ICC to sRGB, top view", lambda: in_srgb(top, profile), 0.6, False
    yield "turn by Exif", lambda: upright_points(turned, scene.corners.points), 0.02, False
    yield "grey", lambda: grey(photo), 0.5, True
    yield "marks, all in sight", lambda: find_marks(in_sight), 0.9, False
    yield "marks, some under leaves", lambda: find_marks(scene.dark), 0.9, False
    yield "marks, nothing there", lambda: find_marks(nothing), 2.2, False
    yield (
        "pose and patches",
        lambda: (station_corners(scene.marks, photo), patches(scene.marks, photo)),
        2.0,
        True,
    )
    yield "pose, and the rim looked at", lambda: rim_corners(scene.marks, photo, TrayType()), 2.0, True
    yield "frame, where there are no marks", lambda: find_frame(photo), 5.0, True
    yield "top view", lambda: make_top_view(photo, scene.corners), 1.0, False
    yield "linear light", lambda: linear(top), 0.05, False
    yield "light of the top view, white balance", lambda: _light_of_top(scene), 0.2, False
    yield "light, with edges and bench around", lambda: judge_light(photo, scene.view, scene.white), 1.2, True
    yield "excess green and Otsu", lambda: split(_levels(excess_green(top))), 0.15, False
    yield "tissue, plain", lambda: PlainTissue().label(top, 2.0), 1.5, True
    yield "network and labels", lambda: scene.tissue.label(top, 2.0), 8.0, False
    yield "network's input", lambda: cv2.dnn.blobFromImage(top), 0.06, False
    yield "network's labels", lambda: most_probable(shares, tuple(Label)), 0.1, False
    yield "cells of one class", lambda: cell_shares(scene.canopy), 0.06, False
    yield "Moran's I", lambda: morans_i(np.array(score.stand.cells)), 0.05, False
    yield "gaps", lambda: find_gaps(scene.canopy, 2.0), 0.3, False
    yield "all numbers of the stand", lambda: measure_stand(labels), 0.6, True
    yield "CIELAB of the top view", lambda: lab(top), 0.3, False
    yield "colour of the canopy", lambda: measure_colour(top, labels), 0.5, True
    yield "suspects", lambda: find_suspects(top, scene.tissues), 1.6, True
    yield "top view as JPEG", lambda: encode_jpeg(top), 0.15, False
    yield "labels as PNG", lambda: encode_labels(labels), 0.2, False
    yield "thumbnail", lambda: encode_jpeg(thumbnail(top)), 0.2, False
    yield "overlay drawn", lambda: with_everything(top, labels, score.stand, score.suspects), 0.5, False
    yield "whole photo, file to score", scene.score, 10.0, False


def _light_of_top(scene: Scene) -> None:
    judge_pixels(scene.view.pixels)
    white_balance(scene.view.pixels, scene.white)


def _levels(index: np.ndarray[Any, np.dtype[np.float32]]) -> np.ndarray[Any, np.dtype[np.uint8]]:
    return cv2.convertScaleAbs(index, alpha=85.0, beta=85.0)  # -1 to 2 as codes


# --- a worker


def worker_rows() -> Iterator[Row]:
    """Many photos, memory, two workers."""
    cv2.setNumThreads(1)
    scene = Scene()
    few, many = (partial(_score_some, scene, count) for count in (10, 40))
    scene.score()
    yield Row(
        stage="40 photos against 4 x 10", value=seconds(many) / (4 * seconds(few)), limit=1.15, unit="x"
    )
    yield Row(stage="peak memory of one worker", value=_peak_mb(scene.data), limit=450.0, unit="MB")
    one, two = (_batch_seconds(scene, workers) for workers in (1, 2))
    yield Row(
        stage="two workers against one",
        value=one / two,
        limit=1.4,
        unit="x, by clock",
        at_least=True,
        not_judged=busy(),
    )


def _score_some(scene: Scene, count: int) -> None:
    for _ in range(count):
        scene.score()


def _peak_mb(data: bytes) -> float:
    with tempfile.NamedTemporaryFile(suffix=".jpg") as file:
        file.write(data)
        file.flush()
        child = [sys.executable, "-c", PEAK, file.name]
        return float(subprocess.run(child, capture_output=True, check=True, text=True).stdout) / 1000


def _batch_seconds(scene: Scene, workers: int) -> float:
    with ThreadPoolExecutor(workers) as pool:
        list(pool.map(lambda _: scene.score(), range(workers)))  # each thread loads its net
        begun = perf_counter()
        list(pool.map(lambda _: scene.score(), range(BATCH)))
        return perf_counter() - begun
