"""Place: where in a photo the tray lies, and which kind of tray it is.

In    a photo; where the book has several kinds of tray, which of them carries which tag
Out   marks, kind of tray, corners of its inner area with how sure they are
Not   the top view (`topview.py`), numbers (`score.py`)

Corners by hand win over both; the station wins over the frame.
"""

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime

from vision.corners import Corners
from vision.frame import find_frame
from vision.markers import Marks, find_marks
from vision.photo import Photo, grey
from vision.station import station_corners
from vision.traytype import TrayType

__all__ = ["SURE", "TrayOf", "find_corners", "marks_and_tray"]

TrayOf = Callable[[int | None, datetime | None], TrayType]  # tag number and time taken -> kind of tray

SURE = 0.5  # from this confidence on corners may be used unasked
LIKE_NOMINAL = 0.03  # how far a tray's shape may be from the nominal one for the frame finder


def marks_and_tray(photo: Photo, trays: TrayOf | None) -> tuple[Marks, TrayType]:
    """The marks of the station, and which kind of tray stands in it.

    The tag tells the tray, and the tray tells where marks have to lie: so of another kind than the nominal
    one the marks are looked for twice.
    """
    picture = grey(photo)
    marks = find_marks(picture)
    if trays is None:
        return marks, TrayType()
    tray = trays(_number(marks), photo.taken_at)
    if tray == TrayType():
        return marks, tray
    again = find_marks(picture, tray)
    same = trays(_number(again), photo.taken_at) == tray
    return (again if same else marks), tray


def _number(marks: Marks) -> int | None:
    return None if marks.tag is None else marks.tag.number


def find_corners(photo: Photo, marks: Marks, tray: TrayType | None = None) -> Corners | None:
    """By the station; where too few of its marks are seen to be sure, by the frame if that is surer.

    The frame finder knows trays that are twice as long as wide: of another shape it is not sure.
    """
    tray = tray or TrayType()
    station = station_corners(marks, photo, tray)
    if station is not None and station.confidence >= SURE:
        return station
    frame = find_frame(photo)
    if frame is not None and abs(tray.inner_long_mm / (2 * tray.inner_short_mm) - 1) > LIKE_NOMINAL:
        frame = replace(frame, confidence=min(frame.confidence, 0.9 * SURE))
    found = [corners for corners in (station, frame) if corners is not None]
    return max(found, key=lambda corners: corners.confidence, default=None)
