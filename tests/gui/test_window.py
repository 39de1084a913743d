"""Window: places, books, undo, and what happens on closing; with screens that only note what is asked."""

import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QMenu
from pytestqt.qtbot import QtBot

from data.book import Book
from data.cancel import CancelToken, Progress
from data.entry.units import UnitSystem
from gui.bench.screen import Bench
from gui.controls.namefield import NameField
from gui.frame.actions import ACTIONS, PLACES
from gui.frame.keysheet import KeySheet
from gui.frame.newbook import NewBook
from gui.home import Memory
from gui.mishap import catch_mishaps
from gui.style.tokens import DARK
from gui.style.wardrobe import Wardrobe
from gui.trays.newtray import NewTrayDialog
from gui.traysheet.screen import TraySheet
from gui.traysheet.views import View
from gui.window import Window
from gui.work import Work
from tests.data.contents import is_whole
from tests.gui.rackbook import NotingPlaces, a_rack_book, photograph

Maker = Callable[[], Window]


@pytest.fixture
def make_window(qtbot: QtBot, memory: Memory, dressed: QApplication) -> Iterator[Maker]:
    made: list[Window] = []

    def make() -> Window:
        work = Work(scorers=1)
        wardrobe = Wardrobe(dressed, memory)
        wardrobe.wear()
        window = Window(work, memory, wardrobe, NotingPlaces(work, Bench))
        wardrobe.setParent(window)
        work.setParent(window)
        qtbot.addWidget(window)
        with qtbot.waitActive(window):
            window.show()
        made.append(window)
        return window

    yield make
    for window in made:
        window.close()
    memory.scheme, memory.text_percent = "system", 100
    Wardrobe(dressed, memory).wear()


@pytest.fixture
def window(make_window: Maker) -> Window:
    return make_window()


@pytest.fixture
def with_book(window: Window, tmp_path: Path) -> Window:
    a_rack_book(tmp_path / "rack").close()
    assert window.open_folder(tmp_path / "rack")
    return window


def book_of(window: Window) -> Book:
    assert window.book is not None
    return window.book


# --- places


def test_no_key_is_given_twice_and_none_is_missing() -> None:
    keys = [action.key for action in ACTIONS] + [place.key for place in PLACES]
    assert all(keys)
    assert len(set(keys)) == len(keys)


def test_places_keep_their_numbers() -> None:
    assert [(place.name, place.key) for place in PLACES] == [
        ("bench", "Ctrl+1"),
        ("intake", "Ctrl+2"),
        ("traysheet", "Ctrl+3"),
        ("plan", "Ctrl+4"),
        ("verdict", "Ctrl+5"),
        ("materials", "Ctrl+6"),
    ]


@pytest.mark.parametrize(
    ("key", "place"), [(Qt.Key.Key_2, "intake"), (Qt.Key.Key_3, "traysheet"), (Qt.Key.Key_1, "bench")]
)
def test_keys_lead_to_the_places(window: Window, qtbot: QtBot, key: Qt.Key, place: str) -> None:
    qtbot.keyClick(window, key, Qt.KeyboardModifier.ControlModifier)
    assert window.place == place
    assert window.top.places[place].isChecked()


def test_buttons_lead_to_the_places_and_back_leads_back(window: Window, qtbot: QtBot) -> None:
    qtbot.mouseClick(window.top.places["intake"], Qt.MouseButton.LeftButton)
    qtbot.mouseClick(window.top.places["traysheet"], Qt.MouseButton.LeftButton)

    qtbot.keyClick(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)

    assert window.place == "intake"


def test_a_tray_wanted_on_the_bench_opens_its_sheet(with_book: Window) -> None:
    with_book.screens["bench"].tray_wanted.emit(2)

    assert with_book.place == "traysheet"
    assert ("open", 2) in with_book.screens["traysheet"].asked


def test_a_photo_wanted_on_the_bench_opens_the_sheet_of_its_tray_there(with_book: Window) -> None:
    with_book.screens["bench"].photo_wanted.emit(2, 7)

    assert with_book.place == "traysheet"
    assert ("open", (2, 7)) in with_book.screens["traysheet"].asked


# --- books


def test_without_a_book_the_bench_says_so(window: Window) -> None:
    bench = window.screens.bench
    assert bench._empty.title.text() == "No book is open"
    assert window.windowTitle() == "Evenstand"


def test_an_opened_book_is_named_and_remembered(with_book: Window, memory: Memory, tmp_path: Path) -> None:
    assert with_book.windowTitle() == "rack – Evenstand"
    assert with_book.foot.about_book.text() == "rack · 8 March 2026"
    assert memory.last_book == tmp_path / "rack"


def test_a_folder_without_a_book_is_told_with_what_to_do(
    window: Window, tmp_path: Path, memory: Memory
) -> None:
    memory.remember_book(tmp_path)

    assert not window.open_folder(tmp_path)

    assert "choose the folder that holds book.sqlite" in window.trouble.words.text()
    assert window.trouble.isVisible()
    assert memory.last_book is None


def test_trouble_stays_until_it_has_been_read(window: Window, qtbot: QtBot) -> None:
    window.sayings.tell_trouble("the disk is full")
    assert window.trouble.words.text() == "The disk is full"

    qtbot.mouseClick(window.trouble.button, Qt.MouseButton.LeftButton)

    assert window.trouble.isHidden()


def test_the_demonstration_says_that_it_is_one(window: Window, tmp_path: Path) -> None:
    with a_rack_book(tmp_path / "demo") as book:
        book.set_setting("demonstration", "yes")
    assert window.demo_band.isHidden()

    window.open_folder(tmp_path / "demo")

    assert window.demo_band.isVisible()
    assert "invented trial of 3 trays" in window.demo_band.words.text()
    assert window.demo_band.button.text() == "Start my own book"


def test_opening_another_book_stops_the_work_on_the_first(
    with_book: Window, tmp_path: Path, qtbot: QtBot
) -> None:
    first = book_of(with_book)

    def for_ever(cancel: CancelToken, report: Progress) -> None:
        while True:
            cancel.check()
            report(1, 2)

    job = with_book.work.start(for_ever, "Scoring photos")
    qtbot.waitUntil(lambda: job.total == 2)
    a_rack_book(tmp_path / "second", per_shelf=(4,)).close()

    with qtbot.waitSignal(job.cancelled, timeout=2000):
        with_book.open_folder(tmp_path / "second")

    assert book_of(with_book) is not first
    assert with_book.screens["intake"].book is with_book.book


def test_books_opened_of_late_are_in_the_menu(with_book: Window, tmp_path: Path) -> None:
    a_rack_book(tmp_path / "second").close()
    with_book.open_folder(tmp_path / "second")

    action = next(a for a in with_book.top.book_menu.recent.actions() if a.text() == "rack")
    action.trigger()

    assert book_of(with_book).folder == tmp_path / "rack"


def test_starting_an_own_book_makes_a_folder_and_opens_it(
    window: Window, qtbot: QtBot, home: Path, answer: Callable[..., None]
) -> None:
    def name_it(dialog: QDialog) -> None:
        assert isinstance(dialog, NewBook)
        dialog.name.setText("Window sill")
        qtbot.mouseClick(dialog.start, Qt.MouseButton.LeftButton)

    answer(name_it)
    window.actions_by_name["new_book"].trigger()

    assert book_of(window).folder == home / "Window sill"
    assert (home / "Window sill" / "book.sqlite").is_file()


def test_a_place_that_is_taken_is_told_in_the_dialog(
    window: Window, qtbot: QtBot, home: Path, answer: Callable[..., None]
) -> None:
    Book.create(home / "My trays").close()
    said: list[str] = []

    def try_it(dialog: QDialog) -> None:
        assert isinstance(dialog, NewBook)
        qtbot.mouseClick(dialog.start, Qt.MouseButton.LeftButton)
        said.append(dialog.trouble.text())
        dialog.reject()

    answer(try_it)
    window.books.new_book()

    assert "already, left as it is" in said[0]
    assert window.book is None


@pytest.mark.usefixtures("quick_hand")
def test_trays_are_added_one_after_the_other_and_can_be_taken_back(
    with_book: Window, qtbot: QtBot, answer: Callable[..., None]
) -> None:
    def add_two(dialog: QDialog) -> None:
        assert isinstance(dialog, NewTrayDialog)
        dialog.code.setText("C1")
        dialog.crop.setCurrentText("pea")
        dialog.medium.setCurrentText("wood fibre")
        dialog.shelf.setText("C")
        dialog.tag.setText("200")
        for _ in range(2):
            qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)
        dialog.accept()

    answer(add_two)
    with_book.dialogs.add_trays()
    trays = {tray.code: tray for tray in book_of(with_book).trays()}
    assert (trays["C1"].crop, trays["C1"].tag_number, trays["C2"].tag_number) == ("pea", 200, 201)
    qtbot.waitUntil(lambda: "C2" in with_book.actions_by_name["undo"].toolTip())

    with qtbot.waitActive(with_book):
        with_book.activateWindow()
    qtbot.keyClick(with_book, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)

    assert "C2" not in {tray.code for tray in book_of(with_book).trays()}
    assert with_book.foot.told.text() == "Taken back: tray C2 added"


def test_new_trays_are_offered_like_the_one_that_is_chosen_on_the_rack(
    with_book: Window, qtbot: QtBot, answer: Callable[..., None]
) -> None:
    bench = with_book.screens.bench
    qtbot.waitUntil(lambda: bench.rack.model().rowCount() == 3 and not bench.answers.is_running)
    bench.rack.setCurrentIndex(bench.rack.model().index(2, 0))
    offered: list[tuple[str, str]] = []

    def look(dialog: QDialog) -> None:
        assert isinstance(dialog, NewTrayDialog)
        offered.append((dialog.like_whom.currentText(), dialog.code.text()))

    answer(look)
    with_book.dialogs.add_trays()

    assert offered == [("B1: broccoli on coir", "B2")]


def test_a_tray_without_a_crop_is_not_added_and_says_why(
    with_book: Window, qtbot: QtBot, answer: Callable[..., None]
) -> None:
    said: list[str] = []

    def add_one(dialog: QDialog) -> None:
        assert isinstance(dialog, NewTrayDialog)
        qtbot.mouseClick(dialog.add, Qt.MouseButton.LeftButton)
        said.append(dialog.said.text())
        dialog.reject()

    answer(add_one)
    with_book.dialogs.add_trays()

    assert said == ["Say which crop grows in it."]
    assert len(book_of(with_book).trays()) == 3


# --- units


def test_the_units_chosen_in_the_view_menu_hold_on_the_bench_at_once(with_book: Window) -> None:
    with_book.top.view_menu.units_chosen.emit("US")

    bench = with_book.screens.bench
    assert bench.quick.line.placeholderText() == "Tray and number in oz"
    assert with_book.memory.units == "US"


# --- undo


def test_ctrl_z_takes_back_what_was_noted_though_the_focus_is_still_in_the_line(
    with_book: Window, qtbot: QtBot
) -> None:
    bench = with_book.screens.bench
    qtbot.waitUntil(lambda: bench.rack.model().rowCount() == 3 and not bench.answers.is_running)
    line = bench.quick.line
    line.setFocus()
    qtbot.keyClicks(line, "A1 812")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert book_of(with_book).undo_text() == "weight of A1"

    qtbot.keyClick(line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: book_of(with_book).undo_text() is None)
    assert line.text() == ""
    qtbot.waitUntil(lambda: not bench.quick.said.text())  # no longer: Noted: A1 812 g

    qtbot.keyClicks(line, "A2 8")
    qtbot.keyClick(line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert line.text() != "A2 8"  # what is being typed is the field's own to take back
    assert book_of(with_book).undo_text() is None


def test_undo_says_what_it_would_take_back_and_all_screens_follow(
    with_book: Window, tmp_path: Path, qtbot: QtBot
) -> None:
    patch = {"x_mm": 100.0, "y_mm": 50.0, "area_cm2": 6.0, "confidence": 0.9}
    photo = photograph(book_of(with_book), "A1", tmp_path, suspects=[patch])
    undo, redo = with_book.actions_by_name["undo"], with_book.actions_by_name["redo"]
    assert not undo.isEnabled()
    score = book_of(with_book).score(photo)
    assert score is not None
    book_of(with_book).say(score.suspects[0].id, "mold")
    with_book.screens["bench"].book_changed.emit()
    qtbot.waitUntil(undo.isEnabled)
    assert undo.toolTip() == "Undo: mold on A1 (Ctrl+Z)"

    qtbot.mouseClick(with_book.top.undo, Qt.MouseButton.LeftButton)

    assert with_book.foot.told.text() == "Taken back: mold on A1"
    score = book_of(with_book).score(photo)
    assert score is not None
    assert score.suspects[0].said is None
    assert (undo.isEnabled(), redo.isEnabled()) == (False, True)
    qtbot.keyClick(
        with_book, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    )
    assert with_book.foot.told.text() == "Done again: mold on A1"


@pytest.mark.parametrize("name", ["code", "medium", "sown"])
def test_ctrl_z_takes_back_conditions_that_were_kept_from_within_a_field(
    with_book: Window, qtbot: QtBot, name: str
) -> None:
    """As the hint of Keep says; the fields of a name, of a choice that can be typed, of a time."""
    control = Qt.KeyboardModifier.ControlModifier
    tray = next(tray for tray in book_of(with_book).trays() if tray.code == "A1")
    sheet = TraySheet(with_book.work, with_book)
    sheet.book_changed.connect(with_book.following.book_changed)
    sheet.resize(900, 600)
    sheet.open_book(book_of(with_book))
    sheet.open_tray(tray.id)
    sheet.show()
    sheet.show_view(View.CONDITIONS)
    form = sheet.views.conditions.form
    field = getattr(form, name)
    field.setFocus()
    if name == "sown":
        qtbot.keyClick(field, Qt.Key.Key_Up)
    else:
        qtbot.keyClick(field, Qt.Key.Key_A, control)
        qtbot.keyClicks(field, "Other")
    qtbot.keyClick(field, Qt.Key.Key_Return, control)
    assert book_of(with_book).undo_text() == "conditions of A1"

    qtbot.keyClick(field, Qt.Key.Key_Z, control)
    qtbot.waitUntil(lambda: book_of(with_book).undo_text() is None)
    assert book_of(with_book).tray(tray.id) == tray


def test_ctrl_z_takes_back_a_name_that_was_kept_and_does_not_type_it_again(
    with_book: Window, qtbot: QtBot
) -> None:
    book = book_of(with_book)
    field = NameField("Another medium", with_book)
    field.named.connect(lambda name: book.set_medium(name))
    field.named.connect(with_book.following.book_changed)
    field.show()
    field.line.setFocus()
    qtbot.keyClicks(field.line, "felt")
    qtbot.keyClick(field.line, Qt.Key.Key_Return)
    assert book.undo_text() == "felt described"

    qtbot.keyClick(field.line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert (book.undo_text(), field.line.text()) == (None, "")
    assert with_book.foot.told.text() == "Taken back: felt described"


def test_a_screen_behind_follows_when_it_comes_to_the_front(with_book: Window, qtbot: QtBot) -> None:
    sheet = with_book.screens.traysheet
    sheet.asked.clear()

    with_book.screens["bench"].book_changed.emit()
    assert sheet.asked == []
    with_book.go_to("traysheet")

    assert sheet.asked == [("renew", None)]


def test_a_place_is_made_when_it_is_first_wanted_and_then_has_what_the_others_have(
    with_book: Window, memory: Memory
) -> None:
    assert set(with_book.screens.made) == {"bench"}
    with_book.choices._choose_units(UnitSystem.US)

    with_book.open_tray(3)

    assert set(with_book.screens.made) == {"bench", "traysheet"}
    sheet = with_book.screens.traysheet
    assert sheet.book is with_book.book
    assert sheet.units == memory.units == UnitSystem.US
    assert sheet.asked == [("renew", None), ("open", 3)], "read once, and only then asked for a tray"
    sheet.place_wanted.emit("intake")
    assert with_book.place == "intake"
    memory.units = UnitSystem.METRIC


def test_a_place_made_after_a_change_does_not_read_the_book_twice(with_book: Window) -> None:
    with_book.screens["bench"].book_changed.emit()

    with_book.go_to("intake")

    intake = with_book.screens.intake
    assert intake.asked == [("renew", None)]


def test_a_window_left_open_over_night_shows_the_new_day(with_book: Window, qtbot: QtBot) -> None:
    bench = with_book.screens.bench
    qtbot.waitUntil(lambda: bool(bench._reading.tiles) and not with_book.work.jobs())
    assert "8 March 2026" in with_book.foot.about_book.text()
    book_of(with_book).set_setting("today", "2026-03-09")  # as the calendar of an own book goes on

    with_book.following._look_for_news()

    assert "9 March 2026" in with_book.foot.about_book.text()
    qtbot.waitUntil(lambda: {tile.day for tile in bench._reading.tiles} == {8})


# --- photos


def test_photos_dropped_anywhere_go_to_intake(with_book: Window, tmp_path: Path) -> None:
    photo = tmp_path / "a photo.jpg"
    photo.write_bytes(b"x")
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile(str(photo)), QUrl("https://example.org/a.jpg")])
    event = QDropEvent(
        QPointF(9, 9),
        Qt.DropAction.CopyAction,
        dropped,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )

    with_book.dropEvent(event)

    assert with_book.place == "intake"
    assert ("bring in", [photo]) in with_book.screens["intake"].asked


# --- looks


def test_dark_and_larger_text_are_worn_at_once_and_kept(window: Window, memory: Memory) -> None:
    before = window.fontMetrics().height()

    window.top.view_menu.scheme_chosen.emit("dark")
    window.actions_by_name["larger_text"].trigger()

    assert window.palette().window().color().name() == DARK.ground.lower()
    assert window.fontMetrics().height() > before
    assert (memory.scheme, memory.text_percent) == ("dark", 125)


@pytest.mark.parametrize("percent", [100, 150])
def test_nothing_in_the_top_row_is_cut_off_in_the_least_window(
    window: Window, percent: int, qtbot: QtBot
) -> None:
    window.top.view_menu.text_chosen.emit(percent)
    window.resize(window.minimumSize())
    qtbot.waitUntil(lambda: window.width() == 1024)
    for button in (*window.top.places.values(), window.top.undo, window.top.redo, window.top.help):
        assert button.width() >= button.sizeHint().width(), button.text()
    assert window.top.help.geometry().right() <= window.top.width()


def test_the_menu_of_the_book_fits_a_small_screen_in_large_letters(window: Window, tmp_path: Path) -> None:
    window.top.book_menu.show_recent([tmp_path / f"Book {n}" for n in range(6)])
    window.top.view_menu.text_chosen.emit(150)
    window.top.book_menu.ensurePolished()

    assert window.top.book_menu.sizeHint().height() <= 768 - 40  # without the bar of the system
    listed = {action for action in window.top.book_menu.actions() if not action.isSeparator()}
    for menu in (action.menu() for action in list(listed)):
        listed |= set(menu.actions()) if isinstance(menu, QMenu) else set()
    missing = {name for name, action in window.actions_by_name.items() if action not in listed}
    assert missing == {"undo", "redo", "go_back", "larger_text", "smaller_text", "show_help", "show_keys"}


def test_the_sheet_of_keys_names_every_key(window: Window, qtbot: QtBot) -> None:
    sheet = KeySheet(window.screens.values(), window)
    qtbot.addWidget(sheet)
    words = {label.text() for label in sheet.findChildren(QLabel)}
    assert {"Ctrl+1", "Ctrl+Z", "F1", "Ctrl+F"} <= words
    assert {action.words.removesuffix("...") for action in ACTIONS} <= words


# --- mishaps and closing


def test_a_mistake_of_ours_is_told_and_the_window_goes_on(
    window: Window, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    catch_mishaps(window.sayings.tell_trouble, tmp_path / "evenstand.log")

    sys.excepthook(ValueError, ValueError("wrong shape"), None)

    assert "Something in the program went wrong" in window.trouble.words.text()
    assert "wrong shape" not in window.trouble.words.text()


def test_closing_waits_for_the_work_and_leaves_the_book_whole(
    make_window: Maker, tmp_path: Path, qtbot: QtBot
) -> None:
    a_rack_book(tmp_path / "rack").close()
    window = make_window()
    window.open_folder(tmp_path / "rack")
    ended: list[str] = []

    def for_ever(cancel: CancelToken, report: Progress) -> None:
        try:
            while True:
                cancel.check()
                report(1, 2)
        finally:
            ended.append("ended")

    job = window.work.start(for_ever, "Scoring photos")
    qtbot.waitUntil(lambda: job.total == 2)

    window.close()

    assert ended == ["ended"]
    with Book.open(tmp_path / "rack") as again:
        assert is_whole(again)


def test_closing_says_first_what_would_be_lost_and_is_meant_the_second_time(
    with_book: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(with_book.screens["traysheet"], "unkept", lambda: "Strokes are not kept.")

    with_book.close()

    assert with_book.isVisible()
    assert with_book.place == "traysheet"
    assert with_book.trouble.words.text() == "Strokes are not kept. Close the window again to give it up."

    with_book.trouble.button.click()  # read, and painted on
    with_book.close()
    assert with_book.isVisible()

    with_book.close()
    assert not with_book.isVisible()


def test_another_book_is_opened_over_what_is_not_kept_only_the_second_time(
    with_book: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    Book.create(tmp_path / "other").close()
    opened = with_book.book
    monkeypatch.setattr(with_book.screens["traysheet"], "unkept", lambda: "Strokes are not kept.")

    with_book.close()
    assert not with_book.open_folder(tmp_path / "other")
    assert with_book.book is opened
    said = "Strokes are not kept. Open another book once more to give it up."
    assert (with_book.trouble.words.text(), with_book.place) == (said, "traysheet")

    assert with_book.open_folder(tmp_path / "other")
    assert with_book.trouble.isHidden()  # what was given up stood in the other book


def test_what_is_painted_after_the_first_was_kept_is_not_lost_unsaid(
    with_book: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    sheet, lost = with_book.screens["traysheet"], "Strokes are not kept."
    monkeypatch.setattr(sheet, "unkept", lambda: lost)
    with_book.close()
    sheet.book_changed.emit()  # one photo of two was kept
    assert not with_book.trouble.isHidden()

    lost = ""
    sheet.book_changed.emit()
    assert with_book.trouble.isHidden()

    lost = "Strokes are not kept."
    with_book.close()
    assert with_book.isVisible()
    assert with_book.trouble.words.text() == "Strokes are not kept. Close the window again to give it up."
    lost = ""  # the window of the test closes at its end


def test_what_was_taken_back_is_no_longer_told_as_added_and_what_was_packed_is(
    with_book: Window, tmp_path: Path
) -> None:
    with_book.travel.made.emit("Added: trays 8. Undo takes it back.", None)
    with_book.following.turned.emit("Taken back: book pack brought in")
    assert with_book.done.isHidden()

    with_book.travel.made.emit("Packed.", tmp_path)
    with_book.following.turned.emit("Taken back: weight of A1")
    assert not with_book.done.isHidden()


def test_the_window_comes_back_as_it_was(make_window: Maker) -> None:
    first = make_window()
    first.resize(1024, 733)  # the screen of the tests is small, and a window is fitted into its width
    first.close()

    assert make_window().height() == 733


def test_photos_that_come_in_from_outside_are_shown(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    with a_rack_book(tmp_path / "rack"):
        pass
    window.open_folder(tmp_path / "rack")
    bench = window.screens.bench
    qtbot.waitUntil(lambda: "no photo yet" in bench.head.soft.text())

    with Book.open(tmp_path / "rack") as elsewhere:
        photograph(elsewhere, "A1", tmp_path / "photos")

    qtbot.waitUntil(lambda: "1 of 3 photographed today" in bench.head.soft.text(), timeout=10_000)
