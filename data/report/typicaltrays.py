"""Typical trays: the trays whose pictures stand for a medium, chosen by a rule and not by taste.

In    the numbers of a medium's trays on the day that is read
Out   the tray in the middle, the highest and the lowest, each once
Not   the pictures (`reading.py`)

The typical tray is the one with the median number, of an even count the lower of the two in the middle; ties
go by the tray's code. A medium with two trays has a highest and a lowest one and no typical one.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from data.sentence import Sentence
from data.verdict.traynumbers import TrayNumber

__all__ = ["CHOSEN_BY", "TYPICAL_ALONE", "Chosen", "Stands", "chosen_trays"]

CHOSEN_BY = Sentence(
    "Pictures were chosen by a rule: of each medium the tray with the median score on the day that is read "
    "(typical; of an even count the lower of the two in the middle), the one with the highest and the one "
    "with the lowest."
)
TYPICAL_ALONE = Sentence(
    "Pictures were chosen by a rule: of each medium the tray with the median score on the day that is read, "
    "of an even count the lower of the two in the middle."
)


class Stands(StrEnum):
    """What a tray stands for."""

    TYPICAL = "typical"
    BEST = "highest"
    WORST = "lowest"


@dataclass(frozen=True, slots=True, kw_only=True)
class Chosen:
    """One tray and what it stands for."""

    number: TrayNumber
    stands: Stands


def chosen_trays(numbers: Sequence[TrayNumber], *, lower_is_better: bool = False) -> tuple[Chosen, ...]:
    """Typical, best and worst of the trays that have a number; fewer where there are fewer trays."""
    ordered = sorted(
        (one for one in numbers if one.value is not None), key=lambda one: (one.value, one.tray.code)
    )
    if not ordered:
        return ()
    if lower_is_better:
        ordered.reverse()
    middle, best, worst = ordered[(len(ordered) - 1) // 2], ordered[-1], ordered[0]
    found = [Chosen(number=middle, stands=Stands.TYPICAL)] if len(ordered) != 2 else []
    if best is not middle or len(ordered) == 2:
        found.append(Chosen(number=best, stands=Stands.BEST))
    if worst is not middle or len(ordered) == 2:
        found.append(Chosen(number=worst, stands=Stands.WORST))
    return tuple(found)
