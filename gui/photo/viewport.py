"""Viewport: which part of a picture a window shows, and how large.

In    size of the picture and of the window in pixels; wishes: fit, look closer at a point, move
Out   `Viewport`: zoom and place, always such that the picture, and the room around it, stays in the window
Not   painting (`pictures.py`); Qt

Lengths of the window are logical pixels, of the picture its own pixels; zoom is the one divided by the other.
"""

from dataclasses import dataclass, replace

__all__ = ["MOST_ZOOM", "Viewport"]

MOST_ZOOM = 16.0  # one picture pixel is 16 screen pixels: nothing more can be seen beyond


@dataclass(frozen=True, slots=True, kw_only=True)
class Viewport:
    """A window onto a picture: `(x, y)` is the point of the picture in the middle of the window."""

    picture: tuple[float, float]
    window: tuple[float, float]
    margin: float = 0.0  # around the picture, window pixels
    beyond: float = 0.0  # around it, picture pixels: room for what lies outside
    zoom: float = 1.0
    x: float = 0.0
    y: float = 0.0

    @property
    def fit_zoom(self) -> float:
        """The zoom at which the whole picture is just seen, never enlarged beyond 4 screen pixels."""
        across = (self.window[0] - 2 * self.margin) / max(1.0, self.picture[0] + 2 * self.beyond)
        down = (self.window[1] - 2 * self.margin) / max(1.0, self.picture[1] + 2 * self.beyond)
        return min(4.0, max(0.001, min(across, down)))

    @property
    def is_fitted(self) -> bool:
        """Whether the whole picture is shown as large as it can be."""
        return abs(self.zoom - self.fit_zoom) < 1e-9

    def fitted(self) -> "Viewport":
        """The whole picture."""
        return replace(self, zoom=self.fit_zoom, x=self.picture[0] / 2, y=self.picture[1] / 2)

    def resized(self, width: float, height: float) -> "Viewport":
        """The same place in a window of another size; a fitted picture stays fitted."""
        other = replace(self, window=(width, height))
        return other.fitted() if self.is_fitted else other._held()

    def with_room(self, beyond: float) -> "Viewport":
        """So many pixels around the picture can be seen, too; a fitted picture stays fitted."""
        other = replace(self, beyond=beyond)
        return other.fitted() if self.is_fitted else other._held()

    def zoomed(self, factor: float, at_x: float, at_y: float) -> "Viewport":
        """`factor` times larger; the point of the picture under `(at_x, at_y)` of the window stays there."""
        zoom = min(MOST_ZOOM, max(min(self.fit_zoom, MOST_ZOOM), self.zoom * factor))
        if zoom <= self.fit_zoom:
            return self.fitted()
        fixed_x, fixed_y = self.to_picture(at_x, at_y)
        return replace(
            self,
            zoom=zoom,
            x=fixed_x - (at_x - self.window[0] / 2) / zoom,
            y=fixed_y - (at_y - self.window[1] / 2) / zoom,
        )._held()

    def moved(self, right: float, down: float) -> "Viewport":
        """The picture pushed by so many window pixels."""
        return replace(self, x=self.x - right / self.zoom, y=self.y - down / self.zoom)._held()

    def looking_at(self, x: float, y: float) -> "Viewport":
        """The same zoom with a point of the picture in the middle, as far as the edges allow."""
        return replace(self, x=x, y=y)._held()

    def to_picture(self, x: float, y: float) -> tuple[float, float]:
        """A point of the window in picture coordinates."""
        return (
            self.x + (x - self.window[0] / 2) / self.zoom,
            self.y + (y - self.window[1] / 2) / self.zoom,
        )

    def to_window(self, x: float, y: float) -> tuple[float, float]:
        """A point of the picture in window coordinates."""
        return (
            (x - self.x) * self.zoom + self.window[0] / 2,
            (y - self.y) * self.zoom + self.window[1] / 2,
        )

    def _held(self) -> "Viewport":
        """No empty border where there is picture left to show."""
        return replace(
            self,
            x=_held_along(self.x, self.picture[0], self.window[0] / self.zoom, self._round),
            y=_held_along(self.y, self.picture[1], self.window[1] / self.zoom, self._round),
        )

    @property
    def _round(self) -> float:
        """What may be seen around the picture, picture pixels."""
        return self.beyond + self.margin / self.zoom


def _held_along(middle: float, length: float, seen: float, margin: float) -> float:
    if length + 2 * margin <= seen:
        return length / 2
    return min(length + margin - seen / 2, max(seen / 2 - margin, middle))
