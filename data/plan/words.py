"""Plan words: what a plan can show and what it takes, in sentences that a grower can act on.

In    a draft or a plan
Out   `Sentence`s: chances, trays that are enough, what six trays cannot show, cost and room, whole shelves
Not   the reckoning (`statistics/power.py`, `blocks.py`)
"""

from dataclasses import replace
from math import floor

from data.plan.blocks import Cost, cost_of
from data.plan.draft import Draft, camera_sd_of, design_of, treatments_of, unit_of
from data.plan.spread import spread_limits
from data.sentence import Sentence
from data.statistics.power import (
    SPREADS,
    blocks_needed,
    least_margin,
    power,
    set_power,
    sets_needed,
    shelf_power,
)
from data.trial import KeptPlan, Plan, Question

__all__ = [
    "camera_words", "chance_words", "cost_words", "enough_words", "kept_words", "shelf_chance",
    "shelf_words", "six_words", "spread_words",
]  # fmt: skip

WANTED = 0.8
SIX = 6


def _pct(chance: float) -> str:
    """A chance in %, never rounded up to certainty."""
    return f"{floor(chance * 100):d} %" if chance > 0.99 else f"{chance * 100:.0f} %"


def _number(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")


def chance_words(draft: Draft) -> Sentence:
    """What the trays planned now can show."""
    design, unit = design_of(draft), unit_of(draft.measure)
    chances = [power(design, draft.margin, draft.spread.sd * times) for times in SPREADS]
    if any(chance is None for chance in chances):
        return Sentence("One tray of each: you will see numbers, and no verdict.")
    best, likely, worst = (_pct(chance) for chance in chances if chance is not None)
    values: dict[str, object] = {
        "n": draft.trays, "what": Sentence("medium") if draft.other is None else Sentence("treatment"),
        "margin": _number(draft.margin), "unit": unit, "likely": likely, "worst": worst, "best": best,
    }  # fmt: skip
    if draft.question is Question.BEST:
        return Sentence(
            "{n} trays of each {what} on each crop: if two differ by {margin} {unit}, the chance to tell "
            "which is better is {likely} ({worst} to {best}, as your trays spread more or less than "
            "assumed).",
            **values,
        )
    return Sentence(
        "{n} trays of each {what} on each crop: if a new one truly is as good, the chance to show it within "
        "{margin} {unit} is {likely} ({worst} to {best}, as your trays spread more or less than assumed).",
        **values,
    )


def enough_words(draft: Draft) -> Sentence:
    """How many trays are enough."""
    needed = [
        blocks_needed(design_of(draft), draft.margin, draft.spread.sd * times, WANTED) for times in SPREADS
    ]
    low, likely, high = needed
    if likely is None:
        return Sentence(
            "More than 60 trays of each would be needed for 80 %: choose a wider margin, or make your trays "
            "more alike."
        )
    if high is None:
        return Sentence(
            "{likely} trays of each are enough for 80 % ({low} if your trays lie closer together, more than "
            "60 if they spread more).",
            likely=likely, low=low,
        )  # fmt: skip
    return Sentence(
        "{likely} trays of each are enough for 80 % ({low} if your trays lie closer together, {high} if they "
        "spread more).",
        likely=likely, low=low, high=high,
    )  # fmt: skip


def six_words(draft: Draft) -> Sentence | None:
    """What six trays of each can and cannot show, before anything is sown."""
    design = replace(design_of(draft), blocks=SIX, treatments=max(2, len(treatments_of(draft))))
    least = least_margin(design, draft.spread.sd, WANTED)
    if least is None:
        return None
    unit = unit_of(draft.measure)
    if design.all_pairs:
        return Sentence(
            "Six trays of each can tell apart what differs by {least} {unit} or more.",
            least=_number(least), unit=unit,
        )  # fmt: skip
    if least > draft.margin:
        return Sentence(
            "Six trays of each show that a medium is as good only within {least} {unit}. For your margin of "
            "{margin} they are too few: the answer would most likely be: not shown.",
            least=_number(least), unit=unit, margin=_number(draft.margin),
        )  # fmt: skip
    return Sentence(
        "Six trays of each show that a medium is as good within {least} {unit}: enough for your margin of "
        "{margin}.",
        least=_number(least), unit=unit, margin=_number(draft.margin),
    )  # fmt: skip


def spread_words(draft: Draft) -> Sentence:
    """Where the spread comes from."""
    spread, unit = draft.spread, unit_of(draft.measure)
    if spread.df is None:
        return Sentence(
            "Assumed: trays of one kind, side by side, lie about {sd} {unit} apart (standard deviation). "
            "This is {source}. Look at the three curves: they stand for 0.7, 1 and 1.4 times as much.",
            sd=_number(spread.sd), unit=unit, source=spread.source,
        )  # fmt: skip
    low, high = spread_limits(spread.sd, spread.df)
    return Sentence(
        "Learned from {source}: trays of one kind, side by side, lie {sd} {unit} apart (standard deviation; "
        "the true one between {low} and {high} with 95 %). The three curves stand for 0.7, 1 and 1.4 times "
        "as much.",
        source=spread.source, sd=_number(spread.sd), unit=unit, low=_number(low), high=_number(high),
    )  # fmt: skip


def camera_words(draft: Draft) -> Sentence | None:
    """That photos of two media are not alike to the camera; None where photos or media are not compared."""
    sd = camera_sd_of(draft)
    if not sd:
        return None
    return Sentence(
        "Reckoned in: the camera may see two media {sd} points apart that are covered alike; more trays do "
        "not help against that.",
        sd=_number(sd),
    )


def shelf_words(draft: Draft) -> tuple[Sentence, ...]:
    """What it takes to test a setting of whole shelves, and what the same shelves say of the media.

    Shelves are assumed to spread as much as trays do: common practice while nothing is known. Empty where no
    setting is one of whole shelves.
    """
    other = draft.other
    if other is None or not other.by_shelf:
        return ()
    what, settings = other.name, len(other.levels)
    chance = shelf_chance(draft, draft.trays)
    if chance is None:
        return (
            Sentence(
                "The {what} is set for whole shelves, so shelves are what is compared, not trays. With one "
                "set of shelves it cannot be tested.",
                what=what,
            ),
        )
    needed = sets_needed(lambda sets: shelf_chance(draft, sets), WANTED)
    if needed is None:
        first = Sentence(
            "The {what} is set for whole shelves, so shelves are what is compared, not trays. Your {n} sets "
            "of shelves show it with a chance of {chance}; 60 sets would not be enough for 80 %.",
            what=what, n=draft.trays, chance=_pct(chance),
        )  # fmt: skip
    else:
        first = Sentence(
            "The {what} is set for whole shelves, so shelves are what is compared, not trays. Your {n} sets "
            "of {settings} shelves show it with a chance of {chance}; {needed} sets are enough for 80 %, if "
            "shelves spread as much as trays do.",
            what=what, n=draft.trays, settings=settings, chance=_pct(chance), needed=needed,
        )  # fmt: skip
    within = _within_words(draft)
    return (first,) if within is None else (first, within)


def _within_words(draft: Draft) -> Sentence | None:
    """Media stand side by side on every shelf."""
    chance = _set_chance(draft, draft.trays, shelf_sd=0.0) if len(draft.media) > 1 else None
    if chance is None:
        return None
    return Sentence(
        "The media stand side by side on every shelf and are compared there, set by set: for them the chance "
        "is {chance}.",
        chance=_pct(chance),
    )


def shelf_chance(draft: Draft, sets: int, times: float = 1.0) -> float | None:
    """The chance of so many sets of shelves, trays and shelves spreading `times` as much as assumed."""
    assert draft.other is not None
    sd = draft.spread.sd * times
    if len(draft.media) > 1:
        return _set_chance(draft, sets, times, shelf_sd=sd)
    best = draft.question is Question.BEST
    return shelf_power(sets, len(draft.other.levels), 1, draft.margin, sd, sd, all_pairs=best)


def _set_chance(draft: Draft, sets: int, times: float = 1.0, *, shelf_sd: float) -> float | None:
    return set_power(
        sets, len(treatments_of(draft)), draft.margin, draft.spread.sd * times, shelf_sd,
        camera_sd=camera_sd_of(draft), all_pairs=draft.question is Question.BEST,
    )  # fmt: skip


def cost_words(plan: Plan) -> tuple[Sentence, ...]:
    """Trays, room, seed and days."""
    cost = cost_of(plan)
    told = [_room_words(cost)]
    for crop, grams in cost.seed_g.items():
        if grams is not None:
            told.append(Sentence("{grams:.0f} g of {crop} seed.", grams=grams, crop=crop))
        else:
            told.append(Sentence("Seed of {crop}: nobody has said how much goes on a tray.", crop=crop))
    if cost.begins is not None and cost.ends is not None:
        told.append(
            Sentence(
                "From {begins} to {ends}, {days} days.",
                begins=_day(cost.begins),
                ends=_day(cost.ends),
                days=(cost.ends - cost.begins).days,
            )
        )
    return tuple(told)


def _room_words(cost: Cost) -> Sentence:
    if cost.rounds > 1:
        return Sentence(
            "{trays} trays in {rounds} rounds of sowing; {most} places on the shelves at the same time.",
            trays=cost.trays, rounds=cost.rounds, most=cost.most_at_once,
        )  # fmt: skip
    return Sentence("{trays} trays, sown on one day, each on its own place.", trays=cost.trays)


def kept_words(kept: KeptPlan) -> Sentence:
    """When a plan was kept, and whether that was before sowing."""
    day = f"{kept.kept_at.day} {kept.kept_at:%B %Y}"
    if kept.first_sown_at is None:
        return Sentence("Kept on {day}, nothing is sown yet.", day=day)
    if not kept.after_sowing:
        return Sentence("Kept on {day}, before the first tray was sown.", day=day)
    return Sentence(
        "Kept on {day}, after the first tray was sown: the verdict says so. Reason: {why}",
        day=day, why=kept.why or Sentence("none given"),
    )  # fmt: skip


def _day(day: object) -> str:
    return f"{day:%d %B %Y}".lstrip("0")
