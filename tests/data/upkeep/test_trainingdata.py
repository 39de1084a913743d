"""What a person has drawn can be learned from: pictures, labels that say what is not known, digests."""

import hashlib
import json
from pathlib import Path
from typing import Any

import cv2
import numpy as np
import pytest

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.intake import score_for_book
from data.records import PhotoId
from data.upkeep.mending import mend_canopy
from data.upkeep.trainingdata import NOT_KNOWN, Lesson, write_training
from tests.data.builders import a_note, bring
from tests.data.mends import HALF, mend_note
from vision.mending import decode_mask
from vision.tissue import Label, canopy

PHOTO = Path("tests/photos/station.jpg")


def a_lesson(path: Path, corners: Any, drawn: bytes, *_: Any) -> Lesson:
    return Lesson(top=path.read_bytes(), labels=b"labels", canopy=drawn, method="plain 1")


@pytest.fixture
def drawn(book: Book, phone: Path) -> tuple[PhotoId, ...]:
    """Three photos, two of which a person has mended."""
    ids = [bring(book, a_note(phone, f"{n}.jpg", tag=10 + n, number=n)).photo_id for n in range(3)]
    for photo in ids[:2]:
        mend_canopy(book, photo, HALF, mend_note)
    return tuple(ids[:2])


def test_only_what_a_person_has_drawn_is_written(
    book: Book, drawn: tuple[PhotoId, ...], tmp_path: Path
) -> None:
    done = dict(write_training(book, tmp_path / "out", CancelToken(), a_lesson))

    assert done == dict.fromkeys(drawn, True)
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text())
    assert manifest["not_known"] == NOT_KNOWN
    assert len(manifest["photos"]) == 2
    for entry in manifest["photos"]:
        assert (entry["crop"], entry["medium"], entry["day"], entry["method"]) == (
            "broccoli",
            "coir",
            7,
            "plain 1",
        )
        for name in ("top", "labels", "canopy"):
            content = (tmp_path / "out" / entry[name]["file"]).read_bytes()
            assert hashlib.sha256(content).hexdigest() == entry[name]["sha256"]


def test_a_mending_that_was_taken_back_teaches_nothing(book: Book, drawn: tuple[PhotoId, ...]) -> None:
    book.undo()
    assert book.drawn_photos() == drawn[:1]


def test_no_name_and_no_time_of_a_photo_leaves_the_book(
    book: Book, drawn: tuple[PhotoId, ...], tmp_path: Path
) -> None:
    list(write_training(book, tmp_path / "out", CancelToken(), a_lesson))
    text = (tmp_path / "out" / "manifest.json").read_text()
    assert "2026" not in text
    assert all(book.photo(photo).name not in text for photo in drawn)


def test_a_folder_in_use_is_left_alone(book: Book, drawn: tuple[PhotoId, ...], tmp_path: Path) -> None:
    (tmp_path / "mine.txt").write_text("mine")
    with pytest.raises(FileExistsError):
        list(write_training(book, tmp_path, CancelToken(), a_lesson))
    assert drawn


def test_cancelled_training_data_have_no_manifest(
    book: Book, drawn: tuple[PhotoId, ...], tmp_path: Path
) -> None:
    cancel = CancelToken()
    writing = write_training(book, tmp_path / "out", cancel, a_lesson)
    assert next(writing)[0] == drawn[0]
    cancel.cancel()
    with pytest.raises(Cancelled):
        next(writing)
    assert not (tmp_path / "out" / "manifest.json").exists()


def test_a_photo_that_cannot_be_scored_any_more_is_named_and_left_out(
    book: Book, drawn: tuple[PhotoId, ...], tmp_path: Path
) -> None:
    done = dict(write_training(book, tmp_path / "out", CancelToken(), lambda *_: None))
    assert done == dict.fromkeys(drawn, False)
    assert json.loads((tmp_path / "out" / "manifest.json").read_text())["photos"] == []


def test_a_real_photo_mended_on_the_left_is_measured_so_and_written(book: Book, tmp_path: Path) -> None:
    """From the photo to the numbers of the drawn canopy and to the training picture."""
    fate = book.keep(score_for_book(PHOTO), PHOTO)
    assert fate.photo_id is not None
    labels = cv2.imread(str(book.pictures(fate.photo_id).labels), cv2.IMREAD_UNCHANGED)
    before = canopy(labels)
    mask = before.copy()
    mask[:, :200] = True

    mend_canopy(book, fate.photo_id, mask)
    list(write_training(book, tmp_path / "out", CancelToken()))

    assert book.score(fate.photo_id).coverage == pytest.approx(100 * mask.mean(), abs=0.01)
    (entry,) = json.loads((tmp_path / "out" / "manifest.json").read_text())["photos"]
    taught = cv2.imread(str(tmp_path / "out" / entry["labels"]["file"]), cv2.IMREAD_UNCHANGED)
    assert np.array_equal(taught == NOT_KNOWN, mask & ~before)
    assert (taught[taught != NOT_KNOWN] <= max(Label)).all()
    assert np.array_equal(decode_mask((tmp_path / "out" / entry["canopy"]["file"]).read_bytes()), mask)
    top = cv2.imread(str(tmp_path / "out" / entry["top"]["file"]))
    assert top is not None
    assert top.shape == (508, 1016, 3)
