"""Gone: a reason that stood on the look list yesterday and does not today -> why, in words.

In    the entry of the history; the `Morning`
Out   a `Sentence`
Not   keeping it (`chapters/lookbook.py`)
"""

import sqlite3
from datetime import timedelta

from data.look import LookKind
from data.numbers import Said, TrayId
from data.sentence import Sentence
from data.watch import Morning

__all__ = ["gone_why"]

IN_LINE: dict[LookKind, Sentence] = {
    LookKind.SUSPECT: Sentence("The newest photo shows no open patch there any more."),
    LookKind.VANISHED: Sentence("The canopy is back to what it was."),
    LookKind.DRY: Sentence("It was watered, or the newest weight is above what it wants."),
    LookKind.STACK: Sentence("The air is drier, or the stack was opened."),
    LookKind.LATE: Sentence("It has come up, in line with the others."),
    LookKind.LAGGING: Sentence("It is in line with its block mates again."),
    LookKind.EDGE: Sentence("The edge has closed, or is in line with that of its block mates."),
    LookKind.PATCHY: Sentence("The bare parts have come up."),
    LookKind.GAPS: Sentence("The gaps have closed, or are in line with those of its block mates."),
    LookKind.UNEVEN: Sentence("It is as even as its block mates."),
    LookKind.PALING: Sentence("The colour is back."),
    LookKind.UNMATCHED: Sentence("The photo has its tray, or another one was taken."),
    LookKind.NO_PHOTO: Sentence("It was photographed, or the day is over."),
    LookKind.UNUSABLE: Sentence("Another photo was used, or the day is over."),
    LookKind.DOUBTED: Sentence("Another photo was taken, or the day is over."),
    LookKind.READY: Sentence("It still gains, or the days of cutting were changed."),
    LookKind.MOLD: Sentence("The word mold was taken back."),
}
FAINT = Sentence("What the newest photo shows there is faint and has not grown; the tray sheet shows it.")
HIDDEN = Sentence(
    "The newest photo does not show the patch, nor that it is gone: look under the leaves there."
)
OF_PHOTOS = frozenset(
    {
        LookKind.VANISHED, LookKind.LATE, LookKind.LAGGING, LookKind.EDGE, LookKind.PATCHY, LookKind.GAPS,
        LookKind.UNEVEN, LookKind.PALING, LookKind.READY,
    }
)  # fmt: skip


def gone_why(entry: sqlite3.Row, morning: Morning) -> Sentence:
    """Why an entry of the history (a row with tray, what, ended, done_at) holds no more."""
    what, tray = LookKind(entry["what"]), entry["tray"]
    if entry["ended"] == "cut":
        return Sentence("The tray was cut.")
    if entry["ended"] == "thrown away":
        return Sentence("The tray was thrown away.")
    if entry["done_at"] is not None:
        return Sentence("The tray was marked as done.")
    said = {s.said for s in morning.suspects if s.tray_id == tray}
    if what is LookKind.SUSPECT and Said.MOLD in said:
        return Sentence("You said mold.")
    if what is LookKind.SUSPECT and Said.NOT_MOLD in said:
        return Sentence("You said not mold.")
    if what is LookKind.SUSPECT:
        return _of_suspects(tray, morning)
    yesterday = morning.today - timedelta(days=1)
    if what in OF_PHOTOS and not any(
        one.tray_id == tray and one.sure and one.taken_at.date() >= yesterday for one in morning.numbers
    ):
        return Sentence("No photo of today or yesterday says how it stands now.")
    return IN_LINE[what]


def _of_suspects(tray: TrayId, morning: Morning) -> Sentence:
    """What leaves have grown over stays open in the book, and may still be there."""
    photos = [one.photo_id for one in morning.numbers if one.tray_id == tray and one.sure]
    mine = [s for s in morning.suspects if s.tray_id == tray]
    last = [s for s in mine if s.photo_id == mine[-1].photo_id and not s.closed]
    if not last:
        return IN_LINE[LookKind.SUSPECT]
    return FAINT if photos and last[0].photo_id == photos[-1] else HIDDEN
