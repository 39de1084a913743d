"""Another grower's book is brought in, and taken back."""

import threading
import time
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.cancel import CancelToken, Progress
from data.export import export
from data.readings import NewReading, ReadingKind
from data.travel.guestlook import GuestLook, GuestTray, look_at_guest
from data.travel.packing import pack
from data.travel.samenames import Answer
from gui.travel import guestopening
from gui.travel.guestsource import GuestSource
from gui.travel.guesttable import GuestTable
from gui.window import Window
from tests.gui.rackbook import photograph
from tests.gui.travel.doing import COIR, Answering, Guest, book_of, brought_in


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


def test_of_a_book_on_its_way_back_nothing_is_told_in_another_book(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    bring_all(guest, other, qtbot)
    window.following.book_changed()
    undo, begun = window.actions_by_name["undo"], threading.Event()
    qtbot.waitUntil(undo.isEnabled)

    def slow(_book: Book, step: Progress) -> str | None:
        begun.set()
        while True:
            step(1, 2)
            time.sleep(0.01)

    monkeypatch.setattr(Book, "undo", slow)
    undo.trigger()
    qtbot.waitUntil(begun.is_set, timeout=10_000)
    Book.create(tmp_path / "third").close()
    said: list[str] = []
    window.following.turned.connect(said.append)

    window.open_folder(tmp_path / "third")
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)

    assert book_of(window).folder == tmp_path / "third"
    assert said == []


def test_taking_a_book_back_shows_how_far_it_is_and_stopped_leaves_all_as_it_was(
    guest: Guest, other: Path, window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    bring_all(guest, other, qtbot)
    window.following.book_changed()
    undo = window.actions_by_name["undo"]
    qtbot.waitUntil(undo.isEnabled)
    real, far = Book.undo, threading.Event()

    def slow(book: Book, step: Progress | None = None) -> str | None:
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


def test_what_is_noted_while_taking_a_book_back_waits_for_its_turn_is_not_taken_back(
    guest: Guest, other: Path, window: Window, qtbot: QtBot
) -> None:
    bring_all(guest, other, qtbot)
    window.following.book_changed()
    undo = window.actions_by_name["undo"]
    qtbot.waitUntil(undo.isEnabled)
    reading = NewReading(
        kind=ReadingKind.AIR_TEMPERATURE, value=20.0, taken_at=datetime(2026, 3, 8, 9), shelf="A"
    )

    undo.trigger()  # its work begins once this is over
    book_of(window).add_readings([reading])
    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
    qtbot.waitUntil(undo.isEnabled)

    assert window.foot.told.text() == "Nothing was taken back; the book is as it was."
    assert len(book_of(window).trays()) == 5
    assert book_of(window).undo_text() != "book Kim brought in"


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


def test_all_names_answered_at_once_are_looked_up_once(guest: Guest, other: Path) -> None:
    dialog = guest(other)
    assert dialog.names is not None
    assert len(dialog.names.groups) > 1
    changes: list[int] = []
    dialog.names.changed.connect(lambda: changes.append(1))

    dialog.names.all_same.click()

    assert len(changes) == 1, "each would list all trays of the guest anew"
    assert dialog.names.is_answered
    assert dialog.add.isEnabled()


def test_a_large_guest_is_listed_at_once_and_only_where_it_changes(
    qtbot: QtBot, dressed: QApplication
) -> None:
    sown = datetime(2026, 3, 1, 9)
    trays = tuple(
        GuestTray(code=f"T{n}", crop=f"crop {n % 20}", medium=f"medium {n % 15}", sown_at=sown, photos=n % 9)
        for n in range(2000)
    )
    look = GuestLook(trays=trays, photos=9, readings=9, asked=(), here={}, there={}, ours=frozenset())
    table = GuestTable()
    qtbot.addWidget(table)
    table.show()

    begun = time.perf_counter()
    table.show_trays(look, frozenset(trays[:7]))
    qtbot.wait(1)
    took = time.perf_counter() - begun
    assert took < 2.0, "each cell measured its column anew: ten seconds and more"
    first = table.item(0, 0)
    table.show_trays(look, frozenset(trays[:7]))
    assert table.item(0, 0) is first, "nothing has changed"
    assert table.columnWidth(2) >= table.fontMetrics().horizontalAdvance("medium 14")


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


def test_leaving_while_a_guest_is_opened_leaves_nothing_either(
    window: Window,
    other: Path,
    qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch,
    answer: Answering,
    tmp_path: Path,
) -> None:
    at_work, go_on = threading.Event(), threading.Event()

    def slow(*asked: Any) -> GuestLook:
        at_work.set()
        assert go_on.wait(10)
        return look_at_guest(*asked)

    def leave(dialog: QDialog) -> None:
        qtbot.waitUntil(at_work.is_set, timeout=10_000)
        dialog.reject()

    monkeypatch.setattr(guestopening, "look_at_guest", slow)
    with Book.open(other) as theirs:
        source = pack(theirs, tmp_path / "theirs", CancelToken())
    answer(leave)
    window.travel.bring_in_guest(source)
    assert list((book_of(window).folder / "cache").glob("guest-*"))
    qtbot.wait(20)  # whatever is let go is gone
    go_on.set()

    qtbot.waitUntil(lambda: not window.work.jobs(), timeout=10_000)
    qtbot.waitUntil(lambda: not list((book_of(window).folder / "cache").glob("guest-*")), timeout=10_000)
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert window.findChildren(QDialog) == []


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
