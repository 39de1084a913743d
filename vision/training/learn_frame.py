# /// script
# requires-python = ">=3.11"
# dependencies = ["torch>=2.9", "numpy", "opencv-python-headless", "onnx", "onnxscript"]
# ///
"""Learn the two small networks of the frame finder.

In    the folder that `prepare_frame.py` wrote
Out   `place_HELD.pt`, `sides_HELD.pt` (weights, running mean over steps); `export` makes .onnx of them
Not   fitting the tray to what they say (`vision/frame.py`)

*Place* looks at the whole photo (256 x 192) and says where the inner area and the outer rim are, also under
leaves. *Sides* looks at a rectified view (320 x 192, 0.5 px/mm, the inner area roughly in its middle) and
gives, for every column, the chance of each row to hold the upper and the lower inner side, and for every row
the same for left and right. Targets are drawn from the true corners, never from what is visible.

    learn_frame.py learn DATA OUT --held 0 --steps 6000     held: 0 choosing set, 1-3 thirds of the rest, all
    learn_frame.py export OUT/place_all.pt frame_place.onnx
"""

import argparse
import json
import math
import time
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
import torch
import torch.nn.functional as tf
from torch import Tensor, nn

PLACE_SIZE = (256, 192)
SIDES_SIZE = (320, 192)
VIEW_MM = (640.0, 384.0)
INNER_MM = (508.0, 254.0)
OUTER_MM = (545.0, 278.0)
SOURCE = (640, 480)
PAD = 114 / 255
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


# ---- pictures ----


class Scenes:
    """All photos, their masks (tray, tray without loose things, rim, canopy) and grounds on the device."""

    def __init__(self, folder: Path, held: str, device: torch.device, rng: torch.Generator) -> None:
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
        own = [cv2.imread(str(path))[..., ::-1] for path in sorted((folder / "backs").glob("*.jpg"))]
        real = torch.from_numpy(np.stack(own).transpose(0, 3, 1, 2).copy()).to(device)
        self.backs = torch.cat([real, real[:24], drawn_grounds(260, device, rng)])
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


def grid_of(matrix: Tensor, size: tuple[int, int], source: tuple[int, int], fine: int = 2) -> Tensor:
    """Sampling grid, `fine` times as fine as `size`, for homographies from output px to source px."""
    width, height = size
    device = matrix.device
    x = (torch.arange(fine * width, device=device) + 0.5) / fine
    y = (torch.arange(fine * height, device=device) + 0.5) / fine
    ys, xs = torch.meshgrid(y, x, indexing="ij")
    places = torch.stack([xs, ys, torch.ones_like(xs)], -1).reshape(-1, 3)
    seen = places @ matrix.transpose(1, 2)
    flat = seen[..., :2] / seen[..., 2:].clamp(min=1e-3)
    flat = flat * (2.0 / torch.tensor(source, device=device)) - 1
    return flat.reshape(-1, fine * height, fine * width, 2)


def solve(plane: Tensor, photo: Tensor) -> Tensor:
    """Homographies (n, 3, 3) that take four points (n, 4, 2) to four others."""
    n = plane.shape[0]
    x, y, u, v = plane[..., 0], plane[..., 1], photo[..., 0], photo[..., 1]
    zero, one = torch.zeros_like(x), torch.ones_like(x)
    first = torch.stack([x, y, one, zero, zero, zero, -u * x, -u * y], -1)
    second = torch.stack([zero, zero, zero, x, y, one, -v * x, -v * y], -1)
    left = torch.cat([first, second], 1).double()
    right = torch.cat([u, v], 1).double()
    found = torch.linalg.solve(left, right)
    return torch.cat([found, torch.ones(n, 1, device=plane.device, dtype=torch.float64)], 1).reshape(n, 3, 3)


def moved(matrix: Tensor, points: Tensor) -> Tensor:
    """Points (n, k, 2) through homographies (n, 3, 3)."""
    ones = torch.ones_like(points[..., :1])
    seen = torch.cat([points, ones], -1).to(matrix.dtype) @ matrix.transpose(1, 2)
    return (seen[..., :2] / seen[..., 2:]).float()


def rectangle(size_mm: tuple[float, float], count: int, device: torch.device) -> Tensor:
    """Corners of a rectangle around the origin, y down, top left first."""
    x, y = size_mm[0] / 2, size_mm[1] / 2
    return torch.tensor([[-x, -y], [x, -y], [x, y], [-x, y]], device=device).expand(count, 4, 2)


class Chance:
    """Random numbers on one device from one seed."""

    def __init__(self, device: torch.device, seed: int) -> None:
        self.device = device
        self.rng = torch.Generator(device=device)
        self.rng.manual_seed(seed)

    def uniform(self, *shape: int, low: float = 0.0, high: float = 1.0) -> Tensor:
        """Even between low and high."""
        return torch.rand(*shape, device=self.device, generator=self.rng) * (high - low) + low

    def normal(self, *shape: int) -> Tensor:
        """Standard normal."""
        return torch.randn(*shape, device=self.device, generator=self.rng)

    def often(self, share: float, count: int) -> Tensor:
        """1.0 with that chance, else 0.0; (count, 1, 1, 1)."""
        return (self.uniform(count, 1, 1, 1) < share).float()

    def pick(self, weight: Tensor, count: int) -> Tensor:
        """Indices drawn by weight."""
        return torch.multinomial(weight, count, replacement=True, generator=self.rng)


def turn(angle: Tensor, scale: Tensor) -> Tensor:
    """Rotation and scale, (n, 2, 2)."""
    c, s = torch.cos(angle) * scale, torch.sin(angle) * scale
    return torch.stack([torch.stack([c, -s], -1), torch.stack([s, c], -1)], -2)


def whole_views(scenes: Scenes, ids: Tensor, chance: Chance) -> Tensor:
    """Homographies from the small whole picture to the photo: any turn, size, tilt, mirrored."""
    n = len(ids)
    width, height = PLACE_SIZE
    out = rectangle((width, height), n, chance.device)
    factor = SOURCE[0] / width
    turned = chance.uniform(n, low=-math.pi, high=math.pi)
    turned = torch.where(chance.uniform(n) < 0.4, chance.normal(n) * 0.15, turned)
    scale = factor * torch.exp(chance.uniform(n, low=-0.45, high=0.5))
    flip = torch.where(chance.uniform(n, 1, 1) < 0.5, -1.0, 1.0)
    spread = out * torch.cat([flip, torch.ones_like(flip)], -1)
    spread = spread + chance.normal(n, 4, 2) * 9
    middle = scenes.corners[ids].mean(1) * 0.6 + 0.4 * torch.tensor(SOURCE, device=chance.device) / 2
    place = spread @ turn(turned, scale).transpose(1, 2) + (middle + chance.normal(n, 2) * 45)[:, None]
    start = out + torch.tensor([width, height], device=chance.device) / 2
    return solve(start, place)


@dataclass(frozen=True)
class Wrongness:
    """Standard deviations of how views are wrongly placed; `much` multiplies them, half of the views each."""

    turn: float = 0.065
    scale: float = 0.05
    shift_mm: float = 17.0
    corner_mm: float = 7.0
    much: tuple[float, float] = (0.25, 1.0)


GUESSED = Wrongness()  # as a tray that the place network has told


def near_views(scenes: Scenes, ids: Tensor, chance: Chance, wrongness: Wrongness) -> tuple[Tensor, Tensor]:
    """Homographies from the rectified view to the photo, wrongly placed by chance; true corners."""
    n = len(ids)
    inner = rectangle(INNER_MM, n, chance.device)
    corners = scenes.corners[ids]
    flip_x = torch.where(chance.uniform(n, 1) < 0.5, -1.0, 1.0)
    flip_y = torch.where(chance.uniform(n, 1) < 0.5, -1.0, 1.0)
    sign = torch.stack([flip_x, flip_y], -1)
    to_photo = solve(inner * sign, corners)
    much = torch.where(chance.uniform(n) < 0.5, *wrongness.much)
    angle = chance.normal(n) * wrongness.turn * much
    scale = torch.exp(chance.normal(n) * wrongness.scale * much)
    each = much[:, None, None]
    wrong = inner @ turn(angle, scale).transpose(1, 2) + chance.normal(n, 1, 2) * wrongness.shift_mm * each
    wrong = wrong + chance.normal(n, 4, 2) * wrongness.corner_mm * each
    px = SIDES_SIZE[0] / VIEW_MM[0]
    start = (inner + torch.tensor(VIEW_MM, device=chance.device) / 2) * px
    to_mm = solve(start, wrong)
    true = moved(torch.linalg.inv(to_mm), inner)
    return to_photo @ to_mm, true


def seen(
    scenes: Scenes, ids: Tensor, matrix: Tensor, size: tuple[int, int], chance: Chance
) -> tuple[Tensor, ...]:
    """Pictures (n, 3, h, w) 0-1 as a camera might give them, and how much rim is visible (n, 1, h, w)."""
    n = len(ids)
    stack = scenes.stack[ids].float() / 255
    grid = grid_of(matrix.float(), size, SOURCE)
    inside = (grid.abs() < 1).all(-1)[:, None].float()
    layers = tf.grid_sample(stack, grid, padding_mode="border", align_corners=False)
    picture = layers[:, :3]
    loose = chance.often(0.6, n)
    tray = (layers[:, 3:4] * loose + layers[:, 4:5] * (1 - loose)) * inside
    rim = layers[:, 5:6] * inside
    changed = chance.often(0.6, n) * scenes.known[ids].float()[:, None, None, None]
    ground = grounds(scenes, n, size, chance)
    ground = ground * (1 - cast_shadow(tray, chance))
    mixed = picture * tray + ground * (1 - tray)
    beyond = torch.full_like(picture, PAD)
    picture = torch.where(changed > 0, mixed, picture * inside + beyond * (1 - inside))
    picture = tinted_rim(picture, rim, chance)
    picture, rim, inside = tf.avg_pool2d(picture, 2), tf.avg_pool2d(rim, 2), tf.avg_pool2d(inside, 2)
    picture, rim = with_strips(picture, rim, size, chance)
    picture, rim = with_leaves(scenes, picture, rim, size, chance)
    picture = shaded(picture, chance)
    picture = recoloured(picture, chance)
    picture = blurred(picture, chance)
    picture = picture + chance.normal(*picture.shape) * (chance.uniform(n, 1, 1, 1) ** 2 * 0.06)
    cut = chance.often(0.25, n) * changed
    kept = torch.where(cut > 0, random_window(n, size, chance), torch.ones_like(rim))
    kept = kept * torch.where(changed > 0, torch.ones_like(inside), (inside > 0.5).float())
    picture = picture.clamp(0, 1) * kept + PAD * (1 - kept)
    return picture, rim * kept


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


def cast_shadow(tray: Tensor, chance: Chance) -> Tensor:
    """The soft dark around a tray on its bench."""
    n, _, height, width = tray.shape
    small = tf.avg_pool2d(tray, 8)
    for _ in range(2):
        small = tf.avg_pool2d(small, 5, 1, 2)
    shift = chance.uniform(n, 2, low=-0.12, high=0.12)
    theta = torch.zeros(n, 2, 3, device=tray.device)
    theta[:, 0, 0] = theta[:, 1, 1] = 1.0
    theta[:, :, 2] = shift
    grid = tf.affine_grid(theta, [n, 1, height, width], align_corners=False)
    return tf.grid_sample(small, grid, align_corners=False) * chance.uniform(n, 1, 1, 1, high=0.75)


def tinted_rim(picture: Tensor, rim: Tensor, chance: Chance) -> Tensor:
    """Trays of other plastics: lighter, darker, a little coloured."""
    n = len(picture)
    gain = torch.exp(chance.normal(n, 1, 1, 1) * 0.45) * (1 + chance.normal(n, 3, 1, 1) * 0.12)
    lift = chance.uniform(n, 1, 1, 1, low=-0.03, high=0.18) * chance.often(0.5, n)
    other = (picture * gain + lift).clamp(0, 1)
    much = rim * chance.often(0.5, n)
    return picture * (1 - much) + other * much


def with_strips(picture: Tensor, rim: Tensor, size: tuple[int, int], chance: Chance) -> tuple[Tensor, Tensor]:
    """Labels, rulers, tapes: bright or coloured strips anywhere."""
    n, _, height, width = picture.shape
    y = torch.linspace(-0.5, 0.5, height, device=picture.device)[None, :, None] * size[1]
    x = torch.linspace(-0.5, 0.5, width, device=picture.device)[None, None, :] * size[0]
    for _ in range(2):
        angle = chance.uniform(n, 1, 1, high=6.3)
        where = chance.uniform(n, 2, 1, 1, low=-0.5, high=0.5)
        u = (x - where[:, 0] * size[0]) * torch.cos(angle) + (y - where[:, 1] * size[1]) * torch.sin(angle)
        v = (y - where[:, 1] * size[1]) * torch.cos(angle) - (x - where[:, 0] * size[0]) * torch.sin(angle)
        long, wide = chance.uniform(n, 1, 1, low=5, high=80), chance.uniform(n, 1, 1, low=2, high=9)
        on = ((u.abs() < long) & (v.abs() < wide)).float()[:, None] * chance.often(0.3, n)
        colour = chance.uniform(n, 1, 1, 1) * 0.8 + 0.2 + chance.normal(n, 3, 1, 1) * 0.08
        picture = picture * (1 - on) + colour.clamp(0, 1) * on
        rim = rim * (1 - on)
    return picture, rim


def smooth_noise(n: int, height: int, width: int, cells: int, chance: Chance) -> Tensor:
    """Even noise of a few cells across, blown up smoothly."""
    noise = chance.uniform(n, 1, cells, cells + 2)
    return tf.interpolate(noise, size=(height, width), mode="bicubic", align_corners=False)


def with_leaves(
    scenes: Scenes, picture: Tensor, rim: Tensor, size: tuple[int, int], chance: Chance
) -> tuple[Tensor, Tensor]:
    """Leaves of another photo hang over this one in patches."""
    n, _, height, width = picture.shape
    ids = chance.pick(scenes.known.float(), n)
    corners = rectangle((float(SOURCE[0]), float(SOURCE[1])), n, chance.device) * 0.5
    scale = torch.exp(chance.uniform(n, low=-0.6, high=0.5))
    corners = corners @ turn(chance.uniform(n, high=6.3), scale).transpose(1, 2) + chance.normal(n, 1, 2) * 40
    start = (
        rectangle(tuple(map(float, size)), n, chance.device) + torch.tensor(size, device=chance.device) / 2
    )
    place = corners + torch.tensor(SOURCE, device=chance.device) / 2
    grid = grid_of(solve(start, place).float(), size, SOURCE, 1)
    layers = tf.grid_sample(scenes.stack[ids].float() / 255, grid, align_corners=False)
    patch = smooth_noise(n, height, width, 5, chance)
    level = chance.uniform(n, 1, 1, 1, low=0.45, high=0.8)
    on = (layers[:, 6:7] > 0.5).float() * (patch > level).float() * chance.often(0.55, n)
    on = tf.avg_pool2d(on, 3, 1, 1)
    return picture * (1 - on) + layers[:, :3] * on, rim * (1 - on)


def shaded(picture: Tensor, chance: Chance) -> Tensor:
    """Hard and soft shadows, uneven light."""
    n, _, height, width = picture.shape
    y = torch.linspace(-0.5, 0.5, height, device=picture.device)[None, :, None]
    x = torch.linspace(-0.5, 0.5, width, device=picture.device)[None, None, :]
    angle = chance.uniform(n, 1, 1, high=6.3)
    far = x * torch.cos(angle) + y * torch.sin(angle) - chance.uniform(n, 1, 1, low=-0.3, high=0.3)
    edge = torch.sigmoid(far * torch.exp(chance.uniform(n, 1, 1, low=1.5, high=6)))[:, None]
    dark = 1 - edge * chance.uniform(n, 1, 1, 1, high=0.7) * chance.often(0.35, n)
    cloud = smooth_noise(n, height, width, 3, chance) - 0.5
    return picture * dark * (1 + cloud * chance.uniform(n, 1, 1, 1, high=0.5))


def recoloured(picture: Tensor, chance: Chance) -> Tensor:
    """Exposure, white balance, gamma, saturation, hue, purple light."""
    n = len(picture)
    gamma = torch.exp(chance.normal(n, 1, 1, 1) * 0.25)
    picture = picture.clamp(1e-4, 1) ** gamma
    turned = chance.normal(n) * 0.5 * (chance.uniform(n) < 0.5)
    turned = torch.where(chance.uniform(n) < 0.12, chance.uniform(n, low=-math.pi, high=math.pi), turned)
    cos, third = torch.cos(turned), 1 / 3
    rest = torch.sin(turned) / math.sqrt(3)
    hue = torch.zeros(n, 3, 3, device=picture.device)
    for row in range(3):
        for column in range(3):
            hue[:, row, column] = third * (1 - cos)
        hue[:, row, row] += cos
        hue[:, row, (row + 1) % 3] -= rest
        hue[:, row, (row + 2) % 3] += rest
    picture = torch.einsum("nij,njhw->nihw", hue, picture)
    grey = picture.mean(1, keepdim=True)
    picture = grey + (picture - grey) * chance.uniform(n, 1, 1, 1, high=1.7)
    gain = torch.exp(chance.normal(n, 3, 1, 1) * 0.13 + chance.normal(n, 1, 1, 1) * 0.3)
    purple = torch.tensor([1.0, 0.45, 1.0], device=picture.device).reshape(1, 3, 1, 1)
    gain = torch.where(chance.often(0.1, n) > 0, gain * purple, gain)
    return (picture * gain).clamp(0, 1)


def blurred(picture: Tensor, chance: Chance) -> Tensor:
    """Out of focus a little or more."""
    n = len(picture)
    soft = tf.avg_pool2d(tf.pad(picture, (1, 1, 1, 1), mode="replicate"), 3, 1)
    softer = tf.avg_pool2d(tf.pad(soft, (1, 1, 1, 1), mode="replicate"), 3, 1)
    much, more = (
        chance.uniform(n, 1, 1, 1) * chance.often(0.4, n),
        chance.uniform(n, 1, 1, 1) * chance.often(0.15, n),
    )
    picture = picture + (picture - soft) * chance.uniform(n, 1, 1, 1, high=0.8) * chance.often(0.3, n)
    return picture * (1 - much) * (1 - more) + soft * much * (1 - more) + softer * more


def random_window(n: int, size: tuple[int, int], chance: Chance) -> Tensor:
    """1 inside a picture that ends somewhere, 0 beyond."""
    width, height = size
    x = torch.arange(width, device=chance.device)[None, None, None, :] / width
    y = torch.arange(height, device=chance.device)[None, None, :, None] / height
    low, high = (
        chance.uniform(2, n, 1, 1, 1, low=-0.2, high=0.2),
        chance.uniform(2, n, 1, 1, 1, low=0.8, high=1.2),
    )
    return ((x > low[0]) & (x < high[0]) & (y > low[1]) & (y < high[1])).float()


# ---- targets and losses ----


def drawn(quad: Tensor, size: tuple[int, int]) -> Tensor:
    """Soft masks of quadrangles (n, 4, 2) at half of `size`, (n, h/2, w/2)."""
    n, width, height = len(quad), size[0] // 2, size[1] // 2
    y, x = torch.meshgrid(
        torch.arange(height, device=quad.device) + 0.5,
        torch.arange(width, device=quad.device) + 0.5,
        indexing="ij",
    )
    quad = quad / 2
    side = quad.roll(-1, 1) - quad
    area = (quad[..., 0] * quad.roll(-1, 1)[..., 1] - quad[..., 1] * quad.roll(-1, 1)[..., 0]).sum(1)
    far = torch.full((n, height, width), 1e3, device=quad.device)
    for k in range(4):
        away = side[:, k, 0, None, None] * (y - quad[:, k, 1, None, None]) - side[:, k, 1, None, None] * (
            x - quad[:, k, 0, None, None]
        )
        far = torch.minimum(far, away * area.sign()[:, None, None] / side[:, k].norm(dim=-1)[:, None, None])
    return (far + 0.5).clamp(0, 1)


def place_batch(scenes: Scenes, n: int, chance: Chance) -> tuple[Tensor, Tensor]:
    """Whole pictures 0-255 and their two masks; every tenth holds no tray."""
    ids = chance.pick(scenes.weight, n)
    matrix = whole_views(scenes, ids, chance)
    picture, _ = seen(scenes, ids, matrix, PLACE_SIZE, chance)
    to_photo = solve(rectangle(INNER_MM, n, chance.device), scenes.corners[ids])
    back = torch.linalg.inv(matrix) @ to_photo
    quads = [moved(back, rectangle(size, n, chance.device)) for size in (INNER_MM, OUTER_MM)]
    target = torch.stack([drawn(quad, PLACE_SIZE) for quad in quads], 1)
    empty = max(1, n // 10)
    bare = tf.avg_pool2d(grounds(scenes, empty, PLACE_SIZE, chance), 2)
    picture = torch.cat([recoloured(bare, chance), picture[empty:]])
    return picture * 255, torch.cat([torch.zeros_like(target[:empty]), target[empty:]])


def place_loss(out: Tensor, target: Tensor) -> Tensor:
    """Cross-entropy and overlap."""
    chance = torch.sigmoid(out)
    both = (chance * target).sum((2, 3))
    dice = 1 - (2 * both + 50) / (chance.sum((2, 3)) + target.sum((2, 3)) + 50)
    return tf.binary_cross_entropy_with_logits(out, target) + 0.5 * dice.mean()


def sides_batch(scenes: Scenes, n: int, chance: Chance, wrongness: Wrongness = GUESSED) -> tuple[Tensor, ...]:
    """Rectified pictures 0-255, true corners in them, visible rim, whether it is known, which hold a tray."""
    ids = chance.pick(scenes.weight, n)
    matrix, corners = near_views(scenes, ids, chance, wrongness)
    picture, rim = seen(scenes, ids, matrix, SIDES_SIZE, chance)
    empty = max(1, n // 16)
    bare = tf.avg_pool2d(grounds(scenes, empty, SIDES_SIZE, chance), 2)
    picture = torch.cat([recoloured(bare, chance), picture[empty:]])
    rim = torch.cat([torch.zeros_like(rim[:empty]), rim[empty:]])
    known = scenes.known[ids].clone()
    known[:empty] = True
    tray = torch.arange(n, device=chance.device) >= empty
    return picture * 255, corners, tf.avg_pool2d(rim, 2), known, tray


def side_targets(corners: Tensor, tray: Tensor) -> list[tuple[Tensor, Tensor]]:
    """For each side: soft target (n, along, across) and which places along it count (n, along)."""
    half = corners / 2
    width, height = SIDES_SIZE[0] // 2, SIDES_SIZE[1] // 2
    found = []
    for first, second, axis in ((0, 1, 0), (3, 2, 0), (0, 3, 1), (1, 2, 1)):
        along, across = (width, height) if axis == 0 else (height, width)
        place = torch.arange(along, device=corners.device) + 0.5
        a, b = half[:, first], half[:, second]
        share = (place - a[:, axis, None]) / (b - a)[:, axis, None]
        where = a[:, 1 - axis, None] + share * (b - a)[:, 1 - axis, None]
        cell = torch.arange(across, device=corners.device) + 0.5
        weight = torch.exp(-0.5 * ((cell - where[..., None]) / 0.8) ** 2) + 1e-12
        target = weight / weight.sum(-1, keepdim=True)
        counts = (share > 0) & (share < 1) & (where > 0) & (where < across)
        even = torch.full_like(target, 1 / across)
        target = torch.where(tray[:, None, None], target, even)
        counts = torch.where(tray[:, None], counts, torch.ones_like(counts))
        found.append((target, counts.float()))
    return found


def sides_loss(out: Tensor, corners: Tensor, rim: Tensor, known: Tensor, tray: Tensor) -> Tensor:
    """Cross-entropy across every place along every side, and of the visible rim."""
    total = out.new_zeros(())
    for k, (target, counts) in enumerate(side_targets(corners, tray)):
        logits = out[:, k].transpose(1, 2) if k < 2 else out[:, k]
        cross = -(target * torch.log_softmax(logits, -1)).sum(-1)
        total = total + (cross * counts).sum() / counts.sum().clamp(min=1) / 4
    visible = tf.binary_cross_entropy_with_logits(out[:, 4:5], rim, reduction="none").mean((1, 2, 3))
    return total + 2.0 * (visible * known).sum() / known.sum().clamp(min=1)


# ---- learning ----


def learn(asked: argparse.Namespace) -> None:
    """Both networks side by side until the steps or the seconds are spent."""
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    torch.manual_seed(7)
    chance = Chance(device, 1234 + sum(map(ord, asked.held)))
    scenes = Scenes(asked.data, asked.held, device, chance.rng)
    nets = {kind: Net(kind).to(device, memory_format=torch.channels_last) for kind in CHANNELS}
    means = {
        k: torch.optim.swa_utils.AveragedModel(
            net, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(0.998), use_buffers=True
        )
        for k, net in nets.items()
    }
    weights = [p for net in nets.values() for p in net.parameters()]
    best = torch.optim.AdamW(weights, lr=asked.rate, weight_decay=1e-3)
    start, step, spent = time.monotonic(), 0, 0.0
    running = dict.fromkeys(nets, 0.0)
    while spent < 1:
        spent = max(step / asked.steps, (time.monotonic() - start) / asked.seconds)
        for group in best.param_groups:
            group["lr"] = (
                asked.rate * min(1.0, (step + 1) / 200) * (0.5 + 0.5 * math.cos(math.pi * min(spent, 1)))
            )
        with torch.no_grad():
            places = place_batch(scenes, asked.batch // 2, chance) if step % 2 == 0 else None
            sides = sides_batch(scenes, asked.batch, chance)
        loss = torch.zeros((), device=device)
        with torch.autocast(device.type, torch.bfloat16, enabled=device.type == "cuda"):
            maps = nets["sides"](sides[0].contiguous(memory_format=torch.channels_last))
            blobs = nets["place"](places[0].contiguous(memory_format=torch.channels_last)) if places else None
        one = sides_loss(maps.float(), *sides[1:])
        loss = loss + one
        if places is not None and blobs is not None:
            two = place_loss(blobs.float(), places[1])
            loss = loss + two
        best.zero_grad(set_to_none=True)
        loss.backward()
        nn.utils.clip_grad_norm_(weights, 3.0)
        best.step()
        for kind in nets:
            if kind == "sides" or places is not None:
                means[kind].update_parameters(nets[kind])
        if step % 200 == 0:
            running = {"sides": one.item(), "place": two.item()}
            print(asked.held, step, f"{time.monotonic() - start:.0f} s", running, flush=True)
        step += 1
    print(asked.held, "steps", step, "photos", len(scenes.names), flush=True)
    asked.out.mkdir(parents=True, exist_ok=True)
    for kind in nets:
        state = {
            k: v.float().cpu() if v.is_floating_point() else v.cpu()
            for k, v in means[kind].module.state_dict().items()
        }
        torch.save(
            {"kind": kind, "held": asked.held, "steps": step, "state": state},
            asked.out / f"{kind}_{asked.held}.pt",
        )


def alter(asked: argparse.Namespace) -> None:
    """Three strongly changed versions of each photo, for judging: other benches, light, leaves, strips."""
    device = torch.device("cpu")
    chance = Chance(device, 99)
    scenes = Scenes(asked.data, "none", device, chance.rng)
    rows = [k for k, name in enumerate(scenes.names) if fold(name) != "demo"] * 3
    names, pictures, corners = [], [], []
    for start in range(0, len(rows), 8):
        ids = torch.tensor(rows[start : start + 8])
        with torch.no_grad():
            picture, _ = seen(scenes, ids, torch.eye(3).expand(len(ids), 3, 3), SOURCE, chance)
        pictures.append((picture.permute(0, 2, 3, 1).numpy() * 255).round().astype(np.uint8))
        names += [scenes.names[k] for k in ids]
        corners.append(scenes.corners[ids].numpy())
    np.savez(asked.npz, names=names, pictures=np.concatenate(pictures), corners=np.concatenate(corners))


def export(asked: argparse.Namespace) -> None:
    """Weights -> ONNX for any number of pictures."""
    kept = torch.load(asked.weights, weights_only=True)
    net = Net(kept["kind"]).eval()
    net.load_state_dict(kept["state"])
    width, height = PLACE_SIZE if kept["kind"] == "place" else SIDES_SIZE
    torch.onnx.export(
        net,
        (torch.zeros(2, 3, height, width),),
        str(asked.onnx),
        input_names=["image"],
        output_names=["maps"],
        dynamo=True,
        external_data=False,
        dynamic_shapes={"x": {0: torch.export.Dim("count", min=1, max=16)}},
    )


def main() -> None:
    """Read the words and do it."""
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    verbs = words.add_subparsers(required=True)
    verb = verbs.add_parser("learn")
    verb.add_argument("data", type=Path)
    verb.add_argument("out", type=Path)
    verb.add_argument("--held", default="all")
    verb.add_argument("--steps", type=int, default=6000)
    verb.add_argument("--seconds", type=float, default=math.inf)
    verb.add_argument("--batch", type=int, default=32)
    verb.add_argument("--rate", type=float, default=2e-3)
    verb.set_defaults(do=learn)
    verb = verbs.add_parser("export")
    verb.add_argument("weights", type=Path)
    verb.add_argument("onnx", type=Path)
    verb.set_defaults(do=export)
    verb = verbs.add_parser("alter")
    verb.add_argument("data", type=Path)
    verb.add_argument("npz", type=Path)
    verb.set_defaults(do=alter)
    asked = words.parse_args()
    asked.do(asked)


if __name__ == "__main__":
    main()
