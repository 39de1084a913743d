"""Hand places: places that a grower drew on paper -> who stands where, or what is wrong with them.

In    a plan, the blocks whose trays stand already, what was typed for each tray: "3"; "B3" on several shelves
Out   the trays in the order in which they are asked for; the order on each shelf, or `Problem`s in words
Not   drawing by lot, codes and tags (`drawing.py`), keeping it (`chapters/drawbook.py`), the table (`gui`)

Each place is taken once and each block is complete, or nothing is kept. Whether lots were drawn nobody can
see from the places; the book says that they were entered by hand.
"""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from data.plan.drawing import Filled, trays_of
from data.sentence import Sentence
from data.trial import Block, Plan

__all__ = ["HandPlaces", "Problem", "Seat", "read_places", "seats"]

PLACE = re.compile(r"(?P<shelf>.*?)[\s.:-]*(?P<number>\d{1,4})")


@dataclass(frozen=True, slots=True, kw_only=True)
class Seat:
    """One tray of a block that wants a place."""

    block: Block
    crop: str
    treatment: str
    number: int  # of its like in the block, from 1
    of: int  # so many alike stand in the block


@dataclass(frozen=True, slots=True, kw_only=True)
class Problem:
    """What is wrong with one line."""

    line: int  # of the seats, from 0
    words: Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class HandPlaces:
    """What was typed, as far as it can be understood."""

    problems: tuple[Problem, ...]
    open: int  # trays without a place
    filled: Filled | None  # None until all is right


def seats(plan: Plan, standing: Sequence[str] = ()) -> tuple[Seat, ...]:
    """Every tray that wants a place, block by block; those of blocks in `standing` have theirs."""
    return tuple(
        Seat(block=block, crop=crop.name, treatment=treatment.name, number=number, of=plan.per_block)
        for block in plan.blocks
        if block.name not in standing
        for crop in plan.crops
        for treatment in plan.treatments
        for number in range(1, plan.per_block + 1)
    )


def read_places(plan: Plan, wanted: Sequence[Seat], typed: Sequence[str]) -> HandPlaces:
    """Who stands where.

    Parameters
    ----------
    typed : one text for each of `wanted`, as a person typed it; empty where nothing is known yet.
    """
    taken: dict[tuple[str, str, int], int] = {}
    problems: list[Problem] = []
    for line, (seat, text) in enumerate(zip(wanted, typed, strict=True)):
        if not text.strip():
            continue
        spot = _spot(plan, seat, text)
        if isinstance(spot, Sentence):
            problems.append(Problem(line=line, words=spot))
        elif (seat.block.name, *spot) in taken:
            problems.append(Problem(line=line, words=_twice(*spot)))
        else:
            taken[seat.block.name, *spot] = line
    problems += _mixed(plan, wanted, taken)
    still_open = sum(not text.strip() for text in typed)
    complete = not problems and not still_open
    return HandPlaces(
        problems=tuple(problems), open=still_open, filled=_filled(wanted, taken) if complete else None
    )


def _spot(plan: Plan, seat: Seat, text: str) -> tuple[str, int] | Sentence:
    """Shelf and place along it, or what is wrong with it."""
    block = seat.block
    read = PLACE.fullmatch(text.strip())
    if read is None:
        return Sentence("This is no place: type its number along the shelf.")
    shelves = {shelf.casefold(): shelf for shelf in block.shelves}
    named, number = read["shelf"].strip(), int(read["number"])
    if not named and len(shelves) > 1:
        return Sentence(
            "This block stands on several shelves: type shelf and place, as {example}.",
            example=_named(block.shelves[0], block.first_place),
        )  # fmt: skip
    shelf = shelves.get(named.casefold()) if named else block.shelves[0]
    last = block.first_place + _on_one_shelf(plan, seat) - 1
    if shelf is None or not block.first_place <= number <= last:
        return Sentence(
            "There is no place {typed} in this block: it has {first} to {last} on shelf {shelves}.",
            typed=text.strip(), first=block.first_place, last=last,
            shelves=", ".join(block.shelves),
        )  # fmt: skip
    return shelf, number


def _on_one_shelf(plan: Plan, seat: Seat) -> int:
    """Trays of its block on the shelf of a tray: all, or those with its setting."""
    factor = plan.shelf_factor
    if factor is None:
        return len(trays_of(plan, None, None))
    return len(trays_of(plan, factor.name, plan.treatment(seat.treatment).settings[factor.name]))


def _twice(shelf: str, number: int) -> Sentence:
    return Sentence("Place {place} is given to two trays.", place=_named(shelf, number))


def _named(shelf: str, number: int) -> str:
    """As a person can type it: place 2 of shelf "1" is "1 2", for "12" would be a place alone."""
    return f"{shelf} {number}" if shelf[-1:].isdecimal() else f"{shelf}{number}"


def _mixed(plan: Plan, wanted: Sequence[Seat], taken: dict[tuple[str, str, int], int]) -> Iterator[Problem]:
    """Trays on a shelf that has another setting, where whole shelves get one."""
    factor = plan.shelf_factor
    if factor is None:
        return
    levels: dict[tuple[str, str], str] = {}
    for (block, shelf, _), line in taken.items():
        level = plan.treatment(wanted[line].treatment).settings[factor.name]
        if levels.setdefault((block, shelf), level) != level:
            yield Problem(
                line=line,
                words=Sentence(
                    "Shelf {shelf} is {level} already, and a whole shelf gets one setting.",
                    shelf=shelf, level=levels[block, shelf],
                ),
            )  # fmt: skip


def _filled(wanted: Sequence[Seat], taken: dict[tuple[str, str, int], int]) -> Filled:
    """The trays of each shelf in the order of their places."""
    shelves: dict[tuple[str, str], list[tuple[int, int]]] = defaultdict(list)
    for (block, shelf, number), line in taken.items():
        shelves[block, shelf].append((number, line))
    blocks = {seat.block.name: seat.block for seat in wanted}
    return [
        (
            block,
            shelf,
            [(wanted[line].crop, wanted[line].treatment) for _, line in sorted(shelves[name, shelf])],
        )
        for name, block in blocks.items()
        for shelf in block.shelves
        if (name, shelf) in shelves
    ]
