"""Text stays text: whatever a person or a file says comes back as it was, and does nothing."""

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.book import Book
from data.photos.originals import safe_suffix
from data.tables.rows import unpack_bed_cells, unpack_cells
from data.tables.scorerows import pack_cells
from tests.data.builders import a_note, a_tray, score_note
from tests.made.books import an_empty_book

NASTY = [
    "Robert'); DROP TABLE tray;--", "<img src=x onerror=alert(1)>", "../../etc/passwd", "=1+1", "' OR '1'='1",
    'a "quoted" one', "100 %", "{folder}", "\N{SNOWMAN} é ü ß", "x" * 5000,
]  # fmt: skip
texts = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\x00"), min_size=1, max_size=60)


@pytest.fixture(scope="module")
def shared(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("text")


@pytest.mark.parametrize("text", NASTY)
def test_a_name_that_looks_like_code_is_only_a_name(book: Book, phone: Path, text: str) -> None:
    tray = book.tray(
        book.add_tray(a_tray(text, crop=text, medium=text, seed_lot=text, note=text, shelf=text))
    )

    assert {tray.code, tray.crop, tray.medium, tray.seed_lot, tray.note, tray.shelf} == {text}
    assert book.undo_text() == f"tray {text} added"
    assert len(book.trays()) == 4
    assert text in [shelf.name for shelf in book.rack()]


@pytest.mark.parametrize("text", NASTY)
def test_a_file_name_never_becomes_a_path(book: Book, phone: Path, text: str) -> None:
    path = a_note(phone, tag=10)
    fate = book.keep(replace(score_note(path), name=f"{text}.jpg"), path)

    row = book.photo(fate.photo_id)

    assert row.name == f"{text}.jpg"
    assert row.photo is not None
    assert row.photo.parent.parent == book.folder / "photos"
    assert row.photo.name.removesuffix(".jpg").isalnum()


@settings(max_examples=60, deadline=None)
@given(code=texts, crop=texts, note=texts)
def test_any_text_comes_back_as_it_was(shared: Path, code: str, crop: str, note: str) -> None:
    folder = shared / "book"
    book = Book.open(folder) if folder.exists() else an_empty_book(folder)
    with book:
        tray = book.tray(book.add_tray(a_tray(code, crop=crop, note=note)))

        assert (tray.code, tray.crop, tray.note) == (code, crop, note)
        book.undo()
        assert book.trays() == ()


@pytest.mark.parametrize("suffix", [".jpg", ".JPEG", ".png", ".Tif", ".tiff", ".webp", ".HEIC", ".heif"])
@given(name=texts.filter(lambda name: not set(name) & set("/\\.")))
def test_a_suffix_of_a_picture_is_taken_over_in_small_letters(suffix: str, name: str) -> None:
    assert safe_suffix(name + suffix) == suffix.lower()


@given(texts, st.sampled_from(["exe", "svg", "jpg.exe", "jpgx", "png ", "py", "../x", ""]))
def test_no_other_suffix_is_taken_over(name: str, suffix: str) -> None:
    assert safe_suffix(f"{name}.{suffix}") == ".bin"


@given(st.lists(st.lists(st.floats(0, 100), min_size=12, max_size=12), min_size=6, max_size=6))
def test_cells_come_back_to_a_hundredth(cells: list[list[float]]) -> None:
    blob = pack_cells(cells)

    assert len(blob) == 144
    for row, kept in zip(cells, unpack_cells(blob), strict=True):
        assert kept == pytest.approx(row, abs=0.00501)


def test_a_cell_that_is_not_told_comes_back_as_none_and_no_share_is_taken_for_it() -> None:
    cells = [[100.0] * 12 for _ in range(6)]
    told = [[None, 0.0, *row[2:]] for row in cells]

    assert unpack_bed_cells(pack_cells(told)) == tuple(map(tuple, told))
    assert unpack_bed_cells(None) is None


def test_a_blob_of_cells_is_little_endian_row_by_row() -> None:
    cells = [[0.0] * 12 for _ in range(6)]
    cells[0][1], cells[5][11] = 2.57, 100.0

    blob = pack_cells(cells)

    assert blob[2:4] == (257).to_bytes(2, "little")
    assert blob[-2:] == (10_000).to_bytes(2, "little")


def test_cells_of_another_shape_are_our_mistake() -> None:
    with pytest.raises(ValueError, match="6 x 12"):
        pack_cells([[1.0] * 12] * 5)


def test_a_setting_is_text(book: Book) -> None:
    book.set_setting("today", "2026-03-11")
    assert book.today() == date(2026, 3, 11)
