"""Travel view: what the window says of packs, exports, and books that come from elsewhere; no Qt.

In    a book's folder and day; what became of packing, exporting, unpacking, bringing in
Out   proposed names; sentences
Not   doing it (`data/travel/packing.py`, `data/export.py`, `data/travel/merging.py`), dialogs (`desk.py`)
"""

from collections.abc import Mapping
from datetime import date
from pathlib import Path

from data.travel.guestlook import GuestLook
from data.travel.merging import Merged
from data.travel.samenames import Answer, SameName
from gui.language.spoken import filled
from gui.language.words import noop, translate

__all__ = [
    "KINDS", "added_words", "count_words", "free_name", "left_words", "name_words", "packed_words",
    "size_words", "what_words",
]  # fmt: skip

MEGA, GIGA = 1e6, 1e9
MOST_NAMES = 8  # that are listed; the others are counted

# what a name that both books have is the name of
KINDS: Mapping[str, str] = {
    "crop": noop("Travel", "Crop"),
    "medium": noop("Travel", "Medium"),
    "tray_type": noop("Travel", "Tray type"),
    "trial": noop("Travel", "Trial"),
    "shelf": noop("Travel", "Shelf"),
}


def free_name(folder: Path, name: str, day: date, suffix: str = "") -> str:
    """A name with the day under which nothing stands in `folder`; the suffix is left to whoever adds it."""
    wanted, n = f"{name} {day.isoformat()}", 2
    while (folder / f"{wanted}{suffix}").exists():
        wanted, n = f"{name} {day.isoformat()} ({n})", n + 1
    return wanted


def size_words(size: int) -> str:
    """A size of a file, in MB or GB."""
    if size >= GIGA:
        return filled("{size:.1f} GB", size=size / GIGA)
    return f"{max(1, round(size / MEGA))} MB"


def packed_words(path: Path, size: int, lacking: tuple[str, ...] = ()) -> str:
    """Where a pack lies, what to do with it, and which photos are not in it."""
    words = translate("Travel", "Packed: {file}, {size}. Open it elsewhere with Open a packed book.")
    said = words.format(file=path, size=size_words(size))
    if not lacking:
        return said
    words = translate(
        "Travel",
        "Of these only the numbers are in it, for the photo itself is missing or damaged here: {photos}.",
    )
    return f"{said} {words.format(photos=_listed(lacking))}"


# --- a guest


def what_words(look: GuestLook) -> str:
    """What there is to bring in."""
    words = translate("Travel", "What is in it: trays {trays}, photos {photos}, readings {readings}.")
    return words.format(trays=len(look.trays), photos=look.photos, readings=look.readings)


def name_words(one: SameName, look: GuestLook) -> str:
    """A name that both have, and how many trays it has in each."""
    words = translate("Travel", "{kind} {name} (trays here {here}, there {there})")
    kind = translate("Travel", KINDS[one.kind])
    return words.format(kind=kind, name=one.name, here=look.here[one], there=look.there[one])


def left_words(look: GuestLook, answers: Mapping[SameName, Answer]) -> str:
    """How many names still wait for an answer; empty where none does."""
    left = sum(one not in answers for one in look.asked)
    if left == 1:
        return translate("Travel", "One name still waits for an answer.")
    return translate("Travel", "{n} names still wait for an answer.").format(n=left) if left else ""


def count_words(look: GuestLook, answers: Mapping[SameName, Answer]) -> str:
    """What bringing in would do, with these answers."""
    known = len(look.known(answers))
    if not look.trays:
        return translate("Travel", "There is no tray in it.")
    words = translate("Travel", "Trays that will be added: {new}. Known already: {known}.")
    return words.format(new=len(look.trays) - known, known=known)


def added_words(merged: Merged) -> str:
    """What became of bringing in, and what has to be done by hand."""
    if not any(merged.added.values()):
        return translate("Travel", "All of it was here already; nothing was added.")
    said = [
        translate("Travel", "Added: trays {trays}, photos {photos}, readings {readings}.").format(
            trays=merged.added.get("tray", 0),
            photos=merged.added.get("photo", 0),
            readings=merged.added.get("reading", 0),
        )
    ]
    if merged.without_tag:
        words = translate(
            "Travel",
            "Without a tag, since a growing tray here carries it: {trays}. Give them other tags on their "
            "tray sheets.",
        )
        said.append(words.format(trays=_listed(merged.without_tag)))
    if merged.without_original:
        words = translate("Travel", "Only numbers came, for the photo itself is missing there: {photos}.")
        said.append(words.format(photos=_listed(merged.without_original)))
    words = translate("Travel", "Undo takes it back; the book as it was lies in {file}.")
    return " ".join([*said, words.format(file=merged.copy)])


def _listed(names: tuple[str, ...]) -> str:
    shown = ", ".join(names[:MOST_NAMES])
    more = len(names) - MOST_NAMES
    return shown if more <= 0 else translate("Travel", "{names} and {n} more").format(names=shown, n=more)
