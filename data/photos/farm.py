"""Farm: scoring on the workers of a running Dask cluster, as an ordinary `Executor`.

In    the address of a scheduler, "tcp://HOST:PORT"
Out   `Farm`, to hand to `intake` in place of a pool of this machine
Not   starting a cluster, keeping photos (the book is written by `intake` alone, wherever the scoring runs)

A worker reads a photo itself where it sees the same file under the same path; otherwise the photo's bytes are
sent. What a lost worker had in hand is given to another one by the scheduler; a photo that takes several
workers with it comes back as `KilledByPhoto`. `distributed` is an extra, and imported here alone.
"""

import re
from collections.abc import Callable
from concurrent.futures import CancelledError, Executor, Future, InvalidStateError
from contextlib import suppress
from functools import partial
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from data.photos.farmerrors import FarmLost, FarmMissing, KilledByPhoto
from data.photos.originals import digest_of

__all__ = ["Farm"]

ADDRESS = re.compile(r"(\w+://)?(\[[0-9a-fA-F:.]+\]|[^\s/:\[\]]+):\d{1,5}")
ANSWER_WITHIN_S = 10.0
LARGE_PHOTO = "1 GiB"  # a photo on its way to a worker is no mistake to be warned of

Scorer = Callable[[Path], Any]


class NotHere(Exception):
    """This worker does not see the photo under its path, or sees another one."""


class Farm(Executor):
    """Workers of a running cluster; `submit` takes a top-level function of a path, and the path of a photo.

    Raises
    ------
    FarmMissing
        If `address` is none or nobody answers there within ten seconds, the extra is not installed, or the
        workers do not run this very version of the program.
    """

    def __init__(self, address: str) -> None:
        try:
            import dask
            from distributed import Client
        except ImportError as error:
            raise FarmMissing.without_extra() from error
        dask.config.set({"distributed.admin.large-graph-warning-threshold": LARGE_PHOTO})
        self.address = address
        if ADDRESS.fullmatch(address) is None:
            raise FarmMissing(f"{address} is no address of a farm: write it like tcp://192.168.1.20:8786")
        try:
            self._client = Client(address, timeout=ANSWER_WITHIN_S, set_as_default=False)
        except (OSError, ValueError) as error:  # no answer in time is an OSError too
            raise FarmMissing.nobody(address) from error
        try:
            self._compare_versions()
        except BaseException:
            self._client.close()
            raise
        self._pool = self._client.get_executor(pure=False)
        self._workers_see_files = True  # until one says that it does not

    def _compare_versions(self) -> None:
        try:
            theirs = self._client.run(_version, on_error="return")
        except OSError as error:
            raise FarmMissing.nobody(self.address) from error
        if not theirs:
            raise FarmMissing.no_workers(self.address)
        for worker, version in sorted(theirs.items()):
            if version != _version():
                raise FarmMissing.other_version(worker, version)

    @property
    def workers(self) -> int:
        """How many photos can be scored at once now, at least 1."""
        return max(1, sum(map(int, self._client.nthreads().values())))

    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        """Score the photo at `args[0]` on some worker.

        Raises
        ------
        FarmLost
            If the scheduler does not answer any more.
        """
        path: Path
        (path,) = args
        assert not kwargs, "a scorer takes the path of a photo and nothing else"
        result: Future[Any] = Future()
        if self._workers_see_files:
            there = self._submit(_score_there, fn, path.absolute(), digest_of(path))
            self._follow(there, result, partial(self._send, fn, path))
        else:
            self._follow(self._send(fn, path), result)
        return result

    def _send(self, fn: Scorer, path: Path) -> "Future[Any]":
        return self._submit(_score_sent, fn, path.name, path.read_bytes())

    def _submit(self, fn: Callable[..., Any], *args: Any) -> "Future[Any]":
        if self._client.status != "running":
            raise FarmLost(self.address)
        future: Future[Any] = self._pool.submit(fn, *args)
        return future

    def _follow(
        self, inner: Future[Any], result: Future[Any], otherwise: Callable[[], Future[Any]] | None = None
    ) -> None:
        """Pass on what becomes of `inner`; where the worker did not see the photo, what `otherwise` gives."""

        def pass_on(inner: Future[Any]) -> None:
            error = CancelledError() if inner.cancelled() else inner.exception()
            if isinstance(error, NotHere) and otherwise is not None and not result.cancelled():
                self._workers_see_files = False
                try:
                    self._follow(otherwise(), result)
                except Exception as failed:  # the file has gone, or the scheduler
                    error = failed
                else:
                    return
            with suppress(InvalidStateError):  # nobody waits for it any more
                if error is None:
                    result.set_result(inner.result())
                else:
                    result.set_exception(self._meaning(error))

        inner.add_done_callback(pass_on)
        result.add_done_callback(lambda result: inner.cancel() if result.cancelled() else None)

    def _meaning(self, error: BaseException) -> BaseException:
        from distributed import KilledWorker

        if isinstance(error, KilledWorker):
            return KilledByPhoto(str(error))
        if isinstance(error, CancelledError) or self._client.status != "running":
            return FarmLost(self.address)
        return error

    def shutdown(self, wait: bool = True, *, cancel_futures: bool = False) -> None:  # noqa: ARG002
        """Say goodbye; the cluster goes on running. What is still out is dropped."""
        self._client.close()


# --- on the workers


def _version() -> str:
    """What has to be the same on all machines, or scores would be mixed."""
    from vision.methods import best_tissue
    from vision.score import method_of

    return method_of(best_tissue())


def _score_there(fn: Scorer, path: Path, digest: str) -> Any:
    try:
        same = digest_of(path) == digest
    except OSError:
        same = False
    if not same:
        raise NotHere(str(path))
    return _score(fn, path)


def _score_sent(fn: Scorer, name: str, data: bytes) -> Any:
    with TemporaryDirectory(prefix="evenstand-") as folder:
        path = Path(folder) / Path(name).name
        path.write_bytes(data)
        return _score(fn, path)


def _score(fn: Scorer, path: Path) -> Any:
    import cv2

    cv2.setNumThreads(1)  # two photos at once beat two threads in one photo
    return fn(path)
