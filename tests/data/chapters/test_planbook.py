"""Plans and drawings are kept with their dates; what is changed later stands beside them."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, timedelta
from pathlib import Path

import pytest

from data.book import Book
from data.chapters.drawbook import unsown
from data.errors import ReasonWanted, StrangeWatering, TagsUsedUp, TagTaken
from data.events import EventKind
from data.openfiles.checklist import checklist
from data.plan.blocks import ShelfPlaces
from data.plan.drawing import KeptDraw
from data.plan.handplaces import read_places, seats
from data.tables import planrows
from data.trial import CropPlan, Factor, KeptPlan, Measure, MeasureKind, treatment_of
from tests.data.builders import a_note, a_score, a_tray, score_note
from tests.data.plans import MEDIA, a_plan
from tests.made.books import an_empty_book

BEFORE = datetime(2026, 3, 1, 20)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with an_empty_book(tmp_path / "book") as made:
        made.set_setting("today", "2026-03-01")
        yield made


def kept(book: Book) -> KeptPlan:
    return book.plans("Mat against peat")[-1]


def sown_once(book: Book) -> None:
    """A plan of three blocks, drawn and sown."""
    plan_id = book.keep_plan(a_plan(), at=BEFORE)
    book.sow_trial(book.draw_places(plan_id, seed=1).id)


def test_a_plan_is_kept_with_its_day(book: Book) -> None:
    plan_id = book.keep_plan(a_plan(), at=BEFORE)

    first = book.plan(plan_id)
    assert (first.plan, first.version, first.kept_at, first.why) == (a_plan(), 1, BEFORE, "")
    assert book.trials() == ("Mat against peat",)


def test_the_same_plan_is_not_kept_twice(book: Book) -> None:
    assert book.keep_plan(a_plan()) == book.keep_plan(a_plan())
    assert len(book.plans("Mat against peat")) == 1


def test_a_changed_plan_wants_a_reason(book: Book) -> None:
    book.keep_plan(a_plan())

    with pytest.raises(ReasonWanted):
        book.keep_plan(a_plan(blocks=2), why="  ")

    assert len(book.plans()) == 1


def test_a_margin_widened_after_sowing_is_seen(book: Book) -> None:
    sown_once(book)
    wider = replace(a_plan(), measures=(Measure(kind=MeasureKind.SCORE, margin=9.0),))

    book.keep_plan(wider, why="5 is too strict", at=datetime(2026, 3, 9))

    first, second = book.plans("Mat against peat")
    assert (first.plan.primary.margin, second.plan.primary.margin) == (5.0, 9.0)
    assert (first.after_sowing, second.after_sowing) == (False, True)
    assert (second.version, second.why) == (2, "5 is too strict")


def test_what_is_kept_last_counts_though_the_clock_was_set_back_meanwhile(book: Book) -> None:
    for hour, words in ((9, "first"), (8, "second")):  # a dead battery, say, that was ahead by an hour
        at = datetime(2026, 3, 1, hour)
        plan = book.keep_plan(a_plan(words=words), "asked better", at=at)
        book.draw_places(plan, seed=hour, why="anew", at=at)

    assert [kept.plan.words for kept in book.plans()] == ["first", "second"]
    assert [kept.draw.seed for kept in book.draws("Mat against peat")] == [9, 8]


def test_keeping_a_plan_can_be_taken_back_and_done_again(book: Book) -> None:
    book.keep_plan(a_plan())

    assert book.undo() == "plan of Mat against peat"
    assert book.plans() == ()
    assert book.trials() == ()

    book.redo()
    assert kept(book).plan == a_plan()


def test_places_are_drawn_again_only_with_a_reason(book: Book) -> None:
    plan_id = book.keep_plan(a_plan())
    first = book.draw_places(plan_id, seed=1)

    with pytest.raises(ReasonWanted):
        book.draw_places(plan_id, seed=2)
    book.draw_places(plan_id, seed=2, why="shelf C lost its lamp")

    draws = book.draws("Mat against peat")
    assert draws[0] == first
    assert [draw.why for draw in draws] == ["", "shelf C lost its lamp"]
    assert draws[1].draw.seed == 2


def test_sowing_adds_every_tray_at_its_place(book: Book) -> None:
    sown_once(book)

    draw = book.draws("Mat against peat")[-1].draw
    trays = {tray.code: tray for tray in book.trays()}
    assert len(trays) == 18
    for place in draw.places:
        tray = trays[place.code]
        assert (tray.shelf, tray.position, tray.block) == (place.shelf, place.position, place.block)
        assert (tray.crop, tray.medium, tray.tag_number) == (place.crop, place.treatment, place.tag_number)
    one = next(tray for tray in trays.values() if tray.crop == "broccoli")
    assert (one.watering, one.feed, one.sowing_rate_g) == ("bottom", "none", 18.0)
    assert one.sown_at == datetime(2026, 3, 2, 9)
    assert one.blackout_to == datetime(2026, 3, 4, 9)


def test_sowing_is_one_step_of_undo(book: Book) -> None:
    sown_once(book)

    book.undo()

    assert book.trays() == ()
    assert len(unsown(book.draws("Mat against peat")[-1].draw, book.trial_trays("Mat against peat"))) == 18


def test_sowing_twice_adds_nothing(book: Book) -> None:
    sown_once(book)

    assert book.sow_trial(book.draws("Mat against peat")[-1].id) == ()


def test_a_tray_that_is_called_otherwise_after_sowing_is_not_sown_again(book: Book) -> None:
    sown_once(book)
    book.edit_tray(book.trays()[0].id, code="by the door")
    book.edit_tray(book.trays()[1].id, tag_number=400)

    assert book.trays_to_sow() == 0
    assert book.sow_trial(book.draws("Mat against peat")[-1].id) == ()


def test_two_trials_that_are_drawn_before_either_is_sown_have_tags_of_their_own(book: Book) -> None:
    first = book.draw_places(book.keep_plan(a_plan(blocks=4)), seed=1)  # two rounds
    second = book.draw_places(book.keep_plan(a_plan(trial="Lights")), seed=2)
    book.draw_places(book.plans("Lights")[-1].id, seed=3, why="once more")  # its own tags are free again

    for draw in (first, book.draws("Lights")[-1], first):
        assert book.sow_trial(draw.id)
    tags = [tray.tag_number for tray in book.trays()]
    assert len(set(tags)) == len(tags) == 24 + 18
    assert [kept.draw.places[0].tag_number for kept in (second, book.draws("Lights")[-1])] == [34, 34]


def test_a_plan_of_the_day_of_sowing_is_no_plan_after_sowing(book: Book) -> None:
    plan = book.keep_plan(a_plan(blocks=1), at=datetime(2026, 3, 2, 11))  # of that very day, after nine
    draw = book.draw_places(plan, seed=1, at=datetime(2026, 3, 2, 11, 5))

    book.sow_trial(draw.id)

    assert not kept(book).after_sowing
    assert {tray.sown_at for tray in book.trays()} == {datetime(2026, 3, 2, 11, 5)}
    assert book.morning_of(draw.id, date(2026, 3, 3)) == datetime(2026, 3, 3, 9)


def test_a_heat_mat_warms_whole_shelves(book: Book) -> None:
    heat = Factor(name="heat mat", levels=("without heat mat", "with heat mat"), by_shelf=True)
    shelves = [ShelfPlaces(name=name, places=6) for name in "ABCD"]
    plan = a_plan(blocks=2, factors=(MEDIA, heat), shelves=shelves)

    book.sow_trial(book.draw_places(book.keep_plan(plan), seed=4).id)

    warm = {(tray.shelf, tray.heat_mat) for tray in book.trays()}
    assert len(warm) == 4
    assert sum(bool(heated) for _, heated in warm) == 2
    assert all(treatment_of(tray, plan) is not None for tray in book.trays())


def test_rounds_are_sown_one_after_the_other(book: Book) -> None:
    assert book.trays_to_sow() == 0
    draw = book.draw_places(book.keep_plan(a_plan(blocks=4)), seed=1)
    assert book.trays_to_sow() == 24

    assert len(book.sow_trial(draw.id)) == 18
    assert book.trays_to_sow() == 6
    assert len(book.sow_trial(draw.id)) == 6


def test_trays_added_later_leave_those_that_stand(book: Book) -> None:
    sown_once(book)
    before = book.draws("Mat against peat")[-1].draw.places

    longer = book.keep_plan(a_plan(blocks=4), why="three blocks do not settle it")
    draw = book.draw_places(longer, seed=9)

    assert draw.draw.places[:18] == before
    assert draw.why == "three blocks do not settle it"
    assert [version.plan.trays for version in book.plans("Mat against peat")] == [18, 24]


def test_a_tag_on_a_growing_tray_is_not_drawn(book: Book) -> None:
    book.add_tray(a_tray("Z1", tag_number=10))

    draw = book.draw_places(book.keep_plan(a_plan()), seed=1)

    assert min(place.tag_number for place in draw.draw.places) == 11


def test_more_trays_than_tags_are_told(book: Book) -> None:
    book.add_trays(a_tray(f"Z{n}", tag_number=n) for n in range(10, 580))

    with pytest.raises(TagsUsedUp):
        book.draw_places(book.keep_plan(a_plan()), seed=1)


def test_the_next_round_takes_over_the_tags_once_the_trays_before_have_ended(book: Book) -> None:
    book.add_trays(a_tray(f"Z{n}", tag_number=n) for n in range(28, 587))
    draw = book.draw_places(book.keep_plan(a_plan(blocks=4)), seed=1)
    first = book.sow_trial(draw.id)

    with pytest.raises(TagTaken, match="tag 10 "):
        book.sow_trial(draw.id)
    for tray in first:
        book.add_event([tray], EventKind.CUT, book.now())

    assert [book.tray(tray).tag_number for tray in book.sow_trial(draw.id)] == list(range(10, 16))


def test_photos_that_came_before_their_trays_find_them_by_the_tag(book: Book, tmp_path: Path) -> None:
    book.set_setting("today", "2026-03-05")
    draw = book.draw_places(book.keep_plan(a_plan()), seed=1)
    for number, place in enumerate(draw.draw.places[:2]):
        note = a_note(tmp_path, f"{number}.jpg", taken_at=f"2026-03-05T08:0{number}:00", tag=place.tag_number)
        book.keep(replace(score_note(note), score=a_score(50.0)), note)
    early = a_note(tmp_path, "early.jpg", taken_at="2026-03-01T08:00:00", tag=draw.draw.places[0].tag_number)
    book.keep(replace(score_note(early), score=a_score(50.0)), early)
    book.sow_trial(draw.id, sown_at=datetime(2026, 3, 2, 9))

    assert book.match_by_tag() == 2

    shown = {photo.name: photo.tray_code for photo in book.photos()}
    codes = [place.code for place in draw.draw.places[:2]]
    assert shown == {"0.jpg": codes[0], "1.jpg": codes[1], "early.jpg": None}
    assert book.match_by_tag() == 0
    assert book.undo() == "2 photos matched"
    assert {photo.tray_code for photo in book.photos()} == {None}


@pytest.mark.parametrize("name", sorted(name for name in planrows.__all__ if name.isupper()))
def test_every_question_fits_the_tables(name: str, book: Book) -> None:
    values = defaultdict(lambda: None, trial="", name="", draw=0)

    assert book._rows("EXPLAIN " + getattr(planrows, name), **values)


# --- places drawn on paper


def entered(book: Book, *typed: str, why: str = "") -> KeptDraw:
    plan = kept(book)
    wanted = seats(plan.plan, book.standing_blocks(plan.plan.trial))
    filled = read_places(plan.plan, wanted, typed).filled
    assert filled is not None
    return book.enter_places(plan.id, filled, why=why)


def test_places_drawn_on_paper_are_kept_as_such_and_sown(book: Book) -> None:
    book.keep_plan(a_plan(blocks=2, crops=(CropPlan(name="broccoli", read_on_day=9),)), at=BEFORE)

    draw = entered(book, "3", "1", "2", "1", "2", "3")

    assert draw.draw.seed == 0
    first = [place for place in draw.draw.places if place.shelf == "A"]
    assert [(place.code, place.treatment) for place in first] == [
        ("A1", "coir"), ("A2", "fibre mat"), ("A3", "peat mix"),
    ]  # fmt: skip
    assert book.undo_text() == "places of Mat against peat entered by hand"
    while book.sow_trial(draw.id):
        pass
    assert [tray.medium for tray in book.rack()[0].trays] == ["coir", "fibre mat", "peat mix"]


def test_entered_places_take_the_place_of_drawn_ones_with_a_reason_and_can_be_taken_back(book: Book) -> None:
    plan_id = book.keep_plan(a_plan(blocks=1, crops=(CropPlan(name="broccoli", read_on_day=9),)), at=BEFORE)
    drawn = book.draw_places(plan_id, seed=1)

    with pytest.raises(ReasonWanted):
        entered(book, "3", "1", "2")
    entered(book, "3", "1", "2", why="lots drawn from a hat")

    assert [(one.draw.seed, one.why) for one in book.draws("Mat against peat")] == [
        (1, ""), (0, "lots drawn from a hat"),
    ]  # fmt: skip
    assert "placed by hand (lots drawn from a hat) within each" in told(book, DESIGN)
    book.undo()
    assert "treatments at random within each" in told(book, DESIGN)
    assert book.draws("Mat against peat") == (drawn,)
    book.redo()
    assert book.draws("Mat against peat")[-1].draw.seed == 0


DESIGN = "Description of the experimental design"


def test_blocks_that_were_entered_by_hand_are_told_apart_from_those_drawn_later(book: Book) -> None:
    plan = a_plan(blocks=2, crops=(CropPlan(name="broccoli", read_on_day=9),))
    late = replace(plan.blocks[1], round=2, sow_on=plan.blocks[1].sow_on + timedelta(days=7))
    plan_id = book.keep_plan(replace(plan, blocks=(plan.blocks[0], late)), at=BEFORE)
    drawn = entered(book, "3", "1", "2", "1", "2", "3", why="cards from a hat")
    book.sow_trial(drawn.id)

    book.draw_places(plan_id, seed=1, why="the cards of shelf B were lost")

    assert f"at random, by hand (cards from a hat) in {plan.blocks[0].name}, within" in told(book, DESIGN)


def test_other_limits_of_the_score_leave_a_growers_words_on_the_places_alone(book: Book) -> None:
    book.keep_plan(a_plan(blocks=1, crops=(CropPlan(name="broccoli", read_on_day=9),)), at=BEFORE)
    entered(book, "3", "1", "2", why="cards from a hat")

    book.keep_score_rule("Mat against peat", {"mold": "apart"}, "mold is rare here")

    first, copied = book.draws("Mat against peat")
    assert (copied.why, copied.drawn_at) == ("cards from a hat", first.drawn_at)
    assert "placed by hand (cards from a hat) within each" in told(book, DESIGN)


def test_a_plan_whose_places_were_never_drawn_claims_no_chance(book: Book) -> None:
    book.keep_plan(a_plan(blocks=1, crops=(CropPlan(name="broccoli", read_on_day=9),)), at=BEFORE)

    assert "placed in a way that is not recorded within each" in told(book, DESIGN)


def told(book: Book, attribute: str) -> str:
    return next(line.value for line in checklist(book) if line.attribute == attribute)


def test_a_block_that_stands_keeps_its_places(book: Book) -> None:
    crops = (CropPlan(name="broccoli", read_on_day=9),)
    plan = a_plan(blocks=2, crops=crops)
    late = replace(plan.blocks[1], round=2, sow_on=plan.blocks[1].sow_on + timedelta(days=7))
    book.keep_plan(replace(plan, blocks=(plan.blocks[0], late)), at=BEFORE)
    first = entered(book, "3", "1", "2", "1", "2", "3")
    book.sow_trial(first.id)

    second = entered(book, "3", "2", "1", why="the cards of shelf B were lost")

    assert second.draw.places[:3] == first.draw.places[:3]
    assert [p.treatment for p in second.draw.places[3:]] == ["fibre mat", "coir", "peat mix"]


def test_a_plan_of_before_that_waters_in_its_own_words_says_what_to_change_and_sows_nothing(
    book: Book,
) -> None:
    plan_id = book.keep_plan(a_plan(same={"watering": "twice a day", "feed": "none"}), at=BEFORE)
    draw = book.draw_places(plan_id, seed=1)

    with pytest.raises(StrangeWatering, match=r'watered by "twice a day".*change the plan'):
        book.sow_trial(draw.id)

    assert book.trays() == ()
    changed = book.keep_plan(a_plan(), "Watered from the bottom")
    assert book.sow_trial(book.draw_places(changed, seed=1).id)
