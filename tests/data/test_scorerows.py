"""Corners come back exactly as they were kept, those of before too."""

import json

import pytest

from data.tables.scorerows import corners_of, corners_text
from vision.corners import Corners, CornersFrom

POINTS = ((10.0, 10.5), (1000.0, 12.25), (1001.0, 500.0), (9.0, 498.0))


@pytest.mark.parametrize("axis", [None, (640.5, 371.25)], ids=["in the middle", "of a cropped photo"])
def test_corners_come_back_as_they_were(axis: tuple[float, float] | None) -> None:
    corners = Corners(
        points=POINTS,
        found_by=CornersFrom.STATION,
        confidence=0.75,
        tilt_deg=3.5,
        lens=(0.01, -0.002),
        focal_px=1500.25,
        axis_px=axis,
    )
    assert corners_of(corners_text(corners)) == corners


def test_corners_kept_before_axes_were_known_look_at_the_middle() -> None:
    text = corners_text(Corners(points=POINTS, found_by=CornersFrom.HAND, confidence=1.0))

    assert "axis_px" not in json.loads(text)
    assert corners_of(text).axis_px is None
