"""The morning's numbers in one line: for which tray, how much, and what is asked before it is kept."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.book import Book
from data.entry.units import UnitSystem
from data.events import EventKind
from data.numbers import TrayId
from data.readings import ReadingKind
from data.records import Tile
from gui.bench.lately import Lately
from gui.bench.quickline import KINDS, Nameable, quick_entry
from gui.bench.screen import Bench
from gui.controls.flow import Flow
from gui.work import Work

WEIGHT = ReadingKind.WEIGHT
TAGS = {11: TrayId(1), 12: TrayId(2)}


def tile(number: int, code: str) -> Tile:
    return Tile(
        tray_id=TrayId(number), code=code, crop="broccoli", medium="coir", shelf="A", position=number, day=7,
        photo_id=None, taken_at=None, thumbnail=None, coverage=None, growth=(), mold=False,
    )  # fmt: skip


A1, A2 = tile(1, "A1"), tile(2, "A2")


RACK = Nameable(tiles=(A1, A2), tags=TAGS)


def read(text: str, kind=WEIGHT, chosen=(), earlier=(), system=UnitSystem.METRIC):
    return quick_entry(text, kind, RACK, chosen, system, lately=lambda *_: Lately(own=earlier))


@pytest.mark.parametrize("text", ["A2 798", "a2 798 g", "A2 0.798 kg", "12 798"])
def test_a_tray_is_named_by_its_code_or_by_the_number_of_its_tag(text: str) -> None:
    entry = read(text)

    assert (entry.trays, entry.value, entry.problem) == ((A2,), 798.0, "")


def test_a_number_alone_is_for_the_trays_that_are_chosen() -> None:
    assert read("812", chosen=(A1,)).trays == (A1,)
    assert read("812", chosen=(A1, A2)).trays == (A1, A2)
    assert read("11", chosen=(A2,)).value == 11.0  # a number, though there is a tag 11


def test_a_bare_number_is_in_the_growers_own_unit() -> None:
    entry = read("A1 28.6", system=UnitSystem.US)

    assert entry.value == pytest.approx(28.6 * 28.349523125)  # exact since 1959: 1 lb = 453.59237 g


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "Type the tray first"),
        ("812", "Type the tray first"),
        ("Z9 812", "called Z9"),
        ("A1", "Type a number"),
        ("A1 heavy", "no number"),
    ],
)
def test_what_is_missing_is_said(text: str, said: str) -> None:
    assert said in read(text).problem


def test_a_code_that_two_growing_trays_carry_is_not_guessed_at() -> None:
    twin = replace(A2, code="a1")
    entry = quick_entry("A1 812", WEIGHT, Nameable(tiles=[A1, twin]))

    assert entry.problem.startswith("2 growing trays are called A1: choose one on the rack")
    chosen = quick_entry("812", WEIGHT, Nameable(tiles=[A1, twin]), (twin,))
    assert (chosen.trays, chosen.value) == ((twin,), 812)


def test_a_number_that_is_the_code_of_one_tray_and_the_tag_of_another_is_not_guessed_at() -> None:
    twelve = replace(A1, code="12")

    entry = quick_entry("12 812", WEIGHT, Nameable(tiles=[twelve, A2], tags={12: A2.tray_id}))
    assert entry.problem.startswith("12 is the code of one tray and the tag of another")
    own = quick_entry("12 812", WEIGHT, Nameable(tiles=[twelve, A2], tags={12: twelve.tray_id}))
    assert own.trays == (twelve,)


def test_a_number_that_looks_like_another_unit_is_asked_about() -> None:
    entry = read("A1 34", earlier=[1180.0, 1120.0])

    assert entry.doubt is not None
    assert entry.doubt.instead == pytest.approx(964, abs=1)


def test_what_was_done_needs_no_number_and_throwing_away_needs_a_reason() -> None:
    assert read("A1 by hand", EventKind.WATERED).note == "by hand"
    assert read("", EventKind.WATERED, chosen=(A1, A2)).trays == (A1, A2)
    assert "Say why" in read("A1", EventKind.THROWN_AWAY).problem
    assert read("A1 mold", EventKind.THROWN_AWAY).problem == ""


def test_a_note_is_words_for_a_tray_and_never_empty() -> None:
    assert read("A1 thin at the door", EventKind.NOTE).note == "thin at the door"
    assert read("thin at the door", EventKind.NOTE, chosen=(A2,)).trays == (A2,)
    assert read("A1", EventKind.NOTE).problem == (
        "Type the note behind the tray, for example A1 thin at the door."
    )


# --- on the Bench


@pytest.fixture
def bench(qtbot: QtBot, work: Work, dressed, rack_book: Book) -> Bench:
    made = Bench(work)
    qtbot.addWidget(made)
    made.resize(1300, 700)
    made.show()
    made.open_book(rack_book)
    qtbot.waitUntil(lambda: made.rack.model().rowCount() == 3)
    return made


def type_line(qtbot: QtBot, bench: Bench, text: str) -> None:
    qtbot.keyClicks(bench.quick.line, text)
    qtbot.keyClick(bench.quick.line, Qt.Key.Key_Return)


def weights(book: Book) -> dict[str, list[float]]:
    return {tray.code: [one.value for one in book.readings(tray.id, WEIGHT)] for tray in book.trays()}


def test_line_after_line_is_kept_and_can_be_taken_back(qtbot: QtBot, bench: Bench, rack_book: Book) -> None:
    type_line(qtbot, bench, "A1 812")
    type_line(qtbot, bench, "A2 798")

    assert weights(rack_book) == {"A1": [812.0], "A2": [798.0], "B1": []}
    assert bench.quick.line.text() == ""
    assert "A2 798 g" in bench.quick.said.text()
    assert rack_book.undo() == "weight of A2"


def test_a_rack_is_weighed_with_the_number_pad_alone(qtbot: QtBot, bench: Bench, rack_book: Book) -> None:
    bench.rack.setCurrentIndex(bench.rack.model().index(0))
    for number in ("812", "798", "805"):
        type_line(qtbot, bench, number)

    assert weights(rack_book) == {"A1": [812.0], "A2": [798.0], "B1": [805.0]}


def test_the_number_pad_goes_through_the_kinds(qtbot: QtBot, bench: Bench) -> None:
    qtbot.keyClicks(bench.quick.line, "*")
    second = bench.quick.what
    qtbot.keyClicks(bench.quick.line, "/")

    assert (bench.quick.what, second) == KINDS[:2]
    assert bench.quick.line.text() == ""


def test_all_chosen_trays_are_noted_at_once_as_one_step(qtbot: QtBot, bench: Bench, rack_book: Book) -> None:
    bench.rack.selectAll()
    bench.quick.kind.setCurrentIndex(KINDS.index(ReadingKind.WATER))
    type_line(qtbot, bench, "300")

    given = [rack_book.readings(tray.id, ReadingKind.WATER)[0].value for tray in rack_book.trays()]
    assert given == [300.0] * 3
    rack_book.undo()
    assert rack_book.readings(kind=ReadingKind.WATER) == ()


def test_nothing_doubtful_is_kept_before_it_is_answered(qtbot: QtBot, bench: Bench, rack_book: Book) -> None:
    type_line(qtbot, bench, "A1 1120")
    type_line(qtbot, bench, "A1 34")
    asked = weights(rack_book)["A1"]
    assert bench.quick.keep.isHidden(), "the answers stand in its place"
    qtbot.mouseClick(bench.quick.instead, Qt.MouseButton.LeftButton)

    assert asked == [1120.0]
    assert bench.quick.keep.isVisible()
    assert weights(rack_book)["A1"][1] == pytest.approx(964, abs=1)


def test_a_finger_that_bounces_on_note_it_does_not_answer_what_is_asked(
    qtbot: QtBot, bench: Bench, rack_book: Book
) -> None:
    type_line(qtbot, bench, "A1 1120")
    bench.quick.line.setText("A1 34")
    qtbot.mouseClick(bench.quick.keep, Qt.MouseButton.LeftButton)
    assert bench.quick.as_typed.isVisible(), "it stands under the same finger now"
    qtbot.mouseClick(bench.quick.as_typed, Qt.MouseButton.LeftButton)
    assert weights(rack_book)["A1"] == [1120.0]

    qtbot.wait(QApplication.doubleClickInterval() + 50)
    qtbot.mouseClick(bench.quick.as_typed, Qt.MouseButton.LeftButton)
    assert weights(rack_book)["A1"] == [1120.0, 34.0]


def test_a_finger_that_bounces_on_note_it_goes_on_to_no_other_tray(
    qtbot: QtBot, bench: Bench, rack_book: Book
) -> None:
    bench.rack.setCurrentIndex(bench.rack.model().index(0, 0))
    bench.quick.kind.setCurrentIndex(KINDS.index(EventKind.TURNED))
    for _ in range(2):
        qtbot.mouseClick(bench.quick.keep, Qt.MouseButton.LeftButton)
    turned = [one for tray in rack_book.trays() for one in rack_book.events(tray.id)]
    assert len(turned) == 1


def test_typing_on_takes_the_question_away(qtbot: QtBot, bench: Bench, rack_book: Book) -> None:
    type_line(qtbot, bench, "A1 1120")
    type_line(qtbot, bench, "A1 34")
    bench.quick.line.setText("A1 1034")

    assert not bench.quick.instead.isVisible()
    qtbot.keyClick(bench.quick.line, Qt.Key.Key_Return)
    assert weights(rack_book)["A1"] == [1120.0, 1034.0]


def test_several_trays_are_chosen_with_space_and_none_is_opened(qtbot: QtBot, bench: Bench) -> None:
    opened: list[int] = []
    bench.tray_wanted.connect(opened.append)
    bench.rack.setFocus()
    bench.rack.setCurrentIndex(bench.rack.model().index(0))
    qtbot.keyClick(bench.rack, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)

    assert [tile.code for tile in bench.rack.chosen] == ["A1", "A2"]
    qtbot.keyClick(bench.rack, Qt.Key.Key_Space)
    assert [tile.code for tile in bench.rack.chosen] == ["A1"]
    assert opened == []


def test_the_line_says_whom_it_is_for(bench: Bench) -> None:
    bench.rack.setCurrentIndex(bench.rack.model().index(1))
    assert "A2" in bench.quick.target.text()
    bench.rack.selectAll()
    assert "3" in bench.quick.target.text()


def test_a_slash_within_a_note_is_typed_and_changes_no_kind(
    qtbot: QtBot, bench: Bench, rack_book: Book
) -> None:
    bench.quick.kind.setCurrentIndex(bench.quick.kind.findData(EventKind.WATERED))
    type_line(qtbot, bench, "A1 1/2 litre")

    (kept,) = rack_book.events(rack_book.trays()[0].id)
    assert (kept.kind, kept.note) == (EventKind.WATERED, "1/2 litre")
    qtbot.keyClicks(bench.quick.line, "A1 by hand")
    qtbot.keyClick(bench.quick.line, Qt.Key.Key_Asterisk, Qt.KeyboardModifier.KeypadModifier)
    assert bench.quick.what is not EventKind.WATERED


def test_without_chosen_trays_the_line_begins_no_empty_row(
    qtbot: QtBot, bench: Bench, dressed: QApplication
) -> None:
    quick = bench.quick
    row = quick.layout().itemAt(1).layout()
    assert isinstance(row, Flow)
    before = [row.itemAt(number) for number in range(3)]
    assert [item.widget() for item in before] == [quick.kind, quick.line, quick.keep]
    across = sum(item.sizeHint().width() for item in before) + 2 * row.spacing()

    assert row.heightForWidth(across) == quick.keep.sizeHint().height()
    bench.rack.selectAll()
    assert not quick.target.isHidden()
    bench.rack.clearSelection()
    assert row.heightForWidth(across) == quick.keep.sizeHint().height()


def test_what_follows_the_cut_is_of_the_tray_that_has_ended_and_the_rest_of_the_one_that_grows() -> None:
    gone, newer = tile(9, "B7"), tile(8, "A1")  # A1 grew there before

    def asked(text: str, kind: ReadingKind) -> tuple[Tile, ...]:
        return quick_entry(text, kind, replace(RACK, ended=(gone, newer))).trays

    assert asked("b7 12", ReadingKind.LABOUR) == (gone,)
    assert asked("A1 9", ReadingKind.SHELF_LIFE) == (newer,)
    assert asked("A1 4", ReadingKind.LABOUR) == (A1,)
    assert asked("A2 9", ReadingKind.SHELF_LIFE) == (A2,)
    assert asked("B7 812", WEIGHT) == ()


def test_of_two_trays_of_one_code_that_ended_of_late_none_is_guessed() -> None:
    ended = (tile(9, "B7"), tile(8, "B7"))

    entry = quick_entry("B7 12", ReadingKind.LABOUR, replace(RACK, ended=ended))

    assert entry.trays == ()
    assert "2 trays called B7 ended of late" in entry.problem


def test_minutes_of_cleaning_are_typed_where_no_tray_grows_any_more(
    qtbot: QtBot, bench: Bench, rack_book: Book
) -> None:
    trays = rack_book.trays()
    rack_book.add_event([one.id for one in trays], EventKind.CUT, rack_book.now())
    bench.renew()
    qtbot.waitUntil(lambda: bench.after.isVisible(), timeout=5000)
    line = bench.after.line
    assert line.what is ReadingKind.LABOUR

    line.line.setText("A1 3")
    qtbot.keyClick(line.line, Qt.Key.Key_Return)

    (kept,) = rack_book.readings(kind=ReadingKind.LABOUR)
    ended = rack_book.tray(kept.tray_id)
    assert (ended.code, kept.value) == ("A1", 3.0)
    assert ended.done_at is not None
    assert kept.taken_at >= ended.done_at


def test_the_caution_of_tasting_stands_there_before_anything_is_typed(bench: Bench) -> None:
    bench.quick.kind.setCurrentIndex(KINDS.index(ReadingKind.TASTE))

    assert "Never taste where mold is or may be" in bench.quick.said.text()
