"""Change: two scored top views of one tray -> what appeared, what vanished, what became of each suspect.

In    two `Moment`s: labels of the top view, suspects, method; how they lie on each other (`alignment.py`)
Out   `Change`: shares of the inner area and where, points of coverage, what became of suspects
Not   canopy on canopy (`laid.py`), suspects (`fates.py`), what needs a look (the book's look list)

All is told from labels, so other light or exposure is no change.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from vision.alignment import Alignment
from vision.fates import SuspectHistory, fates
from vision.laid import Area, Laid, areas_of
from vision.reason import Reason
from vision.suspect import Suspect
from vision.tissue import Labels, canopy
from vision.topview import LONG_MM, SHORT_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["Area", "Change", "Moment", "SuspectHistory", "measure_change"]

LEAST_CANOPY = 2.0  # %: a share of less than that says nothing


@dataclass(frozen=True, slots=True, kw_only=True)
class Moment:
    """One tray as it was scored from one photo."""

    labels: Labels
    """uint8 (508, 1016)."""
    suspects: tuple[Suspect, ...] = ()
    method: str = ""
    """Labels of two methods are never compared."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What changed from the earlier to the later photo. None is explained in `reasons` by name."""

    alignment: Alignment
    """In mm of a tray of nominal size: of the top view."""
    coverage: float | None
    """Later less earlier coverage, points."""
    appeared: float | None
    """Canopy where there was none within 3 mm, % of the inner area that both photos show;
    while shoots that stand close grow, far less than coverage rises by."""
    vanished: float | None
    """Canopy that is no more, nor any within 3 mm, % of the same."""
    lost: float | None
    """Share of the earlier canopy that is gone, %: damping off or wilt, where it is much."""
    suspects: tuple[SuspectHistory, ...]
    """Those of the later photo, in its order, then those that are gone."""
    appeared_areas: tuple[Area, ...] = ()
    """Of 1 cm2 and more, the largest first; empty where no canopy could be laid on the other."""
    vanished_areas: tuple[Area, ...] = ()
    reasons: Mapping[str, Reason] = field(default_factory=dict)


def measure_change(
    earlier: Moment,
    later: Moment,
    alignment: Alignment,
    inner_mm: tuple[float, float] = (LONG_MM, SHORT_MM),
) -> Change:
    """What changed between two photos of one tray, whose inner area has these sides, long and short.

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
    histories = fates(earlier.suspects, later.suspects, was, now, alignment, inner_mm)
    if earlier.method != later.method:
        return _untold(alignment, None, histories, Reason.OTHER_METHODS)
    coverage = 100 * float(now.mean() - was.mean())
    if not alignment.is_sure:
        return _untold(alignment, coverage, histories, alignment.reason or Reason.NOTHING_STAYED)
    return _told(Laid.on_later(was, now, alignment.placed), alignment, coverage, histories, inner_mm)


# --- canopy


def _told(
    laid: Laid,
    alignment: Alignment,
    coverage: float,
    histories: tuple[SuspectHistory, ...],
    inner_mm: tuple[float, float],
) -> Change:
    seen = max(1, int(laid.seen.sum()))
    enough = 100 * float(laid.was.sum()) / seen >= LEAST_CANOPY
    return Change(
        alignment=alignment,
        coverage=coverage,
        appeared=100 * float(laid.appeared.sum()) / seen,
        vanished=100 * float(laid.vanished.sum()) / seen,
        lost=100 * float(laid.vanished.sum()) / float(laid.was.sum()) if enough else None,
        suspects=histories,
        appeared_areas=areas_of(laid.appeared, inner_mm),
        vanished_areas=areas_of(laid.vanished, inner_mm),
        reasons={} if enough else {"lost": Reason.NO_CANOPY},
    )


def _untold(
    alignment: Alignment, coverage: float | None, histories: tuple[SuspectHistory, ...], reason: Reason
) -> Change:
    """No canopy laid on canopy; the reason for each number that is missing."""
    missing = ["appeared", "vanished", "lost"]
    return Change(
        alignment=alignment,
        coverage=coverage,
        appeared=None,
        vanished=None,
        lost=None,
        suspects=histories,
        reasons=dict.fromkeys(missing if coverage is not None else ["coverage", *missing], reason),
    )
