"""Station check: do the four cards lie where they should, and if not, which one, how far and which way.

In    the marks of one photo, its size and focal length, the kind of tray; or a whole photo
Out   `StationCheck`: true, one card named with its way, or why it cannot be told; tilt, light
Not   finding marks (`markers.py`), scoring with a station that is out of true (`station.py`), words for it

Each card is left out in turn: the camera's pose comes from the other three and the tag, and the card's seen
middle is laid back onto the bench. The card without which the others agree is the one that was moved.
Middles of three cards fit some camera always; what tells a wrong answer from the right one is how large and
how skewed each mark is seen. So marks must be large in the photo. Two cards moved so that three still look
like a slightly larger or smaller station pass for one moved card: about one pair in fifteen that lie 3.5 mm
off at random.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from vision.corners import Corners
from vision.light import judge_light
from vision.markers import CARDS, Marks, Quad, find_marks
from vision.photo import Photo, grey
from vision.pose import Pose, Seen
from vision.posefit import Fit, best_fit
from vision.reason import Reason
from vision.station import patches, station_corners
from vision.topview import make_top_view
from vision.traytype import TrayType

__all__ = ["CardPlace", "Found", "StationCheck", "check_marks", "check_photo"]

Point = tuple[float, float]

# from trials with drawn cameras of 12 megapixels and 0.3 px noise: see tests/vision/test_stationcheck.py
TRUE_MM = 1.0  # nearer to its place a card is in it; 1.5 mm off moves the rim by 1.6 mm (worst of 30: 3.6)
AGREE = 2.0  # misfit up to which four cards agree
WITHOUT = 1.4  # misfit up to which three cards agree once the moved one is left out
CLEARER = 1.4  # so much worse must it be to leave out any other card
LEAST_MARK_PX = 150.0  # side of a mark: on smaller ones the size tells nothing
MOST_TILT_DEG = 25.0
SURE = 2.5  # standard errors


class Found(StrEnum):
    """What became of a check."""

    TRUE = "true"
    ONE_CARD = "one card"  # named, with its way
    UNSURE = "unsure"  # something is off, and it cannot be told which card
    NO_MARKS = "no marks"
    MISSING = "missing"  # fewer than four cards
    SMALL = "small"  # the marks are too small in the photo


@dataclass(frozen=True, slots=True, kw_only=True)
class CardPlace:
    """How far a card lies from its place as the three others see it, mm: to the right, to the far side."""

    number: int
    right_mm: float
    far_mm: float
    spread_mm: float  # standard error
    misfit: float  # of the three others; 1 = they agree as well as marks can

    @property
    def away_mm(self) -> float:
        """The way in a straight line."""
        return math.hypot(self.right_mm, self.far_mm)


@dataclass(frozen=True, slots=True, kw_only=True)
class StationCheck:
    """The answer; `moved` is the one card that lies wrong, where that can be told."""

    found: Found
    moved: CardPlace | None = None
    places: tuple[CardPlace, ...] = ()  # of all cards, each seen from the others
    missing: tuple[int, ...] = ()  # cards that were not seen
    tag: int | None = None
    misfit: float | None = None  # of all marks together
    tilt_deg: float | None = None
    blur_mm: float | None = None
    refusal: Reason | None = None  # of the light: the photo could not be scored

    @property
    def tilted(self) -> bool:
        """Whether the phone was held so askew that near and far differ much."""
        return self.tilt_deg is not None and self.tilt_deg > MOST_TILT_DEG


def check_photo(photo: Photo, tray: TrayType | None = None) -> StationCheck:
    """Find the marks of a photo, check them, and look at its light."""
    tray = tray or TrayType()
    marks = find_marks(grey(photo), tray)
    check = check_marks(marks, photo.size_stored, photo.focal_35mm, tray)
    corners = station_corners(marks, photo, tray)
    return check if corners is None else _with_light(check, photo, marks, corners, tray)


def check_marks(
    marks: Marks, size: tuple[int, int], focal_35mm: float | None, tray: TrayType
) -> StationCheck:
    """Where each card lies, from marks alone; light and sharpness are left open."""
    tag = None if marks.tag is None else marks.tag.number
    missing = tuple(number for number in CARDS if number not in marks.cards)
    if missing:
        found = Found.MISSING if marks.cards or marks.tag else Found.NO_MARKS
        return StationCheck(found=found, missing=missing, tag=tag)
    seen = _seen(marks, tray)
    whole = best_fit(seen, size, focal_35mm)
    if whole is None or min(_side(quad) for quad in marks.cards.values()) < LEAST_MARK_PX:
        return StationCheck(found=Found.SMALL, tag=tag)
    places = tuple(_place(seen, number, size, focal_35mm) for number in CARDS)
    known = tuple(place for place in places if place is not None)
    found, moved = _told(whole, known)
    return StationCheck(
        found=found,
        moved=moved,
        places=known,
        tag=tag,
        misfit=whole.misfit,
        tilt_deg=whole.pose.tilt_deg,
    )


def _told(whole: Fit, places: tuple[CardPlace, ...]) -> tuple[Found, CardPlace | None]:
    """The answer of the places."""
    if len(places) < len(CARDS):
        return Found.UNSURE, None
    first, second, *_ = sorted(places, key=lambda place: place.misfit)
    at_home = all(place.away_mm <= max(TRUE_MM, SURE * place.spread_mm) for place in places)
    if at_home:
        return (Found.TRUE if whole.misfit <= AGREE else Found.UNSURE), None
    clear = first.misfit <= WITHOUT and second.misfit >= CLEARER * first.misfit
    if clear and first.away_mm > max(TRUE_MM, SURE * first.spread_mm):
        return Found.ONE_CARD, first
    return Found.UNSURE, None


def _place(
    seen: list[Seen], number: int, size: tuple[int, int], focal_35mm: float | None
) -> CardPlace | None:
    """One card as the others see it."""
    fit = best_fit(seen[:number] + seen[number + 1 :], size, focal_35mm)
    card = seen[number]
    if fit is None or card.quad_mm is None:
        return None
    right, far = _laid_back(fit.pose, card.quad_mm, card.corners)
    return CardPlace(
        number=number, right_mm=right, far_mm=far, spread_mm=fit.spread(card.quad_mm), misfit=fit.misfit
    )


def _laid_back(pose: Pose, quad_mm: NDArray[np.float64], corners: NDArray[np.float64]) -> Point:
    """How far the card must be slid on the bench until its middle is seen where it was, mm; Newton."""
    slid, step = np.zeros(2), 0.01

    def seen_at(x: float, y: float) -> NDArray[np.float64]:
        return np.asarray(pose.project(quad_mm + np.array([x, y, 0.0])).mean(axis=0), np.float64)

    for _ in range(8):
        here = seen_at(*slid)
        slope = np.column_stack(
            [seen_at(slid[0] + step, slid[1]) - here, seen_at(slid[0], slid[1] + step) - here]
        )
        slid = slid - np.linalg.solve(slope / step, here - corners.mean(axis=0))
    return float(slid[0]), float(slid[1])


def _seen(marks: Marks, tray: TrayType) -> list[Seen]:
    """The cards in their order, the tag last."""
    cards: Mapping[int, Quad] = marks.cards
    seen = [Seen(corners=np.array(cards[number]), quad_mm=tray.card_quad(number)) for number in CARDS]
    if marks.tag is not None:
        seen.append(Seen(corners=np.array(marks.tag.quad), quad_mm=None))
    return seen


def _side(quad: Quad) -> float:
    corners = np.array(quad)
    return float(np.linalg.norm(corners - np.roll(corners, 1, axis=0), axis=1).mean())


def _with_light(
    check: StationCheck, photo: Photo, marks: Marks, corners: Corners, tray: TrayType
) -> StationCheck:
    """The same with what the light of the photo says."""
    top = make_top_view(photo, corners, (tray.inner_long_mm, tray.inner_short_mm))
    light = judge_light(photo, top, patches(marks, photo))
    tilt = corners.tilt_deg if check.tilt_deg is None else check.tilt_deg
    # an empty grey tray has no colour to lose
    refusal = None if light.refusal is Reason.FADED else light.refusal
    return replace(check, blur_mm=light.blur_mm, refusal=refusal, tilt_deg=tilt)
