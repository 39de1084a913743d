"""A camera whose clock is wrong: asked about once for all its photos, and mended."""

from datetime import datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.intake.screen import Intake
from gui.notes.moments import show_moment
from tests.data.builders import a_note, bring
from tests.data.contents import camera_time
from tests.gui.intake.asked import a_wrong_walk, codes, opened, press, read


def test_a_wrong_clock_is_asked_about_with_before_and_after_and_mended_by_one_press(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    photos = a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    band = intake.list.bands.clock

    assert intake.list.bands.asked is band
    assert "3 photos: the camera says another year" in band.words.text()
    assert (band.first_before.text(), band.last_before.text()) == ("8 Mar 2024, 08:01", "8 Mar 2024, 08:03")
    assert band.first_after.dateTime().toPython() == datetime(2026, 3, 8, 8, 1)
    assert band.last_after.text() == "8 Mar 2026, 08:03"

    with qtbot.waitSignal(intake.told) as told:
        press(qtbot, intake, band.mend)

    assert told.args == ["The times of 3 photos are mended. Ctrl+Z takes it back."]
    assert codes(rack, photos) == ["A1", "A2", "A3"]
    assert not intake.list.bands.isVisible()
    rack.undo()
    assert codes(rack, photos) == [None] * 3
    read(intake, qtbot)
    assert intake.list.bands.asked is band


def test_a_person_who_knows_the_time_better_types_it_and_the_last_photo_follows(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    photos = a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    band = intake.list.bands.clock

    show_moment(band.first_after, datetime(2026, 3, 7, 19, 30))

    assert band.last_after.text() == "7 Mar 2026, 19:32"
    press(qtbot, intake, band.mend)
    assert rack.photo(photos[0]).taken_at == datetime(2026, 3, 7, 19, 30)
    assert camera_time(rack, photos[0]) == datetime(2024, 3, 8, 8, 1)


def test_a_time_after_the_photos_came_in_cannot_be_kept(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    band = intake.list.bands.clock

    show_moment(band.first_after, datetime.now() + timedelta(days=2))

    assert not band.mend.isEnabled()
    assert "after the photos came in" in band.moved.text()


def test_what_was_typed_stays_when_the_book_is_read_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    show_moment(intake.list.bands.clock.first_after, datetime(2026, 3, 7, 19, 30))

    read(intake, qtbot)

    assert intake.list.bands.clock.last_after.text() == "7 Mar 2026, 19:32"


def test_a_clock_that_was_right_is_not_asked_about_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    photos = a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)

    press(qtbot, intake, intake.list.bands.clock.believe)

    assert not intake.list.bands.isVisible()
    assert rack.photo(photos[0]).taken_at.year == 2024
    assert rack.undo() == "clock of 3 photos believed"


def test_only_the_doubted_photos_are_shown_on_demand_and_all_again_after_the_answer(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    bring(rack, a_note(tmp_path, "good.jpg", tag=41, taken_at="2026-03-08T08:00:00"))
    a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    assert intake.list.model.rowCount() == 4

    press(qtbot, intake, intake.list.bands.clock.look)
    assert intake.list.model.rowCount() == 3

    press(qtbot, intake, intake.list.bands.clock.believe)
    assert intake.list.model.rowCount() == 4


def test_q_goes_to_the_question_and_all_of_it_can_be_reached_and_has_a_name(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    intake.arrive()

    qtbot.keyClick(intake.list.table, Qt.Key.Key_Q)

    band = intake.list.bands.clock
    assert band.mend.hasFocus()
    assert band.accessibleName() == "What time was it really?"
    assert "What time was it really? The key Q" in intake.list.table.accessibleDescription()
    nameless = [
        widget
        for widget in band.findChildren(QWidget)
        if widget.isVisible()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.focusProxy() is None  # the line in a field of days hands the focus on
        and not widget.accessibleName()
        and not (isinstance(widget, QPushButton) and widget.text())
    ]
    assert nameless == []


@pytest.mark.parametrize("height", [569, 540, 683])  # the first is what the least window leaves to a place
def test_with_large_letters_three_photos_and_the_next_step_stay_in_sight(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, large_letters: None, height: int
) -> None:
    a_wrong_walk(rack, tmp_path / "phone", count=6)
    opened(intake, rack, qtbot)

    intake.resize(1024, height)

    page, band = intake.list, intake.list.bands.clock
    qtbot.waitUntil(lambda: page.table.viewport().height() >= 3 * page.table.rowHeight(0))
    for button in (page.next_step, band.mend, band.believe, band.look):
        assert button.isVisible()
        assert not button.visibleRegion().isEmpty()
        assert button.visibleRegion().boundingRect() == button.rect()


def test_what_rolls_of_a_question_comes_into_sight_with_the_focus(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, large_letters: None
) -> None:
    a_wrong_walk(rack, tmp_path / "phone", count=6)
    opened(intake, rack, qtbot)
    intake.resize(1024, 480)
    band = intake.list.bands.clock
    qtbot.waitUntil(lambda: band.matter.verticalScrollBar().maximum() > 0)

    qtbot.keyClick(intake.list.table, Qt.Key.Key_Q)
    while intake.window().focusWidget() is not band.first_after:
        before = intake.window().focusWidget()
        qtbot.keyClick(before, Qt.Key.Key_Backtab)
        assert intake.window().focusWidget() is not before

    assert band.first_after.visibleRegion().boundingRect().height() > band.first_after.height() // 2


def test_nothing_is_asked_while_photos_come_in(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    a_wrong_walk(rack, tmp_path / "phone")
    opened(intake, rack, qtbot)
    monkeypatch.setattr(type(intake.bringing), "is_busy", True)

    intake._refresh()

    assert not intake.list.bands.isVisible()
