"""Place: where in a photo the tray lies, and which kind of tray it is.

In    a photo; where the book has several kinds of tray, which of them carries which tag
Out   marks, kind of tray, corners of its inner area with how sure they are
Not   the top view (`topview.py`), numbers (`score.py`)

Corners by hand win over both; the station wins over the frame. Whoever found them, cards that are seen tell
which side is the far one: a tray photographed from behind is shown as on all other days.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime
from typing import Protocol

import numpy as np

from vision.corners import SURE, Corners
from vision.frame import find_frame
from vision.markers import Marks, find_marks
from vision.photo import Photo, grey
from vision.rim import is_known, rim_corners
from vision.traytype import TrayType

__all__ = ["SURE", "TrayOf", "far_side_first", "find_corners", "marks_and_tray"]


class TrayOf(Protocol):
    """Which kind of tray carries a tag at a time."""

    @property
    def kinds(self) -> Sequence[TrayType]:
        """All kinds that there are, each once, the usual one first."""

    def __call__(self, tag: int | None, at: datetime | None) -> TrayType:
        """The kind under a tag; the usual one where no tag was read, or one that nobody knows."""


def marks_and_tray(photo: Photo, trays: TrayOf | None) -> tuple[Marks, TrayType]:
    """The marks of the station, and which kind of tray stands in it.

    The tag tells the tray, and the tray tells where marks have to lie: so the marks are looked for as if the
    usual kind stood there, then another, until the tag that is read belongs to the kind that was supposed.
    """
    picture = grey(photo)
    if trays is None:
        return find_marks(picture), TrayType()
    usual, *others = trays.kinds
    marks = find_marks(picture, usual)
    told = trays(_number(marks), photo.taken_at)
    if not marks.cards and marks.tag is None:  # none is seen, whatever stands there
        return marks, told
    if marks.tag is not None and told == usual:
        return marks, usual
    for kind in sorted(others, key=lambda kind: kind != told):  # what the tag told first
        again = find_marks(picture, kind)
        if again.tag is not None and trays(again.tag.number, photo.taken_at) == kind:
            return again, kind
    return marks, told


def _number(marks: Marks) -> int | None:
    return None if marks.tag is None else marks.tag.number


def find_corners(photo: Photo, marks: Marks, tray: TrayType | None = None) -> Corners | None:
    """By the station, its rim looked at once more; where that is not sure, by the frame if that is surer.

    The frame finder knows trays that are twice as long as wide: of another shape it is not sure.
    """
    tray = tray or TrayType()
    station = rim_corners(marks, photo, tray)
    if station is not None and station.confidence >= SURE:
        return station
    frame = find_frame(photo)
    if frame is not None and not is_known(tray):
        frame = replace(frame, confidence=min(frame.confidence, 0.9 * SURE))
    found = [corners for corners in (station, frame) if corners is not None]
    surest = max(found, key=lambda corners: corners.confidence, default=None)
    return None if surest is None else far_side_first(surest, marks)


def far_side_first(corners: Corners, marks: Marks) -> Corners:
    """The same corners, half a turn on where the station's cards say that the other long side is the far one.

    Without a card the order stays: nothing but the upright photo tells what is above.
    """
    if not marks.cards:
        return corners
    cards = np.array(list(marks.cards.values()))  # each clockwise from its own far left
    far = (cards[:, :2].sum(axis=1) - cards[:, 2:].sum(axis=1)).sum(axis=0)
    first, second, third, fourth = corners.points
    points = np.array(corners.points)
    upwards = points[:2].sum(axis=0) - points[2:].sum(axis=0)
    return corners if far @ upwards >= 0 else replace(corners, points=(third, fourth, first, second))
