"""What a newer program has planned in a book of the same tables is not guessed at."""

from pathlib import Path

import pytest

from data.book import Book
from data.errors import BookIsNewer
from tests.data.plans import a_plan


@pytest.mark.parametrize(
    ("table", "later"), [("plan", '{"form": 2}'), ("draw", '{"rows": []}'), ("draw", "[]")]
)
def test_a_plan_or_drawing_of_a_later_form_is_told_in_words(tmp_path: Path, table: str, later: str) -> None:
    with Book.create(tmp_path / "book") as book:
        plan = a_plan()
        book.draw_places(book.keep_plan(plan))
        with book.writing() as db:
            db.execute(f"UPDATE {table} SET body = ?", [later])

        with pytest.raises(BookIsNewer, match="bring this program up to date"):
            _ = book.plans() if table == "plan" else book.draws(plan.trial)
