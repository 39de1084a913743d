"""A trial without a plan can have a margin; the verdict says when it was set and what there was by then."""

from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

import pytest

from data.book import Book
from data.errors import MarginOfPlan, NoLongerThere
from data.report.content import Paragraph
from data.report.reading import read_report
from data.verdict.verdicts import CropVerdict, verdicts
from tests.data.builders import a_note, a_tray, score_note
from tests.data.plans import a_plan
from tests.made.books import an_empty_book

TRIAL = "Unplanned"
NOISE = (0.0, 1.5, -1.0, 0.5, 2.0, -0.5)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    """Two media in three blocks, sown on 1 March 2026 at 9."""
    with an_empty_book(tmp_path / "book") as made:
        made.add_trays(
            a_tray(f"{block}{medium[0]}", medium=medium, block=block, tag_number=10 + n, trial=TRIAL)
            for n, (block, medium) in enumerate((b, m) for b in "123" for m in ("peat", "mat"))
        )
        made.set_trusted("peat")
        yield made


def shoot(book: Book, folder: Path) -> None:
    """Of each tray one photo of day 7."""
    for n, tray in enumerate(book.trays()):
        note = a_note(folder, f"{tray.code}.jpg", tag=tray.tag_number, coverage=70.0 + NOISE[n])
        book.keep(score_note(note), note)


def margin_on(book: Book, day: str, points: float = 4.0) -> None:
    book.set_setting("today", day)
    book.set_margin(TRIAL, points)


def found(book: Book) -> CropVerdict:
    book.set_setting("today", "2026-03-20")
    (one,) = verdicts(book)
    return one


def told(book: Book) -> str:
    return " ".join(str(note) for note in found(book).notes if "margin" in note)


def test_a_margin_set_before_sowing_holds_and_is_dated(book: Book, tmp_path: Path) -> None:
    margin_on(book, "2026-02-27")
    shoot(book, tmp_path)

    assert found(book).verdict.margin == 4.0
    assert told(book) == "The margin of 4 points was set on 27 February 2026, before the first tray was sown."


def test_a_margin_set_while_trays_grow_says_that_no_compared_photo_was_there(
    book: Book, tmp_path: Path
) -> None:
    margin_on(book, "2026-03-05")
    shoot(book, tmp_path)

    assert told(book) == (
        "The margin of 4 points was set on 5 March 2026, after the first tray was sown, but before any photo "
        "that is compared was taken."
    )


def test_a_margin_set_once_the_photos_were_there_calls_for_care(book: Book, tmp_path: Path) -> None:
    shoot(book, tmp_path)
    margin_on(book, "2026-03-12", 12.0)

    assert found(book).verdict.margin == 12.0
    assert told(book) == (
        "The margin of 12 points was set on 12 March 2026, when photos that are compared had been taken "
        "already: read this verdict with care."
    )


def test_another_margin_afterwards_takes_the_date_along_and_the_same_one_does_not(
    book: Book, tmp_path: Path
) -> None:
    margin_on(book, "2026-02-27")
    shoot(book, tmp_path)
    margin_on(book, "2026-03-15")
    assert "27 February" in told(book)

    margin_on(book, "2026-03-15", 9.0)
    assert "9 points was set on 15 March 2026, when photos" in told(book)

    assert book.undo() == f"margin of {TRIAL}: 9 points"
    assert "4 points was set on 27 February" in told(book)


def test_a_margin_of_unknown_date_is_no_margin_of_before(book: Book, tmp_path: Path) -> None:
    """As it can come in from elsewhere."""
    shoot(book, tmp_path)
    with book.writing() as db:
        db.execute("UPDATE trial SET margin_points = 3.0")

    assert told(book) == "A margin of 3 points was set, and nobody knows when: read this verdict with care."


def test_the_report_does_not_say_that_nothing_was_fixed(book: Book) -> None:
    def asked() -> str:
        return next(str(b.text) for b in read_report(book).blocks if isinstance(b, Paragraph))

    assert asked().endswith("nothing was fixed beforehand.")

    margin_on(book, "2026-02-27")

    assert asked() == (
        "No plan was kept for this trial. A margin was set; the answers say when. Nothing else was fixed "
        "beforehand."
    )


def test_what_cannot_be_a_margin_is_refused_and_that_of_a_plan_stays_there(book: Book) -> None:
    for points in (0.0, -1.0, 100.5, float("nan")):
        with pytest.raises(ValueError, match="margin lies above 0"):
            book.set_margin(TRIAL, points)
    with pytest.raises(NoLongerThere, match="no longer in the book"):
        book.set_margin("another", 4.0)

    plan = a_plan()
    book.keep_plan(plan, at=datetime(2026, 3, 1))
    with pytest.raises(MarginOfPlan, match="change it in the plan, with a reason"):
        book.set_margin(plan.trial, 4.0)
