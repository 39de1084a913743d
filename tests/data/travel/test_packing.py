"""A book in one file: what comes out is what went in, and nothing else ever comes out."""

import hashlib
import json
import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any
from zipfile import ZipFile

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.errors import BookError, BookExists, BookIsNewer
from data.medium.benchtest import BenchKind, NewBenchTest
from data.records import PhotoId
from data.travel.packing import pack, unpack
from data.travelerrors import NoSuchPack, NotAPack, NotWritable, PackExists
from tests.data.builders import a_note, a_tray, bring

Contents = dict[str, bytes]


@pytest.fixture
def packed(book: Book, phone: Path, tmp_path: Path) -> Path:
    for n in range(3):
        bring(book, a_note(phone, f"{n}.jpg", tag=10, number=n))
    return pack(book, tmp_path / "mine", CancelToken())


def contents(path: Path) -> Contents:
    with ZipFile(path) as pack_file:
        return {name: pack_file.read(name) for name in pack_file.namelist()}


def rewritten(path: Path, change: Callable[[Contents], None]) -> Path:
    inside = contents(path)
    change(inside)
    with ZipFile(path, "w") as pack_file:
        for name, data in inside.items():
            pack_file.writestr(name, data)
    return path


def files_below(folder: Path) -> set[str]:
    return {path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()}


def test_a_book_unpacked_elsewhere_is_the_same_book(packed: Path, book: Book, tmp_path: Path) -> None:
    there = unpack(packed, tmp_path / "other machine" / "book", CancelToken())

    with Book.open(there) as same:
        assert [row.name for row in same.photos()] == [row.name for row in book.photos()]
        assert same.trays() == book.trays()
        for row in same.photos():
            assert same.photo_path(row.id).read_bytes() == book.photo_path(row.id).read_bytes()


def test_a_pack_holds_the_originals_and_no_cache(packed: Path, book: Book) -> None:
    names = set(contents(packed))

    assert names == {"pack.json", "book.sqlite", *(
        book.photo_path(row.id).relative_to(book.folder).as_posix() for row in book.photos()
    )}  # fmt: skip


def test_a_photo_of_two_heaps_travels_once(packed: Path, book: Book, phone: Path, tmp_path: Path) -> None:
    heap = a_note(phone, "heap.jpg", number=7)
    at = datetime(2026, 3, 8, 12)
    for _ in range(2):
        test = book.begin_test(NewBenchTest(kind=BenchKind.BREAKDOWN, medium="coir", begun_at=at))
        book.keep_heap_photos(test, [heap], at)
    again = pack(book, tmp_path / "again", CancelToken())

    with ZipFile(again) as pack_file:
        assert len(set(pack_file.namelist())) == len(pack_file.namelist())
    with Book.open(unpack(again, tmp_path / "there", CancelToken())) as same:
        photos = [photo for test in same.bench_tests() for photo in same.heap_photos(test.id)]
        assert [same.heap_photo_path(photo).read_bytes() for photo in photos] == [heap.read_bytes()] * 2


@pytest.mark.filterwarnings("ignore:Duplicate name")
def test_a_pack_in_which_a_photo_stands_twice_is_read(packed: Path, tmp_path: Path) -> None:
    with ZipFile(packed, "a") as pack_file:
        name = next(name for name in pack_file.namelist() if name.startswith("photos/"))
        pack_file.writestr(name, pack_file.read(name))

    assert unpack(packed, tmp_path / "there", CancelToken()).is_dir()


def test_an_original_that_is_missing_does_not_keep_the_rest_from_travelling(
    book: Book, phone: Path, tmp_path: Path
) -> None:
    bring(book, a_note(phone, "0.jpg", tag=10))
    bring(book, a_note(phone, "1.jpg", tag=10, number=1))
    book.photo_path(PhotoId(1)).unlink()

    there = unpack(pack(book, tmp_path / "p", CancelToken()), tmp_path / "there", CancelToken())

    with Book.open(there) as same:
        assert len(same.photos()) == 2


def test_an_original_that_is_another_file_by_now_is_named_and_the_pack_can_be_unpacked(
    book: Book, phone: Path, tmp_path: Path
) -> None:
    for n in range(2):
        bring(book, a_note(phone, f"{n}.jpg", tag=10, number=n))
    book.photo_path(PhotoId(1)).write_bytes(b"a damaged disk")
    lacking: list[str] = []

    packed = pack(book, tmp_path / "p", CancelToken(), lacks=lacking.append)
    there = unpack(packed, tmp_path / "there", CancelToken())

    assert lacking == ["0.jpg"]
    with Book.open(there) as same:
        assert len(same.photos()) == 2
        assert same.photo_path(PhotoId(2)).read_bytes() == (phone / "1.jpg").read_bytes()
    assert sum(path.is_file() for path in (there / "photos").rglob("*")) == 1


def with_damaged_original(inside: Contents) -> None:
    """As older programs packed a photo that a damaged disk had changed: listed with the bytes it has."""
    name = next(name for name in inside if name.startswith("photos/"))
    inside[name] = b"a damaged disk"
    listed = json.loads(inside["pack.json"])
    listed["files"][name] = hashlib.sha256(inside[name]).hexdigest()
    inside["pack.json"] = json.dumps(listed).encode()


def test_an_older_pack_with_a_damaged_original_is_unpacked_without_it(packed: Path, tmp_path: Path) -> None:
    there = unpack(rewritten(packed, with_damaged_original), tmp_path / "there", CancelToken())

    with Book.open(there) as same:
        assert len(same.photos()) == 3
    assert sum(path.is_file() for path in (there / "photos").rglob("*")) == 2


def test_packing_can_be_stopped_and_leaves_nothing(book: Book, phone: Path, tmp_path: Path) -> None:
    bring(book, a_note(phone, tag=10))
    token, out = CancelToken(), tmp_path / "out"
    out.mkdir()
    token.cancel()

    with pytest.raises(Cancelled):
        pack(book, out / "mine", token)

    assert list(out.iterdir()) == []


def test_unpacking_can_be_stopped_and_leaves_nothing(packed: Path, tmp_path: Path) -> None:
    token, place = CancelToken(), tmp_path / "place"
    place.mkdir()

    with pytest.raises(Cancelled):
        unpack(packed, place / "book", token, lambda *_: token.cancel())

    assert list(place.iterdir()) == []


def test_a_book_that_stands_there_is_left_alone(packed: Path, book: Book) -> None:
    before = files_below(book.folder)

    with pytest.raises(BookExists):
        unpack(packed, book.folder, CancelToken())

    assert files_below(book.folder) == before


def test_the_log_of_a_book_that_has_gone_is_not_taken_for_that_of_the_one_unpacked(
    packed: Path, tmp_path: Path
) -> None:
    place = tmp_path / "place"
    place.mkdir()
    (place / "book.sqlite-wal").write_bytes(b"what was kept last")

    with pytest.raises(BookExists):
        unpack(packed, place, CancelToken())

    assert [path.name for path in place.iterdir()] == ["book.sqlite-wal"]


def test_a_folder_with_other_things_keeps_them(packed: Path, tmp_path: Path) -> None:
    place = tmp_path / "place"
    place.mkdir()
    (place / "notes.txt").write_text("mine")

    unpack(packed, place, CancelToken())

    assert (place / "notes.txt").read_text() == "mine"
    Book.open(place).close()


@pytest.mark.parametrize("folder_is_there", [True, False])
def test_of_two_that_unpack_into_one_folder_the_first_stays_and_the_other_is_told(
    packed: Path, tmp_path: Path, folder_is_there: bool
) -> None:
    """The second begins while the first is still at it: only at the end is there anything to see."""
    folder = tmp_path / "there"
    if folder_is_there:
        folder.mkdir()
    with Book.create(tmp_path / "other") as other:
        other.add_tray(a_tray("Z9", tag_number=99))
        others = pack(other, tmp_path / "others", CancelToken())

    def meanwhile(done: int, _total: int) -> None:
        if done == 1:
            unpack(others, folder, CancelToken())

    with pytest.raises(BookExists):
        unpack(packed, folder, CancelToken(), meanwhile)

    with Book.open(folder) as first:
        assert [tray.code for tray in first.trays()] == ["Z9"]
    assert not any(name.startswith("photos/") or ".making-" in name for name in files_below(folder))


def test_of_two_at_the_very_end_none_writes_over_the_other(
    packed: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = tmp_path / "there"
    folder.mkdir()
    copied = shutil.copytree

    def just_then(*asked: Any, **how: Any) -> Any:
        (folder / "book.sqlite").write_bytes(b"of the other")
        return copied(*asked, **how)

    for place in ("photos", "backups", "cache"):
        (folder / place).mkdir()
    monkeypatch.setattr(shutil, "copytree", just_then)

    with pytest.raises(BookExists):
        unpack(packed, folder, CancelToken())

    assert (folder / "book.sqlite").read_bytes() == b"of the other"


def test_where_a_file_has_the_name_of_a_folder_of_a_book_nothing_is_unpacked(
    packed: Path, tmp_path: Path
) -> None:
    place = tmp_path / "place"
    place.mkdir()
    (place / "photos").write_text("a list of photos")

    with pytest.raises(NotWritable) as told:
        unpack(packed, place, CancelToken())

    assert told.value.folder == place
    assert [path.name for path in place.iterdir()] == ["photos"]


def test_a_file_in_the_place_of_the_book_is_told_and_left_as_it_is(packed: Path, tmp_path: Path) -> None:
    (tmp_path / "letter.txt").write_text("mine")

    with pytest.raises(NotWritable, match=r"letter\.txt"):
        unpack(packed, tmp_path / "letter.txt", CancelToken())

    assert (tmp_path / "letter.txt").read_text() == "mine"


def test_who_may_read_a_new_folder_may_read_an_unpacked_book(packed: Path, tmp_path: Path) -> None:
    (tmp_path / "any").mkdir()

    unpack(packed, tmp_path / "there", CancelToken())

    assert (tmp_path / "there").stat().st_mode == (tmp_path / "any").stat().st_mode


def with_escape(name: str) -> Callable[[Contents], None]:
    def change(inside: Contents) -> None:
        inside[name] = b"x"
        listed = json.loads(inside["pack.json"])
        listed["files"][name] = "0" * 64
        inside["pack.json"] = json.dumps(listed).encode()

    return change


def without_list(inside: Contents) -> None:
    del inside["pack.json"]


def with_unlisted(inside: Contents) -> None:
    inside["photos/00/more.jpg"] = b"x"


def with_other_photo(inside: Contents) -> None:
    name = next(name for name in inside if name.startswith("photos/"))
    inside[name] = b"another picture"


def with_form(form: bytes) -> Callable[[Contents], None]:
    def change(inside: Contents) -> None:
        inside["pack.json"] = inside["pack.json"].replace(b'"format": 1', b'"format": ' + form)

    return change


def with_trigger(inside: Contents, tmp: Path) -> None:
    _change_database(inside, tmp, "CREATE TRIGGER t AFTER INSERT ON setting BEGIN DELETE FROM photo; END")


def with_path_in_database(inside: Contents, tmp: Path) -> None:
    _change_database(inside, tmp, "UPDATE photo SET suffix = '/../../../etc/passwd'")


def _change_database(inside: Contents, tmp: Path, statement: str) -> None:
    database = tmp / "strange.sqlite"
    database.write_bytes(inside["book.sqlite"])
    with sqlite3.connect(database) as db:
        db.execute(statement)
    db.close()
    _put_database(inside, database)


def _put_database(inside: Contents, database: Path) -> None:
    inside["book.sqlite"] = database.read_bytes()
    listed = json.loads(inside["pack.json"])
    listed["files"]["book.sqlite"] = hashlib.sha256(inside["book.sqlite"]).hexdigest()
    inside["pack.json"] = json.dumps(listed).encode()


@pytest.mark.parametrize(
    "change",
    [
        with_escape("../evil.txt"),
        with_escape("photos/../../evil.txt"),
        with_escape("/tmp/evil.txt"),
        with_escape("backups/evil.sqlite"),
        without_list,
        with_unlisted,
        with_other_photo,
        with_form(b"0"),
        with_form(b"true"),
        with_form(b'"2"'),
    ],
)
def test_a_pack_that_holds_anything_strange_is_refused_and_nothing_stays(
    change: Callable[[Contents], None], packed: Path, tmp_path: Path
) -> None:
    strange = rewritten(packed, change)
    before = files_below(tmp_path)

    with pytest.raises(NotAPack):
        unpack(strange, tmp_path / "there" / "book", CancelToken())

    assert files_below(tmp_path) == before


def test_a_file_that_is_not_there_is_not_called_damaged(tmp_path: Path) -> None:
    with pytest.raises(NoSuchPack, match=r"there is no file .*ends in \.evenstand"):
        unpack(tmp_path / "book.pack", tmp_path / "there", CancelToken())

    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("change", [with_trigger, with_path_in_database])
def test_a_database_with_code_or_paths_of_its_own_is_refused(
    change: Callable[[Contents, Path], None], packed: Path, tmp_path: Path
) -> None:
    strange = rewritten(packed, lambda inside: change(inside, tmp_path))

    with pytest.raises(NotAPack):
        unpack(strange, tmp_path / "there", CancelToken())

    assert not (tmp_path / "there").exists()


def with_step_of_tomorrow(inside: Contents, tmp: Path) -> None:
    _change_database(
        inside,
        tmp,
        "INSERT INTO _sqlite_migrations (migration_set, name, applied_at) VALUES ('book', 'm9', '')",
    )


def with_another_mark(inside: Contents, tmp: Path) -> None:
    _change_database(inside, tmp, "PRAGMA application_id = 1")


def test_a_pack_of_a_newer_program_is_not_called_damaged(packed: Path, tmp_path: Path) -> None:
    with pytest.raises(BookIsNewer, match="bring this program up to date"):
        unpack(rewritten(packed, with_form(b"2")), tmp_path / "there", CancelToken())

    assert not (tmp_path / "there").exists()


@pytest.mark.parametrize(
    ("change", "error"), [(with_step_of_tomorrow, BookIsNewer), (with_another_mark, NotAPack)]
)
def test_what_is_wrong_with_the_book_in_a_pack_is_told_of_the_pack(
    change: Callable[[Contents, Path], None], error: type[BookError], packed: Path, tmp_path: Path
) -> None:
    strange = rewritten(packed, lambda inside: change(inside, tmp_path))

    with pytest.raises(error) as told:
        unpack(strange, tmp_path / "there", CancelToken())

    assert strange.name in str(told.value)
    assert "unpacking" not in str(told.value)
    assert not (tmp_path / "there").exists()


@pytest.fixture
def place(tmp_path: Path) -> Path:
    made = tmp_path / "sent here"
    made.mkdir()
    return made


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(drawn=st.data())
def test_bytes_changed_on_the_way_give_the_same_book_or_a_refusal(
    drawn: st.DataObject, packed: Path, place: Path
) -> None:
    whole = packed.read_bytes()
    at = drawn.draw(st.integers(0, len(whole) - 1))
    cut = drawn.draw(st.booleans())
    changed = whole[:at] if cut else whole[:at] + bytes([whole[at] ^ 0x41]) + whole[at + 1 :]
    sent = place.parent / "sent.evenstand"
    sent.write_bytes(changed)
    target = Path(tempfile.mkdtemp(dir=place)) / "book"

    try:
        unpack(sent, target, CancelToken())
    except BookError:
        assert not target.exists()
    else:
        with Book.open(target) as book:
            assert len(book.photos()) == 3
    assert not list(place.glob("*/.*"))


def test_a_file_of_that_name_is_left_as_it_is(book: Book, tmp_path: Path) -> None:
    (tmp_path / "mine.evenstand").write_text("an older pack")

    with pytest.raises(PackExists, match="already, left as it is"):
        pack(book, tmp_path / "mine", CancelToken())

    assert (tmp_path / "mine.evenstand").read_text() == "an older pack"


def test_a_place_that_takes_nothing_is_told_as_that_place(book: Book, tmp_path: Path) -> None:
    with pytest.raises(NotWritable, match="nothing can be written in") as told:
        pack(book, tmp_path / "not there" / "mine", CancelToken())

    assert told.value.folder == tmp_path / "not there"


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
@pytest.mark.timeout(20)
def test_a_pipe_is_no_pack(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "theirs.evenstand")

    with pytest.raises(NotAPack):
        unpack(tmp_path / "theirs.evenstand", tmp_path / "there", CancelToken())
    assert not (tmp_path / "there").exists()


def test_a_book_is_unpacked_by_the_name_that_it_was_packed_under(packed: Path, tmp_path: Path) -> None:
    assert packed.name == "mine.evenstand"

    with Book.open(unpack(tmp_path / "mine", tmp_path / "there", CancelToken())) as same:
        assert len(same.photos()) == 3


def test_what_a_killed_program_left_half_made_goes_with_the_next_one(
    packed: Path, book: Book, tmp_path: Path
) -> None:
    there = tmp_path / "stick"
    old, new, own = there / ".making-old", there / ".making-new", there / ".making-jam"
    for folder in (old / "made", new / "made", own / "recipes"):
        folder.mkdir(parents=True)
        (folder / "half").write_bytes(b"half")
    half, other = there / ".mine.evenstand.1-2.part", there / ".yours.evenstand.1-2.part"
    for file in (half, other):
        file.write_bytes(b"half")
    for path in {*there.rglob("*")} - {new / "made" / "half"}:
        os.utime(path, (1_000_000_000, 1_000_000_000))

    pack(book, there / "mine", CancelToken())
    unpack(packed, there / "book", CancelToken())

    assert {path.name for path in there.iterdir()} == {
        "mine.evenstand", "book", new.name, own.name, other.name,
    }  # fmt: skip


def test_what_another_program_makes_on_a_disk_whose_clock_is_wrong_is_left_alone(
    packed: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    there, made = tmp_path / "stick", tempfile.mkdtemp
    theirs = there / ".making-theirs"
    (theirs / "made").mkdir(parents=True)

    def made_years_ago(prefix: str, dir: Path) -> str:
        return years_ago(made(prefix=prefix, dir=dir))

    years_ago(str(theirs / "made"), str(theirs))
    monkeypatch.setattr(tempfile, "mkdtemp", made_years_ago)

    unpack(packed, there / "book", CancelToken())

    assert (theirs / "made").is_dir()


def test_a_pack_that_another_program_writes_on_a_disk_whose_clock_is_wrong_is_left_alone(
    book: Book, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    theirs, touch = tmp_path / ".mine.evenstand.1-2.part", Path.touch
    theirs.write_bytes(b"half")
    years_ago(str(theirs))

    def touched_years_ago(path: Path) -> None:
        touch(path)
        years_ago(str(path))

    monkeypatch.setattr(Path, "touch", touched_years_ago)

    pack(book, tmp_path / "mine", CancelToken())

    assert theirs.exists()


def years_ago(*paths: str) -> str:
    """Let files look as if they were written long ago; returns the last one."""
    for path in paths:
        os.utime(path, (1_000_000_000, 1_000_000_000))
    return paths[-1]
