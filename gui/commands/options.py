"""Command options: what may follow each word of the command line.

In    the parser of a word
Out   the same, which now knows what may follow
Not   the words themselves and who does what they say (`commandlist.py`)
"""

import argparse
from datetime import time as clock
from pathlib import Path

from gui.language.names import LANGUAGES

__all__ = [
    "export_options",
    "farm_option",
    "import_options",
    "intake_options",
    "look_options",
    "margin_options",
    "pack_options",
    "report_options",
    "rescore_options",
    "score_options",
    "tags_options",
    "training_options",
    "unpack_options",
    "verdict_options",
    "watch_options",
]


def score_options(word: argparse.ArgumentParser) -> None:
    """Photos, and what is wanted of them."""
    word.add_argument("photos", nargs="+", metavar="PHOTO", help="a photo, or a folder of photos")
    word.add_argument("--json", action="store_true", help="print one JSON list instead of a table")
    word.add_argument(
        "--overlay", type=_path, metavar="DIR", help="write NAME_overlay.jpg: what was found, drawn in"
    )
    word.add_argument("--labels", type=_path, metavar="DIR", help="write NAME_labels.png: tissue numbers 0-9")
    word.add_argument(
        "--whole", action="store_true", help="the pictures are top views already: search and warp nothing"
    )
    word.add_argument(
        "--method",
        choices=("learned", "plain"),
        default="learned",
        help="how canopy is told from medium: by the learned model, or by plain thresholds on colour",
    )


def intake_options(word: argparse.ArgumentParser) -> None:
    """Photos and folders for a book."""
    word.add_argument("photos", nargs="+", type=_path, metavar="PATH", help="a photo, or a folder of photos")
    _book_option(word)
    farm_option(word)


def watch_options(word: argparse.ArgumentParser) -> None:
    """A folder to be watched, and when the look list is told."""
    word.add_argument(
        "folder", type=_path, metavar="FOLDER", help="the folder that the phone's photos arrive in"
    )
    _book_option(word)
    farm_option(word)
    word.add_argument(
        "--look-at",
        type=_clock,
        default=clock(7),
        metavar="HH:MM",
        help="when to print the look list each day (by default 07:00)",
    )


def _path(text: str) -> Path:
    """A path; an empty one, of a variable that a script has not set, would be the folder one stands in."""
    if not text.strip():
        raise argparse.ArgumentTypeError("a file or folder must be named; this name is empty")
    return Path(text)


def _clock(text: str) -> clock:
    try:
        return clock.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"a time of day is written like 07:00, not {text!r}") from None


def look_options(word: argparse.ArgumentParser) -> None:
    """Of which book."""
    word.add_argument("--json", action="store_true", help="print one JSON list instead of lines")
    _book_option(word)


def verdict_options(word: argparse.ArgumentParser) -> None:
    """A book, or a table of numbers kept elsewhere."""
    from_where = word.add_mutually_exclusive_group(required=True)
    from_where.add_argument("--book", type=_path, metavar="FOLDER", help="the folder of the book")
    from_where.add_argument(
        "--table", type=_path, metavar="FILE.csv", help="numbers kept elsewhere: columns block, medium, value"
    )
    word.add_argument("--trial", metavar="NAME", help="with --book: this trial alone; by default all")
    word.add_argument(
        "--trusted",
        metavar="NAME",
        help="the medium that the others are held against: with --table, or where a book's trial has no plan",
    )
    word.add_argument(
        "--margin",
        type=_margin,
        metavar="M",
        help="with --table: how much less still is as good, in the value's unit",
    )
    word.add_argument(
        "--lower-is-better", action="store_true", help="with --table: small values are the good ones"
    )
    word.add_argument("--json", action="store_true", help="print one JSON list instead of a table")


def _margin(text: str) -> float:
    from gui.commands.verdict import margin_of

    try:
        return margin_of(text)
    except ValueError:
        raise argparse.ArgumentTypeError(
            f"a margin is a number of at least 0, written like 1500 or 2.5, not {text!r}"
        ) from None


def margin_options(word: argparse.ArgumentParser) -> None:
    """How much, and of which trial."""
    word.add_argument(
        "points", type=_margin, metavar="POINTS", help="how much lower a canopy score still is as good"
    )
    _book_option(word)
    word.add_argument(
        "--trial", metavar="NAME", help="a trial without a plan; may be left out if it is alone"
    )


def tags_options(word: argparse.ArgumentParser) -> None:
    """A file, the paper, a trial."""
    word.add_argument("target", type=_path, metavar="OUT.pdf", help="the file to write")
    _paper_option(word)
    word.add_argument("--trial", metavar="NAME", help="all sheets of this trial, as its places were drawn")
    _book_option(word)


def _paper_option(word: argparse.ArgumentParser) -> None:
    word.add_argument("--paper", choices=("A4", "Letter"), default="A4", help="size of the paper")
    word.add_argument(
        "--language", choices=[name for name, _ in LANGUAGES], help="of the pages; by default as the window"
    )


def report_options(word: argparse.ArgumentParser) -> None:
    """A file, a trial, how long."""
    word.add_argument("target", type=_path, metavar="OUT.pdf|OUT.html", help="the file to write")
    word.add_argument("--trial", metavar="NAME", help="by default the newest trial that has trays")
    word.add_argument("--short", action="store_true", help="two pages, for a customer")
    _paper_option(word)
    _book_option(word)


def pack_options(word: argparse.ArgumentParser) -> None:
    """The file of the pack."""
    word.add_argument(
        "target", type=_path, metavar="FILE", help="the file to write; its name gets .evenstand at its end"
    )
    _book_option(word)


def unpack_options(word: argparse.ArgumentParser) -> None:
    """The pack, and where its book shall stand."""
    word.add_argument("source", type=_path, metavar="FILE", help="a packed book")
    word.add_argument("folder", type=_path, metavar="FOLDER", help="where the book shall stand")


def import_options(word: argparse.ArgumentParser) -> None:
    """What comes in, and what names that both have mean."""
    word.add_argument(
        "other",
        type=_path,
        metavar="PATH",
        help="an export, a packed book, a book's folder, or old notes as CSV",
    )
    _book_option(word)
    word.add_argument("--same", action="store_true", help="names that both have mean the same")
    word.add_argument(
        "--apart", action="append", default=[], metavar="NAME", help="but this one does not; may be repeated"
    )
    word.add_argument("--label", default="", metavar="TEXT", help="marks the other's names that stay apart")
    word.add_argument(
        "--dates", choices=("ymd", "dmy", "mdy"), help="of old notes: the order of day, month and year"
    )
    word.add_argument("--keep", action="store_true", help="of old notes: keep what was shown")


def export_options(word: argparse.ArgumentParser) -> None:
    """Where the files go."""
    word.add_argument("target", type=_path, metavar="DIR", help="an empty folder, or one to be made")
    _book_option(word)
    word.add_argument("--top-views", action="store_true", help="write the top views of the trays too")


def rescore_options(word: argparse.ArgumentParser) -> None:
    """Which photos."""
    _book_option(word)
    word.add_argument("--growing", action="store_true", help="photos of growing trays alone")
    farm_option(word)


def training_options(word: argparse.ArgumentParser) -> None:
    """Where the pictures go."""
    word.add_argument("target", type=_path, metavar="DIR", help="an empty folder, or one to be made")
    _book_option(word)


def _book_option(word: argparse.ArgumentParser) -> None:
    word.add_argument("--book", required=True, type=_path, metavar="FOLDER", help="the folder of the book")


def farm_option(word: argparse.ArgumentParser) -> None:
    """Where photos are scored, if not here; it may stand before the word, too."""
    word.add_argument(
        "--on",
        metavar="tcp://HOST:PORT",
        default=argparse.SUPPRESS,  # else what stands before the word would be forgotten
        help="score on the workers of a running Dask cluster, not here",
    )
    word.set_defaults(scores=True)
