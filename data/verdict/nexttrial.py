"""Next trial: how many trays of each a trial takes that would probably settle what this one could not show.

In    the verdicts of one trial, every crop and measure
Out   trays of each treatment, and for which crop so many; None where nothing is open or no reasonable number
      would do
Not   how many a difference takes (`statistics/further.py`), the plan itself (`plan/draft.py`)

The next trial is a new one and is read by itself, so it takes the trays there are now and the further ones.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from data.verdict.outcome import Outcome
from data.verdict.verdicts import CropVerdict

__all__ = ["NextTrial", "next_trial"]


@dataclass(frozen=True, slots=True)
class NextTrial:
    """What a repetition takes."""

    trays: int  # of each treatment
    crop: str  # that takes so many; others may take fewer


def next_trial(found: Sequence[CropVerdict]) -> NextTrial | None:
    """For the crop that takes most; by the measure that decides, once the trial is over."""
    wanted = [
        NextTrial(line.enough, one.crop)
        for one in found
        if one.decides and not one.verdict.so_far
        for line in one.verdict.compared
        if line.outcome is Outcome.NOT_SHOWN and line.enough is not None
    ]
    return max(wanted, key=lambda each: each.trays, default=None)
