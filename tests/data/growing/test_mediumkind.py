"""Kinds of media: said by a grower alone, and what is made of them."""

import pytest

from data.book import Book
from data.growing.mediumkind import MediumKind, kind_follows, kind_stands_for, kind_words, lies_alike
from tests.data.builders import a_tray


def test_the_kind_is_never_told_from_a_name(book: Book) -> None:
    book.add_tray(a_tray("M1", medium="hemp mat"))

    medium = book.medium("hemp mat")

    assert medium is not None
    assert medium.kind == ""


def test_a_kind_is_said_and_taken_back(book: Book) -> None:
    book.set_medium("coir", kind=MediumKind.LOOSE)
    assert [one.kind for one in book.media_known() if one.name == "coir"] == ["loose"]

    assert book.undo() == "coir described"
    assert [one.kind for one in book.media_known() if one.name == "coir"] == [""]


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [
        ("mat", "mat", True),
        ("loose", "loose", True),
        ("mat", "loose", False),
        ("", "", False),  # nobody has said
        ("other", "other", False),  # a grid and a sponge
    ],
)
def test_media_lie_alike_where_both_are_said_to_be_the_same(one: str, other: str, alike: bool) -> None:
    assert lies_alike(one, other) is alike


def test_what_can_be_chosen_has_words_and_says_what_follows() -> None:
    assert set(kind_stands_for()) == {"", *MediumKind}
    assert len({kind_words(kind) for kind in kind_stands_for()}) == 4
    assert kind_follows("mat") != kind_follows("loose")
    assert kind_follows("") == kind_follows("other")


def test_a_word_that_came_with_a_table_stays() -> None:
    assert kind_words("felt") == "felt"
