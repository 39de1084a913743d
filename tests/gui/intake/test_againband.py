"""Photos of an older method: offered to be scored again."""

import threading
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

import data.upkeep.rescoring
from data.book import Book
from data.photos.judged import Judged
from data.records import PhotoId
from data.upkeep.rescoring import Again, Stale, give_up, to_offer
from gui.intake.againband import AgainBand
from gui.intake.screen import Intake
from gui.photo.scoringagain import ScoringAgain, minutes_words
from gui.work import Work
from tests.data.builders import a_note, a_score, bring, score_note
from tests.gui.intake.asked import opened, press, read
from vision.network import ModelDamaged

NEW = "plain 2"


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


def test_the_words_of_a_question_break_where_a_line_would_grow_hard_to_read(
    dressed: QApplication, work: Work, qtbot: QtBot
) -> None:
    band = AgainBand(ScoringAgain(work), None)
    qtbot.addWidget(band)
    band.show_stale(Stale(photos=(PhotoId(1), PhotoId(2))), 1)

    lines = band.words.heightForWidth(1800) / band.fontMetrics().lineSpacing()

    assert len(band.words.text()) > 150
    assert lines >= 2
