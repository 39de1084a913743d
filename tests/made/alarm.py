"""Alarm: the look list, played day by day over made trays -> how soon it tells, how often without cause.

In    a fault or a disturbance, seeds
Out   `Outcome`: days from the fault to the first entry; entries on healthy trays
Not   what counts as good (`tests/bench/test_look_alarm.py`, `test_alarm.py`)
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

import numpy as np

from data.look import LookKind
from data.numbers import TrayId
from data.records import DayNumbers, SeenSuspect
from data.watch import Morning, looks
from tests.made.growing import CROPS, Fault, MadeTray, Walls, a_block, day_of

__all__ = ["Outcome", "play", "play_disturbed", "play_healthy"]

FIRST_DAY, LAST_DAY = 2, 13
OF_PHOTOS = {LookKind.NO_PHOTO, LookKind.UNMATCHED, LookKind.UNUSABLE, LookKind.READY}


@dataclass
class Outcome:
    """What came of one or many plays."""

    delays: list[int | None] = field(default_factory=list)  # days from the fault to the first entry
    tray_days: int = 0  # of healthy trays
    entry_days: int = 0  # of them with an entry
    entries: int = 0  # of entries, however many days each stands there
    kinds: dict[str, int] = field(default_factory=dict)  # of the entries on healthy trays
    named: set[LookKind] = field(default_factory=set)  # what was ever said of the sick tray

    def within(self, days: int) -> float:
        """Share of the faults that were told within so many days."""
        told = [d for d in self.delays if d is not None and d <= days]
        return len(told) / len(self.delays) if self.delays else float("nan")

    @property
    def false_entries(self) -> float:
        """Entries per 100 healthy tray-days."""
        return 100.0 * self.entries / max(1, self.tray_days)

    @property
    def false_entry_days(self) -> float:
        """Days with an entry per 100 healthy tray-days."""
        return 100.0 * self.entry_days / max(1, self.tray_days)

    def add(self, other: "Outcome") -> "Outcome":
        """Both together."""
        self.delays += other.delays
        self.named |= other.named
        self.tray_days += other.tray_days
        self.entry_days += other.entry_days
        self.entries += other.entries
        for kind, count in other.kinds.items():
            self.kinds[kind] = self.kinds.get(kind, 0) + count
        return self


Shown = dict[TrayId, dict[int, set[LookKind]]]  # tray -> day -> what the list says of it


def shown(block: list[MadeTray], photos: dict[int, list[DayNumbers]]) -> Shown:
    """The list of each day, without what concerns photos alone."""
    suspects: dict[int, list[SeenSuspect]] = {
        day: [s for made in block for s in made.suspects(day)] for day in photos
    }
    told: Shown = {made.tray.id: {} for made in block}
    numbers: list[DayNumbers] = []
    seen: list[SeenSuspect] = []
    for day in sorted(photos):
        numbers += photos[day]
        taken = {one.photo_id for one in photos[day]}
        seen += [s for s in suspects[day] if s.photo_id in taken]
        morning = Morning(
            today=day_of(day),
            trays=[made.tray for made in block],
            numbers=sorted(numbers, key=lambda n: (n.tray_id, n.taken_at)),
            suspects=sorted(seen, key=lambda s: (s.tray_id, s.taken_at)),
        )
        for look in looks(morning):
            kinds = {one.what for one in look.whole} - OF_PHOTOS
            if kinds:
                told[look.tray_id][day] = kinds
    return told


def false_ones(told: dict[int, set[LookKind]], days: Iterable[int]) -> Outcome:
    """Entries of one tray on days on which nothing is wrong with it."""
    outcome, before = Outcome(), set[LookKind]()
    for day in days:
        kinds = told.get(day, set())
        outcome.tray_days += 1
        outcome.entry_days += bool(kinds)
        outcome.entries += bool(kinds) and not before
        for kind in kinds - before:
            outcome.kinds[str(kind)] = outcome.kinds.get(str(kind), 0) + 1
        before = kinds
    return outcome


DAYS = range(FIRST_DAY, LAST_DAY + 1)


def play(name: str, seed: int, mates: int = 5, rough: float = 1.0, walls: Walls = Walls.NONE) -> Outcome:
    """One block whose first tray has the fault; all others, and the first before it, are healthy."""
    rng = np.random.default_rng(seed)
    crop = CROPS[seed % len(CROPS)]
    onset = {"late emergence": 0, "patchy": 0}.get(name)
    if onset is None:
        onset = int(crop.middle + rng.integers(0, 4))
    if name in ("damping off", "paling"):
        onset = int(crop.middle + 2 + rng.integers(0, 2))
    block = a_block(1, crop, mates, Fault(name, onset), rng, rough, walls)
    photos = {day: [made.numbers(day) for made in block] for day in DAYS}
    told = shown(block, photos)
    outcome, sick = Outcome(), block[0]
    begins = sick.begins()
    if begins is not None and begins <= LAST_DAY - 2:
        found = next((day for day in DAYS if day >= onset and told[sick.tray.id].get(day)), None)
        outcome.delays.append(None if found is None else found - begins)
        outcome.named = {kind for day in DAYS if day >= onset for kind in told[sick.tray.id].get(day, ())}
        outcome.add(false_ones(told[sick.tray.id], range(FIRST_DAY, max(FIRST_DAY, onset))))
    for made in block[1:]:
        outcome.add(false_ones(told[made.tray.id], DAYS))
    return outcome


def play_healthy(seed: int, mates: int = 5, rough: float = 1.0, walls: Walls = Walls.NONE) -> Outcome:
    """One block in which nothing is wrong."""
    rng = np.random.default_rng(seed)
    block = a_block(1, CROPS[seed % len(CROPS)], mates, None, rng, rough, walls)
    told = shown(block, {day: [made.numbers(day) for made in block] for day in DAYS})
    outcome = Outcome()
    for made in block:
        outcome.add(false_ones(told[made.tray.id], DAYS))
    return outcome


def play_disturbed(name: str, seed: int, mates: int = 5) -> Outcome:
    """A healthy block whose first tray is photographed badly: what that alone puts on the list.

    The same block is played without the disturbance; what stands there then as well, or stood there the day
    before, is not counted: an entry that nobody can tell anew stays.
    """
    rng = np.random.default_rng(seed)
    crop = CROPS[seed % len(CROPS)]
    block = a_block(1, crop, mates, None, rng)
    odd_day = int(rng.integers(int(crop.middle), LAST_DAY))
    other = a_block(2, CROPS[(seed + 2) % len(CROPS)], 0, None, rng)[0]
    usual = {day: [made.numbers(day) for made in block] for day in DAYS}
    photos = {day: list(some) for day, some in usual.items()}
    for day in DAYS:
        mine = usual[day][0]
        if name == "one bad photo" and day == odd_day:
            photos[day][0] = block[0].numbers(day, bad=True)
        elif name == "wrong tag for a day" and day == odd_day:
            photos[day][0] = other.numbers(day)._replace(tray_id=mine.tray_id, photo_id=mine.photo_id)
        elif name == "missing days" and rng.random() < 0.35:
            photos[day] = photos[day][1:]
        elif name == "another method" and day >= odd_day:
            photos[day] = [made.numbers(day, method="learned 2") for made in block]
    first = block[0].tray.id
    before, after = shown(block, usual)[first], shown(block, photos)[first]
    stands = {day: before.get(day, set()) | before.get(day - 1, set()) for day in DAYS}
    caused = {day: kinds - stands[day] for day, kinds in after.items()}
    return false_ones(caused, DAYS)
