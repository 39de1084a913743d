"""The order of the walk proposes trays for photos without a tag, and keeps silent where it does not fit."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from data.book import Book
from data.photos.walk import WalkPhoto, by_shelf, proposals
from data.records import PhotoId, TrayId
from tests.data.builders import a_kept_tray, a_note, bring

RACK = [TrayId(n) for n in range(1, 7)]


def walk(*trays: int | None) -> list[WalkPhoto]:
    """Photos 100, 101, ... of these trays; None is a photo without a tag."""
    return [
        WalkPhoto(id=PhotoId(100 + n), tray=None if tray is None else TrayId(tray))
        for n, tray in enumerate(trays)
    ]


def test_one_photo_between_two_neighbours_of_a_tray_is_that_tray() -> None:
    assert proposals(walk(1, None, 3, 4, 5, 6), RACK) == {101: 2}


def test_as_many_photos_as_trays_in_between_are_those_trays_in_order() -> None:
    assert proposals(walk(1, None, None, None, 5, 6), RACK) == {101: 2, 102: 3, 103: 4}


def test_where_the_numbers_do_not_fit_nothing_is_proposed() -> None:
    assert proposals(walk(1, None, 4, 5, 6), RACK) == {}
    assert proposals(walk(1, None, None, 3), RACK) == {}


def test_a_whole_walk_without_tags_is_the_whole_rack() -> None:
    assert proposals(walk(*[None] * 6), RACK) == {100 + n: n + 1 for n in range(6)}


def test_a_part_of_a_walk_without_any_tag_says_nothing() -> None:
    assert proposals(walk(None, None), RACK) == {}


def test_a_walk_may_begin_in_the_middle_and_end_early() -> None:
    assert proposals(walk(None, 4, None), RACK) == {100: 3, 102: 5}


def test_a_walk_from_the_other_end_is_understood() -> None:
    assert proposals(walk(6, None, 4, 3, None, 1), RACK) == {101: 5, 104: 2}


def test_a_tray_that_has_its_photo_is_not_proposed_again() -> None:
    assert proposals(walk(2, 1, None, 3), RACK) == {}


def test_trays_of_another_rack_do_not_disturb() -> None:
    assert proposals(walk(1, 99, None, 3), RACK) == {102: 2}


def test_an_empty_walk_and_an_empty_rack_are_nothing() -> None:
    assert proposals([], RACK) == {}
    assert proposals(walk(None), []) == {}


# --- photos that could not be used


def refused(photos: list[WalkPhoto], *places: int) -> list[WalkPhoto]:
    """The same walk, some of its photos too dark."""
    return [replace(photo, refused=n in places) for n, photo in enumerate(photos)]


def test_a_photo_that_could_not_be_used_keeps_its_place_in_the_walk() -> None:
    assert proposals(refused(walk(*[None] * 6), 2), RACK) == {100: 1, 101: 2, 103: 4, 104: 5, 105: 6}
    assert proposals(refused(walk(1, None, None, None, None, None), 2), RACK) == {
        101: 2,
        103: 4,
        104: 5,
        105: 6,
    }
    assert proposals(refused(walk(1, None, None, None, 5, 6), 2), RACK) == {101: 2, 103: 4}


def test_a_photo_that_was_taken_again_at_once_takes_no_place() -> None:
    assert proposals(refused(walk(*[None] * 7), 2), RACK) == {100: 1, 101: 2, 103: 3, 104: 4, 105: 5, 106: 6}
    assert proposals(refused(walk(1, None, None, None, 4, 5, 6), 2), RACK) == {101: 2, 103: 3}


def test_what_was_read_on_a_photo_that_is_not_used_puts_no_other_one_out_of_its_place() -> None:
    assert proposals(refused(walk(1, 2, None, 4, 5, 6), 1), RACK) == {102: 3}
    assert proposals(refused(walk(1, None, None), 0), RACK) == {}  # left out, and taken again at once, or not


def test_where_a_walk_ends_early_nobody_says_whether_a_refused_photo_was_taken_again() -> None:
    assert proposals(refused(walk(1, None, None, None), 2), RACK) == {101: 2}
    assert proposals(refused(walk(None, None, None, 5), 1), RACK) == {102: 4}


def test_in_a_book_the_trays_after_a_photo_that_was_too_dark_are_not_proposed_one_too_early(
    book: Book, phone: Path
) -> None:
    notes = [
        a_note(
            phone, f"{n}.jpg", taken_at=f"2026-03-08T08:0{n}:00", **({"refuse": "TOO_DARK"} if n == 1 else {})
        )
        for n in range(3)
    ]
    photos = [bring(book, note) for note in notes]
    trays = book.trays()

    assert [book.photo(photo.photo_id).proposal_id for photo in photos] == [trays[0].id, None, trays[2].id]
    book.leave_out(photos[0].photo_id)
    assert book.photo(photos[2].photo_id).proposal_id == trays[2].id


# --- times


def timed(*photos: tuple[int | None, float]) -> list[WalkPhoto]:
    """Photos 100, 101, ... of these trays, with their minutes after eight."""
    return [
        WalkPhoto(
            id=PhotoId(100 + n),
            tray=None if tray is None else TrayId(tray),
            at=datetime(2026, 3, 8, 8) + timedelta(minutes=minute),
        )
        for n, (tray, minute) in enumerate(photos)
    ]


def test_a_second_walk_in_the_evening_is_placed_though_the_morning_has_all_trays() -> None:
    morning = [(n, n) for n in range(1, 7)]
    evening = [(None, 600.0 + n) for n in range(6)]

    assert proposals(timed(*morning, *evening), RACK) == {106 + n: n + 1 for n in range(6)}


def test_two_walks_without_any_tag_are_each_the_whole_rack() -> None:
    walks = [(None, start + n) for start in (0.0, 600.0) for n in range(6)]

    assert proposals(timed(*walks), RACK) == {100 + 6 * w + n: n + 1 for w in (0, 1) for n in range(6)}


def test_a_walk_that_was_broken_off_for_breakfast_goes_on_where_it_was() -> None:
    walked = timed((1, 0), (2, 1), (None, 2), (None, 90), (None, 91), (6, 92))

    assert proposals(walked, RACK) == {102: 3, 103: 4, 104: 5}


def test_two_photos_within_seconds_are_the_same_tray() -> None:
    walked = timed((1, 0), (None, 1.0), (None, 1.05), (None, 2), (4, 3), (5, 4), (6, 5))

    assert proposals(walked, RACK) == {101: 2, 102: 2, 103: 3}


def test_as_many_photos_as_trays_are_not_called_doubles_however_fast_they_came() -> None:
    walked = timed((1, 0), (None, 1.0), (None, 1.05), (4, 3), (5, 4), (6, 5))

    assert proposals(walked, RACK) == {101: 2, 102: 3}


def test_a_photo_beside_one_of_a_tray_that_did_not_grow_that_day_is_left_to_the_person(
    book: Book, phone: Path
) -> None:
    first = bring(book, a_note(phone, "IMG_1.jpg", taken_at="2026-02-20T12:00:00"))
    second = bring(book, a_note(phone, "IMG_2.jpg", taken_at="2026-02-20T12:00:01"))

    book.match(first.photo_id, book.trays()[0].id)  # sown in March

    assert book.photo(second.photo_id).proposal_id is None


def test_proposals_can_be_confirmed_a_shelf_at_a_time() -> None:
    trays = [a_kept_tray(n, shelf="A" if n <= 2 else "B") for n in range(1, 5)]
    proposed = {PhotoId(100 + n): TrayId(n) for n in (1, 3, 4)}

    assert by_shelf(proposed, trays) == (("A", {101: 1}), ("B", {103: 3, 104: 4}))
    assert by_shelf({}, trays) == ()


def test_the_walk_of_a_day_is_thought_through_once_however_many_of_its_photos_are_matched(
    book: Book, phone: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    photos = [bring(book, a_note(phone, f"{n}.jpg", taken_at=f"2026-03-08T08:0{n}:00")) for n in range(3)]
    asked: list[str] = []
    walked = Book._walked

    def noted(self: Book, days: Iterable[str]) -> dict[PhotoId, tuple[TrayId, str]]:
        asked.extend(days)
        return walked(self, asked)

    monkeypatch.setattr(Book, "_walked", noted)

    fates = book.match_all(
        {photo.photo_id: tray.id for photo, tray in zip(photos, book.trays(), strict=True)}
    )

    assert [fate.sentence for fate in fates] == [
        f"A{n}, matched by the order of the walk, coverage 55 %" for n in (1, 2, 3)
    ]
    assert asked == ["2026-03-08"]
