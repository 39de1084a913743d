"""Materials: the table of media side by side on everything that a photograph cannot see.

In    `Cell`s by row and medium; the trusted medium; limits
Out   `Table`: rows in groups, differences from the trusted medium, and which media keep the limits
Not   how a cell is found (`cells.py`), reading the book (`reading.py`)

There is no grand total: litres and weeks add up to nothing. A limit that lies within a cell's interval is
neither kept nor missed, and said so. The interval of a difference of two independent numbers is put together
from both of theirs: Zou & Donner (2008), Construction of confidence limits about effect measures, Statistics
in Medicine 27, 1693-1702 (from memory).
"""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from data.sentence import Sentence
from data.statistics.estimate import Estimate

__all__ = [
    "ROWS", "Beside", "Cell", "Group", "Kept", "Origin", "Row", "Standing", "Table", "difference_of",
    "standing_of", "table_of",
]  # fmt: skip


class Origin(StrEnum):
    """Where a number came from."""

    MEASURED = "measured here"
    TYPED = "typed in"
    DEFAULT = "default from literature"
    GUESS = "guess"


class Group(StrEnum):
    """What rows are about."""

    WHAT = "What it is"
    WATER = "Water"
    WARMTH = "Warmth"
    AFTER = "After use"
    CLIMATE = "Climate"
    COST = "Cost and room"
    WORK = "Work and cut"
    FEED = "Feed"


@dataclass(frozen=True, slots=True)
class Row:
    """One property; `action` is what fills a gap: a kind of test, "factor NAME", "note", "feed" or "kind"."""

    key: str
    group: Group
    words: Sentence
    unit: str
    action: str
    decimals: int = 0


ROWS = (
    Row("kind", Group.WHAT, Sentence("Kind of medium"), "", "kind"),
    Row("capacity", Group.WATER, Sentence("Water held"), "g/tray", "wetting"),
    Row("by volume", Group.WATER, Sentence("Water by volume"), "%", "wetting"),
    Row("air", Group.WATER, Sentence("Air when drained"), "%", "factor dry mass"),
    Row("dry after", Group.WATER, Sentence("Dries in"), "h", "wetting"),
    Row("rewetting", Group.WATER, Sentence("Takes up again"), "%", "wetting"),
    Row("heat", Group.WARMTH, Sentence("Heat stored"), "kJ/m²K", "factor thickness", 1),
    Row("cooling", Group.WARMTH, Sentence("Follows the shelf in"), "h", "cooling", 1),
    Row("lift", Group.WARMTH, Sentence("Over a heat mat"), "K", "cooling", 1),
    Row("cold nights", Group.WARMTH, Sentence("Below 18 °C at night"), "K h", "log", 1),
    Row("root warmth", Group.WARMTH, Sentence("In the medium, noted"), "°C", "note", 1),
    Row("half gone", Group.AFTER, Sentence("Half gone"), "weeks", "breakdown"),
    Row("nearly gone", Group.AFTER, Sentence("5 % left"), "weeks", "breakdown"),
    Row("footprint", Group.CLIMATE, Sentence("CO2e a tray"), "kg", "factor peat", 2),
    Row("footprint by kg", Group.CLIMATE, Sentence("CO2e a kg of cut"), "kg/kg", "note", 2),
    Row("price", Group.COST, Sentence("Price"), "a tray", "factor price", 2),
    Row("room before", Group.COST, Sentence("Room before, a week"), "l", "factor stored before"),
    Row("room after", Group.COST, Sentence("Room after, a week"), "l", "factor stored after"),
    Row("mass before", Group.COST, Sentence("To carry in, a week"), "kg", "factor dry mass", 1),
    Row("mass after", Group.COST, Sentence("To carry away, a week"), "kg", "factor wet after", 1),
    Row("set-up", Group.WORK, Sentence("Set-up"), "min", "note", 1),
    Row("care", Group.WORK, Sentence("Watering and care"), "min", "note", 1),
    Row("clean-up", Group.WORK, Sentence("Cleaning, disposal"), "min", "note", 1),
    Row("cut quality", Group.WORK, Sentence("Cut quality"), "1-5", "note", 1),
    Row("slid", Group.WORK, Sentence("Slid at the cut"), "%", "note"),
    Row("cut quality varies", Group.WORK, Sentence("Cut varies by"), "marks", "note", 1),
    Row("shelf life", Group.WORK, Sentence("Keeps after the cut"), "days", "note", 1),
    Row("taste", Group.WORK, Sentence("Taste"), "1-5", "note", 1),
    Row("sweepings", Group.WORK, Sentence("Sweepings"), "g", "note"),
    Row("sweepings by eye", Group.WORK, Sentence("Sweepings by eye"), "1-5", "note", 1),
    Row("feed", Group.FEED, Sentence("Feed"), "", "feed"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Cell:
    """One number of one medium, or a `gap` that says what to do. `notes` tell how it was had."""

    value: float | None = None
    low: float | None = None
    high: float | None = None
    n: int = 0
    of: str = "trays"  # what is counted: trays, tests, nights, inputs
    origin: Origin = Origin.MEASURED
    text: str = ""  # where it is no number
    gap: Sentence | None = None
    notes: tuple[Sentence, ...] = ()
    sources: tuple[str, ...] = ()
    difference: Estimate | None = None  # from the trusted medium
    beside: Sentence | None = None  # what the difference rests on, or why there is none

    @classmethod
    def of_estimate(
        cls,
        one: Estimate,
        n: int,
        of: str = "trays",
        *,
        origin: Origin = Origin.MEASURED,
        notes: tuple[Sentence, ...] = (),
        sources: tuple[str, ...] = (),
    ) -> "Cell":
        """From a number with its interval."""
        return cls(
            value=one.value, low=one.low, high=one.high, n=n, of=of,
            origin=origin, notes=notes, sources=sources,
        )  # fmt: skip

    @classmethod
    def missing(cls, gap: Sentence, *notes: Sentence) -> "Cell":
        """A gap."""
        return cls(gap=gap, notes=notes)


@dataclass(frozen=True, slots=True, kw_only=True)
class Beside:
    """How far trays of a medium and of the trusted one lie apart that grew side by side."""

    difference: Estimate | None  # None: none grew so
    words: Sentence  # what it rests on


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """Media as columns, the trusted one first."""

    media: tuple[str, ...]
    trusted: str | None
    cells: Mapping[tuple[str, str], Cell]  # by row and medium

    def cell(self, row: str, medium: str) -> Cell:
        """One cell."""
        return self.cells[row, medium]

    @property
    def gaps(self) -> int:
        """How many cells are empty."""
        return sum(cell.gap is not None for cell in self.cells.values())

    def known_of(self, media: Collection[str]) -> "Table":
        """These media alone, and of the rows those in which at least one of them has something."""
        shown = tuple(name for name in self.media if name in media)
        known = {row for (row, medium), cell in self.cells.items() if medium in shown and cell.gap is None}
        cells = {
            (row, medium): cell
            for (row, medium), cell in self.cells.items()
            if row in known and medium in shown
        }
        return Table(media=shown, trusted=self.trusted, cells=cells)

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows that it has, in order."""
        known = {row for row, _medium in self.cells}
        return tuple(row for row in ROWS if row.key in known)


def table_of(
    media: Sequence[str],
    trusted: str | None,
    cells: Mapping[tuple[str, str], Cell],
    paired: Mapping[tuple[str, str], Estimate] | None = None,
    beside: Mapping[tuple[str, str], Beside] | None = None,
) -> Table:
    """The table, with differences from the trusted medium.

    Parameters
    ----------
    paired : differences that are known better than from the two numbers.
    beside : those of trays that grew side by side; where there is none, two means tell no difference.
    """
    ordered = sorted(media, key=lambda name: name != trusted)
    drawn, grown = paired or {}, beside or {}

    def held(key: tuple[str, str], cell: Cell) -> Cell:
        if key[1] == trusted:
            return cell
        if key in grown:
            return replace(cell, difference=grown[key].difference, beside=grown[key].words)
        return replace(cell, difference=drawn.get(key, _minus(cell, cells.get((key[0], trusted or "")))))

    filled = {key: held(key, cell) for key, cell in cells.items()}
    return Table(media=tuple(ordered), trusted=trusted, cells=filled)


def _minus(one: Cell, base: Cell | None) -> Estimate | None:
    if base is None or one.value is None or base.value is None:
        return None
    return difference_of(
        Estimate(value=one.value, low=one.low, high=one.high),
        Estimate(value=base.value, low=base.low, high=base.high),
    )


def difference_of(one: Estimate, base: Estimate) -> Estimate:
    """one - base of independent numbers; without interval where one of them has none."""
    value = one.value - base.value
    if one.low is None or one.high is None or base.low is None or base.high is None:
        return Estimate(value=value)
    below = ((one.value - one.low) ** 2 + (base.high - base.value) ** 2) ** 0.5
    above = ((one.high - one.value) ** 2 + (base.value - base.low) ** 2) ** 0.5
    return Estimate(value=value, low=value - below, high=value + above)


# --- limits


class Kept(StrEnum):
    """How a medium stands to a limit."""

    YES = "keeps it"
    NOT_SURE = "cannot be told: the limit lies within the interval"
    NO = "misses it"
    GAP = "not known yet"


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """One medium against all limits."""

    medium: str
    kept: Mapping[str, Kept]  # by row

    @property
    def all_in_all(self) -> Kept:
        """The worst: one miss is a miss."""
        order = (Kept.NO, Kept.GAP, Kept.NOT_SURE)
        return next((one for one in order if one in self.kept.values()), Kept.YES)


def standing_of(
    table: Table, limits: Mapping[str, tuple[float | None, float | None]]
) -> tuple[Standing, ...]:
    """Each medium against the limits, least and most by row."""
    return tuple(
        Standing(
            medium=medium,
            kept={
                row: _kept(table.cell(row, medium), least, most)
                for row, (least, most) in limits.items()
                if (row, medium) in table.cells
            },
        )
        for medium in table.media
    )


def _kept(cell: Cell, least: float | None, most: float | None) -> Kept:
    if cell.value is None:
        return Kept.GAP
    low = cell.value if cell.low is None else cell.low
    high = cell.value if cell.high is None else cell.high
    if (least is not None and high < least) or (most is not None and low > most):
        return Kept.NO
    inside = (least is None or low >= least) and (most is None or high <= most)
    return Kept.YES if inside else Kept.NOT_SURE
