"""What a check of the station says, and which way a card goes back."""

import pytest

from data.photos.stationwords import station_sentences
from vision.reason import Reason
from vision.stationcheck import CardPlace, Found, StationCheck


def place(number: int, right: float, far: float) -> CardPlace:
    return CardPlace(number=number, right_mm=right, far_mm=far, spread_mm=0.3, misfit=1.0)


@pytest.mark.parametrize(
    ("number", "right", "far", "said"),
    [
        (2, 3.1, 0.2, "3 mm out of true at the near right card: move it 3 mm to the left."),
        (0, -4.0, 0.5, "4 mm out of true at the far left card: move it 4 mm to the right."),
        (1, 0.1, 2.6, "3 mm out of true at the far right card: move it 3 mm towards you."),
        (
            3, -3.0, -4.0,
            "5 mm out of true at the near left card: move it 3 mm to the right and 4 mm away from you.",
        ),
    ],
)  # fmt: skip
def test_a_moved_card_is_sent_back(number: int, right: float, far: float, said: str) -> None:
    moved = place(number, right, far)
    check = StationCheck(found=Found.ONE_CARD, moved=moved, places=(moved,), tag=12)

    assert station_sentences(check) == (f"The station is {said}",)


def test_a_true_station_says_how_true() -> None:
    places = tuple(place(number, 0.3, 0.4) for number in range(4))
    check = StationCheck(found=Found.TRUE, places=places, tag=12)

    assert station_sentences(check) == ("The station is true: every card lies within 0.5 mm of its place.",)


def test_what_cannot_be_told_says_what_to_do() -> None:
    unsure = station_sentences(StationCheck(found=Found.UNSURE, tag=12))[0]
    one = station_sentences(StationCheck(found=Found.MISSING, missing=(1,)))[0]
    two = station_sentences(StationCheck(found=Found.MISSING, missing=(1, 2)))[0]

    assert "cannot be told which card" in unsure
    assert one.startswith("The far right card is not seen")
    assert two.startswith("Only 2 of 4 cards are seen")
    assert "full size" in station_sentences(StationCheck(found=Found.SMALL, tag=1))[0]
    assert "all four cards" in station_sentences(StationCheck(found=Found.NO_MARKS))[0]


def test_a_photo_taken_badly_is_told_too() -> None:
    check = StationCheck(found=Found.UNSURE, tilt_deg=31.0, refusal=Reason.TOO_DARK)

    _, dark, tilted, no_tag = station_sentences(check)
    assert dark == f"This photo could not be scored: {Reason.TOO_DARK}."
    assert "31 degrees askew" in tilted
    assert "No tag was read" in no_tag
