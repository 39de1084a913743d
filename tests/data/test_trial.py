"""A plan is fixed before sowing."""

from dataclasses import replace

from data.plan.words import kept_words
from data.sentence import Sentence
from data.trial import (
    Factor,
    KeptPlan,
    PlanId,
    crossed,
    treatment_of,
)
from tests.data.builders import NOON, SOWN, a_kept_tray
from tests.data.plans import MEDIA, a_plan

FEED = Factor(name="feed", levels=("none", "weekly"))


def test_what_varies_is_crossed() -> None:
    names = [treatment.name for treatment in crossed((MEDIA, FEED))]

    assert names == [
        "peat mix, no feed", "peat mix, feed weekly", "coir, no feed", "coir, feed weekly",
        "fibre mat, no feed", "fibre mat, feed weekly",
    ]  # fmt: skip


def test_nothing_that_varies_gives_no_treatment() -> None:
    assert crossed(()) == ()


def test_a_tray_is_of_the_treatment_that_all_its_settings_say() -> None:
    plan = a_plan(factors=(MEDIA, FEED))
    tray = a_kept_tray(medium="coir", feed="weekly")

    assert treatment_of(tray, plan) == "coir, feed weekly"
    assert treatment_of(replace(tray, feed=None), plan) is None


def test_a_heat_mat_is_a_setting_in_words() -> None:
    plan = a_plan(factors=(Factor(name="heat mat", levels=("with heat mat", "without heat mat")),))

    assert treatment_of(a_kept_tray(heat_mat=False), plan) == "without heat mat"


def test_trays_are_blocks_times_treatments_times_crops() -> None:
    plan = a_plan(blocks=3)

    assert (plan.trays_per_treatment, plan.trays) == (3, 18)


def test_a_plan_kept_after_the_first_sowing_says_so() -> None:
    kept = KeptPlan(
        id=PlanId(1), plan=a_plan(), version=2, kept_at=NOON, why="wider margin", first_sown_at=SOWN
    )

    assert kept.after_sowing
    assert not replace(kept, first_sown_at=None).after_sowing


def test_that_no_reason_was_given_for_a_plan_can_be_said_in_another_language() -> None:
    kept = KeptPlan(id=PlanId(1), plan=a_plan(), version=1, kept_at=NOON, why="", first_sown_at=SOWN)

    assert isinstance(kept_words(kept).values["why"], Sentence)
