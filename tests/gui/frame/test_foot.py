"""The foot says what was done to its last word, however narrow the window."""

from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.frame.foot import Foot
from gui.style.palette import dress
from gui.style.tokens import Scheme


def test_a_long_sentence_is_read_whole_in_the_least_window_with_large_letters(
    qtbot: QtBot, dressed: QApplication
) -> None:
    dress(dressed, Scheme.LIGHT, 150)
    window = QWidget()
    qtbot.addWidget(window)
    column = QVBoxLayout(window)
    column.setContentsMargins(0, 0, 0, 0)
    foot = Foot(window)
    foot.about_book.setText("A book with a name of its own · 11 March 2026")
    column.addStretch(1)
    column.addWidget(foot)
    window.resize(1024, 700)
    with qtbot.waitExposed(window):
        window.show()

    foot.tell(
        "A1, A2, A3, A4 and 14 more: watered from below, 600 ml each, 10.8 l in all. Ctrl+Z takes it back."
    )
    qtbot.waitUntil(lambda: foot.told.heightForWidth(foot.told.width()) <= foot.told.height())
    assert window.width() == 1024
    assert foot.about_book.width() >= foot.about_book.sizeHint().width()
    dress(dressed, Scheme.LIGHT)


def test_a_book_with_a_long_name_does_not_make_the_window_wider(
    qtbot: QtBot, dressed: QApplication, rack_book: Book
) -> None:
    name = "microgreens of the winter season " * 6
    foot = Foot()
    qtbot.addWidget(foot)

    foot.show_book(rack_book, name)

    assert foot.minimumSizeHint().width() < 700
    assert foot.about_book.text().startswith("microgreens")
    assert name in foot.about_book.accessibleName()
