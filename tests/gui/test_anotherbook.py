"""Another book is laid open while a place still reads the one before: every place shows the new one."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.errors import BookLocked
from gui.bench.screen import Bench
from gui.bookreading import BookReading
from gui.home import log_file
from gui.intake.screen import Intake
from gui.materials.screen import Materials
from gui.mishap import trouble_words
from gui.screen import Screen
from gui.work import Work
from tests.gui.rackbook import a_rack_book, photograph

Book2 = tuple[Book, Book]


@pytest.fixture
def two_books(tmp_path: Path, work: Work) -> Iterator[Book2]:
    with a_rack_book(tmp_path / "one") as one, a_rack_book(tmp_path / "two", per_shelf=(3, 3)) as two:
        yield one, two
        work.stop_all()


def shows_bench(place: Screen) -> int:
    assert isinstance(place, Bench)
    return place.rack.model().rowCount()


def shows_intake(place: Screen) -> int:
    assert isinstance(place, Intake)
    return 0 if place.reading is None else len(place.reading.trays)


def shows_materials(place: Screen) -> int:
    assert isinstance(place, Materials)
    return len(place.reading.table.media)


@pytest.mark.parametrize(
    ("make", "shows"), [(Bench, shows_bench), (Intake, shows_intake), (Materials, shows_materials)]
)
def test_a_reading_that_was_stopped_is_done_again_of_the_new_book(
    two_books: Book2,
    work: Work,
    dressed: QApplication,
    qtbot: QtBot,
    make: Callable[[Work], Screen],
    shows: Callable[[Screen], int],
) -> None:
    one, two = two_books
    place = make(work)
    qtbot.addWidget(place)
    place.show()
    place.open_book(two)
    qtbot.waitUntil(lambda: not work.jobs(), timeout=20_000)
    wanted = shows(place)
    place.open_book(one)
    qtbot.waitUntil(lambda: not work.jobs(), timeout=20_000)
    assert wanted > 0

    place.renew()  # one more reading of the book before, which is stopped on the way
    work.stop_all()
    place.open_book(two)
    qtbot.waitUntil(lambda: not work.jobs(), timeout=20_000)

    assert place.book is two
    assert shows(place) == wanted


@pytest.mark.parametrize(
    ("make", "nothing"),
    [
        (Bench, lambda bench: bench.rack.model().rowCount() == 0),
        (Intake, lambda intake: not intake._state.total),
        (Materials, lambda materials: materials._whole.currentIndex() == 1),
    ],
)
def test_nothing_of_the_book_before_stays_where_the_new_one_cannot_be_read(
    two_books: Book2,
    work: Work,
    dressed: QApplication,
    qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
    make: Callable[[Work], Screen],
    nothing: Callable[[Screen], bool],
) -> None:
    one, two = two_books
    photograph(one, "A1", tmp_path)
    place = make(work)
    qtbot.addWidget(place)
    place.show()
    place.open_book(one)
    qtbot.waitUntil(lambda: not work.jobs() and not nothing(place), timeout=20_000)
    monkeypatch.setattr(BookReading, "ask", lambda reading, _question: reading.failed.emit(KeyError("tray")))

    place.open_book(two)

    assert nothing(place)


def test_an_alarm_on_the_look_list_outlasts_photos_that_come_in(
    two_books: Book2, work: Work, dressed: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    bench = Bench(work)
    qtbot.addWidget(bench)
    bench.show()
    with monkeypatch.context() as broken:
        broken.setattr(BookReading, "ask", lambda reading, _question: reading.failed.emit(KeyError("tray")))
        bench.open_book(two_books[0])
    assert bench.panel.note.isVisible()
    alarm = bench.panel.note.text()
    assert alarm == trouble_words(KeyError("tray"))
    assert bench.head.soft.text() == "", "nobody knows how many trays there are"

    work.start(lambda _token, _report: None, "Scoring photos")
    qtbot.waitUntil(lambda: not work.jobs())
    assert bench.panel.note.text() == alarm

    bench.renew()
    qtbot.waitUntil(lambda: not work.jobs())
    assert bench.panel.note.text() != alarm
    assert bench.rack.model().rowCount() > 0


def test_what_is_no_fault_of_the_book_is_not_read_out_of_the_program(tmp_path: Path) -> None:
    locked = BookLocked(tmp_path)
    assert trouble_words(locked) == str(locked)
    words = trouble_words(KeyError("no_such_column"))
    assert "no_such_column" not in words
    assert str(log_file()) in words


def test_a_list_that_a_mistake_of_ours_ended_says_so_in_words(
    two_books: Book2, work: Work, dressed: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    book, _ = two_books
    bench = Bench(work)
    qtbot.addWidget(bench)
    bench.open_book(book)

    def fail(*_: object) -> None:
        raise KeyError("no_such_column")

    monkeypatch.setattr(Book, "look_history", fail)
    with qtbot.waitSignal(bench.troubled, timeout=20_000) as told:
        bench.lists.show_history(book)
    assert "no_such_column" not in told.args[0]
