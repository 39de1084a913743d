"""Scoring by eye: no name is seen, every score is kept at once, and one can leave and go on."""

from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from data.records import PhotoId
from data.trial import MeasureKind
from gui.style.tokens import contrast
from gui.verdict.blindload import BlindPicture
from gui.verdict.blindpage import SOFT
from gui.verdict.blindstart import BlindStart
from gui.verdict.blindview import first_open
from gui.verdict.blindwindow import GREY, GROOVE, HELD, BlindWindow
from gui.verdict.screen import Verdict
from tests.data.trialrack import TRIAL, WORSE, Rack
from tests.gui.verdict.opened import read, settle


@pytest.fixture
def rack(rack: Rack) -> Rack:
    rack.shoot_all(WORSE)
    return rack


@pytest.fixture
def screen(screen: Verdict, rack: Rack, qtbot: QtBot) -> Verdict:
    return read(screen, rack.book, qtbot)


def window_of(screen: Verdict) -> BlindWindow:
    assert screen.rounds.window is not None
    return screen.rounds.window


def begun(screen: Verdict, qtbot: QtBot) -> BlindWindow:
    """A round, begun by click and keys."""
    qtbot.mouseClick(screen.by_eye, Qt.MouseButton.LeftButton)
    (start,) = screen.findChildren(BlindStart)
    qtbot.keyClicks(start.name, "M")
    qtbot.mouseClick(start.begin, Qt.MouseButton.LeftButton)
    settle(screen, qtbot)
    return window_of(screen)


def score(window: BlindWindow, qtbot: QtBot, value: int) -> None:
    """By keys: the tens, then arrows, Enter."""
    qtbot.keyClick(window, Qt.Key(Qt.Key.Key_0 + value // 10))
    for _ in range(value % 10):
        qtbot.keyClick(window.page.slider, Qt.Key.Key_Right)
    qtbot.keyClick(window, Qt.Key.Key_Return)


def test_no_name_of_tray_medium_or_block_is_seen(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)

    seen = " ".join(label.text() for label in window.findChildren(QLabel))
    for tray in rack.trays:
        assert tray.medium not in seen
        assert f" {tray.code} " not in f" {seen} "
    assert window.page.progress.text() == "Picture 1 of 15"  # 12 trays, 3 of them twice


def test_enter_goes_on_only_with_a_score_and_keeps_it(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    window._loaded(BlindPicture(photo_id=window.state.showing.photo_id, image=_image()))

    qtbot.keyClick(window, Qt.Key.Key_Return)
    assert window.state.place == 1
    assert window.page.number.text() == "\u2013"
    score(window, qtbot, 73)

    assert window.state.place == 2
    (given,) = rack.book.eye_scores(TRIAL)
    assert (given.value, given.blind, given.place, given.rater) == (73.0, True, 1, "M")


def _image() -> object:
    from PySide6.QtGui import QImage

    image = QImage(956, 448, QImage.Format.Format_RGB888)
    image.fill(Qt.GlobalColor.darkGreen)
    return image


def test_backspace_shows_the_picture_before_with_its_score(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    score(window, qtbot, 40)
    qtbot.keyClick(window, Qt.Key.Key_Backspace)

    assert (window.state.place, window.page.number.text()) == (1, "40")
    score(window, qtbot, 60)

    (given,) = rack.book.eye_scores(TRIAL)
    assert given.value == 60.0


def test_a_round_is_left_and_gone_on_with_later(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    for value in (50, 60, 70):
        score(window, qtbot, value)
    with qtbot.waitSignal(screen.book_changed):
        qtbot.keyClick(window, Qt.Key.Key_Escape)
    settle(screen, qtbot)
    assert screen.rounds.window is None

    qtbot.mouseClick(screen.by_eye, Qt.MouseButton.LeftButton)
    start = screen.findChildren(BlindStart)[-1]
    assert start.resume is not None
    assert start.resume.text() == "Go on: 3 of 15 scored"
    qtbot.mouseClick(start.resume, Qt.MouseButton.LeftButton)

    assert window_of(screen).page.progress.text() == "Picture 4 of 15"
    assert len(rack.book.eye_rounds(TRIAL)) == 1


def test_at_the_end_it_is_said_whose_numbers_to_trust(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    photo = {tray.id: 80.0 if tray.medium != "fibre mat" else 60.0 for tray in rack.trays}
    while not window.state.result:
        wobble = window.state.place % 3
        score(window, qtbot, round(photo[window.state.showing.tray_id]) + wobble)

    assert "trust" in window.ending.trust.text()
    assert "On 12 trays the eye gave" in window.ending.words.text()
    assert "Of 3 trays seen twice" in window.ending.words.text()

    qtbot.mouseClick(window.ending.to_verdict, Qt.MouseButton.LeftButton)
    settle(screen, qtbot)
    assert MeasureKind.EYE in screen.state.reading.kinds("broccoli")
    assert "On 12 trays the eye gave" in screen.page.sure.text()


def test_each_score_is_one_step_of_undo(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    score(window, qtbot, 50)
    score(window, qtbot, 60)

    assert rack.book.undo() == "score by eye 2 of 15"
    assert [given.value for given in rack.book.eye_scores(TRIAL)] == [50.0]
    assert rack.book.undo() == "score by eye 1 of 15"
    assert rack.book.undo() == f"round of scoring {TRIAL} by eye"
    assert rack.book.eye_rounds(TRIAL) == ()


def test_a_lost_picture_is_said_and_left_out(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    lost = BlindPicture(photo_id=window.state.showing.photo_id, image=None, trouble="The picture is lost.")
    window._loaded(lost)

    assert window.page.keys.text() == "The picture is lost."
    qtbot.keyClick(window, Qt.Key.Key_Return)

    assert window.state.place == 2
    assert rack.book.eye_scores(TRIAL) == ()


def test_a_round_goes_on_at_the_first_picture_without_a_score(rack: Rack) -> None:
    photos = [(tray.id, rack.book.days(tray.id)[0].photo_id) for tray in rack.trays]
    drawn = rack.book.begin_eye_round(TRIAL, "M", photos, 7)

    assert first_open(drawn, {1: 50.0, 3: 60.0}).place == 2
    assert first_open(drawn, dict.fromkeys(range(1, 16), 50.0)).result


def test_the_handle_taken_in_the_middle_is_a_score_of_50(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    assert window.state.value is None
    slider = window.page.slider

    qtbot.mouseClick(slider, Qt.MouseButton.LeftButton, pos=slider.rect().center())

    assert window.state.value == 50
    assert window.page.next.isEnabled()


def test_a_long_round_keeps_few_pictures_in_memory(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    window = begun(screen, qtbot)
    here = window.state.showing.photo_id
    for number in range(1000, 1100):
        window._loaded(BlindPicture(photo_id=PhotoId(number), image=_image()))
    assert len(window._pictures) <= HELD

    score(window, qtbot, 40)
    settle(screen, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_Backspace)
    settle(screen, qtbot)
    assert here in window._pictures, "the picture before is loaded again"


def test_scale_and_progress_stand_out_from_the_grey() -> None:
    # WCAG 2.2, 1.4.11: 3 : 1 for what one has to see to use a control
    assert contrast(GROOVE, GREY) >= 3.0
    assert contrast(SOFT, GREY) >= 4.5


def test_no_round_begins_while_photos_are_being_scored(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    over = Event()
    screen.work.start(lambda _token, _report: over.wait(20.0), "Scoring photos", scores=True)
    qtbot.mouseClick(screen.by_eye, Qt.MouseButton.LeftButton)
    (start,) = screen.findChildren(BlindStart)

    assert not start.begin.isEnabled()
    assert start.waits.text().startswith("Photos are being scored.")
    over.set()
    qtbot.waitUntil(start.begin.isEnabled)
    assert start.waits.isHidden()

    start.reject()
    qtbot.waitUntil(lambda: not screen.findChildren(BlindStart))
    assert screen.rounds._start is None
