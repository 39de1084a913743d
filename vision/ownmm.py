"""Own mm: stand and suspects measured on a top view of 1016 x 508 px -> in the mm of the tray that it shows.

In    labels or suspects, at one scale for both directions; long and short side of the inner area, mm
Out   the same with places, outlines and gradients in mm of each direction
Not   shares and areas, which are right at the mean scale (`topview.top_scale`)

Of a tray that is twice as long as wide nothing changes. The outer band of 25 mm stays one of the mean scale.
"""

from collections.abc import Iterable
from dataclasses import replace

from vision.stand import Stand, measure_stand
from vision.suspect import Suspect
from vision.tissue import Labels
from vision.topview import TOP_HEIGHT, TOP_WIDTH, top_scale

__all__ = ["stand_of", "suspects_of"]

Points = tuple[tuple[float, float], ...]


def stand_of(labels: Labels, inner_mm: tuple[float, float]) -> Stand:
    """How the canopy stands on a tray whose inner area has these sides."""
    stand = measure_stand(labels, top_scale(*inner_mm))
    along, across = _stretch(inner_mm)
    if along == across == 1.0:
        return stand
    gaps = tuple(
        replace(
            gap,
            x_mm=gap.x_mm * along,
            y_mm=gap.y_mm * across,
            outline_mm=_stretched(gap.outline_mm, along, across),
        )
        for gap in stand.gaps
    )
    return replace(
        stand,
        gaps=gaps,
        gradient_x=None if stand.gradient_x is None else stand.gradient_x / along,
        gradient_y=None if stand.gradient_y is None else stand.gradient_y / across,
    )


def suspects_of(suspects: Iterable[Suspect], inner_mm: tuple[float, float]) -> tuple[Suspect, ...]:
    """Suspects that were found at the mean scale, at their places on the tray."""
    along, across = _stretch(inner_mm)
    return tuple(
        replace(
            one,
            x_mm=one.x_mm * along,
            y_mm=one.y_mm * across,
            outline_mm=_stretched(one.outline_mm, along, across),
        )
        for one in suspects
    )


def _stretch(inner_mm: tuple[float, float]) -> tuple[float, float]:
    """By what a length at the mean scale has to be multiplied, along and across."""
    scale = top_scale(*inner_mm)
    return inner_mm[0] * scale / TOP_WIDTH, inner_mm[1] * scale / TOP_HEIGHT


def _stretched(points: Points, along: float, across: float) -> Points:
    return tuple((x * along, y * across) for x, y in points)
