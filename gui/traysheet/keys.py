"""Sheet keys: what can be done on a tray's sheet by keyboard, for the sheet of keys.

In    nothing
Out   `SHEET_KEYS`: keys and what they do, in English, marked for translation
Not   doing it (`screen.py` and its views)
"""

from PySide6.QtCore import QT_TRANSLATE_NOOP

__all__ = ["SHEET_KEYS"]

SHEET_KEYS = (
    ("Left, Right", str(QT_TRANSLATE_NOOP("TraySheet", "The day before, the day after"))),
    ("PgUp, PgDown", str(QT_TRANSLATE_NOOP("TraySheet", "The tray before, the next tray"))),
    ("P, D, M", str(QT_TRANSLATE_NOOP("TraySheet", "Picture, two days, mend the canopy"))),
    ("G, C", str(QT_TRANSLATE_NOOP("TraySheet", "Growth and notes, conditions"))),
    ("N", str(QT_TRANSLATE_NOOP("TraySheet", "Note a reading or what was done"))),
    ("T", str(QT_TRANSLATE_NOOP("TraySheet", "Trays that have ended"))),
    (
        "Space",
        str(QT_TRANSLATE_NOOP("TraySheet", "All layers off and on; between two days: the other one")),
    ),
    ("W", str(QT_TRANSLATE_NOOP("TraySheet", "Two days: where canopy grew and vanished, off and on"))),
    ("1 to 4", str(QT_TRANSLATE_NOOP("TraySheet", "Canopy, gaps, cells, suspects off and on"))),
    ("V", str(QT_TRANSLATE_NOOP("TraySheet", "Top view or photo"))),
    ("+, -, 0", str(QT_TRANSLATE_NOOP("TraySheet", "Look closer, from further away, at all of it"))),
    ("B, E, [, ]", str(QT_TRANSLATE_NOOP("TraySheet", "Mending: brush, eraser, smaller, larger"))),
    (
        "Arrows, Shift, Enter",
        str(QT_TRANSLATE_NOOP("TraySheet", "Mending: move the brush, paint on the way, dab")),
    ),
)
