"""Crop table: what is usual for a crop, so that a slip of the finger is noticed. It warns and never refuses.

In    a crop's name; a tray's conditions or a reading
Out   sentences for the grower; empty where all is usual, or where the crop is not in the table
Not   the grower's own defaults (`conditions.py`), what cannot be at all (`readings.py`)

All numbers are common practice of growers, for a 10 x 20 inch tray (254 x 508 mm); growers differ by a
factor of two and more, so the bands are wide. Amounts of seed and yield are scaled by the inner
area of other trays.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from data.growing.conditions import TrayType
from data.readings import SAID, ReadingKind
from data.records import NewTray, Tray
from data.sentence import Sentence

__all__ = [
    "CROPS",
    "Band",
    "CropBands",
    "bands_of",
    "doubt_of_cut",
    "doubt_of_reading",
    "doubt_of_type",
    "doubts_of_tray",
]

NOMINAL = TrayType(name="10 x 20 inch")
DAY = timedelta(days=1)
LEAST_OFF_PCT = 3.0  # of a length, before it is worth a word


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """From the least to the most that is usual."""

    low: float
    high: float

    def holds(self, value: float) -> bool:
        """Whether a value is usual."""
        return self.low <= value <= self.high

    def times(self, factor: float) -> "Band":
        """The same of a larger or smaller tray."""
        return Band(low=self.low * factor, high=self.high * factor)


@dataclass(frozen=True, slots=True, kw_only=True)
class CropBands:
    """What is usual for one crop on a 10 x 20 inch tray."""

    seed_g: Band  # dry
    usual_seed_g: float
    soak_h: Band
    blackout_d: Band
    stacked_d: Band  # of the blackout
    cut_d: Band  # from sowing
    yield_g: Band  # fresh


def _bands(
    seed: tuple[float, float, float],
    soak: tuple[float, float],
    blackout: tuple[float, float],
    stacked: tuple[float, float],
    cut: tuple[float, float],
    fresh: tuple[float, float],
) -> CropBands:
    return CropBands(
        seed_g=Band(low=seed[0], high=seed[1]),
        usual_seed_g=seed[2],
        soak_h=Band(low=soak[0], high=soak[1]),
        blackout_d=Band(low=blackout[0], high=blackout[1]),
        stacked_d=Band(low=stacked[0], high=stacked[1]),
        cut_d=Band(low=cut[0], high=cut[1]),
        yield_g=Band(low=fresh[0], high=fresh[1]),
    )


CROPS = {
    "radish": _bands((25, 80, 35), (0, 0), (2, 4), (2, 3), (6, 10), (200, 400)),
    "broccoli": _bands((12, 25, 18), (0, 0), (2, 4), (2, 3), (8, 14), (120, 300)),
    "mustard": _bands((8, 20, 14), (0, 0), (2, 4), (2, 3), (7, 14), (120, 250)),
    "sunflower": _bands((100, 220, 130), (8, 24), (3, 5), (2, 4), (8, 14), (300, 650)),  # in the hull
    "pea": _bands((200, 430, 280), (8, 24), (3, 5), (2, 4), (9, 15), (300, 650)),
    "wheat grass": _bands((250, 450, 350), (8, 12), (2, 3), (1, 3), (7, 10), (300, 500)),
    "red cabbage": _bands((12, 25, 18), (0, 0), (2, 4), (2, 3), (8, 14), (120, 280)),
    "amaranth": _bands((6, 15, 10), (0, 0), (3, 6), (2, 3), (10, 18), (60, 180)),
}
SPELLINGS = {
    "wheatgrass": "wheat grass", "peas": "pea", "sunflowers": "sunflower", "radishes": "radish",
    # in German
    "radieschen": "radish", "rettich": "radish", "brokkoli": "broccoli", "senf": "mustard",
    "sonnenblume": "sunflower", "sonnenblumen": "sunflower", "erbse": "pea", "erbsen": "pea",
    "weizengras": "wheat grass", "rotkohl": "red cabbage", "rotkraut": "red cabbage",
    "blaukraut": "red cabbage", "amarant": "amaranth",
}  # fmt: skip

# what is usual on a rack, whatever grows there; common practice
READINGS = {
    ReadingKind.WEIGHT: Band(low=200, high=12_000),
    ReadingKind.MEDIUM_TEMPERATURE: Band(low=8, high=38),
    ReadingKind.AIR_TEMPERATURE: Band(low=5, high=40),
    ReadingKind.HUMIDITY: Band(low=20, high=100),
    ReadingKind.WATER: Band(low=10, high=3_000),
    ReadingKind.FEED: Band(low=1, high=3_000),
    ReadingKind.HEIGHT: Band(low=3, high=300),
    ReadingKind.LABOUR: Band(low=0, high=120),
    ReadingKind.SWEEPINGS: Band(low=0, high=1_000),
    ReadingKind.SHELF_LIFE: Band(low=2, high=21),
}


def bands_of(crop: str) -> CropBands | None:
    """What is usual for the crop that a name speaks of ("red radish", "Pea, speckled"); None if not known."""
    words = "".join(c if c.isalnum() else " " for c in crop.lower()).split()
    said = " ".join(SPELLINGS.get(word, word) for word in words)
    found = [name for name in CROPS if f" {name} " in f" {said} "]
    return CROPS[max(found, key=len)] if found else None


def doubts_of_tray(
    tray: NewTray | Tray, tray_type: TrayType = NOMINAL, today: date | None = None
) -> tuple[Sentence, ...]:
    """What is unusual about a tray's conditions, for a person to look at before or after it is kept."""
    return (*_doubts_of_times(tray, today), *_doubts_of_crop(tray, tray_type))


def _doubts_of_crop(tray: NewTray | Tray, tray_type: TrayType) -> Iterator[Sentence]:
    bands = bands_of(tray.crop)
    if bands is None:
        return
    seed = bands.seed_g.times(tray_type.inner_cm2 / NOMINAL.inner_cm2)
    if tray.sowing_rate_g is not None and not seed.holds(tray.sowing_rate_g):
        yield Sentence(
            "{value:.0f} g of dry seed is unusual for {crop} on this tray: {low:.0f} to {high:.0f} g is "
            "common. Look whether the number and its unit are right.",
            value=tray.sowing_rate_g, crop=tray.crop, low=seed.low, high=seed.high,
        )  # fmt: skip
    if tray.soak_hours is not None and not bands.soak_h.holds(tray.soak_hours):
        yield _unsoaked(tray) if bands.soak_h.high == 0 else _soaked(tray, bands)
    if tray.blackout_from is not None and tray.blackout_to is not None:
        days = (tray.blackout_to - tray.blackout_from) / DAY
        if days > 0 and not bands.blackout_d.holds(round(days, 1)):
            yield Sentence(
                "{days:.1f} days covered is unusual for {crop}: {low:.0f} to {high:.0f} days is common.",
                days=days, crop=tray.crop, low=bands.blackout_d.low, high=bands.blackout_d.high,
            )  # fmt: skip


def _unsoaked(tray: NewTray | Tray) -> Sentence:
    return Sentence(
        "{crop} is commonly sown dry; {hours:.0f} hours of soaking were noted.",
        crop=tray.crop, hours=tray.soak_hours,
    )  # fmt: skip


def _soaked(tray: NewTray | Tray, bands: CropBands) -> Sentence:
    return Sentence(
        "A soak of {hours:.0f} h is unusual for {crop}: {low:.0f} to {high:.0f} h is common.",
        hours=tray.soak_hours, crop=tray.crop, low=bands.soak_h.low, high=bands.soak_h.high,
    )  # fmt: skip


def _doubts_of_times(tray: NewTray | Tray, today: date | None) -> Iterator[Sentence]:
    begin, end = tray.blackout_from, tray.blackout_to
    if begin is not None and end is not None and end < begin:
        yield Sentence("The blackout ends before it begins: look at its two times.")
    if today is not None and tray.sown_at.date() > today:
        days = (tray.sown_at.date() - today).days
        yield (
            Sentence("The sowing lies a day ahead: look at the date.")
            if days == 1
            else Sentence("The sowing lies {days} days ahead: look at the date.", days=days)
        )


def doubt_of_reading(
    kind: ReadingKind,
    value: float,
    *,
    crop: str = "",
    tray_type: TrayType = NOMINAL,
    last_weight_g: float | None = None,
) -> Sentence | None:
    """What is unusual about a number, or None.

    Parameters
    ----------
    value : in the kind's unit.
    last_weight_g : the tray's weight before this one, where there is one: a slipped digit shows against it.
    """
    if kind is ReadingKind.WEIGHT and last_weight_g and not 0.4 <= value / last_weight_g <= 2.5:
        return Sentence(
            "{value:.0f} g stands against {last:.0f} g before: look whether a digit or the unit has slipped.",
            value=value, last=last_weight_g,
        )  # fmt: skip
    band = READINGS.get(kind)
    if kind is ReadingKind.FRESH_MASS:
        bands = bands_of(crop)
        size = tray_type.inner_cm2 / NOMINAL.inner_cm2
        band = None if bands is None else bands.yield_g.times(size)
    if band is None or band.holds(value):
        return None
    return Sentence(
        "{kind} of {value:g} {unit} is unusual: {low:g} to {high:g} {unit} is common. "
        "Look whether the number and its unit are right.",
        kind=str(kind), value=value, unit=SAID.get(kind.unit, kind.unit),
        low=round(band.low), high=round(band.high),
    )  # fmt: skip


def doubt_of_type(tray_type: TrayType) -> Sentence | None:
    """What a kind of tray makes doubtful, or None: top views show all inner areas twice as long as wide."""
    shape = tray_type.inner_long_mm / tray_type.inner_short_mm / 2
    off = 100 * (max(shape, 1 / shape) ** 0.5 - 1)
    if off < LEAST_OFF_PCT:
        return None
    return Sentence(
        "The inner area of this tray is {times:.2f} times as long as wide, and pictures show it 2 times as "
        "long: shares, areas and places are right, while the outer band of 25 mm is up to {off:.0f} % off, "
        "and the rim is found by the station alone.",
        times=tray_type.inner_long_mm / tray_type.inner_short_mm,
        off=off,
    )


def doubt_of_cut(crop: str, day: float) -> Sentence | None:
    """What is unusual about the day of a cut, counted from sowing, or None."""
    bands = bands_of(crop)
    if bands is None or bands.cut_d.holds(day):
        return None
    return Sentence(
        "A cut on day {day:.0f} is unusual for {crop}: day {low:.0f} to {high:.0f} is common.",
        day=day, crop=crop, low=bands.cut_d.low, high=bands.cut_d.high,
    )  # fmt: skip
