"""Counted of: what canopy is counted as a share of when trays are compared: the growing bed, the inner area.

In    the numbers of the photos that are compared
Out   `CountedOf`, one for all of them; what of a photo goes into its canopy score, counted so
Not   measuring (`vision/bed.py`), the score (`desirability.py`)

A share of the bed is fairer to media at different heights in the tray, so it is taken where every photo has
it. Otherwise the inner area is taken for all: the two are never mixed.
"""

from collections.abc import Mapping, Sequence
from enum import StrEnum

from data.desirability import Seen
from data.sentence import Sentence
from data.tables.trialrows import PhotoNumbers

__all__ = ["CountedOf", "counted_of", "counted_words", "knows_bed", "seen_on", "share_of"]


MOST_NAMED = 6  # trays; more are only counted


class CountedOf(StrEnum):
    """What coverage and uniformity are a share of."""

    BED = "growing bed"
    INNER = "inner area"


def knows_bed(photo: PhotoNumbers) -> bool:
    """Whether a photo has the numbers of the bed wherever it has those of the inner area."""
    even = photo.bed_uniformity is not None or photo.uniformity is None
    return photo.coverage is None or (photo.bed_share is not None and even)


def counted_of(photos: Sequence[PhotoNumbers]) -> CountedOf:
    """What these photos can be compared by; the bed where there are none."""
    return CountedOf.BED if all(map(knows_bed, photos)) else CountedOf.INNER


def share_of(photo: PhotoNumbers, counted: CountedOf) -> float | None:
    """Share under canopy, %."""
    return photo.bed_share if counted is CountedOf.BED else photo.coverage


def seen_on(photo: PhotoNumbers, counted: CountedOf, *, mold_cm2: float, open_suspects: int) -> Seen:
    """What goes into the canopy score of one photo.

    Parameters
    ----------
    mold_cm2 : that a person confirmed.
    open_suspects : how many wait for a word.
    """
    of_bed = counted is CountedOf.BED
    reasons = dict(photo.reasons)
    if of_bed:
        own = {"coverage": reasons.get("bed_share"), "uniformity": reasons.get("bed_uniformity")}
        reasons |= {name: why for name, why in own.items() if why is not None}
    return Seen(
        coverage=share_of(photo, counted),
        of_bed=of_bed,
        uniformity=photo.bed_uniformity if of_bed else photo.uniformity,
        colour=photo.coloured,
        mold_cm2=mold_cm2,
        open_suspects=open_suspects,
        reasons=reasons,
    )


def counted_words(counted: CountedOf, photos: Mapping[str, PhotoNumbers]) -> Sentence:
    """Which way was taken, and why.

    Parameters
    ----------
    photos : that are compared, by the code of their tray.
    """
    if counted is CountedOf.BED:
        return Sentence(
            "Coverage and uniformity are counted here as a share of the growing bed, which is fairer to "
            "media at different heights in the tray; the coverage shown elsewhere is the share of the inner "
            "area."
        )
    lacking = [tray for tray, photo in photos.items() if not knows_bed(photo)]
    few = len(lacking) <= MOST_NAMED
    return Sentence(
        "Coverage and uniformity are counted here as a share of the inner area, for the share of the growing "
        "bed is not known of: {trays}. A medium that lies deep in the tray looks thinner so. Score their "
        "photos again.",
        trays=", ".join(lacking) if few else Sentence("{n} of {all} trays", n=len(lacking), all=len(photos)),
    )
