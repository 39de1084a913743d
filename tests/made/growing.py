"""Growing: made trays with known faults -> the numbers that a scorer would have told of them, day by day.

In    a crop's curve, a medium, faults with their first day, a random generator
Out   `DayNumbers` and `SeenSuspect`s of each day; the day from which the fault is there
Not   pictures: the look list is judged here, not the scorer

A tray is a grid of 12 x 24 half cells (21 mm). Each grows by a logistic curve of its own. What is healthy:
trays of one sowing differ by 0.12 days and 2 points, half cells by 0.1 days in patches and 0.1 by
themselves, the rim is 0.15 days later, mats are a little behind; `rough` multiplies the first two. The
scorer's error of coverage is that of its model card, 1.25 times the mean error as a standard deviation: 0.8
points below 10 %, 4.6 up to 85 %, 1.5 above, beside a bias of its medium of up to 1.5 points; the dark green
index varies by 0.015, as on rendered trays. With `Walls` the tray's wall
hides so much of a mat that it comes out 3.3 points behind loose media and 4.5 points thinner in the outer 42
mm, as on drawn photos that we learn from (`data/looklist/beside.py`).
"""

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from data.numbers import PhotoId
from data.records import DayNumbers, SeenSuspect, SuspectId, Tray
from tests.data.builders import a_kept_tray

__all__ = ["CROPS", "FAULTS", "NO_FAULTS", "Fault", "MadeTray", "Walls", "a_block", "day_of"]

Field = NDArray[np.float64]
ROWS, COLUMNS, HALF_MM = 12, 24, 508 / 24
SOWN = datetime(2026, 3, 1, 9)
SPOILED_AT_ONCE = 15.0  # points: from then on a fault of the stand is there


@dataclass(frozen=True)
class Crop:
    """Day at half coverage, slope in days, upper level in %."""

    name: str
    middle: float
    slope: float
    upper: float


CROPS = (
    Crop("broccoli", 5.0, 0.35, 98.0),
    Crop("red radish", 4.8, 0.35, 98.0),
    Crop("pea", 6.2, 0.8, 94.0),
    Crop("amaranth", 7.5, 0.9, 90.0),
)


class Walls(StrEnum):
    """Whether walls are seen, and whether the scorer tells the share of the bed between them."""

    NONE = "no walls"
    SEEN = "walls"
    TOLD = "walls, and the bed is told"


WALL = {
    "peat mix": (0.0, 0.0),
    "coir": (0.0, 0.0),
    "plant-fibre mat": (0.013, 0.045),
}  # all over; more outside
MEDIA = {"peat mix": (0.0, 0.0, 0.0), "coir": (0.05, 0.0, -0.7), "plant-fibre mat": (0.15, 2.0, 0.4)}


@dataclass(frozen=True)
class Fault:
    """What goes wrong, and from which day since sowing."""

    name: str
    day: int


FAULTS = (
    "late emergence", "patchy", "dry side grows", "dry edge grows", "lag of 15 points", "damping off",
    "mold of 2 cm2", "paling",
)  # fmt: skip
NO_FAULTS = ("one bad photo", "wrong tag for a day", "missing days", "another method")


class MadeTray:
    """One tray, its growth drawn at once; `numbers` and `suspects` of each day follow from it."""

    def __init__(
        self, tray: Tray, crop: Crop, fault: Fault | None, rng: np.random.Generator, rough: float = 1.0,
        walls: Walls = Walls.NONE,
    ) -> None:  # fmt: skip
        self.tray, self.crop, self.fault, self._rng = tray, crop, fault, rng
        delay, lower, self._bias = MEDIA[tray.medium]
        self._walls = walls
        self._wall = self._hidden(WALL[tray.medium])
        self._upper = crop.upper - lower + rng.normal(0, 2 * rough)
        self._middle = crop.middle + delay + rng.normal(0, 0.12 * rough) + self._delays()
        if fault is not None and fault.name == "late emergence":
            self._middle += 1.2
        self._sick = self._places(fault)
        self._index = rng.normal(0.62, 0.015)

    def _hidden(self, wall: tuple[float, float]) -> Field:
        """Share of each half cell that the wall hides."""
        if self._walls is Walls.NONE:
            return np.zeros((ROWS, COLUMNS))
        outside = np.ones((ROWS, COLUMNS))
        outside[2:-2, 2:-2] = 0.0
        return wall[0] + wall[1] * outside

    def _delays(self) -> Field:
        coarse = self._rng.normal(0, 0.1, (4, 7))
        patches = np.kron(coarse, np.ones((3, 4)))[:ROWS, :COLUMNS]
        rim = np.zeros((ROWS, COLUMNS))
        rim[[0, -1], :] = rim[:, [0, -1]] = 0.15
        return np.asarray(patches + rim + self._rng.normal(0, 0.1, (ROWS, COLUMNS)))

    def _places(self, fault: Fault | None) -> Field:
        """Distance in mm of each half cell from where the fault begins; for patches 0 inside, far outside."""
        y, x = np.mgrid[0:ROWS, 0:COLUMNS] * HALF_MM + HALF_MM / 2
        if fault is None:
            return np.full((ROWS, COLUMNS), 1e9)
        if fault.name == "dry side grows":
            sides = (x, y, COLUMNS * HALF_MM - x, ROWS * HALF_MM - y)
            return np.asarray(sides[self._rng.integers(4)])
        if fault.name == "dry edge grows":
            return np.asarray(np.minimum.reduce([x, y, COLUMNS * HALF_MM - x, ROWS * HALF_MM - y]))
        if fault.name == "damping off":
            cx, cy = self._rng.uniform(60, 450), self._rng.uniform(60, 190)
            return np.asarray(np.hypot(x - cx, y - cy))
        if fault.name == "patchy":
            far = np.full((ROWS, COLUMNS), 1e9)
            while (far == 0).mean() < 0.25:
                cx, cy = self._rng.uniform(0, 508), self._rng.uniform(0, 254)
                far[np.hypot((x - cx) / 1.5, y - cy) < 35] = 0
            return far
        return np.full((ROWS, COLUMNS), 1e9)

    # --- what is there

    def truth(self, day: float) -> Field:
        """Coverage of each half cell in % at a day since sowing."""
        cover = self._upper / (1 + np.exp(-(day - self._middle) / self.crop.slope))
        if self.fault is None or day < self.fault.day:
            return np.clip(cover, 0, 100)
        gone = day - self.fault.day
        match self.fault.name:
            case "lag of 15 points":
                mean = cover.mean()
                cover = cover * max(0.0, mean - 15.0) / max(mean, 1e-9)
            case "dry side grows" | "dry edge grows":
                cover = np.where(self._sick < 50.0, cover * (1 - min(0.9, 0.12 * (gone + 1))), cover)
            case "damping off":
                cover = np.where(self._sick < 40.0 + 20.0 * gone, cover * 0.1, cover)
            case "patchy":
                cover = np.where(self._sick == 0, cover * 0.03, cover)
        return np.clip(cover, 0, 100)

    def begins(self) -> int | None:
        """The first day on which the fault is there to be seen; None where there is none."""
        if self.fault is None:
            return None
        if self.fault.name in ("mold of 2 cm2", "paling"):
            return self.fault.day
        healthy = MadeTray.__new__(MadeTray)
        healthy.__dict__ = self.__dict__ | {"fault": None}
        if self.fault.name == "late emergence":
            healthy.__dict__["_middle"] = self._middle - 1.2
        for day in range(2, 20):
            lack = healthy.truth(day + 23 / 24) - self.truth(day + 23 / 24)
            if self.fault.name in ("dry side grows", "dry edge grows", "damping off", "patchy"):
                sick = lack[self._sick < 50.0]
                there = sick.size > 0 and sick.mean() >= SPOILED_AT_ONCE
            else:
                there = lack.mean() >= SPOILED_AT_ONCE - 0.5
            if there:
                return day
        return None

    # --- what the scorer says

    def numbers(self, day: int, *, bad: bool = False, method: str = "learned 1") -> DayNumbers:
        """The score of the photo of a day, taken at eight in the morning of the day after that day began."""
        rng = self._rng
        truth = self.truth(day + 23 / 24)
        mean = truth.mean()
        sd = 0.8 if mean < 10 else 4.6 if mean < 85 else 1.5
        error = float(np.clip(rng.normal(0, sd), -3 * sd, 3 * sd)) + self._bias * (10 < mean < 95)
        if method != "learned 1":
            error += 5.0
        room = np.sqrt(np.clip(truth * (100 - truth), 0, None)) / 50  # 1 in the middle, 0 at both ends
        seen = truth + error * np.clip(room, 0.2, 1) + rng.normal(0, 1.5 + 6 * room)
        if bad:
            seen = seen * rng.uniform(0.2, 0.7) + rng.normal(0, 8, seen.shape)
        seen = np.clip(seen, 0, 100)
        outer = np.ones((ROWS, COLUMNS), dtype=bool)
        outer[1:-1, 1:-1] = False
        seen = seen * (1 - self._wall)
        cells = seen.reshape(6, 2, 12, 2).mean((1, 3))
        coverage = float(seen.mean())
        index = self._index + rng.normal(0, 0.015) - 0.1 * max(0.0, 1 - mean / 90)
        if self.fault is not None and self.fault.name == "paling" and day >= self.fault.day:
            index -= 0.04 * (day - self.fault.day + 1)
        if bad:
            index -= rng.uniform(-0.1, 0.2)
        return DayNumbers(
            tray_id=self.tray.id,
            photo_id=PhotoId(int(self.tray.id) * 100 + day),
            taken_at=SOWN + timedelta(days=day, hours=23),
            refusal=None,
            needs_corners=False,
            method=method,
            sure=True,
            coverage=coverage,
            uniformity=None if coverage <= 5 else _christiansen(cells, coverage),
            edge_deficit=float(seen[~outer].mean() - seen[outer].mean()),
            gap_share=100 * float(np.where(seen < 12, 1, self._wall).mean()) if coverage > 5 else None,
            bed_share=coverage / (1 - float(self._wall.mean())) if self._walls is Walls.TOLD else None,
            lightness=float(rng.normal(42, 2.5)) if coverage > 5 else None,
            dark_green=float(index) if coverage > 30 else None,
            corrected=True,
            cells=np.round(cells * 100).astype("<u2").tobytes(),
        )

    def suspects(self, day: int) -> tuple[SeenSuspect, ...]:
        """The patch of mold, where there is one: 2 cm2 on the first day, half as large again on each."""
        if self.fault is None or self.fault.name != "mold of 2 cm2" or day < self.fault.day:
            return ()
        return (
            SeenSuspect(
                id=SuspectId(int(self.tray.id) * 100 + day),
                tray_id=self.tray.id,
                photo_id=PhotoId(int(self.tray.id) * 100 + day),
                taken_at=SOWN + timedelta(days=day, hours=23),
                x_mm=200.0,
                y_mm=120.0,
                area_cm2=2.0 * 1.5 ** (day - self.fault.day),
                confidence=float(self._rng.uniform(0.35, 0.9)),
                said=None,
            ),
        )


def _christiansen(cells: Field, mean: float) -> float:
    return 100 * (1 - float(np.abs(cells - mean).sum()) / (cells.size * mean))


def a_block(
    number: int,
    crop: Crop,
    mates: int,
    fault: Fault | None,
    rng: np.random.Generator,
    rough: float = 1.0,
    walls: Walls = Walls.NONE,
) -> list[MadeTray]:
    """Trays of one crop and sowing on one shelf; the first one carries the fault."""
    media = list(MEDIA)
    return [
        MadeTray(
            a_kept_tray(
                100 * number + place,
                crop=crop.name, medium=media[(place + number) % 3], block=str(number), shelf=f"S{number}",
                sown_at=SOWN,
            ),
            crop,
            fault if place == 0 else None,
            rng,
            rough,
            walls,
        )
        for place in range(mates + 1)
    ]  # fmt: skip


def day_of(day: int) -> date:
    """The calendar day of the photo of a day."""
    return (SOWN + timedelta(days=day, hours=23)).date()
