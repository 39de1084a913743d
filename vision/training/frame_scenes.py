"""Scenes: photos of trays with what is known of them, and grounds without a tray, on the device.

In    the folder that `prepare_frame.py` wrote; which part is held out
Out   `Scenes`; benches at any scale, turn and colour
Not   how a picture is made of them (`frame_pictures.py`)
"""

import json
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
import torch
import torch.nn.functional as tf
from frame_planes import Chance, grid_of, rectangle, solve, turn
from torch import Tensor

GROUND_PX = 512
DRAWN_GROUNDS = 260


@dataclass(frozen=True)
class Fineness:
    """Size of the photos (px), and of the rectified views cut out of them."""

    source: tuple[int, int]
    sides: tuple[int, int]


COARSE = Fineness((640, 480), (320, 192))
FINE = Fineness((1280, 960), (640, 384))


class Scenes:
    """All photos, their masks (tray, tray without loose things, rim, canopy) and grounds on the device."""

    def __init__(
        self,
        folder: Path,
        held: str,
        device: torch.device,
        rng: torch.Generator,
        fineness: Fineness = COARSE,
    ) -> None:
        self.fineness = fineness
        index = json.loads((folder / "index.json").read_text())
        self.names = [name for name in index if fold(name) != held]
        photos, masks, known = [], [], []
        for name in self.names:
            picture = cv2.imread(str(folder / "photos" / f"{name}.jpg"))[..., ::-1]
            path = folder / "photos" / f"{name}.png"
            seen = cv2.imread(str(path), cv2.IMREAD_GRAYSCALE) if path.exists() else None
            known.append(seen is not None)
            if seen is None:
                seen = np.zeros(picture.shape[:2], np.uint8)
            photos.append(picture.transpose(2, 0, 1))
            layers = [seen > 0, (seen > 0) & (seen != 9), seen == 1, (seen >= 4) & (seen <= 6)]
            masks.append(np.stack(layers).astype(np.uint8) * 255)
        self.stack = torch.from_numpy(np.concatenate([np.stack(photos), np.stack(masks)], 1)).to(device)
        self.known = torch.tensor(known, device=device)
        self.corners = torch.tensor(
            [index[n]["corners"] for n in self.names], dtype=torch.float32, device=device
        )
        self.lens = torch.tensor([index[n]["lens"] for n in self.names], dtype=torch.float32, device=device)
        own = [cv2.imread(str(path))[..., ::-1] for path in sorted((folder / "backs").glob("*.jpg"))]
        real = torch.from_numpy(np.stack(own).transpose(0, 3, 1, 2).copy()).to(device)
        self.backs = torch.cat([real, real[:24], drawn_grounds(DRAWN_GROUNDS, device, rng)])
        weight = torch.where(self.known, 1.0, 0.35)
        weight[[n.startswith("a") for n in self.names]] = 1.5
        self.weight = weight


def fold(name: str) -> str:
    """Which part a photo belongs to: by tray number; demonstration trays are always learned from."""
    if name[0] not in "ac" or not name[1:].isdigit():
        return "demo"
    number = int(name[1:])
    if (name[0] == "a" and number >= 64) or (name[0] == "c" and number >= 316):
        return "0"
    return str(1 + number % 3)


def drawn_grounds(count: int, device: torch.device, rng: torch.Generator) -> Tensor:
    """Benches drawn by chance: mottled, planked, meshed, plain; uint8 (count, 3, 512, 512)."""

    def rand(*shape: int) -> Tensor:
        return torch.rand(*shape, device=device, generator=rng)

    made = []
    y, x = torch.meshgrid(
        torch.arange(512.0, device=device), torch.arange(512.0, device=device), indexing="ij"
    )
    for _ in range(count):
        base = rand(3, 1, 1) * 0.35 + rand(1).item() * 0.6 + 0.02
        ground = base.expand(3, 512, 512).clone()
        stretch = rand(1).item() < 0.3
        for octave in (4, 8, 16, 32, 64, 128, 256):
            rows, columns = octave, max(2, octave // 12) if stretch else octave
            noise = rand(1, 1, rows, columns) - 0.5
            noise = tf.interpolate(noise, size=(512, 512), mode="bicubic", align_corners=False)[0]
            ground = ground + noise * rand(1).item() * 0.28 * (rand(3, 1, 1) * 0.4 + 0.8)
        if rand(1).item() < 0.5:
            for across in (x, y):
                if rand(1).item() < 0.75:
                    pitch, width = 10 + rand(1).item() * 80, 1.5 + rand(1).item() ** 2 * 14
                    wave = across + 6 * torch.sin(x / 90 + y / 70) * (rand(1).item() < 0.2)
                    line = ((wave % pitch) < width).float()
                    colour = rand(3, 1, 1) * 0.2 + rand(1).item() * 0.9
                    ground = ground * (1 - line) + colour * line
        made.append((ground.clamp(0, 1) * 255).to(torch.uint8))
    return torch.stack(made)


def grounds(scenes: Scenes, n: int, size: tuple[int, int], chance: Chance) -> Tensor:
    """Benches at any scale, turn and colour."""
    ids = torch.randint(len(scenes.backs), (n,), device=chance.device, generator=chance.rng)
    corners = rectangle((512, 512 * size[1] / size[0]), n, chance.device)
    scale = torch.exp(chance.uniform(n, low=-1.0, high=0.7))
    corners = (corners + chance.normal(n, 4, 2) * 25) @ turn(chance.uniform(n, high=6.3), scale).transpose(
        1, 2
    )
    start = (
        rectangle(tuple(map(float, size)), n, chance.device) + torch.tensor(size, device=chance.device) / 2
    )
    grid = grid_of(solve(start, corners + 256).float(), size, (512, 512))
    picture = tf.grid_sample(
        scenes.backs[ids].float() / 255, grid, padding_mode="reflection", align_corners=False
    )
    gain = chance.uniform(n, 1, 1, 1, low=0.4, high=1.4) * chance.uniform(n, 3, 1, 1, low=0.85, high=1.15)
    grey = picture.mean(1, keepdim=True)
    faded = chance.uniform(n, 1, 1, 1)
    return ((picture * faded + grey * (1 - faded)) * gain).clamp(0, 1)
