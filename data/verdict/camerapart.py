"""Camera's part: what of a difference between media may come from the camera, not from the trays.

In    numbers of a trial's trays, their treatments, kinds of the book's media
Out   standard deviation of that part and shift between heights, points of canopy score; treatments that the
      shift may touch
Not   where its size comes from (`camerabias`), the question "what if" (`rechecks.py`)
"""

from collections.abc import Mapping, Sequence

from data.desirability import CanopyScore, ScoreRule
from data.growing.mediumkind import lies_alike
from data.numbers import TrayId
from data.records import Tray
from data.verdict.traynumbers import TrayNumber

__all__ = ["camera_sd", "other_height", "shift_of_heights"]


def camera_sd(numbers: Sequence[TrayNumber], method: str | None, rule: ScoreRule) -> float:
    """Standard deviation between media; 0 for one medium, or where no photo was scored."""
    from data.plan.camerabias import score_sd_between_media

    if method is None or len({number.tray.medium for number in numbers}) < 2:
        return 0.0
    return score_sd_between_media(method, _scores(numbers), rule)


def shift_of_heights(numbers: Sequence[TrayNumber], rule: ScoreRule) -> float:
    """Points by which media at different heights may come out apart in the inner area."""
    from data.plan.camerabias import score_shift_of_heights

    return score_shift_of_heights(_scores(numbers), rule)


def _scores(numbers: Sequence[TrayNumber]) -> list[CanopyScore]:
    return [number.score for number in numbers if number.score is not None]


def other_height(
    trays: Sequence[Tray],
    treatments: Mapping[TrayId, str],
    trusted: str | None,
    kinds: Mapping[str, str],
) -> set[str]:
    """Treatments whose canopy may stand at another height than that of the trusted one.

    Parameters
    ----------
    kinds : kind of each medium by its name, "" where nobody said.
    """
    lies = {treatments[tray.id]: (tray.medium, tray.seating) for tray in trays}
    if trusted not in lies:
        return set()
    own_medium, own_seating = lies[trusted]

    def is_alike(medium: str, seating: str) -> bool:
        alike = medium == own_medium or lies_alike(kinds.get(medium, ""), kinds.get(own_medium, ""))
        return alike and seating == own_seating

    return {name for name, (medium, seating) in lies.items() if not is_alike(medium, seating)}
