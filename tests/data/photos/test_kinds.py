"""Which kind of tray carries a tag is known from the book, at the time of the photo."""

import pickle
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from data import intake as room
from data.book import Book
from data.cancel import CancelToken
from data.growing.conditions import TrayType
from data.photos.judged import Judged
from data.photos.kinds import TraysByTag
from data.records import PhotoId
from data.upkeep.rescoring import Again, rescore_all, stale_photos
from tests.data.builders import NOON, SOWN, a_note, a_score, a_tray, bring, score_note
from tests.data.contents import old_scores

AS_MEASURED = TrayType(
    outer_long_mm=620, outer_short_mm=320, inner_long_mm=580, inner_short_mm=290, rim_height_mm=50
)
LARGE = replace(AS_MEASURED, name="large")


@pytest.fixture
def mixed(book: Book) -> Book:
    """A1 to A3 are nominal, tags 10 to 12; B1 is large, tag 20."""
    book.set_tray_type(LARGE)
    book.add_tray(a_tray("B1", tag_number=20, tray_type="large"))
    return book


def kinds(book: Book) -> TraysByTag:
    found = book.trays_by_tag()
    assert found is not None
    return found


def test_a_book_of_nominal_trays_asks_nothing(book: Book) -> None:
    assert book.trays_by_tag() is None


def test_the_tag_tells_the_kind(mixed: Book) -> None:
    assert kinds(mixed)(20, NOON) == AS_MEASURED
    assert kinds(mixed)(10, NOON) == TrayType()
    assert kinds(mixed)(99, NOON) == TrayType()
    assert kinds(mixed)(None, None) == TrayType()


def test_a_tag_holds_from_the_day_of_sowing_to_the_moment_in_which_its_tray_ends(mixed: Book) -> None:
    large = next(tray for tray in mixed.trays() if tray.code == "B1")
    mixed.finish_tray(large.id, NOON)
    begun = SOWN.replace(hour=0, minute=0)

    assert kinds(mixed)(20, begun) == kinds(mixed)(20, NOON) == AS_MEASURED
    assert kinds(mixed)(20, begun - timedelta(minutes=1)) == TrayType()
    assert kinds(mixed)(20, NOON + timedelta(minutes=1)) == TrayType()


def test_a_tag_that_moved_on_is_asked_at_the_time_of_the_photo(mixed: Book) -> None:
    large = next(tray for tray in mixed.trays() if tray.code == "B1")
    mixed.finish_tray(large.id, NOON)
    mixed.add_tray(a_tray("B2", tag_number=20, sown_at=NOON + timedelta(days=1)))

    assert kinds(mixed)(20, NOON - timedelta(hours=1)) == AS_MEASURED
    assert kinds(mixed)(20, NOON + timedelta(days=2)) == TrayType()
    assert kinds(mixed)(20, SOWN - timedelta(days=3)) == TrayType()


def test_where_most_trays_are_large_a_photo_without_a_tag_is_taken_for_one(mixed: Book) -> None:
    for tray in mixed.trays():
        mixed.edit_tray(tray.id, tray_type="large")
    assert kinds(mixed)(None, NOON) == AS_MEASURED


def test_the_answer_travels_to_another_process(mixed: Book) -> None:
    again = pickle.loads(pickle.dumps(kinds(mixed)))
    assert again(20, NOON) == AS_MEASURED


def test_intake_hands_the_kinds_to_scoring(mixed: Book, phone: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    seen: list[Any] = []

    def scorer(path: Path, corners: Any = None, trays: TraysByTag | None = None) -> Judged:
        seen.append(trays)
        return score_note(path)

    monkeypatch.setattr(room, "score_for_book", scorer)
    with ThreadPoolExecutor(1) as pool:
        list(room.intake([a_note(phone, tag=20)], mixed, pool, CancelToken(), score=scorer))

    assert seen[0](20, NOON) == AS_MEASURED


# --- a photo that was taken for one of another kind


def by_kind(again: Again) -> Judged:
    """Scored by the measures of its tray; 5 points less canopy on a large one."""
    judged = score_note(again.path)
    assert judged.score is not None
    assert again.trays is not None
    measures = again.trays(judged.tag_number, judged.taken_at)
    score = a_score(50.0 if measures == AS_MEASURED else 55.0)
    score.inner_mm = (measures.inner_long_mm, measures.inner_short_mm)
    return replace(judged, score=score)


def scored_again(book: Book, scorer: Callable[[Again], Judged] = by_kind) -> dict[PhotoId, bool]:
    with ThreadPoolExecutor(1) as pool:
        return dict(rescore_all(book, stale_photos(book, "plain 1"), pool, CancelToken(), score=scorer))


def test_a_photo_matched_to_a_tray_of_another_kind_is_scored_again_and_the_old_score_kept(
    mixed: Book, phone: Path
) -> None:
    photo = bring(mixed, a_note(phone)).photo_id  # no tag: taken for a nominal tray
    assert stale_photos(mixed, "plain 1") == ()
    mixed.match(photo, next(tray.id for tray in mixed.trays() if tray.code == "B1"))
    assert stale_photos(mixed, "plain 1") == (photo,)

    assert scored_again(mixed) == {photo: True}

    score = mixed.score(photo)
    assert score is not None
    assert (score.coverage, score.inner_long_mm, score.method) == (50.0, 580.0, "plain 1")
    assert score.top_px_per_mm == pytest.approx(1016 / 580)
    assert [old.coverage for old in old_scores(mixed, photo)] == [55.0]
    assert stale_photos(mixed, "plain 1") == ()


def test_a_tray_type_measured_anew_makes_its_photos_stale(mixed: Book, phone: Path) -> None:
    photo = bring(mixed, a_note(phone, tag=10)).photo_id
    mixed.set_tray_type(replace(LARGE, name="10 x 20 inch"))
    assert stale_photos(mixed, "plain 1") == (photo,)
    assert scored_again(mixed) == {photo: True}
    assert stale_photos(mixed, "plain 1") == ()
