"""Number words: each number of a score with its unit, how it was had, or why it is missing; no Qt.

In    `KeptScore`, `Day`
Out   `NumberLine`s in the order in which a grower wants them
Not   measuring (`vision`), how a line looks (`numberlist.py`)
"""

from dataclasses import dataclass
from datetime import datetime
from functools import partial

from data.records import Day, KeptScore, TakenFrom
from gui.language.spoken import MOMENT, day_words, in_figures, spoken
from gui.language.words import noop, translate

__all__ = ["NumberLine", "numbers_of", "quality_of", "when"]

T = partial(noop, "TraySheet")
DASH = "–"


@dataclass(frozen=True, slots=True, kw_only=True)
class NumberLine:
    """One number as the sheet shows it. `how` says how it was had, or why it is missing."""

    name: str
    label: str
    value: str
    how: str
    missing: bool = False
    means: str = ""  # below it: what the number means


# name in `KeptScore`, label, unit, decimals, how it was had
NUMBERS = (
    ("coverage", T("Coverage"), "%", 0,
     T("Share of the inner area under green, red or pale shoots, from above.")),
    ("bed_share", T("Share of the bed"), "%", 0,
     T("Share under shoots of what is neither rim nor wall of the tray. Media at different heights are "
       "compared by it.")),
    ("uniformity", T("Uniformity"), "%", 0,
     T("How alike the 72 cells are (Christiansen): 100 is all alike.")),
    ("bed_uniformity", T("Uniformity on the bed"), "%", 0,
     T("How alike the cells are, each as a share of its growing bed.")),
    ("low_quarter", T("Thinnest quarter"), "%", 0,
     T("Mean of the 18 thinnest cells, in % of the mean of all.")),
    ("gap_share", T("Gaps"), "%", 1, T("Share of the inner area in bare pieces of at least 4 cm².")),
    ("edge_deficit", T("Edge thinner by"), T("points"), 1,
     T("Coverage of the middle minus that of the outer 25 mm.")),
    ("gradient_x", T("Left to right"), T("points / 100 mm"), 1,
     T("Rise of coverage along the long side (−: fall).")),
    ("gradient_y", T("Far to near"), T("points / 100 mm"), 1,
     T("Rise of coverage along the short side (−: fall).")),
    ("clumping", T("Clumping"), "", 2,
     T("Moran's I of the cells: above 0, thick cells lie beside thick ones.")),
    ("green", T("Green"), "%", 0, T("Share of the inner area that is green canopy.")),
    ("pale", T("Pale"), "%", 0, T("Share of the inner area that is pale shoots.")),
    ("red", T("Red"), "%", 0, T("Share of the inner area that is red canopy.")),
    ("hue", T("Hue"), "°", 0, T("Mean hue angle of the canopy in CIELAB: 90 is yellow, 180 is green.")),
    ("chroma", T("Chroma"), "", 0, T("How colourful the canopy is (CIELAB).")),
    ("lightness", T("Lightness"), T("of 100"), 0,
     T("How light the canopy is (CIELAB L*, 0 black to 100 white).")),
    ("dark_green", T("Dark green index"), "", 2,
     T("From hue, saturation and brightness: higher is darker green.")),
)  # fmt: skip

QUALITY = (
    ("px_per_mm", T("Scale"), "px/mm", 1,
     T("Pixels of the photo for each mm of the tray, where it is least.")),
    ("tilt_deg", T("Tilt"), "°", 0, T("How far the camera was from looking straight down.")),
    ("blur_mm", T("Blur"), "mm", 2, T("Width of the softest sharp edge that can be told, on the tray.")),
    ("exposure", T("Brightness"), T("of 100"), 0, T("Mean lightness of the top view (CIELAB L*).")),
    ("clipped_pct", T("Burnt out"), "%", 1, T("Share of the top view without detail in the lights.")),
    ("dark_pct", T("Black"), "%", 1, T("Share of the top view without detail in the shadows.")),
    ("glare_pct", T("Glare"), "%", 1, T("Share of the top view under shine from wet leaves or lamps.")),
    ("seconds", T("Scored in"), "s", 1, T("Time that this computer took.")),
)  # fmt: skip


def numbers_of(score: KeptScore | None) -> tuple[NumberLine, ...]:
    """The stand and its colour."""
    if score is None:
        return ()
    lines = [_line(score, *number) for number in NUMBERS]
    return tuple(_with_count(line, score) if line.name == "gap_share" else line for line in lines)


def _with_count(line: NumberLine, score: KeptScore) -> NumberLine:
    if line.missing or not score.gaps:
        return line
    largest = max(gap.area_cm2 for gap in score.gaps)
    more = (
        translate("TraySheet", "1 gap of {largest} cm²").format(largest=f"{largest:.0f}")
        if len(score.gaps) == 1
        else translate("TraySheet", "{count} gaps, largest {largest} cm²").format(
            count=len(score.gaps), largest=f"{largest:.0f}"
        )
    )
    return NumberLine(name=line.name, label=line.label, value=f"{line.value} ({more})", how=line.how)


def _line(score: KeptScore, name: str, label: str, unit: str, decimals: int, how: str) -> NumberLine:
    value = getattr(score, name)
    words = translate("TraySheet", label)
    if value is None:
        reason = score.reasons.get(name)
        why = spoken(reason) if reason else translate("TraySheet", "not told by this photo")
        return NumberLine(name=name, label=words, value=DASH, how=why, missing=True)
    text = in_figures(round(value, decimals) + 0.0, f".{decimals}f")  # never "-0"
    gap = "" if unit in ("", "°") else " "
    return NumberLine(
        name=name,
        label=words,
        value=f"{text}{gap}{translate('TraySheet', unit) if unit else ''}",
        how=translate("TraySheet", how),
    )


FOUND_BY = {
    "station": T("by the station's marks"),
    "frame": T("by the tray's rim"),
    "hand": T("set by you"),
    "whole": T("the picture is the tray"),
}


def quality_of(day: Day) -> tuple[NumberLine, ...]:
    """The photo itself: when, how the tray was found in it, how good it is."""
    score = day.score
    if score is None:
        return (_taken(day),)
    return (
        _taken(day),
        _corners(score),
        *(_line(score, *number) for number in QUALITY),
        *([_mended()] if score.mended else []),
        _colour(by_patch=score.corrected_by == "patch"),
        NumberLine(
            name="method",
            label=translate("TraySheet", "Method"),
            value=score.method,
            how=translate("TraySheet", "Scores of different methods are never compared."),
        ),
    )


def _taken(day: Day) -> NumberLine:
    return NumberLine(
        name="taken",
        label=translate("TraySheet", "Taken"),
        value=when(day.taken_at),
        how=translate("TraySheet", "Told by the camera's clock.")
        if day.taken_from is TakenFrom.CAMERA
        else translate("TraySheet", "Told by the file's time, for the camera gave none."),
    )


def _mended() -> NumberLine:
    return NumberLine(
        name="mended",
        label=translate("TraySheet", "Canopy"),
        value=translate("TraySheet", "mended by hand"),
        how=translate(
            "TraySheet",
            "A person has drawn where the canopy is; all numbers follow it. "
            "What the program had found is kept in the book.",
        ),
    )


def _colour(*, by_patch: bool) -> NumberLine:
    return NumberLine(
        name="corrected_by",
        label=translate("TraySheet", "Colour"),
        value=translate("TraySheet", "balanced") if by_patch else translate("TraySheet", "as photographed"),
        how=translate("TraySheet", "White balance from the grey patch of the tag.")
        if by_patch
        else translate("TraySheet", "No grey patch was seen, so colours are as the camera gave them."),
    )


def _corners(score: KeptScore) -> NumberLine:
    found = translate("TraySheet", FOUND_BY.get(score.corners_from or "", DASH))
    sure = score.frame_confidence
    how = (
        translate("TraySheet", "The program is {percent} % sure of the four corners.").format(
            percent=round(100 * sure)
        )
        if sure is not None
        else translate("TraySheet", "The four corners of the inner area.")
    )
    return NumberLine(name="corners_from", label=translate("TraySheet", "Tray found"), value=found, how=how)


def when(moment: datetime) -> str:
    """A day and time: 3 Mar 2026, 09:00."""
    return day_words(moment, MOMENT)
