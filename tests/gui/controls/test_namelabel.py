"""A name of any length stands in a title without making the window wider."""

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.trial import CropPlan
from data.verdict.nexttrial import NextTrial
from gui.bench.rack import Choices
from gui.bench.rackfilters import RackFilters
from gui.controls.namelabel import NameLabel
from gui.plan.croprow import CropRow
from gui.plan.mediumrow import MediumRow
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.verdict.foot import VerdictFoot

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


@pytest.mark.parametrize(
    "name",
    ["Peat mix against coir and fibre mat", "Entwurf: Peat mix against coir and fibre mat, noch einmal"],
)
def test_an_ordinary_name_is_shown_as_it_is(qtbot: QtBot, dressed: QApplication, name: str) -> None:
    label = NameLabel()
    qtbot.addWidget(label)

    label.show_name(name)

    assert (label.text(), label.toolTip()) == (name, "")


def test_long_names_in_a_foot_and_in_rows_keep_to_the_least_window(
    qtbot: QtBot, dressed: QApplication
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    foot = VerdictFoot()
    filters = RackFilters()
    crop = CropRow(CropPlan(name=LONG, read_on_day=9), lambda: None, foot)
    medium = MediumRow(LONG, lambda: None, lambda: None, lambda *_: None, foot)
    for part in (foot, filters):
        qtbot.addWidget(part)

    foot.show_may(score=True, then=NextTrial(crop=LONG, trays=13), crop="pea & bean")
    filters.show_choices(Choices(crops=(LONG,), media=(LONG,), trials=(LONG,), days=(9,)))

    assert foot.minimumSizeHint().width() < 1024 - 2 * 16
    assert filters.minimumSizeHint().width() < 600
    assert crop.taken.sizeHint().width() < 300
    assert medium.taken.sizeHint().width() < 560
    assert crop.taken.accessibleName() == medium.taken.accessibleName() == LONG
    dress(dressed, Scheme.LIGHT)
