"""Going from tray to tray is as quick on a rack of thousands as on a small one."""

import time
from collections.abc import Callable
from pathlib import Path

from data.records import NewTray
from gui.traysheet.view import read_tray
from tests.gui.rackbook import a_rack_book

MANY = 2000


def quickest(call: Callable[[], object]) -> float:
    times = []
    for _ in range(5):
        begun = time.perf_counter()
        call()
        times.append(time.perf_counter() - begun)
    return min(times)


def test_a_sheet_takes_a_fraction_of_what_listing_the_rack_takes(tmp_path: Path) -> None:
    with a_rack_book(tmp_path / "rack") as book:
        sown = book.trays()[0].sown_at
        new = [
            NewTray(code=f"T{n}", crop="broccoli", medium="coir", sown_at=sown, shelf=f"S{n // 20}")
            for n in range(MANY)
        ]
        book.add_trays(new)
        trays = book.trays()
        assert book.growing_ids() == tuple(tray.id for tray in trays)

        here = read_tray(book, trays[700].id)
        assert (here.before, here.after) == (trays[699].id, trays[701].id)
        assert here.place == (701, len(trays))
        assert quickest(lambda: read_tray(book, trays[700].id)) < 0.5 * quickest(book.trays)
