"""The head of a verdict: which trial is looked at is read whole."""

from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.verdict.head import VerdictHead

NAMES = ("Fibre mat and coir against peat, spring", "Fibre mat and coir against peat, autumn")


def test_the_name_of_one_trial_among_several_is_read_whole_in_large_letters(
    qtbot: QtBot, qapp: QApplication
) -> None:
    dress(qapp, Scheme.LIGHT, 150)
    head = VerdictHead()
    qtbot.addWidget(head)
    head._fill(head.trials, head.only_trial, NAMES, NAMES[1])
    head.resize(992, 200)  # the least window, less its edges
    head.show()
    qapp.processEvents()

    shown = head.trials
    assert shown.isVisible()
    assert shown.fontMetrics().horizontalAdvance(NAMES[1]) < shown.width() - 40  # its edges and its arrow
    assert shown.geometry().right() <= head.width()
    dress(qapp, Scheme.LIGHT)
