"""History: patches of one day and of a later one -> which is which, and what became of it.

In    patches with place in mm and area in cm2, of an earlier and of a later photo of one tray
Out   `Course` of each: the later patches, the earlier ones that they were, areas and growth
Not   laying two photos on each other (`alignment.py`), what a patch is (`suspects.py`, the grower)

Patches are the same where they lie near each other for their size. Two that flow together, or one that leaves
part in two, are one: areas are added up, else every such photo would tell of growth.
"""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Generic, Protocol, TypeVar

__all__ = ["Became", "Course", "Placed", "courses", "same_place"]

REACH_MM = 20.0  # nearer than that two patches may be one, seen twice; leaves hide now this part, now that
GROWN = 1.2  # times the earlier area: more than the error of an outline
LEAST_GROWN_CM2 = 0.3  # more: a small patch is 1.2 times larger by a few pixels


class Placed(Protocol):
    """A patch; place and area are None where the photo had no scale."""

    @property
    def x_mm(self) -> float | None:
        """From the left of the top view."""

    @property
    def y_mm(self) -> float | None:
        """From its far side."""

    @property
    def area_cm2(self) -> float | None:
        """What is seen of it."""


class Became(StrEnum):
    """What became of a patch from one photo to the next."""

    NEW = "new"
    LARGER = "larger"
    EQUAL = "as large"
    SMALLER = "smaller"
    GONE = "gone"


Patch = TypeVar("Patch", bound=Placed)


@dataclass(frozen=True, slots=True, kw_only=True)
class Course(Generic[Patch]):
    """One patch on both photos, or on one of them."""

    earlier: tuple[Patch, ...]
    later: tuple[Patch, ...]

    @property
    def earlier_cm2(self) -> float:
        """Area on the earlier photo, 0 where it was not there."""
        return math.fsum(map(_area, self.earlier))

    @property
    def later_cm2(self) -> float:
        """Area on the later photo, 0 where it is gone."""
        return math.fsum(map(_area, self.later))

    @property
    def growth(self) -> float | None:
        """Later area over earlier area; None where it is new or gone."""
        if not self.earlier or not self.later or self.earlier_cm2 <= 0:
            return None
        return self.later_cm2 / self.earlier_cm2

    @property
    def became(self) -> Became:
        """What became of it; equal within the error of an outline."""
        if not self.earlier:
            return Became.NEW
        if not self.later:
            return Became.GONE
        if _outgrows(self.later_cm2, self.earlier_cm2):
            return Became.LARGER
        return Became.SMALLER if _outgrows(self.earlier_cm2, self.later_cm2) else Became.EQUAL


def courses(
    earlier: Sequence[Patch], later: Sequence[Patch], same: Callable[[Patch, Patch], bool] | None = None
) -> tuple[Course[Patch], ...]:
    """Each patch once: those of the later photo in their order, then those that are gone.

    `same` tells whether two patches are one; by default those near each other are.
    """
    same = same or same_place
    groups: list[tuple[list[Patch], list[Patch]]] = []
    for patch in later:
        before = [old for old in earlier if same(old, patch)]
        joined = [group for group in groups if any(old is one for old in before for one in group[0])]
        groups = [group for group in groups if not any(group is one for one in joined)]
        olds = [one for group in joined for one in group[0]]
        olds += [old for old in before if not any(old is one for one in olds)]
        groups.append((olds, [one for group in joined for one in group[1]] + [patch]))
    known = [old for group in groups for old in group[0]]
    gone = [old for old in earlier if not any(old is one for one in known)]
    found = [Course(earlier=tuple(olds), later=tuple(news)) for olds, news in groups]
    return (*found, *(Course(earlier=(old,), later=()) for old in gone))


def same_place(one: Placed, other: Placed) -> bool:
    """Whether two patches may be one: nearer than 20 mm, or nearer than the larger one is half wide."""
    if one.x_mm is None or one.y_mm is None or other.x_mm is None or other.y_mm is None:
        return False
    half_wide = math.sqrt(100 * max(_area(one), _area(other)) / math.pi)
    return math.hypot(one.x_mm - other.x_mm, one.y_mm - other.y_mm) <= max(REACH_MM, half_wide)


def _outgrows(area: float, other: float) -> bool:
    return area >= GROWN * other and area - other >= LEAST_GROWN_CM2


def _area(patch: Placed) -> float:
    return patch.area_cm2 or 0.0
