"""Intake and look on the command line, on a book of the demonstration."""

import json
import os
import shutil
from pathlib import Path

import pytest

from data.book import Book
from data.demo import demo_photos
from data.records import PhotoState
from gui.command import main
from tests.made.books import a_demonstration, an_empty_book
from vision.photo import read_photo


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    book = a_demonstration(tmp_path / "trial")
    book.close()
    return tmp_path / "trial"


def photos_of(tray: str, days: int) -> list[str]:
    return [str(path) for path in demo_photos() if path.stem.startswith(tray)][:days]


def test_photos_are_matched_by_their_tag_and_told_line_by_line(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code = main(["intake", *photos_of("A1", 2), "--book", str(folder)])

    lines = capsys.readouterr().out.splitlines()
    assert code == 0
    assert len(lines) == 2
    assert all("A1, matched by its tag, coverage" in line for line in lines)


def test_a_photo_brought_in_twice_is_known(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["intake", *photos_of("A1", 1), "--book", str(folder)])
    capsys.readouterr()

    code = main(["intake", *photos_of("A1", 1), "--book", str(folder)])

    assert code == 0
    assert "already in the book" in capsys.readouterr().out


def test_a_photo_that_waits_for_its_tray_is_kept_and_not_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    an_empty_book(tmp_path / "empty").close()

    code = main(["intake", *photos_of("A1", 1), "--book", str(tmp_path / "empty")])

    told = capsys.readouterr()
    assert (code, told.err) == (0, "")
    assert "choose the tray" in told.out
    with Book.open(tmp_path / "empty") as book:
        assert [one.state for one in book.photos()] == [PhotoState.NEEDS_TRAY]


def test_a_folder_without_pictures_is_named(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "empty").mkdir()

    code = main(["intake", str(tmp_path / "empty"), "--book", str(folder)])

    assert code == 1
    assert f"{tmp_path / 'empty'} not used: there is no picture in this folder" in capsys.readouterr().err


def test_a_file_that_is_no_picture_is_named_and_the_rest_goes_on(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    letter = tmp_path / "letter.jpg"
    letter.write_text("no picture")

    code = main(["intake", str(letter), *photos_of("A1", 1), "--book", str(folder)])

    told = capsys.readouterr()
    assert code == 1
    assert "letter.jpg" in told.err
    assert "A1, matched by its tag" in told.out


def test_the_look_list_names_a_tray_without_a_photo_for_days(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["intake", *photos_of("A1", 1), *photos_of("B1", 3)[2:], "--book", str(folder)])
    capsys.readouterr()

    code = main(["look", "--book", str(folder), "--json"])

    looks = {(look["tray"], look["what"]) for look in json.loads(capsys.readouterr().out)}
    assert code == 0
    assert ("B1", "no photo today") in looks  # its last one is two days old
    assert ("A1", "no photo today") not in looks


def test_what_the_look_list_told_in_a_terminal_can_be_read_afterwards(folder: Path) -> None:
    main(["intake", *photos_of("A1", 1), *photos_of("B1", 3)[2:], "--book", str(folder)])

    main(["look", "--book", str(folder)])

    with Book.open(folder) as book:
        assert ("B1", "no photo today") in {(one.code, str(one.what)) for one in book.look_history()}


def test_a_camera_of_another_time_zone_is_noticed_by_its_files(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    walk = tmp_path / "walk"
    walk.mkdir()
    for place, tray in enumerate(("A1", "A2", "A3")):
        (photo,) = photos_of(tray, 1)
        copy = Path(shutil.copy(photo, walk))
        taken = read_photo(copy).taken_at
        assert taken is not None
        file_time = taken.timestamp() + 3 * 3600 + place
        os.utime(copy, (file_time, file_time))

    assert main(["intake", str(walk), "--book", str(folder)]) == 0

    told = capsys.readouterr().out.splitlines()[-1]
    assert told.startswith(
        "Look at the clock: 3 photos by rendered: the camera's clock must go +3 h to agree with the files"
    )


def test_a_folder_that_is_no_book_is_said_and_left_alone(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code = main(["look", "--book", str(tmp_path)])

    assert code == 1
    assert "evenstand: " in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []
