"""Report command: the report of a trial as PDF or HTML, without a window.

In    the folder of a book, the file to write, a trial's name, which version, paper, language
Out   the file; a line on stdout; refusals on stderr; the exit code
Not   what stands in it (`data/report/reading.py`), drawing it (`report`)
"""

from pathlib import Path

from data.book import Book
from gui.commands.pages import laying_out
from gui.commands.saying import DONE, plain, refuse, refuse_file

__all__ = ["report_on"]

KINDS = (".pdf", ".html", ".htm")


def report_on(
    folder: Path, target: Path, trial: str | None, *, short: bool, paper: str, language: str | None = None
) -> int:
    """Write the report; 1 where there is no such trial or it cannot be written."""
    if target.suffix.lower() not in KINDS:
        return refuse(f"{target}: a report is written as OUT.pdf or OUT.html.")
    with Book.open(folder) as book:
        if trial is not None and trial not in book.trials():
            known = ", ".join(book.trials()) or "none"
            return refuse(f"this book has no trial called {trial!r}; trials: {known}.")
        try:
            with laying_out(language):
                return _write(book, target, trial, short=short, paper=paper)
        except OSError as error:
            return refuse_file(target, error)


def _write(book: Book, target: Path, trial: str | None, *, short: bool, paper: str) -> int:
    from data.report.reading import read_report
    from gui.paper.pages import Paper
    from gui.report import is_html, write_report

    report = read_report(book, trial, short=short)
    pages = write_report(target, report, Paper(paper))
    told = "one file for mail" if is_html(target) else f"{pages} page{'s' * (pages != 1)} on {paper}"
    print(plain(f"{target}: report on {report.title}, {told}."))
    return DONE
