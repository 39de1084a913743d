"""Tags command: tags and station cards of a book as a PDF, without a window.

In    the folder of a book, the file to write, the paper, the language; the name of a trial for all its sheets
Out   the PDF; a line on stdout; refusals on stderr; the exit code
Not   what stands on the pages (`sheets.py`)
"""

from pathlib import Path

from data.book import Book
from gui.commands.pages import laying_out
from gui.commands.saying import DONE, plain, refuse, refuse_file

__all__ = ["print_tags"]


def print_tags(folder: Path, target: Path, paper: str, trial: str | None, language: str | None = None) -> int:
    """Write the PDF; 1 where there is nothing to print or it cannot be written.

    Nothing but a PDF is written over: notes named by mistake would be lost.
    """
    if target.suffix.lower() != ".pdf":
        return refuse(f"{target}: tags are written as OUT.pdf.")
    with Book.open(folder) as book:
        try:
            with laying_out(language):
                return _print(book, target, paper, trial)
        except OSError as error:
            return refuse_file(target, error)


def _print(book: Book, target: Path, paper: str, trial: str | None) -> int:
    from gui.paper.pages import Paper
    from gui.paper.pdf import write_pdf
    from gui.sheets import SheetKind, pages_for, printed_of_book, printed_of_trial

    if trial is None:
        printed = printed_of_book(book)
        kinds = {SheetKind.TAGS, SheetKind.STATION}
    else:
        draws = book.draws(trial)
        if not draws:
            known = ", ".join(name for name in book.trials() if book.draws(name)) or "none"
            return refuse(
                f"no places are drawn for a trial called {trial!r}; trials with places: {known}. "
                "Draw them in the window, at Plan."
            )
        printed = printed_of_trial(book, book.plan(draws[-1].plan_id).plan, draws[-1].draw.places)
        kinds = set(SheetKind)
    write_pdf(target, pages_for(printed, kinds, Paper(paper)), Paper(paper), printed.title)
    count = len(printed.tags)
    told = "1 tag" if count == 1 else f"{count} tags"
    print(plain(f"{target}: {told} and station cards on {paper}. Print at 100 % and measure the bar."))
    return DONE
