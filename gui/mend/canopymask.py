"""Canopy mask: where a person says that canopy is, stroke by stroke.

In    the canopy as it was scored, bool (508, 1016); strokes of a round brush in pixels of the top view
Out   the canopy as it is now, its coverage, the rectangle that a move has touched; strokes back and again
Not   Qt; painting it (`brushview.py`), keeping it (`desk.py`)
"""

from dataclasses import dataclass
from math import ceil, floor
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

__all__ = ["CanopyMask", "Patch"]

MOST_STROKES = 200  # that can be taken back; a stroke over everything takes 65 kB


@dataclass(frozen=True, slots=True, kw_only=True)
class Patch:
    """Columns `left` to `right` and rows `top` to `bottom`, the last ones not included."""

    left: int
    top: int
    right: int
    bottom: int

    def with_(self, other: "Patch | None") -> "Patch":
        """The smallest one around both."""
        if other is None:
            return self
        return Patch(
            left=min(self.left, other.left),
            top=min(self.top, other.top),
            right=max(self.right, other.right),
            bottom=max(self.bottom, other.bottom),
        )


@dataclass(frozen=True, slots=True)
class _Stroke:
    """What one stroke turned round: doing it again and taking it back are the same."""

    patch: Patch
    turned: bytes  # packed bits


class CanopyMask:
    """Changes in place; only the window's thread touches it."""

    def __init__(self, canopy: "NDArray[np.bool_]") -> None:
        self.scored = canopy.copy()
        self.scored.flags.writeable = False
        self.now = canopy.copy()
        self._before: NDArray[np.bool_] | None = None
        self._touched: Patch | None = None
        self._at: tuple[float, float] | None = None
        self._done: list[_Stroke] = []
        self._undone: list[_Stroke] = []

    @property
    def coverage(self) -> float:
        """Share of the inner area that is canopy now, %."""
        return 100.0 * float(self.now.mean())

    @property
    def coverage_before(self) -> float:
        """The same as it was scored."""
        return 100.0 * float(self.scored.mean())

    @property
    def changed(self) -> Patch | None:
        """Where anything differs from what was scored; None where nothing does."""
        different = self.now != self.scored
        rows, columns = different.any(axis=1).nonzero()[0], different.any(axis=0).nonzero()[0]
        if not rows.size:
            return None
        return Patch(
            left=int(columns[0]), top=int(rows[0]), right=int(columns[-1]) + 1, bottom=int(rows[-1]) + 1
        )

    @property
    def is_changed(self) -> bool:
        """Whether anything differs from what was scored."""
        return bool((self.now != self.scored).any())

    @property
    def can_undo(self) -> bool:
        """Whether there is a stroke to take back."""
        return bool(self._done)

    @property
    def can_redo(self) -> bool:
        """Whether a stroke was taken back."""
        return bool(self._undone)

    # --- strokes

    def begin(self) -> None:
        """The brush comes down; what it touches until `end` is one stroke."""
        self._before, self._touched, self._at = self.now.copy(), None, None

    def move(self, x: float, y: float, radius: float, *, paint: bool) -> Patch | None:
        """Drag the brush to a point; returns what has to be painted again, None where it is off the tray."""
        import numpy as np

        from_x, from_y = self._at or (x, y)
        self._at = (x, y)
        rows, columns = self.now.shape
        left, right = max(0, floor(min(x, from_x) - radius)), min(columns, ceil(max(x, from_x) + radius) + 1)
        top, bottom = max(0, floor(min(y, from_y) - radius)), min(rows, ceil(max(y, from_y) + radius) + 1)
        if left >= right or top >= bottom:
            return None
        across = np.arange(left, right, dtype=np.float32) + 0.5 - from_x
        down = np.arange(top, bottom, dtype=np.float32)[:, None] + 0.5 - from_y
        way_x, way_y = x - from_x, y - from_y
        length2 = way_x * way_x + way_y * way_y
        if length2 > 0:
            along = np.clip((across * way_x + down * way_y) / length2, 0.0, 1.0)
            near = (across - along * way_x) ** 2 + (down - along * way_y) ** 2 <= radius * radius
        else:
            near = across**2 + down**2 <= radius * radius
        self.now[top:bottom, left:right][near] = paint
        patch = Patch(left=left, top=top, right=right, bottom=bottom)
        self._touched = patch.with_(self._touched)
        return patch

    def end(self) -> bool:
        """The brush is lifted; False where the stroke has changed nothing."""
        import numpy as np

        before, patch = self._before, self._touched
        self._before = self._touched = self._at = None
        if before is None or patch is None:
            return False
        turned = self._seen(self.now, patch) != self._seen(before, patch)
        if not turned.any():
            return False
        self._done = [*self._done[1 - MOST_STROKES :], _Stroke(patch, np.packbits(turned).tobytes())]
        self._undone.clear()
        return True

    # --- back and again

    def forget(self) -> Patch | None:
        """The canopy as it was scored; returns what has changed by that. Taken back like a stroke."""
        patch = self.changed
        if patch is not None:
            self.begin()
            self.now, self._touched = self.scored.copy(), patch
            self.end()
        return patch

    def undo(self) -> Patch | None:
        """Take the last stroke back; returns what it touched."""
        return self._turn(self._done, self._undone)

    def redo(self) -> Patch | None:
        """Do the stroke again that was taken back last."""
        return self._turn(self._undone, self._done)

    def _turn(self, source: list[_Stroke], target: list[_Stroke]) -> Patch | None:
        import numpy as np

        if not source or self._before is not None:
            return None
        stroke = source.pop()
        target.append(stroke)
        patch = stroke.patch
        part = self._seen(self.now, patch)
        bits = np.unpackbits(np.frombuffer(stroke.turned, np.uint8), count=part.size)
        part ^= bits.astype(np.bool_).reshape(part.shape)
        return patch

    @staticmethod
    def _seen(mask: "NDArray[np.bool_]", patch: Patch) -> "NDArray[np.bool_]":
        return mask[patch.top : patch.bottom, patch.left : patch.right]
