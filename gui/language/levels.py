"""Levels: settings that have a word of ours in the book, as a person reads and types them; no Qt.

In    a factor of a trial, its setting as the book keeps it or as it was typed
Out   the words of the window's language; the setting as the book keeps it
Not   fields (`gui/plan`, `gui/traysheet`), what else a person may type: that stays as it is

A book says "none" and "bottom" in every language, so that trays of one book are alike whoever typed them.
"""

from data.medium.feeds import is_plain
from gui.language.spoken import spoken

__all__ = ["NO_FEED", "edited_level", "kept_level", "shown_level"]

NO_FEED = "none"
WORDS = {
    "feed": (NO_FEED, "weekly"),
    "watering": ("bottom", "top", "both"),
    "seating": ("in the tray", "on an upturned tray"),
    "light": ("as now", "brighter"),
    "heat mat": ("with heat mat", "without heat mat"),
    "stacking": ("stacked", "not stacked"),
}


def shown_level(factor: str, level: str | None) -> str:
    """A setting as it is read; of feeds every way to say that there is none reads alike."""
    if not level:
        return ""
    if factor == "feed" and is_plain(level):
        return spoken(NO_FEED)
    return spoken(level) if level in WORDS[factor] else level


def kept_level(factor: str, text: str) -> str:
    """What was typed, as the book keeps it."""
    typed = text.strip()
    if factor == "feed" and typed and is_plain(typed):
        return NO_FEED
    ours = {spoken(level).casefold(): level for level in WORDS[factor]}
    return ours.get(typed.casefold(), typed)


def edited_level(factor: str, text: str, was: str | None) -> str | None:
    """What stands in a field, as the book keeps it; what nobody has touched stays as it was."""
    return was if text.strip() == shown_level(factor, was).strip() else kept_level(factor, text) or None
