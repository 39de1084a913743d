"""Apart: growing conditions that differ between what is compared, though no plan varies them.

In    the compared trays, the treatment of each, the newest plan
Out   which trays are compared at all; names of `CONDITIONS`; the caution as a `Sentence`
Not   how a condition stands (`alike.py`), what each treatment had of it (`data/report/conditions.py`)

A difference of media can come from such a condition just as well, whatever its interval says.
"""

from collections.abc import Iterable, Mapping, Sequence

from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.trial import Plan
from data.verdict.alike import Compared, Standing, compare_conditions
from data.verdict.conditionwords import CONDITION_WORDS, all_of
from data.verdict.traynumbers import TrayNumber

__all__ = ["apart_between", "apart_words", "counted_trays", "where_told"]


def counted_trays(numbers: Iterable[TrayNumber]) -> tuple[Tray, ...]:
    """Trays that have a number, each once, in order; all of them before any has one.

    A tray that failed says nothing of the others' growing conditions, so verdict and report doubt by these.
    """
    told = tuple(numbers)
    counted = [number for number in told if number.value is not None] or told
    return tuple({number.tray.id: number.tray for number in counted}.values())


def apart_between(
    trays: Sequence[Tray], treatments: Mapping[TrayId, str], plan: Plan | None
) -> tuple[str, ...]:
    """Conditions that differ between the treatments of these trays, and that no plan varies."""
    return _unplanned(compare_conditions(trays, treatments, plan), plan)


def _unplanned(compared: Iterable[Compared], plan: Plan | None) -> tuple[str, ...]:
    """Conditions that stand apart in any crop, without those that are varied or alike within each block."""
    of_name: dict[str, list[Compared]] = {}
    for one in compared:
        of_name.setdefault(one.name, []).append(one)
    varied = _varied(plan)
    return tuple(
        name
        for name, of_crops in of_name.items()
        if name not in varied and any(_is_doubtful(one) for one in of_crops)
    )


def _is_doubtful(one: Compared) -> bool:
    """Whether several treatments of a crop could differ by it."""
    return len(one.counts) > 1 and one.standing is Standing.APART and not one.by_block


def _varied(plan: Plan | None) -> set[str]:
    """Conditions that the plan varies; a setting of whole shelves takes the shelf with it."""
    if plan is None:
        return set()
    return {factor.name for factor in plan.factors} | ({"shelf"} if plan.shelf_factor is not None else set())


def apart_words(apart: Sequence[str], *, planned: bool) -> tuple[Sentence, ...]:
    """The caution; empty where nothing stands apart. `planned`: whether the trial has a plan."""
    if not apart:
        return ()
    conditions = all_of([CONDITION_WORDS[name] for name in apart])
    if planned:
        return (
            Sentence(
                "Not alike, though the plan does not vary it: {conditions}. A difference can come from that "
                "as well as from what was to be compared.",
                conditions=conditions,
            ),
        )
    return (
        Sentence(
            "Not alike, though no plan was made to vary it: {conditions}. A difference can come from that as "
            "well as from the medium.",
            conditions=conditions,
        ),
    )


def where_told(apart: Sequence[str]) -> tuple[Sentence, ...]:
    """Where to read what each had of it; empty where nothing stands apart."""
    return (Sentence("The report of the trial tells what each had of it."),) if apart else ()
