"""Questions about many photos at once: wrong clocks, the walk shelf by shelf, scoring again."""

import os
import threading
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton, QWidget
from pytestqt.qtbot import QtBot

import data.upkeep.rescoring
from data.book import Book
from data.photos.judged import Judged
from data.records import PhotoId
from data.upkeep.rescoring import Again, give_up, to_offer
from gui.intake.screen import Intake
from gui.notes.moments import show_moment
from gui.photo.scoringagain import minutes_words
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.work import Work
from tests.data.builders import a_note, a_score, bring, score_note
from tests.gui.rackbook import a_rack_book
from vision.network import ModelDamaged

NEW = "plain 2"


@pytest.fixture
def rack(tmp_path: Path, work: Work) -> Iterator[Book]:
    """Trays A1, A2, A3, B1, B2, B3, sown on 1 March 2026; the day is 8 March."""
    with a_rack_book(tmp_path / "three", per_shelf=(3, 3)) as book:
        yield book
        work.stop_all()


@pytest.fixture
def intake(qtbot: QtBot, dressed: QApplication, work: Work) -> Intake:
    made = Intake(work)
    qtbot.addWidget(made)
    made.resize(1024, 590)
    with qtbot.waitActive(made):
        made.show()
    return made


@pytest.fixture
def large_letters(intake: Intake, dressed: QApplication) -> Iterator[None]:
    dress(dressed, Scheme.LIGHT, 150)
    intake.redress()
    yield
    dress(dressed, Scheme.LIGHT)


def opened(intake: Intake, book: Book, qtbot: QtBot) -> None:
    intake.open_book(book)
    read(intake, qtbot)


def read(intake: Intake, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not intake._reading and intake.desk._job is None)
    intake.renew()
    qtbot.waitUntil(lambda: not intake._reading)


def press(qtbot: QtBot, intake: Intake, button: QPushButton) -> None:
    assert button.isVisible()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    read(intake, qtbot)


# --- wrong clocks


def a_wrong_walk(book: Book, phone: Path, count: int = 3) -> list[PhotoId]:
    """Trays A1, A2, ... with their tags, by a camera whose year is wrong; copies of files."""
    photos = []
    for n in range(1, count + 1):
        note = a_note(phone, f"{n}.jpg", tag=10 + n, taken_at=f"2024-03-08T08:0{n}:00")
        copied = datetime(2026, 3, 8, 9).timestamp()
        os.utime(note, (copied, copied))
        photos.append(bring(book, note).photo_id)
    return photos


def codes(book: Book, photos: Sequence[PhotoId]) -> list[str | None]:
    return [book.photo(photo).tray_code for photo in photos]


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
    assert rack.camera_time(photos[0]) == datetime(2024, 3, 8, 8, 1)


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


# --- the walk


def a_walk_without_tags(book: Book, phone: Path, day: int = 8) -> list[PhotoId]:
    return [
        bring(book, a_note(phone, f"d{day}-{n}.jpg", taken_at=f"2026-03-0{day}T08:0{n}:00")).photo_id
        for n in range(6)
    ]


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


# --- scoring again


def newer(again: Again) -> Judged:
    judged = score_note(again.path)
    assert judged.score is not None
    return replace(judged, score=a_score(judged.score.stand.coverage - 5.0, method=NEW))


@pytest.fixture
def new_method(monkeypatch: pytest.MonkeyPatch) -> None:
    """The program's method is a newer one than that of the notes."""
    monkeypatch.setattr("gui.photo.scoringagain.learned_method", lambda: NEW)
    monkeypatch.setattr(
        data.upkeep.rescoring.rescore_all, "__kwdefaults__", {"score": newer, "workers": None}
    )


def photographed(book: Book, phone: Path, tags: Sequence[int] = (11, 12, 13)) -> None:
    for tag in tags:
        bring(book, a_note(phone, f"t{tag}.jpg", tag=tag, taken_at="2026-03-08T08:00:00", coverage=60.0))


def test_photos_of_an_older_method_are_offered_once_a_person_is_here_and_scored_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, new_method: None
) -> None:
    photographed(rack, tmp_path)
    opened(intake, rack, qtbot)
    assert not intake.list.bands.isVisible()  # counting loads the model

    intake.arrive()
    band = intake.list.bands.again
    qtbot.waitUntil(band.isVisible)
    assert band.title.text() == "3 photos can be scored again"
    assert "about 5 seconds" in band.words.text()

    with qtbot.waitSignal(intake.told) as told:
        qtbot.mouseClick(band.begin, Qt.MouseButton.LeftButton)

    assert str(told.args[0]).startswith("3 of 3 photos scored again")
    read(intake, qtbot)
    qtbot.waitUntil(lambda: not intake.list.bands.isVisible())
    assert [tile.coverage for tile in rack.tiles()[:3]] == [55.0] * 3
    with rack.writing() as db:
        assert db.table("score").count == 6  # old and new


def test_trays_of_two_versions_are_compared_after_their_photos_were_scored_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, new_method: None
) -> None:
    photographed(rack, tmp_path, (11,))
    photo = rack.photos()[0].id
    rack.keep_again(
        photo, newer(Again(path=rack.photo_path(photo), corners=None, by_hand=False, trays=None, canopy=None))
    )
    with rack.writing() as db:
        db.execute("DELETE FROM score WHERE method != ?", [NEW])  # A1 by the new version alone
    photographed(rack, tmp_path, (12, 13))
    trays = [tray.id for tray in rack.trays()[:3]]
    before = rack.comparable(trays)
    assert before.method is None
    assert "score their photos again" in str(before.sentence)
    opened(intake, rack, qtbot)
    intake.arrive()
    qtbot.waitUntil(intake.list.bands.again.isVisible)

    with qtbot.waitSignal(intake.told):
        qtbot.mouseClick(intake.list.bands.again.begin, Qt.MouseButton.LeftButton)

    after = rack.comparable(trays)
    assert (after.method, after.left_out, after.sentence) == (NEW, 0, None)
    assert {point.code for point in rack.peers(trays[0])} == {"A1", "A2", "A3"}


def test_scoring_again_shows_how_far_it_is_and_cancel_keeps_what_is_done(
    intake: Intake,
    rack: Book,
    qtbot: QtBot,
    tmp_path: Path,
    new_method: None,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    photographed(rack, tmp_path, (11, 12, 13, 41, 42, 43))
    gate, begun = threading.Event(), []

    def slow(again: Again) -> Judged:
        begun.append(again.path)
        if len(begun) > 2:
            gate.wait(10)
        return newer(again)

    monkeypatch.setattr(data.upkeep.rescoring.rescore_all, "__kwdefaults__", {"score": slow, "workers": None})
    opened(intake, rack, qtbot)
    intake.arrive()
    band = intake.list.bands.again
    qtbot.waitUntil(band.isVisible)
    qtbot.mouseClick(band.begin, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: band.bar.value() >= 2)
    assert band.words.text().endswith("of 6")

    with qtbot.waitSignal(intake.told) as told:
        qtbot.mouseClick(band.cancel, Qt.MouseButton.LeftButton)
        gate.set()

    left = len(to_offer(rack, NEW).photos)
    assert 0 < left <= 4
    assert str(told.args[0]).startswith(f"Stopped after {6 - left} of 6 photos")
    assert rack.comparable().method == "plain 1"
    read(intake, qtbot)
    qtbot.waitUntil(lambda: band.title.text().startswith(f"{left} photo"))


def test_a_photo_that_needs_a_person_comes_before_scoring_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, new_method: None
) -> None:
    photographed(rack, tmp_path)
    bring(rack, a_note(tmp_path, "lost.jpg", taken_at="2026-03-08T18:00:00"))
    opened(intake, rack, qtbot)
    intake.arrive()
    qtbot.waitUntil(intake.list.bands.again.isVisible)

    assert intake.list.bands.again.begin.property("role") == "rack"
    assert intake.list.panel.confirm.isVisible()
    assert intake.list.panel.confirm.property("role") == "rack-main"


def test_the_plain_method_that_stands_in_for_a_damaged_model_scores_nothing_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def damaged() -> None:
        raise ModelDamaged("tissue.onnx")

    monkeypatch.setattr("vision.methods.LearnedTissue", damaged)
    photographed(rack, tmp_path)
    opened(intake, rack, qtbot)
    intake.arrive()
    qtbot.waitUntil(lambda: not intake.work.jobs())
    assert not intake.list.bands.isVisible()

    with qtbot.waitSignal(intake.told) as told:
        intake.offer.begin()

    assert "nothing was scored again: install the program again" in str(told.args[0])
    with rack.writing() as db:
        assert db.table("score").count == 3


def test_not_today_is_not_asked_again(
    intake: Intake, rack: Book, qtbot: QtBot, tmp_path: Path, new_method: None
) -> None:
    photographed(rack, tmp_path)
    opened(intake, rack, qtbot)
    intake.arrive()
    qtbot.waitUntil(intake.list.bands.again.isVisible)

    press(qtbot, intake, intake.list.bands.again.later)
    intake.arrive()
    read(intake, qtbot)

    assert not intake.list.bands.isVisible()


def test_photos_that_were_tried_in_vain_are_not_offered_again_for_the_same_method(
    rack: Book, tmp_path: Path
) -> None:
    photographed(rack, tmp_path)
    first, *rest = (photo.id for photo in rack.photos())

    give_up(rack, NEW, [first])

    assert set(to_offer(rack, NEW).photos) == set(rest)
    assert len(to_offer(rack, "plain 3").photos) == 3


@pytest.mark.parametrize(
    ("seconds", "words"),
    [(2, "about 5 seconds"), (31, "about 30 seconds"), (70, "about a minute"), (600, "about 10 minutes"),
     (3 * 3600, "about 3.0 hours")],
)  # fmt: skip
def test_how_long_it_takes_is_said_as_a_person_would(seconds: float, words: str) -> None:
    assert minutes_words(seconds) == words
