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

pytestmark = pytest.mark.sweep

FIRST_MS = 100.0
FRAME_MS = 33.0  # 30 frames a second, on two cores that others share


def test_two_thousand_trays_are_painted_at_once_and_scroll(
    qtbot: QtBot, tmp_path: Path, qapp: QApplication
) -> None:
    from gui.bench.screen import Bench
    from gui.bench.view import Reading, bench_state
    from gui.style.palette import dress
    from gui.style.tokens import Scheme
    from gui.work import Work
    from tests.gui.rackbook import a_tile

    pictures = []
    for n in range(2000):
        image = QImage(320, 160, QImage.Format.Format_RGB32)
        image.fill(QColor.fromHsv(80 + n % 60, 160, 60 + n % 120))
        pictures.append(tmp_path / f"{n}.jpg")
        image.save(str(pictures[-1]), "JPG")
    tiles = tuple(
        a_tile(
            n + 1,
            shelf=f"S{n // 40:02}",
            thumbnail=pictures[n],
            growth=tuple((d, 7.0 * d) for d in range(14)),
        )
        for n in range(2000)
    )
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
    first = 1000 * (time.perf_counter() - began)
    with qtbot.waitSignal(bench.thumbnails.arrived, timeout=5000):
        pass
    pictured = 1000 * (time.perf_counter() - began)
    qtbot.waitUntil(lambda: not work.jobs())

    bar = bench.rack.verticalScrollBar()
    steps, frames = [], []
    for _ in range(200):
        began = time.perf_counter()
        bar.setValue(bar.value() + 53)
        qapp.processEvents()
        steps.append(1000 * (time.perf_counter() - began))
        began = time.perf_counter()
        bench.rack.viewport().grab()
        frames.append(1000 * (time.perf_counter() - began))
    work.close()

    print(f"\nfirst paint {first:.0f} ms, pictures after {pictured:.0f} ms")
    for what, times in (("scroll step", steps), ("whole frame", frames)):
        print(f"{what} {median(times):.1f} ms in the middle, {quantiles(times, n=20)[-1]:.1f} ms for 95 %")
    assert first < FIRST_MS
    assert median(steps) < FRAME_MS
    assert median(frames) < FRAME_MS
