"""Command list: the words of the command line, and who does what each says.

In    nothing
Out   `COMMANDS`
Not   what may follow a word (`options.py`), how the command line ends (`command.py`), the work itself,
      which each command brings in when asked for

Nothing heavy is imported here, so that `--help` answers at once.
"""

import argparse
import sys
from collections.abc import Callable
from dataclasses import dataclass

from gui.commands.options import (
    export_options,
    farm_option,
    import_options,
    intake_options,
    look_options,
    margin_options,
    pack_options,
    report_options,
    rescore_options,
    score_options,
    tags_options,
    training_options,
    unpack_options,
    verdict_options,
    watch_options,
)
from gui.commands.saying import WRONG_USE

__all__ = ["COMMANDS", "Command"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Command:
    """One word of the command line."""

    name: str
    about: str  # one line for the list of commands
    options: Callable[[argparse.ArgumentParser], None]  # says what may follow the word
    run: Callable[[argparse.Namespace], int]  # does it; returns the exit code


def _score(asked: argparse.Namespace) -> int:
    from gui.commands.scoring import Wish, score_all

    wish = Wish(overlay=asked.overlay, labels=asked.labels, whole=asked.whole, method=asked.method)
    return score_all(asked.photos, wish, json=asked.json)


def _intake(asked: argparse.Namespace) -> int:
    from gui.commands.book import intake_into

    return intake_into(asked.book, asked.photos, asked.on)


def _watch(asked: argparse.Namespace) -> int:
    from gui.commands.watch import watch_folder

    return watch_folder(asked.folder, asked.book, asked.look_at, asked.on)


def _look(asked: argparse.Namespace) -> int:
    from gui.commands.book import look_at

    return look_at(asked.book, as_json=asked.json)


def _verdict(asked: argparse.Namespace) -> int:
    from gui.commands.verdict import verdict_of_book, verdict_of_table

    if asked.table is None:
        if asked.margin is not None or asked.lower_is_better:
            words = "--margin and --lower-is-better go with --table; a book has its own."
            return _wrong_use("verdict", words)
        return verdict_of_book(asked.book, asked.trial, asked.trusted, as_json=asked.json)
    if asked.trial is not None:
        return _wrong_use("verdict", "--trial goes with --book; a table holds one trial.")
    if asked.trusted is None or asked.margin is None:
        return _wrong_use("verdict", "--table needs --trusted NAME and --margin M.")
    return verdict_of_table(
        asked.table,
        asked.trusted,
        asked.margin,
        lower_is_better=asked.lower_is_better,
        as_json=asked.json,
    )


def _margin(asked: argparse.Namespace) -> int:
    from gui.commands.margin import set_margin

    return set_margin(asked.book, asked.points, asked.trial)


def _wrong_use(command: str, sentence: str) -> int:
    print(f"evenstand {command}: {sentence}", file=sys.stderr)
    return WRONG_USE


def _tags(asked: argparse.Namespace) -> int:
    from gui.commands.tags import print_tags

    return print_tags(asked.book, asked.target, asked.paper, asked.trial, asked.language)


def _report(asked: argparse.Namespace) -> int:
    from gui.commands.report import report_on

    return report_on(
        asked.book,
        asked.target,
        asked.trial,
        short=asked.short,
        paper=asked.paper,
        language=asked.language,
    )


def _pack(asked: argparse.Namespace) -> int:
    from gui.commands.travel import pack_book

    return pack_book(asked.book, asked.target)


def _unpack(asked: argparse.Namespace) -> int:
    from gui.commands.travel import unpack_into

    return unpack_into(asked.source, asked.folder)


def _export(asked: argparse.Namespace) -> int:
    from gui.commands.travel import export_book

    return export_book(asked.book, asked.target, top_views=asked.top_views)


def _import(asked: argparse.Namespace) -> int:
    from gui.commands.travel import keep_notes, merge_into

    if asked.other.is_file() and asked.other.suffix.lower() in (".csv", ".txt", ".tsv"):
        if asked.same or asked.apart or asked.label:
            return _wrong_use(
                "import", "--same, --apart and --label go with a book or an export, not with notes."
            )
        return keep_notes(asked.book, asked.other, asked.dates, keep=asked.keep)
    if asked.dates is not None or asked.keep:
        return _wrong_use("import", "--dates and --keep go with old notes: a table saved as CSV.")
    return merge_into(asked.book, asked.other, asked.apart, same=asked.same, label=asked.label)


def _rescore(asked: argparse.Namespace) -> int:
    from gui.commands.again import rescore_book

    return rescore_book(asked.book, asked.on, growing=asked.growing)


def _training(asked: argparse.Namespace) -> int:
    from gui.commands.again import write_training_of

    return write_training_of(asked.book, asked.target)


def _demo(asked: argparse.Namespace) -> int:
    from gui.app import run

    return run(demo=True, farm=asked.on)


COMMANDS: tuple[Command, ...] = (
    Command(name="score", about="Score photos without a book.", options=score_options, run=_score),
    Command(name="intake", about="Bring photos into a book.", options=intake_options, run=_intake),
    Command(
        name="watch",
        about="Bring in what arrives in a folder, until stopped.",
        options=watch_options,
        run=_watch,
    ),
    Command(name="look", about="Say what needs a look today.", options=look_options, run=_look),
    Command(name="verdict", about="Say which medium is as good.", options=verdict_options, run=_verdict),
    Command(
        name="margin",
        about="Set the margin of a trial without a plan.",
        options=margin_options,
        run=_margin,
    ),
    Command(name="tags", about="Print tags and station cards.", options=tags_options, run=_tags),
    Command(name="report", about="Write the report of a trial.", options=report_options, run=_report),
    Command(name="pack", about="Pack a book into one file.", options=pack_options, run=_pack),
    Command(name="unpack", about="Unpack a book elsewhere.", options=unpack_options, run=_unpack),
    Command(name="export", about="Write a book as open files.", options=export_options, run=_export),
    Command(
        name="import",
        about="Add an export or another grower's book to a book.",
        options=import_options,
        run=_import,
    ),
    Command(
        name="rescore",
        about="Score kept photos again by the present method.",
        options=rescore_options,
        run=_rescore,
    ),
    Command(
        name="training",
        about="Write drawn canopies as pictures to learn from.",
        options=training_options,
        run=_training,
    ),
    Command(name="demo", about="Open the demonstration.", options=farm_option, run=_demo),
)
