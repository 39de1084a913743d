"""Standing: how a tray stands against its own days and its block mates -> looks at its stand.

In    a tray's numbers by day, those of its mates (same crop, block and sowing day)
Out   `Look`s: canopy vanishes, lags behind, uneven, gaps stay, thin edge
Not   mold and missing photos (`watch.py`), a verdict on media

Every one has to hold on the two newest days with a usable photo, the later no older than yesterday, so that
one bad photo alone never raises it. Mates are compared on the same day and by the same version of the method:
median, and as spread the median absolute deviation times 1.4826 (one over the upper quartile of the standard
normal distribution, 0.6745), which estimates a standard deviation. Other limits are common practice.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median

from data.records import DayNumbers, Look, LookKind, PhotoId, Tray, TrayId, Urgency

__all__ = ["Days", "Standing", "by_day", "looks_at_stand"]

LEAST_MATES = 2
SPREAD_PER_MAD = 1.4826
SPREADS = 3.0
LEAST_LAG = 10.0  # points of coverage
FAR_LAG = 20.0  # points of coverage
LEAST_VANISHED = 8.0  # points of coverage below what the tray has had on two days
FULL_ENOUGH = 30.0  # % coverage from which evenness is asked for
UP = 60.0  # % coverage of a crop that should be up
LEAST_UNEVEN = 10.0  # points of uniformity below the mates
POOR_UNIFORMITY = 60.0  # %, where there are no mates
LEAST_GAP_SHARE = 5.0  # %
LEAST_EDGE = 12.0  # points
EDGE_BEYOND_MATES = 8.0  # points


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """The numbers of one day: the median over the usable photos of that day, by one version of the method."""

    photo_id: PhotoId
    method: str
    coverage: float
    uniformity: float | None
    edge_deficit: float | None
    gap_share: float | None


Days = Mapping[date, Standing]
Number = Callable[[Standing], float | None]


def by_day(photos: Iterable[DayNumbers]) -> dict[date, Standing]:
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
    def middle(values: Iterable[float | None]) -> float | None:
        known = [value for value in values if value is not None]
        return known[0] if len(known) == 1 else median(known) if known else None

    return Standing(
        photo_id=photos[-1].photo_id,
        method=method,
        coverage=middle(p.coverage for p in photos) or 0.0,
        uniformity=middle(p.uniformity for p in photos),
        edge_deficit=middle(p.edge_deficit for p in photos),
        gap_share=middle(p.gap_share for p in photos),
    )


def looks_at_stand(
    tray: Tray, mates: Sequence[Tray], days: Mapping[TrayId, Days], today: date
) -> Iterator[Look]:
    """What is out of line on the two newest days of a tray; the gravest of what says the same is enough."""
    mine = days[tray.id]
    newest = list(mine)[-2:]
    if len(newest) < 2 or newest[-1] < today - timedelta(days=1):
        return
    others = [days[mate.id] for mate in mates]
    vanished = _vanished(tray, mine, newest)
    if vanished is not None:
        yield vanished
        return
    lagging = _lagging(tray, mine, others, newest)
    if lagging is not None:
        yield lagging
    for find in (_edge, _gaps, _uneven):
        look = find(tray, mine, others, newest)
        if look is not None:  # a dry edge makes gaps, and gaps make a stand uneven: say it once
            yield look
            return


def _vanished(tray: Tray, mine: Days, newest: Sequence[date]) -> Look | None:
    before = {day: s.coverage for day, s in mine.items() if day < newest[0]}
    if len(before) < 2:
        return None
    best = sorted(before, key=lambda day: before[day])[-2]  # one day alone may have been read too high
    lost = [before[best] - mine[day].coverage for day in newest]
    if before[best] < FULL_ENOUGH or min(lost) < LEAST_VANISHED:
        return None
    return _look(
        tray,
        LookKind.VANISHED,
        Urgency.NOW,
        newest[0],
        mine[newest[-1]],
        f"Coverage fell from {before[best]:.0f} % on {_day(best)} to {mine[newest[-1]].coverage:.0f} %; "
        f"two days running below what it was.",
        "Feel the medium: dry means wilting, water it from below; wet and slimy means damping off, so keep "
        "the tray away from the others.",
    )


def _lagging(tray: Tray, mine: Days, others: Sequence[Days], newest: Sequence[date]) -> Look | None:
    behind: list[float] = []
    for day in newest:
        mates = _mates_on(day, others, mine[day].method, lambda s: s.coverage)
        if mates is None:
            return None
        middle, spread = mates
        lag = middle - mine[day].coverage
        if lag < max(LEAST_LAG, SPREADS * spread):
            return None
        behind.append(lag)
    now, middle = mine[newest[-1]], mine[newest[-1]].coverage + behind[-1]
    how = (
        "more than"
        if behind[-1] > behind[0] + 1
        else "less than"
        if behind[-1] < behind[0] - 1
        else "as much as"
    )
    return _look(
        tray,
        LookKind.LAGGING,
        Urgency.TODAY if behind[-1] >= FAR_LAG else Urgency.SOON,
        newest[0],
        now,
        f"Coverage {now.coverage:.0f} %, {behind[-1]:.0f} points below the middle of its block mates "
        f"({middle:.0f} %); {how} on the day before ({behind[0]:.0f} points).",
        "Lift the tray: is it lighter than its mates, is the medium dry, is its place darker or colder?",
    )


def _uneven(tray: Tray, mine: Days, others: Sequence[Days], newest: Sequence[date]) -> Look | None:
    for day in newest:
        one = mine[day]
        if one.uniformity is None or one.coverage < FULL_ENOUGH:
            return None
        mates = _mates_on(day, others, one.method, lambda s: s.uniformity)
        limit = POOR_UNIFORMITY if mates is None else mates[0] - max(LEAST_UNEVEN, SPREADS * mates[1])
        if one.uniformity > limit:
            return None
    now = mine[newest[-1]]
    return _look(
        tray,
        LookKind.UNEVEN,
        Urgency.SOON,
        newest[0],
        now,
        f"Uniformity {now.uniformity:.0f} % at {now.coverage:.0f} % coverage"
        f"{_beside(newest[-1], others, now.method, lambda s: s.uniformity, '%')}.",
        "Look where the thin cells lie: along one side it is water or light, scattered it is seed or sowing.",
    )


def _gaps(tray: Tray, mine: Days, others: Sequence[Days], newest: Sequence[date]) -> Look | None:
    for day in newest:
        one = mine[day]
        if one.gap_share is None or one.coverage < UP or one.gap_share < LEAST_GAP_SHARE:
            return None
        mates = _mates_on(day, others, one.method, lambda s: s.gap_share)
        if mates is not None and one.gap_share < mates[0] + SPREADS * mates[1]:
            return None
    first, now = mine[newest[0]], mine[newest[-1]]
    return _look(
        tray,
        LookKind.GAPS,
        Urgency.SOON,
        newest[0],
        now,
        f"Gaps take {now.gap_share:.0f} % of the tray ({first.gap_share:.0f} % on the day before), though "
        f"the crop is up: {now.coverage:.0f} % coverage.",
        "Look into the gaps: bare medium, seed that did not sprout, or shoots that fell over.",
    )


def _edge(tray: Tray, mine: Days, others: Sequence[Days], newest: Sequence[date]) -> Look | None:
    for day in newest:
        one = mine[day]
        if one.edge_deficit is None or one.coverage < FULL_ENOUGH or one.edge_deficit < LEAST_EDGE:
            return None
        mates = _mates_on(day, others, one.method, lambda s: s.edge_deficit)
        if mates is not None and one.edge_deficit < mates[0] + EDGE_BEYOND_MATES:
            return None
    first, now = mine[newest[0]], mine[newest[-1]]
    if (now.edge_deficit or 0.0) < (first.edge_deficit or 0.0) - 1.0:  # it is closing
        return None
    return _look(
        tray,
        LookKind.EDGE,
        Urgency.SOON,
        newest[0],
        now,
        f"The edge is {now.edge_deficit:.0f} points thinner than the middle ({first.edge_deficit:.0f} on the "
        f"day before){_beside(newest[-1], others, now.method, lambda s: s.edge_deficit, 'points')}.",
        "Feel the medium at the edge: a mat that has dried there does not rewet by itself, so wet it from "
        "above once.",
    )


# --- mates


def _mates_on(day: date, others: Sequence[Days], method: str, number: Number) -> tuple[float, float] | None:
    """Median and spread of the mates' numbers on a day; None where fewer than two can be asked."""
    values = [
        value
        for days in others
        if day in days and days[day].method == method and (value := number(days[day])) is not None
    ]
    if len(values) < LEAST_MATES:
        return None
    middle = median(values)
    return middle, SPREAD_PER_MAD * median(abs(value - middle) for value in values)


def _beside(day: date, others: Sequence[Days], method: str, number: Number, unit: str) -> str:
    mates = _mates_on(day, others, method, number)
    return "" if mates is None else f"; its block mates have {mates[0]:.0f} {unit}"


def _look(
    tray: Tray, what: LookKind, urgency: Urgency, since: date, now: Standing, sentence: str, first: str
) -> Look:
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=what,
        urgency=urgency,
        since=since,
        sentence=sentence,
        first=first,
        photo_id=now.photo_id,
    )


def _day(day: date) -> str:
    return f"{day.day} {day:%B}"
