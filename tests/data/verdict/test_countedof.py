"""What canopy is counted as a share of when media are compared: one thing for all trays, and it is said."""

from dataclasses import replace

import pytest

from data.records import Tray
from data.verdict.countedof import CountedOf, knows_bed
from data.verdict.outcome import Outcome
from data.verdict.sensitivity import What
from data.verdict.surewords import otherwise_words
from data.verdict.verdicts import CropVerdict
from tests.data.trialrack import NOISE, Rack

# points of the inner area that are wall: common for a mat 48 mm below the rim under a phone 57 cm above it
# (by similar triangles 15 %), half of that for loose media
WALL = {"peat mix": 7.0, "coir": 7.0, "fibre mat": 15.0}
BED = 88.0  # % of the bed, of every medium alike


@pytest.fixture
def rack(rack: Rack) -> Rack:
    for number, tray in enumerate(rack.trays):
        shoot(rack, tray, BED + NOISE[number % len(NOISE)])
    return rack


def shoot(rack: Rack, tray: Tray, of_bed: float) -> None:
    """A photo of a tray with that share of its bed grown over; its wall is bare."""
    coverage = of_bed * (100.0 - WALL[tray.medium]) / 100.0
    rack.shoot(tray, coverage, bed_share=of_bed, bed_uniformity=92.0, uniformity=92.0 - WALL[tray.medium])


def verdict_of(rack: Rack) -> CropVerdict:
    (found,) = rack.verdicts()
    return found


def outcome(found: CropVerdict) -> Outcome | None:
    return found.verdict.medium("fibre mat").outcome


def test_media_that_are_grown_over_alike_are_as_good_at_whatever_height_they_lie(rack: Rack) -> None:
    found = verdict_of(rack)

    assert found.counted is CountedOf.BED
    assert outcome(found) is Outcome.AS_GOOD
    assert any("share of the growing bed" in note for note in found.notes)


def test_the_other_way_of_counting_is_told_with_what_it_would_change(rack: Rack) -> None:
    found = verdict_of(rack)

    (other,) = [one for one in found.otherwise if (one.what, one.medium) == (What.OTHER_AREA, "fibre mat")]
    assert other.changes == (("", Outcome.WORSE),)
    assert other.least < -5.0
    assert What.HEIGHTS not in {one.what for one in found.otherwise}
    words = [line for line in otherwise_words([other], found.scale) if "share of the inner area" in line]
    assert words
    assert "worse" in words[0]


def test_where_one_tray_does_not_know_its_bed_all_are_counted_of_the_inner_area(rack: Rack) -> None:
    tray = rack.tray("coir", 2)
    rack.forget_bed(tray)

    found = verdict_of(rack)

    assert found.counted is CountedOf.INNER
    assert outcome(found) is Outcome.WORSE
    mats = [n.score.parts[0].value for n in found.numbers if n.score and n.tray.medium == "fibre mat"]
    assert max(mats) < 0.86 * BED  # as seen, with the wall
    (note,) = [line for line in found.notes if "not known of" in line]
    assert f"not known of: {tray.code}." in note
    asked = {one.what for one in found.otherwise}
    assert What.HEIGHTS in asked
    assert What.OTHER_AREA not in asked


def test_trays_that_are_not_compared_have_no_say_in_how_the_others_are_counted(rack: Rack) -> None:
    tray = rack.tray("coir", 2)
    rack.forget_bed(tray)
    rack.book.leave_out(rack.book.days(tray.id)[-1].photo_id)

    found = verdict_of(rack)

    assert found.counted is CountedOf.BED
    assert found.verdict.medium("coir").n == 3


def test_a_bed_without_evenness_counts_as_known_only_where_nothing_is_even_yet(rack: Rack) -> None:
    tray = rack.tray("coir", 1)
    photo = next(p for p in rack.book.photo_numbers(tray.trial or "") if p.tray_id == tray.id)

    assert knows_bed(photo)
    assert not knows_bed(replace(photo, bed_uniformity=None))
    assert knows_bed(replace(photo, bed_uniformity=None, uniformity=None))
    assert not knows_bed(replace(photo, bed_share=None))
