"""The canopy score: each part visible, nothing zeroed by a mere suspicion, mold as was decided beforehand."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.desirability import (
    USUAL,
    MoldRule,
    Part,
    PartName,
    ScoreRule,
    Seen,
    combined,
    rule_of,
    rule_text,
    score_canopy,
)
from vision.reason import Reason


def seen(**special: object) -> Seen:
    """A good tray without mold."""
    ordinary: dict[str, object] = {"coverage": 90.0, "uniformity": 85.0, "colour": 95.0}
    return Seen(**(ordinary | special))


def ruled(mold: MoldRule) -> ScoreRule:
    return ScoreRule(parts=USUAL.parts, mold=mold)


def test_a_score_is_the_weighted_geometric_mean_of_its_parts() -> None:
    score = score_canopy(seen())

    parts = {share.name: (share.desirability, share.weight) for share in score.parts}
    assert parts == {
        PartName.COVERAGE: (pytest.approx(60 / 70), 2.0),
        PartName.UNIFORMITY: (pytest.approx(55 / 70), 1.0),
        PartName.COLOUR: (pytest.approx(65 / 70), 1.0),
    }
    assert score.score == pytest.approx(100 * ((60 / 70) ** 2 * (55 / 70) * (65 / 70)) ** 0.25)


@pytest.mark.parametrize("rule", MoldRule)
def test_an_open_suspect_never_changes_a_score(rule: MoldRule) -> None:
    assert score_canopy(seen(open_suspects=3), ruled(rule)).score == score_canopy(seen(), ruled(rule)).score


def test_confirmed_mold_does_what_was_decided_beforehand() -> None:
    moldy = seen(mold_cm2=10.0)

    assert score_canopy(moldy, ruled(MoldRule.ZERO)).score == 0.0
    assert score_canopy(moldy, ruled(MoldRule.APART)).score is None
    by_area = score_canopy(moldy, ruled(MoldRule.BY_AREA))
    assert by_area.part(PartName.MOLD).desirability == pytest.approx(0.8)
    assert 0 < by_area.score < score_canopy(seen(), ruled(MoldRule.BY_AREA)).score


def test_a_part_that_cannot_be_had_goes_with_its_weight_and_is_named() -> None:
    score = score_canopy(seen(colour=None, reasons={"colour": Reason.NO_CANOPY}))

    assert score.left_out == {PartName.COLOUR: Reason.NO_CANOPY}
    assert score.score == pytest.approx(100 * combined([60 / 70, 55 / 70], [2, 1]))


def test_a_part_without_weight_takes_nothing_away_even_at_its_worst() -> None:
    assert combined([0.0, 0.5], [0.0, 1.0]) == pytest.approx(0.5)
    assert combined([0.0, 0.5], [0.1, 1.0]) == 0.0
    assert combined([0.5], [0.0]) is None


def test_without_coverage_there_is_no_score() -> None:
    assert score_canopy(seen(coverage=None)).score is None


def test_a_bare_tray_scores_nothing() -> None:
    assert score_canopy(seen(coverage=0.0, uniformity=None, colour=None)).score == 0.0


def test_a_weight_of_zero_leaves_a_part_out() -> None:
    rule = rule_of({"parts": {"colour": {"bad": 0, "good": 100, "weight": 0}}})

    assert score_canopy(seen(), rule).part(PartName.COLOUR) is None


@given(st.floats(0, 100), st.floats(0, 100), st.floats(0, 100), st.floats(0, 20))
def test_more_canopy_never_lowers_a_score(
    coverage: float, uniformity: float, colour: float, more: float
) -> None:
    one = score_canopy(seen(coverage=coverage, uniformity=uniformity, colour=colour)).score
    other = score_canopy(seen(coverage=min(coverage + more, 100), uniformity=uniformity, colour=colour)).score

    assert one is not None
    assert other is not None
    assert 0 <= one <= other + 1e-9 <= 100 + 1e-8


def test_a_target_is_best_in_the_middle() -> None:
    target = Part(bad=400, good=500, too_much=600)

    assert [target.desirability(v) for v in (400, 450, 500, 550, 600, 900)] == [0, 0.5, 1, 0.5, 0, 0]


def test_equal_limits_are_a_step() -> None:
    step = Part(bad=60, good=60)

    assert [step.desirability(v) for v in (0, 59.9, 60, 60.1, 100)] == [0, 0, 1, 1, 1]


def test_better_than_wanted_is_no_more_than_good_and_worse_than_the_worst_is_nothing() -> None:
    assert [Part(bad=30, good=80).desirability(v) for v in (80, 82, 100, 30, 29, 0)] == [1, 1, 1, 0, 0, 0]
    assert [Part(bad=50, good=10).desirability(v) for v in (10, 9, 0, 50, 51, 90)] == [1, 1, 1, 0, 0, 0]


def test_small_area_of_confirmed_mold_is_mold() -> None:
    assert score_canopy(seen(mold_cm2=0.3), ruled(MoldRule.ZERO)).score == 0.0
    assert score_canopy(seen(mold_cm2=0.3), ruled(MoldRule.APART)).score is None


def test_a_rule_goes_to_a_plan_and_back() -> None:
    rule = ScoreRule(
        parts=dict(USUAL.parts) | {PartName.COLOUR: Part(bad=0, good=80, power=2)}, mold=MoldRule.APART
    )

    assert rule_of(rule_text(rule)) == rule
    assert rule_of({}) == USUAL


@pytest.mark.parametrize(
    "body",
    [
        {"mold": "maybe"},
        {"parts": {"taste": {}}},
        {"parts": {"colour": {"bad": "x", "good": 1}}},
        {"parts": 3},
        {"parts": {"colour": {"bad": None, "good": 1}}},
        {"parts": {"colour": {"bad": 0, "good": 10**400}}},
        {"parts": {"colour": {"bad": 0, "good": float("nan")}}},
        {"parts": {"colour": {"bad": 0, "good": 1, "power": -1}}},
    ],
)
def test_what_is_no_rule_is_refused(body: dict[str, object]) -> None:
    with pytest.raises(ValueError, match=r"."):
        rule_of(body)
