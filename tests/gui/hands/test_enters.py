"""Enter on a button: what it does as Qt delivers it to the window."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLineEdit, QMenu, QPushButton, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from gui.hands.enters import Enters

ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class Page(QWidget):
    """Does something of its own on Enter, as the page of the corners does."""

    def __init__(self) -> None:
        super().__init__()
        self.used = 0
        self.pressed: list[str] = []

    def event(self, event: QEvent) -> bool:
        self.used += (
            isinstance(event, QKeyEvent) and event.key() in ENTERS and event.type() == event.Type.KeyPress
        )
        return super().event(event)


@pytest.fixture
def page(qtbot: QtBot, dressed: QApplication) -> Page:
    page = Page()
    Enters(page)
    page.resize(300, 200)
    qtbot.addWidget(page)
    with qtbot.waitActive(page):
        page.show()
    return page


def shown(part: QWidget) -> None:
    part.setGeometry(10, 10, 100, 44)
    part.show()
    part.setFocus()


@pytest.mark.parametrize("key", ENTERS)
def test_enter_presses_the_button_with_the_focus_and_nothing_around_it(page: Page, key: Qt.Key) -> None:
    leave = QPushButton("Leave", page)
    leave.clicked.connect(lambda: page.pressed.append("leave"))
    shown(leave)

    QTest.keyClick(page.windowHandle(), key)

    assert (page.pressed, page.used) == (["leave"], 0)


def test_a_switch_is_turned_by_enter(page: Page) -> None:
    switch = QPushButton("Gaps", page)
    switch.setCheckable(True)
    shown(switch)
    QTest.keyClick(page.windowHandle(), Qt.Key.Key_Return)
    assert switch.isChecked()


def test_a_menu_drops_down_by_enter(page: Page, qtbot: QtBot) -> None:
    button, menu = QToolButton(page), QMenu(page)
    menu.addAction("Pack this book")
    menu.aboutToShow.connect(lambda: page.pressed.append("menu"))
    button.setMenu(menu)
    button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
    button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    shown(button)
    menu.aboutToShow.connect(
        lambda: qtbot.waitUntil(menu.isVisible) or menu.close(), Qt.ConnectionType.QueuedConnection
    )

    QTest.keyClick(page.windowHandle(), Qt.Key.Key_Return)

    assert page.pressed == ["menu"]


def test_enter_in_a_field_stays_the_pages(page: Page) -> None:
    shown(QLineEdit(page))

    QTest.keyClick(page.windowHandle(), Qt.Key.Key_Return)

    assert page.used == 1


def test_enter_in_an_open_menu_chooses_there_though_a_button_has_the_focus(page: Page, qtbot: QtBot) -> None:
    leave, menu = QPushButton("Leave", page), QMenu(page)
    leave.clicked.connect(lambda: page.pressed.append("leave"))
    shown(leave)
    pack = menu.addAction("Pack this book")
    pack.triggered.connect(lambda: page.pressed.append("pack"))
    menu.popup(page.mapToGlobal(page.rect().center()))
    qtbot.waitUntil(lambda: QApplication.focusWindow() is menu.windowHandle())
    menu.setActiveAction(pack)  # as the mouse does, which leaves the focus where it is

    QTest.keyClick(menu.windowHandle(), Qt.Key.Key_Return)

    assert page.pressed == ["pack"]


def test_enter_on_a_fold_in_a_dialog_opens_it_and_does_not_end_the_dialog(
    qtbot: QtBot, dressed: QApplication
) -> None:
    pressed: list[str] = []
    dialog = QDialog()
    qtbot.addWidget(dialog)
    Enters(dialog)
    keep, fold = QPushButton("Keep", dialog), QToolButton(dialog)
    keep.setDefault(True)
    keep.clicked.connect(lambda: pressed.append("keep"))
    fold.clicked.connect(lambda: pressed.append("fold"))
    fold.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    with qtbot.waitActive(dialog):
        dialog.show()
    for part in (keep, fold):
        part.setFocus()
        QTest.keyClick(dialog.windowHandle(), Qt.Key.Key_Return)

    assert pressed == ["keep", "fold"]
