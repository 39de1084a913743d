"""Originals: photos copied under their digest, and the cache of pictures made from them.

In    a photo file and its digest; the corners and the method of a score
Out   where the copy and the pictures lie
Not   rows (`book.py`), making the pictures (`intake.py`)

A copy is written under a temporary name, brought to the disk and then renamed, so that a name that stands in
the book always leads to a whole file. Nothing that a file or person says becomes part of a path but a known
suffix.
"""

import contextlib
import errno
import hashlib
import os
import threading
from collections.abc import Iterable, Iterator
from datetime import datetime
from pathlib import Path

from data.records import Pictures

__all__ = [
    "FILE",
    "SUFFIXES",
    "Altered",
    "Gone",
    "clear_leftovers",
    "copy_original",
    "digest_of",
    "file_time",
    "folders_below",
    "original_path",
    "part_of",
    "picture_paths",
    "put",
    "reading",
    "restore_original",
]

FILE = "book.sqlite"  # whoever has it is a book
SUFFIXES = frozenset({".jpg", ".jpeg", ".png", ".tif", ".tiff", ".webp", ".heic", ".heif"})
CHUNK = 1 << 20
LEFTOVER_AFTER_S = 3600.0  # no copy of one photo, nor of the database, takes an hour


class Altered(Exception):
    """The file is no longer the one that was scored."""


class Gone(Exception):
    """The file can no longer be read, a card pulled out, say: no fault of the book's."""


@contextlib.contextmanager
def reading(source: Path) -> Iterator[None]:
    """Turn the file system's errors about a file that is read into `Gone`."""
    try:
        yield
    except OSError as error:
        raise Gone(source) from error


def folders_below(inner: Iterable[str], names: Iterable[str]) -> list[str]:
    """Which folders in a folder may hold photos, by name: nothing hidden, of a book its originals alone.

    Pictures that a book makes of its photos are no photos: brought in they would make others, without end.
    """
    if FILE in names:
        return [name for name in inner if name == "photos"]
    return sorted(name for name in inner if not name.startswith("."))


def digest_of(path: Path) -> str:
    """SHA-256 of the file's bytes, hex; `OSError` where it cannot be read, or is no plain file."""
    if path.exists() and not path.is_file():  # a pipe or a device may never end
        raise OSError(errno.EINVAL, "no plain file", str(path))
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def file_time(source: Path) -> datetime:
    """When a file was changed last; now, where it says a time that no clock shows. Raises `Gone`."""
    with reading(source):
        changed = source.stat().st_mtime
    try:
        return datetime.fromtimestamp(changed)
    except (OverflowError, ValueError, OSError):
        return datetime.now()


def safe_suffix(name: str) -> str:
    """The suffix if it is one of a picture that we read, else ".bin"."""
    suffix = Path(name).suffix.lower()
    return suffix if suffix in SUFFIXES else ".bin"


def original_path(folder: Path, digest: str, suffix: str) -> Path:
    """Where the copy of a photo lies in the book's folder."""
    return folder / "photos" / digest[:2] / f"{digest}{suffix}"


def picture_paths(
    folder: Path, digest: str, method: str, corners: str | None, mend: str | None = None
) -> Pictures:
    """Where the pictures of a score lie; other corners or another method have other pictures.

    `mend` tells one drawing of a person's canopy from another: each has labels of its own.
    """
    key = hashlib.sha256(f"{method}\n{corners}".encode()).hexdigest()[:10]
    stem = folder / "cache" / digest[:2] / f"{digest[:32]}-{key}"
    drawn = "" if mend is None else "-" + hashlib.sha256(mend.encode()).hexdigest()[:8]
    return Pictures(
        top_view=stem.with_name(stem.name + "-top.jpg"),
        labels=stem.with_name(f"{stem.name}{drawn}-labels.png"),
        thumbnail=stem.with_name(stem.name + "-thumb.jpg"),
    )


def part_of(target: Path) -> Path:
    """Under which name a file is written until it is whole; others may be at the same one meanwhile."""
    return target.with_name(f".{target.name}.{os.getpid()}-{threading.get_ident()}.part")


def copy_original(source: Path, target: Path, digest: str) -> None:
    """Copy so that `target` is whole or absent.

    Raises
    ------
    Altered
        Where `source` no longer has that digest.
    Gone
        Where it cannot be read.
    OSError
        Where `target` cannot be written.
    """
    if not target.exists():  # else renamed into place once, therefore whole
        _copy_whole(source, target, digest)


def restore_original(source: Path, target: Path) -> None:
    """Copy where `target`, whose name is its digest, is missing or of another size; raises likewise."""
    with reading(source):
        size = source.stat().st_size
    if not target.exists() or target.stat().st_size != size:
        _copy_whole(source, target, target.stem)


def _copy_whole(source: Path, target: Path, digest: str) -> None:
    is_new = not target.parent.exists()
    target.parent.mkdir(parents=True, exist_ok=True)
    part = part_of(target)
    try:
        _copied(source, part, digest)
        os.replace(part, target)
    except BaseException:
        part.unlink(missing_ok=True)
        raise
    _settle(target.parent)
    if is_new:  # its name in the folder above can be lost like any other
        _settle(target.parent.parent)


def _copied(source: Path, part: Path, digest: str) -> None:
    seen = hashlib.sha256()
    with part.open("wb") as copy:
        for chunk in _chunks(source):
            seen.update(chunk)
            copy.write(chunk)
        copy.flush()
        os.fsync(copy.fileno())
    if seen.hexdigest() != digest:
        raise Altered(source)


def _chunks(source: Path) -> Iterator[bytes]:
    with reading(source):
        original = source.open("rb")
    with original:
        while True:
            with reading(source):
                chunk = original.read(CHUNK)
            if not chunk:
                return
            yield chunk


def _settle(folder: Path) -> None:
    """Bring a new name in `folder` to the disk, where the system can (Windows cannot)."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return
    try:
        os.fsync(handle)
    except OSError:
        pass
    finally:
        os.close(handle)


def put(path: Path, content: bytes) -> None:
    """Write a picture of the cache, whole or not at all; a cache that cannot be written is no misfortune."""
    part = part_of(path)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        part.write_bytes(content)
        os.replace(part, path)
    except OSError:
        with contextlib.suppress(OSError):
            part.unlink(missing_ok=True)


def clear_leftovers(folder: Path, now: float) -> None:
    """Remove half copies that a crash has left; those of the last hour may still be at work.

    `now` is the time by the clock of the disk itself, s since the epoch.
    """
    limit = now - LEFTOVER_AFTER_S
    for part in (*folder.glob("*/*/.*.part"), *folder.glob("backups/.*.part*")):
        with contextlib.suppress(FileNotFoundError):  # another window does the same
            if part.stat().st_mtime < limit:
                part.unlink()
