"""Other tissues, other light, another lens: changes of colour for pictures to learn from.

In    pictures (n, 3, size, size), 0-1, and their labels
Out   the same pictures in other colours
Not   which pictures are drawn (`tissue_pictures.py`), what storing takes from them (`tissue_storing.py`)
"""

import torch
import torch.nn.functional as tf
from draws import DEVICE, even, field, normal
from tissue_pack import PLANT, REST
from torch import Tensor

TOGETHER = ((0, 1, 9), (2,), (3,), (4,), (5,), (6,), (7, 8), (PLANT,), (REST,))  # get one change of colour
BLUR_REACH = 3
LUMA = (0.299, 0.587, 0.114)
GAIN_SD = torch.tensor([0.21, 0.21, *[0.13] * 7])[:, None]  # of each set of `TOGETHER`
COLOURFUL_SD = torch.tensor([0.35, 0.35, 0.35, *[0.18] * 6])[:, None]


def in_other_colours(x: Tensor, y: Tensor, strength: float) -> Tensor:
    """Other tissues, other light, another lens; `strength` says how far colours and light are changed."""
    return sharper_or_softer(in_other_light(recoloured(x, y, strength), strength))


def recoloured(x: Tensor, y: Tensor, strength: float) -> Tensor:
    """Every tissue with a change of colour of its own, in half of the pictures: hues cannot be relied on.

    A change of colourfulness and contrast about the tissue's mean, then a gain, is a x + b grey + c: nine
    maps, softened over 3 px where tissues meet.
    """
    count, groups = len(x), len(TOGETHER)
    group, grey = of_group(y), luma(x)
    changed = (even(count, 1, 1) < 0.5).float() * strength
    gain = torch.exp(
        (normal(count, groups, 3) * GAIN_SD.to(DEVICE) + normal(count, groups, 1) * 0.18) * changed
    )
    colourful = torch.exp(normal(count, groups, 1) * COLOURFUL_SD.to(DEVICE) * changed)
    contrast = torch.exp(normal(count, groups, 1) * 0.2 * changed)
    mean, mean_grey = means_of_groups(torch.cat([x, grey], 1), group).split((3, 1), 2)
    mean = mean_grey + (mean - mean_grey) * colourful
    factors = torch.cat(
        [gain * contrast * colourful, gain * contrast * (1 - colourful), gain * (1 - contrast) * mean], 2
    )
    maps = torch.gather(factors.half(), 1, group.reshape(count, -1, 1).expand(-1, -1, 9)).reshape(
        *group.shape, 9
    )
    maps = tf.avg_pool2d(maps.permute(0, 3, 1, 2), 3, 1, 1, count_include_pad=False)
    own, of_grey, shift = maps.split(3, 1)
    return (own * x + of_grey * grey + shift).clamp(0, 1)


def of_group(y: Tensor) -> Tensor:
    """Number of the set of labels that change colour together."""
    table = torch.zeros(256, dtype=torch.long, device=DEVICE)
    for number, labels in enumerate(TOGETHER):
        table[list(labels)] = number
    return table[y]


def means_of_groups(planes: Tensor, group: Tensor, apart: int = 4) -> Tensor:
    """Mean of every plane over each group, (n, groups, planes), from every fourth pixel both ways."""
    few = planes[..., ::apart, ::apart].flatten(2)
    member = tf.one_hot(group[:, ::apart, ::apart].flatten(1), len(TOGETHER)).float()
    return (few @ member / member.sum(1, keepdim=True).clamp(min=1)).transpose(1, 2)


def in_other_light(x: Tensor, strength: float) -> Tensor:
    """Shade, hard shadow, exposure, white balance, two lights, gamma, colourfulness and a turn of hue."""
    count, size = len(x), x.shape[2]
    soft = torch.exp(field(count, size, 4) * 0.25 * even(count, 1, 1, 1))
    hard = torch.sigmoid(field(count, size, 3) * 40) * even(count, 1, 1, 1) * 0.75
    hard = hard * (even(count, 1, 1, 1) < 0.25).float()
    mixed = (even(count, 1, 1, 1) < 0.3).float()
    light = x.clamp(0, 1) ** 2.2 * soft * (1 - hard)
    light = light * torch.exp(normal(count, 1, 1, 1) * 0.38 * strength)
    light = light * torch.exp(normal(count, 3, 1, 1) * 0.13 * strength)
    light = light * torch.exp(field(3 * count, size, 2).reshape(x.shape) * 0.3 * strength * mixed)
    x = light.clamp(0, 1) ** (1 / 2.2)
    x = x ** torch.exp(normal(count, 1, 1, 1) * 0.15 * strength)
    grey = luma(x)
    x = grey + (x - grey) * torch.exp(normal(count, 1, 1, 1) * 0.22 * strength)
    turn = (normal(count) * 0.08 * strength)[:, None, None]
    u, v = x[:, 0] - x[:, 1], x[:, 2] - x[:, 1]
    u, v = torch.cos(turn) * u - torch.sin(turn) * v, torch.sin(turn) * u + torch.cos(turn) * v
    green = grey[:, 0] - (LUMA[0] * u + LUMA[2] * v)
    return torch.stack([green + u, green, green + v], 1)


def sharper_or_softer(x: Tensor) -> Tensor:
    """Half of the pictures blurred or sharpened.

    Labels stay sharp, so strong blur teaches to fill gaps between leaves: no more than this.
    """
    count = len(x)
    soft = blurred(x, even(count) * 1.1)
    sharp = x + (x - soft) * even(count, 1, 1, 1) * 1.5
    way = even(count, 1, 1, 1)
    return torch.where(way < 0.35, soft, torch.where(way < 0.5, sharp, x))


def blurred(x: Tensor, sd: Tensor) -> Tensor:
    """Gaussian blur, sd of each picture in px, at most 1.2."""
    count, channels, height, _ = x.shape
    way = torch.arange(-BLUR_REACH, BLUR_REACH + 1, device=DEVICE)
    kernel = torch.exp(-(way[None] ** 2) / (2 * sd.clamp(min=0.05)[:, None] ** 2))
    kernel = (kernel / kernel.sum(1, keepdim=True)).repeat_interleave(channels, 0)[:, None, None]
    planes = tf.pad(x, [BLUR_REACH] * 4, mode="reflect").reshape(
        1, count * channels, height + 2 * BLUR_REACH, -1
    )
    planes = tf.conv2d(planes, kernel, groups=count * channels)
    planes = tf.conv2d(planes, kernel.transpose(2, 3), groups=count * channels)
    return planes.reshape(x.shape)


def luma(x: Tensor) -> Tensor:
    """Grey, (n, 1, size, size)."""
    return (x * torch.tensor(LUMA, device=DEVICE)[None, :, None, None]).sum(1, keepdim=True)
