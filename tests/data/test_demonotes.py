"""The demonstration's notes are what a grower could have noted."""

from collections.abc import Iterator

import pytest

from data.book import Book
from data.demo import make_demo
from data.events import EventKind
from data.growing.croptable import doubt_of_reading
from data.readings import ReadingKind


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with make_demo(tmp_path_factory.mktemp("demo") / "book") as book:
        yield book


def test_every_tray_was_weighed_dry_wet_and_then_morning_and_evening(demo: Book) -> None:
    for tray in demo.trays():
        weights = demo.readings(tray.id, ReadingKind.WEIGHT)
        dry, wet, *daily = (reading.value for reading in weights)
        assert wet > 2 * dry
        assert all(dry < grams <= wet for grams in daily)
        assert len(daily) in (15, 16)  # days 2 to 8 and the morning of day 9, twice where it was watered


def test_nothing_was_noted_after_the_morning_that_is_shown(demo: Book) -> None:
    assert max(reading.taken_at for reading in demo.readings()).isoformat() <= "2026-03-11T08:00:00"
    events = [event for tray in demo.trays() for event in demo.events(tray.id)]
    assert events
    assert all(event.at.date() <= demo.today() for event in events)


def test_water_given_is_seen_in_the_weight_and_among_the_events(demo: Book) -> None:
    for tray in demo.trays():
        given = demo.readings(tray.id, ReadingKind.WATER)
        watered = [event for event in demo.events(tray.id) if event.kind is EventKind.WATERED]
        assert [reading.taken_at for reading in given] == [event.at for event in watered]
        for water in given:
            before = demo.readings(tray.id, ReadingKind.WEIGHT, until=water.taken_at)[-1]
            after = demo.readings(tray.id, ReadingKind.WEIGHT, since=water.taken_at)[0]
            assert 0 < after.value - before.value <= water.value


def test_no_number_is_unusual(demo: Book) -> None:
    crops = {tray.id: tray.crop for tray in (*demo.trays(), *demo.ended_trays())}
    of_trays = [one for one in demo.readings() if one.bench_test is None]  # a mat alone weighs less
    for one in of_trays:
        crop = "" if one.tray_id is None else crops[one.tray_id]
        assert doubt_of_reading(one.kind, one.value, crop=crop) is None


def test_each_shelf_has_a_logger(demo: Book) -> None:
    for shelf in demo.rack():
        air = demo.readings(shelf=shelf.name, kind=ReadingKind.AIR_TEMPERATURE)
        damp = demo.readings(shelf=shelf.name, kind=ReadingKind.HUMIDITY)
        assert len(air) == len(damp) == 429
        assert 17 < min(r.value for r in air) < max(r.value for r in air) < 25


def test_the_demonstration_is_the_same_each_time(
    demo: Book, tmp_path_factory: pytest.TempPathFactory
) -> None:
    with make_demo(tmp_path_factory.mktemp("again") / "book") as again:
        assert again.readings() == demo.readings()


def test_nothing_of_it_is_a_step_of_undo(demo: Book) -> None:
    assert demo.undo_text() is None
