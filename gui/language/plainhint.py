"""Plain hint: what a hint says, safe from being taken for HTML.

In    words that may carry a name which a person has typed
Out   the same for `setToolTip` and the role of hints: Qt guesses whether it is HTML, and would draw a tray
      called "<b>1" in bold
Not   labels: those of a role are plain by `palette.set_role`
"""

from html import escape

from PySide6.QtGui import Qt

__all__ = ["plain_hint"]


def plain_hint(words: str) -> str:
    """As it is, or written so that Qt shows it letter by letter."""
    if not Qt.mightBeRichText(words):
        return words
    lines = escape(words).replace("\n", "<br>")
    return f"<qt>{lines}</qt>"
