"""Report beside: what stands in a report beside the answers: materials, what went wrong, the look list.

In    a book, the trays of a trial
Out   blocks of a report
Not   verdicts (`reading.py`), pictures (`pictures.py`)
"""

from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import TYPE_CHECKING

from data.cancel import CancelToken
from data.events import EventKind
from data.records import PhotoState, Tray
from data.report.content import Block, Grid, Heading, Materials, Paragraph
from data.sentence import Sentence

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["apart_blocks", "look_blocks", "material_blocks", "wrong_blocks"]

MOST_LOOKS = 60  # rows of the look list's history
MOST_WRONG = 6  # in short
SAID = {"seen": Sentence("Said: seen."), "tomorrow": Sentence("Said: until tomorrow.")}
NOT_COUNTED = (PhotoState.REFUSED, PhotoState.LEFT_OUT, PhotoState.NEEDS_CORNERS)


def material_blocks(book: "Book", trays: Sequence[Tray]) -> Iterator[Block]:
    """The table of the media that grow in this trial, without the rows that are empty for all of them."""
    from data.materials.reading import read_materials

    whole = read_materials(book).table
    table = whole.known_of({tray.medium for tray in trays})
    if not table.media:
        return
    yield Heading(text=Sentence("The media as materials"))
    yield Paragraph(
        text=Sentence(
            "What a photograph cannot see, with how each number was had. Media differ in many ways at "
            "once, so there is no grand total."
        )
    )
    if table.rows:
        yield Materials(table=table)
    left_out = len(whole.rows) - len(table.rows)
    if left_out:
        yield Paragraph(
            text=Sentence(
                "Properties of which nothing is known yet for any of these media are left out here: {n}. "
                "Materials says what would fill them.",
                n=left_out,
            )
        )


def apart_blocks(book: "Book", trial: str, cancel: CancelToken) -> Iterator[Block]:
    """What else tells the media of this trial apart, as Verdict says it."""
    from data.materials.noted import read_noted

    words = read_noted(book, trial, cancel=cancel).words
    if not words:
        return
    yield Heading(text=Sentence("What else tells them apart"))
    yield Paragraph(text=Sentence("Of all crops of the trial. None of this moves the answers."))
    yield from (Paragraph(text=one) for one in words)


def wrong_blocks(book: "Book", trays: Sequence[Tray], cancel: CancelToken, *, short: bool) -> Iterator[Block]:
    """Trays that were lost and photos that do not count."""
    words = [*_lost(trays), *_befell(book, trays), *_not_counted(book, trays, cancel)]
    yield Heading(text=Sentence("What went wrong"))
    if not words:
        yield Paragraph(
            text=Sentence(
                "No tray was thrown away, no mold was taken out, and no photo of its trays was refused."
            )
        )
    most = MOST_WRONG if short else len(words)
    for one in words[:most]:
        yield Paragraph(text=one)
    if len(words) > most:
        yield Paragraph(
            text=Sentence("What else went wrong is named in the full report: {n}.", n=len(words) - most)
        )


def _lost(trays: Sequence[Tray]) -> Iterator[Sentence]:
    for tray in trays:
        if tray.ended == "thrown away" and tray.done_at is not None:
            yield Sentence(
                "Tray {code} ({crop}, {medium}) was thrown away on {day}: {why}.",
                code=tray.code,
                crop=tray.crop,
                medium=tray.medium,
                day=_day(tray.done_at),
                why=tray.ended_why.rstrip(".") or Sentence("no reason was noted"),
            )


def _befell(book: "Book", trays: Sequence[Tray]) -> Iterator[Sentence]:
    """Mold that was taken out, under a stack for instance, where no photo shows it; moves half way."""
    for tray in trays:
        for event in book.events(tray.id):
            values = {
                "code": tray.code,
                "crop": tray.crop,
                "medium": tray.medium,
                "day": _day(event.at),
                "what": event.note.rstrip(".") or Sentence("nothing else was noted"),
            }
            if event.kind is EventKind.MOLD_OUT:
                yield Sentence(
                    "Mold was taken out of tray {code} ({crop}, {medium}) on {day}: {what}.", **values
                )
            if event.kind is EventKind.MOVED:
                yield Sentence("Tray {code} ({crop}, {medium}) was moved on {day}: {what}.", **values)


def _not_counted(book: "Book", trays: Sequence[Tray], cancel: CancelToken) -> Iterator[Sentence]:
    for tray in trays:
        cancel.check()
        for day in book.days(tray.id):
            if day.state in NOT_COUNTED:
                yield Sentence(
                    "Tray {code}, {when}: a photo does not count, {state}: {reason}.",
                    code=tray.code,
                    when=Sentence("day {day}", day=day.day) if day.day >= 0 else Sentence("before sowing"),
                    state=day.state,
                    reason=str(day.reason or Sentence("no reason was noted")).rstrip("."),
                )


def look_blocks(book: "Book", trial: str) -> Iterator[Block]:
    """What stood on the look list, newest first, and what became of it."""
    past = book.look_history(trial=trial)
    yield Heading(text=Sentence("What needed a look"))
    if not past:
        yield Paragraph(
            text=Sentence(
                "No line of the look list was noted for this trial; lines are noted on days on which the "
                "list is looked at."
            )
        )
        return
    yield Grid(
        name=Sentence("Look list"),
        head=(Sentence("Tray"), Sentence("First"), Sentence("Last"), Sentence("What"), Sentence("Then")),
        rows=tuple(
            (
                one.code,
                one.first_on.isoformat(),
                one.last_on.isoformat(),
                one.sentence,
                one.gone_why or SAID.get(one.answer or "", ""),
            )
            for one in past[:MOST_LOOKS]
        ),
        wide=(0, 3, 4),
    )
    if len(past) > MOST_LOOKS:
        yield Paragraph(text=Sentence("Older ones are kept in the book: {n}.", n=len(past) - MOST_LOOKS))


def _day(at: datetime) -> str:
    return f"{at.day} {at:%B %Y}"
