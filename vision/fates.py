"""Fates: the suspects of two photos of one tray -> what became of each.

In    suspects of both photos, how the photos lie on each other, where leaves are on the later one
Out   `SuspectHistory`s, places on the later photo
Not   which patch is which (`history.py`), words for it and what is urgent (the book)

A suspect lies on the medium. What stays from day to day is the medium while the stand is open, and its leaves
once it has closed; these move against the medium by up to a centimetre. From then on the rim tells better
where a suspect of the day before lies.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import cv2
import numpy as np

from vision.alignment import Affine, Alignment, in_own_mm, moved
from vision.history import Became, Course, courses
from vision.suspect import Suspect
from vision.tissue import Mask
from vision.topview import LONG_MM, SHORT_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["SuspectHistory", "fates"]

CLOSED = 0.6  # share of canopy from which leaves are what stays
COVERED = 0.5  # of a suspect's outline, under leaves


@dataclass(frozen=True, slots=True, kw_only=True)
class SuspectHistory:
    """One suspect, or several that are one patch, on both photos; places are those of the later photo."""

    became: Became
    x_mm: float
    y_mm: float
    earlier_cm2: float
    later_cm2: float
    growth: float | None
    """Later area over earlier; None where it is new or gone."""
    covered: float
    """0-1: share of the earlier outline that leaves cover on the later photo; 0 for a new one."""
    earlier: tuple[int, ...] = ()
    """Which of the earlier photo's suspects it was, by their place in that moment; empty for a new one."""
    later: tuple[int, ...] = ()
    """Which of the later photo's suspects it is; empty for one that is gone."""

    @property
    def under_leaves(self) -> bool:
        """Whether it is gone from sight because leaves have grown over it: then nothing is known of it."""
        return self.became is Became.GONE and self.covered >= COVERED


def fates(
    earlier: Sequence[Suspect],
    later: Sequence[Suspect],
    was: Mask,
    now: Mask,
    alignment: Alignment,
    inner_mm: tuple[float, float] = (LONG_MM, SHORT_MM),
) -> tuple[SuspectHistory, ...]:
    """What became of the suspects; `was` and `now` are the canopies of both photos.

    Places are in mm of the tray, whose inner area has the sides `inner_mm`.
    """
    ground = in_own_mm(alignment.by_rim if was.mean() > CLOSED else alignment.placed, inner_mm)
    before = [_moved(suspect, ground) for suspect in earlier]
    return tuple(
        replace(
            _history(course, now, inner_mm),
            earlier=_which(course.earlier, before),
            later=_which(course.later, later),
        )
        for course in courses(before, later)
    )


def _which(some: Sequence[Suspect], of_all: Sequence[Suspect]) -> tuple[int, ...]:
    return tuple(k for k, suspect in enumerate(of_all) if any(suspect is one for one in some))


def _moved(suspect: Suspect, matrix: Affine) -> Suspect:
    x, y = moved(matrix, suspect.x_mm, suspect.y_mm)
    outline = tuple(moved(matrix, *point) for point in suspect.outline_mm)
    return replace(suspect, x_mm=x, y_mm=y, outline_mm=outline)


def _history(course: Course[Suspect], now: Mask, inner_mm: tuple[float, float]) -> SuspectHistory:
    largest = max(course.later or course.earlier, key=lambda suspect: suspect.area_cm2)
    return SuspectHistory(
        became=course.became,
        x_mm=largest.x_mm,
        y_mm=largest.y_mm,
        earlier_cm2=course.earlier_cm2,
        later_cm2=course.later_cm2,
        growth=course.growth,
        covered=_covered(course.earlier, now, inner_mm),
    )


def _covered(patches: Sequence[Suspect], now: Mask, inner_mm: tuple[float, float]) -> float:
    """Share of the patches' outlines under canopy, 0-1; beyond the top view counts as bare."""
    inside = np.zeros(now.shape, np.uint8)
    per_mm = np.array([TOP_WIDTH / inner_mm[0], TOP_HEIGHT / inner_mm[1]])
    for patch in patches:
        corners = np.array(patch.outline_mm or [(patch.x_mm, patch.y_mm)]) * per_mm - 0.5
        cv2.fillPoly(inside, [np.round(corners).astype(np.int32)], 1)  # a line or a point where it is no more
    area = int(inside.sum())
    return float(now[inside > 0].sum()) / area if area else 0.0
