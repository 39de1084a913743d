"""Every named query fits the tables, and none walks over all photos or all scores."""

import re
from collections import defaultdict
from collections.abc import Iterator
from importlib import import_module
from pathlib import Path

import pytest

from data import queries, tables
from data.book import Book
from tests.data.builders import a_tray

MODULES = (
    queries,
    *map(
        import_module, (f"data.tables.{path.stem}" for path in Path(tables.__file__).parent.glob("*rows.py"))
    ),
)
ASKED = {
    f"{module.__name__}.{name}": text
    for module in MODULES
    for name, text in sorted(vars(module).items())
    if name.isupper() and isinstance(text, str) and text.lstrip().startswith("SELECT")
}
# asked once, when a whole book goes into one file or comes out of one
PACKING = {"data.queries.KEPT_ORIGINALS", "data.queries.STRANGE_IN_BOOK"}
PARTS = tuple(name for name in ASKED if name.endswith("_COLUMNS"))
WHOLE_BOOK = re.compile(r"SCAN (photo|score|suspect|p|q|s|u|z)\b(?! USING COVERING)")


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    """A book with enough rows that the planner looks at them as it would in a book of years."""
    with Book.create(tmp_path_factory.mktemp("plans") / "book") as book:
        book.add_trays(a_tray(f"T{n}") for n in range(50))
        with book.writing() as db:
            db.table("photo").insert_all(
                {
                    "digest": f"{n:064}", "name": f"{n}.jpg", "suffix": ".jpg", "kept": 1, "added_at": "2026",
                    "taken_at": f"2026-03-{1 + n % 28:02}T08:00:00", "taken_from": "camera",
                    "tray": 1 + n % 50,
                }
                for n in range(2000)
            )  # fmt: skip
            db.table("score").insert_all(
                {
                    "photo": n, "method": "plain 1", "made_at": "2026", "sure": 1, "coverage": 50.0,
                    "cells": bytes(144), "gaps": "[]", "reasons": "{}", "notes": "[]",
                }
                for n in range(1, 2001)
            )  # fmt: skip
            db.table("suspect").insert_all(
                {"score": n, "confidence": 0.5, "why": "", "outline": "[]", "said": "mold" if n % 9 else None}
                for n in range(1, 2001)
            )
            db.execute("UPDATE tray SET done_at = '2026-03-09T08:00:00' WHERE id <= 45")
        yield book


def plan(book: Book, name: str) -> list[str]:
    values = defaultdict(lambda: None, VALUES)
    with book._using() as session:
        rows = session.connection.execute("EXPLAIN QUERY PLAN " + ASKED[name], values).fetchall()
    return [row["detail"] for row in rows]


VALUES = {
    "tray": 1, "tag": 10, "at": "2026-03-08T12:00:00", "shelf": "A", "since": "2026-03-01", "score": 1,
    "photo": 1, "digest": "0", "newest": 10**9, "most": 500, "begin": "2026-03-08", "end": "2026-03-09",
    "suspect": 1, "crop": "broccoli", "medium": "coir", "kind": "weight", "until": "2026-03-09", "reading": 1,
    "event": 1, "bench_test": 1, "trays": "[1, 2]", "method": "plain 1", "id": 1,
    "name": "today", "day": "2026-03-08",
}  # fmt: skip


def test_there_are_queries_to_look_at() -> None:
    assert len(ASKED) > 20


@pytest.mark.parametrize("name", ASKED)
def test_every_query_fits_the_tables(filled: Book, name: str) -> None:
    assert plan(filled, name)


@pytest.mark.parametrize("name", sorted(set(ASKED) - set(PARTS) - PACKING))
@pytest.mark.parametrize("analysed", [False, True])
def test_no_query_walks_over_all_photos_or_scores(filled: Book, name: str, analysed: bool) -> None:
    if analysed:
        with filled.writing() as db:
            db.execute("ANALYZE")

    walks = [detail for detail in plan(filled, name) if WHOLE_BOOK.search(detail)]

    assert walks == []


@pytest.mark.parametrize("name", [name for name in ASKED if name.endswith(("_OF_GROWING", "MOLD_SAID"))])
def test_what_is_asked_of_growing_trays_does_not_walk_over_those_of_all_years(
    filled: Book, name: str
) -> None:
    walks = [detail for detail in plan(filled, name) if re.match(r"SCAN (t|tray)\b(?! USING)", detail)]

    assert walks == []


@pytest.mark.parametrize("name", ["data.queries.METHODS_OF_GROWING", "data.queries.METHODS_OF_SOME"])
def test_versions_of_the_method_are_told_from_indexes_alone(filled: Book, name: str) -> None:
    searches = [detail for detail in plan(filled, name) if detail.startswith(("SEARCH p", "SEARCH s"))]

    assert len(searches) == 2
    assert all("USING COVERING INDEX" in detail for detail in searches)


def test_a_walk_over_all_photos_would_be_noticed(filled: Book) -> None:
    rows = filled._rows("EXPLAIN QUERY PLAN SELECT p.name FROM photo p WHERE p.name = 'x'")
    assert any(WHOLE_BOOK.search(row["detail"]) for row in rows)
