"""Tray view: all that the sheet of one tray says, read from the book; no Qt.

In    a book, a tray, the photo that is looked at (None: the newest that can be used)
Out   `TrayState`: days, numbers with unit and how each was had, suspects, conditions, growth
Not   the words for each number (`notes/numberwords.py`), the widgets (`screen.py`)
"""

from dataclasses import dataclass, field
from datetime import timedelta
from functools import partial
from typing import TYPE_CHECKING

from data.records import Day, GrowthPoint, KeptScore, PhotoId, PhotoState, Said, Tray, TrayId
from data.watch import MOLD_CAUTION
from gui.language.age import age_words
from gui.language.direction import own_direction
from gui.language.levels import shown_level
from gui.language.spoken import DAY_YEAR_SHORT, day_words, in_figures, spoken
from gui.language.words import translate
from gui.notes.numberwords import NumberLine, numbers_of, quality_of, when
from vision.reason import Reason

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Curve", "SuspectLine", "TrayState", "end_words", "read_tray"]


T = partial(translate, "TraySheet")
TWO_SD = 2.0  # "give or take" holds for about 19 photos in 20
OF_THE_OUTLINE = frozenset({Reason.DOUBTFUL, Reason.APART})  # settled where a person has drawn it


@dataclass(frozen=True, slots=True, kw_only=True)
class SuspectLine:
    """One suspect in words."""

    id: int
    number: int
    title: str
    why: str
    said: Said | None
    x_mm: float | None
    y_mm: float | None
    radius_mm: float
    closed: bool = False  # by itself: the next day's photo no longer showed it

    @property
    def word(self) -> str:
        """What it is, as far as anybody has said."""
        if self.said is Said.MOLD:
            return translate("TraySheet", "mold")
        if self.said is Said.NOT_MOLD:
            return translate("TraySheet", "not mold")
        if self.closed:
            return translate("TraySheet", "no longer seen")
        return translate("TraySheet", "possible mold")


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """Coverage over days of one tray."""

    tray_id: TrayId
    code: str
    medium: str
    points: tuple[tuple[float, float], ...]  # (days since sowing, coverage %), oldest first


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayState:
    """All that the sheet shows."""

    tray: Tray
    today: int  # today's day since sowing
    days: tuple[Day, ...] = ()
    chosen: int = -1  # of `days`, -1 where there is none
    numbers: tuple[NumberLine, ...] = ()
    quality: tuple[NumberLine, ...] = ()
    suspects: tuple[SuspectLine, ...] = ()
    conditions: tuple[tuple[str, str], ...] = ()
    curves: tuple[Curve, ...] = ()  # this tray first
    before: TrayId | None = None
    after: TrayId | None = None
    place: tuple[int, int] = field(default=(0, 0))  # which of how many growing trays

    @property
    def day(self) -> Day | None:
        """The day that is looked at."""
        return self.days[self.chosen] if 0 <= self.chosen < len(self.days) else None

    @property
    def score(self) -> KeptScore | None:
        """Its numbers."""
        return None if self.day is None else self.day.score

    @property
    def day_looked_at(self) -> float | None:
        """The same measure of time as the curves: days since sowing, with the hours."""
        return None if self.day is None else (self.day.taken_at - self.tray.sown_at) / timedelta(days=1)

    @property
    def doubt(self) -> str:
        """How far coverage may be off, in words; empty where it is not known."""
        if self.score is not None and self.score.mended:
            return translate("TraySheet", "mended by hand")
        sd = None if self.score is None else self.score.coverage_sd
        if sd is None:
            return ""
        points = max(1, round(TWO_SD * sd))
        if points == 1:
            return translate("TraySheet", "give or take 1 point")
        return translate("TraySheet", "give or take {points} points").format(points=points)

    @property
    def notes(self) -> tuple[str, ...]:
        """What is odd about the photo or doubtful about its score, each a sentence."""
        notes = () if self.score is None else self.score.notes
        if self.score is not None and self.score.mended:
            notes = tuple(note for note in notes if note not in OF_THE_OUTLINE)
        told = tuple(f"{note[:1].upper()}{note[1:]}." for note in map(spoken, notes))
        if self.day is None or self.day.day >= 0:
            return told
        older = translate(
            "TraySheet",
            "This photo is older than the sowing of this tray ({sown}): the camera's clock, the day of "
            "sowing or the tray of the photo is wrong.",
        )
        return (older.format(sown=day_words(self.tray.sown_at, DAY_YEAR_SHORT)), *told)

    @property
    def caution(self) -> str | None:
        """To be shown where a suspect is open, or was said to be mold."""
        if all(suspect.said is Said.NOT_MOLD for suspect in self.suspects):
            return None
        return spoken(MOLD_CAUTION)

    @property
    def title(self) -> str:
        """The tray in a line."""
        words = translate("TraySheet", "{code}: {crop} on {medium}")
        return words.format(code=self.tray.code, crop=self.tray.crop, medium=self.tray.medium)

    @property
    def ended_words(self) -> str:
        """How and when it ended, and why; empty while it grows."""
        if self.tray.done_at is None:
            return ""
        when_ended = day_words(self.tray.done_at, DAY_YEAR_SHORT)
        words = translate("TraySheet", "{how} on {day}").format(how=end_words(self.tray), day=when_ended)
        return f"{words}: {self.tray.ended_why}" if self.tray.ended_why else words

    @property
    def description(self) -> str:
        """The picture in words, for those who cannot see it."""
        if self.day is None:
            return translate("TraySheet", "No photo of tray {code} yet.").format(code=self.tray.code)
        parts = [
            translate("TraySheet", "Tray {code}, {age}").format(
                code=self.tray.code, age=age_words(self.day.day)
            )
        ]
        parts += [f"{line.label} {line.value}" for line in self.numbers[:4]]
        parts += [f"{line.number} {line.word}: {line.title}" for line in self.suspects]
        return ". ".join(parts) + "."


def end_words(tray: Tray) -> str:
    """How an ended tray ended."""
    if tray.ended == "cut":
        return translate("TraySheet", "cut")
    if tray.ended == "thrown away":
        return translate("TraySheet", "thrown away")
    return translate("TraySheet", "done")


def read_tray(book: "Book", tray_id: TrayId, photo_id: PhotoId | None = None) -> TrayState:
    """The sheet of a tray; raises `KeyError` where there is no such tray."""
    tray = book.tray(tray_id)
    days = tuple(day for day in book.days(tray_id) if day.state is not PhotoState.LEFT_OUT)
    chosen = _chosen(days, photo_id)
    day = days[chosen] if chosen >= 0 else None
    score = None if day is None else day.score
    growing = book.growing_ids()
    here = growing.index(tray_id) if tray_id in growing else -1
    return TrayState(
        tray=tray,
        today=tray.day(book.today()),
        days=days,
        chosen=chosen,
        numbers=numbers_of(score),
        quality=() if day is None else quality_of(day),
        suspects=_suspects(score),
        conditions=_conditions(tray),
        curves=_curves(tray, book.peers(tray_id)),
        before=growing[here - 1] if here > 0 else None,
        after=growing[here + 1] if 0 <= here < len(growing) - 1 else None,
        place=(here + 1, len(growing)),
    )


def _chosen(days: tuple[Day, ...], photo_id: PhotoId | None) -> int:
    for number, day in enumerate(days):
        if day.photo_id == photo_id:
            return number
    scored = [number for number, day in enumerate(days) if day.score is not None]
    return scored[-1] if scored else len(days) - 1


def _suspects(score: KeptScore | None) -> tuple[SuspectLine, ...]:
    if score is None:
        return ()
    lines = []
    for number, suspect in enumerate(score.suspects, start=1):
        area = suspect.area_cm2
        size = translate("TraySheet", "size not known") if area is None else f"{in_figures(area, '.1f')} cm²"
        title = translate("TraySheet", "{size}, {confidence} % sure").format(
            size=size, confidence=round(100 * suspect.confidence)
        )
        lines.append(
            SuspectLine(
                id=int(suspect.id),
                number=number,
                title=title,
                why=spoken(f"{suspect.why}\n{suspect.closed_why}".strip()),
                closed=suspect.closed_at is not None,
                said=suspect.said,
                x_mm=suspect.x_mm,
                y_mm=suspect.y_mm,
                radius_mm=1.35 * (100 * (area or 1.0) / 3.1416) ** 0.5 + 3,
            )
        )
    return tuple(lines)


def _curves(tray: Tray, points: tuple[GrowthPoint, ...]) -> tuple[Curve, ...]:
    by_tray: dict[TrayId, list[GrowthPoint]] = {tray.id: []}
    for point in points:
        by_tray.setdefault(point.tray_id, []).append(point)
    return tuple(
        Curve(
            tray_id=tray_id,
            code=tray.code if tray_id == tray.id else of_tray[0].code,
            medium=tray.medium if tray_id == tray.id else of_tray[0].medium,
            points=tuple(sorted((point.day, point.coverage) for point in of_tray)),
        )
        for tray_id, of_tray in by_tray.items()
    )


def _conditions(tray: Tray) -> tuple[tuple[str, str], ...]:
    """What was noted of the tray; what nobody noted is left out."""
    lines: tuple[tuple[str, object], ...] = (
        (T("Crop"), tray.crop),
        (T("Medium"), tray.medium),
        (T("Seating"), spoken(tray.seating)),
        (T("Seed lot"), tray.seed_lot),
        (T("Sowing rate"), _amount(tray.sowing_rate_g, "g")),
        (T("Soaked"), _amount(tray.soak_hours, "h")),
        (T("Sown"), when(tray.sown_at)),
        (T("Dark"), _dark(tray)),
        (T("Stacked"), _yes(tray.stacked)),
        (T("Watering"), spoken(tray.watering or "")),
        (T("Feed"), shown_level("feed", tray.feed)),
        (T("Heat mat"), _yes(tray.heat_mat)),
        (T("Light"), shown_level("light", tray.light)),
        (T("Done"), None if tray.done_at is None else when(tray.done_at)),
        (T("Place"), _place(tray)),
        (T("Block"), spoken(tray.block or "")),
        (T("Tray"), tray.tray_type),
        (T("Tag"), tray.tag_number),
        (T("Note"), own_direction(tray.note)),
    )
    return tuple((words, str(value)) for words, value in lines if value is not None and value != "")


def _dark(tray: Tray) -> str | None:
    if tray.blackout_from is None or tray.blackout_to is None:
        return None
    return translate("TraySheet", "{begin} to {end}").format(
        begin=when(tray.blackout_from), end=when(tray.blackout_to)
    )


def _place(tray: Tray) -> str:
    words = (
        translate("TraySheet", "shelf {shelf}, place {place}")
        if tray.shelf
        else translate("TraySheet", "place {place}, without a shelf")
    )
    return words.format(shelf=tray.shelf, place=tray.position)


def _yes(value: bool | None) -> str | None:
    if value is None:
        return None
    return translate("TraySheet", "yes") if value else translate("TraySheet", "no")


def _amount(value: float | None, unit: str) -> str | None:
    return None if value is None else f"{in_figures(value)} {unit}"
