"""Mold: the suspects of one tray on its photos -> what needs a look.

In    a tray, its suspects, the numbers of its photos; oldest first
Out   `Look`s: what a person called mold, else the open suspects of the newest sure photo, else those of
      earlier photos that it does not show
Not   numbers of the stand (`standing.py`), finding suspects (`vision`)

A suspect is held against the photo of the day before, which was laid on this one when it came in
(`photos/carried.py`): one that grew is urgent, for mold grows; one that is gone from the newest photo is no
news, for root hairs fade: it has closed itself (`chapters/closing.py`), and what comes back at its place is
new. One that is gone from sight and has not closed itself may lie under leaves, or the photo is in doubt: it
stays on the list until a person has looked, or a better photo was taken. Only photos with sure corners,
scored by the same version of the method, are compared. Limits are common practice.
"""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from itertools import chain

from data.photos.carried import Patches
from data.records import DayNumbers, Look, LookKind, PhotoId, Said, SeenSuspect, Tray, Urgency
from vision.history import Became, Course, courses

__all__ = ["MOLD_CAUTION", "looks_at_mold"]

Days = dict[date, list[SeenSuspect]]  # suspects of the last photo of each earlier day, newest day first

GROWN_AFTER_NOT_MOLD = 1.5  # times the area that a person has looked at
LEAST_CONFIDENCE = 0.3  # fainter ones stand on the tray sheet only, until they grow (`models/mold.md`)
SURE_CONFIDENCE = 0.6  # a new patch that is worth a look on the same day
STILL_DAYS = 2  # a patch that has not grown for so long can wait: mold does not stand still (common practice)

AWAY = "Take the tray away from the others, closed, and note on its sheet that it was thrown away."
LOOK_THERE = (
    "Look at the place without touching it: a grey web over stems and hulls speaks for mold, a white fan at "
    "each root that lies flat when misted for root hairs. Then say which it is."
)
MOLD_CAUTION = (
    "A flag is a reason to look, no finding; no flag is no proof that a tray is safe. Do not taste, sell or "
    "give away from a tray with mold. Open it away from others, with gloves and a suitable respirator; keep "
    "people with asthma or weak immunity away. Clean tray and tools afterwards."
)


def looks_at_mold(tray: Tray, seen: Sequence[SeenSuspect], photos: Sequence[DayNumbers]) -> Iterator[Look]:
    """What a person called mold, else the open suspects of the newest photo."""
    called = [suspect for suspect in seen if suspect.said is Said.MOLD]
    if called:
        first = called[0].taken_at.date()
        yield Look(
            tray_id=tray.id,
            code=tray.code,
            what=LookKind.MOLD,
            urgency=Urgency.NOW,
            since=first,
            sentence=f"You said mold on the photo of {_day(first)}; the tray still stands on the rack.",
            first=AWAY,
            caution=MOLD_CAUTION,
            photo_id=called[0].photo_id,
        )
        return
    usable = [photo for photo in photos if photo.sure]
    if not usable or not seen:
        return
    newest = usable[-1].photo_id
    now = [s for s in seen if s.photo_id == newest and s.said is None]
    earlier = [s for s in seen if s.photo_id != newest]
    patches, by_day = Patches(seen), _days_before(usable, seen)
    days = list(by_day.values())
    wanted = [s for s in _worth_a_look(now, days, patches) if not _settled(s, earlier, patches)]
    if wanted:
        yield _possible_mold(tray, wanted, earlier, days, patches)
    elif hidden := _out_of_sight(seen, usable, by_day, patches):
        yield _unseen_now(tray, hidden, earlier, patches, usable[-1])


def _worth_a_look(
    now: Iterable[SeenSuspect], days: Sequence[Sequence[SeenSuspect]], patches: Patches
) -> list[SeenSuspect]:
    """Those that are told with some confidence, and faint ones that have grown since they were first seen."""
    return [s for s in now if s.confidence >= LEAST_CONFIDENCE or _has_grown(s, days, patches)]


def _has_grown(suspect: SeenSuspect, days: Sequence[Sequence[SeenSuspect]], patches: Patches) -> bool:
    course = _course([suspect], days, patches)
    return course is not None and course.became is Became.LARGER


def _settled(suspect: SeenSuspect, earlier: Iterable[SeenSuspect], patches: Patches) -> bool:
    """Whether a person has said "not mold" of this patch, and it has not grown since."""
    said = [s for s in earlier if s.said is Said.NOT_MOLD and patches.same(s, suspect)]
    return bool(said) and _area(suspect) < GROWN_AFTER_NOT_MOLD * max(map(_area, said))


def _out_of_sight(
    seen: Sequence[SeenSuspect], photos: Sequence[DayNumbers], days: Days, patches: Patches
) -> list[SeenSuspect]:
    """Open patches that the newest photo does not show, each as it was last seen: today, or on a day before.

    Of a day that is over its last photo tells; of today each does, for nobody may have looked yet.
    """
    newest = photos[-1]
    today = {
        photo.photo_id
        for photo in photos[:-1]
        if photo.method == newest.method and photo.taken_at.date() == newest.taken_at.date()
    }
    met, found = [s for s in seen if s.photo_id == newest.photo_id], []
    for suspect in chain((s for s in reversed(seen) if s.photo_id in today), *days.values()):
        if any(patches.same(suspect, one) for one in met):
            continue
        met.append(suspect)
        before = [s for s in seen if s.taken_at < suspect.taken_at]
        if suspect.said is None and not suspect.closed and not _settled(suspect, before, patches):
            earlier = [shown for day, shown in days.items() if day < suspect.taken_at.date()]
            found += _worth_a_look([suspect], earlier, patches)
    return found


def _days_before(photos: Sequence[DayNumbers], seen: Sequence[SeenSuspect]) -> Days:
    """Suspects of the last photo of each earlier day, newest day first; an empty list where it has none.

    A photo in doubt that shows none tells nothing: as if there had been no photo.
    """
    newest = photos[-1]
    last: dict[date, PhotoId] = {}
    for photo in photos:
        told = not photo.doubts or any(s.photo_id == photo.photo_id for s in seen)
        if told and photo.method == newest.method and photo.taken_at.date() < newest.taken_at.date():
            last[photo.taken_at.date()] = photo.photo_id
    return {
        day: [s for s in seen if s.photo_id == photo] for day, photo in sorted(last.items(), reverse=True)
    }


def _course(
    now: Sequence[SeenSuspect], days: Iterable[Sequence[SeenSuspect]], patches: Patches
) -> Course[SeenSuspect] | None:
    """What became of the patches of today: the largest that grew, else the largest; None if all are new.

    One that grows too slowly to show in a day is followed back for as long as every day shows it.
    """
    known: Course[SeenSuspect] | None = None
    for before in days:
        both = [course for course in courses(before, now, patches.same) if course.earlier and course.later]
        if not both:
            return known
        grown = [course for course in both if course.became is Became.LARGER]
        if grown:
            return max(grown, key=lambda course: course.later_cm2)
        known = known or max(both, key=lambda course: course.later_cm2)
    return known


def _stands_still(
    now: Sequence[SeenSuspect], days: Sequence[Sequence[SeenSuspect]], patches: Patches
) -> bool:
    """Whether all patches of today were there on each of the last days, and none has grown since."""
    if len(days) < STILL_DAYS:
        return False
    told = [course for before in days[:STILL_DAYS] for course in courses(before, now, patches.same)]
    return all(bool(course.earlier) and course.became is not Became.LARGER for course in told if course.later)


def _possible_mold(
    tray: Tray,
    now: Sequence[SeenSuspect],
    earlier: Sequence[SeenSuspect],
    days: Sequence[Sequence[SeenSuspect]],
    patches: Patches,
) -> Look:
    largest = max(now, key=_area)
    surest = max(s.confidence for s in now)
    before = _same_before(now, earlier, patches)
    course = _course(now, days, patches)
    still = _stands_still(now, days, patches)
    likely = surest >= SURE_CONFIDENCE or bool(before)
    words = [_patches_words(now)]
    if course is not None:
        words.append(_what_became(course))
    if still:
        words.append(f"not grown for {STILL_DAYS} days")
    words.append(f"confidence {surest:.2f}")
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.SUSPECT,
        urgency=_urgency(course, surest, still=still, likely=likely),
        since=min((e.taken_at for e in before), default=largest.taken_at).date(),
        sentence="; ".join(words) + ".",
        first=LOOK_THERE,
        caution=MOLD_CAUTION,
        photo_id=largest.photo_id,
    )


def _unseen_now(
    tray: Tray,
    hidden: Sequence[SeenSuspect],
    earlier: Sequence[SeenSuspect],
    patches: Patches,
    newest: DayNumbers,
) -> Look:
    last = max(hidden, key=lambda s: s.taken_at)
    day = last.taken_at.date()
    where = _where_unseen(day, newest)
    before = _same_before(hidden, earlier, patches)
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.SUSPECT,
        urgency=Urgency.TODAY,
        since=min(e.taken_at for e in before).date(),
        sentence="; ".join(
            (
                _patches_words(hidden),
                where.format(_day(day)),
                f"confidence {max(s.confidence for s in hidden):.2f}.",
            )
        ),
        first=LOOK_THERE
        if newest.doubts
        else "Lift the leaves at the place without touching what is under them: a grey web over stems and "
        "hulls speaks for mold, a white fan at each root that lies flat when misted for root hairs. Then say "
        "which it is.",
        caution=MOLD_CAUTION,
        photo_id=last.photo_id,
    )


def _where_unseen(day: date, newest: DayNumbers) -> str:
    """Where it was seen last, and why not on the newest photo."""
    if newest.doubts:
        return "last seen on {}; the newest photo, which is in doubt, does not tell whether it is gone"
    if day == newest.taken_at.date():
        return "on an earlier photo of {}, not on the newest"
    return "last seen on {}, leaves may hide it now"


def _same_before(
    some: Sequence[SeenSuspect], earlier: Iterable[SeenSuspect], patches: Patches
) -> list[SeenSuspect]:
    """The same patches as photos have shown them before, as far as they have not closed themselves."""
    return [e for e in earlier if not e.closed and any(patches.same(e, s) for s in some)]


def _patches_words(some: Sequence[SeenSuspect]) -> str:
    largest = max(some, key=_area)
    many = "1 patch" if len(some) == 1 else f"{len(some)} patches"
    return f"{many} that may be mold, the largest {_area(largest):.1f} cm²{_where(largest)}"


def _urgency(course: Course[SeenSuspect] | None, surest: float, *, still: bool, likely: bool) -> Urgency:
    if course is not None and course.became is Became.LARGER:
        return Urgency.NOW if surest >= LEAST_CONFIDENCE else Urgency.TODAY
    return Urgency.TODAY if likely and not still else Urgency.SOON


def _what_became(course: Course[SeenSuspect]) -> str:
    day = _day(course.earlier[0].taken_at.date())
    if course.became is Became.LARGER:
        return f"grown from {course.earlier_cm2:.1f} to {course.later_cm2:.1f} cm² since {day}"
    how = "smaller than" if course.became is Became.SMALLER else "as large as"
    return f"{how} on {day} ({course.earlier_cm2:.1f} cm²)"


def _area(suspect: SeenSuspect) -> float:
    return suspect.area_cm2 or 0.0


def _where(suspect: SeenSuspect) -> str:
    if suspect.x_mm is None or suspect.y_mm is None:
        return ""
    return f", {suspect.x_mm / 10:.0f} cm from the left and {suspect.y_mm / 10:.0f} cm from the far side"


def _day(day: date) -> str:
    return f"{day.day} {day:%B}"
