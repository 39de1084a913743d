"""Trays, crops, media and tray types: told once, copied afterwards, changed with a way back."""

from dataclasses import replace
from datetime import datetime, timedelta

import pytest

from data.book import Book
from data.errors import TagTaken
from data.events import EventKind
from data.growing.conditions import Crop, Medium, TrayType, as_new, next_code
from data.growing.shelved import stands_since
from tests.data.builders import SOWN, a_tray
from tests.data.contents import say_of_crop

LATER = SOWN + timedelta(days=10, hours=2)


# --- a new tray like the last


@pytest.mark.parametrize(
    ("code", "taken", "proposed"),
    [
        ("A1", {"A1"}, "A2"),
        ("A1", {"A1", "A2", "A3"}, "A4"),
        ("A09", {"A09"}, "A10"),
        ("B-007", set(), "B-008"),
        ("tom", {"tom"}, "tom 2"),
        ("7", {"7"}, "8"),
    ],
)
def test_the_next_code_counts_on(code: str, taken: set[str], proposed: str) -> None:
    assert next_code(code, taken) == proposed


def test_a_new_tray_is_a_copy_of_the_last_of_its_kind(book: Book) -> None:
    first = a_tray(
        "B4", crop="pea", medium="peat mix", tag_number=40, seating="in the tray", sowing_rate_g=280.0,
        soak_hours=12.0, blackout_from=SOWN, blackout_to=SOWN + timedelta(days=4), stacked=True,
        watering="both", feed="none", heat_mat=True, light="LED", seed_lot="P-1", note="first of all",
    )  # fmt: skip
    book.add_trays([replace(first, code="B3", tag_number=41, sown_at=SOWN - timedelta(days=1)), first])

    new = book.like_last("pea", "peat mix", LATER)

    assert new == replace(
        first,
        code="B5",
        sown_at=LATER,
        blackout_from=LATER,
        blackout_to=LATER + timedelta(days=4),
        tag_number=None,
        trial=None,
        block=None,
        note="",
    )
    assert book.tray(book.add_tray(new)).position == 1 + max(
        tray.position for tray in book.trays() if tray.code == "B4"
    )


def test_codes_of_growing_trays_alone_are_taken(book: Book) -> None:
    assert book.like_last("broccoli", "coir", LATER).code == "A4"
    for tray in book.trays()[1:]:
        book.finish_tray(tray.id, LATER)
    assert book.free_code("A1") == "A2"


def test_a_kind_never_sown_has_no_last_but_begins_with_what_was_said_of_it(book: Book) -> None:
    assert book.like_last("pea", "mat") is None
    say_of_crop(book, "pea", sowing_rate_g=280.0, soak_hours=12.0, blackout_days=4.0, stacked=True)
    book.set_medium("mat", seating="on an upturned tray", watering="bottom")

    new = book.tray_of_kind("pea", "mat", LATER)

    assert (new.code, new.crop, new.medium) == ("A4", "pea", "mat")
    assert (new.sowing_rate_g, new.soak_hours, new.stacked) == (280.0, 12.0, True)
    assert (new.seating, new.watering) == ("on an upturned tray", "bottom")
    assert (new.blackout_from, new.blackout_to) == (LATER, LATER + timedelta(days=4))


def test_the_first_tray_of_a_book_can_be_begun(tmp_path_factory: pytest.TempPathFactory) -> None:
    with Book.create(tmp_path_factory.mktemp("empty") / "book") as empty:
        new = empty.tray_of_kind("radish", "coir", LATER)
        assert (new.code, new.seating, new.blackout_to) == ("A1", "in the tray", None)


# --- conditions


def test_conditions_are_edited_and_taken_back(book: Book) -> None:
    tray = book.trays()[1]

    book.edit_tray(tray.id, medium="wood fibre", sowing_rate_g=18.0, stacked=False, block="2")

    edited = book.tray(tray.id)
    assert (edited.medium, edited.sowing_rate_g, edited.stacked, edited.block) == (
        "wood fibre", 18.0, False, "2",
    )  # fmt: skip
    assert (edited.code, edited.position, edited.trial) == (tray.code, tray.position, tray.trial)
    assert book.undo_text() == "conditions of A2"
    book.undo()
    assert book.tray(tray.id) == tray
    assert "wood fibre" not in book.media()


def test_editing_does_not_touch_how_a_tray_ended(book: Book) -> None:
    from data.events import EventKind

    tray = book.trays()[0].id
    book.add_event([tray], EventKind.CUT, LATER, "on time")
    book.edit_tray(tray, note="nice")
    assert (book.tray(tray).ended, book.tray(tray).ended_why) == ("cut", "on time")


def test_a_tag_that_is_in_use_cannot_be_given_again(book: Book) -> None:
    tray = book.trays()[1]
    with pytest.raises(TagTaken, match="tag 10 is on A1, which still grows"):
        book.edit_tray(tray.id, tag_number=10, note="half")
    assert book.tray(tray.id) == tray


def test_a_tray_moved_without_a_place_goes_to_the_end_of_the_shelf(book: Book) -> None:
    book.add_tray(a_tray("B1", shelf="B"))
    tray = book.trays()[0].id
    book.edit_tray(tray, shelf="B", position=None)
    assert (book.tray(tray).shelf, book.tray(tray).position) == ("B", 2)


def test_a_tray_put_on_another_shelf_while_it_grows_was_moved_and_on_its_first_day_was_noted_wrongly(
    book: Book,
) -> None:
    tray = book.trays()[0]
    book.set_setting("today", tray.sown_at.date().isoformat())
    book.edit_tray(tray.id, shelf="B")
    assert book.events(tray.id) == ()

    book.set_setting("today", (tray.sown_at + timedelta(days=3)).date().isoformat())
    book.edit_tray(tray.id, shelf="C", note="nothing else")
    book.edit_tray(tray.id, note="the shelf stays")

    (move,) = book.events(tray.id)
    assert (move.kind, move.note, move.at.date()) == (EventKind.MOVED, "B → C", book.today())
    assert stands_since(book.tray(tray.id), book.events(tray.id)) == move.at
    book.undo()
    book.undo()
    assert (book.tray(tray.id).shelf, book.events(tray.id)) == ("B", ())
    assert stands_since(book.tray(tray.id), ()) == tray.sown_at


def test_a_condition_that_does_not_exist_is_a_mistake(book: Book) -> None:
    with pytest.raises(TypeError):
        book.edit_tray(book.trays()[0].id, colour="green")


# --- crops, media, tray types


def test_what_is_usual_for_a_crop_is_read(book: Book) -> None:
    assert book.crop("broccoli") == Crop(name="broccoli")
    say_of_crop(book, "broccoli", soak_hours=0.0, stacked=True, base_c=5.0)
    assert book.crop("broccoli") == Crop(name="broccoli", soak_hours=0.0, stacked=True, base_c=5.0)
    assert book.crop("pea") is None


def test_one_medium_is_the_trusted_one(book: Book) -> None:
    book.set_medium("peat mix", kind="loose")
    book.set_trusted("coir")
    book.set_trusted("peat mix")

    assert book.trusted() == Medium(name="peat mix", kind="loose", trusted=True)
    book.undo()
    assert book.trusted() == book.medium("coir")
    book.set_trusted(None)
    assert book.trusted() is None
    with pytest.raises(KeyError):
        book.set_trusted("nothing")


def test_a_tray_type_is_kept_and_given_to_trays(book: Book) -> None:
    half = TrayType(
        name="10 x 10 inch", outer_long_mm=278, outer_short_mm=278, inner_long_mm=254, inner_short_mm=254
    )
    book.set_tray_type(half)
    book.edit_tray(book.trays()[0].id, tray_type="10 x 10 inch")

    assert book.tray_types() == (TrayType(name="10 x 20 inch"), half)
    assert book.tray_type(book.trays()[0].tray_type) == half
    assert half.inner_cm2 == pytest.approx(645.16)


@pytest.mark.parametrize("wrong", [{"inner_long_mm": 600.0}, {"rim_height_mm": 0.0}, {"name": ""}])
def test_a_tray_that_cannot_be_is_a_mistake(book: Book, wrong: dict[str, float]) -> None:
    with pytest.raises(ValueError, match="no tray"):
        book.set_tray_type(replace(TrayType(name="odd"), **wrong))


def test_ended_trays_come_last_ended_first(book: Book) -> None:
    first, second, _ = book.trays()
    book.finish_tray(second.id, datetime(2026, 3, 9, 8))
    book.finish_tray(first.id, datetime(2026, 3, 10, 8))
    assert [tray.code for tray in book.ended_trays()] == ["A1", "A2"]


# --- conditions for many trays at once


def test_conditions_are_given_to_many_trays_in_one_step_and_blackout_moves_with_their_sowing(
    book: Book,
) -> None:
    book.add_trays([a_tray("B1"), a_tray("B2", sown_at=LATER, tag_number=44), a_tray("B3", watering="top")])
    one, two, three = (tray for tray in book.trays() if tray.code.startswith("B"))
    model = replace(
        as_new(one), stacked=True, blackout_from=SOWN, blackout_to=SOWN + timedelta(days=2), watering="top"
    )

    changed = book.share_conditions(model, {"stacked", "blackout"}, [one.id, two.id, three.id])

    assert changed == (one.id, two.id, three.id)
    first, second, third = map(book.tray, changed)
    assert (first.blackout_to, second.blackout_from, second.blackout_to) == (
        SOWN + timedelta(days=2),
        LATER,
        LATER + timedelta(days=2),
    )
    assert second == replace(
        two, stacked=True, blackout_from=LATER, blackout_to=LATER + timedelta(days=2)
    )  # nothing else, not even its tag and place
    assert third.stacked is True
    assert book.undo() == "conditions of 3 trays"
    assert tuple(map(book.tray, changed)) == (one, two, three)


def test_trays_that_have_it_already_are_no_change(book: Book) -> None:
    trays = [tray.id for tray in book.trays()]
    before = book.undo_text()

    assert book.share_conditions(as_new(book.tray(trays[0])), {"stacked", "seating"}, trays) == ()

    assert book.undo_text() == before


def test_amount_and_soaking_of_seed_stay_with_their_crop(book: Book) -> None:
    book.add_tray(a_tray("B1", crop="pea", sowing_rate_g=280.0))
    pea = next(tray for tray in book.trays() if tray.code == "B1")
    broccoli = next(tray for tray in book.trays() if tray.crop == "broccoli")
    model = replace(as_new(broccoli), sowing_rate_g=18.0, light="LED")

    book.share_conditions(model, {"sowing_rate_g", "light"}, [pea.id, broccoli.id])

    assert (book.tray(pea.id).sowing_rate_g, book.tray(pea.id).light) == (280.0, "LED")
    assert (book.tray(broccoli.id).sowing_rate_g, book.tray(broccoli.id).light) == (18.0, "LED")


def test_a_tray_that_was_cut_is_moved_no_more(book: Book) -> None:
    tray = book.trays()[0].id
    book.set_setting("today", "2026-03-12")
    book.add_event([tray], EventKind.CUT, datetime(2026, 3, 11, 8))

    book.edit_tray(tray, shelf="Z")

    assert [event.kind for event in book.events(tray)] == [EventKind.CUT]
