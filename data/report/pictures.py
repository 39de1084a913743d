"""Report pictures: what the trays of a trial look like, and how they grew.

In    verdicts on the canopy score, numbers of photos, a book for its top views
Out   blocks of a report: pictures chosen by a rule that is said, growth by treatment
Not   the rule (`typicaltrays.py`), drawing (`gui/report/figures.py`)
"""

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.chapters.comparable import comparable
from data.records import Day, PhotoId, PhotoState
from data.report.content import Block, GrowthFigure, Heading, Paragraph, Picture, PictureRow
from data.report.mediumgrowth import growth_by_treatment
from data.report.typicaltrays import CHOSEN_BY, TYPICAL_ALONE, Chosen, Stands, chosen_trays
from data.sentence import Sentence
from data.tables.trialrows import PhotoNumbers
from data.verdict.comparedday import scorings_of
from data.verdict.verdicts import CropVerdict

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["growth_blocks", "picture_blocks", "shown_photos"]

PER_ROW = 3


def picture_blocks(
    book: "Book", scored: Sequence[CropVerdict], cancel: CancelToken, *, short: bool
) -> Iterator[Block]:
    """Typical, highest and lowest tray of each medium; of several crops in short only the typical ones."""
    yield Heading(text=Sentence("What the trays look like"))
    few = short and len(scored) > 1
    rows = [(one, list((_typical if few else _rows)(book, one, cancel))) for one in scored]
    if not any(mine for _, mine in rows):
        yield Paragraph(text=Sentence("There is no scored photo of the day that is read."))
        return
    yield Paragraph(text=TYPICAL_ALONE if few else CHOSEN_BY, with_next=True)
    for number, (one, mine) in enumerate(rows):
        if mine:
            words = Sentence("{crop} on day {day}", crop=one.crop, day=one.on_day)
            yield Heading(text=words, level=2, spare=10 + number if number > 2 else 0)
            yield from mine


def shown_photos(book: "Book", scored: Sequence[CropVerdict], *, short: bool) -> Iterator[PhotoId]:
    """The photos whose top views `picture_blocks` will show."""
    most = 1 if short and len(scored) > 1 else None
    for one in scored:
        for line in one.verdict.media:
            for chosen in _chosen(one, line.medium)[:most]:
                day = _day(book, one, chosen)
                if day is not None:
                    yield day.photo_id


def _rows(book: "Book", one: CropVerdict, cancel: CancelToken) -> Iterator[PictureRow]:
    for line in one.verdict.media:
        pictures = [
            picture for chosen in _chosen(one, line.medium)
            if (picture := _picture(book, one, chosen, _words(one, chosen), cancel)) is not None
        ]  # fmt: skip
        if pictures:
            yield PictureRow(name=line.medium, pictures=tuple(pictures))


def _typical(book: "Book", one: CropVerdict, cancel: CancelToken) -> Iterator[PictureRow]:
    pictures = []
    for line in one.verdict.media:
        for chosen in _chosen(one, line.medium)[:1]:
            words = Sentence("{medium}, {tray}", medium=line.medium, tray=_words(one, chosen))
            picture = _picture(book, one, chosen, words, cancel)
            if picture is not None:
                pictures.append(picture)
    for number in range(0, len(pictures), PER_ROW):
        yield PictureRow(
            name="", pictures=tuple(pictures[number : number + PER_ROW]), spare=6 if number else 0
        )


def _chosen(one: CropVerdict, medium: str) -> tuple[Chosen, ...]:
    mine = [number for number in one.numbers if one.treatments.get(number.tray.id) == medium]
    return chosen_trays(mine, lower_is_better=one.verdict.lower_is_better)


def _picture(
    book: "Book", one: CropVerdict, chosen: Chosen, words: Sentence, cancel: CancelToken
) -> Picture | None:
    cancel.check()
    day = _day(book, one, chosen)
    if day is None or day.pictures is None:
        return None
    pictures = day.pictures
    path = pictures.top_view if pictures.top_view.exists() else pictures.thumbnail
    return Picture(path=path, words=words)


def _day(book: "Book", one: CropVerdict, chosen: Chosen) -> Day | None:
    """The photo that its number is of: the last one of the day that is not in doubt, else the last one."""
    days = [day for day in book.days(chosen.number.tray.id) if day.day == one.on_day]
    counted = [day for day in reversed(days) if day.pictures is not None and _counts(day)]
    sure = (day for day in counted if day.score is not None and not day.score.doubts)
    return next(sure, counted[0] if counted else None)


def _counts(day: Day) -> bool:
    return day.state is PhotoState.STORED and day.score is not None and day.score.sure


def _words(one: CropVerdict, chosen: Chosen) -> Sentence:
    values = {"code": chosen.number.tray.code, "value": one.scale.number(chosen.number.value or 0.0)}
    match chosen.stands:
        case Stands.TYPICAL:
            return Sentence("typical: {code}, score {value}", **values)
        case Stands.BEST:
            return Sentence("highest: {code}, score {value}", **values)
        case Stands.WORST:
            return Sentence("lowest: {code}, score {value}", **values)


def growth_blocks(scored: Sequence[CropVerdict], photos: Sequence[PhotoNumbers]) -> Iterator[Block]:
    """Mean coverage by day of each treatment, a chart a crop."""
    yield Heading(text=Sentence("Growth by medium"))
    blocks: list[Block] = []
    for one in scored:
        mine = [photo for photo in photos if photo.tray_id in one.treatments]
        shown, trays = {photo.photo_id for photo in mine}, {photo.tray_id for photo in mine}
        method = one.method or comparable(scorings_of(mine), len(shown), len(trays)).method
        lines = growth_by_treatment([n.tray for n in one.numbers], one.treatments, mine, method)
        if any(line.points for line in lines):
            spare = 20 if blocks else 0
            blocks.append(Heading(text=one.crop, level=2, spare=spare))
            blocks.append(GrowthFigure(lines=lines, found=one, spare=spare))
    if not blocks:
        yield Paragraph(text=Sentence("No photo of this trial has a coverage that is sure."))
    yield from blocks
