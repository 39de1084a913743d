"""Choosing: the system's own dialogs for photos and folders, so that each question is asked one way.

In    whose question it is, its title, where to begin
Out   paths; none where the person left; names that can be those of files
Not   what is done with them
"""

import re
from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QFileDialog, QWidget

__all__ = [
    "ask_folder",
    "ask_log",
    "ask_new_file",
    "ask_notes",
    "ask_pack",
    "ask_photos",
    "safe_name",
    "with_ending",
]

NOT_IN_NAMES = '<>:"/\\|?*'
LONGEST_NAME = 80
ENDING = re.compile(r"\*(\.\w+)")


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
    """Let a person choose where a new file goes; `kind` as "PDF (*.pdf)", several parted by ";;"."""
    stem, dot, ending = name.rpartition(".")
    proposed = (safe_name(stem) or safe_name(title)) + dot + ending
    chosen, wanted = QFileDialog.getSaveFileName(parent, title, str(Path.home() / proposed), kind)
    return with_ending(Path(chosen), kind, wanted) if chosen else None


def with_ending(path: Path, kind: str, wanted: str = "") -> Path:
    """The path with an ending of `kind`, that of `wanted` first; no file that is there is taken."""
    endings = ENDING.findall(wanted) or ENDING.findall(kind)
    if path.suffix.lower() in ENDING.findall(kind) or not endings:
        return path
    whole = path.with_name(path.name + endings[0])
    return path if whole.exists() else whole  # nobody was asked whether that one may go


def safe_name(words: str) -> str:
    """A person's words as the name of a file or folder on any system; empty if nothing is left of them."""
    kept = "".join(c if c.isprintable() and c not in NOT_IN_NAMES else " " for c in words)
    return " ".join(kept.split()).strip(". ")[:LONGEST_NAME]
