import shutil
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from data.book import Book
from data.photos.originals import digest_of
from data.records import Day
from gui.traysheet.picture import Wanted, load_sheet_picture
from tests.data.builders import a_note, a_tray, score_note
from vision.picture import encode_jpeg, encode_labels
from vision.tissue import Label


@pytest.fixture
def book(tmp_path: Path):
    with Book.create(tmp_path / "book") as book:
        yield book


def a_day(book: Book, phone: Path) -> Day:
    """A tray that is green but for a square of 50 mm, 100 mm from its left and 50 mm from its far side."""
    (tray,) = book.add_trays([a_tray("A1", tag_number=10)])
    labels = np.full((508, 1016), Label.GREEN, np.uint8)
    labels[100:200, 200:300] = Label.MEDIUM
    path = a_note(phone, tag=10)
    top = encode_jpeg(np.zeros((508, 1016, 3), np.uint8))
    book.keep(replace(score_note(path), top_view=top, labels=encode_labels(labels)), path)
    (day,) = book.days(tray)
    return day


def test_gaps_are_outlined_where_the_labels_have_them(book: Book, tmp_path: Path, qapp) -> None:
    day = a_day(book, tmp_path)

    wanted = Wanted(photo_id=day.photo_id, as_photo=False, marks=())

    (gap,) = load_sheet_picture(book, day, wanted).layers.gaps

    assert gap.bounds.getCoords() == pytest.approx((200, 100, 300, 200), abs=1)


def test_a_tray_for_which_no_gap_was_told_shows_none(book: Book, tmp_path: Path, qapp) -> None:
    day = a_day(book, tmp_path)
    assert day.score is not None
    day = replace(day, score=replace(day.score, gaps=()))  # under 10 % canopy all of the tray would be one

    layers = load_sheet_picture(book, day, Wanted(photo_id=day.photo_id, as_photo=False, marks=())).layers

    assert layers.gaps == ()


def test_where_the_cache_cannot_be_kept_the_photo_is_shown(book: Book, tmp_path: Path, qapp) -> None:
    """A book on a disk that is full, or that may only be read, without its cache."""
    shutil.rmtree(book.folder / "cache")
    (book.folder / "cache").write_text("a file where the folder should be")
    book.add_trays([a_tray("A1", tag_number=10)])
    photo = tmp_path / "photo.jpg"
    noise = np.random.default_rng(1).integers(0, 256, (70, 110, 3), np.uint8)
    photo.write_bytes(encode_jpeg(np.kron(noise, np.ones((10, 10, 1), np.uint8))))
    judged = replace(score_note(a_note(tmp_path, tag=10)), digest=digest_of(photo), name="photo.jpg")
    book.keep(judged, photo)
    (day,) = book.days(book.trays()[0].id)

    shown = load_sheet_picture(book, day, Wanted(photo_id=day.photo_id, as_photo=False, marks=()))

    assert shown.mips is not None, shown.message
    assert shown.mips.size == (1100, 700)
    assert shown.layers.cells[0].place.x() < 1016 / 12  # where the tray lies in the photo
