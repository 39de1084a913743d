"""Suspects: top view and tissue -> patches that may be mold.

In    top view, uint8 (rows, columns, 3), sRGB; its `TissueMap`; scale in px/mm
Out   `Suspect`s: place in mm from the top view's top left corner, area in cm2, confidence, reasons in words
Not   which pixels are fuzz (`tissue.py`), how sure of a patch (`patch.py`), what day and medium say to it
      (`suspect.py`), what a person said (the book), what changed since yesterday

Where the tissue method tells chances of its labels and the scale is about the nominal one, patches are those
cells that `moldchance.py` takes for mold; else those that the plain felt rule marks.

A suspect is a reason to look, no finding; no suspect is no proof that a tray is safe.
"""

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab
from vision.glare import hidden
from vision.moldchance import SEEN, Cells, mold_cells
from vision.patch import LEAST_OF_PLAIN, WHITE, Patch, believed, judged
from vision.planes import Pixels, disc, outline_of
from vision.smooth import smooth_things
from vision.sparkle import dullness, sparkle
from vision.suspect import Suspect, surest_first
from vision.tissue import Label, Labels, Mask, TissueMap, canopy
from vision.topview import PX_PER_MM

__all__ = ["find_suspects", "suspects_in"]

JOIN_MM = 6.0  # pieces nearer than this, seen between leaves, are one patch
LEAST_CM2 = 1.0
RING_MM = 8.0  # the patch is compared with the bare ground so far around it
LEAST_GROUND = 0.1  # of the ring, before the comparison is made
MOST_WALL = 0.15  # of the ring: more, and the patch may be the wall
AMONG_LEAVES = 0.3  # of the ring
WALL_MM = 20.0  # nearer to the edge than this lies the wall or the medium's torn border
LIKE_NOMINAL = 1.25  # times 2 px/mm, either way: cells of another size are not what the table has learned
ACROSS_HULLS = 0.15  # share of the patch and its ring

LIKELY = 0.2  # of a cell
LEAST_CELLS_CM2 = 0.5
# Of the patch and its ring. None of 16 on photos had any, 29 of 39 false ones in made glare had more.
MOST_GLARE = 0.1
MOST_THING = (
    0.3  # of the patch; true ones had up to 0.03, those on drawn gloves and behind drops 0.27 to 0.85
)


def find_suspects(top: Pixels, tissue: TissueMap, px_per_mm: float = PX_PER_MM) -> tuple[Suspect, ...]:
    """Suspects of a top view, the surest first, the larger first among equals.

    Raises
    ------
    ValueError
        If top view and labels differ in size, or the scale is not positive.
    """
    if top.shape[:2] != tissue.labels.shape:
        raise ValueError(f"top view {top.shape[:2]} and labels {tissue.labels.shape} differ in size")
    if not px_per_mm > 0:
        raise ValueError(f"px_per_mm must be positive, not {px_per_mm}")
    like_nominal = 1 / LIKE_NOMINAL < px_per_mm / PX_PER_MM < LIKE_NOMINAL
    if tissue.chances is not None and like_nominal:
        colours = lab(top)
        return suspects_in(mold_cells(top, tissue, colours), colours, tissue, px_per_mm, top)
    fuzz = tissue.labels == Label.FUZZ if tissue.fuzz is None else tissue.fuzz > 0.5
    if np.count_nonzero(fuzz) < LEAST_CM2 * 100 * px_per_mm**2:
        return ()
    scene = _Scene(
        fuzz=fuzz,
        labels=tissue.labels,
        colours=lab(top),
        px_per_mm=px_per_mm,
        glare=_glare(top),
        things=_things(top, tissue.labels, px_per_mm),
    )
    return surest_first((judged(patch) for patch in _patches(scene, LEAST_CM2)), LEAST_OF_PLAIN)


def suspects_in(
    cells: Cells,
    colours: NDArray[np.float32],
    tissue: TissueMap,
    px_per_mm: float = PX_PER_MM,
    top: Pixels | None = None,
) -> tuple[Suspect, ...]:
    """The same from the chances of cells of 4 px; `colours` is CIELAB of the top view.

    Glare and things over the tray are only looked for where the top view itself is given.
    """
    likely = (cells.chance > LIKELY) & (cells.bare > SEEN)
    if not likely.any():
        return ()
    labels = tissue.labels
    size = labels.shape[::-1]
    chance = np.asarray(
        cv2.resize(np.where(likely, cells.chance, 0), size, interpolation=cv2.INTER_NEAREST), np.float32
    )
    fuzz = np.asarray((chance > 0) & ~canopy(labels), np.bool_)
    scene = _Scene(
        fuzz=fuzz,
        labels=labels,
        colours=colours,
        px_per_mm=px_per_mm,
        glare=None if top is None else _glare(top),
        things=None if top is None else _things(top, labels, px_per_mm),
        chance=chance,
    )
    return surest_first(believed(patch) for patch in _patches(scene, LEAST_CELLS_CM2))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Scene:
    """All that patches are measured on, (rows, columns) each."""

    fuzz: Mask
    labels: Labels
    colours: NDArray[np.float32]
    px_per_mm: float
    glare: Mask | None
    things: Mask | None
    """What is smooth, where something smooth hides part of the tray."""
    chance: NDArray[np.float32] | None = None


def _patches(scene: _Scene, least_cm2: float) -> list[Patch]:
    joined = cv2.morphologyEx(scene.fuzz.astype(np.uint8), cv2.MORPH_CLOSE, disc(JOIN_MM, scene.px_per_mm))
    count, pieces, boxes, _ = cv2.connectedComponentsWithStats(joined)
    seen = np.bincount(pieces[scene.fuzz], minlength=count)
    margin = round(RING_MM * scene.px_per_mm) + 1
    found = []
    for piece in range(1, count):
        if seen[piece] >= least_cm2 * 100 * scene.px_per_mm**2:
            left, upper, width, height = (int(side) for side in boxes[piece][:4])
            rows = slice(max(0, upper - margin), upper + height + margin)
            columns = slice(max(0, left - margin), left + width + margin)
            found.append(_measured(scene, pieces[rows, columns] == piece, rows, columns))
    return found


def _measured(scene: _Scene, inside: Mask, in_rows: slice, in_columns: slice) -> Patch:
    """One patch, `inside` the part of the scene that the slices cut out: its box and a margin."""
    px_per_mm = scene.px_per_mm
    labels, colours = scene.labels[in_rows, in_columns], scene.colours[in_rows, in_columns]
    seen = inside & scene.fuzz[in_rows, in_columns]
    around = (cv2.dilate(inside.astype(np.uint8), disc(2 * RING_MM, px_per_mm)) > 0) & ~inside
    ground = around & ((labels == Label.MEDIUM) | (labels == Label.HULL))
    own = colours[seen].mean(axis=0)
    other = colours[ground].mean(axis=0) if ground.sum() > LEAST_GROUND * around.sum() else None
    rows, columns = np.nonzero(seen)
    outline = outline_of(inside)
    hull = cv2.contourArea(cv2.convexHull(outline.astype(np.float32)))
    x, y = columns.mean() + in_columns.start + 0.5, rows.mean() + in_rows.start + 0.5
    height, width = scene.labels.shape
    from_edge = min(x, y, width - x, height - y) / px_per_mm
    return Patch(
        x_mm=float(x) / px_per_mm,
        y_mm=float(y) / px_per_mm,
        area_cm2=float(seen.sum()) / (100 * px_per_mm**2),
        width_mm=float(max(cv2.minAreaRect(outline.astype(np.float32))[1]) + 1) / px_per_mm,
        outline_mm=tuple(
            ((column + in_columns.start + 0.5) / px_per_mm, (row + in_rows.start + 0.5) / px_per_mm)
            for column, row in outline.tolist()
        ),
        at_wall=_share(labels[around] == Label.RIM) > MOST_WALL or from_edge < WALL_MM,
        in_glare=scene.glare is not None
        and own[0] <= WHITE
        and _share(scene.glare[in_rows, in_columns][inside | around]) > MOST_GLARE,
        on_thing=scene.things is not None and _share(scene.things[in_rows, in_columns][inside]) > MOST_THING,
        of_all=float(seen.sum()) / float(scene.fuzz.sum()),
        in_one=min(1.0, float(inside.sum()) / max(1.0, hull)),
        among_leaves=_share(canopy(labels[around])) > AMONG_LEAVES,
        greyer=None if other is None else _tone(other) - _tone(own),
        lighter=None if other is None else float(own[0] - other[0]),
        lightness=float(own[0]),
        across_hulls=bool((labels[inside | around] == Label.HULL).mean() > ACROSS_HULLS),
        dull=dullness(sparkle(colours[..., 0], seen, px_per_mm)),
        expected_cm2=None
        if scene.chance is None
        else float(scene.chance[in_rows, in_columns][seen].sum()) / (100 * px_per_mm**2),
    )


def _glare(top: Pixels) -> Mask:
    """Where the top view lies under a veil of light."""
    return _at_full_size(hidden(top), top.shape)


def _things(top: Pixels, labels: Labels, px_per_mm: float) -> Mask | None:
    things = smooth_things(top, labels, px_per_mm)
    return None if things is None else _at_full_size(things, top.shape)


def _at_full_size(mask: Mask, shape: tuple[int, ...]) -> Mask:
    large = cv2.resize(mask.view(np.uint8), shape[1::-1], interpolation=cv2.INTER_NEAREST)
    return np.asarray(large > 0, np.bool_)


def _share(held: NDArray[np.bool_]) -> float:
    """0-1; 0 of nothing, as around a patch that fills the picture."""
    return float(held.mean()) if held.size else 0.0


def _tone(colour: NDArray[np.float32]) -> float:
    lightness, a, b = (float(part) for part in colour)
    return 100 * float(np.hypot(a, b)) / (lightness + 16)
