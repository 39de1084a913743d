"""Correlation: two top views -> how places all over the tray have moved, seen in their pattern alone.

In    two top views at 2 px/mm
Out   `Places`: for each place a surface of phase correlation; the shift, scale and turn that most of them
      share, and how far that stands above chance; the shift of each place near it
Not   the map from one view to the other (`alignment.py`)

Phase correlation (Kuglin & Hines 1975, The phase correlation image alignment method, from memory) of local
contrast, in which light and exposure cancel out. No place is believed alone: what they share is found by
adding up their surfaces, each shifted as one scale and one turn of the whole would shift it.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.planes import Pixels
from vision.topview import PX_PER_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["MIDDLE_PX", "Picture", "Places", "Shared", "contrast", "correlated"]

Picture = NDArray[np.float32]
Points = NDArray[np.float64]

SIDE = 128  # of a place, px: 64 mm
ROWS, COLUMNS = 7, 15  # of places, overlapping by half and more
FINEST = 0.12  # cycles/px: finer patterns are noise and differ between two photos
MIDDLE_PX = np.array([TOP_WIDTH / 2, TOP_HEIGHT / 2])
FARTHEST_PX = 32  # 16 mm: of the shared shift
SCALES = np.linspace(-0.048, 0.048, 17)  # leaves that rise by 3 cm grow by so much
TURNS = np.radians(np.linspace(-1.2, 1.2, 7))  # of corners that a careless hand has set


@dataclass(frozen=True, slots=True, kw_only=True)
class Shared:
    """What most places have in common, px about the middle of the tray."""

    shift: tuple[float, float]
    scale: float  # less 1
    turn: float  # rad, clockwise as the top view shows it
    peak: float  # above the mean of all that was tried, standard deviations; unlike trays reach 7


@dataclass(frozen=True, slots=True, kw_only=True)
class Places:
    """Surfaces of phase correlation, (n, SIDE, SIDE); no shift lies in the middle."""

    surfaces: Picture
    from_middle: Points  # (n, 2) as (x, y), px, of each place

    def shared(self) -> Shared:
        """The shift, scale and turn that most places agree on."""
        best, highest, total, squares, count = (
            Shared(shift=(0, 0), scale=0, turn=0, peak=0),
            -1.0,
            0.0,
            0.0,
            0,
        )
        for scale, turn in self._tried():
            added = self._added(scale, turn)
            total, squares = total + float(added.sum()), squares + float(np.square(added).sum())
            count += added.size
            if (top := float(added.max())) > highest:
                row, column = divmod(int(added.argmax()), added.shape[1])
                shift = (float(column - FARTHEST_PX), float(row - FARTHEST_PX))
                highest, best = top, Shared(shift=shift, scale=scale, turn=turn, peak=0)
        mean = total / count
        spread = max(squares / count - mean * mean, 1e-20) ** 0.5
        return Shared(shift=best.shift, scale=best.scale, turn=best.turn, peak=(highest - mean) / spread)

    def _tried(self) -> Iterator[tuple[float, float]]:
        return ((float(scale), float(turn)) for turn in TURNS for scale in SCALES)

    def _added(self, scale: float, turn: float) -> Picture:
        """All surfaces, each moved back by what the scale and the turn move its place."""
        wide = 2 * FARTHEST_PX + 1
        added = np.zeros((wide, wide), np.float32)
        x, y = self.from_middle.T
        begin = SIDE // 2 - FARTHEST_PX
        lefts = np.rint(begin + scale * x - turn * y).astype(int)
        tops = np.rint(begin + scale * y + turn * x).astype(int)
        for surface, left, top in zip(self.surfaces, lefts.tolist(), tops.tolist(), strict=True):
            added += surface[top : top + wide, left : left + wide]
        return added

    def shifts(self, expected: Points, reach_px: int) -> Points:
        """Shift of each place, (n, 2) as (x, y) px: its highest peak near what is expected."""
        near = np.rint(expected).astype(int) + SIDE // 2
        least, most = reach_px + 1, SIDE - 2 - reach_px
        corners = np.clip(near, least, most) - reach_px
        span = np.arange(2 * reach_px + 1)
        each = np.arange(len(near))[:, None, None]
        rows = corners[:, 1, None, None] + span[None, :, None]
        columns = corners[:, 0, None, None] + span[None, None, :]
        best = self.surfaces[each, rows, columns].reshape(len(near), -1).argmax(axis=1)
        return self._refined(corners[:, 0] + best % span.size, corners[:, 1] + best // span.size)

    def _refined(self, across: NDArray[np.intp], down: NDArray[np.intp]) -> Points:
        """To a part of a pixel."""
        k = np.arange(len(across))
        middle = self.surfaces[k, down, across]
        x = across + _vertex(self.surfaces[k, down, across - 1], middle, self.surfaces[k, down, across + 1])
        y = down + _vertex(self.surfaces[k, down - 1, across], middle, self.surfaces[k, down + 1, across])
        return np.asarray(np.stack([x, y], axis=-1) - SIDE // 2, np.float64)


def contrast(top: Pixels) -> Picture:
    """Local contrast: how far a pixel stands out from its surroundings, against how far others there do."""
    light = np.log(cv2.cvtColor(top, cv2.COLOR_RGB2GRAY).astype(np.float32) + 8)
    fine = cv2.GaussianBlur(light, (0, 0), 0.5 * PX_PER_MM)
    apart = fine - cv2.GaussianBlur(fine, (0, 0), 4 * PX_PER_MM)
    usual = cv2.GaussianBlur(np.abs(apart), (0, 0), 8 * PX_PER_MM)
    return np.asarray(apart / (usual + 0.05), np.float32)


def correlated(first: Picture, second: Picture) -> Places:
    """Phase correlation of each place of two pictures of local contrast."""
    cross = _spectra(second) * np.conj(_spectra(first))
    cross /= np.abs(cross) + 1e-9
    down, across = np.fft.fftfreq(SIDE)[:, None], np.fft.rfftfreq(SIDE)[None]
    cross *= np.exp(-(down**2 + across**2) / (2 * FINEST**2))
    surfaces = np.fft.fftshift(np.fft.irfft2(cross, s=(SIDE, SIDE)), axes=(-2, -1))
    return Places(
        surfaces=np.asarray(surfaces, np.float32).reshape(-1, SIDE, SIDE), from_middle=_from_middle()
    )


def _starts() -> tuple[list[int], list[int]]:
    rows = np.linspace(0, TOP_HEIGHT - SIDE, ROWS).round().astype(int)
    columns = np.linspace(0, TOP_WIDTH - SIDE, COLUMNS).round().astype(int)
    return rows.tolist(), columns.tolist()


def _from_middle() -> Points:
    """Middles of the places, row by row."""
    rows, columns = _starts()
    middles = [(x + SIDE / 2, y + SIDE / 2) for y in rows for x in columns]
    return np.asarray(np.array(middles, np.float64) - MIDDLE_PX, np.float64)


def _spectra(picture: Picture) -> NDArray[np.complex64]:
    rows, columns = _starts()
    bell = np.hanning(SIDE + 2)[1:-1].astype(np.float32)
    window = np.outer(bell, bell)
    tiles = [[picture[y : y + SIDE, x : x + SIDE] * window for x in columns] for y in rows]
    return np.asarray(np.fft.rfft2(np.array(tiles)), np.complex64)


def _vertex(before: Picture, middle: Picture, after: Picture) -> Points:
    """Where the parabola through three neighbours has its top, -0.5 to 0.5 from the middle one."""
    bend = before - 2 * middle + after
    apex = np.divide(before - after, 2 * bend, out=np.zeros_like(bend), where=np.abs(bend) > 1e-12)
    return np.asarray(np.clip(apex, -0.5, 0.5), np.float64)
