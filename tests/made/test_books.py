"""Books that tests begin with are whole, whatever becomes of what they are copied from."""

from pathlib import Path

import pytest

from tests.data.builders import a_tray
from tests.made import books


@pytest.mark.parametrize("tidied", ["book.sqlite", "photos", "."])
def test_a_pattern_that_was_tidied_away_is_made_again(tidied: str, tmp_path: Path) -> None:
    def copied(name: str) -> list[str]:
        kind = ("tidied", tidied)
        with books.a_copy(kind, lambda book: book.add_tray(a_tray("A1")), tmp_path / name) as book:
            return [tray.code for tray in book.trays()]

    assert copied("first") == ["A1"]
    place = books._patterns["tidied", tidied]
    (place / tidied).rename(tmp_path / "tidied away")

    assert copied("second") == ["A1"]
    assert (tmp_path / "second" / "photos").is_dir()


def test_a_pattern_that_is_tidied_away_while_it_is_copied_is_made_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with books.an_empty_book(tmp_path / "first"):
        place = books._patterns["empty"]
    copy = books.shutil.copytree

    def half(pattern: Path, folder: Path, *rest: object) -> None:
        if pattern == place:
            (folder / "photos").mkdir(parents=True)
            raise FileNotFoundError(pattern / "book.sqlite")
        copy(pattern, folder, *rest)

    monkeypatch.setattr(books.shutil, "copytree", half)
    with books.an_empty_book(tmp_path / "second") as book:
        assert book.trays() == ()
