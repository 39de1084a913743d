"""Pages that a command lays out speak the language of the window, or the one that is asked for."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from gui.command import main
from gui.home import Memory
from gui.language.language import speak_chosen
from tests.data.smalldisk import small_disk
from tests.data.trialrack import Rack

GERMAN, ENGLISH = "Was gefragt wurde", "What was asked"


@pytest.fixture
def book(tmp_path: Path, qapp: QApplication, monkeypatch: pytest.MonkeyPatch) -> Iterator[str]:
    monkeypatch.setenv("EVENSTAND_HOME", str(tmp_path / "home"))
    rack = Rack(tmp_path)
    rack.book.close()
    yield str(rack.book.folder)
    speak_chosen(qapp, "en")


def reported(book: str, *words: str) -> str:
    out = Path(book).parent / "report.html"
    assert main(["report", "--book", book, "--short", *words, str(out)]) == 0
    return out.read_text(encoding="utf-8")


def test_a_report_speaks_the_language_that_the_window_speaks(book: str) -> None:
    Memory().language = "de"

    assert GERMAN in reported(book)
    assert ENGLISH in reported(book, "--language", "en")


def test_a_report_is_written_where_no_settings_can_be_kept(book: str, tmp_path: Path) -> None:
    (tmp_path / "home").write_text("a file where the folder should be")

    assert ENGLISH in reported(book)


def test_tags_take_a_language_too(book: str, tmp_path: Path) -> None:
    assert main(["tags", "--book", book, "--language", "de", str(tmp_path / "tags.pdf")]) == 0


@pytest.mark.parametrize("words", [("report", "report.pdf"), ("tags", "tags.pdf")])
def test_pages_that_find_no_room_on_the_disk_are_not_said_to_be_written(
    book: str, words: tuple[str, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Qt says nothing of a disk that fills up: a file of no bytes was called a report of 8 pages."""
    command, name = words
    with small_disk(tmp_path / "stick", "16k") as stick:
        assert main([command, "--book", book, str(stick / name)]) == 1

        assert "No space left on device" in capsys.readouterr().err
        assert list(stick.iterdir()) == []
