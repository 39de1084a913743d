"""Palette: the colours, spaces and fonts that every screen shares.

In    a `Scheme` (light or dark) and a text size in %
Out   the tokens worn now, the whole `QPalette`, the program dressed in it; spaces in px
Not   the colours themselves (`tokens.py`), the style sheet (`stylesheet.py`), light or dark (`app.py`)
"""

from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from gui.style.stylesheet import RADIUS, style_sheet
from gui.style.tokens import DARK, LIGHT, SERIES, TOKENS, Scheme, Tokens, contrast, mixed

__all__ = [
    "DARK",
    "FAMILY",
    "GAP",
    "LIGHT",
    "RACK_TARGET",
    "RADIUS",
    "SERIES",
    "TARGET",
    "Scheme",
    "Space",
    "Tokens",
    "contrast",
    "dress",
    "load_fonts",
    "mixed",
    "qt_palette",
    "set_role",
    "tokens_now",
]

FOLDER = Path(__file__).parents[1]
FAMILY = "Noto Sans"
BASE_PT = 10.0  # text; titles 12 bold, the one number that matters 22
STYLED = "evenstand-styled"  # property of the program: it has its style
TARGET = 32  # px, least height of what is clicked
RACK_TARGET = 44  # px, the same for what is used at the rack with wet hands
GAP = 8  # px, least distance between two targets


class Space:
    """The six distances of the program, px."""

    XS, S, M, L, XL, XXL = 4, 8, 12, 16, 24, 32


def tokens_now() -> Tokens:
    """The tokens that the application wears at this moment, for widgets that paint themselves."""
    dark = QGuiApplication.palette().color(QPalette.ColorRole.Window).lightness() < 128
    return DARK if dark else LIGHT


def dress(app: QApplication, scheme: Scheme, text_percent: int = 100) -> None:
    """Give the whole program one scheme and one text size; may be called again at any time."""
    load_fonts()
    if not app.property(STYLED):  # again and again it would cost a third of a second with every place made
        app.setStyle("Fusion")
        app.setProperty(STYLED, True)
    app.setPalette(qt_palette(scheme))
    font = QFont(FAMILY)
    font.setPointSizeF(BASE_PT * text_percent / 100)
    app.setFont(font)
    sheet = style_sheet(TOKENS[scheme], text_percent)
    if app.styleSheet() != sheet:
        app.setStyleSheet("")  # one sheet after another dresses each part once for every part that it lies in
        app.setStyleSheet(sheet)


@lru_cache(maxsize=1)
def load_fonts() -> None:
    """Add the bundled fonts, once: a bare machine has none, and pictures must be alike everywhere."""
    for name in ("NotoSans-Regular.ttf", "NotoSans-Bold.ttf"):
        QFontDatabase.addApplicationFont(str(FOLDER / "fonts" / name))


def qt_palette(scheme: Scheme) -> QPalette:
    """Every role of Qt's palette from the scheme's tokens, the disabled group too."""
    t = TOKENS[scheme]
    role = QPalette.ColorRole
    colours = {
        role.Window: t.ground,
        role.WindowText: t.ink,
        role.Base: t.sheet,
        role.AlternateBase: t.raised,
        role.Text: t.ink,
        role.Button: t.sheet,
        role.ButtonText: t.ink,
        role.BrightText: t.alarm,
        role.ToolTipBase: t.raised,
        role.ToolTipText: t.ink,
        role.PlaceholderText: t.soft_ink,
        role.Highlight: t.accent,
        role.HighlightedText: t.on_accent,
        role.Link: t.calm,
        role.LinkVisited: t.calm,
        role.Accent: t.accent,
        role.Light: t.raised,
        role.Midlight: t.raised,
        role.Mid: t.line,
        role.Dark: t.line,
        role.Shadow: t.line,
    }
    palette = QPalette()
    for name, colour in colours.items():
        palette.setColor(name, QColor(colour))
    faint = mixed(t.soft_ink, t.ground, 0.55)
    for name in (role.WindowText, role.Text, role.ButtonText, role.PlaceholderText, role.HighlightedText):
        palette.setColor(QPalette.ColorGroup.Disabled, name, QColor(faint))
    palette.setColor(QPalette.ColorGroup.Disabled, role.Highlight, QColor(t.line))
    palette.setColor(QPalette.ColorGroup.Disabled, role.Base, QColor(t.ground))
    return palette


def set_role(widget: QWidget, role: str) -> None:
    """Tell the style sheet what a widget is; the names stand in `stylesheet.py`.

    A label then shows its text as it is: what a person has named in HTML stays a name.
    """
    if isinstance(widget, QLabel):
        widget.setTextFormat(Qt.TextFormat.PlainText)
    widget.setProperty("role", role)
    widget.style().unpolish(widget)
    widget.style().polish(widget)
