"""Change: two scored top views of one tray -> what appeared, what vanished, what became of each suspect.

In    two `Moment`s: labels at 2 px/mm, suspects, method; how they lie on each other (`alignment.py`)
Out   `Change`: shares of the inner area and of each cell, points of coverage, histories in words
Not   what needs a look (the book's look list), a finding: a history is a reason to look, or to look later

All is told from labels, so other light or exposure is no change. A leaf that moved a little has neither
vanished nor appeared: canopy within 3 mm counts as the same, and single specks as none.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

import cv2
import numpy as np

from vision.alignment import Affine, Alignment, moved
from vision.history import Became, Course, courses
from vision.reason import Reason
from vision.suspects import Suspect
from vision.tissue import Labels, Mask, canopy
from vision.topview import PX_PER_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["Area", "Cells", "Change", "Moment", "SuspectHistory", "measure_change"]

Cells = tuple[tuple[float | None, ...], ...]

ROWS, COLUMNS = 6, 12
NEAR_MM = 3.0  # leaves nod and turn by so much in a day: of growing canopy at most 0.3 % then seems lost
SPECK_MM = 3.0  # narrower changes are borders of leaves
LEAST_AREA_CM2 = 1.0  # of a patch that is told of alone
LEAST_CANOPY = 2.0  # %: a share of less than that says nothing
COVERED = 0.5  # of a suspect's outline, under leaves
PARTLY = 0.15


@dataclass(frozen=True, slots=True, kw_only=True)
class Moment:
    """One tray as it was scored from one photo."""

    labels: Labels
    """uint8 (508, 1016)."""
    suspects: tuple[Suspect, ...] = ()
    method: str = ""
    """Labels of two methods are never compared."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SuspectHistory:
    """One suspect, or several that are one patch, on both photos; places are those of the later photo."""

    became: Became
    x_mm: float
    y_mm: float
    earlier_cm2: float
    later_cm2: float
    growth: float | None
    """Later area over earlier; None where it is new or gone."""
    covered: float
    """0-1: share of the earlier outline that leaves cover on the later photo; 0 for a new one."""
    note: str
    """What became of it and what that means, in words."""
    earlier: tuple[int, ...] = ()
    """Which of the earlier photo's suspects it was, by their place in that moment; empty for a new one."""
    later: tuple[int, ...] = ()
    """Which of the later photo's suspects it is; empty for one that is gone."""

    @property
    def under_leaves(self) -> bool:
        """Whether it is gone from sight because leaves have grown over it: then nothing is known of it."""
        return self.became is Became.GONE and self.covered >= COVERED


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """One patch of canopy that appeared or vanished, on the later photo."""

    x_mm: float
    y_mm: float
    area_cm2: float
    outline_mm: tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What changed from the earlier to the later photo. None is explained in `reasons` by name."""

    alignment: Alignment
    coverage: float | None
    """Later less earlier coverage, points."""
    appeared: float | None
    """Canopy where there was none, % of the inner area that both photos show."""
    vanished: float | None
    """Canopy that is no more, % of the same."""
    lost: float | None
    """Share of the earlier canopy that is gone, %: damping off or wilt, where it is much."""
    appeared_cells: Cells | None
    """6 x 12, far side first, % of each cell of the later photo; None for a cell that is not seen twice."""
    vanished_cells: Cells | None
    suspects: tuple[SuspectHistory, ...]
    """Those of the later photo, in its order, then those that are gone."""
    appeared_areas: tuple[Area, ...] = ()
    """Of 1 cm2 and more, the largest first; empty where no canopy could be laid on the other."""
    vanished_areas: tuple[Area, ...] = ()
    reasons: Mapping[str, Reason] = field(default_factory=dict)


def measure_change(earlier: Moment, later: Moment, alignment: Alignment) -> Change:
    """What changed between two photos of one tray.

    Where the photos cannot be laid on each other, coverage and suspects are still compared, rim on rim.

    Raises
    ------
    ValueError
        If labels are not those of a top view, 508 x 1016.
    """
    for moment in (earlier, later):
        if moment.labels.shape != (TOP_HEIGHT, TOP_WIDTH):
            raise ValueError(f"labels are {TOP_HEIGHT} x {TOP_WIDTH}, not {moment.labels.shape}")
    was, now = canopy(earlier.labels), canopy(later.labels)
    histories = _histories(earlier, later, now, alignment)
    if earlier.method != later.method:
        return _untold(alignment, None, histories, Reason.OTHER_METHODS)
    coverage = 100 * float(now.mean() - was.mean())
    if not alignment.is_sure:
        return _untold(alignment, coverage, histories, alignment.reason or Reason.NOTHING_STAYED)
    return _told(_Laid.on_later(was, now, alignment.placed), alignment, coverage, histories)


# --- canopy


@dataclass(frozen=True, slots=True, kw_only=True)
class _Laid:
    """Both canopies where the later photo has them."""

    was: Mask
    appeared: Mask
    vanished: Mask
    seen: Mask
    """Part of the later top view that the earlier one shows too."""

    @classmethod
    def on_later(cls, was: Mask, now: Mask, matrix: Affine) -> "_Laid":
        laid = _laid(was, matrix)
        seen = _laid(np.ones_like(was), matrix)
        return cls(
            was=laid & seen,
            appeared=_more(now, laid) & seen,
            vanished=_more(laid, now) & seen,
            seen=seen,
        )


def _told(
    laid: _Laid, alignment: Alignment, coverage: float, histories: tuple[SuspectHistory, ...]
) -> Change:
    seen = max(1, int(laid.seen.sum()))
    enough = 100 * float(laid.was.sum()) / seen >= LEAST_CANOPY
    return Change(
        alignment=alignment,
        coverage=coverage,
        appeared=100 * float(laid.appeared.sum()) / seen,
        vanished=100 * float(laid.vanished.sum()) / seen,
        lost=100 * float(laid.vanished.sum()) / float(laid.was.sum()) if enough else None,
        appeared_cells=_cells(laid.appeared, laid.seen),
        vanished_cells=_cells(laid.vanished, laid.seen),
        suspects=histories,
        appeared_areas=_areas(laid.appeared),
        vanished_areas=_areas(laid.vanished),
        reasons={} if enough else {"lost": Reason.NO_CANOPY},
    )


def _untold(
    alignment: Alignment, coverage: float | None, histories: tuple[SuspectHistory, ...], reason: Reason
) -> Change:
    """No canopy laid on canopy; the reason for each number that is missing."""
    missing = ["appeared", "vanished", "lost", "appeared_cells", "vanished_cells"]
    return Change(
        alignment=alignment,
        coverage=coverage,
        appeared=None,
        vanished=None,
        lost=None,
        appeared_cells=None,
        vanished_cells=None,
        suspects=histories,
        reasons=dict.fromkeys(missing if coverage is not None else ["coverage", *missing], reason),
    )


def _laid(mask: Mask, matrix: Affine) -> Mask:
    """An earlier mask where the later photo has it; False where that looks beyond the earlier one."""
    (a, b, c), (d, e, f) = matrix
    shift = 0.5  # edge coordinates -> OpenCV's, which count from pixel centres
    x, y = c * PX_PER_MM + shift * (a + b - 1), f * PX_PER_MM + shift * (d + e - 1)
    place = np.array([[a, b, x], [d, e, y]])
    size = (TOP_WIDTH, TOP_HEIGHT)
    return np.asarray(
        cv2.warpAffine(mask.astype(np.uint8), place, size, flags=cv2.INTER_NEAREST) > 0, np.bool_
    )


def _more(these: Mask, others: Mask) -> Mask:
    """What is in these and nowhere near the others; each such patch then to its own border."""
    apart = _without_specks(these & ~_grown(others))
    return np.asarray(_grown(apart) & these & ~others, np.bool_)


def _grown(mask: Mask) -> Mask:
    return np.asarray(cv2.dilate(mask.astype(np.uint8), _disc(2 * NEAR_MM)) > 0, np.bool_)


def _without_specks(mask: Mask) -> Mask:
    kept = cv2.morphologyEx(mask.astype(np.uint8), cv2.MORPH_OPEN, _disc(SPECK_MM))
    return np.asarray(kept > 0, np.bool_)


def _disc(width_mm: float) -> Labels:
    side = round(width_mm * PX_PER_MM) | 1
    return np.asarray(cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (side, side)), np.uint8)


def _cells(mask: Mask, seen: Mask) -> Cells:
    def share(row: int, column: int) -> float | None:
        rows = slice(row * TOP_HEIGHT // ROWS, (row + 1) * TOP_HEIGHT // ROWS)
        columns = slice(column * TOP_WIDTH // COLUMNS, (column + 1) * TOP_WIDTH // COLUMNS)
        area = int(seen[rows, columns].sum())
        return 100 * float(mask[rows, columns].sum()) / area if area else None

    return tuple(tuple(share(row, column) for column in range(COLUMNS)) for row in range(ROWS))


def _areas(mask: Mask) -> tuple[Area, ...]:
    """Connected pieces of a mask."""
    count, pieces, boxes, middles = cv2.connectedComponentsWithStats(mask.astype(np.uint8))
    cm2 = boxes[:, cv2.CC_STAT_AREA] / (100 * PX_PER_MM**2)
    found = [
        Area(
            x_mm=(float(middles[k][0]) + 0.5) / PX_PER_MM,
            y_mm=(float(middles[k][1]) + 0.5) / PX_PER_MM,
            area_cm2=float(cm2[k]),
            outline_mm=_outline(pieces == k),
        )
        for k in range(1, count)
        if cm2[k] >= LEAST_AREA_CM2
    ]
    return tuple(sorted(found, key=lambda area: -area.area_cm2))


def _outline(piece: Mask) -> tuple[tuple[float, float], ...]:
    borders, _ = cv2.findContours(piece.astype(np.uint8), cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_SIMPLE)
    border = cv2.approxPolyDP(max(borders, key=len), 1.5, True)[:, 0, :]
    return tuple(((x + 0.5) / PX_PER_MM, (y + 0.5) / PX_PER_MM) for x, y in border.tolist())


# --- suspects


def _histories(earlier: Moment, later: Moment, now: Mask, alignment: Alignment) -> tuple[SuspectHistory, ...]:
    before = [_moved(suspect, alignment.placed) for suspect in earlier.suspects]
    return tuple(
        replace(
            _history(course, now),
            earlier=_which(course.earlier, before),
            later=_which(course.later, later.suspects),
        )
        for course in courses(before, later.suspects)
    )


def _which(some: Sequence[Suspect], of_all: Sequence[Suspect]) -> tuple[int, ...]:
    return tuple(k for k, suspect in enumerate(of_all) if any(suspect is one for one in some))


def _moved(suspect: Suspect, matrix: Affine) -> Suspect:
    x, y = moved(matrix, suspect.x_mm, suspect.y_mm)
    outline = tuple(moved(matrix, *point) for point in suspect.outline_mm)
    return replace(suspect, x_mm=x, y_mm=y, outline_mm=outline)


def _history(course: Course[Suspect], now: Mask) -> SuspectHistory:
    largest = max(course.later or course.earlier, key=lambda suspect: suspect.area_cm2)
    covered = _covered(course.earlier, now)
    return SuspectHistory(
        became=course.became,
        x_mm=largest.x_mm,
        y_mm=largest.y_mm,
        earlier_cm2=course.earlier_cm2,
        later_cm2=course.later_cm2,
        growth=course.growth,
        covered=covered,
        note=_note(course, covered),
    )


def _covered(patches: Sequence[Suspect], now: Mask) -> float:
    """Share of the patches' outlines under canopy, 0-1; beyond the top view counts as bare."""
    inside = np.zeros(now.shape, np.uint8)
    for patch in patches:
        if len(patch.outline_mm) >= 3:
            corners = np.array(patch.outline_mm) * PX_PER_MM - 0.5
            cv2.fillPoly(inside, [np.round(corners).astype(np.int32)], 1)
    area = int(inside.sum())
    return float(now[inside > 0].sum()) / area if area else 0.0


def _note(course: Course[Suspect], covered: float) -> str:
    then, now = f"{course.earlier_cm2:.1f}", f"{course.later_cm2:.1f}"
    match course.became:
        case Became.NEW:
            return f"new, {now} cm²: not seen on the earlier photo"
        case Became.LARGER:
            return (
                f"grown from {then} to {now} cm², {course.growth or 0:.1f} times: mold grows, look at it now"
            )
        case Became.EQUAL:
            return f"as large as before: {then} and {now} cm²"
        case Became.SMALLER if covered >= PARTLY:
            return (
                f"less is seen of it: {then}, now {now} cm²; leaves cover {100 * covered:.0f} % of its place"
            )
        case Became.SMALLER:
            return f"smaller: {then}, now {now} cm²; root hairs fade, mold seldom does"
        case Became.GONE if covered >= COVERED:
            return f"covered by leaves: {then} cm² before; it may still be there, so lift the leaves and look"
        case _:
            return f"no longer seen: {then} cm² before; root hairs fade, mold seldom does"
