"""Planned: what a trial was to answer, as blocks of its report.

In    a trial's plans, oldest first
Out   heading, sentences, and the table of what was fixed
Not   the plan's own words (`plan/words.py`), whether it was kept to (`conditions.py`, `beside.py`)
"""

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from data.plan.words import kept_words
from data.report.content import Block, Grid, Heading, Paragraph
from data.sentence import Sentence
from data.trial import KeptPlan, Plan
from data.verdict.conditionwords import all_of, level_words
from data.verdict.measurewords import kind_words

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["plan_blocks"]


def plan_blocks(book: "Book", trial: str, plans: Sequence[KeptPlan]) -> Iterator[Block]:
    """What was asked; without a plan, or without a trial, a sentence that says so."""
    yield Heading(text=Sentence("What was asked"))
    if not trial:
        yield Paragraph(text=Sentence("This book has no trial. Plan one, and its report will stand here."))
    elif not plans:
        yield _no_plan(margin_set=book.trial_said(trial).margin_points is not None)
    else:
        yield from _kept(plans)
        yield _fixed(plans[-1])


def _no_plan(*, margin_set: bool) -> Paragraph:
    if not margin_set:
        return Paragraph(text=Sentence("No plan was kept for this trial: nothing was fixed beforehand."))
    return Paragraph(
        text=Sentence(
            "No plan was kept for this trial. A margin was set; the answers say when. Nothing else was "
            "fixed beforehand."
        )
    )


def _kept(plans: Sequence[KeptPlan]) -> Iterator[Block]:
    """The plan in words, and each time it was changed."""
    first, last = plans[0], plans[-1]
    if last.plan.words:
        yield Paragraph(text=last.plan.words)
    yield Paragraph(text=kept_words(first))
    for kept in plans[1:]:
        changed = Sentence(
            "The plan was changed later. {when} Version {version}: {why}.",
            when=kept_words(kept),
            version=kept.version,
            why=kept.why.rstrip(".") or "-",
        )
        yield Paragraph(text=changed, role="caution" if kept.after_sowing else "")


def _fixed(last: KeptPlan) -> Grid:
    late = last.after_sowing
    fixed = Sentence("Fixed only after sowing") if late else Sentence("Fixed beforehand")
    return Grid(
        name=Sentence("What was fixed"),
        head=(fixed, Sentence("As planned")),
        rows=tuple(_rows(last.plan)),
        wide=(0, 1),
        spare=1,
    )


def _rows(plan: Plan) -> Iterator[tuple[str, str]]:
    yield Sentence("Trusted"), plan.trusted
    yield Sentence("Against it"), ", ".join(plan.new_treatments)
    for crop in plan.crops:
        read_on = Sentence("{crop}, read on day {day}", crop=crop.name, day=crop.read_on_day)
        yield Sentence("Crop"), read_on
    for number, measure in enumerate(plan.measures):
        yield (
            Sentence("Measure that decides") if number == 0 else Sentence("Beside it"),
            Sentence(
                "{measure}, margin {margin:g} {unit}",
                measure=kind_words(measure.kind),
                margin=measure.margin,
                unit=measure.unit,
            ),
        )
    if plan.same:
        yield Sentence("The same for all"), all_of([level_words(*one) for one in plan.same.items()])
    yield (
        Sentence("Trays"),
        Sentence(
            "{trays} of each treatment and crop, in blocks: {blocks}",
            trays=plan.trays_per_treatment,
            blocks="; ".join(block.name for block in plan.blocks),
        ),
    )
