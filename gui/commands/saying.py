"""Saying: how commands speak in a terminal, and with which code they end.

In    sentences
Out   lines on stderr that cannot steer the terminal; exit codes
Not   what is printed as a result (each command)
"""

import sys
from pathlib import Path

__all__ = ["DONE", "REFUSED", "STOPPED", "WRONG_USE", "plain", "refuse", "refuse_file", "say"]

DONE = 0  # also where the answer is that there is none yet: a trial without numbers, a morning without looks
REFUSED = 1  # something could not be done or was not used, each named on stderr; the rest is done
WRONG_USE = 2  # words are missing, or do not go together; nothing was begun
STOPPED = 130  # by Ctrl+C; what was stored by then stays


def say(sentence: str) -> None:
    """A sentence on stderr, under the program's name."""
    print(f"evenstand: {plain(sentence)}", file=sys.stderr, flush=True)


def refuse(sentence: str) -> int:
    """Say why something was not done; the code with which a command then ends."""
    say(sentence)
    return REFUSED


def refuse_file(target: Path, error: OSError) -> int:
    """Say why a file was not written."""
    why = error.strerror or str(error)
    return refuse(f"{target} was not written: {why}. Choose another folder or file name.")


def plain(text: str) -> str:
    """Text that cannot steer a terminal: control characters and broken letters become question marks."""
    return "".join(letter if letter.isprintable() else "?" for letter in text)
