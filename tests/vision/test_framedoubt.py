"""The finder's doubt: what it takes to be sure, and what forbids it."""

from dataclasses import replace

import numpy as np
import pytest

from vision.framedoubt import Closer, Finding, confidence, expected_mm, guessed_mm
from vision.framefit import CORNERS_MM, Pose, first_pose

SIZE = (1280, 960)


def pose(middle: tuple[float, float] = (640.0, 480.0), spread: float = 0.5) -> Pose:
    """A tray seen from straight above at 1.5 px/mm, with a covariance that gives about that spread, mm."""
    seen = first_pose(CORNERS_MM * 1.5 + np.array(middle), SIZE, 27.0)
    shifts = np.diag([0, 0, 0, 1.0, 1.0, 0, 0, 0, 0]) * (spread * 1.5 / np.exp(seen.values[6])) ** 2 / 2
    return replace(seen, covariance=shifts)


def finding(**changed: object) -> Finding:
    """A search that went well."""
    well = Finding(
        pose=pose(spread=3.0),
        spread_mm=3.0,
        discord_mm=1.2,
        misfit=0.6,
        sight=(0.95, 0.9, 1.0, 0.9),
        rim=0.1,
        peak=0.99,
    )
    return replace(well, **changed)


def closer(spread: float = 1.1, misfit: float = 0.6, middle: tuple[float, float] = (640.0, 480.0)) -> Closer:
    return Closer(pose=pose(middle, spread), misfit=misfit)


def test_a_tray_that_both_looks_see_well_is_sure():
    assert confidence(finding(), closer()) > 0.8


@pytest.mark.parametrize(
    "look",
    [closer(spread=2.8), closer(spread=1.6, misfit=3.0), closer(spread=2.0, misfit=2.0)],
    ids=["sides seen dimly", "sides that suit no tray", "some of both"],
)
def test_a_closer_look_that_sees_badly_takes_the_sureness_back(look):
    assert expected_mm(finding(), look) > expected_mm(finding(), closer())
    assert confidence(finding(), look) < 0.5


@pytest.mark.parametrize("lens", [(0.0, 0.0), (-0.05, 0.018), (0.09, 0.0)])
def test_a_lens_that_is_known_makes_nobody_surer_of_the_corners(lens):
    """A shift of the tray by 0.5 mm moves its corners by as much, whatever the lens."""
    straight = pose()
    bending = replace(straight, values=np.array([*straight.values[:7], *lens]))

    assert bending.spread_mm == pytest.approx(straight.spread_mm, rel=0.001)


def test_a_search_that_was_too_unsure_is_not_made_sure_by_a_content_closer_look():
    lost = finding(sight=(0.9, 0.9, 0.1, 0.9), spread_mm=5.0, misfit=1.5)

    assert guessed_mm(lost) > 7.0
    assert expected_mm(lost, closer(spread=1.0)) < 4.0
    assert confidence(lost, closer(spread=1.0)) < 0.5


def test_a_corner_beyond_the_photo_is_never_sure():
    assert confidence(finding(), closer(middle=(300.0, 480.0))) < 0.5


def test_confidence_falls_with_every_sign_of_a_wrong_place():
    looks = [closer(spread=spread) for spread in (1.0, 1.3, 1.6, 2.0)]
    searches = [finding(misfit=misfit) for misfit in (0.5, 1.0, 1.5, 2.0)]

    by_look = [confidence(finding(), look) for look in looks]
    by_search = [confidence(search, closer()) for search in searches]

    assert by_look == sorted(by_look, reverse=True)
    assert by_search == sorted(by_search, reverse=True)
    assert by_look[0] > by_look[-1]
    assert by_search[0] > by_search[-1]
