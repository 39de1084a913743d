"""Media are compared by trays that grew side by side: another crop or another week is no medium."""

from datetime import datetime, timedelta
from pathlib import Path

import pytest

from data.book import Book
from data.materials.noted import read_noted
from data.materials.reading import read_materials
from data.materials.table import Cell
from data.readings import NewReading, ReadingKind
from tests.data.builders import a_tray
from tests.made.books import a_demonstration, an_empty_book

SOWN = datetime(2026, 3, 2, 9)
CUT = SOWN + timedelta(days=9)


def noted(
    book: Book,
    rows: list[tuple[str, str, str, float]],
    kind: ReadingKind = ReadingKind.CUT_QUALITY,
    *,
    mat_later: timedelta = timedelta(0),
) -> Cell:
    """Trays by medium, crop, block and number; the cell of the mat."""
    for place, (medium, crop, block, value) in enumerate(rows):
        sown = SOWN + (mat_later if medium == "mat" else timedelta(0))
        tray = book.add_tray(
            a_tray(
                f"T{place}", tag_number=None, medium=medium, crop=crop, sown_at=sown, trial="one", block=block
            )
        )
        book.add_readings([NewReading(kind=kind, value=value, taken_at=CUT, tray_id=tray)])
    book.set_trusted("mix")
    table = read_materials(book).table
    return table.cell("slid" if kind is ReadingKind.SLID else str(kind), "mat")


@pytest.fixture
def book(tmp_path: Path) -> Book:
    return an_empty_book(tmp_path / "book")


def test_a_crop_that_cuts_worse_is_no_fault_of_the_medium_that_grew_more_of_it(book: Book) -> None:
    """All crops: mix 4.5, mat 3.1. Crop by crop they are alike but for 0.5 in one block."""
    rows = [("mix", "broccoli", b, 5.0) for b in "abcdef"] + [("mix", "radish", "a", 3.0)]
    rows += [("mix", "radish", "b", 2.0), ("mat", "radish", "a", 3.0), ("mat", "radish", "b", 2.5)]
    rows += [("mat", "radish", b, 3.0) for b in "cdef"]

    cell = noted(book, rows)

    assert cell.difference is not None
    assert cell.difference.value == pytest.approx(0.25)
    assert cell.beside == "Trays side by side, the same crop in the same block: 2, and 2 of mix."


def test_pairs_in_blocks_give_the_interval_of_the_paired_t(book: Book) -> None:
    """Differences 1, 2, 3: mean 2, sd 1, t(2) 4.303: 2 -+ 2.484 (any table of t)."""
    rows = [("mix", "pea", b, v) for b, v in zip("abc", (1.0, 3.0, 2.0), strict=True)]
    rows += [("mat", "pea", b, v) for b, v in zip("abc", (2.0, 5.0, 5.0), strict=True)]

    cell = noted(book, rows)

    assert cell.difference is not None
    assert (cell.difference.value, cell.difference.low, cell.difference.high) == pytest.approx(
        (2.0, 2.0 - 2.484, 2.0 + 2.484), abs=1e-3
    )


def test_media_that_never_grew_side_by_side_are_not_told_apart(book: Book) -> None:
    cell = noted(
        book, [("mix", "pea", "a", 5.0)] * 3 + [("mat", "radish", "a", 3.0), ("mat", "radish", "a", 2.0)]
    )

    assert cell.value == 2.5
    assert cell.difference is None
    assert cell.beside is not None
    assert "cannot be told" in cell.beside


@pytest.mark.parametrize(("days", "told"), [(0, True), (7, False)])
def test_a_block_of_another_week_is_another_block_though_it_has_the_name(
    book: Book, days: int, told: bool
) -> None:
    rows = [("mix", "pea", b, v) for b, v in zip("abc", (5.0, 4.0, 5.0), strict=True)]
    rows += [("mat", "pea", b, v) for b, v in zip("abc", (2.0, 2.0, 3.0), strict=True)]

    assert (noted(book, rows, mat_later=timedelta(days=days)).difference is not None) is told


def test_one_block_each_is_compared_by_the_day_of_sowing(book: Book) -> None:
    rows = [
        ("mix", "pea", "a", 5.0),
        ("mix", "pea", "b", 4.0),
        ("mat", "pea", "c", 3.0),
        ("mat", "pea", "d", 2.0),
    ]

    cell = noted(book, rows)

    assert cell.difference is not None
    assert cell.difference.value == -2.0
    assert cell.difference.low is not None
    assert cell.beside == "Trays side by side, the same crop sown on the same day: 2, and 2 of mix."


def test_one_pair_in_a_block_leaves_no_error_so_the_day_of_sowing_tells(book: Book) -> None:
    """Means 4.5 and 2.5; each two scatter by 0.5 squared, t(2) 4.303: -2 -+ 3.043 (any table of t)."""
    rows = [("mix", "pea", "a", 5.0), ("mat", "pea", "a", 3.0)]
    rows += [("mix", "pea", "b", 4.0), ("mat", "pea", "c", 2.0)]

    cell = noted(book, rows)

    assert cell.beside == "Trays side by side, the same crop sown on the same day: 2, and 2 of mix."
    assert cell.difference is not None
    assert (cell.difference.low, cell.difference.high) == pytest.approx((-5.043, 1.043), abs=1e-3)


@pytest.mark.parametrize("blocks", [("", "", ""), ("a", "", "")])
def test_trays_of_which_no_block_is_noted_are_not_said_to_share_one(
    book: Book, blocks: tuple[str, ...]
) -> None:
    """Both media on each place: a block, or trays of one day without any."""
    rows = [("mix", "pea", b, v) for b, v in zip(blocks, (5.0, 4.0, 5.0), strict=True)]
    rows += [("mat", "pea", b, v) for b, v in zip(blocks, (2.0, 2.0, 3.0), strict=True)]

    assert noted(book, rows).beside == (
        "Trays side by side, the same crop sown on the same day: 3, and 3 of mix."
    )


def test_trays_that_slid_are_counted_and_none_of_eight_is_not_never(book: Book) -> None:
    """3 of 8 and 0 of 8, by Wilson (1927): 13.7 to 69.4 %, 0 to 32.4 % (his formula, worked by hand).

    The difference by Newcombe (1998), method 10: -3.0 to 69.4 points about 37.5, worked from those.
    """
    rows = [("mix", "pea", b, 0.0) for b in "abcdefgh"]
    rows += [("mat", "pea", b, float(b in "bdf")) for b in "abcdefgh"]

    cell = noted(book, rows, ReadingKind.SLID)

    assert (cell.value, cell.low, cell.high, cell.n) == pytest.approx((37.5, 13.7, 69.4, 8), abs=0.1)
    assert cell.difference is not None
    assert cell.difference.value == 37.5
    low, high = 37.5 - (23.8**2 + 32.4**2) ** 0.5, 37.5 + 31.9
    assert (cell.difference.low, cell.difference.high) == pytest.approx((low, high), abs=0.15)


def test_a_trial_tells_what_was_noted_of_its_own_trays_alone(book: Book) -> None:
    rows = [("mix", "pea", b, v) for b, v in zip("abc", (5.0, 4.0, 5.0), strict=True)]
    rows += [("mat", "pea", b, v) for b, v in zip("abc", (2.0, 2.0, 3.0), strict=True)]
    noted(book, rows)
    book.add_tray(a_tray("U1", tag_number=None, medium="mat", crop="pea", sown_at=SOWN, trial="two"))

    (told,) = read_noted(book, "one").words

    assert told == (
        "Cut quality: mat -2.3 marks against mix, interval -3.8 to -0.9. Trays side by side, the "
        "same crop in the same block: 3, and 3 of mix."
    )
    assert read_noted(book, "two").words == ()


def test_a_kg_of_another_crop_is_not_held_against_a_kg(tmp_path: Path) -> None:
    """The demonstration's mat weighed on another crop than its mix: CO2e a kg of both, and no difference."""
    with a_demonstration(tmp_path / "demo") as demo:
        table = read_materials(demo).table
        assert table.cell("footprint by kg", "coir").difference is not None
        for tray in (*demo.trays(), *demo.ended_trays()):
            if tray.medium == "coir":
                demo.edit_tray(tray.id, crop="pea")

        cell = read_materials(demo).table.cell("footprint by kg", "coir")

        assert cell.value is not None
        assert cell.difference is None
        assert "no kg of the other" in str(cell.beside)
