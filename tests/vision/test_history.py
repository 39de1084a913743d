"""Which patch is which on two days, and what became of it."""

from dataclasses import dataclass

import pytest
from hypothesis import given
from hypothesis import strategies as st

from vision.history import Became, courses, same_place


@dataclass(frozen=True)
class Patch:
    x_mm: float | None = 250.0
    y_mm: float | None = 120.0
    area_cm2: float | None = 4.0


def became(earlier, later):
    return [course.became for course in courses(earlier, later)]


@pytest.mark.parametrize(
    ("before", "now", "expected"),
    [
        (4.0, 8.0, Became.LARGER),
        (4.0, 4.5, Became.EQUAL),
        (4.0, 3.5, Became.EQUAL),
        (4.0, 2.0, Became.SMALLER),
        (1.0, 1.25, Became.EQUAL),
        (4.0, 4.85, Became.LARGER),
        (4.0, 4.75, Became.EQUAL),
        (0.4, 0.71, Became.LARGER),
        (0.4, 0.69, Became.EQUAL),
        (0.69, 0.4, Became.EQUAL),
    ],
)
def test_a_patch_grows_or_shrinks_by_more_than_the_error_of_an_outline(before, now, expected):
    (course,) = courses([Patch(area_cm2=before)], [Patch(area_cm2=now, x_mm=256.0)])

    assert course.became is expected
    assert course.growth == pytest.approx(now / before)


def test_a_patch_elsewhere_is_new_and_the_old_one_gone():
    assert became([Patch()], [Patch(x_mm=400.0)]) == [Became.NEW, Became.GONE]


def test_two_patches_that_flow_together_have_not_grown():
    (course,) = courses(
        [Patch(x_mm=240.0, area_cm2=3.0), Patch(x_mm=260.0, area_cm2=5.0)], [Patch(area_cm2=8.2)]
    )

    assert course.became is Became.EQUAL
    assert (course.earlier_cm2, course.later_cm2) == (8.0, 8.2)


def test_a_patch_that_a_leaf_parts_in_two_has_not_shrunk():
    (course,) = courses([Patch()], [Patch(x_mm=243.0, area_cm2=2.0), Patch(x_mm=257.0, area_cm2=1.9)])

    assert course.became is Became.EQUAL


def test_a_large_patch_reaches_as_far_as_it_is_wide():
    wide = Patch(area_cm2=60.0)  # 44 mm from its middle to its rim

    assert same_place(Patch(x_mm=285.0), wide)
    assert not same_place(Patch(x_mm=285.0), Patch())


@pytest.mark.parametrize(("away_mm", "same"), [(0.0, True), (19.5, True), (20.5, False)])
def test_small_patches_within_two_centimetres_are_one(away_mm, same):
    assert same_place(Patch(area_cm2=0.5), Patch(area_cm2=0.5, y_mm=120.0 + away_mm)) is same


def test_without_a_place_nothing_is_the_same():
    assert became([Patch(x_mm=None)], [Patch(x_mm=None)]) == [Became.NEW, Became.GONE]


PATCHES = st.lists(
    st.builds(Patch, x_mm=st.floats(0, 508), y_mm=st.floats(0, 254), area_cm2=st.floats(1, 80)), max_size=6
)


@given(earlier=PATCHES, later=PATCHES)
def test_every_patch_has_one_history(earlier, later):
    found = courses(earlier, later)

    for patches, named in ((earlier, "earlier"), (later, "later")):
        told = [id(patch) for course in found for patch in getattr(course, named)]
        assert sorted(told) == sorted(map(id, patches))


@given(earlier=PATCHES, later=PATCHES)
def test_with_the_days_swapped_new_and_gone_are_swapped(earlier, later):
    forward, back = became(earlier, later), became(later, earlier)

    assert forward.count(Became.NEW) == back.count(Became.GONE)
    assert forward.count(Became.LARGER) == back.count(Became.SMALLER)
    assert forward.count(Became.EQUAL) == back.count(Became.EQUAL)
