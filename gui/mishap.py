"""Mishap: what happens when we have made a mistake: the window survives, a report is kept.

In    an exception that nobody caught, or that ended a job in the background
Out   one sentence for the person, the whole story in the log
Not   what the world does to a book (`data.errors`): that has words of its own
"""

import logging
import sys
from collections.abc import Callable
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication

from data.errors import BookError
from data.photos.farmerrors import FarmLost, FarmMissing, KilledByPhoto
from gui.home import log_file
from gui.language.spoken import spoken

__all__ = ["catch_mishaps", "keep_log", "trouble_words"]

LOG_BYTES = 500_000
FOR_PEOPLE = (BookError, FarmLost, FarmMissing, KilledByPhoto)  # what these say is meant to be read

log = logging.getLogger(__name__)


def keep_log(path: Path) -> None:
    """Write warnings and worse into a file that cannot grow without end."""
    handler = RotatingFileHandler(path, maxBytes=LOG_BYTES, backupCount=1, encoding="utf-8", delay=True)
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    handler.setLevel(logging.WARNING)
    logging.getLogger().addHandler(handler)


def trouble_words(error: BaseException) -> str:
    """What to tell a person of an error that ended a job, which has written it into the log."""
    return spoken(error) if isinstance(error, FOR_PEOPLE) else _not_foreseen(log_file())


def _not_foreseen(path: Path) -> str:
    words = QCoreApplication.translate(
        "Mishap",
        "Something in the program went wrong. Your book is as it was after your last step; you may go "
        "on. What happened is written down in {file}.",
    )
    return words.format(file=path)


def catch_mishaps(tell: Callable[[str], None], path: Path) -> None:
    """From now on, tell a person of every exception that nobody caught, and write it down in `path`."""

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            QCoreApplication.quit()
            return
        if isinstance(error, BookError):
            tell(str(error))
            return
        log.error("not foreseen", exc_info=(kind, error, trace))
        try:
            tell(_not_foreseen(path))
        except RuntimeError:  # the window is gone already; it is in the log
            log.error("nobody left to tell")

    sys.excepthook = hook
