"""Photos without tags: the walk is confirmed a shelf at a time."""

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.intake.screen import Intake
from tests.gui.intake.asked import a_walk_without_tags, a_wrong_walk, codes, opened, press, read


def test_the_walk_is_confirmed_one_shelf_at_a_time_each_one_step_of_undo(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    photos = a_walk_without_tags(rack, tmp_path)
    opened(intake, rack, qtbot)
    band = intake.list.bands.walk
    assert band.title.text() == "Shelf A (1 of 2)"
    assert "3 photos of 8 March show A1, A2, A3." in band.words.text()
    assert intake.list.next_step.text() == "Confirm all 6 proposals"

    band.yes.setFocus()
    qtbot.keyClick(band.yes, Qt.Key.Key_Space)
    read(intake, qtbot)

    assert codes(rack, photos) == ["A1", "A2", "A3", None, None, None]
    assert band.title.text() == "Shelf B"
    assert band.yes.hasFocus()

    press(qtbot, intake, band.yes)
    assert codes(rack, photos) == ["A1", "A2", "A3", "B1", "B2", "B3"]
    assert not intake.list.bands.isVisible()
    rack.undo()
    assert codes(rack, photos) == ["A1", "A2", "A3", None, None, None]


def test_another_shelf_can_be_looked_at_first_and_only_its_photos_shown(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    photos = a_walk_without_tags(rack, tmp_path)
    opened(intake, rack, qtbot)
    band = intake.list.bands.walk

    press(qtbot, intake, band.following)
    assert band.title.text() == "Shelf B (2 of 2)"
    press(qtbot, intake, band.look)
    assert {intake.list.model.row(n).photo_id for n in range(3)} == set(photos[3:])
    assert intake.list.model.rowCount() == 3

    press(qtbot, intake, band.yes)  # shelf A is left, and shown
    assert {intake.list.model.row(n).photo_id for n in range(3)} == set(photos[:3])
    press(qtbot, intake, band.yes)
    assert intake.list.model.rowCount() == 6


def test_the_name_of_a_shelf_is_shown_as_it_was_typed(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    for tray in rack.trays()[:3]:
        rack.edit_tray(tray.id, shelf="<b>A & O</b>")
    a_walk_without_tags(rack, tmp_path)
    opened(intake, rack, qtbot)
    band = intake.list.bands.walk
    if "A & O" not in band.title.text():
        press(qtbot, intake, band.following)

    assert band.title.text().startswith("Shelf <b>A & O</b>")
    assert band.title.textFormat() is Qt.TextFormat.PlainText
    assert band.yes.text() == "Yes, shelf <b>A && O</b>"


def test_two_days_of_one_shelf_are_two_questions(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    a_walk_without_tags(rack, tmp_path, day=7)
    a_walk_without_tags(rack, tmp_path, day=8)

    opened(intake, rack, qtbot)

    assert intake.reading is not None
    assert [(one.day.day, one.shelf) for one in intake.reading.shelves] == [
        (7, "A"), (7, "B"), (8, "A"), (8, "B"),
    ]  # fmt: skip


def test_a_wrong_clock_is_asked_about_before_the_walk(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    a_walk_without_tags(rack, tmp_path / "one")
    a_wrong_walk(rack, tmp_path / "two")
    opened(intake, rack, qtbot)
    assert intake.list.bands.asked is intake.list.bands.clock

    press(qtbot, intake, intake.list.bands.clock.believe)

    assert intake.list.bands.asked is intake.list.bands.walk


def test_the_question_is_the_one_main_action_of_the_screen(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    a_walk_without_tags(rack, tmp_path)
    opened(intake, rack, qtbot)

    main = [
        button
        for button in intake.findChildren(QPushButton)
        if button.isVisible() and button.property("role") in ("main", "rack-main")
    ]
    assert main == [intake.list.bands.walk.yes]
