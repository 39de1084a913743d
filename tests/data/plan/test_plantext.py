"""A plan reads the same after years in the book."""

import pytest

from data.plan.plantext import plan_of, plan_text
from data.trial import Measure, MeasureKind, Spread
from tests.data.plans import a_plan


def test_a_plan_comes_back_from_its_text_as_it_was() -> None:
    plan = a_plan(
        spread=Spread(sd=4.2, source="your 18 trays", df=10),
        measures=(
            Measure(kind=MeasureKind.SCORE, margin=5.0),
            Measure(kind=MeasureKind.YIELD, margin=10.0, unit="%"),
        ),
        score={"coverage": {"weight": 2.0}},
    )

    assert plan_of(plan_text(plan)) == plan


@pytest.mark.parametrize("text", ["[]", "{}", '{"form": 2}', '{"form": 1, "trial": "x"}'])
def test_text_that_is_no_plan_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="no plan"):
        plan_of(text)
