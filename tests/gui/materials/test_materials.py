"""The place Materials: a table read in the background, tests led step by step, numbers kept and put back."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QLabel,
    QPushButton,
    QScrollArea,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)
from pytestqt.qtbot import QtBot

from data.book import Book
from data.entry.units import UnitSystem
from data.errors import BookReadOnly
from data.materials.table import ROWS, Cell, Origin
from data.medium.benchtest import BenchKind
from gui.app import make_window
from gui.home import Memory
from gui.materials.benchassistant import BenchAssistant
from gui.materials.cellpainter import WORDS, CellPainter
from gui.materials.factordialog import FactorDialog
from gui.materials.feeddialog import FeedDialog
from gui.materials.headings import broken
from gui.materials.kinddialog import KindDialog
from gui.materials.limitsdialog import LimitsDialog
from gui.materials.screen import Materials
from gui.materials.view import CellWords, cell_words, lines_of, row_of
from gui.style.palette import Space, dress
from gui.style.tokens import Scheme
from gui.work import Work
from tests.made.books import a_demonstration, an_empty_book


@pytest.fixture
def demo(tmp_path: Path, work: Work) -> Iterator[Book]:
    with a_demonstration(tmp_path / "demo") as book:
        yield book
        work.stop_all()


@pytest.fixture
def place(qtbot: QtBot, dressed: QApplication, work: Work, demo: Book) -> Materials:
    """The demonstration's media, read."""
    place = Materials(work)
    qtbot.addWidget(place)
    place.resize(1024, 560)
    with qtbot.waitActive(place):
        place.show()
    with qtbot.waitSignal(place.desk.was_read):
        place.open_book(demo)
    return place


def panel_text(place: Materials) -> str:
    return "\n".join(label.text() for label in place.panel.widget().findChildren(QLabel))


def test_media_are_columns_the_trusted_one_first(place: Materials) -> None:
    table = place.table
    heads = [table.horizontalHeaderItem(n).text() for n in range(table.columnCount())]

    assert heads == ["peat mix\ntrusted", "coir", "plant-fibre mat"]
    assert table.rowCount() == len(lines_of())


def test_the_trusted_medium_is_named_and_taken_back_and_its_cell_stays_chosen(
    place: Materials, demo: Book, qtbot: QtBot
) -> None:
    place.table.choose("kind", "peat mix")
    assert not place.head.trust.isEnabled()  # the plan's, as long as nothing else is said
    place.table.choose("kind", "plant-fibre mat")

    with qtbot.waitSignal(place.desk.was_read):
        qtbot.mouseClick(place.head.trust, Qt.MouseButton.LeftButton)

    table = place.table
    assert table.horizontalHeaderItem(0).text().endswith("trusted")
    assert table.horizontalHeaderItem(0).text().startswith("plant-fibre")
    assert place.head.name.text() == "plant-fibre mat"
    assert not place.head.trust.isEnabled()
    assert "plant-fibre mat is the trusted one" in place.head.trust.toolTip()
    assert demo.undo() == "trusted medium: plant-fibre mat"
    assert demo.trusted() is None


def test_no_medium_needs_sideways_scrolling_in_the_least_window_with_large_letters(
    place: Materials, qapp: QApplication
) -> None:
    dress(qapp, Scheme.LIGHT, 150)
    try:
        place.redress()
        qapp.processEvents()
        assert place.table.horizontalScrollBar().maximum() == 0
    finally:
        dress(qapp, Scheme.LIGHT)


def test_no_heading_is_cut_in_the_least_window_with_large_letters(
    place: Materials, qapp: QApplication
) -> None:
    dress(qapp, Scheme.LIGHT, 150)
    try:
        place.redress()
        qapp.processEvents()
        table = place.table
        wide = table.fontMetrics().horizontalAdvance
        for at in range(table.columnCount()):
            for line in table.horizontalHeaderItem(at).text().split("\n"):
                assert wide(line) < table.columnWidth(at), line
        for at in range(table.rowCount()):
            lines = table.verticalHeaderItem(at).text().split("\n")
            assert max(map(wide, lines)) < table.verticalHeader().width(), lines
            assert len(lines) * table.fontMetrics().lineSpacing() <= table.rowHeight(at), lines
    finally:
        dress(qapp, Scheme.LIGHT)


@pytest.mark.parametrize(
    ("words", "width", "lines"),
    [
        ("peat mix", 20, "peat mix"),
        ("peat mix", 7, "peat\nmix"),
        ("peat mix\ntrusted", 20, "peat mix\ntrusted"),
        ("longer than it may be", 6, "longer\nthan\nit may\nbe"),
        ("", 5, ""),
    ],
)
def test_headings_break_between_words_and_lose_none(words: str, width: int, lines: str) -> None:
    assert broken(words, width, len) == lines


def test_the_buttons_say_of_which_medium_they_are(place: Materials) -> None:
    place.resize(1366, 560)
    place.table.choose("capacity", "coir")

    assert place.head.name.isVisible()
    assert place.head.name.text() == "coir"


def test_tab_comes_by_the_buttons_above_the_table_first_and_by_those_of_the_panel_last(
    place: Materials, qtbot: QtBot
) -> None:
    place.table.choose("capacity", "coir")
    place.head.tests.setFocus()
    reached = []
    while (now := QApplication.focusWidget()) is not None and now not in reached:
        reached.append(now)
        qtbot.keyClick(now, Qt.Key.Key_Tab)

    (wetting,) = [b for b in place.panel.widget().findChildren(QPushButton) if b.text() == "Wetting test..."]
    assert reached.index(place.table) < reached.index(wetting)
    assert reached.index(place.head.must) < reached.index(place.table)
    assert reached[-1] is wetting


def test_arrow_keys_lead_from_cell_to_cell_and_the_panel_follows(place: Materials, qtbot: QtBot) -> None:
    place.table.choose("capacity", "peat mix")
    qtbot.keyClick(place.table, Qt.Key.Key_Right)

    assert "Water held, coir" in panel_text(place)
    assert "measured here" in panel_text(place)
    assert "against peat mix" in panel_text(place)


def test_the_panel_of_the_climate_says_what_it_is_not_and_what_would_settle_it(place: Materials) -> None:
    place.table.choose("footprint", "coir")

    words = panel_text(place)
    assert "no certified assessment" in words
    assert "To know it better, find out" in words
    assert "Peat's own carbon is" in words
    assert "electricity from the grid" in words
    assert "no certified assessment" in place.note.text()


def test_a_gap_says_what_to_do_in_the_cell_and_has_a_button(place: Materials) -> None:
    place.table.choose("price", "coir")

    assert "Type in what the medium for a tray costs" in panel_text(place)
    assert "Type it in..." in [one.text() for one in place.panel.widget().findChildren(QPushButton)]


def test_the_focus_stays_at_the_button_of_a_cell_when_the_table_is_read_again(
    place: Materials, qtbot: QtBot
) -> None:
    with qtbot.waitActive(place):
        place.show()
    place.table.choose("price", "coir")
    (button,) = place.panel.findChildren(QPushButton)
    words = button.text()
    button.setFocus()
    with qtbot.waitSignal(place.desk.was_read):
        place.desk.read()
    now = QApplication.focusWidget()
    assert isinstance(now, QPushButton)
    assert now.text() == words
    assert place.panel.isAncestorOf(now)


def test_the_focus_comes_back_to_it_from_the_dialog_in_which_something_was_kept(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    with qtbot.waitActive(place):
        place.show()
    place.table.choose("price", "coir")
    (button,) = place.panel.findChildren(QPushButton)
    button.setFocus()
    dialog = FeedDialog(place.desk, demo, "coir", place)
    dialog.open()
    qtbot.waitUntil(dialog.isActiveWindow)
    with qtbot.waitSignal(place.desk.was_read):
        place.desk.read()
    dialog.reject()
    now = place.focusWidget()  # who has it as soon as the window is in front again
    assert isinstance(now, QPushButton)
    assert place.panel.isAncestorOf(now)


def test_every_cell_speaks_for_itself(place: Materials) -> None:
    table = place.reading.table
    for row in ROWS:
        for medium in table.media:
            words = cell_words(row, medium, table.cell(row.key, medium))
            assert words.spoken.startswith(medium)
            assert words.value or words.below
            assert (words.origin is None) == (table.cell(row.key, medium).gap is not None)


def test_the_source_of_a_number_is_a_word_as_well_as_a_dot() -> None:
    cell = Cell(value=0.8, low=0.7, high=0.9, n=1, of="entries", origin=Origin.TYPED)

    assert "typed in" in cell_words(row_of("price"), "coir", cell).spoken


def test_a_screen_reader_hears_no_gaps_between_commas(place: Materials) -> None:
    table = place.reading.table
    told = [
        cell_words(row, medium, table.cell(row.key, medium)).spoken for row in ROWS for medium in table.media
    ]
    assert len(told) > 60
    assert [words for words in told if ", ," in words or " ," in words or "  " in words] == []


def test_what_is_due_is_named_with_a_button(place: Materials) -> None:
    texts = [one.text() for one in place.due.findChildren(QPushButton)]

    assert any("plant-fibre mat, wetting test" in text for text in texts)


# --- the assistant


def assistant(place: Materials, qtbot: QtBot, kind: BenchKind, medium: str) -> BenchAssistant:
    assert place.book is not None
    under_way = [one.test for one in place.reading.due if (one.test.kind, one.test.medium) == (kind, medium)]
    dialog = BenchAssistant(place.desk, place.book, kind, medium, under_way[0] if under_way else None)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def test_a_wetting_test_is_led_from_step_to_step(place: Materials, qtbot: QtBot, demo: Book) -> None:
    dialog = assistant(place, qtbot, BenchKind.WETTING, "coir")
    dialog.value.setText("645 g")
    qtbot.keyClick(dialog.value, Qt.Key.Key_Return)

    assert dialog.test is not None
    assert "Wet it through" in dialog.words.text()
    assert [one.value for one in demo.readings(bench_test=dialog.test.id)] == [645.0]


def test_ounces_typed_as_grams_are_asked_about_and_not_kept_silently(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    dialog = assistant(place, qtbot, BenchKind.WETTING, "plant-fibre mat")
    dialog.value.setText("51")
    before = len(dialog.readings)
    dialog.keep.click()

    assert len(dialog.readings) == before
    assert "Which one is it?" in dialog.trouble.text()
    dialog.instead.click()
    kept = max(dialog.readings, key=lambda one: one.id)  # by time of day the demonstration's may come later
    assert kept.value == pytest.approx(51 * 28.349523125)


def test_a_wet_weight_below_the_dry_one_is_refused_where_it_stands(place: Materials, qtbot: QtBot) -> None:
    dialog = assistant(place, qtbot, BenchKind.WETTING, "plant-fibre mat")
    dialog.value.setText("400 g")
    dialog.keep.click()
    if dialog.instead.isVisible():
        dialog.keep.click()

    assert "one of the two is wrong" in dialog.trouble.text()


def test_a_cooling_test_shows_the_caution_on_heat_and_water(place: Materials, qtbot: QtBot) -> None:
    dialog = assistant(place, qtbot, BenchKind.COOLING, "coir")

    assert dialog.caution.isVisible()
    assert "residual-current" in dialog.caution.text()


def test_a_bare_number_is_in_the_units_that_were_chosen(place: Materials, qtbot: QtBot, demo: Book) -> None:
    dialog = BenchAssistant(place.desk, demo, BenchKind.COOLING, "coir", None, UnitSystem.US)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.value.setText("68")
    dialog.keep.click()

    assert dialog.readings[0].value == pytest.approx(20.0)


def test_the_first_number_of_a_test_is_taken_back_with_it_in_one_step(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    before = demo.undo_text(), len(demo.bench_tests())
    dialog = assistant(place, qtbot, BenchKind.COOLING, "coir")
    dialog.value.setText("20")
    dialog.keep.click()
    assert len(dialog.readings) == 1

    assert demo.undo() == "cooling test of coir begun"
    assert (demo.undo_text(), len(demo.bench_tests())) == before


def test_a_test_that_was_deleted_meanwhile_is_told_in_its_dialog(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    dialog = assistant(place, qtbot, BenchKind.BREAKDOWN, "coir")
    assert dialog.test is not None
    demo.delete_test(dialog.test.id)  # in another window, say
    for button in (dialog.delete, dialog.keep):
        dialog.value.setText("812 g")
        dialog.trouble.setText("")
        button.click()
        assert "no longer in the book" in dialog.trouble.text(), button.text()
        assert dialog.isVisible()


def test_the_button_of_a_test_that_has_just_been_deleted_opens_nothing(
    place: Materials, qtbot: QtBot, demo: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[QDialog] = []
    monkeypatch.setattr(BenchAssistant, "exec", opened.append)
    (due,) = [
        one for one in place.reading.due if (one.test.kind, one.test.medium) == (BenchKind.BREAKDOWN, "coir")
    ]
    demo.delete_test(due.test.id)
    with qtbot.waitSignal(place.troubled) as told:
        place.dialogs.test(due.test.kind, "coir", due.test)
    assert told.args == ["This test was deleted or taken back meanwhile."]
    assert opened == []


def test_feed_and_its_numbers_are_one_step_of_undo(place: Materials, qtbot: QtBot, demo: Book) -> None:
    before = demo.undo_text(), demo.factors()
    dialog = FeedDialog(place.desk, demo, "coir")
    qtbot.addWidget(dialog)
    dialog.feed.setText("seaweed")
    dialog.numbers["feed dilution"].setText("5")
    dialog.numbers["feed every"].setText("3")
    dialog._keep()
    assert len(demo.factors()) > len(before[1])

    assert demo.undo() == "coir described"
    assert (demo.undo_text(), demo.factors()) == before


# --- kind


def chosen_in_the_dialog(monkeypatch: pytest.MonkeyPatch, kind: str) -> None:
    def answer(dialog: KindDialog) -> int:
        dialog.buttons[kind].click()
        return int(QDialog.DialogCode.Accepted)

    monkeypatch.setattr(KindDialog, "exec", answer)


def test_what_kind_a_medium_is_of_is_said_in_its_cell_and_taken_back(
    place: Materials, demo: Book, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    demo.set_medium("coir", kind="")
    with qtbot.waitSignal(place.desk.was_read):
        place.desk.read()
    place.table.choose("kind", "coir")
    assert "Say whether it is a mat or a loose mix" in panel_text(place)
    assert "advice that holds for any medium" in panel_text(place)  # what is assumed until then
    chosen_in_the_dialog(monkeypatch, "loose")

    with qtbot.waitSignal(place.desk.was_read):
        qtbot.mouseClick(place.panel.widget().findChildren(QPushButton)[0], Qt.MouseButton.LeftButton)

    place.table.choose("kind", "coir")
    assert "loose mix" in panel_text(place)
    assert demo.undo() == "coir described"
    assert [one.kind for one in demo.media_known() if one.name == "coir"] == [""]


def test_the_dialog_says_what_follows_from_each_kind(qtbot: QtBot, dressed: QApplication) -> None:
    dialog = KindDialog("coir", "")
    qtbot.addWidget(dialog)
    told = set()
    for button in dialog.buttons.values():
        button.click()
        told.add(dialog.follows.text())

    assert len(told) == 3  # nothing follows from "something else" that does not hold for any
    assert dialog.kind == ""


# --- numbers, feed, limits


def test_a_default_is_changed_with_its_source_and_put_back(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    dialog = FactorDialog(place.desk, demo, "coir", "truck")
    qtbot.addWidget(dialog)
    dialog.value.setText("0.11")
    dialog.source.setText("the carrier's letter")
    dialog.keep.click()

    assert [one.value for one in demo.factors() if one.name == "truck"] == [0.11]
    assert "(changed)" in dialog.list.currentItem().text()
    assert "the default is 0.1016" in dialog.standing.text()
    dialog.back.click()
    assert [one for one in demo.factors() if one.name == "truck"] == []


def test_a_number_without_a_range_is_refused_in_place(place: Materials, qtbot: QtBot, demo: Book) -> None:
    dialog = FactorDialog(place.desk, demo, "coir", "price")
    qtbot.addWidget(dialog)
    dialog.value.setText("0.9")
    dialog.source.setText("bill")
    dialog.keep.click()

    assert "without a range" in dialog.trouble.text()


def test_grams_typed_for_kilograms_are_asked_about(place: Materials, qtbot: QtBot, demo: Book) -> None:
    dialog = FactorDialog(place.desk, demo, "coir", "dry mass")
    qtbot.addWidget(dialog)
    for field in (dialog.value, dialog.low, dialog.high):
        field.setText("0.3")
    dialog.keep.click()

    assert "in another unit" in dialog.trouble.text()
    assert all(one.value != 0.3 for one in demo.factors() if one.name == "dry mass")


def test_a_year_that_is_none_is_asked_about_and_the_one_that_stood_there_stays(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    dialog = FactorDialog(place.desk, demo, "coir", "dry mass")
    qtbot.addWidget(dialog)
    dialog.year.setText("about 2026")
    dialog.keep.click()

    assert "four digits" in dialog.trouble.text()
    assert [one.year for one in demo.factors() if (one.name, one.medium) == ("dry mass", "coir")] == [2026]


def test_what_was_typed_and_not_kept_is_there_again_and_named_before_the_dialog_closes(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    dialog = FactorDialog(place.desk, demo, "coir", "dry mass")
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.value.setText("311")
    dialog.list.setCurrentRow(dialog.list.currentRow() + 1)
    assert dialog.value.text() != "311"
    dialog.list.setCurrentRow(dialog.list.currentRow() - 1)
    assert (dialog.value.text(), dialog.trouble.text()) == ("311", "Typed, and not kept yet.")

    dialog.reject()
    assert dialog.isVisible()
    assert dialog.trouble.text().startswith("Typed and not kept yet: dry mass of the medium in a tray.")
    dialog.reject()
    assert not dialog.isVisible()


@pytest.mark.parametrize("kind", ["number", "feed"])
def test_a_book_that_cannot_be_written_is_told_in_the_dialog_and_not_behind_it(
    place: Materials, qtbot: QtBot, demo: Book, kind: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def read_only(*_what: object, **_said: object) -> None:
        raise BookReadOnly(demo.folder)

    dialog = (
        FactorDialog(place.desk, demo, "coir", "dry mass")
        if kind == "number"
        else FeedDialog(place.desk, demo, "coir")
    )
    qtbot.addWidget(dialog)
    dialog.show()
    for name in ("set_factor", "set_medium"):
        monkeypatch.setattr(demo, name, read_only)
    next(one for one in dialog.findChildren(QPushButton) if one.text() == "Keep").click()

    assert "may only be read" in dialog.trouble.text()
    assert dialog.isVisible()


def test_after_keeping_the_dialog_closes_at_once(place: Materials, qtbot: QtBot, demo: Book) -> None:
    dialog = FactorDialog(place.desk, demo, "coir", "dry mass")
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.source.setText("own scale, 9 trays")
    dialog.keep.click()

    dialog.reject()

    assert not dialog.isVisible()
    kept = [one.source for one in demo.factors() if (one.name, one.medium) == ("dry mass", "coir")]
    assert kept == ["own scale, 9 trays"]


def test_a_feed_of_waste_shows_its_caution_while_it_is_typed(
    place: Materials, qtbot: QtBot, demo: Book
) -> None:
    dialog = FeedDialog(place.desk, demo, "coir")
    qtbot.addWidget(dialog)
    dialog.feed.setText("worm tea")
    assert "not for food that is sold" in dialog.caution.text().replace("\n", " ")
    dialog.numbers["feed dilution"].setText("10")
    dialog._keep()

    medium = demo.medium("coir")
    assert medium is not None
    assert medium.feed == "worm tea"


def test_no_feed_is_kept_of_a_medium_as_the_book_says_it(place: Materials, qtbot: QtBot, demo: Book) -> None:
    for typed in ("No feed", ""):
        dialog = FeedDialog(place.desk, demo, "coir")
        qtbot.addWidget(dialog)
        dialog.feed.setText(typed)
        dialog._keep()
        medium = demo.medium("coir")
        assert medium is not None
        assert medium.feed == "none"


def test_limits_say_who_keeps_them(place: Materials, qtbot: QtBot, demo: Book) -> None:
    with qtbot.waitSignal(place.desk.was_read):
        place.desk.keep(lambda book: book.set_limits({"price": (None, 1.0)}))

    assert "peat mix: keeps all limits" in place.standing.text()
    assert "plant-fibre mat: misses a limit" in place.standing.text()


@pytest.mark.parametrize("percent", [100, 150, 200])  # German words are longer: 200 stands for them
def test_limits_are_typed_without_rolling_sideways(qtbot: QtBot, qapp: QApplication, percent: int) -> None:
    dress(qapp, Scheme.LIGHT, percent)
    try:
        dialog = LimitsDialog({})
        qtbot.addWidget(dialog)
        with qtbot.waitExposed(dialog):
            dialog.show()

        (roll,) = dialog.findChildren(QScrollArea)
        assert roll.horizontalScrollBar().maximum() == 0
    finally:
        dress(qapp, Scheme.LIGHT)


def test_limits_that_cross_are_told(qtbot: QtBot, dressed: QApplication) -> None:
    dialog = LimitsDialog({"price": (2.0, 1.0)})
    qtbot.addWidget(dialog)
    dialog._keep()

    assert "the least is above the most" in dialog.trouble.text()


def test_a_new_book_teaches_what_will_stand_here(
    qtbot: QtBot, dressed: QApplication, work: Work, tmp_path: Path
) -> None:
    place = Materials(work)
    qtbot.addWidget(place)
    place.show()
    with an_empty_book(tmp_path / "new") as book:
        with qtbot.waitSignal(place.desk.was_read):
            place.open_book(book)
        assert place._whole.currentIndex() == 1
        place.open_book(None)
        work.stop_all()


def test_five_buttons_of_a_test_are_as_wide_as_their_words(place: Materials, qtbot: QtBot) -> None:
    (test,) = {one.test for one in place.reading.due if one.test.medium == "coir"}
    assert place.book is not None
    assistant = BenchAssistant(place.desk, place.book, test.kind, "coir", test)
    qtbot.addWidget(assistant)
    assistant.show()
    assistant.value.setText("4.7")  # reads like ounces
    qtbot.keyClick(assistant, Qt.Key.Key_Return)
    assert assistant.instead.isVisible()
    qtbot.wait(20)

    buttons = [button for button in assistant.findChildren(QPushButton) if button.isVisible()]
    assert len(buttons) == 5
    for button in buttons:
        assert button.width() >= button.sizeHint().width(), button.text()


def test_the_button_for_a_logger_s_file_asks_for_it(
    demo: Book, memory: Memory, qapp: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[str] = []

    def ask(_over: QWidget, title: str, _start: Path) -> None:
        asked.append(title)

    monkeypatch.setattr("gui.frame.bookdialogs.ask_log", ask)
    window = make_window(qapp, memory)
    qtbot.addWidget(window)
    window.show()
    assert window.open_folder(demo.folder)
    window.go_to("materials")
    place = window.screens.materials
    with qtbot.waitSignal(place.desk.was_read, timeout=20_000):
        pass
    place.table.choose("cold nights", "coir")
    (button,) = [
        button
        for button in place.panel.findChildren(QPushButton)
        if button.text() == "Bring in a logger's file"
    ]
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

    assert asked == ["Bring in the file of a logger or a scale"]
    assert window.place == "materials"
    window.close()


def test_reading_again_leaves_the_focus_on_the_test_that_is_due(place: Materials, qtbot: QtBot) -> None:
    first = place.due.findChildren(QPushButton)[0]
    first.setFocus()
    with qtbot.waitSignal(place.desk.was_read, timeout=20_000):
        place.renew()
    qtbot.wait(20)

    assert QApplication.focusWidget() is first
    assert len([one for one in place.due.findChildren(QPushButton) if one.isVisible()]) == 3


def test_a_medium_is_named_and_tested_without_a_tray_of_seed(
    qtbot: QtBot, dressed: QApplication, work: Work, tmp_path: Path
) -> None:
    place = Materials(work)
    qtbot.addWidget(place)
    with qtbot.waitActive(place):
        place.show()
    book = an_empty_book(tmp_path / "new")
    with qtbot.waitSignal(place.desk.was_read):
        place.open_book(book)
    assert place.first.isVisible()

    qtbot.keyClicks(place.first.line, "hemp mat")
    with qtbot.waitSignal(place.desk.was_read):
        qtbot.keyClick(place.first.line, Qt.Key.Key_Return)

    assert place.table.isVisible()
    assert place.reading.table.media == ("hemp mat",)
    assert book.undo() == "hemp mat described"
    work.stop_all()
    book.close()


def test_a_medium_that_is_known_loses_nothing_when_it_is_named_again(place: Materials, qtbot: QtBot) -> None:
    assert place.book is not None
    before = place.book.media_known()

    qtbot.keyClicks(place.head.another.line, "Coir")
    qtbot.keyClick(place.head.another.line, Qt.Key.Key_Return)
    assert place.book.media_known() == before

    with qtbot.waitSignal(place.desk.was_read):
        qtbot.keyClicks(place.head.another.line, "wood fibre")
        qtbot.keyClick(place.head.another.line, Qt.Key.Key_Return)
    assert len(place.book.media_known()) == len(before) + 1


@pytest.mark.parametrize("width", [130, 200])
def test_a_word_alone_in_a_cell_breaks_instead_of_being_cut(
    qtbot: QtBot, dressed: QApplication, width: int
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    table = QTableWidget(1, 1)
    qtbot.addWidget(table)
    table.setItemDelegate(CellPainter(table))
    item = QTableWidgetItem()
    item.setData(WORDS, CellWords(value="loses Substrat", below="", origin=Origin.TYPED, spoken=""))
    table.setItem(0, 0, item)
    table.setColumnWidth(0, width)
    table.setRowHeight(0, 76)
    table.resize(400, 300)

    picture = table.viewport().grab().toImage()

    ink = [
        (x, y) for x in range(30, width) for y in range(4, 72) if picture.pixelColor(x, y).lightness() < 128
    ]
    assert max(x for x, _ in ink) < width - Space.S
    lines = (max(y for _, y in ink) - min(y for _, y in ink)) / table.fontMetrics().ascent()
    assert (lines > 1.5) == (width == 130)
    dress(dressed, Scheme.LIGHT)
