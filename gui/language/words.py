"""Words: the same translation for presenters that know no Qt as for widgets.

In    a context and a text in English
Out   the text in the person's language where the window runs, else the text itself
Not   the translations (`translations`), words that widgets say by their own `tr`, sentences (`spoken.py`)
"""

import sys

__all__ = ["noop", "translate"]


def translate(context: str, text: str) -> str:
    """A text in the person's language; `context` is the presenter's name."""
    qt = sys.modules.get("PySide6.QtCore")
    return text if qt is None else str(qt.QCoreApplication.translate(context, text))


def noop(_context: str, text: str) -> str:
    """The text itself: it is found for the catalogue here, and translated where it is shown."""
    return text
