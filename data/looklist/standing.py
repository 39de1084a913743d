"""Standing: the numbers of one tray by day.

In    numbers of a tray's photos
Out   one `Standing` a day, of the newest version of the method
Not   what a tray is held against (`view.py`), what is out of line (`emergence.py`, `evenness.py`, ...)
"""

from collections.abc import Callable, Iterable, Sequence
from datetime import date
from statistics import median
from typing import NamedTuple

from data.numbers import PhotoId
from data.records import DayNumbers

__all__ = ["Days", "Number", "Standing", "by_day"]


class Standing(NamedTuple):
    """The numbers of one day: the median over its usable photos, by one version of the method; those in doubt
    count only where there are no others.

    A tuple for the same reason as `DayNumbers`.
    """

    photo_id: PhotoId
    method: str
    coverage: float
    uniformity: float | None
    edge_deficit: float | None
    gap_share: float | None
    lightness: float | None  # of photos whose colours were set right by a patch; else None
    dark_green: float | None
    cells: bytes  # of the photo that is nearest to the median; empty where there are none
    bed_share: float | None = None  # canopy in % of the growing bed; None where one of the photos lacks it


Days = dict[date, Standing]  # oldest first
Number = Callable[[Standing], float | None]


def by_day(photos: Iterable[DayNumbers]) -> Days:
    """One `Standing` a day, oldest first, of the newest version of the method alone."""
    usable = [p for p in photos if p.sure and p.coverage is not None and p.refusal is None]
    if not usable:
        return {}
    method = usable[-1].method
    days: dict[date, list[DayNumbers]] = {}
    for photo in usable:
        if photo.method == method:
            days.setdefault(photo.taken_at.date(), []).append(photo)
    return {
        day: _of_one(some[0], method or "") if len(some) == 1 else _of_several(some, method or "")
        for day, some in sorted(days.items())
    }


def _trusted(photos: list[DayNumbers]) -> list[DayNumbers]:
    """Those of a day that nothing speaks against; all where there are none: a doubtful number is one."""
    return [photo for photo in photos if not photo.doubts] or photos


def _of_several(photos: list[DayNumbers], method: str) -> Standing:
    trusted = _trusted(photos)
    return _of_one(trusted[0], method) if len(trusted) == 1 else _of_many(trusted, method)


def _of_one(photo: DayNumbers, method: str) -> Standing:
    (
        _tray, photo_id, _taken_at, _refusal, _needs_corners, _method, _sure, coverage, uniformity,
        edge_deficit, gap_share, lightness, dark_green, corrected, cells, bed_share, _doubts,
    ) = photo  # by place: there are thousands  # fmt: skip
    if not corrected:
        lightness = dark_green = None
    return Standing(
        photo_id, method, coverage or 0.0, uniformity, edge_deficit, gap_share, lightness, dark_green, cells,
        bed_share,
    )  # fmt: skip


def _of_many(photos: Sequence[DayNumbers], method: str) -> Standing:
    def middle(values: Iterable[float | None]) -> float | None:
        known = [value for value in values if value is not None]
        return median(known) if known else None

    beds = [p.bed_share for p in photos]
    coverage = middle(p.coverage for p in photos) or 0.0
    typical = min(photos, key=lambda p: abs((p.coverage or 0.0) - coverage))
    return Standing(
        photo_id=photos[-1].photo_id,
        method=method,
        coverage=coverage,
        uniformity=middle(p.uniformity for p in photos),
        edge_deficit=middle(p.edge_deficit for p in photos),
        gap_share=middle(p.gap_share for p in photos),
        lightness=middle(p.lightness for p in photos if p.corrected),
        dark_green=middle(p.dark_green for p in photos if p.corrected),
        cells=typical.cells,
        bed_share=None if None in beds else middle(beds),
    )
