"""Growth, readings and events of a tray on one time axis: noted, corrected, taken out, all by keyboard."""

from dataclasses import replace
from datetime import datetime, timedelta
from math import sin
from pathlib import Path

import pytest
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF
from PySide6.QtWidgets import QApplication, QFrame, QLineEdit, QScrollArea, QVBoxLayout
from pytestqt.qtbot import QtBot

from data.book import Book
from data.events import EventKind
from data.growth import Growth, growth_of
from data.readings import NewReading, ReadingKind
from data.records import TrayId
from data.statistics.estimate import t_quantile
from gui.controls.rolling import roll_down
from gui.notes.moments import MomentEdit, show_moment
from gui.notes.table import number_in
from gui.notes.view import Lane, Mark, Notes, read_notes
from gui.style.palette import dress
from gui.style.tokens import SERIES, Scheme
from gui.style.words import wrapped
from gui.traysheet.growthfit import fit_tray
from gui.traysheet.growthpage import GrowthPage
from gui.traysheet.screen import TraySheet
from gui.traysheet.timechart import TimeChart, rows_of, thinned
from gui.traysheet.view import Curve
from gui.traysheet.views import View
from tests.data.builders import SOWN, a_kept_tray, a_tray
from tests.data.contents import say_of_crop
from tests.gui.rackbook import photograph


def a1(book: Book) -> TrayId:
    return next(tray.id for tray in book.trays() if tray.code == "A1")


def a_weight(book: Book, grams: float = 900.0, day: int = 3, **special: object) -> NewReading:
    ordinary = {"kind": ReadingKind.WEIGHT, "taken_at": SOWN + timedelta(days=day), "tray_id": a1(book)}
    return NewReading(**(ordinary | {"value": grams} | special))


def opened(sheet: TraySheet, qtbot: QtBot) -> GrowthPage:
    assert sheet.book is not None
    page = sheet.views.growth
    sheet.open_tray(a1(sheet.book))
    with qtbot.waitSignal(page.notes_read):
        sheet.show_view(View.GROWTH)
    return page


def rows(page: GrowthPage) -> list[tuple[str, str]]:
    """What and how much, newest first."""
    model = page.table.model()
    return [(str(model.index(n, 1).data()), str(model.index(n, 2).data())) for n in range(model.rowCount())]


def test_a_weight_is_typed_and_kept_by_enter(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    page = opened(sheet, qtbot)
    assert page.entry.value.hasFocus()

    qtbot.keyClicks(page.entry.value, "812")
    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)

    assert [one.value for one in rack_book.readings(a1(rack_book))] == [812]
    assert rows(page) == [("weight", "812 g")]
    assert rack_book.undo_text() == "weight of A1"
    assert page.entry.value.text() == ""
    assert page.entry.value.hasFocus()


def test_ounces_are_understood(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    page = opened(sheet, qtbot)

    qtbot.keyClicks(page.entry.value, "28.6 oz")
    qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)

    (kept,) = rack_book.readings(a1(rack_book))
    assert kept.value == pytest.approx(28.6 * 28.349523125)


def test_a_page_that_stood_open_over_night_notes_the_morning(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    """The field showed the evening before, and a weight was kept for it."""
    page = opened(sheet, qtbot)
    morning = rack_book.today() + timedelta(days=1)
    rack_book.set_setting("today", morning.isoformat())

    qtbot.keyClicks(page.entry.value, "812")
    qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)

    (reading,) = rack_book.readings(a1(rack_book))
    assert reading.taken_at.date() == morning
    show_moment(page.entry.at, reading.taken_at - timedelta(hours=20))  # of yesterday, set by hand: it stays
    qtbot.keyClicks(page.entry.value, "901")
    qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)
    assert rack_book.readings(a1(rack_book))[0].taken_at == reading.taken_at - timedelta(hours=20)


def test_what_is_no_number_is_told_in_place_and_nothing_is_kept(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    page = opened(sheet, qtbot)

    qtbot.keyClicks(page.entry.value, "heavy")
    qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)

    assert page.entry.said.isVisible()
    assert "heavy" in page.entry.said.text()
    assert rack_book.readings(a1(rack_book)) == ()


def test_which_end_of_a_scale_is_good_stands_below_the_row(sheet: TraySheet, qtbot: QtBot) -> None:
    page = opened(sheet, qtbot)
    page.entry.choose(ReadingKind.CUT_QUALITY)

    assert page.entry.said.text() == "A number from 1 (torn, slipped, full of medium) to 5 (clean)"
    qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)
    assert page.entry.said.text().startswith("Type a number from 1 (torn")

    page.entry.choose(ReadingKind.WEIGHT)
    assert not page.entry.said.isVisible()


def test_a_note_without_a_number_needs_words_and_stands_on_the_time_axis(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    page = opened(sheet, qtbot)
    page.entry.choose(EventKind.NOTE)
    assert not page.entry.value.isVisible()
    qtbot.keyClick(page.entry.note, Qt.Key.Key_Return)
    assert page.entry.said.text() == "Type what you saw."
    assert rack_book.events(a1(rack_book)) == ()

    qtbot.keyClicks(page.entry.note, "thin at the door since the fan blows")
    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(page.entry.note, Qt.Key.Key_Return)

    (event,) = rack_book.events(a1(rack_book))
    assert (event.kind, event.note) == (EventKind.NOTE, "thin at the door since the fan blows")
    notes = read_notes(rack_book, rack_book.tray(a1(rack_book)))
    assert [mark.words for mark in notes.marks] == ["thin at the door since t…"]
    assert [(row.what, row.note) for row in notes.rows] == [("note", event.note)]


def test_before_taste_and_shelf_life_are_noted_stands_what_to_heed(sheet: TraySheet, qtbot: QtBot) -> None:
    page = opened(sheet, qtbot)

    page.entry.choose(ReadingKind.TASTE)
    assert "from 1 (off) to 5 (as it should be)" in page.entry.said.text()
    assert "Never taste where mold is or may be" in page.entry.said.text()

    page.entry.choose(ReadingKind.SHELF_LIFE)
    assert page.entry.unit.text() == "days"
    assert "ruled by local law" in page.entry.said.text()


def test_days_of_shelf_life_do_not_stretch_the_axis_of_growth(rack_book: Book) -> None:
    tray = rack_book.tray(a1(rack_book))
    late = tray.sown_at + timedelta(days=30)
    rack_book.add_readings(
        [NewReading(kind=ReadingKind.SHELF_LIFE, value=12.0, taken_at=late, tray_id=tray.id)]
    )

    notes = read_notes(rack_book, tray)

    assert notes.marks == ()
    assert [(row.what, row.value, row.unit) for row in notes.rows] == [("shelf life", 12.0, "days")]


def test_an_unusual_number_is_kept_and_doubted(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    rack_book.add_readings([a_weight(rack_book, 900)])
    page = opened(sheet, qtbot)

    qtbot.keyClicks(page.entry.value, "90")
    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)

    assert len(rack_book.readings(a1(rack_book))) == 2
    assert "90 g stands against 900 g before" in page.entry.said.text()


def test_a_finger_that_bounces_on_note_it_notes_once(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    entry = opened(sheet, qtbot).entry
    entry.choose(EventKind.TURNED)

    for _ in range(2):
        qtbot.mouseClick(entry.add, Qt.MouseButton.LeftButton)

    assert [one.kind for one in rack_book.events(a1(rack_book))] == [EventKind.TURNED]


def test_an_event_has_a_mark_with_its_words(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    page = opened(sheet, qtbot)
    page.entry.choose(EventKind.WATERED)
    assert not page.entry.value.isVisible()

    qtbot.keyClicks(page.entry.note, "from below")
    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(page.entry.note, Qt.Key.Key_Return)

    (event,) = rack_book.events(a1(rack_book))
    assert (event.kind, event.note) == (EventKind.WATERED, "from below")
    assert "watered on day 7" in page.chart.accessibleDescription()


def test_the_evening_is_told_as_the_day_that_the_morning_was(rack_book: Book) -> None:
    tray = rack_book.tray(a1(rack_book))
    midnight = datetime.combine(tray.sown_at, datetime.min.time())
    hours = (0, 7, 20, 23)
    for hour in hours:
        rack_book.add_event([tray.id], EventKind.WATERED, midnight + timedelta(days=3, hours=hour))

    notes = read_notes(rack_book, tray)

    assert tray.sown_at > midnight
    assert [notes.calendar_day(mark.day) for mark in notes.marks] == [3] * len(hours)


def test_thrown_away_wants_a_reason_and_takes_the_tray_from_the_rack(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    tray = a1(rack_book)
    page = opened(sheet, qtbot)
    sheet.show_view(View.PICTURE)

    qtbot.mouseClick(sheet.side.throw, Qt.MouseButton.LeftButton)
    assert page.entry.note.hasFocus()
    qtbot.keyClick(page.entry.note, Qt.Key.Key_Return)
    assert "Say why" in page.entry.said.text()
    qtbot.keyClicks(page.entry.note, "mold")
    qtbot.keyClick(page.entry.note, Qt.Key.Key_Return)

    assert rack_book.tray(tray).ended_why == "mold"
    assert sheet.about.text() == "thrown away on 8 Mar 2026: mold"
    qtbot.mouseClick(sheet.side.reopen, Qt.MouseButton.LeftButton)
    assert rack_book.tray(tray).done_at is None


def test_a_reading_is_corrected_in_the_table_and_undone(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    rack_book.add_readings([a_weight(rack_book, 900)])
    page = opened(sheet, qtbot)
    page.table.setFocus()
    page.table.setCurrentIndex(page.table.model().index(0, 2))

    qtbot.keyClick(page.table, Qt.Key.Key_Return)
    editor = page.table.findChild(QLineEdit)
    assert editor is not None
    editor.selectAll()
    qtbot.keyClicks(editor, "950")
    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(editor, Qt.Key.Key_Return)

    assert rows(page) == [("weight", "950 g")]
    rack_book.undo()
    with qtbot.waitSignal(page.notes_read):
        sheet.renew()
    assert rows(page) == [("weight", "900 g")]


@pytest.mark.parametrize("percent", [100, 150])
def test_a_time_and_a_note_are_read_whole_while_they_are_typed_over(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, qapp: QApplication, percent: int
) -> None:
    dress(qapp, Scheme.LIGHT, percent)
    sheet.resize(1024, 620)
    rack_book.add_readings([a_weight(rack_book, 900, note="after the drain")])
    table = opened(sheet, qtbot).table
    for column, kind in ((0, MomentEdit), (3, QLineEdit)):
        index = table.model().index(0, column)
        table.setFocus()
        table.setCurrentIndex(index)
        qtbot.keyClick(table, Qt.Key.Key_F2)
        editor = QApplication.focusWidget()
        assert isinstance(editor, kind)
        assert editor.width() >= editor.sizeHint().width()
        assert editor.fontMetrics().horizontalAdvance("after the drain") < editor.width() - 20
        assert table.viewport().rect().contains(editor.geometry().center())
        assert editor.geometry().right() <= table.width()
        qtbot.keyClick(editor, Qt.Key.Key_Escape)
        assert index.data(Qt.ItemDataRole.ToolTipRole)
    dress(qapp, Scheme.LIGHT)


def test_the_time_of_a_reading_is_corrected_in_the_table(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    rack_book.add_readings([a_weight(rack_book, 900)])
    page = opened(sheet, qtbot)
    page.table.setFocus()
    page.table.setCurrentIndex(page.table.model().index(0, 0))

    qtbot.keyClick(page.table, Qt.Key.Key_Return)
    editor = page.table.findChild(MomentEdit)
    assert editor is not None
    show_moment(editor, datetime(2026, 3, 5, 7, 30))
    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(editor, Qt.Key.Key_Return)

    (kept,) = rack_book.readings(a1(rack_book))
    assert kept.taken_at == datetime(2026, 3, 5, 7, 30)


def test_delete_takes_a_reading_out_and_undo_brings_it_back(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    rack_book.add_readings([a_weight(rack_book, 900)])
    page = opened(sheet, qtbot)
    page.table.setFocus()
    page.table.setCurrentIndex(page.table.model().index(0, 0))

    with qtbot.waitSignal(page.notes_read):
        qtbot.keyClick(page.table, Qt.Key.Key_Delete)

    assert rows(page) == []
    rack_book.undo()
    assert [one.value for one in rack_book.readings(a1(rack_book))] == [900]


def test_deleting_the_event_that_ended_a_tray_puts_it_back_on_the_rack(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    tray = a1(rack_book)
    rack_book.add_event([tray], EventKind.CUT, rack_book.now())
    page = sheet.views.growth
    sheet.open_tray(tray)
    with qtbot.waitSignal(page.notes_read):
        sheet.show_view(View.GROWTH)
    page.table.setCurrentIndex(page.table.model().index(0, 0))

    qtbot.keyClick(page.table, Qt.Key.Key_Delete)

    assert rack_book.tray(tray).done_at is None


def test_letters_in_the_table_are_keys_of_the_sheet(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    rack_book.add_readings([a_weight(rack_book)])
    page = opened(sheet, qtbot)
    page.table.setFocus()

    qtbot.keyClick(page.table, Qt.Key.Key_P)

    assert sheet.views.view is View.PICTURE


def test_the_air_over_the_shelf_is_shown_where_the_tray_has_no_logger_of_its_own(rack_book: Book) -> None:
    tray = rack_book.tray(a1(rack_book))
    on_shelf = {"kind": ReadingKind.AIR_TEMPERATURE, "tray_id": None, "shelf": "A", "source": "logger"}
    rack_book.add_readings(
        [a_weight(rack_book, 21.5, **on_shelf), a_weight(rack_book, 19.0, day=-2, **on_shelf)]
    )

    notes = read_notes(rack_book, tray)

    assert [lane.series for lane in notes.lanes] == [((), ((3.0, 21.5),))]
    assert notes.rows == ()  # a logger's rows are drawn, not listed


def test_what_a_logger_told_of_a_shelf_before_the_tray_came_there_is_not_its_air(rack_book: Book) -> None:
    tray = rack_book.tray(a1(rack_book))
    on_shelf = {"kind": ReadingKind.AIR_TEMPERATURE, "tray_id": None, "shelf": "A", "source": "logger"}
    rack_book.add_readings(
        [a_weight(rack_book, 21.5, **on_shelf), a_weight(rack_book, 19.0, day=1, **on_shelf)]
    )

    rack_book.add_event([tray.id], EventKind.MOVED, tray.sown_at + timedelta(days=2), "from the cellar")

    assert [lane.series for lane in read_notes(rack_book, tray).lanes] == [((), ((3.0, 21.5),))]


def test_what_the_air_was_like_stands_under_the_curve(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    on_shelf = {"kind": ReadingKind.AIR_TEMPERATURE, "tray_id": None, "shelf": "A", "source": "logger"}
    damp = {**on_shelf, "kind": ReadingKind.HUMIDITY}
    hours = [SOWN + timedelta(hours=hour) for hour in range(24)]
    rack_book.add_readings(
        [a_weight(rack_book, 21.0, **on_shelf, taken_at=at) for at in hours]
        + [a_weight(rack_book, 65.0, **damp, taken_at=at) for at in hours]
    )

    page = opened(sheet, qtbot)

    told = page.air.text()
    assert "21.0 °C on average, 16 degree days above 5 °C; logged for 24 of" in told
    assert "65 % on average, vapour pressure deficit 0.87 kPa" in told  # FAO-56: 0.870452 at 21 C and 65 %
    assert "likely wet for 0 of 24" in told
    assert page.air.isVisible()


def test_marks_that_lie_close_together_stand_in_rows(qapp: QApplication) -> None:
    metrics = QFontMetricsF(QFont())
    marks = tuple(Mark(day=3 + k / 100, words="watered") for k in range(3))

    placed = rows_of(marks, QRectF(40, 0, 600, 80), 10.0, metrics)

    assert [row for _, _, row in placed] == [0, 1, 2]


def test_words_that_would_leave_the_chart_stand_left_of_their_mark(qapp: QApplication) -> None:
    metrics = QFontMetricsF(QFont())

    ((x, words_x, _),) = rows_of(
        (Mark(day=9.9, words="mold taken out"),), QRectF(40, 0, 600, 80), 10.0, metrics
    )

    assert words_x is not None
    assert words_x < x


def test_what_was_done_on_the_day_of_sowing_has_its_words(qapp: QApplication) -> None:
    metrics = QFontMetricsF(QFont())
    marks = (Mark(day=-0.1, words="set up"), Mark(day=0.0, words="sowed"), Mark(day=2.0, words="uncovered"))

    placed = rows_of(marks, QRectF(40, 0, 600, 80), 10.0, metrics, taken=(0.0, 2.0))

    assert all(words is not None and words > 40 for _, words, _ in placed), placed
    assert len({row for _, _, row in placed[:2]}) == 2
    assert all(row for _, _, row in placed[:2])  # not over the bar of the dark days


def test_a_reading_from_before_the_sowing_stands_at_the_sowing_and_not_over_the_scale(
    qtbot: QtBot, dressed: QApplication
) -> None:
    chart = TimeChart()
    qtbot.addWidget(chart)
    chart.resize(2100, 600)
    weighed = ((-2.0, 450.0), (0.1, 1500.0), (9.0, 900.0))
    chart.show_notes(
        Notes(tray_id=TrayId(1), lanes=(Lane(label="Weight, g", kinds=("weight",), series=(weighed,)),))
    )
    left = round(chart._plot(QFontMetricsF(chart.font())).left())

    picture = chart.grab().toImage()

    colour = QColor(SERIES[5])
    strip = [picture.pixelColor(x, y) for x in range(left - 5) for y in range(picture.height())]
    assert colour not in strip
    assert any(picture.pixelColor(left + 1, y) == colour for y in range(picture.height()))


def test_a_chart_in_a_wide_window_is_no_flat_strip(qtbot: QtBot, dressed: QApplication) -> None:
    chart = TimeChart()
    qtbot.addWidget(chart)

    assert chart.heightForWidth(2100) > 2100 / 7
    assert chart.heightForWidth(2100) > chart.heightForWidth(600)


def test_a_chart_on_a_page_that_becomes_wider_is_as_high_as_it_asks_for_at_once(
    qtbot: QtBot, dressed: QApplication
) -> None:
    page = QScrollArea()
    qtbot.addWidget(page)
    roll_down(page)
    sheet = QFrame(page)
    inner = QVBoxLayout(sheet)
    chart = TimeChart(sheet)
    inner.addWidget(chart)
    inner.addWidget(wrapped("It was weighed again in the evening. " * 9, sheet))
    inner.addStretch(1)
    page.setWidget(sheet)
    page.resize(700, 400)
    page.show()
    qtbot.wait(20)

    page.resize(2100, 1200)  # no turn of the event loop: a second pass of the layout may never come

    assert chart.height() == chart.heightForWidth(chart.width()) > 2100 / 7


def test_a_chart_whose_codes_leave_less_room_asks_for_its_height_anew(
    qtbot: QtBot, dressed: QApplication
) -> None:
    page = QFrame()
    qtbot.addWidget(page)
    chart = TimeChart(page)
    inner = QVBoxLayout(page)
    inner.addWidget(chart)
    inner.addStretch(1)
    page.resize(2100, 1200)
    points = ((2.0, 4.0), (7.0, 80.0))
    chart.show_curves([Curve(tray_id=TrayId(1), code="A1", medium="coir", points=points)], 2.0)
    page.show()
    before = chart.height()

    chart.show_curves([Curve(tray_id=TrayId(1), code="NORTH-" * 30, medium="coir", points=points)], 2.0)

    qtbot.waitUntil(lambda: chart.height() == chart.heightForWidth(chart.width()) < before)


def test_a_loggers_line_is_painted_once_a_column_and_keeps_its_peaks() -> None:
    points = [QPointF(n / 40, 20 * sin(n / 30)) for n in range(4000)]
    points[1234] = QPointF(points[1234].x(), 77.0)

    drawn = thinned(points)

    assert len(drawn) <= 2 * 100
    assert QPointF(points[1234]) in drawn
    assert [at.x() for at in drawn] == sorted(at.x() for at in drawn)
    assert min(at.y() for at in drawn) == min(at.y() for at in points)


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("20,5", 20.5),
        (" 7 ", 7.0),
        ("−3", -3.0),
        ("x", None),
        ("nan", None),
        ("inf", None),
        ("1e999", None),
        ("1_000", None),
    ],
)
def test_a_number_is_read_with_comma_or_point(text: str, number: float | None) -> None:
    assert number_in(text) == number


# --- the fitted curve


LOGISTIC = tuple((day, 95 / (1 + 2.718281828 ** (-(day - 5.0) / 0.6))) for day in range(2, 10))


def test_the_fitted_curve_goes_through_the_days_and_its_interval_holds_them(rack_book: Book) -> None:
    noisy = tuple((float(day), value + (1.0 if day % 2 else -1.0)) for day, value in LOGISTIC)

    fitted = fit_tray(rack_book, a_kept_tray(1), noisy, 9.0)

    at_five = min(fitted.line, key=lambda point: abs(point[0] - 5.0))
    assert at_five[1] == pytest.approx(95 / 2, abs=6)
    assert all(
        low[1] <= value[1] <= high[1]
        for low, value, high in zip(fitted.low, fitted.line, fitted.high, strict=True)
    )
    assert "Half of the tray was covered on day 5." in fitted.words[0]


def test_the_drawn_interval_counts_that_a_closing_stand_is_read_less_surely(rack_book: Book) -> None:
    """Photos of the steep days alone lie 6 points off: the band there is the curve's own, which knows it."""
    noisy = tuple((float(day), value + 6.0 * ((day == 5) - (day == 4))) for day, value in LOGISTIC)
    own = growth_of(noisy).curve
    assert own is not None

    fitted = fit_tray(rack_book, a_kept_tray(1), noisy, 9.0)

    (day, low), (_, high) = (
        min(ends, key=lambda end: abs(end[0] - 5.0)) for ends in (fitted.low, fitted.high)
    )
    error = own.fit.error_of(lambda *free: replace(own, parameters=free).at(day)) or 0.0
    plain = 2 * t_quantile(own.fit.df) * error
    assert (low, high) == pytest.approx((own.coverage_on(day).low, own.coverage_on(day).high))
    assert high - low > 1.2 * plain  # one spread for all days would be too narrow


def test_when_and_how_fast_it_closed_is_told(rack_book: Book) -> None:
    """A logistic of 95 % and 0.6 days rises by 95 / (4 x 0.6), 39.6 points a day, at its middle (by hand)."""
    fitted = fit_tray(rack_book, a_kept_tray(1), LOGISTIC, 9.0)

    assert fitted.words[1] == "It closed fastest on day 5.0, by 40 points a day."


def test_too_few_days_say_so_instead_of_a_curve(rack_book: Book) -> None:
    fitted = fit_tray(rack_book, a_kept_tray(1), ((2.0, 1.0), (3.0, 4.0)), 3.0)

    assert fitted.line == ()
    assert "needs" in fitted.words[0]


def test_the_day_of_the_cut_is_said_in_words(rack_book: Book) -> None:
    say_of_crop(rack_book, "broccoli", cut_from_day=9.0, cut_to_day=11.0)

    fitted = fit_tray(rack_book, a_kept_tray(1), LOGISTIC, 9.0)

    assert fitted.cut == (10.0, 9.0, 11.0)
    assert any("Expected cut: day 10 (11 Mar), between day 9 and day 11." in words for words in fitted.words)


def test_photos_of_earlier_trays_that_were_left_out_do_not_hide_how_they_grew(
    rack_book: Book, tmp_path: Path
) -> None:
    trays = [rack_book.add_tray(a_tray(f"X{n}", tag_number=90 + n)) for n in (1, 2, 3)]
    for code in ("X1", "X2", "X3"):
        for day, value in LOGISTIC:
            at = SOWN + timedelta(days=day)
            photograph(rack_book, code, tmp_path, coverage=value, taken_at=at.isoformat())
    wrong = [
        photograph(
            rack_book, "X2", tmp_path, coverage=90.0 + day, taken_at=(SOWN + timedelta(days=day)).isoformat()
        )
        for day in (1.5, 2.5, 3.5, 4.5)
    ]
    rack_book.add_event(trays, EventKind.CUT, SOWN + timedelta(days=10))

    for photo in wrong:
        rack_book.leave_out(photo)

    fitted = fit_tray(rack_book, a_kept_tray(1), LOGISTIC, 6.0)
    assert any("From its own growth and the 3 trays" in words for words in fitted.words), fitted.words


def test_the_earlier_trays_of_a_crop_are_fitted_once(
    rack_book: Book, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    fits: list[object] = []

    def counted(points: object) -> Growth:
        fits.append(points)
        return growth_of(points)

    trays = [rack_book.add_tray(a_tray(f"X{n}", tag_number=90 + n)) for n in (1, 2, 3)]
    for number, code in enumerate(("X1", "X2", "X3")):
        for day, value in LOGISTIC:
            at = (SOWN + timedelta(days=day)).isoformat()
            photograph(rack_book, code, tmp_path, coverage=value * (1 - number / 270), taken_at=at)
    rack_book.add_event(trays, EventKind.CUT, SOWN + timedelta(days=10))
    first = fit_tray(rack_book, a_kept_tray(1), LOGISTIC, 6.0)
    monkeypatch.setattr("data.growth.growth_of", counted)

    again = fit_tray(rack_book, a_kept_tray(1), LOGISTIC, 6.0)

    assert again == first
    assert fits == [LOGISTIC]


def test_a_cut_that_can_only_be_today_is_not_said_to_lie_between_two_days(rack_book: Book) -> None:
    say_of_crop(rack_book, "broccoli", cut_from_day=9.0, cut_to_day=11.0)

    fitted = fit_tray(rack_book, a_kept_tray(1), LOGISTIC, 11.0)

    assert any("Expected cut: day 11 (12 Mar). Usual" in words for words in fitted.words)


def test_the_chart_is_told_in_words_with_what_the_curve_says(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, tmp_path
) -> None:
    for day, coverage in LOGISTIC[:7]:
        taken = (SOWN + timedelta(days=day)).isoformat()
        photograph(rack_book, "A1", tmp_path, coverage=round(coverage, 1), taken_at=taken)
    sheet.open_tray(a1(rack_book))

    qtbot.waitUntil(lambda: bool(sheet.side.told.text()), timeout=10_000)

    assert sheet.side.told.text().startswith("Half of the tray was covered on day 5")
    assert sheet.side.told.text() in sheet.side.growth.accessibleDescription().replace("; ", " ")


@pytest.mark.parametrize(("medium", "told"), [("fibre mat", True), ("coir", False)])
def test_mates_on_other_media_are_told_of_beside_their_curves(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot, tmp_path, medium: str, told: bool
) -> None:
    tray, mate = (one for one in rack_book.trays() if one.code in ("A1", "A2"))
    with rack_book.writing() as db:
        other = db.execute("SELECT id FROM medium WHERE name = ?", (medium,)).fetchone()
        other = other[0] if other else db.table("medium").insert({"name": medium}).last_pk
        db.table("tray").update(mate.id, {"medium": other})
    for code in (tray.code, mate.code):
        photograph(rack_book, code, tmp_path, coverage=60.0, taken_at=(SOWN + timedelta(days=5)).isoformat())
    sheet.open_tray(tray.id)
    sheet.show_view(View.GROWTH)

    page = sheet.views.growth
    qtbot.waitUntil(lambda: bool(page.words.text()), timeout=10_000)
    assert ("Block mates on other media are drawn too." in page.words.text()) is told


def test_a_date_before_the_sowing_is_asked_about(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    page = opened(sheet, qtbot)
    show_moment(page.entry.at, datetime(2025, 3, 8))
    qtbot.keyClicks(page.entry.value, "800")
    qtbot.keyClick(page.entry.value, Qt.Key.Key_Return)

    assert "before the tray was sown" in page.entry.said.text()
    assert rack_book.readings(a1(rack_book)) == ()


def test_the_page_follows_the_row_that_is_chosen(sheet: TraySheet, rack_book: Book, qtbot: QtBot) -> None:
    rack_book.add_readings([a_weight(rack_book, 900 + n, day=n % 7) for n in range(40)])
    page = opened(sheet, qtbot)
    page.table.setFocus()
    bar = page.roll.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 40 * page.table.rowHeight(0) / 2)
    page.table.setCurrentIndex(page.table.model().index(0, 0))
    before = bar.value()

    page.table.setCurrentIndex(page.table.model().index(39, 0))

    assert bar.value() > before
    row = page.table.visualRect(page.table.currentIndex())
    seen = page.table.viewport().mapTo(page.roll.viewport(), row.center())
    assert page.roll.viewport().rect().contains(seen)


def test_a_row_that_is_corrected_is_brought_into_sight_first(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    rack_book.add_readings([a_weight(rack_book, 900 + n, day=n % 7) for n in range(40)])
    page = opened(sheet, qtbot)
    page.table.setFocus()
    bar = page.roll.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 40 * page.table.rowHeight(0) / 2)
    page.table.setCurrentIndex(page.table.model().index(39, 2))
    bar.setValue(0)

    qtbot.keyClick(page.table, Qt.Key.Key_Return)

    row = page.table.visualRect(page.table.currentIndex())
    seen = page.table.viewport().mapTo(page.roll.viewport(), row.center())
    assert page.roll.viewport().rect().contains(seen)


def test_kinds_of_a_newer_program_are_counted_and_hide_nothing_else(
    sheet: TraySheet, rack_book: Book, qtbot: QtBot
) -> None:
    tray = a1(rack_book)
    rack_book.add_event([tray], EventKind.NOTE, rack_book.tray(tray).sown_at, "thin at the door")
    with rack_book.writing() as db:
        at = rack_book.tray(tray).sown_at.isoformat()
        row = {"tray": tray, "kind": "crunch", "value": 3.0, "unit": "1-5", "taken_at": at}
        db.table("reading").insert(row)
        db.table("event").insert({"tray": tray, "kind": "sung to", "at": at, "note": ""})

    page = opened(sheet, qtbot)

    assert [what for what, _ in rows(page)] == ["note"]
    assert page.about_rows.text().startswith("2 of a kind that this program does not know")
