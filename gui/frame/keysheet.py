"""Key sheet: every key of the program on one page, made from the tables of actions.

In    `PLACES`, `ACTIONS`, the keys of the screens
Out   a small dialog
Not   what the keys do (`window.py`, each screen)
"""

from collections.abc import Iterable, Iterator

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFrame,
    QGridLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gui.frame.actions import ACTIONS, PLACES
from gui.screen import Screen
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["KeySheet", "keys_of"]

EVERYWHERE = (
    ("Tab", str(QT_TRANSLATE_NOOP("KeySheet", "On to the next; with Shift back"))),
    ("Enter", str(QT_TRANSLATE_NOOP("KeySheet", "Open, or do the main thing"))),
    ("Esc", str(QT_TRANSLATE_NOOP("KeySheet", "Leave"))),
)


def keys_of(screens: Iterable[Screen]) -> Iterator[tuple[str, list[tuple[str, str]]]]:
    """Headings, each with its keys and what they do."""
    tr = QCoreApplication.translate
    places = [(place.key, tr("Place", place.about)) for place in PLACES]
    actions = [(action.key, tr("Action", action.words).removesuffix("...")) for action in ACTIONS]
    yield tr("KeySheet", "Places"), places
    yield (
        tr("KeySheet", "From everywhere"),
        actions + [(key, tr("KeySheet", words)) for key, words in EVERYWHERE],
    )
    words_of = {place.name: place.words for place in PLACES}
    for screen in screens:
        if screen.KEYS:
            name = tr("Place", words_of.get(screen.objectName(), screen.objectName()))
            yield name, [(key, tr(type(screen).__name__, words)) for key, words in screen.KEYS]


class KeySheet(QDialog):
    """The page."""

    def __init__(self, screens: Iterable[Screen], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Keys"))
        scroll = QScrollArea(self)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidget(self._page(screens))
        scroll.setAccessibleName(self.tr("Keys"))
        set_role(scroll, "read")
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        close.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, Space.L)
        column.addWidget(scroll, 1)
        column.addWidget(close)
        close.setContentsMargins(0, 0, Space.XL, 0)
        metrics = self.fontMetrics()
        self.resize(metrics.averageCharWidth() * 78, min(metrics.height() * 36, 620))

    def _page(self, screens: Iterable[Screen]) -> QWidget:
        """Heading after heading, a row a key."""
        page = QWidget(self)
        grid = QGridLayout(page)
        grid.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        grid.setHorizontalSpacing(Space.XL)
        grid.setVerticalSpacing(Space.S)
        grid.setColumnStretch(1, 1)
        row = 0
        for heading, keys in keys_of(screens):
            title = QLabel(heading, page)
            set_role(title, "title")
            if row:
                grid.setRowMinimumHeight(row, Space.M)
                row += 1
            grid.addWidget(title, row, 0, 1, 2)
            for key, words in keys:
                row += 1
                shown = QLabel(
                    QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText) or key, page
                )
                set_role(shown, "soft")
                grid.addWidget(shown, row, 0, Qt.AlignmentFlag.AlignTop)
                told = wrapped(words, page)
                grid.addWidget(told, row, 1)
            row += 1
        grid.setRowStretch(row, 1)
        return page
