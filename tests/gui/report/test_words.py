"""Tables of a report as text: many media stand in several tables, each beside the trusted one."""

import pytest

from data.materials.table import Table
from data.report.content import Materials
from gui.report.words import text_tables


@pytest.mark.parametrize(
    ("count", "parts"),
    [
        (1, ["T"]),
        (4, ["TABC"]),
        (5, ["TABC", "TD"]),
        (8, ["TABC", "TDEF", "TG"]),
    ],
)
def test_each_part_of_a_table_of_media_begins_with_the_trusted_one(count: int, parts: list[str]) -> None:
    media = tuple("TABCDEFG"[:count])

    tables = text_tables(Materials(table=Table(media=media, trusted="T", cells={})))

    assert ["".join(table.head[1:]) for table in tables] == parts
