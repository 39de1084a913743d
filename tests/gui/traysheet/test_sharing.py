"""Conditions for many trays at once, and the cautions of feed and heat where they are typed."""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot

from data.book import Book
from data.cancel import Cancelled
from data.growing.conditions import as_new
from data.records import Tray
from data.trial import Factor
from gui.trays.sharedialog import ShareDialog
from gui.trays.sharing import effect_words, groups_of, planned_words
from gui.traysheet.conditionspage import ConditionsPage
from gui.traysheet.screen import TraySheet
from gui.traysheet.views import View
from gui.work import Work
from tests.data.builders import a_kept_tray
from tests.data.plans import MEDIA, a_plan
from tests.data.trialrack import TRIAL

Answer = Callable[[Callable[[QDialog], None]], None]


def trays(book: Book) -> dict[str, Tray]:
    return {tray.code: tray for tray in book.trays()}


@pytest.fixture
def sheet(sheet: TraySheet, rack_book: Book) -> TraySheet:
    """A1 of the rack book, its conditions in front."""
    sheet.open_tray(trays(rack_book)["A1"].id)
    sheet.show_view(View.CONDITIONS)
    return sheet


@pytest.fixture
def page(sheet: TraySheet) -> ConditionsPage:
    return sheet.views.conditions


def choose(dialog: QDialog, words: str) -> ShareDialog:
    assert isinstance(dialog, ShareDialog)
    at = next(n for n in range(dialog.group.count()) if words in dialog.group.itemText(n))
    dialog.group.setCurrentIndex(at)
    return dialog


def test_blackout_and_stacking_are_set_once_for_all_growing_trays_and_undone_in_one_step(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    before = rack_book.trays()
    page.form.dark.setChecked(True)
    page.form.dark_to.setDateTime(page.form.dark_from.dateTime().addDays(3))
    page.form.stacked.setCurrentIndex(page.form.stacked.findData(True))
    told: list[str] = []

    def deal(dialog: QDialog) -> None:
        asked = choose(dialog, "all")
        assert asked.names == {"blackout", "stacked"}  # what was just changed
        told.append(asked.effect.text())
        qtbot.mouseClick(asked.keep, Qt.MouseButton.LeftButton)

    answer(deal)
    with qtbot.waitSignal(sheet.book_changed, timeout=5000):
        qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)

    after = rack_book.trays()
    assert f"{len(before)} of {len(before)} trays change." in told[0]
    assert all(tray.stacked for tray in after)
    assert {
        tray.blackout_to - tray.blackout_from for tray in after if tray.blackout_to and tray.blackout_from
    } == {timedelta(days=3)}
    assert all(tray.blackout_from == tray.sown_at for tray in after)
    assert not page.keep.isEnabled()  # A1 has them, too
    rack_book.undo()
    assert rack_book.trays() == before


def test_what_else_was_typed_stays_typed(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    page.form.note.setText("by the door")
    page.form.watering.setCurrentIndex(page.form.watering.findData("top"))

    answer(lambda dialog: choose(dialog, "all").keep.click())
    with qtbot.waitSignal(sheet.book_changed, timeout=5000):
        qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)

    assert {tray.watering for tray in rack_book.trays()} == {"top"}
    assert page.changes == {"note": "by the door"}
    assert trays(rack_book)["A1"].note == ""


def test_it_says_beforehand_what_would_be_replaced(
    page: ConditionsPage, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    rack_book.edit_tray(trays(rack_book)["A2"].id, feed="weekly")
    page.form.feed.setText("none")
    said: list[str] = []

    def deal(dialog: QDialog) -> None:
        said.append(choose(dialog, "all").effect.text())

    answer(deal)  # and left: nothing is kept then
    qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)

    assert "Feed is noted otherwise and replaced: weekly (A2)." in said[0]
    assert trays(rack_book)["A2"].feed == "weekly"
    assert page.changes == {"feed": "none"}


def test_cancel_while_many_trays_get_conditions_leaves_each_as_it_was(
    page: ConditionsPage, work: Work, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    before, steps = rack_book.trays(), rack_book.undo_text()
    page.form.stacked.setCurrentIndex(page.form.stacked.findData(True))
    answer(lambda dialog: qtbot.mouseClick(choose(dialog, "all").keep, Qt.MouseButton.LeftButton))
    with qtbot.waitSignal(page.told, timeout=5000) as told:
        qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)
        (job,) = work.shown()
        assert job.whole
        job.cancel()
    assert told.args == ["Stopped; the conditions of all trays are as they were."]
    assert (rack_book.trays(), rack_book.undo_text()) == (before, steps)
    assert page.form.stacked.currentData() is True  # what was typed stands there still


def test_stopped_half_way_no_tray_has_got_any(rack_book: Book) -> None:
    before = rack_book.trays()
    told: list[int] = []

    def step(done: int, total: int) -> None:
        told.append(total)
        if done == 2:
            raise Cancelled

    model = replace(as_new(before[0]), feed="seaweed")
    with pytest.raises(Cancelled):
        rack_book.share_conditions(model, {"feed"}, [tray.id for tray in before], step)
    assert told == [len(before)] * 3
    assert rack_book.trays() == before
    assert rack_book.undo_text() is None


def test_nothing_ticked_keeps_nothing(page: ConditionsPage, qtbot: QtBot, answer: Answer) -> None:
    def deal(dialog: QDialog) -> None:
        assert isinstance(dialog, ShareDialog)
        assert dialog.names == frozenset()
        assert not dialog.keep.isEnabled()

    answer(deal)
    qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)


def test_groups_are_of_the_trial_of_a_medium_a_crop_and_a_shelf_and_none_stands_twice() -> None:
    one = a_kept_tray(1)
    same = a_kept_tray(2)
    other_medium = a_kept_tray(3, medium="peat mix", shelf="B")
    other_crop = a_kept_tray(4, crop="radish", trial=None)
    of_trial = (one, same, other_medium)

    groups = groups_of(one, of_trial, (*of_trial, other_crop))

    assert [(group.words, [tray.id for tray in group.trays]) for group in groups] == [
        ("all 3 trays of its trial", [1, 2, 3]),
        ("the 2 trays of its trial on coir", [1, 2]),
        ("all 4 growing trays", [1, 2, 3, 4]),
        ("the 3 growing trays on coir", [1, 2, 4]),
    ]
    assert groups_of(one, (one,), (one,)) == ()


# --- cautions


def test_a_feed_of_waste_and_electric_heat_carry_their_cautions_where_they_are_typed(
    page: ConditionsPage, qtbot: QtBot, answer: Answer
) -> None:
    form = page.form
    assert form.feed_caution.isHidden()
    assert form.heat_caution.isHidden()

    form.feed.setText("worm tea")
    assert not form.feed_caution.isHidden()
    assert "ask your local food authority first" in form.feed_caution.text()

    form.heat_mat.setCurrentIndex(form.heat_mat.findData(True))
    assert not form.heat_caution.isHidden()
    assert "local electrical rules" in form.heat_caution.text()
    assert "residual-current" in form.heat_caution.text()
    said = f"{form.feed_caution.text()}\n{form.heat_caution.text()}"

    def deal(dialog: QDialog) -> None:
        assert isinstance(dialog, ShareDialog)
        assert dialog.caution.text() == said

    answer(deal)
    qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)

    form.feed.setText("none")
    form.heat_mat.setCurrentIndex(form.heat_mat.findData(False))
    assert form.feed_caution.isHidden()
    assert form.heat_caution.isHidden()


def test_of_very_many_other_values_few_are_told_and_the_rest_counted() -> None:
    trays = [a_kept_tray(n, light=f"lamp {n}") for n in range(1, 31)]
    model = replace(as_new(trays[0]), light="LED")

    told, replaced = effect_words(model, {"light"}, trays)

    assert told == "30 of 30 trays change."
    assert replaced.endswith("lamp 6 (A6), 24 other values (24 trays).")
    assert effect_words(model, {"light"}, trays[:1]) == ("1 of 1 trays changes.",)


def test_what_a_plan_varies_is_not_given_to_all_without_a_word(
    sheet: TraySheet, page: ConditionsPage, rack_book: Book, qtbot: QtBot, answer: Answer
) -> None:
    for number, tray in enumerate(rack_book.trays()):
        rack_book.edit_tray(tray.id, trial=TRIAL, feed="weekly" if number % 2 else "none")
    feeds = Factor(name="feed", levels=("none", "weekly"))
    rack_book.keep_plan(a_plan(factors=(MEDIA, feeds), same={"watering": "bottom"}))
    page.form.feed.setText("none")
    said: list[str] = []

    answer(lambda dialog: said.append(choose(dialog, "all").caution.text()))
    qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)

    assert said[0].startswith("A plan varies this on purpose: Feed. Trays that get it here leave")


def test_a_plan_is_named_only_where_a_tray_would_get_something_else() -> None:
    trays = [a_kept_tray(n, stacked=n > 1) for n in (1, 2)]
    model = as_new(trays[0])

    def told(*names: str) -> bool:
        return bool(planned_words(model, names, trays, {"t": {"stacking", "watering"}}))

    assert told("stacked")
    assert not told("watering")  # alike already
    assert not told("seed_lot")
    assert not planned_words(model, {"stacked"}, trays, {"other": {"stacking"}})
