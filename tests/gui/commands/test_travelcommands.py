"""Packing, unpacking and merging from the command line."""

import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from data.book import Book
from gui.command import main
from tests.gui.rackbook import a_rack_book, photograph
from tests.made.books import an_empty_book


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with a_rack_book(tmp_path / "book") as made:
        photograph(made, "A1", tmp_path / "phone")
        yield made


def test_a_book_goes_into_one_file_and_comes_out_elsewhere(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    packed, there = tmp_path / "mine.evenstand", tmp_path / "there"

    assert main(["pack", str(packed), "--book", str(book.folder)]) == 0
    assert main(["unpack", str(packed), str(there)]) == 0

    with Book.open(there) as same:
        assert [row.name for row in same.photos()] == [row.name for row in book.photos()]
    assert str(packed) in capsys.readouterr().out


@pytest.mark.parametrize("terminal", [True, False])
def test_in_a_terminal_long_commands_say_how_far_they_are_and_leave_nothing_there(
    book: Book,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
    terminal: bool,
) -> None:
    monkeypatch.setattr(sys.stderr, "isatty", lambda: terminal)
    pack, there, open_files = (str(tmp_path / name) for name in ("mine.evenstand", "there", "open"))

    for words, told in (
        (["pack", pack, "--book", str(book.folder)], "files packed: 1 of 1"),
        (["unpack", pack, there], "files unpacked: "),
        (["export", open_files, "--book", str(book.folder)], "steps of the export: "),
        (["import", open_files, "--book", there, "--same"], "files of the other book read: "),
        (["import", str(book.folder), "--book", there, "--same"], "photos and tables brought in: "),
    ):
        assert main(words) == 0
        err = capsys.readouterr().err
        assert (f"\r{told}" in err) is terminal
        assert err.endswith("\r") if terminal else err == ""


def test_what_is_no_pack_is_told(book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "letter.txt").write_text("Dear grower")

    assert main(["unpack", str(tmp_path / "letter.txt"), str(tmp_path / "there")]) == 1
    assert "no packed book" in capsys.readouterr().err
    assert not (tmp_path / "there").exists()


def test_merging_asks_about_names_before_it_adds_anything(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    a_rack_book(tmp_path / "other", per_shelf=(0, 0, 2)).close()
    words = ["import", str(tmp_path / "other"), "--book", str(book.folder)]

    assert main(words) == 1
    asked = capsys.readouterr().err
    assert main([*words, "--same", "--apart", "coir"]) == 0

    assert "both books have the crop broccoli" in asked
    assert "added: 2 trays" in capsys.readouterr().out
    assert {tray.medium for tray in book.trays()} == {"coir", "coir (other)"}


def test_a_packed_book_can_be_merged(book: Book, tmp_path: Path) -> None:
    a_rack_book(tmp_path / "other", per_shelf=(0, 0, 2)).close()
    packed = tmp_path / "theirs.evenstand"
    main(["pack", str(packed), "--book", str(tmp_path / "other")])

    assert main(["import", str(packed), "--book", str(book.folder), "--same"]) == 0
    assert len(book.trays()) == 5


def test_a_name_that_only_one_book_has_is_no_name_to_keep_apart(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    a_rack_book(tmp_path / "other").close()

    ended = main(["import", str(tmp_path / "other"), "--book", str(book.folder), "--same", "--apart", "hemp"])

    assert ended == 1
    assert "hemp" in capsys.readouterr().err
    assert len(book.trays()) == 3


def test_open_files_come_into_another_book(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    an_empty_book(tmp_path / "new").close()

    assert main(["export", str(tmp_path / "open"), "--book", str(book.folder)]) == 0
    assert main(["import", str(tmp_path / "open"), "--book", str(tmp_path / "new"), "--same"]) == 0

    with Book.open(tmp_path / "new") as new:
        assert [tray.code for tray in new.trays()] == [tray.code for tray in book.trays()]
    assert "added: 3 trays, 1 photo;" in capsys.readouterr().out


def test_an_export_into_a_full_folder_is_refused(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["export", str(book.folder), "--book", str(book.folder)]) == 1
    assert "empty folder" in capsys.readouterr().err


def test_old_notes_are_shown_first_and_kept_when_told(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = tmp_path / "2025.csv"
    notes.write_text("tray,crop,medium,sown,cut,yield,smell\nK1,pea,coir,2025-04-13,2025-04-24,310,fine\n")
    words = ["import", str(notes), "--book", str(book.folder)]

    assert main(words) == 0
    shown = capsys.readouterr().out
    before = len(book.trays(growing=False))
    assert main([*words, "--keep"]) == 0

    assert "K1" in shown
    assert "goes into the note" in shown
    assert "nothing was kept yet" in shown
    assert len(book.trays(growing=False)) == before + 1


@pytest.mark.parametrize(
    ("block", "told"), [("", "a block each day of sowing."), (",block", "blocks as written.")]
)
def test_it_is_told_what_becomes_of_media_side_by_side_without_a_trial(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str], block: str, told: str
) -> None:
    notes = tmp_path / "spring.csv"
    notes.write_text(f"crop,medium,sown{block}\npea,coir,2025-04-13,left\npea,mat,2025-04-13,left\n")

    assert main(["import", str(notes), "--book", str(book.folder)]) == 0

    assert f"they are the trial spring, {told}" in capsys.readouterr().out


def test_dates_of_old_notes_that_could_be_two_are_asked_about(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = tmp_path / "2025.csv"
    notes.write_text("crop,medium,sown\npea,coir,03/04/2025\n")
    words = ["import", str(notes), "--book", str(book.folder)]

    assert main(words) == 1
    assert "--dates dmy or --dates mdy" in capsys.readouterr().err
    assert main([*words, "--dates", "mdy", "--keep"]) == 0
    assert "sown 2025-03-04" in capsys.readouterr().out


def test_a_spreadsheet_is_not_called_a_damaged_book(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "notes.xlsx").write_bytes(b"PK")

    assert main(["import", str(tmp_path / "notes.xlsx"), "--book", str(book.folder)]) == 1
    assert "save its table as CSV" in capsys.readouterr().err


@pytest.mark.parametrize(("name", "option"), [("notes.csv", "--same"), ("other", "--keep")])
def test_an_option_that_would_do_nothing_is_wrong_use(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str, option: str
) -> None:
    (tmp_path / "notes.csv").write_text("code,crop,medium,sown\nX1,pea,coir,2026-03-20\n")
    a_rack_book(tmp_path / "other").close()
    before = len(book.trays())

    assert main(["import", str(tmp_path / name), "--book", str(book.folder), option]) == 2
    assert option in capsys.readouterr().err
    assert len(book.trays()) == before


def test_the_file_of_a_logger_is_told_the_way_by_which_it_comes_in(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "climate.csv").write_text("time,temperature C,humidity %\n2026-03-01 10:00,21.2,65\n")
    (tmp_path / "names.csv").write_text("crop,person\nradish,me\n")

    assert main(["import", str(tmp_path / "climate.csv"), "--book", str(book.folder)]) == 1
    assert "Book > Bring in a log" in capsys.readouterr().err
    assert main(["import", str(tmp_path / "names.csv"), "--book", str(book.folder)]) == 1
    assert "Book > Bring in a log" not in capsys.readouterr().err


@pytest.mark.parametrize("name", ["trays.csv", "datapackage.json"])
def test_one_file_of_an_export_is_told_to_be_named_by_its_folder(
    book: Book, tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str
) -> None:
    assert main(["export", str(tmp_path / "open"), "--book", str(book.folder)]) == 0

    assert main(["import", str(tmp_path / "open" / name), "--book", str(book.folder)]) == 1
    told = capsys.readouterr().err
    assert f"folder, {tmp_path / 'open'}" in told or f"{tmp_path / 'open'}: name that folder" in told


def test_the_database_of_a_book_is_told_to_be_named_by_its_folder(
    book: Book, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["import", str(book.folder / "book.sqlite"), "--book", str(book.folder)]) == 1
    assert f"one file of {book.folder}: name that folder" in capsys.readouterr().err
