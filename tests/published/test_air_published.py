"""Humidity against FAO-56, chapter 3.

Allen, Pereira, Raes & Smith (1998) Crop evapotranspiration, FAO Irrigation and Drainage Paper 56.
"""

import pytest

from data.growing.air import deficit, dew_point, saturation, vapour_pressure


# FAO-56, equation 11 (annex 2, table 2.3); recomputed from the formula
@pytest.mark.parametrize(
    ("temperature", "kpa"),
    [
        (0, 0.6108),
        (5, 0.8723),
        (10, 1.2280),
        (15, 1.7053),
        (18, 2.0640),
        (20, 2.3383),
        (21, 2.4870),
        (24.5, 3.0746),
        (25, 3.1678),
        (30, 4.2431),
        (35, 5.6227),
    ],
)
def test_saturation_vapour_pressure_of_the_table(temperature, kpa):
    assert saturation(temperature) == pytest.approx(kpa, abs=5e-4)


# FAO-56, example 3, seen in a documentation that repeats it: 3.075, 1.705, mean 2.39 kPa
def test_mean_saturation_of_example_3():
    assert saturation(24.5) == pytest.approx(3.075, abs=0.005)
    assert saturation(15.0) == pytest.approx(1.705, abs=0.005)
    assert (saturation(24.5) + saturation(15.0)) / 2 == pytest.approx(2.39, abs=0.005)


# FAO-56, example 5: ea 1.70 (1.7015 in a program documentation that repeats it); es and deficit from memory
def test_extremes_of_a_day_of_example_5():
    actual = (vapour_pressure(18, 82) + vapour_pressure(25, 54)) / 2  # equation 17
    full = (saturation(18) + saturation(25)) / 2

    assert actual == pytest.approx(1.7015, abs=5e-4)
    assert full == pytest.approx(2.62, abs=0.005)
    assert full - actual == pytest.approx(0.91, abs=0.005)


# recomputed; an independent library (PsychroLib 2.5.0) gives dew points 14.1756 and 20.2841 C
def test_dew_point_agrees_with_another_library():
    assert vapour_pressure(21, 65) == pytest.approx(1.616554, abs=1e-6)
    assert deficit(21, 65) == pytest.approx(0.870452, abs=1e-6)
    assert dew_point(21, 65) == pytest.approx(14.1756, abs=0.01)
    assert dew_point(22, 90) == pytest.approx(20.2841, abs=0.01)


# PsychroLib 2.5.0: 2.33880 and 3.16922 kPa
def test_saturation_agrees_with_another_library():
    assert saturation(20) == pytest.approx(2.33880, abs=0.003)
    assert saturation(25) == pytest.approx(3.16922, abs=0.003)
