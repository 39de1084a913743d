"""Side by side: what was noted of single trays -> how far media differ where they grew beside each other.

In    rows of the table with tray and number; the trusted medium
Out   for each row and other medium a `Beside`: the difference with its interval, and the trays that tell it
Not   means of all trays of a medium (`facts.py`), verdicts of a trial (`data.verdict`)

A mat that was tried on radish and a mix that grows broccoli differ by their crops as well, so the means of
all trays tell no difference of media. Trays are held against each other that grew one crop in one block, or
were sown on one day where there are no blocks: value = crop and block + medium + error, by least squares,
with Student's t. Where blocks leave no error to judge by, the day of sowing stands for them. Of what is yes
or no the two shares are compared, each of trays with such mates, by Newcombe's interval.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from itertools import groupby

from data.materials.table import Beside, difference_of
from data.records import Tray
from data.sentence import Sentence
from data.statistics.estimate import Estimate
from data.statistics.share import share_of

__all__ = ["side_by_side"]

YES_OR_NO = frozenset({"slid"})  # rows
Noted = tuple[Tray, float]
Mates = Callable[[Tray], tuple[str, ...]]


def side_by_side(
    numbers: Iterable[tuple[str, Tray, float]], trusted: str
) -> Mapping[tuple[str, str], Beside]:
    """How far each medium lies from the trusted one, by row; without a number of both there is none."""
    found: dict[tuple[str, str], Beside] = {}
    for row, group in groupby(sorted(numbers, key=lambda one: one[0]), key=lambda one: one[0]):
        noted = [(tray, value) for _, tray, value in group]
        media = dict.fromkeys(tray.medium for tray, _ in noted)
        for medium in media if trusted in media else ():
            if medium != trusted:
                pair = [one for one in noted if one[0].medium in (medium, trusted)]
                found[row, medium] = _held(pair, medium, trusted, shares=row in YES_OR_NO)
    return found


def _held(pair: Sequence[Noted], medium: str, trusted: str, *, shares: bool) -> Beside:
    in_blocks, by_day = _with_mates(pair, _block), _with_mates(pair, _day)
    few = len(in_blocks) < 2 + len({_block(tray) for tray, _ in in_blocks})  # no error is left
    mates, with_mates = (_day, by_day) if few else (_block, in_blocks)
    if not with_mates:
        words = Sentence(
            "No tray of this medium grew the same crop, sown on the same day, as one of {trusted}: how far "
            "the two differ cannot be told.",
            trusted=trusted,
        )
        return Beside(difference=None, words=words)
    own = sum(tray.medium == medium for tray, _ in with_mates)
    values = {"n": own, "m": len(with_mates) - own, "trusted": trusted}
    if mates is _block and all(tray.block for tray, _ in with_mates):
        words = Sentence(
            "Trays side by side, the same crop in the same block: {n}, and {m} of {trusted}.", **values
        )
    else:
        words = Sentence(
            "Trays side by side, the same crop sown on the same day: {n}, and {m} of {trusted}.", **values
        )
    difference = _of_shares(with_mates, medium) if shares else _of_means(with_mates, mates, medium, trusted)
    return Beside(difference=difference, words=words)


def _with_mates(pair: Sequence[Noted], mates: Mates) -> list[Noted]:
    """Those that grew beside one of the other medium."""
    media: dict[tuple[str, ...], set[str]] = {}
    for tray, _ in pair:
        media.setdefault(mates(tray), set()).add(tray.medium)
    return [one for one in pair if len(media[mates(one[0])]) == 2]


def _day(tray: Tray) -> tuple[str, ...]:
    return (tray.crop, tray.trial or "", tray.sown_at.date().isoformat())


def _block(tray: Tray) -> tuple[str, ...]:
    return (*_day(tray), tray.block or "")


def _of_means(noted: Sequence[Noted], mates: Mates, medium: str, trusted: str) -> Estimate:
    import numpy as np

    from data.statistics.leastsquares import design_of

    places = ["\n".join(mates(tray)) for tray, _ in noted]
    design = design_of(places, [tray.medium for tray, _ in noted], (medium, trusted))
    fit = design.fit(np.array([value for _, value in noted]))
    error_ss = float(fit.error_ss)
    alike = error_ss < 1e-12 * max(1.0, sum(value * value for _, value in noted))
    error = None if alike or design.df < 1 else (error_ss / design.df * design.unit_variance()[0, 1]) ** 0.5
    return Estimate.of(float(fit.difference(0, 1)), error, design.df)


def _of_shares(noted: Sequence[Noted], medium: str) -> Estimate:
    own = [value > 0 for tray, value in noted if tray.medium == medium]
    others = [value > 0 for tray, value in noted if tray.medium != medium]
    one = difference_of(share_of(sum(own), len(own)), share_of(sum(others), len(others)))
    return one.turned(lambda part: 100 * part)
