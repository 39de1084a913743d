"""How far coverage and the share of the bed are off by medium, against the truth seen from straight above.

Run by hand:  EVENSTAND_TRUTH=DIR EVENSTAND_BOOK=BOOK pytest -m sweep -s tests/bench/test_bed_sweep.py

BOOK is a book in which the photos of the demonstration are scored; DIR holds NAME_truth.json for each:
`coverage_top`, `coverage_cells_top` and `share_top` are shares seen exactly from above without perspective.
Interval: 95 %, by tray (Student's t on the trays' means). The verdicts are the program's own, once on its
scores and once on scores of the truth; both crops together have twice the blocks.
"""

import json
import os
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import mean, stdev

import numpy as np
import pytest
from scipy.stats import t as student

from data.book import Book
from data.desirability import Seen, score_canopy
from data.tables.trialrows import PhotoNumbers
from data.verdict import Measured, verdict_of
from data.verdict.countedof import CountedOf, seen_on
from vision.cells import christiansen

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(600)]

FULL_DAYS = (6, 7, 8, 9)
MEDIA = ("plant-fibre mat", "coir", "peat mix")
MARGIN = 5.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One photo with its truth; %."""

    tray: str
    crop: str
    medium: str
    day: int
    numbers: PhotoNumbers
    truth: Seen

    @property
    def coverage_error(self) -> float:
        return (self.numbers.coverage or 0.0) - (self.truth.coverage or 0.0)

    @property
    def bed_error(self) -> float:
        return (self.numbers.bed_share or 0.0) - (self.truth.coverage or 0.0)

    @property
    def uniformity_error(self) -> float:
        return (self.numbers.uniformity or 0.0) - (self.truth.uniformity or 0.0)

    @property
    def bed_uniformity_error(self) -> float:
        return (self.numbers.bed_uniformity or 0.0) - (self.truth.uniformity or 0.0)


@pytest.fixture(scope="module")
def rows() -> list[Row]:
    truth, folder = os.environ.get("EVENSTAND_TRUTH"), os.environ.get("EVENSTAND_BOOK")
    if not truth or not folder:
        pytest.skip("set EVENSTAND_TRUTH and EVENSTAND_BOOK")
    with Book.open(Path(folder)) as book:
        return list(measured(book, Path(truth)))


def measured(book: Book, folder: Path) -> Iterable[Row]:
    (trial,) = book.trials()
    trays = {tray.id: tray for tray in book.trial_trays(trial)}
    names = {row.id: Path(row.name).stem for row in book.photos()}
    newest = {photo.photo_id: photo for photo in book.photo_numbers(trial)}
    for photo in newest.values():
        tray = trays[photo.tray_id]
        yield Row(
            tray=tray.code,
            crop=tray.crop,
            medium=tray.medium,
            day=tray.day(photo.taken_at.date()),
            numbers=photo,
            truth=truth_of(json.loads((folder / f"{names[photo.photo_id]}_truth.json").read_text())),
        )


def truth_of(truth: dict) -> Seen:
    share = truth["share_top"]
    grown = share["green_canopy"] + share["red_canopy"]
    canopy = grown + share["pale_shoot"]
    cells = 100.0 * np.array(truth["coverage_cells_top"], np.float64)
    return Seen(
        coverage=100.0 * truth["coverage_top"],
        uniformity=christiansen(cells),
        colour=100.0 * grown / canopy if canopy else None,
    )


def by_tray(rows: Sequence[Row], error: Callable[[Row], float], medium: str) -> list[float]:
    found: dict[str, list[float]] = {}
    for row in rows:
        if row.medium == medium and row.day in FULL_DAYS:
            found.setdefault(row.tray, []).append(error(row))
    return [mean(errors) for errors in found.values()]


def interval(errors: Sequence[float]) -> float:
    return float(student.ppf(0.975, len(errors) - 1)) * stdev(errors) / len(errors) ** 0.5


def test_a_mat_and_peat_differ_less_by_the_bed_than_by_the_inner_area(rows: list[Row]) -> None:
    print()
    bias: dict[str, dict[str, float]] = {}
    for name in ("coverage_error", "bed_error", "uniformity_error", "bed_uniformity_error"):
        bias[name] = {}
        for medium in MEDIA:
            errors = by_tray(rows, lambda row, name=name: getattr(row, name), medium)
            bias[name][medium] = mean(errors)
            told = f"{mean(errors):+5.1f} +-{interval(errors):.1f}, {len(errors)} trays"
            print(f"{name:21s} {medium:16s} {told}")

    def apart(name: str) -> float:
        return abs(bias[name]["plant-fibre mat"] - bias[name]["peat mix"])

    assert apart("bed_error") < 2.0 < apart("coverage_error")
    assert apart("bed_uniformity_error") < apart("uniformity_error")


@pytest.mark.parametrize("day", [7, 8, 9])
def test_the_verdict_by_the_bed_is_nearer_to_that_of_the_truth(rows: list[Row], day: int) -> None:
    crops = sorted({row.crop for row in rows})
    print()
    for named in [[crop] for crop in crops] + [crops]:
        of_day = [row for row in rows if row.day == day and row.crop in named]
        found = {
            "truth": differences(of_day, lambda row: row.truth),
            "inner": differences(of_day, lambda row: seen(row, CountedOf.INNER)),
            "bed": differences(of_day, lambda row: seen(row, CountedOf.BED)),
        }
        for how, told in found.items():
            print(f"day {day} {' and '.join(named):24s} {how:6s} {told}")
    off = {how: abs(found[how]["plant-fibre mat"][0] - found["truth"]["plant-fibre mat"][0]) for how in found}
    assert off["bed"] < off["inner"]


def seen(row: Row, counted: CountedOf) -> Seen:
    return seen_on(row.numbers, counted, mold_cm2=0.0, open_suspects=0)


def differences(rows: Sequence[Row], seen: Callable[[Row], Seen]) -> dict[str, tuple[float, float, float]]:
    """Of each new medium from peat mix: points of canopy score, lower and upper limit."""
    table = [
        Measured(
            block=f"{row.crop} {row.tray[0]}",
            medium=row.medium,
            value=score_canopy(seen(row)).score or 0.0,
            tray=row.tray,
        )
        for row in rows
    ]
    verdict = verdict_of(table, "peat mix", MARGIN)
    return {
        line.medium: tuple(round(value or 0.0, 1) for value in (line.difference, line.low, line.high))
        for line in verdict.compared
    }
