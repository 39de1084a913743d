"""Files that a person saves: with the ending of their kind, under a name that every system takes."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from gui.controls.choosing import ask_new_file, with_ending

KINDS = "PDF (*.pdf);;HTML (*.html)"


@pytest.mark.parametrize(
    ("typed", "wanted", "saved"),
    [
        ("sheets.pdf", "", "sheets.pdf"),
        ("sheets.PDF", "", "sheets.PDF"),
        ("sheets", "", "sheets.pdf"),
        ("sheets", "HTML (*.html)", "sheets.html"),
        ("sheets.html", "PDF (*.pdf)", "sheets.html"),  # what was typed says what is meant
        ("margin 2.5", "PDF (*.pdf)", "margin 2.5.pdf"),
    ],
)
def test_a_file_has_the_ending_of_its_kind(tmp_path: Path, typed: str, wanted: str, saved: str) -> None:
    assert with_ending(tmp_path / typed, KINDS, wanted) == tmp_path / saved


def test_a_file_that_nobody_asked_about_is_not_written_over(tmp_path: Path) -> None:
    (tmp_path / "sheets.pdf").write_bytes(b"mine")
    assert with_ending(tmp_path / "sheets", KINDS) == tmp_path / "sheets"


def test_a_long_name_is_proposed_shortened_and_keeps_its_ending(
    qtbot: QtBot, dressed: QApplication, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    proposed: list[Path] = []

    def ask(_parent: QWidget, _title: str, path: str, kind: str) -> tuple[str, str]:
        proposed.append(Path(path))
        return str(tmp_path / "mine"), kind

    monkeypatch.setattr(QFileDialog, "getSaveFileName", ask)
    over = QWidget()
    qtbot.addWidget(over)
    chosen = ask_new_file(over, "Save", f"{'a/b ' * 100}.pdf", "PDF (*.pdf)")

    assert proposed[0].suffix == ".pdf"
    assert proposed[0].name.startswith("a b a b")
    assert len(proposed[0].name) <= 84
    assert chosen == tmp_path / "mine.pdf"
