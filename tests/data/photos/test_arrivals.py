"""A file has arrived when nobody has written to it for two seconds."""

from pathlib import Path

import pytest

from data.photos.arrivals import arrived, look_into

PHOTO = Path("/phone/a.jpg")


def test_a_file_that_stays_the_same_for_two_seconds_is_whole() -> None:
    ready, seen = arrived({}, {PHOTO: (1000, 5.0)}, at=10.0)
    assert ready == ()

    ready, seen = arrived(seen, {PHOTO: (1000, 5.0)}, at=12.0)
    assert ready == (PHOTO,)


def test_two_looks_in_quick_succession_are_not_enough() -> None:
    _, seen = arrived({}, {PHOTO: (1000, 5.0)}, at=10.0)

    assert arrived(seen, {PHOTO: (1000, 5.0)}, at=11.0)[0] == ()


def test_a_file_that_still_grows_is_waited_for() -> None:
    _, seen = arrived({}, {PHOTO: (1000, 5.0)}, at=10.0)
    ready, seen = arrived(seen, {PHOTO: (2000, 12.0)}, at=13.0)
    assert ready == ()

    ready, seen = arrived(seen, {PHOTO: (2000, 12.0)}, at=16.0)
    assert ready == (PHOTO,)


def test_each_file_is_handed_over_once() -> None:
    _, seen = arrived({}, {PHOTO: (1000, 5.0)}, at=10.0)
    _, seen = arrived(seen, {PHOTO: (1000, 5.0)}, at=13.0)

    assert arrived(seen, {PHOTO: (1000, 5.0)}, at=16.0)[0] == ()


def test_a_file_that_was_written_anew_is_handed_over_anew() -> None:
    _, seen = arrived({}, {PHOTO: (1000, 5.0)}, at=10.0)
    _, seen = arrived(seen, {PHOTO: (1000, 5.0)}, at=13.0)
    _, seen = arrived(seen, {PHOTO: (900, 14.0)}, at=16.0)

    assert arrived(seen, {PHOTO: (900, 14.0)}, at=19.0)[0] == (PHOTO,)


def test_an_empty_file_has_not_arrived() -> None:
    _, seen = arrived({}, {PHOTO: (0, 5.0)}, at=10.0)

    assert arrived(seen, {PHOTO: (0, 5.0)}, at=20.0)[0] == ()


@pytest.mark.parametrize("name", [".a.jpg", "a.jpg.part", "a.jpg.crdownload", "a.tmp", "notes.txt"])
def test_files_on_their_way_and_other_files_are_not_looked_at(tmp_path: Path, name: str) -> None:
    (tmp_path / name).write_bytes(b"x")

    assert look_into(tmp_path) == {}


def test_pictures_in_folders_below_are_seen(tmp_path: Path) -> None:
    (tmp_path / "monday").mkdir()
    (tmp_path / "monday" / "a.HEIC").write_bytes(b"xy")

    assert [(path.name, size) for path, (size, _) in look_into(tmp_path).items()] == [("a.HEIC", 2)]
