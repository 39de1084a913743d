"""A hungry medium is told by its paler canopies, day and crop as planned, colours set right by the patch."""

from pathlib import Path

import pytest

from data.materials.canopygreen import green_numbers
from data.materials.noted import read_noted
from tests.data.trialrack import EVEN, TRIAL, Rack


def coloured(rack: Rack, green: dict[str, float | None], *, by: str = "patch") -> None:
    """Give each tray's photo the index of its medium; blocks differ by a hundredth, their trays by less."""
    rack.shoot_all(EVEN)
    blocks = sorted({tray.block or "" for tray in rack.trays})
    with rack.book.writing() as db:
        for number, tray in enumerate(rack.trays):
            value = green[tray.medium]
            apart = 0.01 * blocks.index(tray.block or "") + 0.0001 * (number % 5)
            own = None if value is None else value + apart
            for day in rack.book.days(tray.id):
                assert day.score is not None
                kept = {"dark_green": own, "lightness": 40.0, "corrected_by": by}
                db.table("score").update(day.score.id, kept)


@pytest.fixture
def rack(tmp_path: Path) -> Rack:
    return Rack(tmp_path)


def test_a_paler_medium_is_told_beside_the_verdict(rack: Rack) -> None:
    coloured(rack, {"peat mix": 0.60, "coir": 0.60, "fibre mat": 0.50})

    told = [words for words in read_noted(rack.book, TRIAL).words if words.startswith("Green of the canopy")]

    (mat,) = [words for words in told if "fibre mat" in words]
    assert "fibre mat -10.0 points against peat mix" in mat
    assert "cannot be told" not in mat
    assert "4, and 4 of peat mix" in mat
    rack.book.close()


def test_red_canopies_have_no_index_and_are_held_against_each_other_by_lightness(rack: Rack) -> None:
    coloured(rack, {"peat mix": 0.60, "coir": 0.60, "fibre mat": None})

    assert {row for row, _, _ in green_numbers(rack.book, TRIAL)} == {"lightness"}
    rack.book.close()


def test_colours_that_no_patch_set_right_and_open_stands_tell_nothing(rack: Rack) -> None:
    coloured(rack, {"peat mix": 0.60, "coir": 0.60, "fibre mat": 0.50}, by="none")
    assert list(green_numbers(rack.book, TRIAL)) == []

    with rack.book.writing() as db:
        for tray in rack.trays:
            for day in rack.book.days(tray.id):
                assert day.score is not None
                db.table("score").update(day.score.id, {"corrected_by": "patch", "coverage": 40.0})
    assert list(green_numbers(rack.book, TRIAL)) == []
    rack.book.close()
