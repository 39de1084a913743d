"""A book is packed or exported from the window's menu, and a pack is opened."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.cancel import CancelToken
from data.travel.packing import pack
from gui.controls.progress import count_words
from gui.travel.places import ExportPlace, PackPlace, UnpackPlace
from gui.window import Window
from tests.gui.travel.doing import Answering, book_of, named

# --- out of the book


def test_the_book_is_packed_and_the_folder_can_be_opened(
    window: Window, qtbot: QtBot, tmp_path: Path, answer: Answering, opened: list[str]
) -> None:
    answer(lambda dialog: named(dialog, PackPlace, tmp_path, "mine"))
    window.actions_by_name["pack_book"].trigger()
    qtbot.waitUntil(window.done.isVisible, timeout=10_000)

    assert (tmp_path / "mine.evenstand").is_file()
    assert str(tmp_path / "mine.evenstand") in window.done.words.text()
    qtbot.mouseClick(window.done.button, Qt.MouseButton.LeftButton)
    assert opened == [str(tmp_path)]
    qtbot.mouseClick(window.done.read, Qt.MouseButton.LeftButton)
    assert window.done.isHidden()


def test_a_pack_says_how_large_it_will_be(window: Window, qtbot: QtBot, answer: Answering) -> None:
    said: list[str] = []

    def look(dialog: QDialog) -> None:
        assert isinstance(dialog, PackPlace)
        qtbot.waitUntil(lambda: dialog.size_label.text() != "")
        said.append(dialog.size_label.text())

    answer(look)
    window.travel.pack_book()

    assert said == ["about 1 MB"]


def test_where_something_stands_already_another_name_is_wanted(
    window: Window, tmp_path: Path, answer: Answering
) -> None:
    (tmp_path / "mine.evenstand").write_text("an older pack")
    said: list[tuple[str, bool]] = []

    def try_it(dialog: QDialog) -> None:
        named(dialog, PackPlace, tmp_path, "mine")
        assert isinstance(dialog, PackPlace)
        said.append((dialog.trouble.text(), dialog.start.isEnabled()))

    answer(try_it)
    window.travel.pack_book()

    assert said == [
        (f"{tmp_path / 'mine.evenstand'} is there already and stays as it is. Choose another name.", False)
    ]
    assert (tmp_path / "mine.evenstand").read_text() == "an older pack"


def test_a_pack_that_is_cancelled_leaves_nothing_behind(
    window: Window, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    place = tmp_path / "stick"
    place.mkdir()
    said: list[str] = []
    monkeypatch.setattr("data.travel.packing._originals", _for_ever(window, said))

    window.travel.pack_to(book_of(window), place / "mine")
    qtbot.waitUntil(lambda: window.foot.told.text() != "", timeout=10_000)

    assert window.foot.told.text() == "Stopped; nothing of it was left."
    assert said == ["Stopping; all stays as it was"]
    assert list(place.iterdir()) == []


def _for_ever(window: Window, said: list[str]) -> Callable[..., list[tuple[Path, str, str]]]:
    """Originals of a book during which Cancel is pressed, and what is said of it then."""

    def originals(folder: Path, _database: Path) -> list[tuple[Path, str, str]]:
        for job in window.work.shown():
            job.cancel()
            said.append(count_words(job))
        return [(path, path.stem, path.name) for path in sorted((folder / "photos").rglob("*.jpg"))]

    return originals


def test_a_place_that_takes_nothing_is_told_on_top(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    window.travel.pack_to(book_of(window), tmp_path / "not there" / "mine")
    qtbot.waitUntil(window.trouble.isVisible, timeout=10_000)

    assert window.trouble.words.text().startswith("Nothing can be written in")


def test_the_book_is_exported_as_open_files(
    window: Window, qtbot: QtBot, tmp_path: Path, answer: Answering
) -> None:
    answer(lambda dialog: named(dialog, ExportPlace, tmp_path, "open"))
    window.actions_by_name["export_book"].trigger()
    qtbot.waitUntil(window.done.isVisible, timeout=20_000)

    assert (tmp_path / "open" / "datapackage.json").is_file()
    assert not (tmp_path / "open" / "top_views").exists()
    assert window.done.folder == tmp_path / "open"


def test_top_views_go_along_where_they_are_wanted(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    window.travel.export_to(book_of(window), tmp_path / "open", top_views=True)
    qtbot.waitUntil(window.done.isVisible, timeout=20_000)

    assert (tmp_path / "open" / "top_views").is_dir()


# --- a packed book opened


def test_a_packed_book_is_laid_out_and_opened(
    window: Window, qtbot: QtBot, tmp_path: Path, other: Path, answer: Answering
) -> None:
    with Book.open(other) as theirs:
        source = pack(theirs, tmp_path / "theirs", CancelToken())

    answer(lambda dialog: named(dialog, UnpackPlace, tmp_path, "unpacked"))
    window.travel.open_pack_of(source)
    qtbot.waitUntil(lambda: book_of(window).folder == tmp_path / "unpacked", timeout=10_000)

    assert len(book_of(window).trays()) == 2
    assert window.done.folder == tmp_path / "unpacked"


def test_what_is_no_pack_is_told_and_leaves_nothing(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "letter.evenstand").write_text("Dear grower")
    before = sorted(tmp_path.iterdir())

    window.travel.unpack_to(tmp_path / "letter.evenstand", tmp_path / "there")
    qtbot.waitUntil(window.trouble.isVisible, timeout=10_000)

    assert "is no packed book" in window.trouble.words.text()
    assert sorted(tmp_path.iterdir()) == before


def test_a_book_that_is_unpacked_under_a_dialog_waits_to_be_opened(
    window: Window, qtbot: QtBot, tmp_path: Path, other: Path, answer: Answering
) -> None:
    with Book.open(other) as theirs:
        source = pack(theirs, tmp_path / "theirs", CancelToken())
    before = book_of(window)
    window.travel.unpack_to(source, tmp_path / "unpacked")

    answer(lambda _dialog: qtbot.waitUntil(window.done.isVisible, timeout=10_000))
    window.travel.export_book()

    assert book_of(window) is before
    assert window.done.words.text().startswith("Unpacked:")
