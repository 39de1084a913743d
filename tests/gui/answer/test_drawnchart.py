"""The numbers of an axis."""

import pytest
from PySide6.QtWidgets import QApplication

from gui.answer.drawnchart import tick_words, ticks
from gui.language.language import speak_chosen


def test_all_numbers_of_an_axis_have_as_many_decimals() -> None:
    assert tick_words(ticks(45.68, 45.87, 4)) == ["45.70", "45.75", "45.80", "45.85"]
    assert tick_words((-20.0, 0.0, 20.0), signed=True) == ["−20", "0", "+20"]


def test_an_axis_is_written_with_the_decimal_mark_of_the_language(qapp: QApplication) -> None:
    speak_chosen(qapp, "de")
    said = tick_words((0.5, 1.0))
    speak_chosen(qapp, "en")

    assert said == ["0,5", "1,0"]


@pytest.mark.parametrize("low", [0.1, 1.1, 12.3])
def test_no_number_of_an_axis_shows_what_adding_up_leaves_behind(low: float) -> None:
    assert all(len(words) <= 5 for words in tick_words(ticks(low, low + 0.7, 6)))
