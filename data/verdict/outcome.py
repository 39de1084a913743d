"""Outcome: what one interval says of a medium against the margin, in one reading.

In    lower and upper limit of new minus trusted, the margin
Out   `Outcome`; with it the reasons why one cannot be had
Not   the interval (`verdict`), the words (`words.py`)

Superiority, non-inferiority and their opposites are read from the one interval that was fixed beforehand
(ICH E9, 1998; Piaggio et al. 2012, JAMA 308, 2594-2604). "No difference was found" is never "as good".
"""

from enum import StrEnum

__all__ = ["CLEARLY", "ErrorFrom", "Outcome", "Why", "outcome_of"]

# the chance under one spread of all media up to which spreads differ clearly: each medium's own trays then
# give the error. A larger one calls published trials unequal (`immer` of R, 0.04)
CLEARLY = 0.01


class Outcome(StrEnum):
    """What is shown."""

    BETTER = "better"
    AS_GOOD = "as_good"  # within the margin
    AS_GOOD_LOWER = "as_good_lower"  # within the margin, yet surely lower
    WORSE = "worse"  # than the margin allows
    NOT_SHOWN = "not_shown"  # the trial cannot tell

    @property
    def is_shown(self) -> bool:
        """Whether the trial tells anything."""
        return self is not Outcome.NOT_SHOWN


class ErrorFrom(StrEnum):
    """Where the error of a difference comes from."""

    ALL_MEDIA = "all media together"  # one common spread
    OWN_TRAYS = "each medium's own trays"  # no blocks, uneven trays, or spreads that differ clearly
    SHELVES = "whole shelves"  # a setting belongs to the shelf


class Why(StrEnum):
    """Why a number or an outcome cannot be had."""

    NO_NUMBERS = "no numbers"
    NO_TRUSTED = "no tray of the trusted medium has a number"
    ONLY_TRUSTED = "no other medium has a number"
    ONE_TRAY_EACH = "one tray of each medium"
    ONE_TRAY = "one tray of this medium, or of the trusted one"
    NO_ERROR = "no tray is left over to tell chance from difference"
    NO_SPREAD = "the numbers have no spread at all"
    APART = "no block holds both"
    ONE_SHELF = "each medium stands on one shelf only"
    IS_TRUSTED = "this is the trusted medium"


def outcome_of(low: float, high: float, margin: float, *, lower_is_better: bool = False) -> Outcome:
    """Read one interval of new minus trusted against the margin (>= 0, the numbers' unit)."""
    if lower_is_better:
        low, high = -high, -low
    if low > 0:
        return Outcome.BETTER
    if low > -margin:
        return Outcome.AS_GOOD_LOWER if high < 0 else Outcome.AS_GOOD
    if high < -margin:
        return Outcome.WORSE
    return Outcome.NOT_SHOWN
