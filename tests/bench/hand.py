"""Hand: uses the window as a person does, by the words that stand on it, and takes a picture of every step.

In    the real window, words on buttons and fields
Out   presses and keys; pictures NN-name.png in a folder; an error where the words are not there to be pressed
Not   the system's file dialogs, whose answers are put in their place; what is walked (the tests)
"""

import time
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

from PySide6.QtCore import QDate, QPoint, Qt, QTimer
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDateEdit,
    QDialog,
    QFileDialog,
    QLabel,
    QLineEdit,
    QWidget,
)

from gui.window import Window

__all__ = ["Hand", "Typed"]

W = TypeVar("W", bound=QWidget)
Typed = (QLineEdit, QComboBox)

LEFT = Qt.MouseButton.LeftButton
QUIET_S = 0.5  # nothing runs for so long: everything is shown
PATIENCE_S = 900.0


class Hand:
    """One person at the window."""

    def __init__(self, window: Window, pictures: Path) -> None:
        self.window, self.pictures = window, pictures
        self.steps = 0
        pictures.mkdir(parents=True, exist_ok=True)

    # --- looking

    def settle(self) -> None:
        """Wait until nothing runs any more."""
        began = quiet = time.monotonic()
        while time.monotonic() - quiet < QUIET_S:
            QApplication.processEvents()
            if self.window.work.jobs():
                quiet = time.monotonic()
            assert time.monotonic() - began < PATIENCE_S, "the window never comes to rest"
            time.sleep(0.01)

    def until(self, true: Callable[[], bool]) -> None:
        """Wait for something to come true."""
        began = time.monotonic()
        while not true():
            QApplication.processEvents()
            assert time.monotonic() - began < PATIENCE_S, "it never comes true"
            time.sleep(0.01)

    def wait(self, seconds: float) -> None:
        """Let the window live for a while."""
        end = time.monotonic() + seconds
        self.until(lambda: time.monotonic() > end)

    def look(self, name: str, at: QWidget | None = None, *, settle: bool = True) -> None:
        """Take a picture of the window, or of a dialog."""
        if settle:
            self.settle()
        self.steps += 1
        seen = at or self.window
        seen.grab().save(str(self.pictures / f"{self.steps:02d}-{name}.png"))

    def reads(self, words: str, within: QWidget | None = None) -> bool:
        """Whether these words stand somewhere on the screen."""
        labels = (within or self.window).findChildren(QLabel)
        return any(words in label.text() for label in labels if label.isVisible())

    def shows(self, words: str) -> bool:
        """Whether there is a button that says so."""
        buttons = self.window.findChildren(QAbstractButton)
        return any(one.isVisible() and words in _names(one) for one in buttons)

    def find(self, kind: type[W] | tuple[type[W], ...], words: str, within: QWidget | None = None) -> W:
        """What is shown and says so, by its text, its name for those who do not see, or its hint."""
        for one in (within or self.window).findChildren(QWidget):
            if isinstance(one, kind) and one.isVisible() and words in _names(one):
                return one
        for label in (within or self.window).findChildren(QLabel):
            buddy = label.buddy()
            if label.isVisible() and label.text().replace("&", "") == words and isinstance(buddy, kind):
                return buddy
        raise AssertionError(f"nowhere on the screen: {words}")

    # --- doing

    def press(
        self, words: str, within: QWidget | None = None, then: Callable[[Any], None] | None = None
    ) -> None:
        """Press what says so; `then` deals with the dialog that opens."""
        button = self.find(QAbstractButton, words, within)
        assert button.isEnabled(), f"cannot be pressed: {words}"
        if then is not None:
            self._when_it_opens(then)
        spot = QPoint(min(12, button.width() // 2), button.height() // 2)  # on a box, not beside its words
        QTest.mouseClick(button, LEFT, Qt.KeyboardModifier.NoModifier, spot)
        QTest.qWait(QApplication.doubleClickInterval() + 50)  # sooner it would be a finger that bounces

    def press_beginning(self, words: str) -> None:
        """Press the button whose words begin so."""
        for one in self.window.findChildren(QAbstractButton):
            if one.isVisible() and one.text().startswith(words):
                self.press(one.text())
                return
        raise AssertionError(f"nowhere on the screen: {words} ...")

    def key(self, keys: str, *, settle: bool = True) -> None:
        """Press keys, "Ctrl+4", wherever the focus is."""
        combined = QKeySequence(keys)[0]
        target = self.awake()
        QTest.keyClick(QApplication.focusWidget() or target, combined.key(), combined.keyboardModifiers())
        if settle:
            self.settle()

    def awake(self) -> QWidget:
        """The window that keys go to; nobody switches between windows without a desktop."""
        target = QApplication.activeModalWidget() or self.window
        if QApplication.activeWindow() is not target:
            target.activateWindow()
            QTest.qWaitForWindowActive(target)
        return target

    def write(self, field: QWidget | str, text: str, within: QWidget | None = None) -> None:
        """Type into a field what shall stand there, and Enter."""
        if isinstance(field, str):
            field = self.find(Typed, field, within)
        if isinstance(field, QComboBox):
            field = field.lineEdit() or field
        field.setFocus()
        QTest.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
        QTest.keyClicks(field, text)
        QTest.keyClick(field, Qt.Key.Key_Return)
        QApplication.processEvents()

    def set_date(self, field: QDateEdit, date: QDate) -> None:
        """Choose a day."""
        field.setDate(date)

    def stroke(self, view: QWidget) -> None:
        """A stroke of the brush from the middle to the right and down."""
        middle = QPoint(view.width() // 2, view.height() // 2)
        QTest.mousePress(view, LEFT, Qt.KeyboardModifier.NoModifier, middle)
        for step in range(1, 8):
            QTest.mouseMove(view, middle + QPoint(12 * step, 6 * step))
            QApplication.processEvents()
        QTest.mouseRelease(view, LEFT, Qt.KeyboardModifier.NoModifier, middle + QPoint(90, 45))

    def focus(self, wanted: QWidget) -> None:
        """Give it the focus."""
        wanted.setFocus()

    def _when_it_opens(self, then: Callable[[Any], None]) -> None:
        def look() -> None:
            dialog = QApplication.activeModalWidget()
            if not isinstance(dialog, QDialog):
                QTimer.singleShot(20, look)
                return
            try:
                then(dialog)
            finally:
                if dialog.isVisible():
                    dialog.reject()

        QTimer.singleShot(0, look)

    @staticmethod
    def answer_files(*, saved: Path | None = None, photos: list[Path] | None = None) -> None:
        """What the system's own dialogs are answered from here on."""

        def to_save(*_: object) -> tuple[str, str]:
            return (str(saved), "") if saved else ("", "")

        def to_open(*_: object) -> tuple[list[str], str]:
            return [str(path) for path in photos or ()], ""

        QFileDialog.getSaveFileName = to_save
        QFileDialog.getOpenFileNames = to_open


def _names(one: QWidget) -> tuple[str, ...]:
    text = getattr(one, "text", None)
    shown = str(text()) if callable(text) else ""
    hint = getattr(one, "placeholderText", None)
    return (shown, shown.replace("&", ""), one.accessibleName(), str(hint()) if callable(hint) else "")
