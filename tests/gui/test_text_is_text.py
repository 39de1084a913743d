"""Text from a person is shown as it was typed: no label, button or hint of the window takes it for HTML."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtGui import Qt
from PySide6.QtWidgets import QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from data.events import EventKind
from data.records import PhotoId, TrayId
from data.trial import CropPlan
from gui.home import Memory
from gui.intake.photopanel import PhotoPanel
from gui.intake.view import IntakeRow, Kind
from gui.places import Places
from gui.plan.croprow import CropRow
from gui.plan.mediumrow import MediumRow
from gui.style.wardrobe import Wardrobe
from gui.traysheet.views import View
from gui.window import Window
from gui.work import Work
from tests.data.builders import a_note, a_tray, score_note
from tests.made.books import an_empty_book

MARK = "<b>bold</b>"
TAGS = ("<b>", "<i>", "<u>", "<img")


@pytest.fixture
def named_book(tmp_path: Path) -> Iterator[Book]:
    """Everything that a person may name is named in HTML."""
    with an_empty_book(tmp_path / "book") as book:
        trays = book.add_trays(
            a_tray(
                f"{MARK}{n}",
                crop="<i>cress</i>",
                medium=("<u>mat</u>", "<b>coir</b>")[n % 2],
                seed_lot="<i>lot</i>",
                note="<img src=x>",
                shelf="<b>S</b>",
                block="<i>one</i>",
                trial="<u>trial</u>",
                tag_number=10 + n,
            )
            for n in range(4)
        )
        book.set_setting("today", "2026-03-09")
        for n in range(4):
            path = a_note(tmp_path, f"<b>{n}.jpg", tag=10 + n, suspects=[{"area_cm2": 9.0}])
            book.keep(score_note(path), path)
        book.add_event(trays[:1], EventKind.WATERED, book.now(), "<b>note</b>")
        yield book


def rich(widget: QWidget) -> Iterator[str]:
    """What a person's text would turn into HTML below a widget."""
    for label in widget.findChildren(QLabel):
        text = label.text()
        if not any(tag in text for tag in TAGS):
            continue
        as_html = label.textFormat() == Qt.TextFormat.RichText or (
            label.textFormat() == Qt.TextFormat.AutoText and Qt.mightBeRichText(text)
        )
        if as_html:
            yield f"{label.objectName() or type(label.parent()).__name__}: {text[:60]}"
    for part in (widget, *widget.findChildren(QWidget)):
        hint = part.toolTip()
        if any(tag in hint for tag in TAGS) and Qt.mightBeRichText(hint):
            yield f"hint of {type(part).__name__} in {type(part.parent()).__name__}: {hint[:60]}"


def test_no_place_of_the_window_takes_a_name_for_html(
    qtbot: QtBot, tmp_path: Path, dressed: QApplication, memory: Memory, work: Work, named_book: Book
) -> None:
    window = Window(work, memory, Wardrobe(dressed, memory), Places(work))
    qtbot.addWidget(window)
    window.show()
    window.desk.take(named_book)
    found: set[str] = set()

    def settle() -> None:
        qtbot.waitUntil(lambda: not work.jobs(), timeout=20_000)
        found.update(rich(window))

    for place in window.screens:
        window.go_to(place)
        settle()
    sheet = window.screens.traysheet
    window.open_tray(named_book.trays()[0].id)
    settle()
    assert MARK in sheet.title.text()
    for view in View:
        sheet.show_view(view)
        settle()
    window.sayings.tell(f"{MARK} was told")
    window.sayings.tell_trouble(f"{MARK} is in trouble")
    settle()
    window.close()
    assert sorted(found) == []


def test_an_ampersand_in_a_name_is_seen_on_buttons(
    qtbot: QtBot, tmp_path: Path, dressed: QApplication, work: Work
) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    crop = CropPlan(name="pea & bean", read_on_day=9, sowing_rate_g=18.0)
    medium = MediumRow("peat & perlite", lambda: None, lambda: None, lambda _medium, _kind: None, parent)
    panel = PhotoPanel(work)
    qtbot.addWidget(panel)
    panel.show_row(
        IntakeRow(
            key=1, name="a.jpg", kind=Kind.PROPOSED, sentence="", photo_id=PhotoId(1), tray_id=TrayId(1),
            photo=tmp_path / "a.jpg", tray_code="A&B", proposal_id=TrayId(2), proposal_code="C&D",
        )
    )  # fmt: skip

    texts = [CropRow(crop, lambda: None, parent).taken.text(), medium.taken.text()]
    texts += [panel.confirm.text(), panel.sheet.text()]
    assert texts == ["pea && bean", "peat && perlite", "Yes, C&&D", "Open A&&B"]
    assert medium.taken.accessibleName() == "peat & perlite"
