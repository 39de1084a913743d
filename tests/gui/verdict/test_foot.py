"""The foot of the Verdict: the next trial, and for which crop it takes so many trays."""

from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.verdict.nexttrial import NextTrial
from gui.verdict.foot import VerdictFoot


def test_the_crop_that_takes_most_is_named_where_another_one_is_in_front(
    dressed: QApplication, qtbot: QtBot
) -> None:
    foot = VerdictFoot()
    qtbot.addWidget(foot)
    then = NextTrial(trays=13, crop="red radish")

    foot.show_may(score=True, then=then, crop="broccoli")
    assert foot.next.text() == "Plan the next trial: 13 trays of each, for red radish"

    foot.show_may(score=True, then=then, crop="red radish")
    assert foot.next.text() == "Plan the next trial: 13 trays of each"

    foot.show_may(score=True, then=None, crop="broccoli")
    assert foot.next.isHidden()
