"""Icon: a line drawing of `gui/icons` in the colour of a token.

In    a name, a colour (the ink of now if none)
Out   `QIcon`, drawn for 16 to 64 px, with a faint form for what cannot be used
Not   the word beside it: every icon but zoom has one (each screen)
"""

from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from gui.style.palette import tokens_now
from gui.style.tokens import mixed

__all__ = ["icon"]

FOLDER = Path(__file__).parents[1] / "icons"


def icon(name: str, colour: str | None = None) -> QIcon:
    """The line drawing `gui/icons/NAME.svg` in a colour (the ink of now if none), sharp at any ratio."""
    t = tokens_now()
    return _icon(name, colour or t.ink, mixed(t.soft_ink, t.ground, 0.55))


@lru_cache(maxsize=256)
def _icon(name: str, colour: str, faint: str) -> QIcon:
    drawing = (FOLDER / f"{name}.svg").read_text(encoding="utf-8")
    found = QIcon()
    for mode, ink in ((QIcon.Mode.Normal, colour), (QIcon.Mode.Disabled, faint)):
        renderer = QSvgRenderer(QByteArray(drawing.replace("currentColor", ink).encode()))
        for side in (16, 20, 24, 32, 48, 64):
            picture = QPixmap(QSize(side, side))
            picture.fill(Qt.GlobalColor.transparent)
            painter = QPainter(picture)
            renderer.render(painter, QRectF(0, 0, side, side))
            painter.end()
            found.addPixmap(picture, mode)
    return found
