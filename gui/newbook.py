"""New book: where the grower's own book shall stand.

In    a proposed folder
Out   the folder chosen; what stands in the way is said in place
Not   making the book (`window.py` hands the maker in)
"""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)

from data.errors import BookError
from gui.choosing import ask_folder
from gui.form import fields, lay_out
from gui.palette import set_role
from gui.spoken import spoken

__all__ = ["NewBook", "safe_name"]

NOT_IN_NAMES = '<>:"/\\|?*'


def safe_name(words: str) -> str:
    """A person's words as the name of a folder on any system; empty if nothing is left of them."""
    kept = "".join(c if c.isprintable() and c not in NOT_IN_NAMES else " " for c in words)
    return " ".join(kept.split()).strip(". ")[:80]


class NewBook(QDialog):
    """Asks for a name and a place, and makes the book."""

    def __init__(self, where: Path, make: Callable[[Path], None], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._where, self._make = where, make
        self.setWindowTitle(self.tr("Start my own book"))
        title = QLabel(self.tr("Start my own book"), self)
        set_role(title, "title")
        about = QLabel(
            self.tr(
                "A book is one folder that keeps your trays, your photos as they were taken and all numbers. "
                "Nothing leaves this computer."
            ),
            self,
        )
        about.setWordWrap(True)
        set_role(about, "soft")
        self.name = QLineEdit(self.tr("My trays"), self)
        self.name.textChanged.connect(self._renew)
        self.place = QLabel(self)
        self.place.setWordWrap(True)
        choose = QPushButton(self.tr("Choose..."), self)
        choose.setAccessibleName(self.tr("Choose the place of the book"))
        choose.clicked.connect(self._choose)
        self.trouble = QLabel(self)
        self.trouble.setWordWrap(True)
        set_role(self.trouble, "alarm")
        self.start = QPushButton(self.tr("Start this book"), self)
        self.start.setDefault(True)
        set_role(self.start, "main")
        self.start.clicked.connect(self._start)
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)

        form = fields()
        form.addRow(self.tr("&Name"), self.name)
        across = QHBoxLayout()
        across.addWidget(self.place, 1)
        across.addWidget(choose)
        form.addRow(self.tr("Folder"), across)
        lay_out(self, (title, about), form, self.trouble, (leave, self.start), 80)
        self.name.selectAll()
        self._renew()

    @property
    def folder(self) -> Path:
        """Where the book would stand."""
        return self._where / safe_name(self.name.text())

    @Slot()
    def _renew(self) -> None:
        named = bool(safe_name(self.name.text()))
        self.place.setText(str(self.folder))
        self.start.setEnabled(named)
        self.trouble.setText("" if named else self.tr("Give the book a name."))
        self.trouble.setVisible(not named)

    @Slot()
    def _choose(self) -> None:
        chosen = ask_folder(self, self.tr("Where shall the book stand?"), self._where)
        if chosen is not None:
            self._where = chosen
            self._renew()

    @Slot()
    def _start(self) -> None:
        try:
            self._make(self.folder)
        except BookError as error:
            words = spoken(error)
            self.trouble.setText(words[:1].upper() + words[1:])
            self.trouble.show()
            return
        self.accept()
