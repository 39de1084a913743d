"""A table kept elsewhere is read as it was meant, or its line is refused with a sentence."""

import math
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.verdict.tablefile import MOST_TRAYS, Table, TableError, read_table, table_of

ROWS = [("1", "peat", 80.5), ("1", "mat", 78.0), ("2", "peat", 90.0), ("2", "mat", 85.25)]


def told(table: Table) -> list[tuple[str, str, float]]:
    return [(row.block, row.medium, row.value) for row in table.rows]


def written(delimiter: str, comma: bool = False, heading: str = "block,medium,value") -> str:
    lines = [heading.replace(",", delimiter)]
    for block, medium, value in ROWS:
        number = str(value).replace(".", ",") if comma else str(value)
        lines.append(delimiter.join((block, medium, number)))
    return "\n".join(lines)


@pytest.mark.parametrize("delimiter", [",", ";", "\t", "|"])
def test_columns_may_be_parted_in_several_ways(delimiter: str) -> None:
    assert told(table_of(written(delimiter))) == ROWS


@pytest.mark.parametrize("delimiter", [";", "\t"])
def test_values_may_have_a_decimal_comma(delimiter: str) -> None:
    assert told(table_of(written(delimiter, comma=True))) == ROWS


def test_a_quoted_decimal_comma_stands_between_commas() -> None:
    assert told(table_of('block,medium,value\n1,peat,"80,5"')) == [("1", "peat", 80.5)]


def test_a_bare_decimal_comma_between_commas_is_refused_and_not_cut_off() -> None:
    table = table_of("block,medium,value\n1,peat,80,5\n1,mat,78")

    assert told(table) == [("1", "mat", 78.0)]
    assert table.refused == ("line 2: it has more columns than the heading; it was left out.",)


@pytest.mark.parametrize("value", ["1,234", "1.234,5", "1,234.5", "80 g", "eighty", "0x10", "1e999", "--5"])
def test_what_is_no_number_or_could_be_two_is_refused(value: str) -> None:
    table = table_of(f"block;medium;value\n1;peat;{value}\n1;mat;78")

    assert told(table) == [("1", "mat", 78.0)]
    assert table.refused[0].startswith(f'line 2: "{value}" is no number')


def test_an_empty_value_is_a_missing_tray_and_no_mistake() -> None:
    table = table_of("block,medium,value\n1,peat,\n1,mat,NA\n2,peat,-\n2,mat,78")

    assert told(table) == [("2", "mat", 78.0)]
    assert (len(table.missing), table.refused) == (3, ())


def test_columns_stand_in_any_order_beside_others_and_in_any_letters() -> None:
    table = table_of("Note,VALUE, Medium ,Block\nwet,80.5,peat,1")

    assert told(table) == [("1", "peat", 80.5)]


def test_without_a_column_of_blocks_all_trays_stand_in_one() -> None:
    table = table_of("medium,value\npeat,80\nmat,78")

    assert {row.block for row in table.rows} == {"all"}
    assert table.notes == ("There is no column named block, so all trays were taken as one block.",)


def test_a_tray_without_a_block_among_trays_with_one_is_left_out() -> None:
    table = table_of("block,medium,value\n1,peat,80\n,mat,78")

    assert told(table) == [("1", "peat", 80.0)]
    assert table.refused == ("line 3: no block is named (mat); it was left out.",)


def test_letters_and_spaces_make_no_second_medium() -> None:
    table = table_of("block,medium,value\n1,Peat  mix,80\n2,peat mix ,78")

    assert {row.medium for row in table.rows} == {"Peat mix"}
    assert table.notes == ("peat mix was taken for Peat mix.",)


def test_a_lone_quotation_mark_swallows_one_line_at_most() -> None:
    table = table_of('block,medium,value\n1,"peat,80\n1,mat,78\n2,peat,90')

    assert ("2", "peat", 90.0) in told(table)
    assert ("1", "mat", 78.0) in told(table)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "trays.csv is empty."),
        ("a,b\n1,2", "trays.csv has no column named medium."),
        ("block,medium\n1,peat", "trays.csv has no column named value."),
        ("medium,value,value\npeat,1,2", "trays.csv has two columns named value."),
    ],
)
def test_what_is_no_table_is_told_in_a_sentence(tmp_path: Path, text: str, sentence: str) -> None:
    file = tmp_path / "trays.csv"
    file.write_text(text)

    with pytest.raises(TableError) as refused:
        read_table(file)

    assert str(refused.value).startswith(sentence)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_old_and_new_encodings_are_read(tmp_path: Path, encoding: str) -> None:
    file = tmp_path / "trays.csv"
    file.write_bytes("medium;value\nWollmatte Grün;80,5\n".encode(encoding))

    assert [(row.medium, row.value) for row in read_table(file).rows] == [("Wollmatte Grün", 80.5)]


@pytest.mark.parametrize("data", [b"\x89PNG\r\n\x1a\n\0\0\0", b"PK\x03\x04\0\0"])
def test_a_picture_or_a_workbook_is_no_table(tmp_path: Path, data: bytes) -> None:
    file = tmp_path / "trays.csv"
    file.write_bytes(data)

    with pytest.raises(TableError, match="Save the table as CSV"):
        read_table(file)


def test_a_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(TableError, match="cannot be read"):
        read_table(tmp_path / "none.csv")


CELLS = st.lists(
    st.sampled_from(["", " ", "a", "peat", "1", "-2.5", "1e3", "1,5", '"', '"x"', "|"]), max_size=4
)


@given(st.lists(CELLS.map(",".join), max_size=12).map("\n".join))
def test_no_text_whatever_breaks_the_reading(text: str) -> None:
    for table in (text, "block,medium,value\n1,peat,2\n" + text):
        try:
            read = table_of(table)
        except TableError:
            assert table == text
            continue
        assert "peat" in {row.medium for row in read.rows}
        assert all(row.medium.strip() and math.isfinite(row.value) for row in read.rows)


def test_more_trays_than_any_trial_has_are_too_large() -> None:
    """300,000 lines took all memory of a machine."""
    lines = "".join(f"{n // 2},{'ab'[n % 2]},1\n" for n in range(MOST_TRAYS + 1))

    with pytest.raises(TableError, match="too large"):
        table_of("block,medium,value\n" + lines)


def test_headings_may_be_german() -> None:
    read = table_of("Block;Substrat;Wert\n1;Torf;80,5\n1;Matte;78\n")

    assert told(read) == [("1", "Torf", 80.5), ("1", "Matte", 78.0)]


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="no such device here")
@pytest.mark.timeout(20)
def test_a_device_without_an_end_is_too_large() -> None:
    with pytest.raises(TableError, match="too large"):
        read_table(Path("/dev/zero"))
