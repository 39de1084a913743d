"""Screenshots: every place in light and dark, in two sizes, as PNG files; for looking, and for the README.

In    a folder to write to; the folder of a book, else the demonstration is made and scored first
Out   PLACE-SCHEME-WIDTHxHEIGHT.png
Not   frames, menus, dialogs of the system: those need a desktop

    python -m gui.screenshots DIR [--book FOLDER] [--text 150] [--language de] [--scheme light]
"""

import argparse
import os
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from gui.home import TEXT_SIZES
from gui.language.names import LANGUAGES

if TYPE_CHECKING:
    from gui.verdict.screen import Verdict
    from gui.window import Window

__all__ = ["main"]

SCHEMES = ("light", "dark")
SIZES = ((1366, 768), (1024, 700))
SETTLED_S = 0.4  # nothing runs for so long: all pictures are there
PATIENCE_S = 900.0


def main(arguments: Sequence[str] | None = None) -> int:
    """Make the pictures; returns an exit code."""
    words = argparse.ArgumentParser(prog="python -m gui.screenshots", description=__doc__.split("\n", 1)[0])
    words.add_argument("folder", type=Path, help="where the pictures go")
    words.add_argument("--book", type=Path, help="the folder of a book")
    words.add_argument("--text", type=int, default=100, choices=TEXT_SIZES, help="size of letters, %%")
    words.add_argument("--tray", default=None, help="code of the tray whose sheet is shown")
    words.add_argument("--language", default="en", choices=[name for name, _ in LANGUAGES])
    words.add_argument("--scheme", default=None, choices=SCHEMES, help="by default both")
    asked = words.parse_args(arguments)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    with tempfile.TemporaryDirectory() as home:
        os.environ["EVENSTAND_HOME"] = home
        return _photograph(asked)


def _photograph(asked: argparse.Namespace) -> int:
    from PySide6.QtWidgets import QApplication

    from gui.app import Start, make_window
    from gui.home import Memory

    app = QApplication(sys.argv[:1])
    memory = Memory()
    memory.text_percent = asked.text
    memory.language = asked.language
    window = make_window(app, memory)
    window.show()
    start = Start(window)
    start.open(asked.book)
    _settle(lambda: window.book is not None and start.looked_after and not window.work.jobs())
    asked.folder.mkdir(parents=True, exist_ok=True)
    trays = () if window.book is None else window.book.trays()
    tray = next((tray for tray in trays if asked.tray in (None, tray.code)), None)
    for scheme in SCHEMES if asked.scheme is None else (asked.scheme,):
        window.wardrobe.choose(scheme)
        for width, height in SIZES:
            window.resize(width, height)
            for place in window.screens:
                if place == "traysheet" and tray is not None:
                    window.open_tray(tray.id)
                else:
                    window.go_to(place)
                _take(window, asked.folder, f"{place}-{scheme}-{width}x{height}.png")
                if place != "traysheet" or tray is not None:
                    _take_more(place, window, asked.folder, f"{scheme}-{width}x{height}.png")
    window.close()
    return 0


def _take_more(place: str, window: "Window", folder: Path, name: str) -> None:
    """What a place shows besides what stands in front."""
    takes = {
        "traysheet": _take_views, "bench": _take_rack, "plan": _take_steps, "materials": _take_cells,
        "verdict": _take_verdict,
    }  # fmt: skip
    if place in takes:
        takes[place](window, folder, name)


def _take(window: "Window", folder: Path, name: str) -> None:
    window.foot.told.clear()
    _settle(lambda: not window.work.jobs())
    window.grab().save(str(folder / name))
    print(folder / name)


def _take_rack(window: "Window", folder: Path, end: str) -> None:
    """The rack with its filters, trays chosen, and a number that is asked about."""

    bench = window.screens.bench
    if bench.rack.model().rowCount() == 0:
        return
    bench.head.more.setChecked(True)
    bench.rack.selectAll()
    bench.quick.line.setText(f"{bench.rack.chosen[0].code} 31")
    bench.quick.note_it()
    _take(window, folder, f"bench-rack-{end}")
    bench.quick.line.clear()
    bench.rack.clearSelection()
    bench.head.more.setChecked(False)
    bench.switch.turn(to_looks=True)


def _take_views(window: "Window", folder: Path, end: str) -> None:
    """Every way to look at a tray."""
    from gui.traysheet.views import View

    sheet = window.screens.traysheet
    for view in View:
        sheet.show_view(view)
        _take(window, folder, f"traysheet-{view.replace(' ', '-')}-{end}")
    sheet.show_view(View.PICTURE)


def _take_steps(window: "Window", folder: Path, end: str) -> None:
    """Every page of a kept trial, and every step of a draft that copies it."""
    from gui.plan.view import KeptPage

    plan = window.screens.plan
    if plan.state.trial is None:
        return
    for page in (KeptPage.PLACES, KeptPage.PRINT, KeptPage.SOW):
        plan.go_to_page(str(page))
        _take(window, folder, f"plan-{page}-{end}")
    plan.copy_trial()
    for step in range(5):
        plan.go_to_step(step)
        _take(window, folder, f"plan-step{step + 1}-{end}")
    plan.leave_draft()


def _take_verdict(window: "Window", folder: Path, end: str) -> None:
    """The page further down, and how it was worked out."""

    verdict = window.screens.verdict
    if verdict.state.found is None:
        return
    bar = verdict.page.verticalScrollBar()
    for number, share in enumerate((0.5, 1.0), 2):
        verdict.page.how.open_up(share == 1.0)
        _settle(lambda: True)
        bar.setValue(round(share * bar.maximum()))
        _take(window, folder, f"verdict-page{number}-{end}")
    verdict.page.how.open_up(False)
    bar.setValue(0)
    verdict.open_rule()
    _take(window, folder, f"verdict-rule-{end}")
    verdict.rule_page.left.emit()
    _take_blind(window, verdict, folder, end)


def _take_blind(window: "Window", verdict: "Verdict", folder: Path, end: str) -> None:
    """One picture of a round by eye, which is taken back afterwards."""
    book = window.book
    if book is None or not verdict.rounds.may_begin:
        return
    verdict.rounds.begin("")
    blind = verdict.rounds.window
    assert blind is not None
    blind.showNormal()
    blind.resize(window.size())
    _settle(lambda: blind.page.picture.has_image)
    blind.grab().save(str(folder / f"blind-{end}"))
    print(folder / f"blind-{end}")
    blind.reject()
    window.following.undo()


def _take_cells(window: "Window", folder: Path, end: str) -> None:
    """The panel of a cell of the climate and of a gap."""

    place = window.screens.materials
    media = place.reading.table.media
    for row in ("footprint", "cooling") if len(media) > 1 else ():
        place.table.choose(row, media[1])
        _take(window, folder, f"materials-{row}-{end}")


def _settle(done: Callable[[], bool]) -> None:
    """Let the window live until `done` has been true for a while."""
    from PySide6.QtWidgets import QApplication

    began = quiet = time.monotonic()
    while time.monotonic() - quiet < SETTLED_S and time.monotonic() - began < PATIENCE_S:
        QApplication.processEvents()
        if not done():
            quiet = time.monotonic()
        time.sleep(0.01)


if __name__ == "__main__":
    sys.exit(main())
