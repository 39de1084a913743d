"""Scoring on other machines: a real scheduler, workers on loopback, and what the world does to them."""

import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator, Sequence
from concurrent.futures import Executor, Future
from dataclasses import replace
from pathlib import Path

import pytest

from data.book import Book
from data.cancel import CancelToken
from data.intake import intake
from data.photos.farm import Farm
from data.photos.farmerrors import FarmLost, FarmMissing
from data.photos.judged import Judged
from data.records import Fate, Known, NeedsTray, Refused, Stored
from data.upkeep.rescoring import Again, rescore_all
from tests.data.builders import a_note, a_score, bring, score_note
from tests.data.cluster import ROOT, Cluster, free_port
from vision.reason import Reason

pytestmark = pytest.mark.filterwarnings("ignore::ResourceWarning")  # sockets of a killed worker


@pytest.fixture(scope="module")
def running(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Cluster]:
    cluster = Cluster(tmp_path_factory.mktemp("farm"))
    yield cluster
    cluster.end()


@pytest.fixture
def cluster(running: Cluster) -> Cluster:
    running.bring_to(2)
    return running


def score_slowly(path: Path) -> Judged:
    time.sleep(0.15)
    return score_note(path)


def die(_path: Path) -> Judged:
    os.kill(os.getpid(), signal.SIGKILL)
    raise AssertionError


def brought(paths: Sequence[Path], book: Book, farm: Farm, **more: object) -> dict[str, Fate]:
    score = more.pop("score", score_note)
    fates = list(intake(paths, book, farm, CancelToken(), score=score, workers=farm.workers))
    assert len({path for path, _ in fates}) == len(fates)
    return {path.name: fate for path, fate in fates}


def test_photos_are_scored_by_the_workers_and_kept_here(cluster: Cluster, book: Book, phone: Path) -> None:
    a_note(phone, "a.jpg", tag=10)
    a_note(phone, "b.jpg", tag=99)
    a_note(phone, "c.jpg", refuse="TOO_DARK")

    with Farm(cluster.address) as farm:
        assert farm.workers == 2
        fates = brought([phone], book, farm)

    assert {name: type(fate) for name, fate in fates.items()} == {
        "a.jpg": Stored, "b.jpg": NeedsTray, "c.jpg": Refused,
    }  # fmt: skip


def test_a_photo_that_the_workers_cannot_see_is_sent(
    cluster: Cluster, book: Book, phone: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    photos = [a_note(phone, f"{n}.jpg", tag=10, number=n) for n in range(3)]
    monkeypatch.setattr(
        "data.photos.farm.digest_of", lambda _: "0" * 64
    )  # what no worker finds under that path

    with Farm(cluster.address) as farm:
        fates = brought(photos, book, farm)

    assert [type(fate) for fate in fates.values()] == [Stored] * 3
    assert set(fates) == {"0.jpg", "1.jpg", "2.jpg"}


def test_a_killed_worker_loses_nothing_and_a_second_run_repeats_nothing(
    cluster: Cluster, book: Book, phone: Path
) -> None:
    photos = [a_note(phone, f"{n}.jpg", tag=10, number=n) for n in range(24)]

    with Farm(cluster.address) as farm:
        fates: dict[str, Fate] = {}
        for path, fate in intake(photos, book, farm, CancelToken(), score=score_slowly, workers=2):
            fates[path.name] = fate
            if len(fates) == 6:
                cluster.kill_a_worker()
        again = brought(photos, book, farm, score=die)  # nobody would survive scoring one

    assert [type(fates[path.name]) for path in photos] == [Stored] * 24
    assert [type(fate) for fate in again.values()] == [Known] * 24
    assert len(book.photos()) == 24


def test_a_photo_that_kills_every_worker_is_refused_and_costs_itself_alone(
    cluster: Cluster, book: Book, phone: Path
) -> None:
    cluster.bring_to(3)
    bad, good = a_note(phone, "bad.jpg", tag=10), a_note(phone, "good.jpg", tag=11)

    with Farm(cluster.address) as farm:
        killed = brought([bad], book, farm, score=die)["bad.jpg"]
        kept = brought([good], book, farm)["good.jpg"]

    assert isinstance(killed, Refused)
    assert killed.reason is Reason.KILLED
    assert isinstance(kept, Stored)


def test_a_farm_that_goes_away_is_told_and_what_came_back_is_kept(
    book: Book, phone: Path, tmp_path: Path
) -> None:
    cluster = Cluster(tmp_path / "farm")
    cluster.bring_to(1)
    photos = [a_note(phone, f"{n}.jpg", tag=10, number=n) for n in range(12)]
    stored: list[Path] = []

    def bring() -> None:
        with Farm(cluster.address) as farm:
            for path, _ in intake(photos, book, farm, CancelToken(), score=score_slowly, workers=2):
                stored.append(path)
                if len(stored) == 4:
                    cluster.end()

    with pytest.raises(FarmLost, match="goes on from there"):
        bring()

    assert len(book.photos()) == len(stored) >= 4


def test_nobody_at_the_address_is_told_in_words(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("data.photos.farm.ANSWER_WITHIN_S", 0.5)

    with pytest.raises(FarmMissing, match="nobody answers"):
        Farm(f"tcp://127.0.0.1:{free_port()}")


def test_workers_of_another_version_are_not_used(cluster: Cluster, monkeypatch: pytest.MonkeyPatch) -> None:
    theirs = "learned 0 (1)"
    monkeypatch.setattr("distributed.Client.run", lambda *_, **__: {"tcp://127.0.0.1:1": theirs})

    with pytest.raises(FarmMissing, match="would be mixed"):
        Farm(cluster.address)


def test_only_the_farm_loads_what_a_farm_needs() -> None:
    code = "import sys, data.intake, data.book; print('distributed' in sys.modules, 'dask' in sys.modules)"
    ran = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)

    assert ran.stdout.split() == ["False", "False"]


def scored_again(again: Again) -> Judged:
    """A newer version, on a worker."""
    judged = score_note(again.path)
    assert judged.score is not None
    return replace(judged, score=a_score(judged.score.stand.coverage - 5.0, method="plain 2"))


def test_a_farm_scores_kept_photos_again(book: Book, phone: Path, cluster: Cluster) -> None:
    photos = [
        bring(book, a_note(phone, f"{tag}.jpg", tag=tag, coverage=50.0 + tag)).photo_id for tag in (10, 11)
    ]
    with Farm(cluster.address) as farm:
        done = dict(rescore_all(book, photos, farm, CancelToken(), score=scored_again))

    assert done == dict.fromkeys(photos, True)
    assert [book.score(photo).coverage for photo in photos] == [55.0, 56.0]


def test_a_farm_that_is_lost_while_photos_are_scored_again_is_told(book: Book, phone: Path) -> None:
    photo = bring(book, a_note(phone, tag=10)).photo_id

    class Lost(Executor):
        def submit(self, _fn: object, /, *_: object, **__: object) -> Future[Judged]:
            future: Future[Judged] = Future()
            future.set_exception(FarmLost("tcp://nowhere:1"))
            return future

    with pytest.raises(FarmLost):
        list(rescore_all(book, [photo], Lost(), CancelToken(), workers=1))
