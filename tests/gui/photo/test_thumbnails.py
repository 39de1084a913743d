"""Thumbnails: small, whatever they are read from."""

import threading
from pathlib import Path

import pytest
from PySide6.QtGui import QColor, QImage
from pytestqt.qtbot import QtBot

from gui.photo import thumbnails as module
from gui.photo.thumbnails import Thumbnails
from gui.work import Work


def test_a_whole_photo_is_made_small_while_it_is_read(work: Work, tmp_path: Path, qtbot: QtBot) -> None:
    image = QImage(2000, 1500, QImage.Format.Format_RGB32)
    image.fill(QColor(40, 140, 60))
    path = tmp_path / "photo.jpg"
    image.save(str(path))
    thumbnails = Thumbnails(work)

    with qtbot.waitSignal(thumbnails.arrived):
        assert thumbnails.get(path) is None

    picture = thumbnails.get(path)
    assert picture is not None
    assert (picture.width(), picture.height()) == (320, 240)


def test_what_is_no_picture_is_told_once(work: Work, tmp_path: Path, qtbot: QtBot) -> None:
    path = tmp_path / "note.jpg"
    path.write_text("no picture")
    thumbnails = Thumbnails(work)

    with qtbot.waitSignal(thumbnails.lost) as lost:
        thumbnails.get(path)

    assert lost.args == [[path]]
    assert thumbnails.get(path) is None


def test_a_photo_of_a_phone_that_qt_cannot_decode_is_seen_too(work: Work, qtbot: QtBot) -> None:
    path = Path(__file__).resolve().parents[2] / "photos" / "formats" / "deep.heif"
    assert QImage(str(path)).isNull(), "Qt can by now: the way round it may go"
    thumbnails = Thumbnails(work)

    with qtbot.waitSignal(thumbnails.arrived, timeout=20_000):
        thumbnails.get(path)

    picture = thumbnails.get(path)
    assert picture is not None
    assert max(picture.width(), picture.height()) <= 320


def test_a_picture_that_changes_while_it_is_decoded_is_not_kept_as_it_was(
    work: Work, tmp_path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    at_work, go_on = threading.Event(), threading.Event()
    real = module._small

    def slow(path: Path) -> QImage:
        image = real(path)
        at_work.set()
        assert go_on.wait(10)
        return image

    monkeypatch.setattr(module, "_small", slow)
    path = tmp_path / "thumb.png"
    image = QImage(40, 20, QImage.Format.Format_RGB32)
    image.fill(QColor(255, 0, 0))
    image.save(str(path))
    thumbnails = Thumbnails(work)
    thumbnails.get(path)
    qtbot.waitUntil(at_work.is_set, timeout=10_000)

    image.fill(QColor(0, 0, 255))
    image.save(str(path))  # its corners were set anew meanwhile
    thumbnails.forget([path])
    with qtbot.waitSignal(thumbnails.arrived, timeout=10_000):
        go_on.set()

    assert thumbnails.get(path) is None
    qtbot.waitUntil(lambda: thumbnails.get(path) is not None, timeout=10_000)
    picture = thumbnails.get(path)
    assert picture is not None
    assert picture.toImage().pixelColor(5, 5) == QColor(0, 0, 255)
