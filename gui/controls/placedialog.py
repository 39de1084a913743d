"""Place dialog: under which name and in which folder something new shall stand.

In    words, a proposed name and folder
Out   `path`, where nothing stands yet
Not   making it; what is asked besides (`frame/newbook.py`, `travel/places.py`)
"""

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget

from gui.controls.choosing import ask_folder, safe_name
from gui.controls.form import fields, fit, lay_out
from gui.controls.telling import tell
from gui.style.palette import set_role
from gui.style.words import wrapped

__all__ = ["PlaceDialog"]

LETTERS = 80  # width


class PlaceDialog(QDialog):
    """A name, a folder, and the one button."""

    def __init__(
        self, title: str, about: str, button: str, name: str, where: Path, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.where = where
        self.setWindowTitle(title)
        head, words = QLabel(title, self), QLabel(about, self)
        set_role(head, "title")
        words.setWordWrap(True)
        set_role(words, "soft")
        self.name = QLineEdit(name, self)
        self.name.setAccessibleName(self.tr("Name"))
        self.name.textChanged.connect(self.renew)
        self.place = wrapped("", self)
        choose = QPushButton(self.tr("Choose..."), self)
        choose.setAccessibleName(self.tr("Choose the folder"))
        choose.setAutoDefault(False)
        choose.clicked.connect(self._choose)
        self.trouble = wrapped("", self, "alarm")
        self.start = QPushButton(button, self)
        self.start.setDefault(True)
        set_role(self.start, "main")
        self.start.clicked.connect(self.begin)
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)
        self.form = fields()
        self.form.addRow(self.tr("&Name"), self.name)
        across = QHBoxLayout()
        across.addWidget(self.place, 1)
        across.addWidget(choose)
        self.form.addRow(self.tr("Where"), across)
        lay_out(self, (head, words), self.form, self.trouble, (leave, self.start), LETTERS)
        self.name.selectAll()
        self.renew()

    @property
    def path(self) -> Path:
        """Where it would stand."""
        return self.where / safe_name(self.name.text())

    def doubt(self) -> str:
        """What stands in the way of this place; empty where nothing does."""
        if self.path.exists():
            return self.tr("{path} is there already and stays as it is. Choose another name.").format(
                path=self.path
            )
        return ""

    @Slot()
    def renew(self) -> None:
        """Show the place, and whether it can be."""
        named = bool(safe_name(self.name.text()))
        doubt = self.doubt() if named else self.tr("Give it a name.")
        self.place.setText(str(self.path if named else self.where))
        self.start.setEnabled(not doubt)
        self.say(doubt)

    def say(self, trouble: str) -> None:
        """Say in place what stands in the way; with nothing, hush."""
        tell(self.trouble, trouble[:1].upper() + trouble[1:])
        self.trouble.setVisible(bool(trouble))
        fit(self)

    @Slot()
    def begin(self) -> None:
        """Take this place."""
        self.accept()

    @Slot()
    def _choose(self) -> None:
        chosen = ask_folder(self, self.tr("Where shall it stand?"), self.where)
        if chosen is not None:
            self.where = chosen
            self.renew()
