"""Words find the trays that they mean."""

from datetime import timedelta

import pytest

from data.book import Book
from data.events import EventKind
from tests.data.builders import NOON, SOWN, a_tray


@pytest.fixture
def mixed(book: Book) -> Book:
    """A1 to A3 are broccoli on coir; pea on peat and on coir, radish on peat, one of it cut."""
    ids = book.add_trays(
        [
            a_tray("B1", crop="pea", medium="peat mix", shelf="B", trial="spring", tag_number=77),
            a_tray("B2", crop="pea", medium="coir", shelf="B", trial="spring", note="soaked too long"),
            a_tray("B3", crop="red radish", medium="peat mix", shelf="B", sown_at=SOWN - timedelta(days=2)),
            a_tray("B4", crop="radis d'été", medium="peat mix", shelf="B"),
        ]
    )
    book.add_event([ids[2]], EventKind.CUT, NOON)
    return book


def codes(book: Book, text: str = "", **more: object) -> list[str]:
    return [tray.code for tray in book.find_trays(text, **more)]


def test_pea_is_not_peat(mixed: Book) -> None:
    assert codes(mixed, "pea") == ["B1", "B2"]
    assert codes(mixed, "peat") == ["B1", "B4"]
    assert codes(mixed, "pe") == ["B1", "B2", "B4"]
    assert codes(mixed, "ea") == []


def test_pea_is_peat_where_no_pea_grows(mixed: Book) -> None:
    assert codes(mixed, "pea", crop="radis d'été") == ["B4"]


def test_every_word_has_to_fit(mixed: Book) -> None:
    assert codes(mixed, "pea coir") == ["B2"]
    assert codes(mixed, "pea broccoli") == []
    assert codes(mixed, "  ") == ["A1", "A2", "A3", "B1", "B2", "B4"]


def test_code_tag_note_and_trial_are_found(mixed: Book) -> None:
    assert codes(mixed, "b1") == ["B1"]
    assert codes(mixed, "77") == ["B1"]
    assert codes(mixed, "soaked") == ["B2"]
    assert codes(mixed, "SPRING") == ["B1", "B2"]
    assert codes(mixed, "ete") == ["B4"]


def test_filters_hold_with_and_without_words(mixed: Book) -> None:
    assert codes(mixed, crop="pea") == ["B1", "B2"]
    assert codes(mixed, medium="peat mix", trial="spring") == ["B1"]
    assert codes(mixed, day=7) == ["A1", "A2", "A3", "B1", "B2", "B4"]
    assert codes(mixed, day=9) == []
    assert codes(mixed, day=9, growing=False) == ["B3"]
    assert codes(mixed, "radish", growing=False) == ["B3"]


def test_what_looks_like_a_question_to_the_book_is_only_text(mixed: Book) -> None:
    assert codes(mixed, "%' OR 1=1 --") == []
