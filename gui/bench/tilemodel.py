"""Tile model: the trays of the rack as rows of a Qt model.

In    `Standing`s in rack order
Out   code, caption for a screen reader, tooltip, and the standing itself for the painter
Not   pictures (`photo/thumbnails.py`), places (`shelves.py`), painting (`tilepainter.py`)
"""

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)

from gui.bench.rack import Standing
from gui.language.age import age_words
from gui.language.plainhint import plain_hint
from gui.language.spoken import DAY_MOMENT, spoken
from gui.language.spoken import day_words as date_words
from gui.style.marks import kind_words

__all__ = ["STANDING", "TileModel", "caption", "coverage_words", "day_words"]

STANDING = Qt.ItemDataRole.UserRole + 1
Index = QModelIndex | QPersistentModelIndex


def day_words(standing: Standing) -> str:
    """The tray's age."""
    return age_words(standing.tile.day)


def coverage_words(standing: Standing) -> str:
    """Coverage with its unit, or a dash where no photo tells it."""
    coverage = standing.tile.coverage
    if coverage is None:
        return "–"
    return QCoreApplication.translate("Tile", "{coverage:.0f} %").format(coverage=coverage)


def caption(standing: Standing) -> str:
    """All that a tile shows, as one sentence."""
    tile = standing.tile
    parts = [
        tile.code,
        tile.crop,
        tile.medium,
        day_words(standing),
        QCoreApplication.translate("Tile", "no photo yet")
        if tile.coverage is None
        else QCoreApplication.translate("Tile", "coverage {coverage:.0f} %").format(coverage=tile.coverage),
    ]
    if standing.look is not None:
        parts.append(kind_words(standing.look.what))
    return ", ".join(parts)


def tooltip(standing: Standing) -> str:
    """What the tile shows, how the number was had, and what needs a look."""
    tile, lines = standing.tile, [caption(standing)]
    if tile.taken_at is not None and tile.coverage is not None:
        words = QCoreApplication.translate(
            "Tile", "Coverage: canopy share of the inner area, from the photo of {day}"
        )
        lines.append(words.format(day=date_words(tile.taken_at, DAY_MOMENT)))
    if standing.look is not None:
        lines.append(spoken(standing.look.sentence))
    lines.append(QCoreApplication.translate("Tile", "Click or Enter: open the tray sheet"))
    return "\n".join(lines)


class TileModel(QAbstractListModel):
    """A row a tray."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._standings: tuple[Standing, ...] = ()

    def show(self, standings: Sequence[Standing]) -> bool:
        """Show these; True if the rows are others than before, False if only what they say has changed."""
        new, old = tuple(standings), self._standings
        if [one.id for one in new] != [one.id for one in old]:
            self.beginResetModel()
            self._standings = new
            self.endResetModel()
            return True
        changed = [row for row, (a, b) in enumerate(zip(new, old, strict=True)) if a != b]
        self._standings = new
        if changed:
            self.dataChanged.emit(self.index(changed[0]), self.index(changed[-1]))
        return False

    def standings(self) -> tuple[Standing, ...]:
        """What is shown."""
        return self._standings

    def row_of(self, tray_id: int) -> int | None:
        """The row of a tray."""
        return next((row for row, one in enumerate(self._standings) if one.id == tray_id), None)

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        """How many trays."""
        return 0 if parent.isValid() else len(self._standings)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """One thing of one tray."""
        if not index.isValid():
            return None
        standing = self._standings[index.row()]
        if role == STANDING:
            return standing
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return standing.tile.code
            case Qt.ItemDataRole.AccessibleTextRole:
                return caption(standing)
            case Qt.ItemDataRole.ToolTipRole:
                return plain_hint(tooltip(standing))
            case _:
                return None
