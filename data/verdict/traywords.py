"""Tray words: which trays are not in a verdict, and why, as sentences.

In    the numbers of trays, their treatments, what was lost to mold
Out   `Sentence`s; nothing where all trays are in
Not   why a whole medium has no verdict (`words.py`)
"""

from collections.abc import Container, Mapping, Sequence

from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.verdict.traynumbers import LostToMold, NoNumber, TrayNumber

__all__ = ["left_out_words", "lost_words", "missing_trays", "no_number_words", "tray_doubts", "untreated"]

# of a medium's trays lost to mold: a third of drawn trials of 4 to 10 blocks call it "as good" all the same
RARE = 0.1
UNLIKELY = 0.05


def missing_trays(numbers: Sequence[TrayNumber]) -> tuple[Sentence, ...]:
    """Trays that have no number, all of one reason together."""
    by_reason: dict[NoNumber, list[str]] = {}
    for number in numbers:
        if number.why_none is not None:
            by_reason.setdefault(number.why_none, []).append(_named(number))
    return tuple(no_number_words(why, ", ".join(codes)) for why, codes in by_reason.items())


def _named(number: TrayNumber) -> str:
    """Its code; of one that was thrown away with the reason that was noted."""
    why = number.tray.ended_why.rstrip(".") if number.why_none is NoNumber.THROWN_AWAY else ""
    return f"{number.tray.code} ({why})" if why else number.tray.code


def no_number_words(why: NoNumber, trays: str) -> Sentence:
    """Why one tray or several have no number."""
    match why:
        case NoNumber.NO_PHOTO:
            return Sentence("No usable photo of the day that is read: {trays}.", trays=trays)
        case NoNumber.TO_COME:
            return Sentence("No photo yet of the day that is read: {trays}.", trays=trays)
        case NoNumber.OTHER_METHOD:
            return Sentence(
                "Scored by another version of the method only, and scores of two versions are never mixed; "
                "score again: {trays}.",
                trays=trays,
            )
        case NoNumber.NO_CANOPY:
            return Sentence("Canopy could not be told on the day that is read: {trays}.", trays=trays)
        case NoNumber.APART:
            return Sentence("Lost to mold, and apart as decided beforehand: {trays}.", trays=trays)
        case NoNumber.THROWN_AWAY:
            return Sentence(
                "Thrown away before it could be read, and so without a number: {trays}. Where the medium was "
                "the reason, it looks better here than it is.",
                trays=trays,
            )
        case NoNumber.CUT_BEFORE:
            return Sentence("Cut before the day that is read, and so without a number: {trays}.", trays=trays)
        case NoNumber.NOT_WEIGHED:
            return Sentence("Not weighed: {trays}.", trays=trays)
        case NoNumber.NOT_LOOKED_AT:
            return Sentence("Not scored by eye: {trays}.", trays=trays)


def left_out_words(trays: Sequence[Tray], left_out: Container[TrayId]) -> tuple[Sentence, ...]:
    """Trays of which a person took a photo of the day out that the program could use."""
    codes = [tray.code for tray in trays if tray.id in left_out]
    if not codes:
        return ()
    return (
        Sentence(
            "A usable photo of the day that is read was left out by hand: {trays}. The report "
            "names the photos.",
            trays=", ".join(codes),
        ),
    )


def untreated(trays: Sequence[Tray], treatments: Mapping[TrayId, str]) -> tuple[Sentence, ...]:
    """Trays that got none of the plan's treatments."""
    codes = [tray.code for tray in trays if tray.id not in treatments]
    if not codes:
        return ()
    return (Sentence("{trays} got none of the plan's treatments and were left out.", trays=", ".join(codes)),)


def tray_doubts(numbers: Sequence[TrayNumber]) -> tuple[Sentence, ...]:
    """What may be wrong with the numbers of trays that are in: their blocks, an eye that knew the medium."""
    return (*_unblocked(numbers), *_not_blind(numbers))


def _not_blind(numbers: Sequence[TrayNumber]) -> tuple[Sentence, ...]:
    if not any(number.seen for number in numbers):
        return ()
    return (
        Sentence(
            "These scores by eye were not given blind: who knows the medium may see what was hoped for. "
            "Score the photos blind to be sure."
        ),
    )


def _unblocked(numbers: Sequence[TrayNumber]) -> tuple[Sentence, ...]:
    counted = [number.tray for number in numbers if number.value is not None]
    codes = [tray.code for tray in counted if not tray.block]
    if not codes:
        return ()
    if len(codes) == len(counted):
        return (
            Sentence(
                "No block is noted of these trays, so all were taken as one: what differs between places and "
                "days of sowing counts as chance, and can look like a difference of media."
            ),
        )
    return (
        Sentence(
            "No block is noted of {trays}: they were taken together as a block of their own.",
            trays=", ".join(codes),
        ),
    )


def lost_words(lost: Sequence[LostToMold]) -> tuple[Sentence, ...]:
    """Trays lost to mold, by treatment, and how little so few trays tell of it."""
    if not any(one.lost for one in lost):
        return _unseen(lost)
    counts = ", ".join(f"{one.treatment} {one.lost}/{one.trays}" for one in lost)
    return (Sentence("Lost to mold, of the trays sown: {counts}.", counts=counts), *_unseen(lost))


def _unseen(lost: Sequence[LostToMold]) -> tuple[Sentence, ...]:
    """What few trays are likely to miss (binomial); empty where they hardly do, or nothing is compared."""
    trays = min((one.trays for one in lost), default=0)
    unseen = (1 - RARE) ** trays
    if len(lost) < 2 or trays < 2 or unseen < UNLIKELY:
        return ()
    return (
        Sentence(
            "Of mold so few trays tell little, whatever the intervals say: where a medium loses one tray in "
            "ten to it, {trays} trays show none in {unseen:.0f} of 100 trials.",
            trays=trays,
            unseen=100 * unseen,
        ),
    )
