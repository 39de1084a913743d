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


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    """Three blocks of two crops on three media, sown; today is after the harvest."""
    with Book.create(tmp_path / "book") as made:
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
