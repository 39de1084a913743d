import os
from collections.abc import Iterator
from datetime import date, datetime
from functools import partial
from pathlib import Path
from threading import Event, get_ident
from time import monotonic

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFont, QGuiApplication
from PySide6.QtWidgets import QApplication, QPushButton, QWidget
from pytestqt.qtbot import QtBot

import data.intake
from data.book import Book
from data.errors import BookLocked, DiskFull
from gui.intake.folderwatch import FolderWatch
from gui.intake.phototable import FATE, PHOTO, lines_of, taken
from gui.intake.screen import Intake
from gui.intake.view import IntakeRow, Kind
from gui.work import Work
from tests.data.builders import a_note, a_tray, bring, score_note
from tests.made.books import an_empty_book

UNSURE = "B1: der Schalenrand ist unsicher: die vier Ecken auf die Innenkante ziehen"


@pytest.fixture(autouse=True)
def notes_for_photos(monkeypatch: pytest.MonkeyPatch) -> None:
    """Photos are notes that say what scoring makes of them."""
    monkeypatch.setattr(data.intake, "intake", partial(data.intake.intake, score=score_note))


@pytest.fixture(autouse=True)
def impatient(monkeypatch: pytest.MonkeyPatch) -> None:
    """A watched folder is looked into ten times a second, and files are whole sooner than a phone's."""
    monkeypatch.setattr("gui.intake.folderwatch.EVERY_MS", 100)
    monkeypatch.setattr("data.photos.arrivals.QUIET_S", 0.2)


@pytest.fixture
def intake(qtbot: QtBot, dressed: QApplication, work: Work, rack_book: Book) -> Intake:
    """The rack book has trays A1 (tag 11), A2 (12), B1 (41)."""
    intake = Intake(work)
    qtbot.addWidget(intake)
    intake.resize(1024, 590)
    with qtbot.waitActive(intake):
        intake.show()
    intake.open_book(rack_book)
    qtbot.waitUntil(lambda: not intake.answers.is_running)
    return intake


def kinds(intake: Intake) -> dict[str, Kind]:
    rows = (intake.list.model.row(number) for number in range(intake.list.model.rowCount()))
    return {row.name: row.kind for row in rows if row is not None}


def brought(intake: Intake, qtbot: QtBot, *paths: Path) -> None:
    job = intake.bring_in(paths)
    assert job is not None
    qtbot.waitUntil(lambda: not intake.bringing.is_busy and not intake.answers.is_running)
    intake.renew()
    qtbot.waitUntil(lambda: not intake.answers.is_running)


def test_where_the_photos_cannot_be_read_it_is_said_why(
    intake: Intake, rack_book: Book, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    def locked(_book: Book) -> None:
        raise BookLocked(rack_book.folder)

    monkeypatch.setattr("gui.intake.screen.read_intake", locked)

    with qtbot.waitSignal(intake.troubled) as told:
        intake.renew()

    assert "is being written by another window" in told.args[0]


def test_an_empty_book_teaches_what_will_stand_here(intake: Intake) -> None:
    assert intake.empty.isVisible()
    assert intake.empty.title.text() == "Drop photos or a folder anywhere in this window"


def test_a_book_without_trays_says_that_they_come_first(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    qtbot.waitUntil(lambda: intake.reading is not None)
    assert intake.empty.no_trays.isHidden()

    with an_empty_book(tmp_path / "new") as new:
        intake.open_book(new)
        qtbot.waitUntil(lambda: intake.reading is not None)

        assert intake.empty.no_trays.isVisible()
        intake.open_book(None)


def test_each_photo_gets_its_fate(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    brought(
        intake,
        qtbot,
        a_note(tmp_path, "tagged.jpg", tag=11),
        a_note(tmp_path, "untagged.jpg", taken_at="2026-02-20T12:00:00"),  # before anything was sown
        a_note(tmp_path, "dim.jpg", tag=12, refuse="TOO_DARK"),
        a_note(tmp_path, "slanted.jpg", tag=12, sure=0.2, found_by="frame"),
    )

    assert kinds(intake) == {
        "tagged.jpg": Kind.STORED,
        "untagged.jpg": Kind.NEEDS_TRAY,
        "dim.jpg": Kind.REFUSED,
        "slanted.jpg": Kind.NEEDS_CORNERS,
    }
    assert intake.list.headline.text() == "2 photos need you"


def test_a_folder_without_pictures_is_told(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "empty").mkdir()

    with qtbot.waitSignal(intake.told) as told:
        intake.bring_in([tmp_path / "empty"])

    assert told.args == [f"There is no picture in {tmp_path / 'empty'}."]
    qtbot.waitUntil(lambda: not intake.bringing.is_busy and not intake.answers.is_running)


def test_more_photos_wait_until_the_first_are_in(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    first = a_note(tmp_path, "first.jpg", tag=11, slow=0.3)
    assert intake.bring_in([first]) is not None

    assert intake.bring_in([a_note(tmp_path, "second.jpg", tag=12)]) is None

    qtbot.waitUntil(lambda: kinds(intake) == {"first.jpg": Kind.STORED, "second.jpg": Kind.STORED})


def test_only_those_that_need_a_person_are_shown_on_demand(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    brought(intake, qtbot, a_note(tmp_path, "tagged.jpg", tag=11), a_note(tmp_path, "untagged.jpg"))

    qtbot.mouseClick(intake.list.only_needing, Qt.MouseButton.LeftButton)

    assert list(kinds(intake)) == ["untagged.jpg"]


def test_n_goes_to_the_next_photo_that_needs_a_person(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    brought(
        intake,
        qtbot,
        a_note(tmp_path, "a.jpg"),
        a_note(tmp_path, "b.jpg", tag=11),
        a_note(tmp_path, "c.jpg", sure=0.1, found_by="frame"),
    )
    needing = [number for number, kind in enumerate(kinds(intake).values()) if kind is not Kind.STORED]
    intake.list.table.selectRow(needing[0])

    qtbot.keyClick(intake.list.table, Qt.Key.Key_N)

    assert intake.list.table.currentIndex().row() == needing[1]


def test_home_and_end_go_to_the_first_and_the_last_photo(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    brought(intake, qtbot, *(a_note(tmp_path, f"{letter}.jpg", tag=11) for letter in "abc"))
    table = intake.list.table

    qtbot.keyClick(table, Qt.Key.Key_End)
    assert table.currentIndex().row() == 2

    qtbot.keyClick(table, Qt.Key.Key_Home)
    assert table.currentIndex().row() == 0


def test_the_photo_that_is_looked_at_stays_in_sight_when_the_window_becomes_smaller(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    notes = [
        a_note(tmp_path / "phone", f"{n}.jpg", tag=11, taken_at=f"2026-03-0{1 + n % 8}T08:{n}0:00")
        for n in range(6)
    ]
    intake.resize(1366, 720)
    brought(intake, qtbot, *notes)
    qtbot.keyClick(intake.list.table, Qt.Key.Key_End)
    before = intake.list.table.visualRect(intake.list.table.currentIndex())
    assert intake.list.table.viewport().rect().contains(before)

    intake.resize(1024, 480)
    qtbot.wait(20)

    table = intake.list.table
    assert table.viewport().rect().contains(table.visualRect(table.currentIndex()))
    assert table.viewport().height() < before.bottom()


def test_enter_on_a_photo_without_tray_asks_for_the_tray(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    brought(intake, qtbot, a_note(tmp_path, "a.jpg"))

    qtbot.keyClick(intake.list.table, Qt.Key.Key_Return)

    assert intake.list.panel.picker.field.hasFocus()


def test_a_tray_looked_for_on_one_photo_is_not_offered_for_the_next(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    brought(intake, qtbot, a_note(tmp_path, "a.jpg"), a_note(tmp_path, "b.jpg"))
    panel = intake.list.panel
    qtbot.keyClick(intake.list.table, Qt.Key.Key_Return)
    qtbot.keyClicks(panel.picker.field, "B1")

    intake.list.table.selectRow(1 - intake.list.table.currentIndex().row())

    assert panel.picker.field.text() == ""
    qtbot.keyClick(panel.picker.field, Qt.Key.Key_Return)  # a slip: nothing is chosen
    assert set(kinds(intake).values()) == {Kind.NEEDS_TRAY}


def test_escape_leaves_the_trays_that_were_asked_for_by_mistake(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    brought(intake, qtbot, a_note(tmp_path, "a.jpg", tag=11))
    panel = intake.list.panel
    qtbot.mouseClick(panel.other, Qt.MouseButton.LeftButton)  # "Another tray"
    assert panel.picker.field.hasFocus()
    qtbot.keyClicks(panel.picker.field, "B1")

    qtbot.keyClick(panel.picker.field, Qt.Key.Key_Escape)

    assert panel.picker.isHidden()
    assert not panel.other.isHidden()
    assert intake.list.table.hasFocus()
    assert set(kinds(intake).values()) == {Kind.STORED}


def test_enter_on_a_matched_photo_opens_its_tray(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    brought(intake, qtbot, a_note(tmp_path, "a.jpg", tag=11))

    with qtbot.waitSignal(intake.tray_wanted):
        qtbot.keyClick(intake.list.table, Qt.Key.Key_Return)


def test_the_second_name_of_a_photo_stays_chosen_when_the_list_is_read_again(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    first = a_note(tmp_path, "a.jpg", tag=11)
    second = tmp_path / "copy.jpg"
    second.write_bytes(first.read_bytes())
    brought(intake, qtbot, first, second)
    intake.list.table.selectRow(1)

    intake.renew()
    qtbot.waitUntil(lambda: not intake.answers.is_running)

    assert intake.list.table.currentIndex().row() == 1


def test_a_sentence_can_be_copied(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    brought(intake, qtbot, a_note(tmp_path, "dim.jpg", refuse="TOO_DARK"))

    qtbot.mouseClick(intake.list.panel.copy, Qt.MouseButton.LeftButton)

    assert QGuiApplication.clipboard().text().startswith("dim.jpg: not used: too dark")


def test_leaving_a_photo_out_can_be_undone(
    intake: Intake, qtbot: QtBot, rack_book: Book, tmp_path: Path
) -> None:
    brought(intake, qtbot, a_note(tmp_path, "untagged.jpg"))

    qtbot.mouseClick(intake.list.panel.leave, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: kinds(intake) == {"untagged.jpg": Kind.LEFT_OUT})

    rack_book.undo()
    intake.renew()
    qtbot.waitUntil(lambda: kinds(intake) == {"untagged.jpg": Kind.NEEDS_TRAY})


def test_proposals_of_the_walk_are_confirmed_together_and_undone_in_one_step(
    intake: Intake, qtbot: QtBot, rack_book: Book, tmp_path: Path
) -> None:
    for minute in range(3):
        bring(rack_book, a_note(tmp_path, f"{minute}.jpg", taken_at=f"2026-03-08T08:0{minute}:00"))
    intake.renew()
    qtbot.waitUntil(lambda: set(kinds(intake).values()) == {Kind.PROPOSED})
    assert intake.list.next_step.text() == "Confirm all 3 proposals"

    qtbot.mouseClick(intake.list.next_step, Qt.MouseButton.LeftButton)  # meant for what stood there before
    assert rack_book.undo_text() is None
    qtbot.wait(QGuiApplication.styleHints().mouseDoubleClickInterval() + 50)
    qtbot.mouseClick(intake.list.next_step, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: set(kinds(intake).values()) == {Kind.STORED})

    rack_book.undo()
    intake.renew()
    qtbot.waitUntil(lambda: set(kinds(intake).values()) == {Kind.PROPOSED})


def test_a_photo_can_be_given_to_a_tray_that_has_ended_if_it_grew_on_its_day(
    intake: Intake, qtbot: QtBot, rack_book: Book, tmp_path: Path
) -> None:
    old = rack_book.trays()[0]
    rack_book.finish_tray(old.id, datetime(2026, 3, 8, 18))
    rack_book.add_tray(a_tray("A1", sown_at=datetime(2026, 3, 9, 8)))
    bring(rack_book, a_note(tmp_path, "then.jpg", taken_at="2026-03-08T12:00:00"))
    bring(rack_book, a_note(tmp_path, "later.jpg", taken_at="2026-03-10T12:00:00"))
    intake.renew()
    qtbot.waitUntil(lambda: len(kinds(intake)) == 2)
    offered = []
    for name in kinds(intake):
        intake.list.table.selectRow(list(kinds(intake)).index(name))
        trays = intake.list.panel.picker.list.model()
        words = [trays.index(n, 0).data() for n in range(trays.rowCount())]
        offered.append((name, [word for word in words if word.startswith("A1")]))

    assert sorted(offered) == [
        ("later.jpg", ["A1   broccoli on coir, shelf A"]),
        (
            "then.jpg",
            [
                "A1   broccoli on coir, shelf A, until 8 March",
                "A1   broccoli on coir, shelf A, sown only on 9 March",
            ],
        ),
    ]


def test_a_photo_that_arrives_in_a_watched_folder_comes_in_by_itself(
    intake: Intake, qtbot: QtBot, tmp_path: Path
) -> None:
    folder = tmp_path / "phone"
    folder.mkdir()
    intake.source.set_watched(folder)

    a_note(folder, "walk.jpg", tag=11)

    qtbot.waitUntil(lambda: kinds(intake) == {"walk.jpg": Kind.STORED}, timeout=15_000)
    intake.source.end_watch()


def test_a_watched_folder_that_is_not_there_any_more_is_told_when_the_book_opens(
    intake: Intake, qtbot: QtBot, rack_book: Book, tmp_path: Path
) -> None:
    folder = tmp_path / "phone"
    folder.mkdir()
    intake.source.set_watched(folder)
    folder.rmdir()

    with qtbot.waitSignal(intake.troubled) as told:
        intake.open_book(rack_book)

    assert f"{folder} is not there" in told.args[0]
    assert intake.source.watch.folder is None


def test_a_full_disk_is_told_until_it_has_been_read(
    intake: Intake, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object, **__: object) -> None:
        raise DiskFull(tmp_path)

    monkeypatch.setattr(Book, "keep", full)

    with qtbot.waitSignal(intake.troubled) as told:
        intake.bring_in([a_note(tmp_path, "a.jpg", tag=11)])

    assert "is full; everything kept so far is safe" in told.args[0]


def test_what_a_full_disk_did_not_take_is_listed_and_brought_in_by_one_press(
    intake: Intake, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object, **__: object) -> None:
        raise DiskFull(tmp_path)

    notes = [
        a_note(tmp_path / "phone", f"{n}.jpg", tag=11, taken_at=f"2026-03-0{n}T08:00:00") for n in (3, 4)
    ]
    with monkeypatch.context() as at_first, qtbot.waitSignal(intake.troubled):
        at_first.setattr(Book, "keep", full)
        intake.bring_in(notes)

    assert kinds(intake) == {"3.jpg": Kind.MISSING, "4.jpg": Kind.MISSING}
    assert intake.list.next_step.text() == "Bring in what is missing: 2"
    intake.list.next_step.click()
    qtbot.waitUntil(lambda: kinds(intake) == {"3.jpg": Kind.STORED, "4.jpg": Kind.STORED})
    assert intake.list.next_step.text() == "Choose photos"


def test_a_folder_that_could_not_be_looked_into_is_listed_too(
    intake: Intake, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def silent(_paths: object) -> list[Path]:
        raise OSError(5, "the card does not answer")

    folder = a_note(tmp_path / "card", "1.jpg", tag=11).parent
    with monkeypatch.context() as at_first:
        at_first.setattr(data.intake, "found_photos", silent)
        intake.bring_in([folder])
        qtbot.waitUntil(lambda: kinds(intake) == {"card": Kind.MISSING})

    intake.list.next_step.click()
    qtbot.waitUntil(lambda: kinds(intake) == {"1.jpg": Kind.STORED})


def test_the_watched_folder_is_remembered_with_the_book(
    intake: Intake, rack_book: Book, tmp_path: Path
) -> None:
    intake.source.set_watched(tmp_path)
    assert "Stop watching" in intake.list.drop.watch.text()

    intake.open_book(None)
    assert intake.source.watch.folder is None

    intake.open_book(rack_book)
    assert intake.source.watch.folder == tmp_path
    intake.source.end_watch()
    assert intake.source.watch.folder is None


def test_a_folder_that_vanishes_is_told(work: Work, qtbot: QtBot, tmp_path: Path, qapp: QApplication) -> None:
    folder = tmp_path / "gone"
    folder.mkdir()
    watch = FolderWatch(work)
    watch.start(folder)
    qtbot.waitUntil(lambda: watch._job is None)

    with qtbot.waitSignal(watch.lost, timeout=10_000):
        folder.rmdir()

    assert watch.folder is None


def test_what_a_full_disk_did_not_take_of_a_watched_folder_comes_in_once_there_is_room(
    intake: Intake, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object, **__: object) -> None:
        raise DiskFull(tmp_path)

    intake.source.watch._again.setInterval(200)
    a_note(tmp_path / "phone", "walk.jpg", tag=11)
    with monkeypatch.context() as at_first, qtbot.waitSignal(intake.troubled, timeout=15_000) as told:
        at_first.setattr(Book, "keep", full)
        intake.source.set_watched(tmp_path / "phone")
    assert "is full" in told.args[0]

    qtbot.waitUntil(lambda: kinds(intake) == {"walk.jpg": Kind.STORED}, timeout=15_000)
    intake.source.end_watch()


@pytest.fixture
def dead_drive(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[tuple[Path, set[int], Event]]:
    """A folder that does not answer until the event is set; which threads have asked it."""
    folder, answers, asked = tmp_path / "drive" / "phone", Event(), set[int]()
    folder.mkdir(parents=True)
    really = os.stat

    def hangs(path: object, *more: object, **named: object) -> os.stat_result:
        if isinstance(path, (str, Path)) and Path(path) == folder:
            asked.add(get_ident())
            answers.wait(20.0)
        return really(path, *more, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(os, "stat", hangs)
    yield folder, asked, answers
    answers.set()


def test_a_drive_that_does_not_answer_stops_neither_the_window_nor_other_work(
    intake: Intake, work: Work, qtbot: QtBot, rack_book: Book, dead_drive: tuple[Path, set[int], Event]
) -> None:
    folder, asked, _ = dead_drive
    rack_book.set_setting("watched folder", str(folder))
    began = monotonic()

    for _ in range(3):  # chosen again and again, as one does
        intake.open_book(rack_book)
        qtbot.waitUntil(lambda: bool(asked))
    jobs = [work.start(lambda _token, _report: "done") for _ in range(2)]
    with qtbot.waitSignals([job.finished for job in jobs]):
        pass
    intake.source.end_watch()

    assert work.stop_all()  # as another book does
    assert monotonic() - began < 4.0
    assert get_ident() not in asked


def test_a_drive_that_does_not_answer_is_told_once_until_it_does(
    intake: Intake, qtbot: QtBot, dead_drive: tuple[Path, set[int], Event]
) -> None:
    folder, _, answers = dead_drive
    intake.source.watch._timer.setInterval(50)
    intake.source.watch._patience.setInterval(100)

    with qtbot.waitSignal(intake.troubled) as told:
        intake.source.set_watched(folder)

    assert f"{folder} does not answer" in told.args[0]
    with qtbot.assertNotEmitted(intake.troubled, wait=400):
        pass
    answers.set()
    a_note(folder, "walk.jpg", tag=11)
    qtbot.waitUntil(lambda: kinds(intake) == {"walk.jpg": Kind.STORED}, timeout=15_000)
    intake.source.end_watch()


def test_another_folder_can_be_watched_while_the_one_before_does_not_answer(
    intake: Intake, qtbot: QtBot, tmp_path: Path, dead_drive: tuple[Path, set[int], Event]
) -> None:
    folder, asked, _ = dead_drive
    intake.source.set_watched(folder)
    qtbot.waitUntil(lambda: bool(asked))

    (tmp_path / "stick").mkdir()
    intake.source.set_watched(tmp_path / "stick")
    a_note(tmp_path / "stick", "walk.jpg", tag=11)

    qtbot.waitUntil(lambda: kinds(intake) == {"walk.jpg": Kind.STORED}, timeout=15_000)
    intake.source.end_watch()


def test_tab_leaves_the_table(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    brought(intake, qtbot, a_note(tmp_path, "tagged.jpg", tag=11))
    intake.arrive()
    assert intake.list.table.hasFocus()

    qtbot.keyClick(intake.list.table, Qt.Key.Key_Tab)

    assert not intake.list.table.hasFocus()


def test_everything_that_takes_the_focus_has_a_name(intake: Intake, qtbot: QtBot, tmp_path: Path) -> None:
    brought(intake, qtbot, a_note(tmp_path, "untagged.jpg"))

    nameless = [
        widget
        for widget in intake.findChildren(QWidget)
        if widget.isVisible()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and not widget.accessibleName()
        and not (isinstance(widget, QPushButton) and widget.text())
    ]
    assert nameless == []


def test_a_long_sentence_ends_in_dots_where_there_is_no_room(qapp: QApplication) -> None:
    font = QFont("Noto Sans", 10)
    words = "not used: too blurred to tell shoots from medium: hold the phone still, or add light"

    def lines(height: int) -> list[str]:
        return lines_of(words, font, QSize(200, height))

    assert " ".join(lines(400)) == words
    assert len(lines(40)) == 2
    assert lines(40)[-1].endswith("…")


def test_with_large_letters_in_the_least_window_the_sentence_has_more_room_than_the_name(
    intake: Intake, qtbot: QtBot, tmp_path: Path, large_letters: None
) -> None:
    intake.resize(1024, 569)
    brought(intake, qtbot, a_note(tmp_path, "untagged.jpg"))
    table = intake.list.table

    qtbot.waitUntil(lambda: table.columnWidth(FATE) > table.columnWidth(PHOTO))
    room = QSize(table.columnWidth(FATE) - 38, table.rowHeight(0) - 4)  # beside the mark
    assert " ".join(lines_of(UNSURE, table.font(), room)) == UNSURE


@pytest.mark.parametrize(
    ("taken_at", "told"),
    [
        (datetime(date.today().year, 3, 8, 7, 40), "8 Mar, 07:40"),
        (datetime(2001, 1, 1, 0, 16), "1 Jan 2001, 00:16"),
    ],
)
def test_a_photo_of_another_year_says_so(taken_at: datetime, told: str) -> None:
    """A reset clock is seen by its year; without it "1 Jan" looks like this winter."""
    row = IntakeRow(key=1, name="p.jpg", kind=Kind.STORED, sentence="", taken_at=taken_at)

    assert taken(row) == told
