"""Medium growth: mean share under canopy of each treatment over the days since sowing.

In    trays of one crop with the treatment of each, numbers of their photos, the version of the method
Out   `GrowthLine`s, one for each treatment: a point for each day on which trays were photographed
Not   the growth of one tray with its curve (`growth.py`), what is compared (`verdict`)

A mean of few trays jumps when another tray is photographed the next day, so each point says how many it
holds. Media at different heights in the tray stand side by side here, so the share is that of the growing bed
where all photos know it, as in a verdict; else of the inner area for all (`verdict/countedof.py`).
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from data.numbers import TrayId
from data.records import Tray
from data.tables.trialrows import PhotoNumbers
from data.verdict.countedof import CountedOf, counted_of, share_of

__all__ = ["GrowthLine", "GrowthPoint", "growth_by_treatment"]


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthPoint:
    """One day of one treatment."""

    day: int  # since sowing
    share: float  # mean of its trays, %
    trays: int


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthLine:
    """One treatment, by day."""

    treatment: str
    points: tuple[GrowthPoint, ...]
    counted: CountedOf  # what all lines of a crop are a share of


def growth_by_treatment(
    trays: Sequence[Tray],
    treatments: Mapping[TrayId, str],
    photos: Iterable[PhotoNumbers],
    method: str | None,
) -> tuple[GrowthLine, ...]:
    """Treatments in the order in which their trays come; of a tray's day the last photo counts that is
    not in doubt.
    """
    sown = {tray.id: tray for tray in trays if tray.id in treatments}
    told = [photo for photo in photos if photo.tray_id in sown and photo.method == method]
    counted = counted_of(told)
    chosen: dict[tuple[TrayId, int], PhotoNumbers] = {}
    for photo in told:
        key = (photo.tray_id, sown[photo.tray_id].day(photo.taken_at.date()))
        if share_of(photo, counted) is not None and photo.replaces(chosen.get(key)):
            chosen[key] = photo
    seen: dict[tuple[str, int], dict[TrayId, float]] = {}
    for (tray, day), photo in chosen.items():
        seen.setdefault((treatments[tray], day), {})[tray] = share_of(photo, counted) or 0.0
    names = dict.fromkeys(treatments[tray.id] for tray in sown.values())
    return tuple(
        GrowthLine(
            treatment=name,
            counted=counted,
            points=tuple(
                GrowthPoint(day=day, share=sum(shares.values()) / len(shares), trays=len(shares))
                for (whose, day), shares in sorted(seen.items())
                if whose == name
            ),
        )
        for name in names
    )
