"""Contents: all that a book holds, to hold one moment against another."""

from typing import Any

from data.book import Book


def contents(book: Book) -> dict[str, list[dict[str, Any]]]:
    """All rows of the book but the notes on changes."""
    with book.writing() as db:
        tables = set(db.table_names()) - {"change", "_sqlite_migrations"}
        return {name: list(db.table(name).rows) for name in sorted(tables)}
