"""Drawing: which tray stands where, drawn by lot within each block from a recorded seed.

In    a plan with its blocks; a seed; codes and tags that are free
Out   `Place` for every tray: block, shelf, position, crop, treatment, code, tag; text for the book and back
Not   keeping it (`chapters/drawbook.py`), printing it (gui)

Whole drawings are made until one meets the restrictions, so that each allowed one is as likely as any other:
no treatment and no medium has the shelf's end at the window more often than its share, and the mean place of
each treatment lies near the middle. If 1000 drawings bring none the restrictions are loosened by a step, the
mean place first, and the steps are recorded.
A tag ends with its tray, so a later round may carry the tags of an earlier one; it does so only once no other
number is left, since two cards with one mark are easily mixed up.
The shuffle is Fisher & Yates' (1938, in Durstenfeld's form of 1964; both from memory) on `random.Random`,
whose sequence Python keeps for a seed.
"""

import json
from collections import Counter, defaultdict, deque
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import asdict, dataclass
from datetime import date, datetime
from math import sqrt
from random import Random
from typing import NewType, TypeVar

from data.trial import Block, Plan, PlanId

__all__ = [
    "Draw", "DrawId", "Filled", "KeptDraw", "NoTagsLeft", "Place", "draw_of", "draw_text", "draw_trial",
    "placed", "trays_of", "window_counts",
]  # fmt: skip

DrawId = NewType("DrawId", int)
T = TypeVar("T")

TRIES = 1000  # drawings before a restriction is loosened
WINDOW_LAST = 3  # steps of loosening before the window is given more
LEAST_FOR_MEAN = 3  # places of a treatment; with fewer their mean says little
FIRST_TAG, LAST_TAG = 10, 586


class NoTagsLeft(ValueError):
    """More trays stand at the same time than there are tags left between 10 and 586."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """One tray of the trial, before it is sown."""

    code: str
    tag_number: int
    block: str
    round: int
    shelf: str
    position: int  # along the shelf, from 1
    sow_on: date
    crop: str
    treatment: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Draw:
    """One drawing of lots."""

    seed: int  # 0: drawn on paper, with shuffled cards say, and entered by hand
    places: tuple[Place, ...]
    loosened: int = 0  # steps by which the restrictions were loosened


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptDraw:
    """A drawing as the book keeps it."""

    id: DrawId
    plan_id: PlanId
    draw: Draw
    drawn_at: datetime
    why: str  # of drawing again; "" for the first


# one shelf of one block: who stands there, in order of position
Filled = list[tuple[Block, str, list[tuple[str, str]]]]


def draw_trial(
    plan: Plan,
    seed: int,
    *,
    kept: Sequence[Place] = (),
    taken_tags: Iterable[int] = (),
    taken_codes: Iterable[str] = (),
    promised_tags: Iterable[int] = (),
) -> Draw:
    """Draw the places of all blocks but those in `kept`, whose trays stand already.

    Parameters
    ----------
    promised_tags : of drawings that wait to be sown; used only once no other number is left.

    Raises
    ------
    NoTagsLeft
        If there are not enough free tag numbers.
    """
    stand = {place.block for place in kept}
    blocks = [block for block in plan.blocks if block.name not in stand]
    filled, loosened = _allowed(plan, blocks, Random(seed))
    places = placed(
        plan, filled,
        kept=kept, taken_tags=taken_tags, taken_codes=taken_codes, promised_tags=promised_tags,
    )  # fmt: skip
    return Draw(seed=seed, places=places, loosened=loosened)


def placed(
    plan: Plan,
    filled: Filled,
    *,
    kept: Sequence[Place] = (),
    taken_tags: Iterable[int] = (),
    taken_codes: Iterable[str] = (),
    promised_tags: Iterable[int] = (),
) -> tuple[Place, ...]:
    """The places that stand already and those of `filled`, each with a code and a tag.

    Raises
    ------
    NoTagsLeft
        If there are not enough free tag numbers.
    """
    tags = _Tags(set(taken_tags), kept, set(promised_tags))
    codes = {*taken_codes, *(place.code for place in kept)}
    several = max((block.round for block in plan.blocks), default=1) > 1
    places = list(kept)
    for block, shelf, trays in filled:
        for position, (crop, treatment) in enumerate(trays, start=block.first_place):
            code = _code(shelf, position, block.round if several else None, codes)
            codes.add(code)
            places.append(
                Place(
                    code=code,
                    tag_number=tags.next_of(block.round),
                    block=block.name,
                    round=block.round,
                    shelf=shelf,
                    position=position,
                    sow_on=block.sow_on,
                    crop=crop,
                    treatment=treatment,
                )
            )
    return tuple(places)


def _allowed(plan: Plan, blocks: Sequence[Block], lot: Random) -> tuple[Filled, int]:
    """The first drawing that meets the restrictions, and how far they had to be loosened."""
    loosened = 0
    while True:
        for _ in range(TRIES):
            filled = [part for block in blocks for part in _fill(plan, block, lot)]
            if _is_fair(plan, filled, loosened):
                return filled, loosened
        loosened += 1


def _fill(plan: Plan, block: Block, lot: Random) -> Iterator[tuple[Block, str, list[tuple[str, str]]]]:
    """Every tray of a block on its shelf, in an order drawn by lot."""
    factor = plan.shelf_factor
    if factor is None:
        yield block, block.shelves[0], _shuffled(trays_of(plan, None, None), lot)
        return
    levels = _shuffled(list(factor.levels), lot)
    for shelf, level in zip(block.shelves, levels, strict=False):
        yield block, shelf, _shuffled(trays_of(plan, factor.name, level), lot)


def trays_of(plan: Plan, factor: str | None, level: str | None) -> list[tuple[str, str]]:
    """Crop and treatment of every tray; only those with one setting where whole shelves get it."""
    return [
        (crop.name, treatment.name)
        for crop in plan.crops
        for treatment in plan.treatments
        if factor is None or treatment.settings.get(factor) == level
        for _ in range(plan.per_block)
    ]


def _shuffled(things: list[T], lot: Random) -> list[T]:
    order = list(things)
    for last in range(len(order) - 1, 0, -1):
        other = int(lot.random() * (last + 1))
        order[last], order[other] = order[other], order[last]
    return order


def _is_fair(plan: Plan, filled: Filled, loosened: int) -> bool:
    """No treatment and no medium too often at the window, none always at one end of its shelves."""
    marks = {one.name: {one.name, f"medium {one.medium or ''}"} for one in plan.treatments}
    at_window: Counter[str] = Counter()
    there: Counter[str] = Counter()
    windows = 0
    rank: dict[str, list[float]] = defaultdict(list)
    for block, _, trays in filled:
        if block.window_end and trays:
            windows += 1
            at_window.update(marks[trays[0 if block.window_end == "first" else -1][1]])
        for position, (_, treatment) in enumerate(trays):
            there.update(marks[treatment])
            rank[treatment].append(position - (len(trays) - 1) / 2)
    total = sum(len(trays) for _, _, trays in filled)
    slack = loosened // WINDOW_LAST
    if any(count > -(-windows * there[mark] // total) + slack for mark, count in at_window.items()):
        return False
    size = max((len(trays) for _, _, trays in filled), default=1)
    usual = sqrt((size * size - 1) / 12)  # standard deviation of one place drawn by lot
    return all(
        abs(sum(places) / len(places)) <= (1 + loosened / 2) * usual / sqrt(len(places)) + 1e-9
        for places in rank.values()
        if len(places) >= LEAST_FOR_MEAN
    )


class _Tags:
    """Tag numbers in the order in which they are given out."""

    def __init__(self, taken: set[int], kept: Sequence[Place], promised: set[int]) -> None:
        self._last = {place.tag_number: place.round for place in kept if place.tag_number not in taken}
        numbers = sorted(range(FIRST_TAG, LAST_TAG + 1), key=lambda number: number in promised)
        self._unused = deque(number for number in numbers if number not in taken and number not in self._last)

    def next_of(self, turn: int) -> int:
        """An unused one, else the one whose trays ended first before this round; raises `NoTagsLeft`."""
        if self._unused:
            tag = self._unused.popleft()
        else:
            tag = min(self._last, key=lambda number: (self._last[number], number), default=0)
            if self._last.get(tag, turn) >= turn:
                raise NoTagsLeft
        self._last[tag] = turn
        return tag


def _code(shelf: str, position: int, turn: int | None, taken: set[str]) -> str:
    """Shelf and place, "A3"; with several rounds "A3-2"; made another one where a tray has it already."""
    plain = f"{shelf}{position}" if turn is None else f"{shelf}{position}-{turn}"
    code, other = plain, 1
    while code in taken:
        other += 1
        code = f"{plain}/{other}"
    return code


def window_counts(plan: Plan, places: Iterable[Place]) -> dict[str, int]:
    """How often each treatment stands at the window's end of its shelf."""
    ends: dict[tuple[str, str], list[Place]] = defaultdict(list)
    for place in places:
        ends[place.block, place.shelf].append(place)
    counts = dict.fromkeys((treatment.name for treatment in plan.treatments), 0)
    window = {block.name: block.window_end for block in plan.blocks}
    for (block, _), there in ends.items():
        if window.get(block):
            order = sorted(there, key=lambda place: place.position)
            counts[order[0 if window[block] == "first" else -1].treatment] += 1
    return counts


# --- text and back


def draw_text(draw: Draw) -> str:
    """The places as the book keeps them (JSON); the seed stands beside it."""
    body = [asdict(place) | {"sow_on": place.sow_on.isoformat()} for place in draw.places]
    return json.dumps({"loosened": draw.loosened, "places": body}, ensure_ascii=False)


def draw_of(seed: int, text: str) -> Draw:
    """The drawing that `draw_text` wrote."""
    body = json.loads(text)
    places = (Place(**place | {"sow_on": date.fromisoformat(place["sow_on"])}) for place in body["places"])
    return Draw(seed=seed, places=tuple(places), loosened=body["loosened"])
