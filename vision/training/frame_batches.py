"""Batches that the frame networks learn from: views by chance, and what should be told of them.

In    `Scenes`, how wrongly views are placed
Out   *place*: the whole photo (256 x 192) and where the inner area and the outer rim are, also under leaves;
      *sides*: a rectified view with the inner area roughly in its middle, its true sides as the photo's lens
      bends them, its visible rim
Not   changes of pictures (`frame_pictures.py`), what an error costs (`frame_losses.py`)

Targets are drawn from the true corners and lens, never from what is visible.
"""

import math
from dataclasses import dataclass

import torch
import torch.nn.functional as tf
from frame_pictures import recoloured, seen
from frame_planes import Chance, bent, freed, moved, rectangle, solve, turn
from frame_scenes import Scenes, grounds
from torch import Tensor

PLACE_SIZE = (256, 192)
VIEW_MM = (640.0, 384.0)
INNER_MM = (508.0, 254.0)
OUTER_MM = (545.0, 278.0)
SIDE_POINTS = 17


@dataclass(frozen=True)
class Wrongness:
    """Standard deviations of how views are wrongly placed; `much` multiplies them, half of the views each."""

    turn: float = 0.065
    scale: float = 0.05
    shift_mm: float = 17.0
    corner_mm: float = 7.0
    much: tuple[float, float] = (0.25, 1.0)


GUESSED = Wrongness()  # as a tray that the place network has told


def whole_views(scenes: Scenes, ids: Tensor, chance: Chance) -> Tensor:
    """Homographies from the small whole picture to the photo: any turn, size, tilt, mirrored."""
    n = len(ids)
    width, height = PLACE_SIZE
    out = rectangle((width, height), n, chance.device)
    source = scenes.fineness.source
    factor = source[0] / width
    turned = chance.uniform(n, low=-math.pi, high=math.pi)
    turned = torch.where(chance.uniform(n) < 0.4, chance.normal(n) * 0.15, turned)
    scale = factor * torch.exp(chance.uniform(n, low=-0.45, high=0.5))
    flip = torch.where(chance.uniform(n, 1, 1) < 0.5, -1.0, 1.0)
    spread = out * torch.cat([flip, torch.ones_like(flip)], -1)
    spread = spread + chance.normal(n, 4, 2) * 9
    middle = scenes.corners[ids].mean(1) * 0.6 + 0.4 * torch.tensor(source, device=chance.device) / 2
    place = spread @ turn(turned, scale).transpose(1, 2) + (middle + chance.normal(n, 2) * 45)[:, None]
    start = out + torch.tensor([width, height], device=chance.device) / 2
    return solve(start, place)


def near_views(scenes: Scenes, ids: Tensor, chance: Chance, wrongness: Wrongness) -> tuple[Tensor, Tensor]:
    """Homographies from the rectified view to the photo, wrongly placed by chance; true sides."""
    n = len(ids)
    inner = rectangle(INNER_MM, n, chance.device)
    corners = scenes.corners[ids]
    flip_x = torch.where(chance.uniform(n, 1) < 0.5, -1.0, 1.0)
    flip_y = torch.where(chance.uniform(n, 1) < 0.5, -1.0, 1.0)
    sign = torch.stack([flip_x, flip_y], -1)
    to_photo = solve(inner * sign, corners)
    much = torch.where(chance.uniform(n) < 0.5, *wrongness.much)
    angle = chance.normal(n) * wrongness.turn * much
    scale = torch.exp(chance.normal(n) * wrongness.scale * much)
    each = much[:, None, None]
    wrong = inner @ turn(angle, scale).transpose(1, 2) + chance.normal(n, 1, 2) * wrongness.shift_mm * each
    wrong = wrong + chance.normal(n, 4, 2) * wrongness.corner_mm * each
    px = scenes.fineness.sides[0] / VIEW_MM[0]
    start = (inner + torch.tensor(VIEW_MM, device=chance.device) / 2) * px
    to_mm = solve(start, wrong)
    matrix = to_photo @ to_mm
    return matrix, true_sides(scenes, ids, inner, sign, matrix)


def true_sides(scenes: Scenes, ids: Tensor, inner: Tensor, sign: Tensor, matrix: Tensor) -> Tensor:
    """Points (n, 4, k, 2) along top, bottom, left and right side in the view, as the lens bends them."""
    share = torch.linspace(0, 1, SIDE_POINTS, device=inner.device)[:, None]
    sides = [
        inner[:, None, a] + share * (inner[:, b] - inner[:, a])[:, None]
        for a, b in ((0, 1), (3, 2), (0, 3), (1, 2))
    ]
    source, lens = scenes.fineness.source, scenes.lens[ids]
    flat = solve(inner * sign, freed(scenes.corners[ids], lens, source))
    photo = bent(moved(flat, torch.cat(sides, 1)), lens, source)
    return moved(torch.linalg.inv(matrix), photo).unflatten(1, (4, SIDE_POINTS))


def drawn(quad: Tensor, size: tuple[int, int]) -> Tensor:
    """Soft masks of quadrangles (n, 4, 2) at half of `size`, (n, h/2, w/2)."""
    n, width, height = len(quad), size[0] // 2, size[1] // 2
    y, x = torch.meshgrid(
        torch.arange(height, device=quad.device) + 0.5,
        torch.arange(width, device=quad.device) + 0.5,
        indexing="ij",
    )
    quad = quad / 2
    side = quad.roll(-1, 1) - quad
    area = (quad[..., 0] * quad.roll(-1, 1)[..., 1] - quad[..., 1] * quad.roll(-1, 1)[..., 0]).sum(1)
    far = torch.full((n, height, width), 1e3, device=quad.device)
    for k in range(4):
        away = side[:, k, 0, None, None] * (y - quad[:, k, 1, None, None]) - side[:, k, 1, None, None] * (
            x - quad[:, k, 0, None, None]
        )
        far = torch.minimum(far, away * area.sign()[:, None, None] / side[:, k].norm(dim=-1)[:, None, None])
    return (far + 0.5).clamp(0, 1)


def place_batch(scenes: Scenes, n: int, chance: Chance) -> tuple[Tensor, Tensor]:
    """Whole pictures 0-255 and their two masks; every tenth holds no tray."""
    ids = chance.pick(scenes.weight, n)
    matrix = whole_views(scenes, ids, chance)
    picture, _ = seen(scenes, ids, matrix, PLACE_SIZE, chance)
    to_photo = solve(rectangle(INNER_MM, n, chance.device), scenes.corners[ids])
    back = torch.linalg.inv(matrix) @ to_photo
    quads = [moved(back, rectangle(size, n, chance.device)) for size in (INNER_MM, OUTER_MM)]
    target = torch.stack([drawn(quad, PLACE_SIZE) for quad in quads], 1)
    empty = max(1, n // 10)
    bare = tf.avg_pool2d(grounds(scenes, empty, PLACE_SIZE, chance), 2)
    picture = torch.cat([recoloured(bare, chance), picture[empty:]])
    return picture * 255, torch.cat([torch.zeros_like(target[:empty]), target[empty:]])


def sides_batch(scenes: Scenes, n: int, chance: Chance, wrongness: Wrongness = GUESSED) -> tuple[Tensor, ...]:
    """Rectified pictures 0-255, true sides in them, visible rim, whether it is known, which hold a tray."""
    size = scenes.fineness.sides
    ids = chance.pick(scenes.weight, n)
    matrix, sides = near_views(scenes, ids, chance, wrongness)
    picture, rim = seen(scenes, ids, matrix, size, chance)
    empty = max(1, n // 16)
    bare = tf.avg_pool2d(grounds(scenes, empty, size, chance), 2)
    picture = torch.cat([recoloured(bare, chance), picture[empty:]])
    rim = torch.cat([torch.zeros_like(rim[:empty]), rim[empty:]])
    known = scenes.known[ids].clone()
    known[:empty] = True
    tray = torch.arange(n, device=chance.device) >= empty
    return picture * 255, sides, tf.avg_pool2d(rim, 2), known, tray
