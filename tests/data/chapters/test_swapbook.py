"""Two trays that were taken for each other since a day are put right in one step."""

from datetime import date, datetime
from pathlib import Path

import pytest

from data.book import Book
from data.errors import TagTaken
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from data.records import TrayId
from tests.data.builders import a_note, a_tray, bring
from tests.data.contents import contents

SINCE = date(2026, 3, 4)
ONE, OTHER = TrayId(1), TrayId(2)


def noon(day: int) -> datetime:
    return datetime(2026, 3, day, 12)


@pytest.fixture
def swapped(book: Book, phone: Path) -> Book:
    """A1 and A2 carry each other's tags since 4 March: a photo and a weight of both a day, 2 to 5 March."""
    for day in (2, 3, 4, 5):
        for tray in (ONE, OTHER):
            shows = 3 - tray if noon(day).date() >= SINCE else tray
            at, name = noon(day).isoformat(), f"{day}-{tray}.jpg"
            bring(book, a_note(phone, name, taken_at=at, tag=9 + tray, coverage=10.0 * shows + day))
            weight = NewReading(
                tray_id=tray,
                kind=ReadingKind.WEIGHT,
                value=1000.0 * shows + day,
                taken_at=noon(day),
                source="x",
            )
            book.add_readings([weight])
    book.forget_changes()
    return book


def coverages(book: Book, tray: TrayId) -> list[float]:
    return [day.score.coverage for day in book.days(tray) if day.score is not None]


def weights(book: Book, tray: TrayId) -> list[float]:
    return [one.value for one in book.readings(tray, ReadingKind.WEIGHT)]


def test_photos_from_the_day_on_change_over_both_ways_and_notes_stay(swapped: Book) -> None:
    before = contents(swapped)
    told = swapped.swap_trays(ONE, OTHER, SINCE, notes=False)

    assert (told.photos, told.notes) == (4, 0)
    assert coverages(swapped, ONE) == [12.0, 13.0, 14.0, 15.0]
    assert coverages(swapped, OTHER) == [22.0, 23.0, 24.0, 25.0]
    assert weights(swapped, ONE) == [1002.0, 1003.0, 2004.0, 2005.0]
    assert swapped.undo() == "A1 and A2 swapped"
    assert contents(swapped) == before


def test_notes_change_over_in_the_same_step_where_that_is_said(swapped: Book) -> None:
    swapped.add_event([ONE], EventKind.WATERED, noon(4))
    swapped.add_event([ONE], EventKind.UNCOVERED, noon(5))
    before = contents(swapped)

    assert swapped.swap_of(ONE, OTHER, SINCE).notes == 5
    swapped.swap_trays(ONE, OTHER, SINCE, notes=True)

    assert weights(swapped, ONE) == [1002.0, 1003.0, 1004.0, 1005.0]
    assert [one.kind for one in swapped.events(ONE)] == [EventKind.UNCOVERED]
    assert [one.kind for one in swapped.events(OTHER)] == [EventKind.WATERED]
    swapped.undo()
    assert contents(swapped) == before


def test_swapped_again_from_a_later_day_only_the_days_between_have_changed(swapped: Book) -> None:
    swapped.swap_trays(ONE, OTHER, SINCE, notes=True)
    swapped.swap_trays(ONE, OTHER, date(2026, 3, 5), notes=True)

    assert coverages(swapped, ONE) == [12.0, 13.0, 14.0, 25.0]
    assert weights(swapped, OTHER) == [2002.0, 2003.0, 2004.0, 1005.0]


def test_numbers_of_a_scale_s_file_change_over_though_both_are_of_one_minute(swapped: Book) -> None:
    rows = [
        NewReading(tray_id=tray, kind=ReadingKind.HEIGHT, value=float(tray), taken_at=noon(6), source="scale")
        for tray in (ONE, OTHER)
    ]
    swapped.keep_log("a" * 64, "scale.csv", "{}", rows)

    swapped.swap_trays(ONE, OTHER, SINCE, notes=True)

    assert [one.value for one in swapped.readings(ONE, ReadingKind.HEIGHT)] == [2.0]
    assert swapped.keep_log("a" * 64, "scale.csv", "{}", rows).same_file


def test_the_tray_that_was_thrown_away_is_the_other_one(swapped: Book) -> None:
    swapped.add_event([ONE], EventKind.THROWN_AWAY, noon(6), "mold")
    before = contents(swapped)

    swapped.swap_trays(ONE, OTHER, SINCE, notes=True)

    assert (swapped.tray(ONE).done_at, swapped.tray(ONE).ended_why) == (None, "")
    other = swapped.tray(OTHER)
    assert (other.done_at, other.ended, other.ended_why) == (noon(6), "thrown away", "mold")
    swapped.undo()
    assert contents(swapped) == before


def test_a_tray_whose_tag_was_given_on_does_not_grow_again(swapped: Book) -> None:
    swapped.add_event([ONE], EventKind.CUT, noon(6))
    swapped.add_tray(a_tray("B1", tag_number=10, sown_at=noon(7)))
    before = contents(swapped)

    with pytest.raises(TagTaken, match="B1"):
        swapped.swap_trays(ONE, OTHER, SINCE, notes=True)
    assert contents(swapped) == before


def test_trays_that_never_stood_together_have_nothing_to_change_over(swapped: Book, phone: Path) -> None:
    swapped.add_event([ONE], EventKind.CUT, noon(6))
    later = swapped.add_tray(a_tray("B1", tag_number=20, sown_at=noon(8)))

    told = swapped.swap_trays(ONE, later, date(2026, 3, 1), notes=True)

    assert (told.photos, told.notes) == (0, 0)
    assert swapped.undo_text() != "A1 and B1 swapped"


def test_nothing_changes_over_from_before_the_younger_tray_was_sown(swapped: Book) -> None:
    younger = swapped.add_tray(a_tray("B1", tag_number=20, sown_at=noon(4)))

    assert swapped.swap_of(ONE, younger, date(2026, 3, 1)).photos == 2  # of A1 on 4 and 5 March
