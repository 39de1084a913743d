"""Guest source: which other book comes in: one in a file, or one in a folder.

In    nothing
Out   `chosen`, a file or a folder
Not   what is in it (`guestdialog.py`)
"""

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QLabel, QPushButton, QWidget

from gui.controls.choosing import ask_folder, ask_pack
from gui.controls.form import lay_out_ways
from gui.home import documents_folder
from gui.style.palette import set_role
from gui.style.words import wrapped

__all__ = ["GuestSource"]


class GuestSource(QDialog):
    """Two ways in which a book can come."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.chosen: Path | None = None
        self.setWindowTitle(self.tr("Bring in another book"))
        title = QLabel(self.tr("Bring in another book"), self)
        set_role(title, "title")
        about = wrapped(
            self.tr(
                "Its trays, photos and notes are added to the book that is open, and nothing here is "
                "overwritten. First you see what is in it, and say what names mean that both books have."
            ),
            self,
            "soft",
        )
        self.pack = QPushButton(self.tr("A packed book..."), self)
        self.folder = QPushButton(self.tr("The folder of a book or of an export..."), self)
        self.pack.clicked.connect(self._choose_pack)
        self.folder.clicked.connect(self._choose_folder)
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)
        self.pack.setDefault(True)
        lay_out_ways(self, (title, about), leave, (self.folder, self.pack), 84)

    @Slot()
    def _choose_pack(self) -> None:
        self._take(ask_pack(self, self.tr("Choose a packed book"), documents_folder()))

    @Slot()
    def _choose_folder(self) -> None:
        title = self.tr("Choose the folder of a book or of an export")
        self._take(ask_folder(self, title, documents_folder()))

    def _take(self, path: Path | None) -> None:
        if path is not None:
            self.chosen = path
            self.accept()
