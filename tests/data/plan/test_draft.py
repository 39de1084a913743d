"""A plan follows from few choices; what is lacking, and what the plan can show, is said in words."""

from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from data.plan.blocks import ShelfPlaces
from data.plan.draft import Draft, Step, camera_sd_of, treatments_of, trusted_of, with_measure
from data.plan.draftneeds import lacking
from data.plan.draftplan import draft_of, plan_from
from data.plan.drafttext import draft_from, draft_text
from data.plan.drawing import draw_trial
from data.plan.words import (
    camera_words,
    chance_words,
    cost_words,
    enough_words,
    shelf_words,
    six_words,
    spread_words,
)
from data.trial import CropPlan, Factor, MeasureKind, Question, Spread

FEED = Factor(name="feed", levels=("none", "weekly"))
HEAT = Factor(name="heat mat", levels=("without heat mat", "with heat mat"), by_shelf=True)


def a_draft(**special: Any) -> Draft:
    """Broccoli on peat mix (trusted) and fibre mat, six trays of each, three shelves of six."""
    ordinary: dict[str, Any] = {
        "trial": "Mat",
        "crops": (CropPlan(name="broccoli", read_on_day=9, sowing_rate_g=18.0),),
        "media": ("peat mix", "fibre mat"),
        "trusted": "peat mix",
        "shelves": tuple(ShelfPlaces(name=name, places=6) for name in "ABC"),
        "begins": date(2026, 3, 2),
    }
    return Draft(**(ordinary | special))


def everything_lacking(draft: Draft) -> list[str]:
    return [str(sentence) for step in range(Step.DRAW) for sentence in lacking(draft, step)]


def test_a_whole_draft_lacks_nothing_and_makes_a_plan() -> None:
    plan = plan_from(a_draft())

    assert everything_lacking(a_draft()) == []
    assert (plan.trusted, plan.new_treatments, plan.trays) == ("peat mix", ("fibre mat",), 12)
    assert len(plan.blocks) == 6


def test_an_empty_draft_says_what_is_lacking_and_makes_no_plan() -> None:
    empty = Draft(begins=date(2026, 3, 2))

    assert everything_lacking(empty)[0] == "Give the trial a name."
    with pytest.raises(ValueError, match="Give the trial a name"):
        plan_from(empty)


def test_one_medium_alone_is_no_trial() -> None:
    assert lacking(a_draft(media=("peat mix",)), Step.VARIES) == (
        "Choose a second medium, or something else that varies.",
    )


def test_one_medium_with_two_feeds_is_a_trial() -> None:
    draft = a_draft(media=("peat mix",), other=FEED)

    assert trusted_of(draft) == "no feed"
    assert plan_from(draft).same["medium"] == "peat mix"


def test_a_margin_of_nothing_is_refused() -> None:
    assert "margin" in lacking(a_draft(margin=0.0), Step.QUESTION)[0]


def test_closing_the_gap_leaves_the_trusted_medium_as_it_usually_is() -> None:
    draft = a_draft(question=Question.GAP, other=FEED)

    assert [one.name for one in treatments_of(draft)] == [
        "peat mix, no feed",
        "fibre mat, no feed",
        "fibre mat, feed weekly",
    ]
    assert trusted_of(draft) == "peat mix, no feed"


def test_closing_the_gap_asks_by_what() -> None:
    assert lacking(a_draft(question=Question.GAP), Step.VARIES) != ()


def test_a_shelf_that_is_too_short_is_told() -> None:
    draft = a_draft(shelves=(ShelfPlaces(name="A", places=1),))

    assert "no shelf has so many places" in lacking(draft, Step.BLOCKS)[0]


def test_a_gap_closed_by_a_heat_mat_leaves_every_tray_a_place() -> None:
    crops = tuple(CropPlan(name=name, read_on_day=9) for name in ("broccoli", "radish"))
    three, four = (tuple(ShelfPlaces(name=name, places=n) for name in "AB") for n in (3, 4))
    gap = a_draft(question=Question.GAP, other=HEAT, crops=crops, shelves=four)

    drawn = draw_trial(plan_from(gap), seed=3)

    assert max(place.position for place in drawn.places) == 4  # on the shelf without a heat mat: both media
    assert "no shelf has so many places" in lacking(replace(gap, shelves=three), Step.BLOCKS)[0]


def test_a_heat_mat_under_the_only_shelf_cannot_be_tested() -> None:
    draft = a_draft(other=HEAT, shelves=(ShelfPlaces(name="A", places=6),))

    assert "cannot be tested with one shelf" in lacking(draft, Step.BLOCKS)[0]


def test_shelves_are_the_replicates_of_a_heat_mat() -> None:
    of_shelves, of_media = shelf_words(a_draft(other=HEAT, margin=8.0))

    assert "shelves are what is compared, not trays" in of_shelves
    assert "6 sets of 2 shelves" in of_shelves
    assert "chance of 25 %" in of_shelves  # 3 limits of Sidak with 5 df, by scipy's quad over chi: 0.2476
    assert "side by side on every shelf" in of_media
    assert of_media.endswith("the chance is 44 %.")  # the same: 0.4369


def test_one_set_of_shelves_cannot_test_a_heat_mat() -> None:
    assert "it cannot be tested" in shelf_words(a_draft(other=HEAT, trays=1))[0]


def test_six_trays_are_too_few_for_a_margin_of_one_spread() -> None:
    """R 4: six blocks, margin = sd, power .4408; 14 blocks .8050 (13: .7755)."""
    draft = a_draft(measure=MeasureKind.EYE, spread=Spread(sd=5.0, source="a guess"))

    assert "is 44 % (28 % to 68 %, as your trays spread" in chance_words(draft)  # 1.4 and 0.7: scipy's nct
    assert enough_words(draft).startswith("14 trays of each are enough")
    six = six_words(draft)
    assert six is not None
    assert "too few" in six


def test_a_learned_spread_says_how_sure_it_is() -> None:
    """Chi-square with 8 df, 95 %: 2.180 and 17.535 (any table), so 0.675 to 1.916 times the estimate."""
    words = spread_words(a_draft(spread=Spread(sd=6.0, source="18 trays of yours", df=8)))

    assert words.startswith("Learned from 18 trays of yours")
    assert "between 4.1 and 11.5" in words


def test_photos_of_two_media_are_reckoned_with_the_camera() -> None:
    """The camera's part is in the standard error of every difference, so it takes more trays than by eye."""
    photo, eye = a_draft(), a_draft(measure=MeasureKind.EYE)

    assert camera_words(eye) is None
    assert camera_words(a_draft(media=("peat mix",), other=FEED)) is None
    assert "more trays do not help" in (camera_words(photo) or "")
    assert int(enough_words(photo).split()[0]) > int(enough_words(eye).split()[0])


def test_the_camera_counts_in_a_plan_as_it_does_in_the_verdict_of_full_trays() -> None:
    """By hand: a point of the bed is 1.32 from above, where 90 % stand for 86.8: 1.32 / 56.8, by half.

    Evenness moves by a point with it: 1 / (90 - 30), a quarter of the weight. 0.0116 + 0.0042 of 85.7 points
    are 1.35, times root 2 times 0.6. Verdicts of the demonstration, trays of 94 to 97 %, have 1.1 and 1.2.
    A score of colour alone has none.
    """
    colour = {"parts": {"coverage": {"bad": 30.0, "good": 100.0, "weight": 0.0},
                        "uniformity": {"bad": 30.0, "good": 100.0, "weight": 0.0}}}  # fmt: skip

    assert camera_sd_of(a_draft()) == pytest.approx(1.35 * 2**0.5 * 0.6, abs=0.02)
    assert camera_sd_of(a_draft(score=colour)) == 0.0


def test_one_tray_of_each_gives_no_chance() -> None:
    assert chance_words(a_draft(trays=1)) == "One tray of each: you will see numbers, and no verdict."


def test_cost_is_told_in_trays_seed_and_days() -> None:
    told = cost_words(plan_from(a_draft()))

    assert told[0] == "12 trays, sown on one day, each on its own place."
    assert told[1] == "216 g of broccoli seed."
    assert told[2] == "From 2 March 2026 to 11 March 2026, 9 days."


def test_a_kept_plan_becomes_the_same_draft_again() -> None:
    draft = a_draft(other=FEED, question=Question.GAP, same={"watering": "bottom"})
    plan = plan_from(draft)

    again = draft_of(plan)

    assert plan_from(again) == plan
    assert replace(again, shelves=draft.shelves, laid=None) == draft


def test_blocks_stay_while_nothing_about_them_is_changed() -> None:
    plan = plan_from(a_draft(trays=3))

    wider = replace(draft_of(plan, a_draft().shelves), margin=8.0)
    longer = replace(draft_of(plan, a_draft().shelves), trays=4)

    assert plan_from(wider).blocks == plan.blocks
    assert len(plan_from(longer).blocks) == 4


def test_another_measure_brings_its_own_margin() -> None:
    draft = with_measure(a_draft(), MeasureKind.YIELD)

    assert (draft.margin, draft.spread.sd) == (10.0, 10.0)
    assert plan_from(draft).primary.unit == "%"


def test_an_unfinished_draft_comes_back_from_its_text() -> None:
    draft = a_draft(other=HEAT, same={"watering": "top"})

    assert draft_from(draft_text(draft)) == draft


def test_a_draft_of_a_kept_plan_comes_back_with_its_blocks() -> None:
    draft = draft_of(plan_from(a_draft(trays=3)), a_draft().shelves)

    assert draft_from(draft_text(draft)) == draft
    assert draft_from(draft_text(replace(draft, trays=4))) == replace(draft, trays=4, laid=None)


@pytest.mark.parametrize("text", [None, "", "[]", "{}", '{"form": 1}', '{"form": 9}', "half of it"])
def test_text_that_is_no_draft_is_no_draft(text: str | None) -> None:
    assert draft_from(text) is None


@pytest.mark.parametrize(
    ("levels", "refused"), [(("bottom", "top"), 0), (("bottom", "both"), 0), (("bottom", "twice a day"), 1)]
)
def test_a_watering_that_no_tray_could_be_sown_with_is_refused_before_the_plan_is_kept(
    levels: tuple[str, str], refused: int
) -> None:
    found = lacking(a_draft(other=Factor(name="watering", levels=levels)), Step.VARIES)

    assert len(found) == refused
    assert all("“twice a day” is none of them" in one for one in found)


def test_a_light_or_a_feed_can_be_said_in_own_words() -> None:
    for factor in ("light", "feed"):
        assert (
            lacking(a_draft(other=Factor(name=factor, levels=("as now", "twice a day"))), Step.VARIES) == ()
        )
