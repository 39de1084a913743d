"""Tables of a report as text: many media stand in several tables, each beside the trusted one."""

import pytest

from data.materials.table import Beside, Cell, Table, table_of
from data.report.content import Materials
from data.sentence import Sentence
from data.statistics.estimate import Estimate
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


def test_a_second_table_holds_the_others_against_the_trusted_medium() -> None:
    marks = {("cut quality", name): Cell(value=value, n=8) for name, value in (("mix", 4.5), ("mat", 3.0))}
    told = Beside(difference=Estimate(value=-1.5, low=-2.0, high=-1.0), words=Sentence("Told by 8."))
    unsure = {("shelf life", "mix"): Cell(value=9.0, low=8.0, high=10.0, n=8)}
    unsure |= {("shelf life", "mat"): Cell(value=8.5, low=7.0, high=10.0, n=8)}
    table = table_of(("mix", "mat"), "mix", marks | unsure, beside={("cut quality", "mat"): told})

    _, held = text_tables(Materials(table=table))

    assert held.name == "Held against mix"
    assert held.head == ("Property", "mat")
    assert held.rows[0] == ("Cut quality", "−1.5 marks, −2.0 to −1.0.\nTold by 8.")
    assert held.rows[1][1].endswith("Which one has more cannot be told.")


def test_without_a_difference_there_is_no_second_table() -> None:
    cells = {("cut quality", name): Cell(value=4.0, n=8) for name in ("mix", "mat")}

    assert len(text_tables(Materials(table=table_of(("mix", "mat"), None, cells)))) == 1
