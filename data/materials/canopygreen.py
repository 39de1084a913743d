"""Canopy green: how green the canopies of a trial are on the day that is read, tray by tray.

In    a book, the name of a trial that was planned
Out   numbers of trays, as `sidebyside.py` takes them, under rows of their own
Not   comparing them (`sidebyside.py`), a tray that turns pale (`data/looklist/paling.py`)

A canopy that lacks nutrients is paler than its mates, and no part of the canopy score tells it: that one
counts what has not greened at all. Measured by the dark green colour index (Karcher and Richardson 2003, Crop
Sci. 43, 943-951), where a crop is red and has none by lightness; of closed stands alone, and of photos whose
colours a grey patch set right.
"""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from data.materials.table import Group, Row
from data.records import Tray, TrayId
from data.sentence import Sentence
from data.tables.trialrows import PhotoNumbers

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["GREEN", "LIGHTNESS", "green_numbers"]

CLOSED = 60.0  # % coverage from which colour is that of a stand, as in the look list (common practice)
GREEN = Row(
    "green",
    Group.FEED,
    Sentence("Green of the canopy (dark green index x 100; less is paler)"),
    "points",
    "note",
    1,
)
LIGHTNESS = Row(
    "lightness", Group.FEED, Sentence("Lightness of the canopy (L*; more is paler)"), "points", "note", 1
)


def green_numbers(book: "Book", trial: str) -> Iterator[tuple[str, Tray, float]]:
    """Row, tray and number; nothing where no plan says on which day a crop is read."""
    plans = book.plans(trial)
    trays = book.trial_trays(trial)
    for crop in plans[-1].plan.crops if plans else ():
        mine = {tray.id: tray for tray in trays if tray.crop == crop.name}
        yield from _of_crop(book, trial, crop.read_on_day, mine)


def _of_crop(
    book: "Book", trial: str, day: int, trays: Mapping[TrayId, Tray]
) -> Iterator[tuple[str, Tray, float]]:
    greens = book.canopy_greens(trial, day)
    seen = [one for one in book.photo_numbers(trial, day) if one.tray_id in trays and one.score_id in greens]
    photos = [one for one in _last_of_one_method(seen) if (one.coverage or 0.0) >= CLOSED]
    colours = [(trays[photo.tray_id], greens[photo.score_id]) for photo in photos]
    all_green = all(colour.dark_green is not None for _, colour in colours)
    for tray, colour in colours:
        if all_green and colour.dark_green is not None:
            yield GREEN.key, tray, 100 * colour.dark_green
        elif not all_green and colour.lightness is not None:
            yield LIGHTNESS.key, tray, colour.lightness


def _last_of_one_method(photos: Sequence[PhotoNumbers]) -> Sequence[PhotoNumbers]:
    """One photo a tray, by the version of the method that scored most of them: two are never mixed."""
    if not photos:
        return ()
    method = Counter(one.method for one in photos).most_common(1)[0][0]
    last: dict[TrayId, PhotoNumbers] = {}
    for one in photos:
        if one.method == method and one.replaces(last.get(one.tray_id)):
            last[one.tray_id] = one
    return tuple(last.values())
