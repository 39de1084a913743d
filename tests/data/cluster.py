"""Cluster: a real scheduler and its workers on this machine, each a process of its own."""

import os
import socket
import subprocess
import sys
from contextlib import closing
from pathlib import Path

ROOT = Path(__file__).parents[2]
WITHIN_S = 40.0
# what kills a second worker is given up; by default a fourth, and each takes a second to start
GIVES_UP = {"DASK_DISTRIBUTED__SCHEDULER__ALLOWED_FAILURES": "1"}


class Cluster:
    """A scheduler and its workers, each a process of its own."""

    def __init__(self, folder: Path) -> None:
        port = free_port()
        self.address = f"tcp://127.0.0.1:{port}"
        self._folder = folder
        self._workers: list[subprocess.Popen[bytes]] = []
        self._scheduler = started("scheduler", "--host", "127.0.0.1", "--port", str(port), "--no-dashboard")

    def bring_to(self, workers: int) -> None:
        """Have that many workers alive."""
        from distributed import Client

        self._workers = [worker for worker in self._workers if worker.poll() is None]
        while len(self._workers) < workers:
            self._workers.append(
                started("worker", self.address, "--nthreads", "1", "--no-nanny", "--no-dashboard",
                        "--host", "127.0.0.1", "--local-directory", str(self._folder))
            )  # fmt: skip
        with Client(self.address, timeout=WITHIN_S, set_as_default=False) as client:
            client.wait_for_workers(workers, timeout=WITHIN_S)

    def kill_a_worker(self) -> None:
        self._workers[0].kill()
        self._workers[0].wait()

    def end(self) -> None:
        for process in (*self._workers, self._scheduler):
            process.kill()
            process.wait()


def started(what: str, *words: str) -> subprocess.Popen[bytes]:
    return subprocess.Popen(
        [sys.executable, "-m", f"distributed.cli.dask_{what}", *words],
        env=os.environ | {"PYTHONPATH": str(ROOT), "PYTHONWARNINGS": "ignore", **GIVES_UP},
        cwd=ROOT,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )


def free_port() -> int:
    with closing(socket.socket()) as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])
