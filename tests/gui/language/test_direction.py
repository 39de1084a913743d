"""What runs from right to left keeps its order within a line of ours (UAX #9, first strong isolate)."""

from PySide6.QtGui import QTextLayout
from PySide6.QtWidgets import QApplication

from gui.language.direction import own_direction

HEBREW = "המגש A1 הושקה"  # tray A1 was watered


def test_words_from_left_to_right_stay_as_they_are() -> None:
    assert own_direction("turned, 600 ml") == "turned, 600 ml"
    assert own_direction("") == ""


def test_the_first_word_of_a_sentence_from_right_to_left_stands_at_the_right(dressed: QApplication) -> None:
    def place_of(words: str, letter: int) -> float:
        layout = QTextLayout(words, dressed.font())
        layout.beginLayout()
        line = layout.createLine()
        line.setLineWidth(1000)
        layout.endLayout()
        return float(line.cursorToX(letter)[0])

    told = f"note: {own_direction(HEBREW)}"
    first, code = told.index(HEBREW[0]), told.index("A1")

    assert place_of(told, first + 2) > place_of(told, code + 1)
    plain = f"note: {HEBREW}"
    assert place_of(plain, plain.index(HEBREW[0]) + 2) < place_of(plain, plain.index("A1") + 1)
