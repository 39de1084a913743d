"""Heat capacities and cooling against worked numbers."""

from datetime import datetime, timedelta

import pytest

from data.heat import areal_capacity, capacity, cooling_of, temperature_after, time_constant

NOON = datetime(2026, 3, 1, 12)


# de Vries 1963 (coefficients from memory); a mix of 30 mm and a mat of 8 mm, recomputed by hand
@pytest.mark.parametrize(
    ("organic", "water", "thickness", "volume", "area", "hours", "after"),
    [
        (0.08, 0.60, 30, 2.7088, 81.264, 2.2573, 21.853),
        (0.04, 0.55, 8, 2.3994, 19.1952, 0.5332, 18.920),
    ],
)
def test_worked_numbers_of_a_mix_and_a_mat(organic, water, thickness, volume, area, hours, after):
    stored = capacity(0, organic, water)
    by_area = areal_capacity(stored, thickness)

    assert stored == pytest.approx(volume, abs=1e-4)
    assert by_area == pytest.approx(area, abs=1e-3)
    assert time_constant(by_area, 10) == pytest.approx(hours, abs=1e-3)
    assert temperature_after(24, 18, 1, time_constant(by_area, 10)) == pytest.approx(after, abs=1e-3)


def test_the_time_constant_is_found_again_from_its_own_temperatures():
    samples = [(NOON + timedelta(hours=h), temperature_after(24, 18, h, 2.2573)) for h in (0, 0.5, 1, 2, 3)]

    two = cooling_of([samples[0], samples[2]], 18)
    many = cooling_of(samples, 18)

    assert two.hours.value == pytest.approx(2.2573, rel=1e-4)
    assert two.hours.low < 2.2573 < two.hours.high
    assert many.hours.value == pytest.approx(2.2573, rel=1e-4)
