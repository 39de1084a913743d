"""Drop area: says where photos can come from, and has the buttons for those who do not drag.

In    the folder that is watched, None for none
Out   `files_wanted`, `folder_wanted`, `watch_wanted`, `watch_ended`
Not   the drop itself (photos may be dropped anywhere in the window), the file dialogs (`screen.py`)
"""

from pathlib import Path

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from gui.controls.flow import Flow
from gui.language.plainbutton import plain_button
from gui.style.icon import icon
from gui.style.palette import RADIUS, Space, set_role, tokens_now
from gui.style.words import line_width, wrapped

__all__ = ["DropArea"]


class DropArea(QWidget):
    """A dashed frame; large where there are no photos yet, else a band."""

    files_wanted = Signal()
    folder_wanted = Signal()
    watch_wanted = Signal()
    watch_ended = Signal()

    _laid_out = False  # of the class: Qt tells of letters before we have begun

    def __init__(self, parent: QWidget | None = None, *, large: bool) -> None:
        super().__init__(parent)
        self._large = large
        self._watched: Path | None = None
        self.title = wrapped(self.tr("Drop photos or a folder anywhere in this window"), self)
        self.words = wrapped("", self, "soft")
        self.files = QPushButton(self.tr("Choose photos"), self)
        self.files.setToolTip(self.tr("Choose photo files (Ctrl+I)"))
        self.files.clicked.connect(self.files_wanted)
        self.folder = QPushButton(self.tr("Choose a folder"), self)
        self.folder.setToolTip(self.tr("Bring in all photos of a folder and the folders in it"))
        self.folder.clicked.connect(self.folder_wanted)
        self.watch = QPushButton(self.tr("Watch a folder"), self)
        self.watch.clicked.connect(self._watch_pressed)
        buttons = Flow()
        for button in (self.files, self.folder, self.watch):
            set_role(button, "rack")
        for button in (self.folder, self.watch) if large else (self.files, self.folder, self.watch):
            buttons.addWidget(button)
        column = QVBoxLayout(self)
        if large:
            self._lay_out_large(column, buttons)
        else:
            self._lay_out_small(column, buttons)
        self._laid_out = True
        self.show_watched(None)

    def _lay_out_small(self, column: QVBoxLayout, buttons: Flow) -> None:
        column.setContentsMargins(Space.M, Space.S, Space.M, Space.S)
        column.setSpacing(Space.S)
        set_role(self.title, "soft")
        self.title.setText(self.tr("Drop photos or a folder anywhere, or"))
        self.title.setWordWrap(False)
        row = QHBoxLayout()
        row.setSpacing(Space.M)
        row.addWidget(self.title)
        row.addLayout(buttons, 1)
        column.addLayout(row)
        self.words.hide()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Maximum)

    def _lay_out_large(self, column: QVBoxLayout, buttons: Flow) -> None:
        set_role(self.title, "title")
        set_role(self.files, "rack-main")
        self._picture = QLabel(self)
        self._inner = QWidget(self)
        self.no_trays = wrapped(
            self.tr(
                "This book has no trays yet. Add them on the Bench first, or plan a trial and sow it: then "
                "photos find their trays."
            ),
            self,
            "notice",
        )
        self.words.setText(
            self.tr(
                "Each photo gets a row here that says what became of it: matched to a tray by its tag or by "
                "the order of your walk, or what it still needs from you. A photo shows one tray from above, "
                "with its whole rim. Photos are copied into the book; your files stay as they are."
            )
        )
        middle = QVBoxLayout(self._inner)
        middle.setContentsMargins(0, 0, 0, 0)
        middle.setSpacing(Space.M)
        for part in (self._picture, self.title, self.words, self.no_trays):
            middle.addWidget(part)
        middle.addSpacing(Space.S)
        middle.addLayout(buttons)
        column.setContentsMargins(2 * Space.XL, 2 * Space.XL, Space.XXL, Space.L + Space.M)
        column.addStretch(1)
        across = QHBoxLayout()
        across.addStretch(1)
        across.addWidget(self._inner, 100)
        across.addStretch(1)
        column.addLayout(across)
        column.addStretch(2)
        column.addWidget(self.files, 0, Qt.AlignmentFlag.AlignRight)  # where every main action stands

    def show_watched(self, folder: Path | None) -> None:
        """Say which folder is watched, and offer to end it."""
        self._watched = folder
        if folder is None:
            self.watch.setText(self.tr("Watch a folder"))
            self.watch.setToolTip(self.tr("Bring in photos as your phone puts them into a folder"))
        else:
            self.watch.setText(self.tr("Stop watching {name}").format(name=plain_button(folder.name)))
            self.watch.setToolTip(
                self.tr("Photos that arrive in {folder} come in by themselves").format(folder=folder)
            )
        self.watch.setAccessibleDescription(self.watch.toolTip())

    @Slot()
    def _watch_pressed(self) -> None:
        if self._watched is None:
            self.watch_wanted.emit()
        else:
            self.watch_ended.emit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Large: lines as long as they read well; in a narrow band the buttons say enough."""
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        """The letters may have another size."""
        super().changeEvent(event)
        letters = (QEvent.Type.FontChange, QEvent.Type.StyleChange)
        if event.type() in letters and self._laid_out:
            self._fit()

    def _fit(self) -> None:
        if self._large:
            self._inner.setMaximumWidth(line_width(self.fontMetrics()))
        else:
            shown = [b.sizeHint().width() for b in (self.files, self.folder, self.watch) if not b.isHidden()]
            wanted = sum(shown) + self.title.sizeHint().width() + 5 * Space.M
            self.title.setVisible(self.width() >= wanted)

    def redress(self) -> None:
        """The drawing in the ink of the scheme."""
        if self._large:
            self._picture.setPixmap(
                icon("intake", tokens_now().accent).pixmap(QSize(48, 48), self.devicePixelRatioF())
            )

    def paintEvent(self, event: QPaintEvent) -> None:
        """The dashed frame that says: drop here."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        inset = float(Space.L) if self._large else 1.0
        box = QRectF(self.rect()).adjusted(inset, inset, -inset, -inset)
        tokens = tokens_now()
        painter.setPen(
            QPen(QColor(tokens.soft_ink if self._large else tokens.line), 1.5, Qt.PenStyle.DashLine)
        )
        painter.setBrush(QColor(tokens.sheet))
        painter.drawRoundedRect(box, RADIUS, RADIUS)
