"""Root day: suspects of a photo, judged again with the day and the medium of their tray.

In    suspects as the vision room found them; the tray that the photo shows; when it was taken
Out   the same, surest first: white counts less on the days of root hairs, more after them
Not   finding suspects (`vision/suspects.py`), what became of them (`between.py`)

Scoring runs where the book is not known, so the facts come in when a photo is kept. A photo without a tray
keeps the judgement that knows nothing of it.
"""

from collections.abc import Iterable
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from data.records import Tray

if TYPE_CHECKING:
    from vision.suspects import Suspect

__all__ = ["judged_again"]


def judged_again(
    suspects: Iterable["Suspect"], tray: Tray | None, taken_at: datetime
) -> tuple["Suspect", ...]:
    """The suspects with what the book knows of their tray."""
    found = tuple(suspects)
    if tray is None or not found:
        return found
    from vision.suspects import TrayFacts, with_facts

    days = (taken_at - tray.sown_at) / timedelta(days=1)
    return with_facts(found, TrayFacts(days=days, medium=tray.medium))
