"""Photos that lie: whatever bytes come in, they are a photo or refused with a reason; no other error."""

from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PIL import Image

from vision.photo import KINDS, Photo, PhotoRefused, decode_photo, grey, preview
from vision.reason import Reason
from vision.score import Refused, Scored, score_photo, score_whole
from vision.tissue import PlainTissue

FORMATS = ("JPEG", "PNG", "TIFF", "WEBP")
FOLDER = Path(__file__).parent.parent / "photos"
STATION = (FOLDER / "station.jpg").read_bytes()
SIDE = 96


def a_file(kind: str) -> bytes:
    """A small picture with metadata: leaves on soil."""
    rng = np.random.default_rng(1)
    pixels = np.where(rng.random((SIDE, SIDE, 1)) < 0.5, (60, 140, 40), (90, 70, 50)).astype(np.uint8)
    exif = Image.Exif()
    exif[0x0112], exif[0x0110], exif[0x9003] = 6, "camera", "2026:03:08 12:00:00"
    file = BytesIO()
    Image.fromarray(pixels).save(file, kind, exif=exif.tobytes())
    return file.getvalue()


WHOLE = {kind: a_file(kind) for kind in FORMATS} | {"HEIF": (FOLDER / "formats" / "deep.heif").read_bytes()}


def test_every_kind_that_is_read_is_damaged_here() -> None:
    assert set(WHOLE) == set(KINDS)
    for kind, data in WHOLE.items():
        assert isinstance(photo_or_reason(data), Photo if kind != "HEIF" else Photo | Reason), kind


def photo_or_reason(data: bytes) -> Photo | Reason:
    """What becomes of the bytes; whatever else is raised fails the test."""
    try:
        photo = decode_photo(data, "a file")
    except PhotoRefused as refused:
        return refused.reason
    assert photo.pixels.dtype == np.uint8
    assert photo.pixels.ndim == 3
    assert photo.pixels.shape[2] == 3
    assert photo.turns in range(4)
    return photo


damages = st.lists(
    st.one_of(
        st.tuples(st.just("set"), st.floats(0, 1), st.integers(0, 255)),
        st.tuples(st.just("cut"), st.floats(0, 1), st.integers(1, 400)),
        st.tuples(st.just("double"), st.floats(0, 1), st.integers(1, 400)),
        st.tuples(st.just("end"), st.floats(0, 1), st.just(0)),
        st.tuples(st.just("ones"), st.floats(0, 0.2), st.integers(1, 8)),
    ),
    min_size=1,
    max_size=6,
)


def damaged(data: bytes, how: list[tuple[str, float, int]]) -> bytes:
    """The file with bytes changed, cut out, doubled, cut off, or set to 255 (lengths and sizes)."""
    for what, place, value in how:
        at = int(place * len(data))
        match what:
            case "set":
                data = data[:at] + bytes([value]) + data[at + 1 :]
            case "cut":
                data = data[:at] + data[at + value :]
            case "double":
                data = data[: at + value] + data[at:]
            case "end":
                data = data[:at]
            case _:
                data = data[:at] + b"\xff" * value + data[at + value :]
    return data


BOUNDED = settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@BOUNDED
@given(data=st.binary(max_size=600))
def test_any_bytes_are_refused(data: bytes) -> None:
    assert isinstance(photo_or_reason(data), Reason)


@pytest.mark.parametrize("kind", WHOLE)
@BOUNDED
@given(how=damages)
def test_a_damaged_file_is_a_photo_or_is_refused(kind: str, how: list[tuple[str, float, int]]) -> None:
    found = photo_or_reason(damaged(WHOLE[kind], how))
    if isinstance(found, Photo):
        assert grey(found).shape == found.pixels.shape[:2]
        assert preview(found, 40).size > 0


@pytest.mark.parametrize("kind", WHOLE)
@BOUNDED
@given(head=st.integers(0, 40), rest=st.binary(max_size=300))
def test_a_file_that_only_begins_like_a_picture_is_refused(kind: str, head: int, rest: bytes) -> None:
    assert isinstance(photo_or_reason(WHOLE[kind][:head] + rest), Reason)


@settings(max_examples=10, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(how=damages)
def test_a_damaged_photo_of_a_station_is_scored_or_refused(how: list[tuple[str, float, int]]) -> None:
    found = photo_or_reason(damaged(STATION, how))
    if isinstance(found, Photo):
        scored_or_refused(found)


@settings(max_examples=6, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    seed=st.integers(0, 2**32 - 1),
    size=st.tuples(st.integers(64, 700), st.integers(64, 700)),
    grain=st.sampled_from([1, 7, 64]),
    span=st.sampled_from([(0, 1), (0, 256), (250, 256), (100, 140)]),
)
def test_any_picture_is_scored_or_refused(
    seed: int, size: tuple[int, int], grain: int, span: tuple[int, int]
) -> None:
    rng = np.random.default_rng(seed)
    coarse = rng.integers(*span, (-(-size[1] // grain), -(-size[0] // grain), 3), np.uint16).astype(np.uint8)
    pixels = np.kron(coarse, np.ones((grain, grain, 1), np.uint8))[: size[1], : size[0]]
    file = BytesIO()
    Image.fromarray(pixels).save(file, "PNG")
    found = photo_or_reason(file.getvalue())
    assert isinstance(found, Photo)
    scored_or_refused(found)


def scored_or_refused(photo: Photo) -> None:
    for result in (score_photo(photo, PlainTissue()), score_whole(photo, PlainTissue())):
        if isinstance(result, Refused):
            assert result.reason
        else:
            assert isinstance(result, Scored)
            assert 0 <= result.score.stand.coverage <= 100
