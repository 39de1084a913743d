"""How far a tray's canopy is in colour from the photo before, and from its mates on the trusted medium."""

from pathlib import Path
from typing import Any

import pytest

from data.book import Book
from data.chapters.colourapart import ColourApart, colour_apart
from data.records import PhotoId
from tests.data.builders import a_note, a_tray, score_note
from vision.reason import Reason

DAYS = {"before": "2026-03-07T08:00:00", "now": "2026-03-08T08:00:00"}
TAGS = {"C1": 20, "C2": 21, "C3": 22, "C4": 23, "D1": 30, "D2": 31}


@pytest.fixture
def rack(book: Book) -> Book:
    """C1 on coir; C2 and C3 on peat mix, which is trusted; C4 on peat mix in another block."""
    places = {"C1": ("coir", "8"), "C2": ("peat mix", "8"), "C3": ("peat mix", "8"), "C4": ("peat mix", "9")}
    book.add_trays(
        a_tray(code, medium=medium, block=block, tag_number=TAGS[code], trial=None)
        for code, (medium, block) in places.items()
    )
    book.set_trusted("peat mix")
    return book


def seen(book: Book, phone: Path, code: str, when: str = "now", **colour: Any) -> PhotoId:
    """A tray's photo with a canopy of this colour; L* 45, a* -20, b* 25 where nothing else is said."""
    corrected_by = colour.pop("corrected_by", "patch")
    sure, method = colour.pop("sure", 1.0), colour.pop("method", None)
    note = a_note(phone, f"{code}_{when}.jpg", tag=TAGS[code], taken_at=DAYS.get(when, when), sure=sure)
    judged = score_note(note)
    assert judged.score is not None
    vars(judged.score.colour).update(colour)
    judged.score.light.corrected_by = corrected_by
    if method is not None:
        judged.score.method = method
    fate = book.keep(judged, note)
    assert fate.photo_id is not None
    return fate.photo_id


def apart(book: Book, photo: PhotoId, code: str = "C1") -> ColourApart:
    tray = next(tray for tray in book.trays() if tray.code == code)
    found = colour_apart(book, tray.id, photo)
    assert found is not None
    return found


def test_the_first_photo_has_none_before_it(rack: Book, phone: Path) -> None:
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.before.value is None
    assert found.before.reason is Reason.FIRST_PHOTO
    assert found.mates is None


def test_a_canopy_that_turned_lighter_is_told_from_the_photo_before(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C1", "before")
    found = apart(rack, seen(rack, phone, "C1", lightness=50.0, b=33.0))

    assert found.before.value is not None
    assert found.before.value > 3.5
    assert found.before.lighter == pytest.approx(5.0)
    assert found.before_at is not None
    assert found.before_at.isoformat() == DAYS["before"]


def test_a_photo_whose_frame_is_not_sure_is_passed_over(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C1", "2026-03-06T08:00:00")
    seen(rack, phone, "C1", "before", sure=0.2, a=0.0)
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.before.value == pytest.approx(0.0)


def test_nothing_is_said_of_a_photo_that_is_not_sure_itself(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C1", "before")
    found = apart(rack, seen(rack, phone, "C1", sure=0.2))

    assert found.before.reason is Reason.UNSURE_FRAME
    assert found.mates is None


def test_it_is_held_against_the_mean_of_the_mates_of_its_block_on_the_trusted_medium(
    rack: Book, phone: Path
) -> None:
    seen(rack, phone, "C2", a=-22.0)
    seen(rack, phone, "C3", a=-18.0)
    seen(rack, phone, "C4", a=0.0)  # of another block
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.mates is not None
    assert found.mates.value == pytest.approx(0.0)
    assert found.mate_codes == ("C2", "C3")
    assert found.medium == "peat mix"


def test_of_a_mate_photographed_twice_the_newest_counts_and_other_days_do_not(
    rack: Book, phone: Path
) -> None:
    seen(rack, phone, "C2", "before", a=30.0)
    seen(rack, phone, "C2", "2026-03-08T07:00:00", a=20.0)
    seen(rack, phone, "C2", "2026-03-08T23:59:00")
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.mates is not None
    assert found.mates.value == pytest.approx(0.0)


def test_mates_without_a_patch_are_left_out_where_others_have_one(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C2", a=30.0, corrected_by="none")
    seen(rack, phone, "C3")
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.mate_codes == ("C3",)


def test_where_no_mate_can_be_compared_it_says_why(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C2", corrected_by="none")
    seen(rack, phone, "C3", corrected_by="none")
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.mates is not None
    assert found.mates.value is None
    assert found.mates.reason is Reason.ONE_PATCH


def test_a_mate_that_is_not_up_yet_gives_no_colour(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C2", lightness=None, a=None, b=None)
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.mates is not None
    assert found.mates.reason is Reason.NO_CANOPY


def test_scores_of_two_methods_are_not_compared(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C2", method="learned 3")
    found = apart(rack, seen(rack, phone, "C1"))

    assert found.mates is not None
    assert found.mates.reason is Reason.OTHER_METHODS


def test_a_tray_on_the_trusted_medium_is_held_against_the_others_on_it(rack: Book, phone: Path) -> None:
    seen(rack, phone, "C3")
    found = apart(rack, seen(rack, phone, "C2", a=-10.0), "C2")

    assert found.mate_codes == ("C3",)


def test_what_the_trays_trial_trusts_comes_before_what_the_book_trusts(rack: Book, phone: Path) -> None:
    rack.add_trays(
        a_tray(code, medium=medium, block="8", tag_number=tag, trial="mats")
        for code, medium, tag in (("D1", "coir", 30), ("D2", "hemp mat", 31))
    )
    with rack.writing() as db:
        db.execute(
            "UPDATE trial SET trusted = (SELECT id FROM medium WHERE name = 'hemp mat') WHERE name = 'mats'"
        )
    seen(rack, phone, "C2")
    seen(rack, phone, "D2")
    found = apart(rack, seen(rack, phone, "D1"), "D1")

    assert found.mate_codes == ("D2",)
    assert found.medium == "hemp mat"


def test_without_a_trusted_medium_there_are_no_such_mates(rack: Book, phone: Path) -> None:
    rack.set_trusted(None)
    seen(rack, phone, "C2")

    assert apart(rack, seen(rack, phone, "C1")).mates is None


def test_a_photo_without_a_score_has_no_colour(rack: Book, phone: Path) -> None:
    tray = next(tray for tray in rack.trays() if tray.code == "C1")

    assert colour_apart(rack, tray.id, PhotoId(99)) is None
