"""Table: every stage that has a limit, what it takes here, and whether that is within it.

Run by hand: python -m tests.bench.table [BOOK]. BOOK is the folder of a big book, made there the first time
(two minutes) and used again. Takes some five minutes; exit code 1 where a row is over its limit. The limits
were reckoned from what each stage has to do and twice what was measured then; how right the fast ways are is
held by the ordinary tests (top view against means of 10 x 10 samples, CIELAB against scikit-image, running
maximum against argmax, plans of the queries, imports of the window).
"""

import os
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from PySide6.QtWidgets import QApplication

from tests.bench.bookrows import book_rows, trial_rows
from tests.bench.limits import FOOT, HEAD, Row, as_line
from tests.bench.photorows import Scene, photo_rows, worker_rows
from tests.bench.windowrows import window_rows

__all__ = ["all_rows", "main"]


def all_rows(book: Path, app: QApplication) -> Iterator[Row]:
    """Every row."""
    yield from photo_rows()
    yield from worker_rows()
    yield from book_rows(book)
    yield from trial_rows(Scene().decode)
    yield from window_rows(app, book)


def main(book: Path) -> int:
    """Print the table; 1 where something is over its limit."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    print(HEAD)
    over = 0
    for row in all_rows(book, app):
        over += row.verdict == "OVER"
        print(as_line(row), flush=True)
    print(FOOT)
    return 1 if over else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(tempfile.mkdtemp()) / "book"))
