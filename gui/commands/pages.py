"""Pages: what a command needs to lay out pages: Qt without a window, its letters, the person's language.

In    the language asked for, None: as the window speaks
Out   a block in which pages can be made
Not   the pages (`gui/sheets.py`, `gui/report`), what is said in the terminal, which is English
"""

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager

__all__ = ["laying_out"]


@contextmanager
def laying_out(language: str | None) -> Iterator[None]:
    """Pages can be made inside."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    from gui.language.language import speak_chosen
    from gui.style.palette import load_fonts

    app = QGuiApplication.instance() or QGuiApplication(sys.argv[:1])
    speak_chosen(app, language or _as_the_window())
    load_fonts()
    yield
    del app


def _as_the_window() -> str:
    from gui.home import AS_SYSTEM, Memory

    try:
        return Memory().language
    except OSError:  # a service without a home of its own
        return AS_SYSTEM
