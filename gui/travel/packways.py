"""Pack ways: a packed book was dropped: shall it be opened, or brought into the book that is open?

In    the name of the file
Out   `wanted`: which of the two; None where the person left
Not   doing it (`desk.py`)
"""

from enum import Enum, auto

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from gui.style.palette import Space
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
        row = QHBoxLayout()
        row.addWidget(leave)
        row.addStretch(1)
        row.addWidget(self.bring)
        row.addWidget(self.open_it)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.XL, Space.XL, Space.L)
        column.setSpacing(Space.L)
        column.addWidget(title)
        column.addWidget(about)
        column.addStretch(1)
        column.addLayout(row)
        self.setMinimumWidth(self.fontMetrics().averageCharWidth() * 80)

    @Slot()
    def _open(self) -> None:
        self.wanted = PackWay.OPEN
        self.accept()

    @Slot()
    def _bring(self) -> None:
        self.wanted = PackWay.BRING_IN
        self.accept()
