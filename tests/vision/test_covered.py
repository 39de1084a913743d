"""Marks under leaves: what is still told by the modules in sight, and in which light black print is found."""

import cv2
import numpy as np
import pytest

from vision.covered import decoded, decoded_tag, lone_cards
from vision.markers import CARDS, find_marks
from vision.patterns import FRAME, Reading, bits
from vision.traytype import CARD_MARK_MM

CODES = np.stack([bits(number) for number in range(587)])


def seen(number: int, *, told: np.ndarray | None = None, flip: tuple[tuple[int, int], ...] = ()) -> Reading:
    """A look at a tag: all modules told unless said otherwise, some read wrongly."""
    black = bits(number)
    for row, column in flip:
        black[row, column] ^= True
    told = np.ones((8, 8), bool) if told is None else told
    return Reading(place=np.eye(3), told=told, black=black, contrast=200.0)


def payload(number: int, *, black: bool, count: int) -> tuple[tuple[int, int], ...]:
    """The first `count` modules inside the frame that are black, or white."""
    places = np.argwhere((bits(number) == black) & ~FRAME)
    return tuple((int(row), int(column)) for row, column in places[:count])


@pytest.mark.parametrize(("contrast", "veil"), [(0.3, 0.0), (0.3, 50.0), (0.3, 70.0), (0.45, 95.0)])
def test_a_station_with_a_leaf_over_every_card_is_found_in_any_light(draw_station, contrast, veil):
    """Black print is 10 grey levels in a dark photo and 110 behind a veil of stray light."""
    leaves = tuple((x * 199.0, y * 196.0, -40.0, 12.0) for x in (-1, 1) for y in (-1, 1))
    station = draw_station(tag=None, leaves=leaves)
    picture = np.clip(contrast * station.grey + veil, 0, 255).astype(np.uint8)

    assert len(lone_cards(picture)) == 2
    assert sorted(find_marks(picture).cards) == [0, 1, 2, 3]


@pytest.mark.parametrize("width_mm", [1.0, 3.0])
def test_blades_of_grass_across_every_card_do_not_hide_the_station(draw_station, width_mm):
    """They cut the black of a mark into pieces, none of them square."""
    station = draw_station(tag=None)
    picture = station.grey.copy()
    for quad in (station.pose.project(station.tray.card_quad(number)) for number in CARDS):
        side = np.linalg.norm(quad[1] - quad[0])
        for along in (-0.25, 0.2):
            middle = quad.mean(axis=0) + np.array([along * side, 0.0])
            ends = [
                np.round(middle + way * np.array([0.3, 1.2]) * side).astype(int).tolist() for way in (-1, 1)
            ]
            cv2.line(picture, *ends, 105, round(width_mm * side / CARD_MARK_MM), cv2.LINE_AA)

    assert len(lone_cards(picture)) == 2
    assert sorted(find_marks(picture).cards) == [0, 1, 2, 3]


def test_a_code_is_read_with_a_third_of_its_modules_out_of_sight():
    told = np.ones((8, 8), bool)
    told[:, :3] = False

    assert decoded_tag(seen(431, told=told)) == 431


@pytest.mark.parametrize("number", [10, 300, 586])
def test_two_wrong_modules_are_corrected_and_three_are_not_where_no_tag_must_be(number):
    assert decoded(seen(number, flip=payload(number, black=True, count=2))) == number
    assert decoded(seen(number, flip=payload(number, black=True, count=3))) is None


def test_shade_on_white_modules_counts_less_than_white_in_place_of_black():
    assert decoded_tag(seen(300, flip=payload(300, black=False, count=4))) == 300
    assert decoded_tag(seen(300, flip=payload(300, black=True, count=2))) is None


def test_too_few_modules_in_sight_give_no_number():
    told = FRAME.copy()
    told[1:4, 1:6] = True

    assert decoded_tag(seen(300, told=told)) is None


def hidden(modules: np.ndarray, keep: int) -> np.ndarray:
    """All told but those of `modules` beyond the first `keep` of them."""
    told = np.ones((8, 8), bool)
    rows, columns = np.nonzero(modules)
    told[rows[keep:], columns[keep:]] = False
    return told


def telling(number: int, count: int) -> np.ndarray:
    """The frame and `count` modules inside, of 300 choices those by which the next number differs most."""
    places, chance = np.argwhere(~FRAME), np.random.default_rng(0)
    chosen = [chance.permutation(len(places))[:count] for _ in range(300)]
    unlike = [np.sort((CODES[number] != CODES)[:, *places[some].T].sum(axis=1))[1] for some in chosen]
    told = FRAME.copy()
    told[tuple(places[chosen[int(np.argmax(unlike))]].T)] = True
    return told


@pytest.mark.parametrize(("frame", "inside", "tag"), [(15, 16, 300), (14, 36, None), (28, 15, None)])
def test_how_much_of_a_tag_must_be_in_sight(frame, inside, tag):
    """15 of the frame's 28 modules, and 16 of the 36 inside even where no other number is like it."""
    told = hidden(FRAME, frame) & telling(300, inside)

    assert decoded_tag(seen(300, told=told)) == tag


@pytest.mark.parametrize(("frame", "card"), [(10, 2), (9, None)])
def test_how_much_of_a_card_s_frame_must_be_in_sight(frame, card):
    assert decoded(seen(2, told=hidden(FRAME, frame))) == card


@pytest.mark.parametrize(("white", "card"), [(3, 2), (4, None)])
def test_how_many_modules_of_a_frame_may_be_white(white, card):
    """An eighth of the 28."""
    flip = tuple((0, column) for column in range(white))

    assert decoded(seen(2, flip=flip)) == card


@pytest.mark.parametrize(("apart", "is_told"), [(3, True), (2, False)])
@pytest.mark.parametrize("decode", [decoded, decoded_tag])
def test_a_number_is_told_where_no_other_comes_within_three_modules(decode, apart, is_told):
    """Of the two numbers with the most modules alike only some of the others are in sight."""
    alike = [((CODES[a] != CODES[b]).sum(), a, b) for a in (100, 300, 500) for b in range(587) if a != b]
    _, number, other = min(alike)
    black_by_white = CODES[number] & ~CODES[other]
    told = hidden(CODES[number] != CODES[other], 0)
    rows, columns = np.nonzero(black_by_white)
    told[rows[:apart], columns[:apart]] = True

    assert (decode(seen(number, told=told)) == number) is is_told
    assert decode(seen(number, told=told)) in (number, None)


@pytest.mark.parametrize(("inside", "card"), [(23, 2), (22, None)])
def test_a_card_is_told_by_no_fewer_modules_than_chance_would_seldom_make(inside, card):
    """587 numbers by 2 to the 23rd: one picture in 14,000; one in 7,000 is too many."""
    assert decoded(seen(2, told=telling(2, inside))) == card


def test_a_pattern_without_black_frame_is_no_mark():
    flip = tuple((0, column) for column in range(8))

    assert decoded(seen(300, flip=flip)) is None
    assert decoded_tag(seen(300, flip=flip)) is None
