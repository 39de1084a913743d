"""Asking: a dialog of ours is shown until the person leaves it, and then let go.

In    a dialog
Out   whether it was accepted; what stands in the dialog can be read until the caller returns
Not   the system's own dialogs (`choosing.py`), the dialogs themselves

A dialog belongs to what it stands over and would live as long as that: a window left open for weeks would
keep every one that was ever shown, with its pictures, and dress them all anew at each change of the scheme.
"""

from PySide6.QtWidgets import QDialog

__all__ = ["ask", "show_over"]


def ask(dialog: QDialog) -> bool:
    """Show a dialog and wait until it is left; True where it was accepted."""
    accepted = bool(dialog.exec())
    dialog.deleteLater()
    return accepted


def show_over(dialog: QDialog) -> None:
    """Show a dialog that tells what it has to tell by its signals."""
    dialog.finished.connect(dialog.deleteLater)
    dialog.open()
