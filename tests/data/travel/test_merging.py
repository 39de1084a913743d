"""Two growers' books become one, and nothing in it is overwritten."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import datetime, timedelta
from itertools import count
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.book import Book
from data.cancel import Cancelled, CancelToken
from data.errors import CannotUndo
from data.events import EventKind
from data.photos.carried import Carried, Patches, carried_name, carried_of, carried_text
from data.readings import NewReading, ReadingKind
from data.records import Fate, PhotoId, SuspectId, TrayId
from data.travel.followed import translated
from data.travel.guestlook import look_at_guest
from data.travel.merging import Merged, merge
from data.travel.samenames import Answer, SameName, same_names
from data.travelerrors import SameBook
from data.trial import Measure, MeasureKind, treatment_of
from data.watch import read_looks
from tests.data.builders import a_note, a_tray, bring
from tests.data.contents import contents
from tests.data.plans import a_plan

AT = datetime(2026, 3, 8, 7, 30)
PATCH = {"x_mm": 100.0, "y_mm": 50.0}


@pytest.fixture
def other(tmp_path: Path) -> Iterator[Book]:
    with Book.create(tmp_path / "theirs") as made:
        made.add_trays(
            [
                a_tray("A1", crop="broccoli", medium="coir", tag_number=10),
                a_tray("K7", crop="sunflower", medium="hemp mat", tag_number=90, shelf="north"),
            ]
        )
        made.set_setting("today", "2026-03-08")
        yield made


def merged(book: Book, other: Book, default: Answer = Answer.SAME, **apart: str) -> Merged:
    answers = dict.fromkeys(same_names(book, other), default)
    answers |= {SameName(kind=kind, name=name): Answer.APART for kind, name in apart.items()}
    return merge(book, other, answers, "Kim", CancelToken())


def names(book: Book, table: str) -> list[str]:
    with book.whole_tables() as db:
        return sorted(row["name"] for row in db.table(table).rows)


def test_names_that_stand_in_both_books_are_asked_about(book: Book, other: Book) -> None:
    asked = same_names(book, other)

    assert SameName(kind="crop", name="broccoli") in asked
    assert SameName(kind="medium", name="coir") in asked
    assert SameName(kind="crop", name="sunflower") not in asked


def test_kinds_of_trays_are_asked_about_only_where_their_measures_differ(book: Book, other: Book) -> None:
    name = book.tray_types()[0].name
    asked = SameName(kind="tray_type", name=name)
    assert asked not in same_names(book, other)

    other.set_tray_type(replace(other.tray_type(name), inner_long_mm=500.0))

    assert asked in same_names(book, other)


@pytest.mark.parametrize("ours", ["coir", None])
def test_which_medium_is_trusted_stays_as_it_was_said_here(
    book: Book, other: Book, ours: str | None, tmp_path: Path
) -> None:
    book.set_trusted(ours)
    other.set_trusted("hemp mat")

    merged(book, other)

    assert [one.name for one in book.media_known() if one.trusted] == ([] if ours is None else [ours])
    with Book.create(tmp_path / "empty") as empty:
        merged(empty, other)
        assert [one.name for one in empty.media_known() if one.trusted] == ["hemp mat"]


@pytest.mark.parametrize("apart", [{"trial": "t"}, {"shelf": "A"}])
def test_trays_of_another_trial_or_shelf_are_others_though_all_else_is_alike(
    book: Book, other: Book, apart: dict[str, str]
) -> None:
    before = book.trays()

    merged(book, other, **apart)

    (theirs,) = set(book.trays()) - set(before) - {next(tray for tray in book.trays() if tray.code == "K7")}
    assert (theirs.code, theirs.crop, theirs.medium) == ("A1", "broccoli", "coir")
    assert "(Kim)" in f"{theirs.trial}{theirs.shelf}"
    assert merged(book, other, **apart).added["tray"] == 0


def test_without_an_answer_nothing_is_merged(book: Book, other: Book) -> None:
    with pytest.raises(KeyError):
        merge(book, other, {}, "Kim", CancelToken())

    assert len(book.trays()) == 3


def test_trays_photos_and_readings_come_over(book: Book, other: Book, phone: Path) -> None:
    bring(other, a_note(phone, "theirs.jpg", tag=90, suspects=[PATCH]))
    tray = next(tray for tray in other.trays() if tray.code == "K7")
    other.add_readings([NewReading(kind=ReadingKind.WEIGHT, value=812.0, taken_at=AT, tray_id=tray.id)])

    result = merged(book, other)

    here = next(tray for tray in book.trays() if tray.code == "K7")
    (day,) = book.days(here.id)
    assert day.score is not None
    assert day.photo.read_bytes() == (phone / "theirs.jpg").read_bytes()
    assert [reading.value for reading in book.readings(here.id)] == [812.0]
    assert result.added["photo"] == 1


def test_photos_come_over_with_the_camera_that_took_them(book: Book, other: Book, phone: Path) -> None:
    for n in (1, 2):
        bring(other, a_note(phone, f"{n}.jpg", taken_at=f"2024-03-08T08:0{n}:00", camera="Pinhole Box"))

    merged(book, other)

    assert [doubt.camera for doubt in book.clock_doubts()] == ["Pinhole Box"]


def test_merging_the_same_book_again_adds_nothing(book: Book, other: Book, phone: Path) -> None:
    bring(other, a_note(phone, "theirs.jpg", tag=90, suspects=[PATCH]))
    first = merged(book, other)

    again = merged(book, other)

    assert sum(again.added.values()) == 0
    assert sum(again.known.values()) >= sum(first.added.values())


def test_a_name_that_means_something_else_says_whose_it_is(book: Book, other: Book) -> None:
    merged(book, other, medium="coir")

    assert {"coir", "coir (Kim)", "hemp mat"} <= set(names(book, "medium"))
    mine, theirs = (tray for tray in book.trays() if tray.code == "A1")
    assert {mine.medium, theirs.medium} == {"coir", "coir (Kim)"}


def test_a_mark_that_makes_two_of_their_names_one_stops_nothing(book: Book, other: Book) -> None:
    other.set_medium("coir", kind="loose")
    other.set_medium("coir (Kim)", kind="mat")

    merged(book, other, medium="coir")

    assert {one.kind for one in book.media_known() if one.name == "coir (Kim)"} == {"loose"}


def test_what_is_known_here_stays_as_it_is(book: Book, other: Book, phone: Path) -> None:
    note = a_note(phone, "both.jpg", tag=10, suspects=[PATCH])
    bring(book, note)
    bring(other, note)
    book.say(SuspectId(1), "mold")
    other.say(SuspectId(1), "not mold")

    merged(book, other)

    score = book.score(PhotoId(1))
    assert score is not None
    assert [suspect.said for suspect in score.suspects] == ["mold"]


@pytest.mark.parametrize(
    ("here", "there", "then"), [("", "mat", "mat"), ("loose", "mat", "loose"), ("loose", "", "loose")]
)
def test_the_kind_of_a_medium_is_taken_over_where_nobody_has_said_it_here(
    book: Book, other: Book, here: str, there: str, then: str
) -> None:
    for one, kind in ((book, here), (other, there)):
        one.set_medium("coir", kind=kind)
    other.set_medium("hemp mat", kind="mat")

    merged(book, other)

    assert {one.name: one.kind for one in book.media_known() if one.name in ("coir", "hemp mat")} == {
        "coir": then, "hemp mat": "mat",
    }  # fmt: skip
    book.undo()
    assert [one.kind for one in book.media_known() if one.name == "coir"] == [here]


@pytest.mark.parametrize(("here", "then"), [(None, 4.0), (6.0, 6.0)])
def test_the_margin_of_a_trial_is_taken_over_with_its_day_where_nobody_has_set_one_here(
    book: Book, other: Book, here: float | None, then: float
) -> None:
    if here is not None:
        book.set_margin("t", here)
    before = book.trial_said("t")
    other.set_margin("t", 4.0)

    merged(book, other)

    said = book.trial_said("t")
    assert (said.margin_points, said.margin_set_at) == (
        then,
        (before if here else other.trial_said("t")).margin_set_at,
    )
    book.undo()
    assert book.trial_said("t") == before


@pytest.mark.parametrize("end", [EventKind.CUT, EventKind.THROWN_AWAY])
def test_a_tray_that_was_ended_there_grows_no_more_here_and_its_tag_is_free(
    book: Book, other: Book, end: EventKind
) -> None:
    there = next(tray for tray in other.trays() if tray.code == "A1")
    other.add_event([there.id], end, AT, "slimy")
    other.add_tray(a_tray("K8", crop="sunflower", medium="hemp mat", tag_number=10, sown_at=AT))

    result = merged(book, other)

    (ended,) = book.ended_trays()
    assert (ended.code, ended.ended, ended.ended_why, ended.done_at) == ("A1", str(end), "slimy", AT)
    assert result.without_tag == ()
    assert [tray.code for tray in book.trays() if tray.tag_number == 10] == ["K8"]
    book.undo()
    assert book.ended_trays() == ()


def test_how_a_tray_ended_here_stays_as_it_was_said_here(book: Book, other: Book) -> None:
    for one, why in ((book, "sold"), (other, "eaten")):
        one.add_event([one.trays()[0].id], EventKind.CUT, AT, why)

    merged(book, other)

    assert [tray.ended_why for tray in book.ended_trays()] == ["sold"]


@pytest.fixture
def copied(book: Book, phone: Path, tmp_path: Path) -> Iterator[Book]:
    """The same book on another computer, after A1 was photographed twice and weighed."""
    for day in (7, 8):
        bring(book, a_note(phone, f"{day}.jpg", tag=10, taken_at=f"2026-03-0{day}T08:00:00"))
    weigh(book, "")
    book.copy_to(tmp_path / "laptop" / "book.sqlite")
    with Book.open(tmp_path / "laptop") as made:
        yield made


@pytest.mark.parametrize("mended", [{"code": "A9"}, {"medium": "fibre mat"}, {"crop": "kale"}])
def test_a_tray_whose_code_medium_or_crop_was_mended_there_is_no_second_one(
    book: Book, copied: Book, mended: dict[str, str]
) -> None:
    tray = next(tray for tray in copied.trays() if tray.code == "A1")
    copied.edit_tray(tray.id, **mended)
    copied.add_readings([NewReading(kind=ReadingKind.HEIGHT, value=60.0, taken_at=AT, tray_id=tray.id)])
    look = look_at_guest(book, copied)

    assert len(look.known(dict.fromkeys(look.asked, Answer.SAME))) == 3
    for _ in range(2):
        merged(book, copied)

        assert len(book.trays()) == 3
        assert [one.kind for one in book.readings(tray.id)] == [ReadingKind.WEIGHT, ReadingKind.HEIGHT]


def test_photos_that_were_matched_to_another_tray_make_no_twins(book: Book, copied: Book) -> None:
    first, second = copied.trays()[:2]
    copied.match(copied.days(first.id)[0].photo_id, second.id)
    copied.edit_tray(first.id, code="A9")

    merged(book, copied)

    assert sorted(tray.code for tray in book.trays()) == ["A1", "A2", "A3", "A9"]


def test_two_photos_that_lie_on_a_wrong_tray_there_make_no_twins(
    book: Book, copied: Book, phone: Path
) -> None:
    copied.edit_tray(copied.trays()[0].id, code="A9")
    for one, other_day in ((book, 1), (copied, 2)):  # each has photos of a tray of its own
        for hour in range(5):
            taken = f"2026-03-0{3 + other_day}T{10 + hour}:00:00"
            bring(one, a_note(phone, f"{other_day}-{hour}.jpg", tag=10, taken_at=taken))

    merged(book, copied)

    assert sorted(tray.code for tray in book.trays()) == ["A1", "A2", "A3", "A9"]


def test_two_of_their_trays_never_become_one_of_ours(book: Book, copied: Book, phone: Path) -> None:
    for one in (book, copied):
        for day in (4, 5):
            bring(one, a_note(phone, f"{day}.jpg", tag=10, taken_at=f"2026-03-0{day}T08:00:00"))
    first = copied.trays()[0]
    (second,) = copied.add_trays([a_tray("B9")])
    copied.edit_tray(first.id, code="A9")
    for shown in copied.days(first.id)[:2]:
        copied.match(shown.photo_id, second)

    merged(book, copied)

    assert sorted(tray.code for tray in book.trays()) == ["A1", "A2", "A3", "A9", "B9"]


def test_a_tag_that_grows_here_is_left_to_the_tray_here(book: Book, other: Book) -> None:
    result = merged(book, other, medium="coir")  # their A1 is another tray than ours, with the same tag

    assert result.without_tag == ("A1",)
    assert sorted(tray.tag_number or 0 for tray in book.trays() if tray.code == "A1") == [0, 10]


def test_a_shelf_of_the_same_name_can_stay_apart(book: Book, other: Book) -> None:
    merged(book, other, shelf="A", medium="coir")

    assert {shelf.name for shelf in book.rack()} >= {"A", "A (Kim)", "north"}


def test_what_was_logged_on_a_shelf_that_stays_apart_is_not_called_air_of_ours(
    book: Book, other: Book
) -> None:
    for one, celsius in ((book, 20.0), (other, 30.0)):
        one.add_readings(
            [NewReading(kind=ReadingKind.AIR_TEMPERATURE, value=celsius, taken_at=AT, shelf="A")]
        )
        with one.writing() as db:
            db.table("event").insert(
                {"shelf": "A", "kind": "cleaned", "at": AT.isoformat(), "note": f"at {celsius:.0f} degrees"}
            )

    for _ in range(2):  # brought in again it is known again
        merged(book, other, shelf="A")

        assert [one.value for one in book.readings(shelf="A")] == [20.0]
        assert [one.value for one in book.readings(shelf="A (Kim)")] == [30.0]
        events = book._rows("SELECT note FROM event WHERE shelf = 'A (Kim)'")
        assert [row["note"] for row in events] == ["at 30 degrees"]


def test_where_both_have_logged_one_shelf_at_one_time_what_stands_here_stays(book: Book, other: Book) -> None:
    for one, celsius in ((book, 20.0), (other, 20.1)):
        logged = [
            NewReading(kind=ReadingKind.AIR_TEMPERATURE, value=celsius, taken_at=AT + n * timedelta(hours=1),
                       shelf="A")
            for n in range(2 if one is book else 3)
        ]  # fmt: skip
        one.keep_log(f"{round(10 * celsius):064}", f"{celsius}.csv", "{}", logged)

    for _ in range(2):
        merged(book, other)

        assert [one.value for one in book.readings(shelf="A")] == [20.0, 20.0, 20.1]


def test_what_the_cut_was_worth_and_notes_of_words_alone_come_over(book: Book, other: Book) -> None:
    tray = next(tray.id for tray in other.trays() if tray.code == "K7")
    other.add_readings([NewReading(kind=ReadingKind.SHELF_LIFE, value=9.0, taken_at=AT, tray_id=tray)])
    other.add_event([tray], EventKind.NOTE, AT, "thin at the door")

    merged(book, other)

    here = next(tray.id for tray in book.trays() if tray.code == "K7")
    assert [(one.kind, one.value) for one in book.readings(here)] == [(ReadingKind.SHELF_LIFE, 9.0)]
    assert [(one.kind, one.note) for one in book.events(here)] == [(EventKind.NOTE, "thin at the door")]


def test_two_notes_alike_are_two_things_and_are_known_one_by_one(book: Book, other: Book) -> None:
    tray = next(tray.id for tray in other.trays() if tray.code == "K7")
    twice = [NewReading(kind=ReadingKind.FRESH_MASS, value=120.0, taken_at=AT, tray_id=tray)] * 2
    other.add_readings(twice)
    for _ in range(2):
        other.add_event([tray], EventKind.WATERED, AT)

    for again in range(2):
        result = merged(book, other)

        here = next(tray.id for tray in book.trays() if tray.code == "K7")
        assert [one.value for one in book.readings(here)] == [120.0, 120.0]
        assert len(book.events(here)) == 2
        assert result.added["reading"] == (0 if again else 2)


def weights(book: Book) -> list[tuple[float, str]]:
    tray = next(tray for tray in book.trays() if tray.code == "A1")
    return sorted((one.value, one.note) for one in book.readings(tray.id))


def weigh(book: Book, *notes: str) -> None:
    tray = next(tray for tray in book.trays() if tray.code == "A1")
    book.add_readings(
        [
            NewReading(kind=ReadingKind.WEIGHT, value=812.0, taken_at=AT, tray_id=tray.id, note=note)
            for note in notes
        ]
    )


@pytest.mark.parametrize(
    ("here", "there", "then"),
    [
        (["old scale"], ["new scale"], ["new scale", "old scale"]),
        (["a"], ["", "a"], ["", "a"]),
        (["", "a"], ["a", "b"], ["a", "b"]),
        ([""], ["a", ""], ["", "a"]),
    ],
)
def test_readings_alike_but_for_their_notes_are_two(
    book: Book, other: Book, here: list[str], there: list[str], then: list[str]
) -> None:
    weigh(book, *here)
    weigh(other, *there)

    for _ in range(2):  # brought in again they are known again
        merged(book, other)

        assert weights(book) == [(812.0, note) for note in then]


@pytest.mark.parametrize(("here", "there"), [("dripping wet", ""), ("", "dripping wet")])
def test_a_reading_that_was_given_its_note_since_is_no_second_one(
    book: Book, other: Book, here: str, there: str
) -> None:
    weigh(book, here)
    weigh(other, there)

    merged(book, other)

    assert weights(book) == [(812.0, "dripping wet")]
    book.undo()
    assert weights(book) == [(812.0, here)]


def test_two_trays_alike_come_in_as_two_each_with_what_is_its_own(book: Book, other: Book) -> None:
    alike = other.add_trays([a_tray("N1", shelf="x"), a_tray("N1", shelf="y")])
    for tray, grams in zip(alike, (100.0, 200.0), strict=True):
        other.add_readings([NewReading(kind=ReadingKind.FRESH_MASS, value=grams, taken_at=AT, tray_id=tray)])

    for _ in range(2):
        merged(book, other)

        here = {tray.shelf: tray.id for tray in book.trays() if tray.code == "N1"}
        noted = {shelf: [one.value for one in book.readings(tray)] for shelf, tray in here.items()}
        assert noted == {"x": [100.0], "y": [200.0]}


def planned(*books: Book) -> None:
    """A trial of one name whose first round of two is sown, in each of the books at another hour."""
    for hour, book in enumerate(books, start=9):
        draw = book.draw_places(book.keep_plan(a_plan(blocks=6), at=datetime(2026, 3, 1, 20)), seed=hour)
        book.sow_trial(draw.id, sown_at=datetime(2026, 3, 2, hour))


def test_a_plan_that_comes_in_speaks_of_its_own_media_crops_shelves_and_trial(
    book: Book, other: Book
) -> None:
    planned(book, other)
    mine = contents(book)

    merged(
        book, other, trial="Mat against peat", medium="coir", crop="radish", shelf="B",
        tray_type="10 x 20 inch",
    )  # fmt: skip

    theirs = "Mat against peat (Kim)"
    (kept,), (draw,) = book.plans(theirs), book.draws(theirs)
    trays = book.trial_trays(theirs)
    assert kept.plan.trial == theirs
    assert {crop.name for crop in kept.plan.crops} == {"broccoli", "radish (Kim)"}
    assert {treatment_of(tray, kept.plan) for tray in trays} == {"peat mix", "coir (Kim)", "fibre mat"}
    assert {kept.plan.treatment(place.treatment).medium for place in draw.draw.places} == {
        "peat mix", "coir (Kim)", "fibre mat",
    }  # fmt: skip
    assert {shelf for block in kept.plan.blocks for shelf in block.shelves} == {"A", "B (Kim)", "C"}
    assert {place.shelf for place in draw.draw.places} == {"A", "B (Kim)", "C"}
    with book.whole_tables() as db:
        assert next(iter(db.table("plan").rows)) == mine["plan"][0]


def test_the_next_round_of_a_trial_that_came_in_is_sown_into_that_trial(book: Book, other: Book) -> None:
    planned(book, other)
    merged(book, other, trial="Mat against peat", medium="coir")
    theirs = "Mat against peat (Kim)"
    for tray in book.trays():
        book.finish_tray(tray.id, datetime(2026, 3, 15))
    here, there = (len(book.trial_trays(trial)) for trial in ("Mat against peat", theirs))

    sown = book.sow_trial(book.draws(theirs)[-1].id)

    assert len(sown) == 18
    assert {book.tray(tray).medium for tray in sown} == {"peat mix", "coir (Kim)", "fibre mat"}
    assert (len(book.trial_trays("Mat against peat")), len(book.trial_trays(theirs))) == (here, there + 18)


def test_names_that_mean_the_same_leave_a_plan_as_it_was_written(book: Book, other: Book) -> None:
    planned(other)

    merged(book, other)

    assert [contents(one)["plan"][0]["body"] for one in (book, other)] == [
        contents(other)["plan"][0]["body"]
    ] * 2


def test_plans_and_drawings_of_one_second_are_several_things(book: Book, other: Book) -> None:
    second = datetime(2026, 3, 1, 20)
    book.keep_plan(a_plan(words="ours"), at=second)
    for words in ("is it?", "is it as good?"):
        plan = other.keep_plan(a_plan(words=words), "asked better", at=second)
    for seed in (3, 4):
        other.draw_places(plan, seed=seed, why="again", at=second)

    for again in range(2):
        result = merged(book, other)

        assert [kept.plan.words for kept in book.plans()] == ["ours", "is it?", "is it as good?"]
        assert [kept.draw.seed for kept in book.draws("Mat against peat")] == [3, 4]
        assert result.added["plan"] == result.added["draw"] == (0 if again else 2)


@pytest.mark.parametrize(("theirs_on", "holds"), [(2, 4.0), (4, 7.0)])
def test_of_plans_and_drawings_that_both_growers_made_the_ones_kept_last_count(
    book: Book, other: Book, theirs_on: int, holds: float
) -> None:
    def plan_on(one: Book, day: int, margin: float) -> None:
        plan = a_plan(measures=(Measure(kind=MeasureKind.SCORE, margin=margin),))
        kept = one.keep_plan(plan, "thought better of it", at=datetime(2026, 3, day, 8))
        one.draw_places(kept, seed=int(margin), why="anew", at=datetime(2026, 3, day, 9))

    for one in (book, other):
        plan_on(one, 1, 5.0)
    plan_on(other, theirs_on, 7.0)
    plan_on(book, 3, 4.0)

    merged(book, other)

    plans, draws = book.plans("Mat against peat"), book.draws("Mat against peat")
    assert [kept.version for kept in plans] == [1, 2, 3]
    assert [kept.kept_at.day for kept in plans] == sorted((1, theirs_on, 3))
    assert plans[-1].plan.measures[0].margin == holds
    assert (draws[-1].draw.seed, draws[-1].plan_id) == (int(holds), plans[-1].id)


def test_two_corrections_of_one_second_both_come_over(book: Book, other: Book, phone: Path) -> None:
    at = "2026-03-08T12:00:00"
    bring(other, a_note(phone, tag=90))
    with other.writing() as db:
        for n in (1, 2):
            row = {"photo": 1, "kind": "corners", "body": f"[[{n}, 2]]", "made_at": at}
            correction = db.table("correction").insert(row).last_pk
            old = {"score": 1, "correction": correction, "body": f"{{{n}}}", "replaced_at": at}
            db.table("old_score").insert(old)

    for again in range(2):
        result = merged(book, other)

        came = contents(book)
        assert [row["body"] for row in came["correction"]] == ["[[1, 2]]", "[[2, 2]]"]
        assert [row["correction"] for row in came["old_score"]] == [1, 2]
        assert result.added["correction"] == result.added["old_score"] == (0 if again else 2)


def test_a_round_of_scoring_by_eye_goes_on_with_the_trays_that_it_was_drawn_of(
    book: Book, other: Book, phone: Path
) -> None:
    bring(book, a_note(phone, "mine.jpg", tag=10))
    fates = [bring(other, a_note(phone, f"{n}.jpg", tag=90)) for n in range(6)]
    photos = [(fate.tray_id, fate.photo_id) for fate in fates]
    other.give_eye_score(other.begin_eye_round("t", "Kim", photos, seed=5), 1, 50.0)

    merged(book, other)

    (came,) = book.eye_rounds("t")
    assert {book.tray(one.tray_id).code for one in came.showings} == {"K7"}
    assert {book.photo(one.photo_id).name for one in came.showings} == {f"{n}.jpg" for n in range(6)}
    book.give_eye_score(came, 2, 60.0)
    assert [(book.tray(one.tray_id).code, one.value) for one in book.eye_scores("t")] == [
        ("K7", 50.0), ("K7", 60.0),
    ]  # fmt: skip


def test_the_book_as_it_was_is_kept(book: Book, other: Book, tmp_path: Path) -> None:
    result = merged(book, other)

    before = tmp_path / "before"
    before.mkdir()
    (before / "book.sqlite").write_bytes(result.copy.read_bytes())
    with Book.open(before) as old:
        assert len(old.trays()) == 3
    assert len(book.trays()) > 3


def test_copies_of_the_book_as_it_was_do_not_fill_the_disk(book: Book, other: Book) -> None:
    backups = book.folder / "backups"
    backups.mkdir(exist_ok=True)
    for year in (*range(2018, 2026), 2099):  # a clock was wrong in one of them
        (backups / f"before-merging-{year}-03-08-080000.sqlite").write_bytes(b"as it was")
    other_copy = backups / "before-m005_conditions_of_now.sqlite"
    other_copy.write_bytes(b"of an older program")

    result = merged(book, other)

    kept = sorted(path.name[:19] for path in backups.glob("before-merging-*"))
    assert kept == [*(f"before-merging-{year}" for year in (2023, 2024, 2025)), result.copy.name[:19],
                    "before-merging-2099"]  # fmt: skip
    assert other_copy.exists()


def test_an_old_copy_that_cannot_be_removed_does_not_make_a_merge_fail(book: Book, other: Book) -> None:
    backups = book.folder / "backups"
    for year in range(2018, 2026):
        (backups / f"before-merging-{year}-03-08-080000.sqlite").mkdir(parents=True)

    assert merged(book, other).added["tray"] == 1


# --- suspects from day to day


def two_days(other: Book, phone: Path) -> None:
    """Their K7 on two days with one patch each; laid on each other, the second one is the first one moved."""
    first, later = (
        bring(other, a_note(phone, f"k{day}.jpg", tag=90, taken_at=f"2026-03-0{day}T08:00:00", suspects=[at]))
        for day, at in ((6, {"x_mm": 100.0}), (7, {"x_mm": 400.0}))
    )
    was = {suspect_on(other, later): (suspect_on(other, first),)}
    other.set_setting(carried_name(later.photo_id), carried_text(Carried(since=first.photo_id, was=was)))


def suspect_on(book: Book, fate: Fate) -> SuspectId:
    assert fate.photo_id is not None
    score = book.score(fate.photo_id)
    assert score is not None
    return score.suspects[0].id


def test_what_a_suspect_was_on_the_day_before_comes_over_and_is_taken_back_with_it(
    book: Book, other: Book, phone: Path
) -> None:
    bring(book, a_note(phone, "mine.jpg", tag=10, suspects=[PATCH]))  # ids here are not those there
    before = contents(book)
    two_days(other, phone)

    merged(book, other)

    earlier, later = (one for one in book.seen_suspects() if one.x_mm in (100.0, 400.0) and one.y_mm == 50.0
                      and one.taken_at < datetime(2026, 3, 8))  # fmt: skip
    assert (later.since, later.was) == (earlier.photo_id, (earlier.id,))
    assert Patches(book.seen_suspects()).same(earlier, later)
    book.undo()
    assert contents(book) == before


def test_taking_a_merge_back_leaves_what_was_known_of_suspects_here(
    book: Book, other: Book, phone: Path
) -> None:
    book.add_tray(a_tray("K7", tag_number=90))
    two_days(book, phone)
    known = carried_settings(book)

    merged(book, other)
    book.undo()

    assert len(known) == 1
    assert carried_settings(book) == known


def test_what_this_book_knows_of_a_photo_stays_and_what_it_lacks_is_added(
    book: Book, other: Book, phone: Path
) -> None:
    two_days(other, phone)
    merged(book, other)
    (kept,) = carried_settings(book)
    none = carried_text(Carried(since=PhotoId(1), was={SuspectId(2): ()}))
    book.set_setting(kept, none)  # looked at once more here: another patch after all
    merged(book, other)
    assert carried_settings(book) == {kept: none}

    with book.writing() as db:
        db.table("setting").delete(kept)
    merged(book, other)
    assert carried_of(carried_settings(book)[kept]) == Carried(
        since=PhotoId(1), was={SuspectId(2): (SuspectId(1),)}
    )


def test_a_setting_that_is_no_such_thing_keeps_nothing_else_back(
    book: Book, other: Book, phone: Path
) -> None:
    two_days(other, phone)
    for name, text in (
        ("carried 1", "{"),
        ("carried on", "[]"),
        ("carried 99", '{"since": 1, "was": {}}'),
        (f"carried {9 * '9' * 1000}", '{"since": 1, "was": {}}'),
    ):
        other.set_setting(name, text)

    merged(book, other)

    assert len(carried_settings(book)) == 1
    book.undo()
    assert carried_settings(book) == {}


@pytest.mark.parametrize(
    "text",
    ['{"since": Infinity, "was": {}}', '{"since": 1, "was": {"2": [[1]]}}', '{"since": 1, "was": {"2": 1}}'],
)
def test_text_that_is_no_such_thing_is_read_as_nothing(text: str) -> None:
    assert carried_of(text) is None


@given(
    was=st.dictionaries(st.integers(1, 9), st.lists(st.integers(1, 9), max_size=3), max_size=4),
    since=st.integers(1, 3),
    here=st.sets(st.integers(1, 9)),
)
def test_a_suspect_whose_past_is_not_here_is_left_out_and_never_called_new(
    was: dict[int, list[int]], since: int, here: set[int]
) -> None:
    theirs = Carried(
        since=PhotoId(since),
        was={SuspectId(one): tuple(map(SuspectId, before)) for one, before in was.items()},
    )

    found = translated(theirs, {1: 11, 2: 12}, {one: 100 + one for one in here})

    told = {
        100 + one: tuple(100 + earlier for earlier in before)
        for one, before in was.items()
        if {one, *before} <= here
    }
    assert found == (Carried(since=PhotoId(10 + since), was=told) if told and since != 3 else None)


def carried_settings(book: Book) -> dict[str, str]:
    with book.whole_tables() as db:
        rows = db.table("setting").rows
        return {row["name"]: row["value"] for row in rows if row["name"].startswith("carried ")}


# --- back again


def test_a_merge_is_taken_back_as_one_step_and_done_again_by_merging_again(
    book: Book, other: Book, phone: Path
) -> None:
    bring(other, a_note(phone, "theirs.jpg", tag=90, suspects=[PATCH]))
    book.add_readings([NewReading(kind=ReadingKind.WEIGHT, value=700.0, taken_at=AT, tray_id=TrayId(1))])
    before = contents(book)
    merged(book, other)
    after = contents(book)
    assert before != after
    assert book.undo_text() == "book Kim brought in"

    book.undo()
    assert contents(book) == before
    assert book.redo_text() is None
    merged(book, other)
    assert contents(book) == after


def stopping_at(step: int) -> Callable[[int, int], None]:
    steps = count(1)

    def stop(_done: int, _total: int) -> None:
        if next(steps) == step:
            raise Cancelled

    return stop


def test_taking_a_merge_back_tells_how_far_it_is_and_stopped_it_changes_nothing(
    book: Book, other: Book, phone: Path
) -> None:
    for n in range(3):
        bring(other, a_note(phone, f"{n}.jpg", tag=90, suspects=[PATCH]))
    readings = [
        NewReading(kind=ReadingKind.AIR_TEMPERATURE, value=20.0, taken_at=AT + n * timedelta(minutes=1),
                   shelf="north")
        for n in range(2500)
    ]  # fmt: skip
    other.add_readings(readings)
    before = contents(book)
    merged(book, other)
    after = contents(book)
    told: list[tuple[int, int]] = []

    for stop_at in range(1, 9):  # moments before, between and within tables
        with pytest.raises(Cancelled):
            book.undo(stopping_at(stop_at))
        assert contents(book) == after
        assert book.undo_text() == "book Kim brought in"

    assert book.undo(lambda done, total: told.append((done, total))) == "book Kim brought in"
    assert contents(book) == before
    assert told == sorted(told)
    ((_, total),) = {(0, whole) for _, whole in told}
    assert 2500 < told[-1][0] < total


def test_what_was_noted_before_a_merge_is_taken_back_in_the_background_is_not_lost(
    book: Book, other: Book
) -> None:
    merged(book, other)
    book.add_readings([NewReading(kind=ReadingKind.AIR_TEMPERATURE, value=20.0, taken_at=AT, shelf="north")])
    after = contents(book)

    assert book.undo(lambda _done, _total: None) is None

    assert contents(book) == after


def test_a_merge_is_taken_back_though_the_look_list_has_noted_its_trays_meanwhile(
    book: Book, other: Book, phone: Path
) -> None:
    bring(other, a_note(phone, "theirs.jpg", tag=90, suspects=[PATCH]))
    before = contents(book)
    merged(book, other)
    assert [look.code for look in read_looks(book)] == ["K7"]
    assert [past.code for past in book.look_history()] == ["K7"]

    book.undo()

    assert contents(book) == before


def test_a_merge_on_which_photos_rest_is_not_taken_back(book: Book, other: Book, phone: Path) -> None:
    merged(book, other)
    bring(book, a_note(phone, "later.jpg", tag=90))  # shows a tray that came with the other book
    after = contents(book)

    with pytest.raises(CannotUndo, match="photos or notes kept later rest on it"):
        book.undo()

    assert contents(book) == after


def test_stopped_while_copying_it_adds_nothing(book: Book, other: Book, phone: Path) -> None:
    bring(other, a_note(phone, "theirs.jpg", tag=90))
    token = CancelToken()
    token.cancel()

    with pytest.raises(Cancelled):
        merge(book, other, dict.fromkeys(same_names(book, other), Answer.SAME), "Kim", token)

    assert len(book.trays()) == 3
    assert book.photos() == ()


def test_stopped_while_rows_come_in_it_adds_nothing_and_leaves_no_copy(
    book: Book, other: Book, phone: Path
) -> None:
    bring(other, a_note(phone, "theirs.jpg", tag=90))
    before = contents(book)
    token = CancelToken()

    def stop(done: int, whole: int) -> None:
        if done > whole / 2:
            token.cancel()

    with pytest.raises(Cancelled):
        merge(book, other, dict.fromkeys(same_names(book, other), Answer.SAME), "Kim", token, stop)

    assert contents(book) == before
    assert list((book.folder / "backups").glob("before-merging-*")) == []


def test_a_missing_original_is_named_and_keeps_nothing_else_back(
    book: Book, other: Book, phone: Path
) -> None:
    bring(other, a_note(phone, "gone.jpg", tag=90))
    other.photo_path(PhotoId(1)).unlink()

    result = merged(book, other)

    assert result.without_original == ("gone.jpg",)
    assert len(book.photos()) == 1


def test_an_original_that_is_another_file_by_now_is_named_and_keeps_nothing_else_back(
    book: Book, other: Book, phone: Path
) -> None:
    for n in (1, 2):
        bring(other, a_note(phone, f"{n}.jpg", tag=90, number=n))
    other.photo_path(PhotoId(1)).write_bytes(b"a damaged disk")

    result = merged(book, other)

    assert result.without_original == ("1.jpg",)
    assert len(book.photos()) == 2
    assert sum(path.is_file() for path in (book.folder / "photos").rglob("*")) == 1


def test_a_book_is_not_merged_with_itself(book: Book) -> None:
    with Book.open(book.folder) as same, pytest.raises(SameBook):
        merge(book, same, {}, "me", CancelToken())
