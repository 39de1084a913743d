"""A tile says in whole words what its tray needs; the line of growth takes what is left."""

import pytest
from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QFontMetrics, QImage, QPainter, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QApplication, QStyleOptionViewItem

from data.records import LookKind
from gui.bench import tilepainter
from gui.bench.rack import Standing
from gui.bench.tilemodel import STANDING
from gui.bench.tilepainter import BESIDE_MARK, TilePainter, kind_within, names_within, tile_size
from gui.home import Memory
from gui.language.language import speak
from gui.language.names import LANGUAGES
from gui.style.palette import Space, dress
from gui.style.tokens import Scheme
from tests.gui.rackbook import a_look, a_tile


@pytest.mark.parametrize(("width", "is_drawn"), [(152, True), (230, True), (124, False)])
def test_the_line_of_growth_leaves_the_words_their_room(
    dressed: QApplication, monkeypatch: pytest.MonkeyPatch, width: int, is_drawn: bool
) -> None:
    drawn: list[QRectF] = []
    monkeypatch.setattr(tilepainter, "draw_growth", lambda _painter, box, *_: drawn.append(box) or True)
    option = QStyleOptionViewItem()
    option.rect, option.font = QRect(0, 0, width, 180), dressed.font()
    model = QStandardItemModel()
    item = QStandardItem()
    item.setData(Standing(tile=a_tile(), look=a_look(what=LookKind.READY)), STANDING)
    model.appendRow(item)
    picture = QImage(width, 180, QImage.Format.Format_RGB32)
    painter = QPainter(picture)

    TilePainter().paint(painter, option, model.index(0, 0))
    painter.end()

    words = option.fontMetrics.horizontalAdvance("ready to cut") + option.fontMetrics.ascent()
    assert bool(drawn) == is_drawn
    assert all(box.left() > 12 + words for box in drawn)


@pytest.mark.parametrize("percent", [100, 150])
@pytest.mark.parametrize("language", [name for name, _ in LANGUAGES])
def test_what_is_wrong_is_read_whole_on_the_least_tile(
    dressed: QApplication, memory: Memory, language: str, percent: int
) -> None:
    dress(dressed, Scheme.LIGHT, percent)
    metrics = QFontMetrics(dressed.font())
    room = tile_size(dressed.font()).least_width - 2 * Space.M - metrics.ascent() - BESIDE_MARK
    memory.language = language
    speak(dressed, memory)
    said = [kind_within(kind, metrics, room) for kind in LookKind]
    memory.language = "en"
    speak(dressed, memory)
    dress(dressed, Scheme.LIGHT)

    assert [words for words in said if words.endswith("…")] == []


def test_where_a_tile_has_room_what_is_wrong_is_said_in_full(dressed: QApplication) -> None:
    metrics = QFontMetrics(dressed.font())

    assert kind_within(LookKind.SUSPECT, metrics, 300) == "possible mold"
    assert kind_within(LookKind.SUSPECT, metrics, 60) == "mold?"


def test_of_two_long_names_both_are_told_and_a_short_one_leaves_its_room(dressed: QApplication) -> None:
    metrics = QFontMetrics(dressed.font())
    crop, medium = "purple kohlrabi of the second late sowing", "needle-felted hemp and flax mat"

    both = names_within(crop, medium, metrics, 128)
    assert both.startswith("purple")
    assert " · needle" in both
    assert metrics.horizontalAdvance(both) <= 128
    assert names_within("broccoli", "coir", metrics, 128) == "broccoli · coir"
    beside = names_within("pea", medium, metrics, 128)
    assert beside.startswith("pea · needle-felted")
    assert metrics.horizontalAdvance(beside) <= 128
