"""Form: one layout for every dialog that asks for a few things.

In    what stands above, the fields, where trouble is told, the buttons with the main one last
Out   the dialog laid out
Not   what is asked (`frame/newbook.py`, `trays/newtray.py`)
"""

from collections.abc import Sequence

from PySide6.QtWidgets import QDialog, QFormLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from gui.controls.rolling import LowRoll
from gui.style.palette import Space

__all__ = ["fields", "fit", "lay_out", "lay_out_ways", "open_within_screen"]

TITLE_BAR = 40  # px, about


def fields() -> QFormLayout:
    """Rows of a label and a field."""
    form = QFormLayout()
    form.setHorizontalSpacing(Space.L)
    form.setVerticalSpacing(Space.M)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
    return form


def lay_out(
    dialog: QDialog,
    above: Sequence[QWidget],
    form: QFormLayout,
    trouble: QLabel,
    buttons: Sequence[QPushButton],
    characters: int,
    *,
    rolls: bool = False,
) -> None:
    """From top to bottom; at least `characters` average characters wide; many fields roll on a low screen."""
    row = QHBoxLayout()
    row.setSpacing(Space.S)
    row.addStretch(1)
    for button in buttons:
        row.addWidget(button)
    column = QVBoxLayout(dialog)
    column.setContentsMargins(Space.XL, Space.XL, Space.XL, Space.L)
    column.setSpacing(Space.L)
    for part in above:
        column.addWidget(part)
    if rolls:
        inner = QWidget(dialog)
        inner.setLayout(form)
        form.setContentsMargins(0, 0, 0, 0)
        column.addWidget(LowRoll(inner, dialog), 1)
    else:
        column.addLayout(form)
    column.addWidget(trouble)
    column.addStretch(0 if rolls else 1)
    column.addLayout(row)
    dialog.setMinimumWidth(dialog.fontMetrics().averageCharWidth() * characters)


def lay_out_ways(
    dialog: QDialog,
    above: Sequence[QWidget],
    leave: QPushButton,
    ways: Sequence[QPushButton],
    characters: int,
) -> None:
    """A dialog that asks nothing but which way: the way out at the left, the usual way last."""
    row = QHBoxLayout()
    row.setSpacing(Space.S)
    row.addWidget(leave)
    row.addStretch(1)
    for way in ways:
        row.addWidget(way)
    column = QVBoxLayout(dialog)
    column.setContentsMargins(Space.XL, Space.XL, Space.XL, Space.L)
    column.setSpacing(Space.L)
    for part in above:
        column.addWidget(part)
    column.addStretch(1)
    column.addLayout(row)
    dialog.setMinimumWidth(dialog.fontMetrics().averageCharWidth() * characters)


def open_within_screen(window: QWidget, width: int, height: int) -> None:
    """Be so large, as far as the screen goes, px; large letters would make it larger than that."""
    room = window.screen().availableGeometry().size()
    window.resize(min(width, room.width()), min(height, room.height() - TITLE_BAR))


def fit(dialog: QDialog) -> None:
    """Never narrower than its buttons nor lower than wrapped words need.

    A dialog sees neither by itself: a least width of its own hides what its layout would need.
    """
    layout = dialog.layout()
    if layout is None:
        return
    rolls = dialog.findChildren(LowRoll)
    for roll in rolls:
        roll.measure()  # a layout remembers what it asked for before its words changed
    dialog.setMinimumWidth(max(dialog.minimumWidth(), layout.minimumSize().width()))
    width = max(dialog.width(), dialog.minimumWidth())
    wrapped = layout.hasHeightForWidth()
    needed = layout.totalHeightForWidth(width) if wrapped else layout.totalSizeHint().height()
    edges = layout.contentsMargins()
    needed += sum(roll.grow_to(width - edges.left() - edges.right()) for roll in rolls)
    most = dialog.screen().availableGeometry().height() - TITLE_BAR
    dialog.setMinimumHeight(min(most, needed))
    if dialog.height() > most:
        dialog.resize(width, most)
