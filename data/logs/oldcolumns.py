"""Old columns: the headings of a table that somebody kept -> what each column holds.

In    headings as people write them
Out   a `Field` for each, None where it is not known; which one is still lacking
Not   reading the lines (`oldnotes.py`)
"""

from collections.abc import Mapping, Sequence
from enum import StrEnum

from data.sentence import Sentence

__all__ = ["DATES", "NEEDED", "Field", "fields_of", "known", "lacking"]


class Field(StrEnum):
    """What a column can hold."""

    CODE = "tray"
    CROP = "crop"
    MEDIUM = "medium"
    SOWN = "sown"
    CUT = "cut"
    TRIAL = "trial"
    BLOCK = "block"
    SHELF = "shelf"
    LOT = "seed lot"
    SEED = "dry seed"
    SOAK = "soak hours"
    FEED = "feed"
    MASS = "fresh mass"
    HEIGHT = "height"
    EYE = "eye score"
    NOTE = "note"


NEEDED = (Field.CROP, Field.MEDIUM, Field.SOWN)
DATES = (Field.SOWN, Field.CUT)
# other words for a column, as people write them
WORDS: Mapping[str, Field] = {
    "tray code": Field.CODE, "code": Field.CODE, "tray no": Field.CODE, "tray number": Field.CODE,
    "variety": Field.CROP, "plant": Field.CROP, "species": Field.CROP, "seed": Field.CROP,
    "media": Field.MEDIUM, "substrate": Field.MEDIUM, "growing medium": Field.MEDIUM, "mat": Field.MEDIUM,
    "sowing date": Field.SOWN, "sown on": Field.SOWN, "sowed": Field.SOWN, "date": Field.SOWN,
    "planted": Field.SOWN, "sowing": Field.SOWN,
    "harvest": Field.CUT, "harvested": Field.CUT, "harvest date": Field.CUT, "cut on": Field.CUT,
    "cut date": Field.CUT,
    "rack": Field.SHELF, "lot": Field.LOT, "seed density": Field.SEED, "sowing rate": Field.SEED,
    "seed weight": Field.SEED, "soak": Field.SOAK, "soaked": Field.SOAK, "nutrient": Field.FEED,
    "fertiliser": Field.FEED, "fertilizer": Field.FEED,
    "yield": Field.MASS, "harvest weight": Field.MASS, "fresh weight": Field.MASS, "weight": Field.MASS,
    "shoot height": Field.HEIGHT, "score": Field.EYE, "quality": Field.EYE, "rating": Field.EYE,
    "notes": Field.NOTE, "remark": Field.NOTE, "remarks": Field.NOTE, "comment": Field.NOTE,
    "comments": Field.NOTE,
}  # fmt: skip


def known(headings: Sequence[str]) -> int:
    """How many columns are known by their headings."""
    return sum(field is not None for field in fields_of(headings))


def fields_of(headings: Sequence[str]) -> tuple[Field | None, ...]:
    """What the headings say; of two columns for one thing the first."""
    found: list[Field | None] = []
    for heading in headings:
        field = _field_of(heading)
        found.append(None if field in found else field)
    return tuple(found)


def lacking(fields: Sequence[Field | None]) -> Sentence | None:
    """What has to be named before a line can be a tray; None where nothing is missing."""
    missing = [field for field in NEEDED if field not in fields]
    if not missing:
        return None
    return Sentence(
        "The first line names no column for {what}. A line is one tray, with at least crop, medium "
        "and the day of sowing.",
        what=str(missing[0]),
    )


def _field_of(heading: str) -> Field | None:
    plain = " ".join(heading.replace("_", " ").split("(")[0].split("[")[0].casefold().split())
    words = plain.split()
    if len(words) > 1 and words[-1] in ("g", "oz", "h", "mm", "cm", "in"):
        plain = " ".join(words[:-1])
    try:
        return Field(plain)
    except ValueError:
        return WORDS.get(plain)
