"""Standing: how a tray stands against its own days, its block mates and earlier trays of its crop.

In    numbers of photos by tray
Out   one `Standing` a day; a `View` of one tray, which knows the middle and the spread of its mates
Not   what is out of line (`emergence.py`, `vanishing.py`, `evenness.py`, `paling.py`)

Whatever is raised of the stand has to hold on the two newest days with a usable photo, the later no older
than yesterday (`View.run`), so that one bad photo, or one photo under a wrong tag, alone never raises it.
Mates are compared on the same day and by the same version of the method: median, and as spread the median
absolute deviation times 1.4826 (one over the upper quartile of the standard normal distribution, 0.6745),
which estimates a standard deviation. Other limits here and there are common practice, tried on made
sequences (`tests/bench/test_look_alarm.py`).
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median

from data.look import Look, LookKind, Urgency
from data.numbers import PhotoId
from data.records import DayNumbers, EarlierDay, Tray

__all__ = ["Days", "Number", "Standing", "View", "by_day"]

LEAST_MATES = 2
LEAST_EARLIER = 3  # days of earlier trays
SPREAD_PER_MAD = 1.4826
DOUBTFUL_FALL = 8.0  # points of coverage in a day
RECOVERED = 2.0  # points below what it was
GROWING = 15.0  # % coverage from which a crop gains from day to day
DOUBTFUL_LEAP = 16.0  # points further behind the mates than the day before
RECOVERED_LEAP = 8.0  # points nearer to them again


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """The numbers of one day: the median over the usable photos of that day, by one version of the method."""

    photo_id: PhotoId
    method: str
    coverage: float
    uniformity: float | None
    edge_deficit: float | None
    gap_share: float | None
    lightness: float | None  # of photos whose colours were set right by a patch; else None
    dark_green: float | None
    cells: bytes  # of the photo that is nearest to the median; empty where there are none


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
    return {day: _standing(photos, method or "") for day, photos in sorted(days.items())}


def _standing(photos: Sequence[DayNumbers], method: str) -> Standing:
    return _of_one(photos[0], method) if len(photos) == 1 else _of_many(photos, method)


def _of_one(photo: DayNumbers, method: str) -> Standing:
    return Standing(
        photo_id=photo.photo_id,
        method=method,
        coverage=photo.coverage or 0.0,
        uniformity=photo.uniformity,
        edge_deficit=photo.edge_deficit,
        gap_share=photo.gap_share,
        lightness=photo.lightness if photo.corrected else None,
        dark_green=photo.dark_green if photo.corrected else None,
        cells=photo.cells,
    )


def _of_many(photos: Sequence[DayNumbers], method: str) -> Standing:
    def middle(values: Iterable[float | None]) -> float | None:
        known = [value for value in values if value is not None]
        return median(known) if known else None

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
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """One tray with all that it can be held against."""

    tray: Tray
    mine: Days
    others: tuple[Days, ...]  # its mates: same crop, block and sowing day
    today: date
    earlier: tuple[EarlierDay, ...] = ()  # days of earlier trays of the crop

    @property
    def days(self) -> tuple[date, ...]:
        """Days with a usable photo, oldest first."""
        return tuple(self.mine)

    @property
    def is_current(self) -> bool:
        """Whether there are two days with a usable photo, the newest today or yesterday."""
        return len(self.mine) >= 2 and next(reversed(self.mine)) >= self.today - timedelta(days=1)

    @property
    def now(self) -> Standing:
        """The newest day."""
        return self.mine[next(reversed(self.mine))]

    def is_doubtful(self, day: date) -> bool:
        """Whether coverage fell on that day as no crop does, and came back or may yet: a bad photo."""
        place = self.days.index(day)
        if place == 0:
            return False
        near = self.days[place - 1 : place + 2]  # the day before, this one, the one after where there is one
        had, here, *then = (self.mine[one].coverage for one in near)
        if had - here >= DOUBTFUL_FALL:
            return not then or then[0] - here >= max(DOUBTFUL_FALL, had - here - RECOVERED)
        return had >= GROWING and self._stood_still(near, here - had)

    def _stood_still(self, near: Sequence[date], gain: float) -> bool:
        """Whether a tray that grew gained far less than its mates on one day, and caught up or may yet.

        In the days in which a crop closes a bad photo shows no fall. A tray that is late has just begun.
        """
        before, now, *then = (self._behind(one) for one in near)
        leap = now - before
        if leap < max(DOUBTFUL_LEAP, gain):  # the mates' gain is the tray's own and the leap
            return False
        return not then or now - then[0] >= RECOVERED_LEAP

    def _behind(self, day: date) -> float:
        """Points of coverage below the middle of the mates; 0 where none can be asked."""
        mates = self.mates(day, lambda one: one.coverage)
        return 0.0 if mates is None else mates[0] - self.mine[day].coverage

    def run(self, holds: Callable[[date], bool], *, sure: bool = False) -> tuple[date, ...]:
        """The newest days on which something holds without a break, oldest first; at least two, or none.

        With `sure` days with a doubtful photo are passed over, as if there had been none.
        """
        found: list[date] = []
        for day in reversed(self.mine):
            if sure and self.is_doubtful(day):
                continue
            if not holds(day):
                break
            found.append(day)
        return tuple(reversed(found)) if len(found) >= 2 else ()

    def mates(self, day: date, number: Number) -> tuple[float, float] | None:
        """Median and spread of the mates' numbers on a day; None where fewer than two can be asked."""
        method = self.mine[day].method
        values = [
            value
            for days in self.others
            if (one := days.get(day)) is not None
            and one.method == method
            and (value := number(one)) is not None
        ]
        if len(values) < LEAST_MATES:
            return None
        middle = median(values)
        return middle, SPREAD_PER_MAD * median(abs(value - middle) for value in values)

    def crop_before(
        self, day: date, number: Callable[[EarlierDay], float | None]
    ) -> tuple[float, float] | None:
        """Median and spread of earlier trays of the crop at the same age, by the same version."""
        age, method = self.tray.day(day), self.mine[day].method
        values = [
            value
            for one in self.earlier
            if one.day == age and one.method == method and (value := number(one)) is not None
        ]
        if len(values) < LEAST_EARLIER:
            return None
        middle = median(values)
        return middle, SPREAD_PER_MAD * median(abs(value - middle) for value in values)

    def look(
        self,
        what: LookKind,
        urgency: Urgency,
        run: Sequence[date],
        sentence: str,
        first: str,
        size: float,
    ) -> Look:
        """A look at this tray since the first day of a run."""
        return Look(
            tray_id=self.tray.id,
            code=self.tray.code,
            what=what,
            urgency=urgency,
            since=run[0],
            sentence=sentence,
            first=first,
            photo_id=self.now.photo_id,
            size=size,
        )
