# /// script
# requires-python = ">=3.11"
# dependencies = ["torch>=2.9", "numpy", "opencv-python-headless", "onnx", "onnxscript"]
# ///
"""Learn the tissue network.

In    the folder that `prepare_tissue.py` wrote
Out   `tissue.onnx`, `net.pt`, `report.json` (errors on everything not learned from, digest of the inputs)
Not   what pictures are made of (`tissue_pack.py`, `tissue_pictures.py`), how the product runs it
      (`vision/learned.py`)

    learn_tissue.py PACK OUT --seconds 1560 --seed 1 --compile
    learn_tissue.py PACK OUT --seconds 1560 --seed 10 --compile --held 0

The network in use was made by the first line (34,414 steps on a GPU of its own); the second keeps a third of
all trays and of the fields apart. A run that time ends is repeatable in kind; one with --steps in place of
--seconds, and without --compile, to the bit (`course.py`).
"""

import argparse
import hashlib
import json
import math
from itertools import pairwise
from pathlib import Path

import cv2
import numpy as np
import torch
import torch.nn.functional as tf
from course import Course, add_course, begun
from draws import DEVICE
from tissue_colours import in_other_colours
from tissue_pack import Pack
from tissue_pictures import batch, is_leaf
from tissue_storing import reduced, stored
from torch import Tensor, nn

LABELS = 10
WIDTHS = (32, 48, 80, 112, 144)
STEP_PX = 32
SMOOTHED = 0.02  # `vision/learned.py` takes it back
# near 1: with 1.6 for pale shoots and 2.2 for fuzz the canopy grew too large
LABEL_WEIGHTS = (0.7, 0.8, 1.0, 1.0, 1.0, 1.0, 1.0, 1.2, 2.0, 0.8)
CANOPY = slice(4, 7)


class Block(nn.Sequential):
    """Convolution, batch norm, ReLU."""

    def __init__(self, before: int, after: int, side: int = 3, stride: int = 1) -> None:
        super().__init__(
            nn.Conv2d(before, after, side, stride, 1 if side > 1 else 0, bias=False),
            nn.BatchNorm2d(after),
            nn.ReLU(inplace=True),
        )


class Net(nn.Module):
    """U-Net with a stride-2 stem; RGB 0-1 in, at half size 10 labels for each pixel of a 2 x 2 square out."""

    def __init__(self) -> None:
        super().__init__()
        pairs = list(pairwise(WIDTHS))
        self.stem = nn.Sequential(Block(3, WIDTHS[0], 4, 2), Block(WIDTHS[0], WIDTHS[0]))
        self.down = nn.ModuleList(nn.Sequential(nn.MaxPool2d(2), Block(a, b), Block(b, b)) for a, b in pairs)
        self.cross = nn.ModuleList(Block(b, a, 1) for a, b in pairs)
        self.up = nn.ModuleList(Block(2 * a, a) for a in WIDTHS[:-1])
        self.head = nn.Conv2d(WIDTHS[0], 4 * LABELS, 1)

    def forward(self, x: Tensor) -> Tensor:
        """(n, 3, h, w) -> (n, 40, h/2, w/2), plane label * 4 + 2 * row + column."""
        kept = [self.stem(x)]
        for layer in self.down:
            kept.append(layer(kept[-1]))
        y = kept.pop()
        for cross, up in zip(reversed(self.cross), reversed(self.up), strict=True):
            larger = tf.interpolate(cross(y), scale_factor=2, mode="bilinear", align_corners=False)
            y = up(torch.cat([larger, kept.pop()], 1))
        return self.head(y)


def loss_of(logits: Tensor, y: Tensor) -> Tensor:
    """Label where it is known; canopy against the rest everywhere; overlap of the canopy, each picture."""
    logits = logits.float()
    by_label = cross_entropy(logits, y)
    leaf = is_leaf(y)
    canopy = torch.logsumexp(tf.log_softmax(logits, 1)[:, CANOPY], 1).clamp(max=-1e-5)
    chance = canopy.exp()
    by_canopy = -torch.where(leaf, canopy, torch.log1p(-chance)).mean()
    shared = (chance * leaf).sum((1, 2))
    overlap = (2 * shared + 200) / (chance.sum((1, 2)) + leaf.sum((1, 2)) + 200)
    return by_label + 0.8 * by_canopy + 0.4 * (1 - overlap).mean()


def cross_entropy(logits: Tensor, y: Tensor) -> Tensor:
    """As `tf.cross_entropy` with weights and smoothed labels, but adding in one order, so to the bit."""
    weights = torch.tensor(LABEL_WEIGHTS, device=logits.device)[:, None, None]
    each = torch.arange(LABELS, device=logits.device)[:, None, None]
    hot = (y[:, None] == each) * weights
    against = -torch.log_softmax(logits, 1)
    smooth = against * weights * (y[:, None] < LABELS) / LABELS
    return ((1 - SMOOTHED) * hot * against + SMOOTHED * smooth).sum() / hot.sum()


# --- learning


def learn(pack: Pack, net: Net, asked: argparse.Namespace, course: Course) -> tuple[Net, int]:
    """The running mean of the weights at the end of the course, and the number of steps."""
    mean = Net().to(DEVICE).to(memory_format=torch.channels_last)
    mean.load_state_dict(net.state_dict())
    of_mean, of_net = floats(mean), floats(net)
    optimiser = torch.optim.AdamW(net.parameters(), asked.rate, weight_decay=2e-3, fused=DEVICE == "cuda")
    forward, loss_now, change, store = (
        torch.compile(one) if asked.compile else one for one in (net, loss_of, in_other_colours, stored)
    )
    told, step = 0.0, 0
    while (done := course.done(step)) < 1:
        rate = asked.rate * min(1, step / 200) * (0.5 + 0.5 * math.cos(math.pi * done)) + 1e-6
        for group in optimiser.param_groups:
            group["lr"] = rate
        with torch.no_grad():
            x, y = batch(pack, asked.batch, asked.size)
            x = store(reduced(change(x, y, asked.strength)))
        with torch.autocast(DEVICE, torch.bfloat16):
            logits = tf.pixel_shuffle(forward(x.to(memory_format=torch.channels_last)), 2)
        loss = loss_now(logits, y)
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(net.parameters(), 2.0)
        optimiser.step()
        step += 1
        with torch.no_grad():
            torch._foreach_lerp_(of_mean, of_net, 1 - min(0.999, step / (step + 50)))
        if done - told > 0.2:
            told = done
            now = in_words(*judged(mean.eval(), pack))
            print(f"{done:4.0%} step {step} loss {float(loss.detach()):.3f}", now, flush=True)
    return mean.eval(), step


def floats(net: Net) -> list[Tensor]:
    """Weights and running statistics."""
    return [value for value in net.state_dict().values() if value.dtype.is_floating_point]


# --- judging


@torch.no_grad()
def chances(net: Net, picture: np.ndarray) -> Tensor:
    """Chance of each label, (10, rows, columns), of an RGB picture."""
    x = torch.from_numpy(np.ascontiguousarray(picture)).to(DEVICE).permute(2, 0, 1)[None].float() / 255
    rows, columns = x.shape[2:]
    x = tf.pad(x, (0, -columns % STEP_PX, 0, -rows % STEP_PX), mode="replicate")
    return tf.pixel_shuffle(net(x), 2).float().softmax(1)[0, :, :rows, :columns]


def judged(net: Net, pack: Pack) -> tuple[list[dict], list[dict]]:
    """Errors of coverage, points, on trays kept apart; overlap with masks of real pictures held back."""
    trays = []
    for number in pack.apart:
        found = chances(net, pack.pictures[number].permute(1, 2, 0).cpu().numpy())[CANOPY].sum(0)
        true = is_leaf(pack.labels[number])
        either = (found > 0.5) | true
        trays.append(
            pack.trays[number]
            | {
                "true": 100 * float(true.float().mean()),
                "error": 100 * float(found.mean() - true.float().mean()),
                "iou": float(((found > 0.5) & true).sum() / either.sum().clamp(min=1)),
            }
        )
    real = []
    for entry, picture, plant in pack.held:
        found = chances(net, picture)[CANOPY].sum(0).cpu().numpy()
        if max(plant.shape) < 600:
            larger = cv2.resize(picture, None, fx=2, fy=2, interpolation=cv2.INTER_CUBIC)
            closer = chances(net, larger)[CANOPY].sum(0).cpu().numpy()
            found = (found + cv2.resize(closer, plant.shape[::-1], interpolation=cv2.INTER_AREA)) / 2
        seen = found > 0.5
        dice = 2 * float((seen & plant).sum()) / max(1, int(seen.sum() + plant.sum()))
        real.append({"name": entry["name"], "dice": dice, "error": 100 * float(seen.mean() - plant.mean())})
    return trays, real


def in_words(trays: list[dict], real: list[dict]) -> str:
    """One line."""
    errors = np.array([tray["error"] for tray in trays])
    overlap = np.mean([tray["iou"] for tray in trays if tray["true"] > 5])
    return (
        f"error {np.abs(errors).mean():.2f} bias {errors.mean():+.2f} worst {np.abs(errors).max():.2f} "
        f"iou {overlap:.3f} | real dice {np.median([one['dice'] for one in real]):.3f}"
    )


# --- the file for the product


class WithScale(nn.Module):
    """RGB 0-255 in."""

    def __init__(self, net: Net) -> None:
        super().__init__()
        self.net = net

    def forward(self, x: Tensor) -> Tensor:
        """(1, 3, h, w) -> (1, 40, h/2, w/2)."""
        return self.net(x / 255.0)


def export(net: Net, path: Path) -> None:
    """Write the network as ONNX; both sides free, in steps of 32 px."""
    height, width = (STEP_PX * torch.export.Dim(name, min=1, max=200) for name in ("h", "w"))
    torch.onnx.export(
        WithScale(net).eval().cpu().float(),
        (torch.zeros(1, 3, 512, 1024),),
        str(path),
        input_names=["image"],
        output_names=["logits"],
        dynamo=True,
        external_data=False,
        dynamic_shapes=[{2: height, 3: width}],
    )


def main() -> None:
    """Learn, judge, export."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("pack", type=Path)
    words.add_argument("out", type=Path)
    add_course(words, 240)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--batch", type=int, default=96)
    words.add_argument("--size", type=int, default=352)
    words.add_argument("--strength", type=float, default=0.5)
    words.add_argument("--rate", type=float, default=4e-3)
    words.add_argument("--held", default="choosing", help="choosing, or 0 to 2: a third of all trays")
    words.add_argument("--compile", action="store_true")
    asked = words.parse_args()
    asked.out.mkdir(parents=True, exist_ok=True)
    course = begun(asked)
    torch.manual_seed(asked.seed)
    torch.set_float32_matmul_precision("high")
    pack = Pack(asked.pack, asked.held, asked.seed)
    net = Net().to(DEVICE).to(memory_format=torch.channels_last)
    net, steps = learn(pack, net.train(), asked, course)
    trays, real = judged(net, pack)
    print(f"end, step {steps}:", in_words(trays, real))
    inputs = hashlib.sha256((asked.pack / "meta.json").read_bytes()).hexdigest()
    report = {"inputs": inputs, "held": asked.held, "steps": steps, "trays": trays, "real": real}
    (asked.out / "report.json").write_text(json.dumps(report, indent=1))
    torch.save({name: value.half() for name, value in net.state_dict().items()}, asked.out / "net.pt")
    export(net, asked.out / "tissue.onnx")


if __name__ == "__main__":
    main()
