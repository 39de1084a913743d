"""Materials of the demonstration: tests of its three media and what its grower has typed in, all invented.

In    the book of the demonstration with its trays
Out   wetting, cooling and break-down tests, factors with ranges, a feed; some gaps are left open on purpose
Not   a claim about any medium: no measured tray stands behind these numbers

Left open: price and cooling test of coir, electricity, a log of nights, the mass of coir after the cut.
A wetting test of the mat is under way, to show what the program reminds of. Nine trays of radish, rehearsed
in February, are cut and cleaned up: three of each medium, in no trial, without photographs.
"""

import math
from collections.abc import Iterator
from datetime import datetime, timedelta

from data.book import Book
from data.events import EventKind
from data.medium.benchtest import BenchKind, NewBenchTest
from data.medium.factors import KINDS, Factor
from data.readings import BenchTestId, NewReading, ReadingKind
from data.records import NewTray

__all__ = ["note_materials"]

TYPE = "10 x 20 inch"
ENTERED = datetime(2026, 3, 1, 18)
WHO = "the invented grower"
PEAT, COIR, MAT = "peat mix", "coir", "plant-fibre mat"
EVERY = timedelta(hours=1)

FACTORS = {  # low, most likely, high; source
    PEAT: {
        "peat": (0.55, 0.62, 0.70, "own scale, 3 trays"),
        "perlite": (0.03, 0.05, 0.07, "from the bag's recipe"),
        "truck way": (600, 800, 1100, "the dealer's answer"),
        "thickness": (24, 26, 28, "own ruler"),
        "dry mass": (600, 670, 740, "own scale, 3 trays"),
        "stored before": (3.0, 3.3, 3.6, "bags on the shelf"),
        "stored after": (2.6, 3.0, 3.4, "bucket"),
        "wet after": (1500, 1800, 2100, "own scale, 3 trays"),
        "price": (0.75, 0.80, 0.85, "EUR, bill of 12 February 2026"),
    },
    COIR: {
        "coir": (0.26, 0.30, 0.34, "own scale, 3 trays"),
        "ship way": (11000, 13000, 15000, "a guess from the map"),
        "truck way": (500, 700, 900, "the dealer's answer"),
        "thickness": (23, 25, 27, "own ruler"),
        "dry mass": (260, 300, 340, "own scale, 3 trays"),
        "stored before": (0.5, 0.6, 0.7, "pressed blocks on the shelf"),
        "stored after": (2.3, 2.8, 3.2, "bucket"),
    },
    MAT: {
        "plant fibre": (0.125, 0.135, 0.145, "own scale, 5 mats"),
        "needled fibre": (0.125, 0.135, 0.145, "own scale, 5 mats"),
        "truck way": (700, 900, 1200, "the dealer's answer"),
        "thickness": (11, 12, 13, "own ruler"),
        "dry mass": (125, 135, 145, "own scale, 5 mats"),
        "stored before": (1.1, 1.3, 1.5, "stack on the shelf"),
        "stored after": (0.9, 1.2, 1.5, "bucket"),
        "wet after": (700, 900, 1100, "own scale, 3 trays"),
        "price": (1.05, 1.10, 1.25, "EUR, bill of 20 February 2026"),
    },
}
EVERYWHERE = {"plastic tray": (0.15, 0.16, 0.17, "own scale"), "tray uses": (20, 40, 80, "counted by colour")}
# dry, soaked, drained, after 6 12 24 48 h, rewetted: g of the medium in its tray
WETTING = {
    PEAT: (
        (1015, 2905, 2660, 2560, 2466, 2290, 1985, 2575),
        (1002, 2880, 2641, 2544, 2452, 2281, 1980, 2549),
    ),
    COIR: ((640, 2890, 2540, 2420, 2312, 2108, 1760, 2515), (655, 2870, 2531, 2415, 2303, 2101, 1762, 2508)),
}
UNDER_WAY = (470, 1790, 1515)  # the mat, this morning
COOLING = {PEAT: (24.1, 2.3), MAT: (24.6, 0.7)}  # over the mat, hours of its own
AIR_C = 18.2
REHEARSED = datetime(2026, 2, 10, 9)
# fresh g, cut quality, sweepings g, minutes of cleaning
CUT = {
    (PEAT, 1): (318.0, 4.0, 46.0, 6.5), (COIR, 1): (301.0, 4.0, 31.0, 5.5), (MAT, 1): (287.0, 5.0, 3.0, 2.0),
    (PEAT, 3): (309.0, 4.0, 51.0, 7.0), (COIR, 3): (315.0, 4.0, 36.0, 5.0), (MAT, 3): (291.0, 5.0, 4.0, 2.0),
    (PEAT, 2): (334.0, 4.0, 58.0, 7.5), (COIR, 2): (322.0, 3.0, 40.0, 6.0), (MAT, 2): (309.0, 4.0, 5.0, 2.5),
}  # fmt: skip
LEFT = {PEAT: (100, 99, 97, 96, 94), COIR: (100, 98, 96, 92, 89), MAT: (100, 88, 71, 55, 44)}  # %
MARKS = {PEAT: (5, 5, 5, 5), COIR: (5, 5, 4, 4), MAT: (5, 4, 3, 2)}
FIRST_G = {PEAT: 210.0, COIR: 150.0, MAT: 96.0}
BURIED = datetime(2025, 11, 12, 10)
WEEKS = (0, 3, 7, 12, 16)


def note_materials(book: Book) -> None:
    """Everything about the media."""
    for medium in (PEAT, COIR, MAT):
        seating = "in the tray"
        book.set_medium(medium, kind="mat" if medium == MAT else "loose", seating=seating, watering="bottom")
        book.set_medium(medium, feed="none")
        for name, (low, value, high, source) in (FACTORS[medium] | EVERYWHERE).items():
            book.set_factor(
                Factor(
                    name=name, value=value, low=low, high=high, unit=KINDS[name].unit, source=source,
                    year=2026, medium=medium, who=WHO, entered_at=ENTERED,
                )
            )  # fmt: skip
    book.add_readings(list(_all_tests(book)))
    _rehearse(book)


def _rehearse(book: Book) -> None:
    trays = [
        NewTray(
            code=f"R{number}", crop="red radish", medium=medium, sown_at=REHEARSED, seating="in the tray",
            sowing_rate_g=35.0, watering="bottom", feed="none", shelf="R", note="rehearsal, invented",
        )
        for number, (medium, _) in enumerate(CUT, start=1)
    ]  # fmt: skip
    ids = book.add_trays(trays)
    cut_at = REHEARSED + timedelta(days=9)
    book.add_event(ids, EventKind.CUT, cut_at)
    kinds = (
        (ReadingKind.FRESH_MASS, cut_at), (ReadingKind.CUT_QUALITY, cut_at),
        (ReadingKind.SWEEPINGS, cut_at + timedelta(minutes=10)),
        (ReadingKind.LABOUR, cut_at + timedelta(minutes=20)),
    )  # fmt: skip
    book.add_readings(
        [
            NewReading(kind=kind, value=value, taken_at=at, tray_id=tray)
            for tray, values in zip(ids, CUT.values(), strict=True)
            for (kind, at), value in zip(kinds, values, strict=True)
        ]
    )


def _all_tests(book: Book) -> Iterator[NewReading]:
    for medium, tests in WETTING.items():
        for number, masses in enumerate(tests):
            begun = datetime(2026, 2, 14 + number, 8)
            yield from _wetting(_begin(book, BenchKind.WETTING, medium, begun), begun, masses)
    begun = datetime(2026, 3, 11, 6, 10)
    yield from _wetting(_begin(book, BenchKind.WETTING, MAT, begun), begun, UNDER_WAY)
    for medium, (warm, hours) in COOLING.items():
        begun = datetime(2026, 2, 20, 8)
        yield from _cooling(_begin(book, BenchKind.COOLING, medium, begun), begun, warm, hours)
    for medium, left in LEFT.items():
        test = _begin(book, BenchKind.BREAKDOWN, medium, BURIED, "garden soil, a spade deep")
        yield from _breakdown(test, FIRST_G[medium], left, MARKS[medium])


def _begin(book: Book, kind: BenchKind, medium: str, at: datetime, place: str = "") -> BenchTestId:
    return book.begin_test(
        NewBenchTest(
            kind=kind, medium=medium, begun_at=at, tray_type=TYPE, seating="in the tray", watering="bottom",
            place=place, note="invented",
        )
    )  # fmt: skip


def _wetting(test: BenchTestId, begun: datetime, masses: tuple[int, ...]) -> Iterator[NewReading]:
    drained = begun + timedelta(minutes=55)
    steps = {
        "dry": begun, "soaked": begun + timedelta(minutes=20), "drained": drained,
        "after 6 h": drained + 6 * EVERY, "after 12 h": drained + 12 * EVERY,
        "after 24 h": drained + 24 * EVERY, "after 48 h": drained + 48 * EVERY,
        "rewetted": drained + 50 * EVERY,
    }  # fmt: skip
    for (step, at), grams in zip(steps.items(), masses, strict=False):
        yield _reading(ReadingKind.WEIGHT, float(grams), at, test, step)


def _cooling(test: BenchTestId, begun: datetime, warm: float, hours: float) -> Iterator[NewReading]:
    yield _reading(ReadingKind.AIR_TEMPERATURE, AIR_C, begun, test, "air")
    yield _reading(ReadingKind.MEDIUM_TEMPERATURE, warm, begun + timedelta(minutes=2), test, "over the mat")
    for number in range(4):
        at = begun + timedelta(minutes=5 + 30 * number)
        slip = (0.0, 0.1, -0.1, 0.0)[number]
        degrees = AIR_C + (warm - AIR_C) * math.exp(-0.5 * number / hours) + slip
        step = "cooling" if number else "off"
        yield _reading(ReadingKind.MEDIUM_TEMPERATURE, round(degrees, 1), at, test, step)


def _breakdown(
    test: BenchTestId, first: float, left: tuple[int, ...], marks: tuple[int, ...]
) -> Iterator[NewReading]:
    for number, (week, share) in enumerate(zip(WEEKS, left, strict=True)):
        at = BURIED + timedelta(weeks=week)
        step = "left" if number else "laid out"
        yield _reading(ReadingKind.WEIGHT, round(first * share / 100, 1), at, test, step)
        if number:
            mark = float(marks[number - 1])
            yield _reading(ReadingKind.BREAKDOWN_EYE, mark, at + timedelta(minutes=5), test, "left")


def _reading(kind: ReadingKind, value: float, at: datetime, test: BenchTestId, step: str) -> NewReading:
    return NewReading(kind=kind, value=value, taken_at=at, bench_test=test, note=step)
