"""The next plan learns from the grower's own trays how far they lie apart."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from data.book import Book
from data.readings import NewReading, ReadingKind
from data.trial import MeasureKind
from data.verdict.trialspread import learned_spreads
from tests.data.builders import NOON
from tests.data.plans import a_plan
from tests.data.trialrack import EVEN, Rack
from tests.made.books import an_empty_book


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    """Three blocks of two crops on three media, sown; today is after the harvest."""
    with an_empty_book(tmp_path / "book") as made:
        made.set_setting("today", "2026-03-20")
        made.sow_trial(made.draw_places(made.keep_plan(a_plan()), seed=1).id)
        yield made


def test_a_book_without_numbers_teaches_nothing(book: Book) -> None:
    assert learned_spreads(book) == {}


def test_yield_spreads_in_per_cent_of_its_crop(book: Book) -> None:
    """Every tray yields 200 g, but coir 10 g more on shelf A and 10 g less on shelf B.

    By hand: blocks and media leave 2/3 of these 200 g2, on 4 degrees of freedom in each of two crops.
    """
    swing = {"shelf A": 10.0, "shelf B": -10.0, "shelf C": 0.0}
    book.add_readings(
        [
            NewReading(
                kind=ReadingKind.FRESH_MASS,
                value=200.0 + (swing[tray.block or ""] if tray.medium == "coir" else 0.0),
                taken_at=NOON,
                tray_id=tray.id,
            )
            for tray in book.trays()
        ]
    )

    spread = learned_spreads(book)[MeasureKind.YIELD]

    grams = (200.0 * 2 / 3 / 4) ** 0.5
    assert spread.sd == pytest.approx(grams / 2.0, abs=0.05)
    assert spread.df == 8
    assert spread.source == "18 trays of yours"


@pytest.mark.parametrize(("blocks", "df"), [(4, 6), (3, 4), (2, None)])
def test_the_canopy_score_spreads_in_points_once_four_degrees_of_freedom_tell_it(
    tmp_path: Path, blocks: int, df: int | None
) -> None:
    """In a full trial a tray leaves its number less the means of block and medium, plus that of all."""
    rack = Rack(tmp_path, blocks=blocks)
    rack.shoot_all(EVEN)
    (found,) = rack.verdicts()
    score = {(one.tray.block, one.tray.medium): one.value or 0.0 for one in found.numbers}
    grand = sum(score.values()) / len(score)

    def mean(place: int, name: str | None) -> float:
        some = [value for key, value in score.items() if key[place] == name]
        return sum(some) / len(some)

    left = [value - mean(0, block) - mean(1, medium) + grand for (block, medium), value in score.items()]

    spread = learned_spreads(rack.book).get(MeasureKind.SCORE)

    if df is None:
        assert spread is None
    else:
        assert spread is not None
        assert spread.sd == round((sum(one**2 for one in left) / df) ** 0.5, 1) > 0
        assert (spread.df, spread.source) == (df, f"{3 * blocks} trays of yours")
    rack.book.close()
