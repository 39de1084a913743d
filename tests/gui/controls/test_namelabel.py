"""A name of any length stands in a title without making the window wider."""

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.controls.namelabel import NameLabel
from gui.style.palette import dress
from gui.style.tokens import Scheme

LONG = (
    "Peat mix against coir and fibre mat in the lower rack by the door during the long cool winter, once more"
)


@pytest.mark.parametrize("percent", [100, 150])
def test_a_long_name_fits_the_least_window_and_is_told_whole(
    qtbot: QtBot, dressed: QApplication, percent: int
) -> None:
    dress(dressed, Scheme.LIGHT, percent)
    label = NameLabel()
    qtbot.addWidget(label)

    label.show_name(LONG)

    assert label.minimumSizeHint().width() < 1024 - 2 * 16
    assert label.text().startswith("Peat mix")
    assert label.text().endswith("once more")
    assert label.toolTip() == label.accessibleName() == LONG
    dress(dressed, Scheme.LIGHT)


def test_an_ordinary_name_is_shown_as_it_is(qtbot: QtBot, dressed: QApplication) -> None:
    label = NameLabel()
    qtbot.addWidget(label)

    label.show_name("Peat mix against coir and fibre mat")

    assert (label.text(), label.toolTip()) == ("Peat mix against coir and fibre mat", "")
