"""The calendar of a date field: its arrows can be seen in both schemes."""

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QDateEdit, QToolButton

from gui.style.palette import dress
from gui.style.tokens import Scheme, contrast

FOR_MARKS = 3.0  # WCAG 2.2 (W3C Recommendation 2023), success criterion 1.4.11


@pytest.mark.parametrize("scheme", Scheme)
@pytest.mark.parametrize("name", ["qt_calendar_prevmonth", "qt_calendar_nextmonth"])
def test_the_arrows_of_a_calendar_stand_out(qapp: QApplication, scheme: Scheme, name: str) -> None:
    dress(qapp, scheme)
    try:
        field = QDateEdit()
        field.setCalendarPopup(True)
        calendar = field.calendarWidget()
        calendar.show()
        QApplication.processEvents()
        button = calendar.findChild(QToolButton, name)
        assert button is not None

        assert most_contrast(button.grab().toImage()) >= FOR_MARKS
    finally:
        dress(qapp, Scheme.LIGHT)


def most_contrast(image: QImage) -> float:
    """Of the middle third against the colour a little inside the left edge."""
    wide, high = image.width(), image.height()
    ground = image.pixelColor(wide // 6, high // 2).name()
    middle = [(x, y) for x in range(wide // 3, 2 * wide // 3) for y in range(high // 3, 2 * high // 3)]
    return max(contrast(image.pixelColor(x, y).name(), ground) for x, y in middle)
