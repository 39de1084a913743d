"""A morning in the real program: photos are dropped, a tray looked at, a suspect judged, and all is kept."""

import shutil
from collections.abc import Callable, Iterator
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

import vision.score
from data.demo import demo_photos
from data.records import NewTray, Said
from gui.app import make_window
from gui.home import Memory
from gui.intake.screen import Intake
from gui.intake.view import IntakeRow, Kind
from gui.traysheet.screen import TraySheet
from gui.window import Window
from tests.made.books import an_empty_book
from vision.suspect import Suspect

SOWN = datetime(2026, 3, 2, 9)
TRAYS = {"A1": 10, "A2": 11, "A5": 14}
A_PATCH = Suspect(
    x_mm=180.0,
    y_mm=90.0,
    area_cm2=6.2,
    confidence=0.7,
    why="white web over green shoots",
    outline_mm=((160.0, 80.0), (200.0, 80.0), (180.0, 105.0)),
)
IN_TIME_MS = 60_000


@pytest.fixture
def book_folder(tmp_path: Path) -> Path:
    """Three trays of the demonstration's rack, on the day of its newest photos."""
    folder = tmp_path / "book"
    book = an_empty_book(folder)
    book.add_trays(
        NewTray(code=code, crop="broccoli", medium="coir", sown_at=SOWN, tag_number=tag, shelf="A", block="1")
        for code, tag in TRAYS.items()
    )
    book.forget_changes()
    book.set_setting("today", "2026-03-11")
    book.close()
    return folder


@pytest.fixture
def dropped(tmp_path: Path) -> Path:
    """A folder as a phone leaves it: four photos of these trays, one of another tray, a damaged one."""
    folder = tmp_path / "phone"
    folder.mkdir()
    photos = {path.stem: path for path in demo_photos()}
    for name in ("A1_day08", "A1_day09", "A2_day09", "A5_day09", "C6_day09"):
        shutil.copy(photos[name], folder)
    (folder / "half.jpg").write_bytes(photos["A1_day08"].read_bytes()[:5000])
    return folder


@pytest.fixture
def a_moldy_a5(monkeypatch: pytest.MonkeyPatch) -> None:
    """The demonstration's scorer finds one patch in every photo, whatever the photo shows."""

    def found(*_: Any) -> tuple[Suspect, ...]:
        return (A_PATCH,)

    monkeypatch.setattr(vision.score, "find_suspects", found)


@pytest.fixture
def opened(
    qtbot: QtBot, qapp: QApplication, tmp_path: Path, book_folder: Path
) -> Iterator[Callable[[], Window]]:
    windows: list[Window] = []

    def open_it() -> Window:
        window = make_window(qapp, Memory(tmp_path / "settings"))
        qtbot.addWidget(window)
        with qtbot.waitActive(window):
            window.show()
        assert window.open_folder(book_folder)
        windows.append(window)
        return window

    (tmp_path / "settings").mkdir()
    yield open_it
    for window in windows:
        window.close()


def drop(window: Window, path: Path) -> None:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path))])
    hand = Qt.DropAction.CopyAction, mime, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    entered = QDragEnterEvent(QPoint(200, 200), *hand)
    QApplication.sendEvent(window, entered)
    assert entered.isAccepted()
    QApplication.sendEvent(window, QDropEvent(QPointF(200, 200), *hand))


def the_intake(window: Window) -> Intake:
    return window.screens.intake


def the_sheet(window: Window) -> TraySheet:
    return window.screens.traysheet


def rows(window: Window) -> dict[str, IntakeRow]:
    model = the_intake(window).list.model
    found = (model.row(number) for number in range(model.rowCount()))
    return {Path(row.name).stem: row for row in found if row is not None}


def settled(window: Window) -> bool:
    shown = rows(window)
    return len(shown) == 6 and not any(row.kind is Kind.WAITING for row in shown.values())


def bring_all(window: Window, dropped: Path, qtbot: QtBot) -> None:
    drop(window, dropped)
    qtbot.waitUntil(lambda: settled(window) and not window.work.shown(), timeout=IN_TIME_MS)


def open_a5(window: Window, qtbot: QtBot) -> TraySheet:
    assert window.book is not None
    tray = next(tray for tray in window.book.trays() if tray.code == "A5")
    window.open_tray(tray.id)
    sheet = the_sheet(window)
    qtbot.waitUntil(lambda: sheet.picture.mips is not None and bool(sheet.picture.layers.rings))
    return sheet


def words_on_a5(sheet: TraySheet) -> list[str]:
    return [card.line.word for card in sheet.side.suspects.cards]


def test_a_dropped_folder_gets_a_row_a_photo_and_each_row_its_fate(
    opened: Callable[[], Window], dropped: Path, qtbot: QtBot
) -> None:
    window = opened()

    drop(window, dropped)
    qtbot.waitUntil(
        lambda: any(row.kind is Kind.WAITING for row in rows(window).values()), timeout=IN_TIME_MS
    )
    qtbot.waitUntil(lambda: settled(window) and not window.work.shown(), timeout=IN_TIME_MS)

    assert window.place == "intake"
    shown = rows(window)
    assert shown["A1_day09"].sentence.startswith("A1, matched by its tag, coverage ")
    assert shown["A2_day09"].tray_code == "A2"
    assert shown["A5_day09"].tray_code == "A5"
    assert shown["C6_day09"].sentence == "tag 27 belongs to no tray that grew at that time: choose the tray"
    assert shown["half"].kind is Kind.REFUSED
    assert "copy it from the phone again" in shown["half"].sentence
    assert the_intake(window).list.headline.text() == "1 photo needs you"


def test_dropping_the_folder_again_does_nothing_and_says_so(
    opened: Callable[[], Window], dropped: Path, qtbot: QtBot
) -> None:
    window = opened()
    bring_all(window, dropped, qtbot)
    assert window.book is not None
    before = window.book.photos()

    bring_all(window, dropped, qtbot)

    assert window.book.photos() == before
    assert rows(window)["A1_day09"].sentence.startswith("already in the book: A1")


def test_a_suspect_is_judged_undone_judged_again_and_all_is_there_after_a_restart(
    opened: Callable[[], Window], dropped: Path, a_moldy_a5: None, qtbot: QtBot
) -> None:
    window = opened()
    bring_all(window, dropped, qtbot)
    sheet = open_a5(window, qtbot)
    assert words_on_a5(sheet) == ["possible mold"]
    assert "no flag is no proof" in sheet.side.suspects.caution.text()

    qtbot.mouseClick(sheet.side.suspects.cards[0].mold, Qt.MouseButton.LeftButton)
    assert words_on_a5(sheet) == ["mold"]
    qtbot.waitUntil(lambda: "mold on A5" in window.top.undo.text())

    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: words_on_a5(sheet) == ["possible mold"])

    qtbot.mouseClick(sheet.side.suspects.cards[0].not_mold, Qt.MouseButton.LeftButton)
    assert window.close()

    again = opened()
    sheet = open_a5(again, qtbot)
    assert words_on_a5(sheet) == ["not mold"]
    assert sheet.side.suspects.cards[0].line.said is Said.NOT_MOLD
    again.go_to("intake")
    qtbot.waitUntil(lambda: len(rows(again)) == 6)
    assert rows(again)["A5_day09"].tray_code == "A5"


def test_a_photo_without_its_tray_is_matched_by_hand_and_undone(
    opened: Callable[[], Window], dropped: Path, qtbot: QtBot
) -> None:
    window = opened()
    bring_all(window, dropped, qtbot)
    intake = the_intake(window)
    qtbot.mouseClick(intake.list.next_step, Qt.MouseButton.LeftButton)
    assert intake.list.panel.picker.isVisible()

    qtbot.keyClicks(intake.list.panel.picker.field, "A2")
    qtbot.keyClick(intake.list.panel.picker.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: rows(window)["C6_day09"].tray_code == "A2")
    assert rows(window)["C6_day09"].sentence.startswith("A2, matched by you")

    window.following.undo()
    qtbot.waitUntil(lambda: rows(window)["C6_day09"].kind is Kind.NEEDS_TRAY)


def test_corners_set_by_hand_score_the_photo_again(
    opened: Callable[[], Window], dropped: Path, qtbot: QtBot
) -> None:
    window = opened()
    bring_all(window, dropped, qtbot)
    intake = the_intake(window)
    number = intake.list.model.number_of(rows(window)["A1_day09"])
    intake.list.table.setCurrentIndex(intake.list.model.index(number, 1))

    qtbot.mouseClick(intake.list.panel.corners, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: intake.corners.isVisible() and len(intake.corners.page.photo.corners) == 4)
    qtbot.keyClick(intake.corners.page.photo, Qt.Key.Key_Right)
    qtbot.keyClick(intake.corners.page.photo, Qt.Key.Key_Return)
    assert window.book is not None
    photo = rows(window)["A1_day09"].photo_id
    assert photo is not None

    def by_hand() -> bool:
        score = window.book.score(photo) if window.book else None
        return score is not None and score.corners_from == "hand"

    qtbot.waitUntil(by_hand, timeout=IN_TIME_MS)
    qtbot.waitUntil(lambda: not window.work.shown())


def test_cancelling_keeps_what_was_stored_and_forgets_what_waited(
    opened: Callable[[], Window], dropped: Path, qtbot: QtBot
) -> None:
    window = opened()
    drop(window, dropped)
    qtbot.waitUntil(
        lambda: any(row.photo_id is not None for row in rows(window).values()), timeout=IN_TIME_MS
    )

    for job in window.work.shown():
        job.cancel()
    qtbot.waitUntil(lambda: not window.work.shown(), timeout=IN_TIME_MS)
    qtbot.waitUntil(lambda: not any(row.kind is Kind.WAITING for row in rows(window).values()))

    assert window.book is not None
    kept = {row.photo_id for row in rows(window).values() if row.photo_id is not None}
    assert kept == {photo.id for photo in window.book.photos()}
    assert kept
