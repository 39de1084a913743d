"""How a farm scales: photographs a minute with one worker and with two, and the arithmetic for more.

Run by hand: python -m tests.bench.farm_scaling [PHOTOS]. A real scheduler and workers on loopback score the
demonstration's own photos with the real program; each is kept in a book by this one process. What that
process itself needs for a photo (its processor time: hand out, take back, keep) cannot be spread, so it sets
the ceiling of a farm; below it a farm is reckoned to grow with its workers. That is arithmetic, no
measurement, and holds where each worker has a core of its own. Where scheduler, workers, book and other
programs share two cores, two workers are held back by those: the load is printed beside them.
"""

import os
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path
from time import perf_counter, process_time

from data.book import Book
from data.cancel import CancelToken
from data.intake import intake
from data.photos.farm import Farm
from data.records import Known
from tests.data.cluster import ROOT, Cluster

PHOTOS = ROOT / "data" / "demo" / "photos"
FORECAST = (4, 8, 16, 32)


def seconds_with(cluster: Cluster, workers: int, photos: Sequence[Path], folder: Path) -> tuple[float, float]:
    """Seconds a photo with that many workers, and of these this process's own; imports are paid before."""
    cluster.bring_to(workers)
    warm, rest = photos[: 4 * workers], photos[4 * workers :]
    with Book.create(folder / f"book{workers}") as book, Farm(cluster.address) as farm:
        list(intake(warm, book, farm, CancelToken(), workers=farm.workers))
        begun, own = perf_counter(), process_time()
        fates = list(intake(rest, book, farm, CancelToken(), workers=farm.workers))
        taken, own = perf_counter() - begun, process_time() - own
    if len(fates) != len(rest) or any(isinstance(fate, Known) for _, fate in fates):
        raise RuntimeError("not every photo was scored once")
    return taken / len(rest), own / len(rest)


def main(count: int) -> None:
    """Measure one and two workers, print them and what follows for more."""
    photos = sorted(PHOTOS.iterdir())[:count]
    with tempfile.TemporaryDirectory() as name:
        cluster = Cluster(Path(name) / "farm")
        try:
            one, _ = seconds_with(cluster, 1, photos, Path(name))
            two, own = seconds_with(cluster, 2, photos, Path(name))
        finally:
            cluster.end()
    print(f"cores: {os.cpu_count()}, load of the last minute: {os.getloadavg()[0]:.1f}")
    print(f"1 worker: {60 / one:.0f} photos a minute")
    print(f"2 workers: {60 / two:.0f} photos a minute, {one / two:.2f} times as many")
    print(f"the book's own process: {1000 * own:.0f} ms a photo, so at most {60 / own:.0f} a minute")
    for workers in FORECAST:
        print(f"{workers} workers, reckoned: {min(workers / one, 1 / own) * 60:.0f} a minute")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 48)
