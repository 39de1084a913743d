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

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageSize, QPainter, QPdfWriter

from gui.paper.pages import Page, Paper, paint

__all__ = ["print_pages", "whole_file", "write_pdf"]

FINE = 1200  # dots an inch: marks are measured by a camera
MM_PER_INCH = 25.4


def write_pdf(path: Path, pages: Sequence[Page], paper: Paper, title: str = "") -> None:
    """The pages as a PDF; raises OSError."""
    with whole_file(path) as part:
        print_pages(part, (partial(_on_paper, page, paper) for page in pages), paper, title, FINE)


def _on_paper(page: Page, paper: Paper, painter: QPainter) -> None:
    paint(painter, page, paper)


@contextmanager
def whole_file(path: Path) -> Iterator[Path]:
    """A place beside `path` to write to, moved there at the end; raises OSError where it cannot be."""
    part = path.with_name(f".{path.name}.part")
    part.touch()  # says at once whether the folder may be written
    try:
        yield part
        os.replace(part, path)
    finally:
        part.unlink(missing_ok=True)


def print_pages(
    path: Path, pages: Iterable[Callable[[QPainter], None]], paper: Paper, title: str, dots_an_inch: int
) -> None:
    """Paint page after page; what asking for the next one raises ends it."""
    writer = QPdfWriter(str(path))
    writer.setTitle(title)
    writer.setCreator("Evenstand")
    writer.setResolution(dots_an_inch)
    size = QPageSize.PageSizeId.A4 if paper is Paper.A4 else QPageSize.PageSizeId.Letter
    writer.setPageSize(QPageSize(size))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    if not painter.isActive():
        raise OSError(f"{path.parent} cannot be written")
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
