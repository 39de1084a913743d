"""Asking: a dialog of ours that does not stop what is below it is let go once it is left.

In    a dialog that tells what it has to tell by its signals
Out   the dialog shown
Not   dialogs that are waited for: after `exec` Python owns them, and they go with their last name

Shown by `open` a dialog belongs to what it stands over and would live as long as that, dressed anew at each
change of the scheme.
"""

from PySide6.QtWidgets import QDialog

__all__ = ["show_over"]


def show_over(dialog: QDialog) -> None:
    """Show a dialog until the person leaves it."""
    dialog.finished.connect(dialog.deleteLater)
    dialog.open()
