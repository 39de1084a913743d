"""Medium growth: mean coverage of each treatment over the days since sowing.

In    trays of one crop with the treatment of each, numbers of their photos, the version of the method
Out   `GrowthLine`s, one for each treatment: a point for each day on which trays were photographed
Not   the growth of one tray with its curve (`growth.py`), what is compared (`verdict.py`)

A mean of few trays jumps when another tray is photographed the next day, so each point says how many it
holds.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from data.numbers import TrayId
from data.records import Tray
from data.trialrows import PhotoNumbers

__all__ = ["GrowthLine", "GrowthPoint", "growth_by_treatment"]


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthPoint:
    """One day of one treatment."""

    day: int  # since sowing
    coverage: float  # mean of its trays, %
    trays: int


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthLine:
    """One treatment, by day."""

    treatment: str
    points: tuple[GrowthPoint, ...]


def growth_by_treatment(
    trays: Sequence[Tray],
    treatments: Mapping[TrayId, str],
    photos: Iterable[PhotoNumbers],
    method: str | None,
) -> tuple[GrowthLine, ...]:
    """Treatments in the order in which their trays come; the last photo of a tray's day counts."""
    sown = {tray.id: tray for tray in trays if tray.id in treatments}
    seen: dict[tuple[str, int], dict[TrayId, float]] = {}
    for photo in photos:
        tray = sown.get(photo.tray_id)
        if tray is not None and photo.method == method and photo.coverage is not None:
            key = (treatments[tray.id], tray.day(photo.taken_at.date()))
            seen.setdefault(key, {})[tray.id] = photo.coverage
    names = dict.fromkeys(treatments[tray.id] for tray in sown.values())
    return tuple(
        GrowthLine(
            treatment=name,
            points=tuple(
                GrowthPoint(day=day, coverage=sum(shares.values()) / len(shares), trays=len(shares))
                for (whose, day), shares in sorted(seen.items())
                if whose == name
            ),
        )
        for name in names
    )
