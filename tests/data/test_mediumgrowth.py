"""Growth by medium: a mean of the trays that were photographed, and of one version only."""

from pathlib import Path

import pytest

from data.mediumgrowth import growth_by_treatment
from tests.data.trialrack import EVEN, TRIAL, Rack


def test_each_day_is_the_mean_of_the_trays_that_were_photographed(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    one, other = rack.tray("coir"), rack.tray("coir", 1)
    rack.shoot(one, 10.0, day=4)
    rack.shoot(one, 20.0, day=5)
    rack.shoot(other, 40.0, day=5)
    rack.shoot(other, 99.0, day=5, method="plain 1")

    treatments = {tray.id: tray.medium for tray in rack.trays}
    found = growth_by_treatment(rack.trays, treatments, rack.book.photo_numbers(TRIAL), "learned 1")

    line = next(line for line in found if line.treatment == "coir")
    assert [(point.day, point.coverage, point.trays) for point in line.points] == [
        (4, pytest.approx(10.0), 1),
        (5, pytest.approx(30.0), 2),
    ]
    assert {line.treatment for line in found} == set(EVEN)
    rack.book.close()
