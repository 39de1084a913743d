"""Verdict why: what moves the score, how sure the answer is, how it was worked out, as text, no Qt.

In    a `CropVerdict`; what else tells its media apart
Out   rows of the parts of the score and of that; sentences
Not   the answer and its table (`view.py`), widgets (`verdict/page.py`)
"""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.verdict.conditionwords import CONDITION_WORDS, all_of
from data.verdict.measurewords import mover_words, part_words
from data.verdict.notes import cautions, how_worked_out
from data.verdict.surewords import camera_words, otherwise_words
from data.verdict.traywords import lost_words
from gui.language.spoken import in_figures, spoken
from gui.language.words import translate

if TYPE_CHECKING:
    from data.materials.noted import Apart
    from data.verdict.verdicts import CropVerdict

__all__ = [
    "PartRow",
    "apart_row",
    "care_words",
    "how_words",
    "part_rows",
    "same_otherwise",
    "sure_words",
    "why_words",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class PartRow:
    """One part of the score for one medium."""

    medium: str
    part: str
    value: str  # %
    trusted: str
    points: str


def part_rows(found: "CropVerdict") -> tuple[PartRow, ...]:
    """Every part of the score, the one that is worth most first."""
    return tuple(
        PartRow(
            medium=mover.medium,
            part=spoken(part_words(mover.part, found.counted)).split(" (")[0],
            value=f"{in_figures(mover.value, '.1f')} %",
            trusted=f"{in_figures(mover.trusted_value, '.1f')} %",
            points=in_figures(mover.points + 0.0, "+.1f"),
        )
        for mover in found.movers
    )


def apart_row(one: "Apart") -> tuple[str, str, str, str, str]:
    """Medium, what is told of it, difference, interval, what tells it; a dash where there is no number."""
    told = spoken(one.beside.words)
    if one.cannot_be_told:
        told = f"{translate('Verdict', 'Which one has more cannot be told.')} {told}"
    difference = interval = "–"
    if one.difference is not None:
        difference = f"{in_figures(one.difference, '+.1f')} {spoken(one.unit)}"
    if one.interval is not None:
        low, high = (in_figures(limit + 0.0, "+.1f") for limit in one.interval)
        interval = translate("Verdict", "{low} to {high}").format(low=low, high=high)
    return one.medium, spoken(one.row.words), difference, interval, told


def why_words(found: "CropVerdict") -> tuple[str, ...]:
    """What moves the score, and trays lost to mold."""
    said = (*mover_words(found.movers, found.counted, moldy=found.moldy), *lost_words(found.lost))
    return tuple(spoken(words) for words in said)


def care_words(found: "CropVerdict") -> str:
    """One line below the answers where something else differed, too; empty where nothing did."""
    if not found.apart or not any(line.outcome for line in found.verdict.compared):
        return ""
    words = translate("Verdict", "Read with care, for this was not alike either: {conditions}.")
    return words.format(conditions=spoken(all_of([CONDITION_WORDS[name] for name in found.apart])))


def sure_words(found: "CropVerdict") -> tuple[str, ...]:
    """Cautions, doubts that change the answer, the camera; then what else is to be known."""
    changing = [one for one in found.otherwise if one.changes]
    words = [
        *cautions(found.verdict),
        *found.apart_words,
        *otherwise_words(changing, found.scale),
        *camera_words(found.verdict, found.scale),
    ]
    said = [spoken(one) for one in words]
    same = len(found.otherwise) - len(changing)
    if same and not changing:
        said.insert(0, translate("Verdict", "However it is read, each answer stays as it is."))
    return tuple(dict.fromkeys((*said, *(spoken(note) for note in found.notes))))


def same_otherwise(found: "CropVerdict") -> tuple[str, ...]:
    """Readings under which the answer stays, for who wants to see them."""
    same = [one for one in found.otherwise if not one.changes]
    return tuple(spoken(one) for one in otherwise_words(same, found.scale))


def how_words(found: "CropVerdict") -> tuple[str, ...]:
    """Formula and source; the only place with chances."""
    words = [spoken(line) for line in how_worked_out(found.verdict)]
    if found.method is not None:
        by = translate("Verdict", "Photos were scored by the method {method}.")
        words.append(by.format(method=found.method))
    return tuple(words)
