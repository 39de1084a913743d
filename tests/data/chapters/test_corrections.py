"""What a person mends of a score: the new numbers count, the old ones stay, and both can be taken back."""

import json
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from data.book import Book
from data.intake import make_pictures
from data.photos.judged import Judged
from data.records import PhotoId, Refused, Said
from data.upkeep.mending import mend_canopy
from tests.data.builders import a_note, a_score, bring, score_note
from tests.data.contents import contents, old_scores
from tests.data.mends import CORNERS, HALF, mend_note
from vision.mending import decode_mask
from vision.reason import Reason

FULL = np.ones((508, 1016), bool)


@pytest.fixture
def photo(book: Book, phone: Path) -> PhotoId:
    fate = bring(book, a_note(phone, tag=11, coverage=62.0, suspects=[{}]))
    return PhotoId(fate.photo_id)


def coverage(book: Book, photo: PhotoId) -> float | None:
    score = book.score(photo)
    assert score is not None
    return score.coverage


def test_a_mended_canopy_counts_and_the_old_score_is_kept(book: Book, photo: PhotoId) -> None:
    before = book.score(photo)

    fate = mend_canopy(book, photo, HALF, mend_note)

    score = book.score(photo)
    assert score is not None
    assert (score.coverage, score.mended, score.sure) == (50.0, True, True)
    assert fate.photo_id == photo
    assert old_scores(book, photo) == (before,)


def test_a_score_replaced_before_the_bed_was_measured_can_still_be_read(book: Book, photo: PhotoId) -> None:
    mend_canopy(book, photo, HALF, mend_note)
    with book.writing() as db:
        for row in list(db.table("old_score").rows):
            body = json.loads(row["body"])
            body["score"] = {name: v for name, v in body["score"].items() if not name.startswith("bed_")}
            db.table("old_score").update(row["id"], {"body": json.dumps(body)})

    (old,) = old_scores(book, photo)

    assert (old.coverage, old.bed_share, old.bed_cells) == (62.0, None, None)
    assert old.reasons["bed_share"] is Reason.BEFORE_BED
    assert np.array_equal(decode_mask(book.mended_canopy(photo) or b""), HALF)


def test_suspects_and_what_was_said_of_them_stay(book: Book, photo: PhotoId) -> None:
    (suspect,) = book.score(photo).suspects
    book.say(suspect.id, "mold")

    mend_canopy(book, photo, HALF, mend_note)

    assert [(s.id, s.said) for s in book.score(photo).suspects] == [(suspect.id, Said.MOLD)]


def test_mending_is_taken_back_and_done_again(book: Book, photo: PhotoId) -> None:
    before = book.score(photo)
    mend_canopy(book, photo, HALF, mend_note)
    mended = book.score(photo)

    assert book.undo() == "canopy of A2"
    assert book.score(photo) == before
    assert (old_scores(book, photo), book.mended_canopy(photo)) == ((), None)
    assert book.redo() == "canopy of A2"
    assert book.score(photo) == mended


def test_each_drawing_has_labels_of_its_own(book: Book, photo: PhotoId) -> None:
    measured = book.pictures(photo).labels
    mend_canopy(book, photo, HALF, mend_note)
    half = book.pictures(photo).labels
    mend_canopy(book, photo, FULL, mend_note)
    full = book.pictures(photo).labels

    assert len({measured, half, full}) == 3
    assert measured.read_bytes() == b"labels"
    assert book.days(book.photo(photo).tray_id)[0].pictures.labels == full
    book.undo()
    assert book.pictures(photo).labels == half
    assert coverage(book, photo) == 50.0
    assert [score.coverage for score in old_scores(book, photo)] == [62.0]


def test_labels_lost_from_the_cache_are_made_again_with_the_drawn_canopy(
    book: Book, photo: PhotoId, monkeypatch: pytest.MonkeyPatch
) -> None:
    mend_canopy(book, photo, HALF, mend_note)
    labels = book.pictures(photo).labels
    wanted = labels.read_bytes()
    labels.unlink()
    monkeypatch.setattr("data.intake.score_again", mend_note)

    make_pictures(book, photo)

    assert labels.read_bytes() == wanted


def test_corners_by_hand_keep_the_old_score_and_end_the_mending(book: Book, photo: PhotoId) -> None:
    mend_canopy(book, photo, HALF, mend_note)
    note = next(book.photo_path(photo).parent.iterdir())
    book.set_corners(photo, CORNERS, score_note(note, CORNERS))

    score = book.score(photo)
    assert score is not None
    assert (score.coverage, score.mended) == (72.0, False)
    assert [old.coverage for old in old_scores(book, photo)] == [62.0, 50.0]
    assert [old.mended for old in old_scores(book, photo)] == [False, True]
    assert book.mended_canopy(photo) is None
    book.undo()
    assert coverage(book, photo) == 50.0
    assert book.mended_canopy(photo) is not None


def test_a_photo_that_cannot_be_scored_any_more_stays_as_it_was(book: Book, photo: PhotoId) -> None:
    def refusing(path: Path, corners: Any, canopy: bytes, *_: Any) -> Judged:
        return replace(score_note(path), score=None, refusal=Reason.BLURRED)

    before = book.score(photo)
    fate = mend_canopy(book, photo, HALF, refusing)
    assert fate.reason is Reason.BLURRED
    assert book.score(photo) == before
    assert book.undo_text() is None


def test_a_photo_that_another_program_has_changed_is_not_measured_again(book: Book, photo: PhotoId) -> None:
    before, original = contents(book), book.photo_path(photo)
    original.write_bytes(original.read_bytes() + b" ")  # a viewer that turns photos where they lie, say
    judged = score_note(original, CORNERS)

    mended = mend_canopy(book, photo, HALF, mend_note)
    turned = book.set_corners(photo, CORNERS, judged)

    assert isinstance(mended, Refused)
    assert isinstance(turned, Refused)
    assert {mended.reason, turned.reason} == {Reason.CHANGED}
    assert not book.keep_again(photo, replace(judged, score=a_score(50.0, method="plain 2")))
    assert contents(book) == before


def test_a_photo_without_a_score_cannot_be_mended(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=11, refuse="BLURRED"))
    with pytest.raises(KeyError):
        mend_canopy(book, fate.photo_id, HALF, mend_note)


def test_an_unsure_score_stays_unsure(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=11, sure=0.2))
    mend_canopy(book, fate.photo_id, HALF, mend_note)
    assert not book.score(fate.photo_id).sure


def test_a_score_by_a_newer_method_is_put_beside_the_old_one(book: Book, photo: PhotoId) -> None:
    def newer(path: Path, corners: Sequence[Any], canopy: bytes, *_: Any) -> Judged:
        judged = mend_note(path, corners, canopy)
        return replace(judged, score=a_score(50.0, method="plain 2"))

    mend_canopy(book, photo, HALF, newer)

    score = book.score(photo)
    assert score is not None
    assert (score.method, score.mended, score.suspects) == ("plain 2", True, ())
    assert old_scores(book, photo) == ()
    book.undo()
    assert coverage(book, photo) == 62.0
