"""Station: where its cards go for a kind of tray, and the check of a photo of it.

In    a `TrayType` of the book; the file of a photo
Out   `StationPlan`, mm; the check with its sentences
Not   the check itself (`vision/stationcheck.py`), the words (`stationwords.py`), a drawing (`gui`)
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from data.conditions import TrayType
from data.kinds import measures
from data.sentence import Sentence
from data.stationwords import station_sentences
from vision.photo import read_photo
from vision.stationcheck import StationCheck, check_photo
from vision.traytype import CARD_INSET_MM, CARD_MARK_MM, CARD_MM, CARD_OUTSET_MM

__all__ = ["Checked", "StationPlan", "check_station", "plan_of_station"]


@dataclass(frozen=True, slots=True, kw_only=True)
class StationPlan:
    """Places of the cards, mm; x to the right, y to the far side, from the middle of the tray."""

    outer_long_mm: float
    outer_short_mm: float
    centres: tuple[tuple[float, float], ...]  # far left, far right, near right, near left
    card_mm: float = CARD_MM
    mark_mm: float = CARD_MARK_MM
    inset_mm: float = CARD_INSET_MM  # middle of a mark, inward from the tray's end
    outset_mm: float = CARD_OUTSET_MM  # and outward from its long side

    @property
    def across_mm(self) -> float:
        """From the middle of a left mark to that of the right one."""
        return self.centres[1][0] - self.centres[0][0]

    @property
    def deep_mm(self) -> float:
        """From the middle of a far mark to that of the near one."""
        return self.centres[0][1] - self.centres[3][1]

    @property
    def diagonal_mm(self) -> float:
        """From corner to corner; both are alike where the station is square."""
        return math.hypot(self.across_mm, self.deep_mm)


@dataclass(frozen=True, slots=True, kw_only=True)
class Checked:
    """What a photo of the station said."""

    photo: str
    check: StationCheck
    sentences: Sequence[Sentence]


def plan_of_station(kind: TrayType) -> StationPlan:
    """Where the cards go for a kind of tray."""
    return StationPlan(
        outer_long_mm=kind.outer_long_mm,
        outer_short_mm=kind.outer_short_mm,
        centres=tuple((float(x), float(y)) for x, y, _ in measures(kind).card_centres()),
    )


def check_station(photo: Path, kind: TrayType) -> Checked:
    """Check the station in a photo; raises `PhotoRefused` where the file is no photo."""
    check = check_photo(read_photo(photo), measures(kind))
    return Checked(photo=photo.name, check=check, sentences=station_sentences(check))
