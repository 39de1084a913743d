"""Twins: trays of another book that are trays of this one under another code, crop or medium.

In    both books' trays and photos
Out   their id -> ours, where photos that both books have say so
Not   trays that are known by their code, crop, medium and time of sowing (`newrows.py`)

One grower on two computers mends a code or a medium on one of them; taken for another tray, its weights, its
harvest and all that was noted would stand here twice. A photo that was matched to another tray meanwhile
makes no twins: every photo that both have of either tray has to be of the other, and they have to be at least
half of what one of both trays has, for a few may lie on wrong trays.
"""

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Mapping
from typing import Any

__all__ = ["LEAST_PHOTOS", "twins"]

Row = Mapping[str, Any]
LEAST_PHOTOS = 2  # that both have of it: one may lie on the wrong tray on either computer


def twins(
    ours: Iterable[Row], theirs: Iterable[Row], our_photos: Iterable[Row], their_photos: Iterable[Row]
) -> dict[int, int]:
    """Their trays that are ours, of those given: trays of either book that the other does not know.

    Parameters
    ----------
    ours, theirs : rows with "id" and "sown_at".
    our_photos, their_photos : rows with "digest" and "tray".
    """
    sown_here = {row["id"]: row["sown_at"] for row in ours}
    sown_there = {row["id"]: row["sown_at"] for row in theirs}
    here = {row["digest"]: row["tray"] for row in our_photos if row["tray"] is not None}
    own_here, own_there = Counter(here.values()), Counter[int]()
    shared: dict[int, list[int]] = defaultdict(list)  # their tray -> ours, one for each photo
    back: dict[int, set[int]] = defaultdict(set)
    for row in their_photos:
        tray, known = row["tray"], here.get(row["digest"])
        own_there[tray] += 1
        if tray is not None and known is not None:
            shared[tray].append(known)
            back[known].add(tray)
    return {
        tray: known[0]
        for tray, known in shared.items()
        if tray in sown_there
        and _is_one(known)
        and len(back[known[0]]) == 1
        and sown_here.get(known[0]) == sown_there[tray]
        and 2 * len(known) >= min(own_here[known[0]], own_there[tray])
    }


def _is_one(known: Collection[int]) -> bool:
    return len(known) >= LEAST_PHOTOS and len(set(known)) == 1
