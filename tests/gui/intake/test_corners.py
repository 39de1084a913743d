"""A drawn photo: a red tray 2 to 1 on grey, seen a little from the side, 800 x 600 px."""

import cv2
import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from data.book import Book
from data.records import PhotoId
from gui.intake.cornerdesk import CornerDesk
from gui.intake.corners import CornerPage, first_guess, warped
from gui.intake.cornerview import CornerView
from gui.photo.mips import make_mips
from gui.photo.photoload import LoadedPhoto
from gui.work import Work

TRAY = ((200.0, 180.0), (600.0, 180.0), (640.0, 400.0), (160.0, 400.0))


def a_photo() -> np.ndarray:
    pixels = np.full((600, 800, 3), 120, np.uint8)
    return cv2.fillPoly(pixels, [np.array(TRAY, np.int32)], (200, 30, 30)).astype(np.uint8)


@pytest.fixture
def page(qtbot: QtBot, dressed: object) -> CornerPage:
    page = CornerPage()
    qtbot.addWidget(page)
    page.resize(1000, 560)
    with qtbot.waitActive(page):
        page.show()
    page.show_photo(7, "walk.jpg", make_mips(a_photo()), a_photo(), [(x + 12, y - 9) for x, y in TRAY])
    return page


def place(view: CornerView, corner: int) -> QPoint:
    x, y = view.view.to_window(*view.corners[corner])
    return QPoint(round(x), round(y))


def dragged(qtbot: QtBot, view: CornerView, corner: int, right: int, down: int) -> None:
    start = place(view, corner)
    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=start)
    qtbot.mouseMove(view, start + QPoint(right, down))
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=start + QPoint(right, down))


def test_a_corner_follows_the_finger(page: CornerPage, qtbot: QtBot) -> None:
    zoom = page.photo.view.zoom

    dragged(qtbot, page.photo, 2, 30, -20)

    assert page.photo.corners[2] == pytest.approx((652 + 30 / zoom, 391 - 20 / zoom), abs=1e-6)
    assert page.photo.corners[0] == (212, 171)


def test_a_finger_within_22_pixels_takes_hold_of_a_corner(page: CornerPage, qtbot: QtBot) -> None:
    before = page.photo.corners
    near = place(page.photo, 0) + QPoint(15, 15)

    qtbot.mousePress(page.photo, Qt.MouseButton.LeftButton, pos=near)
    qtbot.mouseMove(page.photo, near + QPoint(10, 0))
    qtbot.mouseRelease(page.photo, Qt.MouseButton.LeftButton, pos=near + QPoint(10, 0))

    assert page.photo.corners[0][0] == pytest.approx(before[0][0] + 10 / page.photo.view.zoom)


def test_a_lens_beside_the_finger_shows_the_place_while_it_is_held(page: CornerPage, qtbot: QtBot) -> None:
    free = page.photo.grab().toImage()

    qtbot.mousePress(page.photo, Qt.MouseButton.LeftButton, pos=place(page.photo, 0))
    held = page.photo.grab().toImage()
    qtbot.mouseRelease(page.photo, Qt.MouseButton.LeftButton, pos=place(page.photo, 0))

    beside = place(page.photo, 0) + QPoint(108, 108)
    changed = sum(
        free.pixel(beside + QPoint(x, y)) != held.pixel(beside + QPoint(x, y))
        for x in range(-60, 60, 5)
        for y in range(-60, 60, 5)
        if x * x + y * y < 3600
    )
    assert changed > 100


def test_arrows_move_the_chosen_corner_by_one_pixel_and_with_shift_by_ten(
    page: CornerPage, qtbot: QtBot
) -> None:
    qtbot.keyClick(page.photo, Qt.Key.Key_Right)
    qtbot.keyClick(page.photo, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)

    assert page.photo.corners[0] == (213, 181)


def test_tab_goes_through_the_corners_and_then_leaves_the_photo(page: CornerPage, qtbot: QtBot) -> None:
    for expected in (1, 2, 3):
        qtbot.keyClick(page.photo, Qt.Key.Key_Tab)
        assert page.photo.chosen == expected
        assert page.photo.hasFocus()

    qtbot.keyClick(page.photo, Qt.Key.Key_Tab)
    assert not page.photo.hasFocus()


def test_the_last_move_is_taken_back_with_ctrl_z(page: CornerPage, qtbot: QtBot) -> None:
    before = page.photo.corners
    dragged(qtbot, page.photo, 1, 40, 40)

    qtbot.keyClick(page.photo, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)

    assert page.photo.corners == before
    assert not page.back.isEnabled()


def test_a_move_that_was_taken_back_is_done_again_until_another_corner_is_moved(
    page: CornerPage, qtbot: QtBot
) -> None:
    before = page.photo.corners
    dragged(qtbot, page.photo, 1, 40, 40)
    moved = page.photo.corners
    redo = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier

    qtbot.keyClick(page.photo, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert page.again.isEnabled()
    qtbot.keyClick(page.photo, Qt.Key.Key_Z, redo)
    assert page.photo.corners == moved
    assert not page.again.isEnabled()

    page.back.click()
    assert page.photo.corners == before
    dragged(qtbot, page.photo, 3, 10, 0)
    assert not page.again.isEnabled()


def test_ctrl_z_takes_a_move_back_with_the_focus_on_a_button(page: CornerPage, qtbot: QtBot) -> None:
    before = page.photo.corners
    dragged(qtbot, page.photo, 1, 40, 40)
    page.leave.setFocus()

    qtbot.keyClick(page.leave, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)

    assert page.photo.corners == before


def test_enter_uses_the_corners_and_says_of_which_photo(page: CornerPage, qtbot: QtBot) -> None:
    with qtbot.waitSignal(page.decided) as decided:
        qtbot.keyClick(page.photo, Qt.Key.Key_Return)

    assert decided.args == [7, page.photo.corners]


def test_escape_leaves(page: CornerPage, qtbot: QtBot) -> None:
    with qtbot.waitSignal(page.left):
        qtbot.keyClick(page.photo, Qt.Key.Key_Escape)


def test_corners_that_cannot_be_a_tray_are_not_used(page: CornerPage, qtbot: QtBot) -> None:
    page.photo.show_corners([(10, 10), (12, 10), (12, 300), (10, 300)])

    assert not page.use.isEnabled()
    with qtbot.assertNotEmitted(page.decided):
        qtbot.keyClick(page.photo, Qt.Key.Key_Return)


def test_corners_of_a_square_tray_are_used(page: CornerPage) -> None:
    page.photo.show_corners([(200, 100), (600, 100), (600, 500), (200, 500)])

    assert page.use.isEnabled()


def test_with_the_right_corners_the_top_view_is_all_tray() -> None:
    top = warped(a_photo(), TRAY, 1.0)

    inner = top[6:-6, 6:-6].reshape(-1, 3)
    assert (np.abs(inner.astype(int) - (200, 30, 30)).max(axis=1) < 8).mean() > 0.99


def test_the_top_view_follows_a_corner(page: CornerPage, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: page.top_view._image is not None)
    before = page.top_view._image.copy()

    dragged(qtbot, page.photo, 3, 60, -30)

    qtbot.waitUntil(lambda: page.top_view._image != before)


def test_a_photo_without_a_guess_begins_with_a_rectangle_inside_it() -> None:
    assert all(0 < x < 800 and 0 < y < 600 for x, y in first_guess(800, 600))


def test_the_chosen_corner_is_told_in_words(page: CornerPage, qtbot: QtBot) -> None:
    qtbot.keyClick(page.photo, Qt.Key.Key_Tab)

    assert page.photo.accessibleDescription() == "Corner 2 of 4 at 612 px from the left, 171 px from the top"


def left_of_the_photo(page: CornerPage, qtbot: QtBot, by: int = 100) -> None:
    """Drag the first corner that many px of the photo beyond its left edge."""
    zoom = page.photo.view.zoom
    right = round(-(page.photo.corners[0][0] + by) * zoom)
    dragged(qtbot, page.photo, 0, right, 0)


def test_a_corner_goes_beyond_the_photo_s_edge_and_room_for_it_is_shown(
    page: CornerPage, qtbot: QtBot
) -> None:
    left_of_the_photo(page, qtbot)

    assert page.photo.corners[0][0] == pytest.approx(-100, abs=2)
    assert page.photo.rect().contains(place(page.photo, 0))
    assert page.photo.view.to_window(-120, 300)[0] >= 0


def test_a_corner_stays_within_a_quarter_of_the_photo_s_width(page: CornerPage) -> None:
    page.photo.move_chosen(-5000, 9000)

    assert page.photo.corners[0] == (-200, 800)


def test_outside_the_photo_keys_undo_and_lens_are_as_inside(page: CornerPage, qtbot: QtBot) -> None:
    left_of_the_photo(page, qtbot)
    x, y = page.photo.corners[0]

    qtbot.keyClick(page.photo, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert page.photo.corners[0] == (x - 10, y)
    assert "outside the photo" in page.photo.accessibleDescription()
    qtbot.keyClick(page.photo, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert page.photo.corners[0] == (x, y)

    free = page.photo.grab().toImage()
    at = place(page.photo, 0)
    qtbot.mousePress(page.photo, Qt.MouseButton.LeftButton, pos=at)
    held = page.photo.grab().toImage()
    qtbot.mouseRelease(page.photo, Qt.MouseButton.LeftButton, pos=at)
    assert free.pixel(at + QPoint(150, 108)) != held.pixel(at + QPoint(150, 108))


def test_a_corner_that_keys_push_out_of_sight_is_followed(page: CornerPage, qtbot: QtBot) -> None:
    page.photo.look_at(400, 300, 3)
    for _ in range(12):
        qtbot.keyClick(page.photo, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)

    assert page.photo.rect().contains(place(page.photo, 0))


def test_one_step_back_from_the_whole_photo_shows_the_room_around_it(page: CornerPage, qtbot: QtBot) -> None:
    whole = page.photo.view.zoom

    qtbot.keyClick(page.photo, Qt.Key.Key_Minus)
    assert page.photo.view.zoom < whole
    assert page.photo.view.to_window(-200, 300)[0] >= 0

    qtbot.keyClick(page.photo, Qt.Key.Key_0)
    assert page.photo.view.zoom == whole


def test_a_photo_that_lacks_part_of_the_tray_is_said_not_to_be_scored(page: CornerPage, qtbot: QtBot) -> None:
    assert page.outside.isHidden()

    page.photo.show_corners([(-100, 180), (300, 180), (300, 400), (-100, 400)])

    assert page.outside.text().startswith("25 % of the tray lies outside the photo. It will not be scored")
    assert page.use.isEnabled()

    page.photo.show_corners(TRAY)
    assert page.outside.isHidden()


def test_corners_left_by_escape_come_back_with_the_photo(
    qtbot: QtBot, dressed: object, work: Work, rack_book: Book
) -> None:
    desk = CornerDesk(work)
    qtbot.addWidget(desk)
    desk.open_book(rack_book)
    with qtbot.waitActive(desk):
        desk.show()
    photo = LoadedPhoto(
        photo_id=PhotoId(7), name="walk.jpg", mips=make_mips(a_photo()), small=a_photo(), guess=TRAY
    )

    def asked() -> None:
        desk._asked = photo.photo_id
        desk._loaded(photo)

    asked()
    qtbot.keyClick(desk.page.photo, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    moved = desk.page.photo.corners
    qtbot.keyClick(desk.page.photo, Qt.Key.Key_Escape)
    assert desk.page.photo.corners == ()

    asked()
    assert desk.page.photo.corners == moved != TRAY
    desk.page.photo.take_back()
    assert desk.page.photo.corners == TRAY

    desk.open_book(None)
    assert desk.page.photo.mips is None, "the photo of a book that was left is held in memory"


def test_a_photo_that_is_left_while_a_corner_is_held_lets_go_of_it(page: CornerPage, qtbot: QtBot) -> None:
    page.left.connect(page.clear)
    start = place(page.photo, 0)
    qtbot.mousePress(page.photo, Qt.MouseButton.LeftButton, pos=start)

    qtbot.keyClick(page.photo, Qt.Key.Key_Escape)
    qtbot.mouseMove(page.photo, start + QPoint(20, 20))
    qtbot.mouseRelease(page.photo, Qt.MouseButton.LeftButton, pos=start + QPoint(20, 20))

    assert page.photo.corners == ()
    assert not page.photo.can_take_back
