"""Widgets that nobody needs any more are cleared away in the window's thread, never in a worker's."""

import gc
import threading
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from data.cancel import CancelToken, Progress
from gui.garbage import Garbage, uncleared
from gui.work import Work

MANY = 200_000  # lists: Python would clear some hundred times


@pytest.fixture(autouse=True)
def _as_ever() -> Iterator[None]:
    gc.collect()
    yield
    assert gc.isenabled()


def a_circle() -> QObject:
    """An object of Qt's that only clearing gets rid of."""
    one = QObject()
    one.setProperty("name", "circle")
    one.itself = one  # type: ignore[attr-defined]
    return one


def make_many(_token: CancelToken, _report: Progress) -> int:
    return sum(len([[]]) for _ in range(MANY)) + len([[n] for n in range(MANY)])


def test_a_worker_clears_no_object_of_the_window(qtbot: QtBot, work: Work) -> None:
    cleared_by: list[int] = []
    job = work.start(make_many)
    one = a_circle()
    end = weakref.finalize(one, lambda: cleared_by.append(threading.get_ident()))
    del one

    with qtbot.waitSignal(job.finished, timeout=20_000):
        pass
    gc.collect()

    assert not end.alive
    assert cleared_by == [threading.get_ident()]


def test_while_a_long_job_runs_garbage_is_cleared_all_the_same(qtbot: QtBot, work: Work) -> None:
    go_on = threading.Event()
    job = work.start(lambda _token, _report: go_on.wait(20), "Long")
    qtbot.waitUntil(lambda: not gc.isenabled())
    one = weakref.ref(a_circle())
    assert one() is not None

    with qtbot.waitSignal(job.finished, timeout=20_000):
        qtbot.waitUntil(lambda: one() is None, timeout=10_000)
        go_on.set()


def test_python_clears_by_itself_again_when_the_last_job_has_ended(qtbot: QtBot, work: Work) -> None:
    jobs = [work.start(make_many) for _ in range(3)]
    assert not gc.isenabled()

    with qtbot.waitSignals([job.finished for job in jobs], timeout=20_000):
        pass
    qtbot.waitUntil(lambda: not work.jobs())

    assert gc.isenabled()


def test_who_had_switched_it_off_before_finds_it_so(qtbot: QtBot) -> None:
    gc.disable()
    try:
        garbage = Garbage()
        garbage.hold()
        garbage.release()
        assert not gc.isenabled()
    finally:
        gc.enable()


def test_nothing_is_cleared_while_the_window_is_made_and_all_is_as_before_then() -> None:
    with uncleared():
        circle = weakref.ref(a_circle())
        assert make_many(CancelToken(), lambda _done, _total: None)
        assert circle() is not None
    gc.collect()
    assert circle() is None

    gc.disable()
    try:
        with uncleared():
            pass
        assert not gc.isenabled()
    finally:
        gc.enable()
