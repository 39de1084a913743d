# /// script
# requires-python = ">=3.11"
# dependencies = ["torch>=2.9", "numpy", "opencv-python-headless", "onnx", "onnxscript"]
# ///
"""Learn the network that looks for a tray's sides twice as finely, as the lens bends them.

In    the folder that `prepare_frame.py --longest 1280` wrote, without the demonstration's photos;
      `sides_HELD.pt` of `learn_frame.py`, or an `edges_HELD.pt` to go on from
Out   `edges_HELD.pt`, and `edges_HELD.onnx` beside it
Not   pictures, targets, loss (`frame_batches.py`, `frame_losses.py`); what becomes of it (`vision/frame.py`,
      `refined`)

    learn_edges.py DATA sides_all.pt OUT --seconds 195

Views are 640 x 384 px at 1 px/mm, and wrongly placed only by as much as a tray that has been found is.
"""

import argparse
import math
from pathlib import Path

import torch
from course import Course, add_course, begun
from frame_batches import Wrongness, sides_batch
from frame_losses import sides_loss
from frame_network import Net, export, keep
from frame_planes import Chance
from frame_scenes import FINE, Scenes
from torch import nn

FOUND = Wrongness(turn=0.006, scale=0.012, shift_mm=3.0, corner_mm=2.0, much=(0.5, 1.6))
BATCH = 16
RATE = 2e-3
KEPT = 0.997  # of the running mean of the weights, a step


def learn(asked: argparse.Namespace, course: Course) -> Net:
    """The running mean of the weights at the end of the course."""
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    torch.manual_seed(7)
    chance = Chance(device, 4321)
    first = torch.load(asked.begin, weights_only=True)
    scenes = Scenes(asked.data, first["held"], device, chance.rng, FINE)
    net = Net("sides").to(device, memory_format=torch.channels_last)
    net.load_state_dict(first["state"])
    mean = torch.optim.swa_utils.AveragedModel(
        net, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(KEPT), use_buffers=True
    )
    best = torch.optim.AdamW(net.parameters(), lr=RATE, weight_decay=1e-3)
    step = 0
    while (spent := course.done(step)) < 1:
        for group in best.param_groups:
            group["lr"] = RATE * min(1, (step + 1) / 100) * (0.5 + 0.5 * math.cos(math.pi * spent))
        with torch.no_grad():
            pictures, *truth = sides_batch(scenes, BATCH, chance, FOUND)
        with torch.autocast(device.type, torch.bfloat16, enabled=device.type == "cuda"):
            maps = net(pictures.contiguous(memory_format=torch.channels_last))
        loss = sides_loss(maps.float(), *truth)
        best.zero_grad(set_to_none=True)
        loss.backward()
        nn.utils.clip_grad_norm_(net.parameters(), 3.0)
        best.step()
        mean.update_parameters(net)
        if step % 100 == 0:
            print(first["held"], step, f"{course.lasted:.0f} s", loss.item(), flush=True)
        step += 1
    print(first["held"], "steps", step, flush=True)
    return mean.module


def main() -> None:
    """Learn, keep, export."""
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("data", type=Path)
    words.add_argument("begin", type=Path)
    words.add_argument("out", type=Path)
    add_course(words, 195)
    asked = words.parse_args()
    net = learn(asked, begun(asked))
    asked.out.mkdir(parents=True, exist_ok=True)
    held = torch.load(asked.begin, weights_only=True)["held"]
    kept = asked.out / f"edges_{held}.pt"
    keep(net, kept, kind="sides", held=held)
    export(kept, kept.with_suffix(".onnx"), FINE.sides)


if __name__ == "__main__":
    main()
