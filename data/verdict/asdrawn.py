"""As drawn: which trays got something else than the lot gave to their place, as sentences.

In    the trays of a crop with their treatments; the places that were drawn for their trial
Out   `Sentence`s; nothing where all trays are as they were drawn
Not   where a tray was put since (`data/report/beside.py`), trays that got no treatment (`traywords.py`)

A slip at sowing does little harm, but a medium that is named otherwise once photos were seen takes chance out
of the trial, and no interval knows of it.
"""

from collections.abc import Mapping, Sequence

from data.numbers import TrayId
from data.plan.drawing import Place
from data.records import Tray
from data.sentence import Sentence

__all__ = ["not_as_drawn"]


def not_as_drawn(
    trays: Sequence[Tray], treatments: Mapping[TrayId, str], places: Sequence[Place]
) -> tuple[Sentence, ...]:
    """Trays whose crop or treatment is not what the newest drawing gave to their place.

    Parameters
    ----------
    places : of all drawings, the newest last; what stands on the rack is drawn as it stands.
    """
    codes = {(place.block, place.code): place for place in places}
    tags = {(place.block, place.tag_number): place for place in places}
    told = []
    for tray in trays:
        block = tray.block or ""  # known by its code or, where it was called otherwise since, by its tag
        drawn = codes.get((block, tray.code)) or tags.get((block, tray.tag_number or 0))
        if drawn is not None and (drawn.crop, drawn.treatment) != (tray.crop, treatments[tray.id]):
            told.append(f"{tray.code} ({drawn.crop}, {drawn.treatment})")
    if not told:
        return ()
    return (
        Sentence(
            "Something else was drawn for the place of: {trays}. Sown so by a slip it does little harm; a "
            "medium that was named otherwise once photos were seen makes an answer worthless.",
            trays=", ".join(told),
        ),
    )
