"""Station words: what a check of the station found, in sentences that say what to do.

In    a `StationCheck`; places of cards that are kept
Out   sentences, the answer first, then what stands in the way of a better one; what scoring reckons with
Not   the check (`vision/stationcheck.py`), where cards go (`gui/trays/stationdrawing.py`)

Left, right, far and near are those of a person who stands before the tray.
"""

import math
from collections.abc import Iterator

from data.sentence import Sentence
from vision.stationcheck import CardPlace, Found, StationCheck
from vision.traytype import TrayType

__all__ = ["card_name", "kept_places", "station_sentences"]

ASIDE = 0.25  # of the longer way: a shorter one across is not worth a word
LEAST_MM = 0.75


def card_name(number: int) -> Sentence:
    """The card by its place."""
    return (
        Sentence("far left"),
        Sentence("far right"),
        Sentence("near right"),
        Sentence("near left"),
    )[number]


def kept_places(kind: TrayType) -> Sentence | None:
    """What scoring reckons with for a tray type; None where its cards lie as drawn."""
    if not kind.cards_off_mm:
        return None
    ways = [math.hypot(*way) for way in kind.cards_off_mm]
    farthest = max(range(len(ways)), key=ways.__getitem__)
    return Sentence(
        "Photos are scored with the cards where they were measured: the {card} card lies {off:.1f} mm from "
        "its drawn place, the others less.",
        card=card_name(farthest),
        off=ways[farthest],
    )


def station_sentences(check: StationCheck) -> tuple[Sentence, ...]:
    """The answer, and notes on how the photo was taken."""
    return (_answer(check), *_notes(check))


def _answer(check: StationCheck) -> Sentence:
    if check.moved is not None:
        return _moved(check.moved)
    if check.found is Found.TRUE:
        return Sentence(
            "The station is true: every card lies within {worst:.1f} mm of its place.",
            worst=max(0.1, *(place.away_mm for place in check.places)),
        )
    if check.found is Found.NO_MARKS:
        return Sentence(
            "No card of the station is seen: photograph it from above with all four cards in the picture."
        )
    if check.found is Found.MISSING:
        return _missing(check)
    if check.found is Found.SMALL:
        return Sentence(
            "The cards are too small in this photo to measure mm: use the phone's full size and fill the "
            "picture with the station."
        )
    return Sentence(
        "Something is out of true, and it cannot be told which card: keep leaves and shadows off the cards "
        "and the tag and bring another photo. If it says the same, measure the distances of the drawing."
    )


def _missing(check: StationCheck) -> Sentence:
    first = card_name(check.missing[0])
    if len(check.missing) == 1:
        return Sentence(
            "The {card} card is not seen, so it cannot be told how the others lie: wipe it, keep leaves off "
            "it, and photograph all four.",
            card=first,
        )
    return Sentence(
        "Only {seen} of 4 cards are seen, so it cannot be told how they lie: photograph all four.",
        seen=4 - len(check.missing),
    )


def _moved(place: CardPlace) -> Sentence:
    return Sentence(
        "The station is {off:.0f} mm out of true at the {card} card: move it {way}.",
        off=place.away_mm,
        card=card_name(place.number),
        way=_way_back(place),
    )


def _way_back(place: CardPlace) -> Sentence:
    """Against the way it has gone; a small part of it across is left out."""
    least = max(LEAST_MM, ASIDE * max(abs(place.right_mm), abs(place.far_mm)))
    across, along = abs(place.right_mm), abs(place.far_mm)
    if along < least:
        return _across(place)
    if across < least:
        return _along(place)
    return Sentence("{first} and {second}", first=_across(place), second=_along(place))


def _across(place: CardPlace) -> Sentence:
    if place.right_mm > 0:
        return Sentence("{mm:.0f} mm to the left", mm=place.right_mm)
    return Sentence("{mm:.0f} mm to the right", mm=-place.right_mm)


def _along(place: CardPlace) -> Sentence:
    if place.far_mm > 0:
        return Sentence("{mm:.0f} mm towards you", mm=place.far_mm)
    return Sentence("{mm:.0f} mm away from you", mm=-place.far_mm)


def _notes(check: StationCheck) -> Iterator[Sentence]:
    if check.refusal is not None:
        yield Sentence("This photo could not be scored: {why}.", why=check.refusal)
    if check.tilted:
        yield Sentence(
            "The phone was held {tilt:.0f} degrees askew: hold it level above the middle of the tray.",
            tilt=check.tilt_deg,
        )
    if check.tag is None and check.found not in (Found.NO_MARKS, Found.MISSING):
        yield Sentence("No tag was read: with a tray and its tag on the station the check is surer.")
