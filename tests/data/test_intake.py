"""Files go in, each comes out with one fate, whatever happens on the way."""

import json
import os
import threading
import time
from collections.abc import Iterator, Sequence
from concurrent.futures import Executor, Future, ProcessPoolExecutor, ThreadPoolExecutor
from multiprocessing import get_context
from pathlib import Path
from typing import Any

import pytest

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.intake import found_photos, intake, rescore
from data.photos.judged import Judged
from data.records import Known, NeedsCorners, NeedsTray, Refused, Stored
from tests.data.builders import a_note, score_note
from tests.data.contents import is_whole
from vision.reason import Reason


@pytest.fixture
def pool() -> Iterator[Executor]:
    with ThreadPoolExecutor(2) as threads:
        yield threads


def run(paths: Sequence[Path], book: Book, pool: Executor, **more: Any) -> dict[str, Any]:
    """Name -> fate."""
    fates = list(intake(paths, book, pool, CancelToken(), score=score_note, **more))
    assert len({path for path, _ in fates}) == len(fates)
    return {path.name: fate for path, fate in fates}


class ReadsFirst(ThreadPoolExecutor):
    """As a farm does: the bytes are read as a photo is handed over, by when one of them has gone."""

    def submit(self, fn: Any, /, *args: Any, **named: Any) -> Any:
        (path,) = args
        if path.name == "gone.jpg":
            path.unlink()
        path.read_bytes()
        return super().submit(fn, *args, **named)


def test_a_photo_that_goes_while_it_is_handed_to_a_farm_does_not_stop_the_others(
    book: Book, phone: Path
) -> None:
    names = ("a.jpg", "gone.jpg", "z.jpg")
    paths = [a_note(phone, name, tag=10, number=n) for n, name in enumerate(names)]

    with ReadsFirst(1) as farm:
        fates = run(paths, book, farm)

    assert fates.pop("gone.jpg") == Refused(photo_id=None, name="gone.jpg", reason=Reason.UNREADABLE)
    assert {name: type(fate) for name, fate in fates.items()} == {"a.jpg": Stored, "z.jpg": Stored}


@pytest.mark.parametrize("lost", [None, b"turned by a viewer"])
def test_a_photo_that_is_brought_in_again_puts_its_lost_original_back(
    book: Book, phone: Path, pool: Executor, lost: bytes | None
) -> None:
    path = a_note(phone, "a.jpg", tag=10)
    photo_id = run([path], book, pool)["a.jpg"].photo_id
    original = book.photo_path(photo_id)
    original.unlink() if lost is None else original.write_bytes(lost)

    fates = run([path], book, pool)

    assert isinstance(fates["a.jpg"], Known)
    assert original.read_bytes() == path.read_bytes()
    assert sum(found.is_file() for found in (book.folder / "photos").rglob("*")) == 1


def test_each_photo_of_a_folder_has_its_fate(book: Book, phone: Path, pool: Executor) -> None:
    a_note(phone, "a.jpg", tag=10)
    a_note(phone / "monday", "b.jpg", tag=99)
    a_note(phone, "c.jpg", tag=11, found_by="frame", sure=0.4)
    a_note(phone, "d.jpg", refuse="TOO_DARK")

    fates = run([phone], book, pool)

    assert {name: type(fate) for name, fate in fates.items()} == {
        "a.jpg": Stored, "b.jpg": NeedsTray, "c.jpg": NeedsCorners, "d.jpg": Refused,
    }  # fmt: skip
    assert len(book.photos()) == 4


def test_a_folder_gives_its_pictures_and_nothing_else(phone: Path) -> None:
    for name in ("b.JPG", "a.heic", "notes.txt", ".hidden.jpg", "deep/c.png", ".trash/d.jpg"):
        (phone / name).parent.mkdir(exist_ok=True)
        (phone / name).write_bytes(b"x")

    assert [p.relative_to(phone).as_posix() for p in found_photos([phone])] == [
        "a.heic",
        "b.JPG",
        "deep/c.png",
    ]


def test_files_are_taken_in_the_order_in_which_they_are_given(phone: Path) -> None:
    paths = [phone / "z.jpg", phone / "a.jpg", phone / "notes.txt"]

    assert found_photos(paths) == tuple(paths)


def test_the_same_folder_again_scores_nothing(book: Book, phone: Path, pool: Executor) -> None:
    for n in range(5):
        a_note(phone, f"{n}.jpg", tag=10, number=n)
    run([phone], book, pool)

    def never(path: Path) -> Judged:
        raise AssertionError(path)

    again = list(intake([phone], book, pool, CancelToken(), score=never))

    assert [type(fate) for _, fate in again] == [Known] * 5


def test_two_copies_in_one_batch_are_one_photo(book: Book, phone: Path, pool: Executor) -> None:
    path = a_note(phone, "a.jpg", tag=10)
    for name in ("b.jpg", "c.jpg", "d.jpg"):
        (phone / name).write_bytes(path.read_bytes())

    fates = run([phone], book, pool)

    assert sorted(type(fate).__name__ for fate in fates.values()) == ["Known", "Known", "Known", "Stored"]
    assert len(book.photos()) == 1


def test_one_bad_photo_has_its_sentence_and_the_batch_goes_on(
    book: Book, phone: Path, pool: Executor, caplog: pytest.LogCaptureFixture
) -> None:
    for n in range(6):
        a_note(phone, f"{n}.jpg", tag=10, number=n, fail=(n == 2))

    fates = run([phone], book, pool)

    assert fates.pop("2.jpg").sentence == f"not used: {Reason.OUR_MISTAKE}"
    assert {type(fate) for fate in fates.values()} == {Stored}
    assert "a mistake of ours" in caplog.text


def test_a_file_that_cannot_be_read_is_named(book: Book, phone: Path, pool: Executor) -> None:
    fates = run([phone / "gone.jpg", a_note(phone, tag=10)], book, pool)

    assert fates["gone.jpg"] == Refused(photo_id=None, name="gone.jpg", reason=Reason.UNREADABLE)
    assert isinstance(fates["IMG_1.jpg"], Stored)


def test_a_name_that_is_no_text_stops_nothing(book: Book, phone: Path, pool: Executor) -> None:
    odd = phone / os.fsdecode(b"foto\xff.jpg")  # as an old stick has it
    note = a_note(phone, "a.jpg", tag=10)
    note.write_text(note.read_text().replace('"a.jpg"', json.dumps(odd.name)))
    note.rename(odd)
    a_note(phone, "b.jpg", tag=11)

    fates = run([phone], book, pool)

    assert {type(fate) for fate in fates.values()} == {Stored}
    assert {row.name for row in book.photos()} == {"b.jpg", "foto\ufffd.jpg"}
    assert {type(fate) for fate in run([phone], book, pool).values()} == {Known}


def test_cancelling_keeps_what_is_done_and_nothing_half(book: Book, phone: Path, pool: Executor) -> None:
    for n in range(20):
        a_note(phone, f"{n:02}.jpg", tag=10, number=n)
    cancel = CancelToken()
    fates = intake([phone], book, pool, cancel, score=score_note)
    next(fates)

    cancel.cancel()

    with pytest.raises(Cancelled):
        next(fates)
    with book.writing() as db:
        assert (db.table("photo").count, db.table("score").count) == (1, 1)
    assert len(list((book.folder / "photos").rglob("*.jpg"))) == 1
    assert is_whole(book)


def test_cancel_works_within_a_second_while_a_slow_photo_is_scored(
    book: Book, phone: Path, pool: Executor
) -> None:
    a_note(phone, slow=2.0)
    cancel = CancelToken()
    threading.Timer(0.2, cancel.cancel).start()
    begun = time.monotonic()

    with pytest.raises(Cancelled):
        list(intake([phone], book, pool, cancel, score=score_note))

    assert time.monotonic() - begun < 1.2


def test_what_was_left_by_cancel_comes_with_the_next_intake(book: Book, phone: Path, pool: Executor) -> None:
    for n in range(10):
        a_note(phone, f"{n}.jpg", tag=10, number=n)
    cancel = CancelToken()
    for _, _ in zip(range(4), intake([phone], book, pool, cancel, score=score_note), strict=False):
        pass

    fates = run([phone], book, pool)

    assert sorted(type(fate).__name__ for fate in fates.values()).count("Known") >= 4
    assert len(book.photos()) == 10


class Counting(Executor):
    """An executor that notes how many photos lie with it at once."""

    _max_workers = 2

    def __init__(self, inner: Executor) -> None:
        self._inner, self._lock = inner, threading.Lock()
        self.out = self.most = 0

    def submit(self, fn: Any, /, *args: Any, **kwargs: Any) -> Future[Any]:
        with self._lock:
            self.out += 1
            self.most = max(self.most, self.out)
        future = self._inner.submit(fn, *args, **kwargs)
        future.add_done_callback(self._back)
        return future

    def _back(self, _: Future[Any]) -> None:
        with self._lock:
            self.out -= 1


def test_only_a_few_photos_are_handed_out_ahead(book: Book, phone: Path, pool: Executor) -> None:
    for n in range(30):
        a_note(phone, f"{n}.jpg", tag=10, number=n, slow=0.02)
    counting = Counting(pool)

    run([phone], book, counting)

    assert counting.most <= 4


def test_a_photo_that_kills_its_worker_costs_only_itself(book: Book, phone: Path) -> None:
    for n in range(8):
        a_note(phone, f"{n}.jpg", tag=10, number=n, crash=(n == 3))

    with ProcessPoolExecutor(2, mp_context=get_context("spawn")) as pool:
        fates = run([phone], book, pool)

    assert fates.pop("3.jpg").sentence == f"not used: {Reason.KILLED}"
    assert {type(fate) for fate in fates.values()} == {Stored}
    assert len(book.photos()) == 7


def test_a_worker_killed_from_outside_costs_nothing(book: Book, phone: Path) -> None:
    for n in range(12):
        a_note(phone, f"{n:02}.jpg", tag=10, number=n, slow=0.1)

    with ProcessPoolExecutor(2, mp_context=get_context("spawn")) as pool:
        fates = intake([phone], book, pool, CancelToken(), score=score_note)
        kept = [next(fates)]
        os.kill(next(iter(pool._processes)), 9)
        kept += list(fates)

    assert len(kept) == 12
    assert {type(fate) for _, fate in kept} == {Stored}


def test_corners_by_hand_are_scored_from_the_kept_original(book: Book, phone: Path, pool: Executor) -> None:
    path = a_note(phone, tag=10, found_by="frame", sure=0.2, coverage=40.0)
    fate = run([path], book, pool)[path.name]
    path.unlink()

    mended = rescore(book, fate.photo_id, [(1, 1), (900, 1), (900, 480), (1, 480)], score_note)

    assert isinstance(mended, Stored)
    assert mended.coverage == 50.0
