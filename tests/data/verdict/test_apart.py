"""A verdict names what differed between the compared trays though nobody planned it."""

from dataclasses import replace
from pathlib import Path

import pytest

from data.trial import CropPlan, Factor
from data.verdict.apart import apart_between
from tests.data.plans import MEDIA
from tests.data.trialrack import EVEN, Rack


@pytest.fixture
def rack(rack: Rack) -> Rack:
    rack.shoot_all(EVEN)
    return rack


def water_from_above(rack: Rack, medium: str) -> None:
    for tray in rack.trays:
        if tray.medium == medium:
            rack.book.edit_tray(tray.id, watering="top")


def test_nothing_is_doubted_where_all_trays_were_grown_alike(rack: Rack) -> None:
    (found,) = rack.verdicts()

    assert (found.apart, found.apart_words) == ((), ())


def test_what_differs_between_media_unplanned_is_named_with_what_can_come_from_it(rack: Rack) -> None:
    water_from_above(rack, "coir")

    (found,) = rack.verdicts()

    assert found.apart == ("watering",)
    caution, where = found.apart_words
    assert caution == (
        "Not alike, though the plan does not vary it: watering. A difference can come from that as well as "
        "from what was to be compared."
    )
    assert "report" in where


def test_a_tray_that_has_no_number_makes_no_answer_doubtful(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    odd = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[odd.code])
    rack.book.edit_tray(odd.id, watering="top")

    (found,) = rack.verdicts()

    assert found.apart == ()
    rack.book.close()


def test_what_each_block_had_alike_is_not_doubted(rack: Rack) -> None:
    first = rack.trays[0].block
    for tray in rack.trays:
        rack.book.edit_tray(tray.id, light="window" if tray.block == first else "lamp")
    (found,) = rack.verdicts()

    assert found.apart == ()

    rack.book.edit_tray(rack.tray("coir", 1).id, light="window")
    (found,) = rack.verdicts()

    assert found.apart == ("light",)


def test_each_crop_is_doubted_for_itself(tmp_path: Path) -> None:
    rack = Rack(tmp_path, crops=tuple(CropPlan(name=name, read_on_day=9) for name in ("broccoli", "radish")))
    rack.shoot_all(EVEN)
    for tray in rack.trays:
        odd = (tray.crop, tray.medium) == ("radish", "coir")
        rack.book.edit_tray(tray.id, seed_lot="B7" if odd else "A1")

    found = {one.crop: one.apart for one in rack.verdicts()}

    assert found == {"broccoli": (), "radish": ("seed lot",)}
    rack.book.close()


def test_trays_of_one_medium_are_compared_with_nothing(rack: Rack) -> None:
    of_coir = [tray for tray in rack.trays if tray.medium == "coir"]
    for tray, watering in zip(of_coir, ("top", "bottom", None), strict=False):
        rack.book.edit_tray(tray.id, watering=watering)
    trays = [replace(tray, block=None) for tray in rack.book.trays()]
    of_coir = [tray for tray in trays if tray.medium == "coir"]

    assert apart_between(of_coir, {tray.id: "coir" for tray in of_coir}, None) == ()
    assert "watering" in apart_between(trays, {tray.id: tray.medium for tray in trays}, None)


def test_what_the_plan_varies_is_no_doubt(tmp_path: Path) -> None:
    feed = Factor(name="feed", levels=("none", "weekly"))
    rack = Rack(tmp_path, factors=(MEDIA, feed), same={"watering": "bottom"})
    rack.shoot_all(EVEN)

    assert {one.apart for one in rack.verdicts()} == {()}
    rack.book.close()


def test_without_a_plan_none_is_blamed(rack: Rack) -> None:
    with rack.book.writing() as db:
        db.execute("DELETE FROM draw")
        db.execute("DELETE FROM plan")
    water_from_above(rack, "coir")

    (found,) = rack.verdicts()

    assert found.apart == ("watering",)
    assert "no plan was made to vary it: watering" in found.apart_words[0]
