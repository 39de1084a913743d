"""Log preview: the first rows of a file, with a choice of its meaning over each column.

In    a `LogSheet`
Out   `column_chosen` (number, `ColumnAs`)
Not   reading the file again (`assistant.py`), the words (`view.py`)
"""

from PySide6.QtWidgets import QComboBox, QWidget

from data.logs.sheet import LogSheet
from gui.controls.columntable import ColumnTable
from gui.logs.view import column_choices, column_words, stored_words
from gui.style.palette import Space

__all__ = ["LogPreview"]


class LogPreview(ColumnTable):
    """The last column says what will be stored."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("First rows of the file, and what each column is"))

    def show_sheet(self, sheet: LogSheet) -> None:
        """Show the first rows as they stand, and as they will be stored."""
        width = len(sheet.headings)
        heads = [
            heading or self.tr("column {n}").format(n=at + 1) for at, heading in enumerate(sheet.headings)
        ]
        rows = [
            [*cells[:width], *[""] * (width - len(cells)), stored_words(sheet, line) or "–"]
            for line, cells in zip(sheet.lines, sheet.cells, strict=True)
        ]
        choices = [self._choice(sheet, at, head) for at, head in enumerate(heads)]
        self.show_rows([*heads, self.tr("Will be stored")], rows, choices)

    def _choice(self, sheet: LogSheet, at: int, head: str) -> QComboBox:
        column = sheet.read_as.columns[at]
        choice = self.choice_over(at, self.tr("What the column {heading} is").format(heading=head))
        choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        choice.setMinimumContentsLength(max(6, len(column_words(column)) - 1))
        for one in column_choices(column):
            choice.addItem(column_words(one), one)
            if one == column:
                choice.setCurrentIndex(choice.count() - 1)
        choice.view().setMinimumWidth(choice.view().sizeHintForColumn(0) + Space.XL)
        return choice
