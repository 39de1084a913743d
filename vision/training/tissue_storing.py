"""What a small photo and its storing take from a picture.

In    pictures (n, 3, size, size), 0-1
Out   the same, coarser
Not   copies made by real codecs (`tissue_pack.py`)
"""

import math

import torch
import torch.nn.functional as tf
from draws import DEVICE, even
from torch import Tensor


def reduced(x: Tensor) -> Tensor:
    """Each eighth sometimes made smaller and enlarged again: so is a photo of a phone held high."""
    return torch.cat([reduced_alike(part) for part in x.chunk(8)])


def reduced_alike(x: Tensor) -> Tensor:
    """Three times in ten made smaller and enlarged again, one way for all of `x`."""
    if float(torch.rand(1)) > 0.3:
        return x
    small = tf.interpolate(x, scale_factor=float(torch.rand(1)) * 0.5 + 0.45, mode="area")
    return tf.interpolate(small, x.shape[2:], mode="bilinear", align_corners=False)


def stored(x: Tensor) -> Tensor:
    """With noise in six of ten, and as a camera stores it."""
    noisy = (even(len(x), 1, 1, 1) < 0.6).float()
    x = x + torch.randn_like(x) * even(len(x), 1, 1, 1) * 0.05 * noisy
    return squeezed(x.clamp(0, 1)).clamp(0, 1)


def squeezed(x: Tensor) -> Tensor:
    """As JPEG does to half of them: cosine transform of 8 x 8 blocks, rounded, coarser at higher frequencies.

    One 64 x 64 matrix: the same as small products for rows and columns took half of all time.
    """
    count, _, size, _ = x.shape
    k = torch.arange(8, device=DEVICE).float()
    cosines = torch.cos((2 * k[None] + 1) * k[:, None] * math.pi / 16) / 2
    cosines[0] /= math.sqrt(2)
    both = torch.kron(cosines, cosines)
    blocks = x.reshape(count, 3, size // 8, 8, size // 8, 8).permute(0, 1, 2, 4, 3, 5)
    waves = blocks.reshape(count, -1, 64) @ both.T
    coarse = (0.008 + 0.06 * even(count, 1, 1) ** 2) * (even(count, 1, 1) < 0.5).float()
    step = coarse * (1 + k[:, None] + k[None]).reshape(1, 1, 64)
    waves = torch.where(step > 0, torch.round(waves / step.clamp(min=1e-6)) * step, waves)
    back = (waves @ both).reshape(count, 3, size // 8, size // 8, 8, 8)
    return back.permute(0, 1, 2, 4, 3, 5).reshape(x.shape)
