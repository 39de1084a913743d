"""Pictures that the tissue network learns from: crops of trays and real pictures, laid into one another.

In    `Pack`, what was prepared
Out   batches of float pictures (n, 3, size, size), 0-1, and labels (n, size, size): 0-9 as in
      `vision/tissue.py`, PLANT or REST where a mask tells no more
Not   colours and light (`tissue_colours.py`), storing (`tissue_storing.py`), the network (`learn_tissue.py`)

Everything is done on the device. What may differ between learning and use is changed here: place, turn,
scale, what lies under the leaves, over the ground and in the shade.
"""

import math

import torch
import torch.nn.functional as tf
from draws import DEVICE, even, normal
from made_mold import FUZZ, HULL, MEDIUM, with_made_mold
from tissue_pack import PLANT, REST, Pack
from torch import Tensor

LEAVES = (4, 6)  # first and last label of canopy
COPIED = 0.3
SHADE_STEP_PX = 4


def batch(pack: Pack, count: int, size: int) -> tuple[Tensor, Tensor]:
    """Five sixths trays, a sixth real pictures, things laid into one another; colours as they were.

    There are few real pictures with a mask: with a third of each batch they were learned by heart.
    """
    laid, sixth = count // 8, count // 6
    of_any = torch.multinomial(pack.weights, count - sixth, replacement=True)
    of_open = torch.multinomial(pack.weights * pack.open, sixth, replacement=True)
    x, y = crops(pack.pictures, pack.labels, pack.learned[torch.cat([of_open, of_any])], size)
    x[-sixth:], y[-sixth:] = crops(pack.real, pack.real_labels, any_real(pack, sixth), size, (0.38, 1.6))
    x, y = with_leaves_of_others(in_shade_between(x, y), y)
    x, y = with_mold_of_others(pack, x, y, slice(laid, 2 * laid))
    x = on_other_ground(pack, x, y, slice(count - 2 * sixth, count - sixth))
    return with_made_mold(x, y, slice(0, laid), slice(2 * laid, 3 * laid))


def any_real(pack: Pack, count: int) -> Tensor:
    """Numbers of real pictures, three in four of them with plants."""
    all_of_them = torch.randint(len(pack.real_labels), (count,), device=DEVICE)
    plants = pack.with_plants[torch.randint(len(pack.with_plants), (count,), device=DEVICE)]
    return torch.where(even(count) < 0.75, plants, all_of_them)


def crops(
    pictures: Tensor, labels: Tensor, drawn: Tensor, size: int, zoom: tuple[float, float] = (0.55, 1.9)
) -> tuple[Tensor, Tensor]:
    """Crops at any place and angle, mirrored, sheared a little, each at a zoom of its own.

    Over a quarter are cut from a copy that an app has stored.
    """
    count, (height, width) = len(drawn), pictures.shape[2:]
    copy = torch.randint(len(pictures) // len(labels), (count,), device=DEVICE) * (even(count) < COPIED)
    angle = even(count) * 2 * math.pi
    times = torch.exp(math.log(zoom[0]) + even(count) * math.log(zoom[1] / zoom[0]))
    mirrored = torch.where(even(count) < 0.5, -1.0, 1.0)
    sheared = normal(count) * 0.08
    half = size / 2 / times
    middle_x = width / 2 + (even(count) - 0.5) * (width - 60)
    middle_y = height / 2 + (even(count) - 0.5) * (height - 60)
    across, up = torch.cos(angle), torch.sin(angle)
    rows = [across * half * mirrored, (-up + sheared) * half, middle_x - width / 2]
    columns = [up * half * mirrored, across * half, middle_y - height / 2]
    way = torch.stack([torch.stack(rows, 1) * 2 / width, torch.stack(columns, 1) * 2 / height], 1)
    grid = tf.affine_grid(way, [count, 3, size, size], align_corners=False)
    how = {"padding_mode": "reflection", "align_corners": False}
    x = tf.grid_sample(pictures[drawn + len(labels) * copy].float() / 255, grid, mode="bilinear", **how)
    y = tf.grid_sample(labels[drawn][:, None].float(), grid, mode="nearest", **how)
    return x, y[:, 0].round().long()


def is_leaf(y: Tensor) -> Tensor:
    """Where canopy is, by label or by mask."""
    return ((y >= LEAVES[0]) & (y <= LEAVES[1])) | (y == PLANT)


def in_shade_between(x: Tensor, y: Tensor) -> Tensor:
    """Ground near and between leaves darker or lighter in four of ten pictures: shade is no leaf."""
    count, leaves = len(x), is_leaf(y)[:, None].float()
    reach = 2 * int(torch.randint(1, 6, (1,))) + 1
    few = tf.avg_pool2d(tf.avg_pool2d(leaves, SHADE_STEP_PX), reach, 1, reach // 2)
    near = tf.interpolate(few, x.shape[2:], mode="bilinear", align_corners=False)
    dark = (0.5 + 0.7 * normal(count, 1, 1, 1)) * (even(count, 1, 1, 1) < 0.4)
    through = torch.exp(-dark * near * (1 + 0.15 * normal(count, 3, 1, 1)))
    return torch.where(leaves > 0, x, x * through)


def with_leaves_of_others(x: Tensor, y: Tensor) -> tuple[Tensor, Tensor]:
    """Leaves of another picture, and sometimes its hulls, laid over every fifth or so, with their shade."""
    count, other = len(x), torch.randperm(len(x), device=DEVICE)
    laid = is_leaf(y[other]) | ((y[other] == HULL) & (even(count) < 0.5)[:, None, None])
    laid = laid & (even(count) < 0.22)[:, None, None]
    x = in_shade_of(x, laid[:, None].float())
    return torch.where(laid[:, None], x[other], x), torch.where(laid, y[other], y)


def in_shade_of(x: Tensor, leaves: Tensor) -> Tensor:
    """Darker beside what lies above, to one side, the same for all of `x`."""
    down, right = (int(way) for way in torch.randint(-10, 11, (2,)))
    few = tf.avg_pool2d(torch.roll(leaves, (down, right), (2, 3)), SHADE_STEP_PX)
    shade = tf.interpolate(tf.avg_pool2d(few, 3, 1, 1), x.shape[2:], mode="bilinear", align_corners=False)
    return x * (1 - 0.5 * even(len(x), 1, 1, 1) * shade)


def with_mold_of_others(pack: Pack, x: Tensor, y: Tensor, which: slice) -> tuple[Tensor, Tensor]:
    """Mold of another tray laid over medium and hulls of some pictures."""
    count = which.stop - which.start
    drawn = pack.moldy[torch.randint(len(pack.moldy), (count,), device=DEVICE)]
    over, its = crops(pack.pictures, pack.labels, drawn, x.shape[2])
    laid = (its == FUZZ) & ((y[which] == MEDIUM) | (y[which] == HULL) | (y[which] == FUZZ))
    thick = 0.6 + 0.4 * even(count, 1, 1, 1)
    x[which] = torch.where(laid[:, None], over * thick + x[which] * (1 - thick), x[which])
    y[which] = torch.where(laid, its, y[which])
    return x, y


def on_other_ground(pack: Pack, x: Tensor, y: Tensor, which: slice) -> Tensor:
    """Medium of most of some pictures covered by another tray's, by ground around plants, by a texture."""
    count = which.stop - which.start
    halves = (count // 2, count - count // 2)
    real = torch.randint(len(pack.real_labels), (halves[0],), device=DEVICE)
    trays = pack.learned[torch.multinomial(pack.open, halves[1], replacement=True)]
    one, its_one = crops(pack.real, pack.real_labels, real, x.shape[2], (0.5, 2.5))
    two, its_two = crops(pack.pictures, pack.labels, trays, x.shape[2])
    ground, its = torch.cat([one, two]), torch.cat([its_one, its_two])
    laid = ((its == REST) | (its == MEDIUM)) & (y[which] == MEDIUM) & (even(count) < 0.7)[:, None, None]
    thick = 0.3 + 0.7 * even(count, 1, 1, 1)
    x[which] = torch.where(laid[:, None], ground * thick + x[which] * (1 - thick), x[which])
    return x
