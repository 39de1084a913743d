"""Spoken: sentences and words of `data` and `vision`, numbers and days, in the language of the window; no Qt.

In    a `Sentence`, a `Reason` or another word; English text that a book has kept; numbers, days
Out   the same as a person reads it in the window; in English only the minus of a number changes
Not   texts of the window itself (`tr`), files and the command line: those stay English

A sentence that was kept as text has lost its template; it is found again among all that the catalogue has.
"""

import json
import re
import sys
from collections.abc import Mapping
from datetime import date, datetime
from enum import Enum
from functools import cache, lru_cache
from pathlib import Path
from string import Formatter
from typing import Any

from data.sentence import Sentence
from gui.language.words import noop, translate

__all__ = [
    "DAY", "DAY_MOMENT", "DAY_MOMENT_SHORT", "DAY_SHORT", "DAY_YEAR", "DAY_YEAR_SHORT", "MOMENT",
    "begun", "day_words", "filled", "in_figures", "is_english", "speak_in", "spoken",
]  # fmt: skip

SENTENCE, KEPT = "Sentence", "Kept"
TEMPLATES = Path(__file__).parents[1] / "translations" / "templates.json"
# how days are written; a language has its own, by Qt's letters
DAY = noop("Date", "d MMMM")
DAY_YEAR = noop("Date", "d MMMM yyyy")
DAY_SHORT = noop("Date", "d MMM")
DAY_YEAR_SHORT = noop("Date", "d MMM yyyy")
MOMENT = noop("Date", "d MMM yyyy, HH:mm")
DAY_MOMENT_SHORT = noop("Date", "d MMM, HH:mm")
DAY_MOMENT = noop("Date", "d MMMM, HH:mm")
LEAST_LETTERS = 8  # of a template by which it is known again; fewer would fit what a person wrote
LEAST_OF_KEPT = 3  # of those that stand in a book for certain
MOST_PARTS = 4096  # sentences remembered
NUMBER = re.compile(r"[-−+]?\d+\.\d+(?: \S+)?")  # perhaps with its unit
POINT = re.compile(r"(?<=\d)\.(?=\d)")
HYPHEN = re.compile(r"(?<![\w.,])-(?=\d)")  # for a minus; not that of "1e-05"
BELOW_ZERO = re.compile(r"-\d+(?:\.\d+)?(?: \S+)?")  # written already, perhaps with its unit
FIELD = re.compile(r"\{(\w+)[^{}]*\}")
WRITTEN_AS_NUMBER = re.compile(r"\{\w+:[^{}%]*[dfg]\}")
FIGURES = r"[-−+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?"
ENGLISH_MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
    "November", "December",
)  # fmt: skip
KEPT_DAY = re.compile(rf"(\d{{1,2}}) ({'|'.join(ENGLISH_MONTHS)})(?: (\d{{4}}))?")
# how Python writes parts of a day, and how Qt does
LETTERS = {"%d": "d", "%B": "MMMM", "%b": "MMM", "%Y": "yyyy", "%H": "HH", "%M": "mm", "%m": "MM"}

_language = "en"


def speak_in(language: str) -> None:
    """The language of the window, from now on ("en", "de"); set before the first sentence is shown."""
    global _language
    _language = language
    _recalled.cache_clear()


def is_english() -> bool:
    """Whether texts are shown as they are written in the source."""
    return _language == "en"


def spoken(text: object) -> str:
    """A sentence or word in the language of the window; what nobody has translated stays as it is."""
    if _language == "en" and not (isinstance(text, Sentence) and HYPHEN.search(text)):
        return with_minus(str(text)) if BELOW_ZERO.fullmatch(str(text)) else str(text)
    if isinstance(text, Sentence):
        return _FILLER.vformat(translate(SENTENCE, text.template), (), text.values)
    if isinstance(text, Enum):
        return translate(type(text).__name__, str(text))
    return "\n".join(_recalled(line) for line in str(text).split("\n"))


def begun(text: str) -> str:
    """The text as a sentence or label begins: the first letter large, the others as they are."""
    return text[:1].upper() + text[1:]


def filled(template: str, **values: Any) -> str:
    """A translated template with its values: numbers and days as the language writes them."""
    return _FILLER.vformat(template, (), values)


def in_figures(value: float | None, form: str = "g") -> str:
    """A number with minus and decimal mark; a dash where there is none; `form` as in `format`."""
    if value is None:
        return "–"
    text = with_minus(format(value, form))
    return text if _language == "en" else POINT.sub(_point(), text)


def with_minus(number: str) -> str:
    """A written number with a minus as long as its plus, where Python writes a hyphen."""
    return HYPHEN.sub("−", number)


def day_words(day: date, form: str = DAY_YEAR) -> str:
    """A day in words; `form` is one of those above."""
    return _dated(day, translate("Date", form))


def _dated(day: date, form: str) -> str:
    """Qt's letters filled in."""
    at = day if isinstance(day, datetime) else datetime(day.year, day.month, day.day)
    values = {
        "yyyy": str(at.year), "MMMM": _month(at.month, "LongFormat"), "MMM": _month(at.month, "ShortFormat"),
        "MM": f"{at.month:02d}", "HH": f"{at.hour:02d}", "mm": f"{at.minute:02d}", "d": str(at.day),
    }  # fmt: skip
    return re.sub("yyyy|MMMM|MMM|MM|HH|mm|d", lambda found: values[found[0]], form)


def _month(month: int, form: str) -> str:
    qt = sys.modules.get("PySide6.QtCore")
    if _language == "en" or qt is None:
        return ENGLISH_MONTHS[month - 1] if form == "LongFormat" else ENGLISH_MONTHS[month - 1][:3]
    return str(qt.QLocale().monthName(month, getattr(qt.QLocale.FormatType, form)))


def _point() -> str:
    qt = sys.modules.get("PySide6.QtCore")
    return "." if qt is None else str(qt.QLocale().decimalPoint())


class _Filler(Formatter):
    """Fills a template in the language of the window."""

    def format_field(self, value: Any, form: str) -> str:
        """One value."""
        if isinstance(value, bool):
            return str(value)
        if _language == "en":
            return _in_english(value, form)
        if isinstance(value, date) and form:
            for python, qt in LETTERS.items():
                form = form.replace(python, qt)
            return _dated(value, form)
        if isinstance(value, (Sentence, Enum)):
            return format(spoken(value), form)
        if isinstance(value, str):
            return format(_recalled(value), form)
        text = with_minus(format(value, form))
        return POINT.sub(_point(), text) if isinstance(value, float) or "." in form else text


_FILLER = _Filler()


def _in_english(value: object, form: str) -> str:
    """A value as the source writes it, but for the minus of a number."""
    text = format(spoken(value) if isinstance(value, Sentence) else value, form)
    return with_minus(text) if not isinstance(value, str) or BELOW_ZERO.fullmatch(text) else text


def _value(text: str) -> str:
    """A value that is text: a number, a day, a word of ours, or what a person has written."""
    if BELOW_ZERO.fullmatch(text):
        text = with_minus(text)
    if NUMBER.fullmatch(text):
        return POINT.sub(_point(), text)
    day = KEPT_DAY.fullmatch(text)
    if day:
        year = int(day[3] or 2000)
        return day_words(
            date(year, ENGLISH_MONTHS.index(day[2]) + 1, int(day[1])), DAY_YEAR if day[3] else DAY
        )
    known = _literal().get(text)
    return text if known is None else translate(known, text)


@lru_cache(maxsize=MOST_PARTS)
def _recalled(text: str) -> str:
    """Text that a book has kept, part by part where it was joined of several."""
    each = [_known_again(part) for part in text.split(", ")]
    if len(each) > 1 and all(part is not None for part in each):
        return ", ".join(part for part in each if part is not None)
    whole = _known_again(text)
    if whole is not None or not text:
        return text if whole is None else whole
    body, end = (text[:-1], ".") if text.endswith(".") else (text, "")
    if "; " not in body:
        said = _known_again(body) if end else None
        return text if said is None else said + end
    return "; ".join(_recalled(part) for part in body.split("; ")) + end


def _known_again(text: str) -> str | None:
    """The text by its template; None where it has none."""
    plain = _value(text)
    if plain != text:
        return plain
    for context, source, mark in _marks():
        found = _pattern(source).fullmatch(text) if mark in text else None
        if found:
            values = {name: _recalled(part) for name, part in found.groupdict().items()}
            plain_fields = FIELD.sub(r"{\1}", translate(context, source))
            return plain_fields.format_map(values)
    return None


@cache
def _templates() -> tuple[tuple[str, str], ...]:
    return tuple((context, source) for context, source in json.loads(TEMPLATES.read_text(encoding="utf-8")))


@cache
def _literal() -> Mapping[str, str]:
    """Words and sentences without fields, by their text."""
    return {source: context for context, source in reversed(_templates()) if not FIELD.search(source)}


@cache
def _marks() -> tuple[tuple[str, str, str], ...]:
    """Templates with their longest words, by which most are ruled out; the one with most letters first."""
    found = []
    for context, source in _templates():
        letters = sum(letter.isalpha() for letter in FIELD.sub("", source))
        least = LEAST_OF_KEPT if context == KEPT else LEAST_LETTERS
        if FIELD.search(source) and letters >= least:
            mark = max(FIELD.split(source)[::2], key=len)
            found.append((letters, context, source, mark))
    found.sort(key=lambda one: -one[0])
    return tuple(one[1:] for one in found)


@cache
def _pattern(source: str) -> re.Pattern[str]:
    """A template as a pattern: numbers are figures; no part reaches beyond a semicolon between sentences."""
    made, at, seen = "", 0, set()
    for field in FIELD.finditer(source):
        made += re.escape(source[at : field.start()])
        kept = FIGURES if WRITTEN_AS_NUMBER.fullmatch(field[0]) else "[^;]+?"
        made += f"(?P={field[1]})" if field[1] in seen else f"(?P<{field[1]}>{kept})"
        seen.add(field[1])
        at = field.end()
    return re.compile(made + re.escape(source[at:]), re.DOTALL)
