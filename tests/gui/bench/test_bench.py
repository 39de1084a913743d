"""Bench: what needs a look on top, the rack below; a click or Enter opens the tray."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, Qt, QTranslator
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

import gui
from data.book import Book
from data.errors import BookLocked
from data.events import EventKind
from data.records import LookKind, PhotoId, Urgency
from data.watch import MOLD_CAUTION
from gui.bench.looks import WRAPPED, columns
from gui.bench.screen import Bench
from gui.bench.tilemodel import STANDING, TileModel, caption, tooltip
from gui.bench.view import BenchState, Reading, bench_state, read_bench
from gui.work import Work
from tests.gui.rackbook import a_look, a_rack_book, a_thumbnail, a_tile, photograph, standings
from tests.made.books import an_empty_book


@pytest.fixture
def bench(qtbot: QtBot, work: Work, dressed: QApplication) -> Iterator[Bench]:
    made = Bench(work)
    qtbot.addWidget(made)
    made.resize(1024, 640)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.open_book(None)


def shown(bench: Bench, reading: Reading, wanted: str = "") -> BenchState:
    state = bench_state(reading, wanted)
    bench.show_state(state)
    return state


# --- what it says


def test_the_caution_takes_the_width_there_is_for_the_rack_lacks_its_height(bench: Bench) -> None:
    bench.resize(1366, 700)
    looks = (a_look(1, what=LookKind.SUSPECT, caution=str(MOLD_CAUTION)),)
    shown(bench, Reading(tiles=(a_tile(1),), looks=looks))

    note = bench.panel.note
    assert note.contentsMargins().left() == 16  # as the words above it
    assert note.height() < 5 * note.fontMetrics().height()


def test_trays_that_need_a_look_are_counted_once(bench: Bench) -> None:
    looks = (a_look(1, urgency=Urgency.NOW, what=LookKind.SUSPECT), a_look(1), a_look(2))
    shown(bench, Reading(tiles=(a_tile(1), a_tile(2)), looks=looks))
    assert bench.panel.title.text() == "2 trays need a look"


@pytest.mark.parametrize(("height", "clear"), [(640, True), (607, False)])
def test_the_head_of_the_rack_stands_clear_of_the_look_list_where_there_is_room(
    bench: Bench, qtbot: QtBot, height: int, clear: bool
) -> None:
    bench.resize(1366, height)
    shown(bench, Reading(tiles=(a_tile(1),), looks=(a_look(1),)))
    bench.show()

    def between() -> int:
        above = bench.panel.mapTo(bench, bench.panel.rect().bottomLeft()).y() + 1
        return bench.head.search.mapTo(bench, bench.head.search.rect().topLeft()).y() - above

    qtbot.waitUntil(lambda: (between() >= 12) is clear)


def test_when_nothing_is_wrong_it_does_not_say_that_all_is_safe(bench: Bench) -> None:
    shown(bench, Reading(tiles=(a_tile(1),)))
    assert bench.panel.title.text() == "Nothing needs a look"
    assert "no flag is no proof that a tray is safe" in bench.panel.note.text()
    assert bench.panel.looks.isHidden()


def test_where_nothing_needs_a_look_the_rack_is_in_sight_on_a_small_screen_too(bench: Bench) -> None:
    bench.resize(1024, 26 * bench.fontMetrics().height())
    shown(bench, Reading(tiles=(a_tile(1),), looks=(a_look(1),)))
    assert not bench.switch.isHidden()
    assert bench.rack.isHidden()

    shown(bench, Reading(tiles=(a_tile(1),)))

    assert bench.switch.isHidden()
    assert not bench.rack.isHidden()
    assert not bench.panel.isHidden()


def test_possible_mold_never_stands_there_without_its_caution(bench: Bench) -> None:
    look = a_look(1, what=LookKind.SUSPECT, urgency=Urgency.NOW, caution="Do not taste.")
    shown(bench, Reading(tiles=(a_tile(1),), looks=(look,)))
    assert bench.panel.note.text() == "Do not taste."
    assert bench.panel.note.isVisible()


def test_a_long_list_is_folded_so_that_the_rack_stays_in_sight(bench: Bench, qtbot: QtBot) -> None:
    reading = Reading(tiles=tuple(map(a_tile, range(1, 8))), looks=tuple(map(a_look, range(1, 8))))
    bench._reading = reading
    shown(bench, reading)
    folded = bench.panel.looks.height()
    assert bench.panel.unfold.text() == "Show all 7"

    qtbot.mouseClick(bench.panel.unfold, Qt.MouseButton.LeftButton)

    assert bench.panel.unfold.text() == "Show fewer"
    assert bench.panel.looks.height() > folded
    assert bench.rack.height() > bench.height() // 4


def test_each_row_of_the_list_is_high_enough_for_a_wet_finger(bench: Bench) -> None:
    shown(bench, Reading(tiles=(a_tile(1),), looks=(a_look(1, sentence="Lags.", first="Look."),)))
    assert bench.panel.looks.sizeHintForRow(0) >= 44
    assert bench.bring.height() >= 44


def test_a_book_without_trays_teaches_what_will_stand_here(
    bench: Bench, tmp_path: Path, qtbot: QtBot
) -> None:
    with an_empty_book(tmp_path / "empty") as book:
        bench.open_book(book)
        qtbot.waitUntil(lambda: not bench.answers.is_running)

        assert "your rack will stand" in bench._empty.title.text()
        with qtbot.waitSignal(bench.trays_wanted):
            qtbot.mouseClick(bench._empty.button, Qt.MouseButton.LeftButton)


def test_a_rack_without_photos_teaches_how_they_come(bench: Bench) -> None:
    shown(bench, Reading(tiles=(a_tile(1, photo_id=None, coverage=None, growth=()),)))
    assert "bring the photos in" in bench.panel.note.text()
    assert bench.head.soft.text() == "1 tray, no photo yet"


def test_while_photos_come_in_none_is_called_missing() -> None:
    missing, lagging = a_look(1, what=LookKind.NO_PHOTO), a_look(2)
    reading = Reading(tiles=(a_tile(1), a_tile(2)), looks=(missing, lagging))

    assert bench_state(reading, coming=True).looks == (lagging,)
    assert bench_state(reading, coming=False).looks == (missing, lagging)


def test_while_photos_come_in_the_bench_does_not_say_that_nothing_is_wrong(bench: Bench) -> None:
    bench.show_state(bench_state(Reading(tiles=(a_tile(1),)), coming=True))
    assert bench.panel.title.text() == "What needs a look"
    assert "Photos are being scored" in bench.panel.note.text()


# --- what it is read from


def test_the_rack_and_the_list_come_from_the_book(
    bench: Bench, rack_book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    patch = {"x_mm": 100.0, "y_mm": 50.0, "area_cm2": 6.0, "confidence": 0.9}
    photograph(rack_book, "A1", tmp_path, coverage=71.0, suspects=[patch])

    bench.open_book(rack_book)
    qtbot.waitUntil(lambda: bench.rack.model().rowCount() == 3)

    assert bench.panel.title.text() == "1 tray needs a look"
    index = bench.rack.model().index(0, 0)
    assert caption(index.data(STANDING)) == "A1, broccoli, coir, day 7, coverage 71 %, possible mold"


def test_a_picture_comes_in_the_background_and_is_shown(
    bench: Bench, rack_book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    photograph(rack_book, "A1", tmp_path)
    bench.open_book(rack_book)

    with qtbot.waitSignal(bench.thumbnails.arrived, timeout=5000):
        pass

    tile = bench.rack.visualRect(bench.rack.model().index(0, 0))
    middle = QPoint(tile.center().x(), tile.y() + tile.width() // 4)
    qtbot.waitUntil(lambda: is_green(bench, middle))


def is_green(bench: Bench, point: QPoint) -> bool:
    colour = bench.rack.viewport().grab().toImage().pixelColor(point)
    return colour.green() > 1.5 * max(colour.red(), colour.blue())


def test_asked_again_while_it_reads_it_reads_once_more(
    bench: Bench, rack_book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    bench.open_book(rack_book)
    photograph(rack_book, "A1", tmp_path, coverage=33.0)
    bench.renew()
    bench.renew()

    qtbot.waitUntil(lambda: bench._reading.tiles != () and bench._reading.tiles[0].coverage == 33.0)


def test_an_answer_about_another_book_is_dropped(
    bench: Bench, rack_book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    with a_rack_book(tmp_path / "other", per_shelf=(5,)) as other:
        bench.open_book(rack_book)
        bench.open_book(other)

        qtbot.waitUntil(lambda: bench.rack.model().rowCount() == 5 and not bench.answers.is_running)
        bench.open_book(None)


def test_a_book_that_cannot_be_read_is_told_in_place(bench: Bench, rack_book: Book, qtbot: QtBot) -> None:
    shown(bench, Reading(tiles=(a_tile(1),)))
    bench._not_read(BookLocked(rack_book.folder))

    assert "is being written by another window" in bench.panel.note.text()


def test_the_focus_comes_to_the_most_urgent_look_as_soon_as_it_is_known(
    bench: Bench, rack_book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    photograph(rack_book, "A1", tmp_path, suspects=[{"confidence": 0.9}])
    with qtbot.waitActive(bench):
        bench.activateWindow()

    bench.open_book(rack_book)
    bench.arrive()

    qtbot.waitUntil(bench.panel.looks.hasFocus)


# --- hands


def test_a_click_on_a_tile_opens_its_tray(bench: Bench, qtbot: QtBot) -> None:
    shown(bench, Reading(tiles=(a_tile(1), a_tile(2))))
    place = bench.rack.visualRect(bench.rack.model().index(1, 0)).center()

    with qtbot.waitSignal(bench.tray_wanted) as wanted:
        qtbot.mouseClick(bench.rack.viewport(), Qt.MouseButton.LeftButton, pos=place)

    assert wanted.args == [2]


def test_arrows_move_between_tiles_and_enter_opens(bench: Bench, qtbot: QtBot) -> None:
    shown(bench, Reading(tiles=(a_tile(1), a_tile(2), a_tile(3, shelf="B", code="B1"))))
    with qtbot.waitActive(bench):
        bench.activateWindow()
    bench.rack.setFocus()
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Left, Qt.Key.Key_Down):
        qtbot.keyClick(bench.rack, key)

    with qtbot.waitSignal(bench.tray_wanted) as wanted:
        qtbot.keyClick(bench.rack, Qt.Key.Key_Return)

    assert wanted.args == [3]


def test_enter_on_the_look_list_opens_the_tray(bench: Bench, qtbot: QtBot) -> None:
    shown(bench, Reading(tiles=(a_tile(1), a_tile(2)), looks=(a_look(2),)))
    with qtbot.waitActive(bench):
        bench.activateWindow()
    bench.arrive()

    with qtbot.waitSignal(bench.tray_wanted) as wanted:
        qtbot.keyClick(bench.panel.looks, Qt.Key.Key_Return)

    assert wanted.args == [2]


def test_a_look_opens_the_photo_that_shows_it_though_a_newer_one_does_not(bench: Bench, qtbot: QtBot) -> None:
    shown(bench, Reading(tiles=(a_tile(2),), looks=(a_look(2, what=LookKind.SUSPECT, photo_id=PhotoId(7)),)))

    with qtbot.waitSignal(bench.photo_wanted) as wanted:
        qtbot.keyClick(bench.panel.looks, Qt.Key.Key_Return)

    assert wanted.args == [2, 7]


def test_once_all_trays_have_ended_it_says_where_they_are_and_not_how_one_begins(
    bench: Bench, rack_book: Book, work: Work, qtbot: QtBot
) -> None:
    trays = [tray.id for tray in rack_book.trays()]
    rack_book.add_event(trays, EventKind.CUT, rack_book.now())
    bench.open_book(rack_book)
    qtbot.waitUntil(lambda: not work.jobs())

    assert bench._empty.title.text() == "No tray grows now"
    words = bench._empty.words.text()
    assert f"{len(trays)} of them. The Tray sheet opens them" in words


def test_a_photo_to_confirm_leads_to_intake(bench: Bench, qtbot: QtBot) -> None:
    shown(bench, Reading(tiles=(a_tile(2),), looks=(a_look(2, what=LookKind.UNMATCHED),)))

    with qtbot.waitSignal(bench.place_wanted) as wanted:
        qtbot.keyClick(bench.panel.looks, Qt.Key.Key_Return)

    assert wanted.args == ["intake"]


@pytest.mark.parametrize("language", ["en", "de"])
def test_what_is_wrong_with_a_tray_is_read_to_its_last_letter(bench: Bench, language: str) -> None:
    words = QTranslator()
    assert language == "en" or words.load("evenstand_de", str(Path(gui.__file__).parent / "translations"))
    bold = QFont(bench.font())
    bold.setBold(True)
    place = columns(QRect(0, 0, 986, 10), bench.font()).what
    assert place.width() < 140, "not beside the sentence"
    for kind in LookKind:
        told = words.translate("LookKind", str(kind)) or str(kind)
        needed = QFontMetrics(bold).boundingRect(place, int(WRAPPED), told)
        assert needed.width() <= place.width(), told
        assert needed.height() <= place.height(), told


def test_words_in_the_filter_narrow_the_rack(bench: Bench, qtbot: QtBot) -> None:
    bench._reading = Reading(tiles=(a_tile(1), a_tile(2, crop="red radish")))
    bench._refresh()

    qtbot.keyClicks(bench.head.search, "radish")

    assert bench.rack.model().rowCount() == 1
    assert bench.head.soft.text() == "1 of 2 trays"


def test_enter_in_the_search_goes_on_to_what_was_found_and_once_more_opens_it(
    bench: Bench, qtbot: QtBot
) -> None:
    bench._reading = Reading(tiles=(a_tile(1), a_tile(2, crop="red radish"), a_tile(3, crop="red radish")))
    bench._refresh()
    bench.head.search.setFocus()
    qtbot.keyClicks(bench.head.search, "radish")

    qtbot.keyClick(bench.head.search, Qt.Key.Key_Return)
    assert bench.rack.hasFocus()
    with qtbot.waitSignal(bench.tray_wanted) as wanted:
        qtbot.keyClick(bench.rack, Qt.Key.Key_Return)
    assert wanted.args == [2]

    bench.head.search.setFocus()
    bench.head.search.setText("nothing like it")
    qtbot.keyClick(bench.head.search, Qt.Key.Key_Return)
    assert bench.head.search.hasFocus()


def test_the_tile_with_the_focus_keeps_it_when_the_rack_changes(bench: Bench) -> None:
    shown(bench, Reading(tiles=(a_tile(1), a_tile(2), a_tile(3))))
    bench.rack.setCurrentIndex(bench.rack.model().index(2, 0))

    shown(bench, Reading(tiles=(a_tile(2), a_tile(3))))

    assert bench.rack.currentIndex().data(STANDING).tile.code == "A3"


def test_two_thousand_trays_can_be_walked_from_end_to_end(bench: Bench, qtbot: QtBot) -> None:
    tiles = tuple(a_tile(n, shelf=f"S{n // 40:02}") for n in range(1, 2001))
    shown(bench, Reading(tiles=tiles))

    bench.rack.setFocus()
    qtbot.keyClick(bench.rack, Qt.Key.Key_End)

    last = bench.rack.visualRect(bench.rack.currentIndex())
    assert bench.rack.currentIndex().row() == 1999
    assert bench.rack.viewport().rect().contains(last)


# --- the model alone


def test_a_changed_tile_changes_one_row(qtbot: QtBot) -> None:
    model = TileModel()
    model.show(standings(a_tile(1), a_tile(2), a_tile(3)))

    with qtbot.waitSignal(model.dataChanged) as changed:
        assert not model.show(standings(a_tile(1), a_tile(2, coverage=90.0), a_tile(3)))

    assert [index.row() for index in changed.args[:2]] == [1, 1]


def test_a_tooltip_says_how_the_number_was_had() -> None:
    (standing,) = standings(a_tile(1))
    assert "canopy share of the inner area, from the photo of 8 March, 12:00" in tooltip(standing)


def test_a_tile_without_a_photo_has_a_dash_and_says_why() -> None:
    (standing,) = standings(a_tile(1, photo_id=None, coverage=None))
    assert caption(standing) == "A1, broccoli, coir, day 7, no photo yet"


def test_the_thumbnail_of_the_builder_is_a_picture() -> None:
    assert a_thumbnail()[:2] == b"\xff\xd8"


def test_reading_takes_tiles_and_looks_of_one_moment(rack_book: Book) -> None:
    reading = read_bench(rack_book)
    assert [tile.code for tile in reading.tiles] == ["A1", "A2", "B1"]
    assert reading.looks == ()
