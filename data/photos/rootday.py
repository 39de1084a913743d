"""Root day: suspects of a photo, judged again with the day and the medium of their tray.

In    suspects as the vision room found them; the tray that the photo shows; when it was taken
Out   the same, surest first: white counts less on the days of root hairs, more after them
Not   finding suspects (`vision/suspects.py`), what became of them (`chapters/between.py`)

Scoring runs where the book is not known, so the facts come in when a photo is kept, mended or matched, or
when its clock or its tray's sowing is set right. A photo without a tray keeps the judgement that knows
nothing of it.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

from data.records import NewTray, Tray

if TYPE_CHECKING:
    from vision.suspect import Suspect, TrayFacts

__all__ = ["facts_of", "judged_again", "kept_judged_again"]


def judged_again(
    suspects: Iterable["Suspect"], tray: Tray | None, taken_at: datetime
) -> tuple["Suspect", ...]:
    """The suspects with what the book knows of their tray."""
    found, facts = tuple(suspects), facts_of(tray, taken_at)
    if facts is None or not found:
        return found
    from vision.suspect import with_facts

    return with_facts(found, facts)


def facts_of(tray: Tray | NewTray | None, taken_at: datetime) -> "TrayFacts | None":
    """What is known of a tray that was photographed then; None for no tray."""
    if tray is None:
        return None
    from vision.suspect import TrayFacts

    return TrayFacts(days=(taken_at - tray.sown_at) / timedelta(days=1), medium=tray.medium)


def kept_judged_again(
    row: Mapping[str, Any], now: "TrayFacts | None", was: "TrayFacts | None"
) -> dict[str, Any]:
    """Confidence and reason of a kept suspect whose photo is of another tray or day than was thought.

    `now` and `was` are None for a photo without a tray. What the old facts said is taken back first, so that
    nothing counts twice. It stays in the book however faint it is now: what a person may have seen does not
    go without a word.
    """
    from vision.suspect import UNKNOWN_WHITE, Suspect, known_better, unknown_again

    kept = Suspect(
        x_mm=row["x_mm"] or 0.0,
        y_mm=row["y_mm"] or 0.0,
        area_cm2=row["area_cm2"] or 0.0,
        confidence=row["confidence"],
        why=row["why"],
        outline_mm=(),
    )
    if was is not None:
        kept = unknown_again(kept, was)
    if now is not None:
        kept = known_better(replace(kept, white=UNKNOWN_WHITE in kept.why), now)
    return {"confidence": kept.confidence, "why": kept.why}
