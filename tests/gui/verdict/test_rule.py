"""Limits and weights: tried on the grower's own trays, kept only with the plan and a reason."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.desirability import USUAL, MoldRule, PartName, Seen, rule_of
from gui.answer.reading import TraySeen, read_verdict
from gui.verdict.ruleview import mean_rows, preview_rows, trouble_of
from gui.verdict.screen import PAGE, RULE, Verdict
from gui.work import Work
from tests.data.builders import a_tray
from tests.data.trialrack import TRIAL, WORSE, Rack
from tests.gui.verdict.opened import read, settle
from tests.made.books import an_empty_book


@pytest.fixture
def rack(rack: Rack) -> Rack:
    rack.shoot_all(WORSE)
    return rack


@pytest.fixture
def screen(screen: Verdict, rack: Rack, qtbot: QtBot) -> Verdict:
    read(screen, rack.book, qtbot)
    qtbot.mouseClick(screen.head.rule, Qt.MouseButton.LeftButton)
    return screen


def weight(screen: Verdict, qtbot: QtBot, text: str) -> None:
    field = screen.rule_page.fields[PartName.COVERAGE, "weight"].field
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def test_each_part_of_a_score_is_visible_and_changes_at_once(screen: Verdict, qtbot: QtBot) -> None:
    table = screen.rule_page.table
    assert table.rowCount() == 3 + 12  # a mean for each medium, then the trays
    tray = 3
    assert "→" in table.item(tray, 2).text()
    assert table.item(tray, 5).text() == table.item(tray, 6).text()

    weight(screen, qtbot, "10")

    assert table.item(tray, 5).text() != table.item(tray, 6).text()


def test_kept_with_a_reason_they_hold_from_now_on(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    page = screen.rule_page
    weight(screen, qtbot, "5")
    assert not page.keep.isEnabled()
    assert "changed afterwards" in page.said.text()
    qtbot.keyClicks(page.why, "coverage is what I sell")
    qtbot.mouseClick(page.keep, Qt.MouseButton.LeftButton)
    settle(screen, qtbot)

    assert rule_of(rack.book.plans(TRIAL)[-1].plan.score).parts[PartName.COVERAGE].weight == 5.0
    assert rack.book.plans(TRIAL)[-1].why == "coverage is what I sell"
    assert screen._whole.currentIndex() == PAGE
    assert "Limits and weights of the canopy score were changed after sowing" in screen.page.sure.text()


def test_what_is_taken_back_while_the_page_is_open_holds_there_no_more(
    screen: Verdict, rack: Rack, qtbot: QtBot
) -> None:
    page = screen.rule_page
    weight(screen, qtbot, "5")
    qtbot.keyClicks(page.why, "coverage is what I sell")
    qtbot.mouseClick(page.keep, Qt.MouseButton.LeftButton)
    settle(screen, qtbot)
    qtbot.mouseClick(screen.head.rule, Qt.MouseButton.LeftButton)
    assert page.fields[PartName.COVERAGE, "weight"].value == 5.0

    rack.book.undo()
    screen.renew()
    settle(screen, qtbot)

    assert screen._whole.currentIndex() == RULE
    assert page.fields[PartName.COVERAGE, "weight"].value == 2.0
    weight(screen, qtbot, "5")  # as before: a change again
    qtbot.keyClicks(page.why, "after all")
    assert page.keep.isEnabled()


def test_the_trays_are_tried_on_the_same_counting_as_the_verdict(rack: Rack) -> None:
    before = next(iter(read_verdict(rack.book).seen.values()))
    for tray in rack.trays:
        rack.shoot(tray, 50.0, method="learned 2", bed_share=70.0, bed_uniformity=81.0, uniformity=60.0)
    of_bed = next(iter(read_verdict(rack.book).seen.values()))
    rack.forget_bed(rack.trays[0])
    of_inner = next(iter(read_verdict(rack.book).seen.values()))

    def counted(trays: tuple[TraySeen, ...]) -> set[tuple[float | None, float | None]]:
        return {(tray.seen.coverage, tray.seen.uniformity) for tray in trays}

    assert len(before) == len(of_bed) == len(of_inner) == 12
    assert counted(of_bed) == {(70.0, 81.0)}
    assert counted(of_inner) == {(50.0, 60.0)}


def test_leaving_keeps_nothing(screen: Verdict, rack: Rack, qtbot: QtBot) -> None:
    weight(screen, qtbot, "5")
    qtbot.mouseClick(screen.rule_page.back, Qt.MouseButton.LeftButton)

    assert screen._whole.currentIndex() == PAGE
    assert len(rack.book.plans(TRIAL)) == 1


def test_limits_that_make_no_sense_are_said_and_not_kept(screen: Verdict, qtbot: QtBot) -> None:
    page = screen.rule_page
    field = page.fields[PartName.UNIFORMITY, "good"].field
    field.selectAll()
    qtbot.keyClicks(field, "20")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    qtbot.keyClicks(page.why, "a try")

    assert page.said.text() == "Uniformity: what is best must lie above what is worthless."
    assert not page.keep.isEnabled()


def test_a_part_without_weight_can_be_weighed_again() -> None:
    seen = Seen(coverage=80.0, uniformity=90.0, colour=95.0)
    trays = [TraySeen(code="A1", treatment="coir", seen=seen)]
    parts = dict(USUAL.parts) | {PartName.COLOUR: replace(USUAL.parts[PartName.COLOUR], weight=0.0)}
    without = replace(USUAL, parts=parts)

    (row,) = preview_rows(trays, without, USUAL)

    assert row.parts[2] == "95.0 % → 0.93"
    assert float(row.now) > float(row.before)


def test_mold_rule_shows_in_the_preview() -> None:
    seen = Seen(coverage=80.0, uniformity=90.0, colour=95.0, mold_cm2=4.0)
    trays = [TraySeen(code="A1", treatment="coir", seen=seen)]

    (row,) = preview_rows(trays, USUAL, replace(USUAL, mold=MoldRule.APART))
    (mean,) = mean_rows(trays, USUAL, replace(USUAL, mold=MoldRule.APART))

    assert (row.before, row.now) == ("0.0", "\u2013")
    assert (mean.before, mean.now) == ("0.0", "\u2013")


def test_no_weight_at_all_is_refused() -> None:
    parts = {name: replace(part, weight=0.0) for name, part in USUAL.parts.items()}

    assert trouble_of(replace(USUAL, parts=parts)) == "Give at least one part a weight."
    assert trouble_of(USUAL) == ""


def test_without_a_plan_the_usual_ones_are_only_tried(
    tmp_path: Path, qtbot: QtBot, dressed: QApplication, work: Work
) -> None:
    with an_empty_book(tmp_path / "book") as book:
        for number, medium in enumerate(("peat mix", "coir") * 2):
            book.add_tray(a_tray(code=f"A{number}", medium=medium, trial="Unplanned", tag_number=20 + number))
        made = Verdict(work)
        qtbot.addWidget(made)
        made.show()
        read(made, book, qtbot)

        made.open_rule()

        assert "no plan, so the usual limits and weights hold" in made.rule_page.said.text()
        assert not made.rule_page.why.isVisible()
        assert not made.rule_page.keep.isEnabled()
        work.stop_all()
