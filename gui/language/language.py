"""Language: which one the window speaks, and its texts loaded before the first window is made.

In    what the grower has chosen ("system", "en", "de"), the languages that the system asks for
Out   texts of ours and of Qt in that language; numbers, dates and times as it writes them
Not   the texts (`translations`), sentences of the book (`spoken.py`); files and the command line stay English
"""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from gui.home import Memory
from gui.language.names import ENGLISH, LANGUAGES
from gui.language.spoken import speak_in

__all__ = ["language_of", "speak", "speak_chosen"]

FOLDER = Path(__file__).parents[1] / "translations"

_loaded: list[tuple[QTranslator, bytes]] = []  # Qt reads in the bytes for as long as the texts are used


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
    """Load the texts of the window's language and say its name; what is on screen already stays as it is."""
    return speak_chosen(app, memory.language)


def speak_chosen(app: QCoreApplication, chosen: str) -> str:
    """The same of the language that is chosen: "system" or the name of one."""
    language = language_of(chosen, QLocale.system().uiLanguages())
    for old, _ in _loaded:
        app.removeTranslator(old)
    _loaded.clear()
    QLocale.setDefault(_locale(language, QLocale.system()))
    speak_in(language)
    if language != ENGLISH:
        qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        _load(app, qt / f"qtbase_{language}.qm")
        _load(app, FOLDER / f"evenstand_{language}.qm")
    return language


def _locale(language: str, system: QLocale) -> QLocale:
    """The system's where it is of that language: Austria writes some things unlike Germany."""
    wanted = QLocale(language)
    if system.language() == wanted.language():
        return system
    if language == ENGLISH:
        return QLocale.c()
    return wanted


def _load(app: QCoreApplication, file: Path) -> None:
    """Use the texts of a file, read whole: Qt would map it, and end with us when it is written anew."""
    try:
        content = file.read_bytes()
    except OSError:
        return  # English then
    texts = QTranslator(app)
    if texts.load(content):
        app.installTranslator(texts)
        _loaded.append((texts, content))
