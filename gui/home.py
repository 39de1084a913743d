"""Home: where the program keeps what is not a book: settings, the log, the demonstration.

In    the environment variable EVENSTAND_HOME, or the system's place for data of programs
Out   folders; `Memory`, what the window remembers from one start to the next
Not   what stands in a book (`data`)
"""

import os
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings, QStandardPaths

from data.entry.units import UnitSystem

__all__ = [
    "AS_SYSTEM",
    "TEXT_SIZES",
    "Memory",
    "books_folder",
    "demo_folder",
    "documents_folder",
    "home_folder",
    "log_file",
    "photos_folder",
]

TEXT_SIZES = (100, 125, 150)  # %
MOST_RECENT = 6
AS_SYSTEM = "system"
SCHEMES = (AS_SYSTEM, "light", "dark")


def home_folder() -> Path:
    """The folder of settings and log; made if it is not there."""
    wanted = os.environ.get("EVENSTAND_HOME")
    if wanted:
        folder = Path(wanted)
    else:
        place = QStandardPaths.StandardLocation.GenericDataLocation
        folder = Path(QStandardPaths.writableLocation(place)) / "evenstand"
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def books_folder() -> Path:
    """Where a new book is proposed."""
    if os.environ.get("EVENSTAND_HOME"):
        return home_folder()
    documents = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    return Path(documents or Path.home()) / "Evenstand"


def documents_folder() -> Path:
    """Where a packed book or an export is proposed, and looked for first."""
    documents = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    return _folder_or_home(documents)


def photos_folder() -> Path:
    """Where a person's photos are looked for first."""
    pictures = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
    return _folder_or_home(pictures)


def _folder_or_home(name: str) -> Path:
    """A folder of the system; the person's own where it is not there, or lies where nobody answers."""
    with suppress(OSError):
        if name and Path(name).is_dir():
            return Path(name)
    return Path.home()


def demo_folder() -> Path:
    """Where the demonstration's book stands."""
    return home_folder() / "demonstration"


def log_file() -> Path:
    """Where mishaps are written down."""
    return home_folder() / "evenstand.log"


class Memory:
    """What is remembered from one start to the next; nonsense in the file reads as never set."""

    def __init__(self, folder: Path | None = None) -> None:
        path = (folder or home_folder()) / "settings.ini"
        self._settings = QSettings(str(path), QSettings.Format.IniFormat)

    @property
    def last_book(self) -> Path | None:
        """The book that was open last."""
        return next(iter(self.recent), None)

    @property
    def recent(self) -> tuple[Path, ...]:
        """Books opened of late, the last one first."""
        kept = str(self._settings.value("books/recent", "") or "")
        return tuple(Path(line) for line in kept.split("\n") if line)

    def remember_book(self, folder: Path) -> None:
        """Put a book at the head of the recent ones."""
        books = [folder, *(book for book in self.recent if book != folder)][:MOST_RECENT]
        self._settings.setValue("books/recent", "\n".join(str(book) for book in books))

    def forget_book(self, folder: Path) -> None:
        """Take a book that is no longer there out of the recent ones."""
        books = [book for book in self.recent if book != folder]
        self._settings.setValue("books/recent", "\n".join(str(book) for book in books))

    @property
    def scheme(self) -> str:
        """What the grower has chosen: "system", "light" or "dark"."""
        chosen = str(self._settings.value("window/scheme", "system"))
        return chosen if chosen in SCHEMES else "system"

    @scheme.setter
    def scheme(self, scheme: str) -> None:
        self._settings.setValue("window/scheme", scheme)

    @property
    def language(self) -> str:
        """What the grower has chosen: "system" or a language ("en", "de")."""
        return str(self._settings.value("window/language", AS_SYSTEM))

    @language.setter
    def language(self, language: str) -> None:
        self._settings.setValue("window/language", language)

    @property
    def text_percent(self) -> int:
        """Size of letters, %."""
        chosen = str(self._settings.value("window/text", "100"))
        return int(chosen) if chosen.isdigit() and int(chosen) in TEXT_SIZES else 100

    @text_percent.setter
    def text_percent(self, percent: int) -> None:
        self._settings.setValue("window/text", str(percent))

    @property
    def units(self) -> UnitSystem:
        """In which units numbers without one are typed."""
        chosen = str(self._settings.value("window/units", UnitSystem.METRIC))
        return UnitSystem(chosen) if chosen in list(UnitSystem) else UnitSystem.METRIC

    @units.setter
    def units(self, system: UnitSystem) -> None:
        self._settings.setValue("window/units", str(system))

    @property
    def geometry(self) -> QByteArray:
        """Size and place of the window, as Qt packs them; empty at the first start."""
        kept = self._settings.value("window/geometry", QByteArray())
        return kept if isinstance(kept, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, packed: QByteArray) -> None:
        self._settings.setValue("window/geometry", packed)

    def keep(self) -> None:
        """Write it down now."""
        self._settings.sync()
