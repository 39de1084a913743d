"""Another grower's book, as a folder, a pack or an export: opened, looked at, and left without a trace."""

import os
import re
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.errors import BookError, BookIsNewer, NotABook, PerhapsABook
from data.export import export
from data.travel.guestbook import GuestBook, comes_as_book
from data.travel.guestlook import look_at_guest
from data.travel.merging import merge
from data.travel.packing import pack
from data.travel.samenames import Answer, SameName
from data.travelerrors import NotAPack, SameBook
from tests.data.builders import a_note, a_tray, bring
from tests.data.oldbooks import BOOKS, restored


@pytest.fixture
def other(tmp_path: Path, phone: Path) -> Iterator[Book]:
    with Book.create(tmp_path / "theirs") as made:
        made.add_trays(
            [
                a_tray("A1", crop="broccoli", medium="coir", tag_number=10),
                a_tray("K7", crop="sunflower", medium="hemp mat", tag_number=90, shelf="north"),
            ]
        )
        made.set_setting("today", "2026-03-08")
        bring(made, a_note(phone, "theirs.jpg", tag=90))
        yield made


@pytest.mark.parametrize("form", ["folder", "pack", "export"])
def test_a_book_comes_in_any_form_and_leaves_nothing_behind(other: Book, tmp_path: Path, form: str) -> None:
    source = {
        "folder": lambda: other.folder,
        "pack": lambda: pack(other, tmp_path / "theirs", CancelToken()),
        "export": lambda: export(other, tmp_path / "theirs-open", CancelToken()),
    }[form]()
    beside = tmp_path / "cache"

    with GuestBook.open(source, beside, CancelToken()) as guest:
        assert [tray.code for tray in guest.book.trays()] == ["A1", "K7"]
        assert guest.name == source.stem

    assert not beside.exists() or list(beside.iterdir()) == []


@pytest.mark.parametrize("form", ["pack", "export"])
def test_the_kind_of_a_medium_travels_along_and_stays_unsaid_where_it_was(
    other: Book, tmp_path: Path, form: str
) -> None:
    other.set_medium("coir", kind="loose")
    source = {
        "pack": lambda: pack(other, tmp_path / "theirs", CancelToken()),
        "export": lambda: export(other, tmp_path / "theirs-open", CancelToken()),
    }[form]()

    with GuestBook.open(source, tmp_path / "cache", CancelToken()) as guest:
        assert {one.name: one.kind for one in guest.book.media_known()} == {"coir": "loose", "hemp mat": ""}


def on_the_disk(folder: Path) -> dict[str, bytes]:
    files = (path for path in folder.rglob("*") if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}


@pytest.mark.parametrize("dump", sorted(BOOKS.glob("v*.sql")), ids=lambda path: path.stem)
def test_a_book_of_any_age_is_read_without_changing_a_byte_of_it(
    book: Book, dump: Path, tmp_path: Path
) -> None:
    source = restored(dump, tmp_path / "old")
    before = on_the_disk(source)

    with GuestBook.open(source, tmp_path / "cache", CancelToken()) as guest:
        same = dict.fromkeys(look_at_guest(book, guest.book).asked, Answer.SAME)
        merge(book, guest.book, same, "Kim", CancelToken(), originals_in=guest.originals_in)
        while_open = on_the_disk(source)

    assert while_open == before
    assert on_the_disk(source) == before


def test_a_book_that_is_open_elsewhere_is_read_with_what_was_written_last(
    other: Book, tmp_path: Path
) -> None:
    other.set_setting("written", "just now")  # stands in the write-ahead log, not in the file
    before = (other.folder / "book.sqlite").read_bytes()

    with GuestBook.open(other.folder, tmp_path / "cache", CancelToken()) as guest:
        assert guest.book.setting("written") == "just now"

    assert (other.folder / "book.sqlite").read_bytes() == before


def test_photos_come_from_the_folder_of_the_book(
    book: Book, other: Book, phone: Path, tmp_path: Path
) -> None:
    with GuestBook.open(other.folder, tmp_path / "cache", CancelToken()) as guest:
        same = dict.fromkeys(look_at_guest(book, guest.book).asked, Answer.SAME)
        result = merge(book, guest.book, same, "Kim", CancelToken(), originals_in=guest.originals_in)

    assert result.without_original == ()
    tray = next(tray for tray in book.trays() if tray.code == "K7")
    (day,) = book.days(tray.id)
    assert day.photo.read_bytes() == (phone / "theirs.jpg").read_bytes()


def test_the_open_book_cannot_be_brought_into_itself(book: Book, tmp_path: Path) -> None:
    with pytest.raises(SameBook, match="choose another grower's book"):
        GuestBook.open(book.folder, book.folder / "cache", CancelToken())

    with (
        GuestBook.open(book.folder, tmp_path / "cache", CancelToken()) as guest,
        pytest.raises(SameBook, match=re.escape(str(book.folder))),
    ):
        merge(book, guest.book, {}, "Kim", CancelToken(), originals_in=guest.originals_in)


def test_a_cache_that_may_only_be_read_is_told_in_words(other: Book, tmp_path: Path) -> None:
    (tmp_path / "mine").mkdir()
    (tmp_path / "mine" / "cache").write_text("a file where the folder should be")

    with pytest.raises(BookError, match=re.escape(str(tmp_path / "mine"))):
        GuestBook.open(other.folder, tmp_path / "mine" / "cache", CancelToken())


@pytest.mark.parametrize(("error", "text"), [(NotABook, None), (PerhapsABook, "Dear grower, " * 400)])
def test_what_cannot_be_read_is_named_by_its_own_folder(
    tmp_path: Path, error: type[BookError], text: str | None
) -> None:
    source = tmp_path / "letters"
    source.mkdir()
    if text is not None:
        (source / "book.sqlite").write_text(text)

    with pytest.raises(error, match=re.escape(str(source))):
        GuestBook.open(source, tmp_path / "cache", CancelToken())

    assert list((tmp_path / "cache").iterdir()) == []


def test_a_newer_book_is_named_by_its_own_folder(other: Book, tmp_path: Path) -> None:
    with other.writing() as db:
        step = {"migration_set": "book", "name": "m999_of_tomorrow", "applied_at": "2030-01-01"}
        db.table("_sqlite_migrations").insert(step)

    with pytest.raises(BookIsNewer, match=re.escape(str(other.folder))):
        GuestBook.open(other.folder, tmp_path / "cache", CancelToken())


def test_what_is_no_book_is_refused_and_leaves_nothing(tmp_path: Path) -> None:
    (tmp_path / "letter.evenstand").write_text("Dear grower")

    with pytest.raises(NotAPack):
        GuestBook.open(tmp_path / "letter.evenstand", tmp_path / "cache", CancelToken())

    assert list((tmp_path / "cache").iterdir()) == []


def test_stopped_on_the_way_it_leaves_nothing(other: Book, tmp_path: Path) -> None:
    source, token = pack(other, tmp_path / "theirs", CancelToken()), CancelToken()
    token.cancel()

    with pytest.raises(Cancelled):
        GuestBook.open(source, tmp_path / "cache", token)

    assert list((tmp_path / "cache").iterdir()) == []


def test_what_a_killed_program_left_is_taken_away_a_day_later(other: Book, tmp_path: Path) -> None:
    source = pack(other, tmp_path / "theirs", CancelToken())
    left, fresh = tmp_path / "cache" / "guest-left", tmp_path / "cache" / "guest-fresh"
    for place in (left, fresh):
        place.mkdir(parents=True)
    day_before = time.time() - 90_000
    os.utime(left, (day_before, day_before))

    GuestBook.open(source, tmp_path / "cache", CancelToken()).close()

    assert list((tmp_path / "cache").iterdir()) == [fresh]


def test_a_folder_of_photos_is_no_book(other: Book, phone: Path, tmp_path: Path) -> None:
    assert comes_as_book(other.folder)
    assert comes_as_book(export(other, tmp_path / "open", CancelToken()))
    assert not comes_as_book(phone)
    assert not comes_as_book(phone / "theirs.jpg")


def test_the_look_says_what_would_come_and_what_has_to_be_asked(book: Book, other: Book) -> None:
    look = look_at_guest(book, other)

    assert [(tray.code, tray.medium, tray.photos) for tray in look.trays] == [
        ("A1", "coir", 0),
        ("K7", "hemp mat", 1),
    ]
    assert (look.photos, look.readings) == (1, 0)
    coir = SameName(kind="medium", name="coir")
    assert coir in look.asked
    trays = [tray for tray in book.trays() if tray.medium == "coir"]
    assert (look.here[coir], look.there[coir]) == (len(trays), 1)


def test_trays_are_known_again_as_merging_knows_them(book: Book, other: Book) -> None:
    first = look_at_guest(book, other)
    same = dict.fromkeys(first.asked, Answer.SAME)
    result = merge(book, other, same, "Kim", CancelToken())
    assert result.added["tray"] == len(first.trays) - len(first.known(same))

    again = look_at_guest(book, other)
    apart = dict.fromkeys(again.asked, Answer.SAME) | {SameName(kind="medium", name="coir"): Answer.APART}

    assert len(again.known(dict.fromkeys(again.asked, Answer.SAME))) == 2
    assert {tray.code for tray in again.known(apart)} == {"K7"}
