"""Noting: made weights and shelf logs with known truth -> how the look list answers to them.

In    seeds
Out   `Told` counts: what was told in time, what was told without cause
Not   photos (`growing.py`, `alarm.py`)

A tray of 400 g dry holds 500 g of water, loses 4 to 9 g an hour and is weighed at eight each morning, to 5
g; it was weighed dry and full when it was set up. Its grower waters it to the full below 60 % of that, until
one day nobody does. A shelf's logger tells temperature and humidity every half hour, to 0.3 K and 2 %.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta

import numpy as np

from data.growing.air import AirSample
from data.look import LookKind, Urgency
from data.watch import Morning, looks
from tests.data.builders import a_kept_tray

__all__ = ["Told", "play_drying", "play_stack"]

SET_UP = datetime(2026, 3, 1, 7)
DRY_G, HELD_G, RESERVE = 400.0, 500.0, 0.3  # below 30 % of its water a tray is called dry


@dataclass
class Told:
    """Mornings by what was true and what was told."""

    right: int = 0
    missed: int = 0
    without_cause: int = 0
    quiet: int = 0

    def note(self, true: bool, told: bool) -> None:
        """One morning more."""
        if true:
            self.right += told
            self.missed += not told
        else:
            self.without_cause += told
            self.quiet += not told


def play_drying(seed: int, told: Told) -> None:
    """Ten mornings of a tray that is watered until day 5 to 8, and no more from then on."""
    rng = np.random.default_rng(seed)
    pace, forgotten = rng.uniform(4, 9), int(rng.integers(5, 9))
    weights = [(SET_UP, DRY_G + rng.normal(0, 2)), (SET_UP + timedelta(hours=1), DRY_G + HELD_G)]
    watered: list[datetime] = [SET_UP + timedelta(hours=1)]
    water = HELD_G
    for day in range(1, 11):
        water = max(0.0, water - pace * rng.uniform(0.9, 1.1) * (23 if day == 1 else 24))
        now = SET_UP + timedelta(days=day, hours=1)
        weights.append((now, DRY_G + water + rng.normal(0, 5)))
        dry_by_tonight = water - pace * 14 <= RESERVE * HELD_G
        near = abs(water - pace * 14 - RESERVE * HELD_G) < 25 or abs(water - RESERVE * HELD_G) < 10
        found = looks(
            Morning(
                today=now.date(), now=now, trays=[a_kept_tray(1, sown_at=SET_UP)],
                weights={a_kept_tray(1).id: weights}, watered={a_kept_tray(1).id: watered},
            )
        )  # fmt: skip
        says = any(look.what is LookKind.DRY and look.urgency <= Urgency.TODAY for look in found)
        enough = sum(at > watered[-1] for at, _ in weights) >= 2 or water <= RESERVE * HELD_G
        if not near and enough:  # with one weight since watering nobody knows the pace
            told.note(dry_by_tonight, says)
        if water < 0.6 * HELD_G and day < forgotten:
            water = HELD_G
            watered.append(now + timedelta(minutes=5))
            weights.append((now + timedelta(minutes=20), DRY_G + water + rng.normal(0, 5)))


def play_stack(seed: int, told: Told) -> None:
    """One night under a stack: cool and moist, warm and dry, or warm and wet for up to fourteen hours."""
    rng = np.random.default_rng(seed)
    begin = datetime(2026, 3, 1, 20)
    hours = rng.choice([0.0, 3.0, 5.0, 11.0, 14.0])
    air = []
    for step in range(25):
        at = begin + timedelta(minutes=30 * step)
        both = step < 2 * hours
        cool = rng.random() < 0.5
        warm, wet = (24.0, 96.0) if both else (19.0, 94.0) if cool else (24.0, 70.0)
        air.append(AirSample(at=at, temperature=warm + rng.normal(0, 0.3), humidity=wet + rng.normal(0, 1.0)))
    now = begin + timedelta(hours=12.5)
    tray = a_kept_tray(
        1, sown_at=begin, blackout_from=begin, blackout_to=begin + timedelta(days=3), stacked=True
    )
    found = looks(Morning(today=now.date(), now=now, trays=[tray], air={tray.shelf: air}))
    told.note(bool(hours >= 8), any(look.what is LookKind.STACK for look in found))
