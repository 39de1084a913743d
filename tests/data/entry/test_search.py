"""Words find the trays that they mean."""

import pytest

from data.entry.search import meant

SAID = {
    "A1": "A1 broccoli coir A",
    "B1": "B1 pea peat mix B spring 77",
    "B2": "B2 pea coir B spring soaked too long",
    "B3": "B3 red radish peat mix B",
    "B4": "B4 radis d'été peat mix B",
}


def codes(text: str) -> list[str]:
    return list(meant(SAID, text, SAID.__getitem__))


def test_pea_is_not_peat() -> None:
    assert codes("pea") == ["B1", "B2"]
    assert codes("peat") == ["B1", "B3", "B4"]
    assert codes("pe") == ["B1", "B2", "B3", "B4"]
    assert codes("ea") == []


def test_pea_is_peat_where_no_pea_grows() -> None:
    assert list(meant(["B3"], "pea", SAID.__getitem__)) == ["B3"]


def test_every_word_has_to_fit() -> None:
    assert codes("pea coir") == ["B2"]
    assert codes("pea broccoli") == []
    assert codes("  ") == list(SAID)


@pytest.mark.parametrize(
    ("text", "found"),
    [("b1", ["B1"]), ("77", ["B1"]), ("soaked", ["B2"]), ("SPRING", ["B1", "B2"]), ("ete", ["B4"])],
)
def test_letters_size_and_accents_are_all_one(text: str, found: list[str]) -> None:
    assert codes(text) == found


def test_what_looks_like_a_question_to_the_book_is_only_text() -> None:
    assert codes("%' OR 1=1 --") == []
