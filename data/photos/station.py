"""Station: where its cards go for a kind of tray, the check of a photo of it, cards that lie elsewhere.

In    a `TrayType` of the book; the file of a photo
Out   `StationPlan`, mm; the check with its sentences; places of cards as a check has found them
Not   the check itself (`vision/stationcheck.py`), the words (`stationwords.py`), a drawing (`gui`)
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from data.photos.kinds import measures
from data.photos.stationwords import station_sentences
from data.sentence import Sentence
from vision.photo import read_photo
from vision.stationcheck import CardPlace, StationCheck, check_photo
from vision.traytype import CARD_INSET_MM, CARD_MARK_MM, CARD_MM, CARD_OUTSET_MM, TrayType

__all__ = ["Checked", "StationPlan", "as_found", "check_station", "plan_of_station"]


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
    """Where the cards go for a kind of tray, wherever they lie now."""
    drawn = replace(measures(kind), cards_off_mm=())
    return StationPlan(
        outer_long_mm=kind.outer_long_mm,
        outer_short_mm=kind.outer_short_mm,
        centres=tuple((float(x), float(y)) for x, y, _ in drawn.card_centres()),
    )


def check_station(photo: Path, kind: TrayType) -> Checked:
    """Check the station in a photo; raises `PhotoRefused` where the file is no photo."""
    check = check_photo(read_photo(photo), measures(kind))
    return Checked(photo=photo.name, check=check, sentences=station_sentences(check))


def as_found(kind: TrayType, moved: CardPlace) -> tuple[tuple[float, float], ...]:
    """How far each card lies from its drawn place, mm, with one where a check has found it."""
    off = list(kind.cards_off_mm or ((0.0, 0.0),) * 4)
    right, far = off[moved.number]
    off[moved.number] = (right + moved.right_mm, far + moved.far_mm)
    return tuple(off)
