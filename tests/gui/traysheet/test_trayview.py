import subprocess
import sys
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest

from data.book import Book
from data.records import Said, TrayId
from gui.notes.numberwords import numbers_of
from gui.traysheet.view import SuspectLine, TrayState, read_tray
from tests.gui.rackbook import photograph
from vision.reason import Reason

MOLDY = {"suspects": [{"x_mm": 100.0, "y_mm": 50.0, "area_cm2": 6.0, "confidence": 0.7}]}


def tray_id(book: Book, code: str) -> TrayId:
    return next(tray.id for tray in book.trays() if tray.code == code)


def the_sheet(book: Book, code: str = "A1", photo: Any = None) -> TrayState:
    return read_tray(book, tray_id(book, code), photo)


def line(state: TrayState, name: str) -> Any:
    return next(one for one in state.numbers if one.name == name)


def test_a_tray_without_a_photo_says_so(rack_book: Book) -> None:
    state = the_sheet(rack_book)

    assert state.day is None
    assert state.numbers == ()
    assert state.description == "No photo of tray A1 yet."


def test_the_newest_day_is_shown_first(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=30.0, taken_at="2026-03-05T08:00:00")
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00")

    state = the_sheet(rack_book)

    assert state.day is not None
    assert state.day.day == 7
    assert line(state, "coverage").value == "71 %"


def test_a_photo_that_is_older_than_the_sowing_says_so(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=30.0, taken_at="2026-03-05T08:00:00")
    rack_book.edit_tray(tray_id(rack_book, "A1"), sown_at=datetime(2026, 3, 6, 9))

    state = the_sheet(rack_book)

    assert state.description.startswith("Tray A1, before sowing. ")
    assert state.notes[0] == (
        "This photo is older than the sowing of this tray (6 Mar 2026): the camera's clock, the day of "
        "sowing or the tray of the photo is wrong."
    )


def test_a_photo_of_the_day_of_sowing_is_not_older(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=0.0, taken_at="2026-03-01T06:00:00")

    state = the_sheet(rack_book)

    assert "day 0" in state.description
    assert not any("older" in note for note in state.notes)


def with_score(state: TrayState, **special: Any) -> TrayState:
    """The same sheet, its newest score changed."""
    assert state.day is not None
    assert state.score is not None
    day = replace(state.day, score=replace(state.score, **special))
    return replace(state, days=(*state.days[:-1], day))


@pytest.mark.parametrize(
    ("sd", "words"),
    [(1.6, "give or take 3 points"), (0.2, "give or take 1 point"), (None, "")],
)
def test_coverage_says_how_far_it_may_be_off(
    rack_book: Book, tmp_path: Path, sd: float | None, words: str
) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00")

    assert with_score(the_sheet(rack_book), coverage_sd=sd).doubt == words


def test_what_is_doubtful_about_a_score_is_said_in_sentences(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00")

    (note,) = with_score(the_sheet(rack_book), notes=(Reason.DOUBTFUL,)).notes

    assert note.startswith("Coverage is doubtful here")
    assert note.endswith(".")


def test_an_outline_drawn_by_hand_is_no_longer_called_doubtful(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00")
    notes = (Reason.DOUBTFUL, Reason.APART, Reason.PLAIN_ONLY)

    state = with_score(the_sheet(rack_book), notes=notes, mended=True)

    assert state.doubt == "mended by hand"
    (note,) = state.notes
    assert note.startswith("The learned model is missing")


def test_a_refused_photo_of_today_does_not_hide_the_last_good_one(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=30.0, taken_at="2026-03-07T08:00:00")
    photograph(rack_book, "A1", tmp_path, refuse="BLURRED", taken_at="2026-03-08T08:00:00")

    state = the_sheet(rack_book)

    assert state.day is not None
    assert state.day.day == 6
    assert len(state.days) == 2


def test_a_day_can_be_chosen(rack_book: Book, tmp_path: Path) -> None:
    first = photograph(rack_book, "A1", tmp_path, coverage=30.0, taken_at="2026-03-05T08:00:00")
    photograph(rack_book, "A1", tmp_path, coverage=71.0, taken_at="2026-03-08T08:00:00")

    assert line(the_sheet(rack_book, photo=first), "coverage").value == "30 %"


def test_every_number_has_its_unit_and_says_how_it_was_had(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path)

    state = the_sheet(rack_book)

    assert line(state, "edge_deficit").value == "3.0 points"
    assert line(state, "gradient_y").value == "−0.5 points / 100 mm"
    assert line(state, "gap_share").value == "1.5 % (1 gap of 5 cm²)"
    assert all(one.how for one in state.numbers + state.quality)


def test_a_missing_number_is_a_dash_with_its_reason(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path)
    score = the_sheet(rack_book).score
    assert score is not None

    lines = numbers_of(_without(score, "uniformity", "under 10 % coverage: evenness is not yet meaningful"))

    uniformity = next(one for one in lines if one.name == "uniformity")
    assert uniformity.value == "–"
    assert uniformity.missing
    assert uniformity.how.startswith("under 10 % coverage")


def _without(score: Any, name: str, reason: str) -> Any:
    import dataclasses

    return dataclasses.replace(score, **{name: None}, reasons={name: reason})


def test_a_suspect_is_told_with_size_confidence_and_why(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, **MOLDY)

    (suspect,) = the_sheet(rack_book).suspects

    assert suspect.word == "possible mold"
    assert suspect.title == "6.0 cm², 70 % sure"
    assert suspect.why == "pale web over green"


@pytest.mark.parametrize(("said", "cautioned"), [(None, True), ("mold", True), ("not mold", False)])
def test_the_caution_stands_there_unless_a_person_said_not_mold(
    rack_book: Book, tmp_path: Path, said: str | None, cautioned: bool
) -> None:
    photograph(rack_book, "A1", tmp_path, **MOLDY)
    rack_book.say(the_sheet(rack_book).suspects[0].id, said)

    caution = the_sheet(rack_book).caution

    assert (caution is not None) is cautioned
    assert caution is None or "no flag is no proof that a tray is safe" in caution


def test_mates_of_the_block_grow_beside_it_and_the_tray_comes_first(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A2", tmp_path, coverage=60.0)
    photograph(rack_book, "A1", tmp_path, coverage=50.0)

    curves = the_sheet(rack_book, "A2").curves

    assert curves[0].code == "A2"
    assert {curve.code for curve in curves} >= {"A1", "A2"}


def test_one_goes_along_the_rack_from_tray_to_tray(rack_book: Book) -> None:
    first, last = the_sheet(rack_book, "A1"), the_sheet(rack_book, "B1")

    assert first.before is None
    assert first.after == tray_id(rack_book, "A2")
    assert last.after is None
    assert last.place == (3, 3)


def test_conditions_that_nobody_noted_are_left_out(rack_book: Book) -> None:
    names = [name for name, _ in the_sheet(rack_book).conditions]

    assert "Medium" in names
    assert "Heat mat" not in names


def test_the_description_tells_the_numbers_to_those_who_cannot_see(rack_book: Book, tmp_path: Path) -> None:
    photograph(rack_book, "A1", tmp_path, coverage=55.0, **MOLDY)

    description = the_sheet(rack_book).description

    assert "day 7" in description
    assert "Coverage 55 %" in description
    assert "1 possible mold: 6.0 cm²" in description


def test_the_presenters_know_no_qt() -> None:
    asked = (
        "import sys, gui.traysheet.view, gui.intake.view, gui.photo.viewport; print('PySide6' in sys.modules)"
    )

    answer = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)

    assert answer.stdout.strip() == "False"


def test_a_suspect_that_closed_itself_is_no_longer_seen_unless_a_person_has_said_more() -> None:
    line = SuspectLine(
        id=1, number=1, title="", why="", said=None, x_mm=1.0, y_mm=1.0, radius_mm=5.0, closed=True
    )

    assert line.word == "no longer seen"
    assert replace(line, said=Said.MOLD).word == "mold"
