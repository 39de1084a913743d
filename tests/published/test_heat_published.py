"""Heat capacities and cooling against worked numbers."""

from datetime import datetime, timedelta

import numpy as np
import pytest
from scipy.optimize import curve_fit

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


# by hand: 6 K fall to 3 K within an hour; ln 2 = 0.6931, error 0.3 x root(1/36 + 1/9) = 0.1118, times 1.96
def test_two_readings_tell_it_as_well_as_the_thermometer_lets_them():
    found = cooling_of([(NOON, 24.0), (NOON + timedelta(hours=1), 21.0)], 18.0).hours

    assert found.value == pytest.approx(1.4427, abs=1e-4)
    assert (found.low, found.high) == pytest.approx((1 / 0.9123, 1 / 0.4740), abs=1e-3)


# recomputed with scipy 1.17.1, curve_fit of s exp(-t/tau) to the five that lie 1 K and more above the air;
# the interval of the pace with 0.3 K a reading, turned
def test_more_readings_tell_it_by_least_squares():
    read = {0: 24.2, 0.5: 22.9, 1: 22.1, 2: 20.3, 3: 19.7, 5: 18.7}
    samples = [(NOON + timedelta(hours=h), c) for h, c in read.items()]

    found = cooling_of(samples[::-1], 18.0)

    assert found.hours.value == pytest.approx(2.203317, rel=1e-5)
    pace, error = curve_fit(
        lambda t, s, k: s * np.exp(-k * t), list(read)[:5], [c - 18 for c in read.values()][:5], (6, 0.5),
        sigma=[0.3] * 5, absolute_sigma=True,
    )  # fmt: skip
    ends = pace[1] + 1.95996 * error[1, 1] ** 0.5, pace[1] - 1.95996 * error[1, 1] ** 0.5
    assert (found.hours.low, found.hours.high) == pytest.approx([1 / end for end in ends], rel=1e-4)


def test_readings_that_scatter_more_than_a_thermometer_tell_it_less_surely():
    """Up to 0.9 K off the course: Student's t with three degrees of freedom, curve_fit's own error."""
    hours, kelvin = [0, 1, 2, 3, 4], [9.0, 6.0, 5.6, 3.0, 3.0]

    found = cooling_of([(NOON + timedelta(hours=h), 18 + k) for h, k in zip(hours, kelvin, strict=True)], 18)

    pace, error = curve_fit(lambda t, s, k: s * np.exp(-k * t), hours, kelvin, (9, 0.3))
    reach = 3.18245 * error[1, 1] ** 0.5
    assert reach < pace[1]
    assert (found.hours.low, found.hours.high) == pytest.approx(
        (1 / (pace[1] + reach), 1 / (pace[1] - reach)), rel=1e-3
    )


# shares of a volume, de Vries (1963)
@pytest.mark.parametrize("shares", [(-0.1, 0.2, 0.5), (0.2, 0.4, 0.5)])
def test_shares_that_cannot_be_are_refused(shares):
    assert capacity(0.2, 0.3, 0.5) == pytest.approx(0.2 * 1.92 + 0.3 * 2.51 + 0.5 * 4.18)
    with pytest.raises(ValueError, match="add up to 1 at most"):
        capacity(*shares)
