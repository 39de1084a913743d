"""Settings that have a word of ours are read and typed in the window's language, and kept in one."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.home import Memory
from gui.language.language import speak
from gui.language.levels import edited_level, kept_level, shown_level
from gui.trays.sowingview import conditions_words
from gui.traysheet.trayform import TrayForm
from tests.data.builders import a_tray


@pytest.fixture
def german(qapp: QApplication, memory: Memory) -> Iterator[None]:
    memory.language, before = "de", QLocale()
    speak(qapp, memory)
    yield
    memory.language = "en"
    speak(qapp, memory)
    QLocale.setDefault(before)


@pytest.mark.parametrize(
    ("factor", "level", "words"),
    [
        ("feed", "none", "ohne"), ("feed", "weekly", "wöchentlich"), ("watering", "bottom", "von unten"),
        ("watering", "both", "beides"), ("seating", "in the tray", "in der Schale"),
        ("heat mat", "without heat mat", "ohne Heizmatte"), ("light", "brighter", "heller"),
    ],
)  # fmt: skip
def test_a_setting_is_read_in_german_and_comes_back_as_the_book_says_it(
    german: None, factor: str, level: str, words: str
) -> None:
    assert shown_level(factor, level) == words
    assert kept_level(factor, f" {words.upper()} ") == level
    assert kept_level(factor, words) == level


@pytest.mark.parametrize("typed", ["ohne", "Keine", "none", "Wasser"])
def test_no_feed_is_kept_as_such_in_whatever_words(german: None, typed: str) -> None:
    assert kept_level("feed", typed) == "none"


def test_what_a_person_says_in_own_words_stays_as_it_is(german: None) -> None:
    assert kept_level("feed", "Algen, dünn") == shown_level("feed", "Algen, dünn") == "Algen, dünn"
    assert kept_level("watering", "Nebel") == "Nebel"
    assert (kept_level("feed", " "), shown_level("feed", None)) == ("", "")


def test_what_nobody_touched_stays_as_the_book_had_it(german: None) -> None:
    assert edited_level("feed", "ohne", "water") == "water"
    assert edited_level("feed", "ohne", "weekly") == "none"
    assert edited_level("feed", " ", None) is None
    assert edited_level("light", "LED", "LED ") == "LED "


def test_the_light_of_a_plan_is_read_and_typed_on_a_tray_in_the_same_words(
    german: None, qtbot: QtBot
) -> None:
    """What a plan varies is known again on its trays by the word in the book."""
    form = TrayForm()
    qtbot.addWidget(form)
    tray = a_tray(light="as now")
    form.show_tray(tray)
    assert form.light.text() == "wie jetzt"
    assert "Licht: wie jetzt" in conditions_words(tray)
    assert form.said().light == "as now"

    form.light.setText("heller")
    assert form.said().light == "brighter"


def test_in_english_the_words_are_those_of_the_book() -> None:
    assert (shown_level("watering", "bottom"), kept_level("watering", "bottom")) == ("bottom", "bottom")
