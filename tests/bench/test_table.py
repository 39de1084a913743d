"""The table of `table.py` as a sweep: no stage is over its limit.

python -m pytest -m sweep -s tests/bench/test_table.py; EVENSTAND_BIG_BOOK names the folder of a big book,
which is made where it is not there.
"""

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from tests.bench.bookrows import book_rows, trial_rows
from tests.bench.limits import Row, as_table
from tests.bench.photorows import Scene, photo_rows, worker_rows
from tests.bench.windowrows import window_rows

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(1200)]


@pytest.fixture(scope="module")
def big_book(tmp_path_factory: pytest.TempPathFactory) -> Path:
    named = os.environ.get("EVENSTAND_BIG_BOOK")
    return Path(named) if named else tmp_path_factory.mktemp("years") / "book"


def judged(rows: Iterator[Row]) -> None:
    table = tuple(rows)
    print(f"\n{as_table(table)}")
    assert [row.stage for row in table if row.verdict == "OVER"] == []


def test_the_stages_of_a_photo() -> None:
    judged(photo_rows())


def test_a_worker() -> None:
    judged(worker_rows())


def test_a_book_of_years(big_book: Path) -> None:
    judged(book_rows(big_book))


def test_a_trial() -> None:
    judged(trial_rows(Scene().decode))


def test_the_window(big_book: Path, qapp: QApplication) -> None:
    judged(window_rows(qapp, big_book))
