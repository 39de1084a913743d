"""Watch: what is known of the growing trays -> what needs a look, most urgent first.

In    trays, the numbers of their photos, suspects, weights, logs, a person's answers, today
Out   `Look`s, one a tray and one for what many share: what, how soon and why, since when, one sentence with
      the numbers, what to do first
Not   measuring (`vision`), comparing media (a verdict is no matter of one morning)

A list that cries every day is not read. Nothing is raised on one number alone where the tray's own days or
its block mates can be asked: numbers of the stand have to be out of line on the two newest days
(`looklist/view.py`). The exception is possible mold (`looklist/mold.py`), where waiting may cost more than a
look. How often it cries without cause is measured on made sequences (`tests/bench/test_look_alarm.py`).
"""

import logging
from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time
from typing import TYPE_CHECKING

from data.errors import BookLocked, BookReadOnly, DiskFull
from data.growing.air import AirSample
from data.growing.conditions import Crop, Medium
from data.look import Look, LookKind
from data.looklist.answers import Answer, unanswered
from data.looklist.batches import together
from data.looklist.doubted import look_at_doubted, told_of_many
from data.looklist.emergence import look_at_lag, look_at_patchiness
from data.looklist.evenness import look_at_evenness
from data.looklist.missing import looks_for_missing, looks_for_unusable
from data.looklist.mold import MOLD_CAUTION, looks_at_mold
from data.looklist.paling import look_at_colour
from data.looklist.ripeness import look_at_ripeness
from data.looklist.stackair import look_at_stack
from data.looklist.standing import by_day
from data.looklist.thirst import look_at_thirst
from data.looklist.urgency import combined
from data.looklist.vanishing import look_at_vanishing
from data.looklist.view import View
from data.numbers import Said, TrayId
from data.records import DayNumbers, EarlierDay, SeenSuspect, Tray

if TYPE_CHECKING:
    from data.chapters.lookbook import LookBook

__all__ = ["MOLD_CAUTION", "Morning", "looks", "read_looks", "reasons"]

log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True, kw_only=True)
class Morning:
    """All that the look list rests on."""

    today: date
    trays: Sequence[Tray]  # growing ones, in rack order
    numbers: Iterable[DayNumbers] = ()  # by tray and time
    method: str | None = None  # the version that the numbers are asked of
    suspects: Iterable[SeenSuspect] = ()  # by tray and time
    proposed: Collection[TrayId] = ()  # trays whose photo of today waits to be confirmed
    earlier: Sequence[EarlierDay] = ()
    crops: Mapping[str, Crop] = field(default_factory=dict)
    media: Mapping[str, Medium] = field(default_factory=dict)
    weights: Mapping[TrayId, Sequence[tuple[datetime, float]]] = field(default_factory=dict)  # g
    watered: Mapping[TrayId, Sequence[datetime]] = field(default_factory=dict)
    air: Mapping[str, Sequence[AirSample]] = field(default_factory=dict)  # of shelves with stacked trays
    now: datetime | None = None  # by default the evening of today
    answers: Sequence[Answer] = ()


def read_looks(book: "LookBook", morning: Morning | None = None) -> tuple[Look, ...]:
    """What needs a look in this book now, less what a person has answered; keeps the history of the list."""
    morning = morning or book.morning()
    found = reasons(morning)
    try:
        book.keep_history(found, morning)
    except (BookReadOnly, BookLocked, DiskFull):
        log.info("the history of the look list waits for a better time", exc_info=True)
    return _listed(morning, unanswered(found, morning.answers, morning.today))


def looks(morning: Morning) -> tuple[Look, ...]:
    """The same from records alone; nothing is kept."""
    return _listed(morning, unanswered(reasons(morning), morning.answers, morning.today))


def reasons(morning: Morning) -> tuple[Look, ...]:
    """Every single reason, answered or not, in no order; several of one tray stand side by side."""
    today = morning.today
    sown = [tray for tray in morning.trays if tray.sown_at.date() <= today]
    photos: dict[TrayId, list[DayNumbers]] = defaultdict(list)
    evening = datetime.combine(today, time.max)
    for one in morning.numbers:
        if one.taken_at <= evening:
            photos[one.tray_id].append(one)
    seen: dict[TrayId, list[SeenSuspect]] = defaultdict(list)
    for suspect in morning.suspects:
        if suspect.taken_at <= evening:
            seen[suspect.tray_id].append(suspect)
    found: list[Look] = []
    for view in _views(sown, photos, morning):
        tray = view.tray
        found += (
            _with_size(look, seen[tray.id]) for look in looks_at_mold(tray, seen[tray.id], photos[tray.id])
        )
        found += _at_stand(view, morning)
        found += looks_for_unusable(tray, photos[tray.id], today)
        if (doubted := look_at_doubted(tray, photos[tray.id], today)) is not None:
            found.append(doubted)
        found += _noted(tray, morning)
    found += looks_for_missing(sown, photos, today, morning.proposed)
    return tuple(found)


def _listed(morning: Morning, found: Iterable[Look]) -> tuple[Look, ...]:
    """One line a tray, most urgent first; what the camera or the light did to many trays once beside."""
    many, others = told_of_many(tuple(found))
    by_tray: dict[TrayId, list[Look]] = defaultdict(list)
    for look in others:
        by_tray[look.tray_id].append(look)
    trays = {tray.id: tray for tray in morning.trays}
    each = [*by_tray.values(), *([look] for look in many)]
    lines = together([combined(some) for some in each], trays)
    place = {tray: n for n, tray in enumerate(trays)}
    order = {kind: n for n, kind in enumerate(LookKind)}
    return tuple(sorted(lines, key=lambda look: (look.urgency, order[look.what], place[look.tray_id])))


def _views(
    trays: Sequence[Tray], photos: Mapping[TrayId, Sequence[DayNumbers]], morning: Morning
) -> Iterator[View]:
    days = {tray.id: by_day(photos[tray.id]) for tray in trays}
    mates = _alike(trays)
    earlier: dict[str, list[EarlierDay]] = defaultdict(list)
    for one in morning.earlier:
        earlier[one.crop].append(one)
    for tray in trays:
        yield View(
            tray=tray,
            mine=days[tray.id],
            others=tuple(days[mate.id] for mate in mates[tray.id]),
            today=morning.today,
            earlier=tuple(earlier[tray.crop]),
            medium_kind=morning.media[tray.medium].kind if tray.medium in morning.media else "",
        )


def _at_stand(view: View, morning: Morning) -> Iterator[Look]:
    """What is out of line on the two newest days of a tray; canopy that went says all the rest."""
    if not view.is_current:
        return
    vanished = look_at_vanishing(view)
    if vanished is not None:
        yield vanished
        return
    evenness = look_at_evenness(view)
    found = (
        look_at_lag(view),
        evenness,
        look_at_patchiness(view) if evenness is None else None,  # what says the same is said once
        look_at_colour(view),
        look_at_ripeness(view, morning.crops.get(view.tray.crop)),
    )
    yield from (look for look in found if look is not None)


def _noted(tray: Tray, morning: Morning) -> Iterator[Look]:
    """What weights and logs tell, which no photo shows."""
    now = morning.now or datetime.combine(morning.today, time(20))
    weights = morning.weights.get(tray.id, ())
    found = (
        look_at_thirst(tray, weights, morning.watered.get(tray.id, ()), now) if weights else None,
        look_at_stack(tray, morning.air.get(tray.shelf, ()), now),
    )
    yield from (look for look in found if look is not None)


def _with_size(look: Look, seen: Sequence[SeenSuspect]) -> Look:
    """How large all open patches of the photo are, so that one more brings an answered look back."""
    if look.what is not LookKind.SUSPECT:
        return look
    areas = [s.area_cm2 or 0.0 for s in seen if s.photo_id == look.photo_id and s.said is not Said.NOT_MOLD]
    return replace(look, size=sum(areas))


def _alike(trays: Iterable[Tray]) -> dict[TrayId, tuple[Tray, ...]]:
    """The mates of each tray: same crop, sowing day and block (or shelf, where no block is named)."""
    groups: dict[tuple[object, ...], list[Tray]] = defaultdict(list)
    for tray in trays:
        place = (tray.trial, tray.block) if tray.block is not None else (None, tray.shelf)
        groups[(tray.crop, tray.sown_at.date(), place)].append(tray)
    return {
        tray.id: tuple(mate for mate in group if mate.id != tray.id)
        for group in groups.values()
        for tray in group
    }
