"""View menu: light or dark, size of letters, units in which numbers are typed, language.

In    the actions of the window by name; what is chosen now
Out   `scheme_chosen`, `text_chosen`, `units_chosen`, `language_chosen`
Not   what a choice does (`viewchoices.py`)
"""

from collections.abc import Iterable, Mapping
from typing import TypeVar

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QWidget

from data.entry.units import UnitSystem
from gui.home import AS_SYSTEM, TEXT_SIZES
from gui.language.names import LANGUAGES

__all__ = ["ViewMenu"]

Value = TypeVar("Value", str, int)


class ViewMenu(QMenu):
    """Groups of choices, one marked in each."""

    scheme_chosen = Signal(str)
    text_chosen = Signal(int)  # %
    units_chosen = Signal(str)  # a `UnitSystem`
    language_chosen = Signal(str)

    def __init__(self, actions: Mapping[str, QAction], parent: QWidget) -> None:
        super().__init__(parent)
        self._schemes = self._group(
            (("system", self.tr("As the system")), ("light", self.tr("Light")), ("dark", self.tr("Dark")))
        )
        self._schemes.triggered.connect(self._choose_scheme)
        self._texts = self._group((n, self.tr("Text {n} %").format(n=n)) for n in TEXT_SIZES)
        self._texts.triggered.connect(self._choose_text)
        self._units = self._group(
            (
                (str(UnitSystem.METRIC), self.tr("Type g, °C, ml, mm")),
                (str(UnitSystem.US), self.tr("Type oz, °F, fl oz, in")),
            )
        )
        self._units.triggered.connect(self._choose_units)
        self.addAction(actions["larger_text"])
        self.addAction(actions["smaller_text"])
        self.addSeparator()
        self._languages = self._group(((AS_SYSTEM, self.tr("Language as the system")), *LANGUAGES))
        self._languages.triggered.connect(self._choose_language)
        self.addAction(actions["show_keys"])

    def _group(self, choices: Iterable[tuple[Value, str]]) -> QActionGroup:
        group = QActionGroup(self)
        for value, words in choices:
            choice = QAction(words, group)
            choice.setCheckable(True)
            choice.setData(value)
            self.addAction(choice)
        self.addSeparator()
        return group

    def show_choices(self, scheme: str, text_percent: int, language: str = AS_SYSTEM) -> None:
        """Mark what is worn and spoken."""
        for group, chosen in (
            (self._schemes, scheme), (self._texts, text_percent), (self._languages, language),
        ):  # fmt: skip
            for choice in group.actions():
                choice.setChecked(choice.data() == chosen)

    def show_units(self, system: UnitSystem) -> None:
        """Mark the units in which numbers are typed."""
        for choice in self._units.actions():
            choice.setChecked(choice.data() == str(system))

    @Slot(QAction)
    def _choose_scheme(self, choice: QAction) -> None:
        self.scheme_chosen.emit(choice.data())

    @Slot(QAction)
    def _choose_language(self, choice: QAction) -> None:
        self.language_chosen.emit(choice.data())

    @Slot(QAction)
    def _choose_units(self, choice: QAction) -> None:
        self.units_chosen.emit(choice.data())

    @Slot(QAction)
    def _choose_text(self, choice: QAction) -> None:
        self.text_chosen.emit(choice.data())
