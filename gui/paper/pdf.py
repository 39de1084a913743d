"""PDF: pages in millimetres as a file whose lengths are exact, with its fonts in it.

In    how each page is painted with a painter whose unit is 1 mm, from the paper's top left corner
Out   the file, there whole or not at all
Not   what stands on a page (`pages.py`), bookmarks (`pdfmarks.py`)
"""

import os
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF
from PySide6.QtGui import QPageSize, QPainter, QPdfWriter

from data.photos.originals import part_of
from gui.paper.pages import Page, Paper, paint

__all__ = ["printed", "whole_file", "write_pdf"]

FINE = 1200  # dots an inch: marks are measured by a camera
MM_PER_INCH = 25.4


def write_pdf(path: Path, pages: Sequence[Page], paper: Paper, title: str = "") -> None:
    """The pages as a PDF; raises OSError."""
    with whole_file(path) as part:
        part.write_bytes(printed((partial(_on_paper, page, paper) for page in pages), paper, title, FINE))


def _on_paper(page: Page, paper: Paper, painter: QPainter) -> None:
    paint(painter, page, paper)


@contextmanager
def whole_file(path: Path) -> Iterator[Path]:
    """A place beside `path` to write to, moved there at the end; raises OSError where it cannot be."""
    part = part_of(path)
    part.touch()  # says at once whether the folder may be written
    try:
        yield part
        os.replace(part, path)
    finally:
        part.unlink(missing_ok=True)


def printed(
    pages: Iterable[Callable[[QPainter], None]], paper: Paper, title: str, dots_an_inch: int
) -> bytes:
    """Paint page after page; what asking for the next one raises ends it.

    The file is made in memory: of a disk that fills up Qt says nothing.
    """
    made = QByteArray()
    buffer = QBuffer(made)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(title)
    writer.setCreator("Evenstand")
    writer.setResolution(dots_an_inch)
    size = QPageSize.PageSizeId.A4 if paper is Paper.A4 else QPageSize.PageSizeId.Letter
    writer.setPageSize(QPageSize(size))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    try:
        for number, page in enumerate(pages):
            if number:
                writer.newPage()
            painter.save()
            painter.scale(dots_an_inch / MM_PER_INCH, dots_an_inch / MM_PER_INCH)
            page(painter)
            painter.restore()
    finally:
        painter.end()
    return bytes(made.data())
