"""Command list: the words of the command line, what may follow each, and who does it.

In    nothing
Out   `COMMANDS`
Not   how the command line ends (`command.py`), the work itself, which each command brings in when asked for

Nothing heavy is imported here, so that `--help` answers at once.
"""

import argparse
import sys
from collections.abc import Callable
from dataclasses import dataclass
from datetime import time as clock
from pathlib import Path

__all__ = ["COMMANDS", "Command", "farm_option"]

WRONG_USE = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Command:
    """One word of the command line."""

    name: str
    about: str  # one line for the list of commands
    options: Callable[[argparse.ArgumentParser], None]  # says what may follow the word
    run: Callable[[argparse.Namespace], int]  # does it; returns the exit code


def _score_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("photos", nargs="+", metavar="PHOTO", help="a photo, or a folder of photos")
    word.add_argument("--json", action="store_true", help="print one JSON list instead of a table")
    word.add_argument(
        "--overlay", type=Path, metavar="DIR", help="write NAME_overlay.jpg: what was found, drawn in"
    )
    word.add_argument("--labels", type=Path, metavar="DIR", help="write NAME_labels.png: tissue numbers 0-9")
    word.add_argument(
        "--whole", action="store_true", help="the pictures are top views already: search and warp nothing"
    )
    word.add_argument(
        "--method",
        choices=("learned", "plain"),
        default="learned",
        help="how canopy is told from medium: by the learned model, or by plain thresholds on colour",
    )


def _score(asked: argparse.Namespace) -> int:
    from gui.scoring import Wish, score_all

    wish = Wish(overlay=asked.overlay, labels=asked.labels, whole=asked.whole, method=asked.method)
    return score_all(asked.photos, wish, json=asked.json)


def _intake_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("photos", nargs="+", type=Path, metavar="PATH", help="a photo, or a folder of photos")
    _book_option(word)
    farm_option(word)


def _intake(asked: argparse.Namespace) -> int:
    from gui.bookcommands import intake_into

    return intake_into(asked.book, asked.photos, asked.on)


def _watch_options(word: argparse.ArgumentParser) -> None:
    word.add_argument(
        "folder", type=Path, metavar="FOLDER", help="the folder that the phone's photos arrive in"
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


def _clock(text: str) -> clock:
    try:
        return clock.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"a time of day is written like 07:00, not {text!r}") from None


def _watch(asked: argparse.Namespace) -> int:
    from gui.watchcommand import watch_folder

    return watch_folder(asked.folder, asked.book, asked.look_at, asked.on)


def _look_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("--json", action="store_true", help="print one JSON list instead of lines")
    _book_option(word)


def _look(asked: argparse.Namespace) -> int:
    from gui.bookcommands import look_at

    return look_at(asked.book, as_json=asked.json)


def _verdict_options(word: argparse.ArgumentParser) -> None:
    from_where = word.add_mutually_exclusive_group(required=True)
    from_where.add_argument("--book", type=Path, metavar="FOLDER", help="the folder of the book")
    from_where.add_argument(
        "--table", type=Path, metavar="FILE.csv", help="numbers kept elsewhere: columns block, medium, value"
    )
    word.add_argument(
        "--trusted", metavar="NAME", help="with --table: the medium that the others are held against"
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
    from gui.verdictcommand import margin_of

    try:
        return margin_of(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"a margin is a number of at least 0, not {text!r}") from None


def _verdict(asked: argparse.Namespace) -> int:
    from gui.verdictcommand import verdict_of_book, verdict_of_table

    if asked.table is None:
        if asked.trusted is not None or asked.margin is not None or asked.lower_is_better:
            return _wrong_use(
                "--trusted, --margin and --lower-is-better go with --table; a book has its own."
            )
        return verdict_of_book(asked.book, as_json=asked.json)
    if asked.trusted is None or asked.margin is None:
        return _wrong_use("--table needs --trusted NAME and --margin M.")
    return verdict_of_table(
        asked.table,
        asked.trusted,
        asked.margin,
        lower_is_better=asked.lower_is_better,
        as_json=asked.json,
    )


def _wrong_use(sentence: str) -> int:
    print(f"evenstand verdict: {sentence}", file=sys.stderr)
    return WRONG_USE


def _tags_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("target", type=Path, metavar="OUT.pdf", help="the file to write")
    word.add_argument("--paper", choices=("A4", "Letter"), default="A4", help="size of the paper")
    word.add_argument("--trial", metavar="NAME", help="all sheets of this trial, as its places were drawn")
    _book_option(word)


def _tags(asked: argparse.Namespace) -> int:
    from gui.tagscommand import print_tags

    return print_tags(asked.book, asked.target, asked.paper, asked.trial)


def _report_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("target", type=Path, metavar="OUT.pdf|OUT.html", help="the file to write")
    word.add_argument("--trial", metavar="NAME", help="by default the newest trial that has trays")
    word.add_argument("--short", action="store_true", help="two pages, for a customer")
    word.add_argument("--letter", action="store_true", help="on Letter paper, not on A4")
    _book_option(word)


def _report(asked: argparse.Namespace) -> int:
    from gui.reportcommand import report_on

    return report_on(asked.book, asked.target, asked.trial, short=asked.short, letter=asked.letter)


def _pack_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("target", type=Path, metavar="FILE", help="the file to write")
    _book_option(word)


def _pack(asked: argparse.Namespace) -> int:
    from gui.travelcommands import pack_book

    return pack_book(asked.book, asked.target)


def _unpack_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("source", type=Path, metavar="FILE", help="a packed book")
    word.add_argument("folder", type=Path, metavar="FOLDER", help="where the book shall stand")


def _unpack(asked: argparse.Namespace) -> int:
    from gui.travelcommands import unpack_into

    return unpack_into(asked.source, asked.folder)


def _import_options(word: argparse.ArgumentParser) -> None:
    word.add_argument(
        "other",
        type=Path,
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


def _export_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("target", type=Path, metavar="DIR", help="an empty folder, or one to be made")
    _book_option(word)
    word.add_argument("--top-views", action="store_true", help="write the top views of the trays too")


def _export(asked: argparse.Namespace) -> int:
    from gui.travelcommands import export_book

    return export_book(asked.book, asked.target, top_views=asked.top_views)


def _import(asked: argparse.Namespace) -> int:
    from gui.travelcommands import keep_notes, merge_into

    if asked.other.is_file() and asked.other.suffix.lower() in (".csv", ".txt", ".tsv"):
        return keep_notes(asked.book, asked.other, asked.dates, keep=asked.keep)
    return merge_into(asked.book, asked.other, asked.apart, same=asked.same, label=asked.label)


def _rescore_options(word: argparse.ArgumentParser) -> None:
    _book_option(word)
    word.add_argument("--growing", action="store_true", help="photos of growing trays alone")
    farm_option(word)


def _rescore(asked: argparse.Namespace) -> int:
    from gui.againcommands import rescore_book

    return rescore_book(asked.book, asked.on, growing=asked.growing)


def _training_options(word: argparse.ArgumentParser) -> None:
    word.add_argument("target", type=Path, metavar="DIR", help="an empty folder, or one to be made")
    _book_option(word)


def _training(asked: argparse.Namespace) -> int:
    from gui.againcommands import write_training_of

    return write_training_of(asked.book, asked.target)


def _book_option(word: argparse.ArgumentParser) -> None:
    word.add_argument("--book", required=True, type=Path, metavar="FOLDER", help="the folder of the book")


def farm_option(word: argparse.ArgumentParser) -> None:
    """Where photos are scored, if not here."""
    word.add_argument(
        "--on", metavar="tcp://HOST:PORT", help="score on the workers of a running Dask cluster, not here"
    )


def _no_options(_word: argparse.ArgumentParser) -> None:
    pass


def _demo(asked: argparse.Namespace) -> int:
    from gui.app import run

    return run(demo=True, farm=asked.on)


COMMANDS: tuple[Command, ...] = (
    Command(name="score", about="Score photos without a book.", options=_score_options, run=_score),
    Command(name="intake", about="Bring photos into a book.", options=_intake_options, run=_intake),
    Command(
        name="watch",
        about="Bring in what arrives in a folder, until stopped.",
        options=_watch_options,
        run=_watch,
    ),
    Command(name="look", about="Say what needs a look today.", options=_look_options, run=_look),
    Command(name="verdict", about="Say which medium is as good.", options=_verdict_options, run=_verdict),
    Command(name="tags", about="Print tags and station cards.", options=_tags_options, run=_tags),
    Command(name="report", about="Write the report of a trial.", options=_report_options, run=_report),
    Command(name="pack", about="Pack a book into one file.", options=_pack_options, run=_pack),
    Command(name="unpack", about="Unpack a book elsewhere.", options=_unpack_options, run=_unpack),
    Command(name="export", about="Write a book as open files.", options=_export_options, run=_export),
    Command(
        name="import",
        about="Add an export or another grower's book to a book.",
        options=_import_options,
        run=_import,
    ),
    Command(
        name="rescore",
        about="Score kept photos again by the present method.",
        options=_rescore_options,
        run=_rescore,
    ),
    Command(
        name="training",
        about="Write drawn canopies as pictures to learn from.",
        options=_training_options,
        run=_training,
    ),
    Command(name="demo", about="Open the demonstration.", options=_no_options, run=_demo),
)
