"""Photos of a heap come from the background, upright; until then their names stand there as they are."""

from datetime import datetime
from pathlib import Path

from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from data.medium.benchtest import HeapPhoto, HeapPhotoId
from data.readings import BenchTestId
from gui.materials.heappictures import HEIGHT, HeapPictures
from gui.photo.thumbnails import Thumbnails
from gui.work import Work


def a_photo(name: str) -> HeapPhoto:
    return HeapPhoto(
        id=HeapPhotoId(1), bench_test=BenchTestId(1), digest="0" * 64, suffix=".jpg", name=name,
        taken_at=datetime(2026, 3, 8, 9),
    )  # fmt: skip


def test_a_picture_takes_the_place_of_its_name(
    qtbot: QtBot, dressed: QApplication, work: Work, tmp_path: Path
) -> None:
    lying = Image.new("RGB", (4000, 3000), (90, 60, 30))
    exif = Image.Exif()
    exif[0x0112] = 6  # the phone was upright: to be turned by a quarter (Exif 2.3, orientation)
    lying.save(tmp_path / "heap.jpg", exif=exif)
    row = HeapPictures(Thumbnails(work))
    qtbot.addWidget(row)
    row.show_photos([(a_photo("<b>heap</b>.jpg"), tmp_path / "heap.jpg")])
    row.show()

    (label,) = row.findChildren(QLabel)
    assert label.pixmap().isNull(), "decoding a photo of a phone would stop the window"
    assert label.text() == "<b>heap</b>.jpg"
    assert label.textFormat() == Qt.TextFormat.PlainText
    qtbot.waitUntil(lambda: not label.pixmap().isNull(), timeout=10_000)
    picture = label.pixmap()
    assert round(picture.height() / picture.devicePixelRatio()) == HEIGHT
    assert picture.width() < picture.height()


def test_what_is_no_picture_keeps_its_name(
    qtbot: QtBot, dressed: QApplication, work: Work, tmp_path: Path
) -> None:
    (tmp_path / "heap.heic").write_bytes(b"nothing")
    row = HeapPictures(Thumbnails(work))
    qtbot.addWidget(row)
    row.show_photos([(a_photo("heap.heic"), tmp_path / "heap.heic")])
    row.show()
    qtbot.waitUntil(lambda: not work.jobs(), timeout=10_000)
    qtbot.wait(20)

    (label,) = row.findChildren(QLabel)
    assert label.text() == "heap.heic"
    row.show_photos(())
    assert not row.isVisible()
