"""Screens: the places of the window by name, each made when it is first wanted.

In    a maker for each name, in the order of the row on top
Out   the screen of a name; those made so far; `make_next` for idle moments, so that no first click waits
Not   what happens to a new screen (`window.py`), which names there are (`app.py`)
"""

from collections.abc import Callable, Iterator, Mapping

from gui.screen import Screen

__all__ = ["Maker", "Screens"]

Maker = Callable[[], Screen]


class Screens(Mapping[str, Screen]):
    """Asking for a name makes its screen, once; walking over the names makes none."""

    def __init__(self, makers: Mapping[str, Maker]) -> None:
        self._makers = dict(makers)
        self._made: dict[str, Screen] = {}
        self._welcome: Callable[[str, Screen], None] = _no_welcome

    def welcome_with(self, welcome: Callable[[str, Screen], None]) -> None:
        """Call this with each screen as soon as it is made, before anybody else has it."""
        self._welcome = welcome

    def __getitem__(self, name: str) -> Screen:
        if name not in self._made:
            screen = self._makers[name]()
            self._made[name] = screen
            self._welcome(name, screen)
        return self._made[name]

    def __contains__(self, name: object) -> bool:
        return name in self._makers

    def __iter__(self) -> Iterator[str]:
        return iter(self._makers)

    def __len__(self) -> int:
        return len(self._makers)

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
