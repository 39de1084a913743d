"""Window rows: painting and starting against their limits.

In    a running QApplication, offscreen; the folder of a big book
Out   `Row`s
Not   the table (`table.py`)
"""

import os
import sqlite3
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from statistics import median
from time import perf_counter

import numpy as np
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication

from gui.bench.screen import Bench
from gui.bench.view import Reading, bench_state
from gui.photo.layers import Layer, Mark, make_layers
from gui.photo.mips import make_mips
from gui.pictures import PictureView
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.work import Work
from tests.bench.limits import Row, busy, cpu_ms, seconds
from tests.gui.rackbook import a_tile

__all__ = ["window_rows"]

TILES = 2000
STARTS = 5
HELLO = """
import os
from PySide6.QtWidgets import QApplication, QLabel
app = QApplication([])
label = QLabel("hello")
label.show()
label.grab()
os._exit(0)  # what taking down costs nobody waits for
"""
FIRST_LIST = """
import os
import sys
from pathlib import Path
from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication
from gui.app import Start, make_window
app = QApplication([])
window = make_window(app)
window.show()
start = Start(window)
start.open(Path(sys.argv[1]))
looks = window.screens["bench"].panel.looks
while not looks.model().rowCount():
    app.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
window.grab()
os._exit(0)
"""


def window_rows(app: QApplication, book: Path) -> Iterator[Row]:
    """The Bench, the picture view, the start."""
    dress(app, Scheme.LIGHT)
    with tempfile.TemporaryDirectory() as name:
        yield from _bench_rows(app, Path(name))
    yield from _picture_rows()
    yield from _start_rows(book)


def _bench_rows(app: QApplication, folder: Path) -> Iterator[Row]:
    """2,000 trays with a picture each, in a window of 1366 x 768."""
    work = Work(scorers=1)
    bench = Bench(work)
    bench.resize(1366, 700)
    bench.show()
    app.processEvents()
    state = bench_state(Reading(tiles=tuple(_tile(n, folder) for n in range(TILES))))

    def first() -> None:
        bench.show_state(state)
        bench.grab()

    yield Row(stage="Bench of 2,000 trays, first paint", value=1000 * seconds(first), limit=100.0, unit="ms")
    while work.jobs():
        app.processEvents()
    bar = bench.rack.verticalScrollBar()

    def scroll() -> None:
        bar.setValue(bar.value() + 53)
        app.processEvents()
        bench.rack.viewport().grab()

    yield Row(stage="Bench, a frame of scrolling", value=cpu_ms(scroll, 100), limit=35.0, unit="ms")
    work.close()
    bench.close()


def _tile(n: int, folder: Path) -> object:
    path = folder / f"{n}.jpg"
    image = QImage(320, 160, QImage.Format.Format_RGB32)
    image.fill(QColor.fromHsv(80 + n % 60, 160, 60 + n % 120))
    image.save(str(path), "JPG")
    growth = tuple((day, 7.0 * day) for day in range(14))
    return a_tile(n + 1, shelf=f"S{n // 40:02}", thumbnail=path, growth=growth)


def _picture_rows() -> Iterator[Row]:
    """A photo of 12 megapixels with all layers, in a view of 1400 x 900."""
    rng = np.random.default_rng(1)
    pixels = np.kron(rng.integers(0, 256, (378, 504, 3), np.uint8), np.ones((8, 8, 1), np.uint8))
    labels = np.kron(rng.integers(2, 6, (127, 254), np.uint8), np.ones((4, 4), np.uint8))
    cells = [[float(row * column) for column in range(12)] for row in range(6)]
    mark = Mark(number=1, x_mm=200, y_mm=100, radius_mm=15, word="possible mold")
    view = PictureView()
    view.resize(1400, 900)
    view.show_picture(make_mips(pixels), layers=make_layers(labels, cells=cells, marks=[mark]))
    view.show_layers(frozenset(Layer))
    screen = QImage(1400, 900, QImage.Format.Format_RGB32)
    yield Row(
        stage="picture with all layers, at fit",
        value=cpu_ms(lambda: view.render(screen), 15),
        limit=16.0,
        unit="ms",
    )


def _start_rows(book: Path) -> Iterator[Row]:
    """Processes that paint something, in turn."""
    with tempfile.TemporaryDirectory() as home:
        hello, ours = (_child(code, book, Path(home)) for code in (HELLO, FIRST_LIST))
        hello(), ours()  # compiles what is new
        times = []
        for _ in range(STARTS):
            _forget_lists(book)
            times.append(ours() / hello())
    yield Row(
        stage="first look list on the screen",
        value=median(times),
        limit=3.0,
        unit="x hello, by clock",
        not_judged=busy(),
    )


def _forget_lists(book: Path) -> None:
    """As at the first start of a day, when the list has something to note."""
    with closing(sqlite3.connect(book / "book.sqlite")) as db, db:
        db.execute("DELETE FROM look_entry")


def _child(code: str, book: Path, home: Path) -> Callable[[], float]:
    """Seconds that a new process takes, from its start until it has painted.

    What was compiled once is kept, as on a grower's machine, and nothing of it in this tree.
    """
    environment = os.environ | {
        "EVENSTAND_HOME": str(home),
        "PYTHONPYCACHEPREFIX": str(home / "compiled"),
        "QT_QPA_PLATFORM": "offscreen",
    }
    environment.pop("PYTHONDONTWRITEBYTECODE", None)

    def run() -> float:
        begun = perf_counter()
        subprocess.run(
            [sys.executable, "-c", code, str(book)], check=True, env=environment, stderr=subprocess.DEVNULL
        )
        return perf_counter() - begun

    return run
