"""The frame finder's networks: a small U-Net, twice.

In    pictures, float (n, 3, h, w), 0-255
Out   `Net`; its weights in a file; the same as ONNX
Not   what it learns from (`frame_batches.py`), learning (`learn_frame.py`, `learn_edges.py`)
"""

from pathlib import Path

import torch
import torch.nn.functional as tf
from torch import Tensor, nn

CHANNELS = {"place": (12, 24, 36, 48, 64), "sides": (16, 24, 40, 56, 72)}
OUTPUTS = {"place": 2, "sides": 5}


class Pair(nn.Sequential):
    """Two 3 x 3 convolutions, each with batch norm and ReLU."""

    def __init__(self, before: int, after: int, stride: int = 1) -> None:
        super().__init__(
            nn.Conv2d(before, after, 3, stride, 1, bias=False),
            nn.BatchNorm2d(after),
            nn.ReLU(inplace=True),
            nn.Conv2d(after, after, 3, 1, 1, bias=False),
            nn.BatchNorm2d(after),
            nn.ReLU(inplace=True),
        )


class Single(nn.Sequential):
    """One 3 x 3 convolution with batch norm and ReLU."""

    def __init__(self, before: int, after: int) -> None:
        super().__init__(
            nn.Conv2d(before, after, 3, 1, 1, bias=False), nn.BatchNorm2d(after), nn.ReLU(inplace=True)
        )


class Net(nn.Module):
    """U-Net with a stride-2 stem; RGB 0-255 in, maps at half the size out."""

    def __init__(self, kind: str) -> None:
        super().__init__()
        a, b, c, d, e = CHANNELS[kind]
        self.down = nn.ModuleList([Pair(3, a, 2), Pair(a, b, 2), Pair(b, c, 2), Pair(c, d, 2), Pair(d, e, 2)])
        self.up = nn.ModuleList([Single(e + d, d), Single(d + c, c), Single(c + b, b), Single(b + a, a)])
        self.head = nn.Conv2d(a, OUTPUTS[kind], 1)

    def forward(self, x: Tensor) -> Tensor:
        """(n, 3, h, w) -> (n, maps, h/2, w/2)."""
        x = x / 64.0 - 2.0
        kept = []
        for layer in self.down:
            x = layer(x)
            kept.append(x)
        for layer, skip in zip(self.up, reversed(kept[:-1]), strict=True):
            x = tf.interpolate(x, scale_factor=2.0, mode="bilinear", align_corners=False)
            x = layer(torch.cat([x, skip], 1))
        return self.head(x)


def keep(net: Net, path: Path, **told: str | int) -> None:
    """The weights and what is told of them in one file."""
    state = {k: v.float().cpu() if v.is_floating_point() else v.cpu() for k, v in net.state_dict().items()}
    torch.save({**told, "state": state}, path)


def export(weights: Path, onnx: Path, size: tuple[int, int]) -> None:
    """Weights -> ONNX for any number of pictures of one size (width, height)."""
    kept = torch.load(weights, weights_only=True)
    net = Net(kept["kind"]).eval()
    net.load_state_dict(kept["state"])
    width, height = size
    torch.onnx.export(
        net,
        (torch.zeros(2, 3, height, width),),
        str(onnx),
        input_names=["image"],
        output_names=["maps"],
        dynamo=True,
        external_data=False,
        dynamic_shapes={"x": {0: torch.export.Dim("count", min=1, max=16)}},
    )
