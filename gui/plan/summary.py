"""Plan summary: a plan and a drawing in labelled sentences, no Qt.

In    a plan, kept or still a draft; a trial as the book has it
Out   label and words of everything that is fixed
Not   showing them (`kept.py`, `places.py`)
"""

from data.desirability import MoldRule, rule_of
from data.plan.drawing import KeptDraw, window_counts
from data.plan.words import cost_words, kept_words
from data.trial import CropPlan, KeptPlan, MeasureKind, Plan, Question
from gui.language.spoken import day_words, filled, in_figures, spoken
from gui.language.words import translate
from gui.plan.reading import TrialReading

__all__ = ["draw_words", "plan_rows", "summary_of"]


def summary_of(trial: TrialReading) -> tuple[tuple[str, str], ...]:
    """Label and words of everything that was fixed, and when."""
    rows = [(translate("PlanSummary", "Kept"), spoken(kept_words(trial.kept))), *plan_rows(trial.kept.plan)]
    if len(trial.versions) > 1:
        rows.append(
            (translate("PlanSummary", "Versions"), "\n".join(_version_words(one) for one in trial.versions))
        )
    return tuple(rows)


def plan_rows(plan: Plan) -> tuple[tuple[str, str], ...]:
    """Label and words of everything that is fixed with a plan."""
    rows = (
        (translate("PlanSummary", "Question"), plan.words or _question(plan.question)),
        (
            translate("PlanSummary", "Varies"),
            "; ".join(f"{spoken(one.name)}: {', '.join(map(spoken, one.levels))}" for one in plan.factors),
        ),
        (translate("PlanSummary", "Trusted"), plan.trusted),
        (translate("PlanSummary", "Crops"), ", ".join(_crop_words(crop) for crop in plan.crops)),
        (translate("PlanSummary", "Compared"), _measure_words(plan)),
        (translate("PlanSummary", "Canopy score"), _score_words(plan)),
        (translate("PlanSummary", "Trays"), _tray_words(plan)),
        (
            translate("PlanSummary", "The same"),
            ", ".join(f"{spoken(name)}: {spoken(level)}" for name, level in plan.same.items()),
        ),
        (translate("PlanSummary", "Takes"), " ".join(map(spoken, cost_words(plan)))),
        (translate("PlanSummary", "Repeats"), plan.copied_from),
    )
    return tuple((label, words) for label, words in rows if words)


def _question(question: Question) -> str:
    match question:
        case Question.BEST:
            return translate("PlanSummary", "Which of these is best?")
        case Question.GAP:
            return translate("PlanSummary", "Does the change close the gap to the trusted one?")
        case _:
            return translate("PlanSummary", "Is the new one as good as the trusted one?")


def _crop_words(crop: CropPlan) -> str:
    if crop.blackout_days is None:
        words = translate("PlanSummary", "{crop} (read on day {day})")
    elif crop.blackout_days == 0:
        words = translate("PlanSummary", "{crop} (without blackout, read on day {day})")
    else:
        words = translate("PlanSummary", "{crop} (blackout in days: {dark}, read on day {day})")
    return words.format(crop=crop.name, day=crop.read_on_day, dark=in_figures(crop.blackout_days))


def _measure_words(plan: Plan) -> str:
    first, *others = plan.measures
    words = translate("PlanSummary", "{measure}, margin {margin:g} {unit}, one-sided 95 %")
    told = filled(words, measure=first.kind, margin=first.margin, unit=spoken(first.unit))
    more = [f"{spoken(one.kind)} ({in_figures(one.margin)} {spoken(one.unit)})" for one in others]
    return (
        translate("PlanSummary", "{first}; beside it {others}").format(first=told, others=", ".join(more))
        if more
        else told
    )


def _score_words(plan: Plan) -> str:
    """Weights of its parts, and what mold does."""
    if not plan.score or plan.measure(MeasureKind.SCORE) is None:
        return ""
    try:
        rule = rule_of(plan.score)
    except ValueError:
        return ""
    weights = ", ".join(
        f"{spoken(name)} {in_figures(part.weight)}" for name, part in rule.parts.items() if part.weight
    )
    mold = {
        MoldRule.ZERO: translate("PlanSummary", "a tray with confirmed mold scores nothing"),
        MoldRule.BY_AREA: translate("PlanSummary", "a tray with confirmed mold loses points by its area"),
        MoldRule.APART: translate(
            "PlanSummary", "a tray with confirmed mold gets no score and is counted apart"
        ),
    }[rule.mold]
    words = translate("PlanSummary", "weights: {weights}; coverage and uniformity of the growing bed; {mold}")
    return words.format(weights=weights, mold=mold)


def _tray_words(plan: Plan) -> str:
    names = "; ".join(spoken(block.name) for block in plan.blocks)
    words = (
        translate("PlanSummary", "{each} of each treatment on each crop, {all} in all, in blocks: {names}")
        if len(plan.factors) > 1
        else translate("PlanSummary", "{each} of each medium on each crop, {all} in all, in blocks: {names}")
    )
    return words.format(each=plan.trays_per_treatment, all=plan.trays, names=names)


def _version_words(kept: KeptPlan) -> str:
    day = day_words(kept.kept_at)
    why = kept.why or translate("PlanSummary", "first plan")
    return translate("PlanSummary", "{n}: {day}, {why}").format(n=kept.version, day=day, why=why)


def draw_words(trial: TrialReading, draw: KeptDraw) -> str:
    """How the places were drawn."""
    day = day_words(draw.drawn_at)
    seed = draw.draw.seed
    how = (
        translate("PlanSummary", "by lot (begun with number {seed})").format(seed=seed)
        if seed
        else translate("PlanSummary", "on paper, entered by hand")
    )
    counts = window_counts(trial.kept.plan, draw.draw.places)
    ends = "; ".join(f"{spoken(name)}: {count}" for name, count in counts.items())
    told = translate("PlanSummary", "Drawn {how} on {day}. At the window end: {ends}.").format(
        how=how, day=day, ends=ends
    )
    return f"{told} {draw.why}" if draw.why else told
