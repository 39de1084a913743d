"""Frames of the Bench: 2,000 trays with a picture each, in a 1366 x 768 window.

`pytest -m sweep -s` runs it; it prints what it measured.
"""

import time
from pathlib import Path
from statistics import median, quantiles

import pytest
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from data.records import Tile
from gui.bench.screen import Bench
from gui.bench.view import Reading, bench_state
from gui.style.palette import dress
from gui.style.tokens import Scheme
from gui.work import Work
from tests.gui.rackbook import a_tile

pytestmark = pytest.mark.sweep

TRAYS = 2000
FIRST_MS = 100.0
FRAME_MS = 33.0  # 30 frames a second, on two cores that others share


def test_two_thousand_trays_are_painted_at_once_and_scroll(
    qtbot: QtBot, tmp_path: Path, qapp: QApplication
) -> None:
    tiles = tuple(pictured_tile(number, tmp_path) for number in range(TRAYS))
    dress(qapp, Scheme.LIGHT)
    work = Work(scorers=1)
    bench = Bench(work)
    qtbot.addWidget(bench)
    bench.resize(1366, 700)
    with qtbot.waitExposed(bench):
        bench.show()

    began = time.perf_counter()
    bench.show_state(bench_state(Reading(tiles=tiles)))
    bench.grab()
    first = ms_since(began)
    with qtbot.waitSignal(bench.thumbnails.arrived, timeout=5000):
        pass
    pictured = ms_since(began)
    qtbot.waitUntil(lambda: not work.jobs())
    steps, frames = scrolled(bench, qapp)
    work.close()

    print(f"\nfirst paint {first:.0f} ms, pictures after {pictured:.0f} ms")
    for what, times in (("scroll step", steps), ("whole frame", frames)):
        print(f"{what} {median(times):.1f} ms in the middle, {quantiles(times, n=20)[-1]:.1f} ms for 95 %")
    assert first < FIRST_MS
    assert median(steps) < FRAME_MS
    assert median(frames) < FRAME_MS


def pictured_tile(number: int, folder: Path) -> Tile:
    """Forty trays a shelf, each with a picture of its own."""
    image = QImage(320, 160, QImage.Format.Format_RGB32)
    image.fill(QColor.fromHsv(80 + number % 60, 160, 60 + number % 120))
    picture = folder / f"{number}.jpg"
    image.save(str(picture), "JPG")
    growth = tuple((day, 7.0 * day) for day in range(14))
    return a_tile(number + 1, shelf=f"S{number // 40:02}", thumbnail=picture, growth=growth)


def scrolled(bench: Bench, qapp: QApplication) -> tuple[list[float], list[float]]:
    """ms of each step of the bar, and of the whole view painted after it."""
    bar = bench.rack.verticalScrollBar()
    steps, frames = [], []
    for _ in range(200):
        began = time.perf_counter()
        bar.setValue(bar.value() + 53)
        qapp.processEvents()
        steps.append(ms_since(began))
        began = time.perf_counter()
        bench.rack.viewport().grab()
        frames.append(ms_since(began))
    return steps, frames


def ms_since(began: float) -> float:
    return 1000 * (time.perf_counter() - began)
