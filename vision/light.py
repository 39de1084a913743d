"""Light: can this photo be used, and what colour was the light.

In    photo and top view, the mean light of the tag's patches where they were seen
Out   `Light`: exposure, clipped, dark and glaring shares, sharpness, cast, veil, the reason to refuse, if
      any, and those to doubt; pixels with white balanced
Not   what is in the tray (`tissue.py`)

Only what cannot be used is refused: blurred, too dark, burnt out, without colour, purple. What may have moved
coverage by five points and more is a doubt: the score says so, and not how far off it may be. A crop may be
purple itself and fill its tray, so the colour of the light is told from what lies around the tray, or from
the tag's white patch.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import encoded, lab, linear
from vision.fading import Fading, fading
from vision.glare import MOST_HIDDEN_PCT, hidden_pct
from vision.photo import Photo, Pixels, in_srgb
from vision.reason import Reason
from vision.sharpness import edge_rise_mm, laplacian_variance, smear
from vision.softness import MOST_SOFT_PCT, soft_pct
from vision.topview import PX_PER_MM, TopView, tray_quad
from vision.veil import MOST_VEIL, veil_of, without_veil

if TYPE_CHECKING:
    from vision.station import Patches

__all__ = ["BLACK", "Light", "judge_light", "judge_pixels", "surroundings_tint", "white_balance"]

MOST_BLUR_MM = 2.4  # rise of the best edges; from there on coverage was off by 5 points and more in trials
MOST_SMEAR = 1.5  # a hand that moved by 3 to 4 mm; from there on coverage was off by up to 38 points
# Rise in pixels of the photo: four rendered ones stored smaller, to 240 px, had 0.8 to 1.9 at every size.
SHARP_PX = 2.0
LEAST_MOVED_MM = 1.2  # rise of the best edges: where they are sharper each way, nothing has moved
MOST_BURNT_PCT = 8.0  # common practice: 5 to 10 %
MOST_DARK_PCT = 10.0  # common practice: 5 to 10 %
LEAST_LIGHTEST = 15.0  # L* of the lightest tenth; four stops too dark, where coverage was off by 7 points
MOST_FADED_PCT = 15.0  # two channels at their end; two stops too light, where coverage was off by 10 points
MOST_LIGHTNESS = 87.0  # mean L*; white paper in good light stays below
CLIPPED = 254  # codes from here on are at their end: JPEG may take one from 255
BURNT = 250  # all three channels: no tissue has any colour left
BLACK = 3  # codes up to here are black: JPEG may add as much to 0
GLARE_SPREAD = 16  # codes between the channels of a clipped pixel that is nearly white
COLOURLESS = 3  # codes between the channels that compression alone can make
MOST_COLOURED = 0.001  # share of pixels with more, as a stray of compression may have

PURPLE_TINT = -0.2  # log2 of green over the geometric mean of red and blue; white lights keep it near 0
GREEN_TINT = 0.25  # above: leaves that hang over, and no witness
AROUND = 1.18  # times the inner area: beyond the rim and most of what hangs over it
BEYOND_PX = 240  # longer side of the sample of the photo
LEAST_LIGHT = 0.02  # of a pixel's strongest channel: below it a tint is noise
LEAST_WITNESSES = 200  # px of that sample, half a percent of it: fewer have no middle worth the name
# Of what is lit around the tray. Purple light leaves at least 0.88 (9 photos), warm light that no camera has
# set right at most 0.12 (of 10 photos, made so): the reddest things, which were taken for purple light.
LEAST_WITNESS_SHARE = 0.5
LIGHTEST_PCT = 97.0  # of the sample's weakest channels: cards, tags and paper are lighter

# Common practice: beyond that one channel holds too little to be amplified. Coverage was off by 5 points and
# more in 6 of 33 rendered photos made so coloured.
MOST_CAST = 3.0
Linear = tuple[float, float, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Light:
    """How a photo was lit, and whether it can be used."""

    exposure: float  # mean L* of the top view, 0-100
    clipped_pct: float  # top view: any channel at its end
    dark_pct: float  # top view: black in all channels
    glare_pct: float  # top view: clipped and without colour
    sharpness: float  # Laplacian variance of the top view, squared codes
    blur_mm: float | None  # 10-90 % rise of the best edges on the tray
    cast: float | None  # strongest over weakest channel of the patch in linear light, 1 = neutral
    corrected_by: str  # "patch" or "none"
    veil: float = 0.0  # light that lies over all of the photo, as a share of that of the lightest things, 0-1
    refusal: Reason | None = None  # why the photo cannot be used
    doubts: tuple[Reason, ...] = ()  # why coverage may be far off, although it can be used
    reasons: Mapping[str, Reason] = field(default_factory=dict)  # by name of the field that is None


def judge_light(photo: Photo, top: TopView, patches: "Patches | None") -> Light:
    """How the photo was lit and whether it can be used; the top view is the one before white balance."""
    blur_mm = edge_rise_mm(photo, top)
    tint = (
        surroundings_tint(photo, top) if (white := _neutral(patches)) is None else _tint(np.array([white]))[0]
    )
    sample = _sample(photo)
    veil = veil_of(top.pixels, sample)
    clear = without_veil(top.pixels, veil)
    faded = fading(clear, without_veil(sample, veil, top.pixels))
    refusals = (
        Reason.GREY if _colourless(top.pixels) else None,
        Reason.PURPLE if tint is not None and tint < PURPLE_TINT else None,
        _why_blurred(blur_mm, top) if _blurred(blur_mm, top) else None,
        Reason.FADED if faded is Fading.LOST else None,
    )
    light = _light(top.pixels, blur_mm, Reason.NO_EDGE, patches, refusals)
    doubts = (
        (Reason.COLOURED, _neutral(patches) is not None and _gains(patches) is None),
        (Reason.FADED, faded is not Fading.NONE or veil > MOST_VEIL),
        (Reason.GLARE, hidden_pct(clear) > MOST_HIDDEN_PCT),
        (Reason.HIDDEN, soft_pct(top.pixels) > MOST_SOFT_PCT),
    )
    return replace(light, veil=veil, doubts=tuple(reason for reason, holds in doubts if holds))


def _blurred(blur_mm: float | None, top: TopView) -> bool:
    """Out of focus all over, or smeared by a hand that moved.

    Without any edge, be it the rim's, a photo is blurred past telling: of 78 rendered ones to learn from each
    has edges, and blurred by 8 mm (standard deviation) none of 26.
    """
    if blur_mm is None:
        return True
    if blur_mm < LEAST_MOVED_MM:
        return False
    moved = smear(np.asarray(cv2.cvtColor(top.pixels, cv2.COLOR_RGB2GRAY), np.uint8))
    return blur_mm > MOST_BLUR_MM or (moved is not None and moved > MOST_SMEAR)


def _why_blurred(blur_mm: float | None, top: TopView) -> Reason:
    """Out of focus or moved; or as sharp as its pixels allow, of which the tray has too few."""
    if blur_mm is None or blur_mm <= MOST_BLUR_MM:
        return Reason.BLURRED
    rise_px = blur_mm * min(top.photo_px_per_mm, PX_PER_MM)
    return Reason.TOO_FAR if rise_px < SHARP_PX else Reason.BLURRED


def judge_pixels(pixels: Pixels) -> Light:
    """The same for a picture in sRGB that is a top view already, of unknown scale.

    Without surroundings and scale it is never refused as purple or blurred.
    """
    light = _light(pixels, None, Reason.NO_SCALE, None, (Reason.GREY if _colourless(pixels) else None,))
    return light if fading(pixels, None) is Fading.NONE else replace(light, doubts=(Reason.FADED,))


def _light(
    pixels: Pixels,
    blur_mm: float | None,
    no_blur: Reason,
    patches: "Patches | None",
    refusals: tuple[Reason | None, ...],
) -> Light:
    lightness = lab(pixels)[:, :, 0]
    least, middle, most = _ordered(pixels)
    clipped = most >= CLIPPED
    glare = clipped & (cv2.subtract(most, least) <= GLARE_SPREAD)
    exposure, dark = float(lightness.mean()), _pct(_at_most(most, BLACK), most)
    too_dark = dark > MOST_DARK_PCT or _percentile(lightness, 90) < LEAST_LIGHTEST
    in_order = (
        Reason.TOO_DARK if too_dark else None,
        Reason.TOO_BRIGHT if exposure > MOST_LIGHTNESS or _burnt_out(least, middle) else None,
        *refusals,
    )
    neutral = _neutral(patches)
    missing = (
        ("blur_mm", no_blur if blur_mm is None else None),
        ("cast", Reason.NO_PATCH if neutral is None else None),
    )
    return Light(
        exposure=exposure,
        clipped_pct=_pct(int(np.count_nonzero(clipped)), most),
        dark_pct=dark,
        glare_pct=_pct(int(np.count_nonzero(glare)), most),
        sharpness=laplacian_variance(np.asarray(cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY), np.uint8)),
        blur_mm=blur_mm,
        cast=None if neutral is None else max(neutral) / min(neutral),
        corrected_by="none" if _gains(patches) is None else "patch",
        refusal=next((reason for reason in in_order if reason is not None), None),
        reasons={name: reason for name, reason in missing if reason is not None},
    )


def _burnt_out(least: NDArray[np.uint8], middle: NDArray[np.uint8]) -> bool:
    """Whether too much of a picture has all its channels, or two of them, at their end."""
    burnt = 100 - _pct(_at_most(least, BURNT - 1), least)
    faded = 100 - _pct(_at_most(middle, CLIPPED - 1), middle)
    return burnt > MOST_BURNT_PCT or faded > MOST_FADED_PCT


def _pct(count: int, channel: NDArray[np.uint8]) -> float:
    return 100 * count / channel.size


def _ordered(pixels: Pixels) -> tuple[NDArray[np.uint8], NDArray[np.uint8], NDArray[np.uint8]]:
    """Least, middle and greatest channel of every pixel."""
    red, green, blue = cv2.split(pixels)
    less, more = cv2.min(red, green), cv2.max(red, green)
    ordered = cv2.min(less, blue), cv2.max(less, cv2.min(more, blue)), cv2.max(more, blue)
    least, middle, most = (np.asarray(channel, np.uint8) for channel in ordered)
    return least, middle, most


def _at_most(channel: NDArray[np.uint8], code: int) -> int:
    return int(cv2.countNonZero(cv2.inRange(channel, 0, code)))


def _percentile(lightness: NDArray[np.float32], share: float) -> float:
    """L* that so many per cent of the pixels stay under, to a quarter."""
    counts = cv2.calcHist([np.ascontiguousarray(lightness)], [0], None, [400], [0.0, 100.01]).ravel()
    return float(np.searchsorted(np.cumsum(counts), share / 100 * counts.sum()) / 4)


def _colourless(pixels: Pixels) -> bool:
    """True where no pixel worth the name has a colour: a black and white photo saved as RGB."""
    least, _, most = _ordered(pixels)
    spread = cv2.subtract(most, least)
    return _at_most(np.asarray(spread, np.uint8), COLOURLESS) >= (1 - MOST_COLOURED) * spread.size


def surroundings_tint(photo: Photo, top: TopView) -> float | None:
    """Colour of the light on the scale from purple (below 0) to green, None where too little is seen around.

    The tint of a pixel is log2 of its green over the geometric mean of its red and blue, in linear light. All
    white lights, from warm to cold, keep grey things near 0 on it, and browns and woods too; what grow lights
    without green do to them is far below. Both must be purple: what lies around the tray in the middle, and
    the lightest things of the photo. A brick-red bench alone is no purple light.
    """
    sample = _sample(photo)
    light = linear(sample).reshape(-1, 3)
    tint = _tint(light)
    lit = (light.max(axis=1) > LEAST_LIGHT) & (sample.reshape(-1, 3).max(axis=1) < CLIPPED)
    witness = lit & (tint < GREEN_TINT)
    beyond = _tray_mask(sample.shape[:2], top, _step(photo)).ravel() == 0
    around = witness & beyond
    seen = int(np.count_nonzero(around))
    if seen < max(LEAST_WITNESSES, LEAST_WITNESS_SHARE * np.count_nonzero(lit & beyond)):
        return None
    weakest = light.min(axis=1)
    lightest = witness & (weakest >= np.percentile(weakest, LIGHTEST_PCT))
    tints = [float(np.median(tint[around]))]
    if np.count_nonzero(lightest) >= LEAST_WITNESSES // 10:
        tints.append(float(np.median(tint[lightest])))
    return max(tints)


def _sample(photo: Photo) -> Pixels:
    """Every so many pixels of the whole photo, in sRGB."""
    step = _step(photo)
    return in_srgb(np.ascontiguousarray(photo.pixels[::step, ::step]), photo.profile)


def _step(photo: Photo) -> int:
    return max(1, max(photo.size_stored) // BEYOND_PX)


def _tint(light: NDArray[np.floating]) -> NDArray[np.floating]:
    """Tint of linear pixels (n, 3); a thousandth keeps black from having any."""
    red, green, blue = (light + 1e-3).T
    return np.asarray(np.log2(green) - (np.log2(red) + np.log2(blue)) / 2)


def _tray_mask(shape: tuple[int, ...], top: TopView, step: int) -> NDArray[np.uint8]:
    """1 where the tray and what hangs over it lies in every `step`-th pixel of the photo."""
    quad = tray_quad(top, AROUND) / step
    mask = np.zeros(shape, np.uint8)
    cv2.fillConvexPoly(mask, np.round(quad).astype(np.int32), 1)
    return mask


def _neutral(patches: "Patches | None") -> Linear | None:
    """Light of the neutral patches together: the lighter one, with less noise, counts for more."""
    seen = [] if patches is None else [patch for patch in (patches.white, patches.grey) if patch is not None]
    if not seen:
        return None
    red, green, blue = (float(channel) for channel in np.sum(seen, axis=0))
    return (red, green, blue) if min(red, green, blue) > 0 else None


def _gains(patches: "Patches | None") -> Linear | None:
    """What each channel is multiplied by, green by 1; None without a patch or in too coloured light."""
    neutral = _neutral(patches)
    if neutral is None or max(neutral) / min(neutral) > MOST_CAST:
        return None
    red, green, blue = neutral
    return green / red, 1.0, green / blue


def white_balance(pixels: Pixels, patches: "Patches | None") -> Pixels:
    """Pixels in which the grey patch is grey, corrected in linear light; unchanged where no patch is of use.

    Green keeps its value, so that the exposure stays. Gain, clipping and the sRGB curve make one table a
    channel.
    """
    gains = _gains(patches)
    if gains is None:
        return pixels
    codes = np.arange(256, dtype=np.uint8)
    light = linear(np.repeat(codes, 3).reshape(1, 256, 3)).astype(np.float64)
    return np.asarray(cv2.LUT(pixels, encoded(light * gains)), np.uint8)
