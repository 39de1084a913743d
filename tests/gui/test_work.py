"""Work: background jobs end in exactly one way, and all of them end on closing."""

import threading
from typing import Any

import pytest
from PySide6.QtCore import QObject, Slot
from pytestqt.qtbot import QtBot

from data.cancel import CancelToken, Progress
from gui.controls.progress import ProgressStrip
from gui.work import Job, Work


class Listener(QObject):
    """Notes how a job ends, in the window's thread."""

    def __init__(self, job: Job) -> None:
        super().__init__()
        self.ends: list[tuple[str, Any]] = []
        self.threads: set[int] = set()
        job.finished.connect(self.finished)
        job.failed.connect(self.failed)
        job.cancelled.connect(self.cancelled)

    @Slot(object)
    def finished(self, result: object) -> None:
        self.note("finished", result)

    @Slot(object)
    def failed(self, error: object) -> None:
        self.note("failed", error)

    @Slot()
    def cancelled(self) -> None:
        self.note("cancelled", None)

    def note(self, how: str, what: object) -> None:
        self.ends.append((how, what))
        self.threads.add(threading.get_ident())


def walk_for_ever(cancel: CancelToken, report: Progress) -> None:
    done = 0
    while True:
        cancel.check()
        done += 1
        report(done % 1000, 1000)
        threading.Event().wait(0.001)


def test_a_job_that_works_says_what_came_out(qtbot: QtBot, work: Work) -> None:
    listener = Listener(work.start(lambda _cancel, _report: "12 trays"))

    qtbot.waitUntil(lambda: bool(listener.ends))

    assert listener.ends == [("finished", "12 trays")]


def test_even_the_shortest_job_is_heard_of_by_whoever_connects_after_the_start(
    qtbot: QtBot, work: Work
) -> None:
    listeners = [Listener(work.start(lambda _cancel, _report, n=n: n)) for n in range(50)]

    qtbot.waitUntil(lambda: all(listener.ends for listener in listeners))

    assert [listener.ends for listener in listeners] == [[("finished", n)] for n in range(50)]


def test_a_job_that_fails_hands_over_the_error(qtbot: QtBot, work: Work) -> None:
    def trip(_cancel: CancelToken, _report: Progress) -> None:
        raise ValueError("no such tray")

    listener = Listener(work.start(trip))
    qtbot.waitUntil(lambda: bool(listener.ends))

    (how, error), *more = listener.ends
    assert (how, str(error), more) == ("failed", "no such tray", [])


def test_cancel_ends_work_that_would_never_end_by_itself(qtbot: QtBot, work: Work) -> None:
    job = work.start(walk_for_ever)
    listener = Listener(job)
    with qtbot.waitSignal(job.progressed, timeout=5000):
        pass

    with qtbot.waitSignal(job.cancelled, timeout=1000):
        job.cancel()

    qtbot.waitUntil(lambda: bool(listener.ends))
    assert listener.ends == [("cancelled", None)]


def test_a_job_cancelled_before_it_begins_does_nothing(qtbot: QtBot, work: Work) -> None:
    done: list[str] = []
    job = work.start(lambda _cancel, _report: done.append("worked"))
    listener = Listener(job)

    job.cancel()

    qtbot.waitUntil(lambda: bool(listener.ends))
    assert (listener.ends, done) == ([("cancelled", None)], [])


def test_the_window_hears_of_it_in_its_own_thread(qtbot: QtBot, work: Work) -> None:
    listener = Listener(work.start(lambda _cancel, _report: threading.get_ident()))

    qtbot.waitUntil(lambda: bool(listener.ends))

    (_, where), *_more = listener.ends
    assert listener.threads == {threading.get_ident()}
    assert where != threading.get_ident()


def test_ended_jobs_are_forgotten(qtbot: QtBot, work: Work) -> None:
    job = work.start(lambda _cancel, _report: None, "Scoring photos")
    assert work.jobs() == work.shown() == (job,)

    qtbot.waitUntil(lambda: work.jobs() == ())


def test_closing_stops_everything_that_runs(qtbot: QtBot) -> None:
    work = Work(scorers=1)
    jobs = [work.start(walk_for_ever, "Scoring photos"), work.start(walk_for_ever)]
    listeners = [Listener(job) for job in jobs]
    qtbot.waitUntil(lambda: all(job.total for job in jobs))

    assert work.close(limit_ms=2000)

    qtbot.waitUntil(lambda: all(listener.ends for listener in listeners))
    assert [listener.ends for listener in listeners] == [[("cancelled", None)]] * 2


def test_no_thread_begins_after_closing(qtbot: QtBot) -> None:
    begun: list[str] = []
    work = Work(scorers=1)
    before = Listener(work.start(lambda _cancel, _report: begun.append("just before")))
    work.close()
    after = Listener(work.start(lambda _cancel, _report: begun.append("after")))

    qtbot.waitUntil(lambda: bool(before.ends and after.ends))

    assert before.ends == after.ends == [("cancelled", None)]
    assert begun == []
    assert before.threads == after.threads == {threading.get_ident()}


def test_the_strip_shows_count_and_cancel_while_work_runs(qtbot: QtBot, work: Work) -> None:
    go_on = threading.Event()

    def score(cancel: CancelToken, report: Progress) -> None:
        report(34, 144)
        while not go_on.wait(0.01):
            cancel.check()

    strip = ProgressStrip(work)
    qtbot.addWidget(strip)
    assert strip.isHidden()
    work.start(score, "Scoring photos")

    qtbot.waitUntil(lambda: len(strip.lines()) == 1)
    (line,) = strip.lines()
    assert (line.words.text(), line.bar.value(), line.bar.maximum()) == ("Scoring photos", 34, 144)
    assert line.count.text().startswith("34 of 144")
    assert line.cancel.accessibleName() == "Cancel: Scoring photos"

    go_on.set()
    qtbot.waitUntil(lambda: strip.lines() == () and strip.isHidden())


def test_cancel_in_the_strip_ends_the_work(qtbot: QtBot, work: Work) -> None:
    strip = ProgressStrip(work)
    qtbot.addWidget(strip)
    job = work.start(walk_for_ever, "Scoring photos")
    qtbot.waitUntil(lambda: len(strip.lines()) == 1)

    with qtbot.waitSignal(job.cancelled, timeout=1000):
        strip.lines()[0].cancel.click()


@pytest.mark.parametrize(("whole", "words"), [(False, "what is done stays"), (True, "all stays as it was")])
def test_the_strip_says_what_stays_of_work_that_is_being_stopped(
    qtbot: QtBot, work: Work, whole: bool, words: str
) -> None:
    stopped = threading.Event()

    def slow_to_stop(cancel: CancelToken, _report: Progress) -> None:
        stopped.wait(10)
        cancel.check()

    strip = ProgressStrip(work)
    qtbot.addWidget(strip)
    work.start(slow_to_stop, "Packing the book", whole=whole)
    qtbot.waitUntil(lambda: len(strip.lines()) == 1)

    strip.lines()[0].cancel.click()

    assert strip.lines()[0].count.text() == f"Stopping; {words}"
    stopped.set()


def test_work_that_cannot_be_stopped_offers_no_cancel(qtbot: QtBot, work: Work) -> None:
    strip = ProgressStrip(work)
    qtbot.addWidget(strip)
    job = work.start(walk_for_ever, "Scoring the photo again", brief=True)
    qtbot.waitUntil(lambda: len(strip.lines()) == 1)

    assert strip.lines()[0].cancel.isHidden()
    assert "Scoring the photo again" in strip.lines()[0].words.text()
    job.cancel()


def test_short_work_without_words_is_not_shown(qtbot: QtBot, work: Work) -> None:
    strip = ProgressStrip(work)
    qtbot.addWidget(strip)

    job = work.start(walk_for_ever)
    qtbot.waitUntil(lambda: job.seconds() > 0.4)

    strip.renew()
    assert strip.isHidden()


@pytest.mark.parametrize("times", [3])
def test_photos_are_scored_by_the_executor_of_the_window(qtbot: QtBot, work: Work, times: int) -> None:
    results = list(work.scorers.map(lambda n: n * n, range(times)))
    assert results == [0, 1, 4]


def test_one_can_begin_and_stop_listening_while_a_job_reports(qtbot: QtBot, work: Work) -> None:
    """A thread must not emit what another one disconnects from: that crashes the process (seen)."""
    job = work.start(walk_for_ever)
    heard: list[int] = []

    for _ in range(300):
        with qtbot.waitSignal(job.progressed, timeout=5000) as signal:
            pass
        heard.append(signal.args[0])

    job.cancel()
    assert len(heard) == 300
