"""A white patch is weighed by the day and named by the medium of the tray that its photo shows."""

from datetime import timedelta
from typing import Any

import pytest

from data.photos.rootday import facts_of, judged_again, kept_judged_again
from tests.data.builders import a_kept_tray
from vision.suspect import UNKNOWN_WHITE, Suspect

TRAY = a_kept_tray(1, medium="coir")
OTHER = a_kept_tray(2, medium="hemp mat", sown_at=TRAY.sown_at - timedelta(days=5))
DAY_3 = TRAY.sown_at + timedelta(days=3)  # day 8 of the other one
WHITE = Suspect(
    x_mm=200.0,
    y_mm=100.0,
    area_cm2=3.0,
    confidence=0.4,
    why=f"white web on the bare medium; {UNKNOWN_WHITE}",
    outline_mm=(),
    white=True,
)
KEPT = {"x_mm": 200.0, "y_mm": 100.0, "area_cm2": 3.0, "confidence": WHITE.confidence, "why": WHITE.why}


def test_white_on_a_day_of_root_hairs_is_believed_less_than_later() -> None:
    (young,) = judged_again([WHITE], TRAY, DAY_3)
    (old,) = judged_again([WHITE], OTHER, DAY_3)

    assert young.confidence < WHITE.confidence < old.confidence
    assert "on the bare coir" in young.why
    assert "on day 3" in young.why
    assert "on the bare hemp mat" in old.why
    assert "on day 8" in old.why


def test_of_a_photo_without_a_tray_nothing_is_known_better() -> None:
    assert judged_again([WHITE], None, DAY_3) == (WHITE,)
    assert facts_of(None, DAY_3) is None


def test_what_is_kept_of_a_photo_follows_it_to_another_tray_and_back_to_none() -> None:
    of_tray, of_other = facts_of(TRAY, DAY_3), facts_of(OTHER, DAY_3)
    here = KEPT | kept_judged_again(KEPT, of_tray, None)
    there = here | kept_judged_again(here, of_other, of_tray)

    assert said(there) == said(KEPT | kept_judged_again(KEPT, of_other, None))
    assert said(there) != said(here)
    assert said(there | kept_judged_again(there, None, of_other)) == said(KEPT)


def said(row: dict[str, Any]) -> tuple[object, str]:
    return pytest.approx(row["confidence"], abs=0.01), row["why"]
