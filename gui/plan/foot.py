"""Plan foot: what is lacking, and the buttons that lead on, at the foot of the place Plan.

In    a `Foot`
Out   `back_wanted`, `also_wanted`, `forward_wanted`
Not   what they do (`screen.py`), the words (`view.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from gui.controls.bounce import Bounce
from gui.plan.view import Foot
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["PlanFoot"]


class PlanFoot(QWidget):
    """The main action stands at the right, as everywhere."""

    back_wanted = Signal()
    also_wanted = Signal()
    forward_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.missing = wrapped("", self, "notice")
        self.back = QPushButton(self.tr("Back"), self)
        self.back.setToolTip(self.tr("Step before (Alt+Up)"))
        self.back.clicked.connect(self.back_wanted)
        self.also = QPushButton(self)
        self.also.clicked.connect(self._go_beside)
        self.forward = QPushButton(self)
        self.forward.setToolTip(self.tr("Next step (Alt+Right)"))
        set_role(self.forward, "main")
        self.forward.clicked.connect(self._go_on)
        self._bounce, self._pressed = Bounce(), ""
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        row.addWidget(self.missing, 1)
        for button in (self.back, self.also, self.forward):
            row.addWidget(button)

    @Slot()
    def _go_beside(self) -> None:
        """The main button becomes wider by it, and may lie under the same finger."""
        self._pressed = ""
        self.also_wanted.emit()
        self._bounce.done()

    @Slot()
    def _go_on(self) -> None:
        """A finger that bounces must not keep, draw or save what the button has only just come to say."""
        words = self.forward.text()
        if self._bounce.is_one() and words != self._pressed:
            return
        self._pressed = words
        self.forward_wanted.emit()
        self._bounce.done()

    def show_foot(self, foot: Foot) -> None:
        """Show this."""
        self.missing.setText(foot.missing)
        self.forward.setText(foot.forward)
        self.forward.setEnabled(foot.may_go_on)
        self.back.setVisible(foot.may_go_back)
        self.also.setText(foot.also)
        self.also.setVisible(bool(foot.also))
