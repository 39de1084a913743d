"""Plan book: every plan of a trial that was kept.

In    a `Plan`, a reason
Out   kept versions, oldest first
Not   what is in a plan (`trial.py`), drawings of its places (`drawbook.py`), reading (`planreader.py`)

Nothing is overwritten: a changed plan is a new version with its reason. Versions are in order of time, so
that the one kept last counts where some came with another grower's book. What a plan is comes in with the
first of them: the first look list is read without.
"""

from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING, Any

from data.chapters.planreader import PlanReader, in_order
from data.errors import LevelIsFixed, NoLongerThere, ReasonWanted
from data.tables import noterows, planrows
from data.tables.journal import Recorder
from data.tables.rows import time_text

if TYPE_CHECKING:
    from data.trial import Plan, PlanId

__all__ = ["PlanBook"]


class PlanBook(PlanReader):
    """What was fixed of the trials of a book."""

    def keep_plan(self, plan: "Plan", why: str = "", *, at: datetime | None = None) -> "PlanId":
        """Keep a plan, with the date, as the first version of its trial or as a new one with its reason.

        A plan that is the same as the last version is not kept again.

        Raises
        ------
        ReasonWanted
            If the trial has a plan already and `why` is empty.
        LevelIsFixed
            If the plan names another confidence than verdicts have.
        """
        from data.plan.plantext import plan_text
        from data.trial import CONFIDENCE, PlanId

        if plan.level != CONFIDENCE:
            raise LevelIsFixed(self.folder, level=plan.level, fixed=CONFIDENCE)
        before = self.plans(plan.trial)
        if before and before[-1].plan == plan:
            return before[-1].id
        if before and not why.strip():
            raise ReasonWanted(self.folder, what=plan.trial)
        kept_at = in_order(at or self.now(), (kept.kept_at for kept in before))
        ids: list[int] = []

        def change(recorder: Recorder) -> None:
            trial = self._trial_of(recorder, plan, kept_at)
            values = {"trial": trial, "body": plan_text(plan), "kept_at": kept_at, "why": why.strip()}
            ids.append(recorder.insert("plan", values))

        self._change(f"plan of {plan.trial}", change)
        return PlanId(ids[0])

    def keep_score_rule(self, trial: str, score: Mapping[str, Any], why: str) -> "PlanId":
        """Keep other limits and weights of the canopy score: a new version of the plan, one step of undo.

        The drawing goes along with its own day and reason, since where trays stand does not change by it.

        Raises
        ------
        NoLongerThere
            If the trial has no plan.
        ReasonWanted
            If `why` is empty.
        """
        from data.plan.drawing import draw_text
        from data.plan.plantext import plan_text
        from data.trial import PlanId

        before = self.plans(trial)
        if not before:
            raise NoLongerThere(self.folder)
        plan = replace(before[-1].plan, score=dict(score))
        if plan == before[-1].plan:
            return before[-1].id
        if not why.strip():
            raise ReasonWanted(self.folder, what=trial)
        drawn = [kept for kept in self.draws(trial) if kept.plan_id == before[-1].id]
        at = in_order(self.now(), (kept.kept_at for kept in before))
        ids: list[int] = []

        def change(recorder: Recorder) -> None:
            row = self._trial_of(recorder, plan, at)
            values = {"trial": row, "body": plan_text(plan), "kept_at": at, "why": why.strip()}
            ids.append(recorder.insert("plan", values))
            for kept in drawn[-1:]:
                draw = {"seed": kept.draw.seed, "body": draw_text(kept.draw)}
                drawn_at = time_text(kept.drawn_at)
                recorder.insert("draw", {"plan": ids[0], **draw, "drawn_at": drawn_at, "why": kept.why})

        self._change(f"limits and weights of {trial}", change)
        return PlanId(ids[0])

    def _trial_of(self, recorder: Recorder, plan: "Plan", kept_at: str) -> int:
        """The trial's row, which follows its newest plan."""
        from data.trial import MeasureKind

        medium = plan.trusted_medium
        trusted = None
        if medium is not None:
            row = self._row(noterows.MEDIUM, name=medium)
            trusted = recorder.insert("medium", {"name": medium}) if row is None else int(row["id"])
        score = plan.measure(MeasureKind.SCORE)
        points = score.margin if score is not None and score.unit == "points" else None
        values = {
            "question": plan.words,
            "trusted": trusted,
            "margin_points": points,
            "margin_set_at": kept_at,
            "began_on": min((block.sow_on.isoformat() for block in plan.blocks), default=None),
        }
        row = self._row(planrows.TRIAL_ID, name=plan.trial)
        if row is None:
            return recorder.insert("trial", {"name": plan.trial} | values)
        recorder.update("trial", int(row["id"]), values)
        return int(row["id"])
