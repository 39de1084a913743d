"""Draft needs: what the grower still has to say before a step of the plan is done.

In    a draft
Out   `Sentence`s, one for each thing that is lacking; none where the step is done
Not   the choices (`draft.py`), the plan that follows (`draftplan.py`)
"""

from data.plan.blocks import WhyNoBlocks
from data.plan.draft import Draft, Step, layout_of, settings_of, size_of, treatments_of
from data.sentence import Sentence
from data.trial import WATERINGS, Question

__all__ = ["lacking"]


def lacking(draft: Draft, step: int) -> tuple[Sentence, ...]:
    """What has to be said before the step is done; nothing where it is."""
    match step:
        case Step.QUESTION:
            return _lacking_question(draft)
        case Step.VARIES:
            return _lacking_treatments(draft)
        case Step.TRAYS:
            few = Sentence("Plan at least two trays of each: with one, nothing can be told from chance.")
            return (few,) if draft.trays < 2 else ()
        case Step.BLOCKS:
            return _lacking_blocks(draft)
        case _:
            return ()


def _lacking_question(draft: Draft) -> tuple[Sentence, ...]:
    found = []
    if not draft.trial.strip():
        found.append(Sentence("Give the trial a name."))
    if draft.margin <= 0:
        found.append(Sentence("The margin must be more than nothing: no trial can show that two are equal."))
    return tuple(found)


def _lacking_treatments(draft: Draft) -> tuple[Sentence, ...]:
    found = []
    if not draft.crops:
        found.append(Sentence("Choose at least one crop."))
    if not draft.media:
        found.append(Sentence("Choose the media."))
    elif len(treatments_of(draft)) < 2:
        found.append(Sentence("Choose a second medium, or something else that varies."))
    elif draft.trusted not in draft.media:
        found.append(Sentence("Say which medium you trust: the others are held against it."))
    if draft.question is Question.GAP and draft.other is None:
        found.append(Sentence("Say what shall close the gap: feed, watering, another seating."))
    if draft.other is not None and len({*draft.other.levels, ""}) < 3:
        found.append(Sentence("Give {what} two different settings.", what=draft.other.name))
    return (*found, *_strange_watering(draft))


def _strange_watering(draft: Draft) -> tuple[Sentence, ...]:
    """A tray's watering has names in the book, and no tray could be sown with another one."""
    said = draft.other.levels if draft.other is not None and draft.other.name == "watering" else ()
    strange = [level for level in said if level and level not in WATERINGS]
    return tuple(
        Sentence(
            "Watering can vary between bottom, top and both; “{level}” is none of them. How much and how "
            "often is noted with each tray as water given.",
            level=level,
        )
        for level in strange
    )


def _lacking_blocks(draft: Draft) -> tuple[Sentence, ...]:
    if not draft.shelves:
        return (Sentence("Say which shelves the trial may use."),)
    layout = layout_of(draft)
    if layout.why_none is WhyNoBlocks.NO_SHELF:
        return (
            Sentence(
                "A block holds {n} trays, and no shelf has so many places: use a longer shelf, or plan fewer "
                "crops or media.",
                n=size_of(draft),
            ),
        )
    if layout.why_none is WhyNoBlocks.FEW_SHELVES:
        return (
            Sentence(
                "{what} is set for whole shelves: that cannot be tested with one shelf. It takes {n} shelves "
                "at the same time, one for each setting, and at least two such sets or rounds.",
                what=draft.other.name if draft.other else "",
                n=settings_of(draft),
            ),
        )
    return ()
