"""Travel places: where a pack, an export or an unpacked book shall stand.

In    the open book or a pack; a proposed name and folder
Out   a path where nothing stands, and what was chosen besides
Not   making it (`desk.py`)
"""

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QCheckBox, QWidget

from data.travel.packing import pack_path
from gui.controls.placedialog import PlaceDialog
from gui.controls.tabstops import order_stops
from gui.language.words import translate
from gui.style.words import wrapped
from gui.travel.view import size_words

__all__ = ["ExportPlace", "PackPlace", "UnpackPlace"]


class PackPlace(PlaceDialog):
    """One file for the whole book."""

    def __init__(self, name: str, where: Path, parent: QWidget | None = None) -> None:
        about = translate(
            "PackPlace",
            "Everything in one file, to be kept safe or opened on another computer: trays, numbers, notes "
            "and the photos as they were taken, with the time and the place that the camera wrote into them. "
            "Your book stays as it is.",
        )
        title, button = translate("PackPlace", "Pack this book"), translate("PackPlace", "Pack")
        super().__init__(title, about, button, name, where, parent)
        self.size_label = wrapped("", self)
        self.form.addRow(self.tr("Size"), self.size_label)

    @Slot(object)
    def show_size(self, size: int) -> None:
        """Say how large it will be, bytes."""
        self.size_label.setText(self.tr("about {size}").format(size=size_words(size)))

    @property
    def path(self) -> Path:
        """The file, with its suffix."""
        return pack_path(super().path)


class ExportPlace(PlaceDialog):
    """A folder of open files."""

    def __init__(self, name: str, where: Path, parent: QWidget | None = None) -> None:
        about = translate(
            "ExportPlace",
            "All numbers as tables that a spreadsheet or a statistician's program opens, with a description "
            "of every column and a page on how to read them. The photos themselves, and where they were "
            "taken, are not among them.",
        )
        title = translate("ExportPlace", "Export as open files")
        super().__init__(title, about, translate("ExportPlace", "Export"), name, where, parent)
        self.top_views = QCheckBox(self.tr("Top views too, as JPEG without place and camera"), self)
        self.form.addRow("", self.top_views)
        self.renew()
        if (layout := self.layout()) is not None:
            order_stops(layout)  # it is younger than the buttons below it


class UnpackPlace(PlaceDialog):
    """A folder for a book that comes in one file."""

    def __init__(self, source: Path, where: Path, parent: QWidget | None = None) -> None:
        about = translate(
            "UnpackPlace",
            "The book in {file} is laid out in a folder of its own and opened. To add its trays to the book "
            "that is open now, leave, and choose Bring in another book.",
        ).format(file=source.name)
        title, button = translate("UnpackPlace", "Open a packed book"), translate("UnpackPlace", "Open it")
        super().__init__(title, about, button, source.stem, where, parent)
