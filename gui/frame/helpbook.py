"""Help book: the pages of help in the grower's language, and where a word stands in them.

In    the folder `gui/help`, a language ("de"), a word that is looked for
Out   pages with title and text, in reading order; hits with the line around them
Not   showing them (`helpwindow.py`)

Each page is one file of plain Markdown; a page that a language lacks is shown in English.
"""

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

__all__ = ["ORDER", "Hit", "Page", "found", "pages"]

FOLDER = Path(__file__).parents[1] / "help"
ENGLISH = "en"
# pages in reading order; those named like a place are its help
ORDER = (
    "first-trial", "bench", "intake", "traysheet", "plan", "verdict", "materials", "travel", "numbers",
    "glossary", "safety", "commands",
)  # fmt: skip
AROUND = 60  # characters of a line shown on each side of a word
MARKS = re.compile(r"[*`\\]+|^#+ *|^\|[ |-]*|[ |-]*\|$")
CELLS = re.compile(r" *\| *")


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """One page of help."""

    name: str
    title: str
    text: str  # Markdown, its heading included


@dataclass(frozen=True, slots=True, kw_only=True)
class Hit:
    """A place where the word that was looked for stands."""

    page: str
    title: str
    line: str  # without marks, shortened


@cache
def pages(language: str = ENGLISH) -> tuple[Page, ...]:
    """All pages in reading order, in `language` ("de", "en") as far as it has them."""
    return tuple(_page(name, language) for name in ORDER)


def _page(name: str, language: str) -> Page:
    path = FOLDER / language / f"{name}.md"
    if not path.is_file():
        path = FOLDER / ENGLISH / f"{name}.md"
    text = path.read_text(encoding="utf-8")
    return Page(name=name, title=text.partition("\n")[0].lstrip("# "), text=text)


def found(text: str, among: Sequence[Page]) -> tuple[Hit, ...]:
    """Where all words of `text` stand together in a line; titles first, whatever the case or the accents."""
    words = _plain(text).split()
    if not words:
        return ()
    hits: list[tuple[bool, Hit]] = []
    for page in among:
        for number, line in enumerate(page.text.splitlines()):
            plain = CELLS.sub(", ", MARKS.sub("", line)).strip()
            if plain and all(word in _plain(plain) for word in words):
                hit = Hit(page=page.name, title=page.title, line=_shortened(plain, words[0]))
                hits.append((number > 0, hit))
    return tuple(hit for _, hit in sorted(hits, key=lambda one: one[0]))


def _plain(text: str) -> str:
    """Small letters without accents."""
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(letter for letter in apart if not unicodedata.combining(letter))


def _shortened(line: str, word: str) -> str:
    """The line around a word, cut between words."""
    at = max(0, _plain(line).find(word))
    begin, end = at - AROUND, at + len(word) + AROUND
    begin = 0 if begin <= 0 else line.find(" ", begin) + 1
    end = len(line) if end >= len(line) else line.rfind(" ", at, end)
    return ("... " if begin else "") + line[begin:end] + (" ..." if end < len(line) else "")
