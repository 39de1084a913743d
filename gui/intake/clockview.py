"""Clock view: a doubt about the clock of a camera -> the question that a person is asked; no Qt.

In    a `ClockDoubt`, the true time of the first photo as a person says it
Out   before and after of the first and the last photo, the shift, words
Not   finding doubts (`data/photos/clocks.py`), the band (`clockband.py`)
"""

from dataclasses import dataclass
from datetime import datetime, timedelta

from data.photos.clocks import ClockDoubt
from gui.language.spoken import MOMENT, day_words, filled
from gui.language.words import translate

__all__ = ["ClockQuestion", "shift_words"]

DAY = timedelta(days=1)
HOUR = timedelta(hours=1)
MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockQuestion:
    """What is asked, with the answer as it stands in the field."""

    doubt: ClockDoubt
    shift: timedelta

    @classmethod
    def of(cls, doubt: ClockDoubt) -> "ClockQuestion":
        """With the proposed shift."""
        return cls(doubt=doubt, shift=doubt.shift)

    def with_first(self, moment: datetime) -> "ClockQuestion":
        """The first photo was really taken then; all others move with it."""
        return ClockQuestion(doubt=self.doubt, shift=moment - self.doubt.first)

    @property
    def first(self) -> datetime:
        """When the first photo was really taken."""
        return self.doubt.first + self.shift

    @property
    def latest(self) -> datetime:
        """The first photo cannot have been taken later: another one would be younger than its coming in."""
        return self.doubt.first + self.doubt.most

    @property
    def count(self) -> int:
        """Photos."""
        return len(self.doubt.photo_ids)

    @property
    def before(self) -> tuple[str, str]:
        """What the camera says of the first and the last photo."""
        return day_words(self.doubt.first, MOMENT), day_words(self.doubt.last, MOMENT)

    @property
    def last_after(self) -> str:
        """When the last photo was really taken."""
        return day_words(self.doubt.last + self.shift, MOMENT)

    @property
    def can_mend(self) -> bool:
        """Whether the answer changes anything."""
        return self.shift != timedelta(0)

    @property
    def mend_words(self) -> str:
        """What the main button does."""
        if self.count == 1:
            return translate("ClockBand", "Mend the photo")
        return translate("ClockBand", "Mend {count} photos").format(count=self.count)


def shift_words(shift: timedelta) -> str:
    """How far all photos are moved, as a person says it."""
    later = shift >= timedelta(0)
    days, rest = divmod(abs(shift) + MINUTE / 2, DAY)
    hours, minutes = rest // HOUR, rest % HOUR // MINUTE
    parts = []
    if days:
        words = translate("ClockBand", "1 day") if days == 1 else translate("ClockBand", "{n} days")
        parts.append(words.format(n=days))
    if hours:
        parts.append(translate("ClockBand", "{n} h").format(n=hours))
    if minutes or not parts:
        parts.append(translate("ClockBand", "{n} min").format(n=minutes))
    words = translate("ClockBand", "{time} later than the camera says")
    if not later:
        words = translate("ClockBand", "{time} earlier than the camera says")
    return filled(words, time=" ".join(parts))
