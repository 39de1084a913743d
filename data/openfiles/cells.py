"""Open cells: values of the book as cells of open files, and text back from them.

In    values as the book keeps them
Out   cells that every program reads alike and no spreadsheet takes for a formula
Not   the files (`export.py`), reading whole cells again (`travel/imported.py`)

ISO 8601, a dot in decimal numbers, empty where there is nothing; text that a spreadsheet would take for a
formula begins with an apostrophe.
"""

import sys
from array import array
from collections.abc import Iterator

from data.openfiles.columns import Column, Kind
from data.tables.packed import corners_in
from data.tables.rows import NO_CELL

__all__ = ["cell", "cell_shares", "figure", "plain_text", "spreadsheet_safe"]

# OWASP ASVS, 1.2.10; line ends and the wide signs of East Asian keyboards: common practice, from memory
FORMULA_BEGINS = ("=", "+", "-", "@", "\t", "\r", "\n", "\0", "\uff1d", "\uff0b", "\uff0d", "\uff20")


def spreadsheet_safe(text: str) -> str:
    """Text that no spreadsheet takes for a formula; `plain_text` turns it back."""
    return f"'{text}" if text.startswith((*FORMULA_BEGINS, "'")) else text


def plain_text(text: str) -> str:
    """What `spreadsheet_safe` was given."""
    return text[1:] if text.startswith("'") else text


def cell(column: Column, value: object) -> object:
    """A value of a column."""
    if isinstance(value, bytes):  # corners, which the book keeps packed
        value = corners_in(value)
    if value is None:
        return ""
    if column.kind is Kind.YES_NO:
        return "true" if value else "false"
    if column.kind is Kind.TEXT:
        return spreadsheet_safe(str(value))
    return figure(value) if column.kind is Kind.NUMBER else value


def figure(value: object) -> object:
    """A number in all its digits, without a decimal point that says nothing; "" for none."""
    if value is None:
        return ""
    return repr(value).removesuffix(".0") if isinstance(value, float) else value


def cell_shares(blob: bytes) -> Iterator[object]:
    """The 72 shares of a score in %, "" where a cell has none."""
    shares = array("H")
    shares.frombytes(blob)
    if sys.byteorder == "big":
        shares.byteswap()
    return ("" if share == NO_CELL else figure(share / 100) for share in shares)
