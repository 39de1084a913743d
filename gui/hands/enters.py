"""Enters: Enter presses the button that has the focus, as Space does.

In    keys pressed in the window
Out   Enter on a button is a press of that button, and of nothing around it
Not   plain buttons of dialogs, and menus, where Qt does it; Enter in fields, lists and pictures, which have a
      meaning of their own

Outside of dialogs Qt hands Enter on a button to whatever lies around it: nothing happened, or what the page
does on Enter, though the focus stood on Leave. In dialogs it does so with tool buttons: Enter on a fold kept
the file whose bad lines it was to show.
"""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QDialog, QPushButton, QToolButton, QWidget
from shiboken6 import isValid

from gui.hands.eachwindow import EachWindow

__all__ = ["Enters"]

ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
NONE = Qt.KeyboardModifier.NoModifier
PLAIN = (NONE, Qt.KeyboardModifier.KeypadModifier)


class Enters(EachWindow):
    """One for the whole program."""

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Turn Enter on a button into Space; held down it presses once."""
        if event.type() != QEvent.Type.KeyPress or not isinstance(event, QKeyEvent):
            return False
        if event.key() not in ENTERS or event.modifiers() not in PLAIN:
            return False
        if QApplication.activePopupWidget() is not None:  # it chooses in a menu; the focus need not be there
            return False
        button = QApplication.focusWidget()
        if button is None or not _hands_on(button):
            return False
        for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease) if not event.isAutoRepeat() else ():
            if isValid(button):  # a menu that the press opened has been answered meanwhile
                QApplication.sendEvent(button, QKeyEvent(kind, Qt.Key.Key_Space, NONE, " "))
        return True


def _hands_on(part: QWidget) -> bool:
    """Whether Enter on it goes to what lies around it."""
    if isinstance(part, QToolButton):
        return True
    return isinstance(part, QPushButton) and not isinstance(part.window(), QDialog)
