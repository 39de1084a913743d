"""What the weighings of a wetting test tell of how long a medium stays wet."""

import math
from datetime import datetime, timedelta

import pytest

from data.medium.benchtest import wetting_found
from data.readings import BenchTestId, Reading, ReadingId, ReadingKind
from data.water import RESERVE

NOON = datetime(2026, 3, 8, 12)


def weighed(step: str, grams: float, hours: float) -> Reading:
    return Reading(
        id=ReadingId(1), kind=ReadingKind.WEIGHT, value=grams, taken_at=NOON + timedelta(hours=hours),
        tray_id=None, shelf=None, bench_test=BenchTestId(1), source="person", note=step,
    )  # fmt: skip


@pytest.mark.parametrize(("dry_at", "told"), [(230.0, True), (250.0, False)])
def test_of_a_medium_that_would_stand_wet_for_more_than_ten_days_it_is_said_that_it_hardly_dried(
    dry_at: float, told: bool
) -> None:
    """m0 exp(-k t) falls to the reserve after ln(1/reserve)/k hours; nothing stands 240 h without water."""
    pace = math.log(1 / RESERVE) / dry_at
    steps = [("dry", 500.0, 0.0), ("soaked", 2700.0, 0.5), ("drained", 2500.0, 1.0)]
    later = [(f"after {h} h", 500.0 + 2000.0 * math.exp(-pace * h), 1.0 + h) for h in (24, 48, 96, 144)]

    found = wetting_found([weighed(*one) for one in (*steps, *later)])

    assert found is not None
    assert (found.dry_after_h is not None) is told
    if found.dry_after_h is not None:
        assert found.dry_after_h.value == pytest.approx(dry_at, rel=1e-3)
    else:
        assert "hardly dried" in str(found.dry_reason)
