"""Rows: lines of a list that a finger can hit.

In    a list of words
Out   its rows no lower than whatever else is clicked, off the rounded corners
Not   lists that draw their own rows (`bench/looks.py`, `traysheet/daystrip.py`)
"""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize
from PySide6.QtWidgets import QListView, QStyledItemDelegate, QStyleOptionViewItem

from gui.style.palette import TARGET, Space, set_role

__all__ = ["Row", "give_rows"]


class Row(QStyledItemDelegate):
    """High enough for a finger; words of several lines have the same air around them."""

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        """The words and the air above and below them."""
        size = super().sizeHint(option, index)
        return QSize(size.width(), max(TARGET, size.height() + 2 * Space.XS))


def give_rows(view: QListView) -> None:
    """Let a list have such rows."""
    set_role(view, "rows")
    view.setItemDelegate(Row(view))
