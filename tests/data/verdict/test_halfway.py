"""A medium that was written under another name from some block on is suspected, and nothing else is."""

import pytest

from data.verdict import Measured
from data.verdict.halfway import renamed_half_way
from data.verdict.notes import half_way


def standing(**blocks: str) -> list[tuple[str, str]]:
    """Block and medium of each tray; `peat="1234"` stands in four blocks."""
    return [(block, medium) for medium, there in blocks.items() for block in there]


@pytest.mark.parametrize(
    ("trays", "pairs"),
    [
        (standing(peat="1234", coir="12", cocos="34"), (("coir", "cocos"),)),
        (standing(peat="1234", coir="123", cocos="34"), ()),  # both stand in block 3
        (standing(peat="1234", coir="12", cocos="4"), ()),  # neither stands in block 3
        (standing(peat="1234", coir="1234", hemp="12"), ()),  # a medium of two blocks has no twin
        (standing(peat="12", coir="12"), ()),
        (standing(peat="1"), ()),
        ([], ()),
        (
            standing(peat="1234", coir="12", cocos="34", mat="12"),
            (("coir", "cocos"), ("cocos", "mat")),
        ),
    ],
)
def test_names_that_never_meet_and_fill_all_blocks_together_may_be_one(
    trays: list[tuple[str, str]], pairs: tuple[tuple[str, str], ...]
) -> None:
    assert renamed_half_way(trays) == pairs


def test_where_it_is_the_trusted_medium_that_is_said() -> None:
    rows = [Measured(block=b, medium=m, value=1.0) for b, m in standing(coir="12", cocos="34", peat="1234")]

    (of_others,) = half_way(rows, "peat")
    (of_trusted,) = half_way(rows, "cocos")

    assert of_others == (
        "coir and cocos never stand in one block, and together they stand in every block: is it one medium "
        "under two names? They were taken as two."
    )
    assert of_trusted.startswith("The trusted medium may have been renamed half way: coir and cocos never")
