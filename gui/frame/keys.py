"""Keys: every action of the window with its key, and the part of the window that does it.

In    the table of actions; the parts that do them
Out   a `QAction` for each, by name
Not   the table (`actions.py`), the sheet that shows it (`keysheet.py`)
"""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QCoreApplication, QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

from gui.frame.actions import ACTIONS

__all__ = ["connect_actions", "make_actions"]


def make_actions(window: QWidget) -> dict[str, QAction]:
    """An action for each line of the table, which its key calls from anywhere in the window."""
    made = {}
    for action in ACTIONS:
        words = QCoreApplication.translate("Action", action.words)
        one = QAction(words, window)
        one.setProperty("words", words)
        one.setShortcut(QKeySequence(action.key))
        key = one.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        one.setToolTip(f"{words.removesuffix('...')} ({key})")
        window.addAction(one)
        made[action.name] = one
    return made


def connect_actions(actions: Mapping[str, QAction], parts: Sequence[QObject]) -> None:
    """Let the first part that has a method of its name do each action."""
    for name, action in actions.items():
        part = next(one for one in parts if hasattr(one, name))
        action.triggered.connect(getattr(part, name))
