"""Beforehand: what was fixed before sowing, what was not, and what was changed afterwards, as sentences.

In    a verdict, its measure, the versions of the plan, or when a margin was set without one
Out   `Sentence`s that stand beside the verdict
Not   the verdict's own cautions (`notes.py`)
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import pairwise

from data.desirability import kept_rule
from data.sentence import Sentence
from data.trial import CONFIDENCE, KeptPlan, Measure, MeasureKind, Plan
from data.verdict import Verdict
from data.verdict.measurewords import kind_words

__all__ = ["MarginSaid", "beforehand"]


@dataclass(frozen=True, slots=True, kw_only=True)
class MarginSaid:
    """When the margin of a trial without a plan was set, and what there was by then."""

    set_at: datetime | None  # None: nobody knows
    first_sown_at: datetime | None
    first_photo_at: datetime | None  # of those that are compared


def beforehand(
    versions: Sequence[KeptPlan],
    measure: Measure,
    verdict: Verdict,
    *,
    crop: str,
    day: int | None,
    fixed: bool,
    day_fixed: bool,
    margin_said: MarginSaid | None = None,
) -> Iterator[Sentence]:
    """What was fixed before sowing and what was not; what was changed later of all that decides an answer."""
    yield from _trusted(versions, verdict)
    yield from _margin_taken(measure, verdict, fixed=fixed)
    if measure.kind is MeasureKind.SCORE and day is not None and not day_fixed:
        yield Sentence(
            "No day was fixed before sowing; day {day} was taken, on which most trays have a photo.", day=day
        )
    if versions:
        yield from _of_the_plan(versions[-1].plan, measure.kind)
    yield from _changes(versions, measure.kind)
    if margin_said is not None:
        yield _said_words(margin_said, measure)
    yield from _terms_changes(versions, measure.kind, crop)


def _trusted(versions: Sequence[KeptPlan], verdict: Verdict) -> Iterator[Sentence]:
    if not verdict.trusted:
        yield Sentence(
            "No medium is named as the trusted one: name it on Materials, or plan the trial. Then the others "
            "are held against it."
        )
    elif not versions:
        yield Sentence(
            "No plan was kept before sowing: {trusted} is the one that was named among the media.",
            trusted=verdict.trusted,
        )


def _margin_taken(measure: Measure, verdict: Verdict, *, fixed: bool) -> Iterator[Sentence]:
    if not fixed:
        yield Sentence(
            "No margin was set before sowing; the usual {margin} was taken.",
            margin=_margin(measure.margin, measure.unit),
        )
    if measure.unit == "%" and verdict.has_trusted:
        yield Sentence(
            "The margin of {share:g} % of the mean of {trusted} is {margin:.1f} g in this trial.",
            share=measure.margin,
            trusted=verdict.trusted,
            margin=verdict.margin,
        )


def _of_the_plan(plan: Plan, kind: MeasureKind) -> Iterator[Sentence]:
    """What it says that cannot be read, or does not count."""
    if kind is MeasureKind.SCORE and kept_rule(plan.score) is None:
        yield Sentence(
            "The limits and weights of the canopy score that this plan keeps cannot be read; the usual ones "
            "were taken. Set them anew beside the verdict."
        )
    if plan.level != CONFIDENCE:
        yield Sentence(
            "The plan names a confidence of {level:.1f} %; the intervals here are made for {fixed:.0f} %.",
            level=100 * plan.level,
            fixed=100 * CONFIDENCE,
        )


def _said_words(said: MarginSaid, measure: Measure) -> Sentence:
    """A margin without a plan, honestly dated."""
    margin = _margin(measure.margin, measure.unit)
    if said.set_at is None:
        return Sentence(
            "A margin of {margin} was set, and nobody knows when: read this verdict with care.",
            margin=margin,
        )
    values = {"margin": margin, "day": _day(said.set_at)}
    if said.first_sown_at is None or said.set_at <= said.first_sown_at:
        return Sentence("The margin of {margin} was set on {day}, before the first tray was sown.", **values)
    if said.first_photo_at is None or said.set_at < said.first_photo_at:
        return Sentence(
            "The margin of {margin} was set on {day}, after the first tray was sown, but before any photo "
            "that is compared was taken.",
            **values,
        )
    return Sentence(
        "The margin of {margin} was set on {day}, when photos that are compared had been taken already: read "
        "this verdict with care.",
        **values,
    )


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
        if kind is not MeasureKind.SCORE or not new.after_sowing:
            continue
        if kept_rule(old.plan.score) != kept_rule(new.plan.score):
            yield Sentence(
                "Limits and weights of the canopy score were changed after sowing, on {day} ({why}): read "
                "this verdict with care.",
                day=_day(new.kept_at),
                why=new.why,
            )


def _terms_changes(versions: Sequence[KeptPlan], kind: MeasureKind, crop: str) -> Iterator[Sentence]:
    """Other terms that were changed after sowing: each gives a choice to whoever has seen the trays."""
    for old, new in pairwise(versions):
        if not new.after_sowing:
            continue
        said: dict[str, object] = {"on": _day(new.kept_at), "why": new.why}
        before, now = _read_on(old, crop), _read_on(new, crop)
        if kind is MeasureKind.SCORE and None not in (before, now) and before != now:
            yield Sentence(
                "The day on which {crop} is read was changed after sowing, on {on}, from day {old} to day "
                "{new} ({why}): read this verdict with care.",
                crop=crop, old=before, new=now, **said,
            )  # fmt: skip
        if old.plan.trusted != new.plan.trusted:
            yield Sentence(
                "What the others are held against was changed after sowing, on {on}, from {old} to {new} "
                "({why}): read this verdict with care.",
                old=old.plan.trusted, new=new.plan.trusted, **said,
            )  # fmt: skip
        if old.plan.primary.kind is not new.plan.primary.kind:
            yield Sentence(
                "The measure that decides was changed after sowing, on {on}, from {old} to {new} ({why}): "
                "read this verdict with care.",
                old=kind_words(old.plan.primary.kind), new=kind_words(new.plan.primary.kind), **said,
            )  # fmt: skip
        if old.plan.trays_per_treatment != new.plan.trays_per_treatment:
            yield Sentence(
                "How many trays of each are planned was changed after sowing, on {on}, from {old} to {new} "
                "({why}): read this verdict with care.",
                old=old.plan.trays_per_treatment, new=new.plan.trays_per_treatment, **said,
            )  # fmt: skip


def _read_on(kept: KeptPlan, crop: str) -> int | None:
    return next((one.read_on_day for one in kept.plan.crops if one.name == crop), None)


def _margin(margin: float, unit: str) -> Sentence:
    if unit == "%":
        return Sentence("{margin:g} %", margin=margin)
    return Sentence("{margin:g} points", margin=margin)


def _day(at: datetime) -> str:
    return f"{at.day} {at:%B %Y}"
