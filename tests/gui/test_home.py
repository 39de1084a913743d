"""Home: what is remembered, and that nonsense in the settings harms nothing."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray

from data.entry.units import UnitSystem
from gui.controls.choosing import safe_name
from gui.home import Memory, demo_folder, documents_folder, home_folder, photos_folder


def test_everything_lies_under_the_home_that_was_set(home: Path) -> None:
    assert home_folder() == home
    assert demo_folder().parent == home
    assert home.is_dir()


@pytest.mark.parametrize("folder", [photos_folder, documents_folder])
@pytest.mark.parametrize("trouble", [PermissionError(13, "not yours"), OSError(112, "host is down")])
def test_a_folder_of_the_system_that_cannot_be_looked_at_stops_no_place_of_the_window(
    folder: Callable[[], Path], trouble: OSError, monkeypatch: pytest.MonkeyPatch
) -> None:
    def look(_path: Path) -> bool:
        raise trouble

    monkeypatch.setattr(Path, "is_dir", look)

    assert folder() == Path.home()


def test_the_last_book_is_remembered_from_one_start_to_the_next(tmp_path: Path) -> None:
    first = Memory(tmp_path)
    for name in ("a", "b, c;é", "a"):
        first.remember_book(tmp_path / name)
    first.keep()

    second = Memory(tmp_path)

    assert second.last_book == tmp_path / "a"
    assert second.recent == (tmp_path / "a", tmp_path / "b, c;é")


def test_only_the_latest_books_are_offered(memory: Memory, tmp_path: Path) -> None:
    for n in range(20):
        memory.remember_book(tmp_path / str(n))
    assert len(memory.recent) == 6
    assert memory.last_book == tmp_path / "19"


def test_a_book_that_is_gone_is_forgotten(memory: Memory, tmp_path: Path) -> None:
    memory.remember_book(tmp_path / "a")
    memory.forget_book(tmp_path / "a")
    assert memory.last_book is None


def test_scheme_text_and_window_are_kept(tmp_path: Path) -> None:
    first = Memory(tmp_path)
    first.scheme, first.text_percent, first.geometry = "dark", 150, QByteArray(b"where it stood")
    first.keep()

    second = Memory(tmp_path)

    assert (second.scheme, second.text_percent, bytes(second.geometry.data())) == (
        "dark",
        150,
        b"where it stood",
    )


def test_nonsense_in_the_settings_reads_as_never_set(tmp_path: Path) -> None:
    (tmp_path / "settings.ini").write_text(
        "[window]\nscheme=mauve\ntext=9000\ngeometry=3\n", encoding="utf-8"
    )
    memory = Memory(tmp_path)
    assert (memory.scheme, memory.text_percent, memory.geometry.isEmpty()) == ("system", 100, True)


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("My trays", "My trays"),
        ("../../etc", "etc"),
        ("a/b\\c:d", "a b c d"),
        (" .. ", ""),
        ("Kresse ü", "Kresse ü"),
    ],
)
def test_a_name_stays_a_name_and_becomes_no_path(words: str, name: str) -> None:
    assert safe_name(words) == name


def test_the_units_in_which_numbers_are_typed_are_kept(tmp_path: Path) -> None:
    assert Memory(tmp_path).units is UnitSystem.METRIC
    first = Memory(tmp_path)
    first.units = UnitSystem.US
    first.keep()
    assert Memory(tmp_path).units is UnitSystem.US
