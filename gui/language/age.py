"""Age: how old a tray was on a day, in words; no Qt.

In    whole days since sowing
Out   "day 7"; "before sowing" where the day lies earlier, since nothing is -1 days old
Not   calendar days (`spoken.py`)
"""

from gui.language.words import translate

__all__ = ["age_words"]


def age_words(day: int) -> str:
    """The age of a tray, `day` whole days after it was sown."""
    if day < 0:
        return translate("Age", "before sowing")
    return translate("Age", "day {day}").format(day=day)
