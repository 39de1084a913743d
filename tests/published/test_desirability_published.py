"""Desirability against the worked example of its authors."""

import pytest

from data.desirability import Part, combined

# Derringer & Suich (1980), tyre tread: limits of the four responses as printed; d and D at the point below
# recomputed from the formula (the printed optimum, D = 0.583, is quoted from memory)
TREAD = (
    (Part(bad=120, good=170), 129.5, 0.190),
    (Part(bad=1000, good=1300), 1300, 1.0),
    (Part(bad=400, good=500, too_much=600), 465.7, 0.657),
    (Part(bad=60, good=67.5, too_much=75), 68, 0.933333),
)


def test_tyre_tread_example():
    desirabilities = [part.desirability(value) for part, value, _ in TREAD]

    assert desirabilities == pytest.approx([d for _, _, d in TREAD], abs=1e-6)
    assert combined(desirabilities, [1, 1, 1, 1]) == pytest.approx(0.584237, abs=1e-6)


# by the formula: (0.8^2 x 0.9 x 0.5)^(1/4)
def test_weights_are_exponents_of_the_geometric_mean():
    assert combined([0.8, 0.9, 0.5], [2, 1, 1]) == pytest.approx(0.732568, abs=1e-6)
