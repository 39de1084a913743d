"""Question band: a question about many photos at once, above their list: what, why, and the answers.

In    a title, words, buttons
Out   the frame in which they stand; `take_focus` for the key that leads here
Not   what is asked (`intake/clockband.py`, `intake/walkband.py`, `intake/againband.py`), how much room there
      is (`intake/room.py`)

Where there is little room the words and the matter roll; the title and the answers stay in sight.
"""

from collections.abc import Callable

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from gui.controls.flow import Flow
from gui.controls.rolling import roll_down
from gui.controls.telling import announce
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["QuestionBand"]


LEAST_LINES = 2  # of what rolls


class Matter(QScrollArea):
    """Words and what shows the matter: as high as they are, or as `most` allows."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.most: int | None = None  # px
        self.setFrameShape(QFrame.Shape.NoFrame)
        roll_down(self)
        inner = QWidget(self)
        self.column = QVBoxLayout(inner)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(Space.S)
        self.setWidget(inner)
        for ground in (inner, self.viewport()):
            ground.setAutoFillBackground(False)  # that of the band is seen
        upright = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        upright.setHeightForWidth(True)
        self.setSizePolicy(upright)
        program = QApplication.instance()
        assert isinstance(program, QApplication)
        program.focusChanged.connect(self._follow)

    @Slot(QWidget, QWidget)
    def _follow(self, _before: QWidget | None, now: QWidget | None) -> None:
        """Roll to what has the focus: Qt does so only where it came from within."""
        if now is not None and self.isAncestorOf(now):
            self.ensureWidgetVisible(now, 0, Space.S)

    def allow(self, most: int | None) -> None:
        """Be no higher than this, px."""
        if most != self.most:
            self.most = most
            self.updateGeometry()

    def whole_height(self, width: int) -> int:
        """All of it without rolling, px."""
        return max(self.column.heightForWidth(width), self.column.minimumSize().height())

    def hasHeightForWidth(self) -> bool:
        """A narrow window needs more lines."""
        return True

    def heightForWidth(self, width: int) -> int:
        """As much as is allowed."""
        whole = self.whole_height(width)
        return whole if self.most is None else min(whole, self.most)

    def minimumSizeHint(self) -> QSize:
        """Never narrower than what is in it; two lines are seen at once."""
        return QSize(self.column.minimumSize().width(), LEAST_LINES * self.fontMetrics().lineSpacing())

    def sizeHint(self) -> QSize:
        """As it would like to be, as far as it is allowed."""
        wide = self.column.sizeHint().width()
        return QSize(wide, self.heightForWidth(max(wide, self.width())))


class QuestionBand(QFrame):
    """Title, words, whatever shows the matter, and a row of answers."""

    def __init__(self, role: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, role)
        self.title, self.words = wrapped("", self, "title"), wrapped("", self)
        self.answers = Flow()
        self.matter = Matter(self)
        self.matter.column.addWidget(self.words)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(Space.M, Space.S, Space.M, Space.S)
        self.column.setSpacing(Space.S)
        self.column.addWidget(self.title)
        self.column.addWidget(self.matter)
        self.column.addLayout(self.answers)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def add_matter(self, matter: QWidget) -> None:
        """What is shown between the words and the answers."""
        self.matter.column.addWidget(matter)

    def whole_height(self, width: int) -> int:
        """px of all of it at this width."""
        inner = width - 2 * (Space.M + self.frameWidth())
        hidden = self.matter.whole_height(inner) - self.matter.heightForWidth(inner)
        return self.heightForWidth(width) + hidden

    def least_height(self, width: int) -> int:
        """px with two lines of what rolls."""
        inner = width - 2 * (Space.M + self.frameWidth())
        whole = self.matter.whole_height(inner)
        return self.whole_height(width) - whole + min(whole, LEAST_LINES * self.fontMetrics().lineSpacing())

    def allow(self, height: int, width: int) -> None:
        """Be no higher than this, px, at this width: the rest rolls."""
        inner = width - 2 * (Space.M + self.frameWidth())
        whole, over = self.matter.whole_height(inner), self.whole_height(width) - height
        self.matter.allow(None if over <= 0 else max(0, whole - over))

    def add_answer(self, words: str, does: Callable[..., object], *, main: bool = False) -> QPushButton:
        """A button, in reading order."""
        button = QPushButton(words, self)
        set_role(button, "rack-main" if main else "rack")
        button.clicked.connect(does)
        self.answers.addWidget(button)
        return button

    def say(self, title: str, words: str) -> None:
        """The question; a reader of the screen hears it as the name of the band."""
        self.title.setText(title)
        self.title.setToolTip(self.tr("The key Q leads to the answers"))
        self.words.setText(words)
        self.words.setVisible(bool(words))
        self.setAccessibleName(title)
        self.setAccessibleDescription(words)

    def be_heard(self) -> None:
        """The question comes by itself and takes no focus: say it, and the way to its answers."""
        announce(self, f"{self.title.text()}. {self.words.text()} {self.title.toolTip()}.")

    def take_focus(self) -> None:
        """The first answer that can be given."""
        for button in self.findChildren(QPushButton):
            if button.isVisibleTo(self) and button.isEnabled():
                button.setFocus(Qt.FocusReason.ShortcutFocusReason)
                return
