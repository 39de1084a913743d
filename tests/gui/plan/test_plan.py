"""The place Plan: from a question to drawn places, trays on the bench and printed tags."""

import threading
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QDate, QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from data.plan.blocks import ShelfPlaces
from data.plan.draft import Draft, Step
from data.plan.drafttext import SETTING, draft_text
from data.trial import CropPlan, Factor, MeasureKind, Question
from gui.controls.numberfield import NumberField
from gui.plan import handplaces
from gui.plan.handplaces import HandPlacesDialog
from gui.plan.screen import Plan
from gui.plan.view import KeptPage, PlanState, chances_of
from gui.report.dialog import ReportDialog
from gui.sheets import SheetKind
from gui.style.words import line_width
from gui.work import Work
from tests.data.builders import a_note, a_score, a_tray, score_note
from tests.made.books import a_demonstration, an_empty_book


def a_draft(**special: Any) -> Draft:
    """Broccoli on peat mix and fibre mat on three shelves."""
    ordinary: dict[str, Any] = {
        "trial": "Mat",
        "words": "Can I leave peat?",
        "crops": (CropPlan(name="broccoli", read_on_day=9, sowing_rate_g=18.0),),
        "media": ("peat mix", "fibre mat"),
        "trusted": "peat mix",
        "trays": 3,
        "shelves": tuple(ShelfPlaces(name=name, places=6) for name in "ABC"),
        "begins": date(2026, 3, 2),
    }
    return Draft(**(ordinary | special))


@pytest.fixture
def book(tmp_path: Path, work: Work) -> Iterator[Book]:
    with an_empty_book(tmp_path / "book") as made:
        made.set_setting("today", "2026-03-01")
        yield made
        work.stop_all()


@pytest.fixture
def wet_hand(plan: Plan) -> None:
    """A second press within this time was none; ended by `quick_hand`."""
    QApplication.setDoubleClickInterval(400)


@pytest.fixture
def plan(
    qtbot: QtBot,
    dressed: QApplication,
    work: Work,
    book: Book,
    quick_hand: None,
    monkeypatch: pytest.MonkeyPatch,
) -> Plan:
    monkeypatch.setattr("gui.plan.desk.RECKONED_AFTER_MS", 1)  # tests type faster than a person
    screen = Plan(work)
    qtbot.addWidget(screen)
    screen.resize(1024, 560)
    screen.show()
    screen.open_book(book)
    settle(screen, qtbot)
    return screen


def settle(screen: Plan, qtbot: QtBot) -> None:
    qtbot.wait(10)  # the fields are quiet
    qtbot.waitUntil(lambda: not screen.work.jobs(), timeout=10_000)


def kept(plan: Plan, qtbot: QtBot, draft: Draft | None = None) -> None:
    """A draft, kept and drawn by the main button."""
    plan.new_trial()
    plan.edit_draft(draft or a_draft())
    plan.go_to_step(Step.DRAW)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    settle(plan, qtbot)


def test_an_empty_book_is_taught_what_stands_here(plan: Plan) -> None:
    assert plan._empty.isVisible()
    assert plan._empty.title.text() == "No trial is planned yet"
    assert plan._empty.button.text() == "Plan a trial"


def test_the_name_of_a_trial_is_no_wider_in_a_wide_window_than_a_line_that_reads_well(
    plan: Plan, qtbot: QtBot
) -> None:
    plan.new_trial()
    field = plan.question.name
    plan.resize(2560, 1440)
    qtbot.waitUntil(lambda: field.width() == line_width(field.fontMetrics()))

    plan.resize(480, 700)

    qtbot.waitUntil(lambda: field.geometry().right() < plan.question.viewport().width())


def test_a_beginner_is_led_from_question_to_places(plan: Plan, book: Book, qtbot: QtBot) -> None:
    """Every click and key of one who has never planned a trial."""
    qtbot.mouseClick(plan._empty.button, Qt.MouseButton.LeftButton)
    assert plan.missing.text() == "Give the trial a name."
    assert not plan.forward.isEnabled()

    qtbot.keyClicks(plan.question.name, "Mat")
    qtbot.keyClick(plan.question.name, Qt.Key.Key_Return)
    assert plan.missing.text() == "Choose at least one crop."

    for field, names in (
        (plan.treatments.more_crops, ("pea",)),
        (plan.treatments.more_media, ("peat", "mat")),
    ):
        for name in names:
            qtbot.keyClicks(field, name)
            qtbot.keyClick(field, Qt.Key.Key_Return)
    assert plan.missing.text() == "Say which medium you trust: the others are held against it."
    qtbot.mouseClick(plan.treatments.media_rows["peat"].trusted, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    sentences = plan.trays.sentences
    qtbot.waitUntil(lambda: "6 trays of each medium on each crop" in sentences.text(), timeout=10_000)

    qtbot.keyClick(plan.trays.trays.field, Qt.Key.Key_Down)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    assert "10 trays" in plan.blocks.costs.text()
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    with qtbot.waitSignal(plan.book_changed):
        qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)

    (version,) = book.plans("Mat")
    assert (version.plan.trusted, version.plan.trays) == ("peat", 10)
    assert len(book.draws("Mat")[-1].draw.places) == 10
    assert plan.pages.currentWidget() is plan.places

    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    assert plan.state.page is KeptPage.PRINT
    qtbot.mouseClick(plan.body.foot.also, Qt.MouseButton.LeftButton)
    assert plan.forward.text() == "They are sown: add 6 trays"
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    assert len(book.trays()) == 6


def test_the_kind_of_a_planned_medium_is_said_in_its_row_and_taken_back(
    plan: Plan, book: Book, qtbot: QtBot
) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft())
    kind = plan.treatments.media_rows["fibre mat"].kind
    assert kind.currentText() == "not said yet"

    kind.setCurrentIndex(kind.findData("mat"))
    with qtbot.waitSignal(plan.book_changed):
        kind.activated.emit(kind.currentIndex())

    assert {one.name: one.kind for one in book.media_known()} == {"fibre mat": "mat"}
    assert plan.state.draft is not None
    assert plan.state.draft.media == ("peat mix", "fibre mat")
    assert book.undo() == "fibre mat described"
    plan.renew()
    qtbot.waitUntil(lambda: kind.currentText() == "not said yet")


@pytest.mark.usefixtures("wet_hand")
def test_a_finger_that_bounces_on_next_does_not_keep_the_plan(plan: Plan, book: Book, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft())
    plan.go_to_step(Step.BLOCKS)
    settle(plan, qtbot)
    for _ in range(3):
        qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    settle(plan, qtbot)

    assert plan.state.step == Step.DRAW
    assert book.plans("Mat") == ()

    qtbot.wait(QApplication.doubleClickInterval() + 100)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    settle(plan, qtbot)
    assert len(book.plans("Mat")) == 1


@pytest.mark.usefixtures("wet_hand")
def test_a_finger_that_bounces_on_sow_does_not_sow(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.PRINT)
    qtbot.mouseClick(plan.body.foot.also, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    assert plan.state.page is KeptPage.SOW
    assert book.trays() == ()


@pytest.mark.usefixtures("wet_hand")
def test_a_double_click_on_change_the_plan_does_not_give_its_draft_up_again(plan: Plan, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    row = plan.body.head
    qtbot.mouseClick(row.change, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(row.leave, Qt.MouseButton.LeftButton)
    assert plan.state.draft is not None

    qtbot.wait(QApplication.doubleClickInterval() + 100)
    qtbot.mouseClick(row.leave, Qt.MouseButton.LeftButton)
    assert plan.state.draft is None


def test_sowing_ends_on_the_bench(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.SOW)
    assert plan.sow.words.text().startswith("6 trays, planned for 2 March 2026.")
    plan.sow.sown_on.setDate(QDate(2026, 3, 3))

    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    assert {tray.sown_at.date() for tray in book.trays()} == {date(2026, 3, 3)}
    assert plan.sow.title.text() == "All 6 trays are sown"
    with qtbot.waitSignal(plan.place_wanted) as wanted:
        qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)

    assert wanted.args == ["bench"]
    assert len(book.trays()) == 6


def test_by_keys_alone_each_step_goes_on_from_its_first_field_and_the_last_from_its_button(
    plan: Plan, qtbot: QtBot
) -> None:
    with qtbot.waitActive(plan):
        plan.activateWindow()
    plan.new_trial()
    plan.edit_draft(a_draft())
    qtbot.waitUntil(plan.question.name.hasFocus)
    seen = []
    for _ in range(4):
        qtbot.keyClick(plan, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
        seen.append(QApplication.focusWidget())

    pages = (plan.treatments, plan.trays, plan.blocks)
    assert all(part is not page and page.isAncestorOf(part) for page, part in zip(pages, seen, strict=False))
    assert seen[-1] is plan.forward


def test_keeping_is_one_step_of_undo_that_brings_the_draft_back(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)

    assert book.undo() == "plan of Mat"
    plan.renew()
    settle(plan, qtbot)
    assert (book.plans(), book.undo_text()) == ((), None)
    assert (plan.state.draft, plan.state.step) == (a_draft(), Step.DRAW)

    book.redo()
    plan.renew()
    settle(plan, qtbot)
    assert (plan.state.draft, plan.state.shown) == (None, "Mat")
    assert len(book.draws("Mat")) == 1


def test_undo_and_redo_of_a_kept_plan_leave_the_next_draft_in_the_book(
    plan: Plan, book: Book, qtbot: QtBot
) -> None:
    kept(plan, qtbot)
    plan.new_trial()
    other = a_draft(trial="Other")
    plan.edit_draft(other)
    plan.desk.close()  # the fields are quiet

    for turn in (book.undo, book.redo):
        assert turn() == "plan of Mat"
        plan.renew()
        settle(plan, qtbot)
        plan.desk.close()
        assert plan.state.draft == other
        assert book.setting(SETTING) == draft_text(other)


def test_a_draft_typed_just_before_the_window_closes_is_in_the_book(plan: Plan, book: Book) -> None:
    plan.edit_draft(a_draft(trial="Other"))
    assert book.setting(SETTING) != draft_text(a_draft(trial="Other"))

    assert plan.unkept() == ""

    assert book.setting(SETTING) == draft_text(a_draft(trial="Other"))


def test_a_change_of_a_plan_that_is_taken_back_is_a_draft_again(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.change_trial()
    assert plan.state.draft is not None
    changed = replace(plan.state.draft, trays=4)
    plan.edit_draft(changed)
    plan.go_to_step(Step.DRAW)
    plan.places.reason.setText("More room than thought")
    plan.keeper.keep(plan.state, plan.places.why)
    assert len(book.plans("Mat")) == 2

    book.undo()
    plan.renew()
    settle(plan, qtbot)

    assert len(book.plans("Mat")) == 1
    assert plan.state.draft == replace(changed, laid=None)  # of which nothing fits any more


def test_where_a_reason_is_wanted_the_keys_go_on_in_its_field(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    with qtbot.waitActive(plan):
        plan.activateWindow()
    plan.change_trial()
    assert plan.state.draft is not None
    plan.edit_draft(replace(plan.state.draft, margin=8.0))
    plan.go_to_step(Step.BLOCKS)
    plan.forward.setFocus()
    qtbot.waitUntil(plan.forward.hasFocus)

    qtbot.keyClick(plan, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)

    assert not plan.forward.isEnabled()
    assert plan.places.reason.hasFocus()


def test_enter_after_the_reason_does_what_it_was_asked_for(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.change_trial()
    assert plan.state.draft is not None
    plan.edit_draft(replace(plan.state.draft, margin=8.0))
    plan.go_to_step(Step.DRAW)
    qtbot.keyClick(plan.places.reason, Qt.Key.Key_Return)
    assert len(book.plans("Mat")) == 1, "no reason yet"

    qtbot.keyClicks(plan.places.reason, "Eight are enough")
    qtbot.keyClick(plan.places.reason, Qt.Key.Key_Return)
    settle(plan, qtbot)
    assert [version.why for version in book.plans("Mat")] == ["", "Eight are enough"]

    qtbot.keyClicks(plan.places.reason, "The shelf was moved")
    qtbot.keyClick(plan.places.reason, Qt.Key.Key_Return)
    settle(plan, qtbot)
    assert [draw.why for draw in book.draws("Mat")][-1] == "The shelf was moved"


def test_what_was_read_before_a_plan_was_kept_brings_no_draft_back(
    plan: Plan, book: Book, qtbot: QtBot
) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft())
    plan.go_to_step(Step.DRAW)
    settle(plan, qtbot)
    plan.desk.read()
    plan.keeper.keep(plan.state, "")
    settle(plan, qtbot)

    assert (plan.state.draft, plan.state.shown) == (None, "Mat")


def test_places_are_drawn_again_only_with_a_reason(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    assert not plan.places.again.isEnabled()

    qtbot.keyClicks(plan.places.reason, "shelf C lost its lamp")
    qtbot.mouseClick(plan.places.again, Qt.MouseButton.LeftButton)

    assert [draw.why for draw in book.draws("Mat")] == ["", "shelf C lost its lamp"]


def test_a_changed_plan_is_kept_only_with_a_reason(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.change_trial()
    plan.go_to_step(Step.DRAW)
    assert plan.missing.text() == "Nothing is changed yet."

    assert plan.state.draft is not None
    plan.edit_draft(replace(plan.state.draft, margin=8.0))
    assert plan.missing.text() == "Say why the plan is changed."
    qtbot.keyClicks(plan.places.reason, "5 was a slip")
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)

    assert [version.plan.primary.margin for version in book.plans("Mat")] == [5.0, 8.0]
    assert book.plans("Mat")[-1].why == "5 was a slip"


def test_a_copy_says_what_it_repeats(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)

    plan.copy_trial()
    plan.go_to_step(Step.DRAW)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)

    assert book.plans("Mat, once more")[-1].plan.copied_from == "Mat"
    assert len(book.plans("Mat")) == 1


def test_adding_trays_to_a_sown_trial_leaves_those_that_stand(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.SOW)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    before = book.draws("Mat")[-1].draw.places

    plan.change_trial()
    assert plan.state.draft is not None
    plan.edit_draft(replace(plan.state.draft, trays=5))
    plan.go_to_step(Step.DRAW)
    qtbot.keyClicks(plan.places.reason, "three do not settle it")
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)

    after = book.draws("Mat")[-1].draw.places
    assert after[: len(before)] == before
    assert len(after) == len(before) + 4
    assert [version.plan.trays for version in book.plans("Mat")] == [6, 10]


def test_an_unfinished_draft_is_there_again_when_the_book_is_opened(
    plan: Plan, book: Book, qtbot: QtBot
) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft())

    plan.open_book(None)
    plan.open_book(book)
    settle(plan, qtbot)

    assert plan.state.draft == a_draft()
    plan.leave_draft()
    plan.open_book(book)
    settle(plan, qtbot)
    assert plan.state.is_empty


def test_who_gives_up_a_copy_of_before_the_program_was_started_finds_the_trial_it_repeats(
    plan: Plan, book: Book, qtbot: QtBot
) -> None:
    kept(plan, qtbot)
    book.keep_plan(replace(book.plans("Mat")[-1].plan, trial="Later"))
    plan.copy_trial()
    assert plan.state.draft is not None
    plan.edit_draft(replace(plan.state.draft, margin=6.0))
    settle(plan, qtbot)

    plan.open_book(None)
    plan.open_book(book)
    settle(plan, qtbot)
    assert plan.state.draft is not None
    plan.leave_draft()

    assert not plan.state.is_empty
    assert plan.state.shown == "Mat"


def test_the_demonstration_shows_its_plan_as_it_was_kept(
    tmp_path: Path, qtbot: QtBot, dressed: QApplication, work: Work
) -> None:
    with a_demonstration(tmp_path / "demo") as book:
        screen = Plan(work)
        qtbot.addWidget(screen)
        screen.open_book(book)
        assert not work.jobs()  # nobody looks: the place in front reads first
        screen.show()
        screen.arrive()
        settle(screen, qtbot)

        assert "Kept on 28 February 2026, before the first tray was sown." in screen.pages.kept.text
        assert screen.forward.text() == "Next: places"
        screen.go_to_page(KeptPage.PLACES)
        assert "All 18 trays are sown." in screen.places.history.text()
        assert not screen.places.again.isVisibleTo(screen)
        work.stop_all()


def test_sheets_are_saved_as_chosen(plan: Plan, tmp_path: Path, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.PRINT)
    target = tmp_path / "sheets.pdf"

    with qtbot.waitSignal(plan.saving.told, timeout=10_000):
        plan.saving.save(target)

    assert target.read_bytes().startswith(b"%PDF")


def test_sheets_and_report_of_a_trial_go_to_files_of_two_names(
    plan: Plan, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    names: list[str] = []
    for module in ("gui.plan.saving", "gui.report.dialog"):
        monkeypatch.setattr(f"{module}.ask_new_file", lambda _parent, _title, name, _kind: names.append(name))
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.PRINT)
    plan.saving.ask()
    trial = plan.print_page.title
    assert plan.desk.book is not None
    dialog = ReportDialog(plan.desk.book, plan.desk._work, trial=trial)
    qtbot.addWidget(dialog)
    dialog._ask()

    assert names == [f"{trial} sheets.pdf", f"{trial} report.pdf"]


def test_a_folder_that_cannot_be_written_is_told(plan: Plan, tmp_path: Path, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.PRINT)

    with qtbot.waitSignal(plan.troubled) as told:
        plan.saving.save(tmp_path / "nowhere" / "sheets.pdf")

    assert "not saved" in told.args[0]


def test_a_late_answer_of_another_draft_is_dropped(plan: Plan, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft(trays=4))
    old = chances_of(a_draft(trays=9))

    plan._was_reckoned(a_draft(trays=9), old)

    assert plan.state.chances is None or plan.state.chances.draft == plan.state.draft


def test_the_curve_passes_through_the_chance_that_is_said() -> None:
    """R 4: six blocks of two, margin = sd, one-sided 5 %: .4408."""
    chances = chances_of(a_draft(trays=6, measure=MeasureKind.EYE))

    assert chances is not None
    as_assumed = dict(dict(chances.curves)[1.0])
    assert as_assumed[6.0] == pytest.approx(0.4408, abs=5e-4)
    assert "44 %" in chances.sentences[0]


def test_curves_rise_with_trays_and_fall_with_spread() -> None:
    chances = chances_of(a_draft(question=Question.GAP, other=Factor(name="feed", levels=("none", "weekly"))))

    assert chances is not None
    curves = [[chance for _, chance in points] for _, points in chances.curves]
    assert all(curve == sorted(curve) for curve in curves)
    assert all(a >= b >= c for a, b, c in zip(*curves, strict=True))


def test_the_chance_of_a_heat_mat_is_that_of_shelves() -> None:
    heat = Factor(name="heat mat", levels=("without heat mat", "with heat mat"), by_shelf=True)
    of_shelves, of_trays = chances_of(a_draft(other=heat)), chances_of(a_draft())

    assert of_shelves is not None
    assert of_trays is not None
    assert of_shelves.of_shelves
    assert dict(dict(of_shelves.curves)[1.0])[6.0] < dict(dict(of_trays.curves)[1.0])[6.0]


def test_shelves_that_hold_other_trays_are_told(plan: Plan, book: Book, qtbot: QtBot) -> None:
    book.add_tray(a_tray("Z1", shelf="B", trial=None, block=None))
    plan.renew()
    settle(plan, qtbot)
    plan.new_trial()
    plan.edit_draft(a_draft())
    plan.go_to_step(Step.BLOCKS)

    assert "(B 1)" in plan.blocks.in_use.text()


def test_what_varies_is_not_said_to_be_the_same() -> None:
    feed = Factor(name="feed", levels=("none", "weekly"))
    state = PlanState(draft=a_draft(other=feed, same={"feed": "none", "watering": "top"}))

    assert state.plan is not None
    assert state.plan.same == {"watering": "top"}


def test_feed_and_watering_stay_while_the_list_of_what_varies_is_walked(
    plan: Plan, book: Book, qtbot: QtBot
) -> None:
    """Arrow keys walk over "feed" and "watering", which then vary for a moment."""
    plan.new_trial()
    plan.edit_draft(a_draft(same={"feed": "weak tea", "watering": "top"}))
    plan.go_to_step(Step.VARIES)
    other = plan.treatments.other
    other.setFocus()

    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Home):
        qtbot.keyClick(other, key)

    assert other.currentData() == ""
    assert plan.state.draft is not None
    assert plan.state.draft.same == {"feed": "weak tea", "watering": "top"}
    assert (plan.treatments.feed.text(), plan.treatments.watering.currentData()) == ("weak tea", "top")


def test_stacking_heat_light_and_blackout_are_planned_once_for_all_trays(plan: Plan, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft(same={"watering": "top"}))
    plan.go_to_step(Step.VARIES)
    same, row = plan.treatments.same, plan.treatments.crop_rows["broccoli"]

    for box, level in ((same.stacking, "stacked"), (same.heat_mat, "with heat mat")):
        box.setCurrentIndex(box.findData(level))
        box.activated.emit(box.currentIndex())
    qtbot.keyClicks(same.light, "LED")
    row.blackout.field.setFocus()
    qtbot.keyClicks(row.blackout.field, "3")
    same.light.setFocus()

    draft = plan.state.draft
    assert draft is not None
    assert draft.same == {
        "watering": "top", "stacking": "stacked", "heat mat": "with heat mat", "light": "LED",
    }  # fmt: skip
    assert {crop.name: crop.blackout_days for crop in draft.crops}["broccoli"] == 3.0
    assert plan.treatments.caution.text().startswith("Electric heat")

    same.heat_mat.setCurrentIndex(0)  # as usual: nothing is said of it
    same.heat_mat.activated.emit(0)
    assert plan.state.draft is not None
    assert "heat mat" not in plan.state.draft.same
    assert plan.treatments.caution.isHidden()


def test_a_crop_that_is_never_covered_stays_so_while_its_day_is_changed(plan: Plan) -> None:
    plan.new_trial()
    crop = CropPlan(name="broccoli", read_on_day=9, blackout_days=0.0)
    plan.edit_draft(a_draft(crops=(crop,)))
    plan.go_to_step(Step.VARIES)

    plan.treatments.crop_rows["broccoli"].day.more.click()

    assert plan.state.draft is not None
    assert plan.state.draft.crops == (replace(crop, read_on_day=10),)


def test_never_covered_is_typed_as_0_days_and_an_empty_field_says_nothing(plan: Plan, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft())
    plan.go_to_step(Step.VARIES)
    row = plan.treatments.crop_rows["broccoli"]

    def planned() -> float | None:
        assert plan.state.draft is not None
        return {crop.name: crop.blackout_days for crop in plan.state.draft.crops}["broccoli"]

    assert (planned(), row.blackout.field.text()) == (None, "")
    qtbot.keyClicks(row.blackout.field, "0")
    qtbot.keyClick(row.blackout.field, Qt.Key.Key_Return)
    assert (planned(), row.blackout.field.text()) == (0.0, "0")

    row.blackout.less.click()
    assert (planned(), row.blackout.field.text()) == (None, "")
    row.blackout.more.click()
    row.blackout.less.click()
    assert planned() == 0.0
    row.blackout.field.clear()
    qtbot.keyClick(row.blackout.field, Qt.Key.Key_Return)
    assert planned() is None


def test_no_watering_is_shown_where_none_is_said(plan: Plan) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft(same={}))
    plan.go_to_step(Step.VARIES)

    assert plan.treatments.watering.currentText() == ""


@pytest.mark.parametrize(
    ("special", "begins"),
    [
        ({"other": Factor(name="heat mat", levels=("without heat mat", "with heat mat"))}, ["Electric heat"]),
        ({"other": Factor(name="feed", levels=("none", "weekly"))}, ["What a feed for food"]),
        ({"other": Factor(name="feed", levels=("none", "worm tea"))}, ["worm tea: feeds from manure"]),
        ({"same": {"feed": "fish meal"}}, ["fish meal: feeds from manure"]),
        ({"same": {"feed": "none"}}, []),
        (
            {
                "same": {"feed": "seaweed"},
                "other": Factor(name="heat mat", levels=("without heat mat", "with heat mat")),
            },
            ["What a feed for food", "Electric heat"],
        ),
    ],
)
def test_heat_and_feeds_are_planned_with_their_caution(
    plan: Plan, special: dict[str, Any], begins: list[str]
) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft(**special))
    plan.go_to_step(Step.VARIES)

    said = plan.treatments.caution.text().splitlines()
    assert len(said) == len(begins)
    assert all(line.startswith(words) for line, words in zip(said, begins, strict=True))
    assert plan.treatments.caution.isVisible() is bool(begins)


def test_state_of_nothing_is_empty() -> None:
    assert PlanState().is_empty
    assert PlanState().missing == ""


@pytest.mark.parametrize("percent", [100, 150])
@pytest.mark.parametrize("step", range(5))
def test_nothing_runs_out_of_a_small_window(
    plan: Plan, qtbot: QtBot, dressed: QApplication, percent: int, step: int
) -> None:
    font = dressed.font()
    font.setPointSizeF(10.0 * percent / 100)
    plan.setFont(font)
    plan.new_trial()
    plan.edit_draft(a_draft(other=Factor(name="feed", levels=("none", "weekly"))))
    plan.go_to_step(step)
    settle(plan, qtbot)

    shown = [
        part
        for part in plan.findChildren(QWidget)
        if isinstance(part, QLabel | QPushButton) and part.isVisible()
    ]
    right = max(part.mapTo(plan, QPoint(part.width(), 0)).x() for part in shown)
    assert right <= plan.width()


def test_a_step_behind_is_laid_out_anew_when_the_window_became_narrow_meanwhile(
    plan: Plan, qtbot: QtBot, dressed: QApplication
) -> None:
    # Qt loses the size of what is in a rolling page that was hidden then: its parts lay one over the other
    font = dressed.font()
    font.setPointSizeF(15.0)
    plan.setFont(font)
    plan.resize(1340, 640)
    plan.new_trial()
    plan.edit_draft(a_draft(other=Factor(name="feed", levels=("none", "weekly"))))
    plan.go_to_step(Step.BLOCKS)
    settle(plan, qtbot)
    plan.go_to_step(Step.TRAYS)
    plan.resize(840, 500)
    settle(plan, qtbot)

    plan.go_to_step(Step.BLOCKS)
    settle(plan, qtbot)

    tight = [
        part.size()
        for part in plan.blocks.findChildren(QPushButton)
        if part.isVisible() and part.height() < part.minimumSizeHint().height()
    ]
    assert plan.blocks.body.width() <= plan.blocks.viewport().width()
    assert tight == []


def test_tab_comes_by_a_row_that_was_added_before_it_goes_on(plan: Plan, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.edit_draft(a_draft())
    plan.go_to_step(Step.BLOCKS)
    settle(plan, qtbot)
    qtbot.mouseClick(plan.blocks.add, Qt.MouseButton.LeftButton)
    settle(plan, qtbot)
    last = plan.blocks.rows[-1][-1]
    assert last.isVisible()

    last.setFocus()
    qtbot.keyClick(last, Qt.Key.Key_Tab)
    assert plan.blocks.add.hasFocus()

    plan.body.foot.forward.setFocus()
    qtbot.keyClick(plan.body.foot.forward, Qt.Key.Key_Tab)
    assert not plan.blocks.isAncestorOf(QApplication.focusWidget()), "the round ends with the main action"


def test_number_field_steps_by_key_and_refuses_what_is_no_number(qtbot: QtBot, dressed: QApplication) -> None:
    field = NumberField("Trays", least=1, most=9)
    qtbot.addWidget(field)
    told: list[float] = []
    field.changed.connect(told.append)

    qtbot.keyClick(field.field, Qt.Key.Key_Up)
    field.field.setText("many")
    field.field.editingFinished.emit()
    field.field.setText("99")
    field.field.editingFinished.emit()

    assert told == [2.0, 9.0]
    assert field.field.text() == "9"


def test_a_step_goes_on_from_the_number_that_is_still_being_typed(
    qtbot: QtBot, dressed: QApplication
) -> None:
    field = NumberField("Length", "mm", most=2000)
    qtbot.addWidget(field)
    field.set(545)
    field.field.selectAll()
    qtbot.keyClicks(field.field, "600")

    qtbot.mouseClick(field.more, Qt.MouseButton.LeftButton)  # which leaves the focus in the field
    assert (field.value, field.field.text()) == (601, "601")

    field.field.selectAll()
    qtbot.keyClicks(field.field, "610")
    qtbot.keyClick(field.field, Qt.Key.Key_Down)
    assert (field.value, field.field.text()) == (609, "609")


def test_a_field_that_nobody_has_filled_stays_empty(qtbot: QtBot, dressed: QApplication) -> None:
    field = NumberField("Seed", unsaid="?")
    qtbot.addWidget(field)

    assert field.field.text() == ""
    field.set(18)
    assert field.field.text() == "18"


def test_a_name_is_taken_on_going_on_to_the_next_field(plan: Plan, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.go_to_step(Step.VARIES)
    plan.treatments.more_crops.setFocus()
    qtbot.keyClicks(plan.treatments.more_crops, " red  radish")
    qtbot.keyClick(plan.treatments.more_crops, Qt.Key.Key_Tab)

    assert plan.state.draft is not None
    assert [crop.name for crop in plan.state.draft.crops] == ["red radish"]
    assert plan.treatments.more_crops.text() == ""


def test_a_name_that_waits_makes_its_button_call_for_attention(plan: Plan, qtbot: QtBot) -> None:
    plan.new_trial()
    plan.go_to_step(Step.VARIES)
    field = plan.treatments.more_media
    button = next(one for one in plan.findChildren(QPushButton) if "Another medium" in one.accessibleName())

    qtbot.keyClicks(field, "coir")
    assert button.property("role") == "main"
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

    assert button.property("role") == ""
    assert plan.state.draft is not None
    assert plan.state.draft.media == ("coir",)


def test_cards_of_the_station_are_proposed_until_something_is_sown(plan: Plan, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.PRINT)
    assert plan.print_page.kinds[SheetKind.STATION].isChecked()

    plan.go_to_page(KeptPage.SOW)
    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)
    plan.go_to_page(KeptPage.PRINT)

    assert not plan.print_page.kinds[SheetKind.STATION].isChecked()


def test_no_kept_page_asks_for_more_height_than_a_small_window_has(plan: Plan, qtbot: QtBot) -> None:
    kept(plan, qtbot)

    for page in (plan.places, plan.print_page, plan.sow, plan.pages.kept):
        assert page.minimumSizeHint().height() <= 12 * plan.fontMetrics().height()


def test_photos_that_came_in_too_early_are_matched_when_the_trays_are_sown(
    plan: Plan, book: Book, tmp_path: Path, qtbot: QtBot
) -> None:
    kept(plan, qtbot)
    place = book.draws("Mat")[-1].draw.places[0]
    note = a_note(tmp_path, "early.jpg", taken_at="2026-03-01T18:00:00", tag=place.tag_number)
    book.keep(replace(score_note(note), score=a_score(50.0)), note)
    plan.go_to_page(KeptPage.SOW)

    qtbot.mouseClick(plan.forward, Qt.MouseButton.LeftButton)

    assert [photo.tray_code for photo in book.photos()] == [place.code]


# --- places drawn on paper


def the_dialog(plan: Plan, does: Callable[[HandPlacesDialog], None], monkeypatch: pytest.MonkeyPatch) -> None:
    """Press the button, and do something in the dialog that comes."""

    def run(dialog: HandPlacesDialog) -> int:
        dialog.show()
        does(dialog)
        return dialog.result()

    monkeypatch.setattr(HandPlacesDialog, "exec", run)
    plan.places.by_hand.click()


def test_places_drawn_on_paper_are_typed_with_enter_kept_and_taken_back(
    plan: Plan, book: Book, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept(plan, qtbot)
    drawn = book.draws("Mat")

    def type_them(dialog: HandPlacesDialog) -> None:
        assert dialog.told.text() == "6 trays have no place yet."
        assert not dialog.keep.isEnabled()
        dialog.fields[0].setFocus()
        for text in ("2", "1", "2", "2", "1", "2"):
            field = dialog.focusWidget()
            assert field is not None
            qtbot.keyClicks(field, text)
            qtbot.keyClick(field, Qt.Key.Key_Return)
        assert dialog.told.text() == "One place has to be mended."
        assert dialog.signs[3].text() == "Place B2 is given to two trays."
        assert dialog.fields[3].accessibleDescription() == dialog.signs[3].text()
        dialog.fields[3].setText("1")
        assert dialog.told.text() == "Every tray has its place."
        dialog.keep.click()

    the_dialog(plan, type_them, monkeypatch)
    settle(plan, qtbot)

    last = book.draws("Mat")[-1]
    assert (last.draw.seed, last.why) == (0, "lots drawn from a hat")
    assert [place.treatment for place in last.draw.places[:2]] == ["fibre mat", "peat mix"]
    assert "Drawn on paper, entered by hand" in plan.places.words.text()
    assert book.undo() == "places of Mat entered by hand"
    assert book.draws("Mat") == drawn


def test_a_column_is_pasted_from_the_clipboard(
    plan: Plan, book: Book, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept(plan, qtbot)
    clipboard = QGuiApplication.clipboard()

    def paste_them(dialog: HandPlacesDialog) -> None:
        clipboard.setText("peat\t1\nmat\t2\n")
        qtbot.keyClick(dialog.fields[4], Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
        assert [field.text() for field in dialog.fields] == ["", "", "", "", "1", "2"]
        clipboard.setText("2\r\n1\r\n1\r\n2\r\n2\r\n1\r\n\r\n")
        dialog.paste.click()
        assert [field.text() for field in dialog.fields] == ["2", "1", "1", "2", "2", "1"]
        dialog.why_field.clear()
        assert not dialog.keep.isEnabled()
        dialog.reject()

    the_dialog(plan, paste_them, monkeypatch)

    assert len(book.draws("Mat")) == 1


def test_where_all_trays_stand_no_places_are_entered(plan: Plan, book: Book, qtbot: QtBot) -> None:
    kept(plan, qtbot)
    assert plan.places.by_hand.isVisible()
    book.sow_trial(book.draws("Mat")[-1].id)
    plan.renew()
    settle(plan, qtbot)

    plan.go_to_page(KeptPage.PLACES)
    assert not plan.places.by_hand.isVisible()


def test_sheets_are_written_while_the_window_goes_on(
    plan: Plan, tmp_path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept(plan, qtbot)
    plan.go_to_page(KeptPage.PRINT)
    threads: list[int] = []
    monkeypatch.setattr("gui.paper.pdf.write_pdf", lambda *_: threads.append(threading.get_ident()))

    told: list[str] = []
    plan.told.connect(told.append)
    with qtbot.waitSignal(plan.saving.told, timeout=10_000):
        plan.saving.save(tmp_path / "sheets.pdf")
        assert told == ["The sheets are being written."]

    assert told[1].startswith("Saved")
    assert threads
    assert threads[0] != threading.get_ident()


def test_a_pasted_column_is_read_once(
    qtbot: QtBot, dressed: QApplication, monkeypatch: pytest.MonkeyPatch
) -> None:
    drafted = PlanState(draft=a_draft(trays=9)).plan
    assert drafted is not None
    dialog = HandPlacesDialog(drafted, (), drawn_before=False)
    qtbot.addWidget(dialog)
    read: list[int] = []
    real = handplaces.read_places
    monkeypatch.setattr(handplaces, "read_places", lambda *asked: (read.append(1), real(*asked))[1])
    QGuiApplication.clipboard().setText("\n".join(str(n + 1) for n in range(len(dialog.fields))))

    qtbot.mouseClick(dialog.paste, Qt.MouseButton.LeftButton)

    assert [field.text() for field in dialog.fields][:3] == ["1", "2", "3"]
    assert len(read) == 1
