"""Between: two photos of one tray -> what grew, what vanished, what became of each suspect.

In    a book, the ids of an earlier and of a later photo of one tray
Out   `Between`: numbers, areas in mm of the later top view, one sentence for each thing worth telling
Not   measuring (`vision/change.py`), what is urgent (`looklist/mold.py`), closing suspects (`closing.py`)

Slow (top views are decoded and laid on each other, some 0.3 s): for a worker.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, NamedTuple

from data.chapters.reader import Reader
from data.records import KeptScore, PhotoId, SuspectId
from data.sentence import Sentence
from vision.history import Became
from vision.reason import Reason

if TYPE_CHECKING:
    from vision.alignment import Affine
    from vision.change import Area, Change, Moment, SuspectHistory
    from vision.planes import Pixels

__all__ = ["Between", "Outlined", "SuspectBetween", "between", "between_kept", "fate_of_suspect"]

LEAST_POINTS = 1.0  # of coverage, of the inner area: less is not told


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlined:
    """A patch of canopy on the later top view."""

    x_mm: float
    y_mm: float
    area_cm2: float
    outline_mm: tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SuspectBetween:
    """One suspect on both photos, or on one of them; places are those of the later photo."""

    became: Became
    x_mm: float
    y_mm: float
    earlier_cm2: float
    later_cm2: float
    under_leaves: bool
    """Gone from sight because leaves have grown over it: it may still be there."""
    earlier: tuple[SuspectId, ...]
    later: tuple[SuspectId, ...]
    sentence: Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class Between:
    """What happened from one photo to the other. A number that cannot be had is None, with a reason."""

    later_id: PhotoId
    sentences: tuple[Sentence, ...]
    """What is worth telling: coverage, then what a person has to know first."""
    coverage: float | None
    """Points, later less earlier."""
    appeared: float | None
    """Canopy 3 mm and more from where it stood, % of the inner area that both photos show."""
    vanished: float | None
    appeared_areas: tuple[Outlined, ...]
    """Of 1 cm2 and more, the largest first."""
    vanished_areas: tuple[Outlined, ...]
    suspects: tuple[SuspectBetween, ...]
    matrix: "Affine | None"
    """The earlier top view onto the later one, mm of a nominal tray; None where nothing stayed to lay them on
    each other."""
    turned: bool
    """The tray stood the other way round."""
    reasons: Mapping[str, Reason] = field(default_factory=dict)


def between(book: Reader, earlier: PhotoId, later: PhotoId) -> Between | None:
    """What happened between two photos of one tray; None where one is not sure or lacks its pictures."""
    scores = book.score(earlier), book.score(later)
    if scores[0] is None or scores[1] is None:
        return None
    return between_kept(book, scores[0], scores[1])


def between_kept(book: Reader, earlier: KeptScore, later: KeptScore) -> Between | None:
    """The same of two scores; None where one is not sure, or its pictures are not in the cache."""
    if not (earlier.sure and later.sure):
        return None
    from vision.alignment import align
    from vision.change import measure_change

    was, now = _seen(book, earlier), _seen(book, later)
    if was is None or now is None:
        return None
    inner_mm = (later.inner_long_mm, later.inner_short_mm)
    return _told(earlier, later, measure_change(was.moment, now.moment, align(was.top, now.top), inner_mm))


def _told(earlier: KeptScore, later: KeptScore, change: "Change") -> Between:
    suspects = tuple(_suspect(history, earlier, later) for history in change.suspects)
    return Between(
        later_id=later.photo_id,
        sentences=(
            _of_coverage(change.coverage),
            *_of_doubts(earlier, later),
            *(suspect.sentence for suspect in suspects),
            *_of_canopy(change),
        ),
        coverage=change.coverage,
        appeared=change.appeared,
        vanished=change.vanished,
        appeared_areas=_outlined(change.appeared_areas),
        vanished_areas=_outlined(change.vanished_areas),
        suspects=suspects,
        matrix=change.alignment.matrix,
        turned=change.alignment.turned,
        reasons=change.reasons,
    )


# --- words


def _of_canopy(change: "Change") -> list[Sentence]:
    if change.coverage is None:
        return []
    told = []
    if change.alignment.turned:
        told.append(Sentence("The tray stood the other way round; the comparison allows for it."))
    return [*told, *_of_places(change)]


def _of_doubts(earlier: KeptScore, later: KeptScore) -> list[Sentence]:
    """What is doubtful about either photo: it may look like a change."""
    before = Sentence(
        "The earlier photo is in doubt, so what seems to have changed may be that: {why}.", why=""
    )
    after = Sentence("The later photo is in doubt, so what seems to have changed may be that: {why}.", why="")
    return [
        sentence.but(why=note)
        for sentence, score in ((before, earlier), (after, later))
        for note in score.doubts
    ]


def _of_places(change: "Change") -> list[Sentence]:
    if change.vanished is None or change.appeared is None:
        return [
            Sentence(
                "Too little stayed in place to lay the photos on each other, so single places are not "
                "compared."
            )
        ]
    told = []
    if not change.alignment.is_exact and change.alignment.error_mm is not None:
        told.append(
            Sentence(
                "Leaves have moved unlike each other: single places are told to within {error:.0f} mm.",
                error=max(2.0, change.alignment.error_mm),
            )
        )
    if change.appeared >= LEAST_POINTS:
        told.append(
            Sentence(
                "Away from the canopy that stood before, by 3 mm and more, {appeared:.0f} % of the tray was "
                "newly covered.",
                appeared=round(change.appeared, 1),
            )
        )
    if change.vanished >= LEAST_POINTS:
        told.append(
            Sentence("Canopy vanished from {vanished:.0f} % of the tray.", vanished=round(change.vanished, 1))
        )
    if change.vanished_areas:
        largest = change.vanished_areas[0]
        told.append(
            Sentence(
                "The largest place that lost its canopy has {area:.0f} cm², {x:.0f} cm from the left and "
                "{y:.0f} cm from the far side.",
                area=largest.area_cm2,
                x=largest.x_mm / 10,
                y=largest.y_mm / 10,
            )
        )
    return told


def _of_coverage(points: float | None) -> Sentence:
    if points is None:
        return Sentence("The photos were scored by different methods, so their canopy is not compared.")
    if abs(points) < LEAST_POINTS:
        return Sentence("Coverage stayed within a point.")
    if points > 0:
        return Sentence("Coverage rose by {points:.1f} points.", points=points)
    return Sentence("Coverage fell by {points:.1f} points.", points=-points)


def fate_of_suspect(
    became: Became, earlier_cm2: float, later_cm2: float, *, under_leaves: bool = False
) -> Sentence:
    """What became of a suspect, and what that means."""
    sizes = {"was": earlier_cm2, "now": later_cm2}
    match became:
        case Became.NEW:
            return Sentence("A patch of {now:.1f} cm² is new: the earlier photo does not show it.", **sizes)
        case Became.LARGER:
            return Sentence(
                "A patch grew from {was:.1f} to {now:.1f} cm². Mold grows: look at it now.", **sizes
            )
        case Became.EQUAL:
            return Sentence("A patch is as large as before: {was:.1f} and {now:.1f} cm².", **sizes)
        case Became.SMALLER:
            return Sentence(
                "Less is seen of a patch: {was:.1f} cm² before, {now:.1f} cm² now. Root hairs fade, mold "
                "seldom does; leaves may hide part of it.",
                **sizes,
            )
        case _ if under_leaves:
            return Sentence(
                "Leaves have grown over a patch of {was:.1f} cm². It may still be there: lift the leaves and "
                "look.",
                **sizes,
            )
        case _:
            return Sentence(
                "A patch of {was:.1f} cm² is no longer seen. Root hairs fade, mold seldom does.", **sizes
            )


# --- one thing at a time


def _suspect(history: "SuspectHistory", earlier: KeptScore, later: KeptScore) -> SuspectBetween:
    under_leaves = history.under_leaves
    return SuspectBetween(
        became=history.became,
        x_mm=history.x_mm,
        y_mm=history.y_mm,
        earlier_cm2=history.earlier_cm2,
        later_cm2=history.later_cm2,
        under_leaves=under_leaves,
        earlier=tuple(_placed(earlier)[k] for k in history.earlier),
        later=tuple(_placed(later)[k] for k in history.later),
        sentence=fate_of_suspect(
            history.became, history.earlier_cm2, history.later_cm2, under_leaves=under_leaves
        ),
    )


def _placed(score: KeptScore) -> list[SuspectId]:
    """Ids in the order of the moment's suspects."""
    return [one.id for one in score.suspects if one.x_mm is not None and one.y_mm is not None]


class _Seen(NamedTuple):
    top: "Pixels"
    moment: "Moment"


def _seen(book: Reader, score: KeptScore) -> _Seen | None:
    """Top view and labels from the cache; None where they are missing, damaged or of another size."""
    from vision.change import Moment
    from vision.picture import decode_jpeg, decode_labels
    from vision.suspect import Suspect
    from vision.topview import TOP_HEIGHT, TOP_WIDTH

    places = book.pictures(score.photo_id)
    if places is None:
        return None
    try:
        top, labels = decode_jpeg(places.top_view.read_bytes()), decode_labels(places.labels.read_bytes())
    except OSError:
        return None
    size = (TOP_HEIGHT, TOP_WIDTH)
    if top is None or labels is None or top.shape[:2] != size or labels.shape != size:
        return None
    suspects = tuple(
        Suspect(
            x_mm=one.x_mm,
            y_mm=one.y_mm,
            area_cm2=one.area_cm2 or 0.0,
            confidence=one.confidence,
            why=one.why,
            outline_mm=one.outline_mm,
        )
        for one in score.suspects
        if one.x_mm is not None and one.y_mm is not None
    )
    return _Seen(top, Moment(labels=labels, suspects=suspects, method=score.method))


def _outlined(areas: Sequence["Area"]) -> tuple[Outlined, ...]:
    return tuple(
        Outlined(x_mm=area.x_mm, y_mm=area.y_mm, area_cm2=area.area_cm2, outline_mm=area.outline_mm)
        for area in areas
    )
