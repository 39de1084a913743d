"""Old notes, as people keep them, become trays of the book; nothing is guessed and nothing is lost."""

from contextlib import suppress
from datetime import date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.book import Book
from data.logs.oldcolumns import Field
from data.logs.oldnotes import OldNotes, read_old_notes
from data.logs.text import NotALog
from data.logs.times import DateOrder
from data.readings import ReadingKind
from tests.data.contents import say_of_crop

NOTES = """\
Tray;Crop;Medium;Sown;Harvested;Dry seed (oz);Yield g;Smell;Notes
A1;Broccoli;peat mix;02.11.2025;13.11.2025;0,6;212;fine;first try
A2;broccoli;Coir;02.11.2025;14.11.2025;0,6;188,5;;
"""


def read(text: str, **how: object) -> OldNotes:
    return read_old_notes(text.encode(), **how)


def test_columns_are_known_by_their_headings_whatever_the_spelling() -> None:
    notes = read(NOTES)

    assert notes.delimiter == ";"
    assert notes.fields == (
        Field.CODE, Field.CROP, Field.MEDIUM, Field.SOWN, Field.CUT, Field.SEED, Field.MASS, None, Field.NOTE,
    )  # fmt: skip


def test_german_headings_are_known_with_umlauts_or_without() -> None:
    notes = read(
        "Schale Nr.;Sorte;Substrat;Aussaat;Geerntet am;Saatmenge (g);Einweichen (Std);Düngung;"
        "Frischmasse in g;Höhe in cm;Qualität;Bemerkung\n"
        "A1;Radies;Kokos;02.11.2025;13.11.2025;35;8 Std.;keine;212,5;6,5;85;ging gut auf\n"
    )

    assert notes.fields == (
        Field.CODE, Field.CROP, Field.MEDIUM, Field.SOWN, Field.CUT, Field.SEED, Field.SOAK, Field.FEED,
        Field.MASS, Field.HEIGHT, Field.EYE, Field.NOTE,
    )  # fmt: skip
    (tray,) = notes.trays
    assert (tray.new.sowing_rate_g, tray.new.soak_hours, tray.new.note) == (35, 8, "ging gut auf")
    assert (tray.fresh_mass_g, tray.height_mm, tray.eye_score) == (212.5, pytest.approx(65), 85)
    assert read("kultur;substrat;gesaet;ertrag\nRadies;Kokos;02.11.2025;200\n").fields[2:] == (
        Field.SOWN, Field.MASS,
    )  # fmt: skip


@pytest.mark.parametrize(
    "heading", ["Harvest (g)", "harvest g", "Ernte [g]", "Fresh g", "fresh (g)", "Cut weight", "Erntemasse"]
)
def test_a_harvest_in_grams_is_no_day_and_no_note(heading: str) -> None:
    (tray,) = read(f"crop;medium;sown;{heading}\npea;coir;2025-04-03;300\n").trays

    assert (tray.cut_at, tray.fresh_mass_g) == (None, 300)


def test_grades_are_no_eye_score_of_a_hundred() -> None:
    """Of 1 to 5 nobody says which end is good; 4 of 100 would be a bad tray."""
    table = "crop;medium;sown;Quality\npea;coir;2025-04-03;4\npea;peat;2025-04-03;{}\n"

    graded, scored = read(table.format("5")), read(table.format("55"))

    assert [(tray.eye_score, tray.new.note) for tray in graded.trays] == [
        (None, "Quality: 4"), (None, "Quality: 5"),
    ]  # fmt: skip
    assert [tray.eye_score for tray in scored.trays] == [4, 55]


def test_a_line_is_a_tray_with_what_came_of_it() -> None:
    first, second = read(NOTES).trays

    assert (first.new.code, first.new.crop, first.new.medium) == ("A1", "broccoli", "peat mix")
    assert first.new.sown_at.date() == date(2025, 11, 2)
    assert first.cut_at is not None
    assert first.cut_at.date() == date(2025, 11, 13)
    assert first.new.sowing_rate_g == pytest.approx(17.0097, abs=1e-3)  # 0.6 oz; 1 oz = 28.349523125 g
    assert (first.fresh_mass_g, second.fresh_mass_g) == (212.0, 188.5)


def test_what_has_no_place_of_its_own_goes_into_the_note() -> None:
    first, second = read(NOTES).trays

    assert first.new.note == "first try; Smell: fine"
    assert second.new.note == ""


def test_a_note_of_several_lines_is_one_note_of_its_tray() -> None:
    text = (
        "tray,crop,medium,note,sown,yield (g)\n"
        'A1,broccoli,coir,"mold in a corner,\r\n\r\nthrown ""away""",2026-03-02,120\n'
        "A2,radish,peat,,2026-03-02,130\n"
    )  # a line end within quotes: RFC 4180, 2.6

    notes = read(text)

    assert [(tray.line, tray.new.code, tray.new.note) for tray in notes.trays] == [
        (2, "A1", 'mold in a corner,; thrown "away"'), (5, "A2", ""),
    ]  # fmt: skip
    assert [tray.fresh_mass_g for tray in notes.trays] == [120.0, 130.0]
    assert notes.refused == ()


def test_a_quote_that_is_never_closed_costs_its_own_line_alone() -> None:
    notes = read('crop,medium,sown\npea,5" coir,2026-03-02\npea,"coir,2026-03-03\nradish,coir,2026-03-04\n')

    assert [tray.new.crop for tray in notes.trays] == ["pea", "radish"]
    assert [why.values["line"] for why in notes.refused] == [3]


@pytest.mark.parametrize("told", ["sep=;", '"sep=;"', "SEP=;"])
def test_a_first_line_that_names_the_delimiter_and_rows_without_a_word_are_no_trays(told: str) -> None:
    notes = read(f"{told}\r\ncrop;medium;sown;yield\r\npea;coir;2026-03-02;1,5\r\n;;;\r\n;;;\r\n")

    assert [(tray.line, tray.fresh_mass_g) for tray in notes.trays] == [(3, 1.5)]
    assert notes.refused == ()


def test_dates_that_can_be_two_days_are_asked_about_and_nothing_is_read_before() -> None:
    text = "crop,medium,sown\npea,coir,03/04/2025\npea,coir,05/04/2025\n"

    asked = read(text)
    said = read(text, order=DateOrder.MDY)

    assert asked.trays == ()
    assert set(asked.orders) == {DateOrder.DMY, DateOrder.MDY}
    assert asked.question == "Is 03/04/2025 the day 2025-04-03 or 2025-03-04?"
    assert said.question is None
    assert [tray.new.sown_at.date() for tray in said.trays] == [date(2025, 3, 4), date(2025, 5, 4)]


def test_trays_without_a_code_get_one() -> None:
    notes = read("crop,medium,sown\npea,coir,2025-04-03\npea,coir,2025-04-03\n")

    assert [tray.new.code for tray in notes.trays] == ["N1", "N2"]


@pytest.mark.parametrize(
    ("line", "why"),
    [
        ("A1,,coir,2025-04-03,,", "no crop is named"),
        ("A1,pea,coir,spring,,", "is no day"),
        ("A1,pea,coir,2025-04-03,2025-04-01,", "no day after the sowing"),
        ("A1,pea,coir,2099-04-03,,", "has not come yet"),
        ("A1,pea,coir,2025-04-03,2099-04-14,", "has not come yet"),
        ("A1,pea,coir,2025-04-03,,heavy", "cannot be fresh mass"),
        ("A1,pea,coir,2025-04-03,,-5", "cannot be fresh mass"),
    ],
)
def test_a_line_that_cannot_be_a_tray_is_named_and_the_others_are_kept(line: str, why: str) -> None:
    good = "A2,pea,coir,2025-04-03,2025-04-14,300"

    notes = read(f"tray,crop,medium,sown,cut,yield\n{line}\n{good}\n")

    assert [tray.new.code for tray in notes.trays] == ["A2"]
    (refused,) = notes.refused
    assert refused.startswith("Line 2: ")
    assert why in refused


@pytest.mark.parametrize("text", ["", "one line without a table", "crop,medium\npea,coir\n"])
def test_what_is_no_table_of_trays_says_what_is_wanted(text: str) -> None:
    with pytest.raises(NotALog, match=r"empty|at least crop, medium"):
        read(text)


def test_a_column_can_be_taken_for_something_else() -> None:
    fields = [*read(NOTES).fields]
    fields[7] = Field.FEED

    assert read(NOTES, fields=fields).trays[0].new.feed == "fine"


@given(st.binary(max_size=300))
def test_any_bytes_are_read_or_refused(data: bytes) -> None:
    with suppress(NotALog):
        read_old_notes(data)

    with suppress(NotALog):
        notes = read_old_notes(b"crop,medium,sown\npea,coir,2025-03-01\n" + data)
        lines = [tray.line for tray in notes.trays]
        assert lines == sorted({2, *lines})  # the whole line is read, whatever follows it, and none twice


@given(st.lists(st.text(st.characters(exclude_categories=("C", "Z")), max_size=20), min_size=3, max_size=9))
def test_any_cells_are_trays_or_named(cells: list[str]) -> None:
    line = "x" + ",".join(cell.replace(",", " ") for cell in cells)
    notes = read(f"crop,medium,sown,cut,yield,height,soak,score,note\n{line}\n", order=DateOrder.YMD)

    assert len(notes.trays) + len(notes.refused) == 1


def test_a_file_of_too_many_lines_is_refused_and_no_line_is_dropped_in_silence() -> None:
    line = "pea,coir,2025-04-03\n"

    with pytest.raises(NotALog, match="more than 20000 lines"):
        read("crop,medium,sown\n" + 20_001 * line)

    assert len(read("crop,medium,sown\n" + 20_000 * line).trays) == 20_000


def test_a_title_may_stand_above_the_names_of_the_columns() -> None:
    """As spreadsheets are typed: whose table it is, a line left free, then the names."""
    title = "Versuche 2025;;;;\n;;;;\nMatte gegen Erde;;;;\n"
    names = "Schale;Kultur;Substrat;Saatgut (g);gesät am;Frischmasse [g]\n"

    notes = read(title + names + "1;Brokkoli;Matte;18,5;13.4.2025;1.012,5\n")

    (tray,) = notes.trays
    assert (tray.line, tray.new.crop, tray.new.sowing_rate_g, tray.fresh_mass_g) == (
        5,
        "brokkoli",
        18.5,
        1012.5,
    )


def test_trays_above_a_second_table_with_more_columns_are_not_taken_for_a_title() -> None:
    first = "crop,medium,sown\npea,mat,2025-04-03\npea,coir,2025-04-03\n\n"

    notes = read(first + "crop,medium,sown,yield\nradish,mat,2025-05-03,300\n")

    assert [(tray.line, tray.new.crop) for tray in notes.trays] == [(2, "pea"), (3, "pea"), (6, "radish")]
    assert [str(refused) for refused in notes.refused] == ["Line 5: “sown” is no day; it was left out."]


def test_a_line_that_only_names_a_medium_is_no_line_of_names() -> None:
    notes = read("crop,medium,sown\nbroccoli,mat,2025-04-03\nseed,mat,2025-04-03\n")

    assert [tray.new.crop for tray in notes.trays] == ["broccoli", "seed"]


TWO_DAYS = (
    "tray,crop,medium,sown,yield\n"
    "1,pea,mat,2025-04-03,300\n2,pea,mix,2025-04-03,310\n3,pea,mat,2025-04-17,280\n4,pea,mix,2025-04-17,290\n"
)


def test_media_side_by_side_are_a_trial_called_like_the_file_with_days_of_sowing_as_blocks() -> None:
    notes = read_old_notes(TWO_DAYS.encode(), name="Last year.csv")

    assert [(tray.new.trial, tray.new.block) for tray in notes.trays] == [
        ("Last year", "2025-04-03"), ("Last year", "2025-04-03"),
        ("Last year", "2025-04-17"), ("Last year", "2025-04-17"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    "text",
    [
        "crop,medium,sown\npea,mat,2025-04-03\n",
        "crop,medium,sown,trial\npea,mat,2025-04-03,\npea,mix,2025-04-03,\n",
    ],
)
def test_what_compares_nothing_or_names_its_trials_is_made_no_trial(text: str) -> None:
    assert {tray.new.trial for tray in read_old_notes(text.encode(), name="Last year.csv").trays} == {None}


# --- in the book


def test_a_crop_and_a_medium_that_the_book_writes_in_other_letters_are_the_ones_it_has(book: Book) -> None:
    say_of_crop(book, "Weißkohl")
    book.set_medium("Peat Mix")
    text = "crop,medium,sown\nweißkohl,peat mix,2025-04-03\nWEISSKOHL,Kokos weiß,2025-04-03\n"

    ids = book.keep_old_notes(read(text), "2025.csv")

    assert [(book.tray(one).crop, book.tray(one).medium) for one in ids] == [
        ("Weißkohl", "Peat Mix"), ("Weißkohl", "kokos weiß"),
    ]  # fmt: skip
    assert set(book.crops()) == {"broccoli", "Weißkohl"}


def test_old_trays_stand_in_the_book_as_ended_with_their_yield(book: Book) -> None:
    ids = book.keep_old_notes(read(NOTES), "2025.csv")

    first = book.tray(ids[0])
    assert (first.ended, first.done_at) == ("cut", datetime(2025, 11, 13, 9))
    (mass,) = book.readings(ids[0], ReadingKind.FRESH_MASS)
    assert mass.value == 212.0
    assert len(book.trays()) == 3  # none of them grows


def test_the_same_notes_twice_add_nothing_and_one_undo_takes_them_back(book: Book) -> None:
    book.keep_old_notes(read(NOTES), "2025.csv")

    assert book.keep_old_notes(read(NOTES), "again.csv") == ()
    assert book.undo() == "2 trays from 2025.csv"
    assert len(book.trays(growing=False)) == 3


def test_a_tray_sown_long_ago_without_a_day_of_cut_grows_no_more(book: Book) -> None:
    (tray,) = book.keep_old_notes(read("crop,medium,sown\npea,coir,2025-04-03\n"), "old.csv")

    assert book.tray(tray).done_at is not None
    assert book.tray(tray).ended is None


def test_a_tray_that_was_weighed_has_been_cut_though_nobody_wrote_when(book: Book) -> None:
    book.set_setting("today", "2026-03-12")
    text = "tray,crop,medium,sown,yield\nB1,pea,coir,2026-03-02,300\nB2,pea,coir,2026-03-02,\n"

    first, second = book.keep_old_notes(read(text), "old.csv")

    assert book.tray(first).done_at is not None
    assert book.tray(first).done_at.date() == date(2026, 3, 12)
    assert book.tray(second).done_at is None


def test_a_table_that_was_written_on_brings_its_new_lines_alone(book: Book) -> None:
    first = book.keep_old_notes(read_old_notes(TWO_DAYS.encode(), name="2025.csv"), "2025.csv")
    longer = TWO_DAYS + "5,pea,mat,2025-05-01,305\n"

    more = book.keep_old_notes(read_old_notes(longer.encode("cp1252"), name="2025.csv"), "2025.csv")

    assert (len(first), [book.tray(one).code for one in more]) == (4, ["5"])
    assert len(book.trial_trays("2025")) == 5


def test_without_codes_a_tray_of_another_table_is_not_taken_for_one_that_weighed_something_else(
    book: Book,
) -> None:
    head = "crop,medium,sown,yield\n"
    book.keep_old_notes(read(head + "pea,mat,2025-04-03,300\n"), "a.csv")

    assert len(book.keep_old_notes(read(head + "pea,mat,2025-04-03,301\n"), "b.csv")) == 1
    assert book.keep_old_notes(read(head + "pea,mat,2025-04-03,300.0\n"), "c.csv") == ()


def test_without_codes_and_weights_a_table_that_was_written_on_brings_its_new_lines_alone(book: Book) -> None:
    lines = ("80,", ",fine", ",")
    text = "crop,medium,sown,score,notes\n" + "".join(f"pea,mat,2025-04-03,{line}\n" for line in lines)
    book.keep_old_notes(read(text), "a.csv")

    more = book.keep_old_notes(read(text + "pea,mat,2025-04-10,70,\n"), "a.csv")
    others = text.replace("80", "81").replace("fine", "poor")

    assert [book.tray(one).sown_at.day for one in more] == [10]
    assert [book.tray(one).note for one in book.keep_old_notes(read(others), "b.csv")] == ["", "poor"]
