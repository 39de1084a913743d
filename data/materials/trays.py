"""Tray materials: what the trays of a book tell of their media.

In    a book: weights, labour, cuts and logs of its trays
Out   `MediumFacts` of each medium
Not   what is reckoned from them (`cells.py`)
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import datetime, timedelta
from functools import lru_cache
from statistics import fmean
from typing import TYPE_CHECKING

from data.costs import Labour, minutes_by_kind
from data.growing.conditions import Medium
from data.heat import degree_hours_below
from data.materials.facts import MediumFacts
from data.medium.benchtest import BenchTest
from data.medium.drying import MOST_HOURS, hours_until, stretches
from data.medium.factors import Factor
from data.readings import Reading, ReadingKind
from data.records import Tray
from data.statistics.estimate import Estimate
from data.water import DryFrom, dry_weight

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["TrayMaterials", "numbers_of", "reckoned_of"]

# rows of the table that rest on notes of single trays, and what a tray's number is of several notes
OF_TRAYS: Mapping[str, tuple[ReadingKind, Callable[[Sequence[float]], float]]] = {
    "cut quality": (ReadingKind.CUT_QUALITY, fmean),
    "slid": (ReadingKind.SLID, max),
    "shelf life": (ReadingKind.SHELF_LIFE, fmean),
    "taste": (ReadingKind.TASTE, fmean),
    "sweepings": (ReadingKind.SWEEPINGS, sum),
    "sweepings by eye": (ReadingKind.SWEEPINGS_EYE, fmean),
    "root warmth": (ReadingKind.MEDIUM_TEMPERATURE, fmean),
}
MINUTES = {Labour.SET_UP: "set-up", Labour.CARE: "care", Labour.AFTER: "clean-up"}
KNOWN_TRAYS = 1024  # whose drying is remembered
FLOOR_C = 18.0  # at night; below it warm crops come up slowly (common practice)


def numbers_of(
    tray: Tray, noted: Mapping[ReadingKind, Sequence[tuple[datetime, float]]]
) -> Iterator[tuple[str, Tray, float]]:
    """What was noted of one tray as the rows of the table count it: row, tray, number."""
    for row, (kind, of_tray) in OF_TRAYS.items():
        if values := [value for _, value in noted.get(kind, ())]:
            yield row, tray, of_tray(values)
    minutes = minutes_by_kind(noted.get(ReadingKind.LABOUR, ()), tray.sown_at, tray.done_at)
    for labour, value in minutes.items():
        yield MINUTES[labour], tray, value


def reckoned_of(
    tray: Tray, noted: Mapping[ReadingKind, Sequence[tuple[datetime, float]]]
) -> Iterator[tuple[str, Tray, float]]:
    """What weights and logs of one tray come to: row, tray, number; the table has tests of these, too."""
    held, hours = _water_of(tray, noted.get(ReadingKind.WEIGHT, ()))
    cold, _ = degree_hours_below(noted.get(ReadingKind.MEDIUM_TEMPERATURE, ()), FLOOR_C)
    found = {"capacity": held, "dry after": None if hours is None else hours.value, "cold nights": cold}
    yield from ((row, tray, value) for row, value in found.items() if value is not None)


class TrayMaterials:
    """Readings of all trays by medium, each kind read once."""

    def __init__(self, book: "Book", media: Sequence[Medium]) -> None:
        self._book = book
        self._areas = {kind.name: kind.inner_cm2 for kind in book.tray_types()}
        trays = (*book.trays(), *book.ended_trays())
        self._trays: dict[str, list[Tray]] = {medium.name: [] for medium in media}
        for tray in trays:
            self._trays.setdefault(tray.medium, []).append(tray)
        kinds = (
            ReadingKind.WEIGHT, ReadingKind.LABOUR, ReadingKind.CUT_QUALITY, ReadingKind.FRESH_MASS,
            ReadingKind.SWEEPINGS, ReadingKind.SWEEPINGS_EYE, ReadingKind.MEDIUM_TEMPERATURE,
            ReadingKind.SHELF_LIFE, ReadingKind.TASTE, ReadingKind.SLID,
        )  # fmt: skip
        self._of: dict[ReadingKind, dict[int, list[tuple[datetime, float]]]] = {}
        for kind in kinds:
            found: dict[int, list[tuple[datetime, float]]] = {}
            for one in book.readings(kind=kind):
                if one.tray_id is not None:
                    found.setdefault(one.tray_id, []).append((one.taken_at, one.value))
            self._of[kind] = found

    def trays_weighed(self, medium: str) -> int:
        """How many trays have a fresh mass."""
        return len(self._sums(medium, ReadingKind.FRESH_MASS))

    def numbers(self) -> Iterator[tuple[str, Tray, float]]:
        """What was noted of single trays as the rows of the table count it: row, tray, number."""
        for tray in (one for trays in self._trays.values() for one in trays):
            yield from numbers_of(tray, {kind: of.get(tray.id, ()) for kind, of in self._of.items()})

    def crops_weighed(self, medium: str) -> frozenset[str]:
        """Crops of the trays that have a fresh mass."""
        weighed = self._of[ReadingKind.FRESH_MASS]
        return frozenset(tray.crop for tray in self._trays[medium] if tray.id in weighed)

    def _of_trays(self, medium: str, kind: ReadingKind) -> list[list[float]]:
        of_tray = self._of[kind]
        return [
            [value for _, value in of_tray[tray.id]] for tray in self._trays[medium] if tray.id in of_tray
        ]

    def _means(self, medium: str, kind: ReadingKind) -> list[float]:
        """One mark a tray."""
        return [fmean(noted) for noted in self._of_trays(medium, kind)]

    def _sums(self, medium: str, kind: ReadingKind) -> list[float]:
        """One amount a tray: it may be cut twice, and a verdict on yield adds both up, too."""
        return [sum(noted) for noted in self._of_trays(medium, kind)]

    def facts(
        self,
        medium: Medium,
        tests: Sequence[tuple[BenchTest, Sequence[Reading]]],
        factors: Sequence[Factor],
        trays_a_week: float,
    ) -> MediumFacts:
        """All of one medium."""
        trays = self._trays[medium.name]
        capacities, dry_after = self._water(trays)
        feeds = {tray.feed for tray in trays if tray.feed is not None}
        kind = trays[-1].tray_type if trays else next(iter(self._areas))
        logged = [self._of[ReadingKind.MEDIUM_TEMPERATURE].get(tray.id, []) for tray in trays]
        nights = [degree_hours_below(samples, FLOOR_C) for samples in logged if samples]
        known = [(value, n) for value, n in nights if value is not None]
        return MediumFacts(
            medium=medium.name,
            kind=medium.kind,
            area_cm2=self._areas.get(kind, next(iter(self._areas.values()))),
            feed=medium.feed if medium.feed is not None else (feeds.pop() if len(feeds) == 1 else None),
            seating=medium.seating,
            watering=medium.watering,
            tests=tests,
            factors=factors,
            trays_a_week=trays_a_week,
            capacities=capacities,
            dry_after=dry_after,
            minutes=self._minutes(trays),
            cut_quality=self._means(medium.name, ReadingKind.CUT_QUALITY),
            slid=[max(noted) for noted in self._of_trays(medium.name, ReadingKind.SLID)],
            shelf_days=self._means(medium.name, ReadingKind.SHELF_LIFE),
            taste=self._means(medium.name, ReadingKind.TASTE),
            fresh_g=self._sums(medium.name, ReadingKind.FRESH_MASS),
            sweepings_g=self._sums(medium.name, ReadingKind.SWEEPINGS),
            sweepings_marks=self._means(medium.name, ReadingKind.SWEEPINGS_EYE),
            root_warmth=self._means(medium.name, ReadingKind.MEDIUM_TEMPERATURE),
            cold_nights=(fmean(v for v, _ in known), sum(n for _, n in known)) if known else (None, 0),
        )

    def _minutes(self, trays: Sequence[Tray]) -> dict[Labour, list[float]]:
        found: dict[Labour, list[float]] = {}
        for tray in trays:
            noted = self._of[ReadingKind.LABOUR].get(tray.id, [])
            for kind, minutes in minutes_by_kind(noted, tray.sown_at, tray.done_at).items():
                found.setdefault(kind, []).append(minutes)
        return found

    def _water(self, trays: Sequence[Tray]) -> tuple[list[float], list[Estimate]]:
        """g held and hours until dry of each tray that tells them."""
        weights = self._of[ReadingKind.WEIGHT]
        told = [_water_of(tray, weights.get(tray.id, [])) for tray in trays]
        held = [grams for grams, _ in told if grams is not None]
        return held, [hours for _, hours in told if hours is not None]


def _water_of(tray: Tray, weights: Sequence[tuple[datetime, float]]) -> tuple[float | None, Estimate | None]:
    """g held and hours until dry, as the weighings of one tray tell them."""
    dry = dry_weight(weights, sown_on=tray.sown_at.date())
    if dry.rests_on is not DryFrom.OWN or dry.full_g is None or dry.dry_g is None or dry.grams is None:
        return None, None
    held = dry.full_g - dry.dry_g
    open_from = tray.blackout_to or tray.sown_at  # under cover little dries
    dried = stretches([one for one in weights if one[0] >= open_from])
    told = next((one for one in dried if len(one) >= 3), None)
    if told is None:
        return held, None
    return held, _hours_of(tuple(told), dry.dry_g, dry.grams)


@lru_cache(maxsize=KNOWN_TRAYS)
def _hours_of(told: tuple[tuple[datetime, float], ...], dry_g: float, thirsty_g: float) -> Estimate | None:
    """Hours until it wants water; curves are fitted for it (17 ms), each time that a trial is read."""
    since = [(at - told[0][0]) / timedelta(hours=1) for at, _ in told]
    water = [grams - dry_g for _, grams in told]
    found = hours_until(since, water, thirsty_g - dry_g) if min(water) >= 0 else None
    return found if found is not None and 0 < found.value < MOST_HOURS else None
