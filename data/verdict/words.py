"""Verdict words: a verdict as sentences that a grower can read aloud.

In    a `Verdict`, how its numbers are written (`Scale`)
Out   a `Sentence` for each medium; outcomes and reasons in words
Not   the numbers (`verdict`), cautions (`notes.py`), the table (`gui`), written by the same `Scale`

Every number in a sentence is one of the table, rounded alike. No sentence holds a chance "p": that stands
behind "how this was worked out".
"""

import math
from dataclasses import dataclass
from enum import StrEnum

from data.sentence import Sentence
from data.verdict import MediumResult, Verdict
from data.verdict.outcome import Outcome, Why

__all__ = ["Scale", "Unit", "outcome_words", "scale_for", "sentence", "why_words", "with_unit"]

MOST_DIGITS = 6


class Unit(StrEnum):
    """Of the numbers that are compared."""

    POINTS = "points"
    GRAMS = "g"
    NONE = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """How numbers of one measure are written."""

    unit: Unit
    digits: int  # after the point

    def number(self, value: float, *, sign: bool = False) -> str:
        """Rounded; with its sign where it is a difference."""
        rounded = round(value, self.digits) + 0.0  # no -0.0
        return f"{rounded:+.{self.digits}f}" if sign else f"{rounded:.{self.digits}f}"

    def amount(self, value: float, *, sign: bool = False) -> Sentence:
        """A number with its unit."""
        return with_unit(self.number(value, sign=sign), self.unit)


def with_unit(number: str, unit: Unit) -> Sentence:
    """A written number and its unit."""
    match unit:
        case Unit.POINTS:
            return Sentence("{number} points", number=number)
        case Unit.GRAMS:
            return Sentence("{number} g", number=number)
        case Unit.NONE:
            return Sentence("{number}", number=number)


def scale_for(verdict: Verdict, unit: Unit = Unit.NONE) -> Scale:
    """One digit for points and grams; for numbers without a unit two digits of their standard error."""
    if unit is not Unit.NONE:
        return Scale(unit=unit, digits=1)
    errors = [line.se for line in verdict.media if line.se]
    sizes = errors or [size for line in verdict.media if (size := abs(line.mean or 0.0) / 100) > 0]
    if not sizes:
        return Scale(unit=unit, digits=1)
    return Scale(unit=unit, digits=min(max(1 - math.floor(math.log10(min(sizes))), 0), MOST_DIGITS))


# --- one medium


def sentence(verdict: Verdict, line: MediumResult, scale: Scale) -> Sentence:
    """What is shown of one medium; of the trusted one, that it is the one the others are held against."""
    if line.medium == verdict.trusted:
        return _trusted(line, scale)
    if line.outcome is None or line.low is None or line.high is None or line.difference is None:
        return _no_verdict(verdict, line, scale)
    return _shown(verdict, line, _values(verdict, line, scale))


def _values(verdict: Verdict, line: MediumResult, scale: Scale) -> dict[str, object]:
    return {
        "medium": line.medium,
        "trusted": verdict.trusted,
        "margin": scale.amount(verdict.margin),
        "difference": scale.amount(line.difference or 0.0, sign=True),
        "low": scale.number(line.low or 0.0, sign=True),
        "high": scale.number(line.high or 0.0, sign=True),
    }


def _shown(verdict: Verdict, line: MediumResult, values: dict[str, object]) -> Sentence:
    if verdict.so_far:
        return Sentence(
            "So far {medium} differs from {trusted} by {difference} (interval {low} to {high}). The trial "
            "still runs: nothing is shown before the planned trays are in.",
            **values,
        )
    match line.outcome:
        case Outcome.BETTER:
            return Sentence(
                "{medium} is better than {trusted}: the difference is {difference} (interval {low} to "
                "{high}).",
                **values,
            )
        case Outcome.AS_GOOD:
            return Sentence(
                "{medium} is as good as {trusted}, within the margin of {margin}: the difference is "
                "{difference} (interval {low} to {high}).",
                **values,
            )
        case Outcome.AS_GOOD_LOWER:
            return Sentence(
                "{medium} is within the margin of {margin}, yet surely somewhat less good than {trusted}: "
                "the difference is {difference} (interval {low} to {high}).",
                **values,
            )
        case Outcome.WORSE:
            return Sentence(
                "{medium} is worse than {trusted} by more than the margin of {margin} allows: the difference "
                "is {difference} (interval {low} to {high}).",
                **values,
            )
        case _:
            return _not_shown(verdict, line, values)


def _not_shown(verdict: Verdict, line: MediumResult, values: dict[str, object]) -> Sentence:
    return Sentence(
        "Not shown: {what}; the difference is {difference} (interval {low} to {high}). {settled}",
        what=_what_is_not_shown(verdict, line, values),
        settled=_what_would_settle_it(line),
        **values,
    )


def _what_is_not_shown(verdict: Verdict, line: MediumResult, values: dict[str, object]) -> Sentence:
    """Where the whole interval lies on the worse side, only by how much is not shown."""
    nearest = line.low if verdict.lower_is_better else line.high
    if nearest is not None and (nearest > 0 if verdict.lower_is_better else nearest < 0):
        return Sentence(
            "{medium} is surely less good than {trusted}, but the trial cannot tell whether by less than the "
            "margin of {margin}",
            **values,
        )
    return Sentence(
        "the trial cannot tell whether {medium} is as good as {trusted} within the margin of {margin}",
        **values,
    )


def _what_would_settle_it(line: MediumResult) -> Sentence:
    if line.further is None:
        return Sentence(
            "Held against how trays and camera scatter it lies so near the margin that no reasonable number "
            "of further trays would settle it."
        )
    if line.shelves is not None:
        return Sentence(
            "{enough} trays of each medium on {shelves} shelves, {further} trays more than here, would "
            "probably settle it.",
            enough=line.enough,
            shelves=line.shelves,
            further=line.further,
        )
    if line.further == 1:
        return Sentence(
            "{enough} trays of each medium, 1 more than here, would probably settle it.", enough=line.enough
        )
    return Sentence(
        "{enough} trays of each medium, {further} more than here, would probably settle it.",
        enough=line.enough,
        further=line.further,
    )


def _trusted(line: MediumResult, scale: Scale) -> Sentence:
    if line.mean is None:
        return Sentence("{medium} is the trusted medium; it has no number.", medium=line.medium)
    return Sentence(
        "{medium} is the trusted medium, mean {mean}; the others are held against it.",
        medium=line.medium,
        mean=scale.amount(line.mean),
    )


def _no_verdict(verdict: Verdict, line: MediumResult, scale: Scale) -> Sentence:
    why = line.missing.get("outcome", Why.NO_ERROR)
    if line.difference is None or line.mean is None:
        return Sentence(
            "{medium}: no verdict. {why}",
            medium=line.medium,
            why=why_words(why, line.medium, verdict.trusted),
        )
    return Sentence(
        "{medium}: numbers, no verdict. Its mean is {mean}, {difference} against {trusted}. {why}",
        medium=line.medium,
        mean=scale.amount(line.mean),
        difference=scale.amount(line.difference, sign=True),
        trusted=verdict.trusted,
        why=why_words(why, line.medium, verdict.trusted),
    )


def why_words(why: Why, medium: str = "", trusted: str = "") -> Sentence:
    """Why something cannot be had, and what to do."""
    match why:
        case Why.NO_NUMBERS:
            return Sentence("There is no number to compare: no tray has one.")
        case Why.NO_TRUSTED if not trusted:
            return Sentence("No medium is named as the trusted one, so there is nothing to compare with.")
        case Why.NO_TRUSTED:
            return Sentence(
                "No tray of the trusted medium {trusted} has a number, so there is nothing to compare with.",
                trusted=trusted,
            )
        case Why.ONLY_TRUSTED:
            return Sentence("Only the trusted medium has numbers, so there is nothing to compare it with.")
        case Why.ONE_TRAY_EACH:
            return Sentence(
                "With one tray of each medium nobody can tell the medium from the luck of the tray; grow at "
                "least two blocks with all media in each."
            )
        case Why.ONE_TRAY:
            return Sentence("One tray alone says nothing beyond itself; grow more than one of each medium.")
        case Why.NO_ERROR:
            return Sentence("No tray is left over to tell chance from difference; grow more blocks.")
        case Why.NO_SPREAD:
            return Sentence(
                "The trays of a medium do not differ at all, or two media lie equally far apart in every "
                "block. Real trays are not so alike, unless a score can tell no more of them: look whether "
                "all stand at its limit, or whether numbers were copied."
            )
        case Why.APART:
            return Sentence(
                "{medium} and {trusted} share no block, nor does a chain of other media join them.",
                medium=medium,
                trusted=trusted,
            )
        case Why.ONE_SHELF:
            return Sentence(
                "Shelf and medium cannot be told apart: what is set for a whole shelf is tested between "
                "shelves, and each medium needs at least two."
            )
        case Why.IS_TRUSTED:
            return Sentence("This is the trusted medium.")


def outcome_words(outcome: Outcome, *, so_far: bool = False) -> Sentence:
    """An outcome in two or three words, for a table."""
    if so_far:
        return Sentence("so far")
    match outcome:
        case Outcome.BETTER:
            return Sentence("better")
        case Outcome.AS_GOOD:
            return Sentence("as good")
        case Outcome.AS_GOOD_LOWER:
            return Sentence("within margin, less good")
        case Outcome.WORSE:
            return Sentence("worse")
        case Outcome.NOT_SHOWN:
            return Sentence("not shown")
