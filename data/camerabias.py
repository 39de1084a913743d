"""Camera bias: how differently coverage comes out on two media that are covered alike.

In    the version of the method; the trays' scores
Out   standard deviation of a difference of two media, in points of coverage or of canopy score
Not   how far one photo may be off by chance: that is in the trays' own spread

A bias of one medium hits all its trays alike, so no number of trays averages it out. Its size is told by
the model card (`vision/models/tissue.md`): mean error by medium on trays kept out of learning: coir -0.74,
fibre mat +0.35, peat +0.76 (48 photos each), and on 24 other photos +0.20, -0.45, -0.58, paper +0.19:
standard deviation between media 0.8 and 0.4, together 0.6 points; for the plain thresholds of colour 1.8.
Which way it goes on a grower's own medium nobody knows, so it widens the interval (JCGM 100:2008, type B).
"""

import math
from collections.abc import Sequence

from data.desirability import CanopyScore, PartName, ScoreRule, Seen, score_canopy

__all__ = ["coverage_sd_between_media", "score_sd_between_media"]

BY_METHOD = {"learned": 0.6, "plain": 1.8}  # sd of one medium's bias, points of coverage
UNKNOWN = 1.8
STEP = 0.5  # points of coverage


def coverage_sd_between_media(method: str) -> float:
    """Standard deviation of the difference of two media's biases, points of coverage."""
    return math.sqrt(2) * BY_METHOD.get(method.split(" ")[0], UNKNOWN)


def score_sd_between_media(method: str, scores: Sequence[CanopyScore], rule: ScoreRule) -> float:
    """The same in points of canopy score: times how much the score rises with a point of coverage here."""
    slopes = [_slope(score, rule) for score in scores if score.score]
    return coverage_sd_between_media(method) * sum(slopes) / len(slopes) if slopes else 0.0


def _slope(score: CanopyScore, rule: ScoreRule) -> float:
    values = {share.name: share.value for share in score.parts}
    coverage = values.get(PartName.COVERAGE)
    if coverage is None:
        return 0.0

    def at(moved: float) -> float:
        seen = Seen(
            coverage=min(max(moved, 0.0), 100.0),
            uniformity=values.get(PartName.UNIFORMITY),
            colour=values.get(PartName.COLOUR),
            mold_cm2=values.get(PartName.MOLD, 0.0),
        )
        return score_canopy(seen, rule).score or 0.0

    return (at(coverage + STEP) - at(coverage - STEP)) / (2 * STEP)
