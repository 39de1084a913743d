"""Top row: the places of the window, undo, and the menus of book and view.

In    the actions of the window by name
Out   `place_chosen`; the menus of its buttons, `book_menu` and `view_menu`
Not   what stands in the menus (`bookmenu.py`, `viewmenu.py`)
"""

from collections.abc import Iterable, Mapping

from PySide6.QtCore import QCoreApplication, QSize, Qt, Signal, Slot
from PySide6.QtGui import QAction, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QMenu,
    QSizePolicy,
    QToolButton,
    QWidget,
)

from gui.frame.actions import PLACES
from gui.frame.bookmenu import BookMenu
from gui.frame.viewmenu import ViewMenu
from gui.language.plainbutton import plain_button
from gui.language.plainhint import plain_hint
from gui.style.icon import icon
from gui.style.palette import Space, set_role, tokens_now

__all__ = ["TopRow"]

LETTERS_FOR_UNDO = 22  # of what would be taken back; the tooltip has it all


class TopRow(QFrame):
    """One row, always there."""

    place_chosen = Signal(str)

    def __init__(self, actions: Mapping[str, QAction], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "top")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)  # what is below gives way
        self._actions = actions
        self._undo_text: str | None = None
        self.places = self._make_places()
        self.undo, self.redo = self._make_button(actions["undo"]), self._make_button(actions["redo"])
        self.book_menu, self.view_menu = BookMenu(actions, self), ViewMenu(actions, self)
        self.book = self._make_menu_button(self.tr("Book"), self.tr("Open or start a book"), self.book_menu)
        self.view = self._make_menu_button(
            self.tr("View"), self.tr("Light or dark, size of letters, language"), self.view_menu
        )
        self.help = self._make_button(actions["show_help"])
        self._tools = (self.undo, self.redo, self.book, self.view, self.help)
        self._rows = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._rows.setContentsMargins(Space.S, 0, Space.M, 0)
        self._rows.setSpacing(0)
        self._rows.addLayout(self._make_row(self.places.values()))
        self._rows.addStretch(1)
        self._rows.addLayout(self._make_row(self._tools))
        self.redress()

    @staticmethod
    def _make_row(buttons: Iterable[QToolButton]) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(Space.XS)
        for button in buttons:
            row.addWidget(button)
        row.addStretch(1)
        return row

    def _make_places(self) -> dict[str, QToolButton]:
        group = QButtonGroup(self)
        made = {}
        for place in PLACES:
            button = QToolButton(self)
            button.setText(QCoreApplication.translate("Place", place.words))
            about = QCoreApplication.translate("Place", place.about)
            button.setToolTip(f"{about} ({_native(place.key)})")
            button.setAccessibleDescription(about)
            button.setCheckable(True)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            button.setProperty("place", place.name)
            set_role(button, "place")
            button.clicked.connect(self._choose_place)
            group.addButton(button)
            made[place.name] = button
        return made

    def _make_button(self, action: QAction) -> QToolButton:
        button = QToolButton(self)
        button.setDefaultAction(action)
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        button.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        set_role(button, "quiet")
        return button

    def _make_menu_button(self, words: str, about: str, menu: QMenu) -> QToolButton:
        button = QToolButton(self)
        button.setText(words)
        button.setToolTip(about)
        button.setAccessibleDescription(about)
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        button.setMenu(menu)
        set_role(button, "quiet")
        return button

    # --- showing

    def show_place(self, name: str) -> None:
        """Mark the place where we are."""
        self.places[name].setChecked(True)

    def show_undo(self, undo: str | None, redo: str | None) -> None:
        """Say what would be taken back, and what would be done again."""
        self._undo_text = undo
        for name, text in (("undo", undo), ("redo", redo)):
            action = self._actions[name]
            words = action.property("words")
            action.setEnabled(text is not None)
            about = words if text is None else self.tr("{do}: {what}").format(do=words, what=text)
            action.setToolTip(plain_hint(f"{about} ({_native(action.shortcut().toString())})"))
        for button, text in ((self.undo, undo), (self.redo, redo)):
            button.setAccessibleDescription(text or "")
        self._fit()

    def redress(self) -> None:
        """Icons in the new ink."""
        t = tokens_now()
        side = max(20, self.fontMetrics().ascent() + 2)
        for button in self.findChildren(QToolButton):
            button.setIconSize(QSize(side, side))
        for place in PLACES:
            self.places[place.name].setIcon(icon(place.icon, t.accent))
        for name in ("undo", "redo", "show_help"):
            self._actions[name].setIcon(icon({"show_help": "help"}.get(name, name)))
        self.book.setIcon(icon("book"))
        self.view.setIcon(icon("view"))
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Words of undo only where there is room."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """The text of what would be taken back stands on the button where the row has room for it."""
        action = self._actions["undo"]
        words = action.property("words")
        text = self._undo_text
        letter = self.fontMetrics().averageCharWidth()
        roomy = self.width() > letter * 150
        if text is not None and roomy:
            short = text if len(text) <= LETTERS_FOR_UNDO else text[: LETTERS_FOR_UNDO - 1].rstrip() + "…"
            words = self.tr("{do}: {what}").format(do=words, what=short)
        action.setText(plain_button(words))
        action.setIconText(action.text())  # else Qt leaves out the dots at its end
        self._narrow()

    def _narrow(self) -> None:
        """Where words and icons do not fit beside each other: icons go first, then there are two rows."""
        beside = Qt.ToolButtonStyle.ToolButtonTextBesideIcon
        text = Qt.ToolButtonStyle.ToolButtonTextOnly
        needed = 0
        for of_tools, of_places in ((beside, beside), (text, beside), (text, text)):
            for buttons, style in ((self._tools, of_tools), (tuple(self.places.values()), of_places)):
                for button in buttons:
                    button.setToolButtonStyle(style)
            every = (*self.places.values(), *self._tools)
            needed = sum(button.sizeHint().width() + Space.XS for button in every) + Space.S + Space.M
            if needed <= self.width():
                break
        one = needed <= self.width()
        self._rows.setDirection(QBoxLayout.Direction.LeftToRight if one else QBoxLayout.Direction.TopToBottom)
        self._rows.activate()

    # --- hands

    @Slot()
    def _choose_place(self) -> None:
        self.place_chosen.emit(self.sender().property("place"))


def _native(key: str) -> str:
    return QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText)
