"""Water contents and drying fits against worked numbers."""

import pytest

from data.medium.drying import DryingForm, fit_drying
from data.water import water_content

# water left in a tray, g over hours; made for this check
HOURS = [0, 6, 12, 24, 36, 48]
WATER = [700, 625, 558, 440, 345, 268]


# definitions of soil physics; recomputed by hand
def test_water_contents_of_the_worked_medium():
    content = water_content(wet_g=1180, dry_g=480, volume_cm3=2600, solid_g_cm3=1.55)

    assert content.gravimetric == pytest.approx(1.458333, abs=1e-6)
    assert content.volumetric == pytest.approx(0.269231, abs=1e-6)
    assert content.bulk_density == pytest.approx(0.184615, abs=1e-6)
    assert content.porosity == pytest.approx(0.880893, abs=1e-6)
    assert content.air_filled == pytest.approx(0.611663, abs=1e-6)


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
    assert drying.threshold_hours == pytest.approx(20, rel=1e-4)
    assert [drying.at(hour) for hour in course] == pytest.approx(list(course.values()), rel=1e-4)
