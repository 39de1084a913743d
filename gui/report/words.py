"""Report words: tables of a report as rows of text in the person's language, for paper and for mail alike.

In    tables of a verdict, of media, of plain text
Out   `TextTable`
Not   drawing it (`pieces.py`, `html.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass

from data.materials.table import Cell, Row, Table
from data.report.content import Grid, Materials, VerdictGrid
from gui.answer.view import table_rows
from gui.language.spoken import spoken
from gui.language.words import translate
from gui.materials.view import cell_words, difference_short, lines_of, origin_words

__all__ = ["TextTable", "text_tables"]

MOST_MEDIA = 4  # side by side; more stand in a further table below


@dataclass(frozen=True, slots=True, kw_only=True)
class TextTable:
    """A table as text; `wide` are columns of words, `bold_rows` headings of the rows below them."""

    name: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    wide: tuple[int, ...]
    bold_rows: tuple[int, ...] = ()


def text_tables(block: Grid | VerdictGrid | Materials) -> tuple[TextTable, ...]:
    """One table; for many media several, one below the other."""
    match block:
        case VerdictGrid():
            return (_verdict(block),)
        case Materials():
            parts = _in_parts(block.table)
            held = (_held(block.table, media) for media in parts)
            return (
                *(_materials(block.table, media) for media in parts),
                *(table for table in held if table is not None),
            )
        case _:
            head, rows = tuple(map(spoken, block.head)), tuple(tuple(map(spoken, row)) for row in block.rows)
            return (TextTable(name=spoken(block.name), head=head, rows=rows, wide=block.wide),)


def _verdict(block: VerdictGrid) -> TextTable:
    unit = spoken(block.found.scale.unit)
    return TextTable(
        name=translate("Report", "Media against the trusted one"),
        head=(
            translate("Report", "Medium"),
            translate("Report", "Trays"),
            translate("Report", "Mean, {unit}").format(unit=unit),
            translate("Report", "Difference"),
            translate("Report", "Interval"),
            translate("Report", "Answer"),
            translate("Report", "Rank"),
        ),
        rows=tuple(
            (row.medium, row.trays, row.mean, row.difference, row.interval, row.answer, row.rank)
            for row in table_rows(block.found)
        ),
        wide=(0, 5),
    )


def _in_parts(table: Table) -> list[Sequence[str]]:
    """The trusted medium stands in each part."""
    media = table.media
    if len(media) <= MOST_MEDIA:
        return [media]
    first, others, step = media[:1], media[1:], MOST_MEDIA - 1
    return [(*first, *others[at : at + step]) for at in range(0, len(others), step)]


def _held(table: Table, media: Sequence[str]) -> TextTable | None:
    """How far the others lie from the trusted medium, as far as anything tells it."""
    others = [medium for medium in media if medium != table.trusted]
    rows = []
    for row in table.rows:
        told = [_difference(row, table.cell(row.key, medium)) for medium in others]
        if any(told):
            rows.append((spoken(row.words), *told))
    if not rows or table.trusted is None:
        return None
    return TextTable(
        name=translate("Report", "Held against {trusted}").format(trusted=table.trusted),
        head=(translate("Report", "Property"), *others),
        rows=tuple(rows),
        wide=tuple(range(len(others) + 1)),
    )


def _difference(row: Row, cell: Cell) -> str:
    """A difference, its interval, and what it rests on; empty where there is nothing to say."""
    rests_on = "" if cell.beside is None else spoken(cell.beside)
    if cell.difference is None:
        return rests_on
    return "\n".join(part for part in (difference_short(row, cell.difference), rests_on) if part)


def _materials(table: Table, media: Sequence[str]) -> TextTable:
    rows: list[tuple[str, ...]] = []
    bold: list[int] = []
    for line in lines_of(table.rows):
        if line.row is None:
            bold.append(len(rows))
            rows.append((line.heading, *("" for _ in media)))
            continue
        told = [
            (line.row.unit and f"{spoken(line.row.words)}, {spoken(line.row.unit)}") or spoken(line.row.words)
        ]
        for medium in media:
            words = cell_words(line.row, medium, table.cell(line.row.key, medium))
            origin = "" if words.origin is None else origin_words(words.origin)
            parts = ", ".join(part for part in (words.below, origin) if part)
            told.append("\n".join(part for part in (words.value, parts) if part))
        rows.append(tuple(told))
    return TextTable(
        name=translate("Report", "Media as materials"),
        head=(translate("Report", "Property"), *media),
        rows=tuple(rows),
        wide=tuple(range(len(media) + 1)),
        bold_rows=tuple(bold),
    )
