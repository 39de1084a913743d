"""Quick line: what a person types on the Bench -> which trays it is for, and what is to be kept; no Qt.

In    the text of the line, the trays that it can name, those that are chosen, what kind of thing is noted
Out   `QuickEntry`: the trays, the number and how sure it is; or one sentence that says what is missing
Not   keeping it (`quickentry.py`), reading numbers (`data/entry/typed.py`)

"A1 812" is for A1, "12 812" for the tray with tag 12, "812" for the trays that are chosen on the rack: after
each Enter the next one, so that a rack can be weighed with a number pad alone.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from data.entry.units import UnitSystem, quantity_of, say
from data.events import EventKind
from data.numbers import TrayId
from data.readings import AFTER_THE_CUT, ReadingKind
from data.records import Tile
from gui.bench.lately import Lately
from gui.language.spoken import in_figures, spoken
from gui.language.words import translate
from gui.notes.unitwords import unit_words

if TYPE_CHECKING:
    from data.entry.doubt import Doubt

__all__ = ["KINDS", "Kind", "Nameable", "QuickEntry", "figure_words", "quick_entry"]

Kind = ReadingKind | EventKind
# what is noted of trays that have ended, too
AFTER_THE_END: frozenset[Kind] = frozenset(
    {
        ReadingKind.FRESH_MASS, ReadingKind.CUT_QUALITY, ReadingKind.SLID, ReadingKind.SWEEPINGS,
        ReadingKind.LABOUR, EventKind.NOTE, *AFTER_THE_CUT,
    }
)  # fmt: skip
ABOUT = 0.25  # beyond the least and the most of a crop's other trays
# what is noted in the morning, the most usual first
KINDS: tuple[Kind, ...] = (
    ReadingKind.WEIGHT,
    ReadingKind.WATER,
    EventKind.WATERED,
    ReadingKind.MEDIUM_TEMPERATURE,
    ReadingKind.FEED,
    ReadingKind.HEIGHT,
    EventKind.UNCOVERED,
    EventKind.TURNED,
    EventKind.MOLD_OUT,
    ReadingKind.FRESH_MASS,
    ReadingKind.CUT_QUALITY,
    ReadingKind.SLID,
    ReadingKind.SWEEPINGS,
    ReadingKind.LABOUR,
    ReadingKind.SHELF_LIFE,
    ReadingKind.TASTE,
    EventKind.CUT,
    EventKind.THROWN_AWAY,
    EventKind.NOTE,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class QuickEntry:
    """What was typed. `problem` says what is missing, and nothing can be kept then."""

    kind: Kind
    trays: tuple[Tile, ...] = ()
    value: float | None = None  # in the book's unit; None for what was done
    note: str = ""  # of what was done
    doubt: "Doubt | None" = None  # to be asked before it is kept
    odd: str = ""  # what is unusual, to be asked about as well
    problem: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Nameable:
    """The trays that a line can name."""

    tiles: Sequence[Tile] = ()  # that grow
    tags: Mapping[int, TrayId] = field(default_factory=dict)  # number of the tag -> tray
    ended: Sequence[Tile] = ()  # of late

    @property
    def all(self) -> tuple[Tile, ...]:
        """Growing or not."""
        return (*self.tiles, *self.ended)


def _nothing_lately(_tile: Tile, _kind: ReadingKind) -> Lately:
    return Lately()


def quick_entry(
    text: str,
    kind: Kind,
    trays: Nameable,
    chosen: Sequence[Tile] = (),
    system: UnitSystem = UnitSystem.METRIC,
    *,
    lately: Callable[[Tile, ReadingKind], Lately] = _nothing_lately,
) -> QuickEntry:
    """Read a line.

    Parameters
    ----------
    chosen : those that are chosen on the rack; a line without a tray is for them.
    lately : the numbers that one for a single tray is held against.
    """
    words = text.split()
    named, rest, problem = _named_for(kind, words, trays)
    if problem:
        return QuickEntry(kind=kind, problem=problem)
    found = named or tuple(chosen)
    if not found:
        return QuickEntry(kind=kind, problem=_no_tray(words))
    if isinstance(kind, EventKind):
        return _done(kind, found, " ".join(rest))
    if not rest:
        words_of = translate("QuickLine", "Type a number behind the tray, for example {example}.")
        return QuickEntry(kind=kind, trays=found, problem=words_of.format(example=f"{found[0].code} 812"))
    kept = lately(found[0], kind) if len(found) == 1 else Lately()
    return _measured(kind, found, " ".join(rest), system, kept)


def _named_for(
    kind: Kind, words: Sequence[str], trays: Nameable
) -> tuple[tuple[Tile, ...], Sequence[str], str]:
    """Which tray is named, what is typed behind it, and what stands in the way.

    What follows the cut is of a tray that ended of late, be its code on the rack again or not; what is noted
    before and after it is of a growing tray first.
    """
    numbers = isinstance(kind, ReadingKind)
    named, rest = _named(words, trays.tiles, trays.tags, numbers=numbers)
    if kind in AFTER_THE_CUT or (kind in AFTER_THE_END and not named):
        gone, behind = _named(words, trays.ended, {}, numbers=numbers)
        if len(gone) > 1:
            return (), (), _several_ended(words[0], gone)
        named, rest = (gone, behind) if gone else (named, rest)
    return named, rest, _several(words[0], named) if len(named) > 1 else ""


def _measured(
    kind: ReadingKind, trays: tuple[Tile, ...], text: str, system: UnitSystem, lately: Lately
) -> QuickEntry:
    from data.entry.typed import read_typed

    typed = read_typed(text, kind, lately.own, system)
    if typed.value is None and typed.doubt is None:
        return QuickEntry(kind=kind, trays=trays, problem=spoken(typed.reason))
    ordinary = typed.value is not None and _is_like(typed.value, lately.beside)
    odd = "" if typed.doubt or ordinary else _odd(kind, typed.value, trays, lately.own)
    return QuickEntry(kind=kind, trays=trays, value=typed.value, doubt=typed.doubt, odd=odd)


def figure_words(kind: Kind, value: float | None, system: UnitSystem) -> str:
    """A number as it is read back, with its unit; nothing for what was done."""
    if value is None or not isinstance(kind, ReadingKind):
        return ""
    quantity = quantity_of(kind.unit)
    plain = f"{in_figures(value, '.4g')} {unit_words(kind.unit)}"
    return plain if quantity is None else spoken(say(value, quantity, system))


def _is_like(value: float, beside: Sequence[float]) -> bool:
    """Whether a number lies about where a person has kept others."""
    return bool(beside) and min(beside) * (1 - ABOUT) <= value <= max(beside) * (1 + ABOUT)


def _odd(kind: ReadingKind, value: float | None, trays: Sequence[Tile], before: Sequence[float]) -> str:
    """What is unusual about a number where no other unit explains it."""
    if value is None:
        return ""
    from data.growing.croptable import doubt_of_reading

    last = before[-1] if before else None
    return spoken(doubt_of_reading(kind, value, crop=trays[0].crop, last_weight_g=last) or "")


def _named(
    words: Sequence[str], tiles: Sequence[Tile], tags: Mapping[int, TrayId], *, numbers: bool
) -> tuple[tuple[Tile, ...], Sequence[str]]:
    """The tray that the first word names, by code or by tag, and the words behind it; several: ask."""
    if not words:
        return (), ()
    code, tag = words[0].casefold(), None
    if words[0].isdecimal() and (len(words) > 1 or not numbers):  # a number alone is the reading
        tag = tags.get(int(words[0]))
    named = tuple(tile for tile in tiles if tile.code.casefold() == code or tile.tray_id == tag)
    return (named, words[1:]) if named else ((), words)


def _several(word: str, named: Sequence[Tile]) -> str:
    """More than one growing tray answers to that word."""
    if any(tile.code.casefold() != word.casefold() for tile in named):
        words = translate(
            "QuickLine",
            "{word} is the code of one tray and the tag of another: choose the tray on the rack, then type "
            "the number alone.",
        )
        return words.format(word=word)
    words = translate(
        "QuickLine",
        "{count} growing trays are called {word}: choose one on the rack, then type the number alone.",
    )
    return words.format(count=len(named), word=word)


def _several_ended(word: str, named: Sequence[Tile]) -> str:
    """More than one tray that ended of late answers to that word."""
    words = translate(
        "QuickLine",
        "{count} trays called {word} ended of late: note it on the Tray sheet of the one you mean.",
    )
    return words.format(count=len(named), word=word)


def _no_tray(words: Sequence[str]) -> str:
    if len(words) > 1 and not words[0].replace(".", "").replace(",", "").isdecimal():
        return translate("QuickLine", "No growing tray is called {code}.").format(code=words[0])
    return translate("QuickLine", "Type the tray first, for example A1 812, or choose trays on the rack.")


def _done(kind: EventKind, trays: tuple[Tile, ...], note: str) -> QuickEntry:
    if kind is EventKind.THROWN_AWAY and not note:
        why = translate("QuickLine", "Say why behind the tray: it stays in its trial, and the reason counts.")
        return QuickEntry(kind=kind, trays=trays, problem=why)
    if kind is EventKind.NOTE and not note:
        what = translate("QuickLine", "Type the note behind the tray, for example {example}.")
        words = f"{trays[0].code} {translate('QuickLine', 'thin at the door')}"
        return QuickEntry(kind=kind, trays=trays, problem=what.format(example=words))
    return QuickEntry(kind=kind, trays=trays, note=note)
