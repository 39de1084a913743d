"""Sheet empty: what stands on the tray sheet before a tray is chosen.

In    nothing
Out   `bench_wanted`, `ended_wanted`
Not   the sheet itself (`screen.py`)
"""

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from gui.style.icon import icon
from gui.style.palette import Space, set_role, tokens_now
from gui.style.words import wrapped

__all__ = ["SheetEmpty"]


class SheetEmpty(QFrame):
    """Teaches, and leads on."""

    bench_wanted = Signal()
    ended_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.ended = QPushButton(self.tr("Trays that have ended"), self)
        self.ended.setToolTip(self.tr("Find a tray that was cut or thrown away (T)"))
        set_role(self.ended, "rack")
        self.ended.clicked.connect(self.ended_wanted)
        self.to_bench = QPushButton(self.tr("Go to the Bench"), self)
        self.to_bench.setToolTip(self.tr("Go to the Bench (Ctrl+1)"))
        set_role(self.to_bench, "rack-main")
        self.to_bench.clicked.connect(self.bench_wanted)
        across = QHBoxLayout()
        across.addStretch(1)
        across.addWidget(self._middle(), 2)
        across.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        column.addStretch(1)
        column.addLayout(across)
        column.addStretch(2)
        column.addWidget(self.to_bench, 0, Qt.AlignmentFlag.AlignRight)

    def _middle(self) -> QWidget:
        """Picture, title and words, and the way to trays that have ended."""
        self._picture = QLabel(self)
        title = QLabel(self.tr("Here one tray is shown at a time"), self)
        set_role(title, "title")
        words = wrapped(
            self.tr(
                "Its picture with everything that was found in it, its days side by side, its numbers, and "
                "how it grew beside its mates. Choose a tray on the Bench."
            ),
            self,
            "soft",
        )
        inner = QWidget(self)
        middle = QVBoxLayout(inner)
        middle.setSpacing(Space.M)
        for part in (self._picture, title, words):
            middle.addWidget(part)
        middle.addWidget(self.ended, 0, Qt.AlignmentFlag.AlignLeft)
        return inner

    def redress(self) -> None:
        """The drawing in the colour of the scheme."""
        self._picture.setPixmap(
            icon("traysheet", tokens_now().accent).pixmap(QSize(48, 48), self.devicePixelRatioF())
        )
