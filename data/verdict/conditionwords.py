"""Condition words: the names of growing conditions and what trays had of them.

In    `Compared`: which condition, how many trays had what
Out   `Sentence`s
Not   which conditions are alike (`alike.py`), where they stand in a report (`data/report/conditions.py`)
"""

from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import date
from functools import reduce

from data.sentence import Sentence
from data.trial import YES_NO
from data.verdict.alike import Compared, Value

__all__ = ["CONDITION_WORDS", "alike_words", "all_of", "each_of", "had_words", "level_words", "row_words"]

CONDITION_WORDS: Mapping[str, Sentence] = {
    "sown on": Sentence("sown on"),
    "tray type": Sentence("tray type"),
    "seed lot": Sentence("seed lot"),
    "seed": Sentence("dry seed a tray"),
    "soaked": Sentence("seed soaked"),
    "seating": Sentence("seating"),
    "dark": Sentence("blackout"),
    "stacking": Sentence("stacked"),
    "watering": Sentence("watering"),
    "feed": Sentence("feed"),
    "heat mat": Sentence("heat mat"),
    "light": Sentence("light"),
    "shelf": Sentence("shelf"),
}
NOT_NOTED = Sentence("not noted")
MOST_VALUES = 6  # in a cell of a table; more are counted


def all_of(words: Sequence[str]) -> str:
    """Words one after the other."""
    return reduce(lambda first, one: Sentence("{first}, {next}", first=first, next=one), words)


def each_of(pairs: Sequence[tuple[str, str]]) -> str:
    """Conditions with what was had of them, one after the other."""
    told: Sequence[str] = [
        Sentence("{condition}: {value}", condition=name, value=value) for name, value in pairs
    ]
    return reduce(lambda first, one: Sentence("{first}; {next}", first=first, next=one), told)


def level_words(name: str, level: str) -> str:
    """A setting of a plan so that it can stand alone: "watering: bottom", "without heat mat"."""
    if name in YES_NO or name not in CONDITION_WORDS:
        return level
    return Sentence("{condition}: {value}", condition=CONDITION_WORDS[name], value=level)


def row_words(condition: Sentence, crop: str, *, crops: int) -> Sentence:
    """Name of a row: with the crop where there are several."""
    return condition if crops == 1 else Sentence("{condition}: {crop}", condition=condition, crop=crop)


def had_words(name: str, counter: Counter[Value | None]) -> str:
    """What the trays of one treatment had: alone where all had it, else with the number of trays.

    The most usual first; of very many values the first, and how many others.
    """
    if len(counter) == 1:
        return _value_words(name, next(iter(counter)))
    named = _shown(len(counter))
    had = counter.most_common()
    if named < len(had):
        had.sort(key=lambda one: one[0] is not None)  # a gap is never among the others
    shown = had[:named]
    words = all_of(
        [
            Sentence("{value} ({trays})", value=_value_words(name, value), trays=trays)
            for value, trays in shown
        ]
    )
    others = len(counter) - len(shown)
    if not others:
        return words
    rest = counter.total() - sum(trays for _, trays in shown)
    return Sentence("{values}, {n} others ({trays})", values=words, n=others, trays=rest)


def _shown(values: int) -> int:
    """How many of so many values are named: all, or few enough that others are several."""
    return values if values <= MOST_VALUES + 1 else MOST_VALUES


def alike_words(found: Sequence[Compared]) -> str:
    """What all treatments had of one condition; by crop where that is another one each."""
    told = {one.crop: _of_crop(one) for one in found}
    if len(set(told.values())) == 1:
        return next(iter(told.values()))
    each: Sequence[str] = [Sentence("{crop} {value}", crop=crop, value=words) for crop, words in told.items()]
    return reduce(lambda first, one: Sentence("{first} / {next}", first=first, next=one), each)


def _of_crop(one: Compared) -> str:
    shown = one.values[: _shown(len(one.values))]
    words = all_of([_value_words(one.name, value) for value in shown])
    if len(one.values) == 1:
        return words
    if len(shown) < len(one.values):
        words = Sentence("{values} and {n} others", values=words, n=len(one.values) - len(shown))
    if len(one.counts) == 1:
        return words  # of one medium there is none to be alike with
    return Sentence("{values} (as many trays of each)", values=words)


def _value_words(name: str, value: Value | None) -> str:
    match value:
        case None:
            return NOT_NOTED
        case bool():
            return Sentence("yes") if value else Sentence("no")
        case date():
            return f"{value.day} {value:%B %Y}"
        case str():
            return value
        case _:
            return _amount_words(name, value)


def _amount_words(name: str, value: float) -> str:
    if name == "seed":
        return f"{value:g} g"
    if value == 0:
        return Sentence("no")
    if name == "soaked":
        return f"{value:g} h"
    return Sentence("1 day") if value == 1 else Sentence("{days:g} days", days=value)
