"""A first trial from the first start to the report, through the screens alone, with a picture of every step.

Run by hand: EVENSTAND_WALK=DIR python -m pytest -s -m sweep tests/bench/test_first_trial.py
The pictures are for looking: what stops, confuses, is cut off, crowded or empty. With EVENSTAND_BOOK, a
scored demonstration, the verdict is held against its verdict: places, crops and media are the same.
EVENSTAND_SCHEME=dark and EVENSTAND_TEXT=150 dress the window otherwise. EVENSTAND_HAND=keys
walks without a mouse: every button and field is reached by Tab and arrows, or the walk ends.

Keys and clicks; but for the system's file dialogs, and the calendar, which is moved from morning to morning.
"""

import os
from collections.abc import Iterator
from pathlib import Path

import cv2
import numpy as np
import pypdfium2
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QDateEdit, QDialog, QWidget

from data.book import Book
from data.demo import demo_photos, trays
from data.verdict.verdicts import CropVerdict, verdicts
from gui.app import Start, make_window
from gui.frame.helpwindow import HelpWindow
from gui.home import Memory
from gui.verdict.blindwindow import BlindWindow
from tests.bench.hand import Hand
from tests.bench.keyhand import KeyHand

TRIAL = "Peat against coir and mat"
CROPS = {"broccoli": 18, "red radish": 35}  # g of dry seed a tray, as in the demonstration
MEDIA = ("peat mix", "coir", "plant-fibre mat")
DAY = "2026-03-{:02d}"
SHEET_PX_PER_POINT = 2.0

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(1800)]


@pytest.fixture
def hand(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qapp: QApplication) -> Iterator[Hand]:
    """The program at its very first start."""
    monkeypatch.setenv("EVENSTAND_HOME", str(tmp_path / "home"))
    memory = Memory()
    memory.language = "en"
    memory.scheme = os.environ.get("EVENSTAND_SCHEME", "light")
    memory.text_percent = int(os.environ.get("EVENSTAND_TEXT", "100"))
    window = make_window(qapp, memory)
    window.resize(1366, 768)
    window.show()
    kind = KeyHand if os.environ.get("EVENSTAND_HAND") == "keys" else Hand
    one = kind(window, Path(os.environ.get("EVENSTAND_WALK", tmp_path / "walk")))
    yield one
    if isinstance(one, KeyHand):
        print(f"{one.keys} keys besides typing; the longest way: {one.longest[0]} keys to {one.longest[1]}")
    window.close()


def test_a_stranger_plans_prints_photographs_and_reads_a_verdict(hand: Hand, tmp_path: Path) -> None:
    start(hand)
    begin_an_own_book(hand)
    plan(hand)
    print_sheets(hand, tmp_path)
    sow(hand)
    put_trays_where_those_of_the_demonstration_stand(hand)
    mornings(hand)
    compare_with_the_demonstration(hand.window.book)
    confirm_a_mold(hand)
    mend_a_canopy(hand)
    weigh(hand)
    read_the_verdict(hand)
    score_blind(hand)
    look_at_materials(hand)
    report(hand, tmp_path)
    plan_the_next(hand)


# --- the first start, an own book


def start(hand: Hand) -> None:
    """The demonstration comes by itself; F1 leads to the first trial."""
    Start(hand.window).open(None)
    hand.until(lambda: hand.reads("This is the demonstration"))
    hand.wait(2.0)
    hand.look("first-start", settle=False)
    hand.key("F1", settle=False)
    (helping,) = hand.window.findChildren(HelpWindow)
    hand.wait(0.5)
    hand.look("help", helping, settle=False)
    helping.show_page("first-trial")
    hand.wait(0.5)
    hand.look("help-first-trial", helping, settle=False)
    helping.close()


def begin_an_own_book(hand: Hand) -> None:
    """What is empty teaches."""

    def name_it(dialog: QDialog) -> None:
        hand.look("new-book", dialog, settle=False)
        hand.write("Name", "Mat", dialog)

    hand.press("Start my own book", then=name_it)
    set_day(hand, 2)
    hand.look("own-book")
    for number, place in enumerate(("intake", "traysheet", "plan", "verdict", "materials"), start=2):
        hand.key(f"Ctrl+{number}")
        hand.look(f"empty-{place}")
    hand.key("Ctrl+1")


# --- the plan, printing, sowing


def plan(hand: Hand) -> None:
    """Three shelves of six places, two crops on three media, read on day 9."""
    hand.press("Plan a trial")
    hand.settle()
    hand.press("Plan a trial")
    hand.look("plan-question")
    hand.write("for example: Can I leave peat without losing quality?", "Can I leave peat?")
    hand.write("for example: Fibre mat in spring", TRIAL)
    hand.look("plan-varies-empty")
    for crop in CROPS:
        hand.write("Another crop", crop)
    for medium in MEDIA:
        hand.write("Another medium", medium)
    hand.look("plan-varies-untrusted")
    hand.press("peat mix is the one I trust")
    for crop, grams in CROPS.items():
        hand.write(f"{crop}, read on day", "9")
        hand.write(f"{crop}, dry seed a tray", str(grams))
    hand.look("plan-varies")
    hand.press("Next")
    hand.look("plan-how-many")
    hand.write("Trays of each", "3")
    hand.look("plan-how-many-three")
    hand.press("Next")
    hand.look("plan-shelves-one")
    hand.press("Another shelf")
    hand.press("Another shelf")
    hand.look("plan-shelves")
    hand.press("Next")
    hand.look("plan-keep")
    hand.press("Keep the plan and draw the places")
    hand.look("places")


def print_sheets(hand: Hand, folder: Path) -> None:
    """The sheets as a PDF, whose tags the program itself can read."""
    hand.press("Next: print")
    hand.look("print")
    sheets = folder / "sheets.pdf"
    hand.answer_files(saved=sheets)
    hand.press("Save as PDF...")
    hand.look("print-saved")
    numbers: set[int] = set()
    for number, page in enumerate(pages_of(sheets), start=1):
        cv2.imwrite(str(hand.pictures / f"sheet-{number:02d}.png"), page)
        numbers |= numbers_on(page)
    assert numbers >= set(range(10, 28)), "a tag is not printed, or cannot be read"
    assert numbers >= {0, 1, 2, 3}, "a card of the station is missing"


def pages_of(path: Path) -> list[NDArray[np.uint8]]:
    document = pypdfium2.PdfDocument(path)
    try:
        return [page.render(scale=SHEET_PX_PER_POINT, rev_byteorder=False).to_numpy() for page in document]
    finally:
        document.close()


def numbers_on(page: NDArray[np.uint8]) -> set[int]:
    marks = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11)
    _, numbers, _ = cv2.aruco.ArucoDetector(marks).detectMarkers(page)
    return set() if numbers is None else {int(number) for number in numbers.ravel()}


def sow(hand: Hand) -> None:
    """All trays are on the Bench then."""
    hand.press("Next: sow")
    hand.look("sow")
    hand.set_date(hand.find(QDateEdit, "Sown on"), QDate(2026, 3, 2))
    hand.press("They are sown: add 18 trays")
    hand.look("sown")
    hand.press("Go to the Bench")
    hand.look("bench-sown")


def put_trays_where_those_of_the_demonstration_stand(hand: Hand) -> None:
    """The lot fell otherwise there: crop and medium are corrected on the tray sheets."""
    wanted = {tray.tag_number: tray for tray in trays()}
    assert hand.window.book is not None
    corrected = 0
    for tray in hand.window.book.trays():
        there = wanted[tray.tag_number]
        if (tray.crop, tray.medium) == (there.crop, there.medium):
            continue
        open_tray(hand, tray.code)
        hand.press("Conditions")
        hand.write("Crop", there.crop)
        hand.write("Medium", there.medium)
        corrected += 1
        if corrected == 1:
            hand.look("conditions")
        hand.press("Keep")
        hand.settle()
    assert [(t.crop, t.medium) for t in hand.window.book.trays()] == [(t.crop, t.medium) for t in trays()]


# --- the mornings


def mornings(hand: Hand) -> None:
    """Days 3, 5 (one shelf), 8 and 9 of the demonstration's photos; the verdict runs along."""
    bring_in(hand, 3)
    hand.look("intake-day3")
    hand.key("Ctrl+1")
    hand.look("bench-day3")
    hand.key("Ctrl+5")
    hand.look("verdict-before-the-day")
    bring_in(hand, 5, "C")
    bring_in(hand, 8)
    hand.key("Ctrl+1")
    hand.look("bench-day8")
    see_a_look(hand)
    bring_in(hand, 9, "AB")
    hand.key("Ctrl+5")
    hand.look("verdict-so-far")
    assert hand.reads("So far")
    bring_in(hand, 9, "C")
    hand.key("Ctrl+1")
    hand.look("bench-day9")


def bring_in(hand: Hand, day: int, shelves: str = "ABC") -> None:
    ends = f"day{day:02d}"
    photos = [p for p in demo_photos() if p.stem.endswith(ends) and p.stem[0] in shelves]
    set_day(hand, 2 + day)
    hand.key("Ctrl+2")
    hand.answer_files(photos=photos)
    hand.press("Choose photos")
    hand.wait(3.0)
    hand.look(f"intake-running-{ends}", settle=False)
    hand.settle()


def see_a_look(hand: Hand) -> None:
    """The first line is seen, then it was not."""
    hand.press("Seen")
    hand.look("bench-seen")
    hand.key("Ctrl+Z")
    hand.press("What went away", then=lambda dialog: hand.look("what-went-away", dialog, settle=False))
    hand.settle()


def compare_with_the_demonstration(book: Book | None) -> None:
    """The same photos on the same places give the same answer."""
    folder = os.environ.get("EVENSTAND_BOOK")
    if folder is None or book is None:
        print("no EVENSTAND_BOOK: the verdict is not held against that of the demonstration")
        return
    with Book.open(Path(folder)) as demo:
        here, there = verdicts(book), verdicts(demo)
    if {one.method for one in here} != {one.method for one in there}:
        print("the demonstration of EVENSTAND_BOOK was scored by another version: not comparable")
        return
    assert numbers_of(here) == numbers_of(there)


def numbers_of(found: tuple[CropVerdict, ...]) -> list[tuple[object, ...]]:
    """Crop, medium, mean, limits and answer of the canopy score, to a tenth."""
    told: list[tuple[object, ...]] = []
    for one in found:
        if one.kind == "canopy score":
            for line in sorted(one.verdict.media, key=lambda line: line.medium):
                limits = [None if n is None else round(n, 1) for n in (line.mean, line.low, line.high)]
                told.append((one.crop, line.medium, *limits, line.outcome))
    return told


# --- what only a person can say


def confirm_a_mold(hand: Hand) -> None:
    """The person says that a suspect is mold, looks at the verdict, takes it back."""
    code = a_tray_with_a_suspect(hand.window.book)
    if code is None:
        print("no photo of the walk shows a suspect: none is confirmed")
        return
    open_tray(hand, code)
    hand.look("tray-with-suspect")
    for _ in range(3):  # from day 9 over day 8 to day 5, until there is one
        if hand.shows("Suspect 1: Mold"):
            break
        hand.key("Left")
    hand.look("suspect")
    hand.press("Suspect 1: Mold")
    hand.look("said-mold")
    hand.key("Ctrl+1")
    hand.look("bench-mold")
    hand.key("Ctrl+5")
    hand.key("Alt+Down")
    hand.look("verdict-mold")
    hand.key("Alt+Up")
    hand.key("Ctrl+Z")


def a_tray_with_a_suspect(book: Book | None) -> str | None:
    """The first on the rack."""
    assert book is not None
    seen = {one.tray_id for one in book.seen_suspects()}
    return next((tray.code for tray in book.trays() if tray.id in seen), None)


def open_tray(hand: Hand, code: str) -> None:
    """By the search on the Bench, and Enter on its tile."""
    hand.key("Ctrl+1")
    hand.key("Ctrl+F")
    field = QApplication.focusWidget()
    assert field is not None
    QTest.keyClicks(field, code)
    hand.settle()
    rack = hand.find(QAbstractItemView, "The rack")
    hand.focus(rack)
    QTest.keyClick(rack, Qt.Key.Key_Home)
    QTest.keyClick(rack, Qt.Key.Key_Return)
    hand.settle()


def mend_a_canopy(hand: Hand) -> None:
    """A stroke of the eraser on A4, kept, and taken back."""
    open_tray(hand, "A4")
    hand.press("Mend")
    hand.look("mend")
    hand.press("Eraser")
    view = hand.find(QWidget, "Canopy of the tray, to be mended with the brush")
    hand.stroke(view)
    hand.look("mend-stroke")
    hand.press("Keep this canopy")
    hand.look("mend-kept")
    hand.key("Ctrl+Z")
    hand.settle()


def weigh(hand: Hand) -> None:
    """A number in another unit is asked about."""
    hand.key("Ctrl+1")
    hand.key("Ctrl+F")
    field = QApplication.focusWidget()
    assert field is not None
    QTest.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClick(field, Qt.Key.Key_Delete)
    for line in ("A1 812", "11 798", "A3 28.6"):
        hand.write("Tray and number", line)
    hand.look("weights")


# --- answers


def read_the_verdict(hand: Hand) -> None:
    """From the sentence down to how it was worked out, both crops."""
    hand.key("Ctrl+5")
    hand.look("verdict")
    page = hand.window.screens["verdict"].page
    for share in (0.5, 1.0):
        page.verticalScrollBar().setValue(round(share * page.verticalScrollBar().maximum()))
        hand.look(f"verdict-down-{share:.0%}")
    hand.press("How this was worked out")
    page.verticalScrollBar().setValue(page.verticalScrollBar().maximum())
    hand.look("verdict-how")
    hand.key("Alt+Down")
    hand.look("verdict-red-radish")
    hand.press("Limits and weights")
    hand.look("verdict-rule")
    hand.key("Esc")
    hand.settle()


def score_blind(hand: Hand) -> None:
    """Every picture gets a score by the keys."""
    hand.press("Score blind by eye")
    hand.wait(0.3)
    asking = next(d for d in hand.window.findChildren(QDialog) if d.isVisible())
    hand.look("blind-asking", asking, settle=False)
    hand.write("Who scores", "Kim", asking)
    hand.wait(0.5)
    (blind,) = hand.window.findChildren(BlindWindow)
    blind.showNormal()
    blind.resize(1366, 768)
    hand.settle()
    hand.look("blind-first", blind)
    for number in range(blind.state.total):
        QTest.keyClick(blind.page.slider, Qt.Key.Key_9 if number % 3 else Qt.Key.Key_7)
        QTest.keyClick(blind.page.slider, Qt.Key.Key_Return)
        hand.settle()
    hand.look("blind-result", blind)
    hand.press("To the verdict", blind)
    hand.look("verdict-after-eye")


def look_at_materials(hand: Hand) -> None:
    """Side by side on everything else."""
    hand.key("Ctrl+6")
    hand.look("materials")


def report(hand: Hand, folder: Path) -> None:
    """The report as PDF, its pages as pictures."""
    path = folder / "report.pdf"
    hand.answer_files(saved=path)
    hand.key("Ctrl+5")

    def save(dialog: QDialog) -> None:
        hand.settle()
        hand.look("report", dialog)
        hand.press("Save as PDF or HTML...", dialog)
        hand.until(lambda: not dialog.isVisible())

    hand.press("Report...", then=save)
    hand.settle()
    for number, page in enumerate(pages_of(path), start=1):
        cv2.imwrite(str(hand.pictures / f"report-{number:02d}.png"), page)


def plan_the_next(hand: Hand) -> None:
    """What is not shown leads to a plan with as many trays as would settle it."""
    hand.key("Ctrl+5")
    hand.press_beginning("Plan the next trial")
    hand.look("next-trial")
    hand.press("3 How many")
    hand.look("next-trial-trays")


def set_day(hand: Hand, day: int) -> None:
    """A night has passed."""
    assert hand.window.book is not None
    hand.window.book.set_setting("today", DAY.format(day))
    hand.window.following.book_changed()
