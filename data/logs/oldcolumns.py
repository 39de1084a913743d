"""Old columns: the headings of a table that somebody kept -> what each column holds.

In    headings as people write them
Out   a `Field` for each, None where it is not known; which one is still lacking
Not   reading the lines (`oldnotes.py`)
"""

import re
from collections.abc import Mapping, Sequence
from enum import StrEnum
from functools import cache

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
# other words for a column, as people write them; German ones without umlauts (`_key`)
WORDS: Mapping[Field, str] = {
    Field.CODE: "tray code, code, tray no, tray number, schale, schalennummer, schale nr, kennung",
    Field.CROP: "variety, plant, species, seed, kultur, kulturart, sorte, pflanze, art, saatgut",
    Field.MEDIUM: "media, substrate, growing medium, mat, substrat, anzuchtsubstrat, matte, erde",
    Field.SOWN: (
        "sowing date, sown on, sowed, date, planted, sowing, aussaat, gesaet, gesaet am, ausgesaet, "
        "ausgesaet am, aussaatdatum, aussaattag, saatdatum, saattag, tag der aussaat, datum"
    ),
    Field.CUT: (
        "harvest, harvested, harvest date, cut on, cut date, ernte, geerntet, geerntet am, erntedatum, "
        "tag der ernte, schnitt, geschnitten, geschnitten am, schnittdatum"
    ),
    Field.TRIAL: "versuch",
    Field.SHELF: "rack, etage, regal, regalboden, ebene, fach",
    Field.LOT: "lot, saatgutpartie, saatgutcharge, partie, charge",
    Field.SEED: (
        "seed density, sowing rate, seed weight, trockenes saatgut, saatmenge, saatgutmenge, aussaatmenge, "
        "saatstaerke, aussaatstaerke, saatdichte"
    ),
    Field.SOAK: "soak, soaked, einweichstunden, einweichen, einweichzeit, eingeweicht, quellzeit",
    Field.FEED: "nutrient, fertiliser, fertilizer, duenger, duengung, naehrloesung",
    Field.MASS: (
        "yield, harvest weight, fresh weight, fresh, cut weight, weight, frischmasse, frischgewicht, frisch, "
        "ertrag, erntegewicht, erntemasse, erntemenge, schnittmasse, gewicht"
    ),
    Field.HEIGHT: "shoot height, hoehe, wuchshoehe, sprosshoehe",
    Field.EYE: "score, quality, rating, note nach augenmass, bewertung, punkte, qualitaet",
    Field.NOTE: (
        "notes, remark, remarks, comment, comments, notiz, notizen, bemerkung, bemerkungen, anmerkung, "
        "anmerkungen, kommentar"
    ),
}
UNITS = ("g", "kg", "oz", "h", "std", "mm", "cm", "in")  # behind a name they are no part of it
PLAIN = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


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
        what=missing[0],
    )


def _field_of(heading: str) -> Field | None:
    plain = heading.replace("_", " ")
    words = _key(plain.split("(")[0].split("[")[0]).split()
    while len(words) > 1 and words[-1] in UNITS:
        words.pop()
    field = _fields().get(" ".join(words))
    weighed = {"g", "kg", "oz"} & {*re.split(r"[\s()\[\]]+", plain.casefold())}
    if weighed and field is Field.CUT:
        return Field.MASS  # "harvest (g)" is no day
    return Field.SEED if weighed and field is Field.CROP else field  # "seed (g)" is no crop


@cache
def _fields() -> Mapping[str, Field]:
    """Every word for a column, as it is looked up."""
    others = {word: field for field, words in WORDS.items() for word in words.split(", ")}
    return others | {_key(field): field for field in Field}


def _key(words: str) -> str:
    """The letters alone: in one case, umlauts spelled out, no point behind "Nr."."""
    return " ".join(words.casefold().translate(PLAIN).replace(".", " ").split())
