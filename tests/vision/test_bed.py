"""The share of the growing bed, on trays drawn as a camera straight above sees them at any depth."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from vision.bed import measure_bed
from vision.reason import Reason
from vision.stand import measure_stand
from vision.tissue import Label, Labels

CAMERA_MM = 570.0  # above the rim, over the middle of the tray
MAT_MM, LOOSE_MM = 48.0, 24.0  # of the medium below the rim


def seen_from_above(depth_mm: float, share: float, px_per_mm: float = 2.0) -> Labels:
    """A tray with canopy on the left `share` of its bed: by similar triangles (a pinhole camera) the bed is
    seen smaller by h / (h + depth), and the wall around it fills the rest of the rim's rectangle."""
    rows, columns = round(254 * px_per_mm), round(508 * px_per_mm)
    smaller = CAMERA_MM / (CAMERA_MM + depth_mm)
    x = (np.arange(columns) + 0.5) / columns - 0.5
    y = (np.arange(rows) + 0.5) / rows - 0.5
    bed = (np.abs(y)[:, None] < smaller / 2) & (np.abs(x)[None, :] < smaller / 2)
    grown = bed & (x[None, :] < smaller * (share - 0.5))
    labels = np.where(bed, Label.MEDIUM, Label.RIM).astype(np.uint8)
    labels[grown] = Label.GREEN
    return labels


@pytest.mark.parametrize("share", [0.25, 0.5, 0.9])
def test_the_depth_of_the_medium_moves_coverage_but_not_the_share_of_the_bed(share):
    mat = measure_stand(seen_from_above(MAT_MM, share))
    loose = measure_stand(seen_from_above(LOOSE_MM, share))

    shrunk = {depth: (CAMERA_MM / (CAMERA_MM + depth)) ** 2 for depth in (MAT_MM, LOOSE_MM)}
    assert loose.coverage - mat.coverage == pytest.approx(
        100 * share * (shrunk[LOOSE_MM] - shrunk[MAT_MM]), abs=0.3
    )
    assert mat.bed_share == pytest.approx(100 * share, abs=0.3)
    assert loose.bed_share == pytest.approx(100 * share, abs=0.3)


def test_a_full_mat_is_even_on_its_bed_though_its_edge_cells_are_half_wall():
    mat = measure_stand(seen_from_above(MAT_MM, 1.0))

    assert mat.uniformity < 90
    assert mat.bed_uniformity == 100.0
    assert {cell for row in mat.bed_cells for cell in row} == {100.0}


def test_where_all_of_the_inner_area_is_bed_both_ways_of_counting_agree():
    rng = np.random.default_rng(3)
    labels = np.where(rng.random((508, 1016)) < 0.7, Label.PALE, Label.HULL).astype(np.uint8)

    stand = measure_stand(labels)

    assert stand.bed_share == stand.coverage
    assert stand.bed_cells == stand.cells
    assert stand.bed_uniformity == stand.uniformity


@pytest.mark.parametrize("label", [Label.MEDIUM, Label.HULL, Label.ROOT_HAIR, Label.FUZZ, Label.OTHER])
def test_what_lies_on_the_medium_is_bed(label):
    labels = np.full((60, 120), label, np.uint8)
    labels[:30] = Label.RED

    assert measure_bed(labels).share == 50.0


@pytest.mark.parametrize("label", [Label.RIM, Label.OUTSIDE])
def test_a_cell_that_is_nearly_all_wall_is_not_told_and_says_why(label):
    labels = np.full((60, 120), Label.GREEN, np.uint8)
    labels[:10, :9] = label  # nine tenths of the first cell, all but its last column

    bed = measure_bed(labels)

    assert bed.cells[0][0] is None
    assert bed.cells[0][1] == 100.0
    assert bed.reasons == {"cells": Reason.LITTLE_BED}
    assert bed.uniformity == 100.0  # of the 71 others


def test_a_cell_of_which_a_quarter_is_bed_is_told_by_that_quarter():
    labels = np.full((60, 120), Label.GREEN, np.uint8)
    labels[:5, :10] = Label.RIM
    labels[5:10, :5] = Label.RIM
    labels[5:10, 5:7] = Label.MEDIUM  # 10 of its 25 px

    assert measure_bed(labels).cells[0][0] == pytest.approx(60.0)


def test_a_cell_is_told_from_a_fifth_of_bed_on():
    labels = np.full((60, 120), Label.GREEN, np.uint8)
    labels[:8, :10] = Label.RIM  # 20 of 100 px are left
    labels[:8, 10:20] = labels[8, 10] = Label.RIM  # 19

    cells = measure_bed(labels).cells

    assert cells[0][0] == 100.0
    assert cells[0][1] is None


def test_a_picture_of_one_pixel_a_cell_has_a_bed_too():
    bed = measure_bed(np.full((6, 12), Label.GREEN, np.uint8))

    assert {cell for row in bed.cells for cell in row} == {100.0}


def test_without_any_bed_there_is_no_share_of_it():
    bed = measure_bed(np.full((60, 120), Label.RIM, np.uint8))

    assert bed.share is None
    assert bed.uniformity is None
    assert bed.reasons["share"] is Reason.NO_BED


def test_with_most_cells_hidden_the_rest_is_not_called_the_tray():
    labels = np.full((60, 120), Label.RIM, np.uint8)
    labels[:, :50] = Label.GREEN  # 30 of 72 cells

    bed = measure_bed(labels)

    assert bed.share == 100.0
    assert bed.uniformity is None
    assert bed.reasons["uniformity"] is Reason.LITTLE_BED


@pytest.mark.parametrize(("told", "evenness"), [(36, 100.0), (35, None)])
def test_half_of_the_cells_are_enough_to_speak_of_the_tray(told, evenness):
    labels = np.full((60, 120), Label.GREEN, np.uint8)
    labels[:, 60:] = Label.RIM
    if told < 36:
        labels[:10, :10] = Label.RIM

    assert measure_bed(labels).uniformity == evenness


def test_while_nothing_is_up_the_bed_is_no_more_even_than_the_tray():
    stand = measure_stand(seen_from_above(MAT_MM, 0.05))

    assert stand.bed_uniformity is None
    assert stand.reasons["bed_uniformity"] is Reason.LITTLE_CANOPY


@given(st.integers(0, 2**16), st.floats(0, 1), st.floats(0, 1))
@settings(max_examples=50, deadline=None)
def test_the_bed_is_never_more_than_the_inner_area(seed, wall, grown):
    rng = np.random.default_rng(seed)
    labels = np.where(rng.random((60, 120)) < grown, Label.GREEN, Label.MEDIUM).astype(np.uint8)
    labels[rng.random((60, 120)) < wall] = Label.RIM

    stand = measure_stand(labels, None)

    if stand.bed_share is None:
        assert (labels == Label.RIM).all()
    else:
        assert stand.coverage - 1e-9 <= stand.bed_share <= 100.0
    for row, bed_row in zip(stand.cells, stand.bed_cells, strict=True):
        assert all(told is None or told >= share - 1e-9 for share, told in zip(row, bed_row, strict=True))
