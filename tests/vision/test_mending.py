"""A canopy drawn by a person: labels follow it, numbers are measured anew, all else stays."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from vision.mending import decode_mask, encode_mask, mend, mend_labels
from vision.reason import Reason
from vision.score import Scored, score_file
from vision.tissue import Label, PlainTissue, canopy

LEAF, COIR = (60, 140, 40), (90, 70, 55)


def a_half_grown_tray() -> tuple[np.ndarray, np.ndarray]:
    """Green on the left half, medium with a strip of hulls on the right; labels 60 x 120 and its picture."""
    labels = np.full((60, 120), Label.MEDIUM, np.uint8)
    labels[:, :60] = Label.GREEN
    labels[:, 110:] = Label.HULL
    top = np.where((labels == Label.GREEN)[:, :, None], LEAF, COIR).astype(np.uint8)
    return labels, top


def test_a_mask_that_says_the_same_changes_nothing() -> None:
    labels, top = a_half_grown_tray()
    mended = mend_labels(labels, canopy(labels), top)
    assert np.array_equal(mended.labels, labels)
    assert not mended.guessed.any()


def test_canopy_is_exactly_where_the_person_says() -> None:
    labels, top = a_half_grown_tray()
    mask = np.zeros(labels.shape, bool)
    mask[20:40, 30:100] = True
    mended = mend_labels(labels, mask, top)
    assert np.array_equal(canopy(mended.labels), mask)
    assert np.array_equal(mended.guessed, mask ^ canopy(labels))


def test_added_canopy_is_of_the_nearest_kind() -> None:
    labels, top = a_half_grown_tray()
    labels[:, :60] = Label.RED
    mask = canopy(labels).copy()
    mask[:, 60:70] = True
    assert (mend_labels(labels, mask, top).labels[:, 60:70] == Label.RED).all()


@pytest.mark.parametrize(
    ("colour", "kind"),
    [(LEAF, Label.GREEN), ((225, 220, 190), Label.PALE), ((120, 40, 70), Label.RED)],
)
def test_canopy_far_from_any_other_is_told_by_its_colour(colour: tuple[int, ...], kind: Label) -> None:
    labels = np.full((60, 120), Label.MEDIUM, np.uint8)
    top = np.full((60, 120, 3), COIR, np.uint8)
    top[20:40, 40:80] = colour
    mask = np.zeros(labels.shape, bool)
    mask[24:36, 44:76] = True
    assert (mend_labels(labels, mask, top).labels[mask] == kind).all()


def test_taken_away_canopy_is_of_the_nearest_ground() -> None:
    labels, top = a_half_grown_tray()
    labels[:, 100:110] = Label.GREEN
    mask = canopy(labels).copy()
    mask[:, 106:110] = False
    mask[:, 50:60] = False
    mended = mend_labels(labels, mask, top).labels
    assert (mended[:, 106:110] == Label.HULL).all()
    assert (mended[:, 50:60] == Label.MEDIUM).all()


def test_fuzz_and_rim_stay_where_nobody_painted() -> None:
    labels, top = a_half_grown_tray()
    labels[:5] = Label.RIM
    labels[30:35, 80:85] = Label.FUZZ
    mask = canopy(labels).copy()
    mask[30:35, 62:70] = True
    mended = mend_labels(labels, mask, top).labels
    assert (mended[:5] == Label.RIM).all()
    assert (mended[30:35, 80:85] == Label.FUZZ).all()


def test_a_mask_of_another_size_is_a_mistake() -> None:
    labels, top = a_half_grown_tray()
    with pytest.raises(ValueError, match="differ in size"):
        mend_labels(labels, np.zeros((10, 10), bool), top)


def test_a_mask_comes_back_from_its_bytes() -> None:
    mask = np.random.default_rng(7).random((508, 1016)) > 0.5
    assert np.array_equal(decode_mask(encode_mask(mask)), mask)
    smooth = np.zeros((508, 1016), bool)
    smooth[100:300, 200:700] = True
    assert len(encode_mask(smooth)) < 3000
    for junk in (b"", b"no picture"):
        with pytest.raises(ValueError, match="no picture"):
            decode_mask(junk)


@pytest.fixture(scope="module")
def scored() -> Scored:
    result = score_file(Path("tests/photos/station.jpg"), PlainTissue())
    assert isinstance(result, Scored)
    return result


def test_the_numbers_are_those_of_the_drawn_canopy(scored: Scored) -> None:
    mask = np.zeros(scored.labels.shape, bool)
    mask[:, :508] = True

    mended = mend(scored, mask)

    assert mended.score.stand.coverage == pytest.approx(50.0)
    assert mended.score.stand.cells[0] == pytest.approx((100.0,) * 6 + (0.0,) * 6)
    assert mended.score.colour.lightness != scored.score.colour.lightness


def test_what_no_brush_says_stays(scored: Scored) -> None:
    mask = np.zeros(scored.labels.shape, bool)
    mask[:, :508] = True
    mended = mend(scored, mask).score
    old = scored.score
    assert (mended.suspects, mended.light, mended.corners, mended.method, mended.digest) == (
        old.suspects, old.light, old.corners, old.method, old.digest,
    )  # fmt: skip
    assert mended.coverage_sd is None
    assert mended.missing["coverage_sd"] is Reason.MENDED


def test_a_reason_goes_with_the_number_that_was_missing(scored: Scored) -> None:
    bare = mend(scored, np.zeros(scored.labels.shape, bool))
    assert bare.score.missing["lightness"] is Reason.NO_CANOPY
    grown = mend(replace(scored, score=bare.score), np.ones(scored.labels.shape, bool))
    assert grown.score.colour.lightness is not None
    assert "lightness" not in grown.score.missing
