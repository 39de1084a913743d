"""A person's changes can be taken back and done again, each with its text."""

from datetime import datetime
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from data.book import Book
from data.errors import CannotUndo
from data.events import EventKind
from data.growing.conditions import TrayType
from data.readings import NewReading, ReadingKind
from data.records import PhotoId, PhotoState, Said
from data.watch import read_looks
from tests.data.builders import a_note, a_tray, bring, score_note
from tests.data.contents import contents
from tests.made.books import an_empty_book

CORNERS = [(1.0, 2.0), (900.0, 2.0), (900.0, 480.0), (1.0, 480.0)]


def test_a_word_on_a_suspect_can_be_taken_back_and_said_again(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=11, suspects=[{}]))
    suspect = book.score(fate.photo_id).suspects[0].id

    book.say(suspect, "mold")
    assert book.undo_text() == "mold on A2"
    assert book.tiles()[1].mold

    assert book.undo() == "mold on A2"
    assert not book.tiles()[1].mold
    assert (book.undo_text(), book.redo_text()) == (None, "mold on A2")

    assert book.redo() == "mold on A2"
    assert book.score(fate.photo_id).suspects[0].said is Said.MOLD


def test_nothing_to_take_back_is_no_error(book: Book) -> None:
    assert (book.undo(), book.redo(), book.undo_text(), book.redo_text()) == (None, None, None, None)


def test_saying_what_is_said_already_is_no_step(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=11, suspects=[{}]))

    book.say(book.score(fate.photo_id).suspects[0].id, None)

    assert book.undo_text() is None


def test_a_new_change_ends_what_could_be_done_again(book: Book) -> None:
    book.add_tray(a_tray("B1"))
    book.undo()
    book.add_tray(a_tray("B2"))

    assert book.redo_text() is None
    assert book.undo_text() == "tray B2 added"


def test_what_is_done_in_one_step_is_taken_back_and_done_again_in_one(book: Book) -> None:
    before = contents(book)
    with book.together():
        book.set_trusted(None)  # nothing changes: the step is not called after it
        book.add_tray(a_tray("B1"))
        book.set_medium("hemp", kind="mat")
    after = contents(book)

    assert book.undo() == "tray B1 added"
    assert contents(book) == before
    assert book.redo() == "tray B1 added"
    assert contents(book) == after


def test_what_fails_in_one_step_leaves_nothing_of_it(book: Book) -> None:
    def add_and_fail() -> None:
        with book.together():
            book.add_tray(a_tray("B1"))
            book.set_trusted("never heard of")

    before = contents(book)

    with pytest.raises(KeyError):
        add_and_fail()

    assert contents(book) == before
    assert book.undo_text() is None
    book.add_tray(a_tray("B2"))
    assert book.undo_text() == "tray B2 added"


def test_taking_back_a_match_lets_the_photo_wait_again(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone))
    book.match(fate.photo_id, book.trays()[2].id)
    assert book.photo(fate.photo_id).tray_code == "A3"

    assert book.undo() == "photo matched to A3"

    assert book.photo(fate.photo_id).state is PhotoState.NEEDS_TRAY


def test_a_whole_walk_is_confirmed_and_taken_back_in_one_step(book: Book, phone: Path) -> None:
    for n in range(3):
        bring(book, a_note(phone, f"{n}.jpg", taken_at=datetime(2026, 3, 8, 8, n).isoformat()))
    proposals = {row.id: row.proposal_id for row in book.photos() if row.proposal_id}
    assert len(proposals) == 3

    book.match_all(proposals)
    assert {row.state for row in book.photos()} == {PhotoState.STORED}

    assert book.undo() == "3 photos matched"
    assert {row.state for row in book.photos()} == {PhotoState.NEEDS_TRAY}


def test_taking_back_corners_brings_the_old_score_and_its_suspects_back(book: Book, phone: Path) -> None:
    patches = [{"x_mm": 100.0}, {"x_mm": 300.0}]
    path = a_note(phone, tag=10, found_by="frame", sure=0.3, suspects=patches)
    fate = bring(book, path)
    before = contents(book)
    book.set_corners(fate.photo_id, CORNERS, score_note(path, CORNERS))
    after = contents(book)

    assert book.undo() == "corners of A1"
    assert contents(book) == before

    book.redo()
    assert contents(book) == after


def test_an_added_tray_is_taken_back_with_the_crop_and_medium_it_brought(book: Book) -> None:
    before = contents(book)
    book.add_tray(a_tray("D1", crop="pea", medium="wood fibre", seed_lot="P-1", block="9"))

    book.undo()

    assert contents(book) == before


def test_a_change_that_names_what_is_no_table_is_not_taken_back(book: Book) -> None:
    book.add_tray(a_tray("D1"))
    with book.writing() as db:
        db.execute("UPDATE change SET images = replace(images, '\"tray\"', '\"sqlite_schema; --\"')")
    before = contents(book)

    with pytest.raises(CannotUndo):
        book.undo()

    assert contents(book) == before


def test_a_tray_with_photos_cannot_be_taken_back(book: Book, phone: Path) -> None:
    book.add_tray(a_tray("D1", tag_number=50))
    bring(book, a_note(phone, tag=50))

    with pytest.raises(CannotUndo, match=r'"tray D1 added" cannot be taken back'):
        book.undo()

    assert [tray.code for tray in book.trays()] == ["A1", "A2", "A3", "D1"]
    assert book.undo_text() == "tray D1 added"


def test_a_finished_tray_comes_back(book: Book) -> None:
    book.finish_tray(book.trays()[0].id, datetime(2026, 3, 8, 18))
    assert len(book.trays()) == 2

    assert book.undo() == "A1 marked as done"
    assert len(book.trays()) == 3


def test_changes_can_still_be_taken_back_after_closing(book: Book) -> None:
    book.add_tray(a_tray("B1"))
    book.close()

    with Book.open(book.folder) as again:
        assert again.undo() == "tray B1 added"
        assert len(again.trays()) == 3


STEPS = [
    "mold", "not", "open", "match", "corners", "canopy", "out", "tray", "done", "weigh", "weigh again", "log",
    "water", "cut", "grow", "edit", "trusted", "type",
]  # fmt: skip


def note(book: Book, step: str, n: int, photo: PhotoId, path: Path) -> None:
    """What a person notes beside the photos."""
    tray, at = book.trays(growing=False)[0].id, datetime(2026, 3, 9, n)
    weights = book.readings(tray, ReadingKind.WEIGHT)
    match step:
        case "canopy":
            book.mend_canopy(photo, b"mask", score_note(path))
        case "weigh":
            book.add_readings(
                [NewReading(kind=ReadingKind.WEIGHT, value=800.0 + n, taken_at=at, tray_id=tray)]
            )
        case "weigh again" if weights:
            book.change_reading(weights[0].id, 900.0 + n)
        case "log":
            air = ReadingKind.AIR_TEMPERATURE
            rows = [NewReading(kind=air, value=20.0, taken_at=at, shelf=f"S{k}") for k in range(3)]
            book.keep_log(f"{n:064}", f"{n}.csv", "{}", rows)
        case "water" | "cut":
            kind = EventKind.WATERED if step == "water" else EventKind.CUT
            book.add_event([tray], kind, at, str(n))
        case "grow":
            book.reopen_tray(tray)
        case "edit":
            book.edit_tray(tray, medium=f"medium {n}", note=step, stacked=n % 2 == 0)
        case "trusted":
            book.set_trusted("coir" if n % 2 else None)
        case "type":
            book.set_tray_type(TrayType(name=f"type {n}"))


@given(steps=st.lists(st.sampled_from(STEPS), max_size=8))
@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_taking_everything_back_is_as_if_nothing_had_been_done(
    tmp_path_factory: pytest.TempPathFactory, steps: list[str]
) -> None:
    folder = tmp_path_factory.mktemp("undo")
    path = a_note(folder / "phone", suspects=[{}], found_by="frame", sure=0.2)
    with an_empty_book(folder / "book") as book:
        book.add_trays([a_tray("A1"), a_tray("A2")])
        photo = bring(book, path).photo_id
        book.forget_changes()
        before = contents(book)
        for n, step in enumerate(steps):
            suspect = book.score(photo).suspects[0].id
            match step:
                case "mold" | "not" | "open":
                    book.say(suspect, {"mold": "mold", "not": "not mold", "open": None}[step])
                case "match":
                    book.match(photo, book.trays(growing=False)[n % 2].id)
                case "corners":
                    book.set_corners(photo, CORNERS, score_note(path, CORNERS))
                case "out":
                    book.leave_out(photo)
                case "tray":
                    book.add_tray(a_tray(f"N{n}", crop=f"crop {n}"))
                case "done":
                    book.finish_tray(book.trays(growing=False)[0].id, datetime(2026, 3, 9, n))
                case _:
                    note(book, step, n, photo, path)
        after = contents(book)

        while book.undo():
            pass
        assert contents(book) == before

        while book.redo():
            pass
        assert contents(book) == after


def test_what_the_look_list_noted_of_a_tray_does_not_keep_it_from_being_taken_back(
    book: Book, phone: Path
) -> None:
    for tag in (10, 11, 12):
        bring(book, a_note(phone, f"{tag}.jpg", tag=tag))
    bring(book, a_note(phone, "old.jpg", tag=12, taken_at="2026-03-05T12:00:00"))
    book.add_tray(a_tray("Z9"))
    assert [look.code for look in read_looks(book)] == ["Z9"]
    assert [past.code for past in book.look_history()] == ["Z9"]

    assert book.undo() == "tray Z9 added"

    assert [tray.code for tray in book.trays()] == ["A1", "A2", "A3"]
    assert book.look_history() == ()


def test_a_word_on_a_patch_that_scoring_again_has_replaced_stays_and_is_no_accident(
    book: Book, phone: Path
) -> None:
    note = a_note(phone, tag=11, suspects=[{}])
    photo = bring(book, note).photo_id
    book.say(book.score(photo).suspects[0].id, "mold")
    bring(book, a_note(phone, "other.jpg", tag=12, suspects=[{}]))
    judged = score_note(note)
    judged.score.inner_mm = (400.0, 200.0)  # the tray was measured meanwhile
    assert book.keep_again(photo, judged)

    with pytest.raises(CannotUndo, match="mold on A2"):
        book.undo()

    assert book.score(photo).suspects[0].said is Said.MOLD
