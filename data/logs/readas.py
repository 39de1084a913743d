"""Read as: how a file of readings is to be understood, as a value that a person can change.

In    nothing
Out   `ReadAs`, as text and back; it is kept beside the readings, for whoever asks later
Not   finding it out (`sheet.py`)
"""

import json
from dataclasses import asdict, dataclass, replace
from typing import Self

from data.logs.columns import ColumnAs, Role
from data.logs.times import DateOrder
from data.readings import ReadingKind

__all__ = ["ReadAs"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadAs:
    """How one file is read. Change it by `dataclasses.replace` or `with_column`, then read the file again."""

    encoding: str  # as Python calls it
    delimiter: str
    decimal: str  # "." or ","
    first_line: int  # of the first row, from 1
    date_order: DateOrder | None  # None: not told by the file, to be asked
    zone: str | None  # of the instrument's clock ("Europe/Berlin", "+01:00"); None: the rack's own
    tray: str | None  # code of the tray of all readings that have no column for it
    shelf: str | None  # or the shelf
    columns: tuple[ColumnAs, ...]

    def with_column(self, number: int, column: ColumnAs) -> Self:
        """The same with another meaning of one column, from 0."""
        return replace(self, columns=(*self.columns[:number], column, *self.columns[number + 1 :]))

    def column_of(self, role: Role) -> int | None:
        """The number of the first column in a role, from 0."""
        return next((at for at, column in enumerate(self.columns) if column.role is role), None)

    @property
    def text(self) -> str:
        """As the book keeps it."""
        return json.dumps(asdict(self), ensure_ascii=False)

    @classmethod
    def from_text(cls, text: str) -> Self:
        """What `text` wrote."""
        values = json.loads(text)
        columns = tuple(
            ColumnAs(
                **{
                    **column,
                    "role": Role(column["role"]),
                    "kind": None if column["kind"] is None else ReadingKind(column["kind"]),
                }
            )
            for column in values["columns"]
        )
        order = values["date_order"]
        return cls(
            **{**values, "columns": columns, "date_order": None if order is None else DateOrder(order)}
        )
