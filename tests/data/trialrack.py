"""A rack with a sown trial, and a camera: what tests of verdicts, exports and their screens begin with."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from data.book import Book
from data.numbers import PhotoId, Said
from data.readings import NewReading, ReadingKind
from data.records import Tray
from data.trial import CropPlan, Plan
from data.verdict.verdicts import CropVerdict, verdicts
from tests.data.builders import a_note, a_score, score_note
from tests.data.plans import a_plan
from tests.made.books import a_copy

TRIAL = "Mat against peat"
BEFORE = datetime(2026, 3, 1, 20)
BROCCOLI = (CropPlan(name="broccoli", read_on_day=9),)
# coverage by medium; peat mix is the trusted one
EVEN = {"peat mix": 80.0, "coir": 80.0, "fibre mat": 80.0}
WORSE = EVEN | {"fibre mat": 60.0}
# what a block and a tray add, so that numbers have a spread
NOISE = (0.0, 0.6, -0.4, 0.3, -0.7, 0.2, 0.5, -0.5, 0.1)


def sow(book: Book, plan: Plan) -> None:
    """Keep the plan, draw and sow it; then it is long after."""
    book.set_setting("today", "2026-03-01")
    draw = book.draw_places(book.keep_plan(plan, at=BEFORE), seed=1)
    while book.sow_trial(draw.id):
        pass
    book.set_setting("today", "2026-04-30")


class Rack:
    """A book with a sown trial of four blocks, and a camera."""

    def __init__(self, folder: Path, **plan: Any) -> None:
        self.folder = folder
        ordinary: dict[str, Any] = {"blocks": 4, "crops": BROCCOLI}
        self.plan = a_plan(**(ordinary | plan))
        self.book = a_copy(("sown", repr(self.plan)), lambda book: sow(book, self.plan), folder / "book")
        self.kept = self.book.plans()[-1].id

    def today(self, day: str) -> None:
        self.book.set_setting("today", day)

    @property
    def trays(self) -> tuple[Tray, ...]:
        return self.book.trial_trays(TRIAL)

    def tray(self, medium: str, block: int = 0) -> Tray:
        return [tray for tray in self.trays if tray.medium == medium][block]

    def shoot(self, tray: Tray, coverage: float, *, day: int = 9, **score: Any) -> None:
        taken_at = tray.sown_at + timedelta(days=day)
        note = a_note(self.folder, f"{tray.code}-{day}-{score.get('method', '')}.jpg",
                      taken_at=taken_at.isoformat(), tag=tray.tag_number)  # fmt: skip
        judged = replace(score_note(note), score=a_score(coverage, **({"method": "learned 1"} | score)))
        self.book.keep(judged, note)

    def shoot_all(self, coverage: Mapping[str, float], *, leave: Sequence[str] = (), **score: Any) -> None:
        for number, tray in enumerate(self.trays):
            if tray.code not in leave:
                self.shoot(tray, coverage[tray.medium] + NOISE[number % len(NOISE)], **score)

    def note_slid(self, share: Mapping[str, int]) -> None:
        """Note of every tray whether its medium slid: in the first blocks it did, as many as are named."""
        for medium, slid in share.items():
            for block, tray in enumerate(one for one in self.trays if one.medium == medium):
                value = float(block < slid)
                at = tray.sown_at + timedelta(days=9)
                self.book.add_readings(
                    [NewReading(kind=ReadingKind.SLID, value=value, taken_at=at, tray_id=tray.id)]
                )

    def forget_bed(self, *trays: Tray) -> None:
        """As if the photos of these trays had been scored before the share of the bed was measured."""
        unknown = dict.fromkeys(("bed_share", "bed_uniformity", "bed_cells"))
        scores = [day.score.id for tray in trays for day in self.book.days(tray.id) if day.score]
        with self.book.writing() as db:
            for score in scores:
                db.table("score").update(score, unknown)

    def doubt(self, photo: PhotoId) -> None:
        """As if it had been scored through glare."""
        with self.book.writing() as db:
            db.execute('UPDATE score SET notes = \'["DOUBTFUL","GLARE"]\' WHERE photo = ?', [photo])

    def say_mold(self, tray: Tray) -> None:
        for day in self.book.days(tray.id):
            if day.score is not None:
                for suspect in day.score.suspects:
                    self.book.say(suspect.id, Said.MOLD)

    def verdicts(self) -> tuple[CropVerdict, ...]:
        return verdicts(self.book)
