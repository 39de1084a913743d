"""A book after years: 5,000 trays with 14 days each, readings, events, a logger's files, and what it costs.

Run by hand: python -m tests.bench.big_book [FOLDER]. Prints how long everything takes that a morning asks of
it: the median of some rounds, on the machine at hand, and the size of its file. The scores are those of the
demonstration's trays, day by day: what stands in a row, and how much room it takes, is as photos have it.
"""

import sys
import tempfile
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from functools import cache
from pathlib import Path
from statistics import median
from time import perf_counter

from data.book import Book
from data.demo import demo_photos
from data.photos.judged import score_for_book
from data.readings import ReadingKind
from data.tables.scorerows import score_row
from data.watch import read_looks
from tests.data.builders import a_note, a_tray, score_note
from tests.data.contents import is_whole

TRAYS, GROWING, DAYS = 5000, 200, 14
CROPS, MEDIA = ("broccoli", "red radish", "pea", "sunflower"), ("peat mix", "coir", "wood fibre", "mat")
OLD, NEW = datetime(2025, 1, 1), datetime(2026, 3, 1)
TODAY = "2026-03-15"
SCORED = ("A1", "A2", "A3", "A4", "A5", "A6")  # each medium with each crop, days 2 to 9


def fill(book: Book, trays: int = TRAYS) -> None:
    """A book of `trays` trays with a photo and a weight on each of 14 days; the last 200 trays still grow."""
    grows = [n >= trays - GROWING for n in range(trays)]
    book.add_trays(
        a_tray(
            f"T{n}",
            crop=CROPS[n % 4],
            medium=MEDIA[n // 4 % 4],
            trial=f"trial {n // 64}",
            sown_at=_sown(n, trays),
            shelf=f"S{n % 40}",
            block=str(n % 40),
            tag_number=10 + n - trays + GROWING if grows[n] else None,
        )
        for n in range(trays)
    )
    rows = _score_rows()
    with book.writing() as db:
        db.execute(
            "UPDATE tray SET done_at = '2025-12-31T00:00:00', ended = 'cut' WHERE id <= ?", [trays - GROWING]
        )
        db.table("photo").insert_all(_photos(trays))
        db.table("score").insert_all(
            rows[n % trays % len(rows)][min(n // trays, 7)] | {"photo": n + 1} for n in range(trays * DAYS)
        )
        db.table("suspect").insert_all(_suspects(trays))
        db.table("reading").insert_all(_weights(trays))
        db.table("reading").insert_all(_logged())
        db.table("event").insert_all(_waterings(trays))
    book.forget_changes()
    book.set_setting("today", TODAY)


def _sown(n: int, trays: int) -> datetime:
    return NEW if n >= trays - GROWING else OLD + timedelta(days=n // 16)


@cache
def _score_rows() -> list[list[dict[str, object]]]:
    """Of each of some trays of the demonstration its days, scored as the program does."""
    photos = sorted(demo_photos())
    return [
        [
            score_row(score_for_book(path).score, sure=True, made_at=NEW)
            for path in photos
            if path.name.startswith(tray)
        ]
        for tray in SCORED
    ]


def _photos(trays: int) -> Iterator[dict[str, object]]:
    """Written day by day, as a book grows."""
    for n in range(trays * DAYS):
        taken_at = _sown(n % trays, trays) + timedelta(days=1 + n // trays, hours=8)
        yield {
            "digest": f"{n:064x}", "name": f"{n}.jpg", "suffix": ".jpg", "kept": 1,
            "added_at": "2026-03-01T00:00:00", "taken_from": "camera", "tray": n % trays + 1,
            "matched_by": "tag", "taken_at": taken_at.isoformat(),
        }  # fmt: skip


def _suspects(trays: int) -> Iterator[dict[str, object]]:
    for n in range(20, trays * DAYS, 20):
        yield {
            "score": n, "x_mm": 100.0, "y_mm": 50.0, "area_cm2": 6.0, "confidence": 0.7, "why": "",
            "outline": "[]",
        }  # fmt: skip


def _weights(trays: int) -> Iterator[dict[str, object]]:
    kind = ReadingKind.WEIGHT
    for n in range(trays * DAYS):
        at = _sown(n % trays, trays) + timedelta(days=1 + n // trays, hours=7)
        yield {
            "tray": n % trays + 1, "kind": str(kind), "value": 800.0, "unit": kind.unit,
            "taken_at": at.isoformat(),
        }  # fmt: skip


def _waterings(trays: int) -> Iterator[dict[str, object]]:
    for n in range(trays):
        for days in (3, 5, 7):
            at = (_sown(n, trays) + timedelta(days=days)).isoformat()
            yield {"tray": n + 1, "kind": "watered", "at": at, "note": ""}


def _logged() -> Iterator[dict[str, object]]:
    """Four loggers for a month, every five minutes."""
    kind = ReadingKind.AIR_TEMPERATURE
    for shelf in range(4):
        for n in range(30 * 288):
            yield {
                "shelf": f"S{shelf}", "kind": str(kind), "value": 20.0, "unit": kind.unit, "source": "log",
                "taken_at": (datetime(2026, 2, 14) + timedelta(minutes=5 * n)).isoformat(),
            }  # fmt: skip


# --- what it costs


def asked(book: Book) -> dict[str, tuple[Callable[[], object], int]]:
    """What a morning asks, with how many rounds to take the median of."""
    tray = book.trays()[100].id
    return {
        "look list": (lambda: read_looks(book), 9),
        "tiles of the Bench": (book.tiles, 9),
        "growing trays": (book.trays, 9),
        "one tray: days": (lambda: book.days(tray), 15),
        "one tray: peers": (lambda: book.peers(tray), 15),
        "one tray: readings, events": (lambda: (book.readings(tray), book.events(tray)), 15),
        "a logger's fortnight": (lambda: book.readings(shelf="S1", since=NEW), 9),
        "like the last": (lambda: book.like_last("pea", "coir"), 9),
        "rows of Intake": (book.photos, 9),
        "ended trays": (book.ended_trays, 5),
        "version to compare by": (book.comparable, 9),
    }


def seconds(work: Callable[[], object], rounds: int = 1) -> float:
    """Median of some rounds."""
    taken = []
    for _ in range(rounds):
        begun = perf_counter()
        work()
        taken.append(perf_counter() - begun)
    return median(taken)


def _stored(book: Book, folder: Path) -> Callable[[], object]:
    numbers = iter(range(1000))

    def keep() -> None:
        says = {"tag": 20, "suspects": [{}, {}, {}], "taken_at": f"{TODAY}T12:00:00"}
        path = a_note(folder, f"{next(numbers)}.jpg", **says)
        book.keep(score_note(path), path)

    return keep


def main(folder: Path) -> None:
    """Make the book, or open it where it stands already, and print what it costs."""
    if not (folder / "book.sqlite").exists():
        with Book.create(folder) as book:
            print(f"filled in {seconds(lambda: fill(book)):.1f} s")
    print(f"open: {1000 * seconds(lambda: Book.open(folder).close(), 5):.1f} ms")
    with Book.open(folder) as book:
        for what, (work, rounds) in asked(book).items():
            work()
            print(f"{what}: {1000 * seconds(work, rounds):.1f} ms")
        with tempfile.TemporaryDirectory() as phone:
            print(f"one photo stored: {1000 * seconds(_stored(book, Path(phone)), 31):.1f} ms")
        print(f"integrity: {seconds(lambda: is_whole(book), 3):.2f} s")
        target = book.back_up()
        target.unlink()
        print(f"backup: {seconds(book.back_up):.2f} s")
        print(f"size: {(folder / 'book.sqlite').stat().st_size / 1e6:.0f} MB")


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(tempfile.mkdtemp()) / "book")
