"""Colour lines: how far a canopy's colour is from others, in words; no Qt.

In    `ColourApart`
Out   `NumberLine`s: from the photo before, from the mates on the trusted medium
Not   comparing (`data/chapters/colourapart.py`), asking in the background (`traysheet/colourdesk.py`)
"""

from typing import TYPE_CHECKING

from gui.language.spoken import in_figures, spoken
from gui.language.words import translate
from gui.notes.numberwords import DASH, NumberLine, when

if TYPE_CHECKING:
    from data.chapters.colourapart import ColourApart
    from vision.colourdifference import ColourDifference

__all__ = ["colour_lines", "coming_line"]

BEFORE, MATES = "colour_before", "colour_mates"
MOSTLY = 0.5  # of a difference that goes where both are made equally light


def coming_line() -> NumberLine:
    """The first of the lines while it is worked out."""
    return NumberLine(
        name=BEFORE, label=_against_before(), value="…", how=translate("TraySheet", "It is being worked out.")
    )


def colour_lines(apart: "ColourApart") -> tuple[NumberLine, ...]:
    """One line or two."""
    lines = [_line(BEFORE, _against_before(), apart.before, _of_before(apart))]
    if apart.mates is not None:
        label = translate("TraySheet", "Colour against mates on {medium}").format(medium=apart.medium)
        lines.append(_line(MATES, label, apart.mates, _of_mates(apart)))
    return tuple(lines)


def _of_before(apart: "ColourApart") -> str:
    if apart.before_at is None:
        return ""
    words = translate("TraySheet", "How far it is from the canopy's mean colour on the photo of {moment}.")
    return words.format(moment=when(apart.before_at))


def _of_mates(apart: "ColourApart") -> str:
    words = translate(
        "TraySheet",
        "How far it is from the mean of its block mates on the trusted medium that day ({codes}).",
    )
    return words.format(codes=", ".join(apart.mate_codes))


def _against_before() -> str:
    return translate("TraySheet", "Colour against the photo before")


def _line(name: str, label: str, difference: "ColourDifference", against: str) -> NumberLine:
    if difference.value is None or difference.even is None:
        why = "" if difference.reason is None else spoken(difference.reason)
        return NumberLine(name=name, label=label, value=DASH, how=why, missing=True)
    return NumberLine(
        name=name,
        label=label,
        value=in_figures(difference.value, ".1f"),
        means=", ".join(filter(None, (_seen_words(difference.value), _mostly(difference)))),
        how="\n".join((against, _scale(), _even(difference.even))),
    )


def _scale() -> str:
    return translate(
        "TraySheet",
        "Under 1 it is not seen, from 2 on it is seen side by side, from 3.5 on plainly (CIEDE2000).",
    )


def _even(even: float) -> str:
    words = translate(
        "TraySheet",
        "With both photos equally light it would be {even}: exposure makes a canopy lighter, too.",
    )
    return words.format(even=in_figures(even, ".1f"))


def _seen_words(value: float) -> str:
    from vision.colourdifference import Seen, seen

    match seen(round(value, 1)):  # as it is shown
        case Seen.NOT:
            return translate("TraySheet", "not seen")
        case Seen.CLOSELY:
            return translate("TraySheet", "hardly seen")
        case Seen.BESIDE:
            return translate("TraySheet", "seen side by side")
        case _:
            return translate("TraySheet", "plainly seen")


def _mostly(difference: "ColourDifference") -> str:
    """In which way they differ, where it is lightness that makes the difference and it can be seen."""
    value, even, lighter = difference.value, difference.even, difference.lighter
    if value is None or even is None or lighter is None or value < 1.0 or even > MOSTLY * value:
        return ""
    return (
        translate("TraySheet", "mostly lighter") if lighter > 0 else translate("TraySheet", "mostly darker")
    )
