"""Soak: the real window on a book of 2,000 photos, used at random for twenty minutes; what stays behind.

Run by hand: python -m tests.bench.soak [MINUTES] [BOOK], or as a sweep by `test_soak.py`. The book is made
once: 250 trays on eight days, each photo a real picture with bytes of its own, kept by the real intake; its
score is that of the demonstration's photo it was made from, so that filling takes two minutes. Then tray
sheets are opened at random in every view, days and layers changed, screens and schemes changed, patches
answered and taken back, and now and then a photo is brought in and really scored.

What is wanted: after everything that is kept on purpose has been filled, and a quarter of the time, memory
within ten per cent, no more threads, no warning by Python, by Qt or in the log; no thread of ours once the
window is closed. Linux only: it reads `/proc`.
"""

import gc
import logging
import os
import random
import sys
import tempfile
import threading
import time
import warnings
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from io import BytesIO
from pathlib import Path

from PIL import Image
from PySide6.QtCore import QEvent, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication

from data.book import Book
from data.cancel import CancelToken
from data.demo import demo_photos
from data.intake import intake
from data.photos.judged import Judged, score_for_book
from data.photos.originals import digest_of
from data.records import Said
from gui.app import Start, make_window
from gui.home import Memory
from gui.traysheet.views import View
from gui.window import Window
from tests.data.builders import a_tray

TRAYS, DAYS, KINDS = 250, 8, 5
SOWN = datetime(2026, 3, 2, 9)
TOLD_AT = (0.5, 1.0, 2.0, 3.0, 5.0, 10.0, 15.0, 20.0)  # minutes
WARM, MOST_GROWTH = 0.25, 1.10
PATIENCE_S = 60.0
PHOTO_EVERY = 40  # rounds
WARM_TRAYS = 62  # eight days each: more thumbnails than are kept
NO_NEWS = "This plugin does not support"  # what the offscreen platform says of raise_()


# --- the book


def fill(folder: Path) -> None:
    """A book of 250 trays with a photo on each of eight days."""
    with Book.create(folder) as book, tempfile.TemporaryDirectory() as name:
        book.add_trays(
            a_tray(f"T{n}", sown_at=SOWN, shelf=f"S{n // 25}", block=str(n // 25), tag_number=10 + n)
            for n in range(TRAYS)
        )
        book.set_setting("today", f"{SOWN + timedelta(days=9):%Y-%m-%d}")
        kinds = _kinds(Path(name))
        photos = [_photo(Path(name), kinds, n, day) for day in range(DAYS) for n in range(TRAYS)]
        scorer = _Scorer({path.stem: score_for_book(path) for some in kinds for path in some})
        with ThreadPoolExecutor(1) as pool:
            kept = sum(1 for _ in intake(photos, book, pool, CancelToken(), score=scorer))
        print(f"{kept} photos of {len(book.trays())} trays", flush=True)
        book.forget_changes()


def _kinds(folder: Path) -> list[list[Path]]:
    """The demonstration's photos of some trays, day by day, as JPEG."""
    by_tray: dict[str, list[Path]] = {}
    for path in sorted(demo_photos()):
        by_tray.setdefault(path.stem.partition("_")[0], []).append(path)
    return [[_as_jpeg(path, folder) for path in by_tray[tray]] for tray in sorted(by_tray)[::4][:KINDS]]


def _as_jpeg(path: Path, folder: Path) -> Path:
    target = folder / f"{path.stem}.jpg"
    with Image.open(path) as image:
        image.convert("RGB").save(target, "JPEG", quality=85, exif=image.getexif())
    return target


def _photo(folder: Path, kinds: Sequence[Sequence[Path]], tray: int, day: int) -> Path:
    """The same picture with bytes of its own: they follow the picture's end, where no decoder looks."""
    source = kinds[tray % KINDS][day]
    path = folder / f"{source.stem}-{tray}-{day}.jpg"
    path.write_bytes(source.read_bytes() + f"{tray} {day}".encode())
    return path


@dataclass(frozen=True)
class _Scorer:
    """Gives each photo the score of the picture that it shows, under its own tag and time."""

    known: dict[str, Judged]

    def __call__(self, path: Path) -> Judged:
        stem, tray, day = path.stem.rsplit("-", 2)
        taken_at = SOWN + timedelta(days=int(day) + 2, minutes=int(tray))
        told = {
            "name": path.name,
            "digest": digest_of(path),
            "taken_at": taken_at,
            "tag_number": 10 + int(tray),
        }
        judged = self.known[stem]
        score = None if judged.score is None else replace(judged.score, **told)
        return replace(judged, score=score, **told)


# --- what is watched


@dataclass
class Watch:
    """Memory and threads by time; everything that was said to be wrong."""

    begun: float = field(default_factory=time.monotonic)
    readings: list[tuple[float, float, int, int]] = field(
        default_factory=list
    )  # minutes, MB, threads, widgets
    said: list[str] = field(default_factory=list)

    @property
    def minutes(self) -> float:
        """Since it began."""
        return (time.monotonic() - self.begun) / 60

    def read(self) -> None:
        """Note how things stand."""
        pages = int(Path("/proc/self/statm").read_text().split()[1])
        memory = pages * os.sysconf("SC_PAGE_SIZE") / 1e6
        threads = len(list(Path("/proc/self/task").iterdir()))
        self.readings.append((self.minutes, memory, threads, len(QApplication.allWidgets())))

    def tell(self, minute: float) -> None:
        """Print the newest reading."""
        _, memory, threads, widgets = self.readings[-1]
        objects = len(gc.get_objects())
        print(
            f"minute {minute:4.1f}: {memory:5.0f} MB, {threads} threads, {widgets} widgets, "
            f"{objects} objects",
            flush=True,
        )

    def growth(self) -> float:
        """Memory of the last quarter over that of the quarter after the warm-up; medians."""
        end = self.readings[-1][0]
        after = [one[1] for one in self.readings if WARM * end < one[0] <= 2 * WARM * end]
        last = [one[1] for one in self.readings if one[0] > (1 - WARM) * end]
        return sorted(last)[len(last) // 2] / sorted(after)[len(after) // 2]

    def listen(self) -> None:
        """Catch what Python, Qt and the log say."""
        warnings.simplefilter("always")
        warnings.showwarning = lambda message, kind, *_: self.said.append(f"{kind.__name__}: {message}")
        qInstallMessageHandler(self._heard)
        handler = logging.Handler(logging.WARNING)
        handler.emit = self._logged
        logging.getLogger().addHandler(handler)

    def _logged(self, record: logging.LogRecord) -> None:
        error = record.exc_info[1] if record.exc_info else None
        self.said.append(f"{record.msg}: {error!r}" if error else record.getMessage())

    def _heard(self, kind: QtMsgType, _: object, words: str) -> None:
        if kind is not QtMsgType.QtDebugMsg and NO_NEWS not in words:
            self.said.append(f"Qt: {words}")


# --- what is done


class Grower:
    """Somebody who clicks about."""

    def __init__(self, window: Window, photos: Path, seed: int = 1) -> None:
        self.window, self.photos, self.random = window, photos, random.Random(seed)
        sheet = window.screens.traysheet
        assert window.book is not None
        self.sheet, self.book = sheet, window.book
        self.trays = [tray.id for tray in self.book.trays()]
        self.rounds = 0

    def warm_up(self) -> None:
        """Fill what is kept on purpose (thumbnails, fonts, the network), so that only leaks grow then."""
        for tray in self.trays[:: len(self.trays) // WARM_TRAYS]:
            self.window.open_tray(tray)
            self.settle()
        for view in View:
            self.sheet.show_view(view)
            self.settle()
        for place in self.window.screens:
            self.window.go_to(place)
            self.settle()
        for _ in range(4):
            self._rack()
        self._bring_in()
        self.settle()

    def go_on(self) -> None:
        """One round: a tray in some views, then something else."""
        self.rounds += 1
        self.window.open_tray(self.random.choice(self.trays))
        self.settle()
        for _ in range(3):
            self.random.choice((self._view, self._day, self._layer, self._photo_itself))()
            self.settle()
        self.random.choice((self._place, self._place, self._scheme, self._answer, self._rack, self._help))()
        if self.rounds % PHOTO_EVERY == 0:
            self._bring_in()
        self.settle()

    def settle(self) -> None:
        """Let the window live until it has nothing to do."""
        begun = time.monotonic()
        while True:
            for _ in range(3):
                QApplication.processEvents()
            QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)  # no loop is there
            if not self.window.work.jobs():
                return
            if time.monotonic() - begun > PATIENCE_S:
                raise TimeoutError("the window has been at work for a minute")
            time.sleep(0.002)

    def _view(self) -> None:
        self.sheet.show_view(self.random.choice(list(View)))

    def _day(self) -> None:
        if self.sheet.strip.isVisible():
            self.sheet.strip.step(self.random.choice((-3, -1, 1)))

    def _layer(self) -> None:
        self.sheet.show_view(View.PICTURE)
        self.random.choice(list(self.sheet.bar.layers.values())).click()

    def _photo_itself(self) -> None:
        self.sheet.show_view(View.PICTURE)
        self.sheet.bar.photo.toggle()

    def _place(self) -> None:
        self.window.go_to(self.random.choice(list(self.window.screens)))

    def _scheme(self) -> None:
        self.window.wardrobe.choose(self.random.choice(("light", "dark")))

    def _answer(self) -> None:
        """Say what a patch is, see it on the Bench, take it back."""
        seen = self.book.seen_suspects()
        kept = self.book.score(self.random.choice(seen).photo_id) if seen else None
        if kept is not None:
            said = self.random.choice((Said.MOLD, Said.NOT_MOLD))
            self.book.say(self.random.choice(kept.suspects).id, said)
            self.window.following.book_changed()
            self.settle()
            self.window.following.undo()

    def _rack(self) -> None:
        self.window.go_to("bench")
        self.settle()
        bar = self.window.screens["bench"].rack.verticalScrollBar()
        for _ in range(5):
            bar.setValue(self.random.randint(0, max(1, bar.maximum())))
            self.window.grab()
            self.settle()

    def _help(self) -> None:
        self.window.guide.show_help()
        self.settle()
        for other in QApplication.topLevelWidgets():
            if other is not self.window:
                other.close()

    def _bring_in(self) -> None:
        """A photo whose bytes nobody has seen before, scored for real."""
        source = self.random.choice(demo_photos()[:18])
        with Image.open(source) as image:
            data = BytesIO()
            image.convert("RGB").save(data, "JPEG", quality=85, exif=image.getexif())
        path = self.photos / f"new-{self.rounds}.jpg"
        path.write_bytes(data.getvalue() + str(self.rounds).encode())
        self.window.bring_in_files([path])


def use(folder: Path, minutes: float) -> list[str]:
    """Use the window for some minutes; what was wrong with it."""
    watch = Watch()
    watch.listen()
    with tempfile.TemporaryDirectory() as home:
        os.environ["EVENSTAND_HOME"] = home
        app = QApplication.instance() or QApplication(sys.argv[:1])
        assert isinstance(app, QApplication)
        window = make_window(app, Memory())
        window.show()
        start = Start(window)
        start.open(folder)
        grower = Grower(window, Path(home))
        grower.warm_up()
        watch.begun = time.monotonic()
        _use(grower, watch, minutes)
        window.close()
        QApplication.processEvents()
        time.sleep(2.0)  # a scorer ends with the photo it is at
        left = [thread.name for thread in threading.enumerate() if not _may_stay(thread)]
    print(f"{grower.rounds} rounds; memory at the end over that after warming up: {watch.growth():.3f}")
    wrong = [f"said: {words}" for words in dict.fromkeys(watch.said)] + [
        f"thread left: {name}" for name in left
    ]
    if watch.growth() > MOST_GROWTH:
        wrong.append(f"memory grew by {100 * (watch.growth() - 1):.0f} %")
    if watch.readings[-1][2] > max(one[2] for one in watch.readings[: len(watch.readings) // 2]) + 1:
        wrong.append(f"threads grew to {watch.readings[-1][2]}")
    return wrong


def _use(grower: Grower, watch: Watch, minutes: float) -> None:
    """Round after round; memory is read ten times a minute, told now and then."""
    telling = [at for at in TOLD_AT if at < minutes]
    while watch.minutes < minutes:
        grower.go_on()
        if not watch.readings or watch.minutes - watch.readings[-1][0] > 0.1:
            watch.read()
            if telling and watch.minutes >= telling[0]:
                watch.tell(telling.pop(0))
    watch.read()
    watch.tell(minutes)


def _may_stay(thread: threading.Thread) -> bool:
    """The main thread; and Python goes on listing threads of Qt that have ended, as "Dummy"."""
    return thread is threading.main_thread() or thread.name.startswith("Dummy")


def main(minutes: float, folder: Path) -> int:
    """Make the book where there is none, use it; 1 where something was wrong."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    if not (folder / "book.sqlite").exists():
        fill(folder)
    wrong = use(folder, minutes)
    print(*wrong, sep="\n")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(
        main(
            float(sys.argv[1]) if len(sys.argv) > 1 else 20.0,
            Path(sys.argv[2]) if len(sys.argv) > 2 else Path(tempfile.mkdtemp()) / "book",
        )
    )
