"""Screens: the places of the window by name, each made when it is first wanted.

In    the names, in the order of the row on top; `Work`, which each screen is made with
Out   the screen of a name; those made so far; `make_next` for idle moments, so that no first click waits
Not   what happens to a new screen (`window.py`), which screens there are (`gui/places.py`)
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import TypeVar

from gui.screen import Screen
from gui.work import Work

__all__ = ["Screens"]

Kind = TypeVar("Kind", bound=Screen)


class Screens(Mapping[str, Screen]):
    """Asking for a name makes its screen, once; walking over the names makes none.

    For each name there is a property, too: it says of which kind the screen is and makes it by `once`.
    """

    def __init__(self, names: Sequence[str], work: Work) -> None:
        self._names, self._work = tuple(names), work
        self._made: dict[str, Screen] = {}
        self._welcome: Callable[[str, Screen], None] = _no_welcome

    def welcome_with(self, welcome: Callable[[str, Screen], None]) -> None:
        """Call this with each screen as soon as it is made, before anybody else has it."""
        self._welcome = welcome

    def once(self, name: str, kind: type[Kind]) -> Kind:
        """The screen of this name, made now where it is not there yet."""
        if name not in self._made:
            self._made[name] = kind(self._work)
            self._welcome(name, self._made[name])
        screen = self._made[name]
        assert isinstance(screen, kind)
        return screen

    def __getitem__(self, name: str) -> Screen:
        if name not in self:
            raise KeyError(name)
        screen: Screen = getattr(self, name)
        return screen

    def __contains__(self, name: object) -> bool:
        return name in self._names

    def __iter__(self) -> Iterator[str]:
        return iter(self._names)

    def __len__(self) -> int:
        return len(self._names)

    @property
    def made(self) -> Mapping[str, Screen]:
        """The screens that are there."""
        return self._made

    def make_next(self) -> bool:
        """Make one that is not there yet; False where all are."""
        missing = next((name for name in self if name not in self._made), None)
        if missing is not None:
            self[missing]
        return missing is not None


def _no_welcome(_name: str, _screen: Screen) -> None:
    """Nobody waits for new screens."""
