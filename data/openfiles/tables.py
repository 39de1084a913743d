"""Open tables: how each table of the book stands in an export.

In    what was grown (`growntables.py`) and what was noted of it (`notedtables.py`)
Out   `TABLES`: for each table its file, what a row is, and its columns with heading, kind, unit in words
Not   what a column is (`columns.py`), writing (`export.py`), reading (`travel/imported.py`)

Headings carry the unit ("coverage_pct"); times are local time of the rack (ISO 8601).
"""

from data.openfiles.columns import OpenTable
from data.openfiles.growntables import GROWN
from data.openfiles.notedtables import NOTED

__all__ = ["TABLES"]

TABLES: tuple[OpenTable, ...] = (*GROWN, *NOTED)
