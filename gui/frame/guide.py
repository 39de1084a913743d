"""Guide: the help window, opened at the page of the place the grower is at, and the sheet of keys.

In    the screens; where we are; the window above which they stand
Out   one help window, made when it is first wanted; the sheet of keys
Not   what stands in them (`helpwindow.py`, `keysheet.py`)
"""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QWidget

from gui.frame.screens import Screens

if TYPE_CHECKING:
    from gui.frame.helpwindow import HelpWindow

__all__ = ["Guide"]


class Guide(QObject):
    """What the first entries of the Help menu do."""

    def __init__(self, screens: Screens, place: Callable[[], str], over: QWidget) -> None:
        super().__init__(over)
        self._screens, self._place, self._over = screens, place, over
        self.help: HelpWindow | None = None

    @Slot()
    def show_help(self) -> None:
        """Show the help, opened at the page of the place."""
        from gui.frame.helpwindow import HelpWindow

        if self.help is None:
            self.help = HelpWindow(self._over)
        self.help.show_page(self._place())
        self.help.show()
        self.help.raise_()
        self.help.activateWindow()

    @Slot()
    def show_keys(self) -> None:
        """Show the sheet of keys."""
        from gui.frame.keysheet import KeySheet

        KeySheet(self._screens.values(), self._over).exec()
