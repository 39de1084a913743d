"""A new version of the method: old scores stay, versions are never mixed, what a person has done holds."""

import threading
from collections.abc import Callable, Iterator
from concurrent.futures import Executor, ThreadPoolExecutor
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.chapters.comparable import Scorings, comparable
from data.errors import CannotUndo
from data.photos.judged import Judged
from data.records import PhotoId, Said
from data.upkeep.mending import mend_canopy
from data.upkeep.rescoring import Again, rescore_all, stale_photos
from tests.data.builders import Patch, a_note, a_score, bring, score_note
from tests.data.contents import old_scores
from tests.data.mends import CORNERS, mend_note
from vision.mending import decode_mask
from vision.reason import Reason

OLD, NEW = "plain 1", "plain 2"


def newer(again: Again) -> Judged:
    """The new version: five points less than the old one, or the drawn canopy; suspects as in the note."""
    judged = score_note(again.path)
    assert judged.score is not None
    coverage = judged.score.stand.coverage - 5.0
    if again.canopy is not None:
        coverage = 100.0 * float(decode_mask(again.canopy).mean())
    found_by = "hand" if again.by_hand else "station"
    score = a_score(coverage, suspects=judged.score.suspects, method=NEW, found_by=found_by)
    return replace(judged, score=score)


@pytest.fixture
def pool() -> Iterator[Executor]:
    with ThreadPoolExecutor(2) as threads:
        yield threads


@pytest.fixture
def photos(book: Book, phone: Path) -> tuple[PhotoId, ...]:
    """Two days of three trays, by the old version."""
    fates = [
        bring(book, a_note(phone, f"d{day}_{tag}.jpg", tag=tag, taken_at=f"2026-03-0{day}T12:00:00",
                           coverage=float(10 * day + tag)))
        for day in (7, 8)
        for tag in (10, 11, 12)
    ]  # fmt: skip
    return tuple(fate.photo_id for fate in fates)


def again(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor, score: Callable[[Again], Judged] = newer
) -> dict[PhotoId, bool]:
    return dict(rescore_all(book, photos, pool, CancelToken(), score=score))


def methods(book: Book) -> set[str]:
    return {one.method for one in book.morning().numbers if one.method is not None}


# --- scoring again


def test_all_photos_get_the_new_score_and_keep_the_old_one(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    assert set(stale_photos(book, NEW)) == set(photos)

    assert again(book, stale_photos(book, NEW), pool) == dict.fromkeys(photos, True)

    assert stale_photos(book, NEW) == ()
    assert stale_photos(book, OLD) == ()
    assert book.score(photos[0]).method == NEW
    assert methods(book) == {NEW}
    assert [tile.coverage for tile in book.tiles()] == [85.0, 86.0, 87.0]


def test_scoring_again_twice_does_nothing(book: Book, photos: tuple[PhotoId, ...], pool: Executor) -> None:
    again(book, photos, pool)
    assert again(book, photos, pool) == dict.fromkeys(photos, False)


def test_a_score_from_before_the_bed_was_measured_is_offered_and_made_whole(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    before = book.score(photos[0])
    with book.writing() as db:
        db.execute("UPDATE score SET bed_share = NULL, bed_uniformity = NULL, bed_cells = NULL")

    assert set(stale_photos(book, OLD)) == set(photos)
    assert again(book, photos, pool, lambda one: score_note(one.path)) == dict.fromkeys(photos, True)

    score = book.score(photos[0])
    assert stale_photos(book, OLD) == ()
    assert score is not None
    assert before is not None
    assert (score.bed_share, score.bed_cells) == (before.bed_share, before.bed_cells)
    assert (score.method, score.coverage, score.corners_px) == (OLD, before.coverage, before.corners_px)
    assert [old.bed_cells for old in old_scores(book, photos[0])] == [None]
    assert [tile.coverage for tile in book.tiles()] == [90.0, 91.0, 92.0]


def test_cancelled_half_way_everything_is_still_compared_by_the_old_version(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    cancel = CancelToken()
    done = rescore_all(book, stale_photos(book, NEW), pool, cancel, score=newer, workers=1)
    next(done)
    cancel.cancel()
    with pytest.raises(Cancelled):
        list(done)

    assert 0 < len(stale_photos(book, NEW)) < len(photos)
    assert book.comparable().method == OLD
    assert methods(book) == {OLD}
    assert [tile.coverage for tile in book.tiles()] == [90.0, 91.0, 92.0]
    again(book, stale_photos(book, NEW), pool)
    assert methods(book) == {NEW}


def test_photos_of_growing_trays_come_first(book: Book, photos: tuple[PhotoId, ...]) -> None:
    book.finish_tray(book.trays()[0].id, book.now())
    order = stale_photos(book, NEW)
    assert set(order[-2:]) == {photos[0], photos[3]}
    assert set(stale_photos(book, NEW, growing=True)) == set(photos) - {photos[0], photos[3]}


def test_a_photo_that_cannot_be_scored_any_more_keeps_what_it_has(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    def worse(again: Again) -> Judged:
        return replace(newer(again), score=None, refusal=Reason.BLURRED)

    before = book.score(photos[0])
    assert again(book, photos[:1], pool, worse) == {photos[0]: False}
    assert book.score(photos[0]) == before


def test_a_score_that_is_less_sure_is_not_taken(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    def unsure(again: Again) -> Judged:
        judged = newer(again)
        return replace(judged, score=a_score(10.0, method=NEW, confidence=0.2))

    assert again(book, photos[:1], pool, unsure) == {photos[0]: False}


def test_a_frame_that_has_become_sure_counts(book: Book, phone: Path, pool: Executor) -> None:
    fate = bring(book, a_note(phone, "unsure.jpg", tag=10, sure=0.2))
    assert fate.sentence.startswith("A1: the tray's rim")
    again(book, (fate.photo_id,), pool)
    assert book.score(fate.photo_id).sure
    assert book.photo(fate.photo_id).sentence.startswith("A1, matched by its tag")


def test_a_mistake_of_ours_costs_one_photo(book: Book, photos: tuple[PhotoId, ...], pool: Executor) -> None:
    def failing(again: Again) -> Judged:
        if again.path == book.photo_path(photos[1]):
            raise ValueError("a mistake of ours")
        return newer(again)

    kept = again(book, photos, pool, failing)
    assert [photo for photo, done in kept.items() if not done] == [photos[1]]


def test_an_original_that_is_gone_is_passed_over(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    book.photo_path(photos[2]).unlink()
    assert again(book, photos, pool)[photos[2]] is False


def test_only_a_few_photos_are_on_their_way_at_once(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    begun: list[Path] = []
    gate = threading.Event()

    def slow(again: Again) -> Judged:
        begun.append(again.path)
        gate.wait(10)
        return newer(again)

    done = rescore_all(book, photos, pool, CancelToken(), score=slow, workers=1)
    threading.Timer(0.3, gate.set).start()
    next(done)
    assert len(begun) <= 2
    list(done)


# --- what a person has done


def test_words_on_suspects_go_into_the_new_score(book: Book, phone: Path, pool: Executor) -> None:
    two = [{"x_mm": 100.0, "y_mm": 50.0}, {"x_mm": 400.0, "y_mm": 200.0}]
    photo = bring(book, a_note(phone, tag=10, suspects=two)).photo_id
    for suspect, word in zip(book.score(photo).suspects, (Said.MOLD, Said.NOT_MOLD), strict=True):
        book.say(suspect.id, word)

    again(book, (photo,), pool)

    assert [one.said for one in book.score(photo).suspects] == [Said.MOLD, Said.NOT_MOLD]
    assert book.tiles()[0].mold


def test_what_a_person_called_mold_stays_though_the_new_version_does_not_see_it(
    book: Book, phone: Path, pool: Executor
) -> None:
    photo = bring(book, a_note(phone, tag=10, suspects=[{}])).photo_id
    book.say(book.score(photo).suspects[0].id, "mold")

    def blind(again: Again) -> Judged:
        return replace(newer(again), score=a_score(50.0, method=NEW, suspects=[Patch(x_mm=400.0)]))

    again(book, (photo,), pool, blind)

    assert sorted((one.x_mm, one.said) for one in book.score(photo).suspects) == [
        (100.0, Said.MOLD),
        (400.0, None),
    ]
    assert book.tiles()[0].mold
    (mold,) = (one for one in book.score(photo).suspects if one.said)
    book.say(mold.id, "not mold")
    assert not book.tiles()[0].mold


def test_corners_by_hand_and_a_drawn_canopy_hold(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    hand, drawn = photos[:2]
    book.set_corners(hand, CORNERS, score_note(book.photo_path(hand), CORNERS))
    half = np.zeros((508, 1016), bool)
    half[:254] = True
    mend_canopy(book, drawn, half, mend_note)
    seen: list[Any] = []

    def looking(one: Again) -> Judged:
        seen.append((one.by_hand, one.canopy is not None))
        return newer(one)

    again(book, (hand, drawn), pool, looking)

    assert set(seen) == {(True, False), (False, True)}
    assert book.score(drawn).coverage == 50.0
    assert book.score(drawn).mended
    assert not book.score(hand).mended


def test_a_correction_of_a_photo_scored_again_since_is_not_taken_back_by_half(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    mend_canopy(book, photos[0], np.ones((508, 1016), bool), mend_note)
    again(book, photos[:1], pool)
    before = book.score(photos[0])

    with pytest.raises(CannotUndo, match="canopy of A1"):
        book.undo()
    assert book.score(photos[0]) == before


# --- which version is compared


def test_the_newest_version_that_has_scored_everything_is_used() -> None:
    old = Scorings(method="1", photos=10, trays=2, newest=10)
    new = Scorings(method="2", photos=10, trays=2, newest=20)
    assert comparable([old, new], 10, 2).method == "2"
    assert comparable([old, replace(new, photos=9)], 10, 2).method == "1"


def test_where_no_version_has_everything_it_is_said_what_is_left_out() -> None:
    old = Scorings(method="1", photos=8, trays=2, newest=8)
    new = Scorings(method="2", photos=4, trays=2, newest=12)
    chosen = comparable([old, new], 12, 2)
    assert (chosen.method, chosen.left_out) == ("2", 8)
    assert "8 of 12 photos" in str(chosen.sentence)


def test_trays_without_a_version_in_common_are_not_compared() -> None:
    old = Scorings(method="1", photos=6, trays=1, newest=6)
    new = Scorings(method="2", photos=6, trays=1, newest=12)
    chosen = comparable([old, new], 12, 2)
    assert chosen.method is None
    assert "not compared" in str(chosen.sentence)
    assert comparable([], 0, 0).sentence is None


def test_one_tray_of_a_new_version_is_compared_with_none_of_the_old(
    book: Book, photos: tuple[PhotoId, ...], pool: Executor
) -> None:
    first, second, _ = book.trays()
    again(book, (photos[0], photos[3]), pool)
    assert book.comparable([first.id]).method == NEW
    assert book.comparable([first.id, second.id]).method == OLD
    assert {point.method for point in book.peers(first.id)} == {OLD}
    assert {day.score.method for day in book.days(first.id)} == {NEW}


def test_scored_again_a_photo_of_an_older_book_tells_its_camera(
    book: Book, phone: Path, pool: Executor
) -> None:
    photo = bring(book, a_note(phone, "named.jpg", tag=10, camera="Pinhole Box")).photo_id
    with book.writing() as db:
        db.table("photo").update(photo, {"camera": None})  # as books kept it before

    again(book, (photo,), pool)

    with book.whole_tables() as db:
        assert [row["camera"] for row in db.table("photo").rows] == ["Pinhole Box"]
