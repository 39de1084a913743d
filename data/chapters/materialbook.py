"""Material book: bench tests, factors of media, photographs of the heap, and the limits a grower has set.

In    what a grower begins, types, photographs
Out   the same, kept and handed out; each change can be taken back
Not   readings of a test (`readingbook.py`), what they mean (`medium/benchtest.py`), the table
      (`materials/table.py`)
"""

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from data.chapters.traybook import TrayBook
from data.errors import ImpossibleFactor, NoLongerThere, PhotoGone, in_words
from data.growing.conditions import Medium
from data.photos.originals import Altered, Gone, copy_original, digest_of, original_path, reading, safe_suffix
from data.readings import BenchTestId, Reading
from data.tables import materialrows, noterows
from data.tables.journal import Recorder
from data.tables.rows import name_text, time_text

if TYPE_CHECKING:
    from data.medium.benchtest import BenchTest, HeapPhoto, NewBenchTest
    from data.medium.factors import Factor

__all__ = ["MaterialBook"]

LIMITS, WEEKLY = "must limits", "trays a week"
USUAL_WEEKLY = 10  # trays, where nobody has said
Limits = Mapping[str, tuple[float | None, float | None]]


class MaterialBook(TrayBook):
    """What the book knows of media beside their trays."""

    def media_known(self) -> tuple[Medium, ...]:
        """All media by name, the trusted one first."""
        found = [noterows.medium_of(row) for row in self._rows(noterows.MEDIA_ALL)]
        return tuple(sorted(found, key=lambda one: (not one.trusted, one.name)))

    def _medium_id(self, name: str) -> int:
        row = self._row(noterows.MEDIUM, name=name)
        if row is None:
            raise KeyError(name)
        return int(row["id"])

    # --- bench tests

    def bench_tests(self) -> "tuple[BenchTest, ...]":
        """All tests, oldest first."""
        return tuple(materialrows.bench_test_of(row) for row in self._rows(materialrows.BENCH_TESTS))

    def bench_test(self, test_id: BenchTestId) -> "BenchTest":
        """One test; raises `NoLongerThere`."""
        row = self._row(materialrows.BENCH_TEST, bench_test=test_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return materialrows.bench_test_of(row)

    def test_readings(self) -> dict[BenchTestId, list[Reading]]:
        """Readings of all tests, by test and time."""
        found: dict[BenchTestId, list[Reading]] = {}
        for one in noterows.readings_in(self._rows(materialrows.TEST_READINGS)):
            if one.bench_test is not None:
                found.setdefault(one.bench_test, []).append(one)
        return found

    def begin_test(self, new: "NewBenchTest") -> BenchTestId:
        """Begin a test of a medium; raises `KeyError` for a medium that the book has none of."""
        medium = self._medium_id(new.medium)
        kind = None if new.tray_type is None else self._row(noterows.TRAY_TYPE, name=new.tray_type)
        ids: list[BenchTestId] = []

        def change(recorder: Recorder) -> None:
            values = {
                "kind": str(new.kind), "medium": medium, "tray_type": None if kind is None else kind["id"],
                "seating": new.seating, "watering": new.watering, "place": new.place,
                "begun_at": time_text(new.begun_at), "note": new.note,
            }  # fmt: skip
            ids.append(BenchTestId(recorder.insert("bench_test", values)))

        self._change(f"{new.kind} test of {new.medium} begun", change)
        return ids[0]

    def delete_test(self, test_id: BenchTestId) -> None:
        """Take a test with its readings and pictures out of the book; the files of the pictures stay."""
        test = self.bench_test(test_id)
        readings = self._rows(materialrows.READINGS_OF_A_TEST, bench_test=test_id)
        photos = self.heap_photos(test_id)

        def change(recorder: Recorder) -> None:
            for row in readings:
                recorder.delete("reading", row["id"])
            for photo in photos:
                recorder.delete("heap_photo", photo.id)
            recorder.delete("bench_test", test_id)

        self._change(f"{test.kind} test of {test.medium} deleted", change)

    # --- photographs of the heap

    def heap_photos(self, test_id: BenchTestId) -> "tuple[HeapPhoto, ...]":
        """Photographs beside a break-down test, oldest first."""
        rows = self._rows(materialrows.HEAP_PHOTOS, bench_test=test_id)
        return tuple(materialrows.heap_photo_of(row) for row in rows)

    def keep_heap_photos(self, test_id: BenchTestId, paths: Sequence[Path], at: datetime) -> int:
        """Copy photographs of the heap into the book; returns how many were new. Slow, for a worker.

        Raises
        ------
        PhotoGone
            If one of them cannot be read, or is written to meanwhile; none is kept then.
        BookError
            If the world stops us.
        """
        rows = [self._heap_row(path) for path in paths]
        added: list[str] = []

        def change(recorder: Recorder) -> None:
            for row in rows:
                known = self._row(materialrows.HEAP_PHOTO, bench_test=test_id, digest=row["digest"])
                if known is None and row["digest"] not in added:
                    recorder.insert("heap_photo", row | {"bench_test": test_id, "taken_at": time_text(at)})
                    added.append(row["digest"])

        self._change(f"{len(rows)} photos of the heap", change)
        return len(added)

    def _heap_row(self, path: Path) -> dict[str, str]:
        """What is kept of a photograph whose copy lies in the book by then."""
        try:
            with reading(path):
                digest, suffix = digest_of(path), safe_suffix(path.name)
            with in_words(self.folder):
                copy_original(path, original_path(self.folder, digest, suffix), digest)
        except (Gone, Altered) as error:
            raise PhotoGone(path) from error
        return {"digest": digest, "suffix": suffix, "name": name_text(path.name)}

    def heap_photo_path(self, photo: "HeapPhoto") -> Path:
        """Where its file lies."""
        return original_path(self.folder, photo.digest, photo.suffix)

    # --- factors

    def factors(self) -> "tuple[Factor, ...]":
        """What the grower has entered; defaults are not among them."""
        return tuple(materialrows.factor_of(row) for row in self._rows(materialrows.FACTORS))

    def set_factor(self, factor: "Factor") -> None:
        """Keep a factor, in the place of the one before; raises `ImpossibleFactor`."""
        from data.medium.factors import KINDS, wrong_factor

        why = wrong_factor(factor)
        if why is not None:
            raise ImpossibleFactor(self.folder, why=why)
        medium = None if factor.medium is None else self._medium_id(factor.medium)
        values = {
            "medium": medium, "name": factor.name, "value": factor.value, "low": factor.low,
            "high": factor.high, "unit": factor.unit, "source": factor.source, "year": factor.year,
            "who": factor.who, "entered_at": time_text(factor.entered_at or self.now()),
        }  # fmt: skip
        row = self._row(materialrows.FACTOR, name=factor.name, medium=medium)

        def change(recorder: Recorder) -> None:
            if row is None:
                recorder.insert("material_factor", values)
            else:
                recorder.update("material_factor", row["id"], values)

        what = KINDS[factor.name].about
        self._change(f"number of {factor.medium or 'all media'}: {what}", change)

    def put_back_factor(self, name: str, medium: str | None = None) -> None:
        """Let the default hold again, or nothing where there is none."""
        from data.medium.factors import KINDS

        number = None if medium is None else self._medium_id(medium)
        row = self._row(materialrows.FACTOR, name=name, medium=number)
        if row is not None:
            text = f"number of {medium or 'all media'} put back: {KINDS[name].about}"
            self._change(text, lambda recorder: recorder.delete("material_factor", row["id"]))

    # --- limits, and how much is sown

    def limits(self) -> Limits:
        """By row of the table: least and most that a medium must keep."""
        kept = json.loads(self.setting(LIMITS) or "{}")
        return {row: (ends[0], ends[1]) for row, ends in kept.items()}

    def set_limits(self, limits: Limits) -> None:
        """Keep limits."""
        kept = json.dumps({row: list(ends) for row, ends in limits.items()})
        self._set(LIMITS, kept, "limits of media", unset="{}")

    def trays_a_week(self) -> float:
        """How many trays are sown in a week, as the grower says; 10 where nobody has said."""
        return float(self.setting(WEEKLY) or USUAL_WEEKLY)

    def set_trays_a_week(self, trays: float) -> None:
        """Say how many trays are sown in a week."""
        self._set(WEEKLY, f"{max(trays, 0.0):g}", "trays a week", unset=f"{USUAL_WEEKLY}")
