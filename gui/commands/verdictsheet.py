"""Verdict sheet: what a verdict looks like in a terminal, for people and for programs.

In    `Reported`: a verdict with what stands beside it
Out   a table with sentences, or one JSON list, on stdout
Not   where verdicts come from (`verdict.py`), their words (`data/verdict/words.py`)
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from data.sentence import Sentence
from data.verdict import MediumResult, Verdict
from data.verdict.notes import cautions, how_worked_out
from data.verdict.words import Scale, outcome_words, sentence, why_words
from gui.commands.saying import plain

__all__ = ["Reported", "print_all"]

HEADING = ("medium", "n", "mean", "difference", "se", "low", "high", "outcome", "rank")


@dataclass(frozen=True, slots=True, kw_only=True)
class Reported:
    """One verdict with what stands beside it."""

    verdict: Verdict
    scale: Scale
    trial: str | None = None
    crop: str | None = None
    measure: str = "value"
    notes: Sequence[Sentence] = ()
    extra: Mapping[str, Any] = field(default_factory=dict)  # for programs alone


def print_all(reported: Sequence[Reported], *, as_json: bool) -> None:
    """One JSON list, or a table with sentences for each."""
    if as_json:
        print(json.dumps([_object(one) for one in reported], indent=1, ensure_ascii=False, allow_nan=False))
        return
    for number, one in enumerate(reported):
        if number:
            print()
        for line in _lines(one):
            print(plain(line))


def _object(reported: Reported) -> dict[str, Any]:
    """One verdict as plain values with every promised key."""
    verdict, scale = reported.verdict, reported.scale
    missing = {name: str(why_words(why, trusted=verdict.trusted)) for name, why in verdict.missing.items()}
    return {
        "crop": reported.crop,
        "measure": reported.measure,
        "unit": str(scale.unit),
        "trusted": verdict.trusted or None,  # nobody named one
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


def _lines(reported: Reported) -> list[str]:
    """Heading, table, sentences and notes."""
    verdict, scale = reported.verdict, reported.scale
    rows = [HEADING, *(_row(verdict, line, scale) for line in verdict.media)]
    widths = [max(len(row[column]) for row in rows) for column in range(len(HEADING))]
    title = ", ".join(filter(None, (reported.trial, reported.crop, reported.measure)))
    against = f"against {verdict.trusted}"
    if verdict.told_margin is not None:
        against += f", margin {scale.amount(verdict.told_margin)}"
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
