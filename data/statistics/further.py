"""Further: how many more trays would probably settle what a trial could not show.

In    how far the difference seen lies from the margin, the spread seen, the part of the camera, the trays
Out   further trays of each medium, or None where no reasonable number will do
Not   the plan of a new trial (`power.py`, whose chances are used)

Reckoned as if what was seen were true, for a chance of 0.8: a guide, no promise. The trial then is a new one
in its planning: trays added because the answer did not please make the answer less sure.
"""

from data.statistics.power import Design, blocks_needed, set_power, sets_needed

__all__ = ["WANTED", "further_trays"]

WANTED = 0.8


def further_trays(
    to_margin: float,
    sd: float,
    compared: int,
    trays: int,
    camera_sd: float = 0.0,
    *,
    by_block: bool = False,
) -> int | None:
    """Trays of each medium beyond the `trays` there are; at least 1.

    Parameters
    ----------
    to_margin : margin plus difference, better counted upwards; below 0 it would have to be shown worse.
    sd : spread of trays of one medium within a block.
    compared : media held against the trusted one.
    camera_sd : of a difference of two media; no number of trays averages it out.
    by_block : each difference rests on its own blocks alone, not on one spread of all.
    """
    if to_margin == 0 or sd <= 0:
        return None
    distance = abs(to_margin)
    if by_block:
        blocks = sets_needed(
            lambda sets: set_power(sets, compared + 1, distance, sd, camera_sd=camera_sd), WANTED
        )
    else:
        design = Design(blocks=1, treatments=compared + 1, compared=compared, camera_sd=camera_sd)
        blocks = blocks_needed(design, distance, sd, WANTED)
    return None if blocks is None else max(1, blocks - trays)
