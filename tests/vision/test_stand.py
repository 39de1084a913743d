"""Drawn trays of 72 cells that one can count with a finger; every tray, however it lies."""

from dataclasses import fields

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from vision.cells import cell_edges
from vision.reason import Reason
from vision.stand import Stand, find_gaps, measure_stand
from vision.tissue import Label, Labels, Mask


def a_tray(canopy: Mask, label: Label = Label.GREEN) -> Labels:
    """Labels of a tray: `label` where canopy is, else medium."""
    return np.where(canopy, label, Label.MEDIUM).astype(np.uint8)


def drawn_canopy(share: float = 90.0, px: int = 10, seed: int = 0) -> Mask:
    """Canopy of 6 rows of 12 cells of `px` pixels, `share` % of the pixels grown over, scattered."""
    return np.random.default_rng(seed).random((6 * px, 12 * px)) < share / 100


def full_tray() -> Mask:
    """A top view at 2 px/mm, canopy all over."""
    return np.ones((508, 1016), dtype=bool)


def silent_fields(stand: Stand) -> set[str]:
    """Fields that are None without a reason, or have both."""
    missing = {f.name for f in fields(stand) if getattr(stand, f.name) is None}
    if any(None in row for row in stand.bed_cells):
        missing.add("bed_cells")
    return missing ^ set(stand.reasons)


def test_half_a_tray_of_canopy_is_half_covered_and_each_cell_says_so():
    half = full_tray()
    half[:, 508:] = False

    stand = measure_stand(a_tray(half))

    assert stand.coverage == 50.0
    assert stand.cells == ((100.0,) * 6 + (0.0,) * 6,) * 6


@pytest.mark.parametrize(
    ("label", "field"), [(Label.PALE, "pale"), (Label.GREEN, "green"), (Label.RED, "red")]
)
def test_each_kind_of_canopy_counts_as_coverage_and_is_told_apart(label, field):
    stand = measure_stand(a_tray(full_tray(), label))

    assert stand.coverage == 100.0
    assert getattr(stand, field) == 100.0
    assert stand.green + stand.pale + stand.red == 100.0


@pytest.mark.parametrize("label", [Label.HULL, Label.ROOT_HAIR, Label.FUZZ, Label.RIM, Label.OTHER])
def test_hulls_roots_mold_and_rim_are_no_canopy(label):
    assert measure_stand(a_tray(full_tray(), label)).coverage == 0.0


def test_cells_meet_without_gap_or_overlap_and_differ_by_at_most_one_pixel():
    rows, columns = cell_edges((508, 1016))

    assert (rows[0], rows[-1], columns[0], columns[-1]) == (0, 508, 0, 1016)
    assert set(np.diff(rows)) == {84, 85}
    assert set(np.diff(columns)) == {84, 85}


def test_a_bare_tray_has_no_uniformity_and_says_why():
    stand = measure_stand(a_tray(~full_tray()))

    assert stand.coverage == 0.0
    assert stand.uniformity is None
    assert stand.reasons["uniformity"] is Reason.NO_CANOPY
    assert stand.reasons["clumping"] is Reason.NO_CANOPY


def test_a_full_tray_is_perfectly_even_but_has_no_pattern():
    stand = measure_stand(a_tray(full_tray()))

    assert (stand.uniformity, stand.low_quarter, stand.variation) == (100.0, 100.0, 0.0)
    assert stand.reasons == {"clumping": Reason.ALL_ALIKE}


def test_under_ten_percent_coverage_evenness_is_not_told_but_clumping_is():
    little = ~full_tray()
    little[:80, :500] = True

    stand = measure_stand(a_tray(little))

    assert stand.coverage < 10
    assert stand.reasons["low_quarter"] is Reason.LITTLE_CANOPY
    assert stand.clumping is not None


def test_the_first_seedling_ends_the_bare_tray():
    sown = ~full_tray()
    sown[100:110, 300:310] = True

    assert measure_stand(a_tray(sown)).reasons["uniformity"] is Reason.LITTLE_CANOPY


def test_from_a_tenth_of_coverage_on_evenness_is_told():
    tenth = ~full_tray()
    tenth[:, :102] = True

    stand = measure_stand(a_tray(tenth))

    assert 10 <= stand.coverage < 10.1
    assert stand.uniformity is not None
    assert stand.gap_share == pytest.approx(100 - stand.coverage)


def test_a_dry_edge_shows_as_points_by_which_the_middle_is_fuller():
    dry = full_tray()
    dry[:50] = dry[-50:] = False
    dry[:, :50] = dry[:, -50:] = False

    assert measure_stand(a_tray(dry)).edge_deficit == 100.0
    assert measure_stand(a_tray(~dry)).edge_deficit == -100.0


def test_a_tray_that_thins_to_the_right_has_a_falling_gradient_along_its_long_side():
    right_is_thin = np.random.default_rng(1).random((508, 1016)) < np.linspace(1.0, 0.0, 1016)

    stand = measure_stand(a_tray(right_is_thin))

    assert stand.gradient_x == pytest.approx(-100 / 5.08, abs=0.5)
    assert stand.gradient_y == pytest.approx(0, abs=0.5)


def test_a_tray_that_thins_towards_the_near_side_has_a_falling_gradient_along_its_short_side():
    near_is_thin = np.random.default_rng(1).random((508, 1016)) < np.linspace(1.0, 0.0, 508)[:, None]

    stand = measure_stand(a_tray(near_is_thin))

    assert stand.gradient_y == pytest.approx(-100 / 2.54, abs=0.5)  # the whole tray's 100 points over 254 mm
    assert stand.gradient_x == pytest.approx(0, abs=0.5)


def test_a_bare_square_is_a_gap_with_its_place_and_size():
    canopy = full_tray()
    canopy[100:160, 200:280] = False

    stand = measure_stand(a_tray(canopy))

    (gap,) = stand.gaps
    assert (gap.x_mm, gap.y_mm) == (120.0, 65.0)
    assert gap.area_cm2 == pytest.approx(12.0)
    assert stand.gap_share == pytest.approx(100 * 12.0 / (50.8 * 25.4))
    assert set(gap.outline_mm) == {(100.25, 50.25), (100.25, 79.75), (139.75, 79.75), (139.75, 50.25)}


def test_the_outline_of_a_gap_leaves_out_notches_of_up_to_a_millimetre():
    canopy = full_tray()
    canopy[100:160, 200:280] = False
    canopy[100:102, 202:280:4] = True  # leaf tips, a millimetre long

    (gap,) = measure_stand(a_tray(canopy)).gaps

    assert len(gap.outline_mm) == 4
    assert gap.area_cm2 == pytest.approx(12.0 - 40 / 400)


def test_until_a_tenth_is_covered_nothing_counts_as_a_gap():
    canopy = np.zeros((508, 1016), dtype=bool)
    canopy[:, :100] = True

    stand = measure_stand(a_tray(canopy))

    assert stand.coverage < 10
    assert stand.gaps == ()
    assert stand.gap_share is None
    assert stand.reasons["gap_share"] is Reason.NOT_UP


def test_gaps_under_four_square_centimetres_are_left_out_and_the_largest_comes_first():
    canopy = full_tray()
    canopy[10:49, 10:51] = False  # 1599 px, 3.9975 cm2
    canopy[100:140, 100:140] = False  # 4 cm2
    canopy[200:300, 200:300] = False  # 25 cm2

    assert [round(gap.area_cm2, 6) for gap in find_gaps(canopy, 2.0)] == [25.0, 4.0]


def test_bare_pieces_that_touch_only_at_a_corner_are_two_gaps():
    canopy = full_tray()
    canopy[100:140, 100:140] = canopy[140:180, 140:180] = False

    assert len(find_gaps(canopy, 2.0)) == 2


def test_without_a_scale_shares_are_told_and_lengths_and_areas_are_not():
    stand = measure_stand(a_tray(drawn_canopy()), px_per_mm=None)

    assert stand.coverage == pytest.approx(90, abs=2)
    assert stand.uniformity is not None
    assert stand.gaps == ()
    for name in ("edge_deficit", "gradient_x", "gradient_y", "gap_share"):
        assert getattr(stand, name) is None
        assert stand.reasons[name] is Reason.NO_SCALE


def test_a_tray_too_small_for_a_middle_has_no_edge_to_hold_against_it():
    """Of 70 mm a band of 25 mm on either side leaves 20 mm."""
    stand = measure_stand(a_tray(drawn_canopy()), px_per_mm=60 / 69)

    assert stand.edge_deficit is None
    assert stand.reasons["edge_deficit"] is Reason.ALL_EDGE
    assert stand.coverage == pytest.approx(90, abs=2)
    assert measure_stand(a_tray(drawn_canopy()), px_per_mm=60 / 72).edge_deficit is not None


def test_labels_of_the_wrong_kind_are_our_mistake_and_loud():
    with pytest.raises(ValueError, match="uint8"):
        measure_stand(np.zeros((508, 1016), dtype=np.int64))
    with pytest.raises(ValueError, match="at least 6 x 12"):
        measure_stand(np.zeros((5, 12), dtype=np.uint8))
    with pytest.raises(ValueError, match="positive"):
        measure_stand(np.zeros((508, 1016), dtype=np.uint8), px_per_mm=0.0)


canopies = st.builds(drawn_canopy, share=st.floats(0, 100), seed=st.integers(0, 2**16))
scales = st.sampled_from([None, 0.2])  # at 0.2 px/mm the drawn trays measure 600 x 300 mm


@given(canopies, scales)
@settings(max_examples=50, deadline=None)
def test_no_number_is_missing_without_a_reason(canopy, scale):
    assert silent_fields(measure_stand(a_tray(canopy), scale)) == set()


@given(canopies)
@settings(max_examples=50, deadline=None)
def test_which_way_round_the_tray_lies_changes_only_the_signs_of_the_gradients(canopy):
    one, other = measure_stand(a_tray(canopy), 0.2), measure_stand(a_tray(np.rot90(canopy, 2).copy()), 0.2)

    for name in (
        "coverage",
        "uniformity",
        "low_quarter",
        "variation",
        "clumping",
        "edge_deficit",
        "gap_share",
    ):
        assert getattr(one, name) == pytest.approx(getattr(other, name))
    assert (one.gradient_x, one.gradient_y) == pytest.approx((-other.gradient_x, -other.gradient_y))


@given(canopies, st.integers(2, 4))
@settings(max_examples=25, deadline=None)
def test_a_sharper_camera_makes_no_difference(canopy, times):
    sharper = canopy.repeat(times, 0).repeat(times, 1)

    one, other = measure_stand(a_tray(canopy), 0.2), measure_stand(a_tray(sharper), 0.2 * times)

    for name in ("coverage", "uniformity", "clumping", "edge_deficit", "gradient_x", "gap_share"):
        assert getattr(one, name) == pytest.approx(getattr(other, name))


@given(canopies, canopies)
@settings(max_examples=50, deadline=None)
def test_more_canopy_never_lowers_coverage(canopy, more):
    assert measure_stand(a_tray(canopy | more), None).coverage >= measure_stand(a_tray(canopy), None).coverage
