"""What is dropped on the window, and what can be chosen without a book."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from gui.home import Memory
from gui.style.wardrobe import Wardrobe
from gui.travel.packways import PackWays
from gui.window import Window
from gui.work import Work
from tests.gui.rackbook import NotingPlaces
from tests.gui.travel.doing import Answering, book_of, drop


@pytest.mark.parametrize(("button", "became"), [("open_it", "open_pack_of"), ("bring", "bring_in_guest")])
def test_of_a_dropped_pack_is_asked_what_it_is_for(
    window: Window, qtbot: QtBot, tmp_path: Path, answer: Answering, monkeypatch: pytest.MonkeyPatch,
    button: str, became: str,
) -> None:  # fmt: skip
    source = tmp_path / "Kim.evenstand"
    source.write_text("x")
    shown: list[tuple[str, Path]] = []
    for name in ("open_pack_of", "bring_in_guest"):
        monkeypatch.setattr(
            type(window.travel), name, lambda _self, path, name=name: shown.append((name, path))
        )

    def choose(dialog: QDialog) -> None:
        assert isinstance(dialog, PackWays)
        getattr(dialog, button).click()

    answer(choose)
    drop(window, source)
    qtbot.waitUntil(lambda: bool(shown))

    assert shown == [(became, source)]


def test_dropped_on_the_demonstration_a_pack_is_opened(
    window: Window, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book_of(window).set_setting("demonstration", "yes")
    shown: list[Path] = []
    monkeypatch.setattr(type(window.travel), "open_pack_of", lambda _self, path: shown.append(path))

    drop(window, tmp_path / "Kim.evenstand")
    qtbot.waitUntil(lambda: bool(shown))


def test_a_dropped_book_is_brought_in_and_a_folder_of_photos_goes_to_intake(
    window: Window, qtbot: QtBot, tmp_path: Path, other: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shown: list[Path] = []
    monkeypatch.setattr(type(window.travel), "bring_in_guest", lambda _self, path: shown.append(path))

    drop(window, other, tmp_path / "phone")
    qtbot.waitUntil(lambda: bool(shown))

    assert shown == [other]
    assert ("bring in", [tmp_path / "phone"]) in window.screens["intake"].asked


def test_without_a_book_only_what_needs_none_can_be_chosen(
    qtbot: QtBot, memory: Memory, dressed: QApplication
) -> None:
    work = Work(scorers=1)
    window = Window(work, memory, Wardrobe(dressed, memory), NotingPlaces(work))
    qtbot.addWidget(window)

    enabled = {name for name, action in window.actions_by_name.items() if action.isEnabled()}

    assert "open_pack" in enabled
    assert not enabled & {"pack_book", "export_book", "bring_in_book", "bring_in_notes"}
    window.close()
