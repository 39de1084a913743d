"""Draw book: every drawing of a trial's places, and the sowing of its trays.

In    a plan that was kept; a seed, or places that were drawn on paper
Out   kept drawings, oldest first; trays with codes, tags, blocks and places
Not   plans (`planbook.py`), how places are drawn (`plan/drawing.py`), reading (`planreader.py`)

Nothing is overwritten: a new drawing stands beside the old, in order of time. How places are drawn comes in
with the first of them: the first look list is read without.
"""

from collections.abc import Callable, Sequence
from datetime import date, datetime, time
from secrets import randbelow
from typing import TYPE_CHECKING, TypedDict

from data.chapters.planreader import PlanReader, in_order
from data.errors import NoLongerThere, ReasonWanted, StrangeWatering, TagsUsedUp
from data.growing.conditions import Crop, Medium, from_defaults
from data.records import NewTray, Tray, TrayId
from data.tables import planrows
from data.tables.journal import Recorder

if TYPE_CHECKING:
    from data.plan.drawing import Draw, DrawId, Filled, KeptDraw, Place
    from data.trial import Plan, PlanId

__all__ = ["MORNING", "SEEDS", "DrawBook", "unsown"]

SEEDS = 2**31 - 1
MORNING = time(9)  # when trays are sown, unless somebody says otherwise


class Taken(TypedDict):
    """What a new drawing has to leave alone."""

    kept: "tuple[Place, ...]"
    taken_tags: tuple[int, ...]
    taken_codes: tuple[str, ...]
    promised_tags: tuple[int, ...]


class DrawBook(PlanReader):
    """Which tray stands where."""

    # --- drawings

    def draw_places(
        self, plan_id: "PlanId", *, seed: int | None = None, why: str = "", at: datetime | None = None
    ) -> "KeptDraw":
        """Draw the places of a plan by lot and keep them; blocks whose trays are sown stay as they stand.

        Raises
        ------
        ReasonWanted
            If these places were drawn before and `why` is empty.
        TagsUsedUp
            If more trays stand at the same time than there are free tags.
        """
        from data.plan.drawing import draw_trial

        seed = 1 + randbelow(SEEDS) if seed is None else seed

        def drawn(plan: "Plan", taken: Taken) -> "Draw":
            return draw_trial(plan, seed, **taken)

        return self._keep_drawn(plan_id, drawn, why, at)

    def enter_places(
        self, plan_id: "PlanId", filled: "Filled", *, why: str = "", at: datetime | None = None
    ) -> "KeptDraw":
        """Keep places that were drawn on paper, as `read_places` read them; seed 0 says so for good.

        Raises
        ------
        ReasonWanted, TagsUsedUp
            As for `draw_places`.
        """
        from data.plan.drawing import Draw, placed

        def entered(plan: "Plan", taken: Taken) -> Draw:
            return Draw(seed=0, places=placed(plan, filled, **taken))

        return self._keep_drawn(plan_id, entered, why, at)

    def _keep_drawn(
        self, plan_id: "PlanId", draws: "Callable[[Plan, Taken], Draw]", why: str, at: datetime | None
    ) -> "KeptDraw":
        from data.plan.drawing import NoTagsLeft

        kept = self.plan(plan_id)
        before = self.draws(kept.plan.trial)
        if before and before[-1].plan_id != plan_id:  # the new version says why
            why = why or kept.why
        if before and not why.strip():
            raise ReasonWanted(self.folder, what=kept.plan.trial)
        growing = self.trays()
        taken = Taken(
            kept=self._standing(kept.plan, before),
            taken_tags=tuple(tray.tag_number for tray in growing if tray.tag_number is not None),
            taken_codes=tuple(tray.code for tray in growing),
            promised_tags=tuple(
                place.tag_number
                for trial in self.trials()
                if trial != kept.plan.trial
                for place in self._waiting(trial)
            ),
        )
        try:
            draw = draws(kept.plan, taken)
        except NoTagsLeft as error:
            raise TagsUsedUp(self.folder) from error
        self.keep_draw(plan_id, draw, why=why, at=at)
        return self.draws(kept.plan.trial)[-1]

    def keep_draw(
        self, plan_id: "PlanId", draw: "Draw", *, why: str = "", at: datetime | None = None
    ) -> None:
        """Keep a drawing; `draw_places` makes one, `enter_places` takes one from paper."""
        from data.plan.drawing import draw_text

        trial = self.plan(plan_id).plan.trial
        values = {
            "plan": plan_id,
            "seed": draw.seed,
            "body": draw_text(draw),
            "drawn_at": in_order(at or self.now(), (kept.drawn_at for kept in self.draws(trial))),
            "why": why.strip(),
        }
        text = f"places of {trial} drawn" if draw.seed else f"places of {trial} entered by hand"

        def change(recorder: Recorder) -> None:
            recorder.insert("draw", values)

        self._change(text, change)

    def _standing(self, plan: "Plan", before: "Sequence[KeptDraw]") -> "tuple[Place, ...]":
        """Places of the last drawing in blocks that were sown already."""
        if not before:
            return ()
        sown = self.standing_blocks(plan.trial)
        return tuple(place for place in before[-1].draw.places if place.block in sown)

    # --- sowing

    def trays_to_sow(self) -> int:
        """Trays that are drawn and not sown yet, of the newest drawing of every trial."""
        return sum(len(self._waiting(trial)) for trial in self.trials())

    def _waiting(self, trial: str) -> "tuple[Place, ...]":
        """Places of a trial's newest drawing that are not sown yet."""
        draws = self.draws(trial)
        return unsown(draws[-1].draw, self.trial_trays(trial)) if draws else ()

    def sow_trial(self, draw_id: "DrawId", *, sown_at: datetime | None = None) -> tuple[TrayId, ...]:
        """Add the trays of the next round not sown yet, in one step of undo; raises `StrangeWatering`.

        Parameters
        ----------
        sown_at : when; None is the morning of the day that was planned (`morning_of`).
        """
        kept = self._draw(draw_id)
        plan = self.plan(kept.plan_id).plan
        waiting = unsown(kept.draw, self.trial_trays(plan.trial))
        if not waiting:
            return ()
        turn = min(place.round for place in waiting)
        return self.add_trays(
            self._new_tray(plan, place, sown_at or self.morning_of(draw_id, place.sow_on))
            for place in waiting
            if place.round == turn
        )

    def morning_of(self, draw_id: "DrawId", day: date) -> datetime:
        """When trays of a drawing are taken to be sown on a day of which nobody has said the hour.

        Nobody sows by a drawing before it is made: a plan of that very morning is no plan after sowing.
        """
        drawn_at = self._draw(draw_id).drawn_at
        morning = datetime.combine(day, MORNING)
        return max(morning, drawn_at) if drawn_at.date() == day else morning

    def _draw(self, draw_id: "DrawId") -> "KeptDraw":
        row = self._row(planrows.TRIAL_OF_DRAW, draw=draw_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return next(kept for kept in self.draws(row["trial"]) if kept.id == draw_id)

    def _new_tray(self, plan: "Plan", place: "Place", sown_at: datetime) -> NewTray:
        """What the grower has said of crop and medium, over it what the plan says."""
        from data.plan.sowntray import new_tray
        from data.trial import MEDIUM, WATERINGS

        settings = dict(plan.same) | dict(plan.treatment(place.treatment).settings)
        watering = settings.get("watering")
        if watering not in (None, *WATERINGS):  # kept before this was asked
            raise StrangeWatering(self.folder, trial=plan.trial, watering=watering)
        medium = self.medium(settings[MEDIUM]) or Medium(name=settings[MEDIUM])
        crop = self.crop(place.crop) or Crop(name=place.crop)
        return new_tray(plan, place, sown_at, from_defaults(crop, medium, sown_at, place.code))


def unsown(draw: "Draw", trays: Sequence[Tray]) -> "tuple[Place, ...]":
    """The places of a drawing that have no tray yet."""
    codes = {(tray.block, tray.code) for tray in trays}
    tags = {(tray.block, tray.tag_number) for tray in trays}  # a tray may have been called otherwise since
    return tuple(
        place
        for place in draw.places
        if (place.block, place.code) not in codes and (place.block, place.tag_number) not in tags
    )
