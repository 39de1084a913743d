"""Pictures of trays as a camera might have given them: other benches, light, leaves, strips, blur.

In    `Scenes`, homographies from picture to photo
Out   pictures (n, 3, h, w), 0-1, and how much rim is visible in them
Not   which views are taken, what should be told of them (`frame_batches.py`)
"""

import math

import torch
import torch.nn.functional as tf
from frame_planes import Chance, grid_of, rectangle, solve, turn
from frame_scenes import Scenes, grounds
from torch import Tensor

PAD = 114 / 255


def seen(
    scenes: Scenes, ids: Tensor, matrix: Tensor, size: tuple[int, int], chance: Chance
) -> tuple[Tensor, ...]:
    """Pictures (n, 3, h, w) 0-1 as a camera might give them, and how much rim is visible (n, 1, h, w)."""
    n = len(ids)
    stack = scenes.stack[ids].float() / 255
    grid = grid_of(matrix.float(), size, scenes.fineness.source)
    inside = (grid.abs() < 1).all(-1)[:, None].float()
    layers = tf.grid_sample(stack, grid, padding_mode="border", align_corners=False)
    picture = layers[:, :3]
    loose = chance.often(0.6, n)
    tray = (layers[:, 3:4] * loose + layers[:, 4:5] * (1 - loose)) * inside
    rim = layers[:, 5:6] * inside
    changed = chance.often(0.6, n) * scenes.known[ids].float()[:, None, None, None]
    ground = grounds(scenes, n, size, chance)
    ground = ground * (1 - cast_shadow(tray, chance))
    mixed = picture * tray + ground * (1 - tray)
    beyond = torch.full_like(picture, PAD)
    picture = torch.where(changed > 0, mixed, picture * inside + beyond * (1 - inside))
    picture = tinted_rim(picture, rim, chance)
    picture, rim, inside = tf.avg_pool2d(picture, 2), tf.avg_pool2d(rim, 2), tf.avg_pool2d(inside, 2)
    picture, rim = with_strips(picture, rim, size, chance)
    picture, rim = with_leaves(scenes, picture, rim, size, chance)
    picture = shaded(picture, chance)
    picture = recoloured(picture, chance)
    picture = blurred(picture, chance)
    picture = picture + chance.normal(*picture.shape) * (chance.uniform(n, 1, 1, 1) ** 2 * 0.06)
    cut = chance.often(0.25, n) * changed
    kept = torch.where(cut > 0, random_window(n, size, chance), torch.ones_like(rim))
    kept = kept * torch.where(changed > 0, torch.ones_like(inside), (inside > 0.5).float())
    picture = picture.clamp(0, 1) * kept + PAD * (1 - kept)
    return picture, rim * kept


def cast_shadow(tray: Tensor, chance: Chance) -> Tensor:
    """The soft dark around a tray on its bench."""
    n, _, height, width = tray.shape
    small = tf.avg_pool2d(tray, 8)
    for _ in range(2):
        small = tf.avg_pool2d(small, 5, 1, 2)
    shift = chance.uniform(n, 2, low=-0.12, high=0.12)
    theta = torch.zeros(n, 2, 3, device=tray.device)
    theta[:, 0, 0] = theta[:, 1, 1] = 1.0
    theta[:, :, 2] = shift
    grid = tf.affine_grid(theta, [n, 1, height, width], align_corners=False)
    return tf.grid_sample(small, grid, align_corners=False) * chance.uniform(n, 1, 1, 1, high=0.75)


def tinted_rim(picture: Tensor, rim: Tensor, chance: Chance) -> Tensor:
    """Trays of other plastics: lighter, darker, a little coloured."""
    n = len(picture)
    gain = torch.exp(chance.normal(n, 1, 1, 1) * 0.45) * (1 + chance.normal(n, 3, 1, 1) * 0.12)
    lift = chance.uniform(n, 1, 1, 1, low=-0.03, high=0.18) * chance.often(0.5, n)
    other = (picture * gain + lift).clamp(0, 1)
    much = rim * chance.often(0.5, n)
    return picture * (1 - much) + other * much


def with_strips(picture: Tensor, rim: Tensor, size: tuple[int, int], chance: Chance) -> tuple[Tensor, Tensor]:
    """Labels, rulers, tapes: bright or coloured strips anywhere."""
    n, _, height, width = picture.shape
    y = torch.linspace(-0.5, 0.5, height, device=picture.device)[None, :, None] * size[1]
    x = torch.linspace(-0.5, 0.5, width, device=picture.device)[None, None, :] * size[0]
    for _ in range(2):
        angle = chance.uniform(n, 1, 1, high=6.3)
        where = chance.uniform(n, 2, 1, 1, low=-0.5, high=0.5)
        u = (x - where[:, 0] * size[0]) * torch.cos(angle) + (y - where[:, 1] * size[1]) * torch.sin(angle)
        v = (y - where[:, 1] * size[1]) * torch.cos(angle) - (x - where[:, 0] * size[0]) * torch.sin(angle)
        long, wide = chance.uniform(n, 1, 1, low=5, high=80), chance.uniform(n, 1, 1, low=2, high=9)
        on = ((u.abs() < long) & (v.abs() < wide)).float()[:, None] * chance.often(0.3, n)
        colour = chance.uniform(n, 1, 1, 1) * 0.8 + 0.2 + chance.normal(n, 3, 1, 1) * 0.08
        picture = picture * (1 - on) + colour.clamp(0, 1) * on
        rim = rim * (1 - on)
    return picture, rim


def smooth_noise(n: int, height: int, width: int, cells: int, chance: Chance) -> Tensor:
    """Even noise of a few cells across, blown up smoothly."""
    noise = chance.uniform(n, 1, cells, cells + 2)
    return tf.interpolate(noise, size=(height, width), mode="bicubic", align_corners=False)


def with_leaves(
    scenes: Scenes, picture: Tensor, rim: Tensor, size: tuple[int, int], chance: Chance
) -> tuple[Tensor, Tensor]:
    """Leaves of another photo hang over this one in patches."""
    n, _, height, width = picture.shape
    ids = chance.pick(scenes.known.float(), n)
    source = scenes.fineness.source
    corners = rectangle((float(source[0]), float(source[1])), n, chance.device) * 0.5
    scale = torch.exp(chance.uniform(n, low=-0.6, high=0.5))
    corners = corners @ turn(chance.uniform(n, high=6.3), scale).transpose(1, 2) + chance.normal(n, 1, 2) * 40
    start = (
        rectangle(tuple(map(float, size)), n, chance.device) + torch.tensor(size, device=chance.device) / 2
    )
    place = corners + torch.tensor(source, device=chance.device) / 2
    grid = grid_of(solve(start, place).float(), size, source, 1)
    layers = tf.grid_sample(scenes.stack[ids].float() / 255, grid, align_corners=False)
    patch = smooth_noise(n, height, width, 5, chance)
    level = chance.uniform(n, 1, 1, 1, low=0.45, high=0.8)
    on = (layers[:, 6:7] > 0.5).float() * (patch > level).float() * chance.often(0.55, n)
    on = tf.avg_pool2d(on, 3, 1, 1)
    return picture * (1 - on) + layers[:, :3] * on, rim * (1 - on)


def shaded(picture: Tensor, chance: Chance) -> Tensor:
    """Hard and soft shadows, uneven light."""
    n, _, height, width = picture.shape
    y = torch.linspace(-0.5, 0.5, height, device=picture.device)[None, :, None]
    x = torch.linspace(-0.5, 0.5, width, device=picture.device)[None, None, :]
    angle = chance.uniform(n, 1, 1, high=6.3)
    far = x * torch.cos(angle) + y * torch.sin(angle) - chance.uniform(n, 1, 1, low=-0.3, high=0.3)
    edge = torch.sigmoid(far * torch.exp(chance.uniform(n, 1, 1, low=1.5, high=6)))[:, None]
    dark = 1 - edge * chance.uniform(n, 1, 1, 1, high=0.7) * chance.often(0.35, n)
    cloud = smooth_noise(n, height, width, 3, chance) - 0.5
    return picture * dark * (1 + cloud * chance.uniform(n, 1, 1, 1, high=0.5))


def recoloured(picture: Tensor, chance: Chance) -> Tensor:
    """Exposure, white balance, gamma, saturation, hue, purple light."""
    n = len(picture)
    gamma = torch.exp(chance.normal(n, 1, 1, 1) * 0.25)
    picture = picture.clamp(1e-4, 1) ** gamma
    turned = chance.normal(n) * 0.5 * (chance.uniform(n) < 0.5)
    turned = torch.where(chance.uniform(n) < 0.12, chance.uniform(n, low=-math.pi, high=math.pi), turned)
    cos, third = torch.cos(turned), 1 / 3
    rest = torch.sin(turned) / math.sqrt(3)
    hue = torch.zeros(n, 3, 3, device=picture.device)
    for row in range(3):
        for column in range(3):
            hue[:, row, column] = third * (1 - cos)
        hue[:, row, row] += cos
        hue[:, row, (row + 1) % 3] -= rest
        hue[:, row, (row + 2) % 3] += rest
    picture = torch.einsum("nij,njhw->nihw", hue, picture)
    grey = picture.mean(1, keepdim=True)
    picture = grey + (picture - grey) * chance.uniform(n, 1, 1, 1, high=1.7)
    gain = torch.exp(chance.normal(n, 3, 1, 1) * 0.13 + chance.normal(n, 1, 1, 1) * 0.3)
    purple = torch.tensor([1.0, 0.45, 1.0], device=picture.device).reshape(1, 3, 1, 1)
    gain = torch.where(chance.often(0.1, n) > 0, gain * purple, gain)
    return (picture * gain).clamp(0, 1)


def blurred(picture: Tensor, chance: Chance) -> Tensor:
    """Out of focus a little or more."""
    n = len(picture)
    soft = tf.avg_pool2d(tf.pad(picture, (1, 1, 1, 1), mode="replicate"), 3, 1)
    softer = tf.avg_pool2d(tf.pad(soft, (1, 1, 1, 1), mode="replicate"), 3, 1)
    much, more = (
        chance.uniform(n, 1, 1, 1) * chance.often(0.4, n),
        chance.uniform(n, 1, 1, 1) * chance.often(0.15, n),
    )
    picture = picture + (picture - soft) * chance.uniform(n, 1, 1, 1, high=0.8) * chance.often(0.3, n)
    return picture * (1 - much) * (1 - more) + soft * much * (1 - more) + softer * more


def random_window(n: int, size: tuple[int, int], chance: Chance) -> Tensor:
    """1 inside a picture that ends somewhere, 0 beyond."""
    width, height = size
    x = torch.arange(width, device=chance.device)[None, None, None, :] / width
    y = torch.arange(height, device=chance.device)[None, None, :, None] / height
    low, high = (
        chance.uniform(2, n, 1, 1, 1, low=-0.2, high=0.2),
        chance.uniform(2, n, 1, 1, 1, low=0.8, high=1.2),
    )
    return ((x > low[0]) & (x < high[0]) & (y > low[1]) & (y < high[1])).float()
