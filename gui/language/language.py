"""Language: which one the window speaks, and its texts loaded before the first window is made.

In    what the grower has chosen ("system", "en", "de"), the languages that the system asks for
Out   texts of ours and of Qt in that language; numbers, dates and times as it writes them
Not   the texts (`translations`), sentences of the book (`spoken.py`); files and the command line stay English
"""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from gui.home import Memory
from gui.language.spoken import speak_in

__all__ = ["LANGUAGES", "language_of", "speak"]

ENGLISH = "en"
LANGUAGES = ((ENGLISH, "English"), ("de", "Deutsch"))  # each by its own name
FOLDER = Path(__file__).parents[1] / "translations"

_loaded: list[QTranslator] = []


def language_of(chosen: str, asked_for: Sequence[str]) -> str:
    """The language to speak: the chosen one, else the first of the system's that there is, else English.

    `asked_for` are names like "de-AT", the dearest first.
    """
    known = [name for name, _ in LANGUAGES]
    if chosen in known:
        return chosen
    wanted = (name.replace("_", "-").split("-")[0] for name in asked_for)
    return next((name for name in wanted if name in known), ENGLISH)


def speak(app: QCoreApplication, memory: Memory) -> str:
    """Load the texts of the language and say its name; what is on screen already stays as it is."""
    language = language_of(memory.language, QLocale.system().uiLanguages())
    for old in _loaded:
        app.removeTranslator(old)
    _loaded.clear()
    QLocale.setDefault(_locale(language, QLocale.system()))
    speak_in(language)
    if language != ENGLISH:
        _load(app, f"qtbase_{language}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        _load(app, f"evenstand_{language}", str(FOLDER))
    return language


def _locale(language: str, system: QLocale) -> QLocale:
    """The system's where it is of that language: Austria writes some things unlike Germany."""
    wanted = QLocale(language)
    if system.language() == wanted.language():
        return system
    if language == ENGLISH:
        return QLocale.c()
    return wanted


def _load(app: QCoreApplication, name: str, folder: str) -> None:
    texts = QTranslator(app)
    if texts.load(name, folder):
        app.installTranslator(texts)
        _loaded.append(texts)
