"""Demo: an invented trial of 18 trays as a book, and its photographs.

In    a folder that holds no book yet
Out   the book with its plan, trays and notes; the photographs, to be taken in like a grower's own
Not   any score: all numbers that the demonstration shows are measured on the machine that shows them

Three shelves A, B, C (blocks) of six trays, broccoli and red radish on peat mix, coir and plant-fibre mat,
sown on 2 March 2026 and photographed on days 2 to 9. Everything in it is invented; the pictures are rendered.
"""

import csv
from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from pathlib import Path

from data.book import Book
from data.demo.materials import note_materials
from data.demo.notes import note_demo
from data.desirability import USUAL, rule_text
from data.plan.draft import guessed_spread
from data.plan.drawing import Draw, Place
from data.records import NewTray
from data.trial import MEDIUM, Block, CropPlan, Factor, Measure, MeasureKind, Plan, Question, crossed

__all__ = ["DAY_SHOWN", "demo_photos", "make_demo"]

HERE = Path(__file__).parent
DAY_SHOWN = "2026-03-11"  # day 9; the demonstration stands still on it
TRIAL = "Peat mix against coir and fibre mat"
PLANNED = datetime(2026, 2, 28, 19, 30)
SOWN = datetime(2026, 3, 2, 9)
MEDIA = ("peat mix", "coir", "plant-fibre mat")  # the trusted one first


def make_demo(folder: Path) -> Book:
    """The book of the invented trial in `folder`, with its trays and no photo yet; raises `BookError`."""
    book = Book.create(folder)
    sown = tuple(trays())
    plan_id = book.keep_plan(plan(), at=PLANNED)
    book.keep_draw(plan_id, drawn(sown), why="Drawn with shuffled cards, a pile for each shelf.", at=PLANNED)
    book.add_trays(sown)
    note_demo(book)
    note_materials(book)
    book.forget_changes()  # taking all trays away again is no undo that a beginner expects
    book.set_setting("today", DAY_SHOWN)
    book.set_setting("demonstration", "yes")
    return book


def plan() -> Plan:
    """What the invented grower fixed two days before sowing."""
    day = SOWN.date()
    return Plan(
        trial=TRIAL,
        question=Question.AS_GOOD,
        words="Are coir and the plant-fibre mat as good as the peat mix that I trust?",
        crops=(
            CropPlan(name="broccoli", read_on_day=9, sowing_rate_g=18.0, soak_hours=0.0, blackout_days=2.0),
            CropPlan(name="red radish", read_on_day=9, sowing_rate_g=35.0, soak_hours=0.0, blackout_days=2.0),
        ),
        factors=(Factor(name=MEDIUM, levels=MEDIA),),
        treatments=crossed((Factor(name=MEDIUM, levels=MEDIA),)),
        trusted=MEDIA[0],
        measures=(
            Measure(kind=MeasureKind.SCORE, margin=5.0),
            Measure(kind=MeasureKind.YIELD, margin=10.0, unit="%"),
            Measure(kind=MeasureKind.EYE, margin=5.0),
        ),
        score=rule_text(USUAL),
        blocks=tuple(Block(name=f"shelf {name}", shelves=(name,), sow_on=day) for name in "ABC"),
        spread=guessed_spread(MeasureKind.SCORE),
        same={"watering": "bottom", "feed": "none", "heat mat": "without heat mat", "stacking": "stacked"},
    )


def drawn(sown: Sequence[NewTray]) -> Draw:
    """The places as the trays stand; seed 0: no lot of this program."""
    return Draw(
        seed=0,
        places=tuple(
            Place(
                code=tray.code,
                tag_number=tray.tag_number or 0,
                block=tray.block or "",
                round=1,
                shelf=tray.shelf,
                position=tray.position or 0,
                sow_on=tray.sown_at.date(),
                crop=tray.crop,
                treatment=tray.medium,
            )
            for tray in sown
        ),
    )


def demo_photos() -> tuple[Path, ...]:
    """The 144 photographs, newest day first, so that the Bench fills at once; in a day as one walks."""
    photos = (HERE / "photos").glob("*.webp")
    return tuple(sorted(photos, key=lambda path: (-_day(path), path.name)))


def _day(path: Path) -> int:
    return int(path.stem.rpartition("day")[2])


def trays() -> Iterator[NewTray]:
    """The trays as `trial.csv` tells them; what is the same for all stands here."""
    with (HERE / "trial.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            sown_at = datetime.fromisoformat(row["sown_at"])
            yield NewTray(
                code=row["code"],
                crop=row["crop"],
                medium=row["medium"],
                sown_at=sown_at,
                tag_number=int(row["tag"]),
                shelf=row["code"][0],
                position=int(row["code"][1:]),
                block=f"shelf {row['code'][0]}",
                trial=TRIAL,
                seed_lot=row["seed_lot"],
                seating=row["seating"],
                sowing_rate_g=float(row["sowing_rate_g"]),
                soak_hours=0.0,
                blackout_from=sown_at,
                blackout_to=sown_at + timedelta(days=float(row["blackout_days"])),
                stacked=True,
                watering="bottom",
                feed="none",
                heat_mat=False,
                light="LED, 16 h a day",
            )
