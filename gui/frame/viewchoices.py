"""View choices: what is chosen in the View menu: light or dark, letters, units, language.

In    choices of the grower; `Memory`, which keeps them; the wardrobe
Out   the window dressed so, `units_changed`; `told` where something comes only later
Not   the menu itself (`viewmenu.py`), the colours (`style/tokens.py`)
"""

from PySide6.QtCore import QObject, Signal, Slot

from data.entry.units import UnitSystem
from gui.frame.viewmenu import ViewMenu
from gui.home import Memory
from gui.style.wardrobe import Wardrobe

__all__ = ["ViewChoices"]


class ViewChoices(QObject):
    """Each choice is worn at once and remembered."""

    units_changed = Signal(object)  # UnitSystem
    told = Signal(str)

    def __init__(self, menu: ViewMenu, memory: Memory, wardrobe: Wardrobe, parent: QObject) -> None:
        super().__init__(parent)
        self._menu, self._memory, self._wardrobe = menu, memory, wardrobe
        menu.scheme_chosen.connect(self._choose_scheme)
        menu.text_chosen.connect(wardrobe.resize_text)
        menu.units_chosen.connect(self._choose_units)
        menu.language_chosen.connect(self._choose_language)
        wardrobe.changed.connect(self.show_choices)

    @Slot()
    def show_choices(self) -> None:
        """Mark in the menu what is chosen."""
        self._menu.show_choices(self._memory.scheme, self._memory.text_percent, self._memory.language)
        self._menu.show_units(self._memory.units)

    @Slot()
    def larger_text(self) -> None:
        """Larger letters."""
        self._tell_text(self._wardrobe.step_text(+1))

    @Slot()
    def smaller_text(self) -> None:
        """Smaller letters."""
        self._tell_text(self._wardrobe.step_text(-1))

    def _tell_text(self, percent: int) -> None:
        self.told.emit(self.tr("Text {n} %").format(n=percent))

    @Slot(str)
    def _choose_scheme(self, scheme: str) -> None:
        self._wardrobe.choose(scheme)

    @Slot(str)
    def _choose_language(self, language: str) -> None:
        self._memory.language = language
        self.told.emit(self.tr("The language changes at the next start."))

    @Slot(str)
    def _choose_units(self, system: str) -> None:
        self._memory.units = UnitSystem(system)
        self._menu.show_units(self._memory.units)
        self.units_changed.emit(self._memory.units)
