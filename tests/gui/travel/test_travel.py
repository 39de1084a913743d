"""Books that leave and come, from the window's menu: packed, exported, opened, brought in."""

import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDesktopServices, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QRadioButton, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from data.cancel import CancelToken
from data.export import export
from data.tables.journal import Step
from data.travel.packing import pack
from data.travel.samenames import Answer, SameName
from gui.controls.progress import count_words
from gui.home import Memory
from gui.oldnotes.assistant import OldNotesAssistant
from gui.report.dialog import ReportDialog
from gui.style.wardrobe import Wardrobe
from gui.travel.guestdialog import GuestDialog
from gui.travel.guestsource import GuestSource
from gui.travel.packways import PackWays
from gui.travel.places import ExportPlace, PackPlace, UnpackPlace
from gui.window import Window
from gui.work import Work
from tests.gui.rackbook import a_rack_book, noting_screens, photograph
from tests.gui.test_access import can_have_focus, name_of

Answering = Callable[[Callable[[QDialog], None]], None]
COIR = SameName(kind="medium", name="coir")


@pytest.fixture
def window(qtbot: QtBot, memory: Memory, dressed: QApplication, tmp_path: Path) -> Iterator[Window]:
    work = Work(scorers=1)
    wardrobe = Wardrobe(dressed, memory)
    wardrobe.wear()
    made = Window(work, memory, wardrobe, noting_screens(work))
    wardrobe.setParent(made)
    work.setParent(made)
    qtbot.addWidget(made)
    made.show()
    with a_rack_book(tmp_path / "rack") as book:
        photograph(book, "A1", tmp_path / "phone")
    made.open_folder(tmp_path / "rack")
    yield made
    made.close()


@pytest.fixture
def other(tmp_path: Path) -> Path:
    """Another grower's book: two trays of the same names, each with a photo."""
    with a_rack_book(tmp_path / "Kim", per_shelf=(0, 0, 2)) as book:
        photograph(book, book.trays()[0].code, tmp_path / "their phone")
    return tmp_path / "Kim"


@pytest.fixture
def opened(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Folders that were shown in the system's own window."""
    shown: list[str] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: shown.append(url.toLocalFile()))
    return shown


def book_of(window: Window) -> Book:
    assert window.book is not None
    return window.book


def drop(window: Window, *paths: Path) -> None:
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    event = QDropEvent(
        QPointF(9, 9), Qt.DropAction.CopyAction, dropped, Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )  # fmt: skip
    window.dropEvent(event)


def named(dialog: QDialog, kind: type[QDialog], where: Path, name: str) -> None:
    """Fill in a name and a folder, and press Enter."""
    assert isinstance(dialog, kind)
    dialog.where = where
    dialog.name.setText(name)
    QTest.keyClick(dialog, Qt.Key.Key_Return)


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


def _for_ever(window: Window, said: list[str]) -> Callable[..., list[Path]]:
    """Originals of a book during which Cancel is pressed, and what is said of it then."""

    def originals(folder: Path, _database: Path) -> list[Path]:
        for job in window.work.shown():
            job.cancel()
            said.append(count_words(job))
        return sorted((folder / "photos").rglob("*.jpg"))

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


# --- another book brought in


@pytest.fixture
def guest(qtbot: QtBot, window: Window) -> Callable[[Path], GuestDialog]:
    def show(source: Path) -> GuestDialog:
        dialog = GuestDialog(book_of(window), window.work, source, window)
        dialog.show()
        qtbot.waitUntil(lambda: dialog._job is None, timeout=10_000)
        return dialog

    return show


Guest = Callable[[Path], GuestDialog]


def brought_in(qtbot: QtBot, dialog: GuestDialog) -> None:
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=10_000)


def test_what_is_in_it_is_shown_and_every_name_is_asked_about(guest: Guest, other: Path) -> None:
    dialog = guest(other)
    assert dialog.names is not None

    assert "trays 2, photos 1" in dialog.said.text()
    assert dialog.table.item(0, 2).text() == "coir"
    assert all(group.checkedButton() is None for group in dialog.names.groups.values())
    assert not dialog.add.isEnabled()
    assert f"{len(dialog.names.groups)} names" in dialog.count.text()


def test_names_that_mean_another_come_with_a_mark(
    guest: Guest, other: Path, window: Window, qtbot: QtBot
) -> None:
    dialog = guest(other)
    assert dialog.names is not None
    dialog.names.answer(COIR, Answer.APART)
    assert not dialog.add.isEnabled()
    dialog.names.all_same.click()
    assert dialog.add.isEnabled()

    brought_in(qtbot, dialog)

    assert {tray.medium for tray in book_of(window).trays()} == {"coir", "coir (Kim)"}
    assert dialog.told.startswith("Added: trays 2, photos 1")
    book_of(window).undo()
    assert len(book_of(window).trays()) == 3


def bring_all(guest: Guest, other: Path, qtbot: QtBot) -> None:
    dialog = guest(other)
    assert dialog.names is not None
    dialog.names.all_same.click()
    brought_in(qtbot, dialog)


def test_a_book_that_came_in_is_taken_back_by_undo_in_the_background(
    guest: Guest, other: Path, window: Window, qtbot: QtBot
) -> None:
    bring_all(guest, other, qtbot)
    window.following.book_changed()
    qtbot.waitUntil(window.actions_by_name["undo"].isEnabled)

    window.actions_by_name["undo"].trigger()
    assert not window.actions_by_name["undo"].isEnabled()
    qtbot.waitUntil(lambda: window.foot.told.text() == "Taken back: book Kim brought in", timeout=10_000)

    assert len(book_of(window).trays()) == 3


def test_taking_a_book_back_shows_how_far_it_is_and_stopped_leaves_all_as_it_was(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    bring_all(guest, other, qtbot)
    window.following.book_changed()
    undo = window.actions_by_name["undo"]
    qtbot.waitUntil(undo.isEnabled)
    real, far = Book.undo, threading.Event()

    def slow(book: Book, step: Step | None = None) -> str | None:
        def slowed(done: int, total: int) -> None:
            assert step is not None
            step(done, total)
            if done:
                far.set()
                while True:
                    step(done, total)
                    time.sleep(0.01)

        return real(book, slowed)

    monkeypatch.setattr(Book, "undo", slow)
    undo.trigger()
    qtbot.waitUntil(far.is_set, timeout=10_000)
    (job,) = window.work.shown()
    qtbot.waitUntil(lambda: 0 < job.done < job.total)
    window.following.book_changed()  # something else is told meanwhile
    assert not undo.isEnabled()
    qtbot.waitUntil(lambda: len(window.progress.lines()) == 1)
    window.progress.lines()[0].cancel.click()
    qtbot.waitUntil(undo.isEnabled, timeout=10_000)

    assert window.foot.told.text() == "Nothing was taken back; the book is as it was."
    assert len(book_of(window).trays()) == 5
    assert "book Kim brought in" in undo.toolTip()


def test_a_book_on_which_photos_rest_is_not_taken_back_and_that_is_told(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    bring_all(guest, other, qtbot)
    theirs = book_of(window).trays()[-1]
    photograph(book_of(window), theirs.code, tmp_path / "later")

    window.following.undo()
    qtbot.waitUntil(window.trouble.isVisible, timeout=10_000)

    assert "photos or notes kept later rest on it" in window.trouble.words.text()
    assert len(book_of(window).trays()) == 5


def test_without_a_mark_nothing_that_is_another_can_come(guest: Guest, other: Path) -> None:
    dialog = guest(other)
    assert dialog.names is not None
    dialog.names.answer(COIR, Answer.APART)
    dialog.names.all_same.click()

    dialog.names.label.clear()

    assert not dialog.add.isEnabled()


def test_the_same_book_again_brings_nothing(guest: Guest, other: Path, qtbot: QtBot) -> None:
    first = guest(other)
    assert first.names is not None
    first.names.all_same.click()
    brought_in(qtbot, first)

    again = guest(other)
    assert again.names is not None
    again.names.all_same.click()
    assert again.count.text() == "Trays that will be added: 0. Known already: 2."
    brought_in(qtbot, again)

    assert again.told == "All of it was here already; nothing was added."


@pytest.mark.parametrize("form", ["pack", "export"])
def test_a_pack_and_an_export_come_in_the_same_way_and_leave_nothing_behind(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, tmp_path: Path, form: str
) -> None:
    with Book.open(other) as theirs:
        if form == "pack":
            source = pack(theirs, tmp_path / "theirs", CancelToken())
        else:
            source = export(theirs, tmp_path / "theirs", CancelToken())
    dialog = guest(source)
    assert dialog.names is not None
    dialog.names.all_same.click()
    brought_in(qtbot, dialog)

    assert len(book_of(window).trays()) == 5
    qtbot.waitUntil(lambda: not list((book_of(window).folder / "cache").glob("guest-*")))


def test_leaving_before_bringing_in_adds_nothing_and_leaves_nothing(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    with Book.open(other) as theirs:
        source = pack(theirs, tmp_path / "theirs", CancelToken())
    dialog = guest(source)

    QTest.keyClick(dialog, Qt.Key.Key_Escape)

    assert not dialog.isVisible()
    assert len(book_of(window).trays()) == 3
    qtbot.waitUntil(lambda: not list((book_of(window).folder / "cache").glob("guest-*")))


def test_esc_while_trays_come_in_stops_and_the_dialog_stays(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    dialog = guest(other)
    assert dialog.names is not None
    dialog.names.all_same.click()
    going = []

    def slow(*_: object) -> tuple[str, ...]:
        cancel = _[3]
        assert isinstance(cancel, CancelToken)
        going.append(1)
        while True:
            cancel.check()

    monkeypatch.setattr("data.travel.merging._copy_originals", slow)
    dialog.bring_in()
    qtbot.waitUntil(lambda: bool(going))
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: dialog._job is None)

    assert dialog.isVisible()
    assert dialog.said.text() == "Stopped; nothing was added."
    assert len(book_of(window).trays()) == 3
    assert dialog.add.isEnabled()


def test_what_is_no_book_is_told_in_place(guest: Guest, tmp_path: Path) -> None:
    dialog = guest(tmp_path)

    assert "there is no trial book in" in dialog.said.text().lower()
    assert not dialog.add.isEnabled()


def test_the_menu_asks_in_which_form_the_book_comes(
    window: Window, other: Path, answer: Answering, monkeypatch: pytest.MonkeyPatch
) -> None:
    shown: list[Path] = []
    monkeypatch.setattr("gui.travel.guestsource.ask_folder", lambda *_: other)
    monkeypatch.setattr(type(window.travel), "bring_in_guest", lambda _self, path: shown.append(path))

    def choose(dialog: QDialog) -> None:
        assert isinstance(dialog, GuestSource)
        dialog.folder.click()

    answer(choose)
    window.actions_by_name["bring_in_book"].trigger()

    assert shown == [other]


# --- hands


@pytest.fixture
def dialog(
    request: pytest.FixtureRequest, window: Window, qtbot: QtBot, tmp_path: Path, other: Path
) -> QDialog:
    (tmp_path / "old.csv").write_text("crop,medium,sown\npea,coir,03/04/2025\n,coir,03/04/2025\n")
    made: dict[str, Callable[[], QDialog]] = {
        "pack": lambda: PackPlace("mine", tmp_path, window),
        "export": lambda: ExportPlace("mine", tmp_path, window),
        "unpack": lambda: UnpackPlace(tmp_path / "a.evenstand", tmp_path, window),
        "source": lambda: GuestSource(window),
        "ways": lambda: PackWays("a.evenstand", window),
        "guest": lambda: GuestDialog(book_of(window), window.work, other, window),
        "notes": lambda: OldNotesAssistant(book_of(window), window.work, tmp_path / "old.csv", window),
        "report": lambda: ReportDialog(book_of(window), window.work, window),
    }
    shown = made[request.param]()
    with qtbot.waitActive(shown):
        shown.show()
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
    return shown


EVERY = ("pack", "export", "unpack", "source", "ways", "guest", "notes", "report")


@pytest.mark.parametrize("dialog", EVERY, indirect=True)
def test_everything_in_each_dialog_has_a_name_and_is_reached_by_tab(dialog: QDialog, qtbot: QtBot) -> None:
    wanted = {widget for widget in dialog.findChildren(QWidget) if can_have_focus(widget)}
    assert [type(widget).__name__ for widget in wanted if not name_of(widget)] == []

    reached = set()
    for _ in range(3 * len(wanted) + 3):
        widget = QApplication.focusWidget()
        assert widget is not None
        reached.add(widget)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)

    radios = {widget for widget in wanted - reached if isinstance(widget, QRadioButton)}
    assert wanted - reached - radios == set()
    assert {radio.group() for radio in radios} <= {
        radio.group() for radio in reached if isinstance(radio, QRadioButton)
    }
    dialog.reject()


@pytest.mark.parametrize("dialog", EVERY, indirect=True)
def test_each_dialog_fits_the_least_window_in_large_letters(dialog: QDialog, window: Window) -> None:
    window.top.view_menu.text_chosen.emit(150)
    QApplication.processEvents()

    least = dialog.minimumSizeHint()

    assert (least.width() <= 1024, least.height() <= 700) == (True, True)
    dialog.reject()
    window.top.view_menu.text_chosen.emit(100)


# --- dropped


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
    window = Window(work, memory, Wardrobe(dressed, memory), noting_screens(work))
    qtbot.addWidget(window)

    enabled = {name for name, action in window.actions_by_name.items() if action.isEnabled()}

    assert "open_pack" in enabled
    assert not enabled & {"pack_book", "export_book", "bring_in_book", "bring_in_notes"}
    window.close()
