"""Book words: what stands around a book's verdicts, as sentences.

In    plans, numbers of trays, verdicts and what was read otherwise
Out   `Sentence`s: what was fixed beforehand, which trays have no number, what moves the score, how sure it
      is, mold, whether measures agree
Not   the sentence of a medium (`words.py`), how sure it is (`surewords.py`)"""

from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from itertools import combinations, groupby, pairwise
from typing import TYPE_CHECKING

from data.desirability import USUAL, PartName, ScoreRule, rule_of
from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.trial import CONFIDENCE, KeptPlan, Measure, MeasureKind
from data.verdict import Verdict
from data.verdict.countedof import CountedOf
from data.verdict.movers import Mover
from data.verdict.outcome import Outcome
from data.verdict.traynumbers import LostToMold, NoNumber, TrayNumber
from data.verdict.words import outcome_words

if TYPE_CHECKING:
    from data.verdict.verdicts import CropVerdict

__all__ = [
    "beforehand", "kind_words", "lost_words", "measures_together", "missing_trays", "mover_words",
    "no_number_words", "part_words", "untreated",
]  # fmt: skip

LEAST_TRAYS = 5  # for a rank correlation of two measures


# --- what was fixed


def beforehand(
    versions: Sequence[KeptPlan],
    measure: Measure,
    verdict: Verdict,
    *,
    day: int | None,
    fixed: bool,
    day_fixed: bool,
) -> tuple[Sentence, ...]:
    """What was fixed before sowing and what was not; a margin that was changed later."""
    return tuple(_beforehand(versions, measure, verdict, day, fixed, day_fixed))


def _beforehand(
    versions: Sequence[KeptPlan],
    measure: Measure,
    verdict: Verdict,
    day: int | None,
    fixed: bool,
    day_fixed: bool,
) -> Iterator[Sentence]:
    if not verdict.trusted:
        yield Sentence(
            "No medium is marked as the trusted one. Say which it is, in the plan or among the media."
        )
    if not fixed:
        yield Sentence(
            "No margin was set before sowing; the usual {margin} was taken.",
            margin=_margin(measure.margin, measure.unit),
        )
    if measure.unit == "%" and verdict.media:
        yield Sentence(
            "The margin of {share:g} % of the mean of {trusted} is {margin:.1f} g in this trial.",
            share=measure.margin,
            trusted=verdict.trusted,
            margin=verdict.margin,
        )
    if measure.kind is MeasureKind.SCORE and day is not None and not day_fixed:
        yield Sentence(
            "No day was fixed before sowing; day {day} was taken, on which most trays have a photo.", day=day
        )
    if versions and versions[-1].plan.level != CONFIDENCE:
        yield Sentence(
            "The plan names a confidence of {level:.1f} %; the intervals here are made for {fixed:.0f} %.",
            level=100 * versions[-1].plan.level,
            fixed=100 * CONFIDENCE,
        )
    yield from _changes(versions, measure.kind)


def _changes(versions: Sequence[KeptPlan], kind: MeasureKind) -> Iterator[Sentence]:
    if versions and versions[0].after_sowing:
        yield Sentence(
            "The plan was kept on {day}, after the first tray was sown: nothing was fixed before sowing.",
            day=_day(versions[0].kept_at),
        )
    yield from _rule_changes(versions, kind)
    margins = [(kept, kept.plan.measure(kind)) for kept in versions]
    for (_, old), (kept, new) in pairwise(margins):
        if old is None or new is None or (old.margin, old.unit) == (new.margin, new.unit):
            continue
        values = {
            "old": _margin(old.margin, old.unit),
            "new": _margin(new.margin, new.unit),
            "day": _day(kept.kept_at),
            "why": kept.why,
        }
        if kept.after_sowing:
            yield Sentence(
                "The margin was changed after sowing, on {day}, from {old} to {new} ({why}): read this "
                "verdict with care.",
                **values,
            )
        else:
            yield Sentence(
                "The margin was changed before sowing, on {day}, from {old} to {new} ({why}).", **values
            )


def _rule_changes(versions: Sequence[KeptPlan], kind: MeasureKind) -> Iterator[Sentence]:
    """Limits and weights of the canopy score that were changed after sowing."""
    for old, new in pairwise(versions):
        if kind is MeasureKind.SCORE and new.after_sowing and _rule(old) != _rule(new):
            yield Sentence(
                "Limits and weights of the canopy score were changed after sowing, on {day} ({why}): read "
                "this verdict with care.",
                day=_day(new.kept_at),
                why=new.why,
            )


def _rule(kept: KeptPlan) -> ScoreRule:
    try:
        return rule_of(kept.plan.score)
    except ValueError:
        return USUAL


def _margin(margin: float, unit: str) -> Sentence:
    if unit == "%":
        return Sentence("{margin:g} %", margin=margin)
    return Sentence("{margin:g} points", margin=margin)


def _day(at: datetime) -> str:
    return f"{at.day} {at:%B %Y}"


# --- trays


def missing_trays(numbers: Sequence[TrayNumber]) -> tuple[Sentence, ...]:
    """Trays that have no number, all of one reason together."""
    by_reason: dict[NoNumber, list[str]] = {}
    for number in numbers:
        if number.why_none is not None:
            by_reason.setdefault(number.why_none, []).append(number.tray.code)
    return tuple(no_number_words(why, ", ".join(codes)) for why, codes in by_reason.items())


def no_number_words(why: NoNumber, trays: str) -> Sentence:
    """Why one tray or several have no number."""
    match why:
        case NoNumber.NO_PHOTO:
            return Sentence("No usable photo of the day that is read: {trays}.", trays=trays)
        case NoNumber.TO_COME:
            return Sentence("No photo yet of the day that is read: {trays}.", trays=trays)
        case NoNumber.OTHER_METHOD:
            return Sentence(
                "Scored by another version of the method only, and scores of two versions are never mixed; "
                "score again: {trays}.",
                trays=trays,
            )
        case NoNumber.NO_CANOPY:
            return Sentence("Canopy could not be told on the day that is read: {trays}.", trays=trays)
        case NoNumber.APART:
            return Sentence("Lost to mold, and apart as decided beforehand: {trays}.", trays=trays)
        case NoNumber.NOT_WEIGHED:
            return Sentence("Not weighed: {trays}.", trays=trays)
        case NoNumber.NOT_LOOKED_AT:
            return Sentence("Not scored by eye: {trays}.", trays=trays)


def untreated(trays: Sequence[Tray], treatments: Mapping[TrayId, str]) -> tuple[Sentence, ...]:
    """Trays that got none of the plan's treatments."""
    codes = [tray.code for tray in trays if tray.id not in treatments]
    if not codes:
        return ()
    return (Sentence("{trays} got none of the plan's treatments and were left out.", trays=", ".join(codes)),)


def lost_words(lost: Sequence[LostToMold]) -> tuple[Sentence, ...]:
    """Trays lost to mold, by treatment; empty where none was."""
    if not any(one.lost for one in lost):
        return ()
    counts = ", ".join(f"{one.treatment} {one.lost}/{one.trays}" for one in lost)
    return (Sentence("Lost to mold, of the trays sown: {counts}.", counts=counts),)


# --- why


def mover_words(movers: Sequence[Mover], counted: CountedOf | None = None) -> tuple[Sentence, ...]:
    """For each medium the part that moves its score most."""
    found = []
    for medium, group in groupby(movers, key=lambda mover: mover.medium):
        first = next(iter(group))
        found.append(
            Sentence(
                "What moves the score of {medium} most is {part}, {value:.1f} against {trusted:.1f} %: worth "
                "{points:+.1f} points.",
                medium=medium,
                part=part_words(first.part, counted),
                value=first.value,
                trusted=first.trusted_value,
                points=first.points + 0.0,
            )
        )
    return tuple(found)


def part_words(part: PartName, counted: CountedOf | None = None) -> Sentence:
    """A part of the canopy score; `counted` names what it is a share of where that is not the inner area."""
    match part:
        case PartName.COVERAGE if counted is CountedOf.BED:
            return Sentence("coverage of the growing bed")
        case PartName.UNIFORMITY if counted is CountedOf.BED:
            return Sentence("uniformity on the growing bed")
        case PartName.COVERAGE:
            return Sentence("coverage")
        case PartName.UNIFORMITY:
            return Sentence("uniformity")
        case PartName.COLOUR:
            return Sentence("colour (canopy that is not pale)")
        case PartName.MOLD:
            return Sentence("mold")


# --- measures side by side


def measures_together(found: Sequence["CropVerdict"]) -> tuple[Sentence, ...]:
    """Whether the measures of one crop say the same, tray by tray and medium by medium."""
    return tuple(_together(found))


def _together(found: Sequence["CropVerdict"]) -> Iterator[Sentence]:
    for one, other in combinations(found, 2):
        rank = _rank_correlation(one, other)
        values = {"one": kind_words(one.kind), "other": kind_words(other.kind)}
        if rank is not None:
            yield Sentence(
                "{one} and {other} put {trays} trays in like order with a rank correlation of {rho:+.2f} (1 "
                "alike, 0 unrelated).",
                trays=rank[1],
                rho=rank[0],
                **values,
            )
        for line in one.verdict.compared:
            twin = next((m for m in other.verdict.compared if m.medium == line.medium), None)
            if twin is None or not _contrary(line.outcome, twin.outcome):
                continue
            yield Sentence(
                "{one} and {other} say different things of {medium}: {first} and {second}. The one that was "
                "named beforehand decides.",
                medium=line.medium,
                first=outcome_words(line.outcome or Outcome.NOT_SHOWN),
                second=outcome_words(twin.outcome or Outcome.NOT_SHOWN),
                **values,
            )


def _contrary(one: Outcome | None, other: Outcome | None) -> bool:
    """Whether one says worse and the other does not."""
    told = {one, other}
    return Outcome.WORSE in told and bool(told & {Outcome.BETTER, Outcome.AS_GOOD, Outcome.AS_GOOD_LOWER})


def _rank_correlation(one: "CropVerdict", other: "CropVerdict") -> tuple[float, int] | None:
    from data.statistics.agreement import spearman

    first = {n.tray.id: n.value for n in one.numbers if n.value is not None}
    second = {n.tray.id: n.value for n in other.numbers if n.value is not None}
    both = sorted(first.keys() & second.keys())
    if len(both) < LEAST_TRAYS:
        return None
    rank = spearman([first[tray] for tray in both], [second[tray] for tray in both])
    return None if rank is None else (rank.rho, rank.n)


def kind_words(kind: MeasureKind) -> Sentence:
    """A measure."""
    match kind:
        case MeasureKind.SCORE:
            return Sentence("Canopy score")
        case MeasureKind.YIELD:
            return Sentence("Yield")
        case MeasureKind.EYE:
            return Sentence("Score by eye")
