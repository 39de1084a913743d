"""Pictures that the tissue network learns from: crops of trays and real pictures, changed in every way.

In    the folder that `prepare_tissue.py` wrote
Out   batches of float pictures (n, 3, size, size), 0-1, and labels (n, size, size): 0-9 as in
      `vision/tissue.py`, PLANT or REST where a mask tells no more
Not   the network (`learn_tissue.py`)

Everything is done on the device. What may differ between learning and use is changed here: place, turn,
scale, colour of each tissue by itself, light, camera, what lies under the leaves.
"""

import json
import math
from pathlib import Path

import cv2
import numpy as np
import torch
import torch.nn.functional as tf
from draws import DEVICE, even, field, normal
from made_mold import FUZZ, HULL, MEDIUM, bare, with_made_mold
from torch import Tensor

LABELS = 10
REST, PLANT = 253, 254
LEAVES = (4, 6)  # first and last label of canopy
TOGETHER = ((0, 1, 9), (2,), (3,), (4,), (5,), (6,), (7, 8), (PLANT,), (REST,))  # get one change of colour
RED_CROPS = ("amaranth", "red_cabbage", "red_radish")
GREEN_GROUND = ("GreenMeadow", "grass", "leaves", "vegetal", "Garden")  # textures that are plants themselves
CANVAS = 1016
BLUR_REACH = 3
THIRDS = 3
LUMA = (0.299, 0.587, 0.114)
GAIN_SD = torch.tensor([0.21, 0.21, *[0.13] * 7])[:, None]  # of each set of `TOGETHER`
COLOURFUL_SD = torch.tensor([0.35, 0.35, 0.35, *[0.18] * 6])[:, None]


def is_held(tray: dict, held: str) -> bool:
    """Whether a tray is kept apart: the set for choosing between methods, or a third of all by number."""
    kind, number = tray["name"][0], int(tray["name"][1:])
    if held != "choosing":
        return number % THIRDS == int(held)
    return tray["src"] == "photos" and (64 <= number <= 83 if kind == "a" else number >= 316)


class Pack:
    """All pictures of a prepared folder, on the device."""

    def __init__(self, folder: Path, held: str) -> None:
        self.folder = folder
        told = json.loads((folder / "meta.json").read_text())
        self.trays = told["top"]
        self.pictures = on_device([self.read(f"{t['name']}.jpg") for t in self.trays])
        self.labels = torch.stack([self.mask(f"{t['name']}_labels.png") for t in self.trays]).to(DEVICE)
        white = [i for i, tray in enumerate(self.trays) if tray["light"] != "purple"]
        self.apart = [i for i in white if is_held(self.trays[i], held)]
        self.learned = torch.tensor([i for i in white if i not in self.apart], device=DEVICE)
        self.weights = torch.tensor([weight(self.trays[i]) for i in self.learned.tolist()], device=DEVICE)
        self.open = bare(self.labels[self.learned]).float().mean((1, 2)) + 0.02
        self.moldy = torch.tensor([i for i in self.learned.tolist() if self.trays[i]["mold"]], device=DEVICE)
        self.held: list[tuple[dict, np.ndarray, np.ndarray]] = []  # real pictures with a mask, every fourth
        self._take_real(told["real"])

    def read(self, name: str) -> np.ndarray:
        """A picture, RGB."""
        return cv2.imread(str(self.folder / name))[..., ::-1]

    def mask(self, name: str) -> Tensor:
        """A picture of one channel."""
        return torch.from_numpy(cv2.imread(str(self.folder / name), cv2.IMREAD_GRAYSCALE))

    def _take_real(self, entries: list[dict]) -> None:
        pictures, labels, masked = [], [], 0
        for entry in entries:
            picture = self.read(f"{entry['name']}.jpg")
            if entry["group"] in ("ews", "peanut"):
                plant = self.mask(f"{entry['name']}_mask.png").numpy() > 127
                masked += 1
                if masked % 4 == 0:
                    self.held.append((entry, picture.copy(), plant))
                    continue
                label, times = np.where(plant, PLANT, REST).astype(np.uint8), 2
            elif entry["group"] == "texe" and not any(word in entry["name"] for word in GREEN_GROUND):
                label, times = np.full(picture.shape[:2], REST, np.uint8), 1
            else:
                continue
            closer = 2 if entry["group"] == "ews" else 1  # 350 px: enlarged to meet a top view's scale
            picture, label = on_canvas(picture, closer, cv2.INTER_CUBIC), on_canvas(label, closer, 0)
            pictures += [picture] * times
            labels += [torch.from_numpy(label)] * times
        self.real, self.real_labels = on_device(pictures), torch.stack(labels).to(DEVICE)
        with_plants = [i for i, label in enumerate(labels) if bool((label == PLANT).any())]
        self.with_plants = torch.tensor(with_plants, device=DEVICE)


def on_device(pictures: list[np.ndarray]) -> Tensor:
    """(n, 3, rows, columns), uint8."""
    return torch.from_numpy(np.stack(pictures)).permute(0, 3, 1, 2).contiguous().to(DEVICE)


def on_canvas(picture: np.ndarray, times: int, how: int) -> np.ndarray:
    """Enlarged, then mirrored (small textures: repeated) to fill the canvas."""
    larger = cv2.resize(picture, None, fx=times, fy=times, interpolation=how)
    below, beside = (max(0, CANVAS - side) for side in larger.shape[:2])
    room = ((0, below), (0, beside), (0, 0))[: larger.ndim]
    return np.pad(larger, room, "wrap" if larger.shape[0] < 300 else "symmetric")[:CANVAS, :CANVAS]


def weight(tray: dict) -> float:
    """How often a tray is drawn: rare and hard ones more."""
    rare = 1.0 * (tray["crop"] in RED_CROPS) + 1.5 * (tray["mold"] > 0) + 1.0 * (tray["day"] < 7)
    return 1 + rare + 0.7 * (tray["medium"] == "paper") + 0.4 * (tray["medium"] == "coir")


def batch(pack: Pack, count: int, size: int) -> tuple[Tensor, Tensor]:
    """Two thirds trays, one third real pictures, things laid into one another; colours as they were."""
    real, laid, sixth = count // 3, count // 8, count // 6
    of_any = torch.multinomial(pack.weights, count - sixth, replacement=True)
    of_open = torch.multinomial(pack.weights * pack.open, sixth, replacement=True)
    x, y = crops(pack.pictures, pack.labels, pack.learned[torch.cat([of_open, of_any])], size)
    x[-real:], y[-real:] = crops(pack.real, pack.real_labels, any_real(pack, real), size, (0.38, 1.6))
    x, y = with_leaves_of_others(x, y)
    x, y = with_mold_of_others(pack, x, y, slice(laid, 2 * laid))
    x = on_other_ground(pack, x, y, slice(count - real - sixth, count - real))
    return with_made_mold(x, y, slice(0, laid), slice(2 * laid, 3 * laid))


def any_real(pack: Pack, count: int) -> Tensor:
    """Numbers of real pictures, three in four of them with plants."""
    all_of_them = torch.randint(len(pack.real), (count,), device=DEVICE)
    plants = pack.with_plants[torch.randint(len(pack.with_plants), (count,), device=DEVICE)]
    return torch.where(even(count) < 0.75, plants, all_of_them)


def crops(
    pictures: Tensor, labels: Tensor, drawn: Tensor, size: int, zoom: tuple[float, float] = (0.55, 1.9)
) -> tuple[Tensor, Tensor]:
    """Crops at any place and angle, mirrored, sheared a little, each at a zoom of its own."""
    count, (height, width) = len(drawn), pictures.shape[2:]
    angle = even(count) * 2 * math.pi
    times = torch.exp(math.log(zoom[0]) + even(count) * math.log(zoom[1] / zoom[0]))
    mirrored = torch.where(even(count) < 0.5, -1.0, 1.0)
    sheared = normal(count) * 0.08
    half = size / 2 / times
    middle_x = width / 2 + (even(count) - 0.5) * (width - 60)
    middle_y = height / 2 + (even(count) - 0.5) * (height - 60)
    across, up = torch.cos(angle), torch.sin(angle)
    rows = [across * half * mirrored, (-up + sheared) * half, middle_x - width / 2]
    columns = [up * half * mirrored, across * half, middle_y - height / 2]
    way = torch.stack([torch.stack(rows, 1) * 2 / width, torch.stack(columns, 1) * 2 / height], 1)
    grid = tf.affine_grid(way, [count, 3, size, size], align_corners=False)
    how = {"padding_mode": "reflection", "align_corners": False}
    x = tf.grid_sample(pictures[drawn].float() / 255, grid, mode="bilinear", **how)
    y = tf.grid_sample(labels[drawn][:, None].float(), grid, mode="nearest", **how)
    return x, y[:, 0].round().long()


def is_leaf(y: Tensor) -> Tensor:
    """Where canopy is, by label or by mask."""
    return ((y >= LEAVES[0]) & (y <= LEAVES[1])) | (y == PLANT)


def with_leaves_of_others(x: Tensor, y: Tensor) -> tuple[Tensor, Tensor]:
    """Leaves of another picture, and sometimes its hulls, laid over every fifth or so, with their shade."""
    count, other = len(x), torch.randperm(len(x), device=DEVICE)
    laid = is_leaf(y[other]) | ((y[other] == HULL) & (even(count) < 0.5)[:, None, None])
    laid = laid & (even(count) < 0.22)[:, None, None]
    x = in_shade_of(x, laid[:, None].float())
    return torch.where(laid[:, None], x[other], x), torch.where(laid, y[other], y)


def in_shade_of(x: Tensor, leaves: Tensor) -> Tensor:
    """Darker beside what lies above, to one side, the same for all of `x`."""
    down, right = (int(way) for way in torch.randint(-10, 11, (2,)))
    few = tf.avg_pool2d(torch.roll(leaves, (down, right), (2, 3)), 4)
    shade = tf.interpolate(tf.avg_pool2d(few, 3, 1, 1), x.shape[2:], mode="bilinear", align_corners=False)
    return x * (1 - 0.5 * even(len(x), 1, 1, 1) * shade)


def with_mold_of_others(pack: Pack, x: Tensor, y: Tensor, which: slice) -> tuple[Tensor, Tensor]:
    """Mold of another tray laid over medium and hulls of some pictures."""
    count = which.stop - which.start
    drawn = pack.moldy[torch.randint(len(pack.moldy), (count,), device=DEVICE)]
    over, its = crops(pack.pictures, pack.labels, drawn, x.shape[2])
    laid = (its == FUZZ) & ((y[which] == MEDIUM) | (y[which] == HULL) | (y[which] == FUZZ))
    thick = 0.6 + 0.4 * even(count, 1, 1, 1)
    x[which] = torch.where(laid[:, None], over * thick + x[which] * (1 - thick), x[which])
    y[which] = torch.where(laid, its, y[which])
    return x, y


def on_other_ground(pack: Pack, x: Tensor, y: Tensor, which: slice) -> Tensor:
    """Medium of most of some pictures covered by another tray's, by ground around plants, by a texture."""
    count = which.stop - which.start
    halves = (count // 2, count - count // 2)
    real = torch.randint(len(pack.real), (halves[0],), device=DEVICE)
    trays = pack.learned[torch.multinomial(pack.open, halves[1], replacement=True)]
    one, its_one = crops(pack.real, pack.real_labels, real, x.shape[2], (0.5, 2.5))
    two, its_two = crops(pack.pictures, pack.labels, trays, x.shape[2])
    ground, its = torch.cat([one, two]), torch.cat([its_one, its_two])
    laid = ((its == REST) | (its == MEDIUM)) & (y[which] == MEDIUM) & (even(count) < 0.7)[:, None, None]
    thick = 0.3 + 0.7 * even(count, 1, 1, 1)
    x[which] = torch.where(laid[:, None], ground * thick + x[which] * (1 - thick), x[which])
    return x


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


def in_other_colours(x: Tensor, y: Tensor, strength: float) -> Tensor:
    """Other tissues, other light, another lens; `strength` says how far colours and light are changed."""
    return sharper_or_softer(in_other_light(recoloured(x, y, strength), strength))


def in_other_light(x: Tensor, strength: float) -> Tensor:
    """Shade, hard shadow, exposure, white balance, two lights, gamma, colourfulness and a turn of hue."""
    count, size = len(x), x.shape[2]
    soft = torch.exp(field(count, size, 4) * 0.25 * even(count, 1, 1, 1))
    hard = torch.sigmoid(field(count, size, 3) * 40) * even(count, 1, 1, 1) * 0.6
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


def luma(x: Tensor) -> Tensor:
    """Grey, (n, 1, size, size)."""
    return (x * torch.tensor(LUMA, device=DEVICE)[None, :, None, None]).sum(1, keepdim=True)
