"""Verdict command: the table and the sentences of a verdict on the command line.

In    a book, or a table in a file with the trusted medium and the margin
Out   a table and sentences, or one JSON list, on stdout; what was refused on stderr; the exit code
Not   the verdict (`data/verdict`), its words (`data/verdict/words.py`), a window
"""

import json
import math
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from data.sentence import Sentence
from data.verdict import MediumResult, Verdict
from data.verdict.measurewords import mover_words
from data.verdict.notes import cautions, half_way, how_worked_out
from data.verdict.rechecks import rechecks
from data.verdict.surewords import camera_words, otherwise_words
from data.verdict.traywords import lost_words, no_number_words
from data.verdict.words import Scale, outcome_words, scale_for, sentence, why_words
from gui.commands.saying import DONE, REFUSED, plain, refuse, say

if TYPE_CHECKING:
    from data.book import Book
    from data.verdict.verdicts import CropVerdict

__all__ = ["Reported", "lines_of", "margin_of", "object_of", "verdict_of_book", "verdict_of_table"]

NUMBERS = ("mean", "difference", "se", "low", "high", "q", "df", "spread")


class Reported:
    """One verdict with what stands beside it."""

    def __init__(
        self,
        verdict: Verdict,
        scale: Scale,
        *,
        trial: str | None = None,
        crop: str | None = None,
        measure: str = "value",
        notes: Iterable[Sentence] = (),
        extra: dict[str, Any] | None = None,
    ) -> None:
        self.verdict, self.scale = verdict, scale
        self.trial, self.crop, self.measure = trial, crop, measure
        self.notes = tuple(notes)
        self.extra = extra or {}


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
    reported = Reported(verdict, scale, notes=(*notes, *half_way(table.rows, trusted)))
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
    from data.materials.noted import noted_words
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
                name: noted_words(book, name, trusted) for name in dict.fromkeys(one.trial for one in found)
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
        "numbers": [
            {
                "tray": number.tray.code,
                "block": number.tray.block,
                "medium": found.treatments[number.tray.id],
                "value": number.value,
                "why_none": None
                if number.why_none is None
                else str(no_number_words(number.why_none, number.tray.code)),
            }
            for number in found.numbers
        ],
    }
    about = {"trial": found.trial, "crop": found.crop, "measure": str(found.kind)}
    return Reported(verdict, scale, **about, notes=notes, extra=extra)


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


# --- printing


def print_all(reported: Sequence[Reported], *, as_json: bool) -> None:
    """One JSON list, or a table with sentences for each."""
    if as_json:
        print(json.dumps([object_of(one) for one in reported], indent=1, ensure_ascii=False, allow_nan=False))
        return
    for number, one in enumerate(reported):
        if number:
            print()
        for line in lines_of(one):
            print(plain(line))


def object_of(reported: Reported) -> dict[str, Any]:
    """One verdict as plain values with every promised key."""
    verdict, scale = reported.verdict, reported.scale
    missing = {name: str(why_words(why, trusted=verdict.trusted)) for name, why in verdict.missing.items()}
    return {
        "crop": reported.crop,
        "measure": reported.measure,
        "unit": str(scale.unit),
        "trusted": verdict.trusted,
        "margin": verdict.told_margin,
        "lower_is_better": verdict.lower_is_better,
        "df": verdict.df,
        "mse": verdict.mse,
        "q": verdict.q,
        "so_far": verdict.so_far,
        "blocks": verdict.blocks,
        "trays": verdict.trays,
        "error_from": str(verdict.error_from),
        "camera_sd": verdict.camera_sd,
        "media": [_medium(verdict, line, scale) for line in verdict.media],
        "missing": missing,
        "notes": [str(note) for note in (*reported.notes, *cautions(verdict))],
        "how": [str(line) for line in how_worked_out(verdict)],
        **reported.extra,
    }


def _medium(verdict: Verdict, line: MediumResult, scale: Scale) -> dict[str, Any]:
    return {
        "medium": line.medium,
        "n": line.n,
        "mean": line.mean,
        "difference": line.difference,
        "se": line.se,
        "low": line.low,
        "high": line.high,
        "outcome": None if line.outcome is None else str(line.outcome),
        "rank_low": line.rank_low,
        "rank_high": line.rank_high,
        "q": line.q,
        "df": line.df,
        "spread": line.spread,
        "enough_trays": line.enough,
        "further_trays": line.further,
        "sentence": str(sentence(verdict, line, scale)),
        "missing": {
            name: str(why_words(why, line.medium, verdict.trusted)) for name, why in line.missing.items()
        },
    }


HEADING = ("medium", "n", "mean", "difference", "se", "low", "high", "outcome", "rank")


def lines_of(reported: Reported) -> list[str]:
    """Heading, table, sentences and notes."""
    verdict, scale = reported.verdict, reported.scale
    rows = [HEADING, *(_row(verdict, line, scale) for line in verdict.media)]
    widths = [max(len(row[column]) for row in rows) for column in range(len(HEADING))]
    title = ", ".join(filter(None, (reported.trial, reported.crop, reported.measure)))
    against = f"against {verdict.trusted}, margin {scale.amount(verdict.margin)}"
    return [
        f"{title}: {against if verdict.trusted else 'no medium is named as the trusted one'}",
        *("  ".join(_cell(row, widths, column) for column in range(len(HEADING))).rstrip() for row in rows),
        *(str(sentence(verdict, line, scale)) for line in verdict.compared),
        *(str(note) for note in (*reported.notes, *cautions(verdict))),
    ]


def _cell(row: Sequence[str], widths: Sequence[int], column: int) -> str:
    left = HEADING[column] in ("medium", "outcome")
    return row[column].ljust(widths[column]) if left else row[column].rjust(widths[column])


def _row(verdict: Verdict, line: MediumResult, scale: Scale) -> tuple[str, ...]:
    def written(value: float | None, *, sign: bool = False) -> str:
        return "-" if value is None else scale.number(value, sign=sign)

    if line.medium == verdict.trusted:
        outcome = "trusted"
    elif line.outcome is None:
        outcome = "-"
    else:
        outcome = str(outcome_words(line.outcome, so_far=verdict.so_far))
    rank = "-" if line.rank_low is None else f"{line.rank_low}-{line.rank_high}"
    if line.rank_low is not None and line.rank_low == line.rank_high:
        rank = str(line.rank_low)
    return (
        line.medium,
        str(line.n),
        written(line.mean),
        written(line.difference, sign=True),
        written(line.se),
        written(line.low, sign=True),
        written(line.high, sign=True),
        outcome,
        rank,
    )
