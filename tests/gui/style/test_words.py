"""Sentences on labels are text, whatever a person has called things."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from gui.style.words import heading, soft, wrapped


@pytest.mark.parametrize("made", [wrapped, heading, soft])
def test_a_name_that_looks_like_html_is_shown_as_it_was_typed(
    qtbot: QtBot, dressed: QApplication, made: Callable[[str, QWidget], QLabel]
) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)

    label = made("<b>1 and <img src=x> are trays", parent)

    assert label.textFormat() is Qt.TextFormat.PlainText
    assert label.wordWrap()
