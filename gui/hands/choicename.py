"""Choice name: a list that drops down says what it is for, not only what is chosen in it.

In    whichever part of the program has the focus
Out   its name among what a screen reader reads of it
Not   lists with a label of their own (`QLabel.setBuddy`): Qt tells that one

On Linux Qt gives a screen reader what is chosen as the name of such a list, and its own name nowhere.
"""

from PySide6.QtCore import QObject, Slot
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QComboBox, QWidget

__all__ = ["ChoiceNames"]


class ChoiceNames(QObject):
    """One for the whole program."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._came)

    @Slot(QWidget, QWidget)
    def _came(self, _left: QWidget | None, now: QWidget | None) -> None:
        if isinstance(now, QComboBox) and _is_nameless(now):
            now.setAccessibleDescription(_described(now.accessibleName(), now.toolTip(), now.currentText()))


def _described(name: str, hint: str, chosen: str) -> str:
    """The name, and the hint as far as it says more than that and what is chosen."""
    if hint.startswith(name):
        return hint
    return name if hint in ("", chosen) or hint.startswith("<") else f"{name}. {hint}"


def _is_nameless(box: QComboBox) -> bool:
    """Whether it has a name that nobody is told."""
    told = QAccessible.queryAccessibleInterface(box)
    return (
        bool(box.accessibleName())
        and told.text(QAccessible.Text.Name) != box.accessibleName()
        and not told.relations(QAccessible.RelationFlag.Label)
    )
