"""Choosing: the system's own dialogs for photos and folders, so that each question is asked one way.

In    whose question it is, its title, where to begin
Out   paths; none where the person left
Not   what is done with them
"""

from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QFileDialog, QWidget

__all__ = ["ask_folder", "ask_log", "ask_new_file", "ask_notes", "ask_pack", "ask_photos"]


def ask_photos(parent: QWidget, title: str, start: Path) -> list[Path]:
    """Let a person choose photos, of the kinds that are read."""
    from data.photos.originals import SUFFIXES

    kinds = QCoreApplication.translate("Intake", "Photos ({patterns})").format(
        patterns=" ".join(f"*{suffix}" for suffix in sorted(SUFFIXES))
    )
    names, _ = QFileDialog.getOpenFileNames(parent, title, str(start), kinds)
    return [Path(name) for name in names]


def ask_log(parent: QWidget, title: str, start: Path) -> Path | None:
    """Let a person choose a file of readings."""
    kinds = QCoreApplication.translate("LogAssistant", "Files of readings (*.csv *.txt *.tsv)")
    name, _ = QFileDialog.getOpenFileName(parent, title, str(start), kinds)
    return Path(name) if name else None


def ask_pack(parent: QWidget, title: str, start: Path) -> Path | None:
    """Let a person choose a packed book."""
    kinds = QCoreApplication.translate("Travel", "Packed books (*.evenstand)")
    name, _ = QFileDialog.getOpenFileName(parent, title, str(start), kinds)
    return Path(name) if name else None


def ask_notes(parent: QWidget, title: str, start: Path) -> Path | None:
    """Let a person choose a table of trays of before."""
    kinds = QCoreApplication.translate("Travel", "Tables (*.csv *.txt *.tsv)")
    name, _ = QFileDialog.getOpenFileName(parent, title, str(start), kinds)
    return Path(name) if name else None


def ask_folder(parent: QWidget, title: str, start: Path) -> Path | None:
    """Let a person choose a folder."""
    chosen = QFileDialog.getExistingDirectory(parent, title, str(start))
    return Path(chosen) if chosen else None


def ask_new_file(parent: QWidget, title: str, name: str, kind: str) -> Path | None:
    """Let a person choose where a new file goes; `kind` as "PDF (*.pdf)"."""
    chosen, _ = QFileDialog.getSaveFileName(parent, title, str(Path.home() / safe_name(name)), kind)
    return Path(chosen) if chosen else None


def safe_name(name: str) -> str:
    """A file name out of what a person called something."""
    kept = "".join(letter if letter.isalnum() or letter in " .-_()" else " " for letter in name)
    return " ".join(kept.split()).lstrip(".") or "sheets.pdf"
