"""Verdict command: verdicts on the command line, of a book or of numbers that were kept elsewhere.

In    a book, or a table in a file with the trusted medium and the margin
Out   a table and sentences, or one JSON list, on stdout; what was refused on stderr; the exit code
Not   the verdict (`data/verdict`), what it looks like in a terminal (`verdictsheet.py`), a window
"""

import math
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from data.sentence import Sentence
from data.verdict import Verdict
from data.verdict.measurewords import mover_words
from data.verdict.notes import half_way
from data.verdict.rechecks import rechecks
from data.verdict.surewords import camera_words, otherwise_words
from data.verdict.traywords import lost_words, no_number_words
from data.verdict.words import scale_for, why_words
from gui.commands.saying import DONE, REFUSED, plain, refuse, say
from gui.commands.verdictsheet import Reported, print_all

if TYPE_CHECKING:
    from data.book import Book
    from data.verdict.traynumbers import TrayNumber
    from data.verdict.verdicts import CropVerdict

__all__ = ["margin_of", "verdict_of_book", "verdict_of_table"]


def margin_of(text: str) -> float:
    """A margin as it may follow `--margin`: a number of at least 0; raises `ValueError`."""
    from data.verdict.tablefile import lone_number

    margin = lone_number(text)
    if not math.isfinite(margin) or margin < 0:
        raise ValueError(text)
    return margin


def verdict_of_table(path: Path, trusted: str, margin: float, *, lower_is_better: bool, as_json: bool) -> int:
    """Print the verdict on numbers that were kept elsewhere; 1 where something was refused."""
    from data.verdict import verdict_of
    from data.verdict.tablefile import TableError, read_table

    try:
        table = read_table(path)
    except TableError as error:
        return _nothing(str(error), as_json=as_json)
    trusted = _as_written(trusted, {row.medium for row in (*table.rows, *table.missing)})
    verdict = verdict_of(table.rows, trusted, margin, lower_is_better=lower_is_better)
    scale = scale_for(verdict)
    notes = (*otherwise_words(rechecks(verdict, table.rows), scale), *table.notes)
    notes = (*notes, *half_way(table.rows, trusted))
    reported = Reported(verdict=verdict, scale=scale, notes=notes)
    for refused in table.refused:
        say(f"{path.name}, {refused}")
    print_all((reported,), as_json=as_json)
    nothing = _nothing_compared(verdict)
    if nothing is not None:
        say(str(nothing))
    return REFUSED if table.refused or nothing is not None else DONE


def verdict_of_book(
    folder: Path, trial: str | None = None, trusted: str | None = None, *, as_json: bool
) -> int:
    """Print the verdicts of one trial of a book, or of all; 1 where it cannot be read or has no such trial.

    `trusted` counts for trials without a plan, and for this answer alone. That a trial has no number yet is
    an answer like others: it stands among the notes.
    """
    from data.book import Book
    from data.errors import BookError
    from data.materials.noted import read_noted
    from data.verdict.verdicts import verdicts

    try:
        with Book.open(folder) as book:
            names = book.trials()
            if trial is not None and trial not in names:
                known = ", ".join(names) or "none"
                return _nothing(f"this book has no trial called {trial!r}; trials: {known}.", as_json=as_json)
            if trusted is not None:
                trusted = _as_written(trusted, book.media())
                if (why := _cannot_trust(book, trial, trusted)) is not None:
                    return _nothing(why, as_json=as_json)
            found = verdicts(book, trial, trusted=trusted)
            noted = {
                name: read_noted(book, name, trusted).words
                for name in dict.fromkeys(one.trial for one in found)
            }
    except BookError as error:
        return _nothing(str(error), as_json=as_json)
    print_all([_reported(one, noted[one.trial]) for one in found], as_json=as_json)
    if not as_json:
        _print_noted(noted)
    if not found:
        return refuse(str(Sentence("This book has no trial with trays, so there is nothing to compare.")))
    return DONE


def _cannot_trust(book: "Book", trial: str | None, trusted: str) -> str | None:
    """Why the others cannot be held against that medium; None where they can."""
    media = book.media()
    if trusted not in media:
        return f"this book has no medium called {trusted!r}; media: {', '.join(media) or 'none'}."
    if trial is not None and book.plans(trial):
        return f"the plan of {trial} says which medium is trusted: leave --trusted out."
    return None


def _nothing(sentence: str, *, as_json: bool) -> int:
    """Say why there is no verdict at all; programs get an empty list."""
    if as_json:
        print("[]")
    return refuse(sentence)


def _print_noted(noted: Mapping[str, Sequence[Sentence]]) -> None:
    """What else tells the media apart, once for each trial."""
    for trial, words in noted.items():
        if words:
            print()
            print(
                plain(f"{trial}, what else tells the media apart (of all crops; none of it moves the above):")
            )
        for one in words:
            print(plain(str(one)))


def _reported(found: "CropVerdict", noted: Sequence[Sentence] = ()) -> Reported:
    """A verdict of a book, with what it rests on."""
    verdict, scale = found.verdict, found.scale
    notes = (
        *found.apart_words,
        *mover_words(found.movers, found.counted, moldy=found.moldy),
        *otherwise_words(found.otherwise, scale),
        *lost_words(found.lost),
        *camera_words(verdict, scale),
        *found.notes,
    )
    extra: dict[str, Any] = {
        "trial": found.trial,
        "decides": found.decides,
        "on_day": found.on_day,
        "method": found.method,
        "counted_of": None if found.counted is None else str(found.counted),
        "noted": [str(words) for words in noted],
        "not_alike": list(found.apart),
        "lost_to_mold": [
            {"medium": one.treatment, "lost": one.lost, "trays": one.trays} for one in found.lost
        ],
        "numbers": [_number(found, number) for number in found.numbers],
    }
    return Reported(
        verdict=verdict,
        scale=scale,
        trial=found.trial,
        crop=found.crop,
        measure=str(found.kind),
        notes=notes,
        extra=extra,
    )


def _number(found: "CropVerdict", number: "TrayNumber") -> dict[str, Any]:
    why = number.why_none
    return {
        "tray": number.tray.code,
        "block": number.tray.block,
        "medium": found.treatments[number.tray.id],
        "value": number.value,
        "why_none": None if why is None else str(no_number_words(why, number.tray.code)),
    }


def _as_written(name: str, media: Iterable[str]) -> str:
    """The trusted medium as the file writes it; letters' size and spaces make no difference."""
    wanted = " ".join(name.split())
    return next((medium for medium in media if medium.casefold() == wanted.casefold()), wanted)


def _nothing_compared(verdict: Verdict) -> Sentence | None:
    """Why there is no comparison at all: no numbers, no trusted medium or no other one."""
    if verdict.media and any(line.difference is not None for line in verdict.media):
        return None
    why = next(iter(verdict.missing.values()), None)
    if why is None:
        why = next(iter(verdict.compared[0].missing.values()))
    return why_words(why, trusted=verdict.trusted)
