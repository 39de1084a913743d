"""Open package: the description of an export, by an open standard.

In    the tables and columns of an export
Out   the parts of a `datapackage.json`, and a page for people
Not   the files themselves (`export.py`), what the columns are (`tables.py`)

Frictionless Data Package and Table Schema, version 1 (specs.frictionlessdata.io).
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from data.openfiles.columns import Kind, OpenTable
from data.openfiles.tables import TABLES
from data.sentence import Sentence

__all__ = ["CAUTION", "described", "field", "foreign_key", "page", "resource_of"]

CAUTION = Sentence(
    "A suspect is a reason to look, no finding, and no flag is no proof that a tray is safe. Food that is "
    "sold is ruled by local food-safety law. Factors of climate and break-down make screening estimates, no "
    "certified assessment, and are not for labels."
)


def resource_of(table: OpenTable) -> dict[str, Any]:
    """One table of the book as a resource."""
    fields = [field(column.heading, column.kind, column.about) for column in table.columns]
    by_table = {other.table: other for other in TABLES}
    keys = [
        foreign_key(column.heading, by_table[column.refers].file, by_table[column.refers].key)
        for column in table.columns
        if column.refers is not None
    ]
    return described(table.file, table.about, fields, [table.key], keys)


def described(
    name: str,
    about: str,
    fields: Sequence[Mapping[str, Any]],
    key: Sequence[str],
    foreign_keys: Sequence[Mapping[str, Any]],
) -> dict[str, Any]:
    """A file as a resource."""
    schema: dict[str, Any] = {"fields": list(fields), "missingValues": [""]}
    if key:
        schema["primaryKey"] = list(key)
    if foreign_keys:
        schema["foreignKeys"] = list(foreign_keys)
    return {
        "name": name.replace("_", "-"),
        "path": f"{name}.csv",
        "profile": "tabular-data-resource",
        "title": about,
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "schema": schema,
    }


def field(name: str, kind: Kind, about: str) -> dict[str, Any]:
    """A column."""
    told: dict[str, Any] = {"name": name, "type": str(kind), "description": about}
    if kind is Kind.JSON:
        told["type"] = "any"  # lists stand beside objects
    if kind is Kind.TIME:
        told["format"] = "any"  # ISO 8601 without a zone: local time of the rack
    return told


def foreign_key(heading: str, file: str, key: str) -> dict[str, Any]:
    """A column that names a row of another file."""
    return {"fields": heading, "reference": {"resource": file.replace("_", "-"), "fields": key}}


def page(resources: Iterable[Mapping[str, Any]]) -> Iterator[str]:
    """The lines of README.md in an export."""
    yield "# A trial book in open files"
    yield ""
    yield (
        "Comma-separated, UTF-8, times ISO 8601 in the rack's local time, units in the headings, empty where "
        "there is no number. Text that a spreadsheet would take for a formula begins with an apostrophe. All "
        "files and columns are described in `datapackage.json` (Frictionless Data Package)."
    )
    yield ""
    yield "| file | what a row is |"
    yield "| --- | --- |"
    for resource in resources:
        yield f"| `{resource['path']}` | {resource['title']} |"
    yield ""
    yield (
        "`compared.csv` holds one number a tray: with blocks as fixed effects and least squares it gives the "
        "means and differences in `verdicts.csv`; limits are difference -+ q x se with the one-sided 95 % q "
        "of Dunnett (1955) for the media compared, or, where each difference has an error of its own, with "
        "Student's t at 0.95 to the power 1/k for k media (Sidak 1967). Scores of different methods are "
        "never compared."
    )
    yield ""
    yield str(CAUTION)
    yield ""
