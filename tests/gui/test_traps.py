"""Traps of the window libraries that were met once and must not come back."""

import ast
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from data.book import Book
from gui.work import Work
from tests.gui.rackbook import photograph

ROOT = Path(__file__).resolve().parents[2]
NEVER_S = 90  # longer than the test waits
HEAVY = ("cv2", "scipy", "skimage", "pyqtgraph", "pandas", "numpy", "sqlite_utils", "PIL")


def test_calls_that_return_nothing_take_no_reference_from_none(qtbot: QtBot) -> None:
    # PySide6 6.12.0 on Python 3.11 took one at each call, and the process died after some 5,000 of them
    label = QLabel()
    qtbot.addWidget(label)
    before = sys.getrefcount(None)

    for _ in range(200):
        label.setText("a")

    assert sys.getrefcount(None) > before - 50


@pytest.mark.parametrize("module", ["gui.window", "gui.bench.screen", "gui.app"])
def test_the_window_is_there_before_anything_heavy_is_loaded(module: str) -> None:
    asked = f"import sys, {module}; print([name for name in {HEAVY!r} if name in sys.modules])"
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60
    )
    assert done.stdout.strip() == "[]"


def test_no_source_is_read_because_a_module_comes_in() -> None:
    # PySide6 looked into each of some 300 for a word that nobody here uses
    asked = """
import linecache
import gui.app, gui.bench.screen, data.book
print([name for name in linecache.cache if name.endswith(".py")])
"""
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60
    )
    names = [Path(name).parts[-2:] for name in ast.literal_eval(done.stdout)]
    assert [part for part in names if part[0] in ("bench", "chapters", "tables", "looklist", "style")] == []
    assert len(names) < 20


def test_the_window_is_there_before_the_book_and_the_dialogs() -> None:
    late = (
        "data.book",
        "data.travel.merging",
        "data.travel.samenames",
        "data.travel.packing",
        "gui.trays.newtray",
        "gui.frame.helpwindow",
        "gui.travel.guestdialog",
    )
    asked = f"import sys, gui.window; print([name for name in {late!r} if name in sys.modules])"
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60
    )
    assert done.stdout.strip() == "[]"


def test_the_bench_is_there_before_the_other_places() -> None:
    late = [f"gui.{name}.screen" for name in ("intake", "traysheet", "plan", "verdict", "materials")]
    asked = (
        f"import sys, gui.app, gui.bench.screen; print([name for name in {late!r} if name in sys.modules])"
    )
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60
    )
    assert done.stdout.strip() == "[]"


def test_a_drive_that_never_answers_does_not_keep_the_program_from_ending(
    rack_book: Book, tmp_path: Path
) -> None:
    rack_book.close()
    asked = f"""
import time
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from gui import app

def close():
    (window,) = [one for one in QApplication.topLevelWidgets() if type(one).__name__ == "Window"]
    window.work.start(lambda cancel, report: time.sleep({NEVER_S}), apart=True)
    QTimer.singleShot(200, window.close)

application = QApplication([])
QTimer.singleShot(1000, close)
raise SystemExit(app.run(Path({str(rack_book.folder)!r})))
"""
    surroundings = os.environ | {"QT_QPA_PLATFORM": "offscreen", "EVENSTAND_HOME": str(tmp_path / "home")}
    done = subprocess.run(
        [sys.executable, "-c", asked],
        cwd=ROOT, env=surroundings, capture_output=True, text=True, timeout=NEVER_S - 10, check=False,
    )  # fmt: skip
    assert (
        done.returncode,
        done.stderr.replace("This plugin does not support propagateSizeHints()\n", ""),
    ) == (0, "")


def test_the_first_look_list_is_there_before_what_is_typed_and_the_demonstration(
    rack_book: Book, tmp_path: Path
) -> None:
    late = (
        "data.demo", "data.entry.doubt", "data.entry.typed", "data.verdict", "data.materials", "data.trial",
        "data.plan.drawing", "data.plan.plantext", "data.plan.sowntray", "data.medium.benchtest",
        "data.medium.factors", "data.logs.oldcolumns",
    )  # fmt: skip
    rack_book.close()
    asked = f"""
import sys
from pathlib import Path
from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication
from gui.app import Start, make_window
from gui.home import Memory
app = QApplication([])
window = make_window(app, Memory())
window.show()
start = Start(window)
start.open(Path({str(rack_book.folder)!r}))
while not window.screens["bench"].rack.model().rowCount():
    app.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
print([name for name in {late!r} if name in sys.modules])
window.close()
"""
    surroundings = os.environ | {"QT_QPA_PLATFORM": "offscreen", "EVENSTAND_HOME": str(tmp_path / "home")}
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, env=surroundings, capture_output=True, text=True, timeout=60
    )
    assert done.stdout.strip() == "[]", done.stderr


def test_opening_a_book_and_its_first_look_list_load_no_colour_library(
    rack_book: Book, tmp_path: Path
) -> None:
    photograph(rack_book, "A1", tmp_path, taken_at="2026-03-07T08:00:00")
    photograph(rack_book, "A1", tmp_path, taken_at="2026-03-08T08:00:00")
    rack_book.close()
    asked = f"""
import sys
from pathlib import Path
from PySide6.QtWidgets import QApplication
from gui.app import Start, make_window
from gui.home import Memory
from gui.screenshots import _settle
app = QApplication([])
window = make_window(app, Memory())
window.show()
Start(window).open(Path({str(rack_book.folder)!r}))
_settle(lambda: window.book is not None and not window.work.jobs() and "traysheet" in window.screens.made)
trays = [tray.code for tray in window.book.trays()]
print(trays, "traysheet" in window.screens.made, "skimage" in sys.modules)
window.close()
"""
    surroundings = os.environ | {"QT_QPA_PLATFORM": "offscreen", "EVENSTAND_HOME": str(tmp_path / "home")}
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, env=surroundings, capture_output=True, text=True, timeout=60
    )
    assert done.stdout.strip() == "['A1', 'A2', 'B1'] True False", done.stderr


def lines_of_the_window(pattern: str) -> list[str]:
    return [
        f"{path.name}:{number}"
        for path in sorted((ROOT / "gui").rglob("*.py"))
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), start=1)
        if re.search(pattern, line)
    ]


def test_no_text_is_filled_in_before_it_is_translated() -> None:
    assert lines_of_the_window(r"\b(tr|translate)\(\s*f[\"']") == []


def test_nobody_follows_the_chain_of_focus() -> None:
    # PySide6 then took the items of a layout far away for deleted, and the next change of size crashed
    assert lines_of_the_window(r"\b(next|previous)InFocusChain\b") == []


def test_without_a_display_one_sentence_and_exit_2(tmp_path: Path) -> None:
    asked = "import sys; from gui.app import run; sys.exit(run())"
    surroundings = {"PATH": "/usr/bin:/bin", "EVENSTAND_HOME": str(tmp_path), "LANG": "C.UTF-8"}
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, env=surroundings, capture_output=True, text=True, timeout=60
    )
    assert done.returncode == 2
    assert "no screen to open a window on" in done.stderr
    assert "Traceback" not in done.stderr


def test_background_reading_leaves_no_connections_behind(qtbot: QtBot, work: Work, rack_book: Book) -> None:
    """Qt's pool makes a new Python thread of each job."""
    for _ in range(30):
        job = work.start(lambda _token, _report: rack_book.trays())
        with qtbot.waitSignal(job.finished, timeout=5000):
            pass

    assert len(rack_book._all) <= 4
