"""Share: of how many of some trays something is true, with its interval.

In    how many, of how many
Out   the share with its 95 % interval
Not   differences of two shares (`materials/table.py` puts two intervals together)

The score interval of Wilson (1927), Probable inference, the law of succession, and statistical inference,
Journal of the American Statistical Association 22, 209-212: it keeps within 0 and 1, and says something of
none in eight, too. Two of them put together make the interval of a difference of Newcombe (1998), Interval
estimation for the difference between independent proportions, Statistics in Medicine 17, 873-890, method 10.
"""

from math import inf, sqrt

from data.statistics.estimate import LEVEL, Estimate, t_quantile

__all__ = ["share_of"]


def share_of(count: int, of: int, level: float = LEVEL) -> Estimate:
    """count / of with Wilson's interval; `of` at least 1."""
    part, z = count / of, t_quantile(inf, level)
    spread = z * sqrt(part * (1 - part) / of + z * z / (4 * of * of))
    middle, scale = part + z * z / (2 * of), 1 + z * z / of
    return Estimate(
        value=part, low=max(0.0, (middle - spread) / scale), high=min(1.0, (middle + spread) / scale)
    )
