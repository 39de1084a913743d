"""Settling: trays of each medium with which a trial of its own would probably settle what this one could not.

In    the trays or shelves of a trial, how far the difference lies from the margin, the part of the camera
Out   trays of each medium in all and their shelves, or None where no reasonable number will do
Not   the chances (`further.py`), the words (`verdict/words.py`)

What repeats is a tray, a shelf, or, where media are compared block by block, a block. Where shelves or blocks
hold unlike many trays, each of the next trial is taken to hold as many as those of the fuller medium do on
average, rounded up: with fewer it would scatter more than was seen.
"""

import math
from dataclasses import dataclass

from data.statistics.further import enough_of_each
from data.statistics.leastsquares import BlockFit
from data.statistics.ownspread import Apart
from data.statistics.quadrature import Floats

__all__ = ["Enough", "Repeats", "enough_of", "repeats_of"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Repeats:
    """What a trial repeats, for two of its media."""

    sd: float  # of one, of one medium
    free: float | None  # degrees of freedom each further one adds; None: one spread of all media
    on_each: float = 1.0  # trays or shelves of a medium in it, of the medium that has more


def repeats_of(fit: BlockFit, values: Floats, medium: int, trusted: int, own: Apart | None) -> Repeats:
    """`own`: the difference from the two media alone, where the answer rests on that."""
    if own is None:
        return Repeats(sd=math.sqrt(float(fit.mse)), free=None)
    design = fit.design
    both = [medium, trusted]
    if len(design.blocks) == 1:
        new, old = (float(values[design.medium_of == one].var(ddof=1)) for one in both)
        return Repeats(sd=math.sqrt((new + old) / 2), free=(new + old) ** 2 / (new**2 + old**2))
    shared = design.counts[(design.counts[:, both] > 0).all(axis=1)][:, both]
    return Repeats(sd=own.se * math.sqrt(len(shared) / 2), free=1.0, on_each=float(shared.mean(axis=0).max()))


@dataclass(frozen=True, slots=True, kw_only=True)
class Enough:
    """What would probably settle it, of each medium."""

    trays: int
    shelves: int  # or trays, where these are what is compared


def enough_of(
    repeats: Repeats, to_margin: float, compared: int, camera_sd: float, on_shelf: float
) -> Enough | None:
    """Trays of each medium in whole shelves and blocks.

    Parameters
    ----------
    to_margin : margin plus difference, better counted upwards.
    on_shelf : trays on a shelf, of the medium with more; 1 where trays are what is compared.
    """
    found = enough_of_each(to_margin, repeats.sd, compared, camera_sd, free=repeats.free)
    if found is None:
        return None
    shelves = found * math.ceil(repeats.on_each)
    return Enough(trays=shelves * math.ceil(on_shelf), shelves=shelves)
