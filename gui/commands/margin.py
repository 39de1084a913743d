"""Margin command: the margin of a trial without a plan, set on the command line.

In    the folder of a book, points of the canopy score, the name of a trial
Out   a line on stdout; what was refused on stderr; the exit code
Not   keeping it (`data/chapters/marginbook.py`), what the verdict says of it (`verdict.py`)
"""

from pathlib import Path
from typing import TYPE_CHECKING

from gui.commands.saying import DONE, plain, refuse

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["set_margin"]


def set_margin(folder: Path, points: float, trial: str | None) -> int:
    """Set it; 1 where the trial is not known, has a plan, or is not named though there are several."""
    from data.book import Book

    with Book.open(folder) as book:
        return _set(book, points, trial)


def _set(book: "Book", points: float, trial: str | None) -> int:
    names = book.trials()
    if trial is None and len(names) != 1:
        known = ", ".join(names) or "none"
        return refuse(f"name the trial with --trial NAME; trials of this book: {known}.")
    name = names[0] if trial is None else trial
    try:
        book.set_margin(name, points)
    except KeyError:
        known = ", ".join(names) or "none"
        return refuse(f"this book has no trial called {name!r}; trials: {known}.")
    except ValueError:
        return refuse("a margin of the canopy score lies above 0 and up to 100 points.")
    print(plain(f"{name}: the margin of the canopy score is {points:g} points; its date is kept."))
    return DONE
