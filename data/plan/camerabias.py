"""Camera bias: how differently coverage comes out on two media that are covered alike.

In    the version of the method; the trays' scores
Out   standard deviation of a difference of two media, in points of coverage or of canopy score; what media
      that lie at different heights may do to it
Not   how far one photo may be off by chance: that is in the trays' own spread

A bias of one medium hits all its trays alike, so no number of trays averages it out.

Telling canopy from medium (learned 5): on the demonstration, 48 photos a medium, coverage comes out wrong
by +0.13 on coir, +0.22 on fibre mat and +0.79 on peat; on the same photos stored anew as small files by
+0.17, -0.32 and +0.61; on 24 other photos kept out of learning, with true corners, by +0.28, -0.21, -0.69, on
paper +0.22; on 95 trays from day 6 on, by networks that had not seen them and learned a third as long, by
+1.09, -0.14, +0.77, paper +1.27. Standard deviation between media 0.36, 0.47, 0.45, and 0.63 of which chance
alone makes 0.41, so 0.48. Learned 3 had 0.6 throughout, which is kept: trays are few, and a grower's own
medium may be like none of these. For the plain thresholds of colour 1.8. Which way it goes on a grower's own
medium nobody knows, so it widens the interval (JCGM 100:2008, B).

Height, where only the inner area is known: a camera near the tray sees leaves that stand high lean outwards,
and so the canopy of a full tray denser than it is from straight above. Of 121 drawn photos from day 6 on (67
of any place, 54 of the demonstration) loose media, 24 mm below the rim, came out 2.6 and 3.6 points higher,
against what is seen from above, than mats, 47 mm below it: 3 points, or 0.12 a millimetre. Nobody tells the
program how deep a medium lies, so this is asked as "what if" beside the interval, not put into it. Trays that
are compared by the share of the bed need no such question: of them the other way of counting is asked. What
is left between heights by the bed: loose media +0.3 against mats on 47 drawn photos (95 %: -2.3 to 2.9), -1.7
on the demonstration from day 6 on; less than can be told from nothing, so nothing is put in for it.
"""

import math
from collections.abc import Sequence

from data.desirability import CanopyScore, PartName, ScoreRule, Seen, score_canopy

__all__ = ["coverage_sd_between_media", "score_sd_between_media", "score_shift_of_heights"]

BY_METHOD = {"learned": 0.6, "plain": 1.8}  # sd of one medium's bias, points of coverage
UNKNOWN = 1.8
HEIGHT_SHIFT = 3.0  # points of coverage between loose media and mats that lie deeper
STEP = 0.5  # points of coverage
MOST_ASKED = 40  # trays: their mean slope needs no more


def coverage_sd_between_media(method: str) -> float:
    """Standard deviation of the difference of two media's biases, points of coverage."""
    return math.sqrt(2) * BY_METHOD.get(method.split(" ")[0], UNKNOWN)


def score_sd_between_media(method: str, scores: Sequence[CanopyScore], rule: ScoreRule) -> float:
    """The same in points of canopy score: times how much the score rises with a point of coverage here."""
    return coverage_sd_between_media(method) * _mean_slope(scores, rule)


def score_shift_of_heights(scores: Sequence[CanopyScore], rule: ScoreRule) -> float:
    """Points of canopy score by which media at different heights may come out apart."""
    return HEIGHT_SHIFT * _mean_slope(scores, rule)


def _mean_slope(scores: Sequence[CanopyScore], rule: ScoreRule) -> float:
    some = [score for score in scores if score.score]
    slopes = [_slope(score, rule) for score in some[:: 1 + len(some) // MOST_ASKED]]
    return sum(slopes) / len(slopes) if slopes else 0.0


def _slope(score: CanopyScore, rule: ScoreRule) -> float:
    """Points of score for a point of coverage; unevenness goes with what is bare, so it moves along."""
    values = {share.name: share.value for share in score.parts}
    coverage, uniformity = values.get(PartName.COVERAGE), values.get(PartName.UNIFORMITY)
    if coverage is None:
        return 0.0
    bare = max(100.0 - coverage, STEP)

    def at(step: float) -> float:
        seen = Seen(
            coverage=min(max(coverage + step, 0.0), 100.0),
            uniformity=None if uniformity is None else 100.0 - (100.0 - uniformity) * (bare - step) / bare,
            colour=values.get(PartName.COLOUR),
            mold_cm2=values.get(PartName.MOLD, 0.0),
            of_bed=score.of_bed,
        )
        return score_canopy(seen, rule).score or 0.0

    return (at(STEP) - at(-STEP)) / (2 * STEP)
