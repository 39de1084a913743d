"""Water contents and drying fits against worked numbers."""

import pytest

from data.medium.drying import DryingForm, fit_drying
from data.water import air_filled, water_by_volume, wetting_of

# water left in a tray, g over hours; made for this check
HOURS = [0, 6, 12, 24, 36, 48]
WATER = [700, 625, 558, 440, 345, 268]


# definitions of soil physics; recomputed by hand: 1180 g wet, 480 g dry, 2600 cm3, solids of 1.55 g/cm3
def test_water_and_air_of_the_worked_medium():
    held = wetting_of(dry_g=480, soaked_g=None, drained_g=1180).capacity_g

    assert held == 700
    assert water_by_volume(held, 2600) == pytest.approx(0.269231, abs=1e-6)
    assert air_filled(held / 2600, 480, 2600, 1.55) == pytest.approx(0.611663, abs=1e-6)
    assert air_filled(0, 480, 2600, 1.55) == pytest.approx(0.880893, abs=1e-6)  # all pores


# recomputed with scipy 1.17.1, curve_fit of m0 exp(-k t)
def test_exponential_drying_agrees_with_another_fit():
    drying = fit_drying(HOURS, WATER, DryingForm.EXPONENTIAL)

    assert drying.parameters == pytest.approx((703.2214, 0.01978603), rel=1e-4)
    assert drying.fit.errors == pytest.approx((2.5168, 0.0002023), rel=1e-3)


# 700 g, 14 g/h down to 420 g at 20 h, then exponential at 14/420 per hour; recomputed from the formula
def test_two_stages_are_found_again():
    course = {10: 560, 20: 420, 30: 300.9432, 40: 215.6352}
    hours = [0, 5, *course, 50]
    water = [700, 630, *course.values(), 154.50826]

    drying = fit_drying(hours, water, DryingForm.TWO_STAGE)

    assert drying.parameters == pytest.approx((700, 14, 420), rel=1e-4)
    assert [drying.at(hour) for hour in course] == pytest.approx(list(course.values()), rel=1e-4)
