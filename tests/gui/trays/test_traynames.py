"""Tray names: the next code, and tags as people type them."""

import pytest

from gui.trays.traynames import next_code, tag_of


@pytest.mark.parametrize(
    ("code", "following"),
    [
        ("A1", "A2"),
        ("A9", "A10"),
        ("pea-099", "pea-100"),
        ("007", "008"),
        ("sill", "sill 2"),
        ("B2x", "B2x 2"),
    ],
)
def test_the_next_code_counts_on(code: str, following: str) -> None:
    assert next_code(code) == following


@pytest.mark.parametrize(("text", "tag"), [("10", 10), (" 586 ", 586), ("0012", 12)])
def test_tags_on_the_printed_cards_are_taken(text: str, tag: int) -> None:
    assert tag_of(text) == tag


@pytest.mark.parametrize("text", ["", "9", "587", "-12", "12.5", "twelve", "٣٤", "1e2"])
def test_what_is_no_tag_is_not_taken(text: str) -> None:
    assert tag_of(text) is None
