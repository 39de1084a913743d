"""Drawn trays whose change can be counted: canopy that appears and vanishes, suspects with a history."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from vision.alignment import AS_PLACED, Alignment, turned_round
from vision.change import Change, Moment, measure_change
from vision.history import Became
from vision.reason import Reason
from vision.suspect import Suspect
from vision.tissue import Label

INNER_MM2 = 508.0 * 254.0
Box = tuple[float, float, float, float]  # left, top, right, bottom, mm
LAID = Alignment(matrix=AS_PLACED, turned=False, error_mm=0.3)
APART = Alignment(matrix=None, turned=False, error_mm=None, reason=Reason.NOTHING_STAYED)


def labels(*boxes: Box, shade: Label = Label.GREEN) -> np.ndarray:
    """Medium with boxes of canopy."""
    drawn = np.full((508, 1016), Label.MEDIUM, np.uint8)
    for left, top, right, bottom in boxes:
        drawn[round(2 * top) : round(2 * bottom), round(2 * left) : round(2 * right)] = shade
    return drawn


def a_suspect(x_mm: float = 300.0, y_mm: float = 100.0, area_cm2: float = 4.0) -> Suspect:
    """A round patch."""
    radius = math.sqrt(100 * area_cm2 / math.pi)
    ring = [
        (x_mm + radius * math.cos(t), y_mm + radius * math.sin(t)) for t in np.linspace(0, 2 * math.pi, 24)
    ]
    return Suspect(
        x_mm=x_mm, y_mm=y_mm, area_cm2=area_cm2, confidence=0.6, why="drawn", outline_mm=tuple(ring)
    )


def change(
    earlier: np.ndarray, later: np.ndarray, was=(), now=(), alignment: Alignment = LAID, methods=("a", "a")
) -> Change:
    return measure_change(
        Moment(labels=earlier, suspects=tuple(was), method=methods[0]),
        Moment(labels=later, suspects=tuple(now), method=methods[1]),
        alignment,
    )


SMALL = (385.0, 195.0)  # long and short side of another tray, mm


def on_small(earlier: np.ndarray, later: np.ndarray, was=(), now=(), alignment: Alignment = LAID) -> Change:
    """The same on a tray that is no nominal one; labels fill the top view as always."""
    return measure_change(
        Moment(labels=earlier, suspects=tuple(was)),
        Moment(labels=later, suspects=tuple(now)),
        alignment,
        SMALL,
    )


def shifted(x_mm: float, y_mm: float) -> Alignment:
    return Alignment(matrix=((1, 0, x_mm), (0, 1, y_mm)), turned=False, error_mm=0.3)


# --- canopy


def test_a_tray_that_stands_still_has_not_changed():
    same = labels((50, 50, 150, 150))
    found = change(same, same)

    assert (found.appeared, found.vanished, found.lost, found.coverage) == (0, 0, 0, 0)
    assert found.reasons == {}


def test_canopy_that_is_gone_is_counted_where_it_stood():
    found = change(labels((50, 50, 150, 150), (300, 50, 400, 150)), labels((50, 50, 150, 150)))

    # an opening by a disc rounds the corners of the box off
    assert found.vanished == pytest.approx(100 * 100 * 100 / INNER_MM2, rel=0.01)
    assert found.lost == pytest.approx(50.0, rel=0.01)
    assert found.appeared == 0
    assert found.coverage == pytest.approx(-100 * 1e4 / INNER_MM2)
    (gone,) = found.vanished_areas
    assert (gone.x_mm, gone.y_mm) == pytest.approx((350, 100), abs=1)
    assert gone.area_cm2 == pytest.approx(100, rel=0.01)


def test_a_hole_in_a_dense_stand_is_counted_up_to_its_border():
    stand = labels((0, 0, 508, 254))
    hole = stand.copy()
    hole[200:280, 400:480] = Label.MEDIUM  # 40 x 40 mm

    assert change(stand, hole).vanished == pytest.approx(100 * 1600 / INNER_MM2, rel=0.02)


def test_a_leaf_that_nods_by_two_millimetres_has_neither_vanished_nor_appeared():
    found = change(labels((50, 50, 80, 80)), labels((52, 51, 82, 81)))

    assert (found.appeared, found.vanished) == (0, 0)


def test_a_leaf_that_moved_by_half_a_centimetre_has_neither_vanished_nor_appeared_and_by_a_whole_it_has():
    """3 mm count as the same, and what is left of a further 3 mm is no more than a border."""
    leaf = labels((50, 50, 80, 80))

    near, far = change(leaf, labels((55.5, 50, 85.5, 80))), change(leaf, labels((60, 50, 90, 80)))

    assert (near.appeared, near.vanished) == (0, 0)
    assert far.appeared == pytest.approx(100 * 10 * 30 / INNER_MM2, rel=0.02)
    assert far.vanished == pytest.approx(far.appeared, rel=0.02)


def test_a_patch_is_told_of_from_one_square_centimetre_on_and_exactly_where_it_lies():
    found = change(labels(), labels((100, 50, 120, 70), (200, 50, 210, 60), (300, 50, 310, 59.5)))

    large, small = found.appeared_areas
    assert (large.area_cm2, small.area_cm2) == (4.0, 1.0)
    assert (large.x_mm, large.y_mm) == pytest.approx((110.0, 60.0))
    # through the middles of its outermost pixels, half a millimetre wide
    assert min(large.outline_mm) == pytest.approx((100.25, 50.25))
    assert max(large.outline_mm) == pytest.approx((119.75, 69.75))


def test_leaves_that_turn_from_pale_to_green_are_no_change():
    found = change(labels((50, 50, 150, 150), shade=Label.PALE), labels((50, 50, 150, 150)))

    assert (found.appeared, found.vanished, found.coverage) == (0, 0, 0)


def test_single_specks_are_no_change():
    specks = labels(*[(x, y, x + 1, y + 1) for x in range(20, 480, 20) for y in range(20, 240, 20)])

    assert change(labels(), specks).appeared == 0


def test_the_map_is_used_and_what_only_one_photo_shows_is_left_out():
    earlier, later = (
        labels((0, 0, 60, 254), (200, 50, 300, 150)),
        labels((220, 50, 320, 150), (480, 0, 508, 254)),
    )

    found = change(earlier, later, alignment=shifted(20.0, 0.0))

    # the earlier left band lies at 20-80 mm now and is gone; the later right band is new
    assert found.vanished == pytest.approx(100 * 60 * 254 / (488 * 254), rel=0.01)
    assert found.appeared == pytest.approx(100 * 28 * 254 / (488 * 254), rel=0.01)


def test_a_tray_turned_round_is_compared_with_itself():
    earlier = labels((50, 50, 150, 150))
    turned = Alignment(matrix=turned_round(AS_PLACED), turned=True, error_mm=0.3)

    found = change(earlier, np.ascontiguousarray(earlier[::-1, ::-1]), alignment=turned)

    assert (found.appeared, found.vanished) == (0, 0)


def test_a_bare_tray_has_no_canopy_to_lose():
    found = change(labels(), labels((50, 50, 150, 150)))

    assert found.lost is None
    assert found.reasons == {"lost": Reason.NO_CANOPY}


@pytest.mark.parametrize(("wide_mm", "told"), [(11.0, True), (9.5, False)])
def test_from_two_percent_of_canopy_on_a_share_of_it_can_be_lost(wide_mm, told):
    """Of less, a few leaves that nod would be a tenth."""
    found = change(labels((100, 0, 100 + wide_mm, 254)), labels())

    assert (found.lost == 100.0) is told
    assert ("lost" in found.reasons) is not told


def test_photos_that_cannot_be_laid_on_each_other_still_tell_of_coverage_and_suspects():
    found = change(
        labels((0, 0, 254, 254)), labels(), was=[a_suspect()], now=[a_suspect(area_cm2=8.0)], alignment=APART
    )

    assert found.coverage == pytest.approx(-50.0)
    assert found.vanished is None
    assert found.reasons["vanished"] is Reason.NOTHING_STAYED
    assert "coverage" not in found.reasons
    assert [one.became for one in found.suspects] == [Became.LARGER]


def test_labels_of_two_methods_are_not_compared():
    found = change(labels(), labels((50, 50, 150, 150)), methods=("plain 1", "learned 1"))

    assert (found.coverage, found.appeared) == (None, None)
    assert set(found.reasons.values()) == {Reason.OTHER_METHODS}
    assert {"coverage", "appeared"} <= set(found.reasons)


def test_labels_of_another_size_are_refused():
    with pytest.raises(ValueError, match="508 x 1016"):
        change(np.zeros((10, 10), np.uint8), labels())


BOXES = st.lists(
    st.tuples(st.integers(40, 420), st.integers(40, 180), st.integers(4, 40), st.integers(4, 40)).map(
        lambda box: (box[0], box[1], box[0] + box[2], box[1] + box[3])
    ),
    max_size=5,
)


@settings(max_examples=30, deadline=None)
@given(earlier=BOXES, later=BOXES)
def test_with_the_days_swapped_appeared_and_vanished_are_swapped(earlier, later):
    forward, back = change(labels(*earlier), labels(*later)), change(labels(*later), labels(*earlier))

    assert (forward.appeared, forward.vanished) == (back.vanished, back.appeared)
    assert forward.appeared_areas == back.vanished_areas
    assert forward.coverage == -back.coverage


@settings(max_examples=30, deadline=None)
@given(earlier=BOXES, later=BOXES, x=st.integers(-30, 30), y=st.integers(-30, 30))
def test_both_pictures_shifted_alike_change_nothing(earlier, later, x, y):
    def aside(boxes):
        return [(left + x, top + y, right + x, bottom + y) for left, top, right, bottom in boxes]

    still, shifted_both = (
        change(labels(*earlier), labels(*later)),
        change(labels(*aside(earlier)), labels(*aside(later))),
    )

    assert shifted_both.appeared == pytest.approx(still.appeared)
    assert shifted_both.vanished == pytest.approx(still.vanished)


# --- suspects


def history(was, now, later=None, alignment=LAID):
    return change(
        labels(), labels() if later is None else later, was=was, now=now, alignment=alignment
    ).suspects


def test_a_suspect_that_grew_says_by_how_much():
    (one,) = history([a_suspect(area_cm2=4.0)], [a_suspect(x_mm=304.0, area_cm2=7.0)])

    assert one.became is Became.LARGER
    assert one.growth == pytest.approx(1.75)


def test_a_suspect_is_known_again_although_the_tray_was_moved_or_turned():
    far = history([a_suspect(x_mm=100.0)], [a_suspect(x_mm=140.0)], alignment=shifted(40.0, 0.0))
    turned = Alignment(matrix=turned_round(AS_PLACED), turned=True, error_mm=0.3)
    about = history([a_suspect(100.0, 50.0)], [a_suspect(408.0, 204.0)], alignment=turned)

    assert [one.became for one in (*far, *about)] == [Became.EQUAL, Became.EQUAL]
    assert (about[0].x_mm, about[0].y_mm) == (408.0, 204.0)


def test_under_a_closed_canopy_suspects_lie_where_the_rim_says_and_not_where_its_leaves_went():
    """What stays there are leaves; they move against the medium by more than a suspect's reach here."""
    closed = labels((0, 0, 508, 254))
    was, now = a_suspect(area_cm2=1.0), a_suspect(x_mm=302.0, area_cm2=1.0)

    (one,) = change(closed, closed, was=[was], now=[now], alignment=shifted(30.0, 0.0)).suspects
    apart = change(labels(), labels(), was=[was], now=[now], alignment=shifted(30.0, 0.0)).suspects

    assert one.became is Became.EQUAL
    assert {each.became for each in apart} == {Became.NEW, Became.GONE}


def test_a_suspect_of_a_turned_tray_is_known_again_even_where_leaves_cannot_be_compared():
    turned = Alignment(matrix=None, turned=True, error_mm=None, reason=Reason.NOTHING_STAYED)

    (one,) = history([a_suspect(100.0, 50.0)], [a_suspect(406.0, 206.0)], alignment=turned)

    assert one.became is Became.EQUAL


def test_a_suspect_under_leaves_is_covered_and_not_gone():
    (one,) = history([a_suspect()], [], later=labels((250, 50, 350, 150)))

    assert one.became is Became.GONE
    assert one.covered > 0.95
    assert one.under_leaves


def test_a_suspect_that_faded_on_bare_medium_is_no_longer_seen():
    (one,) = history([a_suspect()], [], later=labels((0, 0, 100, 254)))

    assert (one.became, one.covered) == (Became.GONE, 0)
    assert not one.under_leaves


def test_a_suspect_that_leaves_partly_hide_says_how_much_of_it():
    (hidden,) = history([a_suspect()], [a_suspect(area_cm2=2.0)], later=labels((300, 50, 350, 150)))
    (faded,) = history([a_suspect()], [a_suspect(area_cm2=2.0)])

    assert hidden.became is faded.became is Became.SMALLER
    assert hidden.covered == pytest.approx(0.5, abs=0.06)
    assert faded.covered == 0


@pytest.mark.parametrize("outline", [(), ((300.0, 100.0),), ((295.0, 100.0), (305.0, 100.0))])
def test_a_suspect_whose_outline_is_no_more_than_a_line_is_under_the_leaves_that_cover_it(outline):
    """Else it would close itself, as if its place lay bare."""
    thin = replace(a_suspect(x_mm=300.0, y_mm=100.0), outline_mm=outline)

    (under,) = history([thin], [], later=labels((250, 50, 350, 150)))
    (bare,) = history([thin], [], later=labels((0, 0, 100, 254)))

    assert (under.under_leaves, bare.under_leaves) == (True, False)


def test_a_new_suspect_is_new():
    (one,) = history([], [a_suspect()])

    assert (one.became, one.growth, one.earlier_cm2) == (Became.NEW, None, 0)


# --- a tray of another size


def test_patches_that_grew_on_a_small_tray_have_its_own_measures():
    found = on_small(labels(), labels((254, 127, 354, 177)))  # a fifth of each side, from the middle on

    (area,) = found.appeared_areas
    wide, high = 100 / 508 * 385.0, 50 / 254 * 195.0
    assert area.area_cm2 == pytest.approx(wide * high / 100, rel=0.02)
    assert (area.x_mm, area.y_mm) == pytest.approx((385 / 2 + wide / 2, 195 / 2 + high / 2), abs=0.5)
    assert max(x for x, _ in area.outline_mm) == pytest.approx(385 / 2 + wide, abs=1.0)


def test_a_suspect_on_a_small_tray_put_in_turned_round_is_known_again_and_none_is_gone():
    turned = Alignment(matrix=turned_round(AS_PLACED), turned=True, error_mm=0.3)
    was, now = a_suspect(60.0, 50.0), a_suspect(385.0 - 60.0, 195.0 - 50.0)

    (course,) = on_small(labels(), labels(), [was], [now], turned).suspects

    assert course.became is Became.EQUAL


def test_leaves_over_a_suspect_on_a_small_tray_are_seen_where_it_lies():
    leaves = labels((385.0, 0.0, 508.0, 254.0))  # the right quarter: from 292 mm on of this tray

    (under,) = on_small(labels(), leaves, [a_suspect(340.0, 100.0)]).suspects
    (bare,) = on_small(labels(), leaves, [a_suspect(240.0, 100.0)]).suspects

    assert (under.covered, under.under_leaves) == (1.0, True)
    assert bare.covered == 0.0
