"""Pictures that the cache has lost, or holds only as garbage, are made again: once, not without end."""

from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

import data.intake
from data.records import PhotoId
from gui.bench.lostpictures import LostPictures
from gui.photo.thumbnails import Thumbnails
from gui.work import Work
from tests.gui.rackbook import a_thumbnail


@pytest.mark.parametrize("mended", [True, False])
def test_garbage_in_the_cache_is_made_again_once(
    tmp_path: Path, work: Work, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, mended: bool
) -> None:
    path = tmp_path / "thumbnail.jpg"
    path.write_bytes(b"no picture")
    pictures = SimpleNamespace(thumbnail=path)
    stood_there: list[bool] = []

    def make_pictures(*_: Any) -> Any:
        stood_there.append(path.exists())
        path.write_bytes(a_thumbnail() if mended else b"no picture again")
        return pictures

    monkeypatch.setattr(data.intake, "make_pictures", make_pictures)
    parent = QObject()
    thumbnails = Thumbnails(work, parent)
    lost = LostPictures(work, thumbnails, parent)
    lost.made.connect(lambda: thumbnails.get(path))  # the rack paints again
    book: Any = SimpleNamespace(pictures=lambda _: pictures)
    lost.know(book, {path: PhotoId(1)})

    assert thumbnails.get(path) is None
    qtbot.waitUntil(lambda: bool(stood_there), timeout=5000)
    qtbot.wait(300)

    assert stood_there == [False]
    assert (thumbnails.get(path) is not None) is mended
