"""Mending: a canopy that a person has drawn -> labels and numbers that follow it.

In    a scored photo; the whole canopy as a person says it is, bool (rows, columns) of the top view
Out   the same photo with labels and numbers of that canopy; the mask as the bytes of a PNG and back
Not   the brush (window), keeping the old numbers (`data`)

Only what a person says is changed: where canopy was added or taken away. Which canopy or which ground a
mended pixel is, nobody has said; it becomes what the nearest one of that kind is, and such guesses are told.
"""

from dataclasses import dataclass, replace

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab
from vision.colour import Colour, measure_colour
from vision.ownmm import stand_of
from vision.planes import Pixels
from vision.reason import Reason
from vision.scored import Score, Scored
from vision.stand import Stand, measure_stand
from vision.tissue import Label, Labels, Mask, canopy

__all__ = ["Mended", "decode_mask", "encode_mask", "mend", "mend_labels"]

NEAR_PX = 20  # canopy within 10 mm is of the same plant or its neighbour: common practice
GREEN_A = -8.0  # a* below it is green; pale shoots are white to yellow: common practice
GROUND = (Label.MEDIUM, Label.HULL)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mended:
    """Labels that follow a person's canopy."""

    labels: Labels
    guessed: Mask  # mended pixels: canopy or not is said, which kind of it is guessed


def mend_labels(labels: Labels, mask: Mask, top: Pixels) -> Mended:
    """The labels with their canopy exactly where `mask` says.

    Parameters
    ----------
    labels : uint8 (rows, columns), values of `Label`
    mask : bool (rows, columns), the whole canopy
    top : uint8 (rows, columns, 3), sRGB

    Raises
    ------
    ValueError
        If the three do not have the same size.
    """
    if not labels.shape == mask.shape == top.shape[:2]:
        raise ValueError(f"labels {labels.shape}, mask {mask.shape} and picture {top.shape} differ in size")
    before = canopy(labels)
    added, taken = mask & ~before, before & ~mask
    mended = labels.copy()
    if added.any():
        near, far_px = _nearest(labels, before)
        mended[added] = np.where(far_px <= NEAR_PX, near, _by_colour(top))[added]
    if taken.any():
        near, _ = _nearest(labels, np.isin(labels, GROUND))
        mended[taken] = near[taken]
    return Mended(labels=mended, guessed=added | taken)


def _nearest(labels: Labels, among: Mask) -> tuple[Labels, NDArray[np.float32]]:
    """For each pixel the label of the nearest pixel that is True in `among`, and how far it lies (px)."""
    if not among.any():
        return np.full_like(labels, Label.MEDIUM), np.full(labels.shape, np.inf, np.float32)
    far, index = cv2.distanceTransformWithLabels(
        (~among).astype(np.uint8), cv2.DIST_L2, 5, labelType=cv2.DIST_LABEL_PIXEL
    )
    of_index = np.zeros(int(index.max()) + 1, np.uint8)
    of_index[index[among]] = labels[among]
    return of_index[index], np.asarray(far, np.float32)


def _by_colour(top: Pixels) -> Labels:
    """What kind of canopy each pixel would be by its colour alone, smoothed over 2 mm."""
    smooth = lab(cv2.blur(top, (5, 5)).astype(np.uint8))
    a, b = smooth[:, :, 1], smooth[:, :, 2]
    kinds = np.full(top.shape[:2], Label.PALE, np.uint8)
    kinds[a < GREEN_A] = Label.GREEN
    kinds[a > np.maximum(b, 5.0)] = Label.RED
    return kinds


def mend(scored: Scored, mask: Mask) -> Scored:
    """The same photo with the numbers of a person's canopy; suspects stay: a brush says nothing of mold."""
    labels = mend_labels(scored.labels, mask, scored.top).labels
    old = scored.score
    stand = measure_stand(labels, None) if old.corners is None else stand_of(labels, old.inner_mm)
    colour = measure_colour(scored.top, labels)
    return replace(scored, labels=labels, score=_with(old, stand=stand, colour=colour))


def _with(old: Score, *, stand: Stand, colour: Colour) -> Score:
    gone = set(old.stand.reasons) | set(old.colour.reasons)
    missing = {name: reason for name, reason in old.missing.items() if name not in gone}
    missing |= {**stand.reasons, **colour.reasons, "coverage_sd": Reason.MENDED}
    return replace(old, stand=stand, colour=colour, coverage_sd=None, missing=missing)


def encode_mask(mask: Mask) -> bytes:
    """The mask as the bytes of a PNG of one bit a pixel: black or white, some kB."""
    done, content = cv2.imencode(".png", mask.astype(np.uint8) * 255, [cv2.IMWRITE_PNG_BILEVEL, 1])
    if not done:
        raise ValueError(f"this mask could not be written: {mask.shape}")
    return content.tobytes()


def decode_mask(content: bytes) -> Mask:
    """The mask in the bytes of a PNG; raises `ValueError` where there is none."""
    picture = None
    if content:
        picture = cv2.imdecode(np.frombuffer(content, np.uint8), cv2.IMREAD_GRAYSCALE)
    if picture is None:
        raise ValueError("these bytes are no picture of a mask")
    return np.asarray(picture > 127, np.bool_)
