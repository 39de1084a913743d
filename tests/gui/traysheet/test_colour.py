"""How far a canopy's colour is from others, on the Tray sheet."""

from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.chapters.colourapart import ColourApart
from data.records import PhotoId, TrayId
from gui.notes.colourlines import colour_lines
from gui.traysheet.screen import TraySheet
from gui.work import Work
from tests.gui.rackbook import photograph
from vision.colourdifference import ColourDifference
from vision.reason import Reason

APART = ColourApart(
    photo_id=PhotoId(1),
    before=ColourDifference(value=4.3, even=0.4, lighter=4.5),
    before_at=datetime(2026, 3, 7, 8),
    mates=ColourDifference(value=1.2, even=1.1, lighter=-0.3),
    mate_codes=("B1", "B4"),
    medium="peat mix",
)


def test_each_line_says_what_the_number_means_and_against_what_it_stands() -> None:
    before, mates = colour_lines(APART)

    assert (before.label, before.value) == ("Colour against the photo before", "4.3")
    assert before.means == "plainly seen, mostly lighter"
    assert "photo of 7 Mar 2026, 08:00" in before.how
    assert "equally light it would be 0.4" in before.how
    assert (mates.label, mates.value, mates.means) == (
        "Colour against mates on peat mix",
        "1.2",
        "hardly seen",
    )
    assert "(B1, B4)" in mates.how


@pytest.mark.parametrize(
    ("value", "means"),
    [(0.94, "not seen"), (0.96, "hardly seen"), (2.0, "seen side by side"), (3.6, "plainly seen")],
)
def test_the_words_follow_the_number_as_it_is_shown(value: float, means: str) -> None:
    lines = colour_lines(replace(APART, before=ColourDifference(value=value, even=value, lighter=0.0)))

    assert lines[0].means == means


def test_a_darker_photo_of_a_like_canopy_is_called_so() -> None:
    darker = ColourDifference(value=4.0, even=0.2, lighter=-4.2)

    assert colour_lines(replace(APART, before=darker))[0].means == "plainly seen, mostly darker"


def test_why_it_cannot_be_told_stands_in_its_place() -> None:
    unlike = ColourDifference(value=None, reason=Reason.ONE_PATCH)
    (line,) = colour_lines(replace(APART, before=unlike, mates=None))

    assert (line.value, line.missing) == ("–", True)
    assert line.how == str(Reason.ONE_PATCH)


# --- on the sheet


@pytest.fixture
def sheet(qtbot: QtBot, dressed: QApplication, work: Work, rack_book: Book, tmp_path: Path) -> TraySheet:
    """A1 with two days, its mate A2 with the second of them; coir is trusted. All have the same colour."""
    rack_book.set_trusted("coir")
    for code, day in (("A1", 7), ("A1", 8), ("A2", 8)):
        photograph(rack_book, code, tmp_path, taken_at=f"2026-03-0{day}T08:00:00")
    sheet = TraySheet(work)
    qtbot.addWidget(sheet)
    sheet.open_book(rack_book)
    return sheet


def shown(sheet: TraySheet) -> dict[str, str]:
    return {line.label: line.value for line in sheet.side._colour}


def tray_of(book: Book, code: str) -> TrayId:
    return next(tray.id for tray in book.trays() if tray.code == code)


def test_the_sheet_does_not_wait_for_it_and_shows_it_when_it_comes(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    sheet.open_tray(tray_of(rack_book, "A1"))

    assert shown(sheet) == {"Colour against the photo before": "…"}
    qtbot.waitUntil(lambda: len(shown(sheet)) == 2, timeout=20_000)
    assert shown(sheet) == {"Colour against the photo before": "0.0", "Colour against mates on coir": "0.0"}
    stops = [stop.accessibleName() for stop in sheet.side.stops()]
    assert "Colour against mates on coir: 0.0: not seen" in stops


def test_a_day_chosen_meanwhile_is_the_one_that_is_told(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    first, _ = rack_book.days(tray_of(rack_book, "A1"))
    sheet.open_tray(tray_of(rack_book, "A1"))
    sheet.strip.day_chosen.emit(int(first.photo_id))

    qtbot.waitUntil(lambda: not sheet.work.jobs(), timeout=20_000)

    (line,) = sheet.side._colour
    assert line.how == str(Reason.FIRST_PHOTO)


def test_a_mate_photographed_meanwhile_is_counted(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, tmp_path: Path
) -> None:
    sheet.open_tray(tray_of(rack_book, "A1"))
    qtbot.waitUntil(lambda: len(shown(sheet)) == 2, timeout=20_000)
    photograph(rack_book, "B1", tmp_path, taken_at="2026-03-08T09:00:00")

    sheet.renew()

    qtbot.waitUntil(lambda: "(A2, B1)" in sheet.side._colour[1].how, timeout=20_000)


def test_a_tray_without_a_photo_has_no_such_line(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    sheet.open_tray(tray_of(rack_book, "A1"))
    sheet.open_tray(tray_of(rack_book, "B1"))

    qtbot.waitUntil(lambda: not sheet.work.jobs(), timeout=20_000)

    assert shown(sheet) == {}
