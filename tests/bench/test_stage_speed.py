"""How long each stage of a score takes, as a ratio to one strict decode of the same photo in the same round.

python -m pytest -m sweep -s tests/bench/test_stage_speed.py

The photo is a rendered one at a station, enlarged to 12 megapixels, with a sensor's noise. Some of its cards
lie partly under leaves, so the search for marks goes its whole way; with all in sight the first of its four
passes is enough. The decode is measured right beside each stage, since it wanders with what ran before;
figures are medians of rounds, one thread. A row's limit is about twice what was measured when it was set, on
two shared cores.
"""

from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from statistics import median
from time import perf_counter
from typing import Any

import cv2
import numpy as np
import pytest
from PIL import Image

from vision.colour import measure_colour
from vision.frame import find_frame
from vision.light import judge_light, white_balance
from vision.markers import Marks, find_marks
from vision.methods import best_tissue
from vision.photo import decode_photo, grey
from vision.picture import encode_jpeg, encode_labels, thumbnail, with_everything
from vision.score import Scored, score_photo
from vision.stand import measure_stand
from vision.station import patches, station_corners
from vision.suspects import find_suspects
from vision.tissue import PlainTissue
from vision.topview import make_top_view

STATION = Path(__file__).parent.parent / "photos" / "station.jpg"
ROUNDS = 7
SIZE = (4032, 3024)


def twelve_megapixels() -> bytes:
    """The station photo as a phone would have sent it."""
    with Image.open(STATION) as small:
        exif = small.info["exif"]
        large = cv2.resize(np.asarray(small.convert("RGB")), SIZE, interpolation=cv2.INTER_CUBIC)
    noise = np.random.default_rng(1).normal(0, 3, large.shape)
    file = BytesIO()
    Image.fromarray(np.clip(large + noise, 0, 255).astype(np.uint8)).save(file, "JPEG", quality=90, exif=exif)
    return file.getvalue()


def seconds(work: Callable[[], Any]) -> float:
    start = perf_counter()
    work()
    return perf_counter() - start


@pytest.mark.sweep
@pytest.mark.timeout(600)
def test_every_stage_stays_within_its_share_of_a_decode(capsys: pytest.CaptureFixture[str]) -> None:
    cv2.setNumThreads(1)
    data = twelve_megapixels()
    tissue = best_tissue()
    photo = decode_photo(data, "station.jpg")
    dark = grey(photo)
    marks = find_marks(dark)
    corners = station_corners(marks, photo)
    assert corners is not None
    view = make_top_view(photo, corners)
    white = patches(marks, photo)
    top = white_balance(view.pixels, white)
    tissues = tissue.label(top, 2.0)
    scored = score_photo(photo, tissue)
    assert isinstance(scored, Scored)
    score = scored.score
    stages: tuple[tuple[str, Callable[[], Any], float], ...] = (
        ("decode and array", lambda: decode_photo(data, "station.jpg"), 2.2),
        ("grey", lambda: grey(photo), 0.5),
        ("marks", lambda: find_marks(dark), 4.5),
        ("pose and patches", lambda: (station_corners(marks, photo), patches(marks, photo)), 2.0),
        ("frame, where there are no marks", lambda: find_frame(photo), 5.0),
        ("marks where there are none", lambda: _nothing_there(dark), 2.2),
        ("top view", lambda: make_top_view(photo, corners), 2.4),
        ("light", lambda: judge_light(photo, view, white), 1.4),
        ("white balance", lambda: white_balance(view.pixels, white), 0.1),
        ("tissue, learned", lambda: tissue.label(top, 2.0), 8.0),
        ("tissue, plain", lambda: PlainTissue().label(top, 2.0), 1.5),
        ("stand", lambda: measure_stand(tissues.labels), 0.4),
        ("colour", lambda: measure_colour(top, tissues.labels), 0.4),
        ("suspects", lambda: find_suspects(top, tissues), 1.6),
        ("top view as JPEG", lambda: encode_jpeg(top), 0.15),
        ("labels as PNG", lambda: encode_labels(scored.labels), 0.2),
        ("thumbnail", lambda: encode_jpeg(thumbnail(top)), 0.2),
        ("overlay", lambda: with_everything(top, scored.labels, score.stand, score.suspects), 1.0),
        ("whole photo", lambda: score_photo(decode_photo(data, "station.jpg"), tissue), 20.0),
    )
    ratios = {name: _ratio(work, data) for name, work, _ in stages}

    with capsys.disabled():
        print(f"\n{'stage':34s} {'x decode':>8s} {'limit':>6s}")
        for name, _, limit in stages:
            print(f"{name:34s} {ratios[name]:8.2f} {limit:6.2f}")
    assert {name: ratios[name] for name, _, limit in stages if ratios[name] > limit} == {}


def _ratio(work: Callable[[], Any], data: bytes) -> float:
    work()  # the first run pays for imports and tables
    return median(seconds(work) / seconds(lambda: Image.open(BytesIO(data)).load()) for _ in range(ROUNDS))


def _nothing_there(dark: np.ndarray[Any, np.dtype[np.uint8]]) -> Marks:
    return find_marks(np.full_like(dark, 120))
