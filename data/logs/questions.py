"""Log questions: what a file does not tell by itself -> questions with their answers ready to be applied.

In    a `LogTable` and the `ReadAs` that was proposed
Out   `Question`s; a sheet with open ones is not kept
Not   reading the rows (`cells.py`)
"""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from statistics import median

from data.logs.cells import number_in
from data.logs.columns import UNITS, ColumnAs, Role
from data.logs.readas import ReadAs
from data.logs.text import LogTable
from data.logs.times import DateOrder, date_of
from data.readings import ReadingKind
from data.sentence import Sentence

__all__ = ["Choice", "Question", "questions_of", "settled_unit"]

SAMPLE = 2000  # rows that are looked at for a unit
WARM = {ReadingKind.AIR_TEMPERATURE, ReadingKind.MEDIUM_TEMPERATURE}
SURELY_C = 39.0  # no rack stands at 39 F, 4 C, and below
SURELY_F = 48.0  # nor at 48 C and above (both common practice)
SURELY_G = 100.0  # a tray on a scale in g; in oz that were 2.8 kg


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One answer; read the file again with `read_as`."""

    text: Sentence
    read_as: ReadAs


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """What must be known before the sheet can be kept. Without choices it is answered by setting a column."""

    text: Sentence
    choices: tuple[Choice, ...] = ()


def questions_of(
    table: LogTable,
    read_as: ReadAs,
    dates: Sequence[tuple[str, str, str]],
    orders: Sequence[DateOrder],
) -> tuple[Question, ...]:
    """All that is open; `orders` in which the `dates` may stand, where none is chosen yet."""
    found = []
    if read_as.column_of(Role.TIME) is None and read_as.column_of(Role.DATE) is None:
        found.append(Question(text=Sentence("Which column holds the date and time?")))
    elif read_as.date_order is None and len(orders) > 1:
        found.append(_order_question(read_as, dates, orders))
    if not any(column.role is Role.READING for column in read_as.columns):
        found.append(Question(text=Sentence("Which column holds the readings, and what was measured?")))
    for number, column in enumerate(read_as.columns):
        if column.role is Role.READING and column.kind is not None and not column.unit:
            found.append(_unit_question(table, read_as, number, column.kind))
    found.extend(_same_questions(read_as))
    if _has_no_place(read_as):
        found.append(Question(text=Sentence("Of which tray or shelf are these readings?")))
    return tuple(found)


def _has_no_place(read_as: ReadAs) -> bool:
    if read_as.tray or read_as.shelf:
        return False
    if read_as.column_of(Role.TRAY) is not None or read_as.column_of(Role.SHELF) is not None:
        return False
    readings = [column for column in read_as.columns if column.role is Role.READING]
    return any(not column.tray and not column.shelf for column in readings)


def _same_questions(read_as: ReadAs) -> Iterator[Question]:
    """Columns that measure the same at the same place."""
    alike: dict[tuple[object, ...], list[int]] = {}
    for number, column in enumerate(read_as.columns):
        if column.role is Role.READING:
            alike.setdefault((column.kind, column.tray, column.shelf), []).append(number)
    for (kind, *_), numbers in alike.items():
        if len(numbers) > 1:
            yield Question(
                text=Sentence(
                    "Columns {columns} are all {kind} of one place: which one is it?",
                    columns=", ".join(str(number + 1) for number in numbers),
                    kind=str(kind),
                ),
                choices=tuple(
                    Choice(
                        text=Sentence("column {number}", number=number + 1),
                        read_as=_without(read_as, set(numbers) - {number}),
                    )
                    for number in numbers
                ),
            )


def _without(read_as: ReadAs, numbers: Collection[int]) -> ReadAs:
    for number in numbers:
        read_as = read_as.with_column(number, ColumnAs())
    return read_as


def _order_question(
    read_as: ReadAs, dates: Sequence[tuple[str, str, str]], orders: Sequence[DateOrder]
) -> Question:
    telling = next(
        (one for one in dates if len({date_of(one, order) for order in orders}) == len(orders)), dates[0]
    )
    written = "/".join(telling)
    return Question(
        text=Sentence("Which day is {written}?", written=written),
        choices=tuple(
            Choice(
                text=Sentence("{day:%d %B %Y}", day=date_of(telling, order)),
                read_as=replace(read_as, date_order=order),
            )
            for order in orders
        ),
    )


def _unit_question(table: LogTable, read_as: ReadAs, number: int, kind: ReadingKind) -> Question:
    middle = _middle(table, read_as.decimal, number)
    return Question(
        text=Sentence(
            "In which unit is column {number}, {kind}? Its middle value is {middle:g}.",
            number=number + 1,
            kind=str(kind),
            middle=0.0 if middle is None else middle,
        ),
        choices=tuple(
            Choice(
                text=Sentence("{unit}", unit=f"°{unit}" if kind in WARM else unit),
                read_as=read_as.with_column(number, replace(read_as.columns[number], unit=unit)),
            )
            for unit in UNITS.get(kind, (kind.unit,))
        ),
    )


def settled_unit(table: LogTable, decimal: str, number: int, column: ColumnAs) -> str:
    """The unit of a column without one, where its numbers leave no doubt; else ""."""
    if column.unit or column.kind is None:
        return column.unit
    if column.kind not in UNITS or len(UNITS[column.kind]) == 1:
        return column.kind.unit
    middle = _middle(table, decimal, number)
    if middle is None:
        return ""
    if column.kind in WARM:
        return "C" if middle < SURELY_C else "F" if middle > SURELY_F else ""
    return "g" if middle >= SURELY_G else ""


def _middle(table: LogTable, decimal: str, number: int) -> float | None:
    cells = (row[number] for _, row in table.rows[:SAMPLE] if number < len(row))
    numbers = [one for cell in cells if (one := number_in(cell, decimal)) is not None]
    return median(numbers) if numbers else None
