"""Mending the canopy: brush and eraser, by hand and by key, kept or left; on a drawn tray and on a photo."""

import time
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.fates import Known
from data.intake import score_for_book
from data.records import NewTray, PhotoId, TrayId
from gui.mend.desk import MendDesk
from gui.photo.mips import make_mips
from gui.traysheet.mendpage import MendPage
from gui.traysheet.screen import TraySheet
from gui.traysheet.views import View
from gui.work import Work
from tests.gui.rackbook import photograph
from tests.made.books import an_empty_book

PHOTO = Path(__file__).resolve().parents[2] / "photos"


def half_covered() -> np.ndarray:
    canopy = np.zeros((508, 1016), np.bool_)
    canopy[:, :508] = True
    return canopy


@pytest.fixture
def desk(qtbot: QtBot, dressed: QApplication) -> MendDesk:
    desk = MendDesk()
    qtbot.addWidget(desk)
    desk.resize(900, 600)
    with qtbot.waitActive(desk):
        desk.show()
    desk.show_photo(PhotoId(1), make_mips(np.full((508, 1016, 3), 90, np.uint8)), half_covered())
    desk.view.setFocus()
    return desk


def place(desk: MendDesk, x: float, y: float) -> QPoint:
    across, down = desk.view.view.to_window(x, y)
    return QPoint(round(across), round(down))


def drag(qtbot: QtBot, desk: MendDesk, *points: tuple[float, float]) -> None:
    first, *others = (place(desk, *point) for point in points)
    qtbot.mousePress(desk.view, Qt.MouseButton.LeftButton, pos=first)
    for other in others:
        qtbot.mouseMove(desk.view, other)
    qtbot.mouseRelease(desk.view, Qt.MouseButton.LeftButton, pos=others[-1] if others else first)


def covered(desk: MendDesk) -> np.ndarray:
    assert desk.view.canopy is not None
    return desk.view.canopy.now


def test_the_brush_paints_canopy_and_the_numbers_follow(desk: MendDesk, qtbot: QtBot) -> None:
    assert desk.numbers.text().startswith("Coverage 50.0 %")

    drag(qtbot, desk, (700, 100), (700, 400))

    assert covered(desk)[120:380, 700].all()
    now = 100 * covered(desk).mean()
    assert desk.numbers.text() == f"Coverage 50.0 % before, {now:.1f} % with your strokes"
    assert desk.keep.isEnabled()


def test_the_eraser_takes_canopy_away(desk: MendDesk, qtbot: QtBot) -> None:
    qtbot.keyClick(desk.view, Qt.Key.Key_E)
    assert desk.tools.eraser.isChecked()

    drag(qtbot, desk, (200, 250))

    assert not covered(desk)[250, 200]


def test_brackets_make_the_brush_smaller_and_larger(desk: MendDesk, qtbot: QtBot) -> None:
    before = desk.view.radius_mm

    qtbot.keyClick(desk.view, Qt.Key.Key_BracketRight)
    assert desk.view.radius_mm > before
    assert desk.tools.width_words.text() == f"{2 * desk.view.radius_mm:g} mm wide"

    for _ in range(20):
        qtbot.keyClick(desk.view, Qt.Key.Key_BracketLeft)
    assert desk.view.radius_mm == 1
    assert not desk.tools.smaller.isEnabled()


def test_all_can_be_painted_by_keyboard(desk: MendDesk, qtbot: QtBot) -> None:
    """The brush begins in the middle; arrows move it, Enter dabs, Shift with arrows paints on the way."""
    for _ in range(20):
        qtbot.keyClick(desk.view, Qt.Key.Key_Right)
    qtbot.keyClick(desk.view, Qt.Key.Key_Return)
    x = round(508 + 20 * desk.view.radius_mm)
    assert covered(desk)[254, x]
    assert not covered(desk)[254, x + 40]

    for _ in range(10):
        qtbot.keyClick(desk.view, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)

    assert covered(desk)[254, x : x + round(10 * desk.view.radius_mm)].all()


def test_ctrl_z_takes_back_strokes_one_by_one_and_does_them_again(desk: MendDesk, qtbot: QtBot) -> None:
    drag(qtbot, desk, (700, 250))
    drag(qtbot, desk, (900, 250))
    ctrl = Qt.KeyboardModifier.ControlModifier

    qtbot.keyClick(desk.view, Qt.Key.Key_Z, ctrl)
    assert covered(desk)[250, 700]
    assert not covered(desk)[250, 900]

    qtbot.keyClick(desk.view, Qt.Key.Key_Z, ctrl)
    assert not desk.has_strokes
    assert not desk.tools.undo.isEnabled()

    qtbot.keyClick(desk.view, Qt.Key.Key_Z, ctrl | Qt.KeyboardModifier.ShiftModifier)
    assert covered(desk)[250, 700]


def takes_over(desk: MendDesk, key: Qt.Key, with_: Qt.KeyboardModifier) -> bool:
    event = QKeyEvent(QEvent.Type.ShortcutOverride, key, with_)
    event.ignore()
    desk.event(event)
    return event.isAccepted()


def test_of_the_windows_keys_strokes_take_only_those_of_undo_and_only_while_there_are_some(
    desk: MendDesk, qtbot: QtBot
) -> None:
    ctrl, shift = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
    assert not takes_over(desk, Qt.Key.Key_Z, ctrl)

    drag(qtbot, desk, (700, 250))
    assert takes_over(desk, Qt.Key.Key_Z, ctrl)
    assert not takes_over(desk, Qt.Key.Key_Z, ctrl | shift)
    assert not takes_over(desk, Qt.Key.Key_5, ctrl)

    qtbot.keyClick(desk.view, Qt.Key.Key_Z, ctrl)
    assert not takes_over(desk, Qt.Key.Key_Z, ctrl)
    assert takes_over(desk, Qt.Key.Key_Z, ctrl | shift)
    assert not takes_over(desk, Qt.Key.Key_5, ctrl)


def test_leaving_it_as_it_was_forgets_the_strokes(desk: MendDesk, qtbot: QtBot) -> None:
    drag(qtbot, desk, (700, 250))

    qtbot.keyClick(desk.view, Qt.Key.Key_Escape)

    assert (covered(desk) == half_covered()).all()
    assert not desk.keep.isEnabled()


def test_forgetting_all_strokes_is_taken_back_like_a_stroke(desk: MendDesk, qtbot: QtBot) -> None:
    drag(qtbot, desk, (700, 250))
    drag(qtbot, desk, (900, 250))
    painted = covered(desk).copy()
    qtbot.keyClick(desk.view, Qt.Key.Key_Escape)
    ctrl = Qt.KeyboardModifier.ControlModifier

    qtbot.keyClick(desk.view, Qt.Key.Key_Z, ctrl)
    assert (covered(desk) == painted).all()
    assert desk.keep.isEnabled()

    qtbot.keyClick(desk.view, Qt.Key.Key_Z, ctrl)
    assert covered(desk)[250, 700]
    assert not covered(desk)[250, 900]


def test_strokes_wait_while_another_photo_is_looked_at(desk: MendDesk, qtbot: QtBot) -> None:
    picture = make_mips(np.full((508, 1016, 3), 90, np.uint8))
    drag(qtbot, desk, (700, 250))

    desk.show_photo(PhotoId(2), picture, half_covered())
    assert not desk.has_strokes
    assert desk.strokes_wait

    desk.show_photo(PhotoId(1), picture, half_covered())
    assert covered(desk)[250, 700]


def test_while_one_photo_is_measured_again_the_strokes_of_another_stay(
    work: Work, dressed: QApplication, qtbot: QtBot
) -> None:
    page = MendPage(work)
    qtbot.addWidget(page)
    page.resize(900, 600)
    with qtbot.waitActive(page):
        page.show()
    mips = make_mips(np.full((508, 1016, 3), 90, np.uint8))
    page.desk.show_photo(PhotoId(1), mips, half_covered())
    drag(qtbot, page.desk, (700, 100))
    page._kept_photo = PhotoId(1)  # being measured again meanwhile
    page.desk.show_photo(PhotoId(2), mips, half_covered())
    drag(qtbot, page.desk, (800, 300))
    painted = covered(page.desk).copy()

    page._kept(Known(photo_id=PhotoId(1), name="a"))

    assert (covered(page.desk) == painted).all()
    assert page.desk.has_strokes
    page.desk.show_photo(PhotoId(1), mips, half_covered())
    assert not page.desk.has_strokes


def test_what_is_kept_is_what_was_painted(desk: MendDesk, qtbot: QtBot) -> None:
    drag(qtbot, desk, (700, 250))

    with qtbot.waitSignal(desk.kept) as kept:
        qtbot.keyClick(desk.view, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)

    photo, canopy = kept.args
    assert photo == 1
    assert (canopy == covered(desk)).all()


def test_a_frame_of_a_stroke_at_4k_takes_less_than_a_frame_has(desk: MendDesk, qtbot: QtBot) -> None:
    """Move of the brush, mask, veil and the repaint of what it has touched."""
    desk.resize(3840, 2100)
    desk.view.fit()
    desk.view.set_brush(8.0, paints=True)
    desk.repaint()
    assert desk.view.canopy is not None
    desk.view.canopy.begin()
    desk.view._stroking = True
    took = []
    for n in range(60):
        began = time.perf_counter()
        desk.view._brush_to(desk.view._in_picture(desk.view.rect().center() + QPoint(8 * n, n)))
        QApplication.processEvents()
        took.append(time.perf_counter() - began)
    desk.view._lift()

    assert sorted(took)[30] < 1 / 60


@pytest.fixture
def photographed(tmp_path: Path, work: Work) -> Iterator[Book]:
    """A book with one tray and one real photo of it."""
    with an_empty_book(tmp_path / "real") as book:
        photo = sorted(PHOTO.glob("*.jpg"))[0]
        book.set_setting("today", "2026-03-08")
        book.add_tray(NewTray(code="A1", crop="broccoli", medium="coir", sown_at=datetime(2026, 3, 1, 9)))
        fate = book.keep(score_for_book(photo), photo)
        assert fate.photo_id is not None
        book.match(fate.photo_id, book.trays()[0].id)
        book.forget_changes()
        yield book
        work.stop_all()


def test_a_kept_canopy_changes_the_numbers_says_so_and_goes_back_by_undo(
    photographed: Book, work: Work, dressed: QApplication, qtbot: QtBot
) -> None:
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.resize(1024, 640)
    with qtbot.waitActive(sheet):
        sheet.show()
    sheet.open_book(photographed)
    sheet.open_tray(TrayId(photographed.trays()[0].id))
    scored = sheet.side.big.text()
    sheet.show_view(View.MEND)
    desk = sheet.views.mend.desk
    qtbot.waitUntil(lambda: desk.view.canopy is not None, timeout=10_000)
    qtbot.keyClick(desk.view, Qt.Key.Key_E)
    desk.tools.resize_brush(+8)
    for y in (50, 150, 250, 350, 450):
        drag(qtbot, desk, (10, y), (1000, y))
    assert desk.view.canopy is not None
    wanted = desk.view.canopy.coverage

    told: list[str] = []
    sheet.told.connect(told.append)
    with qtbot.waitSignal(sheet.book_changed, timeout=60_000):
        qtbot.mouseClick(desk.keep, Qt.MouseButton.LeftButton)

    assert told == [f"Canopy of A1 kept: coverage {wanted:.0f} %, mended by hand."]
    assert desk.view.hasFocus(), "where one goes on painting, not among the numbers beside it"
    assert sheet.side.big.text() == f"{wanted:.0f} %"
    assert "mended by hand" in sheet.side.big_words.text()
    assert not desk.has_strokes
    qtbot.waitUntil(
        lambda: desk.view.canopy is not None and desk.view.canopy.coverage == pytest.approx(wanted, abs=0.1)
    )

    photographed.undo()
    sheet.renew()

    assert sheet.side.big.text() == scored
    assert "mended" not in sheet.side.big_words.text()


def test_a_photo_of_an_older_version_is_scored_again_before_its_canopy_is_mended(
    rack_book: Book, work: Work, dressed: QApplication, qtbot: QtBot, tmp_path: Path
) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=50.0)
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.resize(1024, 640)
    with qtbot.waitActive(sheet):
        sheet.show()
    sheet.open_book(rack_book)
    sheet.open_tray(rack_book.trays()[0].id)

    sheet.show_view(View.MEND)
    page = sheet.views.mend
    qtbot.waitUntil(page.again.isVisible, timeout=10_000)

    assert not page.desk.keep.isVisible()
    assert "scored again first" in page.desk.view.accessibleDescription() + page.desk.view._message
    with qtbot.waitSignal(sheet.told, timeout=20_000) as told:
        qtbot.mouseClick(page.again, Qt.MouseButton.LeftButton)
    assert str(told.args[0]).startswith("0 of 1 photos scored again")  # photos of these tests are notes
