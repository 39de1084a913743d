"""Telling: a sentence that appears by itself is heard, too, by whoever reads the screen by ear.

In    the words; the label in which they stand, or the widget that they are about
Out   the label filled; an announcement to the screen reader, where one listens
Not   names and descriptions of what can have the focus: a screen reader reads those by itself

WCAG 2.2 (W3C Recommendation 2023), success criterion 4.1.3: what is told as a status is heard without taking
the focus.
"""

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QLabel, QWidget

from gui.style.palette import set_role

__all__ = ["announce", "tell"]

POLITENESS = QAccessible.AnnouncementPoliteness


def announce(about: QWidget, words: str, *, urgent: bool = False) -> None:
    """Have this heard; urgent: before whatever is being read."""
    if not words:
        return
    event = QAccessibleAnnouncementEvent(about.window(), words)
    event.setPoliteness(POLITENESS.Assertive if urgent else POLITENESS.Polite)
    QAccessible.updateAccessibility(event)


def tell(label: QLabel, words: str, role: str = "alarm") -> None:
    """Show a sentence in its label and have it heard.

    What stands in the way is said each time; all else not again, as it may follow each letter that is typed.
    """
    is_new = words != label.text()
    set_role(label, role)
    label.setText(words)
    if is_new or role == "alarm":
        announce(label, words, urgent=role == "alarm")
