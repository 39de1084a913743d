"""Readings are kept, handed out, and each change of them can be taken back."""

import shutil
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from data.book import Book
from data.errors import DiskFull, ImpossibleReading
from data.events import EventKind
from data.readings import UNITS, NewReading, ReadingKind, impossible
from data.records import TrayId
from tests.data.builders import NOON, a_tray
from tests.data.contents import is_whole
from tests.data.smalldisk import small_disk

SHA = "ab" * 32


def a_weight(tray: TrayId, grams: float = 812.0, at: datetime = NOON) -> NewReading:
    return NewReading(kind=ReadingKind.WEIGHT, value=grams, taken_at=at, tray_id=tray)


def an_air(degrees: float, at: datetime, shelf: str = "A") -> NewReading:
    return NewReading(kind=ReadingKind.AIR_TEMPERATURE, value=degrees, taken_at=at, shelf=shelf, source="log")


@pytest.fixture
def tray(book: Book) -> TrayId:
    return book.trays()[0].id


def test_every_kind_has_one_unit_and_limits_that_let_an_ordinary_number_through() -> None:
    assert set(UNITS) == set(ReadingKind)
    assert all(impossible(kind, 1.0 if kind is ReadingKind.SLID else 3.0) is None for kind in ReadingKind)


def test_what_a_number_can_be_is_told_in_the_unit_that_a_person_reads() -> None:
    assert impossible(ReadingKind.CUT_QUALITY, 7.0) == "cut quality can be 1 to 5; 7 was given."
    assert impossible(ReadingKind.SLID, 0.5) == "slid at the cut can be 1 (yes) or 0 (no); 0.5 was given."
    told = impossible(ReadingKind.MEDIUM_TEMPERATURE, 95.0)
    assert told == "medium temperature can be -30 to 90 °C; 95 was given."


@pytest.mark.parametrize(
    ("kind", "value"),
    [
        (ReadingKind.WEIGHT, -1.0),
        (ReadingKind.HUMIDITY, 120.0),
        (ReadingKind.CUT_QUALITY, 6.0),
        (ReadingKind.AIR_TEMPERATURE, float("nan")),
    ],
)
def test_a_number_that_cannot_be_is_refused_with_a_sentence(
    book: Book, tray: TrayId, kind: ReadingKind, value: float
) -> None:
    good = a_weight(tray)
    with pytest.raises(ImpossibleReading, match=f"{kind} can be"):
        book.add_readings([good, NewReading(kind=kind, value=value, taken_at=NOON, tray_id=tray)])

    assert book.readings(tray) == ()
    assert book.undo_text() is None


def test_readings_come_back_oldest_first_and_by_kind(book: Book, tray: TrayId) -> None:
    evening = NOON + timedelta(hours=8)
    water = NewReading(kind=ReadingKind.WATER, value=250.0, taken_at=NOON, tray_id=tray, note="tap")
    late, given = book.add_readings([a_weight(tray, 700.0, evening), water])

    assert [reading.id for reading in book.readings(tray)] == [given, late]
    (one,) = book.readings(tray, ReadingKind.WATER)
    assert (one.value, one.unit, one.note, one.source) == (250.0, "ml", "tap", "person")
    assert [r.id for r in book.readings(tray, since=evening)] == [late]
    assert [r.id for r in book.readings(tray, until=NOON)] == [given]


def test_a_shelf_has_readings_of_its_own(book: Book, tray: TrayId) -> None:
    book.add_readings([an_air(20.5, NOON), an_air(22.0, NOON, shelf="B"), a_weight(tray)])

    assert [reading.value for reading in book.readings(shelf="A")] == [20.5]
    assert len(book.readings()) == 3
    assert len(book.readings(kind=ReadingKind.AIR_TEMPERATURE)) == 2


def test_many_weights_are_one_step_of_undo(book: Book) -> None:
    trays = [tray.id for tray in book.trays()]
    book.add_readings([a_weight(tray, 800.0 + n) for n, tray in enumerate(trays)])

    assert book.undo_text() == "weight of 3 trays"
    book.undo()
    assert book.readings() == ()
    book.redo()
    assert [reading.value for reading in book.readings()] == [800.0, 801.0, 802.0]


def test_a_reading_is_changed_and_deleted_and_both_are_taken_back(book: Book, tray: TrayId) -> None:
    (one,) = book.add_readings([a_weight(tray, 8120.0)])
    book.change_reading(one, 812.0, note="typed wrong")
    assert book.undo_text() == "weight of A1 changed"
    assert (book.reading(one).value, book.reading(one).note) == (812.0, "typed wrong")

    book.delete_reading(one)
    assert book.readings(tray) == ()

    assert book.undo() == "weight of A1 deleted"
    assert book.reading(one).value == 812.0
    book.undo()
    assert book.reading(one).value == 8120.0
    with pytest.raises(ImpossibleReading):
        book.change_reading(one, -5.0)


def test_a_reading_of_a_file_can_be_moved_to_the_time_of_another(book: Book) -> None:
    book.keep_log(SHA, "shelf.csv", "{}", [an_air(20.0, NOON), an_air(21.0, NOON + timedelta(hours=1))])
    first, second = book.readings()

    book.change_reading(first.id, taken_at=second.taken_at)

    assert [reading.taken_at for reading in book.readings()] == [second.taken_at] * 2
    book.undo()
    assert book.readings() == (first, second)


# --- files of loggers


def test_the_same_file_twice_adds_nothing(book: Book) -> None:
    rows = [an_air(20.0 + n, NOON + timedelta(minutes=5 * n)) for n in range(50)]

    first = book.keep_log(SHA, "shelf.csv", "{}", rows)
    again = book.keep_log(SHA, "shelf.csv", "{}", rows)

    assert (first.added, first.known, first.same_file) == (50, 0, False)
    assert (again.added, again.same_file) == (0, True)
    assert len(book.readings(shelf="A")) == 50
    assert "nothing was added" in again.sentence


def test_one_logger_stands_for_several_shelves(book: Book) -> None:
    rows = [an_air(20.0 + n, NOON + timedelta(minutes=5 * n)) for n in range(3)]
    of_b = [replace(one, shelf="B") for one in rows]
    book.keep_log(SHA, "room.csv", "{}", rows)

    assert book.known_of_log(SHA, of_b) == 0
    kept = book.keep_log(SHA, "room.csv", "{}", of_b)

    assert (kept.added, kept.known, kept.same_file) == (3, 0, False)
    assert [one.value for one in book.readings(shelf="B")] == [20.0, 21.0, 22.0]
    assert book.keep_log(SHA, "room.csv", "{}", of_b).same_file
    assert book.undo() == "readings of room.csv"
    assert (len(book.readings(shelf="A")), len(book.readings(shelf="B"))) == (3, 0)


def test_the_same_file_does_not_bring_back_what_a_person_has_changed(book: Book) -> None:
    rows = [an_air(20.0 + n, NOON + timedelta(minutes=5 * n)) for n in range(3)]
    book.keep_log(SHA, "room.csv", "{}", rows)
    first, second, _ = book.readings(shelf="A")
    book.change_reading(first.id, value=19.0)
    book.delete_reading(second.id)

    assert book.known_of_log(SHA, rows) == 3
    assert book.keep_log(SHA, "room.csv", "{}", rows).same_file
    assert [one.value for one in book.readings(shelf="A")] == [19.0, 22.0]


def test_files_that_overlap_add_what_is_new(book: Book) -> None:
    rows = [an_air(20.0, NOON + timedelta(minutes=5 * n)) for n in range(6)]
    book.keep_log(SHA, "monday.csv", "{}", rows[:4])

    kept = book.keep_log("cd" * 32, "tuesday.csv", "{}", [*rows[2:], rows[5]])

    assert (kept.added, kept.known) == (2, 3)
    assert len(book.readings(shelf="A")) == 6


def test_a_file_is_one_step_of_undo_and_can_come_again_after_it(book: Book, tray: TrayId) -> None:
    rows = [an_air(20.0, NOON + timedelta(minutes=5 * n)) for n in range(6)]
    book.add_readings([a_weight(tray)])
    book.keep_log(SHA, "monday.csv", "{}", rows)
    before = book.readings()

    assert book.undo() == "readings of monday.csv"
    assert [reading.kind for reading in book.readings()] == [ReadingKind.WEIGHT]
    assert not book.knows_log(SHA)
    book.redo()
    assert book.readings() == before
    book.undo()
    assert book.keep_log(SHA, "monday.csv", "{}", rows).added == 6


def test_a_file_with_an_impossible_row_is_not_kept_by_half(book: Book) -> None:
    with pytest.raises(ImpossibleReading):
        book.keep_log(SHA, "odd.csv", "{}", [an_air(20.0, NOON), an_air(900.0, NOON)])

    assert book.readings() == ()
    assert not book.knows_log(SHA)


def keep_a_hundred_logs(book: Book) -> None:
    for n in range(100):
        begin = NOON + timedelta(days=n)
        rows = [an_air(20.0, begin + timedelta(seconds=m)) for m in range(2000)]
        book.keep_log(f"{n:064}", f"{n}.csv", "{}", rows)


def test_on_a_full_disk_a_file_is_kept_whole_or_not_at_all(tmp_path: Path) -> None:
    with small_disk(tmp_path / "disk", "3m") as disk:
        with Book.create(disk / "book") as book:
            book.add_tray(a_tray())
            with pytest.raises(DiskFull, match="make room"):
                keep_a_hundred_logs(book)
        shutil.rmtree(disk / "book" / "cache")
        with Book.open(disk / "book") as again:
            assert is_whole(again)
            kept = [n for n in range(100) if again.knows_log(f"{n:064}")]
            assert 0 < len(kept) < 100
            assert kept == list(range(len(kept)))
            assert len(again.readings()) == 2000 * len(kept)


# --- after the cut


def test_what_the_cut_is_worth_is_kept_of_a_tray_that_has_left_the_rack(book: Book, tray: TrayId) -> None:
    book.add_event([tray], EventKind.CUT, NOON)
    later = NOON + timedelta(days=9)
    new = [
        NewReading(kind=ReadingKind.SHELF_LIFE, value=9.0, taken_at=later, tray_id=tray, note="at 4 C"),
        NewReading(kind=ReadingKind.TASTE, value=4.0, taken_at=NOON, tray_id=tray),
    ]

    book.add_readings(new)

    kept = {one.kind: (one.value, one.unit, one.note) for one in book.readings(tray)}
    assert kept == {ReadingKind.SHELF_LIFE: (9.0, "d", "at 4 C"), ReadingKind.TASTE: (4.0, "1-5", "")}
    assert impossible(ReadingKind.SHELF_LIFE, 99.0) == "shelf life can be 0 to 60 days; 99 was given."
    book.undo()
    assert book.readings(tray) == ()
