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
    """Trays whose crop or treatment is none that any drawing of the trial gave to their place."""
    told = []
    for tray in trays:
        mine = [place for place in places if _is_of(place, tray)]
        if mine and all((one.crop, one.treatment) != (tray.crop, treatments[tray.id]) for one in mine):
            told.append(f"{tray.code} ({mine[-1].crop}, {mine[-1].treatment})")
    if not told:
        return ()
    return (
        Sentence(
            "Something else was drawn for the place of: {trays}. Sown so by a slip it does little harm; a "
            "medium that was named otherwise once photos were seen makes an answer worthless.",
            trays=", ".join(told),
        ),
    )


def _is_of(place: Place, tray: Tray) -> bool:
    """By its code or, where it was called otherwise since, by its tag."""
    same = place.code == tray.code or (tray.tag_number is not None and place.tag_number == tray.tag_number)
    return place.block == tray.block and same
