"""Report: the report of a trial as a PDF or as one HTML file, there whole or not at all.

In    a `Report`, the paper, where it goes
Out   the file; embedded fonts, a title, no place and no number of a camera
Not   what stands in it (`data/report/reading.py`), pages (`pages.py`), HTML (`html.py`)

Runs in any thread: no widgets here. The file is written beside its place and moved there at the end.
"""

from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

from PySide6.QtCore import QSizeF
from PySide6.QtGui import QColor, QImage, QPainter

from data.cancel import CancelToken, Progress, unwatched
from data.report.content import Report
from gui.paper.pages import Paper
from gui.paper.pdf import printed, whole_file
from gui.paper.pdfmarks import add_marks
from gui.report.html import as_html
from gui.report.pages import Sheets, lay_out

__all__ = ["is_html", "page_image", "write_report"]

DOTS_AN_INCH = 300


def is_html(path: Path) -> bool:
    """Whether a file of that name is for mail."""
    return path.suffix.lower() in (".html", ".htm")


def write_report(
    path: Path,
    report: Report,
    paper: Paper,
    *,
    cancel: CancelToken | None = None,
    progress: Progress = unwatched,
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
    with whole_file(path) as part:
        if is_html(path):
            part.write_text(as_html(report, stop.check), encoding="utf-8")
            pages = 1
        else:
            sheets = lay_out(report, paper, stop.check)
            pdf = printed(_told(sheets, stop, progress), paper, report.title, DOTS_AN_INCH)
            part.write_bytes(add_marks(pdf, sheets.marks()))
            pages = len(sheets.pages)
        stop.check()
    return pages


def _told(sheets: Sheets, stop: CancelToken, progress: Progress) -> Iterator[Callable[[QPainter], None]]:
    """How each page is painted; between two of them it can be stopped, and says how far it is."""
    for number in range(len(sheets.pages)):
        stop.check()
        yield partial(sheets.paint, number=number)
        progress(number + 1, len(sheets.pages))


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
