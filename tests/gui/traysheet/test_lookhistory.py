"""What stood on the look list: every sentence is read to its end, and a line opens its tray."""

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from data.look import LookKind, Urgency
from data.numbers import TrayId
from data.tables.lookrows import PastLook
from gui.traysheet.past.lookhistory import LookHistory

SENTENCE = "The far right corner is 94 points thinner than the middle, and was 90 on 8 March: it grows. " * 3


def a_past_look(tray: int, sentence: str) -> PastLook:
    day = date(2026, 3, 8)
    return PastLook(
        tray_id=TrayId(tray),
        code=f"A{tray}",
        what=LookKind.EDGE,
        since=day,
        urgency=Urgency.SOON,
        sentence=sentence,
        first_on=day,
        last_on=day,
        gone_on=None,
        gone_why="",
    )


@pytest.fixture
def history(qtbot: QtBot, dressed: QApplication) -> LookHistory:
    made = LookHistory((a_past_look(1, SENTENCE), a_past_look(2, "It lags.")))
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


@pytest.mark.parametrize("width", [560, 700, 790])
def test_rows_are_as_high_as_their_sentences_at_any_width(
    history: LookHistory, qtbot: QtBot, width: int
) -> None:
    history.resize(width, 500)
    qtbot.wait(20)
    table = history.table

    # how many lines the words take at the width that is painted: the column less 8 px on either side
    lines, line = 1, ""
    for word in SENTENCE.split():
        longer = f"{line} {word}".strip()
        if table.fontMetrics().horizontalAdvance(longer) > table.columnWidth(4) - 16:
            lines, line = lines + 1, word
        else:
            line = longer
    assert table.rowHeight(0) >= lines * table.fontMetrics().lineSpacing() + 8
    assert table.rowHeight(1) < table.rowHeight(0) / 2


def test_enter_on_a_line_opens_its_tray(history: LookHistory, qtbot: QtBot) -> None:
    history.table.setCurrentCell(1, 0)

    with qtbot.waitSignal(history.tray_chosen) as chosen:
        qtbot.keyClick(history.table, Qt.Key.Key_Return)

    assert chosen.args == [2]


def test_what_went_away_stands_above_what_is_still_there(qtbot: QtBot, dressed: QApplication) -> None:
    gone = replace(a_past_look(2, "It lagged."), gone_on=date(2026, 3, 9), gone_why="it has caught up")
    made = LookHistory((a_past_look(1, "It lags."), gone, a_past_look(3, "It lags.")))
    qtbot.addWidget(made)

    assert [made.table.item(row, 0).text() for row in range(3)] == ["A2", "A1", "A3"]
    assert "Went away: 1. Still there, below: 2." in [label.text() for label in made.findChildren(QLabel)]
