"""Estimate: a number with its interval.

In    a value, its standard error, the degrees of freedom of that error
Out   `Estimate`; the quantile of Student's t that makes intervals
Not   where the numbers come from (`curve.py`, `growth.py`, `water.py`)
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Self

__all__ = ["LEVEL", "Estimate", "t_quantile"]

LEVEL = 0.95  # two-sided, of every interval here


@dataclass(frozen=True, slots=True, kw_only=True)
class Estimate:
    """A number and the interval in which it probably lies; both ends are None where that cannot be told."""

    value: float
    low: float | None = None
    high: float | None = None

    @classmethod
    def of(cls, value: float, error: float | None, df: float, level: float = LEVEL) -> Self:
        """Value plus and minus t times its standard error; without interval for no error or df < 1."""
        if error is None or df < 1:
            return cls(value=value)
        reach = t_quantile(df, level) * error
        return cls(value=value, low=value - reach, high=value + reach)

    def turned(self, into: Callable[[float], float]) -> Self:
        """The same number on another scale; `into` never falls, or never rises."""
        if self.low is None or self.high is None:
            return type(self)(value=into(self.value))
        low, high = sorted((into(self.low), into(self.high)))
        return type(self)(value=into(self.value), low=low, high=high)


def t_quantile(df: float, level: float = LEVEL) -> float:
    """Half width of a two-sided interval of Student's t, in standard errors; df >= 1, infinite allowed."""
    from scipy import special

    share = 0.5 + level / 2
    return float(special.ndtri(share) if df == float("inf") else special.stdtrit(df, share))
