"""Kind field: which kind a medium is of, chosen among other fields.

In    the kind as the book has it
Out   `said` with another one
Not   what follows from it (`data/growing/mediumkind.py`), asking for nothing else (`materials/kinddialog.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QComboBox, QWidget

from data.growing.mediumkind import kind_follows, kind_stands_for, kind_words
from gui.language.plainhint import plain_hint
from gui.language.spoken import spoken

__all__ = ["KindField"]

TIP = Qt.ItemDataRole.ToolTipRole


class KindField(QComboBox):
    """A word or two each; a hint tells what it stands for and what follows."""

    said = Signal(str)

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(words)
        for kind, stands_for in kind_stands_for().items():
            self._offer(kind, f"{spoken(stands_for)}.")
        self.set("")
        self.activated.connect(self._chosen)

    def _offer(self, kind: str, hint: str) -> None:
        self.addItem(spoken(kind_words(kind)), kind)
        self.setItemData(self.count() - 1, plain_hint(f"{hint} {spoken(kind_follows(kind))}".strip()), TIP)

    @property
    def kind(self) -> str:
        """As it stands here; empty where nobody has said."""
        return str(self.currentData())

    def set(self, kind: str) -> None:
        """Show this kind; a word of the book's own is offered too."""
        if self.findData(kind) < 0:
            self._offer(kind, "")
        self.setCurrentIndex(self.findData(kind))
        self._tell()

    def _tell(self) -> None:
        self._shown = self.kind
        self.setToolTip(str(self.currentData(TIP)))

    @Slot()
    def _chosen(self) -> None:
        if self.kind != self._shown:  # the same once more is no change that could be taken back
            self._tell()
            self.said.emit(self.kind)
