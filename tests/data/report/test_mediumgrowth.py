"""Growth by medium: a mean of the trays that were photographed, and of one version only."""

from pathlib import Path

import pytest

from data.report.mediumgrowth import growth_by_treatment
from data.verdict.countedof import CountedOf
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
    assert [(point.day, point.share, point.trays) for point in line.points] == [
        (4, pytest.approx(10.0), 1),
        (5, pytest.approx(30.0), 2),
    ]
    assert {line.treatment for line in found} == set(EVEN)
    rack.book.close()


@pytest.mark.parametrize(("doubted", "share"), [(0, 40.0), (1, 10.0)])
def test_of_two_photos_of_a_day_the_one_that_is_not_in_doubt_is_drawn(
    tmp_path: Path, doubted: int, share: float
) -> None:
    rack = Rack(tmp_path)
    tray = rack.tray("coir")
    rack.shoot(tray, 10.0, day=4)
    rack.shoot(tray, 40.0, day=4, method="learned 1")  # of another name, so another photo
    rack.doubt([day.photo_id for day in rack.book.days(tray.id)][doubted])

    treatments = {tray.id: tray.medium for tray in rack.trays}
    found = growth_by_treatment(rack.trays, treatments, rack.book.photo_numbers(TRIAL), "learned 1")

    assert [point.share for line in found for point in line.points] == [pytest.approx(share)]
    rack.book.close()


def test_media_at_different_heights_are_drawn_by_the_bed_where_all_photos_know_it(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    peat, mat = rack.tray("peat mix"), rack.tray("fibre mat")
    rack.shoot(peat, 84.0, day=5, bed_share=86.0)
    rack.shoot(mat, 77.0, day=5, bed_share=85.0)
    treatments = {tray.id: tray.medium for tray in rack.trays}

    def drawn() -> dict[str, tuple[CountedOf, float]]:
        photos = rack.book.photo_numbers(TRIAL)
        found = growth_by_treatment(rack.trays, treatments, photos, "learned 1")
        return {line.treatment: (line.counted, line.points[0].share) for line in found if line.points}

    assert drawn() == {"peat mix": (CountedOf.BED, 86.0), "fibre mat": (CountedOf.BED, 85.0)}

    rack.forget_bed(peat)  # then nobody is counted of the bed
    assert drawn() == {"peat mix": (CountedOf.INNER, 84.0), "fibre mat": (CountedOf.INNER, 77.0)}
    rack.book.close()
