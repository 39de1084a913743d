"""Learned tissue: a network's view of a top view -> what each pixel shows, and how sure that is.

In    top view, uint8 (rows, columns, 3), sRGB, 2 px/mm; or a picture of unknown scale
Out   `TissueMap`: labels, chance of fuzz, standard deviation of coverage, notes
Not   how the network was learned and what it can do (`training/`, `models/tissue.md`)

How much canopy: K pixels, K being the sum of all pixels' chances. A pixel that is canopy with 30 % counts as
0.3 pixels, so that coverage is right on average also where no single pixel is sure. Where: the K pixels that
come first by chance and by the photo's own colours (`outline.py`). Coverage, cells, gaps and outline all come
from that one mask and agree.

The network's 40 planes at half size are 10 labels for each pixel of a 2 x 2 square.
"""

from dataclasses import dataclass, replace
from typing import TypeVar

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.moldchance import require_table
from vision.network import FOLDER, checked, net_of
from vision.outline import order
from vision.planes import Pixels
from vision.reason import Reason
from vision.tissue import Label, Labels, Mask, PlainTissue, TissueMap, canopy, require_top_view

__all__ = ["LearnedTissue", "View", "coverage_sd", "labelled", "look", "most_probable"]

Kind = TypeVar("Kind", bound=np.generic)

MODEL = FOLDER / "tissue.onnx"
DIGEST = "eb2887fe0e99d1fdbae6735a0205bd7fb1342946a9ecb20fb7de3c1516213217"
LABELS = len(Label)
CANOPY = (Label.PALE, Label.GREEN, Label.RED)
REST = tuple(label for label in Label if label not in CANOPY)
FINEST_PX_PER_MM = 2.5  # a finer top view is reduced to this first
STEP_PX = 32  # sides have to be multiples: five halvings
LEAST_PX = 128  # of a side: at 32, where maps get 1 px wide, OpenCV 5 reads what it should not, and may crash
SMOOTHED = 0.02  # share of each target that learning spread evenly over all labels; taken back here
LARGEST_WHOLE_PX = 1024  # longer side of a picture of unknown scale: memory
LEAST_SD = 0.8  # points, where every pixel is sure
SD_PER_UNSURE = 0.55  # points of coverage a point of p (1 - p)
SD_PER_APART = 0.2  # points of coverage a point between this and the plain method
DOUBTFUL_SD = 4.0  # points: from here on a person should look
MOST_APART = 25.0  # points of coverage between this and the plain method
GRAIN_PX = 1.0  # sd: finer grain of bare ground passes for leaves
SMALL_WHOLE_PX = 600  # below it such a picture is looked at twice as large, too


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """What the network says of one picture, (rows, columns) each."""

    canopy: NDArray[np.float32]
    """Chance of canopy, 0-1."""
    fuzz: NDArray[np.float32]
    """Chance of fuzz, 0-1."""
    leaf: Labels
    """The most probable label of canopy."""
    ground: Labels
    """The most probable label of all others."""
    cells: NDArray[np.float32] | None = None
    """Chance of each label, (labels, rows / 4, columns / 4): means over 4 x 4 px; None where it was looked at
    more coarsely."""


class LearnedTissue:
    """The learned model, run by OpenCV; one instance may be shared between threads.

    Raises
    ------
    ModelDamaged
        When made, if the model's file is missing or damaged.
    """

    name = "learned"
    version = "5"

    def __init__(self) -> None:
        checked(MODEL, DIGEST)
        require_table()  # suspects are read off this network's chances
        self._yardstick = PlainTissue()

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels of a top view of 2 px/mm, or of a picture of unknown scale.

        Raises
        ------
        ValueError
            If `top` is no uint8 picture with three channels, or the scale is not positive.
        """
        require_top_view(top, px_per_mm)
        return self._of_unknown_scale(top) if px_per_mm is None else self._of_top_view(top, px_per_mm)

    def _of_top_view(self, top: Pixels, px_per_mm: float) -> TissueMap:
        view = _no_finer_than_learned(top, px_per_mm)
        labels = labelled(view, order(top, view.canopy))
        plain = self._yardstick.label(top, px_per_mm).labels
        apart = 100 * abs(float(view.canopy.mean()) - float(canopy(plain).mean()))
        spread = coverage_sd(view.canopy, apart)
        felt = (plain == Label.FUZZ) & ~canopy(labels)
        return TissueMap(
            labels=labels,
            fuzz=_felt_and_around(felt, view.fuzz),
            chances=view.cells,
            coverage_sd=spread,
            notes=_doubts(spread, apart),
        )

    def _of_unknown_scale(self, picture: Pixels) -> TissueMap:
        longer = max(picture.shape[:2])
        seen = _resized(picture, min(1.0, LARGEST_WHOLE_PX / longer))
        # what real pictures taught the network had gone through JPEG, which takes the finest grain
        seen = np.asarray(cv2.GaussianBlur(seen, (0, 0), GRAIN_PX), np.uint8)
        view = look(seen)
        if longer < SMALL_WHOLE_PX:
            view = _mean(view, look(_resized(seen, 2.0)))
        # of real photographs the chances are too high on strange ground: the likelier of the two is nearer
        labels = np.where(view.canopy > 0.5, view.leaf, view.ground)
        labels = cv2.resize(labels, picture.shape[1::-1], interpolation=cv2.INTER_NEAREST_EXACT)
        return TissueMap(labels=np.asarray(labels, np.uint8))


def _no_finer_than_learned(top: Pixels, px_per_mm: float) -> View:
    """A small tray fills the top view with leaves larger than most that the network has learned from.

    Of 96 quarters of photos kept out of learning, shown at 4 px/mm, coverage is off by 1.19 points, at worst
    11.1, if they are looked at as they are, by 0.95 and 8.9 if they are reduced to 2.5 px/mm first.
    """
    if px_per_mm <= FINEST_PX_PER_MM:
        return look(top)
    view = look(_resized(top, FINEST_PX_PER_MM / px_per_mm))
    size = top.shape[1::-1]
    return View(
        canopy=np.asarray(cv2.resize(view.canopy, size), np.float32),
        fuzz=np.asarray(cv2.resize(view.fuzz, size), np.float32),
        leaf=np.asarray(cv2.resize(view.leaf, size, interpolation=cv2.INTER_NEAREST_EXACT), np.uint8),
        ground=np.asarray(cv2.resize(view.ground, size, interpolation=cv2.INTER_NEAREST_EXACT), np.uint8),
    )


def look(picture: Pixels) -> View:
    """Run the network on a picture as it is, any size."""
    rows, columns = picture.shape[:2]
    planes = _run(picture)
    leaf, leaf_best = most_probable(planes, CANOPY)
    ground, ground_best = most_probable(planes, REST)
    planes -= np.maximum(leaf_best, ground_best)
    cv2.exp(planes.reshape(LABELS, -1), planes.reshape(LABELS, -1))
    total = planes.sum(axis=0)
    chance = planes[CANOPY[0] : CANOPY[-1] + 1].sum(axis=0) / total
    even = SMOOTHED * len(CANOPY) / LABELS
    return View(
        canopy=_at_full_size(np.clip((chance - even) / (1 - SMOOTHED), 0, 1), rows, columns),
        fuzz=_at_full_size(planes[Label.FUZZ] / total, rows, columns),
        leaf=_at_full_size(leaf, rows, columns),
        ground=_at_full_size(ground, rows, columns),
        cells=_in_cells(planes, total, rows, columns),
    )


def _in_cells(
    planes: NDArray[np.float32], total: NDArray[np.float32], rows: int, columns: int
) -> NDArray[np.float32]:
    """Shares of the labels' planes in their total, over cells of 4 x 4 px."""
    shares = np.einsum("lqyx,qyx->lyx", planes, 0.25 / total)[:, : max(1, rows // 2), : max(1, columns // 2)]
    size = (max(1, columns // 4), max(1, rows // 4))
    return np.stack([cv2.resize(plane, size, interpolation=cv2.INTER_AREA) for plane in shares])


def most_probable(
    planes: NDArray[np.float32], labels: tuple[Label, ...]
) -> tuple[Labels, NDArray[np.float32]]:
    """Of some of the planes, (planes, ...): the label of the highest at each place, and its height.

    A running maximum: six times as fast as `argmax` over the first axis, and the same.
    """
    best = planes[labels[0]].copy()
    label = np.full(best.shape, labels[0], np.uint8)
    for other in labels[1:]:
        np.copyto(label, np.uint8(other), where=planes[other] > best)
        np.maximum(best, planes[other], out=best)
    return label, best


def _felt_and_around(felt: Mask, fuzz: NDArray[np.float32]) -> NDArray[np.float32]:
    """1 where the plain method sees felt; the network's chance in pieces that touch it; 0 elsewhere.

    For pictures whose cells the table of mold cannot read; it also weighs plain felt (`moldchance.py`).
    """
    likely = ((fuzz > 0.5) | felt).view(np.uint8)
    count, pieces = cv2.connectedComponents(likely, connectivity=8)
    touched = np.zeros(count, np.bool_)
    touched[pieces[felt]] = True
    return np.where(felt, np.float32(1), np.where(touched[pieces], fuzz, np.float32(0)))


def labelled(view: View, value: NDArray[np.float32] | None = None) -> Labels:
    """Labels whose canopy is K pixels, K the sum of the chances: those of the highest value (or chance)."""
    wanted = round(float(view.canopy.sum(dtype=np.float64)))
    return np.where(_highest(view.canopy if value is None else value, wanted), view.leaf, view.ground)


def _highest(value: NDArray[np.float32], wanted: int) -> NDArray[np.bool_]:
    """As many pixels as wanted, those of the highest value, among equals the upper left ones."""
    if wanted == 0:
        return np.zeros(value.shape, np.bool_)
    least = np.partition(value, value.size - wanted, axis=None)[value.size - wanted]
    chosen = np.asarray(value > least, np.bool_)
    equal = np.flatnonzero(value == least)[: wanted - np.count_nonzero(chosen)]
    chosen.flat[equal] = True
    return chosen


def _run(picture: Pixels) -> NDArray[np.float32]:
    """Logits, (labels, 4, rows / 2, columns / 2) of the picture filled up to whole steps by its edge."""
    below, beside = (max(LEAST_PX - side, -side % STEP_PX) for side in picture.shape[:2])
    filled = cv2.copyMakeBorder(picture, 0, below, 0, beside, cv2.BORDER_REPLICATE)
    net = net_of(MODEL, DIGEST)
    net.setInput(cv2.dnn.blobFromImage(filled))
    planes = np.asarray(net.forward(), np.float32)
    return planes.reshape(LABELS, 4, *planes.shape[2:])


def _at_full_size(quarters: NDArray[Kind], rows: int, columns: int) -> NDArray[Kind]:
    """(4, h, w) -> (rows, columns): the four lie as 2 x 2 squares; what was filled up is cut off."""
    _, height, width = quarters.shape
    squares = quarters.reshape(2, 2, height, width).transpose(2, 0, 3, 1)
    return np.ascontiguousarray(squares.reshape(2 * height, 2 * width)[:rows, :columns])


def _resized(picture: Pixels, times: float) -> Pixels:
    if times == 1:
        return picture
    rows, columns = (max(1, round(side * times)) for side in picture.shape[:2])
    how = cv2.INTER_AREA if times < 1 else cv2.INTER_CUBIC
    return np.asarray(cv2.resize(picture, (columns, rows), interpolation=how), np.uint8)


def coverage_sd(chance: NDArray[np.float32], apart: float) -> float:
    """Standard deviation of coverage, points.

    From how unsure the pixels are, and from how far the plain method is `apart`, points. A pixel of chance p
    adds p (1 - p); were pixels independent, the root of the sum would do, but neighbours err together, so the
    sd goes with the mean itself. The three factors were fitted to errors on trays not learned from
    (`models/tissue.md` says how well it holds); no second view that can be afforded made it better.
    """
    unsure = 100 * float((chance * (1 - chance)).mean())
    return float(np.linalg.norm((LEAST_SD, SD_PER_UNSURE * unsure, SD_PER_APART * apart)))


def _doubts(spread: float, apart: float) -> tuple[Reason, ...]:
    notes = ((Reason.DOUBTFUL, spread > DOUBTFUL_SD), (Reason.APART, apart > MOST_APART))
    return tuple(reason for reason, holds in notes if holds)


def _mean(view: View, larger: View) -> View:
    """Both views' chances at the size of the first, which also says which label."""

    def both(one: NDArray[np.float32], other: NDArray[np.float32]) -> NDArray[np.float32]:
        smaller = cv2.resize(other, one.shape[::-1], interpolation=cv2.INTER_AREA)
        return np.asarray((one + smaller) / 2, np.float32)

    return replace(view, canopy=both(view.canopy, larger.canopy), fuzz=both(view.fuzz, larger.fuzz))
