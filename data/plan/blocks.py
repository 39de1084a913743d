"""Blocks: shelves and sowing days -> the blocks of a trial, and what room, seed and time they take.

In    shelves with their places, how many blocks are wanted, how many trays a block holds
Out   `Layout`: blocks by rounds of sowing; `Cost` of a plan
Not   how many blocks are enough (`statistics/power.py`), which tray stands where (`drawing.py`)

A block is trays that share place and sowing, so it never lies on two shelves, unless whole shelves get a
setting: then a block is a set of shelves, one for each setting.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from data.trial import Block, Factor, Plan, Treatment

__all__ = ["Cost", "Layout", "ShelfPlaces", "WhyNoBlocks", "block_size", "cost_of", "lay_blocks"]


class WhyNoBlocks(StrEnum):
    """Why blocks cannot be laid."""

    NO_SHELF = "no shelf has room for a whole block"
    FEW_SHELVES = "there are fewer shelves than settings"


@dataclass(frozen=True, slots=True, kw_only=True)
class ShelfPlaces:
    """A shelf that the trial may use."""

    name: str
    places: int
    window_end: str = "first"  # "first", "last" or "": where light or draught differs


@dataclass(frozen=True, slots=True, kw_only=True)
class Layout:
    """Blocks in order of sowing; none, with the reason, where they cannot be laid."""

    blocks: tuple[Block, ...]
    rounds: int
    why_none: WhyNoBlocks | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Cost:
    """What a plan takes."""

    trays: int
    most_at_once: int  # trays that grow at the same time
    seed_g: dict[str, float | None]  # by crop; None where no sowing rate was said
    begins: date | None
    ends: date | None  # the last day that is read
    rounds: int


def block_size(
    crops: int, treatments: Sequence[Treatment], per_block: int = 1, of_shelves: Factor | None = None
) -> int:
    """Trays that a block puts on one shelf; on the fullest, where settings of whole shelves hold unlike many.

    Parameters
    ----------
    of_shelves : the factor whose settings belong to whole shelves, if there is one.
    """
    if of_shelves is None:
        return crops * len(treatments) * per_block
    levels = Counter(treatment.settings.get(of_shelves.name) for treatment in treatments)
    return crops * max(levels.values(), default=0) * per_block


def lay_blocks(
    shelves: Sequence[ShelfPlaces],
    wanted: int,
    size: int,
    begins: date,
    *,
    round_days: int = 14,
    settings: int = 1,
    earlier: Sequence[Block] = (),
) -> Layout:
    """Lay `wanted` blocks of `size` trays a shelf, round after round of sowing.

    Parameters
    ----------
    round_days : days from one sowing to the next; the shelves are empty again by then.
    settings : of a factor that belongs to whole shelves; a block then is a set of so many shelves.
    earlier : blocks that stand already; the new ones go on after their last round.
    """
    usable = [shelf for shelf in shelves if size and shelf.places >= size]
    if not usable:
        return Layout(blocks=tuple(earlier), rounds=0, why_none=WhyNoBlocks.NO_SHELF)
    slots = _sets(usable, settings) if settings > 1 else _parts(usable, size)
    if not slots:
        return Layout(blocks=tuple(earlier), rounds=0, why_none=WhyNoBlocks.FEW_SHELVES)
    before = max((block.round for block in earlier), default=0)
    rounds = -(-wanted // len(slots)) + before

    def block(number: int) -> Block:
        step, slot = divmod(number, len(slots))
        names, first, label, window_end = slots[slot]
        turn = step + 1 + before
        return Block(
            name=label if rounds == 1 else f"{label}, round {turn}",
            shelves=names,
            sow_on=begins + timedelta(days=round_days * step),
            round=turn,
            first_place=first,
            window_end=window_end,
        )

    return Layout(blocks=(*earlier, *map(block, range(wanted))), rounds=rounds)


Slot = tuple[tuple[str, ...], int, str, str]  # shelves, first place, label, end at the window


def _parts(shelves: Sequence[ShelfPlaces], size: int) -> list[Slot]:
    """Every shelf once, then the second parts of long ones."""
    slots: list[Slot] = []
    for part in range(max(shelf.places // size for shelf in shelves)):
        for shelf in shelves:
            parts = shelf.places // size
            if part < parts:
                label = f"shelf {shelf.name}" if parts == 1 else f"shelf {shelf.name}, part {part + 1}"
                slots.append(((shelf.name,), part * size + 1, label, _window(shelf, part, parts)))
    return slots


def _sets(shelves: Sequence[ShelfPlaces], settings: int) -> list[Slot]:
    """Shelves in sets of one for each setting, neighbours together."""
    sets = [
        tuple(shelf.name for shelf in shelves[at : at + settings])
        for at in range(0, len(shelves) - settings + 1, settings)
    ]
    window = {shelf.name: shelf.window_end for shelf in shelves}
    return [(names, 1, "shelves " + " and ".join(names), window[names[0]]) for names in sets]


def _window(shelf: ShelfPlaces, part: int, parts: int) -> str:
    """The end of a part that is the shelf's own end at the window, if it has that."""
    at_window = part == (0 if shelf.window_end == "first" else parts - 1)
    return shelf.window_end if at_window else ""


def cost_of(plan: Plan) -> Cost:
    """Trays, room, seed and time of a plan."""
    a_block = len(plan.crops) * len(plan.treatments) * plan.per_block
    rounds: dict[int, int] = {}
    for block in plan.blocks:
        rounds[block.round] = rounds.get(block.round, 0) + a_block
    days = [block.sow_on for block in plan.blocks]
    read_after = max((crop.read_on_day for crop in plan.crops), default=0)
    each = plan.trays_per_treatment * len(plan.treatments)
    return Cost(
        trays=plan.trays,
        most_at_once=max(rounds.values(), default=0),
        seed_g={
            crop.name: None if crop.sowing_rate_g is None else crop.sowing_rate_g * each
            for crop in plan.crops
        },
        begins=min(days, default=None),
        ends=max(days) + timedelta(days=read_after) if days else None,
        rounds=len(rounds),
    )
