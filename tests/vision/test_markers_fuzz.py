"""Marks under any number and in any pose: read rightly or not at all, never as another tray's."""

from collections.abc import Callable

import numpy as np
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from tests.vision.conftest import DrawnStation
from vision.markers import CARDS, TAGS, Marks, find_marks

Draw = Callable[..., DrawnStation]
BOUNDED = settings(
    max_examples=12,
    deadline=None,
    phases=[Phase.explicit, Phase.reuse, Phase.generate],  # shrinking would draw hundreds of stations
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.function_scoped_fixture],
)
MOST_OFF_PX = 4.0  # a mark is some 90 px wide there
MARGIN_PX = 20.0  # of white that a mark needs around it
MODULE_PX = 12.0  # a leaf over a mark's corner may pull it by so much

numbers = st.integers(min(TAGS), max(TAGS))
cameras = st.fixed_dictionaries(
    {
        "tilt_deg": st.floats(0, 16),
        "turned_deg": st.floats(-180, 180),
        "distance_mm": st.floats(600, 720),
        "blur_px": st.floats(0.5, 1.5),
    }
)
leaves = st.lists(
    st.tuples(st.floats(-300, 300), st.floats(-320, 320), st.floats(-40, 60), st.floats(8, 60)), max_size=14
)


def off_px(marks: Marks, drawn: DrawnStation) -> float:
    """How far the worst corner of the cards is off."""
    found = [
        np.abs(np.array(quad) - drawn.pose.project(drawn.tray.card_quad(number))).max()
        for number, quad in marks.cards.items()
    ]
    return float(max(found, default=0.0))


@BOUNDED
@given(number=numbers, camera=cameras)
def test_a_station_in_the_open_is_read_whole_whatever_its_tag_and_pose(
    draw_station: Draw, number: int, camera: dict[str, float]
) -> None:
    drawn = draw_station(tag=number, **camera)

    marks = find_marks(drawn.grey)

    places = np.concatenate([drawn.pose.project(drawn.tray.card_quad(n)) for n in CARDS])
    assert marks.tag is None or marks.tag.number == number
    assert off_px(marks, drawn) < MOST_OFF_PX
    if (places > MARGIN_PX).all() and (places < np.array(drawn.pose.size) - MARGIN_PX).all():
        assert marks.complete


@BOUNDED
@given(number=numbers, camera=cameras, over=leaves)
def test_leaves_hide_a_mark_and_never_make_it_another(
    draw_station: Draw, number: int, camera: dict[str, float], over: list[tuple[float, float, float, float]]
) -> None:
    drawn = draw_station(tag=number, leaves=over, **camera)

    marks = find_marks(drawn.grey)

    assert marks.tag is None or marks.tag.number == number
    assert off_px(marks, drawn) < MODULE_PX


@BOUNDED
@given(cards=st.sets(st.sampled_from(list(CARDS))), number=st.none() | numbers, camera=cameras)
def test_marks_that_are_not_there_are_not_found(
    draw_station: Draw, cards: set[int], number: int | None, camera: dict[str, float]
) -> None:
    drawn = draw_station(cards=sorted(cards), tag=number, **camera)

    marks = find_marks(drawn.grey)

    assert set(marks.cards) <= cards
    assert marks.tag is None or marks.tag.number == number
