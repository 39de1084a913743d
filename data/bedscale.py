"""Bed scale: a share of the growing bed -> the coverage that a grower's limits mean.

In    share of the growing bed as a photo shows it, %
Out   the share of the tray that is seen under canopy from straight above, on the average, %
Not   what is counted (`verdict/countedof.py`), limits and weights (`desirability.py`)

Leaves that lean over the wall hide it and pass for full bed, so shares of the bed lie high and close
together. On 60 drawn photos that we learn from, with at least 30 % seen from above, the share of the bed is
23.2 + 0.79 times it: 30 % shows as 47 %, a full tray as full. Taken as it is, a canopy score would rise just
by counting differently, and a margin would be too wide. On the 47 of them from day 6 on the mean score is
83.7 by the truth, 85.9 by the inner area, 89.3 by the bed as it is, and 87.2 on this scale; five points of
the truth show as 4.3, 3.6 and 4.8. On 72 photos of the demonstration, for judging alone: 87.9, 90.3, 93.2 and
91.9; 5.0, 3.7 and 4.4. What chance adds is stretched alike: nothing is told more surely by it.
"""

__all__ = ["from_above"]

ABOVE, SHOWN = 30.0, 47.0  # %, from above and of the bed; below it both go to nothing together
FULL = 100.0


def from_above(share: float) -> float:
    """What is seen from straight above where the bed shows this share, %."""
    if share < SHOWN:
        return share * ABOVE / SHOWN
    return FULL - (FULL - share) * (FULL - ABOVE) / (FULL - SHOWN)
