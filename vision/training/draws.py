"""Draws: random numbers and smooth random fields, on the GPU where there is one."""

import torch
import torch.nn.functional as tf
from torch import Tensor

DEVICE = "cuda" if torch.cuda.is_available() else "cpu"


def even(*shape: int) -> Tensor:
    """Even random numbers, 0 to 1."""
    return torch.rand(*shape, device=DEVICE)


def normal(*shape: int) -> Tensor:
    """Normal random numbers, mean 0, sd 1."""
    return torch.randn(*shape, device=DEVICE)


def field(count: int, size: int, cells: int) -> Tensor:
    """Smooth random fields, (count, 1, size, size), from so many normal numbers either way."""
    return tf.interpolate(normal(count, 1, cells, cells), (size, size), mode="bicubic", align_corners=False)
