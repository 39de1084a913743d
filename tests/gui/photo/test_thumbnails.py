"""Thumbnails: small, whatever they are read from."""

from pathlib import Path

from PySide6.QtGui import QColor, QImage
from pytestqt.qtbot import QtBot

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
