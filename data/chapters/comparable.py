"""Comparable: the one version of the method by which some trays are compared.

In    for each version: how many photos and trays it has scored
Out   `Comparable`: the version, and what a person has to know of it
Not   asking the book (`reader.py`), scoring again (`upkeep/rescoring.py`)

Scores of two versions are never mixed: one may see two points more canopy than the other. So a comparison
uses the newest version that has scored every photo; where there is none, the newest one that has scored
photos of every tray, and says how many photos that leaves out; where there is none either, nothing is
compared.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from data.sentence import Sentence

__all__ = ["Comparable", "Scorings", "comparable"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Scorings:
    """What one version of the method has scored of the trays in question."""

    method: str
    photos: int
    trays: int
    newest: int  # number of its newest score: the higher, the newer the version


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparable:
    """By which version trays are compared; None where they cannot be, or where nothing is scored."""

    method: str | None
    left_out: int = 0  # photos that only another version has scored
    sentence: Sentence | None = None  # None where there is nothing to tell


def comparable(scorings: Sequence[Scorings], photos: int, trays: int) -> Comparable:
    """The version that a comparison uses.

    Parameters
    ----------
    scorings : one entry for each version.
    photos, trays : how many are scored by any version.
    """
    newest_first = sorted(scorings, key=lambda one: -one.newest)
    for one in newest_first:
        if one.photos == photos:
            return Comparable(method=one.method)
    for one in newest_first:
        if one.trays == trays:
            return _partly(one.method, photos - one.photos, photos)
    if not newest_first:
        return Comparable(method=None)
    return Comparable(
        method=None,
        left_out=photos,
        sentence=Sentence(
            "These trays were scored by different versions of the method, so they are not compared: "
            "score their photos again."
        ),
    )


def _partly(method: str, left_out: int, photos: int) -> Comparable:
    sentence = Sentence(
        "{left_out} of {photos} photos were scored by another version of the method and are left out of this "
        "comparison: score them again to have them in it.",
        left_out=left_out,
        photos=photos,
    )
    return Comparable(method=method, left_out=left_out, sentence=sentence)
