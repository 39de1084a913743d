# /// script
# requires-python = ">=3.11"
# dependencies = ["torch>=2.9", "numpy", "opencv-python-headless", "onnx", "onnxscript"]
# ///
"""Learn the two small networks of the frame finder.

In    the folder that `prepare_frame.py` wrote
Out   `place_HELD.pt`, `sides_HELD.pt` (weights, running mean over steps); `export` makes .onnx of them
Not   pictures and their truth (`frame_batches.py`), losses (`frame_losses.py`), the network
      (`frame_network.py`), fitting the tray to what they say (`vision/frame.py`)

*Place* looks at the whole photo (256 x 192) and says where the inner area and the outer rim are, also under
leaves. *Sides* looks at a rectified view (320 x 192, 0.5 px/mm, the inner area roughly in its middle) and
gives, for every column, the chance of each row to hold the upper and the lower inner side, and for every row
the same for left and right. Targets are drawn from the true corners and lens, never from what is visible.
The program's own *sides* was learned before, without lens: one learned anew tells sides as they are bent, and
`COARSE.as_bent` in `vision/framenet.py` has to say so.

    learn_frame.py learn DATA OUT --held 0 --seconds 1330   held: 0 choosing set, 1-3 thirds of the rest, all
    learn_frame.py export OUT/place_all.pt frame_place.onnx
    learn_frame.py alter DATA_1280 altered.npz --parts 0 --times 6
"""

import argparse
import math
from pathlib import Path

import numpy as np
import torch
from course import add_course, begun
from frame_batches import PLACE_SIZE, place_batch, sides_batch
from frame_losses import place_loss, sides_loss
from frame_network import CHANNELS, Net, export, keep
from frame_pictures import seen
from frame_planes import Chance
from frame_scenes import COARSE, FINE, Scenes, fold
from torch import Tensor, nn

KEPT = 0.998  # of the running mean of the weights, a step
WARMING_STEPS = 200


class Learner:
    """Both networks, the running means of their weights, and what takes the steps."""

    def __init__(self, device: torch.device, rate: float) -> None:
        self.device, self.rate = device, rate
        self.nets = {kind: Net(kind).to(device, memory_format=torch.channels_last) for kind in CHANNELS}
        self.means = {
            kind: torch.optim.swa_utils.AveragedModel(
                net, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(KEPT), use_buffers=True
            )
            for kind, net in self.nets.items()
        }
        self.weights = [p for net in self.nets.values() for p in net.parameters()]
        self.best = torch.optim.AdamW(self.weights, lr=rate, weight_decay=1e-3)
        self.losses = {kind: torch.zeros(()) for kind in self.nets}

    def told(self) -> dict[str, float]:
        """The losses of the last step of each network."""
        return {kind: loss.item() for kind, loss in self.losses.items()}

    def set_rate(self, step: int, spent: float) -> None:
        """Up over the first steps, then down along a cosine as the share of time is spent."""
        fall = 0.5 + 0.5 * math.cos(math.pi * spent)
        for group in self.best.param_groups:
            group["lr"] = self.rate * min(1.0, (step + 1) / WARMING_STEPS) * fall

    def step(self, sides: tuple[Tensor, ...], places: tuple[Tensor, Tensor] | None) -> None:
        """One step of *sides*, and of *place* where there is a batch for it."""
        with torch.autocast(self.device.type, torch.bfloat16, enabled=self.device.type == "cuda"):
            maps = self.nets["sides"](sides[0].contiguous(memory_format=torch.channels_last))
            blobs = (
                self.nets["place"](places[0].contiguous(memory_format=torch.channels_last))
                if places
                else None
            )
        loss = sides_loss(maps.float(), *sides[1:])
        self.losses["sides"] = loss.detach()
        if places is not None and blobs is not None:
            other = place_loss(blobs.float(), places[1])
            self.losses["place"] = other.detach()
            loss = loss + other
        self.best.zero_grad(set_to_none=True)
        loss.backward()
        nn.utils.clip_grad_norm_(self.weights, 3.0)
        self.best.step()
        for kind in self.nets:
            if kind == "sides" or places is not None:
                self.means[kind].update_parameters(self.nets[kind])


def learn(asked: argparse.Namespace) -> None:
    """Both networks side by side to the end of the course."""
    course = begun(asked)
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    torch.manual_seed(7)
    chance = Chance(device, 1234 + sum(map(ord, asked.held)))
    scenes = Scenes(asked.data, asked.held, device, chance.rng)
    learner = Learner(device, asked.rate)
    step = 0
    while (spent := course.done(step)) < 1:
        learner.set_rate(step, spent)
        with torch.no_grad():
            places = place_batch(scenes, asked.batch // 2, chance) if step % 2 == 0 else None
            sides = sides_batch(scenes, asked.batch, chance)
        learner.step(sides, places)
        if step % 200 == 0:
            print(asked.held, step, f"{course.lasted:.0f} s", learner.told(), flush=True)
        step += 1
    print(asked.held, "steps", step, "photos", len(scenes.names), flush=True)
    asked.out.mkdir(parents=True, exist_ok=True)
    for kind, mean in learner.means.items():
        keep(mean.module, asked.out / f"{kind}_{asked.held}.pt", kind=kind, held=asked.held, steps=step)


def alter(asked: argparse.Namespace) -> None:
    """Strongly changed versions of each photo, for judging: other benches, light, leaves, strips.

    Of photos of 1280 px: the finder looks at them reduced, and then closer.
    """
    device = torch.device("cpu")
    chance = Chance(device, 99)
    scenes = Scenes(asked.data, "none", device, chance.rng, FINE)
    wanted = [k for k, name in enumerate(scenes.names) if fold(name) in asked.parts] * asked.times
    names, pictures, corners = [], [], []
    for start in range(0, len(wanted), 2):
        ids = torch.tensor(wanted[start : start + 2])
        with torch.no_grad():
            picture, _ = seen(scenes, ids, torch.eye(3).expand(len(ids), 3, 3), FINE.source, chance)
        pictures.append((picture.permute(0, 2, 3, 1).numpy() * 255).round().astype(np.uint8))
        names += [scenes.names[k] for k in ids]
        corners.append(scenes.corners[ids].numpy())
    np.savez(asked.npz, names=names, pictures=np.concatenate(pictures), corners=np.concatenate(corners))


def exported(asked: argparse.Namespace) -> None:
    """Weights -> ONNX."""
    place = torch.load(asked.weights, weights_only=True)["kind"] == "place"
    export(asked.weights, asked.onnx, PLACE_SIZE if place else COARSE.sides)


def main() -> None:
    """Read the words and do it."""
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    verbs = words.add_subparsers(required=True)
    verb = verbs.add_parser("learn")
    verb.add_argument("data", type=Path)
    verb.add_argument("out", type=Path)
    verb.add_argument("--held", default="all")
    add_course(verb, 1330)
    verb.add_argument("--batch", type=int, default=32)
    verb.add_argument("--rate", type=float, default=2e-3)
    verb.set_defaults(do=learn)
    verb = verbs.add_parser("export")
    verb.add_argument("weights", type=Path)
    verb.add_argument("onnx", type=Path)
    verb.set_defaults(do=exported)
    verb = verbs.add_parser("alter")
    verb.add_argument("data", type=Path)
    verb.add_argument("npz", type=Path)
    verb.add_argument("--parts", default="0123", help="whose photos; 0 is the choosing set")
    verb.add_argument("--times", type=int, default=3, help="versions of each photo")
    verb.set_defaults(do=alter)
    asked = words.parse_args()
    asked.do(asked)


if __name__ == "__main__":
    main()
