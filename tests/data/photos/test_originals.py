"""A copy is whole or it is not there."""

import hashlib
import os
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from data.intake import found_photos
from data.photos.arrivals import look_into
from data.photos.originals import (
    Altered,
    clear_leftovers,
    copy_original,
    digest_of,
    original_path,
    picture_paths,
    put,
)


def test_a_copy_is_the_same_file_and_leaves_nothing_beside_it(tmp_path: Path) -> None:
    source = tmp_path / "a.jpg"
    source.write_bytes(os.urandom(3_000_000))
    target = original_path(tmp_path, digest_of(source), ".jpg")

    copy_original(source, target, digest_of(source))

    assert target.read_bytes() == source.read_bytes()
    assert list(target.parent.iterdir()) == [target]


def test_a_new_folder_is_brought_to_the_disk_like_the_file_in_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    settled: list[Path] = []
    monkeypatch.setattr("data.photos.originals._settle", settled.append)
    photos = tmp_path / "photos" / "ab"
    for name in ("1.jpg", "2.jpg"):
        (tmp_path / name).write_bytes(name.encode())
        copy_original(tmp_path / name, photos / name, digest_of(tmp_path / name))

    assert settled == [photos, photos.parent, photos]


def test_two_batches_that_bring_one_photo_at_the_same_moment_do_not_disturb_each_other(
    tmp_path: Path,
) -> None:
    wait = threading.Barrier(4)

    def bring(target: Path) -> None:
        wait.wait()
        copy_original(source, target, digest)

    with ThreadPoolExecutor(4) as pool:
        for n in range(4):
            source = tmp_path / f"{n}.jpg"
            source.write_bytes(os.urandom(1_000_000))
            digest = digest_of(source)
            target = original_path(tmp_path, digest, ".jpg")
            list(pool.map(bring, [target] * 4))
            assert list(target.parent.glob(".*")) == []
            assert digest_of(target) == digest


def test_the_digest_is_sha_256(tmp_path: Path) -> None:
    """FIPS 180-4; the digest of "abc" is the example of its first appendix in the earlier FIPS 180-2."""
    (tmp_path / "abc").write_bytes(b"abc")

    assert digest_of(tmp_path / "abc") == ("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")


def test_another_file_than_expected_is_not_copied(tmp_path: Path) -> None:
    source = tmp_path / "a.jpg"
    source.write_bytes(b"second version")
    first = hashlib.sha256(b"first version").hexdigest()
    target = original_path(tmp_path, first, ".jpg")

    with pytest.raises(Altered):
        copy_original(source, target, first)

    assert list(target.parent.iterdir()) == []


def test_other_corners_and_other_methods_have_other_pictures(tmp_path: Path) -> None:
    digest = "ab" * 32
    paths = [
        picture_paths(tmp_path, digest, method, corners)
        for method in ("plain 1", "plain 2")
        for corners in ("here", "there")
    ]

    assert len({p.thumbnail for p in paths}) == 4
    assert paths[0] == picture_paths(tmp_path, digest, "plain 1", "here")


def test_a_cache_that_cannot_be_written_is_no_misfortune(tmp_path: Path) -> None:
    (tmp_path / "cache").write_text("a file where the folder should be")

    put(tmp_path / "cache" / "ab" / "x.jpg", b"x")

    assert (tmp_path / "cache").read_text() == "a file where the folder should be"


def test_half_copies_of_a_crash_are_cleared_but_not_those_at_work(tmp_path: Path) -> None:
    folder = tmp_path / "photos" / "ab"
    folder.mkdir(parents=True)
    backups = tmp_path / "backups"
    backups.mkdir()
    whole = {backups / "book-2026-03-08.sqlite"}
    halves = {folder / ".old.jpg.1.part", backups / ".book-2026-03-08.1-2.part"}
    at_work = {folder / ".new.jpg.2.part", backups / ".book-2026-03-08.3-4.part"}
    now = 1_000_000_000.0  # the disk's clock is wrong
    for path in whole | halves | at_work:
        path.write_bytes(b"half")
        os.utime(path, (now - (5 if path in at_work else 7200),) * 2)

    clear_leftovers(tmp_path, now)

    assert {*folder.iterdir(), *backups.iterdir()} == whole | at_work


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
@pytest.mark.timeout(20)
def test_a_pipe_that_nobody_writes_to_is_refused_at_once(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.jpg")

    with pytest.raises(OSError, match="no plain file"):
        digest_of(tmp_path / "pipe.jpg")


def test_pictures_that_a_book_made_are_no_photos(tmp_path: Path) -> None:
    """A folder that also held the book brought in pictures of its cache, which made others, without end."""
    for name in ("IMG_1.jpg", "mine/photos/ab/cd.jpg", "mine/cache/ab/cd-top.jpg", "mine/backups/x.jpg"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_bytes(b"x")
    (tmp_path / "mine" / "book.sqlite").write_bytes(b"")
    photos = {tmp_path / "IMG_1.jpg", tmp_path / "mine/photos/ab/cd.jpg"}

    assert set(found_photos([tmp_path])) == photos
    assert set(look_into(tmp_path)) == photos
