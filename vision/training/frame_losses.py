"""Losses of the frame networks: what it costs to tell a tray's place or its sides wrongly.

In    the networks' maps; masks, or true sides in the view (px), which a lens may have bent
Out   one number to be made smaller
Not   pictures and their truth (`frame_batches.py`)
"""

import torch
import torch.nn.functional as tf
from torch import Tensor

SOFT_CELLS = 0.8  # standard deviation of the target around a side


def place_loss(out: Tensor, target: Tensor) -> Tensor:
    """Cross-entropy and overlap."""
    chance = torch.sigmoid(out)
    both = (chance * target).sum((2, 3))
    dice = 1 - (2 * both + 50) / (chance.sum((2, 3)) + target.sum((2, 3)) + 50)
    return tf.binary_cross_entropy_with_logits(out, target) + 0.5 * dice.mean()


def side_targets(sides: Tensor, tray: Tensor, width: int, height: int) -> list[tuple[Tensor, Tensor]]:
    """For each side: soft target (n, along, across) and which places along it count (n, along).

    `sides` (n, 4, k, 2) are points along the top, the bottom, the left and the right one, evenly from end to
    end; `width` and `height` are those of the maps.
    """
    half = sides / 2
    found = []
    for side, axis in enumerate((0, 0, 1, 1)):
        along, across = (width, height) if axis == 0 else (height, width)
        place = torch.arange(along, device=sides.device) + 0.5
        a, b = half[:, side, 0], half[:, side, -1]
        share = (place - a[:, axis, None]) / (b - a)[:, axis, None]
        where = at_shares(half[:, side, :, 1 - axis], share)
        cell = torch.arange(across, device=sides.device) + 0.5
        weight = torch.exp(-0.5 * ((cell - where[..., None]) / SOFT_CELLS) ** 2) + 1e-12
        target = weight / weight.sum(-1, keepdim=True)
        counts = (share > 0) & (share < 1) & (where > 0) & (where < across)
        even = torch.full_like(target, 1 / across)
        target = torch.where(tray[:, None, None], target, even)
        counts = torch.where(tray[:, None], counts, torch.ones_like(counts))
        found.append((target, counts.float()))
    return found


def at_shares(values: Tensor, share: Tensor) -> Tensor:
    """Values (n, k) given evenly from 0 to 1, at shares (n, m); as at the ends beyond them."""
    last = values.shape[1] - 1
    at = share.clamp(0, 1) * last
    low = at.floor().clamp(max=last - 1)
    low_values = values.gather(1, low.long())
    return low_values + (at - low) * (values.gather(1, low.long() + 1) - low_values)


def sides_loss(out: Tensor, sides: Tensor, rim: Tensor, known: Tensor, tray: Tensor) -> Tensor:
    """Cross-entropy across every place along every side, and of the visible rim."""
    total = out.new_zeros(())
    for k, (target, counts) in enumerate(side_targets(sides, tray, out.shape[3], out.shape[2])):
        logits = out[:, k].transpose(1, 2) if k < 2 else out[:, k]
        cross = -(target * torch.log_softmax(logits, -1)).sum(-1)
        total = total + (cross * counts).sum() / counts.sum().clamp(min=1) / 4
    visible = tf.binary_cross_entropy_with_logits(out[:, 4:5], rim, reduction="none").mean((1, 2, 3))
    return total + 2.0 * (visible * known).sum() / known.sum().clamp(min=1)
