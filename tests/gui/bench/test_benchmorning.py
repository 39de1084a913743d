"""The morning on the Bench: lines answered, numbers typed, the rack narrowed, small windows."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.entry.units import UnitSystem
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from data.records import LookKind, TrayId
from gui.bench.quickline import KINDS
from gui.bench.rack import Narrowing
from gui.bench.screen import Bench
from gui.bench.view import Reading, bench_state
from gui.materials.kinddialog import KindDialog
from gui.work import Work
from tests.gui.rackbook import a_look, a_tile, photograph


@pytest.fixture
def bench(qtbot: QtBot, work: Work, dressed: QApplication) -> Iterator[Bench]:
    made = Bench(work)
    qtbot.addWidget(made)
    made.resize(1100, 720)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.open_book(None)


@pytest.fixture
def morning(bench: Bench, rack_book: Book, tmp_path: Path, qtbot: QtBot) -> Bench:
    """A1, A2, B1; A1 photographed today with a patch that may be mold."""
    patch = {"x_mm": 100.0, "y_mm": 50.0, "area_cm2": 6.0, "confidence": 0.9}
    photograph(rack_book, "A1", tmp_path, suspects=[patch])
    bench.book_changed.connect(bench.renew)
    bench.open_book(rack_book)
    qtbot.waitUntil(lambda: bench.rack.model().rowCount() == 3 and not bench.answers.is_running)
    return bench


def tray(book: Book, code: str) -> TrayId:
    return next(tray.id for tray in book.trays() if tray.code == code)


def weigh_a1(book: Book) -> None:
    weight = NewReading(kind=ReadingKind.WEIGHT, value=800.0, taken_at=book.now(), tray_id=tray(book, "A1"))
    book.add_readings([weight])


def typed(bench: Bench, text: str) -> None:
    """As from a number pad: the keys, then its Enter."""
    QTest.keyClicks(bench.quick.line, text)
    QTest.keyClick(bench.quick.line, Qt.Key.Key_Enter)


# --- the look list


def test_seen_puts_a_line_away_and_undo_brings_it_back(morning: Bench, rack_book: Book, qtbot: QtBot) -> None:
    morning.panel.looks.setFocus()
    qtbot.keyClick(morning.panel.looks, Qt.Key.Key_S)
    qtbot.waitUntil(lambda: morning.panel.title.text() == "Nothing needs a look")

    assert rack_book.undo() == "A1 seen"
    morning.renew()

    qtbot.waitUntil(lambda: morning.panel.title.text() == "1 tray needs a look")


def test_the_kind_of_a_medium_is_asked_where_what_to_do_depends_on_it(
    morning: Bench, rack_book: Book, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    detail = morning.panel.detail
    assert not detail.kind.isVisible()  # mold is mold on any medium
    edge = replace(a_look(2, what=LookKind.EDGE), asks_kind_of="coir")
    detail.show_look(replace(a_look(2), also=(edge,)))
    assert detail.kind.isVisible()

    def answer(dialog: KindDialog) -> int:
        dialog.buttons["loose"].click()
        return int(QDialog.DialogCode.Accepted)

    monkeypatch.setattr(KindDialog, "exec", answer)
    with qtbot.waitSignal(morning.book_changed):
        qtbot.mouseClick(detail.kind, Qt.MouseButton.LeftButton)

    assert {one.name: one.kind for one in rack_book.media_known()}["coir"] == "loose"
    assert rack_book.undo() == "coir described"


def test_until_tomorrow_brings_it_back_tomorrow(morning: Bench, rack_book: Book, qtbot: QtBot) -> None:
    qtbot.mouseClick(morning.panel.detail.tomorrow, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: morning.panel.title.text() == "Nothing needs a look")

    rack_book.set_setting("today", "2026-03-09")
    morning.renew()

    qtbot.waitUntil(lambda: "A1" in [look.code for look in morning._state.looks])


def test_what_stood_on_the_list_is_kept_by_reading_it_in_the_background(
    morning: Bench, rack_book: Book
) -> None:
    (past,) = rack_book.look_history()
    assert (past.code, past.what, past.gone_on) == ("A1", LookKind.SUSPECT, None)


def test_the_other_reasons_of_a_tray_stand_with_the_chosen_line(bench: Bench) -> None:
    other = a_look(1, what=LookKind.EDGE, sentence="The edge is thin.")
    look = a_look(1, why_urgent="Today: it lags.", also=(other,))
    bench.show_state(bench_state(Reading(tiles=(a_tile(1),), looks=(look,))))

    detail = bench.panel.detail
    assert detail.words.text() == "A1: Today: it lags.\nAlso: thin edge. The edge is thin."
    detail.be_brief(True)
    assert detail.words.text() == "A1: Today: it lags. Also: thin edge."
    assert "The edge is thin." in detail.words.toolTip()


def test_ctrl_s_and_a_key_held_down_put_nothing_away(morning: Bench, qtbot: QtBot) -> None:
    before = morning.panel.looks.model().rowCount()
    assert before > 0
    for key in (Qt.Key.Key_S, Qt.Key.Key_T):
        qtbot.keyClick(morning.panel.looks, key, Qt.KeyboardModifier.ControlModifier)
        held = QKeyEvent(QEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier, "s", True)
        QApplication.sendEvent(morning.panel.looks, held)
    qtbot.wait(20)
    qtbot.waitUntil(lambda: not morning.work.jobs(), timeout=10_000)

    morning.renew()
    qtbot.waitUntil(lambda: not morning.work.jobs(), timeout=10_000)
    assert morning.panel.looks.model().rowCount() == before


# --- quick entry


def test_weights_are_typed_one_after_the_other_from_a_number_pad(morning: Bench, rack_book: Book) -> None:
    for text in ("A1 812", "A2 798"):
        typed(morning, text)

    kept = rack_book.readings(kind=ReadingKind.WEIGHT)
    assert [(one.tray_id, one.value) for one in kept] == [
        (tray(rack_book, "A1"), 812.0), (tray(rack_book, "A2"), 798.0),
    ]  # fmt: skip
    assert morning.quick.said.text() == "Noted: A1 812 g · A2 798 g"
    assert rack_book.undo_text() == "weight of A2"


def test_a_tag_number_will_do_for_the_code_so_that_no_letter_is_needed(
    morning: Bench, rack_book: Book
) -> None:
    typed(morning, "11 640")  # tag 11 is on A1

    (kept,) = rack_book.readings(tray(rack_book, "A1"))
    assert kept.value == 640.0


def test_the_chosen_trays_are_watered_in_one_step_of_undo(morning: Bench, rack_book: Book) -> None:
    morning.rack.selectAll()
    morning.quick.kind.setCurrentIndex(morning.quick.kind.findData(ReadingKind.WATER))

    typed(morning, "300")

    assert sorted(one.value for one in rack_book.readings(kind=ReadingKind.WATER)) == [300.0] * 3
    rack_book.undo()
    assert rack_book.readings(kind=ReadingKind.WATER) == ()


def test_escape_leaves_a_question_and_gives_back_what_was_typed(
    morning: Bench, rack_book: Book, qtbot: QtBot
) -> None:
    weigh_a1(rack_book)
    typed(morning, "A1 28.4")
    assert morning.quick.instead.hasFocus()

    qtbot.keyClick(morning.quick.instead, Qt.Key.Key_Escape)

    assert morning.quick.line.hasFocus()
    assert morning.quick.line.selectedText() == "A1 28.4"
    assert morning.quick.instead.isHidden()
    assert len(rack_book.readings(kind=ReadingKind.WEIGHT)) == 1


def test_number_after_number_goes_along_the_rack(morning: Bench, rack_book: Book) -> None:
    morning.rack.setCurrentIndex(morning.rack.model().index(0, 0))

    for number in ("812", "798", "655"):
        typed(morning, number)

    kept = {code: rack_book.readings(tray(rack_book, code)) for code in ("A1", "A2", "B1")}
    assert {code: one.value for code, (one,) in kept.items()} == {"A1": 812.0, "A2": 798.0, "B1": 655.0}


def test_a_number_that_looks_like_ounces_is_asked_about_before_it_is_kept(
    morning: Bench, rack_book: Book, qtbot: QtBot
) -> None:
    weigh_a1(rack_book)

    typed(morning, "A1 28.4")

    assert "Which one is it?" in morning.quick.said.text()
    assert len(rack_book.readings(kind=ReadingKind.WEIGHT)) == 1
    qtbot.mouseClick(morning.quick.instead, Qt.MouseButton.LeftButton)
    newest = rack_book.readings(kind=ReadingKind.WEIGHT)[-1]
    assert newest.value == pytest.approx(28.4 * 28.349523125)  # international avoirdupois ounce, g


def test_a_slipped_digit_is_asked_about_and_can_be_typed_again_from_the_number_pad(
    morning: Bench, rack_book: Book, qtbot: QtBot
) -> None:
    before = NewReading(
        kind=ReadingKind.WEIGHT, value=2000.0, taken_at=rack_book.now(), tray_id=tray(rack_book, "A1")
    )
    rack_book.add_readings([before])

    typed(morning, "A1 31")
    assert "31 g stands against 2000 g before" in morning.quick.said.text()
    qtbot.keyClick(morning.quick.instead, Qt.Key.Key_Enter)
    assert len(rack_book.readings(kind=ReadingKind.WEIGHT)) == 1
    typed(morning, "A1 1931")

    assert rack_book.readings(kind=ReadingKind.WEIGHT)[-1].value == 1931.0


def test_who_types_on_without_reading_the_question_loses_no_number_and_answers_nothing(
    morning: Bench, rack_book: Book
) -> None:
    weigh_a1(rack_book)
    quick = morning.quick

    typed(morning, "A1 28.4")
    assert quick.instead.text() == "It was 805 g"
    for letter in "A2 900":
        QTest.keyClicks(quick.instead if quick.instead.isVisible() else quick.line, letter)
    assert quick.said.text() == "A1 28.4 g not kept"
    QTest.keyClick(quick.line, Qt.Key.Key_Enter)

    kept = [(one.tray_id, one.value) for one in rack_book.readings(kind=ReadingKind.WEIGHT)]
    assert kept == [(tray(rack_book, "A1"), 800.0), (tray(rack_book, "A2"), 900.0)]
    assert quick.said.text() == "Noted: A2 900 g · Not kept, since a question stood open: A1 28.4 g"


def test_what_was_not_kept_stays_named_until_it_is_typed_again(morning: Bench, rack_book: Book) -> None:
    """A rack is weighed with the eyes on the scale: four numbers later the lost one still stands there."""
    weigh_a1(rack_book)
    quick = morning.quick
    typed(morning, "A1 28.4")
    for letter in "A2 900":
        QTest.keyClicks(quick.instead if quick.instead.isVisible() else quick.line, letter)
    QTest.keyClick(quick.line, Qt.Key.Key_Enter)

    for number in (910, 920, 930, 940):
        typed(morning, f"A2 {number}")
    assert quick.said.text().endswith(" · Not kept, since a question stood open: A1 28.4 g")

    typed(morning, "A1 805")
    assert quick.said.text() == "Noted: A2 930 g · A2 940 g · A1 805 g"


def test_a_crop_that_yields_more_than_is_common_is_asked_about_once_and_not_at_every_tray(
    morning: Bench, rack_book: Book
) -> None:
    """Else the heaviest trays alone would be missing, and the medium that grew them would look worse."""
    quick = morning.quick
    quick.kind.setCurrentIndex(KINDS.index(ReadingKind.FRESH_MASS))

    typed(morning, "A1 900")
    assert "is unusual" in quick.said.text()
    QTest.mouseClick(quick.as_typed, Qt.MouseButton.LeftButton)
    typed(morning, "A2 980")
    assert quick.said.text() == "Noted: A1 900 g · A2 980 g"

    typed(morning, "B1 1900")
    assert "is unusual" in quick.said.text()


def test_a_grower_who_thinks_in_ounces_types_them(morning: Bench, rack_book: Book) -> None:
    morning.use_units(UnitSystem.US)
    assert morning.quick.line.placeholderText() == "Tray and number in oz"

    typed(morning, "A1 28.6")

    (kept,) = rack_book.readings(kind=ReadingKind.WEIGHT)
    assert kept.value == pytest.approx(28.6 * 28.349523125)
    assert "A1 28.6 oz" in morning.quick.said.text()


def test_which_end_of_the_scale_is_good_is_said_before_it_is_typed(morning: Bench) -> None:
    quick = morning.quick
    quick.kind.setCurrentIndex(quick.kind.findText("cut quality"))

    assert quick.line.placeholderText() == "Tray and number from 1 to 5"
    assert quick.said.text() == "cut quality: from 1 (torn, slipped, full of medium) to 5 (clean)"

    quick.kind.setCurrentIndex(quick.kind.findText("weight"))
    assert "clean" not in quick.said.text()


@pytest.mark.parametrize(
    ("kind", "said"),
    [
        (EventKind.MOLD_OUT, "The verdict counts it as mold"),
        (EventKind.THROWN_AWAY, "Was it mold? Name it here"),
        (EventKind.UNCOVERED, "blackout in Conditions ends then"),
    ],
)
def test_what_follows_of_a_deed_is_said_before_it_is_noted(
    morning: Bench, kind: EventKind, said: str
) -> None:
    place = morning.quick.kind.findData(kind)
    morning.quick.kind.setCurrentIndex(place)
    morning.quick.kind.activated.emit(place)

    assert said in morning.quick.said.text()


def test_a_tray_is_not_thrown_away_without_a_reason(morning: Bench, rack_book: Book) -> None:
    morning.quick.kind.setCurrentIndex(morning.quick.kind.findData(EventKind.THROWN_AWAY))
    typed(morning, "A2")
    assert "the reason counts" in morning.quick.said.text()

    morning.quick.line.clear()
    typed(morning, "A2 mold at the edge")

    (ended,) = rack_book.ended_trays()
    assert (ended.code, ended.ended_why) == ("A2", "mold at the edge")


def test_an_unknown_tray_is_told_and_nothing_is_kept(morning: Bench, rack_book: Book) -> None:
    typed(morning, "Z9 812")
    assert "No growing tray is called Z9" in morning.quick.said.text()
    assert rack_book.readings() == ()


# --- today, filters


def test_it_says_how_many_are_photographed_and_which_are_missing(morning: Bench) -> None:
    assert morning.head.soft.text() == "3 trays, 1 of 3 photographed today; missing: A2, B1"


def test_trays_in_the_dark_are_not_asked_for() -> None:
    today = date(2026, 3, 8)
    tiles = (a_tile(1), a_tile(2, taken_at=None), a_tile(3, taken_at=None))
    state = bench_state(Reading(tiles=tiles, today=today, covered=frozenset({TrayId(3)})))
    assert (state.to_photograph, state.missing) == (2, ("A2",))


def test_a_photo_of_a_day_to_come_is_none_of_today_as_the_look_list_says() -> None:
    ahead = datetime(2026, 11, 30, 8)  # a phone whose clock is months ahead
    tiles = (a_tile(1, taken_at=ahead), a_tile(2, taken_at=ahead))

    state = bench_state(Reading(tiles=tiles, today=date(2026, 3, 8), seen_today=frozenset({TrayId(2)})))

    assert state.missing == ("A1",)


def test_the_rack_is_narrowed_by_what_is_chosen_and_esc_shows_all_again(bench: Bench, qtbot: QtBot) -> None:
    bench._reading = Reading(tiles=(a_tile(1), a_tile(2, crop="pea", day=3), a_tile(3, day=3)))
    bench._refresh()
    bench.head.more.setChecked(True)
    bench.head.filters.day.setCurrentIndex(bench.head.filters.day.findData(3))
    bench.head.filters.crop.setCurrentIndex(bench.head.filters.crop.findData("pea"))
    assert bench.head.soft.text() == "1 of 3 trays"
    assert bench.head.more.text() == "Filters: 2 on"

    qtbot.keyClick(bench.head.filters.crop, Qt.Key.Key_Escape)

    assert bench.rack.model().rowCount() == 3


def test_only_the_missing_ones_can_be_shown() -> None:
    tiles = (a_tile(1), a_tile(2, taken_at=None))
    reading = Reading(tiles=tiles, today=date(2026, 3, 8))
    state = bench_state(reading, narrowed=Narrowing(missing=True))
    assert [one.tile.code for one in state.rack.standings] == ["A2"]


def test_pea_is_not_peat() -> None:
    tiles = (a_tile(1, crop="pea"), a_tile(2, medium="peat mix"))
    found = bench_state(Reading(tiles=tiles), "pea").rack.standings
    assert [one.tile.code for one in found] == ["A1"]


# --- small windows


def test_where_both_do_not_fit_f6_turns_from_the_looks_to_the_rack(bench: Bench, qtbot: QtBot) -> None:
    reading = Reading(tiles=tuple(map(a_tile, range(1, 8))), looks=tuple(map(a_look, range(1, 8))))
    bench._reading = reading
    bench._refresh()
    assert bench.switch.isHidden()

    bench.resize(700, 480)

    assert (bench.panel.isVisible(), bench.rack.isVisible()) == (True, False)
    with qtbot.waitActive(bench):
        bench.activateWindow()
    qtbot.keyClick(bench, Qt.Key.Key_F6)
    assert (bench.panel.isVisible(), bench.rack.isVisible()) == (False, True)
    assert bench.rack.hasFocus()


@pytest.mark.parametrize(
    ("width", "height", "both"), [(1366, 607, True), (1366, 539, True), (1024, 539, False)]
)
def test_a_wide_low_window_shows_looks_and_a_whole_row_of_tiles(
    morning: Bench, qtbot: QtBot, width: int, height: int, both: bool
) -> None:
    """Heights of 768 and 700 less the window's rows, the demonstration's band, a strip of progress."""
    tiles = tuple(a_tile(number) for number in range(1, 7))
    looks = tuple(a_look(number) for number in range(1, 7))
    morning.resize(width, height)
    morning.show_state(bench_state(Reading(tiles=tiles, looks=looks), "", Narrowing()))
    QTest.qWait(50)

    assert morning.switch.isHidden() is both
    if both:
        assert morning.panel.isVisible()
        model = morning.rack.model()
        foot = morning.rack.visualRect(model.index(0, 0)).bottom()
        assert foot <= morning.rack.viewport().height()
