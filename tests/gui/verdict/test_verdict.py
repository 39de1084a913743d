"""The place Verdict: sentence, table and charts say the same, and what is missing is taught."""

import re
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QElapsedTimer, Qt, QTimer
from PySide6.QtGui import QImage
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from data.book import Book
from data.logs.oldnotes import read_old_notes
from data.readings import NewReading, ReadingKind
from data.trial import MeasureKind
from data.verdict.verdicts import CropVerdict, verdicts
from gui.answer.view import answers_of, head_words, table_rows
from gui.home import Memory
from gui.language.language import speak
from gui.plan.screen import Plan
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.verdict.page import VerdictPage
from gui.verdict.screen import Verdict
from gui.verdict.table import VerdictTable
from gui.work import Work
from tests.data.builders import a_tray
from tests.data.trialrack import EVEN, NOISE, TRIAL, WORSE, Rack
from tests.gui.verdict.opened import read, settle
from tests.made.books import an_empty_book

NUMBER = re.compile(r"[+−]?\d+(?:\.\d+)?")


def cells(screen: Verdict) -> list[list[str]]:
    table = screen.page.table
    return [
        [item.text() for column in range(table.columnCount()) if (item := table.item(row, column))]
        for row in range(table.rowCount())
    ]


def row_of(screen: Verdict, medium: str) -> list[str]:
    return next(row for row in cells(screen) if row[0] == medium)


# --- what is read


def test_one_sentence_a_new_medium_and_the_table_beside_it(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    rack.shoot_all(WORSE)

    read(screen, rack.book, qtbot)

    assert len(screen.page.answers.texts) == 2
    assert any(
        "fibre mat is worse than peat mix by more than the margin" in t for t in screen.page.answers.texts
    )
    assert {row[0]: row[5] for row in cells(screen)} == {
        "peat mix": "trusted", "coir": "as good", "fibre mat": "worse",
    }  # fmt: skip
    assert row_of(screen, "fibre mat")[6] == "3 of 3"
    assert "day 9" in screen.page.head.text()
    assert "margin 5.0 points" in screen.page.head.text()


def test_what_else_tells_media_apart_stands_below_with_its_interval(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    """3 of 4 mats slid, none of 4 trays of peat: 75 points, by Newcombe (1998) about 8 to 95."""
    rack.shoot_all(WORSE)
    rack.note_slid({"peat mix": 0, "fibre mat": 3})

    read(screen, rack.book, qtbot)

    table = screen.page.apart
    slid = [[table.item(row, c).text() for c in range(5)] for row in range(table.rowCount())]
    assert slid[0][:3] == ["fibre mat", "Slid at the cut", "+75.0 points"]
    assert slid[0][3].startswith("+8")
    assert slid[0][4] == "Trays side by side, the same crop in the same block: 4, and 4 of peat mix."
    assert "None of this moves the answer above." in screen.page.noted.text()
    assert screen.page.noted_panel.isVisible()


def test_where_nothing_was_noted_no_panel_says_so(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    """An open stand tells no green of its canopy, either."""
    rack.shoot_all(dict.fromkeys(WORSE, 40.0))

    read(screen, rack.book, qtbot)

    assert not screen.page.noted_panel.isVisible()


def test_old_notes_show_the_yield_they_have_and_where_the_trusted_medium_is_named(
    tmp_path: Path, screen: Verdict, work: Work, qtbot: QtBot
) -> None:
    lines = ["tray,trial,block,crop,medium,sown,harvest,yield (g)"]
    for n, (block, medium) in enumerate((b, m) for b in "123" for m in ("peat", "coir")):
        lines.append(f"T{n},old,{block},radish,{medium},2025-03-0{block},2025-03-1{block},{250 + 7 * n}")
    with an_empty_book(tmp_path / "book") as book:
        book.keep_old_notes(read_old_notes("\n".join(lines).encode()), "old.csv")

        read(screen, book, qtbot)

        assert screen.page.head.text() == "Yield; no medium is named as the trusted one"
        assert len(cells(screen)) == 2
        assert "name it on Materials" in " ".join(label.text() for label in screen.findChildren(QLabel))
        work.stop_all()


def each_verdict(rack: Rack) -> tuple[CropVerdict, ...]:
    """Canopy score, yield and eye score; media that are better, as good, worse and not shown."""
    noise = (0, 9, -8, 6, -7, 3, 8, -9, 1, 5, -4, 2)
    noisy = dict(zip((tray.code for tray in rack.trays), noise, strict=True))
    for tray in rack.trays:
        rack.shoot(
            tray, {"peat mix": 70.0, "coir": 75.0, "fibre mat": 69.0}[tray.medium] + noisy[tray.code] / 8
        )
        value = {"peat mix": 300.0, "coir": 310.0, "fibre mat": 180.0}[tray.medium] + 5 * noisy[tray.code]
        at = tray.sown_at + timedelta(days=10)
        rack.book.add_readings(
            [NewReading(kind=ReadingKind.FRESH_MASS, value=value, taken_at=at, tray_id=tray.id)]
        )
    return verdicts(rack.book)


def test_every_number_of_a_sentence_is_one_of_the_table(rack: Rack) -> None:
    found = each_verdict(rack)

    assert len(found) == 2
    for one in found:
        rows = {row.medium: row for row in table_rows(one)}
        for answer in answers_of(one):
            row = rows[answer.medium]
            told = set(NUMBER.findall(answer.words))
            here = " ".join((row.difference, row.interval, row.mean, row.answer, head_words(one)))
            assert told <= set(NUMBER.findall(here)), (answer.words, here)
            assert row.difference in told


def test_no_margin_is_told_that_is_a_share_of_a_mean_that_nobody_weighed(rack: Rack) -> None:
    """10 % of the yield of peat mix: of no tray of it there is one."""
    tray = rack.tray("coir")
    at = tray.sown_at + timedelta(days=10)
    rack.book.add_readings(
        [NewReading(kind=ReadingKind.FRESH_MASS, value=90.0, taken_at=at, tray_id=tray.id)]
    )

    (mass,) = [one for one in verdicts(rack.book) if one.kind is MeasureKind.YIELD]

    assert "against peat mix" in head_words(mass)
    assert "margin" not in head_words(mass)


def test_while_the_trial_runs_it_says_so_far_and_nothing_is_shown(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    rack.today("2026-03-10")
    rack.shoot_all(WORSE, leave=[rack.tray("coir").code])

    read(screen, rack.book, qtbot)

    assert all(text.startswith("So far ") for text in screen.page.answers.texts)
    assert {row[5] for row in cells(screen)} == {"trusted", "so far"}
    assert screen.page.intervals.told.so_far


def test_yield_has_a_page_of_its_own(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    each_verdict(rack)
    read(screen, rack.book, qtbot)

    qtbot.mouseClick(screen.head.kinds[MeasureKind.YIELD], Qt.MouseButton.LeftButton)

    assert "Yield" in screen.page.head.text()
    assert "another measure was named" in screen.page.head.text()
    assert screen.page.intervals.told.unit == "g"
    assert not screen.page.panels[screen.page.growth].isVisible()


def test_chances_stand_only_behind_how_this_was_worked_out(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)

    seen = " ".join(label.text() for label in screen.findChildren(QLabel) if label.isVisible())
    assert "Dunnett" not in seen
    assert not screen.page.how.lines.isVisible()
    qtbot.mouseClick(screen.page.how.button, Qt.MouseButton.LeftButton)
    assert screen.page.how.lines.isVisible()
    assert "Dunnett 1955" in screen.page.how.lines.text()


def test_the_trial_in_front_stays_though_another_book_brings_a_newer_one(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    read(screen, rack.book, qtbot)
    shown = screen.state.reading.trial
    rack.book.add_tray(a_tray(code="Z1", trial="Theirs", tag_number=500))

    screen.renew()
    settle(screen, qtbot)

    assert "Theirs" in screen.state.reading.trials
    assert screen.state.reading.trial == shown


def test_a_change_of_the_book_is_read_again(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    rack.shoot_all(EVEN, leave=[rack.tray("coir").code])
    read(screen, rack.book, qtbot)
    assert row_of(screen, "coir")[1] == "3"

    rack.shoot(rack.tray("coir"), 80.0)
    screen.renew()
    settle(screen, qtbot)

    assert row_of(screen, "coir")[1] == "4"


@pytest.mark.parametrize("percent", [100, 125, 150])
def test_nothing_is_wider_than_the_smallest_window(
    rack: Rack, screen: Verdict, dressed: QApplication, percent: int, qtbot: QtBot
) -> None:
    rack.shoot_all(WORSE)
    dress(dressed, Scheme.LIGHT, percent)
    screen.resize(1024, 560)
    read(screen, rack.book, qtbot)
    qtbot.wait(50)

    assert screen.page.body.width() <= screen.page.viewport().width()
    for table in (screen.page.table, screen.page.parts):
        wide = sum(table.columnWidth(column) for column in range(table.columnCount()))
        assert wide <= table.viewport().width()
        for column in range(1, table.columnCount()):
            assert table.sizeHintForColumn(column) <= table.columnWidth(column) + 1


def test_german_words_of_an_answer_break_in_the_smallest_window(
    dressed: QApplication, memory: Memory, qtbot: QtBot
) -> None:
    memory.language = "de"
    speak(dressed, memory)
    page = VerdictPage()
    memory.language = "en"
    speak(dressed, memory)
    dress(dressed, Scheme.LIGHT, 150)
    table = page.table
    qtbot.addWidget(page)
    page.resize(992, 560)
    page.show()
    long = "nicht gezeigt, 12 weitere Schalen"
    rows = [("plant-fibre mat", "3", "86,4", "-7,3", "-21,4 bis +16,8", long, "1-3 von 3")]
    table.show_rows([*rows, ("coir", "3", "97,6", "+3,9", "-1,0 bis +8,8", "bewährt", "1-3 von 3")])
    qtbot.wait(50)

    assert page.body.width() <= page.viewport().width()
    wide = sum(table.columnWidth(column) for column in range(table.columnCount()))
    assert wide <= table.viewport().width()
    letters = table.fontMetrics()
    assert table.columnWidth(5) < letters.horizontalAdvance(long)
    assert table.rowHeight(0) >= 2 * letters.height()  # in two lines, not cut
    assert table.rowHeight(1) < 2 * letters.height()
    assert table.height() >= table.rowHeight(0) + table.rowHeight(1)
    dress(dressed, Scheme.LIGHT)


# --- what is taught


def test_without_a_trial_the_place_says_what_will_stand_here(
    tmp_path: Path, screen: Verdict, work: Work, qtbot: QtBot
) -> None:
    with an_empty_book(tmp_path / "empty") as book:
        read(screen, book, qtbot)
        assert "No trial yet" in screen.empty.title.text()
        with qtbot.waitSignal(screen.place_wanted) as wanted:
            qtbot.mouseClick(screen.empty.button, Qt.MouseButton.LeftButton)
        assert wanted.args == ["plan"]
        work.stop_all()


def test_how_sure_it_is_names_what_differed_though_nobody_planned_it(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)
    assert not screen.page.care.isVisible()
    for tray in rack.trays:
        rack.book.edit_tray(tray.id, seed_lot="B7" if tray.medium == "fibre mat" else "A1")

    read(screen, rack.book, qtbot)

    assert screen.page.care.isVisible()
    assert screen.page.care.text() == "Read with care, for this was not alike either: seed lot."
    assert "though the plan does not vary it: seed lot." in screen.page.sure.text()


def test_a_day_that_nobody_photographed_is_said(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    read(screen, rack.book, qtbot)

    assert screen.page.nothing.isVisible()
    assert "day 9 (11 March) has passed without a photo that can be used" in screen.page.nothing.text()
    assert "No usable photo of the day that is read" in screen.page.sure.text()
    assert not screen.page.table_panel.isVisible()
    assert not any(panel.isVisible() for panel in screen.page.panels.values())


def test_before_the_day_its_date_is_named(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    rack.today("2026-03-05")
    read(screen, rack.book, qtbot)

    assert "no tray has a photo of day 9 (11 March) that can be used" in screen.page.nothing.text()


def test_photos_of_different_methods_are_to_be_scored_again(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    for number, tray in enumerate(rack.trays):
        rack.shoot(tray, 80.0, method="learned 2" if number < 4 else "learned 1")
    read(screen, rack.book, qtbot)

    assert "Let Intake score the photos again" in screen.page.nothing.text()


def test_another_book_is_read_from_its_first_line(
    rack: Rack, screen: Verdict, tmp_path: Path, qtbot: QtBot
) -> None:
    rack.shoot_all(EVEN)
    read(screen, rack.book, qtbot)
    bar = screen.page.verticalScrollBar()
    bar.setValue(bar.maximum())
    assert bar.value() > 0

    with Book.open(rack.folder / "book") as other:
        read(screen, other, qtbot)

        assert bar.value() == 0
        screen.open_book(None)


def test_one_tray_of_each_medium_gives_numbers_and_no_verdict(
    tmp_path: Path, screen: Verdict, work: Work, qtbot: QtBot
) -> None:
    rack = Rack(tmp_path, blocks=1)
    rack.shoot_all(EVEN)

    read(screen, rack.book, qtbot)

    assert all("numbers, no verdict" in text for text in screen.page.answers.texts)
    assert {row[5] for row in cells(screen)} == {"trusted", "no verdict"}
    assert not screen.page.panels[screen.page.intervals].isVisible()
    work.stop_all()
    rack.book.close()


# --- charts


@pytest.mark.parametrize(("width", "beside"), [(1366, True), (1024, False)])
def test_the_intervals_stand_beside_the_sentences_where_these_keep_their_lines(
    rack: Rack, screen: Verdict, qtbot: QtBot, width: int, beside: bool
) -> None:
    rack.shoot_all(WORSE)
    screen.resize(width, 768)
    read(screen, rack.book, qtbot)
    answer, chart = screen.page.answer_panel, screen.page.panels[screen.page.intervals]

    qtbot.waitUntil(lambda: (chart.y() == answer.y()) == beside and chart.x() + chart.y() > 0)
    assert answer.width() >= screen.page.answers.wanted > 0


def test_charts_say_their_content_in_words_and_take_the_focus(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)

    for chart in screen.page.charts:
        assert chart.accessibleName()
        assert "fibre mat" in chart.accessibleDescription()
        assert chart.focusPolicy() & Qt.FocusPolicy.TabFocus
    row = row_of(screen, "fibre mat")
    assert f"fibre mat: {row[3]}, interval {row[4]}" in screen.page.intervals.accessibleDescription()


def test_charts_are_saved_as_svg_and_png(rack: Rack, screen: Verdict, tmp_path: Path, qtbot: QtBot) -> None:
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)

    for number, chart in enumerate(screen.page.charts):
        svg, png = tmp_path / f"{number}.svg", tmp_path / f"{number}.png"
        screen.save_chart(chart, svg)
        screen.save_chart(chart, png)
        assert QSvgRenderer(str(svg)).isValid()
        assert b"fibre mat" in svg.read_bytes()
        image = QImage(str(png))
        assert image.width() >= 1500
        greys = {
            image.pixelColor(x, y).lightness() // 16 for x in range(0, 1500, 7) for y in range(0, 400, 7)
        }
        assert len(greys) > 3


def test_a_folder_that_cannot_be_written_is_told(
    rack: Rack, screen: Verdict, tmp_path: Path, qtbot: QtBot
) -> None:
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)

    with qtbot.waitSignal(screen.troubled) as told:
        screen.save_chart(screen.page.ranks, tmp_path / "no such folder" / "ranks.svg")

    assert "was not saved" in told.args[0]


# --- work


def test_reading_never_holds_the_window_up(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    """What reading does to the window it does each time; a pause of the whole machine comes once."""
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)  # numpy and scipy are there

    assert min(longest_wait(screen, qtbot) for _ in range(3)) < 100  # ms; 6 to 11 on a quiet machine


def longest_wait(screen: Verdict, qtbot: QtBot) -> int:
    """The longest time between two turns of the window's loop while a verdict is read, ms."""
    clock, gaps = QElapsedTimer(), []
    clock.start()
    beat = QTimer(interval=1)
    beat.timeout.connect(lambda: gaps.append(clock.restart()))
    beat.start()
    screen.renew()
    settle(screen, qtbot)
    beat.stop()
    return max(gaps)


def test_another_book_ends_reading_and_its_answer_is_dropped(
    rack: Rack, screen: Verdict, tmp_path: Path, work: Work, qtbot: QtBot
) -> None:
    rack.shoot_all(WORSE)
    screen.open_book(rack.book)
    screen.arrive()
    assert screen.desk.is_reading
    with an_empty_book(tmp_path / "other") as other:
        screen.open_book(other)
        screen.arrive()
        settle(screen, qtbot)
        assert screen.state.reading.trials == ()
        assert "No trial yet" in screen.empty.title.text()
        work.stop_all()
    assert TRIAL in rack.book.trials()


def test_what_is_not_shown_leads_to_the_plan_of_the_next_trial(
    rack: Rack, screen: Verdict, work: Work, qtbot: QtBot
) -> None:
    for number, tray in enumerate(rack.trays):  # alike, but far apart
        rack.shoot(tray, EVEN[tray.medium] + 8 * NOISE[number % len(NOISE)])
    read(screen, rack.book, qtbot)
    then = screen.next_trial
    assert then is not None
    trays = then.trays
    assert screen.next.text() == f"Plan the next trial: {trays} trays of each"
    plan = Plan(work)
    qtbot.addWidget(plan)
    plan.open_book(rack.book)
    plan.show()
    settle(screen, qtbot)
    screen.next_wanted.connect(plan.repeat_trial)

    qtbot.mouseClick(screen.next, Qt.MouseButton.LeftButton)
    settle(screen, qtbot)

    draft = plan.state.draft
    assert draft is not None
    assert (draft.trial, draft.copied_from, draft.trays) == (f"{TRIAL}, once more", TRIAL, trays)
    assert draft.media == ("peat mix", "coir", "fibre mat")
    assert plan.state.plan is not None
    assert plan.state.plan.trays_per_treatment == trays


def test_a_plan_that_is_being_made_is_not_lost_to_the_next_trial(
    rack: Rack, work: Work, qtbot: QtBot, dressed: QApplication
) -> None:
    plan = Plan(work)
    qtbot.addWidget(plan)
    plan.open_book(rack.book)
    plan.show()
    qtbot.waitUntil(lambda: not work.jobs())
    plan.new_trial()
    plan.question.name.setText("Feed")
    qtbot.keyClicks(plan.question.name, "s")

    with qtbot.waitSignal(plan.told) as told:
        plan.repeat_trial(TRIAL, 12)

    assert told.args == ["Another plan is being made here: keep it or give it up first."]
    assert plan.state.draft is not None
    assert plan.state.draft.trial == "Feeds"


def test_where_everything_is_shown_no_next_trial_is_proposed(
    rack: Rack, screen: Verdict, qtbot: QtBot
) -> None:
    rack.shoot_all(WORSE)
    read(screen, rack.book, qtbot)

    assert not screen.next.isVisible()


def test_a_medium_has_one_colour_in_every_chart(rack: Rack, screen: Verdict, qtbot: QtBot) -> None:
    rack.shoot_all(EVEN, leave=[tray.code for tray in rack.trays if tray.medium == "peat mix"])
    read(screen, rack.book, qtbot)
    page = screen.page

    assert page.blocks._series == {"coir": 1, "fibre mat": 2}  # 0 is the trusted one, without a number
    assert page.growth._series.items() >= page.blocks._series.items()
    assert {line.name: line.series for line in page.ranks._lines} == page.blocks._series


def test_headings_of_a_table_stand_over_their_words_and_numbers(dressed: QApplication, qtbot: QtBot) -> None:
    table = VerdictTable("t", ("Medium", "Mean"), (0,))
    qtbot.addWidget(table)
    table.resize(400, 120)
    table.show()
    table.show_rows([("HH", "HH")])
    table.horizontalHeaderItem(0).setText("HH")  # the same letters above and below
    table.horizontalHeaderItem(1).setText("HH")
    picture = table.grab().toImage()
    ground = picture.pixel(200, 60)
    head = table.horizontalHeader().height()

    def inked(top: int, bottom: int) -> list[int]:
        rows = range(top + 4, bottom - 4)
        return [x for x in range(4, 396) if any(picture.pixel(x, y) != ground for y in rows)]

    above, below = inked(0, head), inked(head + 2, head + table.rowHeight(0))
    assert abs(above[0] - below[0]) <= 1
    assert abs(above[-1] - below[-1]) <= 1
