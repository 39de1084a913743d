"""Old notes preview: the first lines of a table, with a choice of the meaning over each column.

In    a `NotesLooked`
Out   `column_chosen` (number, name of a `Field` or None)
Not   reading the file again (`assistant.py`), the words (`view.py`)
"""

from PySide6.QtWidgets import QComboBox, QWidget

from data.logs.oldcolumns import Field
from gui.controls.columntable import ColumnTable
from gui.oldnotes.view import NotesLooked, field_words

__all__ = ["OldNotesPreview"]

LINES = 6


class OldNotesPreview(ColumnTable):
    """The lines as they stand."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("First lines of the file, and what each column is"))

    def show_notes(self, looked: NotesLooked) -> None:
        """Show the first lines."""
        table = looked.table
        if table is None:
            return
        heads = [head or self.tr("column {n}").format(n=at + 1) for at, head in enumerate(table.headings)]
        choices = [self._choice(looked.fields[at], at, head) for at, head in enumerate(heads)]
        self.show_rows(heads, [cells for _line, cells in table.rows[:LINES]], choices)

    def _choice(self, field: Field | None, at: int, head: str) -> QComboBox:
        choice = self.choice_over(at, self.tr("What the column {heading} is").format(heading=head))
        for one in (None, *Field):
            choice.addItem(field_words(one), one)
            if one is field:
                choice.setCurrentIndex(choice.count() - 1)
        return choice
