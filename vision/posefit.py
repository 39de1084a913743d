"""Pose fit: marks seen in a photo -> the camera that explains them best, and how sure that is.

In    marks: corners in the photo (edge coordinates, px) and in tray axes (mm); size of the photo; what is
      known of the focal length
Out   `Fit`: the pose, how well it fits, how sure it is
Not   the camera itself and its lens (`pose.py`), another focal length than the told one (`freefit.py`),
      which marks to believe (`station.py`)

The fit is Gauss-Newton over few numbers with priors, so that what the marks cannot tell (a lens term with
two cards, the focal length of a photo taken straight down) stays at what is usual.
"""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.pose import Pose, Seen, first_poses, usual_aside, usual_focal
from vision.traytype import TAG_HEIGHT_MM, TAG_MARK_MM, square

__all__ = ["Fit", "best_fit", "better", "fit_pose"]

Array = NDArray[np.float64]

LENS_SPREAD = (0.015, 0.008)  # phone main cameras are within about 1-2 % at the corner
BENCH_SPREAD_MM = 0.7  # a wire shelf lifts the cards by a millimetre or two
SHRINK_SPREAD_PX = 1.0  # blur pulls the corners of a mark inwards

CENTRE_PX, SHRINK_PX, SHAPE_PX = 0.15, 0.35, 0.30  # what corners refined to a part of a pixel scatter by
HUBER = 2.5
_FREEDOM = 8  # numbers in four corners
_UNTOLD = 7  # turn, shift and shrinking have no prior worth the name

# what is fitted: turn (3), shift (3), log focal length, two lens terms, height of the bench, shrinking;
# then of the tag, where there is one: x, y, turn; last, of a photo that may be cropped: axis aside (2)
_FOCAL, _LENS, _BENCH, _SHRINK, _TAG = 6, 7, 9, 10, 11
_TURN_AND_SHIFT = (3.0, 3.0, 3.0, 1e4, 1e4, 1e4)  # spreads before anything was seen, rad and mm
_BENCH_AND_TAG = (BENCH_SPREAD_MM, SHRINK_SPREAD_PX, 1e3, 1e3, 1.0)
_STEPS = (1e-6, 1e-6, 1e-6, 1e-3, 1e-3, 1e-3, 1e-6, 1e-6, 1e-6, 1e-3, 1e-3)
_TAG_STEPS, _ASIDE_STEPS = (1e-3, 1e-3, 1e-6), (1e-2, 1e-2)


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """A pose, its misfit in expected scatters (1 = as good as marks can be), covariance of what is fitted."""

    pose: Pose
    misfit: float
    covariance: Array
    values: Array
    aside: tuple[int, ...] = ()  # which of the values are the axis', where that was fitted
    seen: tuple[Seen, ...] = ()  # the marks that it was fitted to
    rival: Pose | None = None  # another camera that suits the marks better, and yet was not believed

    def expected(self, quad_mm: Array) -> Array:
        """(4, 2) px where the corners of a card (4, 3) on the bench would be seen, drawn inwards by blur."""
        corners = self.pose.project(quad_mm + np.array([0.0, 0.0, self.values[_BENCH]]))
        arms = corners - corners.mean(axis=0)
        return np.asarray(corners - self.values[_SHRINK] * arms / np.linalg.norm(arms, axis=1, keepdims=True))

    def covariance_of(self, seen: Callable[[Pose], Array]) -> Array:
        """Covariance (n, n) of what is seen of any places, (n,) numbers, with such a pose."""
        base = seen(self.pose)
        steps = np.sqrt(np.maximum(np.diag(self.covariance), 0)) * 0.1 + 1e-9
        of_camera = [k for k in range(len(steps)) if k < _TAG or k in self.aside]
        slopes = []
        for k in of_camera:
            values = self.values.copy()
            values[k] += steps[k]
            slopes.append((seen(_posed(values, self.pose, self.aside)) - base) / steps[k])
        slope = np.stack(slopes, axis=-1)
        return np.asarray(slope @ self.covariance[np.ix_(of_camera, of_camera)] @ slope.T, np.float64)

    def spread(self, places_mm: Array) -> float:
        """Standard error of the worst of some places (n, 3) once seen in the photo, in mm at those places.

        How far away a rival sees those places is added; infinite where the marks contradict each other so
        much that none can be reckoned.
        """
        base = self.pose.project(places_mm)
        cov = self.covariance_of(lambda pose: pose.project(places_mm).ravel())
        square = np.diag(cov).reshape(-1, 2).sum(axis=1)
        if not (square >= 0).all():
            return math.inf
        ring = np.linalg.norm(base - np.roll(base, -1, axis=0), axis=1)
        ring_mm = np.linalg.norm(places_mm - np.roll(places_mm, -1, axis=0), axis=1)
        px_per_mm = (ring / ring_mm).mean()
        apart = (
            0.0 if self.rival is None else np.linalg.norm(self.rival.project(places_mm) - base, axis=1).max()
        )
        return math.hypot(float(np.sqrt(square).max()), float(apart)) / float(px_per_mm)


def best_fit(
    seen: Sequence[Seen], size: tuple[int, int], focal_35mm: float | None, hopeless: float = math.inf
) -> Fit | None:
    """The camera that explains all marks best, from any first pose; None where none leads to a camera, or
    none to a misfit that is not `hopeless`.

    No fit is better than 1: with such a one the mirror pose is not tried. Of a photo of a shape that no
    camera makes the axis is fitted, too: it was cropped.
    """
    focal, spread = usual_focal(size, focal_35mm)
    aside = usual_aside(size)
    best: Fit | None = None
    for start in first_poses(seen, size, focal):
        best = better(best, fit_pose(seen, start, spread, aside_spread=aside, hopeless=hopeless))
        if best is not None and best.misfit <= 1.0:
            break
    return best


def better(one: Fit | None, other: Fit | None) -> Fit | None:
    """The one with the smaller misfit, of as many as there are."""
    if one is None or other is None:
        return one or other
    return other if other.misfit < one.misfit else one


def fit_pose(
    seen: Sequence[Seen],
    start: Pose,
    focal_spread: float,
    lens_spread: tuple[float, float] = LENS_SPREAD,
    aside_spread: float | None = None,
    hopeless: float = math.inf,
) -> Fit | None:
    """The camera that explains all marks best, from a first one; None where that leads nowhere.

    Where marks disagree (a card that was pushed) a larger scatter is expected of them all: the priors then
    count for more, and the answer is less sure. That hardly makes marks agree better, so it is given up where
    the misfit is `hopeless` before.
    """
    tag = next((s for s in seen if s.quad_mm is None), None)
    count = _TAG + (3 if tag is not None else 0)
    aside = () if aside_spread is None else (count, count + 1)
    values = np.zeros(count + len(aside))
    spread = np.array([*_TURN_AND_SHIFT, focal_spread, *lens_spread, *_BENCH_AND_TAG])[:count]
    spread = np.append(spread, [aside_spread] * len(aside))
    usual = np.zeros(len(values))
    usual[_SHRINK] = values[_SHRINK] = 0.7
    if tag is not None:
        values[_TAG:count] = _first_tag(tag, start)
        usual[_TAG:count] = values[_TAG:count]
    scene = _scene(seen, aside)
    free = max(1, _FREEDOM * len(seen) - _UNTOLD)
    scatter = 1.0
    for _ in range(3):
        values, told, rests = _gauss_newton(scene, start, values, usual, spread, scatter)
        misfit = math.sqrt(float((rests**2).sum()) / free)
        if not misfit < hopeless:  # nor where it ran away, to no number at all
            return None
        start = _posed(values, start, aside)  # begin again from there, so that turns stay small
        begun = [*range(_FOCAL + 1), *aside]
        usual[[_FOCAL, *aside]] -= values[[_FOCAL, *aside]]
        values[begun] = 0
        scatter = max(1.0, math.sqrt(float(np.minimum(rests**2, HUBER**2 * scatter**2).sum()) / free))
    misfit = max(1.0, misfit)
    return Fit(
        pose=start,
        misfit=misfit,
        covariance=np.asarray(np.linalg.inv(told / misfit**2 + np.diag(1 / spread**2)), np.float64),
        values=values,
        aside=aside,
        seen=tuple(seen),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Scene:
    """All marks as arrays: corners (m, 4, 2) px, quads (m, 4, 3) mm, and which mark slides, the tag (m,)."""

    corners: Array
    quads: Array  # the tag's as if it lay at the origin
    slides: NDArray[np.bool_]
    aside: tuple[int, ...]


def _scene(seen: Sequence[Seen], aside: tuple[int, ...]) -> _Scene:
    at_origin = square(TAG_MARK_MM) + np.array([0.0, 0.0, TAG_HEIGHT_MM])
    return _Scene(
        corners=np.stack([s.corners for s in seen]).astype(np.float64),
        quads=np.stack([at_origin if s.quad_mm is None else s.quad_mm for s in seen]).astype(np.float64),
        slides=np.array([s.quad_mm is None for s in seen]),
        aside=aside,
    )


@np.errstate(over="ignore", invalid="ignore")  # from a wrong start it may run away
def _gauss_newton(
    scene: _Scene, start: Pose, values: Array, usual: Array, spread: Array, scatter: float
) -> tuple[Array, Array, Array]:
    """Values, what the marks told of them (inverse covariance), rests (marks, 11); at most a dozen steps."""
    tag_steps = _TAG_STEPS if scene.slides.any() else ()
    steps = np.array([*_STEPS, *tag_steps, *(_ASIDE_STEPS if scene.aside else ())])
    prior = np.diag(1 / spread**2)
    moves = np.vstack([np.zeros(len(values)), np.diag(steps)])  # where we are, then a step along each value
    for _ in range(12):
        rests = _rests(scene, start, values + moves).reshape(len(moves), -1)
        here, slope = rests[0], (rests[1:] - rests[0]).T / steps
        weight = np.minimum(1, HUBER * scatter / np.maximum(np.abs(here), 1e-9)) / scatter**2
        normal = slope.T @ (slope * weight[:, None]) + prior
        move = np.linalg.solve(normal, -slope.T @ (weight * here) - (values - usual) / spread**2)
        values = values + move
        if (np.abs(move) < steps).all():
            break
    return values, np.asarray(slope.T @ slope, np.float64), _rests(scene, start, values[None])[0]


def _posed(values: Array, start: Pose, aside: tuple[int, ...]) -> Pose:
    x, y = values[list(aside)] if aside else (0.0, 0.0)
    turn = np.asarray(cv2.Rodrigues(values[:3])[0], dtype=np.float64) @ start.turn
    return replace(
        start,
        turn=turn,
        shift=start.shift + values[3:6],
        focal_px=start.focal_px * math.exp(float(np.clip(values[_FOCAL], -1, 1))),
        lens=(float(values[_LENS]), float(values[_LENS + 1])),
        aside=(start.aside[0] + float(x), start.aside[1] + float(y)),
    )


def _rests(scene: _Scene, start: Pose, many: Array) -> Array:
    """(k, marks, 11) for `many` (k, n) sets of values: seen minus expected, in expected scatters, split into
    centre, shrinking and shape.

    All sets go through at once: one by one the slopes cost as much as the network.
    """
    expected = _projected(scene, start, many)
    arms = expected - expected.mean(axis=2, keepdims=True)
    arms = arms / np.maximum(np.linalg.norm(arms, axis=3, keepdims=True), 1e-9)
    off = scene.corners - expected
    centre = off.mean(axis=2)
    off = off - centre[:, :, None]
    inward = -(off * arms).sum(axis=3).mean(axis=2)
    shape = off + inward[:, :, None, None] * arms
    rests = np.empty((*inward.shape, 11))
    rests[..., :2] = centre / CENTRE_PX
    rests[..., 2] = (inward - many[:, _SHRINK, None]) / SHRINK_PX
    rests[..., 3:] = shape.reshape(*inward.shape, 8) / SHAPE_PX
    return rests


def _projected(scene: _Scene, start: Pose, many: Array) -> Array:
    """(k, marks, 4, 2) px: where the marks' corners would be seen with each set of values (see `Pose`)."""
    turns = _turns(many[:, :3]) @ start.turn
    seen = _places(scene, many).reshape(len(many), -1, 3) @ turns.transpose(0, 2, 1)
    seen += (start.shift + many[:, 3:6])[:, None]
    focal = start.focal_px * np.exp(np.clip(many[:, _FOCAL], -1, 1))
    flat = focal[:, None, None] * seen[..., :2] / np.maximum(seen[..., 2:], 1.0)
    r2 = (flat**2).sum(axis=2, keepdims=True) / (math.hypot(*start.size) / 2) ** 2
    first, second = many[:, _LENS, None, None], many[:, _LENS + 1, None, None]
    bent = flat * (1 + first * r2 + second * r2**2) + start.middle
    if scene.aside:
        bent = bent + many[:, None, list(scene.aside)]
    return np.asarray(bent.reshape(len(many), -1, 4, 2))


def _places(scene: _Scene, many: Array) -> Array:
    """(k, marks, 4, 3) mm: the cards lifted with the bench, the tag where it has slid to."""
    places = np.repeat(scene.quads[None], len(many), axis=0)
    places[..., 2] += many[:, _BENCH, None, None] * ~scene.slides[:, None]
    if scene.slides.any():
        x, y, angle = many[:, _TAG : _TAG + 3].T
        c, s = np.cos(angle), np.sin(angle)
        level = np.stack([np.stack([c, s], axis=1), np.stack([-s, c], axis=1)], axis=1)
        slid = scene.quads[scene.slides][:, :, :2] @ level[:, None] + np.stack([x, y], axis=1)[:, None, None]
        places[:, scene.slides, :, :2] = slid
    return places


def _turns(vectors: Array) -> Array:
    """Rotation matrices (k, 3, 3) of rotation vectors (k, 3), rad (Rodrigues' formula)."""
    angle = np.linalg.norm(vectors, axis=1)[:, None, None]
    x, y, z = vectors.T
    none = np.zeros_like(x)
    cross = np.stack([none, -z, y, z, none, -x, -y, x, none], axis=1).reshape(-1, 3, 3)
    whole = np.maximum(angle, 1e-12)
    return np.asarray(
        np.eye(3) + np.sin(angle) / whole * cross + (1 - np.cos(angle)) / whole**2 * cross @ cross
    )


def _first_tag(tag: Seen, camera: Pose) -> Array:
    back = np.linalg.inv(camera.plane(TAG_HEIGHT_MM))
    flat = np.column_stack([tag.corners, np.ones(4)]) @ back.T
    flat = flat[:, :2] / flat[:, 2:]
    along = flat[1] - flat[0] + flat[2] - flat[3]
    return np.array([*flat.mean(0), math.atan2(along[1], along[0])])
