"""Builders: a book with a rack in it, tiles and looks; places that only note what is asked of them."""

import dataclasses
from collections.abc import Sequence
from datetime import date, datetime, timedelta
from functools import lru_cache
from pathlib import Path
from typing import Any

from PySide6.QtCore import QBuffer, QByteArray, QIODevice
from PySide6.QtGui import QColor, QImage

from data.book import Book
from data.entry.units import UnitSystem
from data.records import (
    Day,
    KeptScore,
    Look,
    LookKind,
    PhotoId,
    PhotoState,
    TakenFrom,
    Tile,
    TrayId,
    Urgency,
)
from gui.bench.rack import Standing
from gui.frame.screens import Screens
from gui.screen import Screen
from gui.work import Work
from tests.data.builders import a_note, a_tray, score_note
from tests.made.books import a_copy
from vision.reason import Reason


def a_tile(number: int = 1, **special: Any) -> Tile:
    """Broccoli on coir on shelf A, day 7, 80 % covered, photographed today."""
    ordinary = {
        "tray_id": TrayId(number),
        "code": f"A{number}",
        "crop": "broccoli",
        "medium": "coir",
        "shelf": "A",
        "position": number,
        "day": 7,
        "photo_id": PhotoId(number),
        "taken_at": datetime(2026, 3, 8, 12),
        "thumbnail": None,
        "coverage": 80.0,
        "growth": ((2, 5.0), (4, 40.0), (7, 80.0)),
        "mold": False,
    }
    return Tile(**(ordinary | special))


def a_look(number: int = 1, **special: Any) -> Look:
    """Tray A<number> lags, look at it today."""
    ordinary = {
        "tray_id": TrayId(number),
        "code": f"A{number}",
        "what": LookKind.LAGGING,
        "urgency": Urgency.TODAY,
        "since": date(2026, 3, 7),
        "sentence": "40 % coverage, 21 points behind its block mates.",
        "first": "Lift the tray: is it dry?",
    }
    return Look(**(ordinary | special))


def a_day(day: int = 1, coverage: float | None = 50.0) -> Day:
    """A photo of a tray at noon of its nth day, scored; without coverage it was refused as blurred."""
    score = None
    if coverage is not None:
        named = {field.name: None for field in dataclasses.fields(KeptScore)}
        kept = {"photo_id": PhotoId(day), "coverage": coverage, "sure": True, "suspects": (), "gaps": ()}
        score = KeptScore(**(named | {"mended": False, "notes": (), "reasons": {}} | kept))
    return Day(
        photo_id=PhotoId(day),
        taken_at=datetime(2026, 3, 1, 12) + timedelta(days=day),
        taken_from=TakenFrom.CAMERA,
        day=day,
        state=PhotoState.REFUSED if score is None else PhotoState.STORED,
        reason=Reason.BLURRED if score is None else None,
        photo=Path("photo.jpg"),
        pictures=None,
        score=score,
    )


def standings(*tiles: Tile) -> tuple[Standing, ...]:
    return tuple(Standing(tile=tile) for tile in tiles)


@lru_cache(maxsize=1)
def a_thumbnail() -> bytes:
    """A green JPEG of 320 x 160."""
    image = QImage(320, 160, QImage.Format.Format_RGB32)
    image.fill(QColor(40, 140, 60))
    packed = QByteArray()
    buffer = QBuffer(packed)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "JPG")
    return bytes(packed.data())


def a_rack_book(folder: Path, *, per_shelf: Sequence[int] = (2, 1)) -> Book:
    """Shelves A, B, ... with trays A1, A2, B1, ... of broccoli; the day is 8 March 2026."""

    def plant(book: Book) -> None:
        book.add_trays(
            a_tray(f"{shelf}{n}", shelf=shelf, tag_number=10 + 30 * place + n)
            for place, (shelf, count) in enumerate(zip("ABCDEFGH", per_shelf, strict=False))
            for n in range(1, count + 1)
        )
        book.forget_changes()
        book.set_setting("today", "2026-03-08")

    return a_copy(("rack", *per_shelf), plant, folder)


def photograph(book: Book, code: str, folder: Path, **says: Any) -> PhotoId:
    """A photo of a tray, scored as `says` tells, kept in the book with a picture."""
    tag = next(tray.tag_number for tray in book.trays() if tray.code == code)
    note = a_note(folder, f"{code}-{len(book.photos())}.jpg", tag=tag, **says)
    judged = dataclasses.replace(score_note(note), thumbnail=a_thumbnail())
    fate = book.keep(judged, note)
    assert fate.photo_id is not None
    return fate.photo_id


class NotingScreen(Screen):
    """A place that only notes what is asked of it."""

    def __init__(self, work: Any) -> None:
        super().__init__(work)
        self.asked: list[tuple[str, Any]] = []
        self.units: UnitSystem | None = None

    def renew(self) -> None:
        self.asked.append(("renew", None))

    def use_units(self, system: UnitSystem) -> None:
        self.units = system

    def open_tray(self, tray_id: int, photo_id: int | None = None) -> None:
        self.asked.append(("open", tray_id if photo_id is None else (tray_id, photo_id)))

    def bring_in(self, paths: Sequence[Path]) -> None:
        self.asked.append(("bring in", list(paths)))


class NotingPlaces(Screens):
    """Three places that note what is asked of them; the first may be a true one."""

    def __init__(self, work: Work, bench: type[Screen] = NotingScreen) -> None:
        super().__init__(("bench", "intake", "traysheet"), work)
        self._bench = bench

    @property
    def bench(self) -> Screen:
        return self.once("bench", self._bench)

    @property
    def intake(self) -> NotingScreen:
        return self.once("intake", NotingScreen)

    @property
    def traysheet(self) -> NotingScreen:
        return self.once("traysheet", NotingScreen)
