"""The empty Intake: what stands there is whole, also with large letters in the least window and in German."""

import pytest
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from gui.home import Memory
from gui.intake.droparea import DropArea
from gui.language.language import speak
from gui.style.palette import dress
from gui.style.tokens import Scheme


@pytest.mark.parametrize("language", ["en", "de"])
def test_no_sentence_and_no_button_is_cut(
    qtbot: QtBot, dressed: QApplication, memory: Memory, language: str
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    memory.language = language
    speak(dressed, memory)
    area = DropArea(large=True)
    memory.language = "en"
    speak(dressed, memory)
    qtbot.addWidget(area)
    area.redress()
    area.resize(1024, 555)
    area.show()
    qtbot.wait(20)

    sentences = [area.title, area.words, area.no_trays]
    for one in sentences:
        assert one.height() >= one.heightForWidth(one.width()), one.text()
    for button in area.findChildren(QPushButton):
        assert area.rect().contains(button.geometry().translated(button.parentWidget().pos()))
        assert button.parentWidget().rect().contains(button.geometry())
    letters = area.words.fontMetrics().averageCharWidth()
    assert area.words.width() <= 76 * letters
    dress(dressed, Scheme.LIGHT)
