"""Report: the report of a trial as a PDF or as one HTML file, there whole or not at all.

In    a `Report`, the paper, where it goes
Out   the file; embedded fonts, a title, no place and no number of a camera
Not   what stands in it (`data/report/reading.py`), pages (`pages.py`), HTML (`html.py`)

Runs in any thread: no widgets here. The file is written beside its place and moved there at the end.
"""

import os
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QMarginsF, QSizeF
from PySide6.QtGui import QColor, QImage, QPageSize, QPainter, QPdfWriter

from data.cancel import CancelToken
from data.report.content import Report
from gui.paper.pages import Paper
from gui.paper.pdfmarks import add_marks
from gui.report.html import as_html
from gui.report.pages import Sheets, lay_out

__all__ = ["is_html", "page_image", "write_report"]

DOTS_PER_INCH = 300
MM_PER_INCH = 25.4
Progress = Callable[[int, int], None]


def is_html(path: Path) -> bool:
    """Whether a file of that name is for mail."""
    return path.suffix.lower() in (".html", ".htm")


def write_report(
    path: Path,
    report: Report,
    paper: Paper,
    *,
    cancel: CancelToken | None = None,
    progress: Progress = lambda _done, _all: None,
) -> int:
    """Write the file; returns its pages, 1 for HTML.

    Raises
    ------
    OSError
        If it cannot be written.
    Cancelled
        If it was asked to stop; then there is no file, and one that stood there stays as it was.
    """
    stop = cancel or CancelToken()
    part = path.with_name(f".{path.name}.part")
    part.touch()  # says at once whether the folder may be written
    try:
        if is_html(path):
            part.write_text(as_html(report, stop.check), encoding="utf-8")
            pages = 1
        else:
            sheets = lay_out(report, paper, stop.check)
            _write_pdf(part, sheets, stop, progress)
            part.write_bytes(add_marks(part.read_bytes(), sheets.marks()))
            pages = len(sheets.pages)
        stop.check()
        os.replace(part, path)
    finally:
        part.unlink(missing_ok=True)
    return pages


def _write_pdf(path: Path, sheets: Sheets, stop: CancelToken, progress: Progress) -> None:
    writer = QPdfWriter(str(path))
    writer.setTitle(sheets.report.title)
    writer.setCreator("Evenstand")
    writer.setResolution(DOTS_PER_INCH)
    size = QPageSize.PageSizeId.A4 if sheets.paper is Paper.A4 else QPageSize.PageSizeId.Letter
    writer.setPageSize(QPageSize(size))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    if not painter.isActive():
        raise OSError(f"{path.parent} cannot be written")
    try:
        for number in range(len(sheets.pages)):
            stop.check()
            if number:
                writer.newPage()
            painter.save()
            painter.scale(DOTS_PER_INCH / MM_PER_INCH, DOTS_PER_INCH / MM_PER_INCH)
            sheets.paint(painter, number)
            painter.restore()
            progress(number + 1, len(sheets.pages))
    finally:
        painter.end()


def page_image(sheets: Sheets, number: int, width: int) -> QImage:
    """A page as a picture, for looking at it before."""
    wide, high = sheets.paper.size_mm
    image = QImage(QSizeF(width, width * high / wide).toSize(), QImage.Format.Format_RGB32)
    image.fill(QColor("#FFFFFF"))
    painter = QPainter(image)
    painter.scale(width / wide, width / wide)
    sheets.paint(painter, number)
    painter.end()
    return image
