"""Sentences on labels are text, whatever a person has called things, in lines that read well."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from gui.controls.rolling import roll_down
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.style.unbroken import unbroken
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


@pytest.mark.parametrize("percent", [100, 150])
def test_lines_are_no_longer_than_reads_well_however_wide_the_window(
    qtbot: QtBot, dressed: QApplication, percent: int
) -> None:
    dress(dressed, Scheme.LIGHT, percent)
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    label = wrapped("A sentence that goes on and on, as they do where much is explained. " * 6, page)
    column.addWidget(label)
    column.addStretch(1)
    with qtbot.waitExposed(page):
        page.resize(2400, 900)
        page.show()
    qtbot.waitUntil(lambda: label.contentsRect().width() < label.width())

    letter = label.fontMetrics().horizontalAdvance(label.text()) / len(label.text())
    assert label.x() < 50  # where all else begins, not in the middle
    assert label.contentsRect().width() <= 76 * letter
    lines = label.height() / label.fontMetrics().lineSpacing()
    assert lines >= len(label.text()) / 76
    page.resize(300, 900)
    qtbot.waitUntil(lambda: label.contentsRect().width() == label.width())  # a narrow page is used to its end
    dress(dressed, Scheme.LIGHT)


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("505 g on 11 March, 271 g under 776 g.", "505_g on 11_March, 271_g under 776_g."),
        ("Coverage 87 %, 9 points below", "Coverage 87_%, 9_points below"),
        ("Deckung 99,5 % (1 Punkt)", "Deckung 99,5_% (1_Punkt)"),
        ("heat mat off: 4 minutes.", "heat mat off: 4_minutes."),
        ("Heizmatte: 4 Minuten.", "Heizmatte: 4_Minuten."),
        ("on day 8 green leaves", "on day_8 green leaves"),  # no unit, though it begins like one
        ("A1 hours", "A1 hours"),
        ("abgelesen an Tag 9), 2 trays a day 9", "abgelesen an Tag_9), 2 trays a day_9"),
        ("am 11. März 2026 auf Platz 9. Dann", "am 11._März 2026 auf Platz 9. Dann"),
        ("", ""),
    ],
)
def test_a_number_stays_beside_its_unit_and_a_day_beside_its_month(text: str, kept: str) -> None:
    assert unbroken(text).replace("\u00a0", "_") == kept


def test_a_label_keeps_numbers_together_and_gives_back_what_it_was_given(
    qtbot: QtBot, dressed: QApplication
) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    words = "With a chance of 80 %, on 11 March."

    label = wrapped(words, parent)

    assert label.text() == words
    assert QLabel.text(label) == "With a chance of 80\u00a0%, on 11\u00a0March."


@pytest.mark.parametrize("percent", [100, 125, 150])
@pytest.mark.parametrize(
    "words",
    [
        "31.0 g is far from what it was before; read in oz it would be 879 g. Which one is it?",
        "CO2e is a screening estimate: no certified assessment. There is no grand total.",
        "Die Deckung ist hier zweifelhaft: den Umriss mit dem Foto vergleichen, ehe man ihr traut.",
    ],
)
def test_no_line_breaks_for_the_sake_of_a_word(
    qtbot: QtBot, dressed: QApplication, words: str, percent: int
) -> None:
    dress(dressed, Scheme.LIGHT, percent)
    label = wrapped(words, None)
    qtbot.addWidget(label)
    label.resize(1800, 50)
    label.show()

    assert label.heightForWidth(1800) < 1.5 * label.fontMetrics().lineSpacing()
    dress(dressed, Scheme.LIGHT)


def test_a_page_that_rolls_gives_every_sentence_its_lines(qtbot: QtBot, dressed: QApplication) -> None:
    area = QScrollArea()
    qtbot.addWidget(area)
    roll_down(area)
    page = QWidget()
    column = QVBoxLayout(page)
    labels = [wrapped("", page) for _ in range(12)]
    for label in labels:
        column.addWidget(label)
    column.addStretch(1)
    area.setWidget(page)
    area.resize(1500, 300)
    with qtbot.waitExposed(area):
        area.show()

    for width in (1500, 900, 1600):
        area.resize(width, 300)
        for label in labels:
            label.setText(
                f"At {width} px a sentence goes on and on, as they do where much is explained. " * 4
            )
        qtbot.waitUntil(lambda: all(one.heightForWidth(one.width()) <= one.height() for one in labels))
        qtbot.wait(20)
        assert all(one.heightForWidth(one.width()) <= one.height() for one in labels)


def test_the_height_of_a_sentence_follows_its_words_and_letters(qtbot: QtBot, dressed: QApplication) -> None:
    label = wrapped("It was weighed again in the evening, after it had drained for an hour. " * 3, None)
    qtbot.addWidget(label)
    whole = label.heightForWidth(300)

    larger = QFont(label.font())
    larger.setPointSizeF(2 * larger.pointSizeF())
    label.setFont(larger)
    assert label.heightForWidth(300) > 2 * whole
    label.setText("Short.")
    assert label.heightForWidth(300) < 2 * label.fontMetrics().lineSpacing()
