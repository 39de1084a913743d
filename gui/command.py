"""Command: what is asked for on the command line is done, and how it ends.

In    the words of the command line
Out   an exit code, as `saying.py` says what they mean; what a book or a farm refuses is told here
Not   which words there are (`commands/commandlist.py`), the work itself

Nothing heavy is imported here, so that `--help` answers at once and no command loads Qt before a window is
wanted.
"""

import argparse
import errno
import os
import sys
from collections.abc import Sequence
from importlib.util import find_spec
from io import TextIOWrapper
from pathlib import Path

from gui.commands.commandlist import COMMANDS
from gui.commands.interrupting import interrupting
from gui.commands.options import farm_option
from gui.commands.saying import REFUSED, STOPPED, WRONG_USE, refuse, say

__all__ = ["main", "parser"]

UNUSABLE = (errno.ENAMETOOLONG, errno.EACCES, errno.EPERM, errno.EROFS)  # a place that a person has named


def main(arguments: Sequence[str] | None = None) -> int:
    """Run what was asked for; wrong use ends with exit code 2 and the usage on stderr."""
    stranger = _strange_package()
    if stranger is not None:
        say(stranger)
        return WRONG_USE
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(errors="replace")  # a file's name may hold letters that this terminal has not
    asked = parser().parse_args(arguments)
    if asked.on is not None and not asked.scores:
        say("--on goes with what scores photos into a book: the window, intake, watch, rescore and demo.")
        return WRONG_USE
    with interrupting():
        return _ended(asked)


def _ended(asked: argparse.Namespace) -> int:
    """Do it; what the world does meanwhile is told in a sentence."""
    try:
        ended = _done(asked)
        if sys.stdout is not None:
            sys.stdout.flush()  # here and not when Python ends: what cannot be written is told
    except KeyboardInterrupt:
        return _stopped()
    except RuntimeError as error:
        # so Python tells it of a class that was just being made
        if not isinstance(error.__cause__, KeyboardInterrupt):
            raise
        return _stopped()
    except BrokenPipeError:  # the reader of our output has gone: nothing more to say, and nobody to say it to
        _let_go_of_output()
        return REFUSED
    except OSError as error:
        if error.filename is not None and error.errno in UNUSABLE:
            return refuse(f"{error.filename} cannot be used: {error.strerror}. Name another place.")
        if error.filename is not None or error.errno not in (errno.ENOSPC, errno.EDQUOT, errno.EIO):
            raise  # of some file, which its command should have told: our mistake
        _let_go_of_output()
        say(f"what was printed could not be written: {error.strerror}. What was stored by then stays.")
        return REFUSED
    return ended


def _done(asked: argparse.Namespace) -> int:
    """Do it; a book that cannot be used and a farm that is lost say themselves what is wrong."""
    from data.errors import BookError
    from data.photos.farmerrors import FarmLost, FarmMissing

    try:
        return int(asked.run(asked))
    except (BookError, FarmLost, FarmMissing) as error:
        return refuse(str(error))


def _stopped() -> int:
    say("stopped.")
    return STOPPED


def _let_go_of_output() -> None:
    """What waits to be printed goes nowhere, so that Python does not try again when it ends."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def parser() -> argparse.ArgumentParser:
    """The whole command line."""
    whole = argparse.ArgumentParser(
        prog="evenstand",
        description="Score trays of microgreens from photographs and compare growing media fairly.",
        epilog="Ends with 0 when it is done; 1 where something could not be done or was not used, each named "
        "on stderr; 2 where words are missing or do not go together; 130 when stopped by Ctrl+C.",
    )
    farm_option(whole)
    whole.set_defaults(run=_open_window, on=None)
    words = whole.add_subparsers(title="commands", metavar="COMMAND")
    for command in COMMANDS:
        word = words.add_parser(command.name, help=command.about, description=command.about)
        word.set_defaults(scores=False)
        command.options(word)
        word.set_defaults(run=command.run)
    return whole


def _strange_package() -> str | None:
    """A sentence where `data` or `vision` of another program would be loaded in place of ours."""
    home = Path(__file__).resolve().parent.parent
    for name in ("data", "vision"):
        spec = find_spec(name)
        if spec is None or spec.origin is None or Path(spec.origin).resolve().parent.parent != home:
            return (
                f"the folder '{name}' beside this program is hidden by another one of that name. "
                "Start from another folder, or install Evenstand into an environment of its own."
            )
    return None


def _open_window(asked: argparse.Namespace) -> int:
    from gui.app import run

    return run(farm=asked.on)
