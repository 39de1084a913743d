"""Blind: scoring trays by eye without knowing the medium, and what came of it.

In    photos of trays, a seed; the scores that a person gave
Out   the order in which photos are shown, some of them twice; how well the eye agrees with the photo's score
      and with itself
Not   cropping and levelling the pictures (`gui`), keeping a round (`chapters/trialbook.py`)

Names are hidden, the order is drawn, every fifth photo comes again later, so that the eye's own wandering is
known. "Eye instead of photo" is asked of ICC(2,1) (Shrout & Fleiss 1979): may one stand for the other, number
for number? 0.75 for "good" is a rule of thumb of the trade. It rests on few trays, so it has an interval, by
Fisher's transformation of an intraclass correlation of pairs (1925, Statistical Methods for Research Workers;
from memory). How steady the eye is has one from the chi-square of its differences. Limits hold for one more
tray: with Student's t and 1 + 1/n in place of 1.96, which is too narrow for few trays (prediction interval,
from memory).
"""

import math
import random
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.numbers import PhotoId, TrayId

if TYPE_CHECKING:
    from data.statistics.agreement import Kappa, Limits, RankCorrelation
    from data.statistics.estimate import Estimate
    from data.statistics.quadrature import Floats

__all__ = ["AGAIN_SHARE", "LEAST_APART", "EyeAgreement", "Showing", "agreement_of", "draw_round"]

AGAIN_SHARE = 0.2  # of the photos are shown a second time
LEAST_AGAIN = 3
LEAST_APART = 4  # other photos between the two times
DOUBT = 0.1  # chance that the truth lies above an interval here, and as much that it lies below
SURE = 1 - 1e-9  # a correlation of 1 has no transformation
GRADES = 5  # of 20 points each
LEAST_TRAYS = 5  # below that nothing is said of agreement


@dataclass(frozen=True, slots=True, kw_only=True)
class Showing:
    """One photo in its turn. The person sees the place and the picture, nothing else."""

    place: int  # from 1
    tray_id: TrayId
    photo_id: PhotoId
    again: bool  # shown before in this round


def draw_round(photos: Sequence[tuple[TrayId, PhotoId]], seed: int) -> tuple[Showing, ...]:
    """The order of a round; the same seed and photos give the same order, whatever order they came in.

    At least `LEAST_APART` others stand between the two times of a photo that comes again.
    """
    chance = random.Random(seed)
    order = sorted(photos)
    chance.shuffle(order)
    early = order[: max(0, len(order) - LEAST_APART)]  # enough others come after these
    count = min(len(early), max(LEAST_AGAIN, round(AGAIN_SHARE * len(order))))
    shown: list[tuple[tuple[TrayId, PhotoId], bool]] = [(photo, False) for photo in order]
    for photo in chance.sample(early, count):
        first = shown.index((photo, False))
        shown.insert(chance.randint(first + LEAST_APART + 1, len(shown)), (photo, True))
    return tuple(
        Showing(place=place, tray_id=tray, photo_id=photo, again=again)
        for place, ((tray, photo), again) in enumerate(shown, 1)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeAgreement:
    """What a round says of the eye; None where there are too few trays or no spread."""

    trays: int  # scored by eye and by photo
    with_photo: "Estimate | None"  # ICC(2,1); 80 % interval
    limits: "Limits | None"  # eye minus photo
    ranks: "RankCorrelation | None"
    same_grade: int  # trays that both put into the same of five grades
    grades: "Kappa | None"  # of those grades, weighed by the squared distance
    again: int  # trays scored twice
    steady: (
        "Estimate | None"  # share of the spread of its scores that is not its own wandering; 80 % interval
    )
    itself_sd: float | None  # of one score by eye, from the trays scored twice


def agreement_of(
    first: Mapping[TrayId, float], again: Mapping[TrayId, float], photo: Mapping[TrayId, float]
) -> EyeAgreement:
    """Hold scores by eye, 0-100, against the photos' and against those of the second time."""
    import numpy as np

    from data.statistics.agreement import icc, kappa, spearman

    both = sorted(first.keys() & photo.keys())
    eye, by_photo = (np.array([scores[tray] for tray in both], float) for scores in (first, photo))
    enough = len(both) >= LEAST_TRAYS
    twice = sorted(first.keys() & again.keys())
    pairs = np.array([[first[tray], again[tray]] for tray in twice], float)
    return EyeAgreement(
        trays=len(both),
        with_photo=_alike(icc(np.column_stack([eye, by_photo])), len(both)) if enough else None,
        limits=_limits(eye, by_photo) if enough else None,
        ranks=spearman(eye, by_photo) if enough else None,
        same_grade=int((_graded(eye) == _graded(by_photo)).sum()),
        grades=kappa(_grade_table(eye, by_photo)) if enough else None,
        again=len(twice),
        steady=_steady(np.array(list(first.values()), float), pairs),
        itself_sd=float(np.sqrt(((pairs[:, 0] - pairs[:, 1]) ** 2).mean() / 2)) if twice else None,
    )


def _alike(correlation: float | None, trays: int) -> "Estimate | None":
    """How alike eye and photo are, with its interval: as unsure as so few trays leave it."""
    from scipy.special import ndtri

    from data.statistics.estimate import Estimate

    if correlation is None:
        return None
    reach = float(ndtri(1 - DOUBT)) / math.sqrt(trays - 1.5)
    z = math.atanh(min(max(correlation, -SURE), SURE))
    return Estimate(value=correlation, low=math.tanh(z - reach), high=math.tanh(z + reach))


def _graded(scores: "Floats") -> "Floats":
    """Grades 0 to 4 of scores 0 to 100."""
    return (scores * GRADES // 100).clip(0, GRADES - 1)


def _grade_table(eye: "Floats", by_photo: "Floats") -> "Floats":
    """Trays by the grade of the eye and that of the photo."""
    import numpy as np

    edges = np.arange(GRADES + 1) - 0.5
    return np.asarray(np.histogram2d(_graded(eye), _graded(by_photo), bins=(edges, edges))[0], float)


def _limits(eye: "Floats", by_photo: "Floats") -> "Limits | None":
    """Between what the eye and the photo differ in 95 % of trays."""
    from data.statistics.agreement import limits_of_agreement
    from data.statistics.estimate import t_quantile

    n = len(eye)
    return limits_of_agreement(eye, by_photo, times=t_quantile(n - 1) * math.sqrt(1 + 1 / n))


def _steady(first: "Floats", pairs: "Floats") -> "Estimate | None":
    """How much of what the eye tells apart is there at a second look; None for too few, or all alike."""
    from scipy.special import chdtri

    from data.statistics.estimate import Estimate

    again = len(pairs)
    if again < LEAST_AGAIN or len(first) < LEAST_TRAYS or first.min() == first.max():
        return None
    wandering = float(((pairs[:, 0] - pairs[:, 1]) ** 2).sum() / 2 / first.var(ddof=1))
    low, high = (1 - wandering / float(chdtri(again, tail)) for tail in (1 - DOUBT, DOUBT))
    return Estimate(value=1 - wandering / again, low=low, high=high)
