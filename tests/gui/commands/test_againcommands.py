"""Scoring again and training data on the command line."""

import json
from pathlib import Path

import numpy as np
import pytest

from data.book import Book
from data.demo import demo_photos
from data.upkeep import rescoring
from data.upkeep.mending import mend_canopy
from gui.command import main
from tests.made.books import a_demonstration


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """The demonstration with one photo of A1."""
    a_demonstration(tmp_path / "trial", "one photo", keep_one).close()
    return tmp_path / "trial"


def keep_one(book: Book) -> None:
    photo = next(path for path in demo_photos() if path.stem.startswith("A1"))
    assert main(["intake", str(photo), "--book", str(book.folder)]) == 0


def by_an_older_version(folder: Path) -> None:
    with Book.open(folder) as book, book.writing() as db:
        db.execute("UPDATE score SET method = 'older 1'")


def test_nothing_to_score_again_is_said(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    capsys.readouterr()
    assert main(["rescore", "--book", str(folder)]) == 0
    assert "0 of 0 photos scored again" in capsys.readouterr().out


def test_photos_of_an_older_version_are_scored_again(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    by_an_older_version(folder)
    capsys.readouterr()

    assert main(["rescore", "--growing", "--book", str(folder)]) == 0

    told = capsys.readouterr().out
    assert "A1, matched by its tag" in told
    assert "1 of 1 photos scored again" in told
    with Book.open(folder) as book:
        assert book.score(book.photos()[0].id).method == rescoring.present_method()


def test_a_photo_whose_original_is_gone_is_named(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    by_an_older_version(folder)
    with Book.open(folder) as book:
        book.photo_path(book.photos()[0].id).unlink()

    assert main(["rescore", "--book", str(folder)]) == 1
    assert "keeps the score that it has" in capsys.readouterr().err


def test_drawn_canopies_are_written_to_learn_from(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with Book.open(folder) as book:
        mend_canopy(book, book.photos()[0].id, np.ones((508, 1016), bool))

    assert main(["training", str(tmp_path / "lessons"), "--book", str(folder)]) == 0
    assert "1 of 1 drawn photos" in capsys.readouterr().out
    assert len(json.loads((tmp_path / "lessons" / "manifest.json").read_text())["photos"]) == 1

    assert main(["training", str(tmp_path / "lessons"), "--book", str(folder)]) == 1
    assert "is not empty" in capsys.readouterr().err


@pytest.mark.parametrize("words", [["rescore"], ["training", "out"]])
def test_a_folder_without_a_book_is_refused(
    words: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([*words, "--book", str(tmp_path)]) == 1
    assert "there is no trial book" in capsys.readouterr().err
