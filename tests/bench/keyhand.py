"""Key hand: the same person without a mouse: whatever is to be pressed must be reached by Tab and arrows.

In    the real window
Out   keys alone; an error where no key leads to what is wanted
Not   what is walked (`test_first_trial.py`)
"""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDateEdit,
    QRadioButton,
    QWidget,
)

from tests.bench.hand import Hand, Typed

__all__ = ["KeyHand"]

MOST_STOPS = 250  # of one round of Tab
CONTROL = Qt.KeyboardModifier.ControlModifier


class KeyHand(Hand):
    """Presses with Space, writes where Tab led to; counts the keys that it took."""

    keys = 0
    longest = (0, "")  # the longest way, and to what

    def _type(self, key: Qt.Key, modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        target = self.awake()
        QTest.keyClick(QApplication.focusWidget() or target, key, modifiers)
        QApplication.processEvents()
        self.keys += 1

    def reach(self, wanted: QWidget) -> None:
        """Tab until it has the focus, by arrows within a group of choices."""
        begun = self.keys
        for _ in range(MOST_STOPS):
            now = QApplication.focusWidget()
            if now is not None and (
                now is wanted or wanted.focusProxy() is now or now.focusProxy() is wanted
            ):
                self.longest = max(self.longest, (self.keys - begun, _told(wanted)))
                return
            if isinstance(now, QRadioButton) and _is_beside(now, wanted):
                self._type(Qt.Key.Key_Down)
            else:
                self._type(Qt.Key.Key_Tab)
        raise AssertionError(f"no key leads to: {_told(wanted)}")

    def press(
        self, words: str, within: QWidget | None = None, then: Callable[[Any], None] | None = None
    ) -> None:
        """Go to what says so, and press Space."""
        button = self.find(QAbstractButton, words, within)
        assert button.isEnabled(), f"cannot be pressed: {words}"
        if then is not None:
            self._when_it_opens(then)
        self.reach(button)
        if not (isinstance(button, QRadioButton) and button.isChecked()):
            self._type(Qt.Key.Key_Space)
            QTest.qWait(QApplication.doubleClickInterval() + 50)  # sooner it would be a finger that bounces

    def write(self, field: QWidget | str, text: str, within: QWidget | None = None) -> None:
        """Go to a field, type what shall stand there, and Enter."""
        if isinstance(field, str):
            field = self.find(Typed, field, within)
        if isinstance(field, QComboBox) and field.lineEdit() is None:
            self.reach(field)
            QTest.keyClicks(field, text)
        else:
            inner = field.lineEdit() if isinstance(field, QComboBox) else field
            assert inner is not None
            self.reach(field)
            self._type(Qt.Key.Key_A, CONTROL)
            QTest.keyClicks(QApplication.focusWidget() or inner, text)
        self._type(Qt.Key.Key_Return)

    def set_date(self, field: QDateEdit, date: QDate) -> None:
        """Go to it, and type the days as they stand there, part by part."""
        self.reach(field)
        field.setSelectedSection(QDateEdit.Section.DaySection)
        while field.date() != date:
            before = field.date()
            self._type(Qt.Key.Key_Up if before < date else Qt.Key.Key_Down)
            if field.date() == before:
                field.setSelectedSection(QDateEdit.Section.MonthSection)

    def stroke(self, view: QWidget) -> None:
        """A stroke of the brush with Shift and arrows."""
        self.reach(view)
        for key in (Qt.Key.Key_Right,) * 6 + (Qt.Key.Key_Down,) * 3:
            self._type(key, Qt.KeyboardModifier.ShiftModifier)

    def focus(self, wanted: QWidget) -> None:
        """Go to it."""
        self.reach(wanted)


def _is_beside(choice: QRadioButton, wanted: QWidget) -> bool:
    group = choice.group()
    if group is not None:
        return wanted in group.buttons()
    return isinstance(wanted, QRadioButton) and wanted.parent() is choice.parent()


def _told(widget: QWidget) -> str:
    text = getattr(widget, "text", None)
    return widget.accessibleName() or (str(text()) if callable(text) else "") or type(widget).__name__
