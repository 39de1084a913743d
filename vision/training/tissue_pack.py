"""What the tissue network learns from, read once and held on the device.

In    the folder that `prepare_tissue.py` wrote
Out   `Pack`: trays, real pictures, which of them are kept apart
Not   how pictures are drawn and changed (`tissue_pictures.py`)

Growers send photos through apps that shrink them and store them anew, which takes young leaves of 5 to 10
px. So each picture comes with copies that were really made smaller and stored, by the codecs themselves.
"""

import json
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import cv2
import numpy as np
import torch
from draws import DEVICE
from made_mold import bare
from torch import Tensor

REST, PLANT = 253, 254  # labels where a mask tells no more
RED_CROPS = ("amaranth", "red_cabbage", "red_radish")
GREEN_GROUND = ("GreenMeadow", "grass", "leaves", "vegetal", "Garden")  # textures that are plants themselves
CANVAS = 1016
THIRDS, FOURTHS = 3, 4
COPIES = 8  # of each picture, stored by an app
SMALLEST = 0.5  # of a copy; the demonstration's photos are 0.7 times as fine as a top view
WORST_QUALITY, BEST_QUALITY = 45, 92
CODECS = ((".jpg", cv2.IMWRITE_JPEG_QUALITY), (".webp", cv2.IMWRITE_WEBP_QUALITY))
READERS = 16


def is_held(tray: dict, held: str) -> bool:
    """Whether a tray is kept apart: the set for choosing between methods, or a third of all by number."""
    kind, number = tray["name"][0], int(tray["name"][1:])
    if held != "choosing":
        return number % THIRDS == int(held)
    return tray["src"] == "photos" and (64 <= number <= 83 if kind == "a" else number >= 316)


def is_held_real(number: int, held: str) -> bool:
    """Whether a real picture with a mask, counted from 1, is kept apart: every fourth, or a third."""
    return number % FOURTHS == 0 if held == "choosing" else number % THIRDS == int(held)


class Pack:
    """All pictures of a prepared folder, on the device."""

    def __init__(self, folder: Path, held: str, seed: int) -> None:
        self.folder = folder
        told = json.loads((folder / "meta.json").read_text())
        self.trays = told["top"]
        self.pictures = with_copies([self.read(f"{t['name']}.jpg") for t in self.trays], seed)
        self.labels = torch.stack([self.mask(f"{t['name']}_labels.png") for t in self.trays]).to(DEVICE)
        white = [i for i, tray in enumerate(self.trays) if tray["light"] != "purple"]
        self.apart = [i for i in white if is_held(self.trays[i], held)]
        self.learned = torch.tensor([i for i in white if i not in self.apart], device=DEVICE)
        self.weights = torch.tensor([weight(self.trays[i]) for i in self.learned.tolist()], device=DEVICE)
        self.open = bare(self.labels[self.learned]).float().mean((1, 2)) + 0.02
        self.moldy = torch.tensor([i for i in self.learned.tolist() if self.trays[i]["mold"]], device=DEVICE)
        self.held: list[tuple[dict, np.ndarray, np.ndarray]] = []  # real pictures with a mask
        self._take_real(told["real"], held, seed)

    def read(self, name: str) -> np.ndarray:
        """A picture, RGB."""
        return cv2.imread(str(self.folder / name))[..., ::-1]

    def mask(self, name: str) -> Tensor:
        """A picture of one channel."""
        return torch.from_numpy(cv2.imread(str(self.folder / name), cv2.IMREAD_GRAYSCALE))

    def _take_real(self, entries: list[dict], held: str, seed: int) -> None:
        pictures, labels, masked = [], [], 0
        for entry in entries:
            picture = self.read(f"{entry['name']}.jpg")
            if entry["group"] in ("ews", "peanut"):
                plant = self.mask(f"{entry['name']}_mask.png").numpy() > 127
                masked += 1
                if is_held_real(masked, held):
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
        self.real, self.real_labels = with_copies(pictures, seed), torch.stack(labels).to(DEVICE)
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


def with_copies(pictures: list[np.ndarray], seed: int) -> Tensor:
    """All pictures, then a copy of each, `COPIES` times over, as apps store them; (n, 3, rows, columns)."""
    draws = np.random.default_rng(seed)
    asked = [(picture, *draws.random(3)) for _ in range(COPIES) for picture in pictures]
    with ThreadPoolExecutor(READERS) as readers:
        return on_device(pictures + list(readers.map(lambda one: as_an_app(*one), asked)))


def as_an_app(picture: np.ndarray, size: float, quality: float, codec: float) -> np.ndarray:
    """Made smaller, stored as JPEG or as WebP, enlarged again; what is drawn lies between 0 and 1."""
    rows, columns = picture.shape[:2]
    share = SMALLEST ** (1 - size)
    small = cv2.resize(picture, None, fx=share, fy=share, interpolation=cv2.INTER_AREA)
    kind, setting = CODECS[int(codec * len(CODECS))]
    wanted = round(WORST_QUALITY + (BEST_QUALITY - WORST_QUALITY) * quality)
    _, kept = cv2.imencode(kind, small[..., ::-1], [setting, wanted])
    small = cv2.imdecode(kept, cv2.IMREAD_COLOR)[..., ::-1]
    return cv2.resize(small, (columns, rows), interpolation=cv2.INTER_LINEAR)


def weight(tray: dict) -> float:
    """How often a tray is drawn: rare and hard ones more."""
    rare = 1.0 * (tray["crop"] in RED_CROPS) + 1.5 * (tray["mold"] > 0) + 1.0 * (tray["day"] < 7)
    return 1 + rare + 0.7 * (tray["medium"] == "paper") + 0.4 * (tray["medium"] == "coir")
