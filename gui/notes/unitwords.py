"""Unit words: how a person reads the unit of a number that was noted, and what the ends of a scale mean.

In    a unit of the book, a kind of reading or event
Out   "°C" for "C", "of 5" for a scale; "from 1 (torn, slipped ...) to 5 (clean)"; what to heed; what follows
Not   turning units into each other (`data/entry/units.py`), words for kinds (`view.py`)
"""

from data.entry.units import BARE, UnitSystem, quantity_of
from data.events import EventKind
from data.readings import ReadingKind
from gui.language.words import translate

__all__ = ["counts_words", "heed_words", "number_words", "scale_words", "unit_words"]


def unit_words(unit: str) -> str:
    """A unit as it stands behind a number."""
    told = {
        "C": "°C",
        "F": "°F",
        "1-5": translate("NoteView", "of 5"),
        "0-1": translate("NoteView", "(1 yes, 0 no)"),
        "d": translate("NoteView", "days"),
    }
    return told.get(unit, unit)


def scale_words(kind: ReadingKind) -> str:
    """Which end of a scale is which, or nothing where the kind is measured in a unit."""
    return {
        ReadingKind.CUT_QUALITY: translate("NoteView", "from 1 (torn, slipped, full of medium) to 5 (clean)"),
        ReadingKind.SLID: translate("NoteView", "1 (the medium slid under the blade) or 0 (it held)"),
        ReadingKind.TASTE: translate("NoteView", "from 1 (off) to 5 (as it should be)"),
        ReadingKind.SWEEPINGS_EYE: translate("NoteView", "from 1 (a wipe) to 5 (a shovel)"),
        ReadingKind.BREAKDOWN_EYE: translate("NoteView", "from 5 (whole) to 1 (gone)"),
    }.get(kind, "")


def heed_words(kind: ReadingKind) -> str:
    """What has to be heeded before it is noted, or nothing."""
    return {
        ReadingKind.TASTE: translate(
            "NoteView", "Never taste where mold is or may be; no flag is no proof that a tray is safe."
        ),
        ReadingKind.SHELF_LIFE: translate(
            "NoteView",
            "Days from the cut until look or smell is no longer good. How long food may be sold is ruled by "
            "local law.",
        ),
    }.get(kind, "")


def counts_words(kind: EventKind) -> str:
    """What follows of noting it, where something does beyond the note."""
    return {
        EventKind.THROWN_AWAY: translate(
            "NoteView", "Was it mold? Name it here: the verdict then counts the tray as lost to mold."
        ),
        EventKind.UNCOVERED: translate("NoteView", "Its blackout in Conditions ends then."),
        EventKind.MOLD_OUT: translate(
            "NoteView",
            "The verdict counts it as mold that you found on this tray, with or without a photo.",
        ),
    }.get(kind, "")


def number_words(kind: ReadingKind, system: UnitSystem) -> str:
    """What is to be typed of a tray; the unit is the one that a number without any is taken in."""
    if scale_words(kind):
        return translate("QuickLine", "Tray and number from 1 to 5")
    quantity = quantity_of(kind.unit)
    unit = kind.unit if quantity is None else BARE[system][quantity]
    return translate("QuickLine", "Tray and number in {unit}").format(unit=unit_words(unit))
