"""The look list judged like an alarm, on made racks and on the demonstration's days.

Run by hand: python -m pytest -m sweep -s tests/bench/test_look_alarm.py (two minutes); for the demonstration
EVENSTAND_DEMO is a scored book of it (`python -m gui demo`, once, until all photos are scored). Limits were
tried on seeds below 7000; these are others. What is wanted: mold of 2 cm2 the same day; a dry edge or a lag
of 15 points within two days; at most two entries without cause per 100 days of healthy trays; none by one
bad photo.

Measured when this was written, 60 racks of six trays a fault; share told on the same day and within one, two
and four days: late emergence .48 1 1 1, patchy 0 .90 1 1, dry side .08 1 1 1, dry edge .18 1 1 1, lag of 15
points .05 .76 .98 1, damping off 0 1 1 1, mold of 2 cm2 1 1 1 1, paling 0 .30 .75 1. Without cause, per 100
healthy tray-days: 0.37 entries; on racks twice as rough 1.1 with five mates, 1.4 with two, and a lag told
within two days .83 and .72. Without mates and earlier trays of the crop nobody can say that a tray lags. Of
1,000 bad photos (seeds from 40,000) four raised an entry beside five mates and four beside two; six and eight
before the colour was asked and bad days were left out as what a tray was. What is left: a tray that truly was
behind on the day before, and a photo that spares the colour; asking for a third day would mend that and tell
two of 233 lags a day later. The demonstration:
its five dry edges and corners, to be seen from 7 March on, are told on the 7th to the 9th, both sown thinner
to one side on the 8th and 9th; bare patches of 5 % are not told. Ten even trays have three days with an entry
in 80: a lag, a thin edge, one that pales.
Its mold is not told: the scorer shows no suspect there, but some on C1 and C4, which have none.

Where the wall hides as much of a mat as was measured (`tests/made/growing.py`) there are, with five mates,
0.62 entries by the inner area and 0.46 by the bed, and a lag is told within two days .95 and .98.
"""

import os
from collections import Counter
from datetime import date
from pathlib import Path

import pytest

from data.book import Book
from data.look import LookKind
from data.watch import looks
from tests.made.alarm import Outcome, play, play_disturbed, play_healthy
from tests.made.growing import FAULTS, NO_FAULTS, Walls
from tests.made.noting import Told, play_drying, play_stack

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(1200)]

RACKS = 60
JUDGED = range(40_000, 40_000 + RACKS)
MATES = (5, 2, 0)
ROUGH = (1.0, 2.0)
DEMO = os.environ.get("EVENSTAND_DEMO")


def played(fault: str, mates: int = 5, rough: float = 1.0, racks: int = RACKS) -> Outcome:
    outcome = Outcome()
    for seed in JUDGED[:racks]:
        outcome.add(play(fault, seed, mates, rough))
    return outcome


def healthy(mates: int = 5, rough: float = 1.0, racks: int = RACKS) -> Outcome:
    outcome = Outcome()
    for seed in JUDGED[:racks]:
        outcome.add(play_healthy(seed, mates, rough))
    return outcome


def test_faults_are_told_in_time_and_healthy_trays_are_quiet() -> None:
    quiet = healthy()
    print(f"\n{'fault':18} {'n':>3} same  1 d  2 d  4 d never  entries on healthy trays per 100 tray-days")
    found: dict[str, Outcome] = {}
    for fault in FAULTS:
        one = found[fault] = played(fault)
        shares = "  ".join(f"{one.within(days):.2f}"[-4:] for days in (0, 1, 2, 4))
        never = one.delays.count(None)
        print(f"{fault:18} {len(one.delays):3} {shares} {never:5}  {one.false_entries:.2f} {one.kinds}")
    print(
        f"nothing wrong: {quiet.tray_days} tray-days, per 100 {quiet.false_entries:.2f} entries, "
        f"{quiet.false_entry_days:.2f} days with one; {quiet.kinds}"
    )
    assert found["mold of 2 cm2"].within(0) == 1
    for fault in ("dry side grows", "dry edge grows", "lag of 15 points", "late emergence", "damping off"):
        assert found[fault].within(2) >= 0.95, fault
    assert found["patchy"].within(2) >= 0.9
    assert found["paling"].within(4) >= 0.9
    assert quiet.false_entries <= 2
    assert max(one.false_entries for one in found.values()) <= 2


def test_with_few_mates_and_on_rough_racks() -> None:
    for mates in MATES:
        for rough in ROUGH:
            quiet = healthy(mates, rough, 30)
            shares = {fault: played(fault, mates, rough, 20).within(2) for fault in FAULTS}
            words = ", ".join(f"{fault} {share:.2f}" for fault, share in shares.items())
            print(f"\n{mates} mates, {rough:g} times as rough: {quiet.false_entries:.2f} entries")
            print(f"  within two days: {words}")
            assert quiet.false_entries <= 2
            assert shares["mold of 2 cm2"] == 1


def test_mates_on_media_at_different_heights_raise_no_more_than_those_at_one() -> None:
    for mates in (5, 2):
        quiet = {walls: Outcome() for walls in Walls}
        lag = {walls: Outcome() for walls in Walls}
        for walls in Walls:
            for seed in JUDGED:
                quiet[walls].add(play_healthy(seed, mates, 1.0, walls))
                lag[walls].add(play("lag of 15 points", seed, mates, 1.0, walls))
            told = f"{quiet[walls].false_entries:.2f} entries {quiet[walls].kinds}"
            print(f"\n{mates} mates, {walls}: {told}; a lag of 15 points told {lag[walls].within(2):.2f}")
        assert quiet[Walls.TOLD].false_entries < quiet[Walls.SEEN].false_entries
        assert quiet[Walls.TOLD].false_entries <= 1
        assert lag[Walls.TOLD].within(2) >= lag[Walls.NONE].within(2) - 0.05


def test_what_is_no_fault_raises_no_more_than_nothing_does() -> None:
    for name in NO_FAULTS:
        outcome = Outcome()
        for seed in JUDGED:
            outcome.add(play_disturbed(name, seed))
        print(f"\n{name}: {outcome.entries} entries in {outcome.tray_days} tray-days {outcome.kinds}")
        assert outcome.false_entries <= 1
        assert name != "one bad photo" or outcome.entries == 0


def test_weights_and_the_air_under_a_stack() -> None:
    drying, stack = Told(), Told()
    for seed in JUDGED:
        play_drying(seed, drying)
        play_stack(seed, stack)
    print(f"\ndrying {drying}\nstack {stack}")
    for told in (drying, stack):
        assert told.missed <= 0.02 * (told.missed + told.right)
        assert told.without_cause <= 0.02 * (told.without_cause + told.quiet)


# --- the demonstration: what is wrong there is known from how it was rendered

EVEN = {"A1", "A2", "A3", "A5", "A6", "B1", "B2", "B4", "B6", "C6"}
DRY = {"A4", "B3", "B5", "C2", "C3"}  # dry edges, dry corners
MOLDY = {"A5", "B4"}  # mold from day 5, under 1.3 cm2 of it to be seen from above
# C1, C4 and C5 are neither: sown thinner to one side, or bare in patches


@pytest.mark.skipif(DEMO is None, reason="EVENSTAND_DEMO is not set")
def test_the_demonstration_day_by_day() -> None:
    days = [date(2026, 3, day) for day in range(4, 12)]
    told: dict[str, dict[date, set[LookKind]]] = {}
    with Book.open(Path(DEMO or "")) as book:
        for day in days:
            for look in looks(book.morning(day)):
                told.setdefault(look.code, {})[day] = {one.what for one in look.whole}
    suspects = {LookKind.SUSPECT, LookKind.MOLD}
    for code in sorted(told):
        first = min(told[code])
        print(
            code,
            first,
            "to",
            max(told[code]),
            dict(Counter(k for kinds in told[code].values() for k in kinds)),
        )
    stand = {code: {day for day, kinds in some.items() if kinds - suspects} for code, some in told.items()}
    without = sum(len(stand.get(code, ())) for code in EVEN)
    print(f"even trays: {without} days with an entry of {len(EVEN) * len(days)}")
    found = [code for code in MOLDY if any(kinds & suspects for kinds in told.get(code, {}).values())]
    print(f"moldy trays told as possible mold: {found}")
    for code in DRY:
        assert min(stand[code]) <= date(2026, 3, 9), code
    assert without <= 0.05 * len(EVEN) * len(days)
