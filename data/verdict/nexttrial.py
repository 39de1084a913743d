"""Next trial: how many trays of each a trial takes that would probably settle what this one could not show.

In    the verdicts of one trial, every crop and measure
Out   trays of each treatment and crop, or None where nothing is open or no reasonable number would do
Not   how many a difference takes (`statistics/further.py`), the plan itself (`plan/draft.py`)

The next trial is a new one and is read by itself, so it takes the trays there are now and the further ones.
"""

from collections.abc import Sequence

from data.verdict.outcome import Outcome
from data.verdict.verdicts import CropVerdict

__all__ = ["trays_of_next"]


def trays_of_next(found: Sequence[CropVerdict]) -> int | None:
    """Trays of each for the crop that takes most; of the measure that decides, once the trial is over."""
    wanted = [
        line.enough
        for one in found
        if one.decides and not one.verdict.so_far
        for line in one.verdict.compared
        if line.outcome is Outcome.NOT_SHOWN and line.enough is not None
    ]
    return max(wanted, default=None)
