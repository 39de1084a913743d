"""A tray that dries out is told before it is dry; one slip of the scale, or an old weight, says nothing."""

from datetime import datetime, timedelta

import pytest

from data.look import Look, LookKind, Urgency
from data.looklist.thirst import look_at_thirst
from tests.data.builders import a_kept_tray

SET_UP = datetime(2026, 3, 1, 9)  # weighed dry, 400 g, and an hour later full, 900 g: dry at 550 g
EIGHT = datetime(2026, 3, 8, 8)


def told(*since: tuple[float, float], watered: tuple[float, ...] = (), now: datetime = EIGHT) -> Look | None:
    """Weights as (hours before eight on 8 March, g)."""
    weights = [(SET_UP, 400.0), (SET_UP + timedelta(hours=1), 900.0)]
    weights += [(EIGHT - timedelta(hours=hours), grams) for hours, grams in since]
    times = [EIGHT - timedelta(hours=hours) for hours in watered]
    return look_at_thirst(a_kept_tray(), weights, times, now)


def test_a_tray_under_its_dry_weight_is_for_now() -> None:
    look = told((24, 640.0), (0, 540.0))

    assert look is not None
    assert (look.what, look.urgency) == (LookKind.DRY, Urgency.NOW)
    assert look.sentence == "540 g on 8 March at 08:00, 10 g under the weight at which it is dry (550 g)."


def test_a_tray_first_weighed_while_it_grew_tells_no_dry_weight_by_its_watering() -> None:
    """Weighed before and after a watering in the middle of its growth: neither of the two is dry."""
    hours = timedelta(hours=1)
    begun = [(EIGHT - 24 * hours, 1500.0), (EIGHT - 23 * hours, 2000.0), (EIGHT, 1640.0)]

    assert look_at_thirst(a_kept_tray(), begun, [EIGHT - 23.5 * hours], EIGHT) is None


def test_a_tray_that_will_be_dry_by_tonight_is_for_today() -> None:
    look = told((24, 720.0), (0, 600.0))

    assert look is not None
    assert look.urgency is Urgency.TODAY
    assert look.sentence == (
        "600 g on 8 March at 08:00, 5 g less each hour: below its dry weight of 550 g by 18:00 on 8 March."
    )


def test_a_tray_that_lasts_the_night_is_for_tomorrow_and_one_that_lasts_longer_is_quiet() -> None:
    tomorrow = told((24, 770.0), (0, 650.0))
    assert tomorrow is not None
    assert tomorrow.urgency is Urgency.SOON

    assert told((24, 900.0), (0, 780.0)) is None


def test_after_watering_nobody_knows_until_it_is_weighed_again() -> None:
    assert told((24, 640.0), (1, 540.0), watered=(0.5,)) is None
    assert told((24, 640.0), (1, 540.0), (0.2, 900.0)) is None


def test_the_pace_is_that_since_the_last_watering_noted_or_not() -> None:
    slow = told((48, 640.0), (47, 900.0), (24, 830.0), (0, 760.0))
    assert slow is None


def test_a_watering_noted_too_small_for_the_scale_begins_the_pace_anew() -> None:
    weights = ((40.0, 760.0), (36.0, 600.0), (30.0, 610.0), (0.0, 590.0))

    assert told(*weights) is not None
    assert told(*weights, watered=(35.0,)) is None


@pytest.mark.parametrize("before", [600.0, 590.0])
def test_a_tray_that_loses_nothing_does_not_dry_out(before: float) -> None:
    assert told((24, before), (0, 600.0)) is None


@pytest.mark.parametrize(
    ("hours", "urgency"), [(13.5, Urgency.TODAY), (14.5, Urgency.SOON), (23.5, Urgency.SOON)]
)
def test_tonight_ends_at_ten_and_the_night_at_eight(hours: float, urgency: Urgency) -> None:
    look = told((24, 600.0 + 24 * 50.0 / hours), (0, 600.0))

    assert look is not None
    assert look.urgency is urgency


def test_one_slip_of_the_scale_among_many_weights_does_not_set_the_pace() -> None:
    steady = [(48.0, 800.0), (36.0, 785.0), (24.0, 770.0), (12.0, 755.0), (0.0, 740.0)]
    slipped = [(hours, 700.0 if hours == 36.0 else grams) for hours, grams in steady]

    assert told(*steady) is None
    assert told(*slipped) is None


def test_an_old_weight_says_nothing_of_today() -> None:
    assert told((72, 640.0), (48, 540.0)) is None


def test_a_tray_that_was_never_weighed_dry_has_no_dry_weight() -> None:
    weights = [(EIGHT - timedelta(hours=hours), grams) for hours, grams in ((24.0, 700.0), (0.0, 300.0))]

    assert look_at_thirst(a_kept_tray(), weights, (), EIGHT) is None
