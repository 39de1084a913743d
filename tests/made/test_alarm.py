"""The look list as an alarm, on few made racks: the sweep under `tests/bench` asks many more."""

import pytest

from data.look import LookKind
from tests.made.alarm import Outcome, play, play_disturbed, play_healthy
from tests.made.growing import FAULTS, NO_FAULTS
from tests.made.noting import Told, play_drying, play_stack

SEEDS = range(7000, 7006)  # neither those that limits were tried on nor those of the sweep
SOON_ENOUGH = {"mold of 2 cm2": 0, "paling": 4}  # days; of the others two


@pytest.mark.parametrize("fault", FAULTS)
def test_a_fault_is_told_in_time(fault: str) -> None:
    outcome = Outcome()
    for seed in SEEDS:
        outcome.add(play(fault, seed))

    days = SOON_ENOUGH.get(fault, 2)
    assert len(outcome.delays) >= 5
    assert sum(d is not None and d <= days for d in outcome.delays) >= len(outcome.delays) - 1
    assert outcome.false_entries <= 2


def test_healthy_trays_are_quiet() -> None:
    outcome = Outcome()
    for seed in SEEDS:
        outcome.add(play_healthy(seed))

    assert outcome.tray_days == 6 * 6 * 12
    assert outcome.false_entries <= 2


@pytest.mark.parametrize("disturbance", NO_FAULTS)
def test_a_bad_photo_a_wrong_tag_missing_days_or_another_method_raise_nothing(disturbance: str) -> None:
    outcome = Outcome()
    for seed in SEEDS:
        outcome.add(play_disturbed(disturbance, seed))

    assert outcome.entries == 0, outcome.kinds


def test_a_tray_that_nobody_waters_is_told_before_it_is_dry() -> None:
    told = Told()
    for seed in SEEDS:
        play_drying(seed, told)

    assert told.right >= 6
    assert told.missed == told.without_cause == 0
    assert told.quiet > 0


def test_warm_and_wet_hours_under_a_stack_are_told_the_same_day_and_others_are_not() -> None:
    told = Told()
    for seed in range(7000, 7040):
        play_stack(seed, told)

    assert told.right > 5
    assert told.quiet > 5
    assert told.missed == told.without_cause == 0


def test_a_fault_is_named_for_what_it_is() -> None:
    wanted = {
        "damping off": LookKind.VANISHED, "mold of 2 cm2": LookKind.SUSPECT, "dry edge grows": LookKind.EDGE,
        "paling": LookKind.PALING,
    }  # fmt: skip
    for fault, kind in wanted.items():
        named = [play(fault, seed).named for seed in SEEDS]
        assert sum(kind in kinds for kinds in named) >= 4, fault
