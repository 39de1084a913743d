"""Packing: a whole book in one file, to be carried to another machine and opened there.

In    a book; or a pack file and the folder in which its book shall stand
Out   the pack: a ZIP file with the database, the original photos, and a list of all with their digests
Not   bringing two books together (`merging.py`), numbers for other programs (`export.py`)

A pack is untrusted until it is read: names that are not exactly those of a book, contents that are longer
than they say or have another digest, and databases that are no book are refused, and nothing of them stays.
The cache is left out: it is made again from the originals.
"""

import contextlib
import glob
import hashlib
import json
import os
import re
import sqlite3
import zlib
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any
from zipfile import ZIP_DEFLATED, ZIP_STORED, BadZipFile, ZipFile, ZipInfo

from data import queries
from data.book import Book
from data.cancel import CancelToken, Progress, unwatched
from data.chapters.store import FILE
from data.errors import BookDamaged, BookExists, BookIsNewer, NotABook
from data.photos.originals import digest_of, original_path, part_of
from data.travelerrors import NoSuchPack, NotAPack, PackExists, writing_to
from data.wholefolder import LEFTOVER_AFTER_S, made_whole

__all__ = ["PACK_SUFFIX", "pack", "pack_path", "pack_size", "unpack"]


PACK_SUFFIX = ".evenstand"
LIST = "pack.json"
FORMAT = 1
PHOTO_NAME = re.compile(r"photos/(?P<place>[0-9a-f]{2})/(?P<digest>[0-9a-f]{64})\.[a-z]{3,4}")
CHUNK = 1 << 20
# what zipfile and json make of a damaged file
DAMAGED = (BadZipFile, zlib.error, NotImplementedError, RuntimeError, EOFError, ValueError, KeyError)
MOST_LIST_BYTES = 1 << 26  # a list of 300,000 photos


# --- packing


def pack(
    book: Book,
    target: Path,
    cancel: CancelToken,
    report: Progress = unwatched,
    lacks: Callable[[str], None] = lambda _name: None,
) -> Path:
    """Write the book into one file; slow, for a worker.

    The book may go on being used: what is written meanwhile is not in the pack.

    Parameters
    ----------
    lacks : told the name of each photo that is left out, since its file is missing or is another one by now.

    Raises
    ------
    Cancelled
        Within a photo even; no pack is left.
    PackExists
        If there is a file of that name; it is left as it is.
    BookError
        If the book or `target` cannot be read or written.
    """
    target = pack_path(target)
    if target.exists():
        raise PackExists(target)
    with writing_to(target.parent), _replacing(target) as part, _copied(book, part) as database:
        photos = _originals(book.folder, database)
        listed: dict[str, str] = {}
        with ZipFile(part, "w", ZIP_STORED, allowZip64=True) as pack_file:
            listed[FILE] = _add(pack_file, database, FILE, ZIP_DEFLATED, cancel)
            for done, (path, digest, called) in enumerate(photos, start=1):
                name = path.relative_to(book.folder).as_posix()
                if _is_whole(path, digest):
                    listed[name] = _add(pack_file, path, name, ZIP_STORED, cancel)
                else:
                    lacks(called)
                report(done, len(photos))
            pack_file.writestr(LIST, json.dumps({"format": FORMAT, "files": listed}, indent=1), ZIP_DEFLATED)
    return target


def pack_path(target: Path) -> Path:
    """The name that a pack has in the end: with its suffix."""
    return target if target.suffix == PACK_SUFFIX else target.with_name(target.name + PACK_SUFFIX)


def pack_size(folder: Path) -> int:
    """About how many bytes a pack of the book takes; for a worker, since it looks at each photo."""
    photos = sum(path.stat().st_size for path in (folder / "photos").rglob("*") if path.is_file())
    return photos + (folder / FILE).stat().st_size


@contextlib.contextmanager
def _replacing(target: Path) -> Iterator[Path]:
    """A place to write beside `target`, which takes its name once it is whole."""
    part = part_of(target)
    try:
        part.touch()
        limit = part.stat().st_mtime - LEFTOVER_AFTER_S  # by the clock of the disk itself
        for left in target.parent.glob(
            f"*.{glob.escape(target.name)}.*.part"
        ):  # by a program that was killed
            with contextlib.suppress(OSError):
                if left.stat().st_mtime < limit:
                    left.unlink()
        yield part
        os.replace(part, target)
    finally:
        part.unlink(missing_ok=True)


@contextlib.contextmanager
def _copied(book: Book, part: Path) -> Iterator[Path]:
    """The database as it is now, beside the pack: the system's place for such files may be small."""
    database = part.with_name(f"{part.name.removesuffix('.part')}.sqlite.part")
    try:
        book.copy_to(database)
        yield database
    finally:
        database.unlink(missing_ok=True)


def _originals(folder: Path, database: Path) -> list[tuple[Path, str, str]]:
    """The originals that the copied database names: where each should lie, its digest, what it is called."""
    with contextlib.closing(sqlite3.connect(database)) as copy:
        rows = copy.execute(queries.KEPT_ORIGINALS).fetchall()
    return [(original_path(folder, digest, suffix), digest, name) for digest, suffix, name in rows]


def _is_whole(path: Path, digest: str) -> bool:
    """Whether an original is there and still the photo that was kept: no other can be unpacked."""
    try:
        return digest_of(path) == digest
    except OSError:
        return False


def _add(pack_file: ZipFile, path: Path, name: str, how: int, cancel: CancelToken) -> str:
    """Put a file into the pack; returns its digest."""
    seen = hashlib.sha256()
    info = ZipInfo(name)
    info.compress_type = how
    with path.open("rb") as source, pack_file.open(info, "w", force_zip64=True) as copy:
        while chunk := source.read(CHUNK):
            cancel.check()
            seen.update(chunk)
            copy.write(chunk)
    return seen.hexdigest()


# --- unpacking


def unpack(source: Path, folder: Path, cancel: CancelToken, report: Progress = unwatched) -> Path:
    """Make the book of a pack stand in `folder`, which must not hold a book; slow, for a worker.

    Parameters
    ----------
    source : the pack; the name that it was packed under will do, without the suffix that every pack gets.

    Raises
    ------
    NotAPack
        If `source` is no pack, is damaged, or holds anything that a pack does not.
    BookIsNewer
        If a newer program has packed it.
    BookExists
        If there is a book in `folder`, or the log of one; it is left as it is.
    BookError
        If the database in the pack cannot be opened as a book, or the disk stops us.
    Cancelled
        Between two files; nothing is left.
    """
    if any(folder.glob(f"{FILE}*")):  # SQLite would take the log of another book for that of this one
        raise BookExists(folder)
    if not source.exists() and pack_path(source).is_file():
        source = pack_path(source)
    with made_whole(folder, last=FILE, taken=BookExists) as beside:
        _take_out(source, beside, cancel, report)
        for place in ("photos", "backups", "cache"):
            (beside / place).mkdir(exist_ok=True)
        _refuse_strange(beside / FILE, source)
        _open_once(beside, source)
    return folder


def _open_once(folder: Path, source: Path) -> None:
    """Bring the book up to date; what is wrong with it is told of the pack, which a person knows."""
    try:
        Book.open(folder).close()
    except BookIsNewer as error:
        raise BookIsNewer(source) from error
    except (NotABook, BookDamaged) as error:
        raise NotAPack(source) from error


def _refuse_strange(database: Path, source: Path) -> None:
    """A database may carry code and paths of its own; ours never does."""
    with contextlib.closing(sqlite3.connect(database)) as packed:
        try:
            strange = packed.execute(queries.STRANGE_IN_BOOK).fetchone()
        except sqlite3.DatabaseError as error:
            raise NotAPack(source) from error
    if strange is not None:
        raise NotAPack(source)


def _take_out(source: Path, folder: Path, cancel: CancelToken, report: Progress) -> None:
    if source.exists() and not source.is_file():  # reading a pipe or a device may never end
        raise NotAPack(source)
    try:
        with ZipFile(source) as pack_file:
            listed = _listed(pack_file, source)
            for done, (name, digest) in enumerate(listed.items(), start=1):
                cancel.check()
                _take_out_one(pack_file, name, digest, folder, source)
                report(done, len(listed))
    except DAMAGED as error:
        raise NotAPack(source) from error
    except OSError as error:
        if not source.exists():
            raise NoSuchPack(source) from error
        raise


def _listed(pack_file: ZipFile, source: Path) -> dict[str, str]:
    """Name -> digest of all that a pack holds; every name is one that a book has."""
    if pack_file.getinfo(LIST).file_size > MOST_LIST_BYTES:
        raise NotAPack(source)
    listed: Any = json.loads(pack_file.read(LIST))
    form = listed.get("format") if isinstance(listed, dict) else None
    if type(form) is not int or form < FORMAT:
        raise NotAPack(source)
    if form > FORMAT:
        raise BookIsNewer(source)
    files = listed.get("files")
    names = set(pack_file.namelist())  # once a photo of two heaps was packed twice
    if not isinstance(files, dict) or names != {*files, LIST} or FILE not in files:
        raise NotAPack(source)
    photos = {name: PHOTO_NAME.fullmatch(name) for name in files if name != FILE}
    if any(photo is None or photo["place"] != photo["digest"][:2] for photo in photos.values()):
        raise NotAPack(source)
    # older programs packed photos that a damaged disk had changed, too: those alone stay out
    return {name: digest for name, digest in files.items() if name == FILE or _is_of(photos[name], digest)}


def _is_of(photo: re.Match[str] | None, digest: object) -> bool:
    return photo is not None and photo["digest"] == digest


def _take_out_one(pack_file: ZipFile, name: str, digest: str, folder: Path, source: Path) -> None:
    target = folder / name
    target.parent.mkdir(parents=True, exist_ok=True)
    seen, left = hashlib.sha256(), pack_file.getinfo(name).file_size
    with pack_file.open(name) as packed, target.open("wb") as copy:
        while chunk := packed.read(CHUNK):
            left -= len(chunk)
            if left < 0:
                raise NotAPack(source)
            seen.update(chunk)
            copy.write(chunk)
    if seen.hexdigest() != digest:
        raise NotAPack(source)
