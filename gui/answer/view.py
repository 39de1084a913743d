"""Verdict view: the state of the place Verdict, and everything it says as text, no Qt.

In    a `VerdictReading`; which crop and measure are looked at
Out   rows of the table, answers, lines of the charts, words: all by the one `Scale` of the verdict
Not   reading the book (`reading.py`), why and how sure (`why.py`), widgets (`verdict/page.py`)
"""

from dataclasses import dataclass, field, replace
from datetime import timedelta
from typing import TYPE_CHECKING

from data.trial import MeasureKind
from data.verdict import MediumResult
from data.verdict.measurewords import kind_words
from data.verdict.outcome import Outcome
from data.verdict.words import Unit, outcome_words, sentence, with_unit
from gui.answer.chartlines import BlockLine, IntervalLine, Intervals, RankLine
from gui.answer.reading import VerdictReading
from gui.language.spoken import DAY, day_words, spoken
from gui.language.words import translate

if TYPE_CHECKING:
    from data.verdict.verdicts import CropVerdict

__all__ = [
    "Answer", "TableRow", "VerdictState", "answers_of", "block_lines", "chosen_state", "head_words",
    "intervals_of", "rank_lines", "read_day_words", "series_of", "table_rows",
]  # fmt: skip

NONE = "\u2013"


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictState:
    """What is shown."""

    reading: VerdictReading = field(default_factory=VerdictReading)
    crop: str = ""
    kind: MeasureKind = MeasureKind.SCORE
    read: bool = False  # whether the book has been read at all

    @property
    def found(self) -> "CropVerdict | None":
        """The verdict that is looked at."""
        return self.reading.verdict(self.crop, self.kind)


def chosen_state(reading: VerdictReading, before: VerdictState) -> VerdictState:
    """Another reading; crop and measure stay where they are still there, else the deciding one is shown."""
    state = replace(before, reading=reading, read=True)
    if not reading.found:
        return replace(state, crop="", kind=MeasureKind.SCORE)
    crop = state.crop if state.crop in reading.crops else reading.crops[0]
    kinds = reading.kinds(crop)
    same = state.kind in kinds and reading.trial == before.reading.trial
    return replace(state, crop=crop, kind=state.kind if same else _kind_shown(reading, crop))


def _kind_shown(reading: VerdictReading, crop: str) -> MeasureKind:
    """The one that decides; where no plan names one, and it has no number, the first that has: old notes."""
    found = [one for one in reading.found if one.crop == crop]
    decides = next((one for one in found if one.decides), found[0])
    if reading.kept is None and not decides.verdict.media:
        decides = next((one for one in found if one.verdict.media), decides)
    return decides.kind


# --- words


def head_words(found: "CropVerdict") -> str:
    """Measure, day, margin and trusted medium in one line."""
    measure = spoken(kind_words(found.kind))
    if found.on_day is not None:
        words = translate("Verdict", "{measure} on day {day}")
        measure = words.format(measure=measure, day=found.on_day)
    said = _against_words(found, measure)
    if found.decides is False:
        said += translate("Verdict", "; another measure was named as the one that decides")
    return said


def _against_words(found: "CropVerdict", measure: str) -> str:
    """A share of the mean of a trusted medium without a number is no margin."""
    verdict = found.verdict
    margin = "" if verdict.told_margin is None else spoken(found.scale.amount(verdict.told_margin))
    if not verdict.trusted:
        words = translate("Verdict", "{measure}; no medium is named as the trusted one")
    elif not margin:
        words = translate("Verdict", "{measure}, against {trusted}")
    else:
        words = translate("Verdict", "{measure}, against {trusted}, margin {margin}")
    return words.format(measure=measure, trusted=verdict.trusted, margin=margin)


def read_day_words(found: "CropVerdict") -> str:
    """The day that is read, and which days of the calendar that is: "9 (11 March)"."""
    sown = sorted({number.tray.sown_at.date() for number in found.numbers})
    if not sown:
        return str(found.on_day)
    first, *others = (day_words(day + timedelta(days=found.on_day or 0), DAY) for day in sown)
    dates = translate("Verdict", "{low} to {high}").format(low=first, high=others[-1]) if others else first
    return f"{found.on_day} ({dates})"


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """The sentence of one new medium."""

    medium: str
    outcome: Outcome | None  # None: no verdict can be had
    so_far: bool
    series: int
    words: str


def answers_of(found: "CropVerdict") -> tuple[Answer, ...]:
    """One sentence a new medium."""
    return tuple(
        Answer(
            medium=line.medium,
            outcome=line.outcome,
            so_far=found.verdict.so_far,
            series=series_of(found, line.medium),
            words=spoken(sentence(found.verdict, line, found.scale)),
        )
        for line in found.verdict.compared
    )


def series_of(found: "CropVerdict", medium: str) -> int:
    """Colour, marker and dash of a medium: the same for every crop and in every chart."""
    trusted = found.verdict.trusted
    others = {line.medium for line in found.verdict.media} | set(found.treatments.values())
    names = [trusted, *sorted(others - {trusted})]
    return names.index(medium) if medium in names else len(names)


@dataclass(frozen=True, slots=True, kw_only=True)
class TableRow:
    """One medium as text."""

    medium: str
    trays: str
    mean: str
    difference: str
    interval: str
    answer: str
    rank: str


def table_rows(found: "CropVerdict") -> tuple[TableRow, ...]:
    """The table, numbers rounded as in the sentences."""
    return tuple(_row(found, line) for line in found.verdict.media)


def _row(found: "CropVerdict", line: MediumResult) -> TableRow:
    scale = found.scale

    def written(value: float | None, *, sign: bool = False) -> str:
        return NONE if value is None else spoken(with_unit(scale.number(value, sign=sign), Unit.NONE))

    interval = NONE
    if line.low is not None and line.high is not None:
        interval = translate("Verdict", "{low} to {high}").format(
            low=written(line.low, sign=True), high=written(line.high, sign=True)
        )
    return TableRow(
        medium=line.medium,
        trays=str(line.n),
        mean=written(line.mean),
        difference=written(line.difference, sign=True),
        interval=interval,
        answer=_answer(found, line),
        rank=rank_words(line, len(found.verdict.media)),
    )


def _answer(found: "CropVerdict", line: MediumResult) -> str:
    if line.medium == found.verdict.trusted:
        return translate("Verdict", "trusted")
    if line.outcome is None:
        return translate("Verdict", "no verdict")
    words = spoken(outcome_words(line.outcome, so_far=found.verdict.so_far))
    if line.enough is None:
        return words
    return translate("Verdict", "{answer}, takes {n} of each").format(answer=words, n=line.enough)


def rank_words(line: MediumResult, media: int) -> str:
    """ "1-2 of 3"."""
    if line.rank_low is None or line.rank_high is None:
        return NONE
    if line.rank_low == line.rank_high:
        return translate("Verdict", "{rank} of {media}").format(rank=line.rank_low, media=media)
    words = translate("Verdict", "{low}-{high} of {media}")
    return words.format(low=line.rank_low, high=line.rank_high, media=media)


# --- charts


def intervals_of(found: "CropVerdict") -> Intervals:
    """New media that have an interval, against the margin."""
    verdict = found.verdict
    rows = {row.medium: row for row in table_rows(found)}
    words = translate("Verdict", "{medium}: {difference}, interval {interval}")
    lines = tuple(
        IntervalLine(
            name=line.medium,
            series=series_of(found, line.medium),
            difference=line.difference,
            low=line.low,
            high=line.high,
            words=words.format(
                medium=line.medium,
                difference=rows[line.medium].difference,
                interval=rows[line.medium].interval,
            ),
        )
        for line in verdict.compared
        if line.difference is not None and line.low is not None and line.high is not None
    )
    return Intervals(
        lines=lines,
        margin=verdict.margin,
        trusted=verdict.trusted,
        unit=spoken(found.scale.unit),
        so_far=verdict.so_far,
        lower_is_better=verdict.lower_is_better,
    )


def rank_lines(found: "CropVerdict") -> tuple[RankLine, ...]:
    """Media that have ranks, best first."""
    lines = [
        RankLine(
            name=line.medium,
            series=series_of(found, line.medium),
            low=line.rank_low,
            high=line.rank_high,
            words=rank_words(line, len(found.verdict.media)),
        )
        for line in found.verdict.media
        if line.rank_low is not None and line.rank_high is not None
    ]
    means = {line.medium: line.mean or 0.0 for line in found.verdict.media}
    sign = 1 if found.verdict.lower_is_better else -1
    return tuple(sorted(lines, key=lambda line: (line.low + line.high, sign * means[line.name])))


def block_lines(found: "CropVerdict") -> tuple[BlockLine, ...]:
    """Numbers of all trays by block and medium."""
    blocks: dict[str, dict[str, list[float]]] = {}
    for number in found.numbers:
        if number.value is not None:
            block = blocks.setdefault(number.tray.block or "", {})
            block.setdefault(found.treatments[number.tray.id], []).append(number.value)
    return tuple(
        BlockLine(
            name=name or translate("Verdict", "no block"),
            values={medium: tuple(numbers) for medium, numbers in values.items()},
        )
        for name, values in blocks.items()
    )
