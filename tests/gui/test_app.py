"""App: what opens at a start, the first and any later one."""

import threading
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.demo import make_demo
from data.errors import DiskFull
from gui.app import Start, make_window, show_whole
from gui.home import Memory, demo_folder
from gui.intake.screen import Intake
from gui.plan.screen import Plan
from gui.window import Window
from tests.data.builders import a_note, bring
from tests.data.oldbooks import BOOKS, restored
from tests.gui.rackbook import a_rack_book, photograph

Starter = Callable[[], Window]


@pytest.fixture
def brought_in(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Names of the photos that were handed to Intake, which does not score them here."""
    names: list[str] = []

    def note(_intake: Intake, paths: Sequence[Path]) -> None:
        names.extend(path.name for path in paths)

    monkeypatch.setattr(Intake, "bring_in", note)
    return names


@pytest.fixture
def start(qtbot: QtBot, dressed: QApplication, memory: Memory, brought_in: list[str]) -> Iterator[Starter]:
    made: list[Window] = []

    def begin() -> Window:
        window = make_window(dressed, memory)
        qtbot.addWidget(window)
        made.append(window)
        window.show()
        start = Start(window)
        start.open(None)
        qtbot.waitUntil(
            lambda: window.book is not None and start.looked_after and not window.work.jobs(), timeout=20_000
        )
        return window

    yield begin
    for window in made:
        window.close()


def test_the_first_start_makes_the_demonstration_and_says_so(start: Starter, brought_in: list[str]) -> None:
    window = start()

    assert window.book is not None
    assert window.book.folder == demo_folder()
    assert window.demo_band.isVisible()
    bench = window.screens.bench
    assert bench.rack.model().rowCount() == 18


def test_the_demonstration_is_made_once_however_often_it_is_asked_for(
    qtbot: QtBot,
    dressed: QApplication,
    memory: Memory,
    brought_in: list[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    made: list[Path] = []

    def make(folder: Path) -> Book:
        made.append(folder)
        return make_demo(folder)

    monkeypatch.setattr("data.demo.make_demo", make)
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    start = Start(window)
    start.open(None)
    shown = [job.words for job in window.work.shown()]
    qtbot.waitUntil(lambda: bool(made), timeout=20_000)
    window.open_demo()
    qtbot.waitUntil(lambda: window.book is not None and not window.work.jobs(), timeout=20_000)

    assert shown == ["Making the demonstration"]
    assert len(made) == 1
    assert made[0] != demo_folder(), "half made it would be opened at the next start"
    assert window.book is not None
    assert window.book.setting("demonstration") == "yes"
    assert window.book.folder == demo_folder()
    assert not made[0].exists()
    window.close()


def test_a_book_opened_while_the_demonstration_is_made_stays_open(
    qtbot: QtBot, dressed: QApplication, memory: Memory, brought_in: list[str], tmp_path: Path
) -> None:
    a_rack_book(tmp_path / "mine").close()
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    start = Start(window)
    start.open(None)
    assert window.open_folder(tmp_path / "mine")
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)
    assert window.book is not None
    assert window.book.folder == tmp_path / "mine"

    window.open_demo()
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)
    assert window.book.folder == demo_folder()
    window.close()


def test_a_book_of_before_is_brought_up_to_date_behind_the_window(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path
) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    start = Start(window)
    start.open(folder)

    assert window.book is None
    assert [job.words for job in window.work.shown()] == ["Bringing the book up to date"]
    qtbot.waitUntil(lambda: window.book is not None and not window.work.jobs(), timeout=20_000)
    assert window.book is not None
    assert window.book.folder == folder
    assert len(window.book.tiles()) == 3
    window.close()


def test_a_book_of_before_gives_way_to_one_that_was_opened_meanwhile(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path
) -> None:
    a_rack_book(tmp_path / "mine").close()
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    assert window.open_folder(restored(BOOKS / "v5.sql", tmp_path / "old"))
    assert window.open_folder(tmp_path / "mine")
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)

    assert window.book is not None
    assert window.book.folder == tmp_path / "mine"
    window.close()


def test_of_two_books_of_before_the_one_asked_for_last_opens(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = (restored(BOOKS / "v5.sql", tmp_path / name) for name in ("first", "second"))
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    first_is_ready, ours = threading.Event(), Book.open

    def in_turn(folder: Path) -> Book:
        assert folder == first or first_is_ready.wait(10)
        return ours(folder)

    monkeypatch.setattr(Book, "open", in_turn)
    assert window.open_folder(first)
    assert window.open_folder(second)
    qtbot.waitUntil(lambda: len(window.work.jobs()) == 1, timeout=20_000)
    first_is_ready.set()
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)

    assert window.book is not None
    assert window.book.folder == tmp_path / "second"
    window.close()


def test_a_book_that_is_ready_waits_for_the_dialog_about_the_one_that_is_open(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path
) -> None:
    a_rack_book(tmp_path / "mine").close()
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    window.open_folder(tmp_path / "mine")
    mine = window.book
    assert mine is not None
    dialog = QDialog(window)
    dialog.open()
    assert window.open_folder(restored(BOOKS / "v5.sql", tmp_path / "old"))
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=20_000)
    assert window.book is mine
    mine.set_setting("noted in the dialog", "yes")  # raises where the book is closed

    dialog.reject()

    qtbot.waitUntil(lambda: window.book is not None and window.book.folder == tmp_path / "old")
    window.close()


def test_the_demonstration_opens_where_a_book_of_before_cannot_be_brought_up_to_date(
    qtbot: QtBot,
    dressed: QApplication,
    memory: Memory,
    brought_in: list[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    folder = restored(BOOKS / "v5.sql", tmp_path / "old")
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    start = Start(window)

    ours = Book._migrate

    def full(book: Book) -> None:
        if book.folder == folder:
            raise DiskFull(folder)
        ours(book)

    monkeypatch.setattr(Book, "_migrate", full)
    said: list[str] = []
    window.desk.trouble.connect(said.append)
    start.open(folder)
    qtbot.waitUntil(lambda: window.book is not None, timeout=20_000)

    assert said == [str(DiskFull(folder))]
    assert window.book is not None
    assert window.book.folder == demo_folder()
    window.close()


def test_its_photos_are_scored_newest_day_first(start: Starter, brought_in: list[str]) -> None:
    start()

    assert len(brought_in) == 144
    days = [int(name.rpartition("day")[2].split(".")[0]) for name in brought_in]
    assert days == sorted(days, reverse=True)


def test_scoring_that_was_cut_off_goes_on_at_the_next_start(
    start: Starter, brought_in: list[str], tmp_path: Path
) -> None:
    first = start()
    done = brought_in[0]
    assert first.book is not None
    bring(first.book, a_note(tmp_path, done, tag=10))
    first.close()
    brought_in.clear()

    start()

    assert len(brought_in) == 143
    assert done not in brought_in


def test_a_later_start_opens_the_book_that_was_open_last(
    start: Starter, memory: Memory, tmp_path: Path
) -> None:
    with a_rack_book(tmp_path / "mine") as book:
        photograph(book, "A1", tmp_path)
    memory.remember_book(tmp_path / "mine")

    window = start()

    assert window.book is not None
    assert window.book.folder == tmp_path / "mine"
    assert window.demo_band.isHidden()
    assert list((tmp_path / "mine" / "backups").glob("*.sqlite")), "no backup of the day"


def test_where_the_last_book_is_gone_the_demonstration_opens_and_the_loss_is_told(
    start: Starter, memory: Memory, tmp_path: Path
) -> None:
    memory.remember_book(tmp_path / "gone")

    window = start()

    assert window.book is not None
    assert window.book.folder == demo_folder()
    assert "There is no trial book in" in window.trouble.words.text()


def test_the_backup_of_the_day_waits_until_the_bench_has_been_read(
    qtbot: QtBot, dressed: QApplication, memory: Memory, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("gui.app.LOOKED_AFTER_MS", 60_000)
    a_rack_book(tmp_path / "mine").close()
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    start = Start(window)

    start.open(tmp_path / "mine")
    bench = window.screens.bench
    qtbot.waitUntil(lambda: bench.rack.model().rowCount() > 0 and not window.work.jobs(), timeout=10_000)

    assert not start.looked_after
    assert not list((tmp_path / "mine" / "backups").glob("*.sqlite"))
    window.close()


def test_a_window_that_would_not_fit_the_screen_is_as_large_as_the_screen(start: Starter) -> None:
    window = start()
    free = window.screen().availableGeometry().size()
    window.resize(free.width() + 200, free.height() + 100)
    window.setMinimumSize(free.width() - 50, free.height() + 50)  # a screen of 1024 x 600, say

    show_whole(window)

    assert window.isMaximized()
    assert window.minimumSize() == QSize(free.width() - 50, free.height())


def test_the_bench_comes_first_and_the_other_places_follow_by_themselves(
    start: Starter, qtbot: QtBot, memory: Memory, tmp_path: Path
) -> None:
    a_rack_book(tmp_path / "mine").close()
    memory.remember_book(tmp_path / "mine")

    window = start()

    assert set(window.screens.made) == {"bench"}
    qtbot.waitUntil(lambda: len(window.screens.made) == len(window.screens), timeout=20_000)
    assert list(window.screens.made) == list(window.screens), "in the order of the row on top"
    assert all(screen.book is window.book for screen in window.screens.values())
    assert window.place == "bench"


def test_a_trial_is_repeated_in_a_plan_that_nobody_has_opened_yet(
    start: Starter, memory: Memory, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[object] = []
    monkeypatch.setattr(Plan, "repeat_trial", lambda _plan, *wanted: asked.append(wanted))
    a_rack_book(tmp_path / "mine").close()
    memory.remember_book(tmp_path / "mine")
    window = start()
    verdict = window.screens.verdict

    verdict.next_wanted.emit("Spring", 12)

    assert asked == [("Spring", 12)]


def test_a_place_that_cannot_be_made_beforehand_is_told_of_once(
    qtbot: QtBot, dressed: QApplication, memory: Memory, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Ten times a second its mishap would fill the log."""
    window = make_window(dressed, memory)
    qtbot.addWidget(window)
    tried: list[int] = []

    def make_next() -> bool:
        tried.append(1)
        raise OSError(112, "host is down")

    monkeypatch.setattr(window.screens, "make_next", make_next)
    start = Start(window)
    window.show()
    with qtbot.captureExceptions() as caught:
        start._making.start()
        qtbot.waitUntil(lambda: bool(tried))
        qtbot.wait(3 * start._making.interval())

    assert (len(tried), len(caught)) == (1, 1)
    window.close()
