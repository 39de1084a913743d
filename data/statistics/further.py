"""Further: how many of each medium would probably settle what a trial could not show.

In    how far the difference seen lies from the margin, the spread seen, the part of the camera
Out   how many of each medium in all, or None where no reasonable number will do
Not   the plan of a new trial (`power.py`, whose chances are used), trays on a shelf (`settling.py`)

Reckoned as if what was seen were true, for a chance of 0.8: a guide, no promise. The trial then is a new one
in its planning: trays added because the answer did not please make the answer less sure.
"""

from data.statistics.power import Design, blocks_needed, set_power, sets_needed

__all__ = ["WANTED", "enough_of_each"]

WANTED = 0.8


def enough_of_each(
    to_margin: float, sd: float, compared: int, camera_sd: float = 0.0, *, free: float | None = None
) -> int | None:
    """How many of each medium, of what repeats in the trial: trays, shelves, or blocks.

    Parameters
    ----------
    to_margin : margin plus difference, better counted upwards; below 0 it would have to be shown worse.
    sd : spread of one of them within a block.
    compared : media held against the trusted one.
    camera_sd : of a difference of two media; no number of trays averages it out.
    free : degrees of freedom that each further one adds, where a difference rests on its own two media alone;
        None where all media share one spread.
    """
    if to_margin == 0 or sd <= 0:
        return None
    distance = abs(to_margin)
    if free is None:
        design = Design(blocks=1, treatments=compared + 1, compared=compared, camera_sd=camera_sd)
        return blocks_needed(design, distance, sd, WANTED)
    return sets_needed(
        lambda sets: set_power(sets, compared + 1, distance, sd, camera_sd=camera_sd, free=free), WANTED
    )
