"""Tokens: the named colours of the light and the dark scheme, and how far two colours stand apart.

In    nothing
Out   `LIGHT` and `DARK`, `SERIES` for data, `contrast` of two colours, `mixed` of two colours
Not   anything of Qt (`palette.py` turns tokens into Qt's palette, `stylesheet.py` into a style sheet)

Contrast is computed as WCAG 2.2 does (relative luminance, success criteria 1.4.3 and 1.4.11). Data colours
are those of Okabe & Ito (2008) Color Universal Design.
"""

from dataclasses import dataclass
from enum import StrEnum

__all__ = ["DARK", "LIGHT", "SERIES", "TOKENS", "Scheme", "Tokens", "contrast", "mixed"]


class Scheme(StrEnum):
    """Which of the two palettes is worn."""

    LIGHT = "light"
    DARK = "dark"


@dataclass(frozen=True, slots=True, kw_only=True)
class Tokens:
    """The named colours of one scheme, as #RRGGBB."""

    ground: str  # window
    sheet: str  # panels, tables, tiles
    raised: str  # hovered tile, menus
    line: str  # hairlines
    ink: str  # text
    soft_ink: str  # secondary text
    accent: str  # the one main action, selection, focus ring
    on_accent: str  # text on accent
    notice: str  # needs a look soon
    alarm: str  # needs a look now, possible mold
    calm: str  # information, links


LIGHT = Tokens(
    ground="#F5F3EE",
    sheet="#FFFFFF",
    raised="#FBFAF7",
    line="#D9D4C8",
    ink="#1E2522",
    soft_ink="#56605A",
    accent="#1F6B59",
    on_accent="#FFFFFF",
    notice="#8A5A00",
    alarm="#A12B2B",
    calm="#2F6B8F",
)
DARK = Tokens(
    ground="#171B19",
    sheet="#202623",
    raised="#2A312E",
    line="#3B4440",
    ink="#E9ECE8",
    soft_ink="#A9B2AC",
    accent="#72C7AD",
    on_accent="#0F1F1A",
    notice="#F0B860",
    alarm="#F29A90",
    calm="#8CBDE0",
)
TOKENS = {Scheme.LIGHT: LIGHT, Scheme.DARK: DARK}

# Okabe & Ito (2008), in this order, each with its own marker and dash; the yellow only on dark
SERIES = ("#0072B2", "#E69F00", "#009E73", "#CC79A7", "#56B4E9", "#D55E00", "#F0E442")


def contrast(one: str, other: str) -> float:
    """WCAG contrast ratio of two #RRGGBB colours, 1 to 21 (WCAG 2.2, definition of contrast ratio)."""
    lighter, darker = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(colour: str) -> float:
    channels = (int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5))
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def mixed(one: str, other: str, share: float) -> str:
    """`share` (0 to 1) of one colour over the other, as #RRGGBB."""
    pairs = ((int(one[i : i + 2], 16), int(other[i : i + 2], 16)) for i in (1, 3, 5))
    return "#" + "".join(f"{round(x * share + y * (1 - share)):02X}" for x, y in pairs)
