"""Actions: what a person can do in the window, as one table.

In    nothing
Out   `PLACES` and `ACTIONS`: name, words, key, icon; buttons, menus and the sheet of keys are made from them
Not   what they do: some part of the window has a method for each name (`keys.py`)
"""

from dataclasses import dataclass

from PySide6.QtCore import QT_TRANSLATE_NOOP

__all__ = ["ACTIONS", "PLACES", "Action", "Place"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """One place of the window; its number stays, whatever else is there."""

    name: str
    words: str
    about: str
    key: str
    icon: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Action:
    """One thing that can be done from everywhere."""

    name: str
    words: str
    key: str
    icon: str = ""
    of_book: bool = False  # only while a book is open


PLACES = (
    Place(
        name="bench",
        words=str(QT_TRANSLATE_NOOP("Place", "Bench")),
        about=str(QT_TRANSLATE_NOOP("Place", "The rack as it stands, and what needs a look")),
        key="Ctrl+1",
        icon="bench",
    ),
    Place(
        name="intake",
        words=str(QT_TRANSLATE_NOOP("Place", "Intake")),
        about=str(QT_TRANSLATE_NOOP("Place", "Bring photos in, and see what became of each")),
        key="Ctrl+2",
        icon="intake",
    ),
    Place(
        name="traysheet",
        words=str(QT_TRANSLATE_NOOP("Place", "Tray sheet")),
        about=str(QT_TRANSLATE_NOOP("Place", "One tray: its picture, its days, its numbers")),
        key="Ctrl+3",
        icon="traysheet",
    ),
    Place(
        name="plan",
        words=str(QT_TRANSLATE_NOOP("Place", "Plan")),
        about=str(QT_TRANSLATE_NOOP("Place", "Plan a fair trial, draw its places, print tags")),
        key="Ctrl+4",
        icon="plan",
    ),
    Place(
        name="verdict",
        words=str(QT_TRANSLATE_NOOP("Place", "Verdict")),
        about=str(QT_TRANSLATE_NOOP("Place", "What the trial says of each medium, and how sure it is")),
        key="Ctrl+5",
        icon="verdict",
    ),
    Place(
        name="materials",
        words=str(QT_TRANSLATE_NOOP("Place", "Materials")),
        about=str(QT_TRANSLATE_NOOP("Place", "Media side by side: water, warmth, climate, cost, work")),
        key="Ctrl+6",
        icon="materials",
    ),
)

ACTIONS = (
    Action(name="undo", words=str(QT_TRANSLATE_NOOP("Action", "Undo")), key="Ctrl+Z", icon="undo"),
    Action(name="redo", words=str(QT_TRANSLATE_NOOP("Action", "Do again")), key="Ctrl+Shift+Z", icon="redo"),
    Action(name="new_book", words=str(QT_TRANSLATE_NOOP("Action", "Start my own book...")), key="Ctrl+N"),
    Action(name="choose_book", words=str(QT_TRANSLATE_NOOP("Action", "Open a book...")), key="Ctrl+O"),
    Action(
        name="open_pack", words=str(QT_TRANSLATE_NOOP("Action", "Open a packed book...")), key="Ctrl+Shift+O"
    ),
    Action(name="open_demo", words=str(QT_TRANSLATE_NOOP("Action", "Open the demonstration")), key="Ctrl+D"),
    Action(
        name="add_trays", words=str(QT_TRANSLATE_NOOP("Action", "Add a tray...")), key="Ctrl+T", of_book=True
    ),
    Action(
        name="print_tags",
        words=str(QT_TRANSLATE_NOOP("Action", "Print tags and station cards...")),
        key="Ctrl+P",
        of_book=True,
    ),
    Action(
        name="tray_types",
        words=str(QT_TRANSLATE_NOOP("Action", "Tray types...")),
        key="Ctrl+K",
        of_book=True,
    ),
    Action(
        name="check_station",
        words=str(QT_TRANSLATE_NOOP("Action", "Check the station...")),
        key="Ctrl+G",
        of_book=True,
    ),
    Action(
        name="write_report", words=str(QT_TRANSLATE_NOOP("Action", "Report...")), key="Ctrl+R", of_book=True
    ),
    Action(
        name="bring_in",
        words=str(QT_TRANSLATE_NOOP("Action", "Bring in photos...")),
        key="Ctrl+I",
        of_book=True,
    ),
    Action(
        name="bring_in_log",
        words=str(QT_TRANSLATE_NOOP("Action", "Bring in a log...")),
        key="Ctrl+L",
        of_book=True,
    ),
    Action(
        name="bring_in_notes",
        words=str(QT_TRANSLATE_NOOP("Action", "Bring in old notes...")),
        key="Ctrl+Shift+L",
        of_book=True,
    ),
    Action(
        name="bring_in_book",
        words=str(QT_TRANSLATE_NOOP("Action", "Bring in another book...")),
        key="Ctrl+Shift+I",
        of_book=True,
    ),
    Action(
        name="export_book",
        words=str(QT_TRANSLATE_NOOP("Action", "Export as open files...")),
        key="Ctrl+Shift+E",
        of_book=True,
    ),
    Action(
        name="pack_book",
        words=str(QT_TRANSLATE_NOOP("Action", "Pack this book...")),
        key="Ctrl+Shift+P",
        of_book=True,
    ),
    Action(
        name="go_back", words=str(QT_TRANSLATE_NOOP("Action", "Back to the place before")), key="Alt+Left"
    ),
    Action(name="larger_text", words=str(QT_TRANSLATE_NOOP("Action", "Larger text")), key="Ctrl++"),
    Action(name="smaller_text", words=str(QT_TRANSLATE_NOOP("Action", "Smaller text")), key="Ctrl+-"),
    Action(name="show_help", words=str(QT_TRANSLATE_NOOP("Action", "Help")), key="F1", icon="help"),
    Action(name="show_keys", words=str(QT_TRANSLATE_NOOP("Action", "Keys")), key="Shift+F1"),
    Action(name="close", words=str(QT_TRANSLATE_NOOP("Action", "Close the window")), key="Ctrl+Q"),
)
