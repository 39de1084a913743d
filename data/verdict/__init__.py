"""Verdict: media against the trusted one, from one number a tray.

In    block, medium and number of each tray; the trusted medium; the margin that was set beforehand
Out   `Verdict`: adjusted means, differences with intervals, an outcome and ranks for each medium
Not   the arithmetic (`comparison.py`), the book (`verdicts.py`), words (`words.py`), other readings
      (`sensitivity.py`)

The tray is the unit. Blocks are fixed and fitted by least squares; limits are difference -+ q * se with the
one-sided 95 % q of Dunnett for the number of media compared, so all lower limits hold together. Ranks come
from Tukey's 95 % intervals of all pairs. Without blocks, and where in blocks spreads differ clearly or one
medium has twice the trays of another, each medium's own trays give the error, and ranks come from Sidak's;
where a medium belongs to whole shelves, shelves do. Imports numpy and scipy only when asked for a verdict.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from data.trial import CONFIDENCE
from data.verdict.outcome import ErrorFrom, Outcome, Why

__all__ = ["CONFIDENCE", "Asked", "Measured", "MediumResult", "Verdict", "verdict_of"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """One tray and its number."""

    block: str
    medium: str
    value: float
    shelf: str | None = None  # where whole shelves may have had one setting
    tray: str = ""  # its code
    suspect: bool = False  # an open suspect lies on it


@dataclass(frozen=True, slots=True, kw_only=True)
class MediumResult:
    """One medium. `difference`, `low` and `high` are new minus trusted in the numbers' own unit and sign."""

    medium: str
    n: int  # trays with a number
    mean: float | None  # least squares: as if it stood in every block alike
    difference: float | None = None
    se: float | None = None  # of the difference, the camera's part in it
    q: float | None = None
    df: float | None = None
    low: float | None = None
    high: float | None = None
    outcome: Outcome | None = None
    rank_low: int | None = None  # 1 is best
    rank_high: int | None = None
    spread: float | None = None  # standard deviation of its own trays within blocks
    enough: int | None = None  # trays of each medium, in a trial of its own, that would probably settle it
    further: int | None = None  # how many more than there are of it or of the trusted one, which has fewer
    shelves: int | None = None  # that hold `enough` trays, where whole shelves are what is compared
    missing: Mapping[str, Why] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """The answer for one crop and one measure."""

    trusted: str
    margin: float
    lower_is_better: bool
    so_far: bool
    df: int | None
    mse: float | None
    q: float | None
    media: tuple[MediumResult, ...]  # the trusted one first
    blocks: int
    trays: int
    error_from: ErrorFrom = ErrorFrom.ALL_MEDIA
    unequal_chance: float | None = (
        None  # of spreads so unequal if they were one; None: too few trays, or no blocks
    )
    camera_sd: float = (
        0.0  # uncertainty of a difference from how the camera sees two media, standard deviation
    )
    missing: Mapping[str, Why] = field(default_factory=dict)

    @property
    def has_trusted(self) -> bool:
        """Whether the trusted medium has a number."""
        return any(line.medium == self.trusted and line.mean is not None for line in self.media)

    @property
    def told_margin(self) -> float | None:
        """The margin; None where it is a share of the trusted medium's mean, which has none."""
        return self.margin if self.margin or self.has_trusted else None

    def medium(self, name: str) -> MediumResult:
        """One medium's line; raises `KeyError`."""
        for line in self.media:
            if line.medium == name:
                return line
        raise KeyError(name)

    @property
    def compared(self) -> tuple[MediumResult, ...]:
        """All but the trusted one."""
        return tuple(line for line in self.media if line.medium != self.trusted)


@dataclass(frozen=True, slots=True)
class Asked:
    """The questions of `verdict_of`."""

    trusted: str
    margin: float
    lower_is_better: bool
    so_far: bool
    camera_sd: float
    by_shelf: bool
    own_trays: bool
    quick: bool


def verdict_of(
    table: Sequence[Measured],
    trusted: str,
    margin: float,
    *,
    lower_is_better: bool = False,
    so_far: bool = False,
    camera_sd: float = 0.0,
    by_shelf: bool = False,
    own_trays: bool = False,
    quick: bool = False,
) -> Verdict:
    """Compare each medium with the trusted one.

    Parameters
    ----------
    table : trays that have a number; a missing tray has no row.
    margin : >= 0, in the numbers' unit.
    so_far : planned trays are still to come: then nothing is shown, whatever the interval says.
    camera_sd : sd, in the numbers' unit, by which a difference may be off for all trays alike.
    by_shelf : settings of whole shelves are among what is compared; each block is a set of shelves.
    own_trays : take the error from each medium's own trays, whether spreads differ clearly or not.
    quick : for asking again and again: no further trays, no test of spreads, q by the mean correlation.
    """
    if not table:
        return Verdict(
            trusted=trusted,
            margin=margin,
            lower_is_better=lower_is_better,
            so_far=so_far,
            df=None,
            mse=None,
            q=None,
            media=(),
            blocks=0,
            trays=0,
            missing=dict.fromkeys(("df", "mse", "q", "media"), Why.NO_NUMBERS),
        )
    from data.verdict.comparison import compared

    asked = Asked(trusted, margin, lower_is_better, so_far, camera_sd, by_shelf, own_trays, quick)
    return compared(table, asked)
