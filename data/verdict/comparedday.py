"""Compared day: the photos of the day that is read, and how alike they are made before trays are compared.

In    photos of a crop's trays on that day, as all versions of the method have scored them
Out   `ComparedDay`: the one version, what canopy is counted as a share of, the one photo of each tray
Not   which day that is (`terms.py`), the number of a tray (`traynumbers.py`)
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from data.chapters.comparable import Scorings, comparable
from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.tables.trialrows import PhotoNumbers
from data.verdict.countedof import CountedOf, counted_of, counted_words

__all__ = ["ComparedDay", "compared_day", "scorings_of"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedDay:
    """Photos of one day; the empty one where none are compared."""

    photos: tuple[PhotoNumbers, ...] = ()  # by all versions
    method: str | None = None  # the version that is compared
    counted: CountedOf | None = None  # of what coverage and uniformity are a share, for all trays
    others: tuple[str, ...] = ()  # other versions that have scored some of them

    @property
    def by_tray(self) -> dict[TrayId, PhotoNumbers]:
        """The photo of each tray that gives its number: the last one of the day that is not in doubt."""
        chosen: dict[TrayId, PhotoNumbers] = {}
        for photo in self.photos:
            if photo.method == self.method and photo.replaces(chosen.get(photo.tray_id)):
                chosen[photo.tray_id] = photo
        return chosen

    def by_version(self, method: str) -> "ComparedDay":
        """The same photos as another version has scored them."""
        return _counted(replace(self, method=method, others=()))

    def counted_as(self, counted: CountedOf) -> "ComparedDay":
        """The same, counted as a share of something else."""
        return replace(self, counted=counted)

    def words(self, trays: Sequence[Tray]) -> tuple[Sentence, ...]:
        """What canopy is counted as a share of; trays photographed again that day, in doubt, mended by hand.

        Nothing where nothing is compared.
        """
        photos = self.by_tray
        if self.counted is None or not photos:
            return ()
        named = {tray.code: photos[tray.id] for tray in trays if tray.id in photos}
        mended = [code for code, photo in named.items() if photo.mended]
        doubted = [code for code, photo in named.items() if photo.doubts]
        return (
            counted_words(self.counted, named),
            *self._repeated_words(trays),
            *_doubted_words(doubted),
            *_mended_words(mended),
        )

    def _repeated_words(self, trays: Sequence[Tray]) -> tuple[Sentence, ...]:
        """Who takes a photo again until it pleases should not go unseen."""
        photos = {(photo.tray_id, photo.photo_id) for photo in self.photos if photo.method == self.method}
        taken = Counter(tray for tray, _ in photos)
        again = [tray.code for tray in trays if taken[tray.id] > 1]
        if not again:
            return ()
        named = ", ".join(again)
        if any(photo.doubts for photo in self.photos if taken[photo.tray_id] > 1):
            return (
                Sentence(
                    "Photographed more than once on the day that is read, and the last photo counts, one in "
                    "doubt only where there is no other: {trays}.",
                    trays=named,
                ),
            )
        return (
            Sentence(
                "Photographed more than once on the day that is read, and the last photo counts: {trays}.",
                trays=named,
            ),
        )


def _doubted_words(codes: Sequence[str]) -> tuple[Sentence, ...]:
    """A number that the photo itself speaks against is counted, and said."""
    if not codes:
        return ()
    return (
        Sentence(
            "In doubt is the photo that counts of {trays}, for glare, something that hides part of the tray, "
            "faded colours or coloured light: their coverage may be far off.",
            trays=", ".join(codes),
        ),
    )


def _mended_words(codes: Sequence[str]) -> tuple[Sentence, ...]:
    """A canopy that a person has painted is no measurement of the camera any more."""
    if not codes:
        return ()
    return (
        Sentence(
            "Canopy mended by hand on the photo that counts: {trays}. Who knows the medium may see what was "
            "hoped for; what was measured is kept.",
            trays=", ".join(codes),
        ),
    )


def compared_day(photos: Sequence[PhotoNumbers]) -> ComparedDay:
    """How these photos can be compared."""
    scorings = scorings_of(photos)
    shown, trays = {photo.photo_id for photo in photos}, {photo.tray_id for photo in photos}
    method = comparable(scorings, len(shown), len(trays)).method
    others = tuple(one.method for one in scorings if one.method != method)
    return _counted(ComparedDay(photos=tuple(photos), method=method, others=others))


def _counted(day: ComparedDay) -> ComparedDay:
    return replace(day, counted=counted_of(tuple(day.by_tray.values())))


def scorings_of(photos: Sequence[PhotoNumbers]) -> tuple[Scorings, ...]:
    """What each version of the method has scored of some photos."""
    by_method: dict[str, list[PhotoNumbers]] = {}
    for photo in photos:
        by_method.setdefault(photo.method, []).append(photo)
    return tuple(
        Scorings(
            method=method,
            photos=len({photo.photo_id for photo in scored}),
            trays=len({photo.tray_id for photo in scored}),
            newest=max(photo.score_id for photo in scored),
        )
        for method, scored in by_method.items()
    )
