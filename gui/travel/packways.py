"""Pack ways: a packed book was dropped: shall it be opened, or brought into the book that is open?

In    the name of the file
Out   `wanted`: which of the two; None where the person left
Not   doing it (`desk.py`)
"""

from enum import Enum, auto

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QPushButton, QWidget

from gui.controls.form import lay_out_ways
from gui.style.words import wrapped

__all__ = ["PackWay", "PackWays"]


class PackWay(Enum):
    """What can be done with a packed book."""

    OPEN = auto()
    BRING_IN = auto()


class PackWays(QDialog):
    """Two buttons, and Leave."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.wanted: PackWay | None = None
        self.setWindowTitle(name)
        title = wrapped(self.tr("What shall become of {name}?").format(name=name), self, "title")
        about = wrapped(
            self.tr(
                "It is a whole book. Opened, it stands beside yours in a folder of its own. Brought in, its "
                "trays are added to the book that is open, after you have seen them."
            ),
            self,
            "soft",
        )
        leave = QPushButton(self.tr("Leave"), self)
        self.bring = QPushButton(self.tr("Bring it in..."), self)
        self.open_it = QPushButton(self.tr("Open it..."), self)
        leave.clicked.connect(self.reject)
        self.bring.clicked.connect(self._bring)
        self.open_it.clicked.connect(self._open)
        self.open_it.setDefault(True)
        lay_out_ways(self, (title, about), leave, (self.bring, self.open_it), 80)

    @Slot()
    def _open(self) -> None:
        self.wanted = PackWay.OPEN
        self.accept()

    @Slot()
    def _bring(self) -> None:
        self.wanted = PackWay.BRING_IN
        self.accept()
