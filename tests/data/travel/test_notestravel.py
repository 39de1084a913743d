"""Readings and events of every kind travel in packs, exports and merges and are taken back as they were."""

import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from data.book import Book
from data.cancel import CancelToken
from data.events import EventKind
from data.export import export
from data.materials.reading import read_materials
from data.readings import LIMITS, NewReading, ReadingKind
from data.records import TrayId
from data.report.reading import read_report
from data.travel.imported import read_export
from data.travel.merging import merge
from data.travel.packing import pack, unpack
from data.travel.samenames import Answer, same_names
from data.travelerrors import NotAnExport
from data.verdict.verdicts import verdicts
from data.watch import read_looks
from tests.data.builders import a_tray
from tests.data.contents import contents
from tests.made.books import an_empty_book

AT = datetime(2026, 3, 8, 7, 30)
WORDS = st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=40).map(str.strip)
LINES = st.lists(WORDS, min_size=1, max_size=3).map("\n".join)


@st.composite
def a_reading(draw: st.DrawFn) -> tuple[ReadingKind, float, str]:
    kind = draw(st.sampled_from([ReadingKind.SHELF_LIFE, ReadingKind.TASTE, ReadingKind.FRESH_MASS]))
    low, high = LIMITS[kind]
    return kind, draw(st.floats(low, high).map(lambda value: round(value, 3))), draw(WORDS)


NOTED = st.lists(st.one_of(a_reading(), st.tuples(st.just(EventKind.NOTE), st.just(0.0), LINES)), max_size=6)
Noted = Sequence[tuple[ReadingKind | EventKind, float, str]]


@contextmanager
def a_book(folder: Path, noted: Noted = ()) -> Iterator[Book]:
    with an_empty_book(folder) as book:
        book.set_setting("today", "2026-03-20")
        (tray,) = book.add_trays([a_tray("A1", crop="broccoli", medium="coir", trial="t")])
        note_all(book, tray, noted)
        yield book


def note_all(book: Book, tray: TrayId, noted: Noted) -> None:
    for number, (kind, value, note) in enumerate(noted):
        at = AT + timedelta(minutes=number)
        if isinstance(kind, EventKind):
            book.add_event([tray], kind, at, note)
        else:
            book.add_readings([NewReading(kind=kind, value=value, taken_at=at, tray_id=tray, note=note)])


def told(book: Book) -> tuple[list[object], list[object]]:
    """What stands of its one tray, without the numbers of rows."""
    (tray,) = book.trays()
    return (
        [(one.kind, one.value, one.taken_at, one.note) for one in book.readings(tray.id)],
        [(one.kind, one.at, one.note) for one in book.events(tray.id)],
    )


def known_by(*found: tuple[list[object], list[object]]) -> set[object]:
    """By what a merge knows them: kind, time and value; of words those that were given, where any were."""
    readings = {one[:3] for numbers, _ in found for one in numbers if isinstance(one, tuple)}
    events = {one for _, words in found for one in words if isinstance(one, tuple)}
    given_words = {(kind, at) for kind, at, note in events if note}
    return readings | {one for one in events if one[2] or one[:2] not in given_words}


def merged(book: Book, other: Book) -> None:
    merge(book, other, dict.fromkeys(same_names(book, other), Answer.SAME), "Kim", CancelToken())


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(noted=NOTED)
def test_a_pack_and_an_export_bring_back_every_note(noted: Noted) -> None:
    with tempfile.TemporaryDirectory() as folder, a_book(Path(folder) / "book", noted) as book:
        there = unpack(pack(book, Path(folder) / "packed", CancelToken()), Path(folder) / "b", CancelToken())
        files = export(book, Path(folder) / "files", CancelToken())
        with Book.open(there) as again, Book.open(read_export(files, Path(folder) / "c", CancelToken())) as c:
            assert contents(again) == contents(book)
            assert told(c) == told(book)


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(ours=NOTED, theirs=NOTED)
@example(ours=[(EventKind.NOTE, 0.0, "")], theirs=[(EventKind.NOTE, 0.0, "thin at the door")])
def test_a_merge_adds_every_note_once_and_undo_takes_it_all_back(ours: Noted, theirs: Noted) -> None:
    with (
        tempfile.TemporaryDirectory() as folder,
        a_book(Path(folder) / "ours", ours) as book,
        a_book(Path(folder) / "theirs", theirs) as other,
    ):
        before, alone = contents(book), told(book)
        merged(book, other)
        both = told(book)
        assert known_by(both) == known_by(alone, told(other))
        merged(book, other)
        assert told(book) == both  # a second time brings nothing
        while told(book) != alone and book.undo_text() is not None:
            book.undo()
        assert {name: contents(book)[name] for name in ("reading", "event")} == {
            name: before[name] for name in ("reading", "event")
        }


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(noted=NOTED)
def test_every_note_is_taken_back_and_done_again(noted: Noted) -> None:
    with tempfile.TemporaryDirectory() as folder, a_book(Path(folder) / "book") as book:
        before = contents(book)
        (tray,) = book.trays()
        note_all(book, tray.id, noted)
        after = contents(book)
        for _ in noted:
            book.undo()
        assert contents(book) == before
        for _ in noted:
            book.redo()
        assert contents(book) == after


# --- kinds of a newer program


def note_unknown(book: Book) -> None:
    (tray,) = book.trays()
    row = {"tray": tray.id, "kind": "crunch", "value": 3.0, "unit": "1-5", "taken_at": AT.isoformat()}
    with book.writing() as db:
        db.table("reading").insert(row)
        db.table("event").insert({"tray": tray.id, "kind": "sung to", "at": AT.isoformat(), "note": "twice"})


def test_kinds_that_only_a_newer_program_knows_hide_nothing_and_stay_kept(tmp_path: Path) -> None:
    noted = [(ReadingKind.TASTE, 4.0, ""), (EventKind.NOTE, 0.0, "thin at the door")]
    with a_book(tmp_path / "book", noted) as book, a_book(tmp_path / "ours") as ours:
        note_unknown(book)
        (tray,) = book.trays()

        assert [one.kind for one in book.readings()] == [ReadingKind.TASTE]
        assert [one.kind for one in book.events(tray.id)] == [EventKind.NOTE]
        assert book.unknown_notes(tray.id) == 2
        assert read_looks(book) is not None
        assert read_materials(book).table.cell("taste", "coir").value == 4.0
        assert verdicts(book)
        assert read_report(book).blocks
        with Book.open(unpack(pack(book, tmp_path / "p", CancelToken()), tmp_path / "b", CancelToken())) as b:
            assert contents(b) == contents(book)
        merged(ours, book)
        assert {row["kind"] for row in contents(ours)["reading"]} == {"taste", "crunch"}
        assert "crunch" in (export(book, tmp_path / "e", CancelToken()) / "readings.csv").read_text("utf-8")


def test_files_of_a_newer_program_are_refused_with_the_word_and_what_to_do(tmp_path: Path) -> None:
    with a_book(tmp_path / "book") as book:
        note_unknown(book)
        files = export(book, tmp_path / "files", CancelToken())

    with pytest.raises(NotAnExport, match=r"'crunch' is no kind of reading that this program knows.*up to"):
        read_export(files, tmp_path / "again", CancelToken())
